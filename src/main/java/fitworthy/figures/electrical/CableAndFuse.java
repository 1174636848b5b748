package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Figure;
import fitworthy.quantity.WireGauge;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one cable and the one fuse with which a circuit passes all that is asked of both: loss of voltage, heat, and a fuse
 * that carries the load and guards the cable. What the plan has stays where it will do; else it is the least of the table of
 * cables, and of the sizes in which fuses are sold. What is not known is taken as the worst it can be, or said to be open.
 */
final class CableAndFuse {

    /** A cable that may do. @param carries for long, A */
    private record Wire(Figure section, Figure carries, boolean planned, String words) {}

    /** A fuse that goes with it. @param rating A, missing where none is named */
    private record Fuse(Figure rating, String words) {}

    private final Plan plan;
    private final Circuit circuit;
    /** Whether there is a fuse at either end. */
    private final boolean twice;

    private final Ampacity ampacity;
    private final Figure load;
    private final boolean loadKnown;
    /** What its loss of voltage asks for, m2. */
    private final Figure needed;

    CableAndFuse(Plan plan, Circuit circuit, boolean twice) {
        Feeds feeds = new Feeds(plan);
        this.plan = plan;
        this.circuit = circuit;
        this.twice = twice;
        this.ampacity = new Ampacity(plan.tables(), circuit.cable());
        this.loadKnown = feeds.carried(circuit).known();
        this.load = feeds.carried(circuit).or(feeds.least(circuit));
        this.needed = new Losses(plan, feeds).sectionNeeded(circuit);
    }

    /** In words; of a cable and a load that are both not known what can be said of any. */
    String words() {
        if (!circuit.cable().section().known() && !loadKnown) {
            return "a fuse that its cable carries";
        }
        return wires().stream()
                .flatMap(wire -> fuse(wire).map(fuse -> said(wire, fuse)).stream())
                .findFirst()
                .orElseGet(this::beyond);
    }

    /** Whether the cable can stay as it is. */
    boolean keepsCable() {
        return wires().stream()
                .filter(wire -> fuse(wire).isPresent())
                .findFirst()
                .filter(Wire::planned)
                .isPresent();
    }

    Working working() {
        return () -> List.of("the first cable, beginning with the planned one, that is no thinner than "
                + in("", needed, "mm2").shown() + " for its loss of voltage and carries "
                + in("", load, "A").shown() + (loadKnown ? "" : " or more")
                + ", with a fuse between that load and what it carries");
    }

    private String said(Wire wire, Fuse fuse) {
        // Of a cable that its maker rates another of its kind has a rating of its own.
        boolean rated = circuit.cable().rating().known() && !wire.planned && fuse.rating.known();
        return wire.words
                + (rated ? rated(fuse.rating) : "")
                + (needed.known() && loadKnown ? "" : " or more")
                + " and " + fuse.words;
    }

    private static String rated(Figure fuse) {
        return " rated for " + in("", fuse, "A").shown() + " or more";
    }

    /** The planned cable and then the table's, the least first, as far as they lose little enough. */
    private List<Wire> wires() {
        Figure section = circuit.cable().section();
        List<Wire> wires = new ArrayList<>();
        if (section.known() && !section.isBelow(needed)) {
            boolean rated = circuit.cable().rating().known();
            wires.add(new Wire(
                    section,
                    rated ? ampacity.sure() : ampacity.surely(section),
                    true,
                    "the planned " + in("", section, "mm2").shown()));
        }
        plan.tables().cableSizes().stream()
                .filter(size -> !size.isBelow(section) && !size.isBelow(needed))
                .map(size -> new Wire(size, ampacity.surely(size), false, sold(size)))
                .forEach(wires::add);
        Figure largest = plan.tables().largestCable();
        if (needed.isAbove(largest)) {
            wires.add(new Wire(
                    needed, ampacity.surely(largest), false, thick(needed) + " (beyond the table; or a shorter run)"));
        }
        return wires;
    }

    private Optional<Fuse> fuse(Wire wire) {
        Figure planned = circuit.fuse().rating();
        if (circuit.shortTime().is(YesNo.YES)) {
            return Optional.of(planned.value() > 0 ? fuses(planned) : new Fuse(planned, "a fuse that it carries"));
        }
        if (!load.isAtMost(wire.carries)) {
            return Optional.empty();
        }
        Figure most = wire.carries.times(plan.practice(PracticeId.ELECTRICAL_FUSE_SHARE_MOST));
        Optional<Figure> kept = Stream.of(planned, circuit.farFuse().rating())
                .filter(fuse -> fuse.value() > 0 && load.isAtMost(fuse) && fuse.isAtMost(most))
                .findFirst();
        Figure size = loadKnown ? FuseSizes.next(load) : FuseSizes.most(most);
        return kept.isPresent()
                ? kept.map(this::fuses)
                : !load.isAtMost(size) || !size.isAtMost(most)
                        ? Optional.empty()
                        : Optional.of(
                                loadKnown
                                        ? fuses(size)
                                        : new Fuse(
                                                size,
                                                "a fuse of at most "
                                                        + in("", size, "A").shown()));
    }

    private Fuse fuses(Figure rating) {
        boolean near = isLike(circuit.fuse().rating(), rating);
        String size = in("", rating, "A").shown();
        String planned = twice ? "the planned fuses of " + size : "the planned fuse of " + size;
        String other = twice ? "fuses of " + size + " at both ends" : "a fuse of " + size;
        return new Fuse(rating, near && (!twice || isLike(circuit.farFuse().rating(), rating)) ? planned : other);
    }

    /** Where no cable of the table does. */
    private String beyond() {
        Fuse fuse = fuses(FuseSizes.next(load));
        return "more than " + thick(needed.or(Figure.ZERO).most(plan.tables().largestCable())) + rated(fuse.rating)
                + " (beyond the table) and " + fuse.words;
    }

    private static String sold(Figure size) {
        return thick(size)
                + WireGauge.of(size.value() * 1e6)
                        .map(gauge -> " (" + gauge + ")")
                        .orElse("");
    }

    private static String thick(Figure section) {
        return in("", Figure.of(Losses.SECTION.printed(section.value(), 1)), "mm2")
                .shown();
    }

    private static boolean isLike(Figure one, Figure other) {
        return one.isAtMost(other) && one.isAtLeast(other);
    }
}
