package fitworthy.printout;

/** For whom a document is printed, which decides what stands in it and what leads. */
public enum Readers {
    /** The two pages, and the annex that they rest on. */
    ANYBODY,
    /** The two pages and the pictures. */
    CUSTOMER,
    /** The same as for anybody, with order of work, workings and everything that is in order. */
    WORKSHOP,
    /** Mass sheet, alterations, certificates and workings, then the findings. */
    ENGINEER;

    /** What has all that the first pages leave out: a customer's copy has no annex. */
    String whole() {
        return this == CUSTOMER ? "the full print" : "the annex";
    }
}
