package org.fencecore.gate;

import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * A wood brace across a clear space of the frame, rising from the hinge side to the latch side so that the weight of
 * the leaf pushes it down against the hinge stile and does not pull at its joints.
 *
 * <p>Its centreline is the diagonal of the clear space. Each end has two cuts that meet at the centreline in a square
 * point and fit the corner, one against the rail and one against the stile; both ends are alike. With the space W wide
 * and H high and the brace b wide:
 *
 * <pre>
 * length, point to point   L = sqrt(W^2 + H^2)
 * rise from the rail       rise = atan(H / W)
 * cut against the rail     90 deg - rise, off square
 * cut against the stile    rise, off square
 * bearing on the rail      b / (2 sin rise)
 * bearing on the stile     b / (2 cos rise)
 * length of each edge      L - b/2 * (W/H + H/W)
 * </pre>
 *
 * <p>The piece lies wholly inside the space if its edges have a length at all, that is if b is under 2 W H / L. Unless
 * it rises at 45 degrees, one of the two cuts is over 45 degrees off square: many mitre saws do not swing so far, and
 * the cut is marked and sawn by hand.
 *
 * <p>Left out: how the ends are fastened, and what load they take. A point in the corner tends to push the joints of
 * the frame apart; better work notches the ends into the rails clear of the corner.
 *
 * <p>Sources: the lengths, angles and cuts are geometry. That a brace rises from the hung side: Building Construction
 * (chestofbooks.com, Building-Construction-5), Doors. Points against notches: Manual of Purpose-Made Woodworking
 * Joinery, p. 85. The reach of mitre saws: common practice, no source.
 *
 * <p>Example: a brace 3 1/2 in wide in a clear space of 40 by 30 in is 50 in from point to point, rises at 36.87
 * degrees, is cut 53.13 degrees off square against the rails and 36.87 degrees against the stiles, and its edges are
 * 46.354 in long.
 */
public final class GateBrace {

    private static final Citation DIRECTION =
            Citation.of("Building Construction (chestofbooks.com, Building-Construction-5)", "Doors", "");

    private final FrameCorner foot;
    private final FrameCorner head;
    private final Interval across;
    private final Interval up;
    private final Length width;
    private final Length thickness;

    GateBrace(FrameCorner foot, FrameCorner head, Interval across, Interval up, Length width, Length thickness) {
        this.foot = foot;
        this.head = head;
        this.across = across;
        this.up = up;
        this.width = width;
        this.thickness = thickness;
    }

    /** Tells whether a brace lies wholly inside a clear space, with something left of its edges. */
    static boolean fits(Length width, Length clearWidth, Length clearHeight) {
        return width.nanometres() < limit(clearWidth, clearHeight);
    }

    /** Returns the width at which the edges of a brace come to nothing. */
    static Length widest(Length clearWidth, Length clearHeight) {
        return nearest(limit(clearWidth, clearHeight));
    }

    private static double limit(Length clearWidth, Length clearHeight) {
        double w = clearWidth.nanometres();
        double h = clearHeight.nanometres();
        return 2 * w * h / Math.hypot(w, h);
    }

    /** Returns the diagonal of a rectangle, to the nearest nanometre. */
    static Length diagonal(Length across, Length up) {
        return nearest(Math.hypot((double) across.nanometres(), (double) up.nanometres()));
    }

    private static Length nearest(double nanometres) {
        return Length.ofNanometres(Math.round(nanometres));
    }

    /**
     * Returns the corner the lower end stands in, on the hinge side.
     *
     * @return the lower rail and the hinge stile
     */
    public FrameCorner foot() {
        return foot;
    }

    /**
     * Returns the corner the upper end holds up, on the latch side.
     *
     * @return the upper rail and the latch stile
     */
    public FrameCorner head() {
        return head;
    }

    /**
     * Returns the clear space it crosses from side to side, from stile to stile.
     *
     * @return the stretch from the left edge of the leaf, seen from outside
     */
    public Interval across() {
        return across;
    }

    /**
     * Returns the clear space it crosses from bottom to top, from rail to rail.
     *
     * @return the stretch from the bottom of the frame
     */
    public Interval up() {
        return up;
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
     * Returns how long it is from point to point, along its centreline; the lumber for it must be as long.
     *
     * @return the diagonal of the clear space, to the nearest nanometre
     */
    public Length length() {
        return diagonal(across.length(), up.length());
    }

    /**
     * Returns how long each of its two edges is, from the cut at one end to the cut at the other.
     *
     * @return the length of an edge, to the nearest nanometre
     */
    public Length edgeLength() {
        double w = across.length().nanometres();
        double h = up.length().nanometres();
        return nearest(Math.hypot(w, h) - width.nanometres() / 2.0 * (w / h + h / w));
    }

    /**
     * Returns how steeply it rises from the rail.
     *
     * @return the angle between brace and rail, between 0 and 90 degrees
     */
    public Angle rise() {
        return Angle.ofTangent(up.length(), across.length());
    }

    /**
     * Returns how far off square the cut against the rail is at each end, as a mitre saw reads it.
     *
     * @return 90 degrees less the rise
     */
    public Angle railCut() {
        return Angle.ofTangent(across.length(), up.length());
    }

    /**
     * Returns how far off square the cut against the stile is at each end, as a mitre saw reads it.
     *
     * @return the same angle as the rise
     */
    public Angle stileCut() {
        return rise();
    }

    /**
     * Returns how far along the rail the brace bears, from the corner to its edge: where to mark the rail.
     *
     * @return the length of the cut against the rail, to the nearest nanometre
     */
    public Length railBearing() {
        return nearest(width.nanometres() / (2 * rise().sin()));
    }

    /**
     * Returns how far along the stile the brace bears, from the corner to its edge: where to mark the stile.
     *
     * @return the length of the cut against the stile, to the nearest nanometre
     */
    public Length stileBearing() {
        return nearest(width.nanometres() / (2 * rise().cos()));
    }

    /**
     * Returns the brace worked out line by line, from the clear space to the length of its edges, which is the shop
     * check of the cuts.
     *
     * @return the worksheet; its last line is {@link #edgeLength}
     */
    public Worksheet worksheet() {
        String w = Written.inches(across.length());
        String h = Written.inches(up.length());
        String b = Written.inches(width);
        String rise = Written.degrees(rise());
        return Worksheet.titled("Gate brace")
                .line("foot", "on the hinge side", "", foot, foot.toString(), DIRECTION)
                .line("head", "on the latch side", "", head, head.toString(), DIRECTION)
                .given("clear width W", across.length(), Written.tape(across.length()))
                .given("clear height H", up.length(), Written.tape(up.length()))
                .given("brace width b", width, Written.tape(width))
                .line(
                        "length, point to point L",
                        "sqrt(W^2 + H^2)",
                        "sqrt((" + w + ")^2 + (" + h + ")^2)",
                        length(),
                        Written.tape(length()),
                        Citation.GEOMETRY)
                .line(
                        "rise from the rail",
                        "atan(H / W)",
                        "atan(" + h + " / " + w + ")",
                        rise(),
                        Written.degrees(rise()),
                        Citation.GEOMETRY)
                .line(
                        "cut against the rail, off square",
                        "90 deg - rise",
                        "90 deg - " + rise,
                        railCut(),
                        Written.degrees(railCut()),
                        Citation.GEOMETRY)
                .line(
                        "cut against the stile, off square",
                        "rise",
                        "",
                        stileCut(),
                        Written.degrees(stileCut()),
                        Citation.GEOMETRY)
                .line(
                        "bearing on the rail",
                        "b / (2 sin rise)",
                        b + " / (2 sin " + rise + ")",
                        railBearing(),
                        Written.tape(railBearing()),
                        Citation.GEOMETRY)
                .line(
                        "bearing on the stile",
                        "b / (2 cos rise)",
                        b + " / (2 cos " + rise + ")",
                        stileBearing(),
                        Written.tape(stileBearing()),
                        Citation.GEOMETRY)
                .line(
                        "edge length",
                        "L - b / 2 * (W / H + H / W)",
                        Written.inches(length()) + " - " + b + " / 2 * (" + w + " / " + h + " + " + h + " / " + w + ")",
                        edgeLength(),
                        Written.tape(edgeLength()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public String toString() {
        return "brace " + Written.tape(length()) + " from " + foot + " to " + head;
    }
}
