package fitworthy.book;

/** How good the evidence for a value or a rule is, best first. */
public enum Basis {
    PUBLISHED("read in a published text"),
    CALCULATION("follows by arithmetic from the figures shown"),
    PUBLISHED_SECONDHAND("read in a page that quotes or sums up the published text"),
    COMMON_PRACTICE("common practice of the trade"),
    MEMORY("from memory, not checked against a published text"),
    /** Never in a book: a value that a house sets over it. */
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
