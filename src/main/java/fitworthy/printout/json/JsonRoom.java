package fitworthy.printout.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.Figured;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.advice.RoomLeft.Tank;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.Step;
import fitworthy.printout.words.Payload;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.util.List;

/** What a loading leaves for more, as JSON has it. @param trailer null where the sheet has none @param range null where no tank feeds the engine */
record JsonRoom(
        @JsonProperty("case") String loadCase,
        boolean towing,
        Payload payload,
        Room trailer,
        Room ball,
        List<Room> aboard,
        List<Filled> tanks,
        Value rangePlanned) {

    static List<JsonRoom> all(Advice advice) {
        return RoomLeft.of(advice).loadings().stream().map(JsonRoom::of).toList();
    }

    private static JsonRoom of(InLoading loading) {
        return new JsonRoom(
                loading.loading(),
                loading.towing(),
                Payload.of(loading.payload()),
                loading.trailer().map(Room::of).orElse(null),
                loading.ball().map(Room::of).orElse(null),
                loading.aboard().stream().map(Room::of).toList(),
                loading.tanks().stream().map(Filled::of).toList(),
                loading.range().map(Value::of).orElse(null));
    }

    /** @param used what is used of it @param most GVM less kerb mass, null where not known @param left likewise */
    record Payload(Value used, Double most, Double left) {

        static Payload of(Figured figured) {
            Measure measure = figured.measure();
            return new Payload(
                    Value.of(figured), number(measure, measure.getLimit()), number(measure, measure.getHeadroom()));
        }

        private static Double number(Measure measure, double value) {
            return Double.isNaN(value) ? null : Wording.exact(value, measure.kind());
        }
    }

    /** @param value null where it is not known @param worked how it came about, without the masses one by one */
    record Value(
            String measure,
            String subject,
            String unit,
            Double value,
            Double tolerance,
            boolean guessed,
            List<String> worked) {

        static Value of(Figured figured) {
            Measure measure = figured.measure();
            return new Value(
                    measure.getName(),
                    measure.getSubject(),
                    measure.kind().unit(),
                    measure.isKnown() ? Wording.exact(measure.getValue(), measure.kind()) : null,
                    measure.isKnown() ? Wording.exact(measure.getValueTolerance(), measure.kind()) : null,
                    figured.guessed(),
                    measure.workings().stream()
                            .filter(working -> !working.listsMasses())
                            .map(Working::lines)
                            .flatMap(List::stream)
                            .toList());
        }
    }

    /**
     * @param passed limits that are passed already
     * @param governs null where no limit is known
     * @param atMost what the known limits allow, null where the value is known or none is
     */
    record Room(
            Value figure,
            String governs,
            Double atMost,
            List<Passed> passed,
            List<Bound> limits,
            List<Unknown> notKnown) {

        static Room of(Answer answer) {
            Most most = answer.most();
            Measure measure = answer.figured().measure();
            return new Room(
                    Value.of(answer.figured()),
                    most.governs().map(Room::word).orElse(null),
                    measure.isKnown() || !most.atMost().known()
                            ? null
                            : Wording.exact(measure.kind().printed(most.atMost().value(), -1), measure.kind()),
                    most.over().stream()
                            .map(step -> new Passed(word(step), most.passed(step)))
                            .toList(),
                    most.steps().stream()
                            .filter(step -> !most.over().contains(step))
                            .map(step -> new Bound(
                                    word(step),
                                    Words.hyphenated(step.limit().of().name()),
                                    Wording.exact(step.most().value(), measure.kind())))
                            .toList(),
                    most.unknown().stream()
                            .map(step -> new Unknown(
                                    word(step),
                                    step.missing().stream().map(Missing::path).toList()))
                            .toList());
        }

        private static String word(Step step) {
            return Words.hyphenated(step.limit().name());
        }
    }

    /** A limit that is passed already. @param by kg */
    record Passed(String limit, double by) {}

    /** A limit that bounds it. @param of whose it is @param most what this limit alone allows */
    record Bound(String limit, String of, double most) {}

    /** A limit that cannot be told. */
    record Unknown(String limit, List<String> fields) {}

    /** @param range null where it does not feed the engine */
    record Filled(Room fill, Value share, Value range) {
        static Filled of(Tank tank) {
            return new Filled(
                    Room.of(tank.fill()),
                    Value.of(tank.share()),
                    tank.range().map(Value::of).orElse(null));
        }
    }
}
