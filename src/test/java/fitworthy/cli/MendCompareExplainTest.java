package fitworthy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The commands mend, compare and explain, run in process: their exit codes, streams and options. */
class MendCompareExplainTest {

    private static final String PLAIN = Books.RULES.resolve("plain-sheet.yaml").toString();
    private static final String TOURING = "scenarios/touring.yaml";

    @TempDir
    private static Path folder;

    private static String sheet(String name, String old, String now) throws IOException {
        String text = Files.readString(Path.of(PLAIN));
        assertTrue(text.contains(old), old);
        return Files.writeString(folder.resolve(name), text.replace(old, now)).toString();
    }

    private static String bad() throws IOException {
        return sheet("bad.yaml", "gvm: 3000 kg", "gvm: 3000");
    }

    /** 2520 kg aboard on a GVM of 2500 kg. */
    private static String heavy() throws IOException {
        return sheet("heavy.yaml", "gvm: 3000 kg", "gvm: 2500 kg");
    }

    /** Two people more than the GVM allows: nobody can be left out, and fuel and luggage are not enough. */
    private static String hopeless() throws IOException {
        return sheet("hopeless.yaml", "gvm: 3000 kg", "gvm: 2300 kg");
    }

    /** Nobody knows when the box comes, so that nobody knows when all is done. */
    @Test
    void aFigureThatIsNotKnownIsExplainedAsSuch() throws IOException {
        String late = sheet(
                "late.yaml",
                "title: Plain wagon",
                "title: Plain wagon\nready-by: 2026-12-01\n"
                        + "fitments: [{name: Box, kind: other, mass: 0 kg, work: {days: 1}}]");
        Ran.of("explain", late, "order.late").printed(0).says("headroom is not known");
    }

    private static final String BOXES =
            """
            fitments:
              - {name: Steel box, kind: other, mass: 120 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}, price: 400.00 AUD}
              - {name: Alloy box, kind: other, mass: 70 kg +/- 0 kg, at: {x: 2000 mm, y: 0 mm, z: 900 mm}, price: 900.00 AUD}
              - {name: Rack, kind: other, mass: 30 kg +/- 0 kg, at: {x: 1900 mm, y: 0 mm, z: 1900 mm}, price: 300.00 AUD}
            options:
              - name: Box
                choices: [{name: steel, parts: [Steel box]}, {name: alloy, parts: [Alloy box]}, {name: none}]
              - {name: Rack, choices: [{name: none}, {name: rack, parts: [Rack]}]}
            """;

    private static String boxes(String title) throws IOException {
        return Files.writeString(
                        folder.resolve(title + ".yaml"),
                        Files.readString(Path.of(PLAIN))
                                        .replace("gvm: 3000 kg", "gvm: 2630 kg")
                                        .replace("roof: 100 kg", "roof: 20 kg")
                                        .replace("title: Plain wagon", "title: " + title)
                                + BOXES)
                .toString();
    }

    /** Twelve options of two choices. */
    private static String manyChoices() throws IOException {
        StringBuilder text = new StringBuilder(Files.readString(Path.of(PLAIN)) + "fitments:\n");
        for (int i = 0; i < 24; i++) {
            text.append("  - {name: Part ")
                    .append(i)
                    .append(", kind: other, mass: 9 kg, at: {x: 2000 mm, y: 0 mm, z: 1 m}}\n");
        }
        text.append("options:\n");
        for (int i = 0; i < 24; i += 2) {
            text.append("  - {name: Choice ")
                    .append(i)
                    .append(", choices: [{name: a, parts: [Part ")
                    .append(i)
                    .append("]}, {name: b, parts: [Part ")
                    .append(i + 1)
                    .append("]}]}\n");
        }
        return Files.writeString(folder.resolve("choices.yaml"), text).toString();
    }

    private record Refused(int code, String message, String... args) {}

    @TestFactory
    Stream<DynamicTest> whatCannotBeUsedIsRefused() throws IOException {
        String unit = "vehicle.ratings.gvm: '3000' has no unit";
        String noBook = "The rule book cannot be used, so no advice is given:";
        String none = folder.toString();
        return Stream.of(
                        new Refused(2, unit, "mend", bad()),
                        new Refused(2, unit, "compare", bad()),
                        new Refused(2, unit, "explain", bad(), "mass.gvm-over"),
                        new Refused(2, "there is no such file", "mend", "none.yaml"),
                        new Refused(2, "Missing required parameter: 'SHEET'", "mend"),
                        new Refused(2, "Missing required parameter: 'RULE'", "explain", PLAIN),
                        new Refused(2, "Unknown option: '--fast'", "mend", PLAIN, "--fast"),
                        new Refused(2, "Invalid value for option '--seconds'", "mend", PLAIN, "--seconds", "soon"),
                        new Refused(
                                2,
                                "RULE: the rule book has no rule 'mass.gvm-ovr' (did you mean 'mass.gvm-over'?)",
                                "explain",
                                PLAIN,
                                "mass.gvm-ovr"),
                        new Refused(
                                2,
                                "--case: the sheet has no load case 'towing'",
                                "explain",
                                PLAIN,
                                "mass.gvm-over",
                                "--case",
                                "towing"),
                        new Refused(
                                2,
                                "the rule book has no region 'au-nws' (did you mean 'au-nsw'?)",
                                "mend",
                                PLAIN,
                                "--region",
                                "au-nws"),
                        new Refused(
                                2,
                                "--as-of: as-of: is 'today', which is not a date",
                                "compare",
                                PLAIN,
                                "--as-of",
                                "today"),
                        new Refused(
                                2,
                                "--option: the sheet has no option 'Box'\n    right: options: [{name: To choose,",
                                "compare",
                                PLAIN,
                                "--option",
                                "Box"),
                        new Refused(
                                2,
                                "--option: the sheet has no option 'alloy'\n    right: one of Box (steel, alloy, none),",
                                "compare",
                                boxes("choice"),
                                "--option",
                                "alloy"),
                        new Refused(2, "right: one of water.", "explain", PLAIN, "water"),
                        new Refused(2, "right: one of mass.gvm-over\n", "explain", PLAIN, "gvm-ovr"),
                        new Refused(2, "right: one of mass.gvm-over, mass.gvm-tight,", "explain", PLAIN, "gvm"),
                        new Refused(2, "or one of the topics ", "explain", PLAIN, "xxxxxxxxxxxxxxxxxxxxx"),
                        new Refused(
                                2,
                                "--option: the sheet has no option 'Rak' (did you mean 'Rack'?)",
                                "compare",
                                boxes("refused"),
                                "--option",
                                "Rak"),
                        new Refused(3, noBook, "mend", PLAIN, "--rules", none),
                        new Refused(3, noBook, "compare", PLAIN, "--rules", none),
                        new Refused(3, noBook, "explain", PLAIN, "mass.gvm-over", "--rules", none))
                .map(each -> DynamicTest.dynamicTest(
                        each.message() + " " + Arrays.toString(each.args()),
                        () -> Ran.of(each.args()).refused(each.code(), each.message())));
    }

    @TestFactory
    Stream<DynamicTest> helpHasAnExample() {
        return Stream.of("mend", "compare", "explain")
                .map(command -> DynamicTest.dynamicTest(command, () -> Ran.of(command, "--help")
                        .printed(0)
                        .says("Example: fitworthy " + command + " scenarios/")));
    }

    @Test
    void mendSaysWhatToChangeAndWhatItSavesAndLoses() throws IOException {
        Ran.of("mend", heavy())
                .printed(0)
                .says("WHAT HELPS MOST, one change at a time, the best first: 1 fill 'Main tank' to 70 %, 24 L less"
                        + " Clears 1 stop (Loaded mass is above the GVM). No stop remains. Vehicle -20 kg; range 666 -> 466"
                        + " km; new note: Little of the GVM is left.")
                .says(
                        "OFFER 1 fill 'Main tank' to 70 %, 24 L less Vehicle -20 kg; range 666 -> 466 km; water not known;"
                                + " parts not known; lead time not known; new note: Little of the GVM is left.")
                .says("OFFER 2 leave 'Luggage' behind Vehicle -60 kg; range 666 km;")
                .says("WHAT WOULD JUST PASS");
    }

    @Test
    void mendEndsWithNoughtWhereNothingStopsThePlanAndWithOneWhereNothingHelps() throws IOException {
        Ran.of("mend", PLAIN).printed(0).says("The plan has no stop to clear.");
        Ran.of("mend", sheet("unweighed", "mass: 60 kg +/- 0 kg", "mass: ask"))
                .printed(0)
                .says("No stop is known; ");
        Ran.of("mend", hopeless())
                .printed(1)
                .says("No change of up to four clears every stop and keeps what is in order.");
    }

    /** The alloy box is 500.00 dearer: that is shown, and so is what waits longest. */
    @Test
    void mendShowsPriceAndLeadTime() throws IOException {
        Ran.of("mend", boxes("priced"))
                .printed(0)
                .says("take 'none' for 'Box' Clears 1 stop (Loaded mass is above the GVM). No stop remains."
                        + " Vehicle -120 kg; -400.00 AUD; without 'Steel box'.")
                .says("OFFER 1 take 'alloy' for 'Box' Vehicle -50 kg; range 666 km; water not known; parts 900 AUD"
                        + " (+500.00 AUD); lead time not known; without 'Steel box'; with 'Alloy box'; new note:");
        String late = Files.writeString(
                        folder.resolve("late.yaml"),
                        Files.readString(Path.of(boxes("priced")))
                                .replace("price: 900.00 AUD}", "price: 900.00 AUD, lead-time: 3 weeks}"))
                .toString();
        Ran.of("mend", late).printed(0).says("parts 900 AUD (+500.00 AUD); lead time 0 -> 21 days;");
    }

    @Test
    void outOfTimeIsSaid() throws IOException {
        Ran.of("mend", heavy(), "--seconds", "0")
                .printed(1)
                .says("0 changed plans")
                .says("Time ran out");
        assertFalse(Ran.of("mend", heavy()).out().contains("Time ran out"));
    }

    /** Before anything that is said of what was looked at, and nothing of it is called the best of all. */
    @Test
    void whereTimeRanOutIsTheFirstThatIsSaid() throws IOException {
        Ran compared = Ran.of("compare", manyChoices(), "--seconds", "0").printed(1);
        compared.says("Time ran out: 1 of 4096 combinations were looked at.")
                .says("Vary fewer with --option")
                .says("The best of those looked at, by fewest stops, and of those the fewest changes: plan 1.");
        assertEquals(
                "Time ran out: 1 of 4096 combinations were looked at. What is said of the best",
                compared.out().lines().skip(2).findFirst().orElse(""));
        Ran mended = Ran.of("mend", hopeless(), "--seconds", "0").printed(1);
        mended.says("None of the changes that were tried clears every stop and keeps what is in order.");
        int told = mended.out().indexOf("Time ran out");
        assertTrue(told >= 0 && told < mended.out().indexOf("None of the changes"), mended.out());
        assertFalse(mended.out().contains("No change of up to four"), mended.out());
    }

    /** The plain wagon with a choice of 9 kg here or there has nothing to act on; with too low a GVM no box helps. */
    @Test
    void compareEndsWithNoughtWhereOneOfAllIsInOrder() throws IOException {
        String choice = "fitments: [{name: Case, kind: other, mass: 9 kg, at: {x: 2000 mm, y: 0 mm, z: 1 m}}]\n"
                + "options: [{name: Box, choices: [{name: none}, {name: case, parts: [Case]}]}]\n";
        String plain = Files.readString(Path.of(PLAIN));
        String light = Files.writeString(folder.resolve("in order.yaml"), plain + choice)
                .toString();
        Ran.of("compare", light).printed(Ran.of("check", light).code());
        String heavy = Files.writeString(
                        folder.resolve("over.yaml"), plain.replace("gvm: 3000 kg", "gvm: 2400 kg") + choice)
                .toString();
        Ran.of("compare", heavy).printed(1);
    }

    @Test
    void aShareOfTheTimeIsUsedUpBeforeAllOfIt() {
        AtomicLong nanos = new AtomicLong(7);
        try (TimeLimit limit =
                new TimeLimit(10, new StatusLine(new PrintWriter(new StringWriter()), false), nanos::get)) {
            BooleanSupplier half = limit.share(0.5);
            nanos.addAndGet(4_999_999_999L);
            assertFalse(half.getAsBoolean());
            nanos.addAndGet(1);
            assertTrue(half.getAsBoolean());
            assertFalse(limit.getAsBoolean());
            nanos.addAndGet(5_000_000_000L);
            assertTrue(limit.getAsBoolean());
        }
    }

    @Test
    void touringSheetIsMendedAndExplainedWithinEightyColumns() {
        Ran.of("mend", TOURING).printed(0).says("OFFER 1");
        Ran.of("explain", TOURING, "mass.axle-over").printed(0).says("mass.axle-over");
    }

    /** What helps most is read at a glance: each in at most three lines, the first begins with its number. */
    @Test
    void eachSingleChangeIsToldInAtMostFourLines() {
        for (String scenario : List.of(TOURING, "scenarios/overloaded.yaml")) {
            List<String> lines = Ran.of("mend", scenario)
                    .printed(0)
                    .out()
                    .lines()
                    .dropWhile(line -> !line.startsWith("WHAT HELPS MOST"))
                    .skip(1)
                    .takeWhile(line -> !line.isEmpty())
                    .toList();
            int told = 0;
            for (String line : lines) {
                told = line.matches(" *[0-9]+  .*") ? 1 : told + 1;
                assertTrue(told <= 4, () -> scenario + ": " + line);
            }
            assertTrue(lines.size() > 8, lines.toString());
        }
    }

    /** The stop of the fuse stays whatever is left at home: the lighter plan is shown, after what that stop asks for itself. */
    @Test
    void mendShowsTheLighterPlanWithTheStopsThatRemain() throws IOException {
        String fuse = Files.readString(Path.of(heavy()))
                + "fitments: [{name: Fridge box, kind: other, keep: yes, mass: 30 kg, at: {x: 2900 mm, y: 0 mm, z: 1 m}}]\n"
                + "circuits: [{name: Fridge, part: Fridge box, fuse: {rating: 0 A}}]\n";
        String sheet = Files.writeString(folder.resolve("fuse.yaml"), fuse).toString();
        Ran.of("mend", sheet)
                .printed(1)
                .says(
                        "None of the changes that were tried clears every stop and keeps what is in order. The plans below are lighter, but leave the stops")
                .says("WHAT THE STOP ITSELF ASKS FOR CLEARS IT; not tried here, so check the plan with it: - ")
                .says("LIGHTER 1 ")
                .says("Stop that remains: ")
                .saysNot("NO SINGLE CHANGE CLEARS");
        Ran.of("mend", hopeless())
                .says("No change of up to four clears every stop and keeps what is in order.")
                .says("STOPS THAT NO SINGLE CHANGE CLEARS, and what each needs: ")
                .saysNot("WHAT THE STOP ITSELF");
    }

    /** A fuse of 60 A on a cable that bears less, and a bar whose statement can be had, which the search tries. */
    @Test
    void mendNamesWhatTheStopItselfAsksForBeforeAPartIsGivenUp() throws IOException {
        String fuse = Files.readString(Path.of(PLAIN))
                + "fitments: [{name: Fridge, kind: other, mass: 40 kg +/- 0 kg, at: {x: 2900 mm, y: 0 mm, z: 900 mm}}]\n"
                + "circuits: [{name: Feed, part: Fridge, current: 12 A, cable: {section: 4 mm2, length: 5 m,"
                + " engine-bay: yes, insulation: 105 degC}, fuse: {rating: 60 A, distance: 100 mm}}]\n";
        String out = Ran.of(
                        "mend",
                        Files.writeString(folder.resolve("own.yaml"), fuse).toString())
                .printed(0)
                .says(
                        "- The fuse of Feed does not protect its cable. Use the planned 4 mm2 or more and a fuse of 15 A.")
                .saysNot("NO SINGLE CHANGE CLEARS")
                .out();
        assertTrue(out.indexOf("Use the planned 4 mm2 or more") < out.indexOf("do without 'Fridge'"), out);
        String bar = Files.readString(Path.of(PLAIN))
                + "fitments: [{name: Bar, kind: bar, mass: 50 kg, at: {x: -800 mm, y: 0 mm, z: 700 mm},"
                + " airbag-statement: no, lamps-visible: yes}]\n";
        Ran.of("mend", Files.writeString(folder.resolve("stated.yaml"), bar).toString())
                .printed(0)
                .says("OFFER 1 choose a bar whose maker names this vehicle")
                .saysNot("WHAT THE STOP ITSELF");
    }

    /** The trailer is 100 kg above its plate in no loading of the vehicle, and too heavy for its brakes, of which nothing is rated. */
    @Test
    void mendLeavesNoEmptyBrackets() throws IOException {
        String trailer = Files.readString(Path.of(PLAIN))
                + "trailer: {name: Van, mass: 2700 kg +/- 0 kg, rated: 2600 kg, gtm: 2400 kg, lightest: 2600 kg, ball: 260 kg +/- 0 kg,"
                + " brakes: over-run, every-wheel-braked: yes}\ncases: [{name: tow, towing: yes}]\n";
        String out = Ran.of(
                        "mend",
                        Files.writeString(folder.resolve("brackets.yaml"), trailer)
                                .toString())
                .says("- towing.plate-over [trailer]: loaded mass of the trailer 2700 kg")
                .says("Left then: ")
                .says("trailer (greatest axle load of a trailer with over-run brakes or some wheels unbraked)")
                .out();
        assertFalse(out.contains("()") || out.contains(", :"), out);
    }

    /** Both bars stop nothing; of one the plate is hidden, of the other nothing is known. */
    @Test
    void compareCountsWhatIsOpenAsItsWorst() throws IOException {
        String bars =
                """
                fitments:
                  - {name: Bar A, kind: bar, mass: 50 kg, at: {x: -850 mm, y: 0 mm, z: 700 mm}, airbag-statement: yes,
                     marked: yes, sensors: none-fitted, plate-visible: no, lamps-visible: yes, lowest: 500 mm, ahead: 700 mm,
                     grille-hidden: 10 %}
                  - {name: Bar B, kind: bar, mass: 50 kg, at: {x: -850 mm, y: 0 mm, z: 700 mm}, lowest: 500 mm,
                     ahead: 700 mm, grille-hidden: 10 %BARE}
                options: [{name: Bar, choices: [{name: A, parts: [Bar A]}, {name: B, parts: [Bar B]}]}]
                """;
        String plain = Files.readString(Path.of(PLAIN));
        String open = Files.writeString(folder.resolve("open.yaml"), plain + bars.replace("BARE", ""))
                .toString();
        Ran compared = Ran.of("compare", open)
                .says(
                        "Fewest stops, and of those the fewest changes: plan 1. A check that is not made counts as the worst"
                                + " that it could find.");
        assertEquals(List.of("0", "2"), row(compared, "open checks that could stop it"));
        String known =
                ", airbag-statement: yes, marked: yes, sensors: none-fitted, plate-visible: yes, lamps-visible: yes";
        Ran.of(
                        "compare",
                        Files.writeString(folder.resolve("known.yaml"), plain + bars.replace("BARE", known))
                                .toString())
                .says("Fewest stops, and of those the fewest changes: plan 2.")
                .saysNot("A check that is not made");
    }

    /** 10 kg over with the steel box: what is kept, or stands in it, is not left out by the best plan; another box replaces it. */
    @Test
    void compareCallsNoPlanBestThatLeavesOutWhatIsToStay() throws IOException {
        String text = Files.readString(Path.of(boxes("left out")));
        assertBest("plans 3, 5. A check", text);
        String kept = text.replace("name: Steel box, kind: other,", "name: Steel box, kind: other, keep: yes,");
        assertBest("plan 3. Plans that leave out more of what is to stay are not counted.", kept)
                .says("5 Box: none; Rack: none, leaves out 'Steel box'");
        assertBest(
                        "plan 1. Plans that leave out more",
                        kept.replace(
                                "cargo:\n",
                                "cargo:\n  - {name: Tools, mass: 0 kg, at: {x: 2 m, y: 0 mm, z: 900 mm}, in: Steel box}\n"))
                .says("3 Box: alloy; Rack: none, leaves out 'Tools'");
    }

    private static Ran assertBest(String plans, String text) throws IOException {
        return Ran.of(
                        "compare",
                        Files.writeString(folder.resolve("best.yaml"), text).toString())
                .says("Fewest stops, and of those the fewest changes: " + plans);
    }

    @Test
    void compareSaysWhatTheShelfHasInPlaceOfAPart() {
        Ran.of("compare", "scenarios/overloaded.yaml")
                .printed(0)
                .says("There is nothing to compare: the sheet leaves no choice open.")
                .says("'Roof rack with tent' could be left open, since the shelf has 'Flat roof rack' too: add -"
                        + " Flat roof rack to fitments, and options: [{name: Roof rack with tent, choices: [{name:"
                        + " as planned, parts: [Roof rack with tent]}, {name: from the shelf, parts: [Flat roof"
                        + " rack]}]}]");
    }

    /** The figures of each column are those that a run of check on the sheet with that choice prints. */
    @Test
    void compareSaysWhatSeparateChecksSay() throws IOException {
        Ran compared = Ran.of("compare", boxes("both")).printed(0);
        List<String> boxes = List.of("steel", "alloy", "none");
        List<String> racks = List.of("none", "rack");
        List<String> left = row(compared, "left, vehicle: GVM");
        List<String> stops = row(compared, "stops");
        List<String> prices = row(compared, "parts");
        List<String> over = row(compared, "mass.gvm-over");
        // Whether the rack is on the roof nobody has said, which could stop plans 2, 4 and 6.
        compared.says("Fewest stops, and of those the fewest changes: plans 3, 5. A check that is not made counts")
                .says("STOPS THAT REMAIN - plans 1, 2: Loaded mass is above the GVM (mass.gvm-over [vehicle])");
        assertEquals(
                List.of("666 km"),
                row(compared, "range, the least").stream().distinct().toList());
        for (int plan = 0; plan < 6; plan++) {
            String box = boxes.get(plan / 2);
            String rack = racks.get(plan % 2);
            compared.says((plan + 1) + " Box: " + box + "; Rack: " + rack);
            int mass = 2520 + List.of(120, 70, 0).get(plan / 2) + 30 * (plan % 2);
            assertEquals(2630 - mass + " kg", left.get(plan), "plan " + (plan + 1));
            int price = List.of(400, 900, 0).get(plan / 2) + 300 * (plan % 2);
            assertEquals(price == 0 ? "-" : price + " AUD", prices.get(plan));
            String alone = boxes("alone " + plan).toString();
            Files.writeString(
                    Path.of(alone),
                    Files.readString(Path.of(alone))
                            .replace("name: Box\n", "name: Box\n    take: " + box + "\n")
                            .replace("{name: Rack, choices", "{name: Rack, take: " + rack + ", choices"));
            Ran check = Ran.of("check", alone, "--full");
            assertEquals(
                    check.out().lines().filter(line -> line.startsWith("STOP ")).count(),
                    Long.parseLong(stops.get(plan)),
                    check.out());
            assertEquals(mass > 2630 ? "stop" : "-", over.get(plan));
            assertEquals(mass > 2630, check.out().contains("mass.gvm-over"), check.out());
        }
    }

    /** The cells of a row, all its blocks after each other. A cell is 12 wide, after a name of 32. */
    private static List<String> row(Ran run, String name) {
        List<String> cells = run.out()
                .lines()
                .filter(line -> line.startsWith(name + " "))
                .flatMap(line -> {
                    String rest = line.substring(32);
                    return Stream.iterate(0, at -> at < rest.length(), at -> at + 12)
                            .map(at -> rest.substring(at, Math.min(at + 12, rest.length()))
                                    .strip());
                })
                .toList();
        assertFalse(cells.isEmpty(), () -> "no row '" + name + "' in\n" + run.out());
        return cells;
    }

    @Test
    void compareVariesOnlyWhatIsAskedFor() throws IOException {
        Ran run = Ran.of("compare", boxes("one"), "--option", "Rack").printed(1);
        run.says("1 Rack: none (as written)").says("2 Rack: rack");
        assertFalse(run.out().contains("Box: "), run.out());
    }

    @Test
    void explainSaysWhyARuleFiredAndWhyNot() throws IOException {
        Ran.of("explain", heavy(), "mass.gvm-over").printed(0).says(": found").says("true headroom < 0");
        Ran.of("explain", PLAIN, "mass.gvm-over").printed(0).says(": in order").says("FALSE headroom < 0");
        Ran.of("explain", PLAIN, "towing.trailer-over").printed(0).says("This does not apply to the sheet");
    }

    /** One rule asks for two findings by name, the other for any of several. */
    @Test
    void explainShowsTheFindingsThatAnotherBuildsOn() {
        Ran.of("explain", TOURING, "across.no-plate")
                .printed(0)
                .says("the advice front.plate-hidden [Front bar], given found Front bar hides the front number plate");
        Ran.of("explain", TOURING, "across.one-engineer")
                .printed(0)
                .says("the advice across.certificate-needed [chassis], given found Certificate or approval "
                        + "needed: chassis");
    }

    @Test
    void progressIsShownOnlyWhereAPersonIsWatching() {
        for (boolean watched : new boolean[] {true, false}) {
            StringWriter err = new StringWriter();
            try (TimeLimit limit = new TimeLimit(10, new StatusLine(new PrintWriter(err), watched))) {
                limit.accept(7);
            }
            assertEquals(watched, err.toString().contains("7 plans tried"));
            assertEquals(watched, err.toString().endsWith("\r"), "the line is taken away");
        }
    }
}
