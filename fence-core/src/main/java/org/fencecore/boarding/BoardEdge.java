package org.fencecore.boarding;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * The line that an end of a board is cut along, from its left edge to its right one.
 *
 * @param corners where it bends, both edges among them
 * @param isMarked whether it is marked in place and not cut to an angle
 */
record BoardEdge(List<ProfilePoint> corners, boolean isMarked) {

    BoardEdge {
        corners = List.copyOf(corners);
    }

    static BoardEdge straight(Interval board, Length atLeft, Length atRight) {
        return new BoardEdge(
                List.of(new ProfilePoint(board.start(), atLeft), new ProfilePoint(board.end(), atRight)), false);
    }

    private ProfilePoint first() {
        return corners.get(0);
    }

    private ProfilePoint last() {
        return corners.get(corners.size() - 1);
    }

    Length left() {
        return first().elevation();
    }

    Length right() {
        return last().elevation();
    }

    Length highest() {
        return corners.stream().map(ProfilePoint::elevation).reduce(left(), Length::max);
    }

    Length lowest() {
        return corners.stream().map(ProfilePoint::elevation).reduce(left(), Length::min);
    }

    boolean isSquare() {
        return !isMarked && left().equals(right());
    }

    Angle cut() {
        return Angle.ofTangent(right().minus(left()), last().station().minus(first().station()));
    }

    String words(String marked) {
        return isMarked ? marked : isSquare() ? "square" : Written.saw(cut());
    }

    /** The corners of the part of it over a strip. */
    List<ProfilePoint> within(Interval strip) {
        return Profile.of(corners).between(strip.start(), strip.end()).points();
    }

    /** The edge with both of its ends cut off at 45 degrees; along a slope each begins where it has come its size in. */
    BoardEdge withDogEars(Length size) {
        if (size.isZero()) {
            return this;
        }
        Interval kept =
                Interval.of(first().station().plus(size), last().station().minus(size));
        List<ProfilePoint> cut = new ArrayList<>();
        cut.add(new ProfilePoint(first().station(), left().minus(size)));
        cut.addAll(within(kept));
        cut.add(new ProfilePoint(last().station(), right().minus(size)));
        return new BoardEdge(cut, isMarked);
    }
}
