package fitworthy.printout.picture;

import fitworthy.printout.picture.LabelPlaces.Box;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A picture's drawing as an XML parser reads it. */
record Drawing(Picture picture, Element root, List<Element> elements) {

    static Drawing of(Picture picture) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Element root = factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(picture.svg())))
                    .getDocumentElement();
            List<Element> elements = new ArrayList<>();
            NodeList all = root.getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                elements.add((Element) all.item(i));
            }
            return new Drawing(picture, root, elements);
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(picture.id() + " is not well-formed", e);
        }
    }

    /** The element of this name behind the picture's id. */
    Element part(String name) {
        return elements.stream()
                .filter(each -> each.getAttribute("id").equals(picture.id() + "-" + name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(picture.id() + " has no " + name));
    }

    boolean has(String name) {
        return elements.stream().anyMatch(each -> each.getAttribute("id").equals(picture.id() + "-" + name));
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    double number(String part, String attribute) {
        return number(part(part), attribute);
    }

    /** How long a line across the page is. */
    double length(String line) {
        return Math.abs(number(line, "x2") - number(line, "x1"));
    }

    List<Element> texts() {
        return elements.stream()
                .filter(each -> each.getTagName().equals("text"))
                .toList();
    }

    boolean says(String text) {
        return texts().stream().anyMatch(each -> each.getTextContent().contains(text));
    }

    /** Room a text takes, by the estimate that the drawing itself goes by. */
    static Box box(Element text) {
        double size = number(text, "font-size");
        double width = Lettering.width(text.getTextContent(), size);
        double left = number(text, "x")
                - switch (text.getAttribute("text-anchor")) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                };
        return new Box(left, number(text, "y") - size * 0.7, width, size * 0.7);
    }
}
