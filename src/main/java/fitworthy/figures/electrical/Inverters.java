package fitworthy.figures.electrical;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Inverter;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The inverters of a plan. Feed and loads are one thing: an inverter's feed carries what its loads take and draws nothing
 * beside them, as a charger's feed is the charger's own input. The loads are the circuits of mains voltage on the battery
 * that the feed hangs on; a feed without any on the sheet is a load like others.
 */
final class Inverters {

    /** What an inverter gives of what it takes, where the sheet does not say; a maker's specifications, read. */
    private static final Figure USUAL = Figure.of(0.9, 0);

    private final Plan plan;

    /** Those of a plan. */
    Inverters(Plan plan) {
        this.plan = plan;
    }

    /** The loads that a circuit carries as the feed of an inverter; none where it is no such feed. */
    List<Circuit> behind(Circuit circuit) {
        return isFeed(circuit) ? onBatteryOf(circuit) : List.of();
    }

    boolean isFeed(Circuit circuit) {
        return !circuit.isMains()
                && plan.fitments(Fitment.Kind.INVERTER).stream()
                        .anyMatch(inverter -> inverter.name().equals(circuit.part()));
    }

    private List<Circuit> onBatteryOf(Circuit circuit) {
        return maybeOnBatteryOf(circuit).stream()
                .filter(load -> load.isMains()
                        && load.battery().known()
                        && circuit.battery().known())
                .toList();
    }

    /** The same, with those of which voltage or battery is not known. */
    private List<Circuit> maybeOnBatteryOf(Circuit circuit) {
        return plan.sheet().circuits().stream()
                .filter(load -> load != circuit && !ofCharger(load))
                .filter(load -> load.isMains() || !load.voltage().known())
                .filter(load -> !circuit.battery().known()
                        || !load.battery().known()
                        || load.battery().is(circuit.battery().value()))
                .toList();
    }

    /**
     * The inverter, missing, where a circuit may be the feed of one that is not on the sheet: strong enough for the loads
     * of mains voltage on its battery, and no part's that has a kind of its own. It would be counted beside them.
     */
    Optional<Missing> unnamed(Circuit circuit) {
        boolean ofOwnKind = plan.sheet().fitments().stream()
                .anyMatch(part -> part.name().equals(circuit.part()) && part.kind() != Fitment.Kind.OTHER);
        boolean none = plan.fitments(Fitment.Kind.INVERTER).isEmpty();
        List<Circuit> loads = none && !ofOwnKind && !circuit.isMains() ? maybeOnBatteryOf(circuit) : List.of();
        Figure power = circuit.current().times(circuit.voltage());
        boolean strong = !power.isZero()
                && !loads.isEmpty()
                && !circuit.shortTime().is(YesNo.YES)
                && loads.stream()
                        .noneMatch(load -> load.current().times(load.voltage()).isAbove(power));
        return strong
                ? Optional.of(new Missing(
                        "fitments",
                        "the inverter of " + loads.get(0).name() + " as a part, and whether " + circuit.name()
                                + " is the circuit of that part",
                        "the plan"))
                : Optional.empty();
    }

    /** Whether what a circuit draws standing is read at the feed of its inverter. */
    boolean isCarried(Circuit circuit) {
        return plan.sheet().circuits().stream().anyMatch(feed -> behind(feed).contains(circuit));
    }

    /** The inverters that may feed a circuit of mains voltage: with a feed on its battery, or with none on the sheet. */
    List<Fitment> feeding(Circuit circuit) {
        return plan.fitments(Fitment.Kind.INVERTER).stream()
                .filter(inverter -> circuit.isMains() && !ofCharger(circuit))
                .filter(inverter -> plan.sheet().circuits().stream()
                        .filter(feed -> !feed.isMains() && feed.part().equals(inverter.name()))
                        .allMatch(feed -> !feed.battery().known()
                                || !circuit.battery().known()
                                || feed.battery().is(circuit.battery().value())))
                .toList();
    }

    /** What of the battery's power reaches a circuit: all, but behind an inverter; the poorest where several may feed it. */
    Figure efficiency(Circuit circuit) {
        return !circuit.isMains()
                ? Figure.of(1, 0)
                : feeding(circuit).stream()
                        .map(inverter ->
                                ((Inverter) inverter.details()).efficiency().or(USUAL))
                        .reduce(Figure::least)
                        .orElse(USUAL);
    }

    /**
     * What an inverter takes at the power that it gives without stopping, in A, with its loss on top.
     *
     * @param voltage voltage at its input, V
     */
    Figure atFullPower(Fitment inverter, Figure voltage) {
        Inverter details = (Inverter) inverter.details();
        return details.continuous().dividedBy(details.efficiency().or(USUAL)).dividedBy(voltage);
    }

    /** The inverters that no circuit of the sheet feeds. */
    List<Fitment> unfed() {
        return plan.fitments(Fitment.Kind.INVERTER).stream()
                .filter(inverter -> plan.sheet().circuits().stream()
                        .noneMatch(feed -> !feed.isMains() && feed.part().equals(inverter.name())))
                .toList();
    }

    /** The loads of an inverter; not those that another on the same battery may feed. */
    List<Circuit> loads(Fitment inverter) {
        return plan.sheet().circuits().stream()
                .filter(circuit -> feeding(circuit).contains(inverter)
                        && (isAlone(circuit) || !circuit.battery().known()))
                .toList();
    }

    /** What a load takes of its inverter, in W. @param current of it, A at its own voltage */
    Figure power(Circuit load, Figure current) {
        return isAlone(load)
                ? current.times(load.voltage())
                : Figure.missing(load.battery().missing());
    }

    /** Whether one inverter alone may feed a load. */
    private boolean isAlone(Circuit load) {
        return feeding(load).size() == 1;
    }

    /** What a circuit draws, in A at another voltage: the power is the same, and behind an inverter its loss comes on top. */
    Figure drawn(Circuit circuit, Figure voltage) {
        return at(circuit, circuit.current(), voltage);
    }

    /** A current of a circuit, at its own voltage, as one at another. */
    Figure at(Circuit circuit, Figure current, Figure voltage) {
        return current.times(circuit.voltage()).dividedBy(voltage).dividedBy(efficiency(circuit));
    }

    /** What the cable of a feed has to carry, in A: its own current, and no less than the largest of its loads. */
    Figure carried(Circuit circuit) {
        return maybeOnBatteryOf(circuit).stream()
                .map(load -> Stream.of(circuit, load)
                        .filter(either -> !either.battery().known())
                        .findFirst()
                        .map(either -> Figure.missing(either.battery().missing()))
                        .orElseGet(() -> drawn(load, circuit.voltage())))
                .reduce(circuit.current(), Figure::most);
    }

    /** The least that it can be, by what is known of it. */
    Figure least(Circuit circuit) {
        return onBatteryOf(circuit).stream()
                .map(load -> drawn(load, circuit.voltage()))
                .filter(Figure::known)
                .reduce(circuit.current().or(Figure.ZERO), Figure::most);
    }

    private boolean ofCharger(Circuit circuit) {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .anyMatch(charger -> charger.name().equals(circuit.part()));
    }
}
