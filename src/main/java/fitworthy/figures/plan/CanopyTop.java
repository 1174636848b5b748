package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What its place puts on top of a canopy that carries a rack, though no {@code in} says that it stands on the rack: within the
 * canopy's length, and its middle no lower than the canopy's top, or where no space gives that, than the rack.
 */
public final class CanopyTop {

    private final Sheet sheet;
    private final Places places;
    private final Fitment canopy;
    private final Fitment rack;
    /** From which height on something stands up there, m. */
    private final Figure level;

    private CanopyTop(Sheet sheet, Fitment canopy, Fitment rack) {
        this.sheet = sheet;
        this.places = new Places(sheet);
        this.canopy = canopy;
        this.rack = rack;
        this.level = places.space(canopy)
                .map(space -> space.from().z().most(space.to().z()))
                .or(() -> places.of(rack).map(Point::z))
                .orElse(Figure.missing(lacking("fitments", rack.name())));
    }

    /** Of the canopy that a rack is on: what it is in, or off the roof has its place over; empty where it is on none. */
    public static Optional<CanopyTop> under(Sheet sheet, Fitment rack) {
        return canopy(sheet, rack).map(canopy -> new CanopyTop(sheet, canopy, rack));
    }

    private static Optional<Fitment> canopy(Sheet sheet, Fitment rack) {
        return sheet.fitments().stream()
                .filter(part -> part.kind() == Kind.CANOPY)
                .filter(canopy -> rack.in().equals(canopy.name())
                        || rack.in().isEmpty()
                                && OnRoof.of(rack, sheet).is(YesNo.NO)
                                && isOver(new Places(sheet), canopy, rack))
                .findFirst();
    }

    private static boolean isOver(Places places, Fitment canopy, Fitment rack) {
        return places.of(rack)
                .filter(at -> Standing.over(places, canopy, at).is(YesNo.YES))
                .isPresent();
    }

    /** Whether no other of some racks is on the same canopy. */
    public boolean isOnly(List<Fitment> racks) {
        return racks.stream()
                .filter(other -> canopy(sheet, other).filter(canopy::equals).isPresent())
                .allMatch(rack::equals);
    }

    /**
     * Parts, tanks and cargo that stand up there, by name; of what may, what would tell. What the sheet puts in or on another
     * part, on the rack itself or on the roof is not among them.
     */
    public Map<String, Choice<YesNo>> standing() {
        Map<String, Choice<YesNo>> standing = new TreeMap<>();
        sheet.fitments().stream()
                .filter(part -> part.kind() != Kind.ROOF_RACK && !OnRoof.reachesUp(part.kind()))
                .filter(part -> isOpen(part.in(), OnRoof.of(part, sheet)))
                .forEach(part ->
                        places.of(part).ifPresent(at -> standing.put(part.name(), holds("fitments", part.name(), at))));
        sheet.tanks().stream()
                .filter(tank -> !tank.stock().is(YesNo.YES) && isOpen(tank.in(), OnRoof.of(tank, sheet)))
                .forEach(tank -> standing.put(tank.name(), holds("tanks", tank.name(), places.of(tank))));
        sheet.cargo().stream()
                .filter(load -> isOpen(load.in(), OnRoof.of(load, sheet)))
                .forEach(load -> standing.put(load.name(), holds("cargo", load.name(), places.of(load))));
        standing.values().removeIf(answer -> answer.is(YesNo.NO));
        return standing;
    }

    private boolean isOpen(String in, Choice<YesNo> roof) {
        return (in.isEmpty() || in.equals(canopy.name())) && !roof.is(YesNo.YES);
    }

    private Choice<YesNo> holds(String list, String name, Point at) {
        return Choice.every(Standing.over(places, canopy, at), up(list, name, at.z()));
    }

    /** Where the two heights are too near for what they may be off, nobody can tell. */
    private Choice<YesNo> up(String list, String name, Figure height) {
        Figure above = height.minus(level);
        if (above.value() >= above.tolerance()) {
            return Choice.of(YesNo.YES);
        }
        boolean below = above.known() ? above.value() < -above.tolerance() : isBelowItsMiddle(height);
        return below ? Choice.of(YesNo.NO) : Choice.missing(lacking(list, name));
    }

    private boolean isBelowItsMiddle(Figure height) {
        return places.of(canopy).filter(at -> height.isBelow(at.z())).isPresent();
    }

    private Missing lacking(String list, String name) {
        return new Missing(
                list + "." + name + ".in", "whether it stands on " + rack.name() + "; else how high it is", "the plan");
    }
}
