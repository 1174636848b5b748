package fitworthy.printout.picture;

import fitworthy.figures.plan.PointMass;
import fitworthy.printout.words.Digits;
import fitworthy.quantity.Figure;
import java.util.List;

/**
 * The vehicle from its left side in one loading, for a page that lays out the key and the loads itself.
 *
 * @param shapes what it is drawn with: elements of SVG 1.1 for a view of {@code width} by {@code height}
 * @param front where the front axle is across it
 * @param metre how wide a metre is in it
 * @param marks every mass in it, by its number; the circle of one has the id {@code picture-side-mass-NUMBER}
 * @param key what stands in its key
 */
public record SideDrawing(
        String shapes, double width, double height, double front, double metre, List<Mark> marks, List<Line> key) {

    /**
     * A mass in the drawing.
     *
     * @param number its number in the key
     * @param x of its middle, in units of the drawing, as for {@code y} and {@code radius}
     * @param placed whether its place along the vehicle is known; it stands aside where not
     */
    public record Mark(int number, PointMass mass, double x, double y, double radius, boolean placed) {}

    /**
     * A line of the key.
     *
     * @param number empty where it is no single mass
     * @param mass with its unit
     * @param id what its figure is called in the drawing
     */
    public record Line(String number, String name, String mass, String id) {}

    /** A mass in words, or that it is not known. */
    public static String words(Figure mass) {
        return mass.known() ? kilograms(mass.value()) : "mass not known";
    }

    static String shown(Figure mass) {
        return mass.known() ? kilograms(mass.value()) : "? kg";
    }

    static String kilograms(double mass) {
        boolean whole = Math.abs(mass) >= 10 || mass == Math.rint(mass);
        return Digits.number(mass, "kg", whole ? 0 : 1) + " kg";
    }
}
