package fitworthy.advice;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.Room;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.figures.room.TankRoom;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Guesses;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What each loading leaves: for a heavier trailer, for people and cargo, in the tanks, and how far the fuel then goes. Each
 * answer stands by itself, with all else as planned.
 *
 * @param loadings in the sheet's order
 */
public record RoomLeft(List<InLoading> loadings) {

    /**
     * Of one loading.
     *
     * @param loading its name
     * @param towing whether the trailer is on; the heaviest is what it would be if it were
     * @param payload what is used of the payload, kg
     * @param trailer the heaviest trailer, kg; nothing where the sheet has none
     * @param ball the most that may be on the ball, kg, whatever the trailer weighs
     * @param aboard what people and cargo may still be added, kg, place by place
     * @param tanks how full each tank may be
     * @param range on the fuel as planned; nothing where no tank feeds the engine
     * @param consumption by which the range is worked out, L/100km
     */
    public record InLoading(
            String loading,
            boolean towing,
            Figured payload,
            Optional<Answer> trailer,
            Optional<Answer> ball,
            List<Answer> aboard,
            List<Tank> tanks,
            Optional<Figured> range,
            Figure consumption) {}

    /** A figure of the advice. @param guessed whether it rests on guesses of the sheet */
    public record Figured(Measure measure, boolean guessed) {}

    /** How much, and what governs. @param figured not known where any of the limits is not */
    public record Answer(Figured figured, Most most) {

        public String subject() {
            return figured.measure().getSubject();
        }
    }

    /**
     * A tank.
     *
     * @param fill what may be in it, L
     * @param share how full that is
     * @param room what is planned in it, and what is known of the rest
     * @param range on that with the other tanks as planned; nothing where it does not feed the engine
     */
    public record Tank(Answer fill, Figured share, TankRoom room, Optional<Figured> range) {}

    /** That of an advice. */
    public static RoomLeft of(Advice advice) {
        List<Left> left = advice.loadings().stream().map(Left::of).toList();
        Reader reader = new Reader(advice, left);
        return new RoomLeft(left.stream().map(reader::read).toList());
    }

    /** What a loading leaves, as it is worked out. */
    private record Left(Loading loading, Room room) {

        static Left of(Loading loading) {
            return new Left(loading, Room.of(loading));
        }

        Stream<Measure> measures() {
            return RoomMeasures.of(loading, room).stream()
                    .map(measure -> measure.in(loading.loadCase().name()));
        }
    }

    /** Finds what is left as measures, and what these are without guesses. */
    private static final class Reader {

        private final Map<Refigured.Key, Measure> measures;
        private final Map<Refigured.Key, Measure> sure;

        Reader(Advice advice, List<Left> left) {
            this.measures = Refigured.byKey(left.stream().flatMap(Left::measures));
            this.sure = Guesses.of(advice.sheet()).isEmpty()
                    ? measures
                    : Refigured.byKey(Refigured.loadings(advice, Guesses.leftOut(advice.sheet(), guess -> true))
                            .map(Left::of)
                            .flatMap(Left::measures));
        }

        InLoading read(Left left) {
            Loading loading = left.loading();
            Room room = left.room();
            String name = loading.loadCase().name();
            return new InLoading(
                    name,
                    loading.towing(),
                    figured(RoomMeasures.PAYLOAD, RoomMeasures.VEHICLE, name).orElseThrow(),
                    room.trailer().map(most -> answer(RoomMeasures.TRAILER, "trailer", name, most)),
                    room.ball().map(most -> answer(RoomMeasures.BALL, "ball", name, most)),
                    room.aboard().entrySet().stream()
                            .map(place -> answer(RoomMeasures.ABOARD, place.getKey(), name, place.getValue()))
                            .toList(),
                    room.tanks().stream().map(tank -> tank(tank, name)).toList(),
                    figured(RoomMeasures.RANGE_PLANNED, RoomMeasures.FUEL, name),
                    FuelRange.consumption(loading));
        }

        private Tank tank(TankRoom tank, String loading) {
            String subject = tank.tank().name();
            return new Tank(
                    answer(RoomMeasures.FILL, subject, loading, tank.most()),
                    figured(RoomMeasures.FILL_SHARE, subject, loading).orElseThrow(),
                    tank,
                    figured(RoomMeasures.RANGE, subject, loading));
        }

        private Answer answer(MeasureKind kind, String subject, String loading, Most most) {
            return new Answer(figured(kind, subject, loading).orElseThrow(), most);
        }

        private Optional<Figured> figured(MeasureKind kind, String subject, String loading) {
            Refigured.Key key = new Refigured.Key(kind.name(), subject, loading);
            return Optional.ofNullable(measures.get(key))
                    .map(measure -> new Figured(measure, !isLike(measure, sure.get(key))));
        }

        private static boolean isLike(Measure measure, Measure other) {
            return other != null
                    && measure.isKnown() == other.isKnown()
                    && Double.compare(measure.getValue(), other.getValue()) == 0
                    && Double.compare(measure.getTolerance(), other.getTolerance()) == 0;
        }
    }
}
