package fitworthy.document;

/** Sheets of paper. */
public enum Paper {
    A4("210mm 297mm", 297),
    LETTER("8.5in 11in", 279.4);

    /** Margins above and below the text, in millimetres; pdf.css has them too. */
    private static final double MARGINS = 29;

    private final String size;
    private final double height;

    Paper(String size, double height) {
        this.size = size;
        this.height = height;
    }

    /** How deep the text of a page may be, in points. */
    public double textHeight() {
        return (height - MARGINS) / 25.4 * 72;
    }

    /** Width and height as CSS writes them. */
    String size() {
        return size;
    }
}
