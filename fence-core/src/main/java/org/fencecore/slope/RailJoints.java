package org.fencecore.slope;

import org.fencecore.units.Length;

/**
 * How rails are cut into pieces: on the face of the posts or between them, how long the sticks are, over how many bays a
 * piece may run, and what is done at the two ends of the run.
 *
 * <p>Where nothing is said, rails run on the face of posts 3 1/2 in wide, in pieces of up to 3 bays from sticks of up to
 * 16 ft, flush with the outer edge of the end posts, cut to fit (common practice, no source). Rails between the posts are
 * single pieces, a post's width shorter than the bay.
 */
public final class RailJoints {

    private final boolean betweenPosts;
    private final Length postWidth;
    private final Length longestStick;
    private final int mostBays;
    private final Length trim;

    private RailJoints(Builder builder) {
        this.betweenPosts = builder.betweenPosts;
        this.postWidth = builder.postWidth;
        this.longestStick = builder.longestStick;
        this.mostBays = builder.mostBays;
        this.trim = builder.trim;
    }

    /**
     * Starts with the usual values.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Tells whether rails stand between the posts and not on their face.
     *
     * @return true if each bay has its own rails from post face to post face
     */
    public boolean isBetweenPosts() {
        return betweenPosts;
    }

    /**
     * Returns how wide the posts are along the run.
     *
     * @return the width, over zero
     */
    public Length postWidth() {
        return postWidth;
    }

    /**
     * Returns the longest stick that rails are cut from.
     *
     * @return the length, over zero
     */
    public Length longestStick() {
        return longestStick;
    }

    /**
     * Returns over how many bays one piece may run.
     *
     * @return the number of bays, from 1 to 8
     */
    public int mostBays() {
        return mostBays;
    }

    /**
     * Returns how far a piece is left to run past either end of the run, to be trimmed flush when it is up.
     *
     * @return the length, zero if pieces are cut to fit
     */
    public Length trim() {
        return trim;
    }

    /** Takes the choices. */
    public static final class Builder {

        private static final int MOST_BAYS = 8;

        private boolean betweenPosts;
        private Length postWidth = Length.ofInches(3.5);
        private Length longestStick = Length.ofFeet(16);
        private int mostBays = 3;
        private Length trim = Length.ZERO;

        private Builder() {}

        /**
         * Puts the rails between the posts, each from face to face.
         *
         * @return this builder
         */
        public Builder betweenPosts() {
            this.betweenPosts = true;
            return this;
        }

        /**
         * Sets how wide the posts are along the run, 3 1/2 in if not set.
         *
         * @param width the width, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder postWidth(Length width) {
            this.postWidth = requirePositive("postWidth", width);
            return this;
        }

        /**
         * Sets the longest stick that rails are cut from, 16 ft if not set.
         *
         * @param length the length, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder longestStick(Length length) {
            this.longestStick = requirePositive("longestStick", length);
            return this;
        }

        /**
         * Sets over how many bays one piece may run, 3 if not set.
         *
         * @param bays the number of bays, from 1 to 8
         * @return this builder
         * @throws IllegalArgumentException if under 1 or over 8
         */
        public Builder mostBays(int bays) {
            if (bays < 1 || bays > MOST_BAYS) {
                throw new IllegalArgumentException(
                        "mostBays was " + bays + "; it must be from 1 to " + MOST_BAYS + ": no stick is longer");
            }
            this.mostBays = bays;
            return this;
        }

        /**
         * Lets the pieces run past either end of the run, to be trimmed flush when they are up; they are cut to fit if not
         * set.
         *
         * @param length how far they run past, 0 or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder trim(Length length) {
            if (length.isNegative()) {
                throw new IllegalArgumentException("trim was " + length + "; it must be 0 or more");
            }
            this.trim = length;
            return this;
        }

        /**
         * Returns the choices.
         *
         * @return the choices
         */
        public RailJoints build() {
            return new RailJoints(this);
        }

        private static Length requirePositive(String name, Length length) {
            if (!length.isPositive()) {
                throw new IllegalArgumentException(name + " was " + length + "; it must be over 0");
            }
            return length;
        }
    }
}
