package fitworthy.sheet;

import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.source.NodePath;
import java.util.HashSet;
import java.util.Set;

/** What must hold of the parts and tanks. */
final class PartChecks {

    private final Sheet sheet;
    private final SheetFaults faults;

    PartChecks(Sheet sheet, SheetFaults faults) {
        this.sheet = sheet;
        this.faults = faults;
    }

    void run() {
        NodePath fitments = NodePath.of("fitments");
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            fitment(sheet.fitments().get(i - 1), fitments.to(i));
        }
        joints(fitments);
        for (int i = 1; i <= sheet.tanks().size(); i++) {
            faults.share(
                    sheet.tanks().get(i - 1).fill(), NodePath.of("tanks").to(i).to("fill"));
        }
    }

    private void fitment(Fitment fitment, NodePath path) {
        if (fitment.mass().value() > 0 && fitment.at().isEmpty() && faults.complete("at", path)) {
            faults.tell("has a mass but no place", "at: {x: 2950 mm, y: 0 mm, z: 900 mm}", path.to("at"));
        }
        if (fitment.details() instanceof ElectricalDetails.Charger charger) {
            charger(charger, path);
        }
        if (fitment.details() instanceof TyreDetails.Tyres tyres) {
            TyreChecks.check(tyres, path, faults);
        }
    }

    /** A charger that takes something and gives nothing is a relay, or misread. */
    private void charger(ElectricalDetails.Charger charger, NodePath path) {
        if (charger.output().isZero()
                && charger.input().value() > 0
                && !charger.isolator().is(YesNo.YES)) {
            faults.tell(
                    "gives nothing, though it takes "
                            + QuantityText.shown(charger.input().value(), "A") + " at its input",
                    "the output on its data sheet, or isolator: yes where it only joins the batteries",
                    path.to("output"));
        }
    }

    /** Joints of all snorkels together: the advice tells them apart by name. */
    private void joints(NodePath fitments) {
        Set<String> seen = new HashSet<>();
        for (int i = 1; i <= sheet.fitments().size(); i++) {
            if (sheet.fitments().get(i - 1).details() instanceof IntakeDetails.Snorkel snorkel) {
                for (int j = 1; j <= snorkel.joints().size(); j++) {
                    faults.uniqueName(
                            snorkel.joints().get(j - 1).name(),
                            seen,
                            fitments.to(i).to("joints").to(j));
                }
            }
        }
    }
}
