package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Vehicle;
import java.util.List;

/** What the tyres and wheels of an axle as planned carry. Masses in kg. */
public final class RunningGear {

    private RunningGear() {}

    /** How many wheels an axle has. */
    public static int wheels(Plan plan, boolean rear) {
        return rear && dualRear(plan) ? 4 : 2;
    }

    /** What its tyres carry by their load index. */
    public static Figure tyresCarry(Plan plan, boolean rear) {
        return plan.tables().tyreLoad(index(plan, rear)).times(wheels(plan, rear));
    }

    /** What its wheels carry by their rating. */
    public static Figure wheelsCarry(Plan plan, boolean rear) {
        return plan.wheels().rating().times(wheels(plan, rear));
    }

    /** How {@link #tyresCarry} came about. */
    public static Working[] tyresCarried(Plan plan, boolean rear) {
        Figure index = index(plan, rear);
        return new Working[] {
            new Working.Formula(
                    "carried = tyres x load of one",
                    List.of(
                            tyreCount(plan, rear),
                            in("load of one", plan.tables().tyreLoad(index), "kg"))),
            indexed(index)
        };
    }

    /** How {@link #wheelsCarry} came about. */
    public static Working wheelsCarried(Plan plan, boolean rear) {
        return new Working.Formula(
                "carried = wheels x rating",
                List.of(
                        in("wheels", Figure.of(wheels(plan, rear)), ""),
                        in("rating", plan.wheels().rating(), "kg")));
    }

    /** How many tyres an axle has, as a formula names it. */
    public static Working.Input tyreCount(Plan plan, boolean rear) {
        return in("tyres", Figure.of(wheels(plan, rear)), "");
    }

    /** Where the load of a tyre is read. */
    public static Working indexed(Figure index) {
        return new Working.Formula("from the table of load indices", List.of(in("index", index, "")));
    }

    /** The tyres on the road, as the law counts them there. */
    public static PassengerTyres onTheRoad(Plan plan) {
        return VehicleClass.tyres(
                plan,
                Choice.any(plan.tyreSets().stream().map(TyreSet::passenger)).orElseThrow());
    }

    /** Whether what the wheels carry is a question: not for the maker's own under the maker's own axle limits. */
    public static boolean wheelsInQuestion(Plan plan) {
        Vehicle.Ratings made = plan.vehicle().ratings();
        boolean raised = !plan.ratings().frontAxle().equals(made.frontAxle())
                || !plan.ratings().rearAxle().equals(made.rearAxle());
        return !plan.fitments(Fitment.Kind.WHEELS).isEmpty()
                || raised
                || plan.wheels().rating().known();
    }

    private static Figure index(Plan plan, boolean rear) {
        return rear && dualRear(plan)
                ? plan.tyres(rear).dualLoadIndex()
                : plan.tyres(rear).loadIndex();
    }

    private static boolean dualRear(Plan plan) {
        Choice<YesNo> planned = plan.wheels().dualRear();
        return (planned.known() ? planned : plan.vehicle().wheels().dualRear()).is(YesNo.YES);
    }
}
