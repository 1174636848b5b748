package fitworthy.figures.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.book.Practice;
import fitworthy.figures.Measures;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.OnRoof;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Trailer;
import fitworthy.source.FaultsException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is left for more is what the book's own limits leave: put into the sheet it passes none of them, and one of the last
 * digit more does. Over every shipped sheet and the
 * cases of the book that load it one way and another.
 */
class RoomTest {

    /** Limits that the load of vehicle and trailer is held against. */
    private static final Set<String> OF_MASS = Set.of(
            "mass.loaded",
            "mass.axle",
            "mass.combined",
            "mass.roof",
            "mass.roof-at-rest",
            "mass.rack",
            "tyres.load",
            "tyres.passenger-load",
            "tyres.wheel-load",
            "tyres.load-emptied",
            "tyres.wheel-load-emptied",
            "towing.trailer",
            "towing.plate",
            "towing.coupling",
            "towing.ball",
            "towing.ball-emptied",
            "towing.axle-load",
            "towing.tyre-load",
            "towing.levelled-load",
            "across.used-tanks",
            "across.used-supplies",
            "body.leg",
            "towing.force");

    /** Topics whose cases load vehicle and trailer in one way and another. */
    private static final Set<String> TOPICS = Set.of("across", "mass", "room", "towing", "tyres");

    /** What the front axle may lose of its bare load, as planned or later on the way. */
    private static final Set<String> LIFTS = Set.of("mass.front-lift", "mass.front-lift-emptied");

    private static final Set<Limit> OF_CANOPY = Set.of(Limit.HOLD_DOWNS, Limit.LEGS);

    private static final Set<Limit> BY_FORCE = Set.of(
            Limit.TOW_BAR_D,
            Limit.TOW_BAR_DC,
            Limit.TOW_BAR_V,
            Limit.TRAILER_COUPLING_D,
            Limit.TRAILER_COUPLING_DC,
            Limit.TRAILER_COUPLING_V);

    private static Plan plan(Sheet sheet) throws FaultsException {
        var book = Books.shipped();
        return new Plan(
                sheet,
                book.tables(),
                asked -> book.lookup(asked.id(), sheet) instanceof Practice.Lookup.Found found
                        ? Figure.of(found.practice().value(), 0)
                        : Figure.missing(new Missing(asked.id(), "a practice value", "the book")));
    }

    private static List<Sheet> sheets() throws FaultsException {
        List<Sheet> sheets = new ArrayList<>();
        for (String name : List.of("touring", "weekender", "overloaded")) {
            sheets.add(Sheets.read(Sheets.scenario(name)));
        }
        sheets.addAll(made());
        Books.cases().stream().filter(one -> TOPICS.contains(one.topic())).forEach(one -> sheets.add(one.sheet()));
        return sheets;
    }

    /** The plain wagon with trailers whose supplies run out, tanks that do, and a load-levelling hitch. */
    private static List<Sheet> made() throws FaultsException {
        List<Sheet> made = new ArrayList<>();
        for (String ratings : List.of(
                "front-axle: 1335 kg, gtm: 3000 kg",
                "front-axle: 1450 kg, gtm: 1850 kg",
                "front-axle: 1360 kg, rear-axle: 1480 kg, gtm: 2300 kg",
                "front-axle: 1450 kg, gvm: 2800 kg, ball: 230 kg, gtm: 3000 kg")) {
            for (String bars : List.of("no", "yes, levelling-share: 50 %", "yes, levelling-share: 100 %")) {
                for (String supplies : List.of(
                        "{name: Rear water, mass: 100 kg +/- 0 kg, behind: 5500 mm}",
                        "{name: Front water, mass: 120 kg +/- 0 kg, behind: 1200 mm}",
                        "{name: Rear water, mass: 60 kg +/- 0 kg, behind: 5000 mm},"
                                + " {name: Gas, mass: 40 kg +/- 0 kg, behind: 300 mm}")) {
                    for (String tank : List.of("1900 mm", "3600 mm")) {
                        made.add(Sheets.plainWith(
                                """
                                title: "Van, %1$s, bars %2$s, %3$s, tank at %4$s"
                                vehicle:
                                  ratings: {levelling: yes, %5$s}
                                  tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}, levelling: %2$s}
                                tanks:
                                  - {name: Water, liquid: water, capacity: 80 L, fill: 60 %%, mass: 10 kg +/- 0 kg, stock: no,
                                     at: {x: %4$s, y: 0 mm, z: 700 mm}}
                                trailer: {name: Van, mass: 1800 kg +/- 0 kg, ball: 180 kg +/- 0 kg, rated: 3000 kg, gtm: %6$s,
                                  brakes: electric, axle: 3600 mm, coupling: {trailer: 3500 kg, ball: 350 kg},
                                  supplies: [%3$s]}
                                cases: [{name: solo}, {name: tow, towing: yes}]
                                """
                                        .formatted(
                                                ratings.replace(":", ""),
                                                bars,
                                                supplies,
                                                tank,
                                                ratings.replaceAll(", gtm.*", ""),
                                                ratings.replaceAll(".*gtm: ", ""))));
                    }
                }
            }
        }
        return made;
    }

    /** A copy of a record with another value for one component. */
    @SuppressWarnings("unchecked")
    private static <R extends Record> R with(R record, String component, Object value) {
        try {
            RecordComponent[] components = record.getClass().getRecordComponents();
            Object[] values = new Object[components.length];
            Class<?>[] types = new Class<?>[components.length];
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getType();
                values[i] = components[i].getName().equals(component)
                        ? value
                        : components[i].getAccessor().invoke(record);
            }
            return (R) record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Sheet inCase(Sheet sheet, LoadCase loading, LoadCase other) {
        return with(
                sheet,
                "cases",
                sheet.cases().isEmpty()
                        ? List.of(other)
                        : sheet.cases().stream()
                                .map(one -> one.name().equals(loading.name()) ? other : one)
                                .toList());
    }

    /** The limits of mass that are passed in a loading, without the roof, which no trailer or tank touches. */
    private static Set<String> passed(Sheet sheet, LoadCase loading, Predicate<String> looked) throws FaultsException {
        return passed(sheet, loading, looked, false);
    }

    /** The same, with those that cannot be told. */
    private static Set<String> notWithin(Sheet sheet, LoadCase loading, Predicate<String> looked)
            throws FaultsException {
        return passed(sheet, loading, looked, true);
    }

    private static Set<String> passed(Sheet sheet, LoadCase loading, Predicate<String> looked, boolean unknown)
            throws FaultsException {
        Plan plan = plan(sheet);
        Set<String> passed = new TreeSet<>();
        Stream.concat(
                        Measures.of(plan).stream(),
                        Loading.all(plan).stream()
                                .filter(one -> one.loadCase().name().equals(loading.name()))
                                .flatMap(one -> Measures.of(one).stream()))
                .filter(measure -> measure.hasLimit()
                        && OF_MASS.contains(measure.getName())
                        && looked.test(measure.getName())
                        && (measure.isKnown() ? measure.getHeadroom() < 0 : unknown))
                .forEach(measure -> passed.add(measure.getName() + " " + measure.getSubject()));
        Loading.all(plan).stream()
                .filter(one -> one.loadCase().name().equals(loading.name()))
                .flatMap(one -> Measures.of(one).stream())
                .filter(measure -> LIFTS.contains(measure.getName())
                        && (measure.isKnown()
                                ? measure.getValue()
                                        > plan.practice(PracticeId.MASS_FRONT_LIFT_MOST)
                                                .value()
                                : unknown))
                .findFirst()
                .ifPresent(measure -> passed.add("least on the front axle"));
        plan.sheet().trailer().ifPresent(trailer -> {
            Figure most = plan.practice(PracticeId.TOWING_UNRATED_MOST);
            if (looked.test("towing.unrated")
                    && plan.ratings().towingStated().is(YesNo.NO)
                    && !plan.ratings().towing().known()
                    && trailer.mass().isAbove(most.times(plan.vehicle().mass().kerb()))) {
                passed.add("towing.unrated");
            }
        });
        return passed;
    }

    private static Sheet towing(Sheet sheet, LoadCase loading, double mass, boolean plated) throws FaultsException {
        Trailer trailer = plan(sheet).trailer().orElseThrow();
        Figure ball = Figure.of(trailer.ball().value() / trailer.mass().value() * mass, 0);
        Trailer other = with(with(trailer, "mass", Figure.of(mass, 0)), "ball", ball);
        if (plated) {
            other = with(with(other, "rated", Figure.of(mass, 0)), "gtm", Figure.of(mass - ball.value(), 0));
        }
        return inCase(
                with(sheet, "trailer", Optional.of(other)), loading, with(loading, "towing", Choice.of(YesNo.YES)));
    }

    @Test
    void theHeaviestTrailerPassesNoLimitAndAKilogramMoreDoes() throws FaultsException {
        Set<Limit> governed = new TreeSet<>();
        int found = 0;
        for (Sheet sheet : sheets()) {
            for (Loading loading : Loading.all(plan(sheet))) {
                Optional<Most> room = Room.of(loading).trailer();
                if (room.isEmpty() || !room.get().figure().known() || room.get().isOver()) {
                    continue;
                }
                Limit limit = room.get().governs().orElseThrow().limit();
                boolean plated = BY_FORCE.contains(limit);
                Predicate<String> looked = name ->
                        !name.matches("mass\\.(roof|roof-at-rest|rack)") && (plated || !name.equals("towing.force"));
                double most = Math.floor(room.get().figure().value() + 1e-6);
                LoadCase in = loading.loadCase();
                Sheet planned = loading.plan().sheet();
                String about = planned.title() + ", " + in.name() + ", " + most + " kg, " + limit;
                assertEquals(Set.of(), passed(towing(planned, in, most, plated), in, looked), about);
                assertTrue(
                        !notWithin(towing(planned, in, most + 1, plated), in, looked)
                                .isEmpty(),
                        about + " and one more");
                governed.add(limit);
                found++;
            }
        }
        assertTrue(found > 100, "found " + found);
        assertTrue(governed.size() > 14, "governed by " + governed);
    }

    @Test
    void whatMayBeAddedAboardPassesNoLimitAndAKilogramMoreDoes() throws FaultsException {
        Set<Limit> governed = new TreeSet<>();
        int found = 0;
        for (Sheet sheet : sheets()) {
            for (Loading loading : Loading.all(plan(sheet))) {
                // A reading holds whatever is aboard: more of it would be taken for an error of the parts.
                if (loading.plan().cases().stream()
                        .anyMatch(one -> one.weighed().isPresent())) {
                    continue;
                }
                Map<String, Most> rooms = Room.of(loading).aboard();
                for (Map.Entry<String, Spot> spot : spots(loading).entrySet()) {
                    Most room = rooms.get(spot.getKey());
                    if (!room.figure().known() || room.isOver()) {
                        continue;
                    }
                    double most = Math.floor(room.figure().value() + 1e-6);
                    Sheet planned = loading.plan().sheet();
                    LoadCase in = loading.loadCase();
                    String about = planned.title() + ", " + in.name() + ", " + spot.getKey() + " " + most + " kg";
                    Set<String> before = passed(planned, in, name -> true);
                    Set<String> after = passed(adding(planned, in, spot.getValue(), most), in, name -> true);
                    assertTrue(before.containsAll(after), about + ": " + after);
                    Limit limit = room.governs().orElseThrow().limit();
                    // What is written of a canopy is in it already, though the sheet may list less: the cases of the
                    // book hold these.
                    assertTrue(
                            OF_CANOPY.contains(limit)
                                    || !notWithin(planned, in, name -> true)
                                            .containsAll(notWithin(
                                                    adding(planned, in, spot.getValue(), most + 1), in, name -> true)),
                            about + " and one more, " + limit);
                    governed.add(limit);
                    found++;
                }
            }
        }
        assertTrue(found > 500, "found " + found);
        assertTrue(governed.size() > 5, "governed by " + governed);
    }

    /** Where something may be added. */
    private record Spot(Point at, Choice<YesNo> roof, String in) {
        Spot(Point at, Choice<YesNo> roof) {
            this(at, roof, "");
        }
    }

    /** The seats, the places of cargo and the rear end, as the room names them. */
    private static Map<String, Spot> spots(Loading loading) {
        Map<String, Spot> spots = new HashMap<>();
        Sheet sheet = loading.plan().sheet();
        Set<String> rooms = Room.of(loading).aboard().keySet();
        for (Sheet.Person person : sheet.occupants()) {
            rooms.stream()
                    .filter(name -> name.startsWith("in the seats of " + person.name()))
                    .forEach(name -> spots.put(name, new Spot(person.at(), Choice.of(YesNo.NO))));
        }
        sheet.cargo().stream()
                .filter(piece -> rooms.contains("beside " + piece.name()))
                .forEach(piece -> spots.put("beside " + piece.name(), new Spot(piece.at(), piece.roof(), piece.in())));
        Figure end = loading.plan().wheelbase().plus(loading.rearOverhang());
        if (end.known()) {
            Figure none = Figure.of(0, 0);
            String box = loading.bodies().stream()
                    .reduce((one, other) -> other)
                    .map(Fitment::name)
                    .orElse("");
            spots.put("at the rear end", new Spot(new Point(end, none, none), Choice.of(YesNo.NO), box));
        }
        return spots;
    }

    private static Sheet adding(Sheet sheet, LoadCase loading, Spot spot, double mass) {
        List<Sheet.Load> cargo = new ArrayList<>(sheet.cargo());
        cargo.add(new Sheet.Load(
                "more",
                Figure.of(mass, 0),
                spot.at(),
                spot.in(),
                spot.roof(),
                Figure.missing(new Missing("", "", "a tape")),
                Figure.missing(new Missing("", "", "a tape")),
                Choice.missing(new Missing("", "", "the plan")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        LoadCase other = loading.carrying()
                .map(names -> with(
                        loading,
                        "carrying",
                        Optional.of(
                                Stream.concat(names.stream(), Stream.of("more")).toList())))
                .orElse(loading);
        return inCase(with(sheet, "cargo", cargo), loading, other);
    }

    @Test
    void aTankSoFullPassesNoLimitAndALitreMoreDoes() throws FaultsException {
        Set<Limit> governed = new TreeSet<>();
        for (Sheet sheet : sheets()) {
            for (Loading loading : Loading.all(plan(sheet))) {
                if (loading.plan().cases().stream()
                        .anyMatch(one -> one.weighed().isPresent())) {
                    continue;
                }
                for (TankRoom tank : Room.of(loading).tanks()) {
                    if (!tank.most().figure().known() || tank.most().isOver()) {
                        continue;
                    }
                    Limit limit = tank.most().governs().orElseThrow().limit();
                    Sheet planned = loading.plan().sheet();
                    LoadCase in = loading.loadCase();
                    String about = planned.title() + ", " + in.name() + ", "
                            + tank.tank().name();
                    double litres = limit == Limit.FULL
                            ? tank.litres().value()
                            : Math.floor(tank.litres().value() + 1e-6);
                    boolean above = !tank.tank().in().isEmpty()
                            || !OnRoof.of(tank.tank(), planned).is(YesNo.NO);
                    Predicate<String> vehicle = name ->
                            (above || !name.matches("mass\\.(roof|roof-at-rest|rack)")) && !name.startsWith("towing.");
                    // A tank that is used up leaves the front axle alike however full it was.
                    Sheet empty = filled(planned, in, tank, 0);
                    Set<String> after = passed(filled(planned, in, tank, litres), in, vehicle);
                    assertTrue(passed(empty, in, vehicle).containsAll(after), about + ": " + after);
                    if (limit != Limit.FULL) {
                        assertTrue(
                                !notWithin(empty, in, vehicle)
                                        .containsAll(notWithin(filled(planned, in, tank, litres + 1), in, vehicle)),
                                about + " and one more");
                    }
                    governed.add(limit);
                }
            }
        }
        assertTrue(governed.size() > 3, "governed by " + governed);
    }

    private static Sheet filled(Sheet sheet, LoadCase loading, TankRoom tank, double litres) {
        Map<String, Figure> filled = new HashMap<>(loading.filled());
        filled.put(tank.tank().name(), Figure.of(litres / tank.tank().capacity().value(), 0));
        return inCase(sheet, loading, with(loading, "filled", filled));
    }

    /** What is not known of a limit is no leave, but what the others allow is told. */
    @Test
    void aLimitThatIsNotKnownLeavesAtMostWhatTheOthersAllow() throws FaultsException {
        Sheet sheet = Sheets.plainWith(
                """
                trailer: {name: Van, mass: 2000 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3100 kg, brakes: electric,
                  coupling: {trailer: 3500 kg, ball: 350 kg}}
                vehicle: {ratings: {rear-axle: 1500 kg}}
                """);
        Most room = Room.of(Loading.all(plan(sheet)).get(0)).trailer().orElseThrow();
        assertTrue(!room.figure().known());
        // 308.947 kg are left of the rear axle, and each kilogram of van takes 0.14 of them.
        assertEquals(308.947 / 0.14, room.atMost().value(), 0.01);
        assertEquals(
                List.of(Limit.TOW_BAR_PLATE, Limit.TOW_BAR_BALL),
                room.unknown().stream().map(Step::limit).toList());
    }

    /** The limits that come next are kept, in their order; sums by hand in rules/room/cases.yaml. */
    @Test
    void theStepsStandInTheOrderInWhichTheyGovern() throws FaultsException {
        Sheet sheet = Sheets.plainWith(
                """
                trailer: {name: Van, mass: 2000 kg, ball: 200 kg +/- 0 kg, rated: 3600 kg, gtm: 3150 kg, brakes: electric,
                  coupling: {trailer: 3700 kg, ball: 380 kg}}
                vehicle:
                  ratings: {rear-axle: 1500 kg, gvm: 2800 kg}
                  tow-bar: {plate: {trailer: 3650 kg, ball: 390 kg}}
                """);
        Most room = Room.of(Loading.all(plan(sheet)).get(0)).trailer().orElseThrow();
        assertEquals(
                List.of(
                        Limit.REAR_AXLE, // 308.947 / 0.14 = 2206.8
                        Limit.GVM, // 280 / 0.1 = 2800
                        Limit.TOW_RATING, // 3000
                        Limit.BALL_RATING, // 300 / 0.1 = 3000
                        Limit.GCM, // 6000 - 2520 = 3480
                        Limit.TRAILER_AXLES, // 3150 / 0.9 = 3500
                        Limit.TRAILER_PLATE, // 3600
                        Limit.TOW_BAR_PLATE, // 3650
                        Limit.TRAILER_COUPLING, // 3700
                        Limit.TRAILER_COUPLING_BALL, // 380 / 0.1 = 3800
                        Limit.TOW_BAR_BALL, // 390 / 0.1 = 3900
                        // Nine tenths of the bare 1250 kg are kept of 1328.947 kg, or of 1318.337 kg without the fuel.
                        Limit.FRONT_LIFT_LATER, // 193.337 / 0.04 = 4833
                        Limit.FRONT_LIFT, // 203.947 / 0.04 = 5099
                        Limit.REAR_TYRES), // (2240 - 1191.053) / 0.14 = 7492.5
                room.steps().stream().map(Step::limit).toList());
    }

    /** Worked by hand from the sheets and the shelf, not by the program: kg, mm and L. */
    @Test
    void theShippedSheetsLeaveWhatTheyDoByHand() throws FaultsException {
        // Touring, wheelbase 3260, towing: vehicle 3589.4 without the ball, rear axle 1910.7, front axle 1678.6. Ball
        // 215 of 2350,
        // 1240 behind the axle: each kg of trailer puts 0.091489 on the ball and 0.091489 x 4500 / 3260 = 0.126290 on
        // the axle.
        Room towing = room("touring", "towing");
        Most trailer = towing.trailer().orElseThrow();
        assertEquals(2600, trailer.figure().value()); // the plate
        assertEquals(2380 / (1 - 0.0914894), most(trailer, Limit.TRAILER_AXLES), 0.1); // GTM 2380: 2619.7
        assertEquals((2300 - 1910.7) / 0.126290, most(trailer, Limit.REAR_AXLE), 1); // 3082.6
        assertEquals(6700 - 3589.4, most(trailer, Limit.GCM), 0.1); // 3110.6
        assertEquals((3900 - 3589.4) / 0.0914894, most(trailer, Limit.GVM), 1); // 3395
        // With the ball on: GVM 95.6 left, rear axle 2300 - 1910.7 - 215 x 1.380368 = 92.5, front axle 143.2.
        assertEquals(92.5 * 3260 / 3500, aboard(towing, "beside Camp gear"), 0.1); // 86.2
        assertEquals(92.5 * 3260 / 3240, aboard(towing, "in the middle of Canopy"), 0.1); // 93.1
        assertEquals(95.6, aboard(towing, "in the seats of Ines and Tobias"), 0.1);
        // The alloy tray ends 2270 + 1970 = 4240 mm behind the front axle, the frame 3260 + 1040 = 4300 mm.
        assertEquals(92.5 * 3260 / 4300, aboard(towing, "at the rear end"), 0.1); // 70.1
        Room on = room("touring", "canopy on"); // front axle 1740 - 1678.6 = 61.4 left
        assertEquals(61.4 / (1 - 1480.0 / 3260), aboard(on, "in the seats of Ines and Tobias"), 0.1); // 112.5
        assertEquals(61.4 / (1 - 2200.0 / 3260), aboard(on, "beside Bags in the cab"), 0.2); // 188.8

        // Weekender, wheelbase 2790: 2479.24 of 2850, front axle 1262.25 of 1390.
        Room weekend = room("weekender", "weekend");
        assertEquals(127.75 / (1 - 1450.0 / 2790), aboard(weekend, "in the seats of Odile and Friend"), 0.1); // 266.0
        assertEquals(2850 - 2479.24, aboard(weekend, "beside Bags and tent"), 0.1); // 370.8
        // Rear axle 1680 - (2479.24 - 1262.25) = 463.0 left, the rear end 2790 + 1020 mm back.
        assertEquals(463.0 * 2790 / 3810, aboard(weekend, "at the rear end"), 0.1); // 339.0

        // Overloaded, wheelbase 3080: 2904.8 of 3050 without the van, rear axle 870 + 1993783.5 / 3080 = 1517.3 of
        // 1850. The ball takes a
        // tenth of the van, 1290 behind the axle.
        Most van = room("overloaded", "towing the van").trailer().orElseThrow();
        assertEquals((3050 - 2904.815) / 0.1, van.figure().value(), 0.1); // 1451.9
        assertEquals((1850 - 1517.33) / (0.1 * 4370 / 3080), most(van, Limit.REAR_AXLE), 0.1); // 2344.7
        assertEquals(5950 - 2904.815, most(van, Limit.GCM), 0.1); // 3045.2
        assertEquals(
                -(2904.815 + 3350 - 5950),
                room("overloaded", "towing the van")
                        .aboard()
                        .values()
                        .iterator()
                        .next()
                        .figure()
                        .value(),
                0.1); // -304.8, of the GCM
    }

    /**
     * By moments about the rear axle, wheelbase 2850 and overhang 1140 mm. Bare and people and luggage put 1328.947 kg on the
     * front axle, and 48 L of water and a tank of 10 kg 750 mm behind the rear axle take off 15.2 kg of it.
     */
    @Test
    void whatMayBeAddedHoldsOnceTanksAndSuppliesAreUsedUp() throws FaultsException {
        double water = 47.904; // 48 L of 0.998 kg/L
        double front = 1250 + 160 * 1350.0 / 2850 + 60 * 150.0 / 2850 - (10 + water) * 750 / 2850;
        Sheet sheet = made().stream()
                .filter(one ->
                        one.title().startsWith("Van, front-axle 1335 kg, gtm 3000 kg, bars yes, levelling-share: 50 %")
                                && one.title().contains("Front water")
                                && one.title().endsWith("3600 mm"))
                .findFirst()
                .orElseThrow();
        Room tow = Loading.all(plan(sheet)).stream()
                .filter(Loading::towing)
                .map(Room::of)
                .findFirst()
                .orElseThrow();
        // 180 kg on the ball, of whose lift the bars bring back half; 120 kg of water at a third of 3600 mm put 80 kg
        // there.
        // Both waters gone, the bars keep their moment.
        double lifted = 180 * 1140.0 / 2850;
        double then = front - lifted / 2 + water * 750 / 2850 + 80 * 1140.0 / 2850;
        assertEquals((1335 - then) / (1350.0 / 2850), aboard(tow, "in the seats of Driver and Passenger"), 0.05);
        assertEquals(
                Limit.FRONT_AXLE_LATER,
                tow.aboard()
                        .get("in the seats of Driver and Passenger")
                        .governs()
                        .orElseThrow()
                        .limit());
    }

    private static Room room(String scenario, String loading) throws FaultsException {
        return Loading.all(plan(Sheets.read(Sheets.scenario(scenario)))).stream()
                .filter(one -> one.loadCase().name().equals(loading))
                .map(Room::of)
                .findFirst()
                .orElseThrow();
    }

    private static double most(Most room, Limit limit) {
        return room.steps().stream()
                .filter(step -> step.limit() == limit)
                .findFirst()
                .orElseThrow()
                .most()
                .value();
    }

    private static double aboard(Room room, String place) {
        return room.aboard().get(place).figure().value();
    }
}
