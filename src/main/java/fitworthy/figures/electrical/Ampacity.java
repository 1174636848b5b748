package fitworthy.figures.electrical;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import java.util.List;

/**
 * What a cable carries for long, by its maker's rating or the table of cables. Where the sheet does not say what heat its insulation is made for,
 * the poorest of the table is counted, and a question is open where the best of the table would answer it otherwise.
 */
record Ampacity(Tables tables, Circuit.Cable cable) {

    /** What it carries, A, by its own insulation or else by the poorest. */
    Figure carries() {
        return carries(counted());
    }

    /** What it carries for sure, A, by its maker's rating where that is given, else by the table. */
    Figure sure() {
        return cable.rating().known() ? ratedLeast() : carries();
    }

    /**
     * Its maker's rating as the heat of its place leaves it, A; missing where what is not known of that heat decides whether it
     * is enough. A rating is for the air of the table unless its maker gives it for an engine bay.
     *
     * @param current that it has to carry, A
     */
    Figure rated(Figure current) {
        Figure most = ratedMost();
        return current.isAbove(most) ? most : current.isAbove(ratedLeast()) ? heat() : ratedLeast();
    }

    private Figure ratedMost() {
        boolean sureHot = cable.engineBay().is(YesNo.YES) && cable.ratingHot().is(YesNo.NO);
        return sureHot ? cable.rating().times(leftInEngineBay(best())) : cable.rating();
    }

    private Figure ratedLeast() {
        return cable.engineBay().is(YesNo.NO) || cable.ratingHot().is(YesNo.YES)
                ? cable.rating()
                : cable.rating().times(leftInEngineBay(counted()));
    }

    /** How the heat of its place came into what its maker's rating leaves. @param carries what is left, A */
    Working heated(String name, Figure carries) {
        return carries.isBelow(cable.rating())
                ? new Working.Formula(
                        name + " = rating x warmth",
                        List.of(in("rating", cable.rating(), "A"), in("warmth", carries.dividedBy(cable.rating()), "")))
                : List::of;
    }

    /** The first of what is not known of the heat that its maker's rating is for. */
    private Figure heat() {
        return !cable.engineBay().known()
                ? Figure.missing(cable.engineBay().missing())
                : !cable.ratingHot().known() ? Figure.missing(cable.ratingHot().missing()) : cable.insulation();
    }

    private static Figure leftInEngineBay(Figure insulation) {
        return Cable.ratingLeft(Choice.of(YesNo.YES), insulation);
    }

    /** A fuse of this rating as a share of what it carries; missing where its insulation decides whether that is more. */
    Figure share(Figure fuse, Figure most) {
        Figure share = fuse.dividedBy(carries());
        return share.isAbove(most) && !fuse.dividedBy(carries(best())).isAbove(most) ? cable.insulation() : share;
    }

    /** Whether a current is more than it carries, whatever is not known of its insulation and the heat of its place. */
    boolean isOutdoneBy(Figure current) {
        return current.isAbove(cable.rating().known() ? ratedMost() : carries(best()));
    }

    /** The least section that carries a current, m2; missing where its insulation decides whether this one does. */
    Figure leastFor(Figure current) {
        Figure least = leastFor(current, counted());
        Figure atBest = leastFor(current, best());
        return cable.section().isAtLeast(atBest) && !cable.section().isAtLeast(least)
                ? cable.insulation()
                : least.or(atBest);
    }

    /**
     * What another section of such insulation carries for sure, A: in the heat of the engine bay unless it is known to lie
     * outside, and with the poorest insulation of the table where its own is not known or not in it.
     */
    Figure surely(Figure section) {
        Figure insulation = counted().or(tables.poorestInsulation());
        return tables.cableRating(
                section, insulation, cable.engineBay().is(YesNo.NO) ? place(insulation) : leftInEngineBay(insulation));
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
