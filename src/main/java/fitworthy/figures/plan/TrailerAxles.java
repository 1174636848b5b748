package fitworthy.figures.plan;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import java.util.List;

/** What the axles of a trailer may bear. */
public final class TrailerAxles {

    private TrailerAxles() {}

    /** Greatest load on the axles in kg: as the sheet gives it, else what the load on the ball leaves. */
    public static Figure load(Trailer trailer) {
        return trailer.gtm().or(trailer.rated().minus(trailer.ball()));
    }

    /** How {@link #load} came about, in the name and the unit of a result; nothing where the sheet gives it. */
    public static Working[] working(String result, Trailer trailer, String unit) {
        return trailer.gtm().known()
                ? new Working[0]
                : new Working[] {
                    new Working.Formula(
                            result + " = rated - ball",
                            List.of(in("rated", trailer.rated(), unit), in("ball", trailer.ball(), unit)))
                };
    }
}
