package fitworthy.counter.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.InBrowser;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What to buy on a phone, where the heads of its columns have no room. */
class TablesOnAPhoneTest {

    /** Of each cell that is seen: what stands before it, and the head of its column. */
    private static final String NAMED =
            """
            return [...document.querySelectorAll(".paper table.list td")].filter(cell => cell.textContent.trim()).map(cell => [
              getComputedStyle(cell, "::before").content,
              cell.closest("table").querySelectorAll("thead th")[cell.cellIndex].textContent]);
            """;

    @RegisterExtension
    static final InBrowser page = new InBrowser(360, 740);

    @Test
    void eachFigureSaysWhatItIsOf() {
        page.show("/sheets/touring.yaml/buy");
        List<?> cells = (List<?>) page.script(NAMED);
        assertTrue(cells.size() > 20, cells.size() + " cells");
        for (Object each : cells) {
            List<?> cell = (List<?>) each;
            assertFalse(cell.get(1).toString().isBlank());
            assertEquals("\"" + cell.get(1) + ": \"", cell.get(0));
        }
        Map<?, ?> read = page.window().executeCdpCommand("Accessibility.getFullAXTree", Map.of());
        List<?> first = (List<?>) cells.get(0);
        assertTrue(read.toString().contains("value=" + first.get(1) + ": "), "is read aloud: " + first.get(1));
    }
}
