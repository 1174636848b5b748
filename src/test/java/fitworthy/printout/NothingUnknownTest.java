package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What is told to do names no figure that nobody knows, and the JSON of no case one that is no number. */
class NothingUnknownTest {

    @Test
    void noAdviceOfAnyCaseNamesWhatIsNotKnown() throws FaultsException {
        Set<String> faults = new TreeSet<>();
        for (Cases.Case each : Books.cases()) {
            Advice advice = Adviser.advise(Books.engine().with(each.house()), each.sheet());
            for (Finding finding : advice.findings()) {
                if (Wording.remedy(finding).contains("not known")) {
                    faults.add(finding.key() + " in " + each + ": " + Wording.remedy(finding));
                }
            }
            StringWriter json = new StringWriter();
            JsonPrintout.print(new PrintWriter(json), advice, Severity.NOTE);
            if (json.toString().contains("NaN")) {
                faults.add("NaN in the JSON of " + each);
            }
        }
        assertEquals("", String.join("\n", faults));
    }
}
