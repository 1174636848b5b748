package fitworthy.handbook;

import static fitworthy.document.Report.Column.text;

import fitworthy.book.Basis;
import fitworthy.book.Book;
import fitworthy.book.DatedLimit;
import fitworthy.book.Practice.Lookup;
import fitworthy.book.Severity;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Link;
import fitworthy.document.Report.Links;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.printout.words.Wording;
import fitworthy.proof.References;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What of a book is to be confirmed, region by region and rule by rule. */
final class Unconfirmed {

    /** The grades that leave something to confirm, the least certain first. */
    private static final List<Basis> UNCONFIRMED =
            List.of(Basis.MEMORY, Basis.COMMON_PRACTICE, Basis.PUBLISHED_SECONDHAND);

    private static final List<Basis> GRADES =
            List.of(Basis.PUBLISHED, Basis.PUBLISHED_SECONDHAND, Basis.COMMON_PRACTICE, Basis.MEMORY);

    private static final Set<Severity> GRAVE = Set.of(Severity.STOP, Severity.CHANGE);

    private final Book book;
    private final References references;
    private final Entries entries;

    Unconfirmed(References references, Entries entries) {
        this.book = references.book();
        this.references = references;
        this.entries = entries;
    }

    List<Block> blocks() {
        List<Block> blocks =
                new ArrayList<>(List.of(new Paragraph("Region by region: what is known there less well than from"
                        + " a published text that was read, and what holds there or is wanting besides, once all that is "
                        + "recorded has begun. What a region has from another is to be confirmed there as well.")));
        blocks.add(grades());
        book.regions().keySet().forEach(id -> blocks.addAll(region(id)));
        for (Basis basis : UNCONFIRMED) {
            List<Link> rules = book.cards().entrySet().stream()
                    .filter(entry -> entry.getValue().basis().is(basis)
                            && book.retired(entry.getKey()).isEmpty())
                    .map(entry ->
                            entries.link(entry.getKey(), ": " + entry.getValue().title()))
                    .toList();
            if (!rules.isEmpty()) {
                blocks.add(new Subheading(3, "Rules, " + basis.words(), ""));
                blocks.add(new Links("", rules, true));
            }
        }
        return blocks;
    }

    /** How many values each region has of its own, by how they are known; of limits alone, what stops and changes rest on. */
    private Table grades() {
        List<Column> columns = new ArrayList<>(List.of(text("Region", 26)));
        GRADES.forEach(basis -> columns.add(Column.figure(Words.capital(basis.words()), 13)));
        columns.add(text("Behind a stop or change", 22));
        return new Table(
                "Each region's own values: published, second-hand, common practice, from memory; last, of those that set"
                        + " a limit behind a stop or a change, how many are published",
                columns,
                book.regions().keySet().stream().map(this::grades).toList());
    }

    private Row grades(String region) {
        List<String> cells = new ArrayList<>(List.of(named(region)));
        GRADES.forEach(basis -> cells.add(String.valueOf(recorded(region)
                .filter(value -> value.value().basis().is(basis))
                .count())));
        List<Recorded> grave = recorded(region)
                .filter(value -> value.grave() && !value.value().none())
                .toList();
        cells.add(grave.stream()
                        .filter(value -> value.value().basis().is(Basis.PUBLISHED))
                        .count()
                + " of " + grave.size());
        return new Row(cells, "", false);
    }

    /** @param grave whether a stop or a change compares with it */
    private record Recorded(DatedLimit.Value value, boolean grave) {}

    private Stream<Recorded> recorded(String region) {
        return book.practice().entrySet().stream()
                .filter(entry -> entry.getValue().ends() == null)
                .flatMap(entry -> {
                    boolean grave = book.users(entry.getKey()).stream()
                            .map(rule -> book.cards().get(rule).severity().value())
                            .anyMatch(GRAVE::contains);
                    return entry.getValue().values().stream()
                            .filter(value -> value.region().equals(region))
                            .map(value -> new Recorded(value, grave));
                });
    }

    private List<Block> region(String region) {
        List<String> parents =
                book.lineage(region).subList(1, book.lineage(region).size());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Subheading(3, named(region), "", "region-" + region));
        blocks.add(new Paragraph("Of " + book.practice().size() + " practice values it records "
                + references.inherited(region, region).size() + " itself"
                + parents.stream()
                        .map(parent ->
                                ", has " + references.inherited(region, parent).size() + " from " + named(parent))
                        .collect(Collectors.joining())
                + "; " + references.none(region).size()
                + " set no limit there and " + references.notRecorded(region).size() + " are not recorded"
                + (references.ended().isEmpty()
                        ? ""
                        : "; " + references.ended().size() + " end everywhere: "
                                + String.join(", ", references.ended()))
                + "."));
        List<Row> rows =
                UNCONFIRMED.stream().flatMap(basis -> rows(region, basis)).toList();
        if (!rows.isEmpty()) {
            blocks.add(new Table(
                    "To be confirmed in " + named(region) + ", the least certain first",
                    List.of(
                            text("Value", 27),
                            Column.whole("From", 14),
                            text("Is", 14),
                            text("What it is and how it is known", 45)),
                    rows));
        }
        for (String parent : parents) {
            held(
                    "It has from " + named(parent),
                    references.inherited(region, parent).stream()
                            .map(id -> entries.link(
                                    id,
                                    " " + Wording.recorded(((Lookup.Found) references.last(region, id)).practice())))
                            .toList(),
                    blocks);
        }
        held(
                "No such limit applies",
                references.none(region).stream().map(id -> entries.link(id, "")).toList(),
                blocks);
        held(
                "Not recorded, so that these are not assessed",
                references.notRecorded(region).stream()
                        .map(id -> entries.link(id, ": " + String.join(", ", book.users(id))))
                        .toList(),
                blocks);
        return blocks;
    }

    private Stream<Row> rows(String region, Basis basis) {
        return book.practice().entrySet().stream()
                .filter(entry -> entry.getValue().ends() == null)
                .flatMap(entry -> entry.getValue().values().stream()
                        .filter(value ->
                                value.region().equals(region) && value.basis().is(basis))
                        .map(value -> new Row(
                                List.of(
                                        entry.getKey(),
                                        value.since(),
                                        value.value(),
                                        entry.getValue().meaning() + "; " + entries.known(entry.getKey(), value)),
                                entries.target(entry.getKey()),
                                false,
                                Entries.sources(value.sources()))));
    }

    private static void held(String heading, List<Link> links, List<Block> blocks) {
        if (!links.isEmpty()) {
            blocks.add(new Subheading(4, heading, ""));
            blocks.add(new Links("", links, true));
        }
    }

    private String named(String region) {
        return book.regions().get(region).name() + " (" + region + ")";
    }
}
