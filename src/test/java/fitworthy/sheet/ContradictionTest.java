package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Sheets;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets whose fields cannot all be right. */
class ContradictionTest {

    private static List<String> faults(String changes) {
        FaultsException refused = assertThrows(FaultsException.class, () -> Sheets.plainWith(changes));
        return refused.faults().stream().map(Fault::path).toList();
    }

    private static String kerb(int tolerance) {
        return "vehicle: {mass: {kerb: 2300 kg +/- " + tolerance
                + " kg, front-axle: 1250 kg +/- 10 kg, rear-axle: 1050 kg +/- 10 kg}}";
    }

    /** Two axles known to 10 kg each are off by 20 kg together at the worst. */
    @Test
    void aWholeIsNotLessSureThanItsPartsTogether() throws FaultsException {
        Sheets.plainWith(kerb(20));
        assertEquals(List.of("vehicle.mass.kerb"), faults(kerb(21)));
    }

    private static String parts(String first, String second) {
        return "fitments:\n"
                + "  - {name: Crate, kind: other, mass: 0 kg" + first + "}\n"
                + "  - {name: Fridge, kind: other, mass: 0 kg" + second + "}\n";
    }

    @Test
    void whatAPartStandsInIsAnotherPart() throws FaultsException {
        Sheets.plainWith(parts("", ", in: Crate"));
        assertEquals(List.of("fitments.2.in"), faults(parts("", ", in: Create")));
        assertEquals(List.of("fitments.1.in", "fitments.2.in"), faults(parts(", in: Fridge", ", in: Crate")));
    }

    @Test
    void whatIsDoneStandsInWhatIsThereAndIsNoOpenChoice() throws FaultsException {
        Sheets.plainWith(parts(", done: yes", ", done: yes, in: Crate"));
        Sheets.plainWith(parts(", done: yes", ", in: Crate"));
        assertEquals(List.of("fitments.2.in"), faults(parts("", ", done: yes, in: Crate")));
        String option = "options: [{name: Box, choices: [{name: crate, parts: [Crate]}, {name: none, parts: []}]}]";
        Sheets.plainWith(parts("", "") + option);
        assertEquals(List.of("options.1.choices.1.parts.1"), faults(parts(", done: yes", "") + option));
    }

    @Test
    void aTankThatTakesTheMakersPlaceNamesItAsTheSheetDoes() throws FaultsException {
        String tank = "tanks: [{name: Larger tank, liquid: %s, capacity: 140 L, fill: 50 %%, stock: no, mass: 30 kg, "
                + "at: {x: 2400 mm}, removes: {name: %s, mass: 12 kg, at: {x: 2400 mm}}}]";
        Sheets.plainWith(String.format(tank, "diesel", "Main tank"));
        Sheets.plainWith(String.format(tank, "water", "tub"));
        FaultsException refused = assertThrows(
                FaultsException.class, () -> Sheets.plainWith(String.format(tank, "diesel", "the main tank")));
        Fault fault = refused.faults().get(0);
        assertEquals("tanks.2.removes.name", fault.path());
        assertEquals(
                "'the main tank' is no tank of the sheet, and Main tank would be counted beside this one"
                        + " (did you mean 'Main tank'?)",
                fault.problem());
    }

    @Test
    void aTubeAndARailAreHollow() throws FaultsException {
        String shaft = "fitments: [{name: Cut, kind: chassis-extension, mass: 0 kg, wheelbase-added: 300 mm, "
                + "shaft: {diameter: 60 mm, wall: %s}}]";
        Sheets.plainWith(String.format(shaft, "29 mm"));
        assertEquals(List.of("fitments.1.shaft.wall"), faults(String.format(shaft, "30 mm")));
        String rails =
                "vehicle: {rails: {at: 1950 mm, behind: 900 kg, middle: %s, depth: 100 mm, width: 50 mm, wall: %s}}";
        Sheets.plainWith(String.format(rails, "1950 mm", "24 mm"));
        assertEquals(List.of("vehicle.rails.wall"), faults(String.format(rails, "1950 mm", "25 mm")));
        assertEquals(List.of("vehicle.rails.middle"), faults(String.format(rails, "1940 mm", "24 mm")));
    }

    @Test
    void whatHoldsACanopyAndItsMiddleAreNotBehindItsEnd() throws FaultsException {
        String canopy = "fitments: [{name: Canopy, kind: canopy, mass: 90 kg, at: {x: 3 m}, length: 1700 mm, "
                + "hold-down: {cog-behind: %s, down-behind: %s}}]";
        Sheets.plainWith(String.format(canopy, "1700 mm", "1700 mm"));
        Sheets.plainWith(String.format(canopy, "1710 mm +/- 10 mm", "ask"));
        Sheets.plainWith(String.format(canopy, "2500 mm", "3500 mm").replace("1700 mm", "ask"));
        assertEquals(List.of("fitments.1.hold-down.cog-behind"), faults(String.format(canopy, "1701 mm", "1700 mm")));
        assertEquals(List.of("fitments.1.hold-down.down-behind"), faults(String.format(canopy, "1700 mm", "1701 mm")));
        Fault fault = assertThrows(
                        FaultsException.class, () -> Sheets.plainWith(String.format(canopy, "2500 mm", "900 mm")))
                .faults()
                .get(0);
        assertEquals("is more than its length, 1700 mm", fault.problem());
    }

    @Test
    void aLoadIsHeldInOneWay() throws FaultsException {
        String load = "cargo: [{name: Crate, mass: 60 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}%s%s}]";
        String lashing = ", lashing: {straps: 1, tension: 100 kg, angle: 60 deg, grip: 40 %, stopped: yes}";
        String tied = ", tied: {limit: 500 kg, stopped: yes, forward: 0, back: 2, along: 50 %, aside: 2, across: 50 %}";
        Sheets.plainWith(String.format(load, lashing, ""));
        Sheets.plainWith(String.format(load, "", tied));
        assertEquals(List.of("cargo.2.tied"), faults(String.format(load, lashing, tied)));
    }

    @Test
    void aTubThatStaysOnDoesNotComeOffToo() throws FaultsException {
        String canopy =
                "fitments: [{name: Canopy, kind: canopy, mass: 90 kg, at: {x: 3 m}, tub-stays: %s, removes: {name: %s, mass: 9 kg, at: {x: 3 m}}}]";
        Sheets.plainWith(String.format(canopy, "no", "steel tub"));
        Sheets.plainWith(String.format(canopy, "yes", "tub cover"));
        assertEquals(List.of("fitments.1.tub-stays"), faults(String.format(canopy, "yes", "steel tub")));
        assertEquals(List.of("fitments.1.tub-stays"), faults(String.format(canopy, "yes", "Tub")));
    }

    @Test
    void aCertificateIsHeldForWhatIsDone() throws FaultsException {
        Sheets.plainWith(parts(", done: yes, certificate: held", ""));
        assertEquals(List.of("fitments.1.certificate"), faults(parts(", certificate: held", "")));
        assertEquals(List.of("fitments.1.certificate"), faults(parts(", done: no, certificate: held", "")));
    }

    @Test
    void whatIsDoneAndStaysOnNeedsNoPlace() throws FaultsException {
        String bar = "fitments: [{name: Bar, kind: bar, mass: 60 kg%s}]";
        Sheets.plainWith(bar.formatted(", done: yes"));
        assertEquals(List.of("fitments.1.at"), faults(bar.formatted("")));
        assertEquals(List.of("fitments.1.at"), faults(bar.formatted(", done: yes, removable: yes")));
    }

    @Test
    void cargoIsNotTakenAlongInWhatIsOff() throws FaultsException {
        String sheet = "fitments: [{name: Canopy, kind: canopy, removable: yes, mass: 0 kg}]\n"
                + "cargo: [{name: Luggage, in: %s}]\ncases: [{name: bare, off: [Canopy]%s}]";
        Sheets.plainWith(sheet.formatted("Canopy", ""));
        assertEquals(List.of("cases.1.carrying.1"), faults(sheet.formatted("Canopy", ", carrying: [Luggage]")));
        assertEquals(List.of("cargo.1.in"), faults(sheet.formatted("Canpoy", "")));
    }

    private static String cut(int millimetres, int behind) {
        return "fitments: [{name: Stretch, kind: chassis-extension, mass: 0 kg, wheelbase-added: 300 mm, cut: "
                + millimetres + " mm, behind-cut: " + behind + " kg}]";
    }

    @Test
    void aFrameIsCutBetweenTheAxlesWithSomethingOnBothSides() throws FaultsException {
        Sheets.plainWith(cut(2849, 2299));
        assertEquals(List.of("fitments.1.cut", "fitments.1.behind-cut"), faults(cut(2850, 2300)));
    }

    /** What two cuts move is not worked out; one that only reaches farther back moves nothing. */
    @Test
    void theWheelbaseGrowsOnce() throws FaultsException {
        String two = cut(1950, 900)
                .replace("}]", "}, {name: Second, kind: chassis-extension, mass: 0 kg, wheelbase-added: ADDED}]");
        Sheets.plainWith(two.replace("ADDED", "0 mm"));
        assertEquals(List.of("fitments.2.wheelbase-added"), faults(two.replace("ADDED", "1 mm")));
        Sheets.plainWith(two.replace("ADDED", "1 mm, done: yes, certificate: held"));
    }

    private static String looked(int at, int behind) {
        return "vehicle: {rails: {at: " + at + " mm, behind: " + behind + " kg, middle: 2700 mm}}\n" + cut(1950, 900);
    }

    /** Cut at 1950 mm and 300 mm longer: from there to 2250 mm the same 900 kg are behind, ahead more, further back less. */
    @Test
    void theRailsHaveBehindThemWhatIsBehindTheCut() throws FaultsException {
        for (int at : new int[] {1950, 2250}) {
            Sheets.plainWith(looked(at, 900));
            assertEquals(List.of("fitments.1.behind-cut"), faults(looked(at, 899)));
            assertEquals(List.of("fitments.1.behind-cut"), faults(looked(at, 901)));
        }
        Sheets.plainWith(looked(1949, 901));
        assertEquals(List.of("fitments.1.behind-cut"), faults(looked(1949, 899)));
        Sheets.plainWith(looked(2251, 899));
        assertEquals(List.of("fitments.1.behind-cut"), faults(looked(2251, 901)));
        Sheets.plainWith(looked(1950, 890).replace("890 kg", "890 kg +/- 10 kg"));
        assertEquals(List.of("fitments.1.behind-cut"), faults(looked(1950, 889).replace("889 kg", "889 kg +/- 10 kg")));
    }

    /** Of two figures the one that cannot be the greater one: as high as the other is possible, above it is not. */
    private static void notAbove(String path, String sheet, String just, String above) throws FaultsException {
        Sheets.plainWith(String.format(sheet, just));
        assertEquals(List.of(path), faults(String.format(sheet, above)), sheet);
    }

    @Test
    void noFigureIsAboveOneThatItIsAPartOf() throws FaultsException {
        notAbove("vehicle.ratings.gvm", "vehicle: {ratings: {gcm: %s}}", "3000 kg", "2999 kg");
        notAbove("vehicle.ratings.towing-unbraked", "vehicle: {ratings: {towing-unbraked: %s}}", "3000 kg", "3001 kg");
        notAbove("trailer.ball", "trailer: {name: Van, mass: 900 kg, ball: %s}", "900 kg", "901 kg");
        notAbove("trailer.gtm", "trailer: {name: Van, mass: 900 kg, rated: 950 kg, gtm: %s}", "950 kg", "951 kg");
        notAbove("trailer.lightest", "trailer: {name: Van, mass: 900 kg, lightest: %s}", "900 kg", "901 kg");
        notAbove("trailer.drawbar", "trailer: {name: Van, mass: 9 kg, length: 5 m, drawbar: %s}", "5 m", "5001 mm");
        notAbove("trailer.axle", "trailer: {name: Van, mass: 9 kg, length: 5 m, axle: %s}", "5 m", "5001 mm");
        notAbove(
                "fitments.1.power",
                "fitments: [{name: Sun, kind: solar-panel, mass: 0 kg, open-circuit: 20 V, short-circuit: 10 A, power: %s}]",
                "200 W",
                "201 W");
        notAbove(
                "fitments.1.continuous",
                "fitments: [{name: Mains, kind: inverter, mass: 0 kg, continuous: %s, surge: 2000 W}]",
                "2000 W",
                "2001 W");
        notAbove("vehicle.tyres.dual-load-index", "vehicle: {tyres: {dual-load-index: %s}}", "112", "113");
        notAbove(
                "vehicle.tyres.reference-pressure",
                "vehicle: {tyres: {reference-pressure: %s, most-pressure: 350 kPa}}",
                "350 kPa",
                "351 kPa");
        notAbove(
                "vehicle.engine.consumption",
                "vehicle: {engine: {consumption: %s, consumption-towing: 12 L/100km}}",
                "12 L/100km",
                "12.1 L/100km");
        notAbove("vehicle.tyres.rim-least", "vehicle: {tyres: {rim-least: %s, rim-most: 8 in}}", "8 in", "8.5 in");
        notAbove(
                "vehicle.view.mirrors.left.reach",
                "vehicle: {view: {mirrors: {left: {reach: %s, edge: 1100 mm}}}}",
                "1100 mm",
                "1101 mm");
        notAbove(
                "vehicle.view.mirrors.right.edge-stowed",
                "vehicle: {view: {mirrors: {right: {edge-stowed: %s, edge: 1100 mm}}}}",
                "1100 mm",
                "1101 mm");
        notAbove(
                "fitments.1.load-least",
                "fitments: [{name: A, kind: springs, end: rear, mass: 0 kg, load-least: %s, load-most: 50 kg}]",
                "50 kg",
                "51 kg");
        notAbove(
                "fitments.1.bump-travel",
                "fitments: [{name: A, kind: springs, end: rear, mass: 0 kg, bump-travel: %s, travel: 200 mm}]",
                "200 mm",
                "201 mm");
        notAbove("circuits.1.standby", circuit("current: 1 A, standby: %s"), "1 A", "1001 mA");
        notAbove("circuits.1.hours", circuit("hours: %s"), "24 h", "25 h");
        notAbove("circuits.1.fuse.distance", circuit("cable: {length: 2 m}, fuse: {distance: %s}"), "2 m", "2001 mm");
        notAbove("trip.driving", "trip: {driving: %s}", "24 h", "25 h");
        notAbove("trip.sun", "trip: {sun: %s}", "24 h", "25 h");
    }

    /** 0.9 A at a battery of 12 V are less than 0.5 A of 240 V, and an inverter's own draw is in them. */
    @Test
    void aStandingDrawIsHeldAgainstACurrentOfTheSameVoltage() throws FaultsException {
        String load = "circuits: [{name: Kettle, voltage: 240 V, current: 0.5 A, standby: %s}]";
        Sheets.plainWith(String.format(load, "0.9 A"));
        Sheets.plainWith(String.format(load, "0.9 A, standby-at: battery"));
        notAbove("circuits.1.standby", load, "0.5 A, standby-at: load", "0.51 A, standby-at: load");
        Sheets.plainWith("circuits: [{name: Lamp, current: 0.5 A, standby: 0.9 A}]");
    }

    @Test
    void anInverterGivesSomethingAndNoMoreThanItTakes() throws FaultsException {
        String inverter = "fitments: [{name: Inverter, kind: inverter, mass: 0 kg, efficiency: %s}]";
        Sheets.plainWith(String.format(inverter, "100 %"));
        assertEquals(List.of("fitments.1.efficiency"), faults(String.format(inverter, "101 %")));
        assertEquals(List.of("fitments.1.efficiency"), faults(String.format(inverter, "0 %")));
    }

    @Test
    void aLoadOfMainsVoltageIsFedByAnInverterOnItsBattery() throws FaultsException {
        String sheet =
                """
                fitments:
                  - {name: Inverter, kind: inverter, mass: 0 kg}
                  - {name: Rack, kind: other, mass: 0 kg}
                circuits:
                  - {name: Feed, part: Inverter, voltage: 12 V, battery: second}
                  - {name: Kettle, voltage: 240 V, battery: second, %s}
                """;
        Sheets.plainWith(String.format(sheet, "inverter: Inverter"));
        for (String wrong : List.of(
                "inverter: Rack",
                "inverter: Inverter, battery: starter",
                "inverter: Inverter, battery: shore",
                "inverter: Inverter, voltage: 12 V")) {
            String kettle = wrong.contains("battery:") ? sheet.replace("battery: second, %s", "%s") : sheet;
            kettle = wrong.contains("voltage:") ? kettle.replace("voltage: 240 V, ", "") : kettle;
            assertEquals(List.of("circuits.2.inverter"), faults(String.format(kettle, wrong)), wrong);
        }
    }

    @Test
    void aWinchHangsOnOneBattery() throws FaultsException {
        String winch =
                """
                vehicle: {engine: {starter-battery: 80 Ah}}
                fitments:
                  - {name: Winch, kind: winch, mass: 0 kg, battery: %s}
                  - {name: One, kind: battery, mass: 1 kg, at: {x: 0 m, y: 0 m, z: 1 m}, capacity: 100 Ah}
                  - {name: Two, kind: battery, mass: 1 kg, at: {x: 0 m, y: 0 m, z: 1 m}, capacity: 50 Ah}
                """;
        Sheets.plainWith(String.format(winch, "95 Ah"));
        Sheets.plainWith(String.format(winch, "80 Ah, fed-by: starter"));
        Sheets.plainWith(String.format(winch, "150 Ah, fed-by: second"));
        for (String wrong : List.of("95 Ah, fed-by: starter", "70 Ah, fed-by: starter", "100 Ah, fed-by: second")) {
            assertEquals(List.of("fitments.1.battery"), faults(String.format(winch, wrong)), wrong);
        }
    }

    private static String circuit(String says) {
        return "circuits: [{name: Lamp, voltage: 12 V, " + says + "}]";
    }

    /** A GCM of 2990 kg known to 10 kg may be the 3000 kg of the GVM. */
    @Test
    void figuresThatMayAgreeWithinTheirTolerancesAreLeftAlone() throws FaultsException {
        String gcm = "vehicle: {ratings: {gcm: 2990 kg +/- %s kg}}";
        Sheets.plainWith(String.format(gcm, 10));
        assertEquals(List.of("vehicle.ratings.gvm"), faults(String.format(gcm, 9)));
    }

    /** What was weighed with parts on it may weigh more than it may: that is a stop and no fault of the sheet. */
    @Test
    void aVehicleThatWeighsMoreThanItsGvmIsAdvised() throws FaultsException {
        Sheets.plainWith("vehicle: {ratings: {gvm: 2200 kg}}");
    }

    @Test
    void aPersonHasNoPlaceOnTheRoof() {
        assertEquals(List.of("occupants.1.roof"), faults("occupants: [{name: Driver, roof: yes}]"));
    }
}
