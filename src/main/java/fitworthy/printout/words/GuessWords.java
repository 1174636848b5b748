package fitworthy.printout.words;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.Counts;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.book.Buying.Settled;
import fitworthy.book.Severity;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What rests on guesses, in words. */
public final class GuessWords {

    /** The share of a spread from which on a guess is named by itself. */
    private static final double WORTH_NAMING = 0.1;

    /** How many guesses are named of what rests on many. */
    private static final int NAMED = 4;

    private static final int BRIEFLY = 2;

    /** How many of what is missing are named first. */
    private static final int MISSING = 3;

    static final String USUAL = "the book's usual figure";

    private GuessWords() {}

    /** The guesses that matter most, as an order; of a limit of the vehicle also how else it is settled. */
    public static String toMeasure(Arrangement arrangement, Group<Finding> finding) {
        List<String> fields = fields(arrangement, finding);
        return "Find out what matters most: " + String.join("; ", fields.subList(0, Math.min(BRIEFLY, fields.size())))
                + "."
                + (finding.card().settledBy() == Settled.LESS_LOAD
                        ? " Or weigh it loaded, each axle, on a weighbridge."
                        : "");
    }

    /**
     * In a line, in which loading it is sure where it is not so everywhere, and the guesses that matter most; nothing where
     * it rests on what is stated.
     *
     * @param naming whether to name the guesses
     */
    static Optional<String> brief(Arrangement arrangement, Group<Finding> finding, boolean naming) {
        String guesses = naming && !arrangement.guesses(finding).isEmpty() ? few(arrangement, finding) : "";
        Optional<String> sure = sure(arrangement, finding);
        return sure.isPresent()
                ? sure.map(words -> words + (guesses.isEmpty() ? "." : ": " + guesses))
                : Optional.of(guesses).filter(named -> !named.isEmpty()).map(named -> "Rests on guesses: " + named);
    }

    /** In which loading a finding is sure that is worst where it rests on guesses or is too close to call. */
    public static Optional<String> sure(Arrangement arrangement, Group<Finding> finding) {
        Finding worst = finding.worst();
        return arrangement.sureElsewhere(finding).stream()
                .findFirst()
                .map(sure -> "Sure in " + sure.judged().loadCase()
                        + sure.comparison()
                                .map(compared -> " (" + Wording.margin(sure.judged(), compared) + ")")
                                .orElse("")
                        + "; "
                        + (worst.comparison().isPresent() ? "more in " : "also in ")
                        + worst.judged().loadCase()
                        + (arrangement.advice().isGuessed(worst) ? ", on guesses" : ", " + TooClose.WORDS));
    }

    private static List<String> fields(Arrangement arrangement, Group<Finding> finding) {
        return weightiest(arrangement.guesses(finding), arrangement.shares().of(finding.worst())).stream()
                .map(FieldWords::of)
                .distinct()
                .toList();
    }

    private static String few(Arrangement arrangement, Group<Finding> finding) {
        List<String> fields = fields(arrangement, finding);
        List<String> named = fields.subList(0, Math.min(BRIEFLY, fields.size()));
        return String.join("; ", named) + others(fields.size() - named.size());
    }

    /** Which they are, and what they bring of its spread; empty where it rests on what is stated. */
    public static List<String> of(Arrangement arrangement, Group<Finding> finding) {
        List<Missing> guesses = arrangement.guesses(finding);
        return guesses.isEmpty() ? List.of() : lines(arrangement, guesses, finding.worst());
    }

    /** The same of an outcome in one loading. */
    public static List<String> of(Arrangement arrangement, Assessed outcome) {
        List<Missing> guesses = arrangement.advice().restsOn(outcome);
        return guesses.isEmpty() ? List.of() : lines(arrangement, guesses, outcome);
    }

    private static List<String> lines(Arrangement arrangement, List<Missing> guesses, Assessed outcome) {
        String spread = outcome.comparison()
                .map(comparison -> Wording.spread(outcome.judged(), comparison))
                .orElse("");
        Map<Missing, Double> shares =
                spread.isEmpty() ? Map.of() : arrangement.shares().of(outcome);
        return List.of("Guessed, find out first: " + first(guesses, shares, spread) + ".");
    }

    /** The few guesses that bring most of a spread, or stand first on the sheet, and how many others there are. */
    private static String first(List<Missing> guesses, Map<Missing, Double> shares, String spread) {
        List<Missing> sorted = weightiest(guesses, shares);
        List<String> named = new ArrayList<>();
        for (Missing guess : sorted.subList(0, Math.min(NAMED, sorted.size()))) {
            List<String> beside = new ArrayList<>();
            if (guess.mark() == Mark.USUAL) {
                beside.add(USUAL);
            }
            if (shares.getOrDefault(guess, 0.0) >= WORTH_NAMING) {
                beside.add(percent(shares.get(guess)) + (named.isEmpty() ? " of the " + spread : ""));
            }
            named.add(FieldWords.of(guess) + (beside.isEmpty() ? "" : " (" + String.join(", ", beside) + ")"));
        }
        return String.join(", ", named) + others(sorted.size() - named.size());
    }

    /** Those that bring most of a spread first, then in the order of the sheet. */
    private static List<Missing> weightiest(List<Missing> guesses, Map<Missing, Double> shares) {
        return Stream.concat(
                        shares.keySet().stream().filter(guesses::contains),
                        guesses.stream().filter(guess -> !shares.containsKey(guess)))
                .toList();
    }

    private static String others(int count) {
        return count > 0 ? ", and " + count + (count == 1 ? " other" : " others") : "";
    }

    /** How many guesses of the sheet the advice rests on. */
    public static String restsOn(Arrangement arrangement) {
        long guesses = Stream.concat(
                        arrangement.guessesToReplace().stream().map(MissingFigure::missing),
                        arrangement.findings().stream().flatMap(finding -> arrangement.guesses(finding).stream()))
                .distinct()
                .count();
        return guesses == 0
                ? "No figure is marked as a guess."
                : "The advice rests on " + guesses + (guesses == 1 ? " guess." : " guesses.");
    }

    /** What to find out first: what most waits for, then of each stop the guess that brings most of its spread. */
    public static String findFirst(Arrangement arrangement) {
        List<String> first = Stream.concat(
                        arrangement.figuresToBring().stream()
                                .map(figure -> FieldWords.of(figure.missing()))
                                .distinct()
                                .limit(MISSING),
                        weightiestOfStops(arrangement).stream().map(Doubt::words))
                .toList();
        return first.isEmpty() ? "" : "To find out, what matters most first: " + String.join("; ", first) + ".";
    }

    /** A guess that brings most of the spread of some stops. @param about how much of that of which limit */
    public record Doubt(Missing guess, List<String> about) {

        public String words() {
            return FieldWords.of(guess) + " (guessed; " + share() + ")";
        }

        public String share() {
            return "it brings most of the doubt, " + String.join(", ", about);
        }
    }

    /** Of each stop the guess that brings most of its spread, with how much of that. */
    public static List<Doubt> weightiestOfStops(Arrangement arrangement) {
        Map<String, Doubt> doubts = new LinkedHashMap<>();
        arrangement.told(Severity.STOP).stream().map(Told::head).forEach(stop -> {
            Map<Missing, Double> shares = arrangement.shares().of(stop.worst());
            weightiest(arrangement.guesses(stop), shares).stream()
                    .filter(guess -> shares.getOrDefault(guess, 0.0) >= WORTH_NAMING)
                    .findFirst()
                    .ifPresent(guess -> doubts.computeIfAbsent(
                                    FieldWords.of(guess), none -> new Doubt(guess, new ArrayList<>()))
                            .about()
                            .add(percent(shares.get(guess)) + " of that about the " + limit(stop.worst())));
        });
        return List.copyOf(doubts.values());
    }

    private static String limit(Finding finding) {
        String subject = finding.judged().subject();
        String limit = finding.judged().measure().kind().limitMeaning();
        return subject.startsWith("vehicle") ? limit : limit + " of the " + subject;
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** How many checks are in order only if guesses hold. */
    public static String count(Counts counts) {
        return counts.held() + (counts.held() == 1 ? " check" : " checks") + " in order only if the guesses hold";
    }

    /** How many are beside those that are in order; nothing where none is. */
    public static String beside(Counts counts) {
        return counts.held() == 0 ? "" : ", " + counts.held() + " more only if the guesses hold";
    }

    /** What is so if the guesses hold. */
    public static String words(Held held) {
        String rule = " (" + held.judged().id() + ")";
        return held.arises()
                ? Wording.fill(held.judged().card().met(), held) + rule
                : held.judged().subject() + ": "
                        + held.judged().measure().kind().meaning() + ": nothing to check" + rule;
    }

    /** The guesses in order of the sheet, what somebody guessed before what the book did. */
    public static String names(List<Missing> guesses) {
        String about = names(guesses, Mark.ABOUT);
        String usual = names(guesses, Mark.USUAL);
        return usual.isEmpty() ? about : about + (about.isEmpty() ? "" : "; ") + USUAL + "s: " + usual;
    }

    private static String names(List<Missing> guesses, Mark mark) {
        return guesses.stream()
                .filter(guess -> guess.mark() == mark)
                .map(FieldWords::of)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** What a field is, and that the book filled it in where it did. */
    public static String meaning(Missing guess) {
        return guess.meaning() + (guess.mark() == Mark.USUAL ? ", " + USUAL : "");
    }

    /** The guesses on which a check that is in order rests, in whatever loading. */
    public static String names(Group<Held> group) {
        return names(group.outcomes().stream()
                .flatMap(held -> held.guesses().stream())
                .toList());
    }
}
