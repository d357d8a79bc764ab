package org.fencecore.stakeout;

import org.fencecore.units.Length;

/**
 * How strings are stretched and proved: where batter boards stand, how long the tape is, and in which steps it is read.
 *
 * <p>Where nothing is said, boards stand 4 ft beyond the corners, the tape is 100 ft long, and legs of check triangles
 * are whole feet (common practice, no source). Builders' guides give 4 to 10 ft beyond the corner; more keeps the boards
 * clear of the digging, less keeps them on the lot.
 *
 * <p>Example: {@code StringSpec.builder().setBack(Length.ofFeet(3)).build()} for boards 3 ft beyond the corners.
 */
public final class StringSpec {

    private final Length setBack;
    private final Length tape;
    private final Length step;

    private StringSpec(Builder builder) {
        setBack = builder.setBack;
        tape = builder.tape;
        step = builder.step;
    }

    /**
     * Starts a spec with the usual values.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how far beyond a corner, along the string, its batter board stands.
     *
     * @return the distance from where the strings cross to where the string crosses the board
     */
    public Length setBack() {
        return setBack;
    }

    /**
     * Returns the longest distance that is measured in one piece when a corner is proved.
     *
     * @return the length of the tape
     */
    public Length tape() {
        return tape;
    }

    /**
     * Returns what the legs of check triangles are whole numbers of.
     *
     * @return the step
     */
    public Length step() {
        return step;
    }

    /** Takes the choices of a spec. */
    public static final class Builder {

        private Length setBack = Length.ofFeet(4);
        private Length tape = Length.ofFeet(100);
        private Length step = Length.ofFeet(1);

        private Builder() {}

        /**
         * Sets how far beyond a corner, along the string, its batter board stands, 4 ft if not set.
         *
         * @param distance the distance, over zero and up to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if it is out of its range
         */
        public Builder setBack(Length distance) {
            setBack = require("setBack", distance, Length.ofFeet(100));
            return this;
        }

        /**
         * Sets the length of the tape, 100 ft if not set.
         *
         * @param length the length, over zero and up to 1000 ft
         * @return this builder
         * @throws IllegalArgumentException if it is out of its range
         */
        public Builder tape(Length length) {
            tape = require("tape", length, Length.ofFeet(1000));
            return this;
        }

        /**
         * Sets what the legs of check triangles are whole numbers of, 1 ft if not set; 100 mm suits a metric tape.
         *
         * @param length the step, over zero and up to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if it is out of its range
         */
        public Builder step(Length length) {
            step = require("step", length, Length.ofFeet(100));
            return this;
        }

        private static Length require(String name, Length length, Length most) {
            if (!length.isPositive() || length.compareTo(most) > 0) {
                throw new IllegalArgumentException(
                        name + " was " + length + "; it must be over 0 and up to " + most + ": check the unit");
            }
            return length;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         */
        public StringSpec build() {
            return new StringSpec(this);
        }
    }
}
