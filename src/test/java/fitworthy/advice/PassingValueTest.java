package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.remedy.TyresAt;
import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What a remedy says would just pass does, and a digit less does not: it is put into the sheet as printed, and judged
 * anew.
 */
class PassingValueTest {

    /**
     * A measure that says what would pass, the path of the field that it is said of, and what it makes of that field.
     */
    private record Passing(String measure, BiFunction<Sheet, String, String> path, InSheet inSheet) {
        Passing(String measure, BiFunction<Sheet, String, String> path) {
            this(measure, path, (sheet, subject, value) -> value);
        }
    }

    /** What a sheet says for a value that a remedy gives. */
    private interface InSheet {
        double of(Sheet sheet, String subject, double value);
    }

    private static Passing part(String measure, String field) {
        return new Passing(measure, (sheet, subject) -> "fitments." + subject + "." + field);
    }

    private static Fitment fitment(Sheet sheet, String name) {
        return sheet.fitments().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Passing field(String measure, String path) {
        return new Passing(measure, (sheet, subject) -> path);
    }

    private static Passing planned(String measure, Fitment.Kind kind, String made, String field) {
        return new Passing(
                measure,
                (sheet, subject) -> sheet.planned().fitments().stream()
                                .filter(each -> each.kind() == kind)
                                .findFirst()
                                .map(each -> "fitments." + each.name())
                                .orElse(made)
                        + field);
    }

    /** The planned set that stands farthest towards an axle, else the ones that the vehicle came with. */
    private static Passing tyres(String measure) {
        return new Passing(
                measure,
                (sheet, subject) -> TyresAt.path(sheet, subject) + "."
                        + (subject.equals("rear axle")
                                        && sheet.vehicle().wheels().dualRear().is(YesNo.YES)
                                ? "dual-load-index"
                                : "load-index"));
    }

    private static Passing springs(String measure) {
        return new Passing(
                measure,
                (sheet, subject) -> "fitments."
                        + sheet.planned().fitments().stream()
                                .filter(each -> each.details() instanceof SuspensionDetails.Springs springs
                                        && subject.startsWith(springs.end().is(VehicleEnd.FRONT) ? "front" : "rear"))
                                .findFirst()
                                .orElseThrow()
                                .name()
                        + ".rate");
    }

    private static final Passing CAPACITY =
            planned("electrical.capacity-needed", Fitment.Kind.BATTERY, "", ".capacity");
    private static final Map<String, Passing> PASSING = Map.ofEntries(
            Map.entry(
                    "electrical.drop-critical",
                    new Passing(
                            "electrical.section-needed", (sheet, subject) -> "circuits." + subject + ".cable.section")),
            Map.entry(
                    "electrical.drop-other",
                    new Passing(
                            "electrical.section-needed", (sheet, subject) -> "circuits." + subject + ".cable.section")),
            Map.entry("electrical.alternator-over", field("electrical.alternator-needed", "vehicle.engine.alternator")),
            Map.entry("electrical.lead-too-deep", CAPACITY),
            Map.entry("electrical.lithium-too-deep", CAPACITY),
            Map.entry("across.bar-wrong-twice", part("across.bar-heaviest", "mass")),
            // The passenger's side is the left where the eye is right of the centre line.
            Map.entry(
                    "radio.in-sight",
                    new Passing(
                            "radio.aside",
                            part("", "at.y").path(),
                            (sheet, subject, aside) -> fitment(sheet, subject)
                                            .at()
                                            .orElseThrow()
                                            .y()
                                            .value()
                                    - Math.signum(sheet.vehicle()
                                                    .view()
                                                    .eye()
                                                    .y()
                                                    .value())
                                            * aside)),
            Map.entry("body.legs-tip", part("body.feet-needed", "legs.spacing")),
            Map.entry("body.gas-mount-weak", part("body.gas-mount-needed", "mount")),
            Map.entry(
                    "intake.duct-fast",
                    new Passing(
                            "intake.bore-needed",
                            (sheet, subject) -> "fitments."
                                    + (subject.endsWith(" inlet")
                                            ? subject.replace(" inlet", ".inlet-bore")
                                            : subject + ".bore"))),
            Map.entry("intake.breathers-left-low", field("intake.breathers-needed", "vehicle.intake.breathers")),
            Map.entry("recovery.winch-small", part("recovery.winch-needed", "pull")),
            Map.entry("recovery.strap-weak", part("recovery.strap-needed", "strength")),
            Map.entry("recovery.strap-stiff", part("recovery.strap-highest", "strength")),
            Map.entry("suspension.too-soft", springs("suspension.rate-needed")),
            Map.entry("suspension.sags", springs("suspension.sag-rate-needed")),
            Map.entry("towing.unrated-over", field("towing.unrated-heaviest", "trailer.mass")),
            Map.entry("towing.unbraked-by-share", field("towing.unbraked-heaviest", "trailer.mass")),
            Map.entry("towing.ball-light", field("towing.ball-needed", "trailer.ball")),
            Map.entry("tyres.load-over", tyres("tyres.index-needed")),
            Map.entry("tyres.weaker-than-axle", tyres("tyres.axle-index-needed")),
            Map.entry(
                    "tyres.wheel-over",
                    planned("tyres.wheel-needed", Fitment.Kind.WHEELS, "vehicle.wheels", ".rating")),
            Map.entry(
                    "tyres.wheel-weaker-than-axle",
                    planned("tyres.axle-wheel-needed", Fitment.Kind.WHEELS, "vehicle.wheels", ".rating")));

    /** Rules that judge what is left where another no longer finds anything, together with that one. */
    private static final Map<String, List<String>> NEXT =
            Map.of("tyres.load-over", List.of("tyres.load-over", "tyres.passenger-on-truck"));

    @Test
    void whatWouldJustPassDoesAndADigitLessDoesNot() throws FaultsException {
        Set<String> tried = new TreeSet<>();
        for (Cases.Case each : Books.cases()) {
            if (each.text().expect().stream().noneMatch(expected -> PASSING.containsKey(expected.id()))) {
                continue;
            }
            for (Finding finding : Adviser.advise(Books.engine(), each.sheet()).findings()) {
                Passing passing = PASSING.get(finding.judged().id());
                // Of a load that is not known whole nothing that is needed is known whole.
                boolean known = !finding.judged().measure().isAtLeast();
                if (passing != null
                        && known
                        && each.topic().equals(finding.judged().id().split("\\.")[0])) {
                    justPasses(each, finding, passing);
                    tried.add(finding.judged().id());
                }
            }
        }
        assertEquals(new TreeSet<>(PASSING.keySet()), tried);
    }

    private static void justPasses(Cases.Case each, Finding finding, Passing passing) throws FaultsException {
        Measure needed = finding.evidence().stream()
                .filter(measure -> measure.getName().equals(passing.measure()))
                .findFirst()
                .orElseThrow();
        String remedy = Wording.remedy(finding);
        assertTrue(remedy.contains(Wording.value(needed)), remedy);
        NodePath path = NodePath.parse(
                passing.path().apply(each.sheet(), finding.judged().subject()));
        double digit = Dimension.size(needed.kind().unit())
                * Math.pow(10, -needed.kind().decimals());
        assertTrue(passes(each, finding, passing, path, needed, 0), () -> each + ": " + remedy);
        assertFalse(
                passes(each, finding, passing, path, needed, digit)
                        && passes(each, finding, passing, path, needed, -digit),
                () -> each + ": less would pass too: " + remedy);
    }

    /** Whether neither the rule nor one that takes over from it finds anything, or leaves it open. */
    private static boolean passes(
            Cases.Case each, Finding finding, Passing passing, NodePath path, Measure needed, double more)
            throws FaultsException {
        Node.Mapping changed = Trees.with(
                each.tree(),
                path,
                Digits.quantity(
                                passing.inSheet()
                                        .of(each.sheet(), finding.judged().subject(), needed.getValue() + more),
                                needed.kind())
                        + (needed.kind().unit().isEmpty()
                                ? ""
                                : " +/- 0 " + needed.kind().unit()));
        List<String> rules = NEXT.getOrDefault(
                finding.judged().id(), List.of(finding.judged().id()));
        Advice advice = Adviser.advise(Books.engine(), Sheets.read(changed));
        return Stream.concat(advice.findings().stream(), advice.notAssessed().stream())
                .map(Outcome::judged)
                .noneMatch(judged -> rules.contains(judged.id())
                        && judged.subject().equals(finding.judged().subject())
                        && judged.loadCase().equals(finding.judged().loadCase()));
    }
}
