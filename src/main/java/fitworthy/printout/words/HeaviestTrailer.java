package fitworthy.printout.words;

import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Answer;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.advice.TrailerRoom;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.room.Limit;
import fitworthy.figures.room.Most;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.figures.room.Step;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How heavy a trailer may be, in sentences.
 *
 * @param trailer the one that is planned
 */
public record HeaviestTrailer(RoomLeft room, Trailer trailer) {

    /** Something that is told of each loading, empty of one that has no answer. @param before what stands before it */
    private record Told(String before, Function<InLoading, String> of) {}

    private List<Told> all() {
        return List.of(
                new Told(
                        "",
                        loading -> loading.trailer().map(HeaviestTrailer::most).orElse("")),
                new Told("on the ball (" + kilograms(trailer.ball()) + " planned): ", this::onBall),
                new Told("the vehicle itself could tow ", loading -> loading.trailer()
                        .flatMap(HeaviestTrailer::alone)
                        .orElse("")),
                new Told("", loading -> loading.trailer()
                        .filter(this::isTooHeavyEmpty)
                        .map(answer -> trailer.name() + " is heavier even empty: " + kilograms(trailer.lightest())
                                + (TrailerRoom.isTooClose(
                                                trailer.lightest(),
                                                answer.most().figure())
                                        ? " (" + TooClose.WORDS + ")"
                                        : ""))
                        .orElse("")));
    }

    /** Each loading is named where not all come to the same; those that have no answer are left out. */
    public String sentences() {
        return all().stream().map(this::sentence).collect(Collectors.joining()).strip();
    }

    /** The same of one loading, as the end of a line. */
    public String inLoading(InLoading loading) {
        return all().stream()
                .filter(told -> !told.of.apply(loading).isEmpty())
                .map(told -> told.before + told.of.apply(loading))
                .collect(Collectors.joining("; "));
    }

    /** Whether the vehicle is over a limit before a trailer is on. */
    public boolean isOverAlone() {
        return room.loadings().stream()
                .flatMap(loading -> loading.trailer().stream())
                .anyMatch(answer -> answer.most().isOver() && answer.most().taken() == 0);
    }

    private String sentence(Told one) {
        Map<String, List<String>> loadings = new LinkedHashMap<>();
        room.loadings().forEach(loading -> loadings.computeIfAbsent(one.of.apply(loading), none -> new ArrayList<>())
                .add(loading.loading()));
        loadings.remove("");
        String told = loadings.entrySet().stream()
                .map(entry -> entry.getKey() + in(entry.getValue()))
                .collect(Collectors.joining("; "));
        return told.isEmpty() ? "" : Words.capital(one.before + told) + ". ";
    }

    private String in(List<String> loadings) {
        return loadings.size() == room.loadings().size() ? "" : " (" + String.join(", ", loadings) + ")";
    }

    private static String most(Answer answer) {
        Most most = answer.most();
        if (most.isOver()) {
            return "no trailer at all: " + over(most);
        }
        return most.unknown().isEmpty()
                ? "up to " + RoomWords.about(answer.figured())
                        + Wording.within(answer.figured().measure()) + by(most.governs())
                : "not known"
                        + (most.atMost().known()
                                ? ", but no more than " + RoomWords.atMost(answer) + by(most.governs())
                                : "")
                        + "; to be found out: " + RoomWords.fields(most.missing());
    }

    private static String over(Most most) {
        return most.over().stream()
                        .map(step -> "the " + step.limit().words() + " is exceeded by "
                                + Digits.quantity(most.passed(step), RoomMeasures.TRAILER)
                                + (most.isTooClose(step) ? " (" + TooClose.WORDS + ")" : ""))
                        .collect(Collectors.joining(", "))
                + (most.taken() > 0 ? " even so" : " without one");
    }

    private static String by(Optional<Step> step) {
        return step.map(limit -> ", limited by the " + limit.limit().words()).orElse("");
    }

    /** What the vehicle alone allows, where the trailer's own limits decide. */
    private static Optional<String> alone(Answer answer) {
        Most most = answer.most();
        boolean others = !most.isOver()
                && most.unknown().isEmpty()
                && most.steps().get(0).limit().of() == Limit.Of.TRAILER;
        return most.steps().stream()
                .filter(step -> others && step.limit().of() == Limit.Of.VEHICLE)
                .findFirst()
                .map(step ->
                        Wording.within(Measure.most(RoomMeasures.TRAILER, "", step.most())) + by(Optional.of(step)));
    }

    private boolean isTooHeavyEmpty(Answer answer) {
        Figure most = answer.most().figure();
        return !answer.most().isOver()
                && most.known()
                && trailer.lightest().known()
                && trailer.lightest().isAbove(most);
    }

    /** What may be on the ball where the trailer's mass is not known. */
    private String onBall(InLoading loading) {
        return trailer.mass().known() || !trailer.ball().known()
                ? ""
                : loading.ball()
                        .filter(ball -> ball.most().atMost().known())
                        .map(ball -> ball.most().isOver()
                                ? "none, " + over(ball.most())
                                : "at most " + RoomWords.about(ball.figured()) + RoomWords.atMost(ball)
                                        + by(ball.most().governs()))
                        .orElse("");
    }

    private static String kilograms(Figure mass) {
        return mass.known() ? Digits.quantity(mass.value(), RoomMeasures.TRAILER) : "";
    }
}
