package org.fencecore.drawing.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;
import org.fencecore.units.Length;

/**
 * Writes a drawing as DXF in the size of the real thing, for a surveyor's or a shop's own program.
 *
 * <p>The drawing's zero is the file's zero and one unit is one inch, or one millimetre on metric paper; {@code $INSUNITS}
 * in the header says which. Each {@link Layer} is a layer of the file under its own name in capitals, with its colour and
 * its dashes. Lettering and symbols are as large as they come out at the scale at which {@link Svg} would put the drawing
 * on that paper, and stand where they stand there. Title, caution and notes are below the drawing on the layer of the
 * lettering. The same drawing gives the same text to the byte.
 *
 * <p>The file is of release 12 (AC1009), which every reader knows: lines, polylines with vertices of their own, circles,
 * arcs and text, no fillings. Its text is ASCII: a degree is written {@code %%d} and any other letter {@code \U+} and
 * four hexadecimal digits; letters beyond the first 65,536 and control characters become U+FFFD.
 *
 * <p>Sources: group codes and sections, AutoCAD DXF Reference (release 12 and later), from memory; unit codes of {@code
 * $INSUNITS} (1 inch, 4 millimetre), the same reference, table of header variables. Capitals are taken as 0.72 of the
 * size of a line and as four fifths as wide as high (from memory).
 *
 * <pre>{@code
 * Files.writeString(file, Dxf.write(PlanView.of(plan), Paper.LETTER), StandardCharsets.US_ASCII);
 * }</pre>
 */
public final class Dxf {

    private static final double CAPITALS = 0.72;
    private static final double TEXT_WIDTH = 0.8;
    private static final double NOTES_WIDTH = 150;
    private static final double LEADING = 1.5;
    private static final double MILLIMETRES_PER_INCH = 25.4;
    private static final int INCHES = 1;
    private static final int MILLIMETRES = 4;
    private static final String CONTINUOUS = "CONTINUOUS";

    private final Drawing drawing;
    private final Paper paper;
    private final Sheet sheet;
    private final StringBuilder dxf = new StringBuilder();

    private Dxf(Drawing drawing, Paper paper) {
        this.drawing = drawing;
        this.paper = paper;
        this.sheet = Sheet.of(drawing, paper);
    }

    /**
     * Writes a drawing.
     *
     * @param drawing the drawing
     * @param paper the paper that decides the unit and how large the lettering is
     * @return the text of a DXF file, ASCII alone
     * @throws IllegalArgumentException if the lettering alone is larger than the paper
     */
    public static String write(Drawing drawing, Paper paper) {
        Objects.requireNonNull(paper, "paper");
        return new Dxf(Objects.requireNonNull(drawing, "drawing"), paper).write();
    }

    private String write() {
        header();
        tables();
        group(0, "SECTION");
        group(2, "ENTITIES");
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof SwingArc arc) {
                arc(arc);
            } else if (shape instanceof Outline outline) {
                polyline(outline.layer(), flat(outline.corners()), true);
            } else if (shape instanceof Line line) {
                polyline(line.layer(), flat(line.spots()), false);
            } else {
                sheet.placing.traceOf(shape).ifPresent(this::trace);
            }
        }
        sheet.placing.ink.traces.forEach(this::trace);
        sheet.placing.ink.writings.forEach(this::text);
        words();
        group(0, "ENDSEC");
        group(0, "EOF");
        return dxf.toString();
    }

    private void header() {
        group(0, "SECTION");
        group(2, "HEADER");
        group(9, "$ACADVER");
        group(1, "AC1009");
        group(9, "$INSUNITS");
        group(70, Integer.toString(paper.isMetric() ? MILLIMETRES : INCHES));
        Ink ink = sheet.placing.ink;
        group(9, "$EXTMIN");
        point(10, ink.isEmpty() ? 0 : onDrawing(ink.left()), ink.isEmpty() ? 0 : -onDrawing(ink.top() + ink.height()));
        group(9, "$EXTMAX");
        point(10, ink.isEmpty() ? 0 : onDrawing(ink.left() + ink.width()), ink.isEmpty() ? 0 : -onDrawing(ink.top()));
        group(0, "ENDSEC");
    }

    private void tables() {
        group(0, "SECTION");
        group(2, "TABLES");
        List<Layer> dashed = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            if (!Pen.of(layer).dashes().equals(Pen.SOLID)) {
                dashed.add(layer);
            }
        }
        table("LTYPE", 1 + dashed.size());
        lineType(CONTINUOUS, "Solid line", List.of());
        for (Layer layer : dashed) {
            List<Double> dashes = new ArrayList<>();
            for (String dash : Pen.of(layer).dashes().split(" ", -1)) {
                // A gap is a negative length.
                double sign = dashes.size() % 2 == 0 ? 1 : -1;
                dashes.add(sign * onDrawing(Double.parseDouble(dash)));
            }
            lineType(name(layer), layer.toString(), dashes);
        }
        group(0, "ENDTAB");
        table("LAYER", 1 + Layer.values().length);
        layer("0", 7, CONTINUOUS);
        for (Layer layer : Layer.values()) {
            layer(name(layer), colour(layer), dashed.contains(layer) ? name(layer) : CONTINUOUS);
        }
        group(0, "ENDTAB");
        table("STYLE", 1);
        group(0, "STYLE");
        group(2, "STANDARD");
        group(70, "0");
        group(40, "0");
        group(41, number(TEXT_WIDTH));
        group(50, "0");
        group(71, "0");
        group(42, number(onDrawing(CAPITALS * Lettering.NOTE.size().millimetres())));
        group(3, "txt");
        group(4, "");
        group(0, "ENDTAB");
        group(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        group(0, "TABLE");
        group(2, name);
        group(70, Integer.toString(entries));
    }

    private void lineType(String name, String text, List<Double> dashes) {
        group(0, "LTYPE");
        group(2, name);
        group(70, "0");
        group(3, text);
        group(72, "65");
        group(73, Integer.toString(dashes.size()));
        group(40, number(dashes.stream().mapToDouble(Math::abs).sum()));
        dashes.forEach(dash -> group(49, number(dash)));
    }

    private void layer(String name, int colour, String lineType) {
        group(0, "LAYER");
        group(2, name);
        group(70, "0");
        group(62, Integer.toString(colour));
        group(6, lineType);
    }

    private static String name(Layer layer) {
        return layer.toString().toUpperCase(Locale.ROOT);
    }

    /** The number of the colour nearest to that of the pen: 1 red, 3 green, 5 blue, 7 black or white, 8 grey, 30 to 49 brown. */
    private static int colour(Layer layer) {
        return switch (layer) {
            case GRAVEL, CONCRETE, DIMENSIONS -> 8;
            case FROST, SWING -> 5;
            case ZONES -> 3;
            case INSIDE_BOARDS, OUTSIDE_BOARDS, COVER_BOARDS, KICK_BOARDS -> 43;
            case RAILS, RAIL_JOINTS, GROUND, OBSTACLES -> 35;
            case STRINGS, BATTER_BOARDS -> 1;
            case POSTS, GATE_FRAME, GATE_BRACE, HINGES, BOUNDARY, POST_MARKS, MATCH_LINES, LETTERING -> 7;
        };
    }

    /** How long something of a size on paper is in the drawing. */
    private double onDrawing(double millimetresOnPaper) {
        double real = millimetresOnPaper * sheet.placing.scale.denominator();
        return paper.isMetric() ? real : real / MILLIMETRES_PER_INCH;
    }

    private double real(Length length) {
        return paper.isMetric() ? length.millimetres() : length.inches();
    }

    private double[] flat(List<Spot> spots) {
        double[] xy = new double[2 * spots.size()];
        for (int i = 0; i < spots.size(); i++) {
            xy[2 * i] = real(spots.get(i).across());
            xy[2 * i + 1] = real(spots.get(i).up());
        }
        return xy;
    }

    private void trace(Trace trace) {
        double[] xy = new double[trace.xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = onDrawing(trace.xy[i]);
            xy[i + 1] = -onDrawing(trace.xy[i + 1]);
        }
        if (trace.isCircle()) {
            entity("CIRCLE", trace.layer);
            point(10, xy[0], xy[1]);
            group(40, number(onDrawing(trace.radius)));
        } else {
            polyline(trace.layer, xy, trace.closed);
        }
    }

    private void polyline(Layer layer, double[] xy, boolean closed) {
        if (xy.length == 4 && !closed) {
            entity("LINE", layer);
            point(10, xy[0], xy[1]);
            point(11, xy[2], xy[3]);
            return;
        }
        entity("POLYLINE", layer);
        group(66, "1");
        point(10, 0, 0);
        group(70, closed ? "1" : "0");
        for (int i = 0; i < xy.length; i += 2) {
            entity("VERTEX", layer);
            point(10, xy[i], xy[i + 1]);
        }
        entity("SEQEND", layer);
    }

    private void arc(SwingArc arc) {
        double x = real(arc.hinge().across());
        double y = real(arc.hinge().up());
        double dx = real(arc.start().across()) - x;
        double dy = real(arc.start().up()) - y;
        double start = StrictMath.toDegrees(StrictMath.atan2(dy, dx));
        double end = start + arc.turn().degrees();
        entity("ARC", arc.layer());
        point(10, x, y);
        group(40, number(StrictMath.hypot(dx, dy)));
        group(50, number(within360(Math.min(start, end))));
        group(51, number(within360(Math.max(start, end))));
    }

    private static double within360(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }

    private void text(Writing writing) {
        Box box = writing.box();
        double right = writing.anchorRight();
        text(
                writing,
                onDrawing(box.x() + right * StrictMath.cos(box.turn())),
                -onDrawing(box.y() + right * StrictMath.sin(box.turn())));
    }

    private void text(Writing writing, double x, double y) {
        entity("TEXT", Layer.LETTERING);
        point(10, x, y);
        group(40, number(onDrawing(CAPITALS * writing.lettering().size().millimetres())));
        group(1, encoded(writing.text()));
        group(50, number(within360(-StrictMath.toDegrees(writing.box().turn()))));
        group(41, number(TEXT_WIDTH));
        group(
                72,
                switch (writing.anchor()) {
                    case START -> "0";
                    case MIDDLE -> "1";
                    case END -> "2";
                });
        point(11, x, y);
        // Half way up the capitals.
        group(73, "2");
    }

    /** Title, caution and notes, line by line under everything else. */
    private void words() {
        Ink ink = sheet.placing.ink;
        double x = ink.isEmpty() ? 0 : ink.left();
        double y = (ink.isEmpty() ? 0 : ink.top() + ink.height())
                + LEADING * Lettering.TITLE.size().millimetres();
        y = lines(drawing.title(), Lettering.TITLE, x, y);
        y = lines(drawing.caution().orElse(""), Lettering.NUMBER, x, y);
        y = lines(drawing.description(), Lettering.NOTE, x, y);
        for (String note : drawing.notes()) {
            y = lines(note, Lettering.NOTE, x, y);
        }
    }

    private double lines(String words, Lettering lettering, double x, double top) {
        double y = top;
        for (String line : Words.wrap(words, lettering, NOTES_WIDTH)) {
            if (!line.isEmpty()) {
                double half = LEADING * lettering.size().millimetres() / 2;
                text(Writing.from(line, lettering, x, y + half));
                y += 2 * half;
            }
        }
        return y;
    }

    private static String encoded(String clean) {
        StringBuilder ascii = new StringBuilder();
        clean.codePoints().forEach(letter -> {
            // A lone percent is itself; two begin a code.
            boolean afterPercent = ascii.length() > 0 && ascii.charAt(ascii.length() - 1) == '%';
            if (letter == '°' && !afterPercent) {
                ascii.append("%%d");
            } else if (letter == '%' && !afterPercent) {
                ascii.append('%');
            } else if (letter == 0xA0) {
                ascii.append(' ');
            } else if (letter < 0x7f && letter != '\\' && letter != '%') {
                ascii.appendCodePoint(letter);
            } else {
                ascii.append(String.format(Locale.ROOT, "\\U+%04X", letter > 0xFFFF ? 0xFFFD : letter));
            }
        });
        return ascii.toString();
    }

    private void entity(String type, Layer layer) {
        group(0, type);
        group(8, name(layer));
    }

    private void point(int code, double x, double y) {
        group(code, number(x));
        group(code + 10, number(y));
        group(code + 20, "0");
    }

    private void group(int code, String value) {
        dxf.append(code).append('\n').append(value).append('\n');
    }

    /** Millionths of an inch or a millimetre: finer than anything is built. */
    private static String number(double value) {
        return BigDecimal.valueOf(Math.round(value * 1e6), 6)
                .stripTrailingZeros()
                .toPlainString();
    }
}
