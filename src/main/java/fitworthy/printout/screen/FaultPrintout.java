package fitworthy.printout.screen;

import fitworthy.document.Page;
import fitworthy.source.Fault;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults as {@code file:line:column: what is wrong}, with the line they stand on and what would be right. The first
 * line is not wrapped, so that editors and terminals find the place in it.
 */
public final class FaultPrintout {

    private static final int MOST = 200;
    private static final String MARGIN = "    | ";

    private final PrintWriter out;
    private final Map<String, List<String>> files = new HashMap<>();

    private FaultPrintout(PrintWriter out) {
        this.out = out;
    }

    public static void print(PrintWriter out, List<Fault> faults) {
        FaultPrintout printout = new FaultPrintout(out);
        faults.stream().limit(MOST).forEach(printout::print);
        if (faults.size() > MOST) {
            out.println("and " + (faults.size() - MOST) + " more");
        }
        out.flush();
    }

    private void print(Fault fault) {
        out.println(fault.place() + ": " + (fault.path().isEmpty() ? "" : fault.path() + ": ") + fault.problem());
        line(fault.place());
        out.println("    right: " + fault.mend());
    }

    /** The line, cut to fit round the column, with a mark below that. */
    private void line(Place place) {
        if (place.line() == 0) {
            return;
        }
        List<String> lines = files.computeIfAbsent(place.file(), FaultPrintout::lines);
        if (place.line() > lines.size()) {
            return;
        }
        String line = lines.get(place.line() - 1).replaceAll("[\\p{Cc}\\p{Cf}]", " ");
        int width = Page.COLUMNS - MARGIN.length();
        int from = Math.max(0, Math.min(place.column() - width / 2, line.length() - width));
        out.println(MARGIN
                + line.substring(from, Math.min(line.length(), from + width)).stripTrailing());
        if (place.column() > 0) {
            out.println(MARGIN + " ".repeat(Math.min(place.column() - 1 - from, width - 1)) + "^");
        }
    }

    /** None where the place is not in a file that can be read, such as the command line. */
    private static List<String> lines(String file) {
        Path path = Path.of(file);
        String text = path.equals(InputFile.STANDARD_INPUT) ? null : InputFile.text(path, new ArrayList<>());
        return text == null ? List.of() : text.lines().toList();
    }
}
