package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    /** A part and how high it is known to reach. */
    private record Reaching(String name, Figure top) {}

    /**
     * The highest part. A middle tells that it is too high but never that it is not: that is told only where the space of
     * each part that stands on the roof, and of each body, is given. Aerials fold and are looked at by themselves.
     */
    static void loading(Loading loading, List<Measure> measures) {
        Figure headroom = loading.plan().sheet().trip().headroom();
        List<Fitment> parts = loading.plan().sheet().fitments().stream()
                .filter(part -> loading.carries(part) && part.kind() != Fitment.Kind.AERIAL)
                .toList();
        Places places = loading.plan().places();
        Map<String, PointMass> masses = new HashMap<>();
        loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.FITMENT)
                .forEach(mass -> masses.put(mass.name(), mass));
        Optional<Reaching> highest = parts.stream()
                .filter(part -> masses.containsKey(part.name()))
                .map(part -> new Reaching(part.name(), top(part, places, masses.get(part.name()))))
                .filter(reaching -> reaching.top.known())
                .max(Comparator.comparingDouble(reaching -> reaching.top.value()));
        List<Fitment> high = parts.stream()
                .filter(part -> part.roof().is(YesNo.YES) || part.details() instanceof Body)
                .toList();
        boolean all = !high.isEmpty()
                && high.stream().allMatch(part -> places.space(part).isPresent());
        highest.filter(reaching -> headroom.known() && (all || reaching.top.isAbove(headroom)))
                .ifPresent(reaching -> measures.add(Measure.of(TOP, reaching.name, reaching.top, headroom)));
    }

    private static Figure top(Fitment part, Places places, PointMass mass) {
        return places.space(part)
                .map(space -> space.from().z().most(space.to().z()))
                .orElse(mass.at().z())
                .plus(mass.raised());
    }
}
