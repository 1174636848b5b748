package fitworthy.advice;

import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.MadeSheet;
import fitworthy.SheetFields;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.DoesNotApply;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Met;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.advice.Outcome.Reason;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.Measure;
import fitworthy.proof.Cases;
import fitworthy.schema.FieldSchema;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/**
 * Taking information away never makes a plan look better. A field is left out of a sheet: what was found is found still
 * or not assessed, what was not assessed is not met for that and does not vanish, and what was met does not vanish
 * either. A build leaves out one in {@code less.every} of all fields of the shipped sheets and the cases; those that a
 * case shares with the plain sheet are tried less often. {@code mvn test -Dtest=LessInformationTest -Dless.every=1}
 * leaves out each of them once, which takes some minutes.
 */
class LessInformationTest {

    private static final int EVERY = Integer.getInteger("less.every", 60);
    /** How many times less often a field is tried that a case shares with the plain sheet. */
    private static final int SHARED = EVERY == 1 ? 1 : 10;

    private static final String INSULATION = "circuits\\.[0-9]+\\.cable\\.insulation";

    /** The only fields and groups that may be left out without a question; by why that is no gain. */
    private static final Map<String, List<String>> STOOD_FOR = Map.of(
            "another figure of the sheet or a published one is used, and held against the same limits",
            List.of(
                    "fitments.diameter",
                    "fitments.efficiency",
                    "circuits.cable.rating",
                    "cases.filled",
                    "cases.filled.Can",
                    "assumed-place"),
            "it is counted anywhere that it can be, as tolerance",
            List.of("fitments.behind-cut"),
            "the maker's own rating holds, as if the kit did not change it",
            List.of(
                    "fitments.gvm",
                    "fitments.gcm",
                    "fitments.front-axle",
                    "fitments.rear-axle",
                    "fitments.towing",
                    "vehicle.ratings",
                    "vehicle.ratings.towing-stated"),
            "plates give one or the other, and one of them is asked for",
            List.of(
                    "fitments.plate",
                    "fitments.plate.d",
                    "fitments.plate.dc",
                    "fitments.plate.v",
                    "fitments.plate.trailer",
                    "trailer.coupling",
                    "trailer.coupling.d",
                    "trailer.coupling.trailer"),
            "what it speaks of is not there: no trailer, no day to be ready by, no weighing, no choice made",
            List.of(
                    "trailer",
                    "trailer.tyres",
                    "trip",
                    "trip.days",
                    "trip.people",
                    "ready-by",
                    "fitments.work",
                    "fitments.work.days",
                    "fitments.work.booked",
                    "cases.towing",
                    "cases.weighed",
                    "options.take",
                    "circuits.part",
                    "fitments.in",
                    "fitments.removes",
                    "tanks.removes",
                    "fitments.space",
                    "fitments.fixing",
                    "vehicle.rails",
                    "vehicle.low-points",
                    "cargo.lashing",
                    "cargo.tied",
                    "cargo.footing"),
            "what is out of the ordinary says so",
            List.of(
                    "fitments.done",
                    "fitments.dust-sealed",
                    "fitments.over-outlet",
                    "fitments.metals",
                    "fitments.mounts-give",
                    "circuits.cable.through-metal",
                    "circuits.cable.exhaust-gap",
                    "fitments.levelling",
                    "fitments.removable",
                    "fitments.dampers",
                    "fitments.carries",
                    "fitments.carries-off-road",
                    "trip.roof-sleepers",
                    "vehicle.ratings.roof-off-road",
                    "vehicle.ratings.cog-height",
                    "tanks.portable",
                    "vehicle.brake-controller",
                    "vehicle.ratings.levelling",
                    "vehicle.view.mirrors.stow",
                    "vehicle.wheels",
                    "vehicle.wheels.dual-rear"));

    /** The current of a circuit stands for that of its part, and what only joins batteries says so. */
    private static final String OF_PART = "fitments\\.[0-9]+\\.(input|output|isolator|current|power|short-circuit)";
    /** What is drawn standing counts on the second battery where it is given. */
    private static final String STANDING = "circuits\\.[0-9]+\\.standby";

    /** What may vanish all the same, as a rule and the fields without which it may. */
    private static final Map<String, String> ALL_THE_SAME = Map.ofEntries(
            // A trailer that says nothing of its hitch is on a ball, and the rules of the ball take their place.
            entry("towing.pin-over", "trailer\\.hitch"),
            entry("towing.pin-light", "trailer\\.hitch"),
            entry("towing.pin-light-emptied", "trailer\\.hitch"),
            entry("towing.pin-heavy", "trailer\\.hitch"),
            entry("towing.pin-behind", "trailer\\.hitch"),
            // The stricter of two rules takes its place: the fan itself is judged where the maker allows no depth.
            entry("intake.fan-within-maker", "vehicle\\.intake\\.wading"),
            // Many a plate states no GTM: a check of its own then has what the axles may carry confirmed.
            entry("towing.axles-over", "trailer\\.gtm"),
            entry("towing.levelled-over", "trailer\\.gtm"),
            // What the papers say of the brakes is asked where too little of these is left.
            entry("tyres.kit-brakes", "fitments\\.[0-9]+\\.brakes"),
            // Only what is high is asked whether it is on the roof, or every short sheet would be of all that it
            // carries. What is said to be on the roof stays there without its height.
            entry("mass.roof-over", "(fitments|tanks|cargo)\\.[0-9]+\\.at\\.z"),
            entry("mass.roof-unsure", "(fitments|tanks|cargo)\\.[0-9]+\\.at\\.z"),
            entry("body.roof-load-unsecured", "cargo\\.[0-9]+\\.(at\\.z|secured)"),
            entry("body.fixing-unstated", "(fitments|tanks)\\.[0-9]+\\.(at\\.z|fixing-stated)"),
            entry("across.too-high", "(fitments|tanks|cargo)\\.[0-9]+\\.at\\.z"),
            // The other of two rules takes its place: an overhang of which nobody knows that it is no longer than as
            // made is
            // held against its share as any, and asked for where it is not known.
            entry(
                    "body.overhang-kept",
                    "vehicle\\.size\\.(wheelbase|rear-overhang)"
                            + "|fitments\\.[0-9]+\\.(front|length|wheelbase-added|rear-overhang)"),
            // A winch of which nobody says where it is sits at the front.
            entry("recovery.point-weak", "fitments\\.[0-9]+\\.at"),
            // Of a body no wider than the cab nobody asks how far the mirrors stand out.
            entry(
                    "mirrors.load-hides",
                    "(vehicle\\.view|fitments\\.[0-9]+)\\.mirrors.*|fitments\\.[0-9]+\\.(left|right).*|vehicle\\.view"),
            // Where it may lie in one space with people it counts among what lies loose, and the barrier is asked.
            // Of what is light nobody is asked whether it is held; that it is not is said. What is said to be in
            // nothing and
            // has its place in a canopy is taken to be in that, not on a rack on top of it.
            entry(
                    "body.load-unsecured",
                    "vehicle\\.(cargo-barrier|tub)|fitments\\.[0-9]+\\.front|cargo\\.[0-9]+\\.(secured|in)"),
            // One whose brakes need no controller mostly has no battery, and is not asked.
            entry("towing.battery-feed-unfused", "trailer\\.battery-feed"),
            entry("mass.behind-axle", "fitments\\.[0-9]+\\.at"),
            // What was on the vehicle when it was weighed is in its kerb mass, wherever it stands.
            entry("across.bar-wrong-twice", "fitments\\.[0-9]+\\.at"),
            entry("suspension.front-springs-left", "fitments\\.[0-9]+\\.at"),
            // What the list comes to counts then, and has nothing to disagree with.
            entry("towing.list-disagrees", "trailer\\.ball"),
            // A charger of which nothing is told starts with the ignition, unless the alternator is known to fall.
            entry("electrical.charge-falls", "fitments\\.[0-9]+\\.(isolator|starts-by)"),
            // Only what is known to be of mains voltage is mains wiring, and asked for its inverter.
            entry("electrical.mains-unlicensed", "circuits\\.[0-9]+\\.voltage"),
            entry("electrical.mains-unguarded", "circuits\\.[0-9]+\\.voltage"),
            entry("electrical.inverter-weak", "circuits\\.[0-9]+\\.voltage"),
            // Only the feed of a charger is asked what keeps it from the edges of metal.
            entry("electrical.edge-bare", "circuits\\.[0-9]+\\.part"),
            // Another figure that the same check lacks is asked for first.
            entry("across.left-in-air", "(fitments|cargo)\\.[0-9]+\\.(at(\\.z)?|place)"),
            entry("electrical.cable-over-rating", INSULATION + "|" + OF_PART),
            entry("electrical.fuse-below-load", OF_PART),
            entry("electrical.drop-critical", OF_PART),
            entry("electrical.drop-other", OF_PART),
            entry("electrical.way-drop", OF_PART),
            entry("electrical.lead-too-deep", STANDING),
            entry("electrical.lithium-too-deep", STANDING),
            entry("electrical.charge-short", STANDING),
            // A board takes what its loads take where nothing is said of itself.
            entry("electrical.starter-drained", "circuits\\.[0-9]+\\.hours"),
            // What is not given cannot be unusual; what needs it asks for it.
            entry("across.unusual", ".*"),
            // No cable is made for less heat than the table begins with, which is what counts then.
            entry("electrical.cable-thin", INSULATION + "|" + OF_PART),
            // Without its load, or with better insulation, a smaller fuse may do, and the rules of too large a one take
            // its place.
            entry(
                    "electrical.no-fuse-suits",
                    INSULATION + "|" + OF_PART + "|circuits\\.[0-9]+\\.(current|part|wiring)"),
            entry("electrical.fuse-above-cable", INSULATION),
            entry("electrical.fuse-far-above-cable", INSULATION),
            // The shorter way of a fuse in the open is asked of it then.
            entry("electrical.fuse-far-enclosed", "circuits\\.[0-9]+\\.(far-)?fuse(\\.enclosed)?"));

    /** A sheet to leave fields out of, with the book that it is held against. */
    private record Whole(String name, Node.Mapping tree, RuleEngine engine) {

        Map<Outcome.Key, Outcome> outcomes() throws FaultsException {
            return outcomesOf(tree);
        }

        private Map<Outcome.Key, Outcome> outcomesOf(Node.Mapping sheet) throws FaultsException {
            Advice advice = Adviser.advise(engine, Sheets.read(sheet));
            Map<Outcome.Key, Outcome> outcomes = new HashMap<>();
            Stream.of(advice.findings(), advice.met(), advice.notAssessed(), advice.doesNotApply())
                    .flatMap(Collection::stream)
                    .forEach(outcome -> outcomes.put(outcome.key(), outcome));
            return outcomes;
        }

        /** The same without a field, or with a figure asked that is needed; nothing where the sheet is refused then. */
        Optional<Map<Outcome.Key, Outcome>> without(NodePath field) {
            try {
                return Optional.of(outcomesOf(
                        isNeededFigure(field) ? Trees.with(tree, field, "ask") : Trees.without(tree, field)));
            } catch (FaultsException e) {
                return Optional.empty();
            }
        }

        private boolean isNeededFigure(NodePath path) {
            FieldSchema field = SheetFields.all().get(SheetFields.of(tree, path));
            return field != null
                    && field.content() == FieldSchema.Content.FIGURE
                    && field.description().needed();
        }
    }

    @Test
    void noFieldLeftOutMakesAPlanLookBetter() throws FaultsException {
        Set<String> shared = new HashSet<>();
        Node.Mapping plain = NodeReader.read(Books.RULES.resolve("plain-sheet.yaml"), new ArrayList<>());
        fields(plain, NodePath.TOP).forEach(field -> shared.add(field.toString()));
        List<String> better = new ArrayList<>();
        for (Whole whole : wholes()) {
            boolean ofCase = whole.name().contains(": ");
            List<NodePath> picked = fields(whole.tree(), NodePath.TOP).stream()
                    .filter(field -> {
                        int every = EVERY * (ofCase && shared.contains(field.toString()) ? SHARED : 1);
                        return Math.floorMod((whole.name() + field).hashCode(), every) == 0;
                    })
                    .filter(field -> !stoodFor(field))
                    .toList();
            if (!picked.isEmpty()) {
                better.addAll(better(whole, picked));
            }
        }
        assertEquals(List.of(), better, () -> String.join("\n", better));
    }

    @Provide
    Arbitrary<MadeSheet> sheets() {
        return MadeSheet.any();
    }

    @Property(seed = "4711")
    void norOfAMadeSheet(@ForAll("sheets") MadeSheet sheet, @ForAll("picks") int pick) throws FaultsException {
        Whole whole = new Whole(sheet.toString(), sheet.tree(), Books.engine());
        List<NodePath> fields = fields(sheet.tree(), NodePath.TOP).stream()
                .filter(field -> !stoodFor(field))
                .toList();
        List<String> better = better(whole, List.of(fields.get(pick % fields.size())));
        assertEquals(List.of(), better, () -> String.join("\n", better));
    }

    @Provide
    Arbitrary<Integer> picks() {
        return net.jqwik.api.Arbitraries.integers().between(0, 9999);
    }

    private static List<Whole> wholes() throws FaultsException {
        List<Whole> wholes = new ArrayList<>();
        for (String file : List.of(
                "scenarios/touring.yaml",
                "scenarios/weekender.yaml",
                "scenarios/overloaded.yaml",
                "rules/plain-sheet.yaml")) {
            wholes.add(new Whole(file, Sheets.file(file), Books.engine()));
        }
        for (Cases.Case each : Books.cases()) {
            wholes.add(new Whole(each.toString(), each.tree(), Books.engine().with(each.house())));
        }
        return wholes;
    }

    /** Every field of a tree that holds a value or a group, and not a list. */
    private static List<NodePath> fields(Node node, NodePath path) {
        List<NodePath> fields = new ArrayList<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, entry) -> {
                if (!(entry.value() instanceof Node.Listing)) {
                    fields.add(path.to(name));
                }
                fields.addAll(fields(entry.value(), path.to(name)));
            });
        } else if (node instanceof Node.Listing listing) {
            for (int i = 1; i <= listing.items().size(); i++) {
                fields.addAll(fields(listing.items().get(i - 1), path.to(i)));
            }
        }
        return fields;
    }

    /** Whether something stands for a field that is left out. */
    private static boolean stoodFor(NodePath field) {
        return STOOD_FOR.values().stream().flatMap(List::stream).anyMatch(each -> field.toString()
                .replaceAll("\\.[0-9]+(?=\\.|$)", "")
                .equals(each));
    }

    /** What looks better for want of one of these fields. */
    private static List<String> better(Whole whole, List<NodePath> fields) throws FaultsException {
        Map<Outcome.Key, Outcome> before = whole.outcomes();
        List<String> better = new ArrayList<>();
        for (NodePath field : fields) {
            whole.without(field)
                    .ifPresent(after -> before.forEach((key, outcome) -> {
                        if (looksBetter(outcome, after, field.byNames(whole.tree()))
                                && !field.toString().matches(ALL_THE_SAME.getOrDefault(key.rule(), ""))) {
                            better.add(whole.name() + " without " + field + ": " + key + " was "
                                    + outcome.getClass().getSimpleName() + " and is " + after.get(key));
                        }
                    }));
        }
        return better;
    }

    private static boolean looksBetter(Outcome before, Map<Outcome.Key, Outcome> after, String field) {
        Outcome now = after.get(before.key());
        boolean worseSaid = now instanceof DoesNotApply off && off.reason() == Reason.SAID_ALREADY;
        if (before instanceof DoesNotApply || now instanceof Finding || now instanceof NotAssessed || worseSaid) {
            return false;
        }
        return now instanceof Met
                ? !(before instanceof Met) && after.values().stream().noneMatch(other -> foundUnsure(before, other))
                : after.values().stream().noneMatch(other -> takesItsPlace(before, other, field));
    }

    /**
     * Whether the same rule found something else, or is not assessed for want of this very field: where it is not known
     * what a thing is, it goes by another name.
     */
    private static boolean takesItsPlace(Outcome before, Outcome other, String field) {
        return other.key().rule().equals(before.key().rule())
                && other.key().loadCase().equals(before.key().loadCase())
                && (other instanceof Finding && before instanceof Met
                        || other instanceof NotAssessed open
                                && open.missing().stream()
                                        .anyMatch(missing -> (missing.path() + ".").startsWith(field + ".")));
    }

    /** Whether another rule found the same measure, which is known less exactly now. */
    private static boolean foundUnsure(Outcome before, Outcome other) {
        Measure measure = before.judged().measure();
        Measure found = other.judged().measure();
        return other instanceof Finding
                && found.getName().equals(measure.getName())
                && found.getSubject().equals(measure.getSubject())
                && found.getLoadCase().equals(measure.getLoadCase());
    }
}
