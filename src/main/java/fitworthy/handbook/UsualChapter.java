package fitworthy.handbook;

import static fitworthy.document.Report.Column.text;

import fitworthy.book.Book;
import fitworthy.book.UsualFigure;
import fitworthy.book.UsualFigures;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Subheading;
import fitworthy.document.Report.Table;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The chapter of a handbook on what is usual, thing by thing. */
final class UsualChapter {

    private UsualChapter() {}

    static List<Block> blocks(Book book) {
        Map<String, List<Row>> byThing = new TreeMap<>();
        for (UsualFigures.Entry entry : book.usual().inOrder()) {
            List<Row> rows = byThing.computeIfAbsent(entry.field().thing(), first -> new ArrayList<>());
            for (int i = 0; i < entry.figure().values().size(); i++) {
                rows.add(row(book, entry, i));
            }
        }
        List<Block> blocks =
                new ArrayList<>(List.of(new Paragraph("What a field commonly holds, for a sheet that leaves it"
                        + " to the book: by 'usual' in that field, or by 'assume-usual: yes' for all that it leaves out. Such a"
                        + " value counts as a guess, so that what it passes is in order if the guesses hold. Ratings, limits,"
                        + " approvals and what a maker states are never usual.")));
        byThing.forEach((thing, rows) -> {
            blocks.add(new Subheading(3, Words.capital(thing.replace('-', ' ')), ""));
            blocks.add(new Table(
                    "",
                    List.of(
                            text("Field", 22),
                            text("Region", 8),
                            Column.whole("From", 12),
                            text("Is", 22),
                            text("What it is and how it is known", 36)),
                    rows));
        });
        return blocks;
    }

    private static Row row(Book book, UsualFigures.Entry entry, int index) {
        UsualFigure.Value value = entry.figure().values().get(index);
        return new Row(
                List.of(
                        entry.field().path().toString(),
                        value.region(),
                        value.from().toString(),
                        value.value() + (value.per().isEmpty() ? "" : " per " + value.per()),
                        entry.figure().meaning() + (value.when().isEmpty() ? "" : ", where " + value.when()) + "; "
                                + value.basis().value().words() + "; "
                                + book.usual().place(entry.id(), index).inBook()
                                + (value.note().isEmpty() ? "" : ". " + value.note())),
                "",
                false,
                Entries.sources(value.sources()));
    }
}
