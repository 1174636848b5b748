package fitworthy.figures.across;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.WheelbaseStretch;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.Space;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.Trailer;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What follows only from parts and topics taken together. */
public final class AcrossMeasures implements Topic {

    private static final MeasureKind OVERLAP = number(
                    "across.overlap", "mm", 0, "how deep the spaces of two parts reach into each other")
            .byLoading();
    private static final MeasureKind TWINS = number("across.twins", "", 0, "parts for one and the same job");
    private static final MeasureKind KIT_USE =
            rated("across.kit-use", "kg", 0, "GVM as made", "what the GCM leaves for the vehicle with this trailer");
    private static final MeasureKind BAR_LOAD = number("across.bar-load", "kg", 0, "load of the bar on the front axle")
            .signed()
            .byLoading();
    private static final MeasureKind BAR_HEAVIEST = number(
                    "across.bar-heaviest", "kg", 0, "heaviest bar in its place that the front axle bears")
            .signed()
            .byLoading();
    private static final MeasureKind APPROVALS =
            number("across.approval-parts", "", 0, "planned alterations that an engineer may have to certify");

    /** One of each is enough; where two are planned the figures go by the first. */
    private static final Set<Kind> ONE_IS_ENOUGH = Set.of(
            Kind.BRAKE_CONTROLLER,
            Kind.FUEL_SEPARATOR,
            Kind.CRANKCASE_SEPARATOR,
            Kind.SWITCH_PANEL,
            Kind.SNORKEL,
            Kind.AIRBOX,
            Kind.TOW_BAR,
            Kind.RATING_UPGRADE,
            Kind.TYRES,
            Kind.WHEELS,
            Kind.MIRRORS,
            Kind.BAR,
            Kind.SPRINGS,
            Kind.CHASSIS_EXTENSION);

    @Override
    public List<MeasureKind> kinds() {
        return Stream.of(
                        List.of(OVERLAP, TWINS, KIT_USE, BAR_LOAD, APPROVALS, BAR_HEAVIEST),
                        People.KINDS,
                        Carriers.KINDS,
                        TankLoads.KINDS,
                        SuppliesLoads.KINDS,
                        Height.KINDS,
                        Unusual.KINDS)
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        twins(plan, measures);
        People.plan(plan, measures);
        Carriers.plan(plan, measures);
        Unusual.plan(plan, measures);
        List<String> certified = Alterations.of(plan).stream()
                .map(alteration -> Words.hyphenated(alteration.name()).replace('-', ' '))
                .toList();
        if (!certified.isEmpty()) {
            measures.add(counted(APPROVALS, "certificates", certified));
        }
        Optional<Trailer> trailer = plan.trailer();
        if (trailer.isPresent()
                && plan.details(MassDetails.RatingUpgrade.class).stream()
                        .anyMatch(kit -> kit.gvm().known())) {
            Figure gcm = plan.ratings().gcm();
            Figure towed = trailer.get().mass();
            Figure ball = trailer.get().ball();
            // The ball's load is in the GVM.
            Figure left = gcm.minus(towed.minus(ball));
            measures.add(
                    Measure.of(KIT_USE, "rating kit", plan.vehicle().ratings().gvm(), left)
                            .worked(
                                    "left = GCM - (trailer - ball)",
                                    in("GCM", gcm, "kg"),
                                    in("trailer", towed, "kg"),
                                    in("ball", ball, "kg")));
        }
    }

    /**
     * How many there are of every kind planned more than once, of trays and canopies on at once, or that there is none
     * such.
     */
    private static void twins(Plan plan, List<Measure> measures) {
        Map<String, List<String>> planned = new TreeMap<>();
        plan.sheet().fitments().stream()
                .filter(part -> ONE_IS_ENOUGH.contains(part.kind()))
                .forEach(part -> planned.computeIfAbsent(job(part, plan), job -> new ArrayList<>())
                        .add(part.name()));
        if (plan.vehicle().brakeController().is(YesNo.YES)) {
            planned.computeIfPresent(words(Kind.BRAKE_CONTROLLER), (job, names) -> {
                names.add("the vehicle's own");
                return names;
            });
        }
        for (Kind body : List.of(Kind.TRAY, Kind.CANOPY)) {
            plan.cases().stream()
                    .map(loadCase -> plan.fitments(body).stream()
                            .map(Fitment::name)
                            .filter(name -> !loadCase.off().contains(name))
                            .toList())
                    .max(Comparator.comparing(List::size))
                    .filter(names -> !names.isEmpty())
                    .ifPresent(names -> planned.put(words(body), names));
        }
        boolean single = planned.values().stream().allMatch(names -> names.size() == 1);
        if (single && !planned.isEmpty()) {
            measures.add(Measure.of(TWINS, "parts", Figure.of(1, 0))
                    .worked(() -> List.of("one each of " + String.join(", ", planned.keySet()))));
        }
        planned.forEach((job, names) -> {
            if (names.size() > 1) {
                measures.add(counted(TWINS, job, names));
            }
        });
    }

    /** What only one part at a time can be. */
    private static String job(Fitment part, Plan plan) {
        // A set whose place does not tell may be at either axle.
        if (part.kind() == Kind.TYRES
                && plan.fitments(Kind.TYRES).stream()
                        .allMatch(set -> plan.axle(set).isPresent())) {
            return Words.hyphenated(plan.axle(part).get().name()) + " tyres";
        }
        return part.details() instanceof SuspensionDetails.Springs springs
                ? "set of " + Words.hyphenated(springs.end().value().name()) + " springs"
                : words(part.kind());
    }

    private static Measure counted(MeasureKind kind, String subject, List<String> names) {
        Figure one = Figure.of(1, 0);
        return Measure.of(kind, subject, Figure.of(names.size(), 0))
                .worked(new Working.Sum(
                        "count", names.stream().map(name -> in(name, one, "")).toList()));
    }

    private static String words(Kind kind) {
        return Words.hyphenated(kind.name()).replace('-', ' ');
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        Plan plan = loading.plan();
        overlaps(loading, measures);
        People.loading(loading, measures);
        Carriers.loading(loading, measures);
        TankLoads.loading(loading, measures);
        SuppliesLoads.loading(loading, measures);
        Height.loading(loading, measures);
        plan.fitments(Kind.BAR).stream().filter(loading::carries).forEach(bar -> loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.FITMENT && mass.name().equals(bar.name()))
                .forEach(mass -> bar(loading, mass, measures)));
    }

    private static void bar(Loading loading, PointMass bar, List<Measure> measures) {
        Figure wheelbase = loading.plan().wheelbase();
        Working.Input mass = in("mass", bar.mass(), "kg");
        Working.Input at = in("at", bar.at().x(), "mm");
        WheelbaseStretch stretch = loading.plan().stretch();
        Figure limit = loading.plan().ratings().frontAxle();
        Figure load = Levelling.front(loading);
        Figure onFront = bar.onFront(wheelbase);
        measures.add(Measure.of(BAR_LOAD, bar.name(), stretch.settled(onFront, stretch.unsettled(), load.minus(limit)))
                .worked("load = mass x (1 - at / wheelbase)", mass, at, in("wheelbase", wheelbase, "mm")));
        Figure over = stretch.most(load).minus(limit);
        Figure share = Figure.of(1, 0).minus(bar.at().x().dividedBy(wheelbase));
        measures.add(Measure.most(BAR_HEAVIEST, bar.name(), bar.mass().minus(over.dividedBy(share)))
                .worked(
                        "heaviest = mass - over / (1 - at / wheelbase)",
                        mass,
                        in("over", over, "kg"),
                        at,
                        in("wheelbase", wheelbase, "mm")));
    }

    /** A part and the space that it takes up. */
    private record Placed(String name, Space space) {}

    /**
     * Two parts that may want one place, the first by name first. @param overlap how deep, in m; missing where not known
     */
    private record Clash(Placed one, Placed other, Figure overlap) {

        /** All pairs of these that may not be clear of each other lengthwise, by name. */
        static List<Clash> among(List<Placed> placed) {
            List<Placed> byFront = placed.stream()
                    .sorted(Comparator.comparing(part -> Boxes.front(part.space)))
                    .toList();
            List<Clash> pairs = new ArrayList<>();
            for (int i = 0; i < byFront.size(); i++) {
                Placed first = byFront.get(i);
                double rear = Boxes.rear(first.space);
                for (int j = i + 1; j < byFront.size() && Boxes.front(byFront.get(j).space) <= rear; j++) {
                    Placed next = byFront.get(j);
                    Figure overlap = Boxes.overlap(first.space, next.space);
                    pairs.add(
                            first.name.compareTo(next.name) < 0
                                    ? new Clash(first, next, overlap)
                                    : new Clash(next, first, overlap));
                }
            }
            pairs.sort(Comparator.comparing((Clash clash) -> clash.one.name).thenComparing(clash -> clash.other.name));
            return pairs;
        }
    }

    private static void overlaps(Loading loading, List<Measure> measures) {
        List<Placed> placed = loading.plan().sheet().fitments().stream()
                .filter(loading::carries)
                .flatMap(part ->
                        loading.plan().places().space(part).map(space -> new Placed(part.name(), space)).stream())
                .sorted(Comparator.comparing(Placed::name))
                .toList();
        List<Clash> pairs = Clash.among(placed);
        List<Clash> clashes =
                pairs.stream().filter(pair -> !pair.overlap.isZero()).toList();
        for (Clash clash : clashes) {
            List<Figure> depths = Boxes.depths(clash.one.space, clash.other.space);
            measures.add(Measure.of(OVERLAP, clash.one.name + " and " + clash.other.name, clash.overlap)
                    .worked(
                            "depth = min(min(lengthwise, sideways), upright)",
                            in("lengthwise", depths.get(0), "mm"),
                            in("sideways", depths.get(1), "mm"),
                            in("upright", depths.get(2), "mm")));
        }
        if (placed.size() > 1 && clashes.isEmpty()) {
            double may = pairs.stream()
                    .mapToDouble(pair -> pair.overlap.tolerance())
                    .max()
                    .orElse(0);
            measures.add(Measure.of(OVERLAP, "parts with a given space", Figure.of(0, may))
                    .worked(() -> List.of("no two reach into each other of "
                            + placed.stream().map(Placed::name).collect(Collectors.joining(", ")))));
        }
    }
}
