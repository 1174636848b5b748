package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.OnRoof;
import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.RackLoad;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.IntakeDetails.Snorkel;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How high the vehicle is with everything on, against the lowest door, bridge or deck on its way. */
final class Height {

    private static final MeasureKind TOP = MeasureKind.rated(
                    "across.top",
                    "mm",
                    0,
                    "how high it reaches, or its middle where no space is given",
                    "headroom on the way")
            .byLoading();

    static final List<MeasureKind> KINDS = List.of(TOP);

    private Height() {}

    private static final Comparator<Reaching> HIGHEST = Comparator.comparingDouble(reaching -> reaching.top.value());

    private static final FieldSchema SPACE = RecordSchema.of(Fitment.class).field("space");

    /**
     * A part, a tank or a piece of cargo.
     *
     * @param top how high it is known to reach
     * @param unseen what would tell its top, where only its middle is known and its top would matter
     */
    private record Reaching(String name, Figure top, Optional<Missing> unseen) {}

    /**
     * The highest of parts, tanks and cargo. A middle tells that it is too high but never that it is not: what is on the roof or
     * on a rack and has its middle near the headroom, or no height, is asked for its top, and that all fits is told only where
     * the space of each part up there, and of each body, is given. Aerials fold and are looked at by themselves.
     */
    static void loading(Loading loading, List<Measure> measures) {
        Figure headroom = loading.plan().sheet().trip().headroom();
        if (!headroom.known()) {
            return;
        }
        Figure near = headroom.minus(loading.plan().practice(PracticeId.ACROSS_REACH_MOST));
        List<Fitment> parts = loading.plan().sheet().fitments().stream()
                .filter(part -> loading.carries(part) && part.kind() != Fitment.Kind.AERIAL)
                .toList();
        List<Reaching> all = reaching(loading, parts, near);
        Optional<Reaching> unseen =
                all.stream().filter(reaching -> reaching.unseen.isPresent()).max(HIGHEST);
        Optional<Reaching> highest =
                all.stream().filter(reaching -> reaching.top.known()).max(HIGHEST);
        boolean over =
                highest.filter(reaching -> reaching.top.isAbove(headroom)).isPresent();
        if (unseen.isPresent() && !over) {
            unseen.ifPresent(reaching -> measures.add(
                    Measure.of(TOP, reaching.name, Figure.missing(reaching.unseen.orElseThrow()), headroom)));
        } else if (over || isSeen(loading, parts)) {
            highest.ifPresent(reaching -> measures.add(Measure.of(TOP, reaching.name, reaching.top, headroom)));
        }
    }

    /** Whether the space of each part up there, and of each body, is given, and there is one. */
    private static boolean isSeen(Loading loading, List<Fitment> parts) {
        Set<String> onRacks = RackLoad.onRacks(loading);
        List<Fitment> high = parts.stream()
                .filter(part -> isHigh(part, loading, onRacks) || part.details() instanceof Body)
                .toList();
        return !high.isEmpty()
                && high.stream()
                        .allMatch(part -> loading.plan().places().space(part).isPresent());
    }

    /** @param near above which a middle is near the headroom */
    private static List<Reaching> reaching(Loading loading, List<Fitment> parts, Figure near) {
        Sheet sheet = loading.plan().sheet();
        Places places = loading.plan().places();
        Set<String> onRacks = RackLoad.onRacks(loading);
        Map<String, PointMass> masses = new HashMap<>();
        loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.FITMENT)
                .forEach(mass -> masses.put(mass.name(), mass));
        List<Reaching> all = new ArrayList<>();
        for (Fitment part : parts) {
            PointMass mass = masses.get(part.name());
            if (mass != null) {
                Figure top = top(part, places, mass);
                boolean unseen =
                        isHigh(part, loading, onRacks) && places.space(part).isEmpty() && !top.isAtMost(near);
                all.add(new Reaching(
                        part.name(),
                        top,
                        unseen ? Optional.of(SPACE.missingIn("fitments." + part.name())) : Optional.empty()));
            }
        }
        for (Tank tank : sheet.tanks()) {
            if (loading.carries(tank)) {
                boolean high = OnRoof.of(tank, sheet).is(YesNo.YES) || onRacks.contains(tank.name());
                all.add(reaching(tank.name(), tank.top(), places.of(tank), high, near));
            }
        }
        for (Sheet.Load load : sheet.cargo()) {
            if (loading.carries(load)) {
                boolean high = OnRoof.of(load, sheet).is(YesNo.YES) || onRacks.contains(load.name());
                all.add(reaching(load.name(), load.top(), places.of(load), high, near));
            }
        }
        return all;
    }

    /** What tells its top by itself. @param high whether it is on the roof or on a rack */
    private static Reaching reaching(String name, Figure told, Point at, boolean high, Figure near) {
        Figure top = told.or(at.z());
        boolean unseen = high && !told.known() && !top.isAtMost(near);
        return new Reaching(name, top, unseen ? told.missing().stream().findFirst() : Optional.empty());
    }

    /** Whether a part is on the roof, or on a rack wherever that is. */
    private static boolean isHigh(Fitment part, Loading loading, Set<String> onRacks) {
        return part.roof().is(YesNo.YES)
                || OnRoof.of(part, loading.plan().sheet()).is(YesNo.YES)
                || onRacks.contains(part.name());
    }

    private static Figure top(Fitment part, Places places, PointMass mass) {
        Figure top = places.space(part)
                .map(space -> space.from().z().most(space.to().z()))
                .orElse(mass.at().z())
                .plus(mass.raised());
        // A snorkel has its head's height beside its place.
        return part.details() instanceof Snorkel snorkel
                        && !snorkel.headHeight().isBelow(top)
                        && snorkel.headHeight().known()
                ? snorkel.headHeight()
                : top;
    }
}
