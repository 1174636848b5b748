package fitworthy.document;

/** Sheets of paper. */
public enum Paper {
    A4("210mm 297mm"),
    LETTER("8.5in 11in");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** Width and height as CSS writes them. */
    String size() {
        return size;
    }
}
