package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether a controller bears its solar panels: of planned ones on a controller the volts are asked, and the rest where the
 * sheet begins to tell how they are connected.
 */
final class SolarMeasures implements Topic {
    private static final String BEARS = "what the controller's input bears";
    private static final MeasureKind VOLTS =
            rated("electrical.panel-volts", "V", 1, "open-circuit voltage of the panels in series at 25 degC", BEARS);
    private static final MeasureKind VOLTS_COLD = rated(
            "electrical.panel-volts-cold",
            "V",
            1,
            "open-circuit voltage of the panels in series on the coldest morning",
            BEARS);
    private static final MeasureKind AMPERES = rated(
            "electrical.panel-amperes",
            "A",
            1,
            "short-circuit current of all strings side by side on its controller",
            BEARS);
    private static final MeasureKind APART = number(
            "electrical.panel-volts-apart",
            "%",
            1,
            "by how much its string has fewer volts than the highest on its controller");
    private static final MeasureKind REGROUPED = number(
            "electrical.panels-regrouped", "", 0, "how many of the same panels in each string the controller bears");
    private static final MeasureKind REGROUPED_STRINGS =
            number("electrical.panels-regrouped-strings", "", 0, "how many such strings they make");

    /** At which a panel's label gives its figures, in degC. */
    private static final double LABEL = 25;

    @Override
    public List<MeasureKind> kinds() {
        return List.of(VOLTS, VOLTS_COLD, AMPERES, APART, REGROUPED, REGROUPED_STRINGS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.SOLAR_PANEL)) {
            SolarPanel panel = (SolarPanel) fitment.details();
            Optional<Fitment> controller = SunPower.controller(plan, panel);
            List<Fitment> beside = beside(plan, fitment, controller);
            Figure mostVolts = most(fitment, controller, Charger::mostVoltage);
            Figure mostAmperes = most(fitment, controller, Charger::mostCurrent);
            if (isTold(beside, mostVolts, SolarPanel::openCircuit, SolarPanel::inSeries)) {
                Figure rise = panel.perDegree().or(plan.practice(PracticeId.ELECTRICAL_PANEL_RISE));
                voltage(plan, fitment, rise, mostVolts, measures);
                if (beside.size() > 1) {
                    measures.add(apart(fitment, beside));
                } else {
                    regrouped(plan, fitment, rise, mostVolts, mostAmperes, measures);
                }
            } else if (controller.isPresent() && !fitment.isDone()) {
                measures.add(volts(fitment, mostVolts));
            }
            if (isTold(beside, mostAmperes, SolarPanel::shortCircuit, SolarPanel::strings)) {
                measures.add(amperes(fitment, beside, mostAmperes));
            }
        }
    }

    /** All strings on its controller count together, whichever fitment they stand under. */
    private static Measure amperes(Fitment fitment, List<Fitment> beside, Figure most) {
        List<Working.Input> all = beside.stream()
                .map(other -> in(other.name(), amperes(details(other)), "A"))
                .toList();
        Measure measure = Measure.of(AMPERES, fitment.name(), Working.total(all), most)
                .atLeast(Working.total(
                        all.stream().filter(one -> one.figure().known()).toList()));
        return beside.size() > 1
                ? measure.worked(new Working.Sum("current", all))
                : measure.worked(
                        "current = of one x strings",
                        in("of one", details(fitment).shortCircuit(), "A"),
                        in("strings", details(fitment).strings(), ""));
    }

    private static Measure apart(Fitment fitment, List<Fitment> beside) {
        Figure own = volts(details(fitment));
        Figure highest = beside.stream()
                .map(other -> volts(details(other)))
                .reduce(Figure::most)
                .orElseThrow();
        return Measure.of(APART, fitment.name(), Derived.of(v -> 1 - v[0] / v[1], own, highest))
                .worked("apart = 1 - own / highest", in("own", own, "V"), in("highest", highest, "V"));
    }

    private static void voltage(Plan plan, Fitment fitment, Figure rise, Figure most, List<Measure> measures) {
        SolarPanel panel = details(fitment);
        measures.add(volts(fitment, most));
        Figure coldest = plan.sheet().trip().coldest();
        measures.add(Measure.of(
                        VOLTS_COLD,
                        fitment.name(),
                        Derived.of(
                                v -> v[0] * cold(v[1], v[2], v[3]),
                                panel.inSeries(),
                                panel.openCircuit(),
                                rise,
                                coldest),
                        most)
                .worked(
                        "voltage = of one x in series x (1 + rise x max(0, 25 - coldest))",
                        in("of one", panel.openCircuit(), "V"),
                        in("in series", panel.inSeries(), ""),
                        in("rise", rise, "%"),
                        in("coldest", coldest, "degC")));
    }

    private static Measure volts(Fitment fitment, Figure most) {
        SolarPanel panel = details(fitment);
        return Measure.of(VOLTS, fitment.name(), volts(panel), most)
                .worked(
                        "voltage = of one x in series",
                        in("of one", panel.openCircuit(), "V"),
                        in("in series", panel.inSeries(), ""));
    }

    /** How the same panels, fewer to a string and in more strings, stay within both limits of the controller. */
    private static void regrouped(
            Plan plan, Fitment fitment, Figure rise, Figure mostVolts, Figure mostAmperes, List<Measure> measures) {
        SolarPanel panel = details(fitment);
        Figure coldest = plan.sheet().trip().coldest();
        Figure fewer = Derived.of(
                v -> fewer(v[0], v[1], v[6] / cold(v[2], v[3], v[4]), v[7] / v[5]),
                panel.inSeries(),
                panel.strings(),
                panel.openCircuit(),
                rise,
                coldest,
                panel.shortCircuit(),
                mostVolts,
                mostAmperes);
        measures.add(Measure.of(REGROUPED, fitment.name(), fewer.exact()));
        measures.add(Measure.of(
                REGROUPED_STRINGS,
                fitment.name(),
                Derived.of(v -> v[0] == 0 ? 0 : v[1] * v[2] / v[0], fewer, panel.inSeries(), panel.strings())
                        .exact()));
    }

    /**
     * As many as can be in a string of the same panels otherwise connected, in strings of equal length.
     *
     * @param inSeries so many are in each string now
     * @param most in a string for the volts
     * @param mostStrings for the current
     * @return 0 where there is no such way
     */
    private static double fewer(double inSeries, double strings, double most, double mostStrings) {
        double all = inSeries * strings;
        for (double fewer = Math.min(inSeries - 1, Math.floor(Figure.rounded(most))); fewer >= 1; fewer--) {
            if (all % fewer == 0 && all / fewer <= Figure.rounded(mostStrings)) {
                return fewer;
            }
        }
        return 0;
    }

    /** Open-circuit voltage of one at a temperature in degC. */
    private static double cold(double openCircuit, double rise, double coldest) {
        return openCircuit * (1 + rise * Math.max(0, LABEL - coldest));
    }

    private static Figure volts(SolarPanel panel) {
        return panel.openCircuit().times(panel.inSeries());
    }

    private static Figure amperes(SolarPanel panel) {
        return panel.shortCircuit().times(panel.strings());
    }

    private static SolarPanel details(Fitment fitment) {
        return (SolarPanel) fitment.details();
    }

    private static boolean isTold(
            List<Fitment> beside, Figure most, Function<SolarPanel, Figure> one, Function<SolarPanel, Figure> many) {
        return most.known()
                || beside.stream()
                        .map(SolarMeasures::details)
                        .anyMatch(panel -> !panel.charger().isEmpty()
                                || one.apply(panel).known()
                                || many.apply(panel).known());
    }

    /** It and the others on the same controller, in the order of the sheet; alone where its controller is not told. */
    private static List<Fitment> beside(Plan plan, Fitment fitment, Optional<Fitment> controller) {
        return controller.isEmpty()
                ? List.of(fitment)
                : plan.fitments(Fitment.Kind.SOLAR_PANEL).stream()
                        .filter(other ->
                                SunPower.controller(plan, details(other)).equals(controller))
                        .toList();
    }

    private static Figure most(Fitment fitment, Optional<Fitment> controller, Function<Charger, Figure> most) {
        return controller
                .map(charger -> most.apply((Charger) charger.details()))
                .orElseGet(() -> Figure.missing(SunPower.noController(fitment)));
    }
}
