package fitworthy.advice.remedy;

import fitworthy.quantity.Dimension;

/** A figure of a remedy, in the unit used inside, and the unit it is printed in; none for a number. */
record Amount(double value, String unit) {

    /** How it is printed. */
    static final String PATTERN = "(-?[0-9]+(?:\\.[0-9]+)?(?: (?:[a-zA-Z/]+[0-9]?|%))?)";

    static Amount of(String text) {
        String[] parts = text.split(" ");
        if (parts.length == 1 || Dimension.ofUnit(parts[1]) == null) {
            return new Amount(Double.parseDouble(parts[0]), "");
        }
        return new Amount(Double.parseDouble(parts[0]) * Dimension.size(parts[1]), parts[1]);
    }
}
