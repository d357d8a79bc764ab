package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.fencecore.drawing.Ladder;

/** One row of a ladder: each figure level on one of two lines, or all upright. */
final class LadderRow {

    private static final double APART = 2.5;

    private final Ladder.Rung rung;
    private final List<Writing> level = new ArrayList<>();
    private final List<Double> ticks = new ArrayList<>();
    private final double line;
    private int lines = 1;
    private boolean standing;
    private int leftOut;

    LadderRow(Ladder.Rung rung, Scale scale) {
        this.rung = rung;
        this.line = 1.5 * rung.lettering().size().millimetres();
        List<Ladder.Cell> cells = rung.cells().stream()
                .sorted(Comparator.comparing(cell -> cell.across().middle()))
                .toList();
        double[] filled = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Ladder.Cell cell : cells) {
            double start = scale.millimetres(cell.across().start());
            double end = scale.millimetres(cell.across().end());
            if (end > start) {
                addTick(start);
                addTick(end);
            }
            Writing writing = Writing.centred(Words.oneLine(cell.text()), rung.lettering(), (start + end) / 2, 0, 0);
            double half = writing.box().halfWidth();
            boolean fitsTicks = end == start || 2 * half + 0.5 <= end - start;
            int on = fitsTicks && writing.box().x() - half >= filled[0] + APART ? 0 : 1;
            if (writing.box().x() - half < filled[on] + APART) {
                standing = true;
            }
            filled[on] = writing.box().x() + half;
            lines = Math.max(lines, on + 1);
            level.add(writing.movedBy(0, line * (on + 0.5)));
        }
    }

    private void addTick(double x) {
        if (ticks.isEmpty() || ticks.get(ticks.size() - 1) < x) {
            ticks.add(x);
        }
    }

    String heading() {
        return Words.oneLine(rung.heading());
    }

    /** Where the stretches end; none where they lie too close for figures between them. */
    List<Double> ticks() {
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < ticks.size(); i++) {
            closest = Math.min(closest, ticks.get(i) - ticks.get(i - 1));
        }
        return closest < rung.lettering().size().millimetres() ? List.of() : ticks;
    }

    double tickHeight() {
        return standing ? height() : line;
    }

    double height() {
        double longest =
                2 * level.stream().mapToDouble(w -> w.box().halfWidth()).max().orElse(0);
        return standing ? longest + 1.5 : lines * line;
    }

    double left() {
        return level.stream().mapToDouble(w -> w.box().x() - reach(w)).min().orElse(0);
    }

    double right() {
        return level.stream().mapToDouble(w -> w.box().x() + reach(w)).max().orElse(0);
    }

    private double reach(Writing writing) {
        return standing ? writing.box().halfHeight() : writing.box().halfWidth();
    }

    Stream<Writing> writings(double top) {
        if (!standing) {
            return level.stream().map(writing -> writing.movedBy(0, top));
        }
        double middle = top + height() / 2;
        List<Writing> upright = new ArrayList<>();
        double filled = Double.NEGATIVE_INFINITY;
        for (Writing writing : level) {
            Box box = writing.box();
            if (box.x() - box.halfHeight() < filled) {
                leftOut++;
                continue;
            }
            filled = box.x() + box.halfHeight();
            upright.add(Writing.centred(writing.text(), writing.lettering(), box.x(), middle, -Math.PI / 2));
        }
        return upright.stream();
    }

    int leftOut() {
        return leftOut;
    }
}
