package fitworthy.counter.side;

import fitworthy.figures.plan.Plan;
import fitworthy.printout.picture.SideDrawing;
import fitworthy.printout.picture.SideDrawing.Mark;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    private static final double RING = 2;

    /** What its element is called, wherever it stands among the others. */
    public String id() {
        return "handle-" + path.replace(' ', '+');
    }

    /** @return where the middle of its ring is, in tenths of a unit of the drawing, as for the others */
    public String x() {
        return tenths(marks.get(0).x());
    }

    public String y() {
        return tenths(marks.get(0).y());
    }

    public String ring() {
        return tenths(marks.get(0).radius() + RING);
    }

    private static String tenths(double units) {
        return String.valueOf(Math.round(units * 10) / 10.0);
    }

    /** The numbers of its marks, with spaces between them. */
    public String numbers() {
        return marks.stream().map(mark -> String.valueOf(mark.number())).collect(Collectors.joining(" "));
    }

    /** Those of a drawing, from front to rear. */
    static List<Handle> of(SideDrawing drawing, Plan plan) {
        Map<String, List<Mark>> byPath = new LinkedHashMap<>();
        drawing.marks().forEach(mark -> Thing.path(mark.mass(), plan.sheet())
                .ifPresent(path ->
                        byPath.computeIfAbsent(path, none -> new ArrayList<>()).add(mark)));
        List<Handle> handles = new ArrayList<>();
        byPath.forEach((path, marks) -> handles.add(of(path, marks, drawing, plan)));
        return handles;
    }

    private static Handle of(String path, List<Mark> marks, SideDrawing drawing, Plan plan) {
        List<Mark> largestFirst = marks.stream()
                .sorted(Comparator.comparingDouble(mark -> -mark.radius()))
                .toList();
        return new Handle(
                path,
                Thing.words(path, marks.stream().map(Mark::mass).toList(), plan.wheelbase()),
                largestFirst,
                Math.round((largestFirst.get(0).x() - drawing.front()) / drawing.metre() * 1000));
    }
}
