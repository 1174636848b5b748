package fitworthy.sheet;

import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.LinkedHashSet;
import java.util.Set;

/** What must hold of the work on parts, tanks and jobs, and of the times until they can be had. */
final class WorkChecks {

    private final Sheet sheet;
    private final SheetFaults faults;
    private final Set<String> names = new LinkedHashSet<>();
    /** Whether it is known what all parts and jobs are called. */
    private final boolean namesSettled;

    WorkChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        sheet.tanks().forEach(tank -> names.add(tank.name()));
        sheet.fitments().forEach(fitment -> names.add(fitment.name()));
        sheet.jobs().forEach(job -> names.add(job.name()));
        namesSettled =
                faults.settled("fitments", "name") && faults.settled("tanks", "name") && faults.settled("jobs", "name");
    }

    void run() {
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            Fitment fitment = sheet.fitments().get(i - 1);
            NodePath path = NodePath.of("fitments").to(i);
            work(fitment.name(), fitment.work(), path);
        }
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            Tank tank = sheet.tanks().get(i - 1);
            NodePath path = NodePath.of("tanks").to(i);
            work(tank.name(), tank.work(), path);
        }
        for (int i = 1; i <= sheet.jobs().size(); i++) {
            Job job = sheet.jobs().get(i - 1);
            work(job.name(), job.work(), NodePath.of("jobs").to(i));
        }
    }

    private void work(String name, Work work, NodePath path) {
        NodePath after = path.to("work").to("after");
        for (int i = 1; namesSettled && i <= work.after().size(); i++) {
            String earlier = work.after().get(i - 1);
            faults.listed(earlier, "fitments, tanks and jobs", names, after.to(i));
            if (earlier.equals(name)) {
                faults.tell(
                        "'" + Words.shortened(name, 60) + "' cannot come after itself", "leave it out", after.to(i));
            }
        }
    }
}
