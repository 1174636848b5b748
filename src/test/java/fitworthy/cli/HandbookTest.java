package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.document.Signs;
import fitworthy.printout.NuChecker;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookTest {

    @TempDir
    private static Path folder;

    private static String text;
    private static String page;
    private static JsonNode json;
    private static String ruleAlone;
    private static JsonNode ruleAloneJson;

    @BeforeAll
    static void writeItOnce() throws IOException {
        Path markdown = folder.resolve("handbook.md");
        Path html = folder.resolve("handbook.html");
        Ran ran = Ran.of("handbook", "--markdown", markdown.toString(), "--html", html.toString(), "--format", "json");
        assertEquals(0, ran.code(), ran.err());
        text = Files.readString(markdown).replace("\\", "");
        page = Files.readString(html);
        json = new ObjectMapper().readTree(ran.out());
        Path one = folder.resolve("rule.html");
        Ran alone = Ran.of("handbook", "water.no-reserve", "--html", one.toString(), "--format", "json");
        assertEquals(0, alone.code(), alone.err());
        ruleAlone = Files.readString(one);
        ruleAloneJson = new ObjectMapper().readTree(alone.out());
    }

    /** What stands between a text and the next. */
    private static String between(String all, String from, String to) {
        int start = all.indexOf(from);
        assertTrue(start >= 0, "no '" + from + "'");
        int end = all.indexOf(to, start + from.length());
        return all.substring(start, end < 0 ? all.length() : end);
    }

    @Test
    void theHandbookHoldsEveryRuleAndEveryValueWithItsGrade() throws FaultsException {
        Book book = Books.shipped();
        String index = between(text, "## Index of rules", "\n## ");
        String confirm = between(text, "## What to go and confirm", "\n## ");
        Set<String> absent = new TreeSet<>();
        book.cards().forEach((id, card) -> {
            if (!text.contains("### " + id + ": " + card.title())
                    || !page.contains(">" + id + ": ")
                    || !index.contains("[" + id + "](#" + id + "): " + card.title())) {
                absent.add(id);
            }
        });
        book.practice().forEach((id, entry) -> {
            String values = between(text, "\n### " + id + ": " + entry.meaning(), "\n### ");
            for (DatedLimit.Value value : entry.values()) {
                String cells = " | " + value.since() + " | " + Signs.in(value.value()) + " | ";
                String row = "| [" + value.region() + "](#region-" + value.region() + ")" + cells
                        + value.basis().value().words() + "; " + id.substring(0, id.indexOf('.')) + "/practice.yaml:";
                String unconfirmed = "| [" + id + "](#" + id + ")" + cells + entry.meaning() + "; "
                        + value.basis().value().words();
                boolean known = Set.of(Basis.PUBLISHED, Basis.CALCULATION)
                        .contains(value.basis().value());
                if (!values.contains(row) || region(confirm, value.region()).contains(unconfirmed) == known) {
                    absent.add(id + row);
                }
            }
        });
        assertEquals(Set.of(), absent);
    }

    private static String region(String confirm, String id) {
        return between(confirm, "<a id=\"region-" + id + "\"></a>", "<a id=");
    }

    /**
     * A leaflet of South Australia (source sa-remote-travel) says three days; other States go by it as common practice.
     */
    @Test
    void aRegionSaysWhatItHasFromItsParentsAndWhatNoneOfThemHas() {
        String confirm = between(text, "## What to go and confirm", "\n## ");
        String victoria = region(confirm, "au-vic");
        assertTrue(
                between(victoria, "#### It has from Australia (au)", "####")
                        .contains("- [water.reserve-least](#water.reserve-least) 3 days\n"),
                victoria);
        String south = region(confirm, "au-sa");
        assertFalse(south.contains("[water.reserve-least]"), south);
        String kingdom = region(confirm, "uk");
        assertTrue(
                between(kingdom, "#### Not recorded, so that these are not assessed", "\n\n<a")
                        .contains("- [water.reserve-least](#water.reserve-least): water.no-reserve\n"),
                kingdom);
        assertTrue(
                between(kingdom, "#### It has from Anywhere (any)", "####")
                        .contains("- [water.person-day-least](#water.person-day-least) 7.5 L\n"),
                kingdom);
    }

    @Test
    void aValueNamesItsPlaceAndTheRulesThatUseItAndARuleItsValueAndSources() throws IOException {
        String value = between(text, "\n### water.person-day-least: ", "\n### ");
        assertTrue(
                value.contains(line("water", "practice.yaml", "water.person-day-least:")
                        + ", used by [water.short](#water.short), [water.use-low](#water.use-low).\n"),
                value);
        String rule = between(text, "\n### water.no-reserve: ", "\n### ");
        assertTrue(
                rule.contains("; " + line("water", "water.drl", "rule \"water.no-reserve\"") + ", card "
                        + line("water", "cards.yaml", "water.no-reserve:") + ";"),
                rule);
        assertTrue(
                rule.contains("It compares with [water.remote-days](#water.remote-days) ("
                        + line("water", "practice.yaml", "water.remote-days:")
                        + "), [water.reserve-least](#water.reserve-least) ("
                        + line("water", "practice.yaml", "water.reserve-least:") + ").\n"),
                rule);
        assertTrue(rule.contains("Sources: [[sa-remote-travel]](#source-sa-remote-travel).\n"), rule);
        assertTrue(
                rule.contains("| [au-sa](#region-au-sa) | 2000-01-01 | 3 days | published text; "
                        + valueLine("water.reserve-least", "au-sa")
                        + "; on water: \"6 litres per person per day minimum plus a 3-4 day reserve supply\". "),
                rule);
        assertTrue(
                Pattern.compile("<td dir=\"auto\" class=\"whole\"[^>]*>2000-01-01</td>")
                        .matcher(page)
                        .find(),
                "a date that may break");
    }

    /** Where a line of the shipped book stands, counted here. */
    private static String line(String topic, String file, String start) throws IOException {
        List<String> lines = Files.readAllLines(Books.RULES.resolve(topic).resolve(file));
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(start)) {
                return topic + "/" + file + ":" + (i + 1);
            }
        }
        throw new AssertionError("no line " + start);
    }

    /** Where the first value of a region stands. */
    private static String valueLine(String id, String region) throws IOException {
        List<String> lines = Files.readAllLines(Books.RULES.resolve("water/practice.yaml"));
        int line = lines.subList(lines.indexOf(id + ":"), lines.size()).indexOf("    - region: " + region);
        return "water/practice.yaml:" + (lines.indexOf(id + ":") + line + 1);
    }

    @Test
    void everyLinkLeadsSomewhereAndTheCheckerFindsNothing() throws Exception {
        for (String html : List.of(page, ruleAlone)) {
            Set<String> ids = found(" id=\"([^\"]*)\"", html);
            Set<String> links = found("href=\"#([^\"]*)\"", html);
            assertTrue(links.contains("source-sa-remote-travel"));
            links.removeAll(ids);
            assertEquals(Set.of(), links);
            assertEquals(List.of(), NuChecker.faults(html));
        }
        Set<String> links = found("\\]\\(#([^)]*)\\)", text);
        assertTrue(links.containsAll(Books.shipped().cards().keySet()));
        links.removeAll(found("<a id=\"([^\"]*)\"></a>", text));
        assertEquals(Set.of(), links);
    }

    private static Set<String> found(String pattern, String all) {
        return Pattern.compile(pattern)
                .matcher(all)
                .results()
                .map(each -> each.group(1))
                .collect(Collectors.toCollection(HashSet::new));
    }

    @Test
    void thePageOfARuleTellsCasesThatFireItAndLookAlikesThatAreFine() {
        Ran ran = Ran.of("handbook", "mass.gvm-over").printed(0);
        ran.says("- One kilogram over the GVM (");
        String fine = between(ran.out(), "Look-alikes that are fine", "It cannot be assessed");
        assertTrue(fine.contains("- Exactly at the GVM is allowed, with nothing to spare (loaded mass"), fine);
        assertTrue(fine.contains(": nothing to spare)"), fine);
        assertFalse(fine.contains("The plain wagon is in order"), "far from the limit: " + fine);
        Ran.of("handbook", "mass.gvm-ovr").refused(2, "no rule 'mass.gvm-ovr' (did you mean 'mass.gvm-over'?)");
    }

    /** The leaflet of South Australia (source sa-remote-travel) says three days. */
    @Test
    void theJsonHoldsTheWholeBook() throws FaultsException {
        Book book = Books.shipped();
        assertEquals("fitworthy-handbook/1", json.get("shape").asText());
        assertEquals(book.hash(), json.get("content").asText());
        assertEquals(book.cover().caution(), json.get("caution").asText());
        assertEquals(List.copyOf(book.cards().keySet()), ids(json.get("rules")));
        assertEquals(List.copyOf(book.practice().keySet()), ids(json.get("values")));
        assertEquals(List.copyOf(book.regions().keySet()), ids(json.get("regions")));
        assertEquals(List.copyOf(book.sources().keySet()), ids(json.get("sources")));
        JsonNode victoria = json.get("regions").get(ids(json.get("regions")).indexOf("au-vic"));
        JsonNode days = victoria.get("holds").get(ids(victoria.get("holds")).indexOf("water.reserve-least"));
        assertEquals("3 days", days.get("value").asText());
        assertEquals("au", days.get("of").asText());
        assertEquals(
                json.get("rules").get(ids(json.get("rules")).indexOf("water.no-reserve")),
                ruleAloneJson.get("rules").get(0));
    }

    /** The leaflet of South Australia (source sa-remote-travel) says three days. */
    @Test
    void theJsonOfOneRuleHoldsItsValuesCasesAndSourcesAlone() throws IOException {
        JsonNode one = ruleAloneJson;
        assertEquals(List.of("water.no-reserve"), ids(one.get("rules")));
        assertEquals(List.of("water.remote-days", "water.reserve-least"), ids(one.get("values")));
        assertEquals(List.of("sa-remote-travel"), ids(one.get("sources")));
        JsonNode rule = one.get("rules").get(0);
        assertEquals("water", rule.get("topic").asText());
        assertEquals("change", rule.get("severity").asText());
        assertEquals(
                line("water", "water.drl", "rule \"water.no-reserve\""),
                rule.get("place").asText());
        JsonNode south = rule.get("practice").get(2);
        assertEquals(
                "au-sa 2000-01-01 3 days published [\"sa-remote-travel\"] " + valueLine("water.reserve-least", "au-sa"),
                south.get("region").asText() + " "
                        + south.get("from").asText() + " " + south.get("value").asText() + " "
                        + south.get("basis").asText()
                        + " "
                        + south.get("sources") + " " + south.get("place").asText());
        assertTrue(cases(rule.get("fires")).contains("A little less than three days are left"));
        assertTrue(cases(rule.get("met-in")).contains("Three days are left"));
        assertTrue(cases(rule.get("not-assessed")).contains("The reserve is not assessed without the planned use"));
    }

    private static List<String> ids(JsonNode list) {
        return texts(list, "id");
    }

    private static List<String> cases(JsonNode list) {
        return texts(list, "case");
    }

    private static List<String> texts(JsonNode list, String field) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.get(field).asText()));
        return texts;
    }

    /** On a copy that only keeps the water topic. */
    @Test
    void whatEndsAndWhatHasAnotherNameIsSaidAndLedOn(@TempDir Path copy) throws IOException {
        String rules = Books.copyOf("water", copy.resolve("rules")).toString();
        Path cards = Path.of(rules, "water", "cards.yaml");
        Files.writeString(
                cards,
                Files.readString(cards)
                        .replace("water.use-low:\n", "water.use-low:\n  formerly: [water.use-small]\n")
                        .replace("water.surges:\n", "water.surges:\n  ends: 2027-03-01\n"));
        Path practice = Path.of(rules, "water", "practice.yaml");
        Files.writeString(
                practice,
                Files.readString(practice)
                        .replace("water.frost:\n", "water.frost:\n  ends: 2027-04-01\n  formerly: [water.cold]\n"));
        String html = copy.resolve("handbook.html").toString();
        Ran ran = Ran.of("handbook", "--rules", rules, "--html", html, "--format", "json");
        assertEquals(0, ran.code(), ran.err());
        String whole = Files.readString(Path.of(html)).replaceAll("\\s+", " ");
        for (String said : List.of(
                "id=\"water.use-small\"",
                "water.use-small is now water.use-low",
                "id=\"water.cold\"",
                "water.cold is now water.frost",
                "(note; checked no more from 2027-03-01 on)",
                "checked no more from 2027-04-01 on, when water.frost ends",
                "1 end everywhere: water.frost.")) {
            assertTrue(whole.contains(said), said);
        }
        JsonNode read = new ObjectMapper().readTree(ran.out());
        read.get("rules").forEach(rule -> {
            String id = rule.get("id").asText();
            assertEquals(
                    id.equals("water.surges") ? "2027-03-01" : id.equals("water.freezes") ? "2027-04-01" : "",
                    rule.get("ends").asText(),
                    id);
            assertEquals(
                    id.equals("water.use-low") ? "[\"water.use-small\"]" : "[]",
                    rule.get("formerly").toString(),
                    id);
        });
        Ran.of("handbook", "water.use-small", "--rules", rules)
                .printed(0)
                .says("water.use-small is now water.use-low.");
        Ran cases = Ran.of("cases", "--rule", "water.use-small", "--rules", rules);
        assertEquals("water.use-small is now water.use-low", cases.err().strip());
        assertTrue(cases.out().contains(" cases run, 0 come out other than they say"), cases.out());
        Ran.of("begin", "rule", "water.use-small", "--about", "water.use", "--from", "2027-07-01", "--rules", rules)
                .refused(2, "a rule was called 'water.use-small' before: water.use-small is now water.use-low");
    }
}
