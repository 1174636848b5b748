package fitworthy.sheet;

import fitworthy.source.NodePath;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Set;

/** What must hold of the choices that are still open. */
final class OptionChecks {

    private final Sheet sheet;
    private final SheetFaults faults;
    private final Set<String> parts = new LinkedHashSet<>();
    private final Set<String> done = new HashSet<>();
    /** Whether it is known what all parts are called. */
    private final boolean partsSettled;

    OptionChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
        sheet.tanks().forEach(tank -> parts.add(tank.name()));
        sheet.fitments().forEach(fitment -> parts.add(fitment.name()));
        sheet.tanks().stream().filter(Tank::isDone).map(Tank::name).forEach(done::add);
        sheet.fitments().stream().filter(Fitment::isDone).map(Fitment::name).forEach(done::add);
        partsSettled = faults.settled("fitments", "name") && faults.settled("tanks", "name");
    }

    void run() {
        for (int i = 1; i <= sheet.options().size(); i++) {
            option(sheet.options().get(i - 1), NodePath.of("options").to(i));
        }
    }

    private void option(Sheet.Option option, NodePath path) {
        NodePath choices = path.to("choices");
        if (option.choices().size() < 2 && faults.complete("choices", path)) {
            faults.tell(
                    "there are fewer than two to choose from",
                    "choices: [{name: alloy, parts: [Alloy tray]}, {name: steel, parts: [Steel tray]}]",
                    choices);
        }
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= option.choices().size(); i++) {
            Sheet.Alternative choice = option.choices().get(i - 1);
            faults.uniqueName(choice.name(), seen, choices.to(i));
            faults.namedOnce(choice.parts(), choices.to(i).to("parts"));
            for (int j = 1; partsSettled && j <= choice.parts().size(); j++) {
                faults.listed(
                        choice.parts().get(j - 1),
                        "fitments and tanks",
                        parts,
                        choices.to(i).to("parts").to(j));
                if (done.contains(choice.parts().get(j - 1))) {
                    faults.tell(
                            "is done, so that it is no choice that is still open",
                            "leave it out here; a part that takes its place says what it 'removes'",
                            choices.to(i).to("parts").to(j));
                }
            }
        }
        if (!option.take().isEmpty() && !faults.foundWithin(choices)) {
            faults.listed(
                    option.take(),
                    "choices",
                    option.choices().stream().map(Sheet.Alternative::name).toList(),
                    path.to("take"));
        }
    }
}
