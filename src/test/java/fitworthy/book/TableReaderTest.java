package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.source.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Slips in the shipped tables, each told with the line that it stands on. */
class TableReaderTest {

    private interface Reader {
        void read(String text, String file, List<Fault> faults);
    }

    /** What is told of a shipped table in which one text stands in place of another. */
    private static List<String> told(Reader reader, String file, String old, String now) throws IOException {
        String text = Files.readString(Books.RULES.resolve("tables").resolve(file));
        assertEquals(2, (text + "\n").split(Pattern.quote(old), -1).length, old);
        List<Fault> faults = new ArrayList<>();
        reader.read(text.replace(old, now), file, faults);
        return faults.stream().map(each -> each.place() + ": " + each.problem()).toList();
    }

    private static List<String> cable(String old, String now) throws IOException {
        return told(TableReader::cable, "cable.csv", old, now);
    }

    @Test
    void aCurrentBelowThatOfThinnerCableOrPoorerInsulationIsToldOnItsRow() throws IOException {
        assertEquals(List.of(), cable("\n5 mm2,60 degC,40 A", "\n5 mm2,60 degC,26 A"));
        assertEquals(
                List.of(
                        "cable.csv:6:15: the current for 5 mm2 and 60 degC is not above that for less section on line 5"),
                cable("\n5 mm2,60 degC,40 A", "\n5 mm2,60 degC,25 A"));
        assertEquals(
                List.of(
                        "cable.csv:21:15: the current for 5 mm2 and 75 degC is below that of insulation for less heat on"
                                + " line 6"),
                cable("\n5 mm2,75 degC,40 A", "\n5 mm2,75 degC,39 A"));
    }

    @Test
    void aCableMistypedIsToldWhereItStandsAndWhatIsMissingWhereItBelongs() throws IOException {
        assertEquals(
                List.of(
                        "cable.csv:21:7: no cable here is insulated for 750 degC",
                        "cable.csv:21:1: the row for 5 mm2 and 75 degC is missing"),
                cable("\n5 mm2,75 degC", "\n5 mm2,750 degC"));
        assertEquals(
                List.of(
                        "cable.csv:21:1: a second row for this section and insulation; the first is on line 6",
                        "cable.csv:21:1: the row for 5 mm2 and 75 degC is missing"),
                cable("\n5 mm2,75 degC", "\n5 mm2,60 degC"));
    }

    @Test
    void aSpeedSymbolThatIsMissingIsToldWhereItBelongs() throws IOException {
        assertEquals(
                List.of("speed-symbol.csv:5:1: the row for speed symbol M is missing"),
                told(TableReader::speedSymbol, "speed-symbol.csv", "\nM,130 km/h", "\nX,130 km/h"));
    }

    @Test
    void aWrongKindInTheOrderOfWorkIsToldWithItsCell() {
        List<Fault> faults = new ArrayList<>();
        TableReader.usualOrder(
                "job,after,basis,source\ncanopi,tray,common-practice,\ntray,,common-practice,\n", "order.csv", faults);
        assertEquals(
                List.of(
                        "order.csv:3:6: is left empty: the kind usually done before it",
                        "order.csv:2:1: 'canopi' is no kind of part or job (did you mean 'canopy'?)"),
                faults.stream()
                        .map(each -> each.place() + ": " + each.problem())
                        .toList());
    }
}
