package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.document.Depth;
import fitworthy.document.Paper;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Section;
import fitworthy.printout.words.PlannedWords;
import fitworthy.printout.words.Verdict;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender.Mending;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays out advice, and what was looked for beside it, as a report: the answer on two pages, and what it rests on. */
public final class ReportWriter {

    /** What fits on one line above every page. */
    private static final int LONGEST_REFERENCE = 60;

    private static final String ABOUT = "What this paper is, and is not";

    private final Readers readers;
    private final Advice advice;
    private final Mending mending;
    private final Optional<Alternatives<ComparedPlan>> alternatives;
    private final Imprint imprint;
    private final Arrangement arrangement;
    private final List<Ranked> ranked;
    private final FindingBlocks findings;
    private final List<Section> sections = new ArrayList<>();

    private ReportWriter(
            Advice advice,
            Mending mending,
            Optional<Alternatives<ComparedPlan>> alternatives,
            Imprint imprint,
            Readers readers) {
        this.readers = readers;
        this.advice = advice;
        this.mending = mending;
        this.alternatives = alternatives;
        this.imprint = imprint;
        this.arrangement = Arrangement.of(advice);
        this.ranked = Ranked.of(arrangement);
        this.findings = new FindingBlocks(arrangement, ranked);
    }

    /**
     * @param alternatives the open choices side by side; absent where the sheet leaves none open
     * @param paper what the first pages are made to fit
     */
    public static Report report(
            Advice advice,
            Mending mending,
            Optional<Alternatives<ComparedPlan>> alternatives,
            Imprint imprint,
            Readers readers,
            Paper paper) {
        return new ReportWriter(advice, mending, alternatives, imprint, readers).report(paper);
    }

    private Report report(Paper paper) {
        if (readers == Readers.ENGINEER) {
            forEngineers();
        } else {
            FrontPages front = new FrontPages(
                    ranked,
                    new AnswerPage(arrangement, findings, readers),
                    new OthersPage(arrangement, findings, mending, alternatives, readers),
                    readers.hasAnnex() ? AnnexPages.pictures(advice) : AnnexPages.fewPictures(advice, paper),
                    paper,
                    Depth.ofHead(head()));
            sections.addAll(front.sections());
            if (readers != Readers.QUOTE) {
                behind(front);
            }
        }
        return head().with(sections);
    }

    /** What stands behind the first pages. */
    private void behind(FrontPages front) {
        if (readers == Readers.CUSTOMER) {
            add("room", "Room left", front.room());
        }
        // Pictures first where they begin a page anyway, else last, so that no page is left half empty for one.
        if (front.isFull()) {
            add("pictures", readers.hasAnnex() ? "Annex: pictures" : "Pictures", front.otherPictures(), true);
        }
        if (readers == Readers.WORKSHOP) {
            add(
                    "work",
                    "Order of work",
                    WorkTable.blocks(advice.loadings().get(0).plan()));
        }
        if (readers.hasAnnex()) {
            annex(front);
        }
        if (readers == Readers.WORKSHOP) {
            workshop();
        }
        add("about", ABOUT, AnnexPages.about(advice, imprint, readers));
        if (!front.isFull()) {
            add("pictures", "Pictures", front.otherPictures());
        }
    }

    private void annex(FrontPages front) {
        add("findings", "Annex: the findings in full", AnnexPages.findings(advice, findings));
        add("open", "Not checked", CheckTables.notAssessed(arrangement));
        add("held", "In order if the guesses hold", CheckTables.held(arrangement));
        add("room", "Room left", front.room());
        add("buy", "What to buy", BuyTable.blocks(arrangement));
        add("cost", "What it costs", CostTable.blocks(advice));
        add("changes", "Changes that would clear the stops", Changes.offered(arrangement, mending));
        alternatives.ifPresent(plans -> add("choices", "Open choices side by side", Changes.compared(plans)));
        add("masses", "Mass sheet", MassTable.blocks(advice.loadings()));
        add("sources", "Sources", AnnexPages.sources(advice));
    }

    private void workshop() {
        add("workings", "How the figures were worked out", Workings.blocks(ranked));
        add("counts", "Checks by loading", List.of(CheckTables.counts(arrangement)));
        add("met", "In order", CheckTables.met(arrangement));
    }

    private void forEngineers() {
        add("masses", "Mass sheet", MassTable.blocks(advice.loadings()));
        add("alterations", "Alterations and certificates", CertificateTables.blocks(advice, ranked));
        add("workings", "How the figures were worked out", Workings.blocks(ranked));
        add("findings", "The findings in full", AnnexPages.findings(advice, findings));
        add("open", "Not checked", CheckTables.notAssessed(arrangement));
        add("held", "In order if the guesses hold", CheckTables.held(arrangement));
        add("sources", "Sources", AnnexPages.sources(advice));
        add("signatures", "Signatures", OthersPage.signatures(advice));
        add("about", ABOUT, AnnexPages.about(advice, imprint, Readers.ENGINEER));
        add("pictures", "Pictures", AnnexPages.pictures(advice));
    }

    private void add(String id, String heading, List<? extends Block> blocks) {
        add(id, heading, blocks, false);
    }

    private void add(String id, String heading, List<? extends Block> blocks, boolean apart) {
        if (!blocks.isEmpty()) {
            sections.add(new Section(id, heading, List.copyOf(blocks), apart));
        }
    }

    /** What stands above the sections. */
    private Report head() {
        String quote = advice.sheet().quote();
        String reference = quote.isEmpty() ? advice.sheet().vehicle().name() : "Quote " + quote;
        return new Report(
                "Advice on a planned vehicle modification",
                advice.sheet().title(),
                Words.shortened(reference, LONGEST_REFERENCE),
                "Advice, not certification. Confirm it with local codes, the makers and a licensed engineer before "
                        + "you buy, fit or drive.",
                readers == Readers.QUOTE ? Verdict.inShort(arrangement) : Verdict.of(arrangement),
                particulars(),
                List.of());
    }

    private List<Particular> particulars() {
        List<Particular> particulars = new ArrayList<>(List.of(
                new Particular(
                        "For",
                        Stream.of(advice.sheet().customer(), advice.sheet().quote())
                                .filter(text -> !text.isEmpty())
                                .collect(Collectors.collectingAndThen(
                                        Collectors.joining(", quote "), text -> text.isEmpty() ? "not given" : text))),
                new Particular(
                        "Vehicle",
                        advice.sheet().vehicle().name() + "; loadings: "
                                + String.join(", ", MarginTable.loadings(advice))),
                new Particular(
                        "Rules of",
                        advice.book().regions().get(advice.sheet().region()).name() + " as of "
                                + advice.sheet().asOf())));
        if (readers == Readers.QUOTE) {
            particulars.add(new Particular("Planned", PlannedWords.of(advice.sheet())));
        }
        return particulars;
    }
}
