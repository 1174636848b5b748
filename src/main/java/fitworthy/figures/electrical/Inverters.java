package fitworthy.figures.electrical;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Inverter;
import fitworthy.sheet.Fitment;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
                .filter(load -> load != circuit && !ofCharger(load) && mayBeOf(load, circuit.part()))
                .filter(load -> (load.isMains() || !load.voltage().known()) && !load.isOnShore())
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

    /** Whether an inverter may feed a load by what is said of the load. */
    private static boolean mayBeOf(Circuit load, String inverter) {
        return load.inverter().isEmpty() || load.inverter().equals(inverter);
    }

    /**
     * The inverters that may feed a circuit of mains voltage: the one that it names, else with a feed on its battery, or with
     * none on the sheet.
     */
    List<Fitment> feeding(Circuit circuit) {
        return plan.fitments(Fitment.Kind.INVERTER).stream()
                .filter(inverter -> wantsInverter(circuit) && mayBeOf(circuit, inverter.name()))
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

    /** The loads that an inverter feeds or, where nobody says which does, may feed. */
    List<Circuit> loads(Fitment inverter) {
        return plan.sheet().circuits().stream()
                .filter(load -> feeding(load).contains(inverter)
                        && feeder(load).map(inverter::equals).orElse(true))
                .toList();
    }

    /**
     * The inverter that feeds a load: the only one that may, and of several the strongest where the load is too much for
     * each. Empty where nobody says which it is.
     */
    Optional<Fitment> feeder(Circuit load) {
        List<Fitment> feeding = feeding(load);
        Figure power = power(load);
        return feeding.size() == 1 || feeding.stream().allMatch(inverter -> power.isAbove(continuous(inverter)))
                ? feeding.stream().reduce((one, other) -> continuous(other).isAbove(continuous(one)) ? other : one)
                : Optional.empty();
    }

    /** The loads of mains voltage that no inverter of the sheet may feed, each with what is then missing. */
    Map<Circuit, Missing> unserved() {
        Map<Circuit, Missing> unserved = new LinkedHashMap<>();
        plan.sheet().circuits().stream()
                .filter(load -> wantsInverter(load) && feeding(load).isEmpty())
                .forEach(load -> unserved.put(
                        load,
                        new Missing(
                                "fitments",
                                "the inverter that feeds " + load.name() + " from its battery, as a part",
                                "the plan")));
        return unserved;
    }

    /** What is not known to tell which inverter feeds a load. */
    static Missing untold(Circuit load) {
        return load.battery().known()
                ? new Missing("circuits." + load.name() + ".inverter", "the inverter that feeds it", "the plan")
                : load.battery().missing();
    }

    /** What a load takes of its inverter, in W. */
    static Figure power(Circuit load) {
        return load.current().times(load.voltage());
    }

    private static Figure continuous(Fitment inverter) {
        return ((Inverter) inverter.details()).continuous();
    }

    /** What a circuit draws, in A at another voltage: the power is the same, and behind an inverter its loss comes on top. */
    Figure drawn(Circuit circuit, Figure voltage) {
        return at(circuit, circuit.current(), voltage);
    }

    /** A current of a circuit, at its own voltage, as one at another. */
    Figure at(Circuit circuit, Figure current, Figure voltage) {
        return current.times(circuit.voltage()).dividedBy(voltage).dividedBy(efficiency(circuit));
    }

    /**
     * What the cable of a feed has to carry, in A: its own current, and no less than the largest of its loads. One that another
     * inverter may feed is no more than this one gives.
     *
     * @param voltage lowest voltage at its input, V
     */
    Figure carried(Circuit circuit, Figure voltage) {
        return maybeOnBatteryOf(circuit).stream()
                .filter(load -> isSure(circuit, load))
                .map(load -> Stream.of(circuit, load)
                        .filter(either -> !either.battery().known())
                        .findFirst()
                        .map(either -> Figure.missing(either.battery().missing()))
                        .orElseGet(() -> drawn(load, voltage)))
                .reduce(circuit.current(), Figure::most);
    }

    /** The least that it can be, by what is known of it. */
    Figure least(Circuit circuit, Figure voltage) {
        return sure(circuit).stream()
                .map(load -> drawn(load, voltage))
                .filter(Figure::known)
                .reduce(circuit.current().or(Figure.ZERO), Figure::most);
    }

    /** The loads behind a feed that no other inverter may feed. */
    List<Circuit> sure(Circuit feed) {
        return behind(feed).stream().filter(load -> isSure(feed, load)).toList();
    }

    private boolean isSure(Circuit feed, Circuit load) {
        return feeding(load).size() < 2
                || feeder(load)
                        .filter(inverter -> inverter.name().equals(feed.part()))
                        .isPresent();
    }

    /** Whether only an inverter can feed it: of mains voltage, no charger's lead, and on no other supply of such voltage. */
    private boolean wantsInverter(Circuit circuit) {
        return circuit.isMains() && !circuit.isOnShore() && !ofCharger(circuit);
    }

    private boolean ofCharger(Circuit circuit) {
        return plan.fitments(Fitment.Kind.CHARGER).stream()
                .anyMatch(charger -> charger.name().equals(circuit.part()));
    }
}
