package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** What is worse for a battery or a cable never makes anything met that was not. */
class EnergyOrderTest {

    private static final String SEED = "4711";
    private static final Set<String> STARTER = Set.of("electrical.alternator-over", "electrical.starter-drained");

    /** A fridge and lamps behind an alternator of 110 A, with a charger of 25 A between two batteries. */
    private record Made(String battery, double current, double hours, double voltage, double capacity, double section) {

        Made on(String other) {
            return new Made(other, current, hours, voltage, capacity, section);
        }

        Made at(double other) {
            return new Made(battery, current, hours, other, capacity, section);
        }

        Made of(double other) {
            return new Made(battery, current, hours, voltage, other, section);
        }

        Made through(double other) {
            return new Made(battery, current, hours, voltage, capacity, other);
        }

        Set<String> met() throws FaultsException {
            return Adviser.advise(
                            Books.engine(),
                            Sheets.plainWith(String.format(
                                    Locale.ROOT,
                                    """
                    vehicle: {engine: {alternator: 110 A, own-load: 30 A, own-standby: 20 mA, starter-battery: %6$.1f Ah,
                      voltage: 12 V}}
                    fitments:
                      - {name: Battery, kind: battery, mass: 0 kg, chemistry: agm, voltage: 12 V, capacity: %5$.1f Ah}
                      - {name: Charger, kind: charger, mass: 0 kg, input: 25 A, output: 20 A}
                    circuits:
                      - {name: Fridge, voltage: %4$.1f V, current: %2$.2f A, battery: %1$s, driving: yes, parked: yes,
                         hours: %3$.2f h, standby: 5 mA, need: other, earth: yes,
                         cable: {section: %7$.2f mm2, length: 3 m, engine-bay: no}, fuse: {rating: 40 A, distance: 100 mm}}
                      - {name: Lamps, voltage: 12 V, current: 10 A, battery: starter, driving: yes, parked: no,
                         standby: 0 A, need: other, earth: yes,
                         cable: {section: 8 mm2, length: 3 m, engine-bay: no}, fuse: {rating: 40 A, distance: 100 mm}}
                    trip: {driving: 4 h, parked: 30 h}
                    """,
                                    battery,
                                    current,
                                    hours,
                                    voltage,
                                    capacity,
                                    capacity,
                                    section)))
                    .met()
                    .stream()
                    .map(each -> each.judged().id() + " " + each.judged().subject())
                    .filter(each -> each.startsWith("electrical."))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static Made made(String battery, int current, int hours, int capacity, int section) {
        return new Made(battery, current / 10.0, hours / 10.0, 12, capacity, section / 10.0);
    }

    private static void neverBetter(Set<String> before, Set<String> after) {
        Set<String> gained = new TreeSet<>(after);
        gained.removeAll(before);
        assertEquals(Set.of(), gained);
    }

    @Property(seed = SEED, tries = 60)
    void aLoadMovedFromTheSecondToTheStarterBattery(
            @ForAll @IntRange(min = 1, max = 600) int current,
            @ForAll @IntRange(max = 240) int hours,
            @ForAll @IntRange(min = 20, max = 400) int capacity)
            throws FaultsException {
        Made second = made("second", current, hours, capacity, 80);
        Set<String> after = second.on("starter").met();
        after.removeIf(each -> !STARTER.contains(each.split(" ")[0]));
        neverBetter(second.met(), after);
    }

    /** The cable loses a smaller share of a higher voltage, so that it is left out. */
    @Property(seed = SEED, tries = 60)
    void moreVoltageAtTheSameCurrent(
            @ForAll boolean starter,
            @ForAll @IntRange(min = 1, max = 200) int current,
            @ForAll @IntRange(max = 240) int hours,
            @ForAll @IntRange(min = 12, max = 300) int volts)
            throws FaultsException {
        Made low = made(starter ? "starter" : "second", current, hours, 100, 80);
        Set<String> after = low.at(volts).met();
        after.removeIf(each -> each.startsWith("electrical.drop-"));
        neverBetter(low.met(), after);
    }

    @Property(seed = SEED, tries = 60)
    void lessCapacity(
            @ForAll boolean starter,
            @ForAll @IntRange(min = 1, max = 200) int current,
            @ForAll @IntRange(max = 240) int hours,
            @ForAll @IntRange(min = 20, max = 400) int capacity,
            @ForAll @IntRange(min = 1, max = 99) int percent)
            throws FaultsException {
        Made large = made(starter ? "starter" : "second", current, hours, capacity, 80);
        neverBetter(large.met(), large.of(capacity * percent / 100.0).met());
    }

    @Property(seed = SEED, tries = 60)
    void aThinnerCable(
            @ForAll @IntRange(min = 1, max = 900) int current,
            @ForAll @IntRange(min = 10, max = 700) int section,
            @ForAll @IntRange(min = 20, max = 99) int percent)
            throws FaultsException {
        Made thick = made("second", current, 40, 100, section);
        neverBetter(thick.met(), thick.through(section * percent / 1000.0).met());
    }
}
