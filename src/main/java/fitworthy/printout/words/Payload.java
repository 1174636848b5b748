package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.RoomLeft;
import fitworthy.advice.RoomLeft.Figured;
import fitworthy.advice.RoomLeft.InLoading;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.printout.words.Digits.Held;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Vehicle;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the vehicle may carry beyond its kerb mass, what the plan uses of that, and what is left, in a sentence. */
public final class Payload {

    private final Sheet sheet;
    private final Plan plan;
    private final List<InLoading> loadings;

    private Payload(Advice advice, RoomLeft room) {
        this.sheet = advice.sheet().planned();
        this.plan = advice.loadings().get(0).plan();
        this.loadings = room.loadings();
    }

    /** In the loading that leaves least, and in each of which it is not known. */
    public static String inShort(Advice advice) {
        return new Payload(advice, RoomLeft.of(advice)).sentence(false);
    }

    /** In each loading, with what the words mean. @param room that of the advice */
    public static String inFull(Advice advice, RoomLeft room) {
        return new Payload(advice, room).sentence(true);
    }

    private String sentence(boolean each) {
        Measure first = loadings.get(0).payload().measure();
        if (Double.isNaN(first.getLimit())) {
            return "not known: missing " + RoomWords.fields(first.missing()) + ".";
        }
        List<String> apart = Stream.of(each ? "GVM less kerb mass" : "", asMade())
                .filter(words -> !words.isEmpty())
                .toList();
        return Held.of(first).limitText() + brackets(apart) + ": "
                + told(each).map(loading -> used(loading, each)).collect(Collectors.joining("; ")) + ".";
    }

    private Stream<InLoading> told(boolean each) {
        return each
                ? loadings.stream()
                : Stream.concat(
                        loadings.stream()
                                .filter(loading -> loading.payload().measure().isKnown())
                                .min(Comparator.comparingDouble(
                                        loading -> loading.payload().measure().getHeadroom()))
                                .stream(),
                        loadings.stream()
                                .filter(loading -> !loading.payload().measure().isKnown()));
    }

    /** What it is until a planned part that raises the GVM is approved; empty where none does. */
    private String asMade() {
        Vehicle made = sheet.vehicle();
        Figure payload = made.ratings().gvm().minus(made.mass().kerb());
        return plan.raising()
                .filter(kit -> !kit.isDone())
                .filter(kit -> payload.known())
                .map(kit -> number(RoomMeasures.PAYLOAD.printed(payload.value(), -1), RoomMeasures.PAYLOAD) + " until "
                        + kit.name() + " is approved")
                .orElse("");
    }

    private String used(InLoading loading, boolean each) {
        Figured payload = loading.payload();
        Measure measure = payload.measure();
        List<String> in = Stream.of(
                        loadings.size() == 1 ? "" : loading.loading(), each && loading.towing() ? "ball counted" : "")
                .filter(words -> !words.isEmpty())
                .toList();
        if (!measure.isKnown()) {
            return "what is used is not known" + brackets(in) + ", missing " + RoomWords.fields(measure.missing());
        }
        Held held = Held.of(measure);
        return RoomWords.about(payload) + number(held.value(), held.kind()) + " used, "
                + number(Math.abs(held.left()), held.kind()) + (held.left() < 0 ? " over" : " left")
                + (Math.abs(measure.getHeadroom()) < measure.getTolerance() ? ", " + TooClose.WORDS : "")
                + brackets(in);
    }

    /** The unit is said once, behind the payload. */
    private static String number(double mass, MeasureKind kind) {
        return Digits.number(mass, kind.unit(), kind.decimals());
    }

    private static String brackets(List<String> words) {
        return words.isEmpty() ? "" : " (" + String.join("; ", words) + ")";
    }
}
