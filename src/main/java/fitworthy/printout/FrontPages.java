package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.document.Depth;
import fitworthy.document.Paper;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender.Mending;
import java.util.List;
import java.util.Optional;

/** The first two pages: the answer, and who does what. What does not fit them is counted there and told in the annex. */
final class FrontPages {

    /** How many findings the first page tells with what to do. */
    private static final int WORST = 5;
    /** What is lost of a page where a row or a block goes over to the next, in points. */
    private static final double LOST = 30;

    private final AnswerPage answers;
    private final OthersPage others;
    private final List<Ranked> heads;
    private final double page;
    private final double head;

    /** @param head how deep what stands above the first section is */
    FrontPages(
            Arrangement arrangement,
            List<Ranked> ranked,
            FindingBlocks findings,
            Mending mending,
            Optional<Alternatives<ComparedPlan>> alternatives,
            Paper paper,
            double head) {
        this.heads = ranked.stream().filter(Ranked::isHead).toList();
        this.answers = new AnswerPage(arrangement, findings);
        this.others = new OthersPage(arrangement, findings, mending, alternatives);
        this.page = paper.textHeight();
        this.head = head;
    }

    List<Section> sections() {
        int told = Math.min(WORST, heads.size());
        List<Block> first = answers.blocks(heads.subList(0, told), false);
        if (head + depth(AnswerPage.HEADING, first) > page) {
            first = answers.blocks(heads.subList(0, told), true);
        }
        while (told > 1 && head + depth(AnswerPage.HEADING, first) > page) {
            told--;
            first = answers.blocks(heads.subList(0, told), true);
        }
        double room = 2 * page - LOST - head - depth(AnswerPage.HEADING, first) - depth(OthersPage.HEADING, List.of());
        return List.of(
                new Section("answer", AnswerPage.HEADING, first),
                new Section("others", OthersPage.HEADING, others.blocks(heads.subList(told, heads.size()), room)));
    }

    private static double depth(String heading, List<Block> blocks) {
        return Depth.of(heading, blocks);
    }

    /** Room to sign. */
    static List<Block> signatures() {
        return List.of(
                new Paragraph("Read and talked through by those who sign. A signature does not turn advice into a"
                        + " certificate."),
                new Signatures(List.of("Builder", "Customer", "Engineer")));
    }
}
