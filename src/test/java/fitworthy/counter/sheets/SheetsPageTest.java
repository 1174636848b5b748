package fitworthy.counter.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.View;
import fitworthy.cli.Ran;
import fitworthy.counter.AtCounter;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The list of the sheets, what each comes to, and copies of them. */
class SheetsPageTest {

    private static final Pattern LISTED = Pattern.compile("<h2><a href=\"/sheets/([^\"]+)\">");
    private static final Pattern MISSING = Pattern.compile("name=\"missing\" value=\"([^\"]*)\"");
    private static final Pattern CAME =
            Pattern.compile("(?s)<p id=\"came-\\w+\" class=\"came by-(\\w+)\"[^>]*>(.*?)</p>");

    @RegisterExtension
    final AtCounter served = new AtCounter();

    private List<String> listed(String query) throws Exception {
        return LISTED.matcher(served.get("/?q=" + query).body())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** All that the page shows once it has asked for what was missing, by outcome and words. */
    private Set<String> filledIn() throws Exception {
        String page = served.get("/").body();
        Set<String> came = new LinkedHashSet<>(came(page));
        for (Matcher missing = MISSING.matcher(page); missing.find(); missing = MISSING.matcher(page)) {
            page = served.post("/verdicts", "missing", missing.group(1)).body();
            came.addAll(came(page));
        }
        return came;
    }

    private static List<String> came(String page) {
        return CAME.matcher(page)
                .results()
                .map(found -> found.group(1) + ": "
                        + found.group(2).replaceAll("<[^>]*>\\w*", "").strip())
                .toList();
    }

    private static String checked(Path sheet) {
        return Ran.of("check", sheet.toString()).out().replaceAll("\\s+", " ");
    }

    @Test
    void whatEachSheetComesToFillsInAsCheckSaysIt() throws Exception {
        assertFalse(served.get("/").body().contains("came by-"), "nothing is known at first");
        Set<String> came = filledIn();
        assertEquals(3, came.size());
        for (String name : List.of("touring", "overloaded", "weekender")) {
            String printed = checked(served.folder().resolve(name + ".yaml"));
            assertTrue(
                    came.stream().anyMatch(words -> printed.contains(words.substring(words.indexOf(' ') + 1))),
                    () -> name + " came to none of " + came);
        }
        assertEquals(
                2,
                came.stream().filter(words -> words.startsWith("stop: Do not")).count());
        assertEquals(
                1, came.stream().filter(words -> words.startsWith("none: ")).count());
        assertFalse(MISSING.matcher(served.get("/").body()).find(), "it is known from now on");
    }

    @Test
    void aChangedSheetIsWorkedOutAnew() throws Exception {
        filledIn();
        Path sheet = served.folder().resolve("weekender.yaml");
        Files.writeString(sheet, Files.readString(sheet) + "# seen\n");
        Matcher missing = MISSING.matcher(served.get("/").body());
        assertTrue(missing.find());
        assertEquals("weekender.yaml", missing.group(1));
    }

    @Test
    void whatAPageHasWorkedOutIsListedAtOnce() throws Exception {
        served.get("/sheets/touring.yaml");
        String list = served.get("/").body();
        assertEquals(1, came(list).size());
        assertEquals(2, list.split("not yet worked out", -1).length - 1);
        assertEquals(came(served.get("/?q=varga&all=yes").body()), came(list));
        Path sheet = served.folder().resolve("touring.yaml");
        Files.writeString(sheet, Files.readString(sheet) + "# seen\n");
        assertEquals(0, came(served.get("/").body()).size(), "it is another text now");
    }

    @Test
    void aSheetWithFaultsSaysHowManyAndTheFirst() throws Exception {
        Path sheet = served.folder().resolve("broken.yaml");
        Files.writeString(sheet, "title: Broken\nregion: nowhere\nas-of: 2026-11-25\n");
        List<Fault> found = new ArrayList<>();
        int faults = assertThrows(FaultsException.class, () -> new View(Books.engine(), null, null)
                        .read(NodeReader.read(sheet, found), found))
                .faults()
                .size();
        assertTrue(faults > 1);
        String came = filledIn().stream()
                .filter(words -> words.startsWith("fault"))
                .findFirst()
                .orElseThrow();
        assertTrue(came.contains(faults + " faults, the first: line "), came);
    }

    @Test
    void aFileThatIsNoTextSaysSoAtOnce() throws Exception {
        Files.write(served.folder().resolve("photo.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1});
        String page = served.get("/?q=photo").body();
        assertTrue(page.contains("1 fault: line 1: the file is not UTF-8 text"), page);
    }

    @Test
    void whereNoScriptRunsAllIsWorkedOutOnDemand() throws Exception {
        assertEquals(3, came(served.get("/?all=yes").body()).size());
    }

    @Test
    void whatWasChangedLastComesFirst() throws Exception {
        int day = 1;
        for (String name : List.of("touring", "weekender", "overloaded")) {
            Files.setLastModifiedTime(
                    served.folder().resolve(name + ".yaml"),
                    FileTime.from(Instant.parse("2026-11-0" + day++ + "T10:00:00Z")));
        }
        assertEquals(List.of("overloaded.yaml", "weekender.yaml", "touring.yaml"), listed(""));
    }

    @Test
    void searchLooksAtTitleCustomerQuoteVehicleAndFile() throws Exception {
        assertEquals(List.of("touring.yaml"), listed("lift-off"));
        assertEquals(List.of("touring.yaml"), listed("VARGA"));
        assertEquals(List.of("weekender.yaml"), listed("kt-0422"));
        assertEquals(List.of("overloaded.yaml"), listed("plover"));
        assertEquals(List.of("weekender.yaml"), listed("weekender.yaml"));
        assertEquals(List.of("touring.yaml"), listed("tarrenby+camper"), "every word");
        assertEquals(List.of(), listed("tarrenby+plover"));
        assertEquals(3, listed("++").size());
    }

    @Test
    void whatIsSearchedForIsShownAndNothingElse() throws Exception {
        String page = served.get("/?q=%22%3E%3Cscript%3Ex").body();
        assertFalse(page.contains("<script>x"));
        assertTrue(page.contains("No sheet holds all of these words."));
    }

    @Test
    void aCopyIsTheSameLetterByLetter() throws Exception {
        String form = served.get("/sheets/touring.yaml/copy").body();
        assertTrue(form.contains("value=\"touring (2).yaml\""));
        served.post("/sheets/touring.yaml/copy", "to", "touring (2).yaml");
        assertEquals(
                -1,
                Files.mismatch(
                        served.folder().resolve("touring.yaml"), served.folder().resolve("touring (2).yaml")));
        assertTrue(served.get("/sheets/touring.yaml/copy").body().contains("value=\"touring (3).yaml\""));
    }

    @Test
    void aCopyTakesNoFilesPlace() throws Exception {
        String before = served.text("weekender.yaml");
        for (String taken : List.of("weekender.yaml", "weekender", " weekender.yaml ", "touring.yaml")) {
            var answer = served.post("/sheets/touring.yaml/copy", "to", taken);
            assertEquals(422, answer.statusCode());
            assertTrue(answer.body().contains("is there already, and is not written over"), taken);
        }
        assertEquals(before, served.text("weekender.yaml"));
    }

    @Test
    void aNameThatIsNoneIsRefused() throws Exception {
        Set<String> before = names();
        for (String name : List.of("", "../out", "a/b", ".hidden", "shelf/x.yaml", "a\\b", "x\0.yaml", "-x", "a:b")) {
            var answer = served.post("/sheets/touring.yaml/copy", "to", name);
            assertEquals(422, answer.statusCode(), name);
            assertTrue(answer.body().contains("is no name for a sheet"), name);
        }
        assertEquals(404, served.post("/sheets/none.yaml/copy", "to", "x").statusCode());
        assertEquals(before, names());
        assertFalse(Files.exists(served.folder().resolveSibling("out.yaml")));
    }

    private Set<String> names() throws Exception {
        try (var files = Files.walk(served.folder())) {
            return Set.copyOf(files.map(Path::toString).toList());
        }
    }
}
