package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Headings;
import fitworthy.advice.Counts;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Ratings;
import fitworthy.advice.TrailerRoom;
import fitworthy.advice.TrailerRoom.AtPlate;
import fitworthy.advice.UntilApproved;
import fitworthy.advice.UntilApproved.Left;
import fitworthy.book.Book;
import fitworthy.book.Severity;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Trailer;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What advice comes to, in words. */
public final class Verdict {

    /** How many ratings are named in a sentence. */
    private static final int NAMED = 5;

    private static final String TOWING = "towing";

    private Verdict() {}

    /** What to do with the plan, with what was found, how much information is missing and what rests on guesses. */
    public static String of(Arrangement arrangement) {
        return of(arrangement, true);
    }

    /** The same without what is in order only if guesses hold. */
    static String inShort(Arrangement arrangement) {
        return of(arrangement, false);
    }

    private static String of(Arrangement arrangement, boolean withHeld) {
        List<String> parts = new ArrayList<>();
        Headings headings = arrangement.headings();
        headings.found().forEach((severity, count) -> parts.add(count + " " + SeverityWords.behind(count, severity)));
        if (headings.under() > 0) {
            parts.add(parts.remove(parts.size() - 1) + " (and " + headings.under() + " listed under them)");
        }
        // What the rule book alone lacks nobody who reads this can bring; it is told where the checks are.
        if (arrangement.counts().notAssessed() > 0 && !onlyBook(arrangement.counts())) {
            parts.add(open(arrangement.counts()));
        }
        if (withHeld && arrangement.counts().held() > 0) {
            parts.add(GuessWords.count(arrangement.counts()));
        }
        String waived = HouseWords.waived(arrangement);
        Optional<Severity> worst = arrangement.advice().worst();
        boolean mayStand =
                worst.filter(found -> found.compareTo(Severity.CHANGE) <= 0).isEmpty();
        if (mayStand && arrangement.counts().isMostlyOpen()) {
            return "Hardly anything can be said of this plan yet. Find out first what is missing."
                    + counted(parts, waived);
        }
        if (mayStand && Ratings.of(arrangement.advice()).open() > 0) {
            return "This plan cannot be judged yet: not all of its ratings are known and checked."
                    + counted(parts, waived);
        }
        long open = checks(leadingStops(arrangement));
        if (open > 0) {
            return "Find out first what is missing: "
                    + (open == 1
                            ? "1 check that could stop this plan is not made."
                            : open + " checks that could stop this plan are not made.")
                    + counted(parts, waived);
        }
        String first = worst.map(found -> switch (found) {
                    case STOP ->
                        arrangement.isWorstTooClose()
                                ? "Do not go ahead yet: what stops it is too close to call, and has to be settled first."
                                : "Do not go ahead with this plan as it stands.";
                    case CHANGE -> "Change the plan before you go ahead.";
                    case CONFIRM -> "Get what is listed agreed before you go ahead.";
                    case NOTE ->
                        (onlyBook(arrangement.counts()) ? "Nothing that was checked" : "Nothing")
                                + " stands in the way. Some points are worth knowing.";
                })
                .orElse(
                        waived.isEmpty()
                                ? "No fault found in what was checked."
                                : "No fault found except what is waived.");
        return first + counted(parts, waived);
    }

    /** Whether checks were not made, and all for want of a value of the rule book. */
    private static boolean onlyBook(Counts counts) {
        return counts.notAssessed() > 0 && counts.figuresMissing() == counts.inBook();
    }

    /**
     * The checks that could stop the plan and lack what its writer can find out, where they come before what was found: not
     * before a stop or a change, nor where as much is to be confirmed. A note asks for nothing.
     */
    private static List<NotAssessed> leadingStops(Arrangement arrangement) {
        Advice advice = arrangement.advice();
        List<NotAssessed> open = advice.notAssessed().stream()
                .filter(outcome -> outcome.judged().card().severity().is(Severity.STOP))
                .filter(outcome -> outcome.missing().stream().noneMatch(Missing::isInBook))
                .toList();
        boolean comeFirst = advice.worst()
                        .filter(found -> found.compareTo(Severity.CHANGE) <= 0)
                        .isEmpty()
                && checks(open) > arrangement.counts().found(Severity.CONFIRM);
        return comeFirst ? open : List.of();
    }

    private static long checks(List<NotAssessed> outcomes) {
        return outcomes.stream().map(Outcome::check).distinct().count();
    }

    /** What these lack. */
    static List<Missing> leading(Arrangement arrangement) {
        return leadingStops(arrangement).stream()
                .flatMap(outcome -> outcome.missing().stream())
                .distinct()
                .toList();
    }

    private static String counted(List<String> parts, String waived) {
        return (parts.isEmpty() ? "" : " " + String.join(", ", parts) + ".")
                + (waived.isEmpty() ? "" : " Not counted: " + waived + ".");
    }

    /**
     * How many checks lack information, and how many answers they lack; where that is the rule book's more than the
     * sheet's, how many.
     */
    public static String open(Counts counts) {
        return counts.notAssessed() + (counts.notAssessed() == 1 ? " check" : " checks") + " not made: "
                + counts.figuresMissing() + (counts.figuresMissing() == 1 ? " answer" : " answers") + " missing"
                + (2 * counts.inBook() <= counts.figuresMissing()
                        ? ""
                        : ", of which the rule book itself lacks " + counts.inBook());
    }

    /**
     * Whether the vehicle is within its ratings as it will be loaded, and by how much it is over or what is least spare;
     * then of a trailer that no loading tows, whether it could be, and of one that nobody knows the mass of, what it passes
     * at its plate.
     */
    public static String loaded(Advice advice) {
        return ofLoadings(advice) + (TrailerRoom.isLeftUntowed(advice) ? " " + untowed(advice) : "") + atPlate(advice);
    }

    /** The same, and which of each open choice it is told with, where these are not listed beside it. */
    public static String loadedAsChosen(Advice advice) {
        List<String> open = advice.sheet().options().stream()
                .filter(option -> option.take().isEmpty())
                .map(option -> option.taken().name() + " (" + option.name() + ")")
                .toList();
        return loaded(advice)
                + (open.isEmpty() ? "" : " Choices still open, told here with: " + Words.few(open, NAMED) + ".");
    }

    /** What the rating that is passed furthest leaves in the loadings that keep it; empty where none does. */
    static String keptElsewhere(Advice advice) {
        Optional<Assessed> worst = Ratings.of(advice).passed().stream().findFirst();
        String kept = worst.stream()
                .flatMap(rating -> Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                        .flatMap(List::stream)
                        .filter(outcome -> outcome.judged().measure().kind()
                                        == rating.judged().measure().kind()
                                && outcome.judged()
                                        .subject()
                                        .equals(rating.judged().subject())
                                && outcome.comparison()
                                        .filter(comparison -> comparison.margin() >= 0)
                                        .isPresent()))
                .collect(Collectors.toMap(
                        outcome -> outcome.judged().loadCase(),
                        outcome -> outcome.judged().loadCase() + " "
                                + (Wording.isNothing(outcome) ? "just at it" : spare(advice, outcome) + " below it")
                                + (outcome.comparison().orElseThrow().uncertain() ? " (" + TooClose.WORDS + ")" : ""),
                        (one, other) -> one,
                        LinkedHashMap::new))
                .values()
                .stream()
                .limit(NAMED)
                .collect(Collectors.joining(", "));
        return kept.isEmpty() ? "" : " " + Words.capital(name(worst.orElseThrow())) + ": " + kept + ".";
    }

    private static String atPlate(Advice advice) {
        List<AtPlate> passed = TrailerRoom.atPlate(advice);
        if (passed.isEmpty()) {
            return "";
        }
        Trailer trailer = passed.get(0).trailer();
        String about = Guesses.of(advice.sheet()).isEmpty() ? "" : "about ";
        return " What " + trailer.name() + " weighs is not known; at its plate, the most it may weigh ("
                + kilograms(trailer.rated().value()) + "), it would be over: "
                + passed.stream()
                        .map(limit -> limit.limit() + " by " + about + kilograms(limit.by()))
                        .collect(Collectors.joining(", "))
                + " (" + passed.get(0).loading() + ").";
    }

    private static String untowed(Advice advice) {
        TrailerRoom room = TrailerRoom.of(advice).orElseThrow();
        String none = "No loading tows " + room.trailer().name();
        return room.tooHeavyBy()
                .map(over -> none + "; at " + kilograms(room.trailer().mass().value()) + " it is " + kilograms(over)
                        + " too heavy (" + room.governs() + ").")
                .orElse(none + ", so what it does to the vehicle is not checked.");
    }

    /** By how much the trailer as planned is over what the two may weigh, or over a limit of its own; empty where it is not. */
    static String overWithTrailer(Advice advice) {
        List<Assessed> passed = Ratings.of(advice).passed().stream()
                .filter(rating -> rating.judged().measure().kind() == LoadMeasures.COMBINED
                        || Book.topic(rating.judged().id()).equals(TOWING))
                .toList();
        Map<Boolean, List<Assessed>> byCloseness = byCloseness(passed);
        List<Assessed> sure = byCloseness.get(false);
        List<Assessed> close = byCloseness.get(true);
        return (sure.isEmpty() ? "" : " With the trailer as planned it is over: " + over(advice, sure) + ".")
                + (close.isEmpty()
                        ? ""
                        : " Too close to call with the trailer as planned: " + within(advice, close) + ".");
    }

    private static String kilograms(double mass) {
        return Wording.quantity(mass, RoomMeasures.TRAILER);
    }

    private static String ofLoadings(Advice advice) {
        Ratings ratings = Ratings.of(advice);
        List<Assessed> over = byCloseness(ratings.passed()).get(false);
        List<Assessed> close = ratings.close();
        if (!over.isEmpty()) {
            return "Loaded as planned it is over its ratings: " + over(advice, over) + "."
                    + (close.isEmpty() ? "" : " Too close to call: " + within(advice, close) + ".");
        }
        if (close.stream().anyMatch(rating -> rating.comparison().orElseThrow().tooClose())) {
            return "Loaded as planned it is too close to call whether it is within its ratings: "
                    + within(advice, close) + ". Settle it before you go ahead." + untilApproved(advice);
        }
        if (ratings.open() == 0 && ratings.assessed().isEmpty()) {
            return "No rating was checked, so it is not known whether it is within its ratings loaded as planned.";
        }
        if (ratings.open() > 0) {
            return "Not known whether it is within its ratings loaded as planned: " + ratings.open() + " of "
                    + (ratings.open() + ratings.assessed().size()) + " not checked, information missing."
                    + untilApproved(advice);
        }
        boolean guessed = ratings.assessed().stream().anyMatch(rating -> advice.isGuessed(rating));
        return "Loaded as planned it is within its ratings"
                + (advice.loadings().size() == 1 ? "" : " in every loading") + raised(advice)
                + (guessed ? ", if the guesses hold" : "")
                + ratings.least()
                        .map(least -> "; "
                                + (Wording.isNothing(least)
                                        ? Wording.NOTHING + give(least) + ": " + name(least)
                                        : "least spare: " + name(least) + " " + spare(advice, least))
                                + in(least))
                        .orElse("")
                + (close.isEmpty()
                        ? ""
                        : "; too close to call: "
                                + close.stream().map(Verdict::name).collect(Collectors.joining(", ")))
                + "." + untilThen(advice);
    }

    /** Ratings that a part raises hold once somebody has approved it. */
    private static String raised(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " once " + until.part() + " is approved")
                .orElse("");
    }

    /** How the plan stands against the maker's ratings until then; empty where no part raises them. */
    private static String untilApproved(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " Until " + until.part() + " is approved " + stands(until) + ".")
                .orElse("");
    }

    /** The same behind what holds then. */
    private static String untilThen(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " Until then " + stands(until) + ".")
                .orElse("");
    }

    private static String stands(UntilApproved until) {
        List<String> parts = new ArrayList<>();
        if (!until.over().isEmpty()) {
            parts.add("over: " + byLoading(until.over(), left -> left.limit() + " by " + over(left)));
        }
        if (!until.close().isEmpty()) {
            parts.add(TooClose.WORDS + ": " + byLoading(until.close(), Verdict::within));
        }
        if (!until.unknown().isEmpty()) {
            parts.add("not known: " + String.join(", ", until.unknown()));
        }
        return parts.isEmpty()
                ? "within its ratings too"
                        + until.least()
                                .map(least -> ", least spare: "
                                        + byLoading(
                                                List.of(least),
                                                left -> left.limit() + " "
                                                        + Wording.margin(
                                                                left.compared().margin(), LoadMeasures.LOADED)))
                                .orElse("")
                : String.join("; ", parts);
    }

    private static String over(Left left) {
        return Wording.over(left.compared().margin(), left.compared().tolerance(), LoadMeasures.LOADED);
    }

    private static String within(Left left) {
        double margin = left.compared().margin();
        return left.limit() + " "
                + (Wording.isNothing(margin, LoadMeasures.LOADED)
                        ? Wording.NOTHING
                        : margin < 0 ? "over by " + over(left) : Wording.margin(margin, LoadMeasures.LOADED) + " spare")
                + " +/- " + kilograms(left.compared().tolerance());
    }

    /** Those of one loading together. */
    private static String byLoading(List<Left> all, Function<Left, String> words) {
        Map<String, List<String>> byLoading = new LinkedHashMap<>();
        all.forEach(left -> byLoading
                .computeIfAbsent(left.loading(), none -> new ArrayList<>())
                .add(words.apply(left)));
        return byLoading.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + " (" + entry.getKey() + ")")
                .collect(Collectors.joining(", "));
    }

    /** The ratings that are passed, those of one loading together. */
    private static String over(Advice advice, List<Assessed> passed) {
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
    private static Map<Boolean, List<Assessed>> byCloseness(List<Assessed> passed) {
        return passed.stream()
                .collect(Collectors.partitioningBy(
                        rating -> rating.comparison().orElseThrow().tooClose()));
    }

    /** The same of what is passed, or kept, by less than can be known, each with how far it may be off. */
    private static String within(Advice advice, List<Assessed> close) {
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
    static String in(Outcome rating) {
        String loading = rating.judged().loadCase();
        return loading.isEmpty() ? "" : " (" + loading + ")";
    }

    private static String amount(Advice advice, Assessed rating) {
        return Wording.atLeast(rating.judged().measure())
                + (advice.isGuessed(rating) ? "about " : "")
                + Wording.amount(rating.judged(), rating.comparison().orElseThrow());
    }

    /** How far it may be off; empty where it is exact. */
    private static String give(Assessed rating) {
        double tolerance = rating.comparison().orElseThrow().tolerance();
        MeasureKind kind = rating.judged().measure().kind();
        return kind.printed(tolerance) > 0 ? " +/- " + Wording.quantity(tolerance, kind) : "";
    }

    private static String spare(Advice advice, Assessed rating) {
        return (advice.isGuessed(rating) ? "about " : "")
                + Wording.amount(rating.judged(), rating.comparison().orElseThrow());
    }

    /** What a rating is called in a sentence. */
    static String name(Outcome rating) {
        String subject = rating.judged().subject();
        String limit = rating.judged().measure().kind().limitMeaning();
        return subject.startsWith("vehicle") || subject.equals("roof")
                ? limit
                : limit.equals("axle limit") ? subject + " limit" : subject + " (" + limit + ")";
    }
}
