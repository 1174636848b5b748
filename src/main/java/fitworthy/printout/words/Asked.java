package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Unruled;
import fitworthy.advice.MissingFigure;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Question;
import fitworthy.book.Ask;
import fitworthy.book.Buying.Settled;
import fitworthy.book.Party;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Fitment;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that is asked of one addressee. What somebody stands for is asked no more.
 *
 * @param whom who is asked
 * @param points what findings ask, the worst first
 * @param missing figures of the sheet that are missing and that it finds
 * @param unruled what the rule book does not hold for the place of the sheet, with the parts that wait for it
 */
public record Asked(Addressee whom, List<Point> points, List<Lacking> missing, Map<Missing, List<String>> unruled) {

    private static final String ARTICLES = "(?:the|a|an|this) ";
    private static final String VEHICLE = "Vehicle";
    private static final Pattern ARTICLE = Pattern.compile("^" + ARTICLES);
    /** Two things to bring, each with its article; of what has a comma nobody knows what belongs together. */
    private static final Pattern TWO = Pattern.compile("(" + ARTICLES + "[^,]*) and (" + ARTICLES + "[^,]*)");

    /** Speaks of a thing that it does not name, or begins with a direction and names none. */
    private static final Pattern NAMELESS = Pattern.compile("\\bits?\\b|^(?:backwards|from|to|up) ");

    /** What one finding asks. */
    public record Point(Group<Finding> finding, Ask ask) {

        /** What was found. */
        public String title() {
            return (finding.isTooClose() ? Words.capital(TooClose.WHETHER) + ": " : "")
                    + Wording.fill(finding.card().title(), finding.worst());
        }

        /** What is asked; empty where it is what the remedy says. */
        public String what() {
            return Wording.fill(ask.what(), finding.worst());
        }

        /** What is to be done. */
        public String remedy() {
            return Wording.remedy(finding.worst());
        }

        private Stream<String> bring() {
            String things = Wording.part(ask.bring(), finding.worst());
            Matcher two = TWO.matcher(things);
            return two.matches()
                    ? Stream.of(two.group(1), two.group(2))
                    : Stream.of(things).filter(thing -> !thing.isEmpty());
        }
    }

    /**
     * What the sheet lacks: a field, or several of the lengths that say where one thing sits.
     *
     * @param of the part, tank or circuit that lacks it; empty where it is none of these
     */
    public record Lacking(String of, List<Missing> fields) {

        /** What it is, in words that can stand behind the thing. */
        public String meaning() {
            return FieldWords.place(fields.get(0).path())
                            .map(place -> "where it sits, ")
                            .orElse("")
                    + fields.stream()
                            .map(field -> field.meaning().split(";", 2)[0])
                            .collect(Collectors.joining(", "));
        }

        /** What lacks it; empty where nobody would take it for anything else's. */
        public String thing() {
            String owner = owner(fields.get(0).path());
            return of.isEmpty()
                    ? owner.equals(VEHICLE) && !NAMELESS.matcher(meaning()).find() ? "" : owner
                    : owner.contains(of) ? owner : of;
        }

        /** The answer to "please tell us". */
        public String what() {
            return what(List.of(thing()), meaning());
        }

        /** The same of several things that lack the same. */
        public static String what(List<String> things, String meaning) {
            String of = String.join(", ", things);
            return of.isEmpty() ? Words.capital(meaning) : (things.size() > 1 ? "Each of " : "") + of + ": " + meaning;
        }

        /** Whether a field is another length of the same place. */
        private boolean takes(Missing field) {
            Optional<String> place = FieldWords.place(field.path());
            return place.isPresent()
                    && place.equals(FieldWords.place(fields.get(0).path()));
        }

        /** What has a field of the vehicle or trailer, as in "Left mirror"; of its own figures the whole. */
        private static String owner(String path) {
            String owner = FieldWords.thing(path);
            return owner.isEmpty() ? path.startsWith("vehicle.") ? VEHICLE : "" : Words.capital(owner);
        }
    }

    /**
     * All that advice asks, by whom, and the customer where the sheet leaves a choice open: the parties in their order,
     * makers of parts in that of the sheet.
     */
    public static List<Asked> of(Advice advice) {
        Arrangement arrangement = Arrangement.of(advice);
        Addressees addressees =
                new Addressees(advice.sheet().planned(), advice.book().tables().shopWords());
        Map<Addressee, Asked> all = new LinkedHashMap<>();
        arrangement.standing().forEach(finding -> finding.card().ask().stream()
                .distinct()
                .forEach(ask ->
                        of(addressees.asked(ask, finding.worst()), all).points.add(new Point(finding, ask))));
        for (MissingFigure figure : arrangement.figuresToBring()) {
            Party finder = Question.missing(figure).ask();
            figure.fields().forEach(missing -> {
                String thing = addressees.thing(missing);
                of(finder == Party.PART_MAKER ? addressees.maker(thing) : new Addressee(finder, ""), all)
                        .lacks(thing, missing);
            });
        }
        BuyList.of(arrangement).parts().forEach(part -> part.reasons().stream()
                .filter(Unruled.class::isInstance)
                .map(Unruled.class::cast)
                .forEach(reason -> reason.values().forEach(value -> of(new Addressee(reason.whom(), ""), all)
                        .unruled
                        .computeIfAbsent(value, none -> new ArrayList<>())
                        .add(part.name()))));
        GuessWords.weightiestOfStops(arrangement).forEach(doubt -> of(addressees.finds(doubt.guess()), all));
        if (!advice.sheet().options().isEmpty()) {
            of(new Addressee(Party.CUSTOMER, ""), all);
        }
        List<String> parts =
                advice.sheet().fitments().stream().map(Fitment::name).toList();
        return all.values().stream()
                .sorted(Comparator.comparing((Asked asked) -> asked.whom.party())
                        .thenComparingInt(asked -> {
                            int place = parts.indexOf(asked.whom.of());
                            return place < 0 ? Integer.MAX_VALUE : place;
                        }))
                .toList();
    }

    private static Asked of(Addressee whom, Map<Addressee, Asked> all) {
        return all.computeIfAbsent(
                whom, none -> new Asked(whom, new ArrayList<>(), new ArrayList<>(), new LinkedHashMap<>()));
    }

    private void lacks(String thing, Missing field) {
        missing.stream()
                .filter(lacking -> lacking.takes(field))
                .findFirst()
                .ifPresentOrElse(
                        lacking -> lacking.fields.add(field),
                        () -> missing.add(new Lacking(thing, new ArrayList<>(List.of(field)))));
    }

    /** Who acts on a finding: whom its card asks first; where load has to stay behind, the customer, who chooses what. */
    public static Party actor(Group<Finding> finding) {
        Party first = finding.card().ask().get(0).party().value();
        return isChoiceOfLoad(finding) ? Party.CUSTOMER : first;
    }

    private static boolean isChoiceOfLoad(Group<Finding> finding) {
        return finding.card().settledBy() == Settled.LESS_LOAD
                && finding.card().ask().get(0).party().is(Party.BUILDER);
    }

    /** The same as a sentence without its end, on page and paper alike. */
    public static String acts(Addressees addressees, Group<Finding> finding) {
        if (isChoiceOfLoad(finding)) {
            return "The customer chooses what stays behind";
        }
        Addressee whom = addressees.asked(finding.card().ask().get(0), finding.worst());
        return switch (whom.party()) {
            case BUILDER -> "The builder does it";
            case CUSTOMER -> "The customer decides";
            default -> "Ask " + whom.words();
        };
    }

    /** What to bring or send, each thing once. */
    public List<String> bring() {
        Map<String, String> things = new LinkedHashMap<>();
        points.stream()
                .flatMap(Point::bring)
                .forEach(thing -> things.putIfAbsent(ARTICLE.matcher(thing).replaceFirst(""), thing));
        return List.copyOf(things.values());
    }
}
