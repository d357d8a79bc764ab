package org.fencecore.slope;

import org.fencecore.units.Length;

/**
 * How the tops of the boards are to run: straight to the string, following the ground, stepped, or arched or dipped
 * between posts. {@link TopLine} is such a shape over a run.
 */
public final class TopShape {

    /** How tops run. */
    public enum Kind {
        /** Straight, as far over the ground as the string. */
        STRAIGHT("straight to the string"),
        /** Up and down with the ground. */
        GROUND("following the ground"),
        /** Level in each bay. */
        STEPPED("level in each bay"),
        /** Highest in the middle of each bay. */
        ARCHED("arched between posts"),
        /** Lowest in the middle of each bay. */
        DIPPED("dipped between posts");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    private static final Length MOST = Length.ofFeet(10);

    private final Kind kind;
    private final Length rise;

    private TopShape(Kind kind, Length rise) {
        this.kind = kind;
        this.rise = rise;
    }

    /**
     * Returns tops parallel to the bottoms: all boards are of one length and cut square.
     *
     * @return the shape
     */
    public static TopShape straight() {
        return new TopShape(Kind.STRAIGHT, Length.ZERO);
    }

    /**
     * Returns tops that follow the ground at the height of a board standing at the clearance.
     *
     * @return the shape
     */
    public static TopShape followingGround() {
        return new TopShape(Kind.GROUND, Length.ZERO);
    }

    /**
     * Returns tops that are level in each bay, a board's length over the higher end of the bay's bottoms. Over stepped
     * bays it is the straight line; over racked bays the boards are longer downhill.
     *
     * @return the shape
     */
    public static TopShape stepped() {
        return new TopShape(Kind.STEPPED, Length.ZERO);
    }

    /**
     * Returns tops that rise between the posts. In a bay narrower than twice the rise the arch is a half circle, and so
     * much lower.
     *
     * @param rise how much higher the tops are in the middle of a bay, over zero and up to 10 ft
     * @return the shape
     * @throws IllegalArgumentException if the rise is out of its range
     */
    public static TopShape arched(Length rise) {
        return new TopShape(Kind.ARCHED, require("rise", rise));
    }

    /**
     * Returns tops that dip between the posts. In a bay narrower than twice the dip it is a half circle, and so much
     * shallower.
     *
     * @param dip how much lower the tops are in the middle of a bay, over zero and up to 10 ft
     * @return the shape
     * @throws IllegalArgumentException if the dip is out of its range
     */
    public static TopShape dipped(Length dip) {
        return new TopShape(Kind.DIPPED, require("dip", dip));
    }

    private static Length require(String name, Length rise) {
        if (!rise.isPositive() || rise.compareTo(MOST) > 0) {
            throw new IllegalArgumentException(name + " between posts was " + rise + "; it must be over 0 and up to "
                    + MOST + ": for no arch and no dip take straight()");
        }
        return rise;
    }

    /**
     * Returns how the tops run.
     *
     * @return the kind of shape
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns how much the tops rise or dip between posts.
     *
     * @return the rise or the dip, zero for the other shapes
     */
    public Length rise() {
        return rise;
    }

    /**
     * Returns how much higher than at the posts the tops are in the middle of a bay.
     *
     * @return the rise of an arch, negative for a dip, zero for the other shapes
     */
    public Length overPosts() {
        return kind == Kind.DIPPED ? rise.negated() : rise;
    }

    /**
     * Tells whether all boards are of one length and their tops cut square.
     *
     * @return true if the tops are straight to the string
     */
    public boolean isStraight() {
        return kind == Kind.STRAIGHT;
    }

    @Override
    public String toString() {
        return kind.words + (rise.isZero() ? "" : " by " + rise);
    }
}
