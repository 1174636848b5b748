package fitworthy.search;

import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Liquids;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Forgone;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.shelf.Shelf;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The ways that a sheet leaves open to change its plan. */
final class Levers {

    private static final double TRAILER_STEP_KG = 10;
    private static final double MOVE_STEP_M = 0.01;
    /** A trailer is not offered at less than this share of its planned mass where its least is not known. */
    private static final double LIGHTEST_TRAILER = 0.5;

    private Levers() {}

    /**
     * Every lever that the sheet leaves open, what the cards of these findings say would put them right, tyres and wheels
     * of the rating that they name, and what lies on the shelf in place of a part.
     *
     * @param reserve the part of the fuel that stays in the tanks at the end of the longest leg, 0 to 1
     */
    static List<Lever> of(Node.Mapping root, Sheet sheet, Collection<Finding> findings, Shelf shelf, double reserve) {
        Set<Change.PutRight> right = new LinkedHashSet<>();
        findings.forEach(finding -> putRight(root, finding.judged()).ifPresent(right::add));
        List<Lever> levers = new ArrayList<>();
        right.forEach(change -> levers.add(Lever.whole(change.path().toString(), change)));
        Sheet planned = sheet.planned();
        levers.addAll(RatingLevers.of(root, planned, findings));
        levers.addAll(ShelfLevers.of(root, sheet, findings, shelf));
        GivenUp givenUp = new GivenUp(root, planned);
        for (Fitment fitment : planned.fitments()) {
            if (givenUp.mayGo(fitment)) {
                Change.Drop drop = givenUp.without(fitment);
                levers.add(new Lever(fitment.name(), 1, strength -> drop, givenUp.kilograms(fitment)));
            }
            // Nothing is saved by what is paid for and fitted; what moves or takes it off is a job to be planned.
            fitment.at()
                    .filter(at -> !fitment.isDone())
                    .ifPresent(at -> moves(levers, "fitments", fitment.name(), at.x(), fitment.mayMove()));
        }
        for (Sheet.Load cargo : planned.cargo()) {
            if (!cargo.isAlive()) {
                levers.add(new Lever(
                        cargo.name(),
                        1,
                        strength -> new Change.LeaveBehind(cargo.name()),
                        cargo.mass().value()));
                intoTrailer(sheet, cargo).ifPresent(levers::add);
            }
            moves(levers, "cargo", cargo.name(), cargo.at().x(), cargo.mayMove());
        }
        LeastTankFill needed = new LeastTankFill(planned, reserve);
        for (Tank tank : planned.tanks()) {
            tank(sheet, tank, needed.of(tank)).ifPresent(levers::add);
            towedEmpty(sheet, tank).ifPresent(levers::add);
        }
        sheet.trailer().ifPresent(trailer -> {
            double now = trailer.mass().value();
            double least =
                    trailer.lightest().or(Figure.of(now * LIGHTEST_TRAILER)).value();
            if (least < now) {
                levers.add(new Lever(
                        "trailer",
                        steps(now - least, TRAILER_STEP_KG),
                        strength -> new Change.LightenTrailer(
                                Math.floor(now - strength * (now - least) + 1e-6),
                                trailer.lightest().known()),
                        now - least));
            }
        });
        for (Sheet.Option option : sheet.options()) {
            for (Sheet.Alternative choice : option.choices()) {
                if (!choice.name().equals(option.taken().name())) {
                    Change.Choose choose = new Change.Choose(option.name(), choice.name());
                    levers.add(new Lever(
                            option.name(), 1, strength -> choose, givenUp.kilograms(lost(sheet, option, choice))));
                }
            }
        }
        return levers;
    }

    /** What of an open choice is not there if another is taken, with what stands in it; not what a part of its kind replaces. */
    private static Set<String> lost(Sheet sheet, Sheet.Option option, Sheet.Alternative choice) {
        List<String> gone = option.taken().parts().stream()
                .filter(part -> !choice.parts().contains(part))
                .toList();
        Set<String> lost = sheet.withContents(gone);
        sheet.fitments().stream()
                .filter(part -> gone.contains(part.name()) && Forgone.replaces(part, choice, sheet))
                .forEach(part -> lost.remove(part.name()));
        return lost;
    }

    /** What is carried in a loading that tows, where mass and ball load of the trailer are known: one that nobody has weighed may be full. */
    private static Optional<Lever> intoTrailer(Sheet sheet, Sheet.Load cargo) {
        return sheet.trailer()
                .filter(trailer ->
                        BallLoad.of(sheet).orElseThrow().filledIn().ball().known()
                                && trailer.mass().known()
                                && cargo.mass().known()
                                && isTowed(sheet, loading -> loading.carries(cargo.name())))
                .map(trailer -> Lever.whole(
                        cargo.name(),
                        new Change.IntoTrailer(
                                cargo.name(),
                                cargo.mass().value(),
                                sheet.cases().stream()
                                        .anyMatch(loading ->
                                                !loading.towing().is(YesNo.YES) && loading.carries(cargo.name())))));
    }

    /** A water tank that is not full of what the trip is known to need between two places with water. */
    private static Optional<Lever> towedEmpty(Sheet sheet, Tank tank) {
        return tank.liquid().is(Tank.Liquid.WATER)
                        && !sheet.trip().days().known()
                        && isTowed(
                                sheet,
                                loading -> loading.filled()
                                                .getOrDefault(tank.name(), tank.fill())
                                                .value()
                                        > 0)
                ? Optional.of(new Lever(
                        tank.name(),
                        1,
                        strength -> new Change.TowEmpty(tank.name()),
                        Liquids.mass(tank, tank.fill()).value()))
                : Optional.empty();
    }

    private static boolean isTowed(Sheet sheet, Predicate<LoadCase> wanted) {
        return sheet.cases().stream().anyMatch(loading -> loading.towing().is(YesNo.YES) && wanted.test(loading));
    }

    private static Optional<Change.PutRight> putRight(Node.Mapping root, Judged judged) {
        return judged.card().mendedBy().stream()
                .map(mended -> new Change.PutRight(
                        judged.subject(), mended.path(judged.subject()), mended.answer(), mended.by()))
                .filter(change -> change.path().above().in(root) != null)
                .min(Comparator.comparing(change -> change.path().in(root) == null));
    }

    /** A tank filled less, but for what the trip needs. @param least 0 to 1 */
    private static Optional<Lever> tank(Sheet sheet, Tank tank, double least) {
        double fullest = sheet.cases().stream()
                .map(loading -> loading.filled().getOrDefault(tank.name(), tank.fill()))
                .mapToDouble(Figure::value)
                .max()
                .orElse(tank.fill().value());
        // To whole per cents, as it is written.
        double spare = fullest - Math.ceil(least * 100 - 1e-6) / 100;
        double litres = tank.capacity().value() * spare;
        return spare <= 0 && least > 0
                ? Optional.empty()
                : Optional.of(new Lever(
                        tank.name(),
                        steps(spare, 0.01),
                        strength -> new Change.FillTo(tank.name(), fullest - spare * strength, litres * strength),
                        Liquids.mass(tank, Figure.of(spare)).value()));
    }

    private static void moves(List<Lever> levers, String list, String name, Figure x, Figure mayMove) {
        if (x.known() && mayMove.known() && mayMove.value() > 0) {
            for (int way : new int[] {-1, 1}) {
                levers.add(new Lever(
                        name,
                        steps(mayMove.value(), MOVE_STEP_M),
                        strength -> new Change.Move(list, name, x, way * strength * mayMove.value()),
                        0));
            }
        }
    }

    private static int steps(double range, double step) {
        return Math.max(1, (int) Math.ceil(range / step - 1e-6));
    }
}
