package org.fencecore.footing;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The shape of a post hole: round or square straight down, tapered, or belled out at the bottom.
 *
 * <p>A hole that is wider at the bottom is not lifted as easily by freezing ground; one that is wider at the top is. Above
 * grade concrete goes on as wide as the hole is at grade.
 *
 * <p>Example: a hole 12 in wide with a bell of 18 in in its lowest 8 in, 36 in deep.
 *
 * <pre>{@code
 * HoleShape hole = HoleShape.belled(Length.ofInches(12), Length.ofInches(18), Length.ofInches(8));
 * hole.bearingWidth();                  // 12 in
 * hole.volume(Length.ofInches(36));     // 2.662 cu ft
 * }</pre>
 */
public final class HoleShape {

    private static final Length WIDEST = Length.ofFeet(10);
    private static final Length HIGHEST_BELL = Length.ofFeet(4);

    private final boolean square;
    private final Length top;
    private final Length bottom;
    private final @Nullable Length bell;

    private HoleShape(boolean square, Length top, Length bottom, @Nullable Length bell) {
        this.square = square;
        this.top = top;
        this.bottom = bottom;
        this.bell = bell;
    }

    /**
     * Returns a round hole straight down.
     *
     * @param diameter the diameter, over 0, to 10 ft
     * @return the shape
     * @throws IllegalArgumentException if out of that range
     */
    public static HoleShape round(Length diameter) {
        Limits.overZero("holeDiameter", diameter, WIDEST);
        return new HoleShape(false, diameter, diameter, null);
    }

    /**
     * Returns a square hole straight down.
     *
     * @param side the width of a side, over 0, to 10 ft
     * @return the shape
     * @throws IllegalArgumentException if out of that range
     */
    public static HoleShape square(Length side) {
        Limits.overZero("side", side, WIDEST);
        return new HoleShape(true, side, side, null);
    }

    /**
     * Returns a round hole that widens, or narrows, evenly from grade to its bottom.
     *
     * @param atGrade the diameter at grade, over 0, to 10 ft
     * @param atBottom the diameter at the bottom, over 0, to 10 ft
     * @return the shape
     * @throws IllegalArgumentException if either is out of its range
     */
    public static HoleShape tapered(Length atGrade, Length atBottom) {
        Limits.overZero("atGrade", atGrade, WIDEST);
        Limits.overZero("atBottom", atBottom, WIDEST);
        return new HoleShape(false, atGrade, atBottom, null);
    }

    /**
     * Returns a round hole that is straight down to a bell, which widens evenly to the bottom.
     *
     * @param shaft the diameter above the bell, over 0, to 10 ft
     * @param atBottom the diameter of the bell at the bottom, from {@code shaft} to 10 ft
     * @param height the height of the bell, over 0, to 4 ft
     * @return the shape
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static HoleShape belled(Length shaft, Length atBottom, Length height) {
        Limits.overZero("shaft", shaft, WIDEST);
        Limits.within("atBottom", atBottom, shaft, WIDEST);
        Limits.overZero("height", height, HIGHEST_BELL);
        return new HoleShape(false, shaft, atBottom, height);
    }

    /**
     * Returns how wide the hole is at grade.
     *
     * @return the diameter, or the side of a square
     */
    public Length width() {
        return top;
    }

    /**
     * Returns how wide the hole is at its bottom.
     *
     * @return the diameter, or the side of a square
     */
    public Length bottomWidth() {
        return bottom;
    }

    /**
     * Returns how high the bell at the bottom is.
     *
     * @return the height of the part that widens; empty for a hole without a bell
     */
    public Optional<Length> bell() {
        return Optional.ofNullable(bell);
    }

    /**
     * Returns the width that bears on the soil beside it: the diameter, the diagonal of a square, or of a hole that is
     * not straight its narrowest.
     *
     * @return b of IBC 2018, section 1807.3.2.1
     */
    public Length bearingWidth() {
        return square ? Length.ofMetres(top.metres() * Math.sqrt(2)) : narrowest();
    }

    /**
     * Returns how much ground the hole takes up.
     *
     * @return the diameter where it is widest, of a square one the diagonal
     */
    public Length widest() {
        return square ? bearingWidth() : Length.max(top, bottom);
    }

    /**
     * Tells whether the hole is square.
     *
     * @return true if so
     */
    public boolean isSquare() {
        return square;
    }

    /**
     * Returns what a hole of this shape holds.
     *
     * @param depth how deep it is, over 0, to 100 ft
     * @return the volume
     * @throws IllegalArgumentException if out of that range
     */
    public Volume volume(Length depth) {
        Limits.overZero("depth", depth, Length.ofFeet(100));
        return Volume.ofCubicMetres(volume(Length.ZERO, depth, depth));
    }

    private Length narrowest() {
        return Length.min(top, bottom);
    }

    /** Tells whether a square post of that width goes in. */
    boolean takes(Length postWidth) {
        double post = square ? postWidth.metres() : postWidth.metres() * Math.sqrt(2);
        return post < narrowest().metres();
    }

    boolean isStraight() {
        return top.equals(bottom);
    }

    boolean isWiderAtTop() {
        return top.compareTo(bottom) > 0;
    }

    /** The area in square metres at grade. */
    double areaAtTop() {
        return area(top.metres());
    }

    /** The area in square metres at the bottom. */
    double areaAtBottom() {
        return area(bottom.metres());
    }

    /** The length of the edge in metres at grade. */
    double perimeter() {
        return top.metres() * (square ? 4 : Math.PI);
    }

    private double area(double width) {
        return width * width * (square ? 1 : Math.PI / 4);
    }

    /**
     * The cubic metres between two heights above the bottom, of a hole so deep; above grade as wide as at grade.
     */
    double volume(Length from, Length to, Length depth) {
        if (isStraight()) {
            return areaAtTop() * to.minus(from).metres();
        }
        Length flare = bell == null ? depth : Length.min(bell, depth);
        Length a = Length.min(from, flare);
        Length b = Length.min(to, flare);
        double d1 = widthAt(a, flare);
        double d2 = widthAt(b, flare);
        double flared = Math.PI / 12 * b.minus(a).metres() * (d1 * d1 + d1 * d2 + d2 * d2);
        double above = to.minus(b).minus(from.minus(a)).metres();
        return flared + areaAtTop() * above;
    }

    private double widthAt(Length height, Length flare) {
        double part = height.ratioTo(flare).value();
        return bottom.metres() + part * (top.metres() - bottom.metres());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HoleShape that
                && square == that.square
                && top.equals(that.top)
                && bottom.equals(that.bottom)
                && Objects.equals(bell, that.bell);
    }

    @Override
    public int hashCode() {
        return Objects.hash(square, top, bottom, bell);
    }

    /**
     * Returns the shape in words.
     *
     * @return such as {@code 10 1/2" wide}
     */
    @Override
    public String toString() {
        String wide = Written.tape(top) + (square ? " square" : " wide");
        if (isStraight()) {
            return wide;
        }
        return wide
                + (bell == null ? ", tapered to " : ", belled in its lowest " + Written.tape(bell) + " to ")
                + Written.tape(bottom);
    }
}
