package org.fencecore.rules;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * A straight part of a fence as the rules of the place see it: where it stands, between which heights, how open it is,
 * and what one could climb.
 *
 * <p>Heights are over the ground beside it, along its line from 0 to its length; a fence in steps is one part for each
 * step. Only the top has to be told. When not said, the part begins at station 0 of its place, has no thickness, reaches
 * down to the ground, and is not open at all. How wide its openings are and where its horizontal members sit is needed for
 * pools alone; what is not said there is told to be unchecked.
 *
 * <p>Example: a bay from 16 ft to 24 ft of side 2, 6 ft high and 2 in off the ground, with pickets 2 in apart; its rails,
 * 40 in apart from top to top, are on the right.
 *
 * <pre>{@code
 * FencePart bay = FencePart.on("side 2", Segment.of(from, to))
 *         .firstStation(Length.ofFeet(16))
 *         .bottom(Length.ofInches(2))
 *         .top(Length.ofFeet(6))
 *         .openness(Ratio.ofPercent(36))
 *         .opening(Length.ofInches(2))
 *         .horizontals(Length.ofInches(40), Side.RIGHT)
 *         .build();
 * }</pre>
 */
public final class FencePart {

    private static final Length HIGHEST = Length.ofFeet(100);

    private final String place;
    private final Segment line;
    private final Length firstStation;
    private final Length reach;
    private final Profile bottom;
    private final Profile top;
    private final Ratio openness;
    private final @Nullable Length opening;
    private final boolean smooth;
    private final @Nullable Length horizontalSpacing;
    private final @Nullable Side horizontalSide;
    private final boolean overPaving;

    private FencePart(Builder from) {
        place = from.place;
        line = from.line;
        firstStation = from.firstStation;
        reach = from.reach;
        bottom = requireHeights("bottom", from.bottom, line);
        top = requireHeights("top", Objects.requireNonNull(from.top, "top"), line);
        openness = from.openness;
        opening = from.opening;
        smooth = from.smooth;
        horizontalSpacing = from.horizontalSpacing;
        horizontalSide = from.horizontalSide;
        overPaving = from.overPaving;
        Length least = bottom.clearanceUnder(top).min();
        if (least.isNegative()) {
            throw new IllegalArgumentException("top was " + least.negated() + " below the bottom at station "
                    + bottom.clearanceUnder(top).minStation() + "; give heights over the ground, the top above the"
                    + " bottom");
        }
    }

    /**
     * Starts a part.
     *
     * @param place what one calls the part of the fence it belongs to, such as {@code side 2}; all parts of one place are
     *     told together
     * @param line its line in plan, in the direction in which stations count
     * @return a builder
     * @throws IllegalArgumentException if the place is blank
     */
    public static Builder on(String place, Segment line) {
        return new Builder(requireText("place", place), Objects.requireNonNull(line, "line"));
    }

    static String requireText(String name, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " was blank; findings tell it, so name it as the builder does");
        }
        return text;
    }

    private static Profile requireHeights(String name, Profile heights, Segment line) {
        Interval told = heights.extent();
        if (told.start().compareTo(LocalRule.ROUNDING) > 0
                || told.end().compareTo(line.length().minus(LocalRule.ROUNDING)) < 0) {
            throw new IllegalArgumentException(name + " was given from " + told.start() + " to " + told.end()
                    + "; the part runs from 0 to " + line.length() + ", so give heights all along it");
        }
        Length lowest = heights.lowest().elevation();
        Length highest = heights.highest().elevation();
        if (lowest.isNegative() || highest.compareTo(HIGHEST) > 0) {
            throw new IllegalArgumentException(name + " was from " + lowest + " to " + highest
                    + "; it must be from 0 to 100 ft over the ground, so check its unit and datum");
        }
        return heights;
    }

    /**
     * Returns the part of the fence it belongs to.
     *
     * @return the place
     */
    public String place() {
        return place;
    }

    /**
     * Returns its line.
     *
     * @return the line in plan
     */
    public Segment line() {
        return line;
    }

    /**
     * Returns where along its place it begins.
     *
     * @return the station of the start of its line
     */
    public Length firstStation() {
        return firstStation;
    }

    /**
     * Returns how far it reaches to either side of its line.
     *
     * @return half its thickness if its line is in the middle
     */
    public Length reach() {
        return reach;
    }

    /**
     * Returns its bottom.
     *
     * @return heights over the ground along its line
     */
    public Profile bottom() {
        return bottom;
    }

    /**
     * Returns its top.
     *
     * @return heights over the ground along its line
     */
    public Profile top() {
        return top;
    }

    /**
     * Returns how much one sees through it, square to its face.
     *
     * @return the open part of the face
     */
    public Ratio openness() {
        return openness;
    }

    /**
     * Returns its widest opening.
     *
     * @return the gap between pickets, or the least size of another opening; zero if it has none; empty if not told
     */
    public Optional<Length> opening() {
        return Optional.ofNullable(opening);
    }

    /**
     * Tells whether it has no horizontal members that one could step on.
     *
     * @return true if that was said
     */
    public boolean isSmooth() {
        return smooth;
    }

    /**
     * Returns how far apart its horizontal members are.
     *
     * @return the least distance from top to top; empty if there are none or they were not told
     */
    public Optional<Length> horizontalSpacing() {
        return Optional.ofNullable(horizontalSpacing);
    }

    /**
     * Returns on which side of its line the horizontal members are.
     *
     * @return the side; empty if there are none or they were not told
     */
    public Optional<Side> horizontalSide() {
        return Optional.ofNullable(horizontalSide);
    }

    /**
     * Tells whether the ground under it is solid, such as concrete.
     *
     * @return true if it is paved
     */
    public boolean isOverPaving() {
        return overPaving;
    }

    /** The stretches in a zone, along its own line; a face that only touches the zone is not in it. */
    List<Interval> stretchesIn(Zone zone) {
        return zone.stretchesOf(line, reach.minus(LocalRule.ROUNDING));
    }

    boolean isAtLeastAsOpenAs(@Nullable Ratio share) {
        return share != null && openness.value() >= share.value();
    }

    @Override
    public String toString() {
        return place + " from " + firstStation + " to " + firstStation.plus(line.length());
    }

    /** Takes what is known of a part. Not for use by several threads at once. */
    public static final class Builder {

        private final String place;
        private final Segment line;
        private Length firstStation = Length.ZERO;
        private Length reach = Length.ZERO;
        private Profile bottom;
        private @Nullable Profile top;
        private Ratio openness = Ratio.ZERO;
        private @Nullable Length opening;
        private boolean smooth;
        private @Nullable Length horizontalSpacing;
        private @Nullable Side horizontalSide;
        private boolean overPaving;

        private Builder(String place, Segment line) {
            this.place = place;
            this.line = line;
            bottom = level(Length.ZERO);
        }

        private Profile level(Length height) {
            return Profile.straight(Length.ZERO, height, line.length(), height);
        }

        /**
         * Sets where along its place the part begins, so that findings tell stations of the whole.
         *
         * @param station the station of the start of the line
         * @return this builder
         */
        public Builder firstStation(Length station) {
            firstStation = Objects.requireNonNull(station, "station");
            return this;
        }

        /**
         * Sets how far the fence reaches to either side of its line.
         *
         * @param eachSide half its thickness if the line is in the middle
         * @return this builder
         * @throws IllegalArgumentException if negative or over 10,000 ft
         */
        public Builder reach(Length eachSide) {
            reach = LocalRule.requireSize("reach", eachSide);
            return this;
        }

        /**
         * Sets the height of the bottom.
         *
         * @param height over the ground, the greatest along the part
         * @return this builder
         */
        public Builder bottom(Length height) {
            return bottom(level(height));
        }

        /**
         * Sets the height of the bottom all along.
         *
         * @param heights over the ground, by the distance from the start of the line
         * @return this builder
         */
        public Builder bottom(Profile heights) {
            bottom = Objects.requireNonNull(heights, "heights");
            return this;
        }

        /**
         * Sets the height of the top.
         *
         * @param height over the ground
         * @return this builder
         */
        public Builder top(Length height) {
            return top(level(height));
        }

        /**
         * Sets the height of the top all along.
         *
         * @param heights over the ground, by the distance from the start of the line
         * @return this builder
         */
        public Builder top(Profile heights) {
            top = Objects.requireNonNull(heights, "heights");
            return this;
        }

        /**
         * Sets how much one sees through.
         *
         * @param share the open part of the face
         * @return this builder
         * @throws IllegalArgumentException if not from 0 to 100 %
         */
        public Builder openness(Ratio share) {
            openness = LocalRule.requireShare("openness", share);
            return this;
        }

        /**
         * Sets the widest opening.
         *
         * @param width the gap between pickets, or the least size of another opening; zero if there is none
         * @return this builder
         * @throws IllegalArgumentException if negative or over 10,000 ft
         */
        public Builder opening(Length width) {
            opening = LocalRule.requireSize("opening", width);
            return this;
        }

        /**
         * Sets where the horizontal members are, such as rails.
         *
         * @param spacing the least distance between two of them, from top to top; where there is one only, the height of
         *     the part
         * @param side on which side of the line they are
         * @return this builder
         * @throws IllegalArgumentException if the spacing is negative or over 10,000 ft
         */
        public Builder horizontals(Length spacing, Side side) {
            horizontalSpacing = LocalRule.requireSize("spacing", spacing);
            horizontalSide = Objects.requireNonNull(side, "side");
            smooth = false;
            return this;
        }

        /**
         * Says that there are no horizontal members that one could step on, on either side.
         *
         * @return this builder
         */
        public Builder withoutHorizontals() {
            smooth = true;
            horizontalSpacing = null;
            horizontalSide = null;
            return this;
        }

        /**
         * Says whether the ground under the part is solid, such as concrete.
         *
         * @param paved true if it is, false for grass or gravel
         * @return this builder
         */
        public Builder overPaving(boolean paved) {
            overPaving = paved;
            return this;
        }

        /**
         * Returns the part.
         *
         * @return the part
         * @throws NullPointerException if no top was given
         * @throws IllegalArgumentException if heights do not cover the line, are not from 0 to 100 ft, or the top is below
         *     the bottom
         */
        public FencePart build() {
            return new FencePart(this);
        }
    }
}
