package org.fencecore.site;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.gate.HingeSide;
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
    private final boolean selfClosing;
    private final boolean selfLatching;
    private final boolean lockable;
    private final @Nullable Length releaseHeight;
    private final boolean releaseInside;

    private GateLocation(Builder from, Length centre, Length clearOpening) {
        this.name = from.name;
        this.side = from.side;
        this.centre = centre;
        this.clearOpening = clearOpening;
        this.hinges = from.hinges;
        this.opensOutward = from.opensOutward;
        this.twoLeaves = from.twoLeaves;
        this.raked = from.raked;
        this.selfClosing = from.selfClosing;
        this.selfLatching = from.selfLatching;
        this.lockable = from.lockable;
        this.releaseHeight = from.releaseHeight;
        this.releaseInside = from.releaseInside;
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
    public boolean hasTwoLeaves() {
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
     * Tells whether something closes it.
     *
     * @return true if it closes by itself
     */
    public boolean isSelfClosing() {
        return selfClosing;
    }

    /**
     * Tells whether its latch catches when it falls shut.
     *
     * @return true if it latches by itself
     */
    public boolean isSelfLatching() {
        return selfLatching;
    }

    /**
     * Tells whether a lock can be put on its latch.
     *
     * @return true if it takes a lock
     */
    public boolean isLockable() {
        return lockable;
    }

    /**
     * Returns how high the release of its latch is.
     *
     * @return the height over the ground, if said
     */
    public Optional<Length> releaseHeight() {
        return Optional.ofNullable(releaseHeight);
    }

    /**
     * Tells on which side of the gate the release of its latch is worked.
     *
     * @return true inside the lot; without meaning where no release was said
     */
    public boolean isReleaseInside() {
        return releaseInside;
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
        private boolean selfClosing = false;
        private boolean selfLatching = false;
        private boolean lockable = false;
        private @Nullable Length releaseHeight;
        private boolean releaseInside = true;

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
         * Sets whether something closes the gate, as around a pool; nothing does when not said.
         *
         * @param closes true for spring hinges or a closer
         * @return this builder
         */
        public Builder selfClosing(boolean closes) {
            selfClosing = closes;
            return this;
        }

        /**
         * Sets whether the latch catches when the gate falls shut, as around a pool; it does not when not said.
         *
         * @param latches true for a latch that catches
         * @return this builder
         */
        public Builder selfLatching(boolean latches) {
            selfLatching = latches;
            return this;
        }

        /**
         * Sets whether a lock can be put on the latch; none can when not said.
         *
         * @param locks true for a latch that takes a lock
         * @return this builder
         */
        public Builder lockable(boolean locks) {
            lockable = locks;
            return this;
        }

        /**
         * Sets where the release of the latch is, which a rule for pools asks.
         *
         * @param height how high it is over the ground, over zero, to 100 ft
         * @param inside true if it is worked from inside the lot
         * @return this builder
         */
        public Builder latchRelease(Length height, boolean inside) {
            releaseHeight = Objects.requireNonNull(height, "height");
            releaseInside = inside;
            return this;
        }

        /**
         * Returns the gate's place.
         *
         * @return the gate
         * @throws IllegalArgumentException if the place or the opening was not said, the side is under 1, the place is
         *     negative, or the opening or the release of the latch is not over zero and up to 100 ft
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
            if (releaseHeight != null && (!releaseHeight.isPositive() || releaseHeight.compareTo(WIDEST) > 0)) {
                throw new IllegalArgumentException("release of the latch of " + name + " was " + releaseHeight
                        + "; it must be over 0 and no more than " + WIDEST + " over the ground: check its unit");
            }
            return new GateLocation(this, centre, clearOpening);
        }
    }
}
