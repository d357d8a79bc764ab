package org.fencecore.geometry;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A triangle with a square corner: the two legs of a corner and the diagonal across it, or the run and rise of a
 * grade and the distance along it.
 *
 * <p>c² = a² + b². Leg b faces angle B, so with a run as leg a and a rise as leg b, angle B is that of the grade.
 *
 * <p>Example: squaring a corner with 35 ft on one line and 40 ft on the other.
 *
 * <pre>{@code
 * RightTriangle corner = RightTriangle.ofLegs(Length.ofFeet(35), Length.ofFeet(40));
 * corner.hypotenuse();                             // 53.1507 ft, the tape across
 * corner.outOfSquare(Length.ofFeet(53.1));         // -0.11 degrees: the corner is closed a little
 * }</pre>
 *
 * <p>Sources: squaring by the 3-4-5 triangle and the 35 by 40 ft corner, NAVEDTRA 14043, fig. 5-16.
 */
public final class RightTriangle {

    private final Length legA;
    private final Length legB;
    private final Length hypotenuse;

    private RightTriangle(Length legA, Length legB, Length hypotenuse) {
        Triangle.requirePositive("leg a", legA);
        Triangle.requirePositive("leg b", legB);
        this.legA = legA;
        this.legB = legB;
        this.hypotenuse = hypotenuse;
    }

    /**
     * Returns the triangle with two given legs.
     *
     * @param legA a leg, over zero; the run of a grade
     * @param legB the other leg, over zero; the rise of a grade
     * @return the triangle, the hypotenuse to the nearest nanometre
     * @throws IllegalArgumentException if a leg is not over zero, or is over 1,000,000 km
     */
    public static RightTriangle ofLegs(Length legA, Length legB) {
        long c = Exact.hypotenuse(legA.nanometres(), legB.nanometres());
        return new RightTriangle(legA, legB, Length.ofNanometres(c));
    }

    /**
     * Returns the triangle with a given leg and hypotenuse; the other leg is the square root of c² - a².
     *
     * @param legA the leg, over zero
     * @param hypotenuse the side across the square corner, longer than the leg
     * @return the triangle, leg b to the nearest nanometre
     * @throws IllegalArgumentException if the leg is not over zero or the hypotenuse is not longer
     */
    public static RightTriangle ofLegAndHypotenuse(Length legA, Length hypotenuse) {
        Triangle.requirePositive("hypotenuse", hypotenuse);
        if (legA.compareTo(hypotenuse) >= 0) {
            throw new IllegalArgumentException("leg a was " + legA + " and the hypotenuse " + hypotenuse
                    + "; the hypotenuse must be longer than the leg");
        }
        // (c - a)(c + a) keeps the digits that c² - a² loses when both are nearly as long.
        double difference = hypotenuse.nanometres() - legA.nanometres();
        double sum = hypotenuse.nanometres() + legA.nanometres();
        return new RightTriangle(legA, Length.ofNanometres(Math.round(Math.sqrt(difference * sum))), hypotenuse);
    }

    /**
     * Returns the triangle with a given leg and the angle it makes with the hypotenuse; the other leg is a tan B.
     *
     * @param legA the leg beside the angle, over zero; the run of a grade
     * @param angleB the angle, over 0 and under 90 degrees; that of the grade
     * @return the triangle, the other sides to the nearest nanometre
     * @throws IllegalArgumentException if the leg or the angle is out of its range, or leg b under half a nanometre
     */
    public static RightTriangle ofLegAndAngle(Length legA, Angle angleB) {
        requireAcute(angleB);
        return new RightTriangle(legA, scaled(legA, angleB.tan()), scaled(legA, 1 / angleB.cos()));
    }

    /**
     * Returns the triangle with a given hypotenuse and the angle it makes with leg a: c cos B and c sin B.
     *
     * @param hypotenuse the side across the square corner, over zero; the distance along a grade
     * @param angleB the angle, over 0 and under 90 degrees; that of the grade
     * @return the triangle, the legs to the nearest nanometre
     * @throws IllegalArgumentException if the side or the angle is out of its range, or a leg under half a nanometre
     */
    public static RightTriangle ofHypotenuseAndAngle(Length hypotenuse, Angle angleB) {
        Triangle.requirePositive("hypotenuse", hypotenuse);
        requireAcute(angleB);
        return new RightTriangle(scaled(hypotenuse, angleB.cos()), scaled(hypotenuse, angleB.sin()), hypotenuse);
    }

    /**
     * Returns the largest triangle with sides as 3, 4 and 5 whose legs fit on two lines: 3-4-5, 6-8-10, 9-12-15 and so on
     * in feet, or 300-400-500 in millimetres. The leg of four lies on the longer line.
     *
     * <p>The multiple is the lesser of a third of the shorter line and a quarter of the longer one, rounded down to whole
     * units.
     *
     * <p>Example: {@code largest345(Length.ofFeet(30), Length.ofFeet(50), Length.ofFeet(1))} is 30 by 40 ft with 50 ft
     * across.
     *
     * @param alongA the room for leg a, over zero
     * @param alongB the room for leg b, over zero
     * @param unit what a 3-4-5 triangle is made of, such as 1 ft or 100 mm, over zero
     * @return the triangle; empty if not even 3 by 4 units fit
     * @throws IllegalArgumentException if a length is not over zero
     */
    public static Optional<RightTriangle> largest345(Length alongA, Length alongB, Length unit) {
        Triangle.requirePositive("along a", alongA);
        Triangle.requirePositive("along b", alongB);
        Triangle.requirePositive("unit", unit);
        boolean longerB = alongB.compareTo(alongA) >= 0;
        Length shorter = longerB ? alongA : alongB;
        Length longer = longerB ? alongB : alongA;
        long multiple = Math.min(shorter.wholePieces(unit) / 3, longer.wholePieces(unit) / 4);
        if (multiple == 0) {
            return Optional.empty();
        }
        Length three = unit.times(3 * multiple);
        Length four = unit.times(4 * multiple);
        return Optional.of(new RightTriangle(longerB ? three : four, longerB ? four : three, unit.times(5 * multiple)));
    }

    private static Length scaled(Length side, double factor) {
        return Length.ofNanometres(Math.round(side.nanometres() * factor));
    }

    private static void requireAcute(Angle angle) {
        if (!angle.isPositive() || angle.compareTo(Angle.RIGHT) >= 0) {
            throw new IllegalArgumentException("angle B was " + angle + "; it must be over 0 and under 90 degrees");
        }
    }

    /**
     * Returns leg a.
     *
     * @return the leg facing angle A; the run of a grade
     */
    public Length legA() {
        return legA;
    }

    /**
     * Returns leg b.
     *
     * @return the leg facing angle B; the rise of a grade
     */
    public Length legB() {
        return legB;
    }

    /**
     * Returns the side across the square corner.
     *
     * @return the diagonal of a corner, the distance along a grade
     */
    public Length hypotenuse() {
        return hypotenuse;
    }

    /**
     * Returns the angle facing leg a.
     *
     * @return 90 degrees less angle B
     */
    public Angle angleA() {
        return Angle.ofTangent(legA, legB);
    }

    /**
     * Returns the angle facing leg b.
     *
     * @return the angle whose tangent is b over a; that of the grade
     */
    public Angle angleB() {
        return Angle.ofTangent(legB, legA);
    }

    /**
     * Returns how far a corner with these legs is from square when the tape across it does not read the hypotenuse.
     *
     * @param measured the measured diagonal, which with the two legs must make a triangle
     * @return the true angle of the corner less 90 degrees: positive if it stands open, negative if it is closed
     * @throws IllegalArgumentException if the diagonal is too long or too short to close the triangle
     */
    public Angle outOfSquare(Length measured) {
        return Triangle.ofSides(legA, legB, measured).angleC().minus(Angle.RIGHT);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RightTriangle triangle
                && triangle.legA.equals(legA)
                && triangle.legB.equals(legB)
                && triangle.hypotenuse.equals(hypotenuse);
    }

    @Override
    public int hashCode() {
        return Objects.hash(legA, legB, hypotenuse);
    }

    /**
     * Returns the sides as text.
     *
     * @return the two legs and the hypotenuse
     */
    @Override
    public String toString() {
        return "RightTriangle of legs " + legA + " and " + legB + ", hypotenuse " + hypotenuse;
    }
}
