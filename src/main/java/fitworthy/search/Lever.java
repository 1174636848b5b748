package fitworthy.search;

import java.util.function.DoubleFunction;

/**
 * A way to change a plan, from not at all to as far as it goes.
 *
 * @param thing what it acts on; two levers on one thing are not pulled together
 * @param steps how many steps it has; 1 for a change that is made or not
 * @param at the change at a strength of 0 to 1
 * @param kilograms what the customer gives up at full strength
 */
record Lever(String thing, int steps, DoubleFunction<Change> at, double kilograms) {

    /** A change that is made or not, and gives up nothing. */
    static Lever whole(String thing, Change change) {
        return new Lever(thing, 1, strength -> change, 0);
    }
}
