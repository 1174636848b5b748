package fitworthy.figures.room;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.MassWorkings;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What each loading leaves for a heavier trailer, for people and cargo, and in the tanks, with the limit that governs. */
public final class RoomMeasures implements Topic {

    /** What these measures begin with. No rule judges them. */
    public static final String TOPIC = "room";

    public static final MeasureKind TRAILER = number(
                    "room.trailer",
                    "kg",
                    0,
                    "heaviest trailer with its load on the ball in proportion; below zero by how much a limit is exceeded"
                            + " without it")
            .signed()
            .byLoading();
    public static final MeasureKind TRAILER_LIMIT = MeasureKind.word(
                    "room.trailer-limit", "which limit governs the heaviest trailer", Limit.class)
            .byLoading();
    public static final MeasureKind BALL = number(
                    "room.ball",
                    "kg",
                    0,
                    "most that may be on the ball, whatever the trailer weighs; below zero by how much a limit is exceeded"
                            + " without it")
            .signed()
            .byLoading();
    public static final MeasureKind BALL_LIMIT = MeasureKind.word(
                    "room.ball-limit", "which limit governs the load on the ball", Limit.class)
            .byLoading();
    public static final MeasureKind ABOARD = number(
                    "room.aboard",
                    "kg",
                    0,
                    "people and cargo that may still be added there; below zero by how much a limit is exceeded already")
            .signed()
            .byLoading();
    public static final MeasureKind ABOARD_LIMIT = MeasureKind.word(
                    "room.aboard-limit", "which limit governs what may be added there", Limit.class)
            .byLoading();
    public static final MeasureKind FILL = number(
                    "room.fill", "L", 0, "what may be in the tank with all else as planned")
            .byLoading();
    public static final MeasureKind FILL_SHARE = number(
                    "room.fill-share", "%", 0, "how full the tank may be with all else as planned")
            .byLoading();
    public static final MeasureKind FILL_LIMIT = MeasureKind.word(
                    "room.fill-limit", "which limit governs how full the tank may be", Limit.class)
            .byLoading();
    public static final MeasureKind RANGE = number(
                    "room.range", "km", 0, "range on the fuel that the masses then allow")
            .byLoading();
    public static final MeasureKind RANGE_PLANNED = number(
                    "room.range-planned", "km", 0, "range on the fuel as planned")
            .byLoading();

    public static final MeasureKind PAYLOAD = rated(
                    "room.payload",
                    "kg",
                    0,
                    "payload used: all beyond the kerb mass, the load on the ball with it",
                    "payload: GVM less kerb mass")
            .signed()
            .byLoading();

    /** What the subject of {@link #PAYLOAD} is called. */
    public static final String VEHICLE = "vehicle";

    /** What the subject of {@link #RANGE_PLANNED} is called. */
    public static final String FUEL = "fuel aboard";

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                PAYLOAD,
                TRAILER,
                TRAILER_LIMIT,
                BALL,
                BALL_LIMIT,
                ABOARD,
                ABOARD_LIMIT,
                FILL,
                FILL_SHARE,
                FILL_LIMIT,
                RANGE,
                RANGE_PLANNED);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        measures.addAll(of(loading, Room.of(loading)));
    }

    /** What a loading leaves, as measures. @param room the same in full */
    public static List<Measure> of(Loading loading, Room room) {
        List<Measure> measures = new ArrayList<>();
        measures.add(payload(loading));
        room.trailer().ifPresent(most -> most(TRAILER, TRAILER_LIMIT, "trailer", most, measures));
        room.ball().ifPresent(most -> most(BALL, BALL_LIMIT, "ball", most, measures));
        room.aboard().forEach((place, most) -> most(ABOARD, ABOARD_LIMIT, place, most, measures));
        room.tanks().forEach(tank -> tank(loading, tank, measures));
        if (room.tanks().stream().anyMatch(TankRoom::feeds)) {
            Figure consumption = FuelRange.consumption(loading);
            measures.add(Measure.most(RANGE_PLANNED, FUEL, FuelRange.metres(FuelRange.aboard(loading), consumption))
                    .worked(
                            range(FuelRange.aboard(loading), consumption),
                            loading.aboard("fuel", FuelRange.feeding(loading.plan()))));
        }
        return measures;
    }

    /** The kerb mass is in what is loaded and in the payload alike, so its error is that of the loaded mass alone. */
    private static Measure payload(Loading loading) {
        Plan plan = loading.plan();
        Figure kerb = plan.vehicle().mass().kerb().exact();
        Figure loaded = loading.axles().total();
        Figure gvm = plan.ratings().gvm();
        return Measure.of(PAYLOAD, VEHICLE, loaded.minus(kerb), gvm.minus(kerb))
                .worked("used = loaded - kerb", in("loaded", loaded, "kg"), in("kerb", kerb, "kg"))
                .worked("payload = GVM - kerb", in("GVM", gvm, "kg"), in("kerb", kerb, "kg"))
                .worked(MassWorkings.axles(loading.masses(), plan.wheelbase()));
    }

    private static void most(MeasureKind kind, MeasureKind limit, String subject, Most most, List<Measure> measures) {
        measures.add(Measure.most(kind, subject, most.figure()).worked(workings(most)));
        measures.add(governing(limit, subject, most));
    }

    private static Measure governing(MeasureKind kind, String subject, Most most) {
        Optional<Limit> limit = most.governs().map(Step::limit);
        return limit.isPresent() && most.unknown().isEmpty()
                ? Measure.of(kind, subject, Choice.of(limit.get()))
                : Measure.of(kind, subject, "", most.missing());
    }

    private static void tank(Loading loading, TankRoom tank, List<Measure> measures) {
        String name = tank.tank().name();
        Figure capacity = tank.tank().capacity();
        Figure litres = tank.litres();
        Working worked = tank.most().isOver() || !litres.known() ? governs(tank.most()) : workings(tank.most());
        measures.add(Measure.most(FILL, name, litres).worked(worked));
        measures.add(Measure.most(FILL_SHARE, name, litres.dividedBy(capacity))
                .worked("share = most / capacity", in("most", litres, "L"), in("capacity", capacity, "L")));
        measures.add(governing(FILL_LIMIT, name, tank.most()));
        if (tank.feeds()) {
            Figure consumption = FuelRange.consumption(loading);
            Figure fuel = tank.fuel(loading);
            measures.add(Measure.most(RANGE, name, FuelRange.metres(fuel, consumption))
                    .worked(range(fuel, consumption))
                    .worked(
                            "fuel = planned - own + most",
                            in("planned", FuelRange.aboard(loading), "L"),
                            in("own", tank.planned(), "L"),
                            in("most", tank.wholeLitres(), "L")));
        }
    }

    private static Working range(Figure fuel, Figure consumption) {
        return new Working.Formula(
                "range = 100 x fuel / consumption",
                List.of(in("fuel", fuel, "L"), in("consumption", consumption, "L/100km")));
    }

    /** How what governs was worked out, and what would govern next. */
    private static Working workings(Most most) {
        return () -> {
            List<String> lines = new ArrayList<>();
            most.governs().ifPresent(step -> lines.addAll(working(most, step).lines()));
            lines.addAll(governs(most).lines());
            return lines;
        };
    }

    /** A limit that is passed with something taken was left more or less of before. */
    private static Working working(Most most, Step step) {
        return !most.isOver() || most.taken() == 0
                ? step.working()
                : new Working.Formula(
                        "left = before - each x taken",
                        List.of(
                                in("before", step.left(), "kg"),
                                in("each", step.takes(), ""),
                                in("taken", Figure.of(most.taken()), "")));
    }

    private static Working governs(Most most) {
        return () -> most.governs().stream()
                .map(step -> "governed by " + step.limit().words() + next(most))
                .toList();
    }

    private static String next(Most most) {
        return most.isOver()
                ? ", exceeded already"
                : most.steps().stream()
                        .skip(1)
                        .map(step -> ", then " + step.limit().words() + " at "
                                + Math.round(
                                        Math.floor(Figure.rounded(step.most().value()))))
                        .collect(Collectors.joining());
    }
}
