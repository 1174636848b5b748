package fitworthy.engine;

/** The one thing a rule may do. Rule files know it as {@code advice}. */
public interface RuleAction {

    /**
     * Gives the advice of a card.
     *
     * @param id the card's id, which is the rule's name
     * @param evidence the measures and practice values the condition matched, the judged measure first
     */
    void give(String id, Object... evidence);
}
