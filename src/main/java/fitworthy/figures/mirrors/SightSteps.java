package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working.Formula;
import fitworthy.figures.measure.Working.Input;
import fitworthy.quantity.Figure;
import java.util.List;
import java.util.stream.Stream;

/**
 * The steps by which a {@link SightLine} comes to its answer, with the numbers at which its iteration rests, so that
 * each can be checked by itself. Lengths in m.
 *
 * @param line where eye and glass are
 * @param side from the centre line to what hides the road
 * @param reach from the centre line to the outer edge of the glass
 * @param behind how far behind the driver's eye the road is looked at
 */
record SightSteps(SightLine line, double side, double reach, double behind) {

    /** To the width of road seen in a glass of this width. */
    List<String> seen(double glass) {
        double whole = line.across(glass, reach);
        double across = Math.max(0, Math.min(whole, reach - side));
        double middle = reach - across / 2;
        double one = across * (1 + line.wayBack(behind) / line.toEnd(middle, across));
        return lines(Stream.concat(
                Stream.of(
                        new Formula(
                                "seen = one + min(one, displaced)",
                                List.of(m("one", one), m("displaced", line.displaced(middle, behind)))),
                        new Formula(
                                "one = across x (1 + way / end)",
                                List.of(
                                        m("across", across),
                                        m("way", line.wayBack(behind)),
                                        m("end", line.toEnd(middle, across)))),
                        new Formula(
                                "across = max(0, min(whole, reach - side))",
                                List.of(m("whole", whole), m("reach", reach), m("side", side))),
                        new Formula(
                                "whole = glass x cos(askew)",
                                List.of(m("glass", glass), deg("askew", line.turn(reach - whole / 2))))),
                way(middle, across)));
    }

    /** To the place of the glass that shows a width of road; {@code reach} is that place. */
    List<String> reachNeeded(double width) {
        return lines(Stream.concat(
                Stream.of(new Formula(
                        "reach rounded up = 1000 x (side + across)",
                        List.of(m("side", side), m("across", reach - side)))),
                needed(width, reach - side)));
    }

    /** To the width of glass at {@code reach} that shows a width of road. */
    List<String> glassNeeded(double width) {
        double across = line.acrossNeeded(width, reach, behind);
        return lines(Stream.concat(
                Stream.of(new Formula(
                        "glass rounded up = 1000 x across / cos(turn)",
                        List.of(m("across", across), deg("turn", line.turn(reach - across / 2))))),
                needed(width, across)));
    }

    private Stream<Formula> needed(double width, double across) {
        double middle = reach - across / 2;
        return Stream.concat(
                Stream.of(new Formula(
                        "across = max(width / 2, width - displaced) / (1 + way / end)",
                        List.of(
                                m("width", width), m("displaced", line.displaced(middle, behind)),
                                m("way", line.wayBack(behind)), m("end", line.toEnd(middle, across))))),
                way(middle, across));
    }

    /** The way of the light by the middle and the outer end of the glass in use. */
    private Stream<Formula> way(double middle, double across) {
        Input distance = m("distance", line.distance(middle));
        Input back = m("way", line.wayBack(behind));
        Input ahead = m("ahead", line.eyeX() - line.glassX());
        Input turn = deg("turn", line.turn(middle));
        List<Input> aside = List.of(m("middle", middle), m("eye", line.eyeY()), ahead);
        return Stream.of(
                new Formula(
                        "end = image x (1 + across x tan(turn) / (2 x distance))",
                        List.of(m("image", line.image(middle)), m("across", across), turn, distance)),
                Double.isInfinite(line.radius())
                        ? new Formula("image = distance", List.of(distance))
                        : new Formula(
                                "image = 1 / (1 / distance + 2 / (radius x cos(turn)))",
                                List.of(distance, m("radius", line.radius()), turn)),
                new Formula(
                        "displaced = 0.065 x max(0, ahead / distance) x way / distance",
                        List.of(ahead, distance, back)),
                new Formula("way = ahead + behind", List.of(ahead, m("behind", behind))),
                new Formula("distance = sqrt(ahead^2 + (middle - eye)^2)", aside),
                new Formula("turn = atan((middle - eye) / ahead) / 2", aside));
    }

    private static Input m(String name, double value) {
        return in(name, Figure.of(value), "m");
    }

    private static Input deg(String name, double radians) {
        return in(name, Figure.of(Math.toDegrees(radians)), "deg");
    }

    private static List<String> lines(Stream<Formula> formulas) {
        return formulas.flatMap(formula -> formula.lines().stream()).toList();
    }
}
