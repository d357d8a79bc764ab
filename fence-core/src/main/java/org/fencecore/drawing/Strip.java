package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;

/** An upright strip of a drawing, and what of a line or a piece is inside it. */
record Strip(Length left, Length right) {

    static Strip of(Interval across, Length beyond) {
        return new Strip(across.start().minus(beyond), across.end().plus(beyond));
    }

    /** The part of a line whose places go one way across; empty if none of it is inside. */
    List<Spot> along(List<Spot> spots) {
        List<Spot> inside = new ArrayList<>();
        for (int i = 0; i < spots.size(); i++) {
            if (i > 0) {
                crossings(spots.get(i - 1), spots.get(i)).forEach(inside::add);
            }
            if (holds(spots.get(i))) {
                inside.add(spots.get(i));
            }
        }
        return inside;
    }

    /** The part of a piece, along the edges of the strip where it is cut: each edge cuts the piece once (Sutherland and Hodgman). */
    List<Spot> around(List<Spot> corners) {
        return cut(cut(corners, left, true), right, false);
    }

    private static List<Spot> cut(List<Spot> corners, Length edge, boolean keepRight) {
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot from = corners.get((i + corners.size() - 1) % corners.size());
            Spot to = corners.get(i);
            boolean fromKept = isKept(from, edge, keepRight);
            boolean toKept = isKept(to, edge, keepRight);
            if (fromKept != toKept) {
                kept.add(crossing(from, to, edge));
            }
            if (toKept) {
                kept.add(to);
            }
        }
        return kept;
    }

    private static boolean isKept(Spot spot, Length edge, boolean keepRight) {
        int side = spot.across().compareTo(edge);
        return keepRight ? side >= 0 : side <= 0;
    }

    private boolean holds(Spot spot) {
        return spot.across().compareTo(left) >= 0 && spot.across().compareTo(right) <= 0;
    }

    /** Where a stretch of line crosses the edges, in the order of the way along it. */
    private List<Spot> crossings(Spot from, Spot to) {
        boolean rightward = from.across().compareTo(to.across()) < 0;
        List<Spot> crossings = new ArrayList<>();
        for (Length edge : rightward ? List.of(left, right) : List.of(right, left)) {
            int before = from.across().compareTo(edge);
            int after = to.across().compareTo(edge);
            if (before * after < 0) {
                crossings.add(crossing(from, to, edge));
            }
        }
        return crossings;
    }

    private static Spot crossing(Spot from, Spot to, Length edge) {
        Ratio part = edge.minus(from.across()).ratioTo(to.across().minus(from.across()));
        return Spot.of(edge, from.up().plus(to.up().minus(from.up()).times(part)));
    }
}
