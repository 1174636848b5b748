package fitworthy.figures.order;

import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Job;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Work;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Something that has to be done: a part or tank to be fitted, or other work.
 *
 * @param name its name in the sheet
 * @param kind its kind, as the table of the usual order writes it
 * @param part whether it is a part or a tank
 * @param in the planned parts that it stands in or on, as far as its sheet and its place tell
 * @param inCanopy whether it is fitted into or onto a planned canopy all the same
 * @param lead h until it can be had; 0 for work alone
 * @param work how long it takes, and when
 */
record Task(String name, String kind, boolean part, Set<String> in, boolean inCanopy, Figure lead, Work work) {

    /** By the name alone, which tells nearly all apart: graphs ask for it again and again. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** Everything that is still to be done, in the order of the sheet. */
    static List<Task> of(Plan plan) {
        List<Task> tasks = new ArrayList<>();
        Carried carried = new Carried(plan);
        InCanopy inCanopy = new InCanopy(plan);
        for (Fitment fitment : plan.sheet().fitments()) {
            if (fitment.isDone()) {
                continue;
            }
            tasks.add(new Task(
                    fitment.name(),
                    word(fitment.kind()),
                    true,
                    carried.of(fitment),
                    inCanopy.is(fitment),
                    fitment.leadTime(),
                    fitment.work()));
        }
        for (Tank tank : plan.sheet().tanks()) {
            if (tank.stock().is(YesNo.NO) && !tank.isDone()) {
                tasks.add(new Task(
                        tank.name(), Tables.TANK, true, carried.of(tank), false, tank.leadTime(), tank.work()));
            }
        }
        for (Job job : plan.sheet().jobs()) {
            tasks.add(new Task(
                    job.name(), word(job.kind().value()), false, Set.of(), false, Figure.of(0, 0), job.work()));
        }
        return tasks;
    }

    /** Where the sheet has it. */
    String path() {
        String list = !part ? "jobs" : kind.equals(Tables.TANK) ? "tanks" : "fitments";
        return list + "." + name;
    }

    /** Whether the sheet says anything of when it is done. */
    boolean timed() {
        return work.days().known() || !work.after().isEmpty() || work.booked() != null;
    }

    /** The words of the table of the usual order that speak of it. */
    List<String> words() {
        return inCanopy ? List.of(kind, Tables.IN_CANOPY) : List.of(kind);
    }

    boolean is(Enum<?> kind) {
        return this.kind.equals(word(kind));
    }

    private static String word(Enum<?> kind) {
        return Words.hyphenated(kind.name());
    }
}
