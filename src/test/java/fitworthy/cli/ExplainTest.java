package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.printout.ExplanationPrintout;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The explain command. */
class ExplainTest {

    private static final String TOURING = "scenarios/touring.yaml";

    @Test
    void showsTheFormulaWithItsNumbers() {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Fitworthy.run(new PrintWriter(out), new PrintWriter(err), Map.of("FITWORTHY_CACHE",
                Books.CACHE.toString(), "FITWORTHY_RULES", Books.RULES.toString()), "explain", TOURING, "fuel.range-short");
        assertEquals(0, code, err.toString());
        assertTrue(out.toString().contains("      worked out: range = 100 x fuel / consumption, fuel = "), out.toString());
    }

    @Test
    void everyRuleFitsInEightyColumns() throws FaultsException {
        Sheet sheet = SheetReader.sheet(NodeReader.read(Path.of(TOURING), new ArrayList<>()),
                Books.shipped().regions().keySet(), new ArrayList<>());
        Advice advice = Adviser.advise(Books.shipped(), sheet);
        int worked = 0;
        for (String id : Books.shipped().cards().keySet()) {
            StringWriter out = new StringWriter();
            ExplanationPrintout.print(new PrintWriter(out), advice, id);
            List<String> wide = out.toString().lines().filter(line -> line.length() > 80).toList();
            assertEquals(List.of(), wide, id);
            worked += out.toString().contains("worked out: ") ? 1 : 0;
        }
        assertTrue(worked > 50, "worked out " + worked);
    }
}
