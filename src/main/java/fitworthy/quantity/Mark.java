package fitworthy.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a value of a sheet is meant. */
public enum Mark {
    /** Read, measured or told by somebody who knows. */
    STATED,
    /** The writer's guess. */
    ABOUT,
    /** Wanted from somebody: the same as left out. */
    ASKED;

    private static final Pattern GUESS = Pattern.compile("about" + QuantityText.SPACE + "+(.*)", Pattern.DOTALL);
    private static final Pattern OPEN = Pattern.compile("ask|unknown");

    /** What a sheet writes of a value. @param text the value itself, without its mark; empty where it is asked for */
    public record Marked(Mark mark, String text) {}

    /** Whether what is written asks for a value and gives none. */
    public static boolean isAsked(String written) {
        return OPEN.matcher(written).matches();
    }

    /** Takes the mark off what a sheet writes. */
    public static Marked read(String written) {
        if (isAsked(written)) {
            return new Marked(ASKED, "");
        }
        Matcher guess = GUESS.matcher(written);
        return guess.matches() ? new Marked(ABOUT, guess.group(1)) : new Marked(STATED, written);
    }
}
