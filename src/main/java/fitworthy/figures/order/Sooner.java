package fitworthy.figures.order;

import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Looks for the parts that have to come sooner for all to be done by a day, times that are not known taken as none. */
final class Sooner {

    private final WorkOrder order;
    private final Figure wanted;

    private Sooner(WorkOrder order, LocalDate wanted) {
        this.order = order;
        this.wanted = order.calendar().hours(wanted);
    }

    /**
     * These parts, and in how many days each would have to come at the latest, whatever the others do.
     *
     * @return none where all is late even with every part there today
     */
    static Optional<Map<Task, Long>> than(LocalDate wanted, WorkOrder order) {
        return new Sooner(order, wanted).parts();
    }

    private Optional<Map<Task, Long>> parts() {
        Map<Task, Long> days = new LinkedHashMap<>();
        if (isBy(order.readyAtLeast())) {
            return Optional.of(days);
        }
        if (!isReady(task -> Figure.ZERO)) {
            return Optional.empty();
        }
        order.tasks().forEach(task -> {
            long late = WorkCalendar.days(task.lead());
            if (!isReadyWith(task, late)) {
                days.put(task, enough(task, late));
            }
        });
        return Optional.of(days);
    }

    /** The most days in which all is ready, of fewer than these, in which it is not. */
    private long enough(Task task, long tooLate) {
        long enough = 0;
        long late = tooLate;
        while (late - enough > 1) {
            long between = (enough + late) / 2;
            if (isReadyWith(task, between)) {
                enough = between;
            } else {
                late = between;
            }
        }
        return enough;
    }

    private boolean isReadyWith(Task task, long days) {
        return isReady(each -> each.equals(task) ? Figure.of(days * WorkCalendar.DAY, 0) : Figure.ZERO);
    }

    private boolean isReady(Function<Task, Figure> lead) {
        return isBy(order.readyWith(lead));
    }

    private boolean isBy(Optional<Figure> ready) {
        return ready.filter(day -> day.isAtMost(wanted)).isPresent();
    }
}
