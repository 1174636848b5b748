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

    /** Two days' work side by side is done on Wednesday, by one pair of hands on Thursday. */
    @Test
    void theDaysAreThoseOfManyHandsAndTheLastOfOnePairIsSaidBeside() throws FaultsException {
        var advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        """
                        fitments:
                          - {name: Box, kind: other, mass: 0 kg, lead-time: 0 days, work: {days: 1}}
                          - {name: Shelf, kind: other, mass: 0 kg, lead-time: 0 days, work: {days: 1}}
                        """));
        assertEquals(
                new Paragraph(
                        "Done by 2026-11-25 at the earliest, where as many jobs as can be go on at once, as in the days below;"
                                + " by 2026-11-26 with one pair of hands, one job after the other in this order. The whole is"
                                + " late by as much as any step on the critical path is."),
                WorkTable.blocks(advice.loadings().get(0).plan()).get(0));
    }

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
