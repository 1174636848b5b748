package fitworthy.book;

import fitworthy.sheet.Dimension;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

/** Reads the published tables of a rule book and checks that no row is missing. */
final class TableReader {

    private static final int FIRST_INDEX = 60;
    private static final int LAST_INDEX = 150;
    private static final String SYMBOLS = "JKLMNPQRSTUHVWY";

    private TableReader() {}

    /** Load of one tyre in kg by load index; every index from 60 to 150, rising. */
    static Map<Integer, Double> loadIndex(String text, String file, List<Fault> faults) {
        Map<Integer, Double> loads = new HashMap<>();
        Map<Integer, Place> places = new HashMap<>();
        rows(text, file, "load_index,load,basis,source", faults, (cells, place) -> {
            loads.put(Integer.parseInt(cells[0]), mass(cells[1]));
            places.put(Integer.parseInt(cells[0]), place);
        });
        for (int index = FIRST_INDEX; text != null && index <= LAST_INDEX; index++) {
            if (!loads.containsKey(index)) {
                Place before = places.getOrDefault(index - 1, new Place(file, 1, 1));
                faults.add(new Fault(before.onLine(before.line() + 1), "", "the row for load index " + index + " is missing",
                        index + ",<load> kg,<basis>,<source>"));
            } else if (loads.containsKey(index - 1) && loads.get(index) <= loads.get(index - 1)) {
                faults.add(new Fault(places.get(index), "", "the load for index " + index + " is not above that for "
                        + (index - 1), "loads rise with the index"));
            }
        }
        return loads;
    }

    /** Highest speed in m/s by speed symbol. */
    static Map<String, Double> speedSymbol(String text, String file, List<Fault> faults) {
        Map<String, Double> speeds = new HashMap<>();
        rows(text, file, "symbol,speed,basis,source", faults, (cells, place) ->
                speeds.put(cells[0], Double.parseDouble(cells[1].replace(" km/h", "")) * Dimension.size("km/h")));
        for (char symbol : SYMBOLS.toCharArray()) {
            if (text != null && !speeds.containsKey(String.valueOf(symbol))) {
                faults.add(new Fault(Place.of(file), "", "the row for speed symbol " + symbol + " is missing",
                        symbol + ",<speed> km/h,<basis>,<source>"));
            }
        }
        return speeds;
    }

    private static double mass(String cell) {
        return Double.parseDouble(cell.replace(" kg", ""));
    }

    private static void rows(String text, String file, String header, List<Fault> faults,
            BiConsumer<String[], Place> row) {
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
