package fitworthy.counter.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.counter.AtCounter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Pages of the same sheet, by what the server answers them. */
class SheetPageTest {

    private static final Pattern VERSION = Pattern.compile("id=\"version\" name=\"version\" value=\"([^\"]*)\"");
    private static final String INES = "occupants.Ines.mass";

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    private static String version(String page) {
        Matcher matcher = VERSION.matcher(page);
        assertTrue(matcher.find(), page);
        return matcher.group(1);
    }

    private static String set(String version, String path, String value) throws Exception {
        return served.post("/sheets/touring.yaml/set", "version", version, "path", path, "value", value)
                .body();
    }

    @Test
    void pagesFollowEachOther() throws Exception {
        String one = version(served.get("/sheets/touring.yaml").body());
        String follow = "/sheets/touring.yaml/look?follow=yes&version=";
        assertEquals(204, served.get(follow + one).statusCode());
        String other = version(set(one, INES, "70 kg"));
        assertEquals(204, served.get(follow + other).statusCode());
        String told = served.get(follow + one).body();
        assertEquals(other, version(told));
        assertTrue(told.contains("Undo <span class=\"step\">mass of Ines</span>"), told);
        assertFalse(
                served.get("/sheets/touring.yaml/look?version=" + other).body().isEmpty(), "looked at otherwise");
    }

    /** Of a page that says what it shows; a page that does not know that any more is sent all, as one is that nobody knows. */
    @Test
    void whatAPageShowsAlreadyIsNotSentAgain() throws Exception {
        String page = served.get("/sheets/touring.yaml").body();
        String whole = set(version(page), INES, "70 kg", "");
        String less = set(version(whole), INES, "71 kg", shows(page));
        assertTrue(less.length() < whole.length() / 2, less.length() + " for " + whole.length());
        assertTrue(less.contains("data-from") && !whole.contains("data-from"), less);
        assertFalse(set(version(less), INES, "72 kg", "nobody's").contains("data-from"));
        less = set(version(served.get("/sheets/touring.yaml").body()), INES, "73 kg", shows(less));
        String look = "/sheets/touring.yaml/look?follow=yes&version=" + version(less) + "&shows=";
        assertEquals(204, served.get(look + shows(less)).statusCode());
        assertFalse(served.get(look).body().contains("data-from"));
    }

    private static String set(String version, String path, String value, String shows) throws Exception {
        return served.post(
                        "/sheets/touring.yaml/set",
                        "version",
                        version,
                        "path",
                        path,
                        "value",
                        value,
                        "field",
                        "f",
                        "loading",
                        "towing",
                        "shows",
                        shows)
                .body();
    }

    private static String shows(String html) {
        Matcher shows = Pattern.compile("name=\"shows\" value=\"([^\"]+)\"").matcher(html);
        assertTrue(shows.find(), html);
        return shows.group(1);
    }

    @Test
    void whatTwoPagesChangedIsShownToBoth() throws Exception {
        String shown = version(served.get("/sheets/touring.yaml").body());
        set(shown, INES, "70 kg");
        String told = set(shown, INES, "60 kg");
        assertTrue(told.contains("name: Ines, mass: 70 kg}") && told.contains("name: Ines, mass: 60 kg}"), told);
        assertTrue(sheet().contains("mass: 70 kg"));
        Matcher over = Pattern.compile("name=\"over\" value=\"([^\"]*)\"").matcher(told);
        assertTrue(over.find(), told);
        served.post(
                "/sheets/touring.yaml/set",
                "version",
                version(told),
                "over",
                over.group(1),
                "path",
                INES,
                "value",
                "60 kg");
        assertTrue(sheet().contains("mass: 60 kg"), "put on top");
    }

    @Test
    void mineIsKeptInACopy() throws Exception {
        String shown = version(served.get("/sheets/touring.yaml").body());
        String first = sheet();
        set(shown, INES, "70 kg");
        served.post("/sheets/touring.yaml/set", "copy", "yes", "shown", shown, "path", INES, "value", "60 kg");
        assertTrue(sheet().contains("mass: 70 kg"));
        assertEquals(first.replace("mass: 66 kg +/- 3 kg", "mass: 60 kg"), served.text("touring (mine).yaml"));
    }

    private String sheet() throws Exception {
        return served.text("touring.yaml");
    }
}
