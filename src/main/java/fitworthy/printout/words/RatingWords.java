package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.measure.MeasureKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A rating in a sentence: its name, in which loading, and by how much it is passed or kept. */
public final class RatingWords {

    /** How many ratings are named in a sentence. */
    private static final int NAMED = 5;

    /** What the limit of an axle or of the vehicle is called where it is held against what comes on the way. */
    private static final String LIMIT = "limit";

    private RatingWords() {}

    /** The ratings that are exceeded, those of one loading together. */
    static String over(Advice advice, List<Assessed> passed) {
        Map<String, List<String>> byLoading = new LinkedHashMap<>();
        passed.stream().limit(NAMED).forEach(rating -> byLoading
                .computeIfAbsent(in(advice, rating), none -> new ArrayList<>())
                .add(name(rating) + " by " + amount(advice, rating)));
        int others = passed.size() - NAMED;
        return byLoading.entrySet().stream()
                        .map(entry -> String.join(", ", entry.getValue()) + entry.getKey())
                        .collect(Collectors.joining("; "))
                + (others > 0 ? "; and " + others + " more" : "");
    }

    /** What is surely passed, and what by less than can be known. */
    static Map<Boolean, List<Assessed>> byCloseness(List<Assessed> passed) {
        return passed.stream()
                .collect(Collectors.partitioningBy(
                        rating -> rating.comparison().orElseThrow().tooClose()));
    }

    /** The same of what is passed, or kept, by less than can be known, each with how far it may be off. */
    static String within(Advice advice, List<Assessed> close) {
        return close.stream()
                .map(rating -> name(rating) + " " + byOrSpare(advice, rating) + give(rating) + in(rating))
                .collect(Collectors.joining(", "));
    }

    private static String byOrSpare(Advice advice, Assessed rating) {
        return rating.comparison().orElseThrow().margin() < 0
                ? "over by " + amount(advice, rating)
                : Wording.isNothing(rating) ? Wording.NOTHING : spare(advice, rating) + " spare";
    }

    /** In which loading it is passed furthest, and whether in all alike or in how many others. */
    private static String in(Advice advice, Assessed rating) {
        List<Finding> findings = advice.findings().stream()
                .filter(finding -> finding.check().equals(rating.check()))
                .toList();
        List<Finding> further = findings.stream()
                .filter(finding -> finding.comparison().orElseThrow().margin()
                        < rating.comparison().orElseThrow().margin())
                .toList();
        if (!further.isEmpty()) {
            return " (" + rating.judged().loadCase() + "; further, but " + TooClose.WORDS + ": "
                    + further.stream()
                            .map(finding -> finding.judged().loadCase())
                            .collect(Collectors.joining(", "))
                    + ")";
        }
        List<String> amounts =
                findings.stream().map(finding -> amount(advice, finding)).toList();
        int loadings = advice.loadings().size();
        if (rating.judged().loadCase().isEmpty() || amounts.size() <= 1) {
            return in(rating);
        }
        return amounts.size() == loadings && amounts.stream().distinct().count() == 1
                ? " (every loading)"
                : " (" + Wording.loadings(rating, findings, finding -> amount(advice, finding)) + ")";
    }

    /** In brackets, the loading of what hangs on one. */
    public static String in(Outcome rating) {
        String loading = rating.judged().loadCase();
        return loading.isEmpty() ? "" : " (" + loading + ")";
    }

    private static String amount(Advice advice, Assessed rating) {
        return Wording.atLeast(rating.judged().measure())
                + (advice.isGuessed(rating) ? "about " : "")
                + Wording.amount(rating.judged(), rating.comparison().orElseThrow());
    }

    /** How far it may be off; empty where it is exact. */
    static String give(Assessed rating) {
        double tolerance = rating.comparison().orElseThrow().tolerance();
        MeasureKind kind = rating.judged().measure().kind();
        return kind.printed(tolerance) > 0 ? " +/- " + Digits.quantity(tolerance, kind) : "";
    }

    static String spare(Advice advice, Assessed rating) {
        return (advice.isGuessed(rating) ? "about " : "")
                + Wording.amount(rating.judged(), rating.comparison().orElseThrow());
    }

    /** What a rating is called in a sentence. */
    public static String name(Outcome rating) {
        String subject = rating.judged().subject();
        String limit = rating.judged().measure().kind().limitMeaning();
        if (limit.equals(LIMIT)) {
            return subject.startsWith("vehicle") ? "GVM" : subject + " limit";
        }
        return subject.startsWith("vehicle") || subject.equals("roof")
                ? limit
                : limit.equals("axle limit") ? subject + " limit" : subject + " (" + limit + ")";
    }
}
