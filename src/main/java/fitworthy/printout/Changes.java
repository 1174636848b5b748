package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.search.Alternatives;
import fitworthy.search.Alternatives.Alternative;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Mender.Way;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Changes that would clear the stops, and open choices side by side. */
final class Changes {

    private Changes() {}

    static List<Block> offered(Arrangement planned, Mending mending) {
        List<Block> blocks = new ArrayList<>();
        boolean stops = planned.finds(Severity.STOP);
        if (!stops && mending.ways().isEmpty()) {
            return blocks;
        }
        if (!mending.complete()) {
            blocks.add(new Paragraph(ChangeWords.effort(mending)));
        }
        if (stops && mending.offers().isEmpty()) {
            blocks.add(new Paragraph(ChangeWords.noOffer(mending) + "."));
        }
        for (int i = 0; i < mending.offers().size(); i++) {
            Offer offer = mending.offers().get(i);
            blocks.add(new Subheading(3, "Offer " + (i + 1), ""));
            blocks.add(new Points(offer.changes().stream().map(Change::words).toList()));
            ChangeWords.terms(planned.advice(), offer).forEach(term -> blocks.add(new Paragraph(term)));
        }
        ways(mending).unlessEmpty().forEach(blocks::add);
        if (mending.complete()) {
            blocks.add(new Paragraph(ChangeWords.effort(mending)));
        }
        return blocks;
    }

    private static Table ways(Mending mending) {
        Map<String, Set<String>> byFinding = new LinkedHashMap<>();
        for (Way way : mending.ways()) {
            byFinding
                    .computeIfAbsent(ChangeWords.heading(way.finding()), key -> new LinkedHashSet<>())
                    .add(way.change().words());
        }
        List<Row> rows = new ArrayList<>();
        byFinding.forEach((finding, changes) -> rows.add(Row.of(finding, String.join("; or ", changes))));
        return new Table(
                "What would just pass, one thing at a time", List.of(text("Finding", 50), text("Change", 50)), rows);
    }

    static List<Block> compared(Alternatives<ComparedPlan> alternatives) {
        List<ComparedPlan> plans =
                alternatives.plans().stream().map(Alternative::kept).toList();
        Set<String> limits = new LinkedHashSet<>();
        plans.forEach(plan -> limits.addAll(plan.left().keySet()));
        List<Row> counts = new ArrayList<>();
        List<Row> left = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            ComparedPlan plan = plans.get(i);
            String number = String.valueOf(i + 1);
            List<String> cells = new ArrayList<>(
                    List.of(number, ChangeWords.choices(alternatives.plans().get(i), i)));
            for (Severity severity : Severity.values()) {
                cells.add(String.valueOf(plan.found(severity)));
            }
            cells.add(String.valueOf(plan.headings().under()));
            cells.add(String.valueOf(plan.counts().notAssessed()));
            cells.add(String.valueOf(plan.counts().figuresMissing()));
            cells.add(plan.price());
            counts.add(Row.of(cells.toArray(String[]::new)));
            left.add(Row.of(Stream.concat(Stream.of(number), limits.stream().map(plan::left))
                    .toArray(String[]::new)));
        }
        List<Column> leftColumns = new ArrayList<>(List.of(text("Plan", 8)));
        limits.forEach(limit -> leftColumns.add(figure(limit, 92 / limits.size())));
        List<Block> blocks = new ArrayList<>();
        ChangeWords.cutShort(alternatives).ifPresent(cut -> blocks.add(new Paragraph(cut + " 'compare' shows more.")));
        blocks.add(new Table(
                (alternatives.complete() ? "Every combination" : "The combinations that were looked at")
                        + ", each run through the whole rule book",
                List.of(
                        text("Plan", 7),
                        text("Choices", 24),
                        figure("Stop", 6),
                        figure("Change", 8),
                        figure("Confirm", 9),
                        figure("Note", 6),
                        figure("Listed under them", 8),
                        figure("Checks not made", 9),
                        figure("Figures missing", 9),
                        figure("Price", 14)),
                counts));
        if (!limits.isEmpty()) {
            blocks.add(new Table("Margin to each limit in the loading that leaves least", leftColumns, left));
        }
        return blocks;
    }
}
