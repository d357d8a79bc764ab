package org.fencecore.rail;

import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where the rails sit on the boards, and of what pieces they are made.
 *
 * <p>The rails are measured from the boards and not from the ground, so that they stay parallel to the line of the board
 * bottoms wherever that is lifted. Where nothing is said (common practice, no source): boards of 6 ft, three rails on
 * edge 3 1/2 in deep, the top of the top rail 4 in below the tops of the boards, and the bottom of the bottom rail 4 in
 * above their bottoms, which is 6 in above the ground where the boards stand 2 in clear of it. Further rails share the
 * height between those two evenly; their number is given, or follows from the widest space allowed between two.
 *
 * <p>Rails run on the face of the posts, in pieces over up to 3 bays as far as a stick of 16 ft reaches, cut to fit
 * (common practice, no source). So a bay of 8 ft whose rails run past its corner post takes a piece of its own from a
 * longer stick, and bays of 7 ft take a piece for every two. Rails between the posts are single pieces from face to face.
 */
public final class RailSpec {

    private static final int MOST_RAILS = 10;
    private static final int MOST_BAYS = 4;

    private final Length boardLength;
    private final Length railDepth;
    private final Length topRailBelowTops;
    private final Length bottomRailAboveBottoms;
    private final int rails;
    private final boolean betweenPosts;
    private final Length longestStick;
    private final int mostBays;
    private final Length trim;

    private RailSpec(Builder builder) {
        this.boardLength = builder.boardLength;
        this.railDepth = builder.railDepth;
        this.topRailBelowTops = builder.topRailBelowTops;
        this.bottomRailAboveBottoms = builder.bottomRailAboveBottoms;
        this.rails = builder.maximumSpace == null ? builder.rails : railsFor(builder.maximumSpace);
        this.betweenPosts = builder.betweenPosts;
        this.longestStick = builder.longestStick;
        this.mostBays = builder.mostBays;
        this.trim = builder.trim;
        requireRoom(railDepth);
    }

    /** With n rails the spaces are (span - n * depth) / (n - 1), so n is at least (span + space) / (depth + space). */
    private int railsFor(Length space) {
        Length span = boardLength.minus(topRailBelowTops).minus(bottomRailAboveBottoms);
        Length whole = span.plus(space);
        Length each = railDepth.plus(space);
        long count = Math.max(2, whole.wholePieces(each) + (isWhole(whole, each) ? 0 : 1));
        if (count > MOST_RAILS) {
            throw new IllegalArgumentException("maximumSpace was " + space + ", which takes " + count
                    + " rails on boards of " + boardLength + "; there may be up to " + MOST_RAILS
                    + ", so allow more space between them");
        }
        return (int) count;
    }

    private static boolean isWhole(Length whole, Length each) {
        return each.times(whole.wholePieces(each)).equals(whole);
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
     * Returns how long the boards are.
     *
     * @return the length, over zero
     */
    public Length boardLength() {
        return boardLength;
    }

    /**
     * Returns how deep a rail is, square to its length, as it is sawn.
     *
     * @return the depth, over zero
     */
    public Length railDepth() {
        return railDepth;
    }

    /**
     * Returns how far the top of the top rail is below the tops of the boards.
     *
     * @return the distance, plumb
     */
    public Length topRailBelowTops() {
        return topRailBelowTops;
    }

    /**
     * Returns how far the bottom of the bottom rail is above the bottoms of the boards.
     *
     * @return the distance, plumb
     */
    public Length bottomRailAboveBottoms() {
        return bottomRailAboveBottoms;
    }

    /**
     * Returns how many rails there are.
     *
     * @return the number, from 2 to 10
     */
    public int rails() {
        return rails;
    }

    /**
     * Tells whether rails stand between the posts, flush with their outside faces, and not on these faces.
     *
     * @return true if each bay has its own rails from post face to post face
     */
    public boolean isBetweenPosts() {
        return betweenPosts;
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
     * @return the number of bays, from 1 to 4
     */
    public int mostBays() {
        return mostBays;
    }

    /**
     * Returns how far a piece is left to run past either end of the rails, to be trimmed flush when it is up.
     *
     * @return the length, zero if pieces are cut to fit
     */
    public Length trim() {
        return trim;
    }

    /**
     * Returns the same rails from sticks that are no longer than those on the shelf.
     *
     * @param length the longest stick on the shelf, over zero
     * @return rails like these whose longest stick is the shorter of the two
     * @throws IllegalArgumentException if not over zero
     */
    public RailSpec withSticksUpTo(Length length) {
        return length.compareTo(longestStick) < 0
                ? new Builder(this).longestStick(length).build()
                : this;
    }

    /**
     * Returns what is left between all the rails together when each takes a plumb depth.
     *
     * @throws IllegalArgumentException if nothing is left
     */
    Length requireRoom(Length plumbDepth) {
        Length span = boardLength.minus(topRailBelowTops).minus(bottomRailAboveBottoms);
        Length room = span.minus(plumbDepth.times(rails));
        if (!room.isPositive()) {
            throw new IllegalArgumentException("number of rails was " + rails + ", each " + plumbDepth
                    + " plumb, on boards of " + boardLength + "; they need more than " + plumbDepth.times(rails)
                    + " and have " + span + " from the bottom of the lowest to the top of the highest, so use longer"
                    + " boards, or fewer or shallower rails, or put the outer rails nearer to the board ends");
        }
        return room;
    }

    /** Takes the choices of a spec. */
    public static final class Builder {

        private Length boardLength = Length.ofFeet(6);
        private Length railDepth = Length.ofInches(3.5);
        private Length topRailBelowTops = Length.ofInches(4);
        private Length bottomRailAboveBottoms = Length.ofInches(4);
        private int rails = 3;
        private @Nullable Length maximumSpace;
        private boolean betweenPosts;
        private Length longestStick = Length.ofFeet(16);
        private int mostBays = 3;
        private Length trim = Length.ZERO;

        private Builder() {}

        private Builder(RailSpec from) {
            boardLength = from.boardLength;
            railDepth = from.railDepth;
            topRailBelowTops = from.topRailBelowTops;
            bottomRailAboveBottoms = from.bottomRailAboveBottoms;
            rails = from.rails;
            betweenPosts = from.betweenPosts;
            longestStick = from.longestStick;
            mostBays = from.mostBays;
            trim = from.trim;
        }

        /**
         * Sets how long the boards are, 6 ft if not set.
         *
         * @param length the length, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder boardLength(Length length) {
            this.boardLength = requirePositive("boardLength", length);
            return this;
        }

        /**
         * Sets how deep the rails are as sawn, 3 1/2 in if not set.
         *
         * @param depth the depth square to the rail, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder railDepth(Length depth) {
            this.railDepth = requirePositive("railDepth", depth);
            return this;
        }

        /**
         * Sets how far the top of the top rail is below the tops of the boards, 4 in if not set.
         *
         * @param distance the distance, plumb, zero or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder topRailBelowTops(Length distance) {
            this.topRailBelowTops = requireNotNegative("topRailBelowTops", distance);
            return this;
        }

        /**
         * Sets how far the bottom of the bottom rail is above the bottoms of the boards, 4 in if not set.
         *
         * @param distance the distance, plumb, zero or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder bottomRailAboveBottoms(Length distance) {
            this.bottomRailAboveBottoms = requireNotNegative("bottomRailAboveBottoms", distance);
            return this;
        }

        /**
         * Sets how many rails there are, 3 if not set.
         *
         * @param count the number, from 2 to 10
         * @return this builder
         * @throws IllegalArgumentException if under 2 or over 10
         */
        public Builder rails(int count) {
            if (count < 2 || count > MOST_RAILS) {
                throw new IllegalArgumentException(
                        "rails was " + count + "; it must be from 2 to 10, a bottom and a top rail and those between");
            }
            this.rails = count;
            this.maximumSpace = null;
            return this;
        }

        /**
         * Sets as many rails as it takes for no space between two, on level bays, to be wider than this, in place of a
         * number of rails.
         *
         * @param space the widest clear space between two rails, over zero
         * @return this builder
         * @throws IllegalArgumentException if not over zero
         */
        public Builder maximumSpace(Length space) {
            this.maximumSpace = requirePositive("maximumSpace", space);
            return this;
        }

        /**
         * Puts the rails between the posts, each from face to face and flush with the outside faces; on those faces if
         * not set.
         *
         * @return this builder
         */
        public Builder betweenPosts() {
            this.betweenPosts = true;
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
         * Sets over how many bays one piece may run, 3 if not set; 1 for a piece for each bay.
         *
         * @param bays the number of bays, from 1 to 4
         * @return this builder
         * @throws IllegalArgumentException if under 1 or over 4
         */
        public Builder mostBays(int bays) {
            if (bays < 1 || bays > MOST_BAYS) {
                throw new IllegalArgumentException("mostBays was " + bays + "; it must be from 1 to " + MOST_BAYS
                        + ": a stick over more bays is too long to handle");
            }
            this.mostBays = bays;
            return this;
        }

        /**
         * Lets the pieces run past either end of the rails, to be trimmed flush when they are up; cut to fit if not set.
         *
         * @param length how far they run past, from 0 to 2 ft
         * @return this builder
         * @throws IllegalArgumentException if negative or over 2 ft
         */
        public Builder trim(Length length) {
            if (length.isNegative() || length.compareTo(Length.ofFeet(2)) > 0) {
                throw new IllegalArgumentException("trim was " + length
                        + "; it must be from 0 to 2 ft: a longer end is cut off before the piece is up");
            }
            this.trim = length;
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         * @throws IllegalArgumentException if the rails leave no space between them on the boards, or if the maximum space
         *     takes over 10 of them
         */
        public RailSpec build() {
            return new RailSpec(this);
        }

        private static Length requirePositive(String name, Length length) {
            if (!length.isPositive()) {
                throw new IllegalArgumentException(name + " was " + length + "; it must be over 0");
            }
            return length;
        }

        private static Length requireNotNegative(String name, Length length) {
            if (length.isNegative()) {
                throw new IllegalArgumentException(
                        name + " was " + length + "; it must be 0 or more, measured towards the middle of the boards");
            }
            return length;
        }
    }
}
