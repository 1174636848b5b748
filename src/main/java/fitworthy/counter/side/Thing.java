package fitworthy.counter.side;

import fitworthy.figures.plan.Liquids;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.printout.picture.SideDrawing;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import java.util.List;
import java.util.Optional;

/** Something on the sheet that has a place: a part, a tank with what is in it, a person or a piece of cargo. */
final class Thing {

    private Thing() {}

    /** The path of a mass's place on the sheet; empty for what has none there. */
    static Optional<String> path(PointMass mass, Sheet sheet) {
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

    /** What it is called, from the path of its place. */
    static String name(String path) {
        return path.substring(path.indexOf('.') + 1, path.lastIndexOf('.'));
    }

    /** What it is, its mass and its place. @param masses of it, at one place */
    static String words(String path, List<PointMass> masses, Figure wheelbase) {
        Figure mass = masses.stream().map(PointMass::mass).reduce(Figure.ZERO, Figure::plus);
        return name(path) + ", " + SideDrawing.words(mass) + ", "
                + PlaceWords.along(masses.get(0).at().x(), wheelbase);
    }

    /** Its masses in a loading; none where it is not aboard. */
    static List<PointMass> masses(String path, Loading loading) {
        return loading.masses().stream()
                .filter(mass -> path(mass, loading.plan().sheet()).equals(Optional.of(path)))
                .toList();
    }
}
