package fitworthy.printout;

/** For whom a document is printed, which decides what stands in it and what leads. */
public enum Readers {
    /** The two pages, and the annex that they rest on. */
    ANYBODY("two pages and the annex"),
    /** The two pages alone, to go with a quote. */
    QUOTE("two pages at most, alone"),
    /** The two pages and the pictures. */
    CUSTOMER("two pages and the pictures"),
    /** The same as for anybody, with order of work, workings and everything that is in order. */
    WORKSHOP("all of it, with order of work and workings"),
    /** Mass sheet, alterations, certificates and workings, then the findings. */
    ENGINEER("masses, certificates and workings first");

    private final String gets;

    Readers(String gets) {
        this.gets = gets;
    }

    /** What they get, in a few words. */
    public String gets() {
        return gets;
    }

    /** Whether what the first pages leave out stands in an annex; else in the full print alone. */
    boolean hasAnnex() {
        return this != CUSTOMER && this != QUOTE;
    }

    /** What has all that the first pages leave out, and who has it where that is not in hand. */
    String whole() {
        return hasAnnex() ? "the annex" : "the full print (ask the workshop for it)";
    }
}
