package org.fencecore.slope;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How a fence is to meet sloping ground: by which treatment, how high its boards stand, how far its bays can rack, in
 * what increments it steps and how long a string may be.
 *
 * <p>Where nothing is said, bays are racked, the boards stand 2 in over the ground at the posts, may come down to half
 * their clearance between them, and the gap may open to 2 in more than their clearance; steps are whole inches, and a
 * string is stretched over 100 ft at the most, since a longer one sags (all common practice, no source). There is no
 * limit to the racking but the 100 % beyond which {@link SlopeFit} takes no ground.
 *
 * <p>Example: {@code SlopeSpec.builder().clearance(Length.ofInches(3)).build()} keeps the boards 3 in up at the posts,
 * 1 1/2 in at the least and 5 in at the most.
 */
public final class SlopeSpec {

    /** What is done about a gap under the boards of a bay that is wider than the maximum clearance. */
    public enum UnderBoards {
        /** It stays open, and a finding says so. */
        OPEN("left open"),
        /** It is closed with boards laid lengthwise under the bay. */
        KICK_BOARD("closed with kick boards"),
        /** The boards of that bay are longer and cut to the ground. */
        BOARDS_TO_GROUND("closed by boards cut to the ground");

        private final String words;

        UnderBoards(String words) {
            this.words = words;
        }

        /**
         * Returns what is done in words.
         *
         * @return such as {@code closed with kick boards}
         */
        @Override
        public String toString() {
            return words;
        }
    }

    private final Treatment treatment;
    private final UnderBoards underBoards;
    private final Length clearance;
    private final Length minimumClearance;
    private final Length maximumClearance;
    private final @Nullable Slope maximumGrade;
    private final Length stepIncrement;
    private final Length longestString;

    private SlopeSpec(Builder builder) {
        this.treatment = builder.treatment;
        this.underBoards = builder.underBoards;
        this.stepIncrement = builder.stepIncrement;
        this.longestString = builder.longestString;
        this.clearance = builder.clearance;
        this.minimumClearance = Objects.requireNonNullElse(builder.minimumClearance, clearance.dividedBy(2));
        this.maximumClearance =
                Objects.requireNonNullElse(builder.maximumClearance, clearance.plus(Length.ofInches(2)));
        this.maximumGrade = builder.maximumGrade;
        if (minimumClearance.compareTo(clearance) > 0) {
            throw new IllegalArgumentException("minimumClearance was " + minimumClearance + ", over the clearance of "
                    + clearance + " at the posts; raise the clearance or lower the minimum");
        }
        if (clearance.compareTo(maximumClearance) > 0) {
            throw new IllegalArgumentException("maximumClearance was " + maximumClearance + ", under the clearance of "
                    + clearance + " at the posts; lower the clearance or raise the maximum");
        }
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
     * Returns by which treatment the fence meets the ground.
     *
     * @return the treatment
     */
    public Treatment treatment() {
        return treatment;
    }

    /**
     * Returns what is done about gaps that are wider than the maximum clearance.
     *
     * @return what closes them
     */
    public UnderBoards underBoards() {
        return underBoards;
    }

    /**
     * Returns how high the bottoms of the boards stand over the ground at a post that is not lifted.
     *
     * @return the clearance, zero or more
     */
    public Length clearance() {
        return clearance;
    }

    /**
     * Returns how near the bottoms of the boards may come to the ground anywhere.
     *
     * @return the least gap allowed, from zero to the clearance
     */
    public Length minimumClearance() {
        return minimumClearance;
    }

    /**
     * Returns how wide the gap under the boards may be anywhere.
     *
     * @return the widest gap allowed, the clearance or more
     */
    public Length maximumClearance() {
        return maximumClearance;
    }

    /**
     * Tells whether a bay with such a gap is closed: one wider than the maximum clearance is, unless it is left open, or
     * is deeper than what is closed with boards, {@link KickBoard#DEEPEST}.
     *
     * @param widest the widest gap under the boards of the bay
     * @return true if kick boards close it, or boards cut to the ground
     */
    public boolean closes(Length widest) {
        return underBoards != UnderBoards.OPEN
                && widest.compareTo(maximumClearance) > 0
                && widest.compareTo(KickBoard.DEEPEST) <= 0;
    }

    /**
     * Returns how steep a bay can be racked with the parts at hand.
     *
     * @return the rack limit, if there is one
     */
    public Optional<Slope> maximumGrade() {
        return Optional.ofNullable(maximumGrade);
    }

    /**
     * Returns what every step of a stepped run is a whole number of.
     *
     * @return the increment, over zero
     */
    public Length stepIncrement() {
        return stepIncrement;
    }

    /**
     * Returns the longest string a crew stretches, level from nail to nail. A single bay may be longer.
     *
     * @return the length, over zero
     */
    public Length longestString() {
        return longestString;
    }

    /** Takes the choices of a spec. */
    public static final class Builder {

        private static final Length FINEST = Length.ofMillimetres(1);

        private Treatment treatment = Treatment.RACKED;
        private UnderBoards underBoards = UnderBoards.OPEN;
        private Length clearance = Length.ofInches(2);
        private @Nullable Length minimumClearance;
        private @Nullable Length maximumClearance;
        private @Nullable Slope maximumGrade;
        private Length stepIncrement = Length.ofInches(1);
        private Length longestString = Length.ofFeet(100);

        private Builder() {}

        /**
         * Sets by which treatment the fence meets the ground, racked if not set.
         *
         * @param newTreatment the treatment
         * @return this builder
         */
        public Builder treatment(Treatment newTreatment) {
            this.treatment = Objects.requireNonNull(newTreatment, "newTreatment");
            return this;
        }

        /**
         * Sets what closes a gap that is wider than the maximum clearance; it stays open if not set.
         *
         * @param closing what closes it
         * @return this builder
         */
        public Builder underBoards(UnderBoards closing) {
            this.underBoards = Objects.requireNonNull(closing, "closing");
            return this;
        }

        /**
         * Sets how high the bottoms of the boards stand over the ground at the posts, 2 in if not set.
         *
         * @param height the clearance, zero or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder clearance(Length height) {
            this.clearance = requireNotNegative("clearance", height);
            return this;
        }

        /**
         * Sets how near the boards may come to the ground between the posts, half the clearance if not set.
         *
         * @param height the least gap allowed, from zero to the clearance
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder minimumClearance(Length height) {
            this.minimumClearance = requireNotNegative("minimumClearance", height);
            return this;
        }

        /**
         * Sets how wide the gap under the boards may be, 2 in over the clearance if not set.
         *
         * @param height the widest gap allowed, the clearance or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder maximumClearance(Length height) {
            this.maximumClearance = requireNotNegative("maximumClearance", height);
            return this;
        }

        /**
         * Sets how steep a bay can be racked, uphill or downhill; without it there is no such limit. A mixed run steps
         * the bays over it.
         *
         * @param grade the rack limit, from level to 100 %
         * @return this builder
         * @throws IllegalArgumentException if negative or over 100 %
         */
        public Builder maximumGrade(Slope grade) {
            if (grade.isNegative() || grade.compareTo(SlopeFit.STEEPEST) > 0) {
                throw new IllegalArgumentException("maximumGrade was " + Written.percent(grade)
                        + "; it must be from 0 to 100 %, the same limit up and down the hill");
            }
            this.maximumGrade = grade;
            return this;
        }

        /**
         * Sets what every step is a whole number of, such as 1 in, 1/2 in or 10 mm; 1 in if not set.
         *
         * @param increment the increment, from 1 mm up
         * @return this builder
         * @throws IllegalArgumentException if under 1 mm
         */
        public Builder stepIncrement(Length increment) {
            if (increment.compareTo(FINEST) < 0) {
                throw new IllegalArgumentException("stepIncrement was " + increment + "; it must be 1 mm or more,"
                        + " since no finer step can be set out: use 1/2 in, or racked bays for no steps at all");
            }
            this.stepIncrement = increment;
            return this;
        }

        /**
         * Sets the longest string a crew stretches, 100 ft if not set.
         *
         * @param length the level length from nail to nail, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder longestString(Length length) {
            if (!length.isPositive()) {
                throw new IllegalArgumentException(
                        "longestString was " + length + "; it must be over 0: a crew stretches it from post to post");
            }
            this.longestString = length;
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         * @throws IllegalArgumentException if the clearance is not from the minimum to the maximum
         */
        public SlopeSpec build() {
            return new SlopeSpec(this);
        }

        private static Length requireNotNegative(String name, Length height) {
            if (height.isNegative()) {
                throw new IllegalArgumentException(name + " was " + height
                        + "; it must be 0 or more, so count it upwards from the ground to the boards");
            }
            return height;
        }
    }
}
