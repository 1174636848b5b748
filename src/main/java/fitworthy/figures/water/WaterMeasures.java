package fitworthy.figures.water;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.List;

/** Drinking water against the trip, and the tanks that hold it. */
public final class WaterMeasures implements Topic {

    private static final MeasureKind PERSON_DAY = number(
                    "water.person-day", "L", 1, "water for each person and day between supplies")
            .byLoading();
    private static final MeasureKind RESERVE = number(
                    "water.reserve", "days", 1, "days of water left at the next supplies")
            .byLoading();
    private static final MeasureKind USE = number("water.use", "L", 1, "planned use of water for each person and day");
    private static final MeasureKind DAYS = number("water.days", "days", 1, "days between supplies");
    private static final MeasureKind LARGEST = number(
                    "water.largest", "%", 0, "share of all the water in the largest tank")
            .byLoading();
    private static final MeasureKind NEEDED =
            number("water.needed", "L", 0, "water needed for the way").byLoading();
    private static final MeasureKind RESERVE_NEEDED = number(
                    "water.reserve-needed", "L", 0, "water needed for the way and the days in reserve")
            .byLoading();
    private static final MeasureKind RESERVE_SHORT = number(
                    "water.reserve-short", "L", 0, "water lacking for the way and the days in reserve")
            .byLoading();
    private static final MeasureKind SURGE = number("water.surge", "L", 1, "most water that can run from side to side")
            .byLoading();
    private static final MeasureKind BAFFLED = yesNo("water.baffled", "whether baffles divide the tank");
    private static final MeasureKind POTABLE =
            yesNo("water.potable", "whether tank, hose, pump and fittings are for drinking water");
    private static final MeasureKind COLDEST =
            number("water.coldest", "degC", 1, "coldest night to be expected").signed();
    private static final MeasureKind FROST_GUARDED =
            yesNo("water.frost-guarded", "whether tank and pipes can be drained or are kept from freezing");
    private static final MeasureKind CLEARANCE =
            number("water.clearance", "mm", 0, "gap to the exhaust, a battery or a switchboard");

    private static final String SUPPLY = "drinking water";

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                PERSON_DAY,
                RESERVE,
                USE,
                DAYS,
                LARGEST,
                SURGE,
                BAFFLED,
                POTABLE,
                COLDEST,
                FROST_GUARDED,
                CLEARANCE,
                NEEDED,
                RESERVE_NEEDED,
                RESERVE_SHORT);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Sheet.Trip trip = plan.sheet().trip();
        List<Tank> tanks = tanks(plan);
        boolean used = asked(trip, tanks);
        if (used) {
            measures.add(Measure.of(USE, SUPPLY, trip.waterUse()));
        }
        if (used || !tanks.isEmpty()) {
            measures.add(Measure.of(DAYS, SUPPLY, trip.days()));
        }
        if (!tanks.isEmpty()) {
            measures.add(Measure.of(COLDEST, "trip", trip.coldest()));
        }
        for (Tank tank : tanks) {
            // A can that is carried by hand has no baffles and lies where it is put.
            if (!tank.isCan()) {
                measures.add(Measure.of(BAFFLED, tank.name(), tank.water().baffled()));
                measures.add(Measure.of(CLEARANCE, tank.name(), tank.water().clearance()));
            }
            measures.add(Measure.of(POTABLE, tank.name(), tank.water().potable()));
            measures.add(Measure.of(FROST_GUARDED, tank.name(), tank.water().frostGuarded()));
        }
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        List<Tank> tanks = tanks(loading.plan());
        tanks.stream().filter(tank -> !tank.isCan()).forEach(tank -> measures.add(surge(loading, tank)));
        Sheet.Trip trip = loading.plan().sheet().trip();
        List<Figure> held = held(loading);
        Figure litres = litres(held);
        if (asked(trip, tanks) && loading.setsOut() && !isEmptied(loading.loadCase(), tanks, litres)) {
            Figure people = people(loading);
            Working.Input water = in("water", litres, "L");
            Working.Input persons = in("people", people, "");
            Working.Input days = in("days", trip.days(), "days");
            Working aboard = loading.aboard("water", tanks);
            measures.add(Measure.of(PERSON_DAY, SUPPLY, WaterSupply.perPersonAndDay(litres, people, trip.days()))
                    .worked("each = water / people / days", water, persons, days)
                    .worked(aboard));
            measures.add(Measure.of(
                            RESERVE,
                            SUPPLY,
                            WaterSupply.reserve(litres, people, trip.waterUse(), trip.days())
                                    .most(Figure.of(0, 0)))
                    .worked(
                            "left = max(0, water / people / use - days)",
                            water,
                            persons,
                            in("use", trip.waterUse(), "L"),
                            days)
                    .worked(aboard));
            needed(loading, people, litres, measures);
            if (!held.isEmpty() && !litres.isZero()) {
                Figure largest = held.stream().reduce(Figure::most).orElseThrow();
                measures.add(Measure.of(LARGEST, SUPPLY, largest.dividedBy(litres))
                        .worked("share = largest / water", in("largest", largest, "L"), water)
                        .worked(aboard));
            }
        }
    }

    /** How long the drinking water aboard lasts the people of the trip, h; missing where one of these is. */
    public static Figure lasting(Loading loading) {
        return WaterSupply.lasting(
                litres(held(loading)),
                people(loading),
                loading.plan().sheet().trip().waterUse());
    }

    private static List<Figure> held(Loading loading) {
        return tanks(loading.plan()).stream()
                .map(tank -> Liquids.litres(tank, loading.fill(tank)))
                .toList();
    }

    private static Figure litres(List<Figure> held) {
        return held.stream().reduce(Figure::plus).orElse(Figure.missing(NOT_LISTED));
    }

    /** On a trip a tank is used up, and passes the fill that is worst; elsewhere it stays as it is. */
    private static Measure surge(Loading loading, Tank tank) {
        Figure capacity = tank.capacity();
        Figure fill = loading.fill(tank);
        boolean usedUp = loading.setsOut();
        return Measure.of(
                        SURGE,
                        tank.name(),
                        usedUp ? WaterSupply.mostSurge(capacity, fill) : WaterSupply.surge(capacity, fill))
                .worked(
                        usedUp ? "surge = capacity x min(fill, 0.5)" : "surge = capacity x min(fill, 1 - fill)",
                        in("capacity", capacity, "L"),
                        in("fill", fill, "%"));
    }

    /** One amount for both questions, so that who carries it hears of neither again. */
    private static void needed(Loading loading, Figure people, Figure litres, List<Measure> measures) {
        Sheet.Trip trip = loading.plan().sheet().trip();
        Figure least = loading.plan().practice(PracticeId.WATER_PERSON_DAY_LEAST);
        Figure more = loading.plan().practice(PracticeId.WATER_RESERVE_LEAST);
        Figure advised = WaterSupply.needed(people, least, trip.days());
        Figure used = WaterSupply.needed(people, trip.waterUse(), trip.days().plus(more.or(Figure.of(0, 0))));
        Working.Input persons = in("people", people, "");
        Working.Input days = in("days", trip.days(), "days");
        Measure way = Measure.enough(NEEDED, SUPPLY, used.known() ? advised.most(used) : advised);
        Figure whole = more.missingWith(used, advised.or(used).most(used));
        Measure reserve = Measure.enough(RESERVE_NEEDED, SUPPLY, whole);
        Working both = new Working.Formula(
                "needed = max(people x least x days, people x use x (days + more))",
                List.of(
                        persons,
                        in("least", least, "L"),
                        days,
                        in("use", trip.waterUse(), "L"),
                        in("more", more.or(Figure.of(0, 0)), "days")));
        Working alone =
                new Working.Formula("needed = people x least x days", List.of(persons, in("least", least, "L"), days));
        Working reserveAlone = new Working.Formula(
                "needed = people x use x (days + more)",
                List.of(persons, in("use", trip.waterUse(), "L"), days, in("more", more, "days")));
        measures.add(way.worked(used.known() ? both : alone));
        measures.add(reserve.worked(advised.known() ? both : reserveAlone));
        measures.add(Measure.enough(RESERVE_SHORT, SUPPLY, whole.minus(litres).most(Figure.of(0, 0)))
                .worked("short = max(0, needed - water)", in("needed", whole, "L"), in("water", litres, "L"))
                .worked(loading.aboard("water", tanks(loading.plan()))));
    }

    /** Whether the supply is asked about. */
    private static boolean asked(Sheet.Trip trip, List<Tank> tanks) {
        return trip.days().known() ? trip.days().value() > 0 : !tanks.isEmpty();
    }

    private static final Missing NOT_LISTED =
            new Missing("tanks", "how much drinking water is carried, and in which tanks and cans", "the owner");

    private static List<Tank> tanks(Plan plan) {
        return plan.sheet().tanks().stream()
                .filter(tank -> tank.liquid().is(Tank.Liquid.WATER))
                .toList();
    }

    /**
     * Nobody sets out on the trip from the weighbridge, nor in a case that itself says that every water tank is empty.
     */
    private static boolean isEmptied(LoadCase loadCase, List<Tank> tanks, Figure litres) {
        return litres.isZero()
                && tanks.stream().allMatch(tank -> loadCase.filled().containsKey(tank.name()));
    }

    /** How many travel: as the trip says, else who is aboard in this case. */
    private static Figure people(Loading loading) {
        Figure travel = loading.plan().sheet().trip().people();
        return loading.aboard() > 0 ? travel.or(Figure.of(loading.aboard(), 0)) : travel;
    }
}
