package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FrontDetails.LampPlace;
import fitworthy.sheet.FrontDetails.Lamps;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;

/** Whether a thing is carried on the roof: as its sheet says, else open for what is high enough. */
public final class OnRoof {

    /**
     * From this height of its centre on, in m, a thing may be on the roof where the sheet does not say: an assumption, see
     * docs/method.md.
     */
    private static final double ROOF_HEIGHT = 1.6;

    private OnRoof() {}

    /** Whether a kind of part reaches above a roof from elsewhere and, unless the sheet says so, is not on it. */
    static boolean reachesUp(Fitment.Kind kind) {
        return switch (kind) {
            case TRAY, CANOPY, SNORKEL, PRE_CLEANER, MIRRORS, REAR_CAMERA, AERIAL -> true;
            default -> false;
        };
    }

    /** A roof rack is there for nothing else. */
    public static Choice<YesNo> of(Fitment part) {
        if (reachesUp(part.kind())) {
            return Choice.yesNo(part.roof().is(YesNo.YES));
        }
        return switch (part.kind()) {
            case ROOF_RACK -> part.roof();
            case LAMPS -> lampsOnRoof(part);
            default -> part.at().map(at -> asTold(part.roof(), at)).orElse(part.roof());
        };
    }

    /** Where lamps sit is asked for by itself. */
    private static Choice<YesNo> lampsOnRoof(Fitment part) {
        Choice<LampPlace> place = ((Lamps) part.details()).place();
        return part.roof().known() || !place.known()
                ? part.at().map(at -> asTold(part.roof(), at)).orElse(part.roof())
                : Choice.yesNo(place.is(LampPlace.ROOF));
    }

    /** Whether a piece of cargo is carried on the roof. */
    public static Choice<YesNo> of(Sheet.Load cargo) {
        return asTold(cargo.roof(), cargo.at());
    }

    /** The same of a tank; the maker's own is in or under the vehicle. */
    public static Choice<YesNo> of(Tank tank) {
        return tank.stock().is(YesNo.YES) ? Choice.of(YesNo.NO) : asTold(tank.roof(), tank.at());
    }

    /** The same of a sheet's part: what stands in or on another is where that is, whatever is said of it by itself. */
    public static Choice<YesNo> of(Fitment part, Sheet sheet) {
        Choice<YesNo> own = of(part);
        return orCarrier(part.at().map(at -> behindCab(own, at, sheet)).orElse(own), part.in(), sheet);
    }

    /** The same of a sheet's tank. */
    public static Choice<YesNo> of(Tank tank, Sheet sheet) {
        return orCarrier(behindCab(of(tank), tank.at(), sheet), tank.in(), sheet);
    }

    /** The same of a sheet's cargo. */
    public static Choice<YesNo> of(Sheet.Load cargo, Sheet sheet) {
        return orCarrier(behindCab(of(cargo), cargo.at(), sheet), cargo.in(), sheet);
    }

    /** What stands behind the front of a tray is on that and not on the roof of a cab, however high. */
    private static Choice<YesNo> behindCab(Choice<YesNo> own, Point at, Sheet sheet) {
        boolean behind = sheet.fitments().stream()
                .filter(part -> part.kind() == Fitment.Kind.TRAY)
                .anyMatch(tray -> at.x().isAtLeast(((BodyDetails.Body) tray.details()).front()));
        return own.known() || !behind ? own : Choice.of(YesNo.NO);
    }

    private static Choice<YesNo> orCarrier(Choice<YesNo> own, String in, Sheet sheet) {
        if (in.isEmpty()) {
            return own;
        }
        return sheet.fitments().stream()
                .filter(part -> part.name().equals(in))
                .findFirst()
                .map(carrier -> of(carrier, sheet))
                .filter(there -> there.known() || !own.is(YesNo.YES))
                .orElse(own);
    }

    /** As the sheet says; where it does not, open for what is high enough. */
    private static Choice<YesNo> asTold(Choice<YesNo> told, Point at) {
        return told.known() || isHigh(at) ? told : Choice.of(YesNo.NO);
    }

    /** Whether a place is as high as a roof, or the top of a canopy, may be. */
    public static boolean isHigh(Point at) {
        return at.z().value() >= ROOF_HEIGHT;
    }
}
