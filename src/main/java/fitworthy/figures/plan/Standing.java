package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import java.util.List;
import java.util.Optional;

/** Whether something stands in or on a part, as far as their places tell. */
public final class Standing {

    private Standing() {}

    /** Whether a place can be held against that of a part: it has a space, or is a tray or canopy. */
    public static boolean carries(Plan plan, Fitment part) {
        return part.details() instanceof Body || plan.places().space(part).isPresent();
    }

    /** Whether it holds a place; no as soon as one direction says so, missing where one does not say. */
    public static Choice<YesNo> holds(Plan plan, Fitment carrier, Point at) {
        Sides sides = sides(plan, carrier, at);
        return Choice.every(sides.along, sides.across, sides.up);
    }

    /** Whether it holds a place for all that is told: of what stands in or on it nobody needs to say how far aside. */
    public static boolean holdsAsFarAsTold(Plan plan, Fitment carrier, Point at) {
        Sides sides = sides(plan, carrier, at);
        return sides.along.is(YesNo.YES) && sides.up.is(YesNo.YES) && !sides.across.is(YesNo.NO);
    }

    /**
     * Whether what is at a place is surely under a body's floor or beside it, so that it is neither in nor on it, whatever else
     * is not told.
     */
    public static boolean isClear(Plan plan, Fitment carrier, Point at) {
        Places places = plan.places();
        Figure lowest = places.space(carrier)
                .map(space -> space.from().z().least(space.to().z()))
                .orElseGet(() -> floor(plan, (Body) carrier.details()));
        return at.z().isSurelyWithin(lowest) || across(places, carrier, at).is(YesNo.NO);
    }

    /** Whether a place is above or below a part; as far aside as nobody says, it is. */
    static Choice<YesNo> over(Places places, Fitment carrier, Point at) {
        Choice<YesNo> along = along(places, carrier, at);
        return across(places, carrier, at).is(YesNo.NO) ? Choice.of(YesNo.NO) : along;
    }

    /** Whether a place is within a part in each direction. */
    private record Sides(Choice<YesNo> along, Choice<YesNo> across, Choice<YesNo> up) {}

    /**
     * By the space that the sheet gives it; a tray or canopy else by its length, its width and the floor that it has or
     * stands on: what is above that floor stands in it or on it.
     */
    private static Sides sides(Plan plan, Fitment carrier, Point at) {
        Places places = plan.places();
        return new Sides(
                along(places, carrier, at),
                across(places, carrier, at),
                places.space(carrier)
                        .map(space ->
                                between(space.from().z(), at.z(), space.to().z()))
                        .orElseGet(() -> above(floor(plan, (Body) carrier.details()), places.of(carrier), at.z())));
    }

    private static Choice<YesNo> along(Places places, Fitment carrier, Point at) {
        return places.space(carrier)
                .map(space -> between(space.from().x(), at.x(), space.to().x()))
                .orElseGet(() -> {
                    Body body = (Body) carrier.details();
                    return between(body.front(), at.x(), body.front().plus(body.length()));
                });
    }

    private static Choice<YesNo> across(Places places, Fitment carrier, Point at) {
        return places.space(carrier)
                .map(space -> between(space.from().y(), at.y(), space.to().y()))
                .orElseGet(() -> {
                    Figure half = ((Body) carrier.details()).width().times(0.5);
                    return between(half.times(-1), at.y(), half);
                });
    }

    /** That of the canopy, or else of the tray; neither is guessed from where the tray's mass sits. */
    private static Figure floor(Plan plan, Body canopy) {
        return plan.fitments(Kind.TRAY).stream()
                .findFirst()
                .map(tray -> canopy.floor().or(((Body) tray.details()).floor()))
                .orElse(canopy.floor());
    }

    /** Where the floor is not given, what is no lower than the canopy's own centre of mass is above it all the same. */
    private static Choice<YesNo> above(Figure floor, Optional<Point> canopy, Figure height) {
        if (!floor.known() && canopy.filter(at -> height.isAtLeast(at.z())).isPresent()) {
            return Choice.of(YesNo.YES);
        }
        List<Missing> lacking = height.known() ? floor.missing() : height.missing();
        return lacking.isEmpty() ? Choice.yesNo(height.isAbove(floor)) : Choice.missing(lacking.get(0));
    }

    /** No where it is beyond both. */
    private static Choice<YesNo> between(Figure one, Figure place, Figure other) {
        if (place.isAtMost(one) && place.isAtMost(other) || place.isAtLeast(one) && place.isAtLeast(other)) {
            return Choice.of(YesNo.NO);
        }
        if (place.known() && one.known() && other.known()) {
            return Choice.of(YesNo.YES);
        }
        return Choice.missing(
                place.missingWith(one.plus(other), place).missing().get(0));
    }
}
