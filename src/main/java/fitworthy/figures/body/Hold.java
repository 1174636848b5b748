package fitworthy.figures.body;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.LoadBox;
import fitworthy.quantity.Figure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What holds something against one way in which it may come loose.
 *
 * @param share what holds it, over its weight
 * @param least what has to, over its weight
 * @param working how the share came about
 */
record Hold(Figure share, Figure least, Working working) {

    /** Bolts, brackets or hold-downs. @param limit of one of them, kg @param held what they hold, kg */
    static Hold by(Figure points, Figure limit, Figure held, Figure least) {
        return new Hold(
                LoadBox.holdDown(points, limit, held),
                least,
                new Working.Formula(
                        "ratio = points x limit / held",
                        List.of(in("points", points, ""), in("limit", limit, "kg"), in("held", held, "kg"))));
    }

    /**
     * Of all that holds a thing the one that leaves least for what its mass may be off, as what is asked against what there
     * is; nothing where any is too weak by the sheet's own figures, since that is told by itself.
     */
    static Optional<Measure> nearest(MeasureKind asked, String subject, List<Hold> holds) {
        return holds.stream().anyMatch(hold -> hold.share.isBelow(hold.least))
                ? Optional.empty()
                : holds.stream()
                        .max(Comparator.comparing(Hold::isUnsure)
                                .thenComparing(hold -> !hold.share.known())
                                .thenComparing(hold -> -hold.left().value()))
                        .map(hold -> Measure.of(asked, subject, hold.least, hold.share)
                                .worked(hold.working));
    }

    private boolean isUnsure() {
        return left().known() && left().value() < left().tolerance();
    }

    private Figure left() {
        return share.minus(least);
    }
}
