package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Basis;
import fitworthy.book.Severity;
import fitworthy.book.Source;
import fitworthy.document.Depth;
import fitworthy.document.Paper;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Cited;
import fitworthy.document.Report.Drawing;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Notice;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Subheading;
import fitworthy.printout.picture.Picture;
import fitworthy.printout.picture.Pictures;
import fitworthy.printout.words.HouseWords;
import fitworthy.printout.words.LoadedVerdict;
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

/** What stands behind the first pages: what they rest on, and what was made from what. */
public final class AnnexPages {

    /** Pages of pictures for a customer, so that there are five in all. */
    private static final int FEW_PAGES = 3;
    /** What is said of the paper itself, in points. */
    private static final double ABOUT = 250;

    private AnnexPages() {}

    static Drawing drawing(Picture picture) {
        return new Drawing(picture.title(), picture.description(), picture.svg());
    }

    static List<Drawing> pictures(Advice advice) {
        return Pictures.of(advice).stream().map(AnnexPages::drawing).toList();
    }

    /**
     * Those that a customer gets: without the limits, which the first page has, and no more than {@link #FEW_PAGES} hold
     * with what is said of the paper itself.
     */
    static List<Drawing> fewPictures(Advice advice, Paper paper) {
        List<Drawing> few = new ArrayList<>();
        double page = paper.textHeight();
        double used = 0;
        for (Picture picture : Pictures.ofPlan(advice)) {
            Drawing drawing = drawing(picture);
            double depth = Depth.of(drawing);
            double from = used % page + depth > page ? Math.ceil(used / page) * page : used;
            if (from + depth < FEW_PAGES * page - ABOUT) {
                few.add(drawing);
                used = from + depth;
            }
        }
        return few;
    }

    /** The findings in full, behind what a house or a person answers for. */
    static List<Block> findings(Advice advice, FindingBlocks findings) {
        List<Block> blocks = new ArrayList<>();
        String shop = advice.book().house().isNone()
                ? ""
                : advice.book().house().page().shop();
        points("Looser than the book, as decided by " + shop, HouseWords.looser(advice), blocks);
        points("Waivers that do not count", HouseWords.idle(advice), blocks);
        if (!shop.isEmpty()) {
            points("Otherwise set by " + shop, HouseWords.others(advice), blocks);
        }
        blocks.addAll(findings.blocks());
        return blocks;
    }

    private static void points(String heading, List<String> texts, List<Block> blocks) {
        if (!texts.isEmpty()) {
            blocks.add(new Subheading(3, heading, ""));
            blocks.add(new Points(texts));
        }
    }

    /** The texts that findings rest on, and those of the practice values they were held against. */
    public static List<Cited> sources(Advice advice) {
        return sources(advice, advice.findings());
    }

    /** Those of some of its findings. */
    public static List<Cited> sources(Advice advice, List<Finding> findings) {
        Set<String> ids = new TreeSet<>();
        findings.forEach(finding -> {
            ids.addAll(finding.judged().card().sources());
            finding.practice().forEach(value -> ids.addAll(value.entry().sources()));
        });
        List<Cited> cited = new ArrayList<>();
        ids.forEach(id -> {
            Source source = advice.book().sources().get(id);
            cited.add(new Cited(id, source.title(), source.link(), source.account()));
        });
        return cited;
    }

    /** What the advice answers for and what not, and what it was made from, so that it can be made again. */
    static List<Block> about(Advice advice, Imprint imprint, Readers readers) {
        List<String> points = new ArrayList<>(List.of(
                "It rests on the figures of the build sheet named below. Nothing was measured, weighed or seen.",
                "It answers the questions of the rule book and no others. What is not named here was not looked at.",
                "Not checked means not known. It is never a pass.",
                "A check in order was held against the practice values of the region and day named above, and against"
                        + " nothing else. No regulation was read in full for this book.",
                "Dates of the order of work are the earliest; of holidays only 25 December and 1 January are known."));
        if (readers == Readers.CUSTOMER) {
            points.add(0, LoadedVerdict.RATINGS);
            official(advice).ifPresent(points::add);
        }
        points.add("How good the evidence is stands with every finding "
                + (readers.hasAnnex() ? "in full" : "in " + readers.whole()) + ", from best to weakest: "
                + Arrays.stream(Basis.values()).map(Basis::words).collect(Collectors.joining("; ")) + ".");
        return List.of(
                new Points(points),
                new Notice(advice.book().smallPrint(advice.sheet().region())),
                new Facts(madeFrom(advice, imprint)));
    }

    /** Without addresses, and without what only tells of a text: a customer is to know the text, and whom to ask for it. */
    private static Optional<String> official(Advice advice) {
        String titles = advice.findings().stream()
                .filter(finding -> finding.judged().card().severity().value().compareTo(Severity.CHANGE) <= 0)
                .flatMap(finding -> finding.practice().stream())
                .flatMap(value -> value.entry().sources().stream())
                .map(id -> advice.book().sources().get(id))
                .filter(source -> source.kind().value().isOfficial())
                .map(Source::title)
                .distinct()
                .sorted()
                .collect(Collectors.joining("; "));
        return titles.isEmpty()
                ? Optional.empty()
                : Optional.of("Texts of law, standards and authorities with the limits of its stops and changes: "
                        + titles + ".");
    }

    private static List<Particular> madeFrom(Advice advice, Imprint imprint) {
        List<Particular> facts = new ArrayList<>(List.of(new Particular(
                "Rule book",
                advice.book().cover().name() + ", edition "
                        + advice.book().cover().edition()
                        + ", content " + advice.book().hash())));
        if (!HouseWords.house(advice).isEmpty()) {
            facts.add(new Particular("House values", HouseWords.house(advice)));
        }
        facts.add(new Particular("Build sheet", imprint.sheetFile() + ", SHA-256 " + imprint.sheetHash()));
        if (!imprint.shelf().isEmpty()) {
            facts.add(new Particular("From the shelf", imprint.shelf()));
        }
        facts.add(new Particular(
                "Made by",
                imprint.software() + ", "
                        + DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'", Locale.ROOT)
                                .withZone(ZoneOffset.UTC)
                                .format(imprint.printedAt())));
        return facts;
    }
}
