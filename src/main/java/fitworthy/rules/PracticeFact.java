package fitworthy.rules;

/** What rules see of a practice value. */
public interface PracticeFact {

    /** {@code topic.what} */
    String id();

    /** In the unit used inside. */
    double value();
}
