package org.fencecore.site;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.PoolGate;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where a gate goes: on which side of the lot, how far along, how wide, with one leaf or two, and which way it is hung.
 *
 * <p>Example:
 *
 * <pre>{@code
 * GateLocation gate = GateLocation.named("garden gate")
 *         .onSide(2)
 *         .centredAt(Length.ofFeet(14))
 *         .clearOpening(Length.ofInches(47.5))
 *         .build();
 * }</pre>
 */
public final class GateLocation {

    private static final Length WIDEST = Length.ofFeet(100);

    private final String name;
    private final int side;
    private final Length centre;
    private final Length clearOpening;
    private final HingeSide hinges;
    private final boolean opensOutward;
    private final boolean twoLeaves;
    private final boolean raked;
    private final @Nullable PoolGate pool;
    private final boolean waterInside;

    private GateLocation(Builder from, Length centre, Length clearOpening) {
        this.name = from.name;
        this.side = from.side;
        this.centre = centre;
        this.clearOpening = clearOpening;
        this.hinges = from.hinges;
        this.opensOutward = from.opensOutward;
        this.twoLeaves = from.twoLeaves;
        this.raked = from.raked;
        this.pool = from.pool;
        this.waterInside = from.waterInside;
    }

    /**
     * Starts a gate.
     *
     * @param name what the crew calls it, not blank
     * @return a builder that still needs the side, the place and the opening
     * @throws IllegalArgumentException if {@code name} is blank
     */
    public static Builder named(String name) {
        return new Builder(name);
    }

    /**
     * Returns what the crew calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns the side of the lot it is on.
     *
     * @return the number of the side, from 1
     */
    public int side() {
        return side;
    }

    /**
     * Returns where the middle of the opening is.
     *
     * @return the level distance along the side from the lot corner where its course begins
     */
    public Length centre() {
        return centre;
    }

    /**
     * Returns the clear width between the gate posts.
     *
     * @return the clear opening
     */
    public Length clearOpening() {
        return clearOpening;
    }

    /**
     * Returns the side the hinges are on.
     *
     * @return the hinge side, seen from outside the lot; of two leaves that of the one people open
     */
    public HingeSide hinges() {
        return hinges;
    }

    /**
     * Tells which way the gate swings.
     *
     * @return true out of the lot, false into it
     */
    public boolean opensOutward() {
        return opensOutward;
    }

    /**
     * Tells whether two leaves hang in the opening.
     *
     * @return true for two, each on its own post
     */
    public boolean twoLeaves() {
        return twoLeaves;
    }

    /**
     * Tells whether the leaf follows sloping ground, so that the fence's bottom and top lines run through it.
     *
     * @return true for a raked leaf, false for a level one
     */
    public boolean isRaked() {
        return raked;
    }

    /**
     * Returns what is wanted of a gate in the fence around a pool.
     *
     * @return the latch and the dimensions of the rule, empty away from a pool
     */
    public Optional<PoolGate> pool() {
        return Optional.ofNullable(pool);
    }

    /**
     * Tells on which side of the fence the pool is.
     *
     * @return true for the lot's side; without meaning away from a pool
     */
    public boolean waterInside() {
        return waterInside;
    }

    /**
     * Returns the opening as a stretch of the side.
     *
     * @return from post face to post face, in distances along the side
     */
    public Interval opening() {
        Length start = centre.minus(clearOpening.dividedBy(2));
        return Interval.of(start, start.plus(clearOpening));
    }

    @Override
    public String toString() {
        return name + " on side " + side;
    }

    /** Collects what is known of a gate's place. */
    public static final class Builder {

        private final String name;
        private int side;
        private @Nullable Length centre;
        private @Nullable Length clearOpening;
        private HingeSide hinges = HingeSide.LEFT;
        private boolean opensOutward = false;
        private boolean twoLeaves = false;
        private boolean raked = false;
        private @Nullable PoolGate pool;
        private boolean waterInside = true;

        private Builder(String name) {
            if (name.isBlank()) {
                throw new IllegalArgumentException("name was blank; give the gate a name the crew can call it by");
            }
            this.name = name;
        }

        /**
         * Sets the side of the lot.
         *
         * @param newSide the number of the side, from 1 in the order of the courses
         * @return this builder
         */
        public Builder onSide(int newSide) {
            side = newSide;
            return this;
        }

        /**
         * Sets where the middle of the opening is.
         *
         * @param newCentre the level distance along the side from the lot corner where its course begins
         * @return this builder
         */
        public Builder centredAt(Length newCentre) {
            centre = newCentre;
            return this;
        }

        /**
         * Sets the clear width between the gate posts.
         *
         * @param newClearOpening the clear opening, over zero, to 100 ft
         * @return this builder
         */
        public Builder clearOpening(Length newClearOpening) {
            clearOpening = newClearOpening;
            return this;
        }

        /**
         * Sets the side the hinges are on; left when not said.
         *
         * @param newHinges the hinge side, seen from outside the lot; of two leaves that of the one people open
         * @return this builder
         */
        public Builder hinges(HingeSide newHinges) {
            hinges = Objects.requireNonNull(newHinges, "newHinges");
            return this;
        }

        /**
         * Sets which way the gate swings; into the lot when not said.
         *
         * @param outward true to swing out of the lot, as a gate around a pool may have to
         * @return this builder
         */
        public Builder opensOutward(boolean outward) {
            opensOutward = outward;
            return this;
        }

        /**
         * Sets whether two leaves hang in the opening; one when not said.
         *
         * @param two true for two leaves that meet in the middle
         * @return this builder
         */
        public Builder twoLeaves(boolean two) {
            twoLeaves = two;
            return this;
        }

        /**
         * Sets whether the leaf follows sloping ground; it hangs level when not said.
         *
         * @param follows true to rake it, so that the fence's bottom and top lines run through
         * @return this builder
         */
        public Builder raked(boolean follows) {
            raked = follows;
            return this;
        }

        /**
         * Makes this a gate in the fence around a pool, held against the dimensions of a barrier rule. How high its top
         * is, which way it opens and what openings there are near the latch is taken from the plan.
         *
         * @param wanted the height and side of the release, what closes and latches by itself, and the rule's dimensions
         * @param isWaterInside true if the pool is on the lot's side of this fence
         * @return this builder
         */
        public Builder pool(PoolGate wanted, boolean isWaterInside) {
            pool = Objects.requireNonNull(wanted, "wanted");
            waterInside = isWaterInside;
            return this;
        }

        /**
         * Returns the gate's place.
         *
         * @return the gate
         * @throws IllegalArgumentException if the place or the opening was not said, the side is under 1, the place is negative or the opening is not over
         *     zero and up to 100 ft
         */
        public GateLocation build() {
            if (centre == null || clearOpening == null) {
                throw new IllegalArgumentException(
                        name + " has no place or no opening; call centredAt and clearOpening before build");
            }
            if (side < 1) {
                throw new IllegalArgumentException(
                        "side of " + name + " was " + side + "; sides are numbered from 1: call onSide");
            }
            if (centre.isNegative()) {
                throw new IllegalArgumentException("centre of " + name + " was " + centre
                        + "; it must be 0 or more, measured from the corner where the side begins");
            }
            if (!clearOpening.isPositive() || clearOpening.compareTo(WIDEST) > 0) {
                throw new IllegalArgumentException("clear opening of " + name + " was " + clearOpening
                        + "; it must be over 0 and no more than " + WIDEST + ": check its unit");
            }
            return new GateLocation(this, centre, clearOpening);
        }
    }
}
