package fitworthy.document;

import java.util.regex.Pattern;

/** Signs as print has them, in place of what a keyboard has: plus-minus, degree, square and cube, and minus. */
public final class Signs {

    private static final Pattern DEGREES = Pattern.compile("(?<=[0-9]) deg(?=C?\\b)");
    private static final Pattern SQUARE = Pattern.compile("(?<=[0-9] |/)(mm|cm|m|s)2\\b");
    private static final Pattern CUBE = Pattern.compile("(?<=[0-9] |/)m3\\b");
    /** Before a number, where nothing stands before it that could make it a date or the name of a thing. */
    private static final Pattern MINUS = Pattern.compile("(?<=^|[\\s(])-(?=[0-9])");

    /** Where there is nothing to say. */
    private static final Pattern NOTHING = Pattern.compile("^-$");

    private Signs() {}

    /** The same text with them. Names of files, addresses and whatever has no figure before it stay as they are. */
    public static String in(String text) {
        String signs = text.replace("+/-", "\u00B1");
        signs = DEGREES.matcher(signs).replaceAll("\u00B0");
        signs = SQUARE.matcher(signs).replaceAll("$1\u00B2");
        signs = CUBE.matcher(signs).replaceAll("m\u00B3");
        signs = NOTHING.matcher(signs).replaceAll("\u2013");
        return MINUS.matcher(signs).replaceAll("\u2212");
    }
}
