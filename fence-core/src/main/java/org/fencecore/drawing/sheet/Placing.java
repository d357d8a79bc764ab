package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.drawing.Dimension;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Ladder;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Mark;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;

/**
 * A drawing at a scale: where its parts come on paper, in mm to the right and down from the drawing's zero, and which of
 * its words have room.
 */
final class Placing {

    /** How often a note that has no room is moved one line further. */
    private static final int MOST_MOVES = 3;

    /** Numbers stay near what they number. */
    private static final int MOST_MOVES_OF_NUMBERS = 1;

    /** The least space between two words on a line, in mm. */
    private static final double SPACE = 1;

    private static final double LINE = 1.3;
    private static final double LADDER_GAP = 4;
    private static final double HEADING_GAP = 2;
    private static final int CHORDS = 24;

    final Scale scale;
    final Ink ink = new Ink();
    private final List<Box> marks = new ArrayList<>();
    private int leftOut;

    private Placing(Scale scale) {
        this.scale = scale;
    }

    static Placing of(Drawing drawing, Scale scale) {
        Placing placing = new Placing(scale);
        for (Shape shape : drawing.shapes()) {
            placing.traceOf(shape).ifPresent(placing.ink::cover);
            if (shape instanceof Mark mark) {
                double half = Trace.HALF_SYMBOL;
                placing.marks.add(new Box(placing.x(mark.at()), placing.y(mark.at()), half, half, 0));
            }
        }
        drawing.shapes().stream()
                .filter(Ladder.class::isInstance)
                .map(Ladder.class::cast)
                .forEach(placing::place);
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Label label) {
                placing.place(label);
            } else if (shape instanceof Dimension dimension) {
                placing.place(dimension);
            }
        }
        return placing;
    }

    /** Takes up the room of a drawing's lines at true size, in mm. */
    static void cover(Drawing drawing, Ink ink) {
        Placing trueSize = new Placing(Scale.oneTo(1));
        drawing.shapes().forEach(shape -> trueSize.traceOf(shape).ifPresent(ink::cover));
    }

    /** How many labels and figures found no room. */
    int leftOut() {
        return leftOut;
    }

    private double x(Spot spot) {
        return scale.millimetres(spot.across());
    }

    private double y(Spot spot) {
        return -scale.millimetres(spot.up());
    }

    /** The line of a shape that has one; words, dimensions and tables are placed beforehand and have none. */
    Optional<Trace> traceOf(Shape shape) {
        if (shape instanceof Outline outline) {
            return Optional.of(Trace.piece(outline.layer(), flat(outline.corners())));
        }
        if (shape instanceof Line line) {
            return Optional.of(Trace.line(line.layer(), flat(line.spots())));
        }
        if (shape instanceof Mark mark) {
            return Optional.of(Trace.symbol(mark.layer(), mark.symbol(), x(mark.at()), y(mark.at())));
        }
        if (shape instanceof SwingArc arc) {
            return Optional.of(trace(arc));
        }
        return Optional.empty();
    }

    private double[] flat(List<Spot> spots) {
        double[] xy = new double[2 * spots.size()];
        for (int i = 0; i < spots.size(); i++) {
            xy[2 * i] = x(spots.get(i));
            xy[2 * i + 1] = y(spots.get(i));
        }
        return xy;
    }

    /** An arc as chords; those of a quarter turn are off the circle by a thousandth of its radius at most. */
    private Trace trace(SwingArc arc) {
        double hingeX = x(arc.hinge());
        double hingeY = y(arc.hinge());
        double startX = x(arc.start()) - hingeX;
        double startY = y(arc.start()) - hingeY;
        double[] xy = new double[2 * (CHORDS + 1)];
        for (int i = 0; i <= CHORDS; i++) {
            double turn = -arc.turn().radians() * i / CHORDS;
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            xy[2 * i] = hingeX + startX * cos - startY * sin;
            xy[2 * i + 1] = hingeY + startX * sin + startY * cos;
        }
        return Trace.line(arc.layer(), xy);
    }

    private void place(Label label) {
        double turn = upright(-label.turn().radians());
        Writing writing =
                Writing.centred(Words.oneLine(label.text()), label.lettering(), x(label.at()), y(label.at()), turn);
        if (label.toward().isEmpty()) {
            settle(writing, 0, 0);
            return;
        }
        double direction = -label.toward().get().radians();
        double dx = StrictMath.cos(direction);
        double dy = StrictMath.sin(direction);
        double away = label.gap().millimetres() + writing.box().reach(dx, dy);
        settle(writing.mask().movedBy(dx * away, dy * away), dx, dy);
    }

    /** Writes where there is room: at its place or up to a few lines further in a direction. */
    private void settle(Writing writing, double dx, double dy) {
        double step = LINE * writing.lettering().size().millimetres();
        int moves = writing.lettering() == Lettering.NUMBER ? MOST_MOVES_OF_NUMBERS : MOST_MOVES;
        for (int move = 0; move <= moves; move++) {
            Writing moved = writing.movedBy(dx * step * move, dy * step * move);
            Box room = moved.box().widened(SPACE);
            if (!ink.isTaken(room) && marks.stream().noneMatch(moved.box()::overlaps)) {
                ink.add(moved);
                return;
            }
        }
        leftOut++;
    }

    /** Brings a turn of writing, clockwise, between upright read from the right and just short of upside down. */
    private static double upright(double turn) {
        double half = Math.PI;
        double rest = turn - half * Math.floor(turn / half);
        return rest >= half / 2 - 1e-9 ? rest - half : rest;
    }

    private void place(Dimension dimension) {
        double fromX = x(dimension.from());
        double fromY = y(dimension.from());
        double alongX = x(dimension.to()) - fromX;
        double alongY = y(dimension.to()) - fromY;
        double length = StrictMath.hypot(alongX, alongY);
        double ux = alongX / length;
        double uy = alongY / length;
        double offset = dimension.offset().millimetres();
        double side = offset < 0 ? -1 : 1;
        // To the left of the way with y downward.
        double outX = side * uy;
        double outY = -side * ux;
        double away = Math.abs(offset);
        for (double at : new double[] {0, length}) {
            double footX = fromX + ux * at;
            double footY = fromY + uy * at;
            ink.add(Trace.line(
                    Layer.DIMENSIONS,
                    footX + outX * Math.min(1, away),
                    footY + outY * Math.min(1, away),
                    footX + outX * (away + 1.2),
                    footY + outY * (away + 1.2)));
            double tick = 0.9;
            double lineX = footX + outX * away;
            double lineY = footY + outY * away;
            double tx = (ux + outX) * tick * 0.7;
            double ty = (uy + outY) * tick * 0.7;
            ink.add(Trace.line(Layer.DIMENSIONS, lineX - tx, lineY - ty, lineX + tx, lineY + ty));
        }
        double startX = fromX + outX * away;
        double startY = fromY + outY * away;
        ink.add(Trace.line(Layer.DIMENSIONS, startX, startY, startX + alongX, startY + alongY));
        Writing writing = Writing.centred(
                Words.oneLine(dimension.text()),
                Lettering.NOTE,
                startX + alongX / 2,
                startY + alongY / 2,
                upright(StrictMath.atan2(uy, ux)));
        // A figure wider than what it measures stands clear of the strokes at its ends.
        boolean isNarrow = 2 * writing.box().halfWidth() > length;
        double clear = (isNarrow ? 1.6 : 0.6) + writing.box().halfHeight();
        settle(writing.movedBy(outX * clear, outY * clear), outX, outY);
    }

    private void place(Ladder ladder) {
        List<LadderRow> rows = ladder.rungs().stream()
                .filter(rung -> !rung.cells().isEmpty())
                .map(rung -> new LadderRow(rung, scale))
                .toList();
        if (rows.isEmpty()) {
            return;
        }
        double left = rows.stream().mapToDouble(LadderRow::left).min().orElseThrow() - HEADING_GAP;
        double right = rows.stream().mapToDouble(LadderRow::right).max().orElseThrow() + HEADING_GAP;
        double y = -scale.millimetres(ladder.top()) + LADDER_GAP;
        ink.add(Trace.line(Layer.DIMENSIONS, left, y, right, y));
        for (LadderRow row : rows) {
            double top = y;
            row.ticks().forEach(x -> ink.add(Trace.line(Layer.DIMENSIONS, x, top, x, top + row.tickHeight())));
            row.writings(top).forEach(ink::add);
            y += row.height();
            ink.add(Trace.line(Layer.DIMENSIONS, left, y, right, y));
            ink.add(Writing.upTo(row.heading(), Lettering.NOTE, left - 0.5, (top + y) / 2));
            leftOut += row.leftOut();
        }
    }
}
