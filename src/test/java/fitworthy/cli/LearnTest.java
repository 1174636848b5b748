package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.learn.Fleet;
import fitworthy.learn.Fleet.Shown;
import fitworthy.sheet.Fitment;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command learn, on a made fleet in which the steel bar weighs 72 kg and is written as 60 kg. */
class LearnTest {

    @TempDir
    private static Path folder;

    private static Path rules;
    private static Path many;
    private static Path few;

    @TempDir
    private Path out;

    @BeforeAll
    static void writeFleet() throws IOException {
        rules = Books.copyOf("water", folder.resolve("rules"));
        // So that no later run has to say that it compiles.
        Ran.of("cases", "--rules", rules.toString(), "--region", "us");
        many = write("many", 60);
        few = write("few", 3);
    }

    private static Path write(String name, int vehicles) throws IOException {
        Path sheets = Files.createDirectory(folder.resolve(name));
        Random random = new Random(7);
        Fleet fleet = new Fleet(Fleet.pool(12, 0.5, -0.3, -0.2, 0.4, -0.1, 1, 0.2), vehicles, 0.5, random);
        List<Shown> shown = fleet.weighed(random);
        for (int i = 0; i < vehicles; i++) {
            Files.writeString(sheets.resolve("car-" + (100 + i) + ".yaml"), fleet.sheet(i, shown.get(i)));
        }
        return sheets;
    }

    private static Ran learn(Object... more) {
        return Ran.of(Stream.concat(Stream.of("learn", "--rules", rules), Stream.of(more))
                .map(Object::toString)
                .toArray(String[]::new));
    }

    @Test
    void tellsTheHeavyPartAndWhyNotTheOthers() {
        learn(many)
                .printed(1)
                .says("From: 60 weighings of 60 sheets, of 60 looked at")
                .says("1 off, ")
                .says("Steel bar (other)")
                .says("60.0 kg, off by +9.9 kg; 95 %: +7.6 to +12.3 kg")
                .says("cannot tell: known to +/- ");
    }

    @Test
    void proposesWhatIsToldAsPartsOfASheet() throws IOException, FaultsException {
        Path proposal = out.resolve("masses.yaml");
        learn(many, "--proposal", proposal).printed(1);
        String written = Files.readString(proposal);
        assertTrue(written.contains(" weighings; written as 60.0 kg +/- 3.0 kg\n"), written);
        Fitment bar = Sheets.plainWith(written.replace("kind: other,", "kind: other, at: {x: -500 mm},"))
                .fitments()
                .get(0);
        assertEquals("Steel bar", bar.name());
        assertEquals(72, bar.mass().value(), bar.mass().tolerance());
        assertTrue(bar.mass().tolerance() < 3, written);
    }

    @Test
    void aProposalIsNeverWrittenOverAnything() throws IOException {
        Path shelf = Files.writeString(out.resolve("shelf.yaml"), "fitments: []\n");
        learn(many, "--proposal", shelf).refused(2, "is there already, and is not written over");
        assertEquals("fitments: []\n", Files.readString(shelf));
    }

    @Test
    void threeSheetsTellNothingAndSaySo() {
        Path proposal = out.resolve("masses.yaml");
        Ran ran = learn(few, "--proposal", proposal);
        assertEquals(0, ran.code());
        ran.says("These readings tell the mass of no part").says("weighings tell of it, and 4 is the least");
        assertEquals("No mass can be given, so " + proposal + " was not written.\n", ran.err());
        assertFalse(Files.exists(proposal));
    }

    @Test
    void sheetsThatWereNotWeighedAreCounted() {
        learn("scenarios")
                .printed(0)
                .says("From: 0 weighings of 0 sheets, of 3 looked at")
                .says("No sheet has a weighbridge reading that can be used");
    }

    @Test
    void aSheetThatCannotBeUsedIsNamedAndTheOthersGoOn() throws IOException {
        Path bad = Files.writeString(out.resolve("bad.yaml"), "title: [\n");
        Path copy = Files.copy(many.resolve("car-100.yaml"), out.resolve("copy.yaml"));
        learn(many, bad, copy)
                .printed(2)
                .says("From: 60 weighings of 60 sheets, of 62 looked at")
                .says("Copies of another sheet, which count once: - " + copy)
                .says("Sheets that cannot be used: - " + bad);
    }

    @Test
    void saysItInJsonToo() throws IOException {
        JsonNode said =
                new ObjectMapper().readTree(learn(many, "--format", "json").out());
        assertEquals("fitworthy-learn/1", said.get("shape").textValue());
        assertEquals(60, said.get("weighings").intValue());
        JsonNode bar = said.get("parts").get(0);
        assertEquals("Steel bar", bar.get("name").textValue());
        assertEquals("off", bar.get("verdict").textValue());
        assertEquals(12, bar.get("off-by").doubleValue(), bar.get("within").doubleValue());
    }
}
