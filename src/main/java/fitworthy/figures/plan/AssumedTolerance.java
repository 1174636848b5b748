package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;

/** The tolerance of a mass of a sheet that is given none, as a share of it. */
final class AssumedTolerance {

    /** Where the sheet names none: an assumption, see docs/method.md. */
    private static final double SHARE = 0.05;

    private AssumedTolerance() {}

    static double of(Sheet sheet) {
        return sheet.assumedTolerance().or(Figure.of(SHARE)).value();
    }
}
