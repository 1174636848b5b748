package fitworthy.printout;

import static fitworthy.document.Report.Column.figure;
import static fitworthy.document.Report.Column.text;

import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.order.WorkOrder;
import fitworthy.figures.plan.Plan;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The order in which the work can be done, with its days. */
public final class WorkTable {

    private WorkTable() {}

    public static List<Block> blocks(Plan plan) {
        WorkOrder order = WorkOrder.of(plan);
        if (!order.loops().isEmpty()) {
            return order.loops().stream()
                    .map(loop -> (Block) new Paragraph("There is no order of work: each of these waits"
                            + " for another of them: " + String.join(", ", loop) + "."))
                    .toList();
        }
        List<Row> rows = new ArrayList<>();
        LocalDate last = null;
        boolean known = true;
        for (WorkOrder.Step step : order.steps()) {
            rows.add(Row.of(
                    String.valueOf(rows.size() + 1),
                    step.name(),
                    day(step.firstDay()),
                    day(step.lastDay()),
                    days(step.end().minus(step.start())),
                    step.critical() ? "yes" : "no"));
            known &= step.lastDay() != null;
            last = step.lastDay() != null && (last == null || step.lastDay().isAfter(last)) ? step.lastDay() : last;
        }
        if (rows.isEmpty()) {
            return List.of();
        }
        if (order.steps().stream()
                .noneMatch(step -> step.firstDay() != null
                        || step.lastDay() != null
                        || step.end().minus(step.start()).known())) {
            return List.of(new Paragraph(
                    "How long the jobs take is not on the sheet, nor when the parts are there. In the order that"
                            + " gets one pair of hands through soonest, each once its parts may be bought: "
                            + order.steps().stream().map(WorkOrder.Step::name).collect(Collectors.joining(", "))
                            + "."));
        }
        LocalDate wanted = plan.sheet().readyBy();
        String whole = known
                ? "Done by " + last
                        + " at the earliest, where as many jobs as can be go on at once, as in the days below; by "
                        + order.lastDayInTurn() + " with one pair of hands, one job after the other in this order"
                : "The sheet does not say how long every job takes, or when every part is available, so the end is not "
                        + "known";
        return List.of(
                new Paragraph(whole + (wanted == null ? "." : "; wanted by " + wanted + ".")
                        + " The whole is late by as much as any step on the critical path is."),
                new Table(
                        "Steps, each on its earliest days with as many hands as are wanted",
                        List.of(
                                figure("No.", 6),
                                text("Step", 40),
                                text("Begins", 16),
                                text("Done", 16),
                                figure("Working days", 11),
                                text("Critical", 11)),
                        rows));
    }

    private static String day(LocalDate day) {
        return day == null ? "not known" : day.toString();
    }

    private static String days(Figure days) {
        return days.known() ? Digits.number(days.value(), "", 1) : "not known";
    }
}
