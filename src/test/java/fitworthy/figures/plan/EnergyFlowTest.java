package fitworthy.figures.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where energy goes, worked by hand. The hot alternator gives 75 % here. */
class EnergyFlowTest {

    private static final String PLAN =
            """
            vehicle: {engine: {alternator: 130 A, own-load: 45 A, own-standby: 25 mA, starter-battery: 72 Ah}}
            fitments:
              - {name: Battery, kind: battery, mass: 0 kg, voltage: 12.8 V, capacity: 120 Ah}
              - {name: Charger, kind: charger, mass: 0 kg, input: 50 A, output: 40 A}
            circuits:
              - {name: Fridge, voltage: 12 V, current: 5 A, battery: second, driving: yes, hours: 8 h}
              - {name: Feed, part: Charger, voltage: 12 V, current: 50 A, battery: starter, driving: yes, hours: 3 h,
                 standby: 1 mA}
              - {name: Lamps, voltage: 12 V, current: 16 A, battery: starter, driving: yes, parked: no, hours: 2 h,
                 standby: 0 A}
              - {name: Radio, voltage: 12 V, current: 1.5 A, battery: starter, driving: yes, parked: no, hours: 6 h,
                 standby: 5 mA}
            trip: {driving: 5 h, parked: 48 h}
            """;

    private static EnergyFlow way(String more) throws FaultsException {
        return new EnergyFlow(loading(more));
    }

    private static Loading loading(String more) throws FaultsException {
        return Loading.all(new Plan(
                        Sheets.read(
                                Trees.merged(Sheets.treeWith(PLAN), NodeReader.read("more", more, new ArrayList<>()))),
                        Books.shipped().tables(),
                        id -> Figure.of(0.75, 0)))
                .get(0);
    }

    private static double sum(List<Input> parts) {
        return Working.total(parts).value();
    }

    /** By hand: 45 own + 16 lamps + 1.5 radio + 50 charger; neither the feed nor the fridge a second time. */
    @Test
    void aFeedIsItsChargerAndTheFridgeIsFedThroughIt() throws FaultsException {
        assertEquals(112.5, sum(way("title: as it is").onAlternator()), 1e-9);
        assertEquals(45 + 16 + 1.5, sum(way("title: as it is").beforeChargers()), 1e-9);
    }

    /** By hand: 97.5 A hot less 62.5 A leave 35 A of the 50 A that the charger asks for. */
    @Test
    void theChargerGetsWhatTheOthersLeave() throws FaultsException {
        assertEquals(0.7, way("title: as it is").given().value(), 1e-12);
        assertEquals(1, way("vehicle: {engine: {alternator: 150 A}}").given().value(), 1e-12);
        assertEquals(0, way("vehicle: {engine: {alternator: 80 A}}").given().value(), 1e-12);
        assertEquals(
                97.5 - 45,
                EnergyFlow.leftByVehicle(loading("title: as it is").plan()).value(),
                1e-9);
    }

    /** By hand: 50 A at 12 V are 600 W, 46.9 A at 12.8 V; a charger of 5 A gives no more than 4.7 A. */
    @Test
    void aChargerGivesNoMorePowerThanItTakes() throws FaultsException {
        assertEquals(40, sum(way("title: as it is").chargerOutputs()), 1e-9);
        assertEquals(
                4.6875,
                sum(way("fitments: [{name: Charger, input: 5 A, output: 60 A}]").chargerOutputs()),
                1e-9);
        assertEquals(
                40 * 12 / 12.8,
                sum(way("fitments: [{name: Charger, isolator: yes, input: 40 A, output: 0 A}]")
                        .chargerOutputs()),
                1e-9);
        assertEquals(List.of(), way("fitments: [{name: Charger, from: sun}]").chargerOutputs());
    }

    /** By hand: 240 V x 6 A x 4 h are 5760 Wh, 450 Ah of 12.8 V; 12 V x 5 A x 8 h are 480 Wh, 37.5 Ah. */
    @Test
    void energyIsCountedAndNotCurrent() throws FaultsException {
        assertEquals(37.5, sum(way("title: as it is").drains()), 1e-9);
        assertEquals(
                450,
                sum(way("circuits: [{name: Fridge, voltage: 240 V, current: 6 A, hours: 4 h}]")
                        .drains()),
                1e-9);
        assertEquals(75, sum(way("circuits: [{name: Fridge, voltage: 24 V}]").drains()), 1e-9);
        assertEquals(20, sum(way("fitments: [{name: Battery, voltage: 24 V}]").drains()), 1e-9);
    }

    /** By hand: 25 + 1 + 5 mA stand; a fridge of 5 A for 8 h is 1.667 A in the mean, 80 Ah in 48 h, 111 % of 72 Ah. */
    @Test
    void whatRunsWhileParkedTakesFromTheStarterBattery() throws FaultsException {
        assertEquals(0.031, sum(way("title: as it is").parked()), 1e-12);
        double fridge = sum(way("circuits: [{name: Fridge, battery: starter, standby: 0 A}]")
                .parked());
        assertEquals(0.031 + 40 / 24.0, fridge, 1e-9);
        assertEquals(1.132, fridge * 48 / 72, 5e-4);
        assertFalse(Working.total(way("circuits: [{name: Fridge, battery: starter, standby: 0 A, hours: 3 h}]")
                        .parked())
                .known());
    }

    @Test
    void theStarterBatterysVoltageIsThatOfItsCircuitsWhereTheyAgree() throws FaultsException {
        assertEquals(
                12, EnergyFlow.starterVoltage(loading("title: as it is").plan()).value());
        assertFalse(EnergyFlow.starterVoltage(
                        loading("circuits: [{name: Lamps, voltage: 24 V}]").plan())
                .known());
        assertEquals(
                24,
                EnergyFlow.starterVoltage(
                                loading("vehicle: {engine: {voltage: 24 V}}\ncircuits: [{name: Lamps, voltage: 24 V}]")
                                        .plan())
                        .value());
        // An inverter tells nothing of its battery.
        assertEquals(
                12,
                EnergyFlow.starterVoltage(loading("circuits: [{name: Lamps, voltage: 240 V}]")
                                .plan())
                        .value());
    }

    @Test
    void whatIsConvertedIsTold() throws FaultsException {
        assertEquals(
                List.of("Fridge: 5 A at 12 V is 4.6875 A at the battery's 12.8 V"),
                way("title: as it is").converted(Circuit.Supply.SECOND).lines());
        assertEquals(
                List.of(),
                way("title: as it is").converted(Circuit.Supply.STARTER).lines());
    }
}
