package fitworthy.printout;

import fitworthy.advice.Ranked;
import fitworthy.document.Depth;
import fitworthy.document.Paper;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Drawing;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import java.util.ArrayList;
import java.util.List;

/** The first two pages: the answer, and who does what. What does not fit them is counted there and told in the annex. */
final class FrontPages {

    /** How many findings the first page tells with what to do. */
    private static final int WORST = 5;
    /** What is lost of a page where a row or a block goes over to the next, in points. */
    private static final double LOST = 20;
    /** How much of a page is filled where nothing more is begun on it. */
    private static final double FULL = 2 / 3.0;


    private final List<Section> sections;
    private final List<Drawing> pictures;
    private final double filled;

    /**
     * Chooses what stands on them.
     *
     * @param pictures those that fill what is left of them
     * @param head how deep what stands above the first section is
     */
    FrontPages(
            List<Ranked> ranked,
            AnswerPage answers,
            OthersPage others,
            List<Drawing> pictures,
            Paper paper,
            double head) {
        double page = paper.textHeight();
        List<Ranked> heads = ranked.stream().filter(Ranked::isHead).toList();
        int told = Math.min(WORST, heads.size());
        List<Block> first = answers.blocks(heads.subList(0, told), false);
        if (head + Depth.of(AnswerPage.HEADING, first) > page) {
            first = answers.blocks(heads.subList(0, told), true);
        }
        while (told > 1 && head + Depth.of(AnswerPage.HEADING, first) > page) {
            told--;
            first = answers.blocks(heads.subList(0, told), true);
        }
        double used = head + Depth.of(AnswerPage.HEADING, first);
        List<Block> second =
                new ArrayList<>(others.blocks(heads.subList(told, heads.size()), 2 * page - LOST - used
                        - Depth.of(OthersPage.HEADING, List.of())));
        used += Depth.of(OthersPage.HEADING, second);
        int drawn = 0;
        while (used > page
                && drawn < pictures.size()
                && used + LOST + Depth.of(pictures.get(drawn)) < 2 * page) {
            used += Depth.of(pictures.get(drawn));
            second.add(pictures.get(drawn++));
        }
        second.addAll(signatures());
        this.sections = List.of(
                new Section("answer", AnswerPage.HEADING, first), new Section("others", OthersPage.HEADING, second));
        this.pictures = pictures.subList(drawn, pictures.size());
        this.filled = used % page / page;
    }

    List<Section> sections() {
        return sections;
    }

    /** The pictures that found no room. */
    List<Drawing> otherPictures() {
        return pictures;
    }

    /** Whether what follows begins on a page of its own, since little of the last one is left. */
    boolean isFull() {
        return filled > FULL;
    }

    /** Room to sign. */
    static List<Block> signatures() {
        return List.of(
                new Paragraph("Read and talked through by those who sign. A signature does not turn advice into a certificate."),
                new Signatures(List.of("Builder", "Customer", "Engineer")));
    }
}
