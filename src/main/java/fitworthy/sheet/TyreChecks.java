package fitworthy.sheet;

import fitworthy.source.NodePath;
import fitworthy.source.Words;

/** What must hold of a set of tyres, the vehicle's own or a planned one. */
final class TyreChecks {

    private TyreChecks() {}

    static void check(TyreDetails.Tyres tyres, NodePath path, SheetFaults faults) {
        size(tyres.size(), path, faults);
        double rim = TyreSize.read(tyres.size()).map(TyreSize::rim).orElse(0.0);
        if (tyres.diameter().value() <= rim) {
            faults.tell("is no larger than the rim", "diameter: 802 mm", path.to("diameter"));
        }
    }

    static void size(String size, NodePath path, SheetFaults faults) {
        if (!size.isEmpty() && TyreSize.read(size).isEmpty()) {
            faults.tell(
                    "'" + Words.shortened(size, 60) + "' is not a tyre size",
                    "size: 265/65R17, 33x12.50R15 or 7.50R16; load index and speed symbol may follow, as in"
                            + " 265/65R17 112S",
                    path.to("size"));
        }
    }
}
