package fitworthy.advice.remedy;

import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import java.util.Comparator;

/** Which tyres a sheet has at an axle. */
public final class TyresAt {

    private TyresAt() {}

    /**
     * Where the sheet holds them: the planned set nearest to it that is not within a quarter of the wheelbase of the other
     * axle, or else the vehicle's own.
     *
     * @param subject what a finding is about; of one about no axle, any planned set
     */
    public static String path(Sheet sheet, String subject) {
        double wheelbase = sheet.vehicle().size().wheelbase().value();
        boolean front = subject.startsWith("front");
        boolean rear = subject.startsWith("rear");
        Comparator<Fitment> place = Comparator.comparingDouble(TyresAt::x);
        return sheet.planned().fitments().stream()
                .filter(each -> each.kind() == Fitment.Kind.TYRES)
                .filter(each -> each.at().isEmpty()
                        || !(front && x(each) >= 0.75 * wheelbase || rear && x(each) <= 0.25 * wheelbase))
                .min(rear ? place.reversed() : place)
                .map(each -> "fitments." + each.name())
                .orElse("vehicle.tyres");
    }

    private static double x(Fitment part) {
        return part.at().map(at -> at.x().value()).orElse(0.0);
    }
}
