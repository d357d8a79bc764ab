package org.fencecore.gate.hang;

import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How much of the arris of a stile must be planed off so that a thick leaf turns without touching the post.
 *
 * <p>An edge beside the pin stays clear if the leaf opens to the side of its hinges: it needs a chamfer only where wood
 * stands beyond the pin on the side away from the swing. The latch edge turns on a circle that its far arris makes wider
 * than the leaf.
 */
public final class Chamfer {

    private final Length alongEdge;
    private final Length alongFace;
    private final Supplier<Worksheet> sheet;

    private Chamfer(Length alongEdge, Length alongFace, Supplier<Worksheet> sheet) {
        this.alongEdge = alongEdge;
        this.alongFace = alongFace;
        this.sheet = sheet;
    }

    /**
     * Returns the chamfer on the latch stile, on the face away from the swing.
     *
     * <pre>
     * reach R     = pin to latch edge + latch gap
     * along edge  = depth - sqrt(R^2 - (pin to latch edge)^2), if over zero
     * along face  = pin to latch edge - sqrt(R^2 - depth^2)
     * </pre>
     *
     * <p>Source: geometry. Example: a leaf 18 in from pin to latch edge, 3 1/2 in deep, with a latch gap of 1/4 in: R =
     * 18.25, so 3.5 - sqrt(18.25^2 - 18^2) = 0.489 in off the edge and 18 - sqrt(18.25^2 - 3.5^2) = 0.089 in off the face.
     *
     * @param pinToLatchEdge how far the latch edge is from the pins, over 0, to 100 ft
     * @param depth how deep the leaf is from the pins to its far face, over 0, less than the reach
     * @param latchGap the gap at the latch, over 0, to 100 ft
     * @return the chamfer, none if the arris stays clear by itself
     * @throws IllegalArgumentException if one is out of range
     */
    public static Chamfer ofLatchStile(Length pinToLatchEdge, Length depth, Length latchGap) {
        double out = Sizes.require("pinToLatchEdge", pinToLatchEdge).nanometres();
        double deep = Sizes.require("depth", depth).nanometres();
        double reach = out + Sizes.require("latchGap", latchGap).nanometres();
        if (deep >= reach) {
            throw new IllegalArgumentException("depth was " + depth + "; it must be under the reach of "
                    + pinToLatchEdge.plus(latchGap) + ", since no chamfer turns a leaf deeper than it is wide");
        }
        double edge = deep - Math.sqrt(reach * reach - out * out);
        double face = out - Math.sqrt(reach * reach - deep * deep);
        return of(edge, face, (alongEdge, alongFace) -> {
            Length far = pinToLatchEdge.plus(latchGap);
            String w = Written.inches(pinToLatchEdge);
            String t = Written.inches(depth);
            String r = Written.inches(far);
            return Worksheet.titled("Chamfer of the latch stile")
                    .given("pin to latch edge w", pinToLatchEdge, w)
                    .given("depth from the pins t", depth, t)
                    .given("latch gap", latchGap, Written.tape(latchGap))
                    .line("reach R", "w + latch gap", w + " + " + Written.inches(latchGap), far, r, Citation.GEOMETRY)
                    .line(
                            "off the face",
                            "w - sqrt(R^2 - t^2), none if nothing comes off the edge",
                            w + " - sqrt((" + r + ")^2 - (" + t + ")^2)",
                            alongFace,
                            Written.inches(alongFace),
                            Citation.GEOMETRY)
                    .line(
                            "off the edge",
                            "t - sqrt(R^2 - w^2), if over zero",
                            t + " - sqrt((" + r + ")^2 - (" + w + ")^2)",
                            alongEdge,
                            Written.inches(alongEdge),
                            Citation.GEOMETRY)
                    .build();
        });
    }

    private static Chamfer of(double edge, double face, BiFunction<Length, Length, Worksheet> sheet) {
        Length alongEdge = edge <= 0 ? Length.ZERO : nearest(edge);
        Length alongFace = edge <= 0 ? Length.ZERO : nearest(face);
        return new Chamfer(alongEdge, alongFace, () -> sheet.apply(alongEdge, alongFace));
    }

    /**
     * Returns the chamfer on the hinge stile, on the face away from the hinges, for a leaf that opens that way: with its
     * pins not in the face it opens from, as when they are in the middle of its thickness.
     *
     * <pre>
     * the edge touches at a depth of  (pin to post + pin to leaf x cos open) / sin open
     * along edge                      = depth - that, if over zero
     * along face                      = (depth x sin open - pin to post) / cos open - pin to leaf
     * </pre>
     *
     * <p>Source: geometry. Example: pins midway in a gap of 1/2 in and 3/4 in deep wood beyond them, opening 60 degrees:
     * it touches at (0.25 + 0.25 x 0.5) / 0.866 = 0.433 in, so 0.317 in comes off the edge and (0.75 x 0.866 - 0.25) / 0.5
     * - 0.25 = 0.549 in off the face.
     *
     * @param pinToPost how far the pins are from the face of the post, over 0, to 100 ft
     * @param pinToLeaf how far they are from the edge of the leaf, 0 to 100 ft
     * @param depth how much of the leaf is beyond them on the side it opens to, over 0, to 100 ft
     * @param open how far it opens, over 0 and under 90 degrees; beyond that wood that is deeper than the gap to the post
     *     meets the post whatever its edge is like
     * @return the chamfer, none if the arris stays clear by itself
     * @throws IllegalArgumentException if one is out of range
     */
    public static Chamfer ofHingeStile(Length pinToPost, Length pinToLeaf, Length depth, Angle open) {
        double post = Sizes.require("pinToPost", pinToPost).nanometres();
        double leaf = Sizes.requireOrZero("pinToLeaf", pinToLeaf).nanometres();
        double deep = Sizes.require("depth", depth).nanometres();
        if (!open.isPositive() || open.compareTo(Angle.RIGHT) >= 0) {
            throw new IllegalArgumentException(
                    "open was " + Written.degrees(open) + "; it must be over 0 and under 90 deg;"
                            + " to open further set the pins in the face it opens to, or leave a gap as wide as the leaf is deep");
        }
        double edge = deep - (post + leaf * open.cos()) / open.sin();
        return of(edge, (deep * open.sin() - post) / open.cos() - leaf, (alongEdge, alongFace) -> {
            String p = Written.inches(pinToPost);
            String e = Written.inches(pinToLeaf);
            String t = Written.inches(depth);
            String a = Written.degrees(open);
            Length touches = depth.minus(Length.ofNanometres(Math.round(edge)));
            return Worksheet.titled("Chamfer of the hinge stile")
                    .given("pin to post p", pinToPost, p)
                    .given("pin to leaf e", pinToLeaf, e)
                    .given("depth beyond the pins t", depth, t)
                    .given("opens by a", open, a)
                    .line(
                            "the edge touches the post at a depth of",
                            "(p + e cos a) / sin a",
                            "(" + p + " + " + e + " x cos " + a + ") / sin " + a,
                            touches,
                            Written.inches(touches),
                            Citation.GEOMETRY)
                    .line(
                            "off the face",
                            "(t sin a - p) / cos a - e, none if nothing comes off the edge",
                            "(" + t + " x sin " + a + " - " + p + ") / cos " + a + " - " + e,
                            alongFace,
                            Written.inches(alongFace),
                            Citation.GEOMETRY)
                    .line(
                            "off the edge",
                            "t - that depth, if over zero",
                            t + " - " + Written.inches(touches),
                            alongEdge,
                            Written.inches(alongEdge),
                            Citation.GEOMETRY)
                    .build();
        });
    }

    private static Length nearest(double nanometres) {
        return Length.ofNanometres(Math.round(nanometres));
    }

    /**
     * Returns how much comes off the edge of the stile.
     *
     * @return the cut along the edge; zero for no chamfer
     */
    public Length alongEdge() {
        return alongEdge;
    }

    /**
     * Returns how much comes off the face of the stile.
     *
     * @return the cut along the face; zero for no chamfer
     */
    public Length alongFace() {
        return alongFace;
    }

    /**
     * Returns the chamfer worked out line by line.
     *
     * @return the worksheet; its last line is {@link #alongEdge}
     */
    public Worksheet worksheet() {
        return sheet.get();
    }

    /**
     * Tells whether any wood must come off.
     *
     * @return true if the edge needs a chamfer
     */
    public boolean isNeeded() {
        return alongEdge.isPositive();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Chamfer that && alongEdge.equals(that.alongEdge) && alongFace.equals(that.alongFace);
    }

    @Override
    public int hashCode() {
        return Objects.hash(alongEdge, alongFace);
    }

    @Override
    public String toString() {
        return isNeeded() ? "chamfer " + Written.tape(alongEdge) + " by " + Written.tape(alongFace) : "no chamfer";
    }
}
