package fitworthy.figures.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand on the calendar; the sheet's day is Wednesday 25 November 2026. */
class WorkOrderTest {

    private static final String PARTS =
            """
            fitments:
              - {name: Spring kit, kind: rating-upgrade, mass: 0 kg, lead-time: 7 days, work: {days: 1}}
              - {name: Alloy tray, kind: tray, mass: 0 kg, lead-time: 28 days, work: {days: 2}}
              - {name: Snorkel, kind: snorkel, mass: 0 kg, lead-time: 3 days, work: {days: 1.5}}
            jobs:
              - {name: Certificate, kind: certificate, work: {days: 1}}
              - {name: Weighing, kind: weighing, work: {days: 0.5}}
              - {name: Alignment, kind: alignment, work: {days: 0.5}}
            """;

    private static WorkOrder order(String yaml) throws FaultsException {
        return WorkOrder.of(new Plan(Sheets.plainWith(yaml), Books.shipped().tables(), id -> Figure.ZERO));
    }

    @Test
    void jobsComeInTheUsualOrderWithWeighingAndCertificateLast() throws FaultsException {
        assertEquals(
                List.of("Snorkel", "Alloy tray", "Spring kit", "Alignment", "Weighing", "Certificate"),
                order(PARTS).steps().stream().map(WorkOrder.Step::name).toList());
    }

    /**
     * The snorkel comes on Saturday and is fitted from Monday, after 3 working days. The tray comes after 20 and takes
     * until 22, the kit until 23, the alignment until 23.5, weighing until 24, the certificate until 25: Tuesday 29
     * December.
     */
    @Test
    void daysAreThoseOfTheCalendar() throws FaultsException {
        List<WorkOrder.Step> steps = order(PARTS).steps();
        WorkOrder.Step snorkel = steps.get(0);
        assertEquals(3, snorkel.start().value(), 1e-9);
        assertEquals(LocalDate.of(2026, 11, 30), snorkel.firstDay());
        assertEquals(LocalDate.of(2026, 12, 1), snorkel.lastDay());
        WorkOrder.Step certificate = steps.get(5);
        assertEquals(24, certificate.start().value(), 1e-9);
        assertEquals(25, certificate.end().value(), 1e-9);
        assertEquals(LocalDate.of(2026, 12, 30), certificate.lastDay());
        assertEquals(
                List.of(false, true, true, true, true, true),
                steps.stream().map(WorkOrder.Step::critical).toList());
    }

    /** 6.5 days of work, one job after the other: 25 is the end, 18.5 the start at which nothing waits. */
    @Test
    void oneVisitBeginsAsLateAsTheLastPartAllows() throws FaultsException {
        WorkOrder order = order(PARTS);
        assertEquals(25, order.endInTurn().value(), 1e-9);
        assertEquals(6.5, order.work().value(), 1e-9);
        assertEquals(18.5, order.startOnce().value(), 1e-9);
        assertEquals(15.5, order.waiting().value(), 1e-9);
    }

    /** A tank usually comes before the tray, but not the one that stands in its box; the shelf stands in the canopy. */
    @Test
    void whatCarriesComesBeforeWhatItCarries() throws FaultsException {
        WorkOrder order = order(
                """
                fitments:
                  - {name: Shelf, kind: other, in: Canopy, mass: 0 kg, lead-time: 0 days, work: {days: 1}}
                  - {name: Canopy, kind: canopy, mass: 0 kg, lead-time: 14 days, work: {days: 1}}
                  - {name: Box, kind: other, in: Tray, mass: 0 kg, lead-time: 0 days, work: {days: 1}}
                  - {name: Tray, kind: tray, mass: 0 kg, lead-time: 7 days, work: {days: 1}}
                tanks:
                  - {name: Water, liquid: water, capacity: 50 L, fill: 0 %, stock: no, in: Box, mass: 0 kg, work: {days: 1},
                     lead-time: 0 days, at: {x: 2900 mm, y: 0 mm, z: 1000 mm}}
                """);
        assertEquals(List.of(), order.loops());
        assertEquals(
                List.of("Tray", "Box", "Water", "Canopy", "Shelf"),
                order.steps().stream().map(WorkOrder.Step::name).toList());
    }

    @Test
    void whatIsDoneIsNoStep() throws FaultsException {
        List<String> names =
                order(PARTS.replace("lead-time: 28 days", "done: yes, lead-time: 28 days")).steps().stream()
                        .map(WorkOrder.Step::name)
                        .toList();
        assertEquals(5, names.size());
        assertFalse(names.contains("Alloy tray"));
    }

    @Test
    void aLoopIsNamedAndGivesNoSteps() throws FaultsException {
        WorkOrder order = order(PARTS.replace("work: {days: 2}", "work: {days: 2, after: [Alignment]}"));
        assertEquals(List.of(List.of("Alignment", "Alloy tray", "Spring kit")), order.loops());
        assertTrue(order.steps().isEmpty());
    }

    @Test
    void stepsStandInOrderThoughADayIsMissing() throws FaultsException {
        List<WorkOrder.Step> steps = order(PARTS.replace("mass: 0 kg, lead-time: 28 days", "mass: 0 kg"))
                .steps();
        assertEquals(6, steps.size());
        WorkOrder.Step certificate = steps.get(5);
        assertEquals("Certificate", certificate.name());
        assertNull(certificate.firstDay());
        assertEquals(
                "fitments.Alloy tray.lead-time",
                certificate.start().missing().get(0).path());
    }

    /**
     * The canopy comes after 10 working days and takes one. The fridge comes off with it, the battery stands in it; the bar
     * comes off as well, and the drawers never do.
     */
    @Test
    void whatIsInTheCanopyWaitsForTheCanopy() throws FaultsException {
        List<WorkOrder.Step> steps = order(
                        """
                        fitments:
                          - {name: Battery, kind: battery, place: canopy, mass: 0 kg, lead-time: 0 days, work: {days: 0.5}}
                          - {name: Fridge, kind: other, mass: 0 kg, removable: yes, lead-time: 0 days, work: {days: 0.1}}
                          - {name: Drawers, kind: other, mass: 0 kg, lead-time: 0 days, work: {days: 0.5}}
                          - {name: Bar, kind: bar, mass: 0 kg, removable: yes, lead-time: 7 days, work: {days: 1}}
                          - {name: Winch, kind: winch, mass: 0 kg, lead-time: 0 days, work: {days: 0.5}}
                          - {name: Canopy, kind: canopy, mass: 0 kg, removable: yes, lead-time: 14 days, work: {days: 1}}
                        cases: [{name: all on}, {name: bare, off: [Canopy, Fridge, Bar]}]
                        """)
                .steps();
        assertEquals(
                List.of("Drawers 0", "Bar 5", "Winch 6", "Canopy 10", "Battery 11", "Fridge 11"),
                steps.stream()
                        .map(step -> step.name() + " " + Math.round(step.start().value()))
                        .toList());
    }

    /** The strap comes on Wednesday 9 December and takes nobody any time: it is there on that day and not before. */
    @Test
    void nothingIsDoneBeforeItBegins() throws FaultsException {
        WorkOrder order = order(
                """
                fitments:
                  - {name: Panel, kind: other, mass: 0 kg, lead-time: 0 days, work: {days: 2.3}}
                  - {name: Strap, kind: kinetic-strap, mass: 0 kg, lead-time: 14 days, work: {days: 0}}
                """);
        order.steps().forEach(step -> assertTrue(!step.lastDay().isBefore(step.firstDay()), step.toString()));
        WorkOrder.Step strap = order.steps().get(1);
        assertEquals(LocalDate.of(2026, 12, 9), strap.firstDay());
        assertEquals(LocalDate.of(2026, 12, 9), strap.lastDay());
        assertEquals(14 * 24.0, order.ready().value(), 1e-9);
        assertEquals(14 * 24.0, order.readyInTurn().value(), 1e-9);
    }

    /** The fridge can be had at once; it stands in the canopy by its place alone, and ahead of it in the cab. */
    @Test
    void whatStandsInAPartByItsPlaceComesAfterIt() throws FaultsException {
        String plan =
                """
                fitments:
                  - {name: Fridge, kind: other, mass: 40 kg, at: {x: %s, z: 1200 mm}, lead-time: 0 days, work: {days: 0.1}}
                  - {name: Bottles, kind: other, mass: 4 kg, at: {x: 2400 mm, y: 0 mm, z: 1200 mm}, lead-time: 0 days, work: {days: 0.1},
                     space: {from: {x: 2200 mm, y: -200 mm, z: 1000 mm}, to: {x: 2600 mm, y: 200 mm, z: 1400 mm}}}
                  - {name: Box, kind: other, mass: 4 kg, at: {x: 2500 mm, y: 0 mm, z: 1250 mm}, lead-time: 0 days, work: {days: 0.1},
                     space: {from: {x: 1960 mm, y: -600 mm, z: 1000 mm}, to: {x: 3040 mm, y: 600 mm, z: 1500 mm}}}
                  - {name: Canopy, kind: canopy, mass: 0 kg, front: 1950 mm, length: 1800 mm, floor: 1000 mm,
                     lead-time: 7 days, work: {days: 1}}
                """;
        assertEquals(List.of("Canopy", "Bottles", "Box", "Fridge"), names(order(plan.formatted("2300 mm"))));
        assertEquals(List.of("Fridge", "Canopy", "Bottles", "Box"), names(order(plan.formatted("1400 mm"))));
    }

    private static List<String> names(WorkOrder order) {
        return order.steps().stream().map(WorkOrder.Step::name).toList();
    }

    /**
     * From Wednesday 25 November to Tuesday 8 December 2026 there are 10 working days. A strap that takes nobody any time
     * comes on the tenth, after nine others, and not on the morning after; what takes a day comes on the tenth too.
     */
    @Test
    void whatTakesNoTimeComesOnTheDayItIsWanted() throws FaultsException {
        LocalDate wanted = LocalDate.of(2026, 12, 8);
        for (String days : List.of("0", "1")) {
            WorkOrder order = order(
                    """
                    fitments:
                      - {name: Strap, kind: kinetic-strap, mass: 0 kg, lead-time: 5 days, work: {days: %s}}
                    """
                            .formatted(days));
            assertEquals(
                    9,
                    order.latestArrival(order.tasks().findFirst().orElseThrow(), wanted)
                            .value(),
                    1e-9);
        }
    }
}
