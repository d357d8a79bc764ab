package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.List;

/** Lines and writing on paper, and the room they take. */
final class Ink {

    final List<Trace> traces = new ArrayList<>();
    final List<Writing> writings = new ArrayList<>();
    private double left = Double.POSITIVE_INFINITY;
    private double top = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double bottom = Double.NEGATIVE_INFINITY;

    void add(Trace trace) {
        traces.add(trace);
        cover(trace);
    }

    /** Adds a line of writing, unless there is nothing on it. */
    void add(Writing writing) {
        if (writing.text().isEmpty()) {
            return;
        }
        writings.add(writing);
        Box box = writing.box();
        cover(box.x() - box.reach(1, 0), box.y() - box.reach(0, 1));
        cover(box.x() + box.reach(1, 0), box.y() + box.reach(0, 1));
    }

    /** Adds all lines and writing of another, moved. */
    void addAll(Ink other, double dx, double dy) {
        other.traces.forEach(trace -> add(trace.movedBy(dx, dy)));
        other.writings.forEach(writing -> add(writing.movedBy(dx, dy)));
    }

    /** Makes room for a line without keeping it. */
    void cover(Trace trace) {
        for (int i = 0; i < trace.xy.length; i += 2) {
            cover(trace.xy[i] - trace.radius, trace.xy[i + 1] - trace.radius);
            cover(trace.xy[i] + trace.radius, trace.xy[i + 1] + trace.radius);
        }
    }

    private void cover(double x, double y) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
    }

    /** Tells whether a writing would run into one that is there. */
    boolean isTaken(Box box) {
        return writings.stream().anyMatch(writing -> writing.box().overlaps(box));
    }

    boolean isEmpty() {
        return left > right;
    }

    double left() {
        return left;
    }

    double top() {
        return top;
    }

    double width() {
        return isEmpty() ? 0 : right - left;
    }

    double height() {
        return isEmpty() ? 0 : bottom - top;
    }
}
