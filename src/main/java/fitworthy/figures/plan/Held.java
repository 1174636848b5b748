package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * What the points of a part hold: what is written, or all that the sheet puts in or on it, itself included, in the
 * loading in which that is most. Of what has no known mass nothing counts, so that the sum is the least that it can be.
 *
 * @param mass in kg
 * @param contents what the sheet puts in or on it
 * @param least whether more may be in it, since nobody says what the points hold
 */
public record Held(Figure mass, List<Input> contents, boolean least) {

    /** @param written what the sheet says that the points hold */
    public static Held of(Plan plan, Fitment part, Figure written) {
        Set<String> within = plan.sheet().withContents(Set.of(part.name()));
        List<Input> heaviest = plan.cases().stream()
                .map(loadCase -> contents(plan, loadCase, within))
                .max(Comparator.comparingDouble(
                        contents -> Working.total(contents).value()))
                .orElseThrow();
        Figure told = written.orTolerance(AssumedTolerance.of(plan.sheet()));
        return new Held(told.most(Masses.of(part, plan.sheet())).most(Working.total(heaviest)), heaviest, false);
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

    private static List<Input> contents(Plan plan, LoadCase loadCase, Set<String> within) {
        Sheet sheet = plan.sheet();
        double share = AssumedTolerance.of(sheet);
        Set<String> off = sheet.withContents(loadCase.off());
        List<Input> contents = new ArrayList<>();
        sheet.fitments().stream()
                .filter(part -> within.contains(part.name()) && !off.contains(part.name()))
                .forEach(part -> contents.add(in(part.name(), Masses.of(part, sheet), "kg")));
        for (Tank tank : sheet.tanks()) {
            if (within.contains(tank.name()) && !off.contains(tank.name())) {
                if (tank.stock().is(YesNo.NO)) {
                    contents.add(in(tank.name(), tank.mass().orTolerance(share), "kg"));
                }
                contents.add(in(Liquids.name(tank), Liquids.mass(tank, Masses.fill(plan, loadCase, off, tank)), "kg"));
            }
        }
        sheet.cargo().stream()
                .filter(load -> within.contains(load.in()) && !off.contains(load.in()) && loadCase.carries(load.name()))
                .forEach(load -> contents.add(in(load.name(), load.mass().orTolerance(share), "kg")));
        return contents.stream().filter(input -> input.figure().known()).toList();
    }
}
