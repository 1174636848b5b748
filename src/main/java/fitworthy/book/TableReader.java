package fitworthy.book;

import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Dimension;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Job;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/** Reads the published tables of a rule book and checks that no row is missing. */
public final class TableReader {

    private static final int FIRST_INDEX = 60;
    private static final int LAST_INDEX = 150;
    /** Sections in mm2 of the wire sizes 18 to 4/0. */
    private static final List<Double> SECTIONS =
            List.of(0.8, 1.0, 2.0, 3.0, 5.0, 8.0, 13.0, 21.0, 34.0, 42.0, 53.0, 68.0, 107.0);

    private static final String SYMBOLS = "JKLMNPQRSTUHVWY";

    private TableReader() {}

    /** Load of one tyre in kg by load index; every index from 60 to 150, rising. */
    public static Map<Integer, Double> loadIndex(String text, String file, List<Fault> faults) {
        Map<Integer, Double> loads = new HashMap<>();
        Map<Integer, Place> places = new HashMap<>();
        rows(text, file, "load_index,load,basis,source", faults, (cells, place) -> {
            loads.put(Integer.parseInt(cells[0]), mass(cells[1]));
            places.put(Integer.parseInt(cells[0]), place);
        });
        for (int index = FIRST_INDEX; text != null && index <= LAST_INDEX; index++) {
            if (!loads.containsKey(index)) {
                Place before = places.getOrDefault(index - 1, new Place(file, 1, 1));
                faults.add(new Fault(
                        before.onLine(before.line() + 1),
                        "",
                        "the row for load index " + index + " is missing",
                        index + ",<load> kg,<basis>,<source>"));
            } else if (loads.containsKey(index - 1) && loads.get(index) <= loads.get(index - 1)) {
                faults.add(new Fault(
                        places.get(index),
                        "",
                        "the load for index " + index + " is not above that for " + (index - 1),
                        "loads rise with the index"));
            }
        }
        return loads;
    }

    /** Highest speed in m/s by speed symbol. */
    public static Map<String, Double> speedSymbol(String text, String file, List<Fault> faults) {
        Map<String, Double> speeds = new HashMap<>();
        rows(
                text,
                file,
                "symbol,speed,basis,source",
                faults,
                (cells, place) -> speeds.put(
                        cells[0], Double.parseDouble(cells[1].replace(" km/h", "")) * Dimension.size("km/h")));
        for (char symbol : SYMBOLS.toCharArray()) {
            if (text != null && !speeds.containsKey(String.valueOf(symbol))) {
                faults.add(new Fault(
                        Place.of(file),
                        "",
                        "the row for speed symbol " + symbol + " is missing",
                        symbol + ",<speed> km/h,<basis>,<source>"));
            }
        }
        return speeds;
    }

    /** What a cable carries in A by its section in m2; every section of the wire sizes 18 to 4/0, rising. */
    public static NavigableMap<Double, Double> cable(String text, String file, List<Fault> faults) {
        NavigableMap<Double, Double> amperes = new TreeMap<>();
        rows(
                text,
                file,
                "section,current,basis,source",
                faults,
                (cells, place) -> amperes.put(
                        Double.parseDouble(cells[0].replace(" mm2", "")) * Dimension.size("mm2"),
                        Double.parseDouble(cells[1].replace(" A", ""))));
        for (double section : SECTIONS) {
            Double current = amperes.get(section * Dimension.size("mm2"));
            Map.Entry<Double, Double> smaller = amperes.lowerEntry(section * Dimension.size("mm2"));
            if (text != null && current == null) {
                faults.add(new Fault(
                        Place.of(file),
                        "",
                        "the row for " + section + " mm2 is missing",
                        section + " mm2,<current> A,<basis>,<source>"));
            } else if (text != null && smaller != null && current <= smaller.getValue()) {
                faults.add(new Fault(
                        Place.of(file),
                        "",
                        "the current for " + section + " mm2 is not above that of the row before it",
                        "currents rise with the section"));
            }
        }
        return amperes;
    }

    /** Kinds of work, each with those usually done before it; written downwards, so that it cannot hold a circle. */
    public static Map<String, Set<String>> usualOrder(String text, String file, List<Fault> faults) {
        Set<String> kinds = new TreeSet<>(RecordSchema.words(Fitment.Kind.class));
        kinds.addAll(RecordSchema.words(Job.Kind.class));
        kinds.add(Tables.TANK);
        kinds.remove("other");
        Set<String> grades = new TreeSet<>(RecordSchema.words(Basis.class));
        grades.remove("house");
        Map<String, Set<String>> order = new HashMap<>();
        Set<String> namedBefore = new HashSet<>();
        rows(text, file, "job,after,basis,source", faults, (cells, place) -> {
            known(cells[0], kinds);
            if (!cells[1].equals(Tables.ANY_PART)) {
                known(cells[1], kinds);
            }
            if (namedBefore.contains(cells[0])) {
                throw new IllegalArgumentException(
                        cells[0] + " stands before another job above; put this row above that");
            }
            if (cells[0].equals(cells[1])
                    || !order.computeIfAbsent(cells[0], job -> new HashSet<>()).add(cells[1])) {
                throw new IllegalArgumentException("it says nothing new");
            }
            known(cells[2], grades);
            if (cells[2].startsWith("published") && cells[3].isBlank()) {
                throw new IllegalArgumentException("it names no source");
            }
            namedBefore.add(cells[1]);
        });
        return order;
    }

    private static void known(String word, Collection<String> words) {
        if (!words.contains(word)) {
            throw new IllegalArgumentException("'" + word + "' has no place there" + Words.suggestion(word, words));
        }
    }

    private static double mass(String cell) {
        return Double.parseDouble(cell.replace(" kg", ""));
    }

    private static void rows(
            String text, String file, String header, List<Fault> faults, BiConsumer<String[], Place> row) {
        if (text == null) {
            return;
        }
        List<String> lines = text.lines().toList();
        if (lines.isEmpty() || !lines.get(0).equals(header)) {
            faults.add(new Fault(new Place(file, 1, 1), "", "the first line is not the header", header));
            return;
        }
        for (int i = 1; i < lines.size(); i++) {
            Place place = new Place(file, i + 1, 1);
            String[] cells = lines.get(i).split(",", -1);
            try {
                if (cells.length != 4) {
                    throw new IllegalArgumentException("it has " + cells.length + " cells");
                }
                row.accept(cells, place);
            } catch (IllegalArgumentException e) {
                faults.add(new Fault(place, "", "this row is not readable: " + e.getMessage(), header));
            }
        }
    }
}
