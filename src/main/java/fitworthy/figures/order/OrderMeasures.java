package fitworthy.figures.order;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Job;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.List;

/** The order of work and its days, asked where the sheet says anything of them. */
public final class OrderMeasures implements Topic {

    private static final MeasureKind LOOP = yesNo("order.loop", "whether they wait for each other in a circle");
    private static final MeasureKind REVERSED = yesNo("order.reversed", "whether the plan turns the usual order round");
    private static final MeasureKind BOOKED =
            rated("order.booked", "days", 0, "days until its work can begin", "days until it is booked");
    private static final MeasureKind READY = rated(
            "order.ready",
            "days",
            0,
            "days until all is done, with work side by side wherever it can be",
            "days until it is wanted");
    private static final MeasureKind READY_LEAST = rated(
            "order.ready-least",
            "days",
            0,
            "days until all is done at the very least, where a time is not known and is taken as none",
            "days until it is wanted");
    private static final MeasureKind READY_IN_TURN = rated(
            "order.ready-in-turn",
            "days",
            0,
            "days until all is done, one job after the other",
            "days until it is wanted");
    private static final MeasureKind SLACK =
            number("order.slack", "days", 1, "working days by which it may come later than said");
    private static final MeasureKind WAIT = number(
            "order.wait", "days", 1, "working days between the first job and the last on which nothing can be done");
    private static final MeasureKind ONCE =
            lookedUp("order.once", "day on which work can begin that then goes through without a break");
    private static final MeasureKind READY_DAY =
            lookedUp("order.ready-day", "day on which all is done, where a time is not known and is taken as none");
    private static final MeasureKind SOONER =
            lookedUp("order.sooner", "what has to come sooner, and when, for all to be done by the day it is wanted");
    private static final MeasureKind WEIGHED = yesNo("order.weighed", "whether it is weighed before it is certified");

    private static final String WHOLE = "order of work";
    /** How many parts that decide are named. */
    private static final int NAMED = 3;

    private static final Figure ONE_DAY = Figure.of(1);

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                LOOP,
                REVERSED,
                BOOKED,
                READY,
                READY_LEAST,
                READY_IN_TURN,
                SLACK,
                WAIT,
                ONCE,
                READY_DAY,
                SOONER,
                WEIGHED);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        List<Task> tasks = Task.of(plan);
        if (any(tasks, Job.Kind.CERTIFICATE)
                && (any(tasks, Fitment.Kind.RATING_UPGRADE) || any(tasks, Fitment.Kind.CHASSIS_EXTENSION))) {
            measures.add(Measure.of(WEIGHED, "certificate", Choice.yesNo(any(tasks, Job.Kind.WEIGHING))));
        }
        LocalDate wanted = plan.sheet().readyBy();
        if (wanted != null || tasks.stream().anyMatch(Task::timed)) {
            WorkOrder order = new WorkOrder(plan, tasks);
            order(order, measures);
            tasks.stream()
                    .filter(task -> task.work().booked() != null || asksBooking(task, order))
                    .forEach(task -> measures.add(Measure.of(
                                    BOOKED,
                                    task.name(),
                                    order.calendar().firstDay(order.possible(task)),
                                    booked(task, order))
                            .worked(order::table)));
            if (wanted != null
                    || tasks.stream().anyMatch(task -> task.work().days().known())) {
                measures.add(Measure.of(WAIT, WHOLE, days(order.waiting()))
                        .worked(
                                "wait = end - begin - work",
                                in("end", days(order.endInTurn()), "days"),
                                in("begin", days(order.begin()), "days"),
                                in("work", days(order.work()), "days"))
                        .worked(order::tableInTurn));
                measures.add(Measure.of(
                                ONCE,
                                WHOLE,
                                String.valueOf(order.dayOnce()),
                                order.startOnce().missing())
                        .worked(() -> List.of("as many working days before the last end as all the work takes"))
                        .worked(order::tableInTurn));
            }
            if (wanted != null) {
                wanted(wanted, order, tasks, measures);
            }
        }
    }

    /** Work of more than a day that has to wait for something is booked, and may be booked too early. */
    private static boolean asksBooking(Task task, WorkOrder order) {
        Figure days = task.work().days();
        return task.timed() && !days.isAtMost(ONE_DAY) && !order.possible(task).isAtMost(Figure.ZERO);
    }

    private static Figure booked(Task task, WorkOrder order) {
        if (task.work().booked() != null) {
            return order.calendar().hours(task.work().booked());
        }
        return task.work()
                .days()
                .missingWith(
                        Figure.ZERO,
                        Figure.missing(new Missing(
                                task.path() + ".work.booked",
                                "the day its beginning is booked for",
                                "whoever does it")));
    }

    private static void order(WorkOrder order, List<Measure> measures) {
        questions(
                LOOP,
                order.loops().stream().map(names -> String.join(", ", names)).toList(),
                measures);
        questions(REVERSED, order.reversed(), measures);
    }

    /** A yes for each of these, or one no. */
    private static void questions(MeasureKind kind, List<String> subjects, List<Measure> measures) {
        if (subjects.isEmpty()) {
            measures.add(Measure.of(kind, WHOLE, Choice.yesNo(false)));
        }
        subjects.forEach(subject -> measures.add(Measure.of(kind, subject, Choice.yesNo(true))));
    }

    private static void wanted(LocalDate wanted, WorkOrder order, List<Task> tasks, List<Measure> measures) {
        Figure limit = order.calendar().hours(wanted);
        Figure ready = order.ready();
        measures.add(Measure.of(READY, WHOLE, ready, limit).worked(order::table));
        measures.add(
                Measure.of(READY_IN_TURN, WHOLE, order.readyInTurn(), limit).worked(order::tableInTurn));
        if (!ready.known()) {
            measures.add(Measure.of(SLACK, WHOLE, ready));
            order.readyAtLeast()
                    .ifPresent(least -> measures.add(
                            Measure.of(READY_LEAST, WHOLE, least, limit).worked(order::table)));
        }
        if (order.loops().isEmpty()) {
            measures.add(Measure.of(READY_DAY, WHOLE, String.valueOf(order.readyDayAtLeast()), List.of())
                    .worked(order::table));
            measures.add(
                    Measure.of(SOONER, WHOLE, sooner(order, wanted), List.of()).worked(order::table));
        }
        if (ready.isAtMost(limit)) {
            tasks.stream().filter(task -> task.lead().value() > 0).forEach(task -> {
                Figure latest = order.latestArrival(task, wanted);
                Figure arrival = order.arrival(task);
                measures.add(Measure.of(SLACK, task.name(), days(latest.minus(arrival)))
                        .worked(
                                "slack = latest - arrival",
                                in("latest", days(latest), "days"),
                                in("arrival", days(arrival), "days")));
            });
        }
    }

    /** As what is to be got. */
    private static String sooner(WorkOrder order, LocalDate wanted) {
        return Sooner.than(wanted, order)
                .filter(parts -> !parts.isEmpty())
                .map(parts -> Words.few(
                        parts.entrySet().stream()
                                .map(part -> "%s by %s (in %d days, not %d)"
                                        .formatted(
                                                part.getKey().name(),
                                                order.calendar().day(part.getValue()),
                                                part.getValue(),
                                                Math.round(part.getKey().lead().value() / WorkCalendar.DAY)))
                                .toList(),
                        NAMED))
                .orElse("work, bookings or the vehicle itself sooner");
    }

    private static Figure days(Figure workingDays) {
        return workingDays.times(WorkCalendar.DAY);
    }

    private static boolean any(List<Task> tasks, Enum<?> kind) {
        return tasks.stream().anyMatch(task -> task.is(kind));
    }
}
