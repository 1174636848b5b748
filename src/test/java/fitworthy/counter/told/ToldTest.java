package fitworthy.counter.told;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Questions;
import fitworthy.advice.Settled;
import fitworthy.advice.View;
import fitworthy.book.Severity;
import fitworthy.counter.AtCounter;
import fitworthy.counter.edit.Labels;
import fitworthy.printout.QuestionWords;
import fitworthy.printout.explain.ExplanationPrintout;
import fitworthy.printout.screen.ShortPrintout;
import fitworthy.printout.screen.TextPrintout.Painter;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.Verdict;
import fitworthy.shelf.Shelves;
import fitworthy.shelf.Taken;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is told beside the plan is what the terminal tells, and what is tried there comes out as it was told. */
class ToldTest {

    private static final Pattern PRINTED = Pattern.compile("\\[([a-z]+\\.[a-z0-9-]+)]");
    private static final Pattern SHOWN =
            Pattern.compile("<details (?:class=\"under\" )?id=\"why-([a-z]+\\.[a-z0-9-]+)-");
    private static final Pattern HEADING = Pattern.compile("(?m)^\\d+ (?:STOPS?|CHANGES?|TO CONFIRM|NOTES?)(?=$|  )");
    private static final Pattern VERSION = Pattern.compile("id=\"version\" name=\"version\" value=\"([^\"]*)\"");

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    private static View.Read read(String sheet) throws Exception {
        Path file = served.folder().resolve(sheet);
        View view = new View(Books.engine(), null, null, Shelves.beside());
        List<fitworthy.source.Fault> faults = new ArrayList<>();
        return view.read(NodeReader.read(Place.of(file.toString()), Files.readString(file), faults), faults);
    }

    private static Advice advice(String sheet) throws Exception {
        return Adviser.advise(Books.engine(), read(sheet).sheet());
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(ToldTest::firstGroup).toList();
    }

    private static String firstGroup(MatchResult match) {
        return match.groupCount() == 0 ? match.group() : match.group(1);
    }

    private static String text(String html) {
        return html.replaceAll("<[^>]*>", "")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&#39;", "'")
                .replace("&#34;", "\"")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
    }

    private static String packed(String text) {
        return text.replaceAll("\\s", "");
    }

    private static String get(String path) throws Exception {
        return served.get(path).body();
    }

    private static String version(String html) {
        return found(VERSION, html).get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"touring.yaml", "weekender.yaml", "overloaded.yaml"})
    void theFindingsAreThoseOfTheShortPrintout(String sheet) throws Exception {
        Advice advice = advice(sheet);
        StringWriter out = new StringWriter();
        new ShortPrintout(new PrintWriter(out), Painter.NONE)
                .print(advice, Questions.of(Books.engine(), advice), Severity.NOTE);
        String page = get("/sheets/" + sheet);
        List<String> printed = found(PRINTED, out.toString());
        assertEquals(advice.findings().isEmpty(), printed.isEmpty());
        assertEquals(printed, found(SHOWN, page));
        assertEquals(found(HEADING, out.toString()), found(HEADING, text(page)));
        assertTrue(text(page).contains(Verdict.of(Arrangement.of(advice))));
        assertTrue(text(page).contains(LoadedVerdict.loaded(advice)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mass.gvm-tight", "mirrors.field-narrow", "mass.axle-over"})
    void anExplanationHasTheFiguresOfExplain(String rule) throws Exception {
        View.Read read = read("touring.yaml");
        StringWriter out = new StringWriter();
        ExplanationPrintout.print(
                new PrintWriter(out), Adviser.advise(Books.engine(), read.sheet()), Taken.in(read.tree()), rule);
        String shown = packed(text(get("/sheets/touring.yaml/explain?rule=" + rule)));
        int looked = 0;
        for (String sum : found(Pattern.compile("(?s)worked out: (.*?)\\R +(?:true|FALSE) "), out.toString())) {
            assertTrue(shown.contains(packed(sum)), () -> sum + " in " + shown);
            looked++;
        }
        assertTrue(looked > 0, out.toString());
    }

    /** No name of a rule's own, no place but at its foot, and what was compared with its figures. */
    @Test
    void anExplanationIsSaidAsToACustomer() throws Exception {
        String shown = text(get("/sheets/overloaded.yaml/explain?rule=mass.axle-over&subject=rear+axle"));
        assertTrue(shown.contains("Load on the axle [rear axle] = 1993 kg, axle limit 1850 kg"), shown);
        assertTrue(shown.contains("so: what is left to the limit, -143 kg, is below 0"), shown);
        assertTrue(shown.contains("not so: what is left to the limit, 332 kg, is below 0"), shown);
        assertTrue(
                Pattern.compile("Steel canopy: bodies\\.yaml, line \\d+; the sheet sets keep")
                        .matcher(shown)
                        .find(),
                shown);
        assertTrue(shown.contains("In the book: mass.axle-over mass.drl, line "), shown);
    }

    @Test
    void aLimitIsExplainedByTheNameOfItsMargin() throws Exception {
        String shown = get("/sheets/touring.yaml/explain?limit=front+axle%3A+axle+limit&loading=towing");
        assertTrue(text(shown).contains("1597"), shown);
        assertEquals(
                404, served.get("/sheets/touring.yaml/explain?limit=no+such").statusCode());
        assertEquals(
                404, served.get("/sheets/touring.yaml/explain?rule=no.such").statusCode());
        assertTrue(text(get("/sheets/touring.yaml/explain?rule=room")).contains("In the loading 'towing':"));
    }

    @Test
    void theChecksWithoutAFindingAreListedWhenAsked() throws Exception {
        Arrangement arrangement = Arrangement.of(advice("touring.yaml"));
        String open = text(get("/sheets/touring.yaml/checks?which=open"));
        assertTrue(open.contains("approval of Rating kit"), open);
        arrangement.figuresToBring().forEach(figure -> figure.fields().forEach(field -> {
            assertTrue(open.contains(Labels.field(field.path())), () -> field + " in " + open);
            assertFalse(open.contains(field.path()), () -> field + " is no word of a person's");
        }));
        String met = get("/sheets/touring.yaml/checks?which=met");
        arrangement.metByTopic().forEach((topic, rules) -> rules.keySet()
                .forEach(rule -> assertTrue(met.contains(rule), rule)));
        assertEquals(404, served.get("/sheets/touring.yaml/checks?which=all").statusCode());
    }

    @Test
    void anOfferComesOutAsItWasToldAndIsUndone() throws Exception {
        String sheet = "/sheets/overloaded.yaml";
        Path file = served.folder().resolve("overloaded.yaml");
        byte[] before = Files.readAllBytes(file);
        String offers = offers(sheet);
        List<String> keys = found(Pattern.compile("/try\\?offer=([a-z]+-\\d+)"), offers);
        assertTrue(keys.size() > 3, offers);
        int taken = 0;
        List<String> untaken = new java.util.ArrayList<>();
        for (String key : keys) {
            String tried = get(sheet + "/try?offer=" + key);
            if (!tried.contains(sheet + "/take-offer")) {
                untaken.add(key + text(tried));
                continue;
            }
            String told = told(tried);
            String changed = served.post(sheet + "/take-offer", "version", version(get(sheet)), "offer", key)
                    .body();
            assertFalse(java.util.Arrays.equals(before, Files.readAllBytes(file)), key);
            Arrangement now = Arrangement.of(advice("overloaded.yaml"));
            assertEquals(LoadedVerdict.loaded(now.advice()) + Verdict.of(now) + changed(changed), told, key);
            served.post(sheet + "/undo", "version", version(changed));
            assertArrayEquals(before, Files.readAllBytes(file), key);
            taken++;
            offers(sheet);
        }
        assertTrue(taken * 2 > keys.size(), taken + " of " + keys.size() + " could be taken, not " + untaken);
    }

    @Test
    void whatWasFoundStaysAfterAChangeAndIsToldToBeOfBefore() throws Exception {
        String sheet = "/sheets/overloaded.yaml";
        List<String> words = found(Pattern.compile("<p dir=\"auto\"><b>([^<]*)</b></p>"), offers(sheet));
        assertFalse(words.isEmpty());
        String page = get(sheet);
        assertTrue(page.contains("Try it"), "what was found is there on a page that is opened anew");
        String changed = served.post(
                        sheet + "/set", "version", version(page), "path", "customer", "value", "Somebody else")
                .body();
        String offered = changed.substring(changed.indexOf("hx-swap-oob=\"pane:#offers\""));
        assertEquals(words, found(Pattern.compile("<p dir=\"auto\"><b>([^<]*)</b></p>"), offered));
        assertTrue(offered.contains("Found before the last change") && offered.contains("Look again"), offered);
        assertFalse(offered.contains("Try it"), offered);
        String undone =
                served.post(sheet + "/undo", "version", version(changed)).body();
        assertTrue(undone.contains("Try it"), "the plan is again what it was found for");
    }

    /** By a page that has not seen the change yet, and by one that has. */
    @Test
    void anOfferTakenTogetherWithANewChangeIsLeftAndToldSo() throws Exception {
        String sheet = "/sheets/overloaded.yaml";
        Path file = served.folder().resolve("overloaded.yaml");
        byte[] before = Files.readAllBytes(file);
        String key = "";
        for (String each : found(Pattern.compile("/try\\?offer=([a-z]+-\\d+)"), offers(sheet))) {
            key = key.isEmpty() && get(sheet + "/try?offer=" + each).contains(sheet + "/take-offer") ? each : key;
        }
        String shown = version(get(sheet));
        String changed = served.post(
                        sheet + "/set", "version", shown, "path", "vehicle.ratings.gvm", "value", "3060 kg")
                .body();
        byte[] after = Files.readAllBytes(file);
        assertFalse(java.util.Arrays.equals(before, after));
        for (String version : List.of(shown, version(changed))) {
            String refused = served.post(sheet + "/take-offer", "version", version, "offer", key)
                    .body();
            assertTrue(refused.contains("this offer was for another state of the sheet"), refused);
            assertFalse(refused.contains("Taken: "), refused);
            assertArrayEquals(after, Files.readAllBytes(file), "the change stays, and the offer is not in it");
        }
        served.post(sheet + "/undo", "version", version(changed));
        assertArrayEquals(before, Files.readAllBytes(file));
        String taken = served.post(sheet + "/take-offer", "version", shown, "offer", key)
                .body();
        assertTrue(taken.contains("Taken: "), "the plan is again what it was found for");
        served.post(sheet + "/undo", "version", version(taken));
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void theVerdictStandsInTheBarAndFollows() throws Exception {
        String sheet = "/sheets/overloaded.yaml";
        String page = get(sheet);
        Pattern bar = Pattern.compile(
                "<span class=\"outcome ([a-z]+)\">[a-z]+</span> <span dir=\"auto\">([^<]*)</span></a></p>");
        Advice before = advice("overloaded.yaml");
        assertEquals(List.of("stop"), found(bar, page));
        assertTrue(page.contains(LoadedVerdict.loaded(before)));
        String changed = served.post(
                        sheet + "/set", "version", version(page), "path", "vehicle.ratings.gvm", "value", "3060 kg")
                .body();
        String now = LoadedVerdict.loaded(advice("overloaded.yaml"));
        assertFalse(now.equals(LoadedVerdict.loaded(before)));
        String state = changed.substring(changed.indexOf("pane:#state")).split("pane:#")[1];
        assertTrue(text(state).contains(now), state);
        served.post(sheet + "/undo", "version", version(changed));
    }

    /** Waits until the search is over. */
    private static String offers(String sheet) throws Exception {
        String shown = get(sheet + "/offers");
        while (shown.contains("plans so far")) {
            Thread.sleep(200);
            shown = get(sheet + "/offers");
        }
        return shown;
    }

    private static String told(String tried) {
        String status = tried.substring(
                tried.indexOf("<div class=\"as-it-would-be\">"),
                tried.indexOf("</div>", tried.indexOf("as-it-would-be")));
        return text(status.replaceAll("\\R", ""));
    }

    private static String changed(String html) {
        return text(found(Pattern.compile("<p class=\"news\" dir=\"auto\">([^<]*)</p>"), html)
                .get(0));
    }

    @Test
    void anAnswerSettlesWhatIsSaid() throws Exception {
        String sheet = "/sheets/touring.yaml";
        Path file = served.folder().resolve("touring.yaml");
        byte[] bytes = Files.readAllBytes(file);
        Advice before = advice("touring.yaml");
        Questions questions = Questions.of(Books.engine(), before);
        String shown = get(sheet + "/questions?questions=all");
        assertTrue(
                text(shown).contains(QuestionWords.title(questions.questions().get(0))), shown);
        assertEquals(questions.questions().size(), shown.split("<li id=\"asked-", -1).length - 1);
        String path = "fitments.Front springs.suits";
        String changed = answered(sheet, version(get(sheet)), path, "yes");
        Advice after = advice("touring.yaml");
        assertTrue(Files.readString(file).contains("suits: yes"));
        assertTrue(
                text(changed)
                        .contains(fitworthy.printout.QuestionWords.lines(fitworthy.advice.Settled.of(before, after))
                                .get(0)),
                changed);
        served.post(sheet + "/undo", "version", version(changed));
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    /** Which nobody has weighed, though its plate is known. */
    @Test
    void thePlateOfATrailerIsToldWhereItsMassIsAsked() throws Exception {
        for (String rated : List.of("3000", "")) {
            served.post(
                    "/new",
                    "vehicle",
                    "Plover HD 2.7 crew utility",
                    "people",
                    "2",
                    "region",
                    "au-qld",
                    "trailer",
                    "Van",
                    "ball",
                    "270",
                    "rated",
                    rated,
                    "file",
                    "plate" + rated,
                    "do",
                    "make");
            String asked = text(get("/sheets/plate" + rated + ".yaml/questions?questions=all"));
            assertTrue(asked.contains("Trailer: its whole mass"), asked);
            assertEquals(
                    !rated.isEmpty(),
                    asked.contains(
                            "Its plate says 3000 kg: the most that it may weigh, not what it weighs. Where nobody has"
                                    + " weighed it put in about 3000 kg, which counts as a guess and is taken to be 15 % off"
                                    + " either way. Who knows it closer adds how far off it may be, such as +/- 5 %."),
                    asked);
        }
    }

    /** The second of two answers to one question is told from before the first; one that is written already says nothing. */
    @Test
    void anAnswerThatIsGivenTwiceSettlesWhatBothDid() throws Exception {
        String sheet = "/sheets/touring.yaml";
        Path file = served.folder().resolve("touring.yaml");
        byte[] bytes = Files.readAllBytes(file);
        Advice before = advice("touring.yaml");
        get(sheet + "/questions");
        String path = "fitments.Front springs.suits";
        String first = answered(sheet, version(get(sheet)), path, "no");
        String same = answered(sheet, version(first), path, "no");
        assertFalse(same.contains("pane:#asks"), "what was told stays");
        String last = answered(sheet, version(same), path, "yes");
        String told = String.join(" ", QuestionWords.lines(Settled.of(before, advice("touring.yaml"))));
        assertEquals(packed(told), packed(settled(last)));
        served.post(sheet + "/undo", "version", version(last));
        served.post(sheet + "/undo", "version", version(get(sheet)));
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    private static String answered(String sheet, String version, String path, String value) throws Exception {
        return served.post(
                        sheet + "/answer",
                        "version",
                        version,
                        "path",
                        path,
                        "value",
                        value,
                        "unit",
                        "",
                        "answered",
                        "yes",
                        "field",
                        "x")
                .body();
    }

    private static String settled(String html) {
        return text(found(Pattern.compile("(?s)<div class=\"settled news\">(.*?)</div>"), html)
                .get(0));
    }
}
