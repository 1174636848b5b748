package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.printout.explain.ExplanationPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The explain command. */
class ExplainTest {

    private static final String TOURING = "scenarios/touring.yaml";

    @Test
    void showsTheFormulaWithItsNumbers() {
        Ran.of("explain", TOURING, "fuel.range-short")
                .printed(0)
                .says(" worked out: range = 100 x fuel / consumption, fuel = ");
    }

    @Test
    void showsHowTheRoomThatIsLeftWasWorkedOut() {
        Ran trailer = Ran.of("explain", TOURING, "room.trailer").printed(0);
        trailer.says("In the loading 'towing':");
        trailer.says("2600 kg (room.trailer)");
        trailer.says("governed by trailer's plate, then trailer's axles (GTM) at 2619");
        Ran.of("explain", TOURING, "room")
                .printed(0)
                .says("(room.range-planned)")
                .out()
                .lines()
                .forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void everyRuleFitsInEightyColumns() throws FaultsException {
        Sheet sheet = SheetReader.sheet(
                Sheets.file(TOURING), Books.shipped().regions().keySet(), new ArrayList<>());
        Advice advice = Adviser.advise(Books.engine(), sheet);
        int worked = 0;
        for (String id : Books.shipped().cards().keySet()) {
            StringWriter out = new StringWriter();
            ExplanationPrintout.print(new PrintWriter(out), advice, id);
            List<String> wide =
                    out.toString().lines().filter(line -> line.length() > 80).toList();
            assertEquals(List.of(), wide, id);
            worked += out.toString().contains("worked out: ") ? 1 : 0;
        }
        assertTrue(worked > 50, "worked out " + worked);
    }
}
