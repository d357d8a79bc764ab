package org.fencecore.survey;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * An arc of a circle between two points of a boundary, by the side it turns to, its radius R and its delta: the angle at
 * the centre, by which the direction of the line turns.
 *
 * <p>Example: the curve of United States Executive Order 5265, radius 301.53 ft and delta 25°59'.
 *
 * <pre>{@code
 * Curve curve = Curve.of(Side.RIGHT, Length.ofFeet(301.53), Angle.parse("25°59'"));
 * curve.arc();               // R delta = 136.74 ft
 * curve.chord();             // 2 R sin(delta/2) = 135.57 ft
 * curve.middleOrdinate();    // R (1 - cos(delta/2)) = 7.72 ft
 * curve.segmentArea();       // R^2 (delta - sin delta) / 2 = 699.41 sq ft
 * }</pre>
 *
 * <p>The formulas are plane geometry. The arc is the true one; see {@link CurveCall} for descriptions that call it by
 * chords of 100 ft.
 */
public final class Curve {

    private static final Angle FULL_TURN = Angle.STRAIGHT.times(2);

    private final Side turn;
    private final Length radius;
    private final Angle delta;

    private Curve(Side turn, Length radius, Angle delta) {
        this.turn = turn;
        this.radius = radius;
        this.delta = delta;
    }

    /**
     * Returns the curve of a radius and an angle.
     *
     * @param turn the side to which it bends, going along it; its centre lies there
     * @param radius the radius, from 0.1 mm to 500 km
     * @param delta the angle at the centre, over 0 and under 360 degrees
     * @return the curve
     * @throws IllegalArgumentException if radius or delta is out of its range, or the curve ends within 0.1 mm of where
     *     it began
     */
    public static Curve of(Side turn, Length radius, Angle delta) {
        Objects.requireNonNull(turn, "turn");
        Course.requireCallable("radius", radius);
        if (!delta.isPositive() || delta.compareTo(FULL_TURN) >= 0) {
            throw new IllegalArgumentException("delta of the curve was " + delta
                    + "; it must be over 0 and under 360 degrees: give the angle at the centre, without a sign, and say"
                    + " the turn apart");
        }
        Curve curve = new Curve(turn, radius, delta);
        if (curve.chord().compareTo(Course.SHORTEST) < 0) {
            throw new IllegalArgumentException("the curve of radius " + radius + " and delta " + delta
                    + " ends " + curve.chord() + " from where it began; its chord must be " + Course.SHORTEST
                    + " or more: give a whole circle as two curves");
        }
        return curve;
    }

    /**
     * Returns the side to which it bends.
     *
     * @return the side of its centre, going along it
     */
    public Side turn() {
        return turn;
    }

    /**
     * Returns the radius.
     *
     * @return the distance from the centre to the curve
     */
    public Length radius() {
        return radius;
    }

    /**
     * Returns the angle at the centre.
     *
     * @return delta, over 0 and under 360 degrees
     */
    public Angle delta() {
        return delta;
    }

    /**
     * Returns the length along the curve.
     *
     * @return R times delta in radians
     */
    public Length arc() {
        return scaled(delta.radians());
    }

    /**
     * Returns the straight distance between its ends.
     *
     * @return 2 R sin(delta/2)
     */
    public Length chord() {
        return scaled(2 * half().sin());
    }

    /**
     * Returns how far the point where its two tangents meet is from each end.
     *
     * @return R tan(delta/2); empty from 180 degrees on, where the tangents do not meet ahead
     */
    public Optional<Length> tangent() {
        return isMajor() || delta.equals(Angle.STRAIGHT) ? Optional.empty() : Optional.of(scaled(half().tan()));
    }

    /**
     * Returns how far the middle of the curve is from the middle of the chord.
     *
     * @return R (1 - cos(delta/2))
     */
    public Length middleOrdinate() {
        return scaled(1 - half().cos());
    }

    /**
     * Returns the area between the curve and the radii to its ends.
     *
     * @return R^2 delta / 2, delta in radians
     */
    public Area sectorArea() {
        return Area.ofSquareMetres(radius.metres() * radius.metres() * delta.radians() / 2);
    }

    /**
     * Returns the area between the curve and its chord.
     *
     * @return R^2 (delta - sin delta) / 2, delta in radians
     */
    public Area segmentArea() {
        return Area.ofSquareMetres(radius.metres() * radius.metres() * (delta.radians() - delta.sin()) / 2);
    }

    /**
     * Tells whether it is more than half of its circle.
     *
     * @return true if delta is over 180 degrees
     */
    public boolean isMajor() {
        return delta.compareTo(Angle.STRAIGHT) > 0;
    }

    /** The curve of the same delta over another chord. */
    Curve withChord(Length newChord) {
        return new Curve(turn, newChord.times(radius.ratioTo(chord())), delta);
    }

    /** Delta, positive if the line turns to the right. */
    Angle signedDelta() {
        return turn == Side.RIGHT ? delta : delta.negated();
    }

    private Angle half() {
        return delta.dividedBy(2);
    }

    private Length scaled(double factor) {
        return Length.ofNanometres(Math.round(radius.nanometres() * factor));
    }

    /**
     * Returns the parts of the curve worked out.
     *
     * @return the worksheet; its last line is the area of the segment
     */
    public Worksheet worksheet() {
        String r = Written.feet(radius);
        String angle = Dms.text(delta);
        Worksheet.Builder sheet = Worksheet.titled("Curve to the " + side())
                .given("radius R", radius, r)
                .given("delta", delta, angle)
                .line(
                        "arc",
                        "R x delta x pi / 180",
                        r + " x " + angle + " x pi / 180",
                        arc(),
                        Written.feet(arc()),
                        Citation.GEOMETRY)
                .line(
                        "chord",
                        "2 R sin(delta/2)",
                        "2 x " + r + " x sin(" + angle + " / 2)",
                        chord(),
                        Written.feet(chord()),
                        Citation.GEOMETRY);
        tangent()
                .ifPresent(length -> sheet.line(
                        "tangent",
                        "R tan(delta/2)",
                        r + " x tan(" + angle + " / 2)",
                        length,
                        Written.feet(length),
                        Citation.GEOMETRY));
        return sheet.line(
                        "middle ordinate",
                        "R (1 - cos(delta/2))",
                        r + " x (1 - cos(" + angle + " / 2))",
                        middleOrdinate(),
                        Written.feet(middleOrdinate()),
                        Citation.GEOMETRY)
                .line(
                        "area of the segment",
                        "R^2 (delta x pi / 180 - sin delta) / 2",
                        "(" + r + ")^2 x (" + angle + " x pi / 180 - sin " + angle + ") / 2",
                        segmentArea(),
                        Dms.squareFeet(segmentArea()),
                        Citation.GEOMETRY)
                .build();
    }

    /** What it adds to the area left of its chord: one that turns left bulges to the right. */
    Area areaLeftOfChord() {
        return turn == Side.LEFT ? segmentArea() : segmentArea().negated();
    }

    private String side() {
        return turn.toString().toLowerCase(Locale.ROOT);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Curve that
                && turn == that.turn
                && radius.equals(that.radius)
                && delta.equals(that.delta);
    }

    @Override
    public int hashCode() {
        return Objects.hash(turn, radius, delta);
    }

    /**
     * Returns the curve as a deed calls it.
     *
     * @return such as {@code curve right, radius 301.53 ft, delta 25°59', arc 136.74 ft}
     */
    @Override
    public String toString() {
        return "curve " + side() + ", radius " + Written.station(radius) + ", delta " + Dms.text(delta) + ", arc "
                + Written.station(arc());
    }
}
