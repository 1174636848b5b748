package fitworthy.counter.side;

import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;

/** Places along the vehicle in words. */
final class PlaceWords {

    private PlaceWords() {}

    /** From the nearer side of an axle, such as {@code 800 mm ahead of the front axle}. @param x behind the front axle, m */
    static String along(Figure x, Figure wheelbase) {
        if (!x.known()) {
            return "place not known";
        }
        boolean behindRear = wheelbase.known() && x.value() > wheelbase.value();
        double from = behindRear ? x.value() - wheelbase.value() : x.value();
        String distance = x.mark().before(Digits.number(Math.abs(from), "mm", 0) + " mm");
        return distance
                + (from < 0
                        ? " ahead of the front axle"
                        : behindRear ? " behind the rear axle" : " behind the front axle");
    }
}
