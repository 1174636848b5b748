package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Severity;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.recovery.RecoveryMeasures;
import fitworthy.quantity.Figure;
import fitworthy.sheet.VehicleEnd;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A rated recovery point at each end that has nothing to be pulled by, or nothing made for it. */
final class PointLevers {

    private PointLevers() {}

    static List<Lever> of(Advice advice) {
        Plan plan = advice.loadings().get(0).plan();
        return advice.findings().stream()
                .map(finding -> finding.judged())
                .filter(judged -> judged.measure().kind() == RecoveryMeasures.POINT
                        && judged.card().severity().value().compareTo(Severity.CHANGE) <= 0)
                .flatMap(judged -> lever(plan, judged).stream())
                .toList();
    }

    private static Optional<Lever> lever(Plan plan, Judged judged) {
        String end = judged.subject();
        Figure held = RecoveryMeasures.held(plan, VehicleEnd.valueOf(end.toUpperCase(Locale.ROOT)));
        return held.known()
                ? Optional.of(Lever.whole(
                        "recovery point at the " + end, new Change.RatedPoint(end, held.value() + held.tolerance())))
                : Optional.empty();
    }
}
