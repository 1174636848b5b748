package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** When the work of a plan can be done, in the order that it has to go. Times count the working days from the sheet's day on. */
public final class WorkOrder {

    private static final Figure NO_ORDER = Figure.missing(
            new Missing("fitments", "parts to be fitted, in an order of work without a loop", "the plan"));

    /**
     * One step of the work.
     *
     * @param name the part, tank or job
     * @param start the earliest it can begin, in working days from the sheet's day on
     * @param end the earliest it can be done
     * @param firstDay the day of its start; null where that is not known
     * @param lastDay the last day it takes; null where that is not known
     * @param critical whether the whole is late by as much as this step is
     */
    public record Step(
            String name, Figure start, Figure end, LocalDate firstDay, LocalDate lastDay, boolean critical) {}

    private final Plan plan;
    private final WorkCalendar calendar;
    private final Precedence precedence;
    private final Map<Task, CriticalPath.Times> times;
    private final Figure end;
    private final List<Turn> turn;

    /** @param tasks everything that is still to be done */
    WorkOrder(Plan plan, List<Task> tasks) {
        this.plan = plan;
        this.calendar = new WorkCalendar(plan.sheet().asOf());
        this.precedence = new Precedence(plan.tables().usualOrder(), tasks);
        times = loops().isEmpty() ? times(Task::lead, task -> task.work().days()) : Map.of();
        end = times.values().stream()
                .map(CriticalPath.Times::end)
                .reduce(Figure::most)
                .orElse(NO_ORDER);
        turn = turn();
    }

    private Map<Task, CriticalPath.Times> times(Function<Task, Figure> lead, Function<Task, Figure> takes) {
        return CriticalPath.of(
                precedence.network(),
                tasks().collect(Collectors.toMap(task -> task, task -> released(task, lead.apply(task)))),
                tasks().collect(Collectors.toMap(task -> task, takes)));
    }

    public static WorkOrder of(Plan plan) {
        return new WorkOrder(plan, Task.of(plan));
    }

    /** Every step in an order in which one pair of hands gets through soonest; none where there is a loop. */
    public List<Step> steps() {
        return turn.stream()
                .map(Turn::task)
                .map(task -> step(task, times.get(task)))
                .toList();
    }

    /** Everything that is still to be done. */
    Stream<Task> tasks() {
        return precedence.network().vertexSet().stream();
    }

    /** What has to be done directly before it. */
    Stream<Task> directlyBefore(Task task) {
        return precedence.directlyBefore(task);
    }

    /** Names of parts and jobs that wait for each other, a list a loop, in alphabetical order. */
    public List<List<String>> loops() {
        return precedence.loops();
    }

    /** What the sheet puts against the usual order, such as {@code Springs before Tray}. */
    List<String> reversed() {
        return precedence.reversed();
    }

    /** The calendar that its days are counted in. */
    WorkCalendar calendar() {
        return calendar;
    }

    /** The jobs one by one with their earliest days, as lines of a table. */
    List<String> table() {
        return lines(task -> times.get(task).start(), task -> times.get(task).end());
    }

    /** The same where one job is done after the other. */
    List<String> tableInTurn() {
        Map<Task, Turn> byTask = turn.stream().collect(Collectors.toMap(Turn::task, one -> one));
        return lines(task -> byTask.get(task).start(), task -> byTask.get(task).end());
    }

    private List<String> lines(Function<Task, Figure> start, Function<Task, Figure> end) {
        return new OrderLines(calendar.first(), delivered(), this::arrival, start, end)
                .of(turn.stream().map(Turn::task).toList());
    }

    /** When everything is done at the earliest, in working days from the sheet's day on. */
    public Figure end() {
        return end;
    }

    /** The same where one job is done after the other. */
    public Figure endInTurn() {
        return turn.isEmpty() ? NO_ORDER : turn.get(turn.size() - 1).end();
    }

    /** The last day of that; null where it is not known. */
    public LocalDate lastDayInTurn() {
        return calendar.day(readyInTurn());
    }

    /** Working days between the first job and the last, one done after the other, on which nothing can be done. */
    public Figure waiting() {
        return times.isEmpty() ? NO_ORDER : endInTurn().minus(begin()).minus(work());
    }

    /** When the first job begins that brings the vehicle in, which what only has to be aboard does not. */
    Figure begin() {
        return turn.stream()
                .filter(one -> !one.task().work().days().isZero())
                .findFirst()
                .map(Turn::start)
                .orElseGet(this::endInTurn);
    }

    /**
     * The latest start at which all jobs, one after the other without a break, end no later than {@link #endInTurn}.
     */
    public Figure startOnce() {
        return endInTurn().minus(work());
    }

    /** All the work in working days. */
    public Figure work() {
        return tasks().map(task -> task.work().days()).reduce(Figure.of(0, 0), Figure::plus);
    }

    /** The day of that; null where it is not known. */
    LocalDate dayOnce() {
        return calendar.day(calendar.firstDay(startOnce()));
    }

    /** The day on which the last job is done where jobs go on side by side, in h from the sheet's day on. */
    Figure ready() {
        return ready(times).orElse(NO_ORDER);
    }

    /** The same with every time that is not known taken as none, so that it cannot be sooner; nothing for a loop. */
    Optional<Figure> readyAtLeast() {
        if (!loops().isEmpty()) {
            return Optional.empty();
        }
        Figure ready = ready();
        return ready.known()
                ? Optional.of(ready)
                : readyWith(task -> task.lead().or(Figure.ZERO));
    }

    private Optional<Figure> ready(Map<Task, CriticalPath.Times> times) {
        return times.values().stream()
                .map(time -> calendar.lastDay(time.start(), time.end()))
                .reduce(Figure::most);
    }

    /** The day of that; null for a loop. */
    LocalDate readyDayAtLeast() {
        return readyAtLeast().map(calendar::day).orElse(null);
    }

    /**
     * When all is done where parts take so long to come, and work of which it is not known how long it takes takes none, in h
     * from the sheet's day on; nothing for a loop.
     */
    Optional<Figure> readyWith(Function<Task, Figure> lead) {
        return loops().isEmpty() ? ready(times(lead, task -> task.work().days().or(Figure.ZERO))) : Optional.empty();
    }

    /** The same where one job is done after the other. */
    Figure readyInTurn() {
        return turn.stream()
                .map(one -> calendar.lastDay(one.start(), one.end()))
                .reduce(Figure::most)
                .orElse(NO_ORDER);
    }

    /** The earliest start that parts and earlier jobs allow, whatever it is booked for. */
    Figure possible(Task task) {
        if (times.isEmpty()) {
            return NO_ORDER;
        }
        return directlyBefore(task)
                .map(before -> times.get(before).end())
                .reduce(arrival(task).most(delivered()), Figure::most);
    }

    /**
     * The latest that a part can come so that the whole still ends on a day, in working days from the sheet's day on; below
     * zero where it should have come before. What takes no time is there on that day and not the morning after.
     */
    Figure latestArrival(Task task, LocalDate wanted) {
        Figure days = calendar.to(wanted);
        Figure latest = latestStart(task).plus(days).minus(end());
        return task.work().days().isZero() ? latest.least(days.minus(Figure.of(1))) : latest;
    }

    Figure latestStart(Task task) {
        return times.isEmpty() ? NO_ORDER : times.get(task).latestStart();
    }

    private Figure released(Task task, Figure lead) {
        LocalDate booked = task.work().booked();
        Figure there = calendar.arrival(lead).most(delivered());
        return booked == null ? there : there.most(calendar.before(booked));
    }

    /** Nothing is fitted before the vehicle is there; one of which nothing is said of that is there. */
    private Figure delivered() {
        Figure delivery = plan.sheet().papers().delivery();
        Choice<YesNo> registered = plan.registered();
        return registered.is(YesNo.YES) || !registered.known() && !delivery.known()
                ? Figure.ZERO
                : calendar.arrival(delivery);
    }

    /** A part can be fitted on the day it arrives. */
    Figure arrival(Task task) {
        return calendar.arrival(task.lead());
    }

    private record Turn(Task task, Figure start, Figure end) {}

    /**
     * One job after the other, by earliest start. For one pair of hands this ends soonest (from memory: Lawler 1973,
     * one machine with release times and precedence).
     */
    private List<Turn> turn() {
        List<Turn> turns = new ArrayList<>();
        Figure free = Figure.of(0, 0);
        // The sort keeps the order of work among equals.
        for (Task task : times.keySet().stream()
                .sorted(Comparator.comparing(task -> times.get(task).start().value()))
                .toList()) {
            Figure start = free.most(times.get(task).start());
            free = start.plus(task.work().days());
            turns.add(new Turn(task, start, free));
        }
        return turns;
    }

    private Step step(Task task, CriticalPath.Times when) {
        return new Step(
                task.name(),
                when.start(),
                when.end(),
                calendar.day(calendar.firstDay(when.start())),
                calendar.day(calendar.lastDay(when.start(), when.end())),
                when.critical());
    }
}
