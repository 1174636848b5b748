package fitworthy.quantity;

/**
 * A figure that the sheet does not give.
 *
 * @param path the field that would hold it, such as {@code vehicle.ratings.gcm}
 * @param meaning what it is
 * @param find where a person finds it
 */
public record Missing(String path, String meaning, String find) {}
