package fitworthy.source;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads CSV text into located {@link Node}s: each row a group of fields. A comma always
 * ends a cell; there are no quotes.
 */
public final class CsvReader {

    private CsvReader() {}

    /**
     * Reads the rows of a text.
     *
     * @param fields the fields of a row, which the first line has to name; a hyphen is an underscore there
     * @param faults gets a fault for a first line that says otherwise, and for each row with more or fewer cells
     * @return the rows that can be read, in order
     */
    public static List<Node.Mapping> rows(String file, String text, Collection<String> fields, List<Fault> faults) {
        String header = String.join(",", fields).replace('-', '_');
        List<String> lines = text.lines().toList();
        String first = lines.isEmpty() ? "" : lines.get(0);
        if (!first.equals(header)) {
            faults.add(new Fault(
                    new Place(file, 1, 1),
                    "",
                    "the first line is not the header" + (first.isBlank() ? "" : slip(first, header)),
                    header));
            return List.of();
        }
        List<Node.Mapping> rows = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            Place place = new Place(file, i + 1, 1);
            String[] cells = lines.get(i).split(",", -1);
            if (cells.length == fields.size()) {
                rows.add(row(place, fields, cells));
            } else if (lines.get(i).isBlank()) {
                faults.add(new Fault(place, "", "this line is empty", "no line between the rows, or behind them"));
            } else {
                faults.add(
                        new Fault(
                                place,
                                "",
                                "this row has " + cells.length + " cells, not " + fields.size(),
                                cells.length < fields.size()
                                        ? header
                                                + "; a comma stands behind each cell but the last, even where the cell is empty"
                                        : header
                                                + "; every comma begins a new cell, so put 'and' or ; in place of one in words"));
            }
        }
        return rows;
    }

    /** What is wrong with a first line, to be added to that it is not the header; empty where that cannot be told. */
    private static String slip(String first, String header) {
        if (first.replaceAll("[;\t]", ",").equals(header)) {
            return ": a " + (first.indexOf('\t') < 0 ? "semicolon" : "tab") + " stands between the cells, not a comma";
        }
        List<String> given = List.of(first.split(","));
        List<String> lacking = List.of(header.split(",")).stream()
                .filter(name -> !given.contains(name))
                .toList();
        return lacking.isEmpty() ? "" : ": it does not name " + String.join(", ", lacking);
    }

    private static Node.Mapping row(Place place, Collection<String> fields, String[] cells) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        int column = 1;
        for (String field : fields) {
            String cell = cells[entries.size()];
            Place begin = new Place(place.file(), place.line(), column);
            entries.put(
                    field,
                    new Node.Entry(
                            begin,
                            cell.isEmpty() ? new Node.Blank(begin, false) : new Node.Scalar(begin, cell, false)));
            column += cell.length() + 1;
        }
        return new Node.Mapping(place, entries);
    }
}
