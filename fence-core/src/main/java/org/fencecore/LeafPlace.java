package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.slope.BayTop;
import org.fencecore.units.Length;

/**
 * Where a leaf is in its run, and so where the tops of its boards are cut.
 *
 * @param leftEdge the station of its left edge seen from outside
 * @param runsRight whether the run goes to the right, seen from outside
 * @param top the tops of the boards over the whole opening
 */
record LeafPlace(Length leftEdge, boolean runsRight, BayTop top) {

    /** What is between two distances from the left edge. */
    Interval stations(Interval across) {
        return runsRight
                ? Interval.of(leftEdge.plus(across.start()), leftEdge.plus(across.end()))
                : Interval.of(leftEdge.minus(across.end()), leftEdge.minus(across.start()));
    }

    private Interval stations(BoardPlacement board) {
        return stations(Interval.of(board.left(), board.right()));
    }

    Length boardLength(BoardPlacement board) {
        return top.boardLength(stations(board));
    }

    /** The corners from the lower left one along the bottom and round, by distance from the left edge of the leaf. */
    List<ProfilePoint> outline(BoardPlacement board) {
        List<ProfilePoint> onRun = top.outline(stations(board));
        List<ProfilePoint> corners = new ArrayList<>();
        for (int i = 0; i < onRun.size(); i++) {
            // Seen the other way round, the corners go round the other way: first the two of the bottom, then the
            // top's.
            ProfilePoint corner = onRun.get(runsRight ? i : (onRun.size() + 1 - i) % onRun.size());
            Length across = corner.station().minus(leftEdge);
            corners.add(new ProfilePoint(runsRight ? across : across.negated(), corner.elevation()));
        }
        return List.copyOf(corners);
    }

    /** Its face over its width. */
    Length meanLength(BoardPlacement board) {
        List<ProfilePoint> corners = outline(board);
        double twice = 0;
        Length base = corners.get(0).elevation();
        for (int i = 0; i < corners.size(); i++) {
            ProfilePoint a = corners.get(i);
            ProfilePoint b = corners.get((i + 1) % corners.size());
            twice += a.station().metres() * b.elevation().minus(base).metres()
                    - b.station().metres() * a.elevation().minus(base).metres();
        }
        return Length.ofMetres(Math.abs(twice) / 2 / board.width().metres());
    }
}
