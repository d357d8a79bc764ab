package org.fencecore.gate;

import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/**
 * One stile or rail of a gate's frame: its size, and its place on the leaf seen from outside.
 *
 * <p>Places are measured across from the left edge of the leaf and up from the bottom of the frame.
 *
 * <p>Example: in a leaf 46 3/4 in wide, of 3 1/2 in lumber, the bottom rail lies from 3 1/2 to 43 1/4 in across and
 * from 0 to 3 1/2 in up, and is cut 39 3/4 in long.
 */
public final class FramePiece {

    private final FrameMember member;
    private final Interval across;
    private final Interval up;
    private final Length thickness;

    FramePiece(FrameMember member, Interval across, Interval up, Length thickness) {
        this.member = member;
        this.across = across;
        this.up = up;
        this.thickness = thickness;
    }

    /**
     * Returns the part it plays.
     *
     * @return the member
     */
    public FrameMember member() {
        return member;
    }

    /**
     * Returns what it takes up from side to side.
     *
     * @return the stretch from the left edge of the leaf
     */
    public Interval across() {
        return across;
    }

    /**
     * Returns what it takes up from bottom to top.
     *
     * @return the stretch from the bottom of the frame
     */
    public Interval up() {
        return up;
    }

    /**
     * Returns how long it is cut: a stile the height of the frame, a rail the space between the stiles.
     *
     * @return the finished length
     */
    public Length length() {
        return member.isStile() ? up.length() : across.length();
    }

    /**
     * Returns how wide it is, seen from outside.
     *
     * @return the width of the lumber
     */
    public Length width() {
        return member.isStile() ? across.length() : up.length();
    }

    /**
     * Returns how thick it is, from front to back.
     *
     * @return the thickness of the lumber
     */
    public Length thickness() {
        return thickness;
    }

    /**
     * Returns how far off square both ends are cut, as a mitre saw reads it: not at all, because rails butt against
     * stiles.
     *
     * @return zero
     */
    public Angle endCut() {
        return Angle.ZERO;
    }

    @Override
    public String toString() {
        return member + " " + Written.tape(length());
    }
}
