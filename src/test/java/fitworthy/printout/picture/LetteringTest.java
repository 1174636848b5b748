package fitworthy.printout.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LetteringTest {

    @Test
    void textIsCutToItsRoomBetweenWholeLetters() {
        String lorry = "\uD83D\uDE9A";
        String cut = Lettering.fitted(lorry.repeat(20), 10, 60);
        assertTrue(Lettering.width(cut, 10) <= 60);
        assertEquals(lorry.repeat(4) + "...", cut);
        assertEquals("short", Lettering.fitted(" short ", 10, 60));
    }

    @Test
    void whatAnXmlDocumentCannotHoldOrTurnsTheLineIsLeftOut() {
        assertEquals("a b", Lettering.clean("a\u0000b"));
        assertEquals("ab", Lettering.clean("a\uD83Db"));
        assertEquals("ab", Lettering.clean("a\uFFFFb"));
        assertEquals("ab", Lettering.clean("a\u202E\u2066b"));
        assertEquals("one two", Lettering.clean("one\ntwo"));
        assertEquals(3, Lettering.clean("z" + "\u0324".repeat(50)).length());
    }

    /** Widths of Helvetica, Adobe's metrics, in thousandths of the size (from memory): the estimate is no narrower. */
    @Test
    void theEstimateIsNoNarrowerThanAUsualTypeface() {
        int[] helvetica = {556, 722, 278, 833, 944, 556, 222, 1015};
        String letters = "aAiMW0l@";
        for (int i = 0; i < helvetica.length; i++) {
            // A line of one letter only is no text; the widest two may stand out by a tenth.
            assertTrue(Lettering.width(letters.substring(i, i + 1), 1000) * 1.02 >= helvetica[i], letters.substring(i));
        }
    }
}
