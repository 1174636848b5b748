package fitworthy.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a value of a sheet is meant. */
public enum Mark {
    /** Read, measured or told by somebody who knows. */
    STATED,
    /** The writer's guess. */
    ABOUT,
    /** What such a thing commonly is, by the rule book. */
    USUAL,
    /** Wanted from somebody: the same as left out. */
    ASKED;

    private static final Pattern GUESS =
            Pattern.compile("(about|usual)" + QuantityText.SPACE + "+(.*)", Pattern.DOTALL);
    private static final Pattern OPEN = Pattern.compile("ask|unknown|usual");

    /** Whether a value so marked is no fact. */
    public boolean isGuess() {
        return this == ABOUT || this == USUAL;
    }

    /** The word that a sheet marks a value by. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A value in words with the mark before it where it is a guess, as a sheet would write it. */
    public String before(String value) {
        return isGuess() ? word() + " " + value : value;
    }

    /**
     * What a sheet writes of a value.
     *
     * @param text the value itself, without its mark; empty where it is asked for, or left to a book that has none
     */
    public record Marked(Mark mark, String text) {

        /** Whether no value stands there. */
        public boolean isOpen() {
            return text.isEmpty() && mark != STATED;
        }
    }

    /** Whether what is written asks for a value and gives none. */
    public static boolean isAsked(String written) {
        return OPEN.matcher(written).matches();
    }

    /** Takes the mark off what a sheet writes. */
    public static Marked read(String written) {
        if (isAsked(written)) {
            return new Marked(written.equals(USUAL.word()) ? USUAL : ASKED, "");
        }
        Matcher guess = GUESS.matcher(written);
        if (!guess.matches()) {
            return new Marked(STATED, written);
        }
        return new Marked(guess.group(1).equals("about") ? ABOUT : USUAL, guess.group(2));
    }
}
