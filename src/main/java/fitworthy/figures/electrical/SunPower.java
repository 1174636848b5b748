package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Solar panels and their controllers: no battery gets more of the sun than the controller gives, and nothing by one that is
 * left at home. Panels on a sheet that has nothing to control them count in full.
 */
public final class SunPower {

    private SunPower() {}

    /** The controller of a panel: the one that it names, else the only one that the sun feeds. */
    public static Optional<Fitment> controller(Plan plan, SolarPanel panel) {
        List<Fitment> found = controllers(plan, panel);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<Fitment> controllers(Plan plan, SolarPanel panel) {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .filter(charger -> panel.charger().isEmpty()
                        ? ((Charger) charger.details()).fedBy().is(Charger.Source.SUN)
                        : charger.name().equals(panel.charger()))
                .toList();
    }

    /** The panels on a controller. */
    static Stream<Fitment> on(Plan plan, Fitment controller) {
        return plan.fitments(Fitment.Kind.SOLAR_PANEL).stream().filter(panel -> controller(plan, details(panel))
                .filter(controller::equals)
                .isPresent());
    }

    /** Which controller a panel is on, as what is missing. */
    public static Missing noController(Fitment panel) {
        return RecordSchema.of(SolarPanel.class).field("charger").missingIn("fitments." + panel.name());
    }

    /**
     * What reaches the battery of the rated power of the panels that are on, in W: part by part, but together what their
     * controller gives where that is less.
     *
     * @param battery its nominal voltage, V
     */
    static List<Input> counted(Loading loading, Figure battery) {
        return counted(loading, battery, panel -> true);
    }

    /** The same without what a charger sends on that the alternator feeds too: it gives what it gives. */
    static List<Input> alone(Loading loading, Figure battery) {
        return counted(loading, battery, panel -> controller(loading.plan(), details(panel))
                .filter(controller -> ((Charger) controller.details()).fromAlternator())
                .isEmpty());
    }

    private static List<Input> counted(Loading loading, Figure battery, Predicate<Fitment> wanted) {
        Plan plan = loading.plan();
        Map<Optional<Fitment>, List<Fitment>> byController = plan.fitments(Fitment.Kind.SOLAR_PANEL).stream()
                .filter(loading::carries)
                .filter(wanted)
                .collect(Collectors.groupingBy(
                        panel -> controller(plan, details(panel)), LinkedHashMap::new, Collectors.toList()));
        return byController.entrySet().stream()
                .flatMap(on -> on.getKey().isEmpty()
                        ? on.getValue().stream().map(panel -> alone(plan, panel))
                        : through(loading, on.getKey().get(), on.getValue(), battery))
                .toList();
    }

    private static Input alone(Plan plan, Fitment panel) {
        return mayHaveController(plan, panel)
                ? in(panel.name(), Figure.missing(noController(panel)), "W")
                : power(panel);
    }

    /** Whether one of several is meant, or a charger that the alternator feeds and that has an input for the sun too. */
    private static boolean mayHaveController(Plan plan, Fitment panel) {
        return !controllers(plan, details(panel)).isEmpty()
                || plan.details(Charger.class).stream()
                        .anyMatch(charger -> charger.mostVoltage().known()
                                || charger.mostCurrent().known());
    }

    private static Stream<Input> through(Loading loading, Fitment controller, List<Fitment> panels, Figure battery) {
        if (!loading.carries(controller)) {
            return Stream.empty();
        }
        List<Input> rated = panels.stream().map(SunPower::power).toList();
        Figure all = Working.total(rated);
        Figure given = ((Charger) controller.details()).output().times(battery);
        return all.isAtMost(given)
                ? rated.stream()
                : Stream.of(in("the most that " + controller.name() + " gives", all.least(given), "W"));
    }

    private static Input power(Fitment panel) {
        return in(panel.name(), details(panel).wholePower(), "W");
    }

    private static SolarPanel details(Fitment panel) {
        return (SolarPanel) panel.details();
    }
}
