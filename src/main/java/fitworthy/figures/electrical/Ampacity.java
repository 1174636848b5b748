package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;

/**
 * What a cable carries for long by the table of cables. Where the sheet does not say what heat its insulation is made for,
 * the poorest of the table is counted, and a question is open where the best of the table would answer it otherwise.
 */
record Ampacity(Tables tables, Circuit.Cable cable) {

    /** What it carries, A, by its own insulation or else by the poorest. */
    Figure carries() {
        return carries(counted());
    }

    /** A fuse of this rating as a share of what it carries; missing where its insulation decides whether that is more. */
    Figure share(Figure fuse, Figure most) {
        Figure share = fuse.dividedBy(carries());
        return share.isAbove(most) && !fuse.dividedBy(carries(best())).isAbove(most) ? cable.insulation() : share;
    }

    /** Whether a current is more than it carries, whatever its insulation. */
    boolean isOutdoneBy(Figure current) {
        return current.isAbove(carries(best()));
    }

    /** The least section that carries a current, m2; missing where its insulation decides whether this one does. */
    Figure leastFor(Figure current) {
        Figure least = leastFor(current, counted());
        Figure atBest = leastFor(current, best());
        return cable.section().isAtLeast(atBest) && !cable.section().isAtLeast(least)
                ? cable.insulation()
                : least.or(atBest);
    }

    /** For what insulation and place it is counted. */
    Working.Input[] inputs(Working.Input first) {
        return new Working.Input[] {first, in("insulation", counted(), "degC"), in("warmth", place(counted()), "")};
    }

    private Figure carries(Figure insulation) {
        return tables.cableRating(cable.section(), insulation, place(insulation));
    }

    private Figure leastFor(Figure current, Figure insulation) {
        return tables.cableFor(current, insulation, place(insulation));
    }

    private Figure place(Figure insulation) {
        return Cable.ratingLeft(cable.engineBay(), insulation);
    }

    private Figure counted() {
        return cable.insulation().known() ? tables.insulationInTable(cable.insulation()) : tables.poorestInsulation();
    }

    /** The same as what is counted where its own is known. */
    private Figure best() {
        return cable.insulation().known() ? counted() : tables.bestInsulation();
    }
}
