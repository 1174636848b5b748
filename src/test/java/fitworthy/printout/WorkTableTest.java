package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.document.Report.Paragraph;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of work, where it is no more than an order. */
class WorkTableTest {

    @Test
    void withoutTimesTheOrderIsToldInASentence() throws FaultsException {
        var advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                        fitments:
                          - {name: Winch, kind: winch, mass: 30 kg, at: {x: -800 mm, y: 0 mm, z: 700 mm}, work: {after: [Bar]}}
                          - {name: Bar, kind: bar, mass: 50 kg, at: {x: -800 mm, y: 0 mm, z: 700 mm}}
                        """));
        assertEquals(
                List.of(
                        new Paragraph(
                                "How long the jobs take is not on the sheet, nor when the parts are there. In the order that gets"
                                        + " one pair of hands through soonest, each once its parts may be bought: Bar, Winch.")),
                WorkTable.blocks(advice.loadings().get(0).plan()));
    }
}
