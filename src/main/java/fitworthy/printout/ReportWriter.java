package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.book.Basis;
import fitworthy.book.Source;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Drawing;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.picture.Pictures;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender.Mending;
import fitworthy.source.Words;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays out advice, and what was looked for beside it, as a report. */
public final class ReportWriter {

    /** Load cases beside each other in one table; more of them make further tables. */
    private static final int LOADINGS_A_TABLE = 5;

    /** What fits on one line above every page. */
    private static final int LONGEST_REFERENCE = 60;

    private final Advice advice;
    private final Arrangement arrangement;
    private final FindingBlocks findings;
    private final List<Section> sections = new ArrayList<>();

    private ReportWriter(Advice advice) {
        this.advice = advice;
        this.arrangement = Arrangement.of(advice);
        this.findings = new FindingBlocks(arrangement);
    }

    /** @param alternatives the open choices side by side; absent where the sheet leaves none open */
    public static Report report(
            Advice advice, Mending mending, Optional<Alternatives<ComparedPlan>> alternatives, Imprint imprint) {
        return new ReportWriter(advice).report(mending, alternatives, imprint);
    }

    private Report report(Mending mending, Optional<Alternatives<ComparedPlan>> alternatives, Imprint imprint) {
        add("result", "Result", result());
        add(
                "pictures",
                "Pictures",
                Pictures.of(advice).stream()
                        .map(picture -> new Drawing(picture.title(), picture.description(), picture.svg()))
                        .toList());
        add("findings", "Findings", findings.blocks());
        add("open", "Not assessed", CheckTables.notAssessed(arrangement));
        if (!arrangement.held().isEmpty()) {
            add("held", "In order if the guesses hold", CheckTables.held(arrangement));
        }
        add("met", "In order", CheckTables.met(arrangement));
        add("changes", "Changes that would clear the stops", Changes.offered(arrangement, mending));
        alternatives.ifPresent(plans -> add("choices", "Open choices side by side", Changes.compared(plans)));
        add("buy", "What to buy", BuyTable.blocks(arrangement));
        add("cost", "What it costs", CostTable.blocks(advice));
        add("work", "Order of work", WorkTable.blocks(advice.loadings().get(0).plan()));
        add("masses", "Mass sheet", MassTable.blocks(advice.loadings()));
        add("workings", "How the figures were worked out", Workings.blocks(arrangement.findings()));
        add("sources", "Sources", sources());
        add("limits", "What this advice is not", limits());
        add(
                "signatures",
                "Signatures",
                List.of(
                        new Paragraph(
                                "Read and talked through by those who sign. A signature does not turn advice into a"
                                        + " certificate."),
                        new Signatures(List.of("Builder", "Customer", "Engineer"))));
        String quote = advice.sheet().quote();
        String reference = quote.isEmpty() ? advice.sheet().vehicle().name() : "Quote " + quote;
        return new Report(
                "Advice on a planned vehicle modification",
                advice.sheet().title(),
                Words.shortened(reference, LONGEST_REFERENCE),
                "Advice, not certification. Confirm it with local codes, the makers and a licensed engineer before "
                        + "you buy, fit or drive.",
                Verdict.of(arrangement),
                particulars(imprint),
                sections);
    }

    private void add(String id, String heading, List<? extends Block> blocks) {
        if (!blocks.isEmpty()) {
            sections.add(new Section(id, heading, List.copyOf(blocks)));
        }
    }

    private List<Particular> particulars(Imprint imprint) {
        List<Particular> particulars = new ArrayList<>(List.of(
                new Particular("Customer", given(advice.sheet().customer())),
                new Particular("Quote", given(advice.sheet().quote())),
                new Particular("Vehicle", advice.sheet().vehicle().name()),
                new Particular(
                        "Region",
                        advice.book().regions().get(advice.sheet().region()).name()),
                new Particular("Practice as of", advice.sheet().asOf().toString()),
                new Particular("Loadings", String.join(", ", MarginTable.loadings(advice))),
                new Particular(
                        "Rule book",
                        advice.book().cover().name() + ", edition "
                                + advice.book().cover().edition()
                                + ", content " + advice.book().hash())));
        if (!HouseWords.house(advice).isEmpty()) {
            particulars.add(new Particular("House values", HouseWords.house(advice)));
        }
        particulars.add(new Particular("Build sheet", imprint.sheetFile() + ", SHA-256 " + imprint.sheetHash()));
        if (!imprint.shelf().isEmpty()) {
            particulars.add(new Particular("From the shelf", imprint.shelf()));
        }
        particulars.add(new Particular(
                "Made by",
                imprint.software() + ", "
                        + DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT)
                                .withZone(ZoneOffset.UTC)
                                .format(imprint.printedAt())));
        return particulars;
    }

    private static String given(String text) {
        return text.isEmpty() ? "not given" : text;
    }

    private List<Block> result() {
        List<Block> blocks = new ArrayList<>();
        points(
                "Looser than the book, on the word of "
                        + advice.book().house().page().shop(),
                HouseWords.looser(advice),
                blocks);
        blocks.add(CheckTables.counts(arrangement));
        blocks.addAll(margins());
        String waiting = MarginTable.waiting(advice);
        if (!waiting.isEmpty()) {
            blocks.add(new Paragraph(waiting));
        }
        blocks.addAll(RoomTable.of(advice).blocks());
        blocks.addAll(findings.glance().unlessEmpty());
        points("Waivers that do not count", HouseWords.idle(advice), blocks);
        if (!advice.book().house().isNone()) {
            points("Otherwise set by " + advice.book().house().page().shop(), HouseWords.others(advice), blocks);
        }
        return blocks;
    }

    private static void points(String heading, List<String> texts, List<Block> blocks) {
        if (!texts.isEmpty()) {
            blocks.add(new Subheading(3, heading, ""));
            blocks.add(new Points(texts));
        }
    }

    private List<Table> margins() {
        List<Margin> margins = arrangement.margins();
        List<String> all = MarginTable.loadings(advice);
        List<Table> tables = new ArrayList<>();
        for (int from = 0; from < all.size() && !margins.isEmpty(); from += LOADINGS_A_TABLE) {
            List<String> loadings = all.subList(from, Math.min(all.size(), from + LOADINGS_A_TABLE));
            List<Column> columns = new ArrayList<>(List.of(text("Limit", 34)));
            loadings.forEach(loading -> columns.add(figure(loading, 66 / loadings.size())));
            tables.add(new Table(
                    "Left of each limit; below zero it is passed",
                    columns,
                    margins.stream()
                            .map(margin -> Row.of(Stream.concat(
                                            Stream.of(margin.limit()), MarginTable.cells(margin, loadings).stream())
                                    .toArray(String[]::new)))
                            .toList()));
        }
        return tables;
    }

    /** The texts that findings rest on, and those of the practice values they were held against. */
    private List<Cited> sources() {
        Set<String> ids = new TreeSet<>();
        advice.findings().forEach(finding -> {
            ids.addAll(finding.judged().card().sources());
            finding.practice().forEach(value -> ids.addAll(value.entry().sources()));
        });
        List<Cited> cited = new ArrayList<>();
        ids.forEach(id -> {
            Source source = advice.book().sources().get(id);
            cited.add(new Cited(id, source.title(), source.link(), source.seen()));
        });
        return cited;
    }

    private List<Block> limits() {
        List<String> points = new ArrayList<>(List.of(
                "It rests on the figures of the build sheet named above. Nothing was measured, weighed or seen.",
                "It answers the questions of the rule book and no others. What is not named here was not looked at.",
                "Not assessed means not known. It is never a pass.",
                "A check in order was held against the practice values of the region and day named above, and against"
                        + " nothing else. No regulation was read in full for this book.",
                "Dates of the order of work are the earliest; holidays are not known."));
        points.add("How good the evidence is stands with every finding, from best to weakest: "
                + Arrays.stream(Basis.values()).map(Basis::words).collect(Collectors.joining("; ")) + ".");
        return List.of(new Points(points), new Notice(advice.book().cover().caution()));
    }
}
