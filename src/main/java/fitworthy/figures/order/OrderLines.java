package fitworthy.figures.order;

import static fitworthy.figures.measure.Working.row;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Jobs with their days, as lines of a table; days are working days from the first one on.
 *
 * @param first the sheet's day
 * @param delivered when the vehicle comes
 * @param arrival when its part comes
 * @param start when it begins
 * @param end when it is done
 */
record OrderLines(
        LocalDate first,
        Figure delivered,
        Function<Task, Figure> arrival,
        Function<Task, Figure> start,
        Function<Task, Figure> end) {

    /** A line for each of these under the heads of the columns. */
    List<String> of(List<Task> tasks) {
        List<String> lines = new ArrayList<>();
        lines.add("a job begins when its part has come and the jobs before it are done, in working days from " + first);
        if (!delivered.isZero()) {
            lines.add("and none before the vehicle has come, after " + tenths(delivered));
        }
        lines.add(row("", "part", "begins", "takes", "ends"));
        tasks.forEach(task -> lines.add(row(
                Working.marked(task.name(), Working.in("takes", task.work().days(), "days")),
                tenths(arrival.apply(task)),
                tenths(start.apply(task)),
                tenths(task.work().days()),
                tenths(end.apply(task)))));
        return lines;
    }

    private static String tenths(Figure days) {
        return days.known() ? String.format(Locale.ROOT, "%.1f", days.value()) : "?";
    }
}
