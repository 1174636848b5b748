package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * When the parts of a plan have to be ordered by the order of work, and what comes before the fitting of each. Days are
 * counted from the sheet's day on, so that it does not matter on which day one asks.
 */
public final class Ordering {

    /** What is left of sums of fractions of a day. */
    private static final double NOTHING = 1e-6;

    private final LocalDate first;
    private final LocalDate wanted;
    private final WorkOrder order;
    private final Map<String, Task> parts = new HashMap<>();

    private Ordering(Plan plan) {
        this.first = plan.sheet().asOf();
        this.wanted = plan.sheet().readyBy();
        this.order = WorkOrder.of(plan);
        order.tasks().filter(Task::part).forEach(task -> parts.put(task.name(), task));
    }

    public static Ordering of(Plan plan) {
        return new Ordering(plan);
    }

    /** The parts and tanks that are fitted directly before a part, in the order of the sheet. */
    public List<String> before(String part) {
        Task task = parts.get(part);
        return task == null
                ? List.of()
                : order.directlyBefore(task).filter(Task::part).map(Task::name).toList();
    }

    /**
     * The last working day on which a part can be ordered so that all is done by the day it is wanted, or where none is said as
     * early as it can be, jobs going on side by side: it comes, its lead time at its longest, on the day of its latest
     * start.
     *
     * @return none where its lead time or the time that work takes is not known
     */
    public Optional<LocalDate> lastDay(String part) {
        Task task = parts.get(part);
        if (task == null || !task.lead().known()) {
            return Optional.empty();
        }
        Figure latest = wanted == null ? order.latestStart(task) : order.latestArrival(task, wanted);
        if (!latest.known()) {
            return Optional.empty();
        }
        double lead = (task.lead().value() + task.lead().tolerance()) / WorkCalendar.DAY;
        return Optional.of(WorkDays.until(
                day((long) Math.floor(latest.value() + NOTHING)).minusDays((long) Math.ceil(lead - NOTHING))));
    }

    private LocalDate day(long workingDays) {
        return workingDays >= 0 ? WorkDays.after(first, workingDays) : WorkDays.ahead(first, -workingDays);
    }
}
