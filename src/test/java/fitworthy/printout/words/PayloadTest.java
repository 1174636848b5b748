package fitworthy.printout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.RoomLeft;
import fitworthy.printout.MarginTable;
import fitworthy.printout.explain.RoomPrintout;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The plain wagon: a kerb mass of 2300 kg, a GVM of 3000 kg, and 2520 kg with two people and their luggage. */
class PayloadTest {

    private static Advice advice(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    @Test
    void whatIsUsedAndWhatIsLeftMakeThePayload() throws FaultsException {
        assertEquals("700 kg: 220 used, 480 left.", Payload.inShort(advice("title: Plain\n")));
        assertEquals("220 kg: 220 used, 0 left.", Payload.inShort(advice("vehicle: {ratings: {gvm: 2520 kg}}\n")));
        assertEquals("219 kg: 220 used, 1 over.", Payload.inShort(advice("vehicle: {ratings: {gvm: 2519 kg}}\n")));
    }

    /** 6.1 kg over is 6.1 kg over in every sentence and table; a tolerance of 10 kg or more leaves no tenths. */
    @Test
    void whatIsOverIsToldAsTheCheckTellsIt() throws FaultsException {
        String plan = "vehicle: {ratings: {gvm: 2520 kg}}\ncargo: [{name: Luggage, mass: 66.1 kg +/- %s kg}]\n";
        for (String[] told : new String[][] {
            {"0", "220.0 kg: 226.1 used, 6.1 over.", "6.1 kg over", "GVM by 6.1 kg"},
            {"6.2", "220.0 kg: 226.1 used, 6.1 over, too close to call.", "6.1 kg over (close)", "GVM over by 6.1 kg"},
            {"14", "220 kg: 227 used, 7 over, too close to call.", "7 kg over (close)", "GVM over by 7 kg"}
        }) {
            Advice advice = advice(plan.formatted(told[0]));
            assertEquals(told[1], Payload.inShort(advice));
            assertEquals(
                    List.of(told[2]),
                    Arrangement.of(advice).margins().stream()
                            .filter(margin -> margin.limit().equals("vehicle: GVM"))
                            .flatMap(margin -> MarginTable.cells(margin, MarginTable.loadings(advice)).stream())
                            .toList());
            assertTrue(LoadedVerdict.loaded(advice).contains(told[3]), LoadedVerdict.loaded(advice));
        }
        assertEquals(
                "220 kg: 212 used, 8 left, too close to call.",
                Payload.inShort(advice(
                        "vehicle: {ratings: {gvm: 2520 kg}}\ncargo: [{name: Luggage, mass: 52 kg +/- 14 kg}]\n")));
        assertEquals(
                "220 kg: 212 used, 8 left.",
                Payload.inShort(advice(
                        "vehicle: {ratings: {gvm: 2520 kg}}\ncargo: [{name: Luggage, mass: 52 kg +/- 8 kg}]\n")));
    }

    @Test
    void theLoadOnTheBallIsUsedToo() throws FaultsException {
        String van =
                """
                trailer: {name: Van, mass: 2000 kg +/- 0 kg, ball: 200 kg +/- 0 kg}
                cases: [{name: solo}, {name: towing, towing: yes}]
                """;
        assertEquals("700 kg: 420 used, 280 left (towing).", Payload.inShort(advice(van)));
        assertEquals(
                "700 kg (GVM less kerb mass): 220 used, 480 left (solo); 420 used, 280 left (towing; ball counted).",
                inFull(advice(van)));
    }

    @Test
    void aKitThatRaisesTheGvmRaisesItOnceItIsApproved() throws FaultsException {
        assertEquals(
                "1000 kg (GVM less kerb mass; 700 until Kit is approved): 220 used, 780 left.",
                inFull(advice("fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3300 kg}]\n")));
    }

    @Test
    void whatIsNotKnownIsNoLeave() throws FaultsException {
        assertEquals(
                "not known: missing gross vehicle mass.",
                Payload.inShort(advice("vehicle: {ratings: {gvm: unknown}}\n")));
        assertEquals(
                "700 kg: what is used is not known, missing Luggage: its mass.",
                Payload.inShort(advice("cargo: [{name: Luggage, mass: unknown}]\n")));
        assertTrue(Payload.inShort(advice("cargo: [{name: Luggage, mass: about 60 kg}]\n"))
                .startsWith("700 kg: about 220 used, 480 left"));
    }

    @Test
    void theWorkingSaysHow() throws FaultsException {
        StringWriter text = new StringWriter();
        RoomPrintout.print(
                new PrintWriter(text),
                advice("fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3300 kg}]\n"),
                "room.payload");
        String told = text.toString().replaceAll("\\s+", " ");
        assertTrue(told.contains("used = loaded - kerb, loaded = 2520 kg, kerb = 2300 kg"), told);
        assertTrue(told.contains("payload = GVM - kerb, GVM = 3300 kg, kerb = 2300 kg"), told);
        assertTrue(told.contains("220 kg, payload: GVM less kerb mass 1000 kg: 780 kg left (room.payload)"), told);
    }

    private static String inFull(Advice advice) {
        return Payload.inFull(advice, RoomLeft.of(advice));
    }
}
