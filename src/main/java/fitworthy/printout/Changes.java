package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.advice.Advice;
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
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import fitworthy.search.Mender.Way;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Changes that would clear the stops, and open choices side by side. */
final class Changes {

    private Changes() {}

    static List<Block> offered(Advice planned, Mending mending) {
        List<Block> blocks = new ArrayList<>();
        boolean stops = planned.findings().stream()
                .anyMatch(each -> each.judged().card().severity().is(Severity.STOP));
        if (!stops && mending.ways().isEmpty()) {
            return blocks;
        }
        if (stops && mending.offers().isEmpty()) {
            blocks.add(new Paragraph("No small change clears every stop. Do what each finding says."));
        }
        for (int i = 0; i < mending.offers().size(); i++) {
            Offer offer = mending.offers().get(i);
            blocks.add(new Subheading(3, "Offer " + (i + 1), ""));
            blocks.add(new Points(
                    offer.changes().stream().map(each -> each.words()).toList()));
            MendingPrintout.terms(planned, offer).forEach(each -> blocks.add(new Paragraph(each)));
        }
        ways(mending).unlessEmpty().forEach(blocks::add);
        blocks.add(new Paragraph(MendingPrintout.effort(mending)));
        return blocks;
    }

    private static Table ways(Mending mending) {
        Map<String, Set<String>> byFinding = new LinkedHashMap<>();
        for (Way way : mending.ways()) {
            byFinding
                    .computeIfAbsent(MendingPrintout.heading(way.finding()), key -> new LinkedHashSet<>())
                    .add(way.change().words());
        }
        List<Row> rows = new ArrayList<>();
        byFinding.forEach((finding, changes) -> rows.add(Row.of(finding, String.join("; or ", changes))));
        return new Table(
                "What would just pass, one thing at a time", List.of(text("Finding", 50), text("Change", 50)), rows);
    }

    static List<Block> compared(Alternatives alternatives) {
        List<Alternative> plans = alternatives.plans();
        Set<String> limits = new LinkedHashSet<>();
        List<MarginTable> margins =
                plans.stream().map(each -> MarginTable.of(each.advice())).toList();
        margins.forEach(each -> limits.addAll(each.least().keySet()));
        List<Row> counts = new ArrayList<>();
        List<Row> left = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            Advice advice = plans.get(i).advice();
            List<String> cells = new ArrayList<>(List.of(
                    String.valueOf(i + 1),
                    plans.get(i).choices().stream()
                                    .map(each -> each.option() + ": " + each.choice())
                                    .collect(Collectors.joining("; "))
                            + (i == 0 ? " (as written)" : "")));
            for (Severity severity : Severity.values()) {
                cells.add(String.valueOf(TextPrintout.groups(advice.findings()).stream()
                        .filter(group ->
                                group.stream().anyMatch(each -> each.waiver().isEmpty()))
                        .filter(group -> group.get(0).judged().card().severity().is(severity))
                        .count()));
            }
            cells.add(String.valueOf(Wanted.rules(advice.notAssessed()).size()));
            cells.add(AlternativesPrintout.price(advice));
            counts.add(Row.of(cells.toArray(String[]::new)));
            List<String> least = new ArrayList<>(List.of(String.valueOf(i + 1)));
            MarginTable margin = margins.get(i);
            limits.forEach(limit -> least.add(margin.least().getOrDefault(limit, "-")));
            left.add(Row.of(least.toArray(String[]::new)));
        }
        List<Column> leftColumns = new ArrayList<>(List.of(text("Plan", 8)));
        limits.forEach(each -> leftColumns.add(figure(each, 92 / limits.size())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Table(
                "Every combination, each run through the whole rule book",
                List.of(
                        text("Plan", 8),
                        text("Choices", 34),
                        figure("Stop", 8),
                        figure("Change", 9),
                        figure("Confirm", 9),
                        figure("Note", 8),
                        figure("Figures missing", 10),
                        figure("Price", 14)),
                counts));
        if (!limits.isEmpty()) {
            blocks.add(new Table("Left of each limit in the loading that leaves least", leftColumns, left));
        }
        if (plans.size() < alternatives.all()) {
            blocks.add(new Paragraph(
                    plans.size() + " of " + alternatives.all() + " combinations are shown; 'compare' shows more."));
        }
        return blocks;
    }
}
