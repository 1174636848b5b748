package fitworthy.figures.suspension;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.sheet.SuspensionDetails.Springs;
import fitworthy.sheet.Vehicle;
import java.util.List;
import java.util.Optional;

/**
 * One axle's body on its springs.
 *
 * @param springs the planned ones, if any
 * @param made the suspension as made
 * @param carried what the axle carries without the planned wheels, tyres and half of the planned springs, less those
 *     they replace, kg
 */
record Oscillation(Optional<Springs> springs, Vehicle.AxleSuspension made, Figure carried) {

    /** What both springs carry, in kg. */
    Figure sprung() {
        return carried.minus(made.unsprung());
    }

    /** Rate at one wheel, N/m. */
    Figure rate() {
        return springs.map(Oscillation::wheelRate).orElse(made.wheelRate());
    }

    Figure frequency() {
        return SpringRate.frequency(rate(), sprung().times(0.5));
    }

    Working[] working(String result, String rateName) {
        Working frequency = new Working.Formula(
                result + " = sqrt(2 x " + rateName + " / (carried - unsprung)) / (2 x pi)",
                List.of(
                        in(rateName, rate(), "N/m"),
                        in("carried", carried, "kg"),
                        in("unsprung", made.unsprung(), "kg")));
        return springs.map(planned -> new Working[] {frequency, atWheel(rateName, planned)})
                .orElse(new Working[] {frequency});
    }

    static Working atWheel(String result, Springs springs) {
        return new Working.Formula(
                result + " = spring x lever^2",
                List.of(in("spring", springs.rate(), "N/m"), in("lever", springs.motionRatio(), "")));
    }

    static Figure wheelRate(Springs springs) {
        return SpringRate.atWheel(springs.rate(), springs.motionRatio());
    }
}
