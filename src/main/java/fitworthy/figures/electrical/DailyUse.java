package fitworthy.figures.electrical;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import java.util.Optional;

/** What circuits take of their battery in a day: in use, and standing for the rest of it. */
final class DailyUse {

    private static final double HOURS = 24;

    private final Plan plan;
    private final Feeds feeds;
    private final Inverters inverters;
    private final Figure nominal;

    /** @param nominal voltage of the battery, V */
    DailyUse(Plan plan, Figure nominal) {
        this.plan = plan;
        this.feeds = new Feeds(plan);
        this.inverters = new Inverters(plan);
        this.nominal = nominal;
    }

    /** What a circuit takes in use, Ah. */
    Figure of(Circuit circuit) {
        return inverters.drawn(circuit, nominal).times(circuit.hours());
    }

    /** What goes through a feed by its own hours and not to the loads on the sheet, Ah; empty where nothing does. */
    Optional<Figure> beyondLoads(Circuit feed) {
        return feeds.behind(feed).isEmpty() ? Optional.empty() : beyond(of(feed), loads(feed));
    }

    /** What a feed's own figure is more than that of its loads; where one of theirs is not known, that is missing. */
    static Optional<Figure> beyond(Figure own, Figure loads) {
        return !own.known() || own.isZero() || own.isAtMost(loads) ? Optional.empty() : Optional.of(own.minus(loads));
    }

    /** What the loads behind a feed take. */
    private Figure loads(Circuit feed) {
        return feeds.behind(feed).stream()
                .filter(load -> !feeds.gives(load))
                .map(this::carried)
                .reduce(Figure.of(0, 0), Figure::plus);
    }

    /** What goes through a circuit for all that hangs on it. */
    private Figure carried(Circuit circuit) {
        Figure loads = loads(circuit);
        Figure own = of(circuit);
        return feeds.behind(circuit).isEmpty() || own.isAbove(loads) ? own : loads;
    }

    /** Charge as the mean current over the day, A. */
    static Figure mean(Figure charge) {
        return charge.times(1 / HOURS);
    }

    /**
     * What a circuit draws standing, as charge in Ah; empty where it is in use all day, since what is in use does not stand.
     *
     * @param used what it takes in use; nothing where it is not used
     */
    Optional<Figure> standing(Circuit circuit, Figure used) {
        Figure hours = used.isZero() || !used.known()
                ? Figure.of(HOURS, 0)
                : Figure.of(HOURS, 0).minus(circuit.hours().exact());
        return hours.isZero() ? Optional.empty() : Optional.of(standing(circuit).times(hours));
    }

    /** In A at its battery; read at a load of mains voltage it is converted. */
    private Figure standing(Circuit circuit) {
        Figure standby = circuit.standby();
        boolean mains = circuit.isMains()
                || !circuit.voltage().known() && circuit.standbyAt().is(Circuit.Read.LOAD);
        if (!mains || standby.isZero() || circuit.standbyAt().is(Circuit.Read.BATTERY)) {
            return standby;
        }
        return circuit.standbyAt().known()
                ? inverters.at(circuit, standby, nominal)
                : standby.missingWith(Figure.missing(circuit.standbyAt().missing()), standby);
    }

    /** Whether what a load draws standing is in what was read at the feed of its inverter. */
    boolean isReadAtFeed(Circuit load) {
        return plan.sheet().circuits().stream()
                .anyMatch(
                        feed -> feed.standby().known() && inverters.behind(feed).contains(load));
    }
}
