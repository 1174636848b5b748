package fitworthy.batch;

import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Judged;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Wording;
import java.util.Optional;

/** What was compared, in the measure's unit; all null where nothing was. */
public record ComparedFigures(String unit, Double value, Double limit, Double margin) {

    public static final ComparedFigures NONE = new ComparedFigures(null, null, null, null);

    public static ComparedFigures of(Judged judged, Optional<Comparison> comparison) {
        MeasureKind kind = judged.measure().kind();
        return comparison
                .map(compared -> new ComparedFigures(
                        kind.unit(),
                        Wording.exact(compared.value(), kind),
                        Wording.exact(compared.limit(), kind),
                        Wording.exact(compared.margin(), kind)))
                .orElse(NONE);
    }
}
