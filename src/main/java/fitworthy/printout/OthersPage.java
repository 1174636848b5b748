package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;
import static fitworthy.document.Report.Column.whole;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Ranked;
import fitworthy.book.Party;
import fitworthy.book.Severity;
import fitworthy.document.Depth;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Asked;
import fitworthy.printout.words.GuessWords;
import fitworthy.printout.words.SeverityWords;
import fitworthy.printout.words.Wording;
import fitworthy.search.Alternatives;
import fitworthy.search.Mender.Mending;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The second page: how to get within the ratings, every other finding in a line, by who acts, then what to buy, the
 * choices, and room to sign.
 */
final class OthersPage {

    static final String HEADING = "What else, and who acts";

    /** How many subjects of one rule are named. */
    private static final int MOST_ALIKE = 3;

    private final Arrangement arrangement;
    private final Readers readers;
    private final FindingBlocks findings;
    private final Mending mending;
    private final Optional<Alternatives<ComparedPlan>> alternatives;

    OthersPage(
            Arrangement arrangement,
            FindingBlocks findings,
            Mending mending,
            Optional<Alternatives<ComparedPlan>> alternatives,
            Readers readers) {
        this.readers = readers;
        this.arrangement = arrangement;
        this.findings = findings;
        this.mending = mending;
        this.alternatives = alternatives;
    }

    /**
     * @param others the findings that the first page does not tell, worst first
     * @param room how deep all of it may be
     */
    List<Block> blocks(List<Ranked> others, double room) {
        List<Block> before = Changes.ways(arrangement.advice(), mending);
        List<Block> after = new ArrayList<>();
        after.add(new Paragraph(open()));
        String terms =
                arrangement.advice().book().terms(arrangement.advice().sheet().region());
        if (readers == Readers.QUOTE && !terms.isEmpty()) {
            after.add(new Paragraph(terms));
        }
        after.addAll(BuyTable.inShort(arrangement, readers));
        alternatives.ifPresent(plans -> after.add(Changes.choices(plans)));
        double left = room
                - signing().stream().mapToDouble(Depth::of).sum()
                - Stream.concat(before.stream(), after.stream())
                        .mapToDouble(Depth::of)
                        .sum();
        List<Block> blocks = new ArrayList<>(before);
        blocks.addAll(found(others, left));
        blocks.addAll(after);
        return blocks;
    }

    /** As many of them as fit, notes in less room where not all do, and how many more there are. */
    private List<Block> found(List<Ranked> others, double room) {
        if (others.isEmpty()) {
            return List.of(new Paragraph("Nothing else was found."));
        }
        List<Ranked> asking = others.stream()
                .filter(one -> one.group().severity() != Severity.NOTE)
                .toList();
        List<Ranked> notes = others.subList(asking.size(), others.size());
        List<Block> blocks = told(others, List.of(), List.of());
        for (int told = notes.size(); !fits(blocks, room) && told >= 0; told--) {
            blocks = told(asking, notes.subList(0, told), notes.subList(told, notes.size()));
        }
        for (int told = asking.size(); !fits(blocks, room) && told > 0; told--) {
            blocks = told(asking.subList(0, told), List.of(), others.subList(told, others.size()));
        }
        return blocks;
    }

    private static boolean fits(List<Block> blocks, double room) {
        return blocks.stream().mapToDouble(Depth::of).sum() <= room;
    }

    private List<Block> told(List<Ranked> listed, List<Ranked> notes, List<Ranked> others) {
        List<Block> blocks = new ArrayList<>(table(listed).unlessEmpty());
        if (!notes.isEmpty()) {
            blocks.add(new Paragraph("Worth knowing: "
                    + notes.stream()
                            .map(one -> one.number() + " " + findings.title(one.group()) + under(one))
                            .collect(Collectors.joining("; "))
                    + "."));
        }
        if (!others.isEmpty()) {
            blocks.add(new Paragraph(more(others)));
        }
        return blocks;
    }

    private String more(List<Ranked> more) {
        Map<Severity, Long> counts = more.stream()
                .collect(Collectors.groupingBy(one -> one.group().severity(), TreeMap::new, Collectors.counting()));
        return "And " + more.size() + " more in " + readers.whole() + ": "
                + SeverityWords.list(severity -> counts.getOrDefault(severity, 0L)) + ".";
    }

    private Table table(List<Ranked> others) {
        Map<Party, List<Ranked>> parties = others.stream()
                .collect(Collectors.groupingBy(one -> Asked.actor(one.group()), TreeMap::new, Collectors.toList()));
        List<Row> rows = new ArrayList<>();
        parties.forEach((party, its) -> {
            rows.add(Row.named(Words.capital(party.words())));
            its.forEach(one -> rows.add(row(one)));
        });
        return new Table(
                "Every other finding, by who acts or is asked first",
                List.of(text("No.", 5), whole("Asks for", 9), text("Finding", 68), figure("By how much", 18)),
                rows);
    }

    private Row row(Ranked one) {
        return new Row(
                List.of(
                        one.number(),
                        FindingBlocks.word(one.group().severity()),
                        findings.title(one.group()) + under(one) + instead(one),
                        FindingBlocks.margin(one)),
                FindingBlocks.link(one),
                false);
    }

    /** Where guesses decide it, what would do, which nobody has to wait for; nothing where its card names nothing. */
    private static String instead(Ranked one) {
        String instead =
                Wording.part(one.group().card().buying().instead(), one.group().worst());
        return one.open() && !instead.isEmpty() ? "; enough: " + instead : "";
    }

    /** What is told under one: by its subject where it is the same rule's, else how many. */
    static String under(Ranked one) {
        List<String> alike = one.told().stream()
                .skip(1)
                .filter(part -> part.id().equals(one.group().id()))
                .map(part -> part.worst().judged().subject())
                .toList();
        int others = one.under() - alike.size();
        return (alike.isEmpty() ? "" : "; also " + Words.few(alike, MOST_ALIKE))
                + (others == 0 ? "" : " (and " + others + " more)");
    }

    /** What to find out first, how much is in order, and where the rest is told. */
    private String open() {
        List<String> parts = new ArrayList<>();
        parts.add(GuessWords.findFirst(arrangement));
        parts.add(arrangement.counts().met()
                + (arrangement.counts().met() == 1 ? " check is in order" : " checks are in order")
                + GuessWords.beside(arrangement.counts()) + ".");
        if (readers == Readers.QUOTE) {
            parts.add(
                    Words.capital(readers.whole())
                            + " has each finding in full, what was not checked, all that a part waits for and what all of it rests on.");
        }
        return String.join(" ", parts).strip();
    }

    /** Room to sign; for an engineer or another certifier where the region has one. */
    static List<Block> signatures(Advice advice) {
        Party certifier = advice.book().asked(advice.sheet().region(), Party.ENGINEER);
        List<String> signing = new ArrayList<>(List.of("Builder", "Customer"));
        if (certifier == Party.ENGINEER) {
            signing.add("Engineer");
        } else if (certifier == Party.LOW_VOLUME_CERTIFIER) {
            signing.add("Certifier");
        }
        return List.of(
                new Paragraph(
                        "Read and talked through by those who sign. A signature does not turn advice into a certificate."),
                new Signatures(signing));
    }

    /** The same for the sheet that this page is of. */
    List<Block> signing() {
        return signatures(arrangement.advice());
    }
}
