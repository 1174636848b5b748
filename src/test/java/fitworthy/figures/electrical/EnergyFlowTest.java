package fitworthy.figures.electrical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Alternator;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
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
              - {name: Radio, voltage: 12 V, current: 1.5 A, battery: starter, driving: yes, parked: no, hours: 5 h,
                 standby: 5 mA}
            trip: {driving: 5 h, parked: 48 h}
            """;

    private static EnergyFlow way(String more) throws FaultsException {
        return new EnergyFlow(on(more));
    }

    private static List<Input> parked(String more) throws FaultsException {
        return new ParkedDraw(on(more)).each();
    }

    private static List<Input> drains(String more) throws FaultsException {
        return new SecondDraw(on(more)).drains();
    }

    private static List<Input> panels(String more) throws FaultsException {
        CircuitsOn on = on(more);
        return SunPower.counted(on.loading(), on.voltage());
    }

    private static CircuitsOn on(String more) throws FaultsException {
        return new CircuitsOn(loading(more));
    }

    private static Loading loading(String more) throws FaultsException {
        return Loading.all(new Plan(
                        Sheets.read(
                                Trees.merged(Sheets.treeWith(PLAN), NodeReader.read("more", more, new ArrayList<>()))),
                        Books.shipped().tables(),
                        id -> Figure.of(0.75, 0)))
                .get(0);
    }

    /** By hand: 25 + 1 + 5 mA beside it; 500 mA all day, or half of 500 and of 20 mA. */
    @Test
    void whatIsInUseDoesNotStandAsWell() throws FaultsException {
        String camera =
                """
                circuits:
                  - {name: Camera, voltage: 12 V, current: 0.5 A, battery: starter, driving: yes, parked: yes, hours: 24 h,
                     standby: 20 mA}
                """;
        assertEquals(0.531, sum(parked(camera)), 1e-9);
        assertEquals(0.291, sum(parked(camera.replace("24 h", "12 h"))), 1e-9);
        assertEquals(0.531, sum(parked(camera.replace("20 mA", "unknown"))), 1e-9);
        assertFalse(Working.total(parked(camera.replace("20 mA", "unknown").replace("24 h", "12 h")))
                .known());
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
                Alternator.leftByVehicle(loading("title: as it is").plan()).value(),
                1e-9);
    }

    /** By hand: 50 A at 12 V are 600 W, 46.9 A at 12.8 V; a charger of 5 A gives no more than 4.7 A, a relay the 40 A it takes. */
    @Test
    void aChargerGivesNoMorePowerThanItTakes() throws FaultsException {
        assertEquals(40, sum(way("title: as it is").chargerOutputs()), 1e-9);
        assertEquals(
                4.6875,
                sum(way("fitments: [{name: Charger, input: 5 A, output: 60 A}]").chargerOutputs()),
                1e-9);
        assertEquals(
                40,
                sum(way("fitments: [{name: Charger, isolator: yes, input: 40 A, output: 0 A}]")
                        .chargerOutputs()),
                1e-9);
        assertEquals(List.of(), way("fitments: [{name: Charger, fed-by: sun}]").chargerOutputs());
    }

    /** By hand: 12 V x 5 A x 8 h / 12.8 V are 37.5 Ah; 1.5 A for the other 16 h are 24 Ah, and for all of the day 36 Ah. */
    @Test
    void whatStandsOnTheSecondBatteryCountsWhereItIsGiven() throws FaultsException {
        assertEquals(61.5, sum(drains("circuits: [{name: Fridge, standby: 1.5 A}]")), 1e-9);
        assertEquals(36, sum(drains("circuits: [{name: Fridge, standby: 1.5 A, hours: 0 h}]")), 1e-9);
        assertEquals(112.5, sum(drains("circuits: [{name: Fridge, standby: 1.5 A, hours: 24 h}]")), 1e-9);
        assertEquals(0.031, sum(parked("circuits: [{name: Fridge, standby: 1.5 A}]")), 1e-9);
    }

    /** By hand: 8 A at 12.8 V are 102.4 W. */
    @Test
    void aControllerGivesNoMoreThanItsOutput() throws FaultsException {
        String sun =
                """
                fitments:
                  - {name: Sun, kind: charger, mass: 0 kg, fed-by: sun, output: 8 A}
                  - {name: Left, kind: solar-panel, mass: 0 kg, power: 50 W}
                  - {name: Right, kind: solar-panel, mass: 0 kg, power: 52 W}
                """;
        assertEquals(102, sum(panels(sun)), 1e-9);
        assertEquals(102.4, sum(panels(sun.replace("52 W", "53 W"))), 1e-9);
        assertFalse(Working.total(panels(sun.replace("52 W", "unknown"))).known());
        assertFalse(Working.total(panels(sun.replace("8 A", "unknown"))).known());
    }

    /** The wire that starts it, listed first, takes 0.5 A. */
    @Test
    void theStrongestCircuitOfAChargerIsItsFeed() throws FaultsException {
        String start =
                """
                fitments: [{name: Charger, input: unknown}]
                circuits: [{name: Lamps, part: Charger, current: 0.5 A}]
                """;
        assertEquals(50, sum(way(start).chargerInputs()), 1e-9);
    }

    /** By hand: 240 V x 6 A x 4 h are 5760 Wh, at 90 % 6400 Wh, 500 Ah of 12.8 V; 12 V x 5 A x 8 h are 480 Wh, 37.5 Ah. */
    @Test
    void energyIsCountedAndNotCurrent() throws FaultsException {
        assertEquals(37.5, sum(drains("title: as it is")), 1e-9);
        assertEquals(500, sum(drains("circuits: [{name: Fridge, voltage: 240 V, current: 6 A, hours: 4 h}]")), 1e-9);
        assertEquals(75, sum(drains("circuits: [{name: Fridge, voltage: 24 V}]")), 1e-9);
        assertEquals(20, sum(drains("fitments: [{name: Battery, voltage: 24 V}]")), 1e-9);
    }

    /** By hand: 25 + 1 + 5 mA stand; a fridge of 5 A for 8 h is 1.667 A in the mean, 80 Ah in 48 h, 111 % of 72 Ah. */
    @Test
    void whatRunsWhileParkedTakesFromTheStarterBattery() throws FaultsException {
        assertEquals(0.031, sum(parked("title: as it is")), 1e-12);
        double fridge = sum(parked("circuits: [{name: Fridge, battery: starter, standby: 0 A}]"));
        assertEquals(0.031 + 40 / 24.0, fridge, 1e-9);
        assertEquals(1.132, fridge * 48 / 72, 5e-4);
        assertFalse(Working.total(parked("circuits: [{name: Fridge, battery: starter, standby: 0 A, hours: 3 h}]"))
                .known());
    }

    private static final String INVERTER =
            """
            fitments: [{name: Inverter, kind: inverter, mass: 0 kg, efficiency: 80 %}]
            circuits:
              - {name: Inverter feed, part: Inverter, voltage: 12 V, current: 60 A, battery: starter, driving: yes,
                 parked: yes, hours: 2 h, standby: 0.5 A}
              - {name: Oven, voltage: 240 V, current: 2 A, battery: starter, driving: yes, parked: yes, hours: 1 h,
                 standby: 0.1 A}
              - {name: Lamp, voltage: 240 V, current: 0.2 A, battery: starter, driving: no, parked: yes, hours: 2 h}
            """;

    /**
     * By hand: 480 W of the oven at 80 % are 600 W, 50 A of 12 V, beside 62.5 A and the charger's 50 A. Parked, the feed's
     * 0.5 A stand beside 0.031 A; the oven's hour is 50 / 24 A in the mean, the lamp's two of 5 A are 10 / 24 A.
     */
    @Test
    void anInvertersFeedIsItsLoads() throws FaultsException {
        assertEquals(62.5 + 50 + 50, sum(way(INVERTER).onAlternator()), 1e-9);
        assertEquals(0.531 + 60 / 24.0, sum(parked(INVERTER)), 1e-9);
    }

    /** By hand: the usual 90 % make 533.3 W of the oven's 480 W, 44.4 A; without loads the feed's 60 A count. */
    @Test
    void anInvertersUsualLossCountsAndAFeedAloneIsALoad() throws FaultsException {
        String usual = INVERTER.replace(", efficiency: 80 %", "");
        assertEquals(112.5 + 480 / 0.9 / 12, sum(way(usual).onAlternator()), 1e-9);
        String alone = usual.substring(0, usual.indexOf("  - {name: Oven"));
        assertEquals(112.5 + 60, sum(way(alone).onAlternator()), 1e-9);
    }

    /** By hand: the oven's 480 W are 50 A of 12 V and 52.2 A of 11.5 V, less than the 60 A that the feed is given with. */
    @Test
    void aFeedCarriesNoLessThanTheLargestOfItsLoads() throws FaultsException {
        assertEquals(60, carriedByFeed(INVERTER, 12), 1e-9);
        assertEquals(50, carriedByFeed(INVERTER.replace("60 A", "40 A"), 12), 1e-9);
        assertEquals(600 / 11.5, carriedByFeed(INVERTER.replace("60 A", "40 A"), 11.5), 1e-9);
    }

    private static double carriedByFeed(String more, double voltage) throws FaultsException {
        Plan plan = loading(more).plan();
        Circuit feed = plan.sheet().circuits().stream()
                .filter(circuit -> circuit.name().equals("Inverter feed"))
                .findFirst()
                .orElseThrow();
        return new Inverters(plan).carried(feed, Figure.of(voltage, 0)).value();
    }

    /** By hand: 45 mA of 240 V are 10.8 W, at 90 % 12 W, 1 A of 12 V; 0.9 A read at the battery are 0.9 A. */
    @Test
    void aStandingDrawIsTakenWhereItWasRead() throws FaultsException {
        String load =
                """
                fitments: [{name: Inverter, kind: inverter, mass: 0 kg}]
                circuits: [{name: Clock, voltage: 240 V, current: 0.5 A, battery: starter, parked: no, standby: %s}]
                """;
        assertEquals(1.031, sum(parked(String.format(load, "45 mA, standby-at: load"))), 1e-9);
        assertEquals(0.931, sum(parked(String.format(load, "0.9 A, standby-at: battery"))), 1e-9);
        assertFalse(Working.total(parked(String.format(load, "0.9 A"))).known());
        assertEquals(0.031, sum(parked(String.format(load, "0 A"))), 1e-9);
    }

    /** The lamps' 192 W would feed a clock of 120 W and not an oven of 240 W; the charger's feed is the charger's. */
    @Test
    void aCircuitThatMayBeAnInvertersFeedIsAskedAbout() throws FaultsException {
        String load = "circuits: [{name: Load, voltage: 240 V, current: %s A, battery: starter, driving: yes}]";
        assertEquals(
                List.of("the inverter of Load as a part, and whether Lamps is the circuit of that part"),
                Working.total(way(String.format(load, "0.5")).onAlternator()).missing().stream()
                        .map(Missing::meaning)
                        .toList());
        assertEquals(112.5 + 240 / 0.9 / 12, sum(way(String.format(load, "1")).onAlternator()), 1e-9);
    }

    @Test
    void theStarterBatterysVoltageIsThatOfItsCircuitsWhereTheyAgree() throws FaultsException {
        assertEquals(
                12, CircuitsOn.starterVoltage(loading("title: as it is").plan()).value());
        assertFalse(CircuitsOn.starterVoltage(
                        loading("circuits: [{name: Lamps, voltage: 24 V}]").plan())
                .known());
        assertEquals(
                24,
                CircuitsOn.starterVoltage(
                                loading("vehicle: {engine: {voltage: 24 V}}\ncircuits: [{name: Lamps, voltage: 24 V}]")
                                        .plan())
                        .value());
        // An inverter tells nothing of its battery.
        assertEquals(
                12,
                CircuitsOn.starterVoltage(loading("circuits: [{name: Lamps, voltage: 240 V}]")
                                .plan())
                        .value());
    }

    @Test
    void whatIsConvertedIsTold() throws FaultsException {
        assertEquals(
                List.of("Fridge: 5 A at 12 V is 4.6875 A at the battery's 12.8 V"),
                on("title: as it is").converted(Circuit.Supply.SECOND).lines());
        assertEquals(
                List.of(),
                on("title: as it is").converted(Circuit.Supply.STARTER).lines());
    }
}
