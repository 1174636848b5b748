package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Decision;
import fitworthy.document.Page;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.printout.json.BuyJson;
import fitworthy.printout.words.BuyWords;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a builder reads of the buying of a shipped scenario, in each output. */
class BuyTableTest {

    private static Arrangement scenario(String name) throws FaultsException {
        return Arrangement.of(Adviser.advise(Books.engine(), Sheets.read(Sheets.scenario(name))));
    }

    private static String printed(Arrangement arrangement) {
        StringWriter text = new StringWriter();
        Page page = new Page(new PrintWriter(text, true));
        BuyTable.print(page, arrangement);
        CostTable.print(page, arrangement.advice());
        return text.toString();
    }

    @Test
    void ofASmallPlanAllIsOrderedNow() throws FaultsException {
        assertEquals(
                """
                What to buy
                  Order now: Drawers, Fridge.

                Cost     2670.00 AUD for all parts and certificates.
                         Not counted: the workshop's time.

                """,
                printed(scenario("weekender")).replace("\r\n", "\n"));
    }

    /** The van takes it over, and each of its parts bears more than a tenth of some limit that is passed. */
    @Test
    void ofAnOverloadedPlanEachPartNamesTheLimitsItWaitsFor() throws FaultsException {
        String text = printed(scenario("overloaded"));
        assertTrue(text.contains("Order now: nothing"), text);
        assertTrue(text.contains("- Steel bar: towing the van: 305 kg over the GCM, 190 kg over the GVM"), text);
    }

    /** Each limit once, however many parts wait for it. */
    @Test
    void theLimitsThatPartsWaitForAreToldTogether() throws FaultsException {
        List<BuyList.Part> heavy = BuyList.of(scenario("overloaded")).parts().stream()
                .filter(BuyWords::waitsForLoad)
                .toList();
        assertEquals(6, heavy.size());
        assertEquals(
                "towing the van: 305 kg over the GCM, 190 kg over the GVM, 143 kg over the limit of the rear axle",
                BuyWords.loads(heavy));
    }

    /** 2560 kg of 2600 kg, 60 kg more or less, and 150 kg on the ball: 110 kg over when towing, 40 kg spare when not. */
    @Test
    void ofOneLimitTheWorstIsToldAndInWhichLoading() throws FaultsException {
        List<BuyList.Part> parts = BuyList.of(
                        plain(
                                """
                        vehicle: {mass: {kerb: 2300 kg +/- 60 kg, front-axle: 1250 kg +/- 60 kg, rear-axle: 1050 kg +/- 60 kg}, ratings: {gvm: 2600 kg}}
                        fitments:
                          - {name: Drawers, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2850 mm, y: 0 mm, z: 700 mm}}
                        cases: [{name: alone}, {name: towing, towing: yes}]
                        trailer: {name: Camper, mass: 1400 kg +/- 0 kg, ball: 150 kg +/- 0 kg}
                        """))
                .parts();
        assertEquals("towing: 110 kg over the GVM", BuyWords.loads(parts));
        assertTrue(
                BuyWords.brief(parts.get(0)).startsWith("towing: 110 kg over the GVM"), BuyWords.brief(parts.get(0)));
        assertFalse(BuyWords.full(parts.get(0)).contains("below the GVM"), BuyWords.full(parts.get(0)));
    }

    @Test
    void everyPartStandsOnceInTheTablesAndNoLineIsWide() throws FaultsException {
        for (String name : List.of("touring", "weekender", "overloaded")) {
            Arrangement arrangement = scenario(name);
            printed(arrangement).lines().forEach(line -> assertTrue(line.length() <= Page.COLUMNS, line));
            BuyList list = BuyList.of(arrangement);
            TreeSet<String> told = new TreeSet<>();
            BuyTable.blocks(arrangement).stream()
                    .filter(Table.class::isInstance)
                    .flatMap(block -> ((Table) block).rows().stream())
                    .map(Row::cells)
                    .forEach(cells -> assertTrue(told.add(cells.get(0)), cells.toString()));
            assertEquals(list.parts().size(), told.size());
            assertEquals(
                    list.parts(Decision.WAIT).size(),
                    BuyJson.Buy.of(arrangement).waiting().size());
        }
    }

    @Test
    void thatNothingCanBeOrderedYetIsSaid() throws FaultsException {
        Paragraph nothing = new Paragraph("Nothing can be ordered yet.");
        assertTrue(BuyTable.blocks(scenario("overloaded")).contains(nothing));
        assertFalse(BuyTable.blocks(scenario("weekender")).contains(nothing));
    }

    private static Arrangement plain(String yaml) throws FaultsException {
        return Arrangement.of(Adviser.advise(Books.engine(), Sheets.plainWith(yaml)));
    }

    /** A bar of 60 kg that hides the lamps, on a wagon of 2520 kg whose GVM is 2570 kg. */
    @Test
    void lessLoadIsNotToldToClearWhatOnlyAnotherChoiceClears() throws FaultsException {
        String bar =
                """
                vehicle: {ratings: {gvm: 2570 kg}}
                fitments:
                  - {name: Bar, kind: bar, mass: 60 kg +/- 0 kg, at: {x: -700 mm, y: 0 mm, z: 800 mm}, lamps-visible: %s}
                """;
        List<String> hidden = points(plain(bar.formatted("no")));
        assertEquals(1, hidden.size());
        assertTrue(hidden.get(0).startsWith("Bar: "), hidden.toString());
        assertTrue(hidden.get(0).contains("lamps"), hidden.toString());
        List<String> seen = points(plain(bar.formatted("yes")));
        assertTrue(
                seen.get(0).startsWith("Until the load is less (everything aboard: 10 kg over the GVM"),
                seen.toString());
    }

    private static List<String> points(Arrangement arrangement) {
        return BuyTable.inShort(arrangement, Readers.QUOTE).stream()
                .filter(Points.class::isInstance)
                .flatMap(block -> ((Points) block).texts().stream())
                .toList();
    }

    private static final String DRAWERS =
            """
            fitments: [{name: Drawers, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2700 mm, y: 0 mm, z: 700 mm}, lead-time: 7 days,
              work: {days: 2}}]
            """;

    /** Ordered later, work that nobody wants by a day ends later: no line says so, and none that a day of it is past. */
    @Test
    void withoutADayItIsWantedNoOrderIsLate() throws FaultsException {
        assertFalse(printed(plain(DRAWERS)).contains("Latest order day"), printed(plain(DRAWERS)));
        assertFalse(
                printed(plain(DRAWERS + "as-of: 2026-11-28\n")).contains("past"),
                "a Saturday, on which nothing is ordered");
        assertTrue(printed(plain(DRAWERS + "ready-by: 2026-12-11\n"))
                .contains("Latest order day: Drawers by 2026-12-03, to be ready by 2026-12-11."));
    }

    /** What to settle first says of what: by the order where that names it, else by what was found. */
    @Test
    void whatToSettleFirstNamesWhatItIsAbout() throws FaultsException {
        String nz = printed(
                plain(
                        DRAWERS
                                + """
                        trailer: {name: Van, mass: 1000 kg +/- 0 kg, rated: 1200 kg, ball: 100 kg +/- 0 kg, brakes: electric,
                          tyres: {count: "2", load-index: "90"}}
                        cases: [{name: tow, towing: yes}]
                        papers: {insurer-told: no}
                        region: nz
                        """));
        assertTrue(nz.contains("  - What the trailer's axles may carry is not known\n"), nz);
        assertFalse(nz.contains("Add up what its plate"), nz);
        assertTrue(nz.contains("  - Tell the insurer") || nz.contains("  - The insurer has not been told"), nz);
    }

    /** Seven days to come and two of work: by Thursday 3 December it would have to be here. */
    @Test
    void aLatestOrderDayThatIsPastSaysSo() throws FaultsException {
        String told = DRAWERS + "papers: {insurer-told: yes}\n";
        String late = printed(plain(DRAWERS + "ready-by: 2026-12-02\n"));
        assertTrue(
                late.replaceAll("\\s+", " ")
                        .contains(
                                "Latest order day: Drawers by 2026-11-24, to be ready by 2026-12-02; that day is past."),
                late);
        assertEquals(
                "Drawers. Latest order day past: Drawers.",
                BuyTable.now(plain(told + "ready-by: 2026-12-02\n")).orElseThrow());
        assertEquals(
                "Drawers.", BuyTable.now(plain(told + "ready-by: 2026-12-03\n")).orElseThrow());
    }

    /** The bar lacks what it does to the airbags. */
    @Test
    void whatWaitsIsSettledByTheLatestOrderDay() throws FaultsException {
        String bar =
                """
                fitments: [{name: Bar, kind: bar, mass: 60 kg +/- 0 kg, at: {x: -700 mm, y: 0 mm, z: 800 mm}, lamps-visible: %s,
                  lead-time: 7 days, work: {days: 2}}]
                """;
        String wanted = "ready-by: 2026-12-11\n";
        String waits = printed(plain(bar.formatted("yes") + wanted));
        assertTrue(
                waits.replaceAll("\\s+", " ")
                        .contains(
                                "Latest order day: Bar by 2026-12-03, to be ready by 2026-12-11; settle first what it waits for."),
                waits);
        String another = printed(plain(bar.formatted("no") + wanted));
        assertFalse(another.contains("Latest order day"), another);
    }

    @Test
    void nothingIsOrderedBeforeWhatIsSettledFirst() throws FaultsException {
        Arrangement untold = plain(DRAWERS + "papers: {insurer-told: no}\n");
        assertEquals(
                "Drawers; first settle what page 2 says.", BuyTable.now(untold).orElseThrow());
        assertTrue(printed(untold).contains("Then order: Drawers."), printed(untold));
        Arrangement told = plain(DRAWERS + "papers: {insurer-told: yes}\n");
        assertEquals("Drawers.", BuyTable.now(told).orElseThrow());
        assertTrue(printed(told).contains("Order now: Drawers."), printed(told));
    }

    @Test
    void nothingToBuyTakesNoRoom() throws FaultsException {
        Arrangement bare = Arrangement.of(Adviser.advise(Books.engine(), Sheets.plainWith("title: Bare")));
        assertEquals("", printed(bare));
        assertEquals(List.of(), BuyTable.blocks(bare));
        assertEquals(List.of(), CostTable.blocks(bare.advice()));
    }
}
