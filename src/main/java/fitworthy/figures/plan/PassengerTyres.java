package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import java.util.List;

/**
 * Passenger tyres on what is no car, where the law counts them for less than their index (49 CFR 571.110 S4.2.2.2).
 *
 * @param less whether these are counted for less where the law counts any so
 * @param divisor what their load is divided by; not known where the law counts all tyres in full
 */
public record PassengerTyres(Choice<YesNo> less, Figure divisor) {

    /** Under the law where the plan is. */
    public static PassengerTyres under(Plan plan, Choice<YesNo> less) {
        return new PassengerTyres(less, plan.practice(PracticeId.TYRES_PASSENGER_DIVISOR));
    }

    /** Whether they surely count for all that their index says. */
    public boolean countInFull() {
        return !divisor.known() || less.is(YesNo.NO);
    }

    /**
     * What they count for, kg. Where it is not known whether for less, it is asked only where that decides: a load
     * within the lesser figure is carried either way, and one above the index is too much either way.
     *
     * @param carried by the load index, kg
     * @param load on them, kg
     */
    public Figure counted(Figure carried, Figure load) {
        if (countInFull()) {
            return carried;
        }
        Figure lessened = carried.dividedBy(divisor);
        if (less.known() || !load.isAbove(lessened)) {
            return lessened;
        }
        return load.isAbove(carried) ? carried : Figure.missing(less.missing());
    }

    /** The load that their index has to be for, kg: more than what is on them unless they surely count in full. */
    public Figure forIndex(Figure load) {
        return countInFull() ? load : load.times(divisor);
    }

    /** How {@link #counted} came from what the index says; nothing where it is that. */
    public Working working(Figure carried, Figure counted) {
        return working(carried, counted, "counted");
    }

    /** The same under another name for what they count for. */
    public Working working(Figure carried, Figure counted, String name) {
        return () -> counted.equals(carried)
                ? List.of()
                : new Working.Formula(
                                name + " = carried / divisor",
                                List.of(in("carried", carried, "kg"), in("divisor", divisor, "")))
                        .lines();
    }
}
