package fitworthy.book;

import fitworthy.schema.ChoiceWords.NotOffered;

/** How good the evidence for a value or a rule is, best first. */
public enum Basis {
    PUBLISHED("published text"),
    CALCULATION("worked out from the figures shown"),
    PUBLISHED_SECONDHAND("second-hand source"),
    COMMON_PRACTICE("common practice of the trade"),
    MEMORY("from memory, not checked"),
    /** Never in a book: what a rule of law rests on where none of its texts is of the country. */
    @NotOffered
    ELSEWHERE("texts of other countries alone"),
    /** Never in a book: a value that a house sets over it. */
    @NotOffered
    HOUSE("set by the shop");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** The grade in words fit for a printout. */
    public String words() {
        return words;
    }
}
