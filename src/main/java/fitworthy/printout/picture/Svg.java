package fitworthy.printout.picture;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * A drawing in the making. Its page is as many units wide as 170 mm have points, so that sizes of letters are points on
 * paper. All text goes through an XML writer, so no name can become markup. Hatching is drawn line by line: what prints
 * and what turns pages into PDF does not agree on patterns.
 */
final class Svg {

    static final double WIDTH = 480;
    /** Sizes of letters, in points on paper. */
    static final double SMALL = 8;

    static final double NORMAL = 9;
    static final double LARGE = 11.5;

    static final String WHITE = "#ffffff";
    static final String PALE = "#e6e6e6";
    static final String GREY = "#a8a8a8";
    static final String DARK = "#4a4a4a";
    static final String BLACK = "#000000";

    /** Kinds of line. Dashed ones stand for what is not known. */
    enum Pen {
        NONE("none", 0, ""),
        SKETCH("#8a8a8a", 0.8, ""),
        HAIR(BLACK, 0.4, ""),
        LINE(BLACK, 0.9, ""),
        BOLD(BLACK, 1.8, ""),
        EDGE(WHITE, 0.6, ""),
        HALO(WHITE, 2.1, ""),
        DASHED(BLACK, 0.9, "3 2");

        private final String colour;
        private final double width;
        private final String dashes;

        Pen(String colour, double width, String dashes) {
            this.colour = colour;
            this.width = width;
            this.dashes = dashes;
        }
    }

    /** Which end of a text stands at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    private record Shape(String name, List<String> attributes, String text) {}

    private final String id;
    private final List<Shape> shapes = new ArrayList<>();

    Svg(String id) {
        this.id = id;
    }

    void line(Pen pen, double x1, double y1, double x2, double y2) {
        line("", pen, x1, y1, x2, y2);
    }

    void line(String part, Pen pen, double x1, double y1, double x2, double y2) {
        shape("line", part, pen, "none", "x1", x1, "y1", y1, "x2", x2, "y2", y2);
    }

    void box(String part, Pen pen, String fill, double x, double y, double width, double height) {
        shape("rect", part, pen, fill, "x", x, "y", y, "width", width, "height", height);
    }

    void circle(String part, Pen pen, String fill, double x, double y, double radius) {
        shape("circle", part, pen, fill, "cx", x, "cy", y, "r", radius);
    }

    /** @param data path data of SVG; numbers by {@link #number} */
    void path(String part, Pen pen, String fill, String data) {
        shape("path", part, pen, fill, "d", data);
    }

    /** Straight lines through points, x and y in turn. */
    void lines(String part, Pen pen, String fill, double... points) {
        StringBuilder data = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            data.append(i == 0 ? "M" : " L")
                    .append(number(points[i]))
                    .append(' ')
                    .append(number(points[i + 1]));
        }
        path(part, pen, fill, data.toString());
    }

    /** A rectangle filled with slanting lines. */
    void hatch(Pen pen, double x, double y, double width, double height, double gap) {
        StringBuilder data = new StringBuilder();
        for (double foot = x - height + gap / 2; foot < x + width; foot += gap) {
            double from = Math.max(foot, x);
            double to = Math.min(foot + height, x + width);
            data.append('M')
                    .append(number(from))
                    .append(' ')
                    .append(number(y + height - from + foot))
                    .append('L')
                    .append(number(to))
                    .append(' ')
                    .append(number(y + height - to + foot));
        }
        path("", pen, "none", data.toString());
    }

    /** An arrow's head at a point, pointing along a direction. */
    void head(double x, double y, double alongX, double alongY) {
        double length = Math.hypot(alongX, alongY);
        double ux = alongX / length * 5;
        double uy = alongY / length * 5;
        lines(
                "",
                Pen.NONE,
                BLACK,
                x,
                y,
                x - ux - uy * 0.35,
                y - uy + ux * 0.35,
                x - ux + uy * 0.35,
                y - uy - ux * 0.35);
    }

    void text(double size, Anchor anchor, double x, double y, String text) {
        text("", size, anchor, false, BLACK, x, y, text);
    }

    void bold(double size, Anchor anchor, double x, double y, String text) {
        text("", size, anchor, true, BLACK, x, y, text);
    }

    void text(String part, double size, Anchor anchor, boolean bold, String colour, double x, double y, String text) {
        List<String> attributes = attributes(part, "x", x, "y", y, "font-size", size, "fill", colour);
        if (anchor != Anchor.START) {
            attributes.addAll(List.of("text-anchor", anchor == Anchor.MIDDLE ? "middle" : "end"));
        }
        if (bold) {
            attributes.addAll(List.of("font-weight", "bold"));
        }
        shapes.add(new Shape("text", attributes, Lettering.clean(text)));
    }

    private void shape(String name, String part, Pen pen, String fill, Object... more) {
        List<String> attributes = attributes(part, more);
        attributes.addAll(List.of("fill", fill));
        if (pen != Pen.NONE) {
            attributes.addAll(List.of("stroke", pen.colour, "stroke-width", number(pen.width)));
            if (!pen.dashes.isEmpty()) {
                attributes.addAll(List.of("stroke-dasharray", pen.dashes));
            }
        }
        shapes.add(new Shape(name, attributes, ""));
    }

    private List<String> attributes(String part, Object... namesAndValues) {
        List<String> attributes = new ArrayList<>();
        if (!part.isEmpty()) {
            attributes.addAll(List.of("id", id + "-" + part));
        }
        for (Object each : namesAndValues) {
            attributes.add(each instanceof Double number ? number(number) : (String) each);
        }
        return attributes;
    }

    /** A number with two digits after the point at most. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** The drawing so far without an {@code svg} element around it, to stand in one of a page. */
    String shapes() {
        return written(xml -> {
            for (Shape shape : shapes) {
                element(xml, shape);
            }
        });
    }

    /** The drawing so far as a picture, {@code height} units high. */
    Picture picture(String title, String description, double height) {
        // What turns pages into PDF reads whole numbers only here.
        String whole = number(Math.ceil(height));
        String cleanTitle = Lettering.clean(title);
        String cleanDescription = Lettering.clean(description);
        String svg = written(xml -> {
            start(
                    xml,
                    "svg",
                    List.of(
                            "role",
                            "img",
                            "aria-labelledby",
                            id + "-title " + id + "-desc",
                            "viewBox",
                            "0 0 " + number(WIDTH) + " " + whole,
                            "font-family",
                            "sans-serif",
                            "direction",
                            "ltr"));
            element(xml, new Shape("title", List.of("id", id + "-title"), cleanTitle));
            element(xml, new Shape("desc", List.of("id", id + "-desc"), cleanDescription));
            element(xml, new Shape("rect", List.of("width", number(WIDTH), "height", whole, "fill", WHITE), ""));
            for (Shape shape : shapes) {
                element(xml, shape);
            }
            xml.writeEndElement();
        });
        return new Picture(id, cleanTitle, cleanDescription, svg);
    }

    /** Writes XML. */
    private interface Writing {
        void to(XMLStreamWriter xml) throws XMLStreamException;
    }

    private static String written(Writing writing) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            writing.to(xml);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a writer to memory does not fail", e);
        }
        return text.toString();
    }

    private static void start(XMLStreamWriter xml, String name, List<String> attributes) throws XMLStreamException {
        xml.writeStartElement(name);
        if (name.equals("svg")) {
            xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
        }
        for (int i = 0; i < attributes.size(); i += 2) {
            xml.writeAttribute(attributes.get(i), attributes.get(i + 1));
        }
    }

    private static void element(XMLStreamWriter xml, Shape shape) throws XMLStreamException {
        xml.writeCharacters("\n");
        start(xml, shape.name, shape.attributes);
        xml.writeCharacters(shape.text);
        xml.writeEndElement();
    }
}
