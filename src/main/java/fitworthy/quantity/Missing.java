package fitworthy.quantity;

/**
 * A figure that the sheet does not give, or the rule book does not hold.
 *
 * @param path the field that would hold it, such as {@code vehicle.ratings.gcm}
 * @param meaning what it is
 * @param find where a person finds it; empty where it is a gap of the rule book
 * @param mark how the sheet marks what stands there: asked for, or a guess that does not count here; stated where it
 *     marks nothing
 */
public record Missing(String path, String meaning, String find, Mark mark) {

    public Missing(String path, String meaning, String find) {
        this(path, meaning, find, Mark.STATED);
    }

    /** Something that the rule book does not hold, which no figure of a customer's makes up for. */
    public static Missing inBook(String path, String meaning) {
        return new Missing(path, meaning, "");
    }

    /** The same with another mark. */
    public Missing marked(Mark other) {
        return new Missing(path, meaning, find, other);
    }

    /** Whether the sheet says that somebody was asked for it. */
    public boolean asked() {
        return mark == Mark.ASKED;
    }

    /** Whether it is a gap of the rule book and no figure to bring. */
    public boolean isInBook() {
        return find.isEmpty();
    }
}
