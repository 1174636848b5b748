package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.BatteryPlace;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What the points of a part hold: what is written, or all that the sheet puts in or on it, itself included, in the
 * loading in which that is most. Of what has no known mass, or of which it is open whether it stands in a canopy, nothing
 * counts, so that the sum is the least that it can be.
 *
 * @param mass in kg
 * @param contents what the sheet puts in or on it
 * @param least whether more may be in it, since nobody says what the points hold
 */
public record Held(Figure mass, List<Input> contents, boolean least) {

    /** @param written what the sheet says that the points hold */
    public static Held of(Plan plan, Fitment part, Figure written) {
        List<Input> heaviest = loadings(plan, part)
                .map(contents -> contents.stream()
                        .filter(thing -> thing.mass().known())
                        .map(thing -> in(thing.name(), thing.mass(), "kg"))
                        .toList())
                .max(Comparator.comparingDouble(
                        contents -> Working.total(contents).value()))
                .orElse(List.of());
        Figure told = written.orTolerance(AssumedTolerance.of(plan.sheet()));
        return new Held(told.most(Masses.of(part, plan.sheet())).most(Working.total(heaviest)), heaviest, false);
    }

    /** What legs lift, kg: as told, else what is held, that is all that travels in it; never less than the part itself. */
    public static Figure lifted(Plan plan, Fitment part, Figure told, Figure held) {
        Figure written = told.orTolerance(AssumedTolerance.of(plan.sheet()));
        return (held.known() ? written.or(held) : written).most(Masses.of(part, plan.sheet()));
    }

    /**
     * How far the middle of a part and all that the sheet puts in or on it lies behind the front axle, in m, in the loading
     * in which that is least; missing where the place or mass of any is.
     *
     * @param own where the middle of the part itself is, where it has no place
     */
    public static Figure middle(Plan plan, Fitment part, Point own) {
        return loadings(plan, part)
                .map(contents -> Centre.of(contents.stream()
                                .map(thing -> new PointMass(
                                        thing.name(),
                                        Sort.FITMENT,
                                        thing.mass(),
                                        thing.at().orElse(own),
                                        false))
                                .toList())
                        .x())
                .reduce(Figure::least)
                .orElse(own.x());
    }

    /**
     * Where what is written is not known, what the sheet puts in it, if the points are too weak for that alone: more would
     * not help them.
     *
     * @param bears what the points bear together, kg
     * @param least what they have to bear over what they hold
     */
    public Held orTooMuch(Figure bears, Figure least) {
        Figure sure = Working.total(contents);
        return mass.known() || !bears.isBelow(least.times(sure)) ? this : new Held(sure, contents, true);
    }

    /** Whether what stands at a place, and is said to be in nothing, stands in a part. */
    public static boolean byPlace(Plan plan, Fitment part, Point at) {
        return part.kind() == Fitment.Kind.CANOPY && Standing.holdsAsFarAsTold(plan, part, at);
    }

    /** How that came about. */
    public Working working(Figure written) {
        return () -> {
            List<String> lines = new ArrayList<>(new Working.Formula(
                            "held = max(written, contents)",
                            List.of(in("written", written, "kg"), in("contents", Working.total(contents), "kg")))
                    .lines());
            lines.addAll(new Working.Sum("contents", contents).lines());
            return lines;
        };
    }

    /** What stands in a part, in kg, and where, as far as it has a place. */
    private record Thing(String name, Figure mass, Optional<Point> at) {}

    /** The part and what the sheet puts in or on it, in each loading in which it is on. */
    private static Stream<List<Thing>> loadings(Plan plan, Fitment part) {
        Within within = Within.of(plan, part);
        return plan.cases().stream().flatMap(loadCase -> {
            Set<String> off = plan.off(loadCase);
            return off.contains(part.name()) ? Stream.empty() : Stream.of(things(plan, loadCase, off, within));
        });
    }

    private static List<Thing> things(Plan plan, LoadCase loadCase, Set<String> off, Within within) {
        Sheet sheet = plan.sheet();
        double share = AssumedTolerance.of(sheet);
        List<Thing> things = new ArrayList<>();
        sheet.fitments().stream()
                .filter(part -> within.parts().contains(part.name()) && !off.contains(part.name()))
                .forEach(part -> things.add(new Thing(
                        part.name(), Masses.of(part, sheet), plan.places().of(part))));
        for (Tank tank : sheet.tanks()) {
            if (within.parts().contains(tank.name()) && !off.contains(tank.name())) {
                Optional<Point> at = Optional.of(plan.places().of(tank));
                if (tank.stock().is(YesNo.NO)) {
                    things.add(new Thing(tank.name(), tank.mass().orTolerance(share), at));
                }
                things.add(
                        new Thing(Liquids.name(tank), Liquids.mass(tank, Masses.fill(plan, loadCase, off, tank)), at));
            }
        }
        sheet.cargo().stream()
                .filter(load -> within.holds(load) && !off.contains(load.in()) && loadCase.carries(load.name()))
                .forEach(load -> things.add(new Thing(
                        load.name(),
                        Masses.of(load, sheet),
                        Optional.of(plan.places().of(load)))));
        return things;
    }

    /**
     * What the sheet puts in or on a part: by its {@code in}, and in a canopy by its place too.
     *
     * @param parts names of parts and tanks, and of the part itself
     * @param loads names of cargo that stands in it by its place
     */
    private record Within(Set<String> parts, Set<String> loads) {

        static Within of(Plan plan, Fitment part) {
            Sheet sheet = plan.sheet();
            Set<String> parts = new HashSet<>(Set.of(part.name()));
            Set<String> loads = new HashSet<>();
            if (part.kind() == Fitment.Kind.CANOPY) {
                Predicate<Point> stands = at -> byPlace(plan, part, at);
                sheet.fitments().stream()
                        .filter(other -> other.in().isEmpty() && !(other.details() instanceof Body))
                        .filter(other -> isAtHome(other)
                                || plan.places().of(other).filter(stands).isPresent())
                        .forEach(other -> parts.add(other.name()));
                sheet.tanks().stream()
                        .filter(tank ->
                                tank.in().isEmpty() && stands.test(plan.places().of(tank)))
                        .forEach(tank -> parts.add(tank.name()));
                sheet.cargo().stream()
                        .filter(load ->
                                load.in().isEmpty() && stands.test(plan.places().of(load)))
                        .forEach(load -> loads.add(load.name()));
            }
            return new Within(plan.withContents(parts), loads);
        }

        private static boolean isAtHome(Fitment part) {
            return part.details() instanceof Battery battery && battery.place().is(BatteryPlace.CANOPY);
        }

        boolean holds(Sheet.Load load) {
            return parts.contains(load.in()) || loads.contains(load.name());
        }
    }
}
