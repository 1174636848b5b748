package fitworthy.figures.recovery;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.FrontDetails.Winch;

/** How long a winch may pull before the battery that feeds it is half empty. */
public final class WinchRun {

    /** Part of a lead-acid starting battery that is better not passed: a caravan magazine, second-hand. */
    private static final double USABLE = 0.5;

    private WinchRun() {}

    /** Capacity in Ah of the battery that feeds a winch: of the one on the sheet that it names, else as given. */
    static Figure battery(Plan plan, Winch winch) {
        Choice<Winch.FedBy> fedBy = winch.fedBy();
        if (fedBy.is(Winch.FedBy.STARTER)) {
            return plan.vehicle().engine().starterBattery();
        }
        return fedBy.is(Winch.FedBy.SECOND)
                ? plan.details(Battery.class).stream()
                        .map(Battery::capacity)
                        .reduce(Figure::plus)
                        .orElse(winch.battery())
                : winch.battery();
    }

    /**
     * The time, {@code 0.5 C / (I - A)}. A battery gives less than its capacity at such a current, so the true time is
     * shorter; the time is one of pulling and leaves out the rests a winch needs.
     *
     * @param battery its capacity {@code C}, Ah
     * @param winch the current {@code I} the winch draws, A
     * @param left what the vehicle leaves over of its hot alternator {@code A}, A; below 0 where it needs more
     * @return the time in h; without end where what is left feeds the winch
     */
    public static Figure hours(Figure battery, Figure winch, Figure left) {
        Figure drain = winch.minus(left);
        return drain.value() <= 0 && battery.known()
                ? Figure.of(Double.POSITIVE_INFINITY, 0)
                : battery.times(USABLE).dividedBy(drain);
    }
}
