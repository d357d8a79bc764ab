package org.fencecore.gate;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;

/**
 * One stile or rail of a gate's frame: its size, the cuts at its ends, and its place on the leaf seen from outside.
 *
 * <p>Places are measured across from the left edge of the leaf and up from the lower left corner of the frame. Half-laps
 * are not taken out of the outline, but out of the {@link #volume}.
 *
 * <p>Example: in a level leaf 46 3/4 in wide, of 3 1/2 in lumber with the rails between the stiles, the bottom rail lies
 * from 3 1/2 to 43 1/4 in across and from 0 to 3 1/2 in up, and is cut 39 3/4 in long. With mitred corners it is 46 3/4
 * in long from point to point and 39 3/4 in along its inner edge, cut 45 degrees off square.
 */
public final class FramePiece {

    private final FrameMember member;
    private final FrameJoint joint;
    private final List<ProfilePoint> outline;
    private final Length width;
    private final Length thickness;
    private final int laps;

    /** Takes the outline from the lower left corner along the lower edge and round. */
    FramePiece(
            FrameMember member,
            FrameJoint joint,
            List<ProfilePoint> outline,
            Length width,
            Length thickness,
            int laps) {
        this.member = member;
        this.joint = joint;
        this.outline = List.copyOf(outline);
        this.width = width;
        this.thickness = thickness;
        this.laps = laps;
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
     * Returns how its ends meet the other pieces; a middle rail that butts does so whatever the corners are.
     *
     * @return the joint at both ends
     */
    public FrameJoint joint() {
        return joint;
    }

    /**
     * Returns its four corners on the leaf, from the lower left one along the lower edge and round.
     *
     * @return the corners by distance from the left edge and height over the lower left corner of the frame
     */
    public List<ProfilePoint> outline() {
        return outline;
    }

    /**
     * Returns what it takes up from side to side.
     *
     * @return the stretch from the left edge of the leaf
     */
    public Interval across() {
        return Outlines.across(outline);
    }

    /**
     * Returns what it takes up from bottom to top.
     *
     * @return the stretch over the lower left corner of the frame
     */
    public Interval up() {
        return Outlines.up(outline);
    }

    /**
     * Returns how long it is cut, over all: from long point to long point where the ends are not square.
     *
     * @return the finished length, to the nearest nanometre
     */
    public Length length() {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (ProfilePoint point : outline) {
            double along = axisX() * Outlines.x(point) + axisY() * Outlines.y(point);
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        return Outlines.nearest(most - least);
    }

    /**
     * Returns how long its shorter edge is: with the ends cut alike both are, with mitres it is the inner one.
     *
     * @return the length of the edge, to the nearest nanometre
     */
    public Length shortEdge() {
        // Stiles have their edges left and right, rails below and above.
        int turn = member.isStile() ? 1 : 0;
        return Length.min(edge(turn, turn + 1), edge(turn + 2, (turn + 3) % 4));
    }

    private Length edge(int from, int to) {
        return Outlines.distance(outline.get(from), outline.get(to));
    }

    /**
     * Returns how wide it is, seen from outside.
     *
     * @return the width of the lumber
     */
    public Length width() {
        return width;
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
     * Returns how far off square its first end is cut, as a mitre saw reads it: the bottom of a stile, the left end of a
     * rail.
     *
     * @return the angle, zero for a square end
     */
    public Angle firstCut() {
        return member.isStile() ? offSquare(0, 1) : offSquare(0, 3);
    }

    /**
     * Returns how far off square its other end is cut: the top of a stile, the right end of a rail.
     *
     * @return the angle, zero for a square end
     */
    public Angle otherCut() {
        return member.isStile() ? offSquare(3, 2) : offSquare(1, 2);
    }

    private Angle offSquare(int from, int to) {
        double dx = Outlines.x(outline.get(to)) - Outlines.x(outline.get(from));
        double dy = Outlines.y(outline.get(to)) - Outlines.y(outline.get(from));
        double along = Math.abs(dx * axisX() + dy * axisY());
        double square = Math.abs(dx * axisY() - dy * axisX());
        return Angle.ofRadians(Math.atan2(along, square));
    }

    /**
     * Returns how many half-laps are cut into it: half its thickness deep and as wide as the other piece.
     *
     * @return one at each crossing of a half-lapped frame, else none
     */
    public int laps() {
        return laps;
    }

    /**
     * Returns how much wood is in it, its laps taken out.
     *
     * @return the volume of the finished piece
     */
    public Volume volume() {
        Volume whole = Outlines.area(outline).times(thickness);
        if (laps == 0) {
            return whole;
        }
        // All crossings are of two pieces of one width, and so is the area of a lap: width over the cosine of the rake.
        Ratio upright = Ratio.of(1 / Math.sin(crossing()));
        Volume lap = width.times(width.times(upright)).times(thickness).dividedBy(2);
        return whole.minus(lap.times(laps));
    }

    /** The angle at which stiles and rails cross. */
    private double crossing() {
        ProfilePoint a = outline.get(0);
        ProfilePoint b = outline.get(1);
        return Math.PI / 2 - Math.abs(Math.atan2(Outlines.y(b) - Outlines.y(a), Outlines.x(b) - Outlines.x(a)));
    }

    /**
     * Returns its centre of gravity on the leaf.
     *
     * @return the place by distance from the left edge and height over the lower left corner of the frame
     */
    public ProfilePoint centre() {
        return Outlines.centre(outline);
    }

    private double axisX() {
        return member.isStile() ? 0 : along(Outlines.x(outline.get(1)) - Outlines.x(outline.get(0)));
    }

    private double axisY() {
        return member.isStile() ? 1 : along(Outlines.y(outline.get(1)) - Outlines.y(outline.get(0)));
    }

    private double along(double part) {
        return part
                / Math.hypot(
                        Outlines.x(outline.get(1)) - Outlines.x(outline.get(0)),
                        Outlines.y(outline.get(1)) - Outlines.y(outline.get(0)));
    }

    @Override
    public String toString() {
        return member + " " + Written.tape(length());
    }
}
