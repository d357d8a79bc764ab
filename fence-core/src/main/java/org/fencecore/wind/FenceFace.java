package org.fencecore.wind;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.internal.Limits;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What a straight run of fence shows the wind: how long and high it is, how much of it is solid, and what its ends do.
 *
 * <p>Not said, the face starts at grade, is solid, and both ends are free. An end that turns a corner with more fence
 * has a return corner, which shelters the end of the face.
 *
 * <p>Example: 120 ft of solid fence, 6 ft high, that turns a corner with another 40 ft at its end.
 *
 * <pre>{@code
 * FenceFace face = FenceFace.builder()
 *         .length(Length.ofFeet(120))
 *         .top(Length.ofFeet(6))
 *         .returnAtEnd(Length.ofFeet(40))
 *         .build();
 * face.height();   // 6 ft
 * }</pre>
 */
public final class FenceFace {

    private final Length length;
    private final Length bottom;
    private final Length top;
    private final Ratio solid;
    private final Length returnAtStart;
    private final Length returnAtEnd;
    private final @Nullable Length roundMembers;

    private FenceFace(Builder from, Length length, Length top) {
        this.length = length;
        this.bottom = from.bottom;
        this.top = top;
        this.solid = from.solid;
        this.returnAtStart = from.returnAtStart;
        this.returnAtEnd = from.returnAtEnd;
        this.roundMembers = from.roundMembers;
        if (bottom.compareTo(top) >= 0) {
            throw new IllegalArgumentException(
                    "bottom was " + bottom + " and top " + top + "; the top must be higher, so check their order");
        }
    }

    /**
     * Starts from a solid face from the ground up with free ends.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how long the run is.
     *
     * @return the length
     */
    public Length length() {
        return length;
    }

    /**
     * Returns how far above grade the face starts.
     *
     * @return the height, zero on the ground
     */
    public Length bottom() {
        return bottom;
    }

    /**
     * Returns how far above grade the face ends.
     *
     * @return the height
     */
    public Length top() {
        return top;
    }

    /**
     * Returns how high the face itself is.
     *
     * @return top less bottom
     */
    public Length height() {
        return top.minus(bottom);
    }

    /**
     * Returns how much of the face is solid.
     *
     * @return the solid part
     */
    public Ratio solidFraction() {
        return solid;
    }

    /**
     * Returns how much fence turns the corner at the start.
     *
     * @return the length of the return, zero for a free end
     */
    public Length returnAtStart() {
        return returnAtStart;
    }

    /**
     * Returns how much fence turns the corner at the end.
     *
     * @return the length of the return, zero for a free end
     */
    public Length returnAtEnd() {
        return returnAtEnd;
    }

    /**
     * Returns how thick the round members of an open fence are.
     *
     * @return the diameter; empty if they are flat
     */
    public Optional<Length> roundMembers() {
        return Optional.ofNullable(roundMembers);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FenceFace that
                && length.equals(that.length)
                && bottom.equals(that.bottom)
                && top.equals(that.top)
                && solid.equals(that.solid)
                && returnAtStart.equals(that.returnAtStart)
                && returnAtEnd.equals(that.returnAtEnd)
                && Objects.equals(roundMembers, that.roundMembers);
    }

    @Override
    public int hashCode() {
        return Objects.hash(length, bottom, top, solid, returnAtStart, returnAtEnd, roundMembers);
    }

    @Override
    public String toString() {
        return "face " + Written.tape(length) + " long from " + Written.tape(bottom) + " to " + Written.tape(top)
                + " above grade, " + solid + " solid, returns " + Written.tape(returnAtStart) + " and "
                + Written.tape(returnAtEnd)
                + (roundMembers == null ? "" : ", round members of " + Written.tape(roundMembers));
    }

    /** Collects what a run shows the wind. */
    public static final class Builder {

        private static final Length LONGEST = Length.ofFeet(100_000);
        private static final Length THICKEST = Length.ofFeet(2);

        private @Nullable Length length;
        private Length bottom = Length.ZERO;
        private @Nullable Length top;
        private Ratio solid = Ratio.of(1);
        private Length returnAtStart = Length.ZERO;
        private Length returnAtEnd = Length.ZERO;
        private @Nullable Length roundMembers;

        private Builder() {}

        /**
         * Sets how long the straight run is, from end to end or to its corners; it has to be set.
         *
         * @param newLength the length, over 0, to 100,000 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder length(Length newLength) {
            this.length = Limits.overZero("length", newLength, LONGEST);
            return this;
        }

        /**
         * Sets how far above grade the face starts; on the ground if not set.
         *
         * @param height the height, from 0 to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder bottom(Length height) {
            this.bottom = Limits.within("bottom", height, Length.ZERO, WindLimits.HIGHEST);
            return this;
        }

        /**
         * Sets how far above grade the face ends; it has to be set.
         *
         * @param height the height, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder top(Length height) {
            this.top = Limits.overZero("top", height, WindLimits.HIGHEST);
            return this;
        }

        /**
         * Sets how much of the face is solid, seen square on; all of it if not set. A shadowbox counts as solid, since
         * the wind does not see through it.
         *
         * @param fraction the solid part, 0.01 to 1
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder solidFraction(Ratio fraction) {
            this.solid = WindLimits.within("fraction", fraction, 0.01, 1, "so give solid area over gross area");
            return this;
        }

        /**
         * Sets how much fence turns the corner at the start; a free end if not set.
         *
         * @param corner the length of the return, 0 to 100,000 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder returnAtStart(Length corner) {
            this.returnAtStart = Limits.within("returnAtStart", corner, Length.ZERO, LONGEST);
            return this;
        }

        /**
         * Sets how much fence turns the corner at the end; a free end if not set.
         *
         * @param corner the length of the return, 0 to 100,000 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder returnAtEnd(Length corner) {
            this.returnAtEnd = Limits.within("returnAtEnd", corner, Length.ZERO, LONGEST);
            return this;
        }

        /**
         * Makes the members of an open fence round ones; flat boards if not set. Only a face less than 0.7 solid is
         * reckoned by its members.
         *
         * @param diameter their diameter, over 0, to 2 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder roundMembers(Length diameter) {
            this.roundMembers = Limits.overZero("roundMembers", diameter, THICKEST);
            return this;
        }

        /**
         * Returns the face.
         *
         * @return the face
         * @throws IllegalArgumentException if length or top was not set, or the top is not above the bottom
         */
        public FenceFace build() {
            if (length == null) {
                throw new IllegalArgumentException("length was not set; say how long the run is");
            }
            if (top == null) {
                throw new IllegalArgumentException("top was not set; say how far above grade the fence reaches");
            }
            return new FenceFace(this, length, top);
        }
    }
}
