package fitworthy.printout;

import fitworthy.advice.Ranked;
import fitworthy.document.Depth;
import fitworthy.document.Paper;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Drawing;
import fitworthy.document.Report.Section;
import java.util.ArrayList;
import java.util.List;

/** The first two pages: the answer, and who does what. What does not fit them is counted there and told in the annex. */
final class FrontPages {

    /** How many findings the first page tells with what to do. */
    private static final int WORST = 5;
    /** How many it tells at least beside the room left. */
    private static final int LEAST = 4;
    /** What is lost of a page where a row or a block goes over to the next, in points. */
    private static final double LOST = 8;
    /** How much of a page is filled where nothing more is begun on it. */
    private static final double FULL = 2 / 3.0;

    private final List<Section> sections;
    private final List<Drawing> pictures;
    private final List<Block> room;
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
        First chosen = first(answers, heads, page - head);
        List<Block> first = chosen.blocks;
        int told = chosen.told;
        double used = head + Depth.of(AnswerPage.HEADING, first);
        if (page - used < Depth.BEGUN) {
            used = Math.max(used, page);
        }
        List<Block> second = new ArrayList<>(others.blocks(
                heads.subList(told, heads.size()), 2 * page - LOST - used - Depth.of(OthersPage.HEADING, List.of())));
        used += Depth.of(OthersPage.HEADING, second)
                + others.signing().stream().mapToDouble(Depth::of).sum();
        double roomLeft = answers.room().stream().mapToDouble(Depth::of).sum();
        boolean roomBehind = !chosen.room && used > page && used + LOST + roomLeft < 2 * page;
        if (roomBehind) {
            second.addAll(answers.room());
            used += roomLeft;
        }
        List<Drawing> left = new ArrayList<>();
        for (Drawing picture : pictures) {
            double more = Depth.of(picture);
            if (used > page && used + LOST + more < 2 * page) {
                second.add(picture);
                used += more;
            } else {
                left.add(picture);
            }
        }
        second.addAll(others.signing());
        this.sections = List.of(
                new Section("answer", AnswerPage.HEADING, first), new Section("others", OthersPage.HEADING, second));
        this.pictures = List.copyOf(left);
        this.room = chosen.room || roomBehind ? List.of() : answers.room();
        this.filled = used % page / page;
    }

    /** What the first page tells. @param told how many findings @param room whether it has the room left */
    private record First(List<Block> blocks, int told, boolean room) {}

    /** As much as fits: fewer words first, then without the room left, then fewer findings. */
    private static First first(AnswerPage answers, List<Ranked> heads, double depth) {
        int most = Math.min(WORST, heads.size());
        First first = new First(List.of(), 0, true);
        for (boolean room : List.of(true, false)) {
            for (int told = most; told >= (room ? Math.min(LEAST, most) : 0); told--) {
                for (boolean brief : List.of(false, true)) {
                    first = new First(answers.blocks(heads, told, brief, room), told, room);
                    if (Depth.of(AnswerPage.HEADING, first.blocks) <= depth) {
                        return first;
                    }
                }
            }
        }
        return first;
    }

    List<Section> sections() {
        return sections;
    }

    /** The room left where neither page has place for it. */
    List<Block> room() {
        return room;
    }

    /** The pictures that found no room. */
    List<Drawing> otherPictures() {
        return pictures;
    }

    /** Whether what follows begins on a page of its own, since little of the last one is left. */
    boolean isFull() {
        return filled > FULL;
    }
}
