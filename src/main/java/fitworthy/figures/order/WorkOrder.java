package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/**
 * The order in which a plan can be carried out, by its own {@code after} lists, by what stands in what and by the book's
 * table of the usual order, and when. Times count the working days from the sheet's day on.
 */
public final class WorkOrder {

    /** What is left of sums of fractions of a day. */
    private static final double NOTHING = 1e-6;
    /** Hours of a day of the calendar, the unit of lead times inside. */
    static final double DAY = Dimension.size("days");

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
    private final LocalDate first;
    private final Graph<Task, DefaultEdge> network = new SimpleDirectedGraph<>(DefaultEdge.class);
    private final Map<Task, Figure> release = new HashMap<>();
    private final List<String> reversed = new ArrayList<>();
    private final List<List<String>> loops;
    private final Map<Task, CriticalPath.Times> times;
    private final Figure end;
    private final List<Turn> turn;

    /** @param tasks everything that is still to be done */
    WorkOrder(Plan plan, List<Task> tasks) {
        this.plan = plan;
        this.first = plan.sheet().asOf();
        tasks.forEach(network::addVertex);
        connect(tasks);
        network.vertexSet().forEach(task -> release.put(task, released(task, task.lead())));
        loops = new KosarajuStrongConnectivityInspector<>(network)
                .stronglyConnectedSets().stream()
                        .filter(set -> set.size() > 1)
                        .map(set -> tasks.stream()
                                .filter(set::contains)
                                .map(Task::name)
                                .sorted()
                                .toList())
                        .toList();
        times = loops.isEmpty() ? times(release, task -> task.work().days()) : Map.of();
        end = times.values().stream()
                .map(CriticalPath.Times::end)
                .reduce(Figure::most)
                .orElse(NO_ORDER);
        turn = turn();
    }

    private Map<Task, CriticalPath.Times> times(Map<Task, Figure> release, Function<Task, Figure> takes) {
        return CriticalPath.of(
                network, release, network.vertexSet().stream().collect(Collectors.toMap(task -> task, takes)));
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
        return network.vertexSet().stream();
    }

    /** What has to be done directly before it. */
    Stream<Task> directlyBefore(Task task) {
        return network.incomingEdgesOf(task).stream().map(network::getEdgeSource);
    }

    /** Names of parts and jobs that wait for each other, a list a loop, in alphabetical order. */
    public List<List<String>> loops() {
        return loops;
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
        return new OrderLines(first, delivered(), this::arrival, start, end)
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
        return day(readyInTurn());
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
        return network.vertexSet().stream().map(task -> task.work().days()).reduce(Figure.of(0, 0), Figure::plus);
    }

    /** The day of that; null where it is not known. */
    LocalDate dayOnce() {
        return day(firstDay(startOnce()));
    }

    /** The first day on which work that starts after so many working days can go on, in h from the sheet's day on. */
    Figure firstDay(Figure start) {
        return hours(start, WorkDays.after(first, (long) Math.floor(known(start) + NOTHING)));
    }

    /** The day on which the last job is done where jobs go on side by side, in h from the sheet's day on. */
    Figure ready() {
        return ready(times).orElse(NO_ORDER);
    }

    /** The same with every time that is not known taken as none, so that it cannot be sooner; nothing for a loop. */
    Optional<Figure> readyAtLeast() {
        if (!loops.isEmpty()) {
            return Optional.empty();
        }
        Figure ready = ready();
        return ready.known()
                ? Optional.of(ready)
                : ready(timesWith(task -> task.lead().or(Figure.ZERO)));
    }

    private Optional<Figure> ready(Map<Task, CriticalPath.Times> times) {
        return times.values().stream()
                .map(time -> lastDay(time.start(), time.end()))
                .reduce(Figure::most);
    }

    /** The day of that; null for a loop. */
    LocalDate readyDayAtLeast() {
        return readyAtLeast().map(this::day).orElse(null);
    }

    /**
     * The parts that have to come sooner for all to be done by a day, times that are not known taken as none, and in how
     * many days each would have to come at the latest, whatever the others do.
     *
     * @return none where all is late even with every part there today
     */
    Optional<Map<Task, Long>> sooner(LocalDate wanted) {
        Map<Task, Long> days = new LinkedHashMap<>();
        if (isBy(wanted, readyAtLeast())) {
            return Optional.of(days);
        }
        if (!isReady(wanted, task -> Figure.ZERO)) {
            return Optional.empty();
        }
        for (Task task : network.vertexSet()) {
            long late = (long) Math.ceil(known(task.lead()) / DAY - NOTHING);
            if (isReadyWith(wanted, task, late)) {
                continue;
            }
            long enough = 0;
            while (late - enough > 1) {
                long between = (enough + late) / 2;
                if (isReadyWith(wanted, task, between)) {
                    enough = between;
                } else {
                    late = between;
                }
            }
            days.put(task, enough);
        }
        return Optional.of(days);
    }

    private boolean isReadyWith(LocalDate wanted, Task task, long days) {
        return isReady(wanted, each -> each.equals(task) ? Figure.of(days * DAY, 0) : Figure.ZERO);
    }

    private boolean isReady(LocalDate wanted, Function<Task, Figure> lead) {
        return loops.isEmpty() && isBy(wanted, ready(timesWith(lead)));
    }

    private boolean isBy(LocalDate wanted, Optional<Figure> ready) {
        return ready.filter(day -> day.isAtMost(hours(wanted))).isPresent();
    }

    /** Where parts take so long to come, and work of which it is not known how long it takes takes none. */
    private Map<Task, CriticalPath.Times> timesWith(Function<Task, Figure> lead) {
        return times(
                network.vertexSet().stream()
                        .collect(Collectors.toMap(task -> task, task -> released(task, lead.apply(task)))),
                task -> task.work().days().or(Figure.ZERO));
    }

    /** The same where one job is done after the other. */
    Figure readyInTurn() {
        return turn.stream()
                .map(one -> lastDay(one.start(), one.end()))
                .reduce(Figure::most)
                .orElse(NO_ORDER);
    }

    /**
     * The last day of work, in h from the sheet's day on. What takes no time, as what only has to be aboard, is done on
     * the day it is there and not the day before.
     */
    private Figure lastDay(Figure start, Figure end) {
        return firstDay(start)
                .most(hours(end, WorkDays.after(first, Math.max(0, (long) Math.ceil(known(end) - NOTHING) - 1))));
    }

    /** A day of the calendar, in h from the sheet's day on. */
    Figure hours(LocalDate day) {
        return Figure.of(ChronoUnit.DAYS.between(first, day) * DAY, 0);
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
        Figure days = workingDays(wanted);
        Figure latest = latestStart(task).plus(days).minus(end());
        return task.work().days().isZero() ? latest.least(days.minus(Figure.of(1))) : latest;
    }

    /** Working days from the sheet's day on to the end of a day. */
    Figure workingDays(LocalDate day) {
        return Figure.of(WorkDays.before(first, day.plusDays(1)), 0);
    }

    Figure latestStart(Task task) {
        return times.isEmpty() ? NO_ORDER : times.get(task).latestStart();
    }

    /** What the sheet puts against the usual order, such as {@code Springs before Tray}. */
    List<String> reversed() {
        return reversed;
    }

    /**
     * Draws what comes before what, looking only at the pairs that some line of sheet or table may speak of. What the
     * sheet says outright is stronger than the usual order.
     */
    private void connect(List<Task> tasks) {
        Map<String, List<Task>> byWord = new HashMap<>();
        tasks.forEach(task -> task.words().forEach(word -> byWord.computeIfAbsent(word, none -> new ArrayList<>())
                .add(task)));
        Map<String, List<Task>> byName = tasks.stream().collect(Collectors.groupingBy(Task::name));
        List<Task> parts = tasks.stream().filter(Task::part).toList();
        Map<Task, Integer> places = new HashMap<>();
        tasks.forEach(task -> places.put(task, places.size()));
        for (Task task : tasks) {
            // In the order of the sheet, so that one sheet always has one order of work.
            Set<Task> others = new TreeSet<>(Comparator.comparing(places::get));
            task.words().stream()
                    .flatMap(word -> plan.tables().usualOrder().getOrDefault(word, Set.of()).stream())
                    .forEach(kind ->
                            others.addAll(kind.equals(Tables.ANY_PART) ? parts : byWord.getOrDefault(kind, List.of())));
            others.removeIf(other -> standsIn(other, task, byName));
            others.addAll(carriers(task, byName));
            others.remove(task);
            for (Task other : others) {
                if (other.work().after().contains(task.name())) {
                    reversed.add(task.name() + " before " + other.name());
                } else {
                    network.addEdge(other, task);
                }
            }
            task.work().after().forEach(name -> byName.getOrDefault(name, List.of())
                    .forEach(other -> network.addEdge(other, task)));
        }
    }

    /** Whether one stands in or on the other, or in what does: what carries comes first, whatever is usual. */
    private static boolean standsIn(Task task, Task carrier, Map<String, List<Task>> byName) {
        List<Task> on = carriers(task, byName);
        return on.contains(carrier) || on.stream().anyMatch(next -> standsIn(next, carrier, byName));
    }

    private static List<Task> carriers(Task task, Map<String, List<Task>> byName) {
        return task.in().stream()
                .flatMap(name -> byName.getOrDefault(name, List.of()).stream())
                .toList();
    }

    private Figure released(Task task, Figure lead) {
        LocalDate booked = task.work().booked();
        Figure there = arrival(lead).most(delivered());
        return booked == null ? there : there.most(Figure.of(WorkDays.before(first, booked), 0));
    }

    /** Nothing is fitted before the vehicle is there; one of which nothing is said of that is there. */
    private Figure delivered() {
        Figure delivery = plan.sheet().papers().delivery();
        Choice<YesNo> registered = plan.registered();
        return registered.is(YesNo.YES) || !registered.known() && !delivery.known() ? Figure.ZERO : arrival(delivery);
    }

    /** A part can be fitted on the day it arrives. */
    Figure arrival(Task task) {
        return arrival(task.lead());
    }

    private Figure arrival(Figure lead) {
        double days = Math.ceil(known(lead) / DAY - NOTHING);
        return lead.missingWith(
                Figure.ZERO,
                Figure.of(
                        WorkDays.before(first, first.plusDays((long) days)), lead.tolerance() / DAY * WorkDays.SHARE));
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
                day(firstDay(when.start())),
                day(lastDay(when.start(), when.end())),
                when.critical());
    }

    private LocalDate day(Figure hours) {
        return hours.known() ? first.plusDays(Math.round(hours.value() / DAY)) : null;
    }

    /** The day of the calendar so many days after the sheet's. */
    LocalDate day(long days) {
        return first.plusDays(days);
    }

    private Figure hours(Figure from, LocalDate day) {
        return from.missingWith(Figure.ZERO, Figure.of(hours(day).value(), from.tolerance() / WorkDays.SHARE * DAY));
    }

    private static double known(Figure figure) {
        return figure.known() ? figure.value() : 0;
    }
}
