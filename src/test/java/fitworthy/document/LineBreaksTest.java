package fitworthy.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a line of a PDF may end. */
class LineBreaksTest {

    private static List<String> pieces(String text) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> pieces = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
            if (to > from) {
                pieces.add(text.substring(from, to));
            }
            from = to;
        }
        return pieces;
    }

    @Test
    void aShortWordIsNotBrokenAtItsSlash() {
        assertEquals(
                List.of("rate ", "60 ", "N/mm, ", "tyres ", "265/70R17 ", "112S"),
                pieces("rate 60 N/mm, tyres 265/70R17 112S"));
        assertEquals(List.of("12 ", "L/100km"), pieces("12 L/100km"));
        assertEquals(List.of("Long-", "range ", "tank"), pieces("Long-range tank"));
    }

    @Test
    void aSlashBetweenSpacesIsOneOfTheWords() {
        assertEquals(List.of("front ", "/ ", "rear"), pieces("front / rear"));
    }

    /** 24 letters stay whole, 25 are broken as an address is. */
    @Test
    void whatIsTooLongForALineIsBrokenThere() {
        assertEquals(List.of("abcdefghijkl/mnopqrstuvw"), pieces("abcdefghijkl/mnopqrstuvw"));
        assertEquals(2, pieces("abcdefghijklm/nopqrstuvwx").size());
        String address = "https://maker.example/handbooks/2024/utility/towing/ratings.html";
        assertTrue(pieces(address).size() >= 6, pieces(address).toString());
        assertEquals(address, String.join("", pieces(address)));
    }
}
