package fitworthy.search;

/**
 * A lever pulled some of its steps.
 *
 * @param step 1 to as many as the lever has
 */
record Pull(Lever lever, int step) {

    /** A lever pulled as far as it goes. */
    static Pull full(Lever lever) {
        return new Pull(lever, lever.steps());
    }

    Change change() {
        return lever.at().apply(strength());
    }

    /** What the customer gives up. */
    double kilograms() {
        return lever.kilograms() * strength();
    }

    /** Whether there is nothing between this change and none. */
    boolean isWhole() {
        return lever.steps() == 1;
    }

    /** The same lever pulled another number of steps. */
    Pull at(int other) {
        return new Pull(lever, other);
    }

    private double strength() {
        return (double) step / lever.steps();
    }
}
