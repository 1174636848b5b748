package fitworthy.counter.side;

import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.PointMass;
import fitworthy.printout.picture.SideDrawing;
import fitworthy.printout.picture.SideDrawing.Mark;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * A thing in the side view that can be moved along the vehicle.
 *
 * @param path of its place on the sheet
 * @param words what it is, its mass and its place
 * @param marks the marks that move with it, of which the largest is first
 * @param along its place behind the front axle, mm; where it is drawn if that is not known
 */
public record Handle(String path, String words, List<Mark> marks, long along) {

    /** Around a mark, in units of the drawing: wide enough for a finger. */
    private static final double REACH = 20;

    public Mark mark() {
        return marks.get(0);
    }

    public double reach() {
        return Math.max(REACH, mark().radius());
    }

    /** The numbers of its marks, with spaces between them. */
    public String numbers() {
        return marks.stream().map(mark -> String.valueOf(mark.number())).collect(Collectors.joining(" "));
    }

    /** Those of a drawing, from front to rear. */
    static List<Handle> of(SideDrawing drawing, Sheet sheet, Figure wheelbase) {
        Map<String, List<Mark>> byPath = new LinkedHashMap<>();
        drawing.marks().forEach(mark -> path(mark.mass(), sheet)
                .ifPresent(path -> byPath.computeIfAbsent(path, none -> new ArrayList<>())
                        .add(mark)));
        double front = drawing.front();
        return byPath.entrySet().stream()
                .map(thing -> of(thing.getKey(), thing.getValue(), wheelbase, mark -> (mark.x() - front)
                        / drawing.metre()))
                .toList();
    }

    private static Handle of(
            String path, List<Mark> marks, Figure wheelbase, ToDoubleFunction<Mark> drawn) {
        List<Mark> largestFirst = marks.stream()
                .sorted(Comparator.comparingDouble(mark -> -mark.radius()))
                .toList();
        Mark mark = largestFirst.get(0);
        Figure mass = marks.stream().map(part -> part.mass().mass()).reduce(Figure.ZERO, Figure::plus);
        return new Handle(
                path,
                name(path) + ", " + SideDrawing.words(mass) + ", "
                        + PlaceWords.along(mark.mass().at().x(), wheelbase),
                largestFirst,
                Math.round(drawn.applyAsDouble(mark) * 1000));
    }

    private static String name(String path) {
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
    }

    private static Optional<String> path(PointMass mass, Sheet sheet) {
        return switch (mass.sort()) {
            case FITMENT -> Optional.of(path("fitments", mass.name()));
            case OCCUPANT -> Optional.of(path("occupants", mass.name()));
            case CARGO -> Optional.of(path("cargo", mass.name()));
            case TANK -> Optional.of(path("tanks", mass.name()));
            case LIQUID ->
                sheet.tanks().stream()
                        .filter(tank -> Liquids.name(tank).equals(mass.name()))
                        .map(Tank::name)
                        .map(name -> path("tanks", name))
                        .findFirst();
            case VEHICLE, COUNTED, REMOVED, BALL, RESIDUAL -> Optional.empty();
        };
    }

    private static String path(String list, String name) {
        return list + "." + name + ".at";
    }
}
