package org.fencecore.gate;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * A brace across a clear space of the frame: a wood one rising from the hinge side to the latch side, so that the weight
 * of the leaf pushes it down against the hinge stile and does not pull at its joints, or a cable falling from the hinge
 * side to the latch side, which the weight keeps tight.
 *
 * <p>With the clear space W wide and H high, its rails rising at the angle t (zero in a level leaf) from the foot of the
 * brace to its head, and the brace b wide, its corners are {@code D = sqrt(W^2 + (H + W tan t)^2)} apart, on a line that
 * rises at {@code d = atan((H + W tan t) / W)}. The ends of a wood brace decide the rest:
 *
 * <pre>
 *                           pointed                        cut along rails          cut along stiles
 * rise r                    d                              d + asin(b / D)          d - asin(b / D)
 * cut along the rail        90 deg - (r - t), off square   the same                 none
 * cut along the stile       r, off square                  none                     the same
 * bearing on the rail       b / (2 sin(r - t))             b / sin(r - t)           none
 * bearing on the stile      b / (2 cos r)                  none                     b / cos r
 * length of each edge       D - b/2 (cot(r - t) + tan r)   H cos t / sin(r - t)     W / cos r
 * over all, point to point  D                              edge + b cot(r - t)      edge + b tan r
 * fits the space            if the edge is over zero       if b is W at most        if b is H cos t at most
 * </pre>
 *
 * <p>In a raked leaf a cut may lean the other way, r - t over 90 degrees or r under zero; over all the brace then grows by
 * b times the cotangent or tangent, taken positive.
 *
 * <p>Pointed, it has two cuts at each end that meet at the centreline in a square point in a level frame and fit the
 * corner. With one cut, its upper edge ends in the corner at the foot and its lower edge in the one at the head when cut
 * along the rails, the other way round when cut along the stiles. Unless it rises at 45 degrees, one cut of a pointed
 * brace is over 45 degrees off square: many mitre saws do not swing so far, and the cut is marked and sawn by hand.
 *
 * <p>Left out: how the ends are fastened. A point in the corner tends to push the joints of the frame apart; better work
 * notches the ends into the rails clear of the corner. A cable is measured from corner to corner of the clear space;
 * eyes and turnbuckle come off that.
 *
 * <p>Sources: the lengths, angles and cuts are geometry. That a brace rises from the hung side: Building Construction
 * (chestofbooks.com, Building-Construction-5), Doors. Points against notches: Manual of Purpose-Made Woodworking
 * Joinery, p. 85. The reach of mitre saws, and cables: common practice, no source.
 *
 * <p>Example: a pointed brace 3 1/2 in wide in a clear space of 40 by 30 in is 50 in from point to point, rises at 36.87
 * degrees, is cut 53.13 degrees off square against the rails and 36.87 degrees against the stiles, and its edges are
 * 46.354 in long. With one cut along the rails it rises at 40.88 degrees, and each edge is 45.834 in long.
 */
public final class GateBrace {

    private final BraceKind kind;
    private final BraceEnds ends;
    private final FrameCorner foot;
    private final FrameCorner head;
    private final ProfilePoint footPoint;
    private final ProfilePoint headPoint;
    private final Length clearHeight;
    private final Slope rake;
    private final Length width;
    private final Length thickness;

    /** Takes the corners of the clear space it runs between, and how its rails rise from the foot to the head. */
    GateBrace(
            BraceKind kind,
            BraceEnds ends,
            FrameCorner foot,
            FrameCorner head,
            ProfilePoint footPoint,
            ProfilePoint headPoint,
            Length clearHeight,
            Slope rake,
            Length width,
            Length thickness) {
        this.kind = kind;
        this.ends = ends;
        this.foot = foot;
        this.head = head;
        this.footPoint = footPoint;
        this.headPoint = headPoint;
        this.clearHeight = clearHeight;
        this.rake = rake;
        this.width = width;
        this.thickness = thickness;
    }

    /** Tells whether it lies wholly inside the clear space. */
    boolean fits() {
        return kind == BraceKind.CABLE || width.compareTo(widest()) < (ends == BraceEnds.POINTS ? 0 : 1);
    }

    /** Returns the width at which it no longer lies inside the clear space, or is just about to. */
    Length widest() {
        return switch (ends) {
            case POINTS -> Outlines.nearest(2 * corners() / (1 / Math.tan(diagonal() - tilt()) + Math.tan(diagonal())));
            case RAIL_CUTS -> clearWidth();
            case STILE_CUTS -> Outlines.nearest(clearHeight.nanometres() * Math.cos(tilt()));
        };
    }

    private boolean isPointed() {
        return kind == BraceKind.CABLE || ends == BraceEnds.POINTS;
    }

    /** D, from corner to corner. */
    private double corners() {
        return Math.hypot(run(), risen());
    }

    private double run() {
        return Math.abs(Outlines.x(headPoint) - Outlines.x(footPoint));
    }

    private double risen() {
        return Outlines.y(headPoint) - Outlines.y(footPoint);
    }

    /** d, the rise of the line between the corners. */
    private double diagonal() {
        return Math.atan2(risen(), run());
    }

    /** t, the rise of the rails towards the head. */
    private double tilt() {
        return rake.angle().radians();
    }

    /** r, the rise of the brace. */
    private double risingAt() {
        if (isPointed()) {
            return diagonal();
        }
        double turn = Math.asin(Math.min(1, width.nanometres() / corners()));
        return ends == BraceEnds.RAIL_CUTS ? diagonal() + turn : diagonal() - turn;
    }

    /** r - t, the angle between brace and rail. */
    private double fromRail() {
        return risingAt() - tilt();
    }

    private boolean cutsRail() {
        return kind == BraceKind.WOOD && ends != BraceEnds.STILE_CUTS;
    }

    private boolean cutsStile() {
        return kind == BraceKind.WOOD && ends != BraceEnds.RAIL_CUTS;
    }

    /** The share of the width that bears on one member at one end. */
    private double bearing() {
        return width.nanometres() / (ends == BraceEnds.POINTS ? 2.0 : 1.0);
    }

    /**
     * Returns whether it is wood and pushed or a cable and pulled.
     *
     * @return the kind
     */
    public BraceKind kind() {
        return kind;
    }

    /**
     * Returns how the ends of a wood brace are cut.
     *
     * @return the cuts; they mean nothing for a cable
     */
    public BraceEnds ends() {
        return ends;
    }

    /**
     * Returns the corner the lower end stands in: on the hinge side for wood the right way round, on the latch side for a
     * cable.
     *
     * @return the lower rail and a stile
     */
    public FrameCorner foot() {
        return foot;
    }

    /**
     * Returns the corner the upper end is in, on the other side.
     *
     * @return the upper rail and a stile
     */
    public FrameCorner head() {
        return head;
    }

    /**
     * Tells whether the weight of the leaf works it as it is made to be: pushes wood, pulls a cable.
     *
     * @return true for wood that rises to the latch and for a cable that rises to the hinges
     */
    public boolean isRightWay() {
        return (kind == BraceKind.WOOD) == (head.stile() == FrameMember.LATCH_STILE);
    }

    /**
     * Returns where the corner at the foot is.
     *
     * @return the place by distance from the left edge of the leaf and height over the lower left corner of the frame
     */
    public ProfilePoint footPoint() {
        return footPoint;
    }

    /**
     * Returns where the corner at the head is.
     *
     * @return the place by distance from the left edge of the leaf and height over the lower left corner of the frame
     */
    public ProfilePoint headPoint() {
        return headPoint;
    }

    /**
     * Returns the stretch it crosses from side to side, from stile to stile.
     *
     * @return the stretch from the left edge of the leaf, seen from outside
     */
    public Interval across() {
        return Outlines.across(List.of(footPoint, headPoint));
    }

    /**
     * Returns the heights of the corners it runs between.
     *
     * @return the stretch over the lower left corner of the frame
     */
    public Interval up() {
        return Outlines.up(List.of(footPoint, headPoint));
    }

    /**
     * Returns how wide it is, seen from outside.
     *
     * @return the width of the lumber; of a cable the width a wood brace would have, which means nothing
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
     * Returns how long it is over all, from point to point or from long point to long point; the lumber for it must be as
     * long.
     *
     * @return the length, to the nearest nanometre
     */
    public Length length() {
        if (kind == BraceKind.CABLE) {
            return Outlines.nearest(corners());
        }
        if (ends == BraceEnds.POINTS) {
            // Where a rail falls away from the brace by over a right angle, the cut reaches out past the corner.
            double past = Math.max(0, Math.max(-1 / Math.tan(fromRail()), -Math.tan(risingAt())));
            return Outlines.nearest(corners() + width.nanometres() * past);
        }
        double slant = ends == BraceEnds.RAIL_CUTS ? 1 / Math.tan(fromRail()) : Math.tan(risingAt());
        return Outlines.nearest(edge() + width.nanometres() * Math.abs(slant));
    }

    /**
     * Returns how long each of its two edges is, from the cut at one end to the cut at the other: with one cut at each
     * end, from long point to short point.
     *
     * @return the length of an edge, to the nearest nanometre; of a cable its length
     */
    public Length edgeLength() {
        return Outlines.nearest(edge());
    }

    private double edge() {
        if (kind == BraceKind.CABLE) {
            return corners();
        }
        return switch (ends) {
            case POINTS -> corners() - width.nanometres() / 2.0 * (1 / Math.tan(fromRail()) + Math.tan(risingAt()));
            case RAIL_CUTS -> clearHeight.nanometres() * Math.cos(tilt()) / Math.sin(fromRail());
            case STILE_CUTS -> run() / Math.cos(risingAt());
        };
    }

    /**
     * Returns how steeply it rises from level; in a leaf that is not raked also from the rail.
     *
     * @return the angle, between 0 and 90 degrees in a level leaf
     */
    public Angle rise() {
        return Angle.ofRadians(risingAt());
    }

    /**
     * Returns how far off square the cut against the rail is at each end, as a mitre saw reads it.
     *
     * @return 90 degrees less the angle between brace and rail; empty if no end is cut along the rail
     */
    public Optional<Angle> railCut() {
        return cutsRail() ? Optional.of(Angle.ofRadians(Math.PI / 2 - fromRail())) : Optional.empty();
    }

    /**
     * Returns how far off square the cut against the stile is at each end, as a mitre saw reads it.
     *
     * @return the same angle as the rise; empty if no end is cut along the stile
     */
    public Optional<Angle> stileCut() {
        return cutsStile() ? Optional.of(rise()) : Optional.empty();
    }

    /**
     * Returns how far along the rail the brace bears, from the corner to its edge: where to mark the rail.
     *
     * @return the length of the cut against the rail, to the nearest nanometre; zero if there is none
     */
    public Length railBearing() {
        return cutsRail() ? Outlines.nearest(bearing() / Math.sin(fromRail())) : Length.ZERO;
    }

    /**
     * Returns how far along the stile the brace bears, from the corner to its edge: where to mark the stile.
     *
     * @return the length of the cut against the stile, to the nearest nanometre; zero if there is none
     */
    public Length stileBearing() {
        return cutsStile() ? Outlines.nearest(bearing() / Math.cos(risingAt())) : Length.ZERO;
    }

    /**
     * Returns its corners on the leaf, from the foot along the lower edge and round: six if pointed, else four. Of each
     * cut, both ends lie on the rail or the stile. A cable has its two ends only.
     *
     * @return the corners by distance from the left edge of the leaf and height over the lower left corner of the frame
     */
    public List<ProfilePoint> outline() {
        if (kind == BraceKind.CABLE) {
            return List.of(footPoint, headPoint);
        }
        ProfilePoint footOnRail = moved(footPoint, railBearing().nanometres(), 0);
        ProfilePoint footOnStile = moved(footPoint, 0, stileBearing().nanometres());
        ProfilePoint headOnRail = moved(headPoint, -railBearing().nanometres(), 0);
        ProfilePoint headOnStile = moved(headPoint, 0, -stileBearing().nanometres());
        return switch (ends) {
            case POINTS -> List.of(footPoint, footOnRail, headOnStile, headPoint, headOnRail, footOnStile);
            case RAIL_CUTS -> List.of(footPoint, footOnRail, headPoint, headOnRail);
            case STILE_CUTS -> List.of(footPoint, headOnStile, headPoint, footOnStile);
        };
    }

    private ProfilePoint moved(ProfilePoint corner, long alongRail, long up) {
        double onwards = Math.signum(Outlines.x(headPoint) - Outlines.x(footPoint));
        return Outlines.point(
                Outlines.x(corner) + onwards * alongRail * Math.cos(tilt()),
                Outlines.y(corner) + alongRail * Math.sin(tilt()) + up);
    }

    /**
     * Returns its centre of gravity on the leaf: halfway between its corners.
     *
     * @return the place by distance from the left edge and height over the lower left corner of the frame
     */
    public ProfilePoint centre() {
        return Outlines.point(
                (Outlines.x(footPoint) + Outlines.x(headPoint)) / 2,
                (Outlines.y(footPoint) + Outlines.y(headPoint)) / 2);
    }

    /**
     * Returns how much wood is in it.
     *
     * @return the volume of the finished piece; zero for a cable
     */
    public Volume volume() {
        Area face = kind == BraceKind.CABLE ? Area.ZERO : Outlines.area(outline());
        return face.times(thickness);
    }

    /**
     * Returns the force along it from a load that hangs at the latch edge of the frame, if the joints of the frame turn
     * freely and it alone keeps the frame from racking.
     *
     * <pre>
     * force = load at the latch edge / sin rise
     * </pre>
     *
     * @param atLatch the load at the latch edge that this brace carries
     * @return the push in wood or the pull in a cable; negative where it is the wrong way round and works the other way
     * @throws IllegalArgumentException if it does not rise from foot to head, and so cannot carry the leaf
     */
    public Force forceFrom(Force atLatch) {
        double sin = rise().sin();
        if (sin <= 0) {
            throw new IllegalArgumentException("the brace rises at " + Written.degrees(rise())
                    + "; it must rise from foot to head to carry the leaf, so rake the leaf less or make it higher");
        }
        return atLatch.times(Ratio.of((isRightWay() ? 1 : -1) / sin));
    }

    Length clearWidth() {
        return Outlines.nearest(run());
    }

    Length clearHeight() {
        return clearHeight;
    }

    Slope rake() {
        return rake;
    }

    /**
     * Returns the brace worked out line by line, from the clear space to the length of its edges, which is the shop
     * check of the cuts.
     *
     * @return the worksheet; its last line is {@link #edgeLength}
     */
    public Worksheet worksheet() {
        return BraceSheet.of(this);
    }

    @Override
    public String toString() {
        return kind + " " + Written.tape(length()) + " from " + foot + " to " + head;
    }
}
