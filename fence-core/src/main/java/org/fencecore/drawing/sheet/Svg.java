package org.fencecore.drawing.sheet;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Shape;

/**
 * Writes a drawing as SVG at true paper scale: printed at 100 %, a length on the sheet is the real length divided by
 * the scale.
 *
 * <p>Width and height are given in mm and the view box has the same numbers, so one user unit is one mm of paper,
 * whatever the size of a pixel. The scale is the largest of the {@link Paper}'s at which drawing and lettering fit
 * beside the title strip; nothing is clipped. A label that would run into another is moved, and if that does not help
 * left out; the sheet says how many were. Pieces are grouped by layer, the class of a group being the layer's name.
 *
 * <p>The text is a document of its own, without scripts, style sheets, links or fonts, with title and description for
 * those who cannot see it. Names may be in any script; line breaks become spaces, and characters that XML 1.0 does not
 * allow, halves of surrogate pairs and other control characters are written as U+FFFD. The same drawing gives the same
 * text to the byte.
 *
 * <p>No font is at hand when a drawing is written: how long a line of lettering will be is estimated on the safe side.
 *
 * <p>Sources: SVG 1.1 (Second Edition), sections 7.2 and 7.7 (the size of the sheet and the view box), 7.10 (units);
 * 1 in = 25.4 mm = 96 px, CSS 2.1, section 4.3.2; characters, XML 1.0 (Fifth Edition), section 2.2.
 *
 * <pre>{@code
 * String svg = Svg.write(PlanView.of(plan), Paper.LETTER);
 * }</pre>
 */
public final class Svg {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final double BASELINE = 0.36;
    private static final double MASK_MARGIN = 0.3;

    private final XMLStreamWriter xml;
    private final Sheet sheet;
    private final double cut;

    private Svg(XMLStreamWriter xml, Sheet sheet, double cut) {
        this.xml = xml;
        this.sheet = sheet;
        this.cut = cut;
    }

    /**
     * Writes a drawing on a sheet of paper.
     *
     * @param drawing the drawing
     * @param paper the paper
     * @return the text of an SVG file, to be saved as UTF-8
     * @throws IllegalArgumentException if the lettering alone is larger than the paper
     */
    public static String write(Drawing drawing, Paper paper) {
        return write(drawing, paper, 0);
    }

    /**
     * Writes a drawing as it stands on a sheet of paper, cut off a millimetre outside its frame, for a page that has margins
     * of its own.
     *
     * @param drawing the drawing
     * @param paper the paper
     * @return the text of an SVG file, to be saved as UTF-8
     * @throws IllegalArgumentException if the lettering alone is larger than the paper
     */
    public static String writeWithoutMargins(Drawing drawing, Paper paper) {
        return write(drawing, paper, Furniture.MARGIN - 1);
    }

    private static String write(Drawing drawing, Paper paper, double cut) {
        Objects.requireNonNull(drawing, "drawing");
        Sheet sheet = Sheet.of(drawing, paper);
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            new Svg(xml, sheet, cut).write();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("drawing '" + drawing.title() + "' could not be written as XML", e);
        }
        return text.append('\n').toString();
    }

    private void write() throws XMLStreamException {
        String width = number(sheet.paper.width().millimetres() - 2 * cut);
        String height = number(sheet.paper.height().millimetres() - 2 * cut);
        String corner = number(cut);
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeCharacters("\n");
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(NAMESPACE);
        xml.writeAttribute("version", "1.1");
        xml.writeAttribute("width", width + "mm");
        xml.writeAttribute("height", height + "mm");
        xml.writeAttribute("viewBox", corner + " " + corner + " " + width + " " + height);
        xml.writeAttribute("role", "img");
        xml.writeAttribute("font-family", "sans-serif");
        xml.writeAttribute("stroke-linejoin", "round");
        element("title", Words.clean(sheet.drawing.title()));
        element("desc", description());
        empty("rect", "x", corner, "y", corner, "width", width, "height", height, "fill", "#ffffff");
        for (Layer layer : Layer.values()) {
            if (layer == Layer.SWING) {
                masks();
            }
            drawingLayer(layer);
        }
        furniture();
        lettering("lettering", sheet.placing.ink.writings, sheet.zeroX, sheet.zeroY);
        lettering("sheet-lettering", sheet.furniture.ink.writings, 0, 0);
        xml.writeCharacters("\n");
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private String description() {
        Drawing drawing = sheet.drawing;
        String scale = drawing.shapes().isEmpty() ? "" : " Scale " + sheet.placing.scale + ".";
        return Words.clean(drawing.caution().map(caution -> caution + " ").orElse("") + drawing.description() + scale);
    }

    private void drawingLayer(Layer layer) throws XMLStreamException {
        boolean begun = false;
        for (Shape shape : sheet.drawing.shapes()) {
            if (shape.layer() == layer) {
                Optional<Trace> trace = sheet.placing.traceOf(shape);
                if (trace.isPresent()) {
                    begun = begin(begun, layer);
                    trace(trace.get(), sheet.zeroX, sheet.zeroY);
                }
            }
        }
        for (Trace trace : sheet.placing.ink.traces) {
            if (trace.layer == layer) {
                begun = begin(begun, layer);
                trace(trace, sheet.zeroX, sheet.zeroY);
            }
        }
        if (begun) {
            xml.writeEndElement();
        }
    }

    private boolean begin(boolean begun, Layer layer) throws XMLStreamException {
        if (!begun) {
            group(layer.toString(), Pen.of(layer));
        }
        return true;
    }

    /** The frame, key and scale bar, each with the pen of its layer but not among the drawing's own pieces. */
    private void furniture() throws XMLStreamException {
        for (Trace trace : sheet.furniture.ink.traces) {
            boolean hollow = trace.layer == Layer.DIMENSIONS;
            group("sheet-" + trace.layer, hollow ? Pen.line(Pen.of(trace.layer).colour(), 0.25) : Pen.of(trace.layer));
            trace(trace, 0, 0);
            xml.writeEndElement();
        }
    }

    private void group(String name, Pen pen) throws XMLStreamException {
        start("g", "class", name, "stroke", pen.colour(), "stroke-width", number(pen.width()), "fill", pen.fill());
        if (!pen.dashes().equals(Pen.SOLID)) {
            xml.writeAttribute("stroke-dasharray", pen.dashes());
        }
        if (pen.seeThrough()) {
            xml.writeAttribute("fill-opacity", "0.8");
        }
    }

    private void trace(Trace trace, double dx, double dy) throws XMLStreamException {
        if (trace.isCircle()) {
            empty("circle", "cx", number(trace.xy[0] + dx), "cy", number(trace.xy[1] + dy), "r", number(trace.radius));
        } else {
            StringBuilder points = new StringBuilder();
            for (int i = 0; i < trace.xy.length; i += 2) {
                points.append(i == 0 ? "" : " ")
                        .append(number(trace.xy[i] + dx))
                        .append(',')
                        .append(number(trace.xy[i + 1] + dy));
            }
            empty(trace.closed ? "polygon" : "polyline", "points", points.toString());
            if (!trace.closed) {
                xml.writeAttribute("fill", Pen.EMPTY);
            }
        }
        if (trace.open) {
            xml.writeAttribute("fill", "#ffffff");
        }
    }

    private void lettering(String name, List<Writing> writings, double dx, double dy) throws XMLStreamException {
        if (writings.isEmpty()) {
            return;
        }
        group(name, Pen.of(Layer.LETTERING));
        for (Writing writing : writings) {
            Writing moved = writing.movedBy(dx, dy);
            Lettering lettering = moved.lettering();
            start(
                    "text",
                    "text-anchor",
                    moved.anchor().name().toLowerCase(Locale.ROOT),
                    "font-size",
                    number(lettering.size().millimetres()));
            if (lettering.isBold()) {
                xml.writeAttribute("font-weight", "bold");
            }
            place(moved.box(), moved.anchorRight(), BASELINE * lettering.size().millimetres());
            xml.writeCharacters(moved.text());
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    /** Blots out the heavier lines under labels; finer ones, such as the swing of a gate, go over. */
    private void masks() throws XMLStreamException {
        if (sheet.placing.ink.writings.stream().noneMatch(Writing::masked)) {
            return;
        }
        start("g", "class", "masks", "fill", "#ffffff", "fill-opacity", "0.8");
        for (Writing writing : sheet.placing.ink.writings) {
            if (writing.masked()) {
                Box box = writing.box().movedBy(sheet.zeroX, sheet.zeroY);
                double halfWidth = box.halfWidth() + MASK_MARGIN;
                empty("rect", "width", number(2 * halfWidth), "height", number(2 * box.halfHeight()));
                place(box, -halfWidth, -box.halfHeight());
            }
        }
        xml.writeEndElement();
    }

    /** Puts an element at a distance from the middle of a box, and turns it with the box. */
    private void place(Box box, double right, double down) throws XMLStreamException {
        xml.writeAttribute("x", number(box.x() + right));
        xml.writeAttribute("y", number(box.y() + down));
        if (box.turn() != 0) {
            xml.writeAttribute(
                    "transform",
                    "rotate(" + number(StrictMath.toDegrees(box.turn())) + " " + number(box.x()) + " " + number(box.y())
                            + ")");
        }
    }

    private void element(String name, String content) throws XMLStreamException {
        start(name);
        xml.writeCharacters(content);
        xml.writeEndElement();
    }

    private void start(String name, String... attributes) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeStartElement(name);
        attributes(attributes);
    }

    private void empty(String name, String... attributes) throws XMLStreamException {
        xml.writeCharacters("\n");
        xml.writeEmptyElement(name);
        attributes(attributes);
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], attributes[i + 1]);
        }
    }

    /** Writes mm to the thousandth, which is finer than any printer. */
    private static String number(double millimetres) {
        return BigDecimal.valueOf(Math.round(millimetres * 1000), 3)
                .stripTrailingZeros()
                .toPlainString();
    }
}
