package fitworthy.printout.picture;

import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Digits;

/**
 * How much of its limit a measure uses, as a bar and in words.
 *
 * @param shapes what the bar is drawn with: elements of SVG 1.1 for a view of {@code WIDTH} by {@code HEIGHT}
 * @param of the value and its limit
 * @param left what is spare, or by how much the limit is passed, with its tolerance
 * @param over whether the limit is passed
 */
public record LimitBar(String shapes, String of, String left, boolean over) {

    public static final double WIDTH = 200;
    public static final double HEIGHT = 14;
    private static final double EDGE = 1;
    private static final double MOST = 1.25;

    public static LimitBar of(Measure measure) {
        Svg svg = new Svg("");
        Bar.draw(svg, "", measure, EDGE, 3, WIDTH - 2 * EDGE, HEIGHT - 6, MOST);
        boolean within = measure.isKnown() && measure.kind().printed(measure.getTolerance()) > 0;
        return new LimitBar(
                svg.shapes(),
                Bar.of(measure),
                Bar.left(measure) + (within ? " +/- " + Digits.quantity(measure.getTolerance(), measure.kind()) : ""),
                measure.isKnown() && measure.getHeadroom() < 0);
    }
}
