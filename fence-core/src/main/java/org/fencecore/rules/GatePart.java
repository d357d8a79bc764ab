package org.fencecore.rules;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A gate as the rules of the place see it: its leaf, where it swings, and what shuts it.
 *
 * <p>Its leaf counts as a part of the fence for every rule. The rest is needed for pools alone. A gate that is not said to
 * close and latch by itself is taken not to.
 *
 * <p>Example: a gate that swings to the left of the fence's line, shuts by itself, and opens by a release 56 in up.
 *
 * <pre>{@code
 * GatePart gate = GatePart.of("garden gate", leaf)
 *         .withSwing(Side.LEFT)
 *         .withSelfClosing(true)
 *         .withSelfLatching(true)
 *         .withLock(true)
 *         .withRelease(Length.ofInches(56), Side.LEFT);
 * }</pre>
 */
public final class GatePart {

    private final String name;
    private final FencePart leaf;
    private final @Nullable Side swing;
    private final boolean selfClosing;
    private final boolean selfLatching;
    private final @Nullable Boolean lockable;
    private final @Nullable Length releaseHeight;
    private final @Nullable Side releaseSide;
    private final @Nullable Length openingAtRelease;

    private GatePart(
            String name,
            FencePart leaf,
            @Nullable Side swing,
            boolean selfClosing,
            boolean selfLatching,
            @Nullable Boolean lockable,
            @Nullable Length releaseHeight,
            @Nullable Side releaseSide,
            @Nullable Length openingAtRelease) {
        this.name = name;
        this.leaf = leaf;
        this.swing = swing;
        this.selfClosing = selfClosing;
        this.selfLatching = selfLatching;
        this.lockable = lockable;
        this.releaseHeight = releaseHeight;
        this.releaseSide = releaseSide;
        this.openingAtRelease = openingAtRelease;
    }

    /**
     * Returns a gate of which nothing but the leaf is told.
     *
     * @param name what one calls it, such as {@code garden gate}
     * @param leaf the leaf, shut
     * @return the gate
     * @throws IllegalArgumentException if the name is blank
     */
    public static GatePart of(String name, FencePart leaf) {
        return new GatePart(
                FencePart.requireText("name", name),
                Objects.requireNonNull(leaf, "leaf"),
                null,
                false,
                false,
                null,
                null,
                null,
                null);
    }

    /**
     * Returns this gate with its swing.
     *
     * @param side the side of the leaf's line to which it opens
     * @return the gate that swings there
     */
    public GatePart withSwing(Side side) {
        Objects.requireNonNull(side, "side");
        return new GatePart(
                name, leaf, side, selfClosing, selfLatching, lockable, releaseHeight, releaseSide, openingAtRelease);
    }

    /**
     * Returns this gate with or without something that closes it.
     *
     * @param closes true if it closes by itself
     * @return the gate
     */
    public GatePart withSelfClosing(boolean closes) {
        return new GatePart(
                name, leaf, swing, closes, selfLatching, lockable, releaseHeight, releaseSide, openingAtRelease);
    }

    /**
     * Returns this gate with or without a latch that catches when it closes.
     *
     * @param latches true if it latches by itself
     * @return the gate
     */
    public GatePart withSelfLatching(boolean latches) {
        return new GatePart(
                name, leaf, swing, selfClosing, latches, lockable, releaseHeight, releaseSide, openingAtRelease);
    }

    /**
     * Returns this gate with or without a latch that a lock can be put on.
     *
     * @param locks true if it takes a lock
     * @return the gate
     */
    public GatePart withLock(boolean locks) {
        return new GatePart(
                name, leaf, swing, selfClosing, selfLatching, locks, releaseHeight, releaseSide, openingAtRelease);
    }

    /**
     * Returns this gate with the release of its latch.
     *
     * @param height how high it is over the ground
     * @param side on which side of the leaf's line it is worked
     * @return the gate
     * @throws IllegalArgumentException if the height is negative or over 10,000 ft
     */
    public GatePart withRelease(Length height, Side side) {
        LocalRule.requireSize("height", height);
        Objects.requireNonNull(side, "side");
        return new GatePart(name, leaf, swing, selfClosing, selfLatching, lockable, height, side, openingAtRelease);
    }

    /**
     * Returns this gate with the widest opening, of the leaf or the fence, near the release. Where it is not said, the
     * leaf's widest opening is taken.
     *
     * @param width the widest opening through which a hand could reach for the release; zero behind a shield
     * @return the gate
     * @throws IllegalArgumentException if the width is negative or over 10,000 ft
     */
    public GatePart withOpeningAtRelease(Length width) {
        LocalRule.requireSize("width", width);
        return new GatePart(name, leaf, swing, selfClosing, selfLatching, lockable, releaseHeight, releaseSide, width);
    }

    /**
     * Returns what one calls it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns its leaf.
     *
     * @return the leaf, shut
     */
    public FencePart leaf() {
        return leaf;
    }

    /**
     * Returns where it opens to.
     *
     * @return the side of the leaf's line, if told
     */
    public Optional<Side> swing() {
        return Optional.ofNullable(swing);
    }

    /**
     * Tells whether it closes by itself.
     *
     * @return true if that was said
     */
    public boolean isSelfClosing() {
        return selfClosing;
    }

    /**
     * Tells whether it latches by itself.
     *
     * @return true if that was said
     */
    public boolean isSelfLatching() {
        return selfLatching;
    }

    /**
     * Tells whether it takes a lock.
     *
     * @return true or false, if told
     */
    public Optional<Boolean> isLockable() {
        return Optional.ofNullable(lockable);
    }

    /**
     * Returns how high the release is.
     *
     * @return the height over the ground, if told
     */
    public Optional<Length> releaseHeight() {
        return Optional.ofNullable(releaseHeight);
    }

    /**
     * Returns on which side the release is worked.
     *
     * @return the side of the leaf's line, if told
     */
    public Optional<Side> releaseSide() {
        return Optional.ofNullable(releaseSide);
    }

    /**
     * Returns the widest opening near the release.
     *
     * @return what was said, or else the leaf's widest opening if that is told
     */
    public Optional<Length> openingAtRelease() {
        return openingAtRelease == null ? leaf.opening() : Optional.of(openingAtRelease);
    }

    @Override
    public String toString() {
        return name;
    }
}
