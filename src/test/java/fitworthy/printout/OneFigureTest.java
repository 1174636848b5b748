package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Counts;
import fitworthy.advice.Margin;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Severity;
import fitworthy.document.HtmlLayout;
import fitworthy.document.Report.Table;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.json.JsonPrintout;
import fitworthy.printout.screen.AlternativesPrintout;
import fitworthy.printout.screen.MendingPrintout;
import fitworthy.printout.screen.TextPrintout;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Payload;
import fitworthy.printout.words.Verdict;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Missing;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.search.Mender.Mending;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/** What is one figure reads as one, wherever it stands: the counts of every output, and the figures of a finding. */
class OneFigureTest {

    private static final Mending NO_CHANGE = new Mending(List.of(), List.of(), 0, true);

    private static String printed(Consumer<PrintWriter> printout) {
        StringWriter text = new StringWriter();
        printout.accept(new PrintWriter(text));
        return text.toString().replaceAll("\\s+", " ");
    }

    private static List<Advice> all;

    /** Everything that is said of the cases and the scenarios, worked out once for all tests. */
    private static synchronized List<Advice> all() throws FaultsException {
        if (all == null) {
            List<Advice> found = new ArrayList<>();
            for (String each : Printed.SCENARIOS) {
                found.add(Printed.scenario(each).advice());
            }
            for (Cases.Case each : Books.cases()) {
                found.add(Adviser.advise(Books.engine().with(each.house()), each.sheet()));
            }
            all = found;
        }
        return all;
    }

    @AfterAll
    static void letGo() {
        all = null;
    }

    @Test
    void everyOutputCountsTheSame() throws FaultsException, IOException {
        int open = 0;
        for (Advice advice : all()) {
            // Counted here from what is said, once more.
            long checks =
                    advice.notAssessed().stream().map(Outcome::check).distinct().count();
            long met = advice.met().stream().map(Outcome::check).distinct().count();
            Set<String> figures = advice.notAssessed().stream()
                    .flatMap(each -> {
                        // With a gap of the book no figure of the sheet would help.
                        List<Missing> gaps = each.missing().stream()
                                .filter(Missing::isInBook)
                                .toList();
                        return (gaps.isEmpty() ? each.missing() : gaps).stream();
                    })
                    .map(Missing::path)
                    .collect(Collectors.toCollection(TreeSet::new));
            String words = checks + (checks == 1 ? " check" : " checks") + " not made: " + figures.size()
                    + (figures.size() == 1 ? " answer" : " answers") + " missing";
            open += checks > 0 ? 1 : 0;

            Arrangement arrangement = Arrangement.of(advice);
            Counts counts = arrangement.counts();
            assertEquals(
                    List.of(checks, (long) figures.size(), met),
                    List.of(counts.notAssessed(), counts.figuresMissing(), counts.met()));
            String text = printed(
                    out -> new TextPrintout(out, TextPrintout.Painter.NONE, false).print(advice, Severity.NOTE));
            said(text, words, checks == 0 ? 0 : 2);
            assertTrue(met == 0 || text.contains("IN ORDER: " + met + " check"), text);
            String listed =
                    printed(out -> new TextPrintout(out, TextPrintout.Painter.NONE, true).print(advice, Severity.NOTE));
            said(listed, words, checks == 0 ? 0 : 2);
            assertTrue(met == 0 || listed.contains("IN ORDER: " + met + " check"), listed);
            String list = text.contains("NOT CHECKED") ? text.substring(text.indexOf("NOT CHECKED")) : "";
            figures.forEach(each -> assertTrue(list.contains(each.substring(each.lastIndexOf('.') + 1)), each));

            said(printed(out -> MendingPrintout.print(out, advice, NO_CHANGE)), words, checks == 0 ? 0 : 1);
            String compared = printed(out -> AlternativesPrintout.print(out, advice, compared(advice)));
            assertTrue(
                    compared.contains(" checks not made " + checks + " ")
                            && compared.contains(" figures missing " + figures.size() + " "),
                    compared);

            StringWriter json = new StringWriter();
            JsonPrintout.print(new PrintWriter(json), advice, Severity.NOTE);
            JsonNode read = new ObjectMapper().readTree(json.toString());
            assertEquals(checks, read.get("counts").get("not-assessed").asLong());
            assertEquals(
                    figures.size(), read.get("counts").get("figures-missing").asLong());
            assertEquals(met, read.get("counts").get("met").asLong());
            assertEquals(headings(Verdict.of(arrangement)), headings(read.get("headings")));
            assertEquals(headings(Verdict.of(arrangement)), headings(choices(advice)));
            assertEquals(checks, listed(read, "not-assessed"));
            assertEquals(met, listed(read, "met"));
            assertEquals(
                    listed(read, "does-not-apply"),
                    read.get("counts").get("does-not-apply").asLong());
            assertEquals(advice.findings().size(), read.get("findings").size());

            List<String> last = CheckTables.counts(arrangement).rows().stream()
                    .reduce((one, other) -> other)
                    .orElseThrow()
                    .cells();
            long held = read.get("counts").get("in-order-if-guesses-hold").asLong();
            List<Long> counted = held == 0 ? List.of(checks, met) : List.of(checks, held, met);
            assertEquals(
                    counted.stream().map(String::valueOf).toList(),
                    last.subList(last.size() - counted.size(), last.size()));
            said(Verdict.of(arrangement), words, checks == 0 ? 0 : 1);
        }
        assertTrue(open > 100, "open " + open);
    }

    @Test
    void aReportCountsTheSame() throws FaultsException {
        for (String each : Printed.SCENARIOS) {
            Printed scenario = Printed.scenario(each);
            Counts counts = Arrangement.of(scenario.advice()).counts();
            String text = HtmlLayout.html(scenario.report())
                    .replaceAll("(?s)<head>.*</head>|<svg.*?</svg>|<[^>]*>", " ")
                    .replaceAll("\\s+", " ");
            said(text, Verdict.open(counts), counts.notAssessed() == 0 ? 0 : 2);
        }
    }

    /** Stops, changes, confirms, notes and what is told under them: as a sentence says it. */
    private static List<Long> headings(String words) {
        return Stream.of("stops?", "changes?", "to confirm", "notes?", "listed under them")
                .map(each -> Pattern.compile("([0-9]+) " + each + "\\b").matcher(words))
                .map(each -> each.find() ? Long.parseLong(each.group(1)) : 0)
                .toList();
    }

    private static List<Long> headings(JsonNode counts) {
        return Stream.of("stop", "change", "confirm", "note", "told-under")
                .map(each -> counts.get(each).asLong())
                .toList();
    }

    /** As the table of open choices has them. */
    private static List<Long> headings(Table choices) {
        return choices.rows().get(0).cells().subList(2, 7).stream()
                .map(Long::parseLong)
                .toList();
    }

    private static Table choices(Advice advice) {
        return (Table) Changes.compared(compared(advice)).get(0);
    }

    /** How many checks a list of the JSON has, which tells them by loading. */
    private static long listed(JsonNode read, String list) {
        Set<List<String>> checks = new HashSet<>();
        read.get(list)
                .forEach(each -> checks.add(
                        List.of(each.get("id").asText(), each.get("subject").asText())));
        return checks.size();
    }

    private static void said(String text, String words, int times) {
        Matcher all = Pattern.compile("[0-9]+ checks? not made: [0-9]+ answers? missing")
                .matcher(text);
        int found = 0;
        while (all.find()) {
            assertEquals(words, all.group());
            found++;
        }
        assertEquals(times, found, text);
    }

    /** Value, limit and margin have one form in the headline, in the table and in the words of the card. */
    @Test
    void aFigureOfAFindingHasOneForm() throws FaultsException {
        int named = 0;
        for (Advice advice : all()) {
            for (Finding finding : advice.findings()) {
                if (finding.comparison().isEmpty()) {
                    continue;
                }
                Judged judged = finding.judged();
                Comparison got = finding.comparison().get();
                Comparison shown = Digits.asPrinted(judged, got);
                MeasureKind kind = Digits.kind(judged, got);
                String headline = Wording.comparison(judged, got);
                String value = Digits.quantity(shown.value(), kind);
                String limit = Digits.quantity(shown.limit(), kind);
                String margin = Digits.quantity(Math.abs(shown.margin()), kind);
                String difference = Wording.amount(judged, got);
                assertTrue(
                        headline.contains(value)
                                && (headline.contains("none allowed")
                                        || headline.contains(limit)
                                                && (headline.contains(difference)
                                                        || headline.contains(": nothing to spare"))),
                        headline);
                assertEquals(
                        Stream.of("{value}", "{enough}", "{limit}", "{margin}")
                                .filter(judged.card().remedy()::contains)
                                .map(each -> each.equals("{limit}")
                                        ? limit
                                        : each.equals("{margin}")
                                                ? margin
                                                : each.equals("{enough}") && kind.isBothWays()
                                                        ? enough(judged, got, kind)
                                                        : value)
                                .toList(),
                        Stream.of("{value}", "{enough}", "{limit}", "{margin}")
                                .filter(judged.card().remedy()::contains)
                                .map(each -> Wording.fill(each, finding)
                                        .replace(" (house value)", "")
                                        // What it is in the law's or the plate's own unit stands behind the same
                                        // figure.
                                        .replaceFirst(" \\([0-9.]+ (lb|in|mph|mi|psi|US gal)\\)$", ""))
                                .toList());
                // Never on the wrong side of what it stands for.
                double slack = Dimension.size(kind.unit()) * Math.pow(10, -kind.decimals()) * 2e-6;
                assertTrue(
                        got.margin() >= 0
                                || !judged.card().remedy().contains("{margin}")
                                || shown.margin() <= got.margin() + slack,
                        headline);
                assertTrue(got.margin() >= 0 || !margin.matches("[0.]+( .*)?"), headline);
                assertTrue(got.margin() >= 0 || !value.equals(limit), headline);
                named += judged.card().remedy().matches("(?s).*\\{(value|enough|limit|margin)}.*") ? 1 : 0;
            }
        }
        assertTrue(named > 300, "named " + named);
    }

    /** A figure judged both ways reads to the nearest digit everywhere; what a remedy makes of it has to be enough. */
    private static String enough(Judged judged, Comparison got, MeasureKind kind) {
        BigDecimal exact =
                BigDecimal.valueOf(got.value() / Dimension.size(kind.unit())).setScale(9, RoundingMode.HALF_EVEN);
        RoundingMode safe = judged.card().atLeast() ? RoundingMode.FLOOR : RoundingMode.CEILING;
        BigDecimal rounded = exact.setScale(kind.decimals(), safe);
        return rounded.toPlainString() + (kind.unit().isEmpty() ? "" : " " + kind.unit());
    }

    /** The printed margin is what lies between the printed value and the printed limit, in findings and in what is met. */
    @Test
    void aPrintedSumComesOut() throws FaultsException {
        int tried = 0;
        for (Advice advice : all()) {
            for (Assessed each : Stream.<List<? extends Assessed>>of(advice.findings(), advice.met())
                    .flatMap(List::stream)
                    .filter(any -> any.comparison().isPresent())
                    .toList()) {
                Judged judged = each.judged();
                Comparison shown = Digits.asPrinted(judged, each.comparison().get());
                String unit = Digits.kind(judged, each.comparison().get()).unit();
                int decimals = Digits.kind(judged, each.comparison().get()).decimals();
                BigDecimal between = new BigDecimal(Digits.number(shown.value(), unit, decimals))
                        .subtract(new BigDecimal(Digits.number(shown.limit(), unit, decimals)))
                        .abs();
                assertEquals(
                        new BigDecimal(Digits.number(Math.abs(shown.margin()), unit, decimals)),
                        between,
                        Wording.comparison(judged, each.comparison().get()));
                tried++;
            }
        }
        assertTrue(tried > 10_000, "tried " + tried);
    }

    /** A figure that several checks look at is printed alike by each, but for a digit more where one is near its limit. */
    @Test
    void aFigureReadsAlikeInEveryCheck() throws FaultsException {
        int alike = 0;
        for (Advice advice : all()) {
            Map<List<String>, BigDecimal> seen = new HashMap<>();
            for (Assessed each : Stream.<List<? extends Assessed>>of(advice.findings(), advice.met())
                    .flatMap(List::stream)
                    .filter(any -> any.comparison().isPresent())
                    .toList()) {
                Judged judged = each.judged();
                Comparison got = each.comparison().get();
                MeasureKind kind = Digits.kind(judged, got);
                BigDecimal printed = new BigDecimal(
                        Digits.number(Digits.asPrinted(judged, got).value(), kind.unit(), kind.decimals()));
                BigDecimal other =
                        seen.putIfAbsent(List.of(kind.meaning(), judged.subject(), judged.loadCase()), printed);
                if (other != null) {
                    BigDecimal apart = other.subtract(printed).abs();
                    int digits = Math.min(other.scale(), printed.scale());
                    assertTrue(
                            other.scale() == printed.scale()
                                    ? apart.signum() == 0
                                    : apart.compareTo(BigDecimal.ONE.movePointLeft(digits)) < 0,
                            judged.id() + ": " + printed + ", elsewhere " + other);
                    alike++;
                }
            }
        }
        assertTrue(alike > 10_000, "alike " + alike);
    }

    /** What is passed has one number in the sentence of the payload, in the pictures and in the finding. */
    @Test
    void anExcessHasOneNumber() throws FaultsException {
        int over = 0;
        for (Advice advice : all()) {
            for (Finding finding : advice.findings()) {
                Judged judged = finding.judged();
                if (!judged.id().equals("mass.gvm-over") && !judged.id().equals("mass.axle-over")) {
                    continue;
                }
                String amount = Wording.amount(judged, finding.comparison().orElseThrow());
                assertEquals(amount, Digits.Held.of(judged.measure()).leftText(), judged.id());
                if (judged.id().equals("mass.gvm-over") && advice.loadings().size() == 1) {
                    String payload = Payload.inShort(advice);
                    assertTrue(
                            payload.startsWith("not known")
                                    || payload.contains("not known")
                                    || payload.contains(" " + amount.replace(" kg", "") + " over"),
                            payload + " but " + amount);
                    over++;
                }
            }
        }
        assertTrue(over > 10, "over " + over);
    }

    /**
     * A load is never printed lighter than it is and a plate never higher, each in one figure; so of a plate in pounds it is
     * the pounds that say by how much it is passed, and the kilograms may be one more.
     */
    @Test
    void anExcessOverARatingInPoundsIsNoMoreThanItIsInPounds() throws FaultsException {
        Advice advice = Adviser.advise(
                Books.engine(),
                Sheets.plainWith(
                        "vehicle: {ratings: {gvm: 5050 lb}}\ncargo: [{name: Luggage, mass: 60.4 kg +/- 30 kg}]\n"));
        Finding finding = advice.findings().stream()
                .filter(each -> each.judged().id().equals("mass.gvm-over"))
                .findFirst()
                .orElseThrow();
        // 2460 kg without the luggage, as in OneRoundingTest: 2520.4 less 5050 x 0.45359237 = 2290.64 is 229.76, or
        // 506.5 lb.
        assertEquals(
                "loaded mass 2521 kg (5557 lb) +/- 30 kg, GVM 2290 kg (5050 lb): 231 kg (507 lb) over",
                Wording.comparison(finding.judged(), finding.comparison().orElseThrow()));
        String payload = Payload.inShort(advice);
        assertTrue(payload.contains(" 231 over"), payload);
    }

    /** What a limit leaves in the table of margins is what the check of it says. */
    @Test
    void theTableOfMarginsSaysWhatTheCheckDoes() throws FaultsException {
        int tried = 0;
        for (Advice advice : all()) {
            for (Margin margin : Arrangement.of(advice).margins()) {
                for (Assessed each : margin.outcomes().values()) {
                    Comparison got = each.comparison().orElseThrow();
                    assertEquals(
                            Wording.amount(each.judged(), got)
                                    + (got.margin() >= 0
                                            ? ""
                                            : each.judged().card().atLeast() ? " short" : " over"),
                            Wording.spareOrOver(each));
                    tried++;
                }
            }
        }
        assertTrue(tried > 5000, "tried " + tried);
    }

    /** The plan as written, alone. */
    private static Alternatives<ComparedPlan> compared(Advice advice) {
        return new Alternatives<>(List.of(new Alternative<>(List.of(), ComparedPlan.of(advice))), 1);
    }
}
