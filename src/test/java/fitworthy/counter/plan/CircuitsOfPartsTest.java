package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.Served;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The circuits that the shelf keeps for a part, where the part is taken from it. */
class CircuitsOfPartsTest {

    /** A fridge on a board of the switch panel, and one whose current somebody has guessed. */
    private static final String BOARDED =
            """
            fitments:
              - {name: Cool box, kind: other, mass: 20 kg, at: in the canopy}
              - {name: Board, kind: switch-panel, mass: 2 kg, at: in the canopy}
              - {name: Heater, kind: other, mass: 4 kg, at: in the canopy}
            circuits:
              - {name: Cool box feed, part: Cool box, board: Board feed, current: 4 A}
              - {name: Board feed, part: Board, current: 20 A}
              - {name: Heater feed, part: Heater, current: about 2 A}
            """;

    @TempDir
    private Path folder;

    private Served page;

    @BeforeEach
    void open() throws Exception {
        Files.createDirectories(folder.resolve("shelf"));
        Files.writeString(folder.resolve("shelf/boarded.yaml"), BOARDED);
        page = Served.copyIn(folder);
    }

    @AfterEach
    void close() {
        page.close();
    }

    private void made(String... parts) throws Exception {
        List<String> fields = new ArrayList<>(List.of(
                "vehicle", "Huia 2.0", "fuel", "diesel", "people", "1", "region", "any", "do", "make", "file", "huia"));
        List.of(parts).forEach(part -> fields.addAll(List.of("part", part)));
        page.post("/new", fields.toArray(String[]::new));
    }

    private String text() throws IOException {
        return Files.readString(folder.resolve("huia.yaml"));
    }

    private String version() throws Exception {
        return page.get("/sheets/huia.yaml")
                .body()
                .replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
    }

    private String changed(String change, String... fields) throws Exception {
        List<String> sent = new ArrayList<>(List.of("version", version(), "field", "finder-box", "anew", "yes"));
        sent.addAll(List.of(fields));
        return page.post("/sheets/huia.yaml/" + change, sent.toArray(String[]::new))
                .body();
    }

    private String taken(String name) throws Exception {
        return changed("take", "kind", "FITMENTS", "name", name);
    }

    private void assertSays(String... lines) throws Exception {
        String text = text();
        for (String line : lines) {
            assertTrue(text.contains(line), () -> line + " is not in\n" + text);
        }
    }

    @Test
    void aPartFromTheShelfComesWithItsCircuit() throws Exception {
        made("canopy");
        String before = text();
        assertFalse(page.get("/sheets/huia.yaml").body().contains("electrical.drop-critical"));
        String told = taken("Charger");
        assertSays("  - Charger\n", "circuits:\n  - Charger feed\n");
        assertTrue(told.contains("Undo <span class=\"step\">Charger added, with its circuit</span>"), told);
        assertTrue(told.contains("The cable to Charger feed loses too much voltage"), "what it brings is judged");
        changed("undo");
        assertEquals(before, text(), "both in one step");
        taken("Winch");
        assertFalse(text().contains("circuits:"), "the shelf keeps none for it");
    }

    /** The second one is a part of its own, under a name of its own, and so is its circuit. */
    @Test
    void eachOfTwoHasItsOwn() throws Exception {
        made();
        taken("Charger");
        taken("Charger");
        assertSays("{from: Charger, name: Charger 2}", "{from: Charger feed, name: Charger feed 2, part: Charger 2}");
    }

    /** In words and on a new sheet as well; a circuit may be called as its part. */
    @Test
    void inWordsItComesTheSame() throws Exception {
        made("fridge 60 L", "tall aerial");
        assertSays("  - Fridge 60 L\n", "  - Fridge in the canopy\n");
        changed("words", "filter", "radio");
        assertSays("  - Tall aerial\n  - Radio\n", "  - Fridge in the canopy\n  - Radio\n");
    }

    /** As a choice in place of another part too. */
    @Test
    void inPlaceOfAnotherItComesTheSame() throws Exception {
        made("charger=2 kg");
        String own = text().contains("name: Charger,") ? "Charger" : "charger";
        changed("instead", "part", own, "other", "Fridge 40 L");
        assertSays("  - Fridge 40 L\n", "  - Fridge in the wagon\n", "choices:");
    }

    /** With its guesses as guesses, and once there is the board that it hangs on. */
    @Test
    void aCircuitOnABoardComesWithTheBoard() throws Exception {
        made("cool box");
        assertSays("  - Cool box\n");
        assertFalse(text().contains("circuits:"), text());
        taken("Board");
        assertSays("circuits:\n  - Board feed\n");
        assertTrue(page.get("/sheets/huia.yaml").body().contains(">Add Cool box feed</button>"));
        taken("Heater");
        assertTrue(
                page.get("/sheets/huia.yaml/plan/fields?path=circuits.2")
                        .body()
                        .contains("<option value=\"about\" selected"),
                "about 2 A stays a guess");
    }

    /** Whichever of the two a new sheet names first. */
    @Test
    void aNewSheetHasBoth() throws Exception {
        made("cool box", "board");
        assertSays("circuits:\n  - Board feed\n  - Cool box feed\n");
    }

    /** Whether a circuit of the plan that is called so is the part's is for a person to say. */
    @Test
    void aCircuitOfThePlanThatIsNoPartsIsOfferedToIt() throws Exception {
        made();
        changed("add", "path", "circuits", "new-name", "Charger feed");
        String before = text();
        taken("Charger");
        assertEquals(1, text().split("Charger feed", -1).length - 1, text());
        assertFalse(before.contains("part:") || text().contains("part:"));
        assertTrue(page.get("/sheets/huia.yaml").body().contains(">It is that of Charger</button>"));
        changed("set", "path", "circuits.1.part", "value", "Charger");
        assertSays("{name: Charger feed, part: Charger}");
        assertFalse(page.get("/sheets/huia.yaml").body().contains("It is that of"));
    }
}
