package fitworthy.book;

import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Dimension;
import fitworthy.schema.Binder;
import fitworthy.schema.Bound;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Job;
import fitworthy.sheet.ShopWords;
import fitworthy.source.CsvReader;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads the published tables of a rule book and checks that no row is missing. */
public final class TableReader {

    private static final int FIRST_INDEX = 60;
    private static final int LAST_INDEX = 150;
    /** Sections in mm2 of the wire sizes 18 to 4/0. */
    private static final List<Double> SECTIONS =
            List.of(0.8, 1.3, 2.0, 3.3, 5.0, 8.0, 13.0, 21.0, 26.6, 33.6, 42.0, 53.0, 67.4, 85.0, 107.0);

    /** What insulation is made for, degC. */
    private static final List<Double> INSULATIONS = List.of(60.0, 75.0, 80.0, 90.0, 105.0);

    private static final String ONE_MEANING =
            "one row a word, with what is meant most often; with + between them what is always meant together";

    private static final String SYMBOLS = "JKLMNPQRSTUHVWY";

    private final String file;
    private final List<Fault> faults;

    private TableReader(String file, List<Fault> faults) {
        this.file = file;
        this.faults = faults;
    }

    /**
     * Reads all tables.
     *
     * @param folder where their files are
     * @param text the text of a file, or null with a fault where it cannot be read
     * @param faults gets every fault found
     */
    public static Tables read(Path folder, Function<Path, String> text, List<Fault> faults) {
        return new Tables(
                table(folder.resolve("load-index.csv"), text, TableReader::loadIndex, faults),
                table(folder.resolve("speed-symbol.csv"), text, TableReader::speedSymbol, faults),
                table(folder.resolve("cable.csv"), text, TableReader::cable, faults),
                table(folder.resolve("order.csv"), text, TableReader::usualOrder, faults),
                table(folder.resolve("synonyms.csv"), text, TableReader::shopWords, faults));
    }

    /** How a table is read. */
    private interface Reader<T> {
        T read(String text, String file, List<Fault> faults);
    }

    private static <T> T table(Path file, Function<Path, String> text, Reader<T> reader, List<Fault> faults) {
        String table = text.apply(file);
        return table == null ? null : reader.read(table, file.toString(), faults);
    }

    /** Load of one tyre in kg by load index; every index from 60 to 150, rising. */
    public static Map<Integer, Double> loadIndex(String text, String file, List<Fault> faults) {
        return new TableReader(file, faults).loadIndex(text);
    }

    /** Highest speed in m/s by speed symbol. */
    public static Map<String, Double> speedSymbol(String text, String file, List<Fault> faults) {
        return new TableReader(file, faults).speedSymbol(text);
    }

    /**
     * What a cable carries in A by what its insulation is made for in degC and its section in m2; every section of the
     * wire sizes 18 to 4/0, rising with both.
     */
    public static NavigableMap<Double, NavigableMap<Double, Double>> cable(
            String text, String file, List<Fault> faults) {
        return new TableReader(file, faults).cable(text);
    }

    /** Kinds of work, each with those usually done before it; written downwards, so that it cannot hold a circle. */
    public static Map<String, Set<String>> usualOrder(String text, String file, List<Fault> faults) {
        return new TableReader(file, faults).usualOrder(text);
    }

    /** What a shop calls kinds of part and other things of a sheet; each word once, and none that is a kind's own. */
    public static ShopWords shopWords(String text, String file, List<Fault> faults) {
        return new TableReader(file, faults).shopWords(text);
    }

    private Map<Integer, Double> loadIndex(String text) {
        Map<Integer, Bound<TableRow.LoadIndex>> rows = new HashMap<>();
        Map<Integer, Double> loads = new HashMap<>();
        for (Bound<TableRow.LoadIndex> row : rows(TableRow.LoadIndex.class, text)) {
            double index = row.record().loadIndex().value();
            if (index != Math.rint(index)) {
                tell(row, "load-index", "is not a whole number", "load-index: 100");
            } else if (rows.put((int) index, row) != null) {
                tell(row, "load-index", "a second row for load index " + (int) index, "one row an index");
            }
            loads.put((int) index, row.record().load().value());
        }
        for (int index = FIRST_INDEX; index <= LAST_INDEX; index++) {
            if (!rows.containsKey(index)) {
                missing(
                        rows.get(index - 1),
                        "the row for load index " + index + " is missing",
                        index + ",<load> kg,<basis>,<source>");
            } else if (rows.containsKey(index - 1) && loads.get(index) <= loads.get(index - 1)) {
                tell(
                        rows.get(index),
                        "load",
                        "the load for index " + index + " is not above that for " + (index - 1),
                        "loads rise with the index");
            }
        }
        return loads;
    }

    private Map<String, Double> speedSymbol(String text) {
        Map<String, Bound<TableRow.SpeedSymbol>> rows = new HashMap<>();
        for (Bound<TableRow.SpeedSymbol> row : rows(TableRow.SpeedSymbol.class, text)) {
            String symbol = row.record().symbol();
            if (rows.putIfAbsent(symbol, row) != null) {
                tell(row, "symbol", "a second row for speed symbol " + symbol, "one row a symbol");
            }
        }
        Bound<TableRow.SpeedSymbol> before = null;
        for (String symbol : SYMBOLS.split("")) {
            if (!rows.containsKey(symbol)) {
                missing(
                        before,
                        "the row for speed symbol " + symbol + " is missing",
                        symbol + ",<speed> km/h,<basis>,<source>");
            }
            before = rows.getOrDefault(symbol, before);
        }
        Map<String, Double> speeds = new HashMap<>();
        rows.forEach((symbol, row) -> speeds.put(symbol, row.record().speed().value()));
        return speeds;
    }

    private NavigableMap<Double, NavigableMap<Double, Double>> cable(String text) {
        NavigableMap<Double, NavigableMap<Double, Bound<TableRow.Cable>>> all = new TreeMap<>();
        for (Bound<TableRow.Cable> row : rows(TableRow.Cable.class, text)) {
            TableRow.Cable cable = row.record();
            NavigableMap<Double, Bound<TableRow.Cable>> bySection =
                    all.computeIfAbsent(cable.insulation().value(), insulation -> new TreeMap<>());
            Bound<TableRow.Cable> first = bySection.putIfAbsent(cable.section().value(), row);
            if (first != null) {
                tell(
                        row,
                        "section",
                        "a second row for this section and insulation; the first is on line " + line(first),
                        "one row a section and insulation");
            }
        }
        all.forEach((insulation, bySection) -> {
            if (!INSULATIONS.contains(insulation)) {
                bySection
                        .values()
                        .forEach(row -> tell(
                                row,
                                "insulation",
                                "no cable here is insulated for " + plain(insulation) + " degC",
                                "one of "
                                        + INSULATIONS.stream()
                                                .map(each -> plain(each) + " degC")
                                                .collect(Collectors.joining(", "))));
            }
        });
        for (double insulation : INSULATIONS) {
            for (double section : SECTIONS) {
                cable(all, insulation, section);
            }
        }
        NavigableMap<Double, NavigableMap<Double, Double>> amperes = new TreeMap<>();
        all.forEach((insulation, bySection) -> {
            NavigableMap<Double, Double> own = new TreeMap<>();
            bySection.forEach((section, row) -> own.put(section, current(row)));
            amperes.put(insulation, own);
        });
        return amperes;
    }

    private void cable(
            NavigableMap<Double, NavigableMap<Double, Bound<TableRow.Cable>>> all, double insulation, double section) {
        NavigableMap<Double, Bound<TableRow.Cable>> bySection =
                all.getOrDefault(insulation, Collections.emptyNavigableMap());
        double squareMetres = section * Dimension.size("mm2");
        Bound<TableRow.Cable> row = bySection.get(squareMetres);
        Map.Entry<Double, Bound<TableRow.Cable>> smaller = bySection.lowerEntry(squareMetres);
        Map.Entry<Double, NavigableMap<Double, Bound<TableRow.Cable>>> poorer = all.lowerEntry(insulation);
        String name = plain(section) + " mm2 and " + plain(insulation) + " degC";
        if (row == null) {
            missing(
                    smaller == null ? null : smaller.getValue(),
                    "the row for " + name + " is missing",
                    plain(section) + " mm2," + plain(insulation) + " degC,<current> A,<basis>,<source>");
        } else if (smaller != null && current(row) <= current(smaller.getValue())) {
            tell(
                    row,
                    "current",
                    "the current for " + name + " is not above that for less section on line "
                            + line(smaller.getValue()),
                    "currents rise with the section");
        } else if (poorer != null
                && poorer.getValue().containsKey(squareMetres)
                && current(row) < current(poorer.getValue().get(squareMetres))) {
            tell(
                    row,
                    "current",
                    "the current for " + name + " is below that of insulation for less heat on line "
                            + line(poorer.getValue().get(squareMetres)),
                    "currents do not fall with the insulation");
        }
    }

    /** A number as a row has it, without a nought behind the point. */
    private static String plain(double number) {
        return number == Math.rint(number) ? String.valueOf((int) number) : String.valueOf(number);
    }

    private static double current(Bound<TableRow.Cable> row) {
        return row.record().current().value();
    }

    private static int line(Bound<?> row) {
        return row.places().beginning().line();
    }

    /** @param before the row below which the missing one belongs, or null where it is the first */
    private void missing(Bound<?> before, String problem, String mend) {
        faults.add(new Fault(new Place(file, before == null ? 2 : line(before) + 1, 1), "", problem, mend));
    }

    private Map<String, Set<String>> usualOrder(String text) {
        Set<String> kinds = new TreeSet<>(ChoiceWords.of(Fitment.Kind.class));
        kinds.addAll(ChoiceWords.of(Job.Kind.class));
        kinds.add(Tables.TANK);
        kinds.add(Tables.IN_CANOPY);
        kinds.remove("other");
        Set<String> earlier = new TreeSet<>(kinds);
        earlier.add(Tables.ANY_PART);
        Map<String, Set<String>> order = new HashMap<>();
        Set<String> namedBefore = new HashSet<>();
        for (Bound<TableRow.Order> row : rows(TableRow.Order.class, text)) {
            String job = row.record().job();
            String after = row.record().after();
            known(row, "job", job, kinds, "");
            known(row, "after", after, earlier, "");
            if (namedBefore.contains(job)) {
                tell(
                        row,
                        "job",
                        job + " stands before another job above; put this row above that",
                        "written downwards");
            }
            Set<String> allBefore = order.computeIfAbsent(job, kind -> new HashSet<>());
            if (job.equals(after) || !allBefore.add(after)) {
                tell(row, "after", "this row says nothing new", "leave the row out");
            }
            namedBefore.add(after);
        }
        return order;
    }

    private ShopWords shopWords(String text) {
        Map<String, ShopWords.Meaning> meanings = new TreeMap<>();
        Map<String, Bound<TableRow.Synonym>> rows = new HashMap<>();
        for (Bound<TableRow.Synonym> row : rows(TableRow.Synonym.class, text)) {
            String word = row.record().word();
            List<String> terms = List.of(row.record().is().strip().split("\\s*\\+\\s*"));
            int before = faults.size();
            terms.forEach(
                    term -> known(row, "is", term, ShopWords.terms(), "bar, or battery + charger for both at once; "));
            if (Set.copyOf(terms).size() < terms.size()) {
                tell(row, "is", "'" + row.record().is() + "' names one thing twice", "each thing once");
            }
            if (!ShopWords.isPlain(word)) {
                tell(row, "word", "'" + word + "' is not in plain small words", "word: bull bar");
            } else if (ShopWords.isKind(word)) {
                tell(row, "word", "'" + word + "' is a kind of part by itself", "leave the row out");
            } else if (ShopWords.term(word)
                    .filter(own -> !terms.equals(List.of(own)))
                    .isPresent()) {
                String own = ShopWords.term(word).get();
                tell(
                        row,
                        "is",
                        "'" + word + "' is already what a sheet calls " + own,
                        "is: " + own + ", or no such row");
            }
            Bound<TableRow.Synonym> first = rows.putIfAbsent(ShopWords.plain(word), row);
            if (first != null) {
                tell(row, "word", "a second row for '" + word + "'; " + earlier(first), ONE_MEANING);
            }
            if (faults.size() == before) {
                meanings.put(ShopWords.plain(word), ShopWords.Meaning.of(terms));
            }
        }
        meanings.keySet().stream()
                .filter(word ->
                        meanings.containsKey(word + "s") && !meanings.get(word).equals(meanings.get(word + "s")))
                .forEach(word -> tell(
                        rows.get(word + "s"),
                        "is",
                        "'" + word + "s' means something else than '" + word + "'; " + earlier(rows.get(word)),
                        ONE_MEANING));
        return new ShopWords(meanings);
    }

    private static String earlier(Bound<TableRow.Synonym> row) {
        return "line " + line(row) + " says that it is " + row.record().is();
    }

    /** @param example goes before the list of all */
    private void known(Bound<?> row, String field, String word, Collection<String> words, String example) {
        if (!words.contains(word)) {
            tell(
                    row,
                    field,
                    "'" + word + "' is no kind of part or job" + Words.suggestion(word, words),
                    example + "one of " + String.join(", ", words));
        }
    }

    /** The rows that can be used. */
    private <R extends Record & TableRow> List<Bound<R>> rows(Class<R> type, String text) {
        List<Bound<R>> rows = new ArrayList<>();
        for (Node.Mapping cells :
                CsvReader.rows(file, text, RecordSchema.of(type).names(), faults)) {
            int before = faults.size();
            Bound<R> row = Binder.bind(type, cells, faults);
            if (faults.size() == before) {
                evidence(row);
                rows.add(row);
            }
        }
        return rows;
    }

    private <R extends Record & TableRow> void evidence(Bound<R> row) {
        Basis basis = row.record().basis().value();
        if (basis == Basis.HOUSE || basis == Basis.ELSEWHERE) {
            tell(row, "basis", "rests on the word of a shop", "another basis");
        } else if ((basis == Basis.PUBLISHED || basis == Basis.PUBLISHED_SECONDHAND)
                && row.record().source().isBlank()) {
            tell(row, "source", "is called " + Words.hyphenated(basis.name()) + " but names no source", "its source");
        }
    }

    private void tell(Bound<?> row, String field, String problem, String mend) {
        faults.add(new Fault(row.places().place(NodePath.of(field)), field, problem, mend));
    }
}
