package org.fencecore.drawing.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** An SVG text read back with a parser of its own, to check what is on it. */
public final class SvgSheet {

    /**
     * Letters are taken as half an em wide, the average of sans-serif fonts (from memory), and as high as capitals with
     * what hangs below the line.
     */
    private static final double EMS_PER_LETTER = 0.5;

    private static final double ABOVE_LINE = 0.72;
    private static final double BELOW_LINE = 0.18;

    /** A line of lettering and the room it takes. */
    public record Line(String text, double size, Shape room) {}

    private final Element root;

    private SvgSheet(Element root) {
        this.root = root;
    }

    public static SvgSheet read(String svg) throws IOException, SAXException, ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setNamespaceAware(true);
        return new SvgSheet(factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement());
    }

    public Element root() {
        return root;
    }

    /** All elements of a name, within groups of a class; of every class if that is empty. */
    public List<Element> elements(String group, String name) {
        NodeList all = root.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            Element parent = (Element) element.getParentNode();
            if (group.isEmpty() || parent.getAttribute("class").equals(group)) {
                found.add(element);
            }
        }
        return found;
    }

    public List<Element> pieces(String layer) {
        return elements(layer, "polygon");
    }

    /** What a polygon or polyline takes up. */
    public static Rectangle2D bounds(Element piece) {
        Path2D path = new Path2D.Double();
        for (String point : piece.getAttribute("points").split(" ", -1)) {
            String[] xy = point.split(",", -1);
            double x = Double.parseDouble(xy[0]);
            double y = Double.parseDouble(xy[1]);
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        return path.getBounds2D();
    }

    public List<Line> lettering() {
        return elements("", "text").stream().map(SvgSheet::line).toList();
    }

    public List<String> words() {
        return lettering().stream().map(Line::text).toList();
    }

    /** Marks over other letters and signs that only steer the writing take no room. */
    private static long wideLetters(String words) {
        return words.codePoints()
                .map(Character::getType)
                .filter(type -> type != Character.NON_SPACING_MARK
                        && type != Character.ENCLOSING_MARK
                        && type != Character.FORMAT)
                .count();
    }

    private static Line line(Element text) {
        double size = number(text, "font-size");
        double x = number(text, "x");
        double y = number(text, "y");
        String words = text.getTextContent();
        double width = EMS_PER_LETTER * size * wideLetters(words);
        double left = switch (text.getAttribute("text-anchor")) {
            case "start" -> x;
            case "end" -> x - width;
            default -> x - width / 2;
        };
        Shape room = new Rectangle2D.Double(left, y - ABOVE_LINE * size, width, (ABOVE_LINE + BELOW_LINE) * size);
        String transform = text.getAttribute("transform");
        if (!transform.isEmpty()) {
            String[] rotate = transform.replace("rotate(", "").replace(")", "").split(" ", -1);
            room = AffineTransform.getRotateInstance(
                            Math.toRadians(Double.parseDouble(rotate[0])),
                            Double.parseDouble(rotate[1]),
                            Double.parseDouble(rotate[2]))
                    .createTransformedShape(room);
        }
        return new Line(words, size, room);
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** Every two lines of lettering that run into each other. */
    public List<String> clashes() {
        List<Line> lines = lettering();
        List<String> clashes = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (!lines.get(i).room().intersects(lines.get(j).room().getBounds2D())) {
                    continue;
                }
                Area common = new Area(lines.get(i).room());
                common.intersect(new Area(lines.get(j).room()));
                if (!common.isEmpty()) {
                    clashes.add(lines.get(j).text() + " | " + lines.get(i).text());
                }
            }
        }
        return clashes;
    }

    /** Also for what is no wider or higher than a line, which {@code contains} never has. */
    private static boolean isIn(Rectangle2D frame, Rectangle2D bounds) {
        return frame.contains(bounds.getMinX(), bounds.getMinY()) && frame.contains(bounds.getMaxX(), bounds.getMaxY());
    }

    /** Everything drawn or written that reaches out of the sheet's frame. */
    public List<String> outside(double width, double height) {
        Rectangle2D frame = new Rectangle2D.Double(9.99, 9.99, width - 19.98, height - 19.98);
        List<String> outside = new ArrayList<>();
        for (String name : List.of("polygon", "polyline")) {
            for (Element element : elements("", name)) {
                Rectangle2D bounds = bounds(element);
                if (!isIn(frame, bounds)) {
                    outside.add(((Element) element.getParentNode()).getAttribute("class") + " "
                            + element.getAttribute("points"));
                }
            }
        }
        for (Element circle : elements("", "circle")) {
            double radius = number(circle, "r");
            double left = number(circle, "cx") - radius;
            double top = number(circle, "cy") - radius;
            if (!isIn(frame, new Rectangle2D.Double(left, top, 2 * radius, 2 * radius))) {
                outside.add("circle at " + circle.getAttribute("cx") + "," + circle.getAttribute("cy"));
            }
        }
        for (Line line : lettering()) {
            if (!isIn(frame, line.room().getBounds2D())) {
                outside.add(line.text());
            }
        }
        return outside;
    }
}
