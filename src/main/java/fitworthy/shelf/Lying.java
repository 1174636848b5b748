package fitworthy.shelf;

/**
 * Something on the shelf that may be meant.
 *
 * @param mass as the shelf has it; empty where it has none
 */
public record Lying(String name, String mass) {

    /** Such as {@code Steel bar, 72 kg}. */
    public String words() {
        return mass.isEmpty() ? name : name + ", " + mass.replaceFirst("\\s*(\\+/-|\u00b1).*", "");
    }
}
