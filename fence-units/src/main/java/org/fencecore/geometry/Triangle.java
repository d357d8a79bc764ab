package org.fencecore.geometry;

import java.util.Objects;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Any triangle, by its three sides; side a faces angle A, and so on.
 *
 * <p>It is solved by the law of cosines, c² = a² + b² - 2ab cos C, in forms that stay accurate for flat and for sharp
 * triangles: c² = (a - b)² + 4ab sin² (C/2), and tan² (C/2) = (s - a)(s - b) / (s (s - c)) with s half the perimeter.
 *
 * <p>Example: a corner of 105 degrees with legs of 10 ft, and what a tape across a corner says of its angle.
 *
 * <pre>{@code
 * Triangle.ofTwoSides(Length.ofFeet(10), Length.ofFeet(10), Angle.ofDegrees(105)).c();       // 15.8671 ft
 * Triangle.ofSides(Length.ofFeet(35), Length.ofFeet(40), Length.ofFeet(53.1)).angleC();      // 89.89 degrees
 * }</pre>
 */
public final class Triangle {

    private final Length a;
    private final Length b;
    private final Length c;

    private Triangle(Length a, Length b, Length c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /**
     * Returns the triangle with the given sides.
     *
     * @param a a side, over zero
     * @param b a side, over zero
     * @param c a side, over zero
     * @return the triangle
     * @throws IllegalArgumentException if a side is not over zero, or one is as long as the two others together
     */
    public static Triangle ofSides(Length a, Length b, Length c) {
        requirePositive("side a", a);
        requirePositive("side b", b);
        requirePositive("side c", c);
        Length longest = Length.max(a, Length.max(b, c));
        Length others = a.plus(b).plus(c).minus(longest);
        if (longest.compareTo(others) >= 0) {
            throw new IllegalArgumentException("sides were a = " + a + ", b = " + b + ", c = " + c
                    + "; the longest must be under the two others together, " + others + ", so measure again");
        }
        return new Triangle(a, b, c);
    }

    /**
     * Returns the triangle with two given sides and the angle between them.
     *
     * @param a a side, over zero
     * @param b the other side, over zero
     * @param angleC the angle between them, over 0 and under 180 degrees
     * @return the triangle, side c to the nearest nanometre
     * @throws IllegalArgumentException if a side or the angle is out of its range, or so small that the triangle is
     *     flat to the nanometre
     */
    public static Triangle ofTwoSides(Length a, Length b, Angle angleC) {
        if (!angleC.isPositive() || angleC.compareTo(Angle.STRAIGHT) >= 0) {
            throw new IllegalArgumentException("angle C was " + angleC + "; it must be over 0 and under 180 degrees");
        }
        return ofSides(a, b, thirdSide(a, b, angleC));
    }

    /** Returns the distance between the ends of two sides, over zero, at any angle, flat or reflex ones too. */
    static Length thirdSide(Length a, Length b, Angle between) {
        double half = Math.sin(between.radians() / 2);
        double difference = a.nanometres() - b.nanometres();
        double square = difference * difference + 4.0 * a.nanometres() * b.nanometres() * half * half;
        return Length.ofNanometres(Math.round(Math.sqrt(square)));
    }

    /** Refuses a side that is no length, or one too long to add up. */
    static void requirePositive(String name, Length side) {
        Exact.requireInRange(name, side);
        if (!side.isPositive()) {
            throw new IllegalArgumentException(name + " was " + side + "; it must be over 0");
        }
    }

    /**
     * Returns side a.
     *
     * @return the length of the side facing angle A
     */
    public Length a() {
        return a;
    }

    /**
     * Returns side b.
     *
     * @return the length of the side facing angle B
     */
    public Length b() {
        return b;
    }

    /**
     * Returns side c.
     *
     * @return the length of the side facing angle C
     */
    public Length c() {
        return c;
    }

    /**
     * Returns angle A, between sides b and c.
     *
     * @return the angle, over 0 and under 180 degrees
     */
    public Angle angleA() {
        return angleFacing(a, b, c);
    }

    /**
     * Returns angle B, between sides a and c.
     *
     * @return the angle, over 0 and under 180 degrees
     */
    public Angle angleB() {
        return angleFacing(b, a, c);
    }

    /**
     * Returns angle C, between sides a and b.
     *
     * @return the angle, over 0 and under 180 degrees
     */
    public Angle angleC() {
        return angleFacing(c, a, b);
    }

    /**
     * Returns the area: half of a times b times the sine of C.
     *
     * @return the area
     */
    public Area area() {
        return a.times(b).times(angleC().sin() / 2);
    }

    private static Angle angleFacing(Length facing, Length one, Length other) {
        // Differences of whole nanometres are exact, so nothing cancels in a flat triangle.
        long z = facing.nanometres();
        long x = one.nanometres();
        long y = other.nanometres();
        double beside = (double) (z + y - x) * (z + x - y);
        double across = (double) (x + y + z) * (x + y - z);
        return Angle.ofRadians(2 * Math.atan2(Math.sqrt(beside), Math.sqrt(across)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Triangle triangle
                && triangle.a.equals(a)
                && triangle.b.equals(b)
                && triangle.c.equals(c);
    }

    @Override
    public int hashCode() {
        return Objects.hash(a, b, c);
    }

    /**
     * Returns the sides as text.
     *
     * @return the three sides
     */
    @Override
    public String toString() {
        return "Triangle of a " + a + ", b " + b + ", c " + c;
    }
}
