package fitworthy.figures.water;

import fitworthy.quantity.Figure;

/** How long drinking water lasts, and how much of it can surge in a tank. */
public final class WaterSupply {

    private static final double HOURS_A_DAY = 24;
    private static final Figure HALF = Figure.of(0.5, 0);

    private WaterSupply() {}

    /**
     * Water for each person and day, in L: {@code litres / (people days)}.
     *
     * @param hours length of the way between two places with supplies, h
     */
    public static Figure perPersonAndDay(Figure litres, Figure people, Figure hours) {
        return litres.dividedBy(people).dividedBy(hours).times(HOURS_A_DAY);
    }

    /** Time for which water lasts, in h. @param use what one person uses a day, L */
    public static Figure lasting(Figure litres, Figure people, Figure use) {
        return litres.dividedBy(people).dividedBy(use).times(HOURS_A_DAY);
    }

    /**
     * Time for which water is left at the end of the way, in h; negative where it runs out before. A South Australian
     * government leaflet asks for water at 6 L a person and day for the way and three to four days more.
     *
     * @param use what one person uses a day, L
     * @param hours length of the way, h
     */
    public static Figure reserve(Figure litres, Figure people, Figure use, Figure hours) {
        return lasting(litres, people, use).minus(hours);
    }

    /** Water in L for people who each use so much a day, over a time in h. */
    public static Figure needed(Figure people, Figure use, Figure hours) {
        return people.times(use).times(hours).times(1 / HOURS_A_DAY);
    }

    /**
     * The liquid that can run from one side of a tank without baffles to the other, in L: no more than there is, and no
     * more than the empty space takes up. It is greatest half full and nothing in a full tank. An own measure.
     *
     * @param capacity volume of the tank, L
     * @param fill from 0 to 1, as long as it stays so
     */
    public static Figure surge(Figure capacity, Figure fill) {
        return capacity.times(fill.least(Figure.of(1, 0).minus(fill)));
    }

    /** The most of it, in L, while a tank is used up: half full, where it was fuller at the start. */
    public static Figure mostSurge(Figure capacity, Figure fill) {
        return surge(capacity, fill.least(HALF));
    }
}
