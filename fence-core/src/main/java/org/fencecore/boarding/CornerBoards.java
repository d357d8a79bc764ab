package org.fencecore.boarding;

import java.util.Objects;
import org.fencecore.geometry.Corner;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * Where the outside boards of two runs end at the corner post they share: those of the run that arrives end flush with the
 * faces that the boards of both are fixed to, and those of the run that leaves begin over their edges.
 *
 * <pre>
 * arriving past the middle of the post = backs x tan(turn / 2)
 * leaving before it                    = backs x tan(turn / 2) + thickness x sin(interior angle)
 * </pre>
 *
 * <p>with {@code backs} for how far the boards' backs are outside the line of the posts' middles, and the turn counted to
 * the inside; where the fence turns to the outside both are negative but for the lap. Edges are square: where the corner is
 * not, they are bevelled by {@link #bevel} to close.
 *
 * <p>Inside boards of a shadowbox lie in the plane of the posts. They begin and end against the faces of the post, half of
 * its width from its middle, and the one that comes there is ripped to fit.
 *
 * <p>Sources: geometry; which run laps is common practice, no source.
 *
 * <p>Example: a square corner, 3 1/2 in posts, rails of 1 1/2 in outside them and boards of 3/4 in. The backs are 3 1/4 in
 * out; the arriving boards end 3 1/4 in past the middle of the post, and the leaving ones begin 4 in before it.
 *
 * <pre>{@code
 * CornerBoards boards = CornerBoards.at(corner, Length.ofInches(3.25), Length.ofInches(0.75));
 * boards.arrivingPast();     // 3 1/4 in
 * boards.leavingBefore();    // 4 in
 * }</pre>
 */
public final class CornerBoards {

    private final Corner corner;
    private final Length backs;
    private final Length thickness;

    private CornerBoards(Corner corner, Length backs, Length thickness) {
        this.corner = corner;
        this.backs = backs;
        this.thickness = thickness;
    }

    /**
     * Returns the boards at a corner.
     *
     * @param corner the corner of the lines of the posts' middles
     * @param backs how far the boards' backs are outside those lines, 0 or more
     * @param thickness how thick the boards are, 0 or more
     * @return where they end
     * @throws IllegalArgumentException if a length is negative
     */
    public static CornerBoards at(Corner corner, Length backs, Length thickness) {
        Objects.requireNonNull(corner, "corner");
        if (backs.isNegative() || thickness.isNegative()) {
            throw new IllegalArgumentException("backs were " + backs + " and thickness " + thickness
                    + "; both must be 0 or more: measure outwards from the middle of the post");
        }
        return new CornerBoards(corner, backs, thickness);
    }

    /**
     * Returns how far the outside boards of the run that arrives reach.
     *
     * @return past the middle of the post; negative if they end before it
     */
    public Length arrivingPast() {
        return corner.mitreRun(backs.negated()).negated();
    }

    /**
     * Returns where the outside boards of the run that leaves begin.
     *
     * @return how far before the middle of the post; negative if they begin beyond it
     */
    public Length leavingBefore() {
        return arrivingPast()
                .plus(thickness.times(Ratio.of(corner.interiorAngle().sin())));
    }

    /**
     * Returns how far off square the lapping edge is bevelled so that it closes on the boards it laps.
     *
     * @return the interior angle's difference from a right angle, zero or more
     */
    public Angle bevel() {
        return Angle.RIGHT.minus(corner.interiorAngle()).abs();
    }

    /**
     * Returns the calculation, ending with where the leaving boards begin.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        return Worksheet.titled("Boards at a corner")
                .given("backs outside the middle", backs, Written.tape(backs))
                .given("thickness", thickness, Written.tape(thickness))
                .given("interior angle", corner.interiorAngle(), Written.degrees(corner.interiorAngle()))
                .line(
                        "arriving past the middle",
                        "backs x tan(turn / 2)",
                        Written.inches(backs) + " x tan("
                                + Written.degrees(corner.turn().abs()) + " / 2)",
                        arrivingPast(),
                        Written.inches(arrivingPast()),
                        Citation.GEOMETRY)
                .line(
                        "leaving before the middle",
                        "arriving + thickness x sin(interior angle)",
                        Written.inches(arrivingPast()) + " + " + Written.inches(thickness) + " x sin("
                                + Written.degrees(corner.interiorAngle()) + ")",
                        leavingBefore(),
                        Written.inches(leavingBefore()),
                        Citation.COMMON_PRACTICE)
                .build();
    }

    /**
     * Describes the boards.
     *
     * @return such as {@code arriving boards 3 1/4" past the post, leaving ones from 4" before it}
     */
    @Override
    public String toString() {
        return "arriving boards " + Written.tape(arrivingPast()) + " past the post, leaving ones from "
                + Written.tape(leavingBefore()) + " before it";
    }
}
