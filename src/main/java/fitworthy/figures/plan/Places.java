package fitworthy.figures.plan;

import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Space;
import fitworthy.sheet.Tank;
import java.util.Optional;

/**
 * The places on a sheet, as sure as they are: each coordinate that is given no tolerance is taken to lie within the
 * sheet's {@code assumed-place} of what is written. Topics get a place here alone, so that no figure worked out of
 * places is surer than they are. Lengths in m.
 */
public final class Places {

    private final Sheet sheet;
    private final double assumed;

    Places(Sheet sheet) {
        this.sheet = sheet;
        this.assumed = assumed(sheet);
    }

    /** Tolerance of a place of a sheet that is given none, in m. */
    static double assumed(Sheet sheet) {
        return sheet.assumedPlace().or(Figure.of(Sheet.ASSUMED_PLACE)).value();
    }

    /** The driver's eye. */
    public Point eye() {
        return known(sheet.vehicle().view().eye());
    }

    /** Where a part is; empty where the sheet does not say. */
    public Optional<Point> of(Fitment part) {
        return part.at().map(this::known);
    }

    /** Where the middle of a tank is. */
    public Point of(Tank tank) {
        return known(tank.at());
    }

    /** Where a person sits. */
    public Point of(Sheet.Person person) {
        return known(person.at());
    }

    /** Where a piece of cargo is. */
    public Point of(Sheet.Load cargo) {
        return known(cargo.at());
    }

    /** The space that a part takes up; empty where the sheet does not say. */
    public Optional<Space> space(Fitment part) {
        return part.space().map(space -> new Space(known(space.from()), known(space.to())));
    }

    /** A place as the sheet writes it. */
    Point known(Point written) {
        return written.orTolerance(assumed);
    }
}
