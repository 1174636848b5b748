package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is left without the part that it stands in or on: aboard where that part is off, as far as the places tell and
 * nobody says what it stands in, and planned where that part is not taken.
 */
final class Carriers {

    private static final MeasureKind STANDS_IN = MeasureKind.word(
                    "across.left-in-air", "whether it stays aboard at a place in what is off")
            .byLoading();
    private static final MeasureKind NOWHERE =
            MeasureKind.word("across.left-nowhere", "whether it stands in or on a part of a choice that is not taken");

    static final List<MeasureKind> KINDS = List.of(STANDS_IN, NOWHERE);

    private Carriers() {}

    static void plan(Plan plan, List<Measure> measures) {
        plan.leftNowhere().forEach(name -> measures.add(Measure.of(NOWHERE, name, Choice.of(YesNo.YES))));
        if (plan.leftNowhere().isEmpty() && !plan.sheet().options().isEmpty()) {
            measures.add(Measure.of(NOWHERE, "parts planned", Choice.of(YesNo.NO)));
        }
    }

    static void loading(Loading loading, List<Measure> measures) {
        List<Fitment> off = loading.plan().sheet().fitments().stream()
                .filter(part -> !loading.carries(part)
                        && (part.kind() == Kind.CANOPY
                                || loading.plan().places().space(part).isPresent()))
                .toList();
        if (off.isEmpty()) {
            return;
        }
        Map<String, Point> aboard = new TreeMap<>();
        for (Fitment part : loading.plan().sheet().fitments()) {
            if (loading.carries(part)
                    && part.in().isEmpty()
                    && part.kind() != Kind.CANOPY
                    && part.kind() != Kind.TRAY) {
                loading.plan().places().of(part).ifPresent(at -> aboard.put(part.name(), at));
            }
        }
        for (Tank tank : loading.plan().sheet().tanks()) {
            if (loading.carries(tank) && tank.in().isEmpty()) {
                aboard.put(tank.name(), loading.plan().places().of(tank));
            }
        }
        Map<String, Choice<YesNo>> held = new TreeMap<>();
        aboard.forEach((name, at) -> held.put(
                name,
                Choice.any(off.stream().map(carrier -> holds(loading, carrier, at)))
                        .orElseThrow()));
        List<Measure> left = held.entrySet().stream()
                .filter(part -> part.getValue().is(YesNo.YES))
                .map(part -> Measure.of(STANDS_IN, part.getKey(), part.getValue()))
                .toList();
        measures.addAll(left);
        Choice<YesNo> others = Choice.any(held.values().stream().filter(answer -> !answer.is(YesNo.YES)))
                .orElse(Choice.of(YesNo.NO));
        if (left.isEmpty() || !others.known()) {
            measures.add(Measure.of(STANDS_IN, "parts aboard", others));
        }
    }

    /**
     * By the space that the sheet gives it; a canopy else by its length and width above the tray that stays on; no as soon
     * as one of the three says so.
     */
    private static Choice<YesNo> holds(Loading loading, Fitment carrier, Point at) {
        Places places = loading.plan().places();
        Optional<Space> box = places.space(carrier);
        if (box.isPresent()) {
            Space space = box.get();
            return Choice.every(
                    between(space.from().x(), at.x(), space.to().x()),
                    between(space.from().y(), at.y(), space.to().y()),
                    between(space.from().z(), at.z(), space.to().z()));
        }
        Body body = (Body) carrier.details();
        Figure half = body.width().times(0.5);
        return loading.bodies().stream()
                .filter(tray -> tray.kind() == Kind.TRAY && places.of(tray).isPresent())
                .findFirst()
                .filter(tray -> places.of(carrier).isPresent())
                .map(tray -> {
                    Figure floor = places.of(tray).get().z();
                    Figure top = places.of(carrier).get().z().times(2).minus(floor);
                    return Choice.every(
                            between(body.front(), at.x(), body.front().plus(body.length())),
                            between(half.times(-1), at.y(), half),
                            between(floor, at.z(), top));
                })
                .orElse(Choice.of(YesNo.NO));
    }

    /** No where it is beyond both. */
    private static Choice<YesNo> between(Figure one, Figure place, Figure other) {
        if (place.isAtMost(one) && place.isAtMost(other) || place.isAtLeast(one) && place.isAtLeast(other)) {
            return Choice.of(YesNo.NO);
        }
        List<Missing> lacking = place.missingWith(one.plus(other), place).missing();
        return lacking.isEmpty() ? Choice.of(YesNo.YES) : Choice.missing(lacking.get(0));
    }
}
