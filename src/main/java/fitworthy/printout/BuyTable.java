package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;
import static fitworthy.document.Report.Column.whole;

import fitworthy.advice.Arrangement;
import fitworthy.advice.BuyList;
import fitworthy.advice.BuyList.Decision;
import fitworthy.advice.BuyList.Part;
import fitworthy.document.Page;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Facts;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Particular;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Asked;
import fitworthy.printout.words.BuyWords;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.FieldWords;
import fitworthy.quantity.Missing;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can be ordered now, what has to wait for what, and what should not be bought as planned. */
public final class BuyTable {

    private static final String NOTHING = "nothing";
    private static final String INDENT = "  ";
    private static final String LATEST = "Latest order day";

    /** What is named on the first page. */
    private static final int MOST_PARTS = 9;
    /** What is named of those that wait for the same, or can be ordered, on the second. */
    private static final int MOST_LISTED = 40;
    /** The same where it is said beside them what comes first. */
    private static final int BESIDE_SETTLING = 3;

    private static final int MOST_REASONS = 5;
    private static final int MOST_FIRST = 3;

    private BuyTable() {}

    /** Names alone, those that wait for the same told together; nothing where no part is to be bought. */
    public static void print(Page page, Arrangement arrangement) {
        BuyList list = BuyList.of(arrangement);
        if (list.parts().isEmpty()) {
            return;
        }
        page.line("What to buy");
        List<String> first = first(list);
        if (!first.isEmpty()) {
            page.line(INDENT + "Before you order anything:");
            first.forEach(line -> page.hanging(INDENT + "  - ", line));
        }
        List<Part> now = list.parts(Decision.ORDER_NOW);
        page.hanging(INDENT + now(list) + ": ", now.isEmpty() ? NOTHING : names(now) + ".");
        grouped(page, Decision.WAIT, list);
        grouped(page, Decision.NOT_AS_PLANNED, list);
        earliest(list, today(arrangement)).ifPresent(line -> page.wrapped(INDENT.length(), LATEST + ": " + line));
        page.blank();
    }

    /** Parts under a heading, those with the same first reason in one line. */
    private static void grouped(Page page, Decision decision, BuyList list) {
        List<Part> parts = list.parts(decision);
        if (!parts.isEmpty()) {
            page.line(INDENT + BuyWords.heading(decision) + ":");
            Map<String, List<Part>> byReason = parts.stream()
                    .collect(Collectors.groupingBy(BuyWords::brief, LinkedHashMap::new, Collectors.toList()));
            byReason.forEach((reason, some) -> page.hanging(INDENT + "  - ", names(some) + ": " + reason));
        }
    }

    private static String few(List<Part> parts) {
        return Words.few(parts.stream().map(Part::name).toList(), MOST_LISTED);
    }

    private static String names(List<Part> parts) {
        return parts.stream().map(Part::name).collect(Collectors.joining(", "));
    }

    /**
     * Which part has to be ordered first, and by when; none where that is not known of any, or nobody wants the work done by
     * a day. What is not to be bought as planned has no such day, and what waits is settled by it.
     */
    private static Optional<String> earliest(BuyList list, LocalDate today) {
        return list.parts().stream()
                .filter(part -> part.decision() != Decision.NOT_AS_PLANNED)
                .filter(part -> list.wanted() != null && part.lastDay().isPresent())
                .min(Comparator.comparing(part -> part.lastDay().orElseThrow()))
                .map(part -> part.name() + " by " + part.lastDay().orElseThrow() + ", to be ready by " + list.wanted()
                        + (isPast(list, part, today) ? "; that day is past" : "")
                        + (part.decision() == Decision.WAIT ? "; settle first what it waits for." : "."));
    }

    /** Of work that nobody wants by a day no order is late. */
    private static boolean isPast(BuyList list, Part part, LocalDate today) {
        return list.wanted() != null
                && part.lastDay().filter(day -> day.isBefore(today)).isPresent();
    }

    private static LocalDate today(Arrangement arrangement) {
        return arrangement.advice().sheet().asOf();
    }

    /** Which of the parts are too late already for the day that is wanted; nothing where none is. */
    private static String late(BuyList list, List<Part> parts, LocalDate today) {
        List<Part> late =
                parts.stream().filter(part -> isPast(list, part, today)).toList();
        return late.isEmpty() ? "" : " Latest order day past: " + few(late) + ".";
    }

    /** What is settled before anything is ordered, in a line each. */
    public static List<String> first(BuyList list) {
        List<String> lines = new ArrayList<>(
                list.first().stream().map(BuyWords::toSettle).distinct().toList());
        if (!list.unknown().isEmpty()) {
            lines.add("Not known for certain: "
                    + BuyWords.figures(list.unknown().stream()
                            .map(BuyTable::named)
                            .distinct()
                            .toList()));
        }
        return lines;
    }

    /** A field with what it is of, where its words do not say that. */
    private static String named(Missing field) {
        Asked.Lacking lacking = new Asked.Lacking("", List.of(field));
        return lacking.thing().isEmpty() ? FieldWords.of(field) : lacking.what();
    }

    /** What stands before that which can be ordered, at once or where something is settled first. */
    private static String now(BuyList list) {
        return first(list).isEmpty() || list.parts(Decision.ORDER_NOW).isEmpty()
                ? BuyWords.heading(Decision.ORDER_NOW)
                : "Then order";
    }

    /** The same where what to find out first is said above. */
    private static List<String> settle(BuyList list) {
        return Stream.concat(
                        list.first().stream().map(BuyWords::toSettle).distinct(),
                        list.unknown().isEmpty() ? Stream.empty() : Stream.of("What is to be found out, above"))
                .toList();
    }

    /** What can be ordered now, by its name; nothing where no part is to be bought. */
    static Optional<String> now(Arrangement arrangement) {
        BuyList list = BuyList.of(arrangement);
        List<Part> now = list.parts(Decision.ORDER_NOW);
        if (list.parts().isEmpty()) {
            return Optional.empty();
        }
        if (now.isEmpty()) {
            return Optional.of("Nothing yet: page 2 says what each part waits for.");
        }
        return Optional.of((settle(list).isEmpty()
                        ? onFirst(now) + "."
                        : Words.few(now.stream().map(Part::name).toList(), BESIDE_SETTLING)
                                + "; first settle what page 2 says.")
                + late(list, now, today(arrangement)));
    }

    private static String onFirst(List<Part> parts) {
        return Words.few(parts.stream().map(Part::name).toList(), MOST_PARTS)
                + (parts.size() > MOST_PARTS ? " on page 2" : "");
    }

    /**
     * What to order first, then what waits for what: all that waits for less load together, then what waits for the same
     * beside; nothing where no part is to be bought.
     */
    static List<Block> inShort(Arrangement arrangement, Readers readers) {
        BuyList list = BuyList.of(arrangement);
        if (list.parts().isEmpty()) {
            return List.of();
        }
        List<Particular> facts = new ArrayList<>();
        List<Part> now = list.parts(Decision.ORDER_NOW);
        List<String> first = settle(list);
        if (!first.isEmpty()) {
            facts.add(new Particular("Settle first", Words.few(first, MOST_FIRST, "; ") + "."));
        }
        facts.add(new Particular(now(list), now.isEmpty() ? "Nothing yet." : few(now) + "."));
        earliest(list, today(arrangement)).ifPresent(line -> facts.add(new Particular(LATEST, line)));
        List<Block> blocks = new ArrayList<>(List.of(new Subheading(3, "What to buy", ""), new Facts(facts)));
        for (Decision decision : List.of(Decision.WAIT, Decision.NOT_AS_PLANNED)) {
            List<String> lines = reasons(decision, list.parts(decision), readers);
            if (!lines.isEmpty()) {
                blocks.add(new Paragraph(BuyWords.heading(decision) + ":"));
                blocks.add(new Points(lines));
            }
        }
        return blocks;
    }

    /** A line for all that waits for less load, which clears nothing else, then one for each other reason. */
    private static List<String> reasons(Decision decision, List<Part> parts, Readers readers) {
        List<Part> heavy = decision == Decision.WAIT
                ? parts.stream().filter(BuyWords::waitsForLoad).toList()
                : List.of();
        List<String> lines = new ArrayList<>();
        if (!heavy.isEmpty()) {
            lines.add("Until the load is less (" + BuyWords.loads(heavy) + "): " + names(heavy)
                    + (heavy.stream().anyMatch(BuyWords::waitsForMore)
                            ? "; " + readers.whole() + " says what else some of them wait for"
                            : "")
                    + ".");
        }
        Map<String, List<Part>> byReason = parts.stream()
                .filter(part -> !heavy.contains(part))
                .collect(Collectors.groupingBy(BuyWords::brief, LinkedHashMap::new, Collectors.toList()));
        byReason.entrySet().stream()
                .limit(MOST_REASONS)
                .forEach(reason -> lines.add(few(reason.getValue()) + ": " + reason.getKey() + "."));
        if (byReason.size() > MOST_REASONS) {
            lines.add(Words.capital(readers.whole()) + " names the others.");
        }
        return lines;
    }

    /** A table of every part with its price and days, and why it is not ordered now. */
    public static List<Block> blocks(Arrangement arrangement) {
        BuyList list = BuyList.of(arrangement);
        if (list.parts().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        List<String> first = first(list);
        if (!first.isEmpty()) {
            blocks.add(new Subheading(3, "Before you order anything", ""));
            blocks.add(new Points(first));
        }
        blocks.add(
                new Paragraph(
                        list.wanted() == null
                                ? "The last day to order is the one that does not hold up the rest of the work."
                                : "The last day to order is the one that still has all done by " + list.wanted()
                                        + ", with jobs going on side by side. Of holidays only 25 December and 1 January are known."));
        if (list.parts(Decision.ORDER_NOW).isEmpty()) {
            blocks.add(new Paragraph("Nothing can be ordered yet."));
        }
        for (Decision decision : Decision.values()) {
            List<Row> rows = list.parts(decision).stream()
                    .map(part -> row(list, part, today(arrangement)))
                    .toList();
            blocks.addAll(new Table(
                            BuyWords.heading(decision),
                            decision == Decision.ORDER_NOW
                                    ? List.of(
                                            text("Part", 40),
                                            figure("Price", 22),
                                            figure("Lead time", 16),
                                            whole("Last day to order", 22))
                                    : List.of(
                                            text("Part", 19),
                                            figure("Price", 14),
                                            figure("Lead time", 10),
                                            whole("Last day to order", 14),
                                            text(decision == Decision.WAIT ? "Waits for" : "Instead", 43)),
                            rows)
                    .unlessEmpty());
        }
        return blocks;
    }

    private static Row row(BuyList list, Part part, LocalDate today) {
        List<String> cells = new ArrayList<>(List.of(
                part.name(),
                part.price() == null ? "no price" : part.price().toString(),
                part.leadTime().known() ? Digits.number(part.leadTime().value(), "days", 0) + " days" : "not known",
                part.lastDay()
                        .map(day -> day + (isPast(list, part, today) ? ", past" : ""))
                        .orElse("not known")));
        if (part.decision() != Decision.ORDER_NOW) {
            cells.add(Words.capital(BuyWords.full(part)));
        }
        return new Row(cells, "", false);
    }
}
