package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Space;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is left aboard where a canopy stood that is off, as far as the places tell and nobody says what it stands in. */
final class Carriers {

    private static final MeasureKind STANDS_IN = MeasureKind.word(
                    "across.left-in-air", "whether it stays aboard at a place in the canopy that is off")
            .byLoading();

    static final List<MeasureKind> KINDS = List.of(STANDS_IN);

    private Carriers() {}

    static void loading(Loading loading, List<Measure> measures) {
        List<Fitment> off = loading.plan().fitments(Kind.CANOPY).stream()
                .filter(canopy -> !loading.carries(canopy))
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
                part.at().ifPresent(at -> aboard.put(part.name(), at));
            }
        }
        for (Tank tank : loading.plan().sheet().tanks()) {
            if (loading.carries(tank) && tank.in().isEmpty()) {
                aboard.put(tank.name(), tank.at());
            }
        }
        List<String> left = aboard.keySet().stream()
                .filter(name -> off.stream().anyMatch(canopy -> holds(loading, canopy, aboard.get(name))))
                .toList();
        left.forEach(name -> measures.add(Measure.of(STANDS_IN, name, Choice.of(YesNo.YES))));
        if (left.isEmpty()) {
            measures.add(Measure.of(STANDS_IN, "parts aboard", Choice.of(YesNo.NO)));
        }
    }

    /** By the space that the sheet gives it, else by its length and width above the tray that stays on. */
    private static boolean holds(Loading loading, Fitment canopy, Point at) {
        if (canopy.space().isPresent()) {
            Space space = canopy.space().get();
            return between(space.from().x(), at.x(), space.to().x())
                    && between(space.from().y(), at.y(), space.to().y())
                    && between(space.from().z(), at.z(), space.to().z());
        }
        Body body = (Body) canopy.details();
        Figure half = body.width().times(0.5);
        return loading.bodies().stream()
                .filter(tray -> tray.kind() == Kind.TRAY && tray.at().isPresent())
                .findFirst()
                .filter(tray -> canopy.at().isPresent())
                .map(tray -> {
                    Figure floor = tray.at().get().z();
                    Figure top = canopy.at().get().z().times(2).minus(floor);
                    return between(body.front(), at.x(), body.front().plus(body.length()))
                            && between(half.times(-1), at.y(), half)
                            && between(floor, at.z(), top);
                })
                .orElse(false);
    }

    /** Not where any of the three is not known. */
    private static boolean between(Figure one, Figure place, Figure other) {
        return place.isAbove(one.least(other)) && place.isBelow(one.most(other));
    }
}
