package fitworthy.counter.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.SheetFields;
import fitworthy.counter.AtCounter;
import fitworthy.counter.page.FieldPath;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.nio.file.Files;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The plan as forms, as the server sends them. */
class PlanFormsTest {

    private static final Pattern PATH = Pattern.compile("\"path\":\"([^\"]+)\",\"field\"");
    private static final Pattern FOLD = Pattern.compile("hx-get=\"([^\"]*/plan/(?:fields|more)[^\"]*)\"");

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    /** Whatever the schema has of a sheet has a box, though the sheet itself is full of faults. */
    @Test
    void everyFieldOfTheSchemaCanBeReached() throws Exception {
        String text = everything();
        Files.writeString(served.folder().resolve("all.yaml"), text);
        Node.Mapping tree = NodeReader.read("all.yaml", text, new ArrayList<>());
        assertTrue(tree != null && served.get("/sheets/all.yaml").statusCode() == 200, text);
        Set<String> missing = new TreeSet<>(SheetFields.all().keySet());
        reached("/sheets/all.yaml").forEach(path -> missing.remove(SheetFields.of(tree, FieldPath.of(path))));
        assertEquals("", String.join("\n", missing));
    }

    /** The paths of all boxes of a sheet, those included that are fetched once something is opened. */
    private Set<String> reached(String page) throws Exception {
        Set<String> paths = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(page));
        while (!open.isEmpty()) {
            String html = served.get(open.pop()).body();
            PATH.matcher(html).results().map(found -> found.group(1)).forEach(paths::add);
            Matcher folds = FOLD.matcher(html);
            while (folds.find()) {
                if (seen.add(folds.group(1))) {
                    open.push(folds.group(1));
                }
            }
        }
        return paths;
    }

    private static String everything() {
        String common = fields(
                RecordSchema.of(Sheet.class).fields().stream()
                        .filter(field -> !field.name().equals("fitments"))
                        .toList(),
                "\n");
        String parts = ChoiceWords.of(Fitment.Kind.class).stream()
                .map(word -> {
                    Fitment.Kind kind = Fitment.Kind.values()[
                            ChoiceWords.of(Fitment.Kind.class).indexOf(word)];
                    return "{"
                            + fields(RecordSchema.of(Fitment.class).fields())
                                    .replaceFirst("kind: [a-z-]+", "kind: " + word)
                                    .replace("name: 'Alloy tray'", "name: " + word)
                            + comma(fields(RecordSchema.of(kind.details()).fields())) + "}";
                })
                .collect(Collectors.joining(", "));
        return common + "\nfitments: [" + parts + "]\n";
    }

    private static String comma(String fields) {
        return fields.isEmpty() ? "" : ", " + fields;
    }

    private static String fields(List<FieldSchema> fields) {
        return fields(fields, ", ");
    }

    private static String fields(List<FieldSchema> fields, String between) {
        return fields.stream()
                .filter(field -> field.content() != FieldSchema.Content.FIELDS_OF_KIND)
                .map(field -> field.name() + ": " + value(field))
                .collect(Collectors.joining(between));
    }

    private static String value(FieldSchema field) {
        return switch (field.content()) {
            case GROUP ->
                "{"
                        + fields(RecordSchema.of(field.type().asSubclass(Record.class))
                                .fields()) + "}";
            case GROUPS ->
                "[{"
                        + fields(RecordSchema.of(field.type().asSubclass(Record.class))
                                .fields()) + "}]";
            case FIGURES -> "{A tank: " + field.example() + "}";
            case TEXTS -> "[A thing]";
            case CHOICE -> ChoiceWords.of(field.type()).get(0);
            default -> "'" + field.example().replace("'", "") + "'";
        };
    }

    private String made(String file, String... parts) throws Exception {
        List<String> fields = new ArrayList<>(List.of(
                "vehicle", "Weka 2.0", "fuel", "diesel", "people", "2", "region", "any", "do", "make", "file", file));
        List.of(parts).forEach(part -> fields.addAll(List.of("part", part)));
        return served.post("/new", fields.toArray(String[]::new)).body();
    }

    private static String version(String page) {
        return page.replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
    }

    private String added(String words) throws Exception {
        return served.post(
                        "/sheets/words.yaml/words",
                        "version",
                        version(served.get("/sheets/words.yaml").body()),
                        "field",
                        "finder-box",
                        "anew",
                        "yes",
                        "filter",
                        words)
                .body();
    }

    @Test
    void whatIsAddedInWordsIsReadAsOnANewSheet() throws Exception {
        made("words", "alloy wheels");
        String text = served.text("words.yaml");
        String refused = added("tyres 265/70R17 on the rims it has");
        assertTrue(
                refused.contains(
                        "the tyres are to go on the rims that the vehicle has, but Alloy wheels is planned too"),
                refused);
        assertEquals(text, served.text("words.yaml"));
        added("tyres 265/70R17");
        String two = added("a bull bar with a winch in it");
        assertFalse(two.contains("Not kept"), two);
        String reason = added("snorkel, for the dust");
        assertTrue(reason.contains("Added. Not kept, since no check reads it: for the dust</p>"), reason);
        for (String line : List.of(
                "{name: Tyres, kind: tyres, size: 265/70R17}",
                "{name: Bull bar, kind: bar}",
                "  - Winch\n",
                "  - Snorkel\n")) {
            assertTrue(served.text("words.yaml").contains(line), served.text("words.yaml"));
        }
    }

    @Test
    void inWhatAPartSitsAndWhatComesOffForATrayIsShown() throws Exception {
        made("first", "battery", "tray");
        String vehicle =
                served.get("/sheets/first.yaml/plan/fields?path=vehicle").body();
        assertTrue(vehicle.contains("id=\"f-vehicle_tub\""), vehicle);
        String tray =
                served.get("/sheets/first.yaml/plan/fields?path=fitments.2").body();
        assertTrue(tray.contains("id=\"f-fitments_2_removes-adding\""), tray);
        String part =
                served.get("/sheets/first.yaml/plan/fields?path=fitments.1").body();
        assertTrue(part.contains("id=\"f-fitments_1_in\""), part);
        assertFalse(part.contains("f-fitments_1_removes"), part);
    }

    @Test
    void whatIsUsualOfANewLoadIsNotAskedFor() throws Exception {
        String version = version(made("added"));
        served.post("/sheets/added.yaml/add", "version", version, "path", "cargo", "new-name", "Tools");
        String text = served.text("added.yaml");
        assertTrue(text.contains("{name: Tools}"), text);
        version = version(served.get("/sheets/added.yaml").body());
        served.post("/sheets/added.yaml/add", "version", version, "path", "cargo", "new-name", "Parrot");
        text = served.text("added.yaml");
        assertTrue(text.contains("{name: Parrot, mass: ask"), "nothing is usual of it\n" + text);
    }

    @Test
    void aGuessMayBeTypedWithoutItsUnit() throws Exception {
        made("guessed");
        kerb("about 1800");
        String text = served.text("guessed.yaml");
        assertTrue(text.contains("kerb: about 1800 kg"), text);
        String refused = kerb("about heavy");
        assertTrue(refused.contains("heavy"), refused);
        assertEquals(text, served.text("guessed.yaml"));
    }

    /** What the page answers to a kerb mass of so much in its box, in kg. */
    private static String kerb(String typed) throws Exception {
        String version = version(served.get("/sheets/guessed.yaml").body());
        return served.post(
                        "/sheets/guessed.yaml/set",
                        "version",
                        version,
                        "path",
                        "vehicle.mass.kerb",
                        "field",
                        "f",
                        "unit",
                        "kg",
                        "value",
                        typed)
                .body();
    }

    /** What is answered to a change of a sheet. */
    private static String changed(String file, String change, String... fields) throws Exception {
        List<String> sent = new ArrayList<>(List.of(
                "version",
                version(served.get("/sheets/" + file + ".yaml").body()),
                "field",
                "finder-box",
                "anew",
                "yes"));
        sent.addAll(List.of(fields));
        return served.post("/sheets/" + file + ".yaml/" + change, sent.toArray(String[]::new))
                .body();
    }

    /** What the shelf has of it is found before it is guessed, and told where it was. */
    @Test
    void whatIsAddedInWordsIsTakenFromTheShelfOrToldToBeThere() throws Exception {
        made("offered", "canopy");
        assertTrue(served.get("/sheets/offered.yaml/plan/found?filter=bull%20bar")
                .body()
                .contains("take-FITMENTS-Steel-bar"));
        assertFalse(changed("offered", "words", "filter", "winch").contains("counts as a guess"));
        assertTrue(served.text("offered.yaml").contains("  - Winch\n"), served.text("offered.yaml"));
        String guessed = changed("offered", "words", "filter", "bull bar");
        assertTrue(
                guessed.contains("The shelf has, with figures of its own: Front bar, 58 kg; Steel bar, 72 kg."),
                guessed);
        assertTrue(served.text("offered.yaml").contains("kind: bar"), served.text("offered.yaml"));
        changed("offered", "words", "filter", "tall aerial on the bar");
        assertTrue(served.text("offered.yaml").contains("  - Tall aerial\n"), served.text("offered.yaml"));
        changed("offered", "words", "filter", "driving lamps on the roof");
        assertTrue(
                served.text("offered.yaml").contains("{from: Driving lamps, at: on the roof}"),
                served.text("offered.yaml"));
    }

    /** In the same words wherever it is given: in the form of a new sheet, in the finder, in a box of the plan. */
    @Test
    void whatTheShelfHasOtherwiseIsTold() throws Exception {
        String length = "On the shelf Alloy tray has 1970 mm";
        made("given");
        String added = changed("given", "words", "filter", "alloy tray=1.8 m");
        assertTrue(added.contains("Added. " + length + "."), added);
        assertTrue(fields("given", 1).contains(length), fields("given", 1));
        made("put", "alloy tray");
        assertFalse(fields("put", 1).contains("On the shelf"), "nothing is otherwise");
        changed("put", "set", "path", "fitments.1.length", "value", "1.97 m", "unit", "");
        assertFalse(fields("put", 1).contains("On the shelf"), "in other units it is the same");
        changed("put", "set", "path", "fitments.1.length", "value", "1.8 m", "unit", "");
        assertTrue(fields("put", 1).contains(length), fields("put", 1));
        made("named", "winch=26 kg");
        assertTrue(fields("named", 1).contains("On the shelf Winch has 39 kg +/- 1 kg"), "that is called as its own");
    }

    @Test
    void whatSpringsOfTheShelfLiftOtherwiseIsTold() throws Exception {
        String told = "On the shelf Rear springs has 40 mm of lift, not 50 mm as Lift kit";
        made("lifted", "lift kit=50 mm", "rear springs");
        assertTrue(served.get("/sheets/lifted.yaml").body().contains(told), served.text("lifted.yaml"));
        made("even", "lift kit=40 mm", "rear springs");
        assertFalse(served.get("/sheets/even.yaml").body().contains("of lift, not"));
        changed("even", "set", "path", "fitments.1.lift", "value", "50 mm", "unit", "");
        assertTrue(served.get("/sheets/even.yaml").body().contains(told), served.text("even.yaml"));
    }

    private static String fields(String file, int part) throws Exception {
        return served.get("/sheets/" + file + ".yaml/plan/fields?path=fitments." + part)
                        .body()
                + served.get("/sheets/" + file + ".yaml/plan/more?path=fitments." + part)
                        .body();
    }

    @Test
    void whatBecomesOfTheTubIsSaidInWordsAtTheTrayOrCanopy() throws Exception {
        made("tubs", "canopy", "tray");
        changed("tubs", "words", "filter", "tub off");
        assertTrue(served.text("tubs.yaml").contains("{name: Tray, kind: tray, removes: {name: tub}}"));
        String again = changed("tubs", "words", "filter", "the tub removed");
        assertTrue(again.contains("Tray says already what comes off for it"), again);
        made("stays", "canopy=1.8 m");
        changed("stays", "words", "filter", "keep the tub");
        assertTrue(
                served.text("stays.yaml").contains("kind: canopy, length: 1.8 m, tub-stays: yes}"),
                served.text("stays.yaml"));
        changed("stays", "words", "filter", "tub off");
        assertTrue(
                served.text("stays.yaml").contains("kind: canopy, length: 1.8 m, removes: {name: tub}}"),
                served.text("stays.yaml"));
        made("bare");
        assertTrue(changed("bare", "words", "filter", "no tub").contains("there is no tray or canopy yet"));
    }

    @Test
    void theVehiclesOwnTankTakesThePlaceOfTheUsualOne() throws Exception {
        made("own");
        changed("own", "take", "kind", "TANKS", "name", "Plover tank");
        String text = served.text("own.yaml");
        assertTrue(text.contains("  - Plover tank\n") && !text.contains("Main tank"), text);
        String two = changed("own", "take", "kind", "TANKS", "name", "Tarrenby tank");
        assertTrue(
                served.text("own.yaml").contains("  - Plover tank\n  - Tarrenby tank\n"), "nobody guessed the first");
        assertTrue(two.contains("Planned more than once: the vehicle's own tank.")
                || served.get("/sheets/own.yaml").body().contains("Planned more than once: the vehicle's own tank."));
        made("words");
        changed("words", "words", "filter", "main tank=80 L");
        text = served.text("words.yaml");
        assertTrue(text.contains("capacity: 80 L, stock: yes}") && !text.contains("capacity: usual"), text);
    }

    @Test
    void twoTanksInOnePlaceAndASecondAerialAreTold() throws Exception {
        made("shared", "water tank=50 L", "water bladder=40 L", "UHF radio");
        String page = served.get("/sheets/shared.yaml").body();
        assertTrue(page.contains(
                "Water tank and Water bladder are taken to be in one place, under the tray, since nobody"));
        assertFalse(page.contains("Planned more than once"), page);
        changed("shared", "words", "filter", "water bladder 2=10 L behind the rear axle");
        changed("shared", "words", "filter", "tall aerial");
        page = served.get("/sheets/shared.yaml").body();
        assertTrue(page.contains("Planned more than once: aerial."), served.text("shared.yaml"));
        assertTrue(page.contains(">Leave out Aerial<") && page.contains(">Leave out Tall aerial<"));
        assertFalse(
                served.get("/sheets/touring.yaml").body().contains("Planned more than once: aerial"), "two are meant");
    }

    @Test
    void thePageOfALongPlanIsLight() throws Exception {
        String html = served.get("/sheets/touring.yaml").body();
        int begin = html.indexOf("<h2>Plan</h2>");
        String plan = html.substring(begin, html.indexOf("<div class=\"comes\">", begin));
        assertTrue(plan.length() < 100_000, plan.length() + " letters");
    }

    @Test
    void eachKindOfValueIsWrittenIntoTheSheet() throws Exception {
        set("title", "Long way round", "", "title: Long way round\n");
        set("as-of", "2026-11-26", "", "as-of: 2026-11-26\n");
        set("fitments.6.mass", "61 +/- 2", "kg", "{from: Front bar, mass: 61 kg +/- 2 kg}");
        set("fitments.6.mass", "0.0625 t", "kg", "{from: Front bar, mass: 0.0625 t}");
        set("fitments.6.price", "1500.00 AUD", "", "price: 1500.00 AUD}");
        set("fitments.6.keep", "yes", "", "keep: yes");
        set("fitments.7.at", "at the front bar", "", "{from: Winch, at: at the front bar}");
        set("cargo.1.at.x", "2250", "mm", "at: {x: 2250 mm, y: 0 mm, z: 950 mm}");
        set("cases.2.carrying", "Bags in the cab, Camp gear", "", "carrying: [Bags in the cab, Camp gear]");
        set("cases.2.filled.Main+tank", "40", "%", "Main tank: 40 %");
        set("options.1.take", "steel", "", "take: steel");
        set("trip.headroom", "", "mm", null);
        assertFalse(sheet().contains("headroom"), sheet());
    }

    @Test
    void aMarkSaysHowSureAValueIs() throws Exception {
        mark("fitments.6.mass", "58 +/- 2", "kg", "about", "mass: about 58 kg +/- 2 kg");
        set("fitments.6.mass", "59", "kg", "mass: 59 kg");
        mark("fitments.6.mass", "59", "kg", "ask", "mass: ask");
        mark("fitments.6.mass", "", "kg", "usual", "mass: usual");
        String body =
                served.get("/sheets/touring.yaml/plan/fields?path=fitments.6").body();
        assertTrue(body.contains("usual: "), "what is usual stands beside it");
        assertTrue(told(post("mark", "path", "fitments.6.mass", "field", "f-x", "value", "", "mark", "stated"))
                .contains("there is no value to mark"));
        mark("fitments.6.mass", "", "kg", "", null);
        assertTrue(sheet().contains("- Front bar\n") || sheet().contains("{from: Front bar}"), sheet());
    }

    @Test
    void aValueThatCannotBeIsToldAtItsFieldAndNotWritten() throws Exception {
        String before = sheet();
        String mass = told(post("set", "path", "fitments.6.mass", "field", "f-x", "value", "99 L", "unit", "kg"));
        assertTrue(mass.contains("has a unit of volume where one of mass belongs"), mass);
        assertTrue(mass.contains("60 kg"), "what would be right: " + mass);
        String place = told(post("set", "path", "cargo.2.at", "field", "f-x", "value", "beside the dog"));
        assertTrue(place.contains("is no place in words"), place);
        String day = told(post("set", "path", "ready-by", "field", "f-x", "value", "5 May"));
        assertTrue(day.contains("not a date"), day);
        assertEquals(before, sheet());
    }

    @Test
    void thingsOfEveryListComeAndGo() throws Exception {
        add("take", "{from: Winch, name: Winch 2}", "kind", "FITMENTS", "name", "Winch");
        add("take", "Fuel can", "kind", "TANKS", "name", first("tanks"));
        add("words", "{name: Steel bull bar, kind: bar, mass: ask, at: {x: ask}}", "filter", "steel bull bar");
        add("words", "mass: 26 kg", "filter", "second winch=26 kg");
        add(
                "add",
                "{name: Aunt, mass: 70 kg, at: rear seats}",
                "path",
                "occupants",
                "new-name",
                "Aunt",
                "new-mass",
                "70",
                "new-at",
                "rear seats");
        add("add", "{name: Tool roll, mass: ask, at: {x: ask}}", "path", "cargo", "new-name", "Tool roll");
        add("add", "{name: Radio lamp}", "path", "circuits", "new-name", "Radio lamp");
        add("add", "{name: Empty}", "path", "cases", "new-name", "Empty");
        add(
                "add",
                "{name: Rust proofing, kind: paint}",
                "path",
                "jobs",
                "new-name",
                "Rust proofing",
                "new-kind",
                "paint");
        add(
                "add",
                "until: 2027-01-31",
                "path",
                "waivers",
                "new-rule",
                "mass.gvm-over",
                "new-reason",
                "agreed",
                "new-by",
                "owner",
                "new-until",
                "2027-01-31");
        add(
                "add",
                "weighed: {front-axle: 1400 kg, rear-axle: 1600 kg}",
                "path",
                "cases.1.weighed",
                "new-front-axle",
                "1400",
                "new-rear-axle",
                "1600");
        add("instead", "{name: Front bar or Winch, choices:", "part", "Front bar", "other", "Winch");
        add("instead", "{name: Canopy, parts: [Canopy]}", "part", "Steel tray", "other", "Canopy");
        set("cases.3.towing", "no", "", "{name: towing, towing: no}");
        add("take-off", null, "path", "trailer");
        assertFalse(sheet().contains("trailer:"), sheet());
        add("take", "trailer: " + first("trailers"), "kind", "TRAILERS", "name", first("trailers"));
        String before = sheet();
        for (String item : List.of(
                "fitments.31", "tanks.5", "circuits.5", "cargo.3", "occupants.3", "cases.4", "jobs.3", "waivers.1")) {
            post("take-off", "path", item);
            assertTrue(sheet().lines().count() < before.lines().count(), item);
            before = sheet();
        }
    }

    /** A page that has not seen what another took off names what follows it by positions that are not right any more. */
    @Test
    void whatIsMeantIsTakenOffThoughSomethingBeforeItIsGone() throws Exception {
        String shown = version(page());
        List<String> parts = parts();
        assertEquals(parts.get(2), taken(parts, shown, 3));
        assertEquals(parts.get(5), taken(parts(), shown, 6));
        String stands = sheet();
        served.post("/sheets/touring.yaml/take-off", "path", "fitments.6", "version", shown);
        assertEquals(stands, sheet(), "it is gone already");
    }

    /** What is gone once a page that shows a version has taken off the part at a place. */
    private String taken(List<String> before, String shown, int place) throws Exception {
        served.post("/sheets/touring.yaml/take-off", "path", "fitments." + place, "version", shown);
        List<String> gone = new ArrayList<>(before);
        gone.removeAll(parts());
        assertEquals(1, gone.size(), gone.toString());
        return gone.get(0);
    }

    private List<String> parts() throws Exception {
        return Pattern.compile("Take off ([^\"]+)\"")
                .matcher(page())
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void theSameSpringsTwiceAreToldAndOneIsLeftOut() throws Exception {
        assertFalse(page().contains("Planned more than once"));
        add("words", "{name: Rear lift kit, kind: springs, end: rear, lift: 50 mm", "filter", "rear lift kit=50 mm");
        assertFalse(page().contains("springs at the front. If"), "there is one set at the front");
        Matcher leave = Pattern.compile("hx-vals='\\{\"path\":\"(fitments.[0-9]+)\"\\}'>Leave out Rear lift kit")
                .matcher(page());
        assertTrue(leave.find(), page());
        add("take-off", null, "path", leave.group(1));
        assertFalse(page().contains("Planned more than once"));
        assertFalse(sheet().contains("lift kit"), sheet());
    }

    private String page() throws Exception {
        return served.get("/sheets/touring.yaml").body();
    }

    @Test
    void whatALetterSaysOfTheTripIsInReach() throws Exception {
        served.post(
                "/new", "vehicle", "Kea 2.0", "fuel", "diesel", "people", "2", "region", "any", "do", "make", "file",
                "short");
        String trip = served.get("/sheets/short.yaml/plan/fields?path=trip").body();
        for (String field : List.of("longest-leg", "days", "parked", "terrain", "dust", "top-speed", "people")) {
            assertTrue(trip.contains("id=\"f-trip_" + field + "\""), field);
        }
        assertFalse(trip.contains("id=\"f-trip_driving\""), "what nobody says nor asks for stays closed");
    }

    @Test
    void theTitleStandsAboveWithTheFileBesideIt() throws Exception {
        assertTrue(page().contains("<small>touring.yaml</small></h1>"), page());
        String renamed = post("set", "path", "title", "field", "f-title", "value", "Long way round");
        assertTrue(renamed.contains("\"true\">Long way round <small>touring.yaml</small></h1>"), renamed);
        Files.writeString(served.folder().resolve("bare.yaml"), "customer: Ines Varga\n");
        String bare = served.get("/sheets/bare.yaml").body();
        assertTrue(bare.contains(">bare.yaml</h1>"), bare);
    }

    private String first(String list) throws Exception {
        String found = served.get("/sheets/touring.yaml/plan/finder").body();
        Matcher name = Pattern.compile(
                        "value=\"([^\"]+)\" hx-vals='\\{\"kind\":\"" + list.toUpperCase(Locale.ROOT) + "\"")
                .matcher(found);
        assertTrue(name.find(), found);
        return name.group(1);
    }

    private void add(String change, String written, String... fields) throws Exception {
        String html = post(change, fields);
        assertEquals("", told(html), change + " " + String.join(" ", fields));
        assertTrue(written == null || sheet().contains(written) || change.equals("take"), written + "\n" + sheet());
    }

    private void set(String path, String value, String unit, String written) throws Exception {
        String html = post("set", "path", path, "field", "f-x", "value", value, "unit", unit);
        assertEquals("", told(html), path);
        assertTrue(written == null || sheet().contains(written), written + "\n" + sheet());
    }

    private void mark(String path, String value, String unit, String mark, String written) throws Exception {
        String html =
                post("mark", "path", path, "field", "f-x", "value", value, "unit", unit, "mark", mark, "row", "yes");
        assertEquals("", told(html), path);
        assertTrue(written == null || sheet().contains(written), written + "\n" + sheet());
    }

    private String sheet() throws Exception {
        return served.text("touring.yaml");
    }

    private String post(String change, String... fields) throws Exception {
        List<String> sent = new ArrayList<>(List.of(fields));
        sent.addAll(List.of("version", version(page())));
        return served.post("/sheets/touring.yaml/" + change, sent.toArray(String[]::new))
                .body();
    }

    /** What is said to be wrong; empty where nothing is. */
    private static String told(String html) {
        return Pattern.compile("(?s)(?:id=\"f-x-fault\"|id=\"faults\")[^>]*>(.*?)</(?:p|div)>")
                .matcher(html)
                .results()
                .map(found -> found.group(1).strip())
                .collect(Collectors.joining());
    }
}
