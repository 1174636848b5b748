package fitworthy.quantity;

/**
 * A figure that the sheet does not give, or the rule book does not hold.
 *
 * @param path the field that would hold it, such as {@code vehicle.ratings.gcm}
 * @param meaning what it is
 * @param find where a person finds it; empty where it is a gap of the rule book
 */
public record Missing(String path, String meaning, String find) {

    /** Something that the rule book does not hold, which no figure of a customer's makes up for. */
    public static Missing inBook(String path, String meaning) {
        return new Missing(path, meaning, "");
    }

    /** Whether it is a gap of the rule book and no figure to bring. */
    public boolean isInBook() {
        return find.isEmpty();
    }
}
