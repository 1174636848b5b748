package fitworthy.printout.letter;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.book.Basis;
import fitworthy.book.DatedLimit;
import fitworthy.book.Party;
import fitworthy.book.Practice;
import fitworthy.printout.words.Addressee;
import fitworthy.printout.words.Addressees;
import fitworthy.printout.words.Asked;
import fitworthy.printout.words.Asked.Point;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.GuessWords.Doubt;
import fitworthy.printout.words.TooClose;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a letter asks or tells, point by point. */
final class LetterItems {

    /** Who does not look at what the trade compares. */
    private static final Set<Party> NO_FIGURES =
            Set.of(Party.CUSTOMER, Party.INSURER, Party.POLICE, Party.WEIGHBRIDGE, Party.ROUTE);

    /** What nobody but the customer can weigh. */
    private static final Pattern OWN = Pattern.compile("(?:cargo|occupants)\\..*\\.mass|trailer\\.(?:mass|ball)");

    /** How the sheet speaks of a maker, who is asked here. */
    private static final Pattern YOURS = Pattern.compile("its maker (states|has)\\b");

    /** How the meaning of what is not a figure begins. */
    private static final Pattern WHETHER = Pattern.compile("^whether\\b");

    private static final Pattern MASS = Pattern.compile(".*\\.mass");

    private final Advice advice;
    private final Sheet sheet;
    private final Addressees addressees;
    private final Arrangement arrangement;

    LetterItems(Advice advice) {
        this.advice = advice;
        this.sheet = advice.sheet().planned();
        this.addressees = new Addressees(sheet, advice.book().tables().shopWords());
        this.arrangement = Arrangement.of(advice);
    }

    /** What is asked, each once with all that it is about; then what is missing, and what is still to be chosen. */
    List<String> of(Asked one) {
        Party party = one.whom().party();
        Map<List<String>, List<Point>> alike = new LinkedHashMap<>();
        one.points().forEach(point -> alike.computeIfAbsent(
                        tellsRemedy(party, point)
                                ? List.of(point.finding().id(), point.what(), point.remedy())
                                : List.of(point.what()),
                        none -> new ArrayList<>())
                .add(point));
        return Stream.of(
                        alike.values().stream().map(points -> item(party, points)),
                        unruled(one),
                        lacking(one),
                        guessed(one.whom()),
                        party == Party.CUSTOMER
                                ? sheet.options().stream().map(LetterItems::item)
                                : Stream.<String>empty())
                .flatMap(some -> some)
                .distinct()
                .toList();
    }

    /** What the rule book does not hold for here, of the same parts at once. */
    private static Stream<String> unruled(Asked one) {
        Map<List<String>, List<String>> asked = new LinkedHashMap<>();
        one.unruled().forEach((value, parts) -> asked.computeIfAbsent(
                        parts.stream().distinct().toList(), none -> new ArrayList<>())
                .add(Words.small(FieldWords.what(value))));
        return asked.entrySet().stream()
                .map(about -> "What holds here for " + String.join(", ", about.getKey()) + ": "
                        + String.join("; ", about.getValue())
                        + ". Our rule book does not say it for this place: please name the text and the clause too.");
    }

    /** What the sheet lacks, the same of several things once. */
    private static Stream<String> lacking(Asked one) {
        Map<String, List<String>> things = new LinkedHashMap<>();
        one.missing().forEach(lacking -> things.computeIfAbsent(lacking.meaning(), none -> new ArrayList<>())
                .add(lacking.thing()));
        return things.entrySet().stream()
                .map(asked -> Asked.Lacking.what(asked.getValue(), asked.getKey()))
                .map(what -> one.whom().party() == Party.PART_MAKER
                        ? YOURS.matcher(what).replaceAll(it -> it.group(1).equals("has") ? "you have" : "you state")
                        : what)
                .map(LetterItems::end);
    }

    /** What was guessed of what the customer brings along, and what is guessed most of what decides a stop. */
    private Stream<String> guessed(Addressee whom) {
        List<Doubt> doubts = GuessWords.weightiestOfStops(arrangement);
        Stream<String> own = Guesses.values(sheet).entrySet().stream()
                .filter(guess -> whom.party() == Party.CUSTOMER
                        && OWN.matcher(guess.getKey().path()).matches())
                .map(guess -> own(guess.getKey(), guess.getValue(), doubts));
        return Stream.concat(
                own,
                doubts.stream()
                        .filter(doubt -> !OWN.matcher(doubt.guess().path()).matches()
                                && whom.equals(addressees.finds(doubt.guess())))
                        .map(doubt -> weighed(whom, doubt, doubts)));
    }

    /** A mass that others know, with what was put in for it. */
    private String weighed(Addressee whom, Doubt doubt, List<Doubt> doubts) {
        return whom.party() != Party.BUILDER
                        && MASS.matcher(doubt.guess().path()).matches()
                ? own(doubt.guess(), Guesses.values(sheet).get(doubt.guess()), doubts)
                : end(doubt.words());
    }

    private static String own(Missing guess, Figure mass, List<Doubt> doubts) {
        return FieldWords.of(guess) + ". We have put in "
                + (guess.mark() == Mark.USUAL ? "what is usual, " : "about ")
                + Digits.number(mass.value(), "kg", 0) + " kg"
                + doubts.stream()
                        .filter(doubt -> doubt.guess().equals(guess))
                        .map(doubt -> "; " + doubt.share())
                        .collect(Collectors.joining())
                + ".";
    }

    private static String item(Sheet.Option option) {
        return option.name() + ": which of these you choose: "
                + option.choices().stream().map(Sheet.Alternative::name).collect(Collectors.joining(", "))
                + ". The plan has " + option.taken().name() + ".";
    }

    private static boolean tellsRemedy(Party party, Point point) {
        return party == Party.BUILDER || point.what().isEmpty();
    }

    private String item(Party party, List<Point> points) {
        Point first = points.get(0);
        String found = points.stream()
                .map(point -> point.title() + (NO_FIGURES.contains(party) ? "" : figures(point)))
                .distinct()
                .collect(Collectors.joining("; "));
        if (party == Party.BUILDER) {
            return found + ". " + order(first) + (first.what().isEmpty() ? "" : " Find out: " + end(first.what()));
        }
        return first.what().isEmpty()
                ? "What you advise on this: " + found + ". What we have in mind: " + first.remedy()
                : end(first.what()) + " Why we ask: " + found + "." + secondHand(party, points);
    }

    /** What to do; where guesses decide, to find these out first. */
    private String order(Point point) {
        return arrangement.isDecidedByGuesses(point.finding())
                ? GuessWords.toMeasure(arrangement, point.finding()) + " Then, if it is so: " + point.remedy()
                : TooClose.first(point.finding(), arrangement.isGuessed(point.finding()), point.remedy());
    }

    /** The limits that nobody read in the text itself; who goes by it is asked for its place. */
    private static String secondHand(Party party, List<Point> points) {
        String limits = points.stream()
                .flatMap(point -> point.finding().worst().practice().stream())
                .filter(LetterItems::isSecondHand)
                .map(LetterItems::limit)
                .distinct()
                .collect(Collectors.joining(", "));
        return limits.isEmpty() || !Party.CERTIFYING.contains(party)
                ? ""
                : " We know at second hand alone " + limits
                        + ": please name the text and the clause that holds, and what it says.";
    }

    private static boolean isSecondHand(Practice practice) {
        DatedLimit.Value value = practice.entry();
        return !value.none()
                && (value.basis().is(Basis.PUBLISHED_SECONDHAND)
                        || value.basis().is(Basis.MEMORY));
    }

    /** What it limits and to how much; of what the law asks or does not, that alone. */
    private static String limit(Practice practice) {
        String meaning = Words.small(practice.meaning().split(";", 2)[0]);
        return WHETHER.matcher(meaning).find()
                ? meaning
                : "this limit: " + meaning + " (" + practice.entry().value() + ")";
    }

    private static String end(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    /** What was compared. */
    private static String figures(Point point) {
        return point.finding()
                .worst()
                .comparison()
                .map(compared ->
                        " (" + Wording.comparison(point.finding().worst().judged(), compared) + ")")
                .orElse("");
    }
}
