package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The ground along a level string, measured down from the string at each stake.
 *
 * <pre>
 * elevation of the ground = elevation of the string - drop
 * </pre>
 *
 * <p>On a hill the string is set lower or higher part of the way along with {@link Builder#reset}; the drops after that
 * are from the new height.
 *
 * <p>It assumes that the string is level and straight: its sag is left out, so stretch it tight and put stakes between.
 * How far off level it may be depends on how it was levelled; tell it with {@link Builder#levelWithin} and a finding says
 * what that comes to at the far end. It has from 2 to 10,000 drops.
 *
 * <p>Source: geometry; measuring down from a level string is common practice, no source.
 *
 * <p>Example: a string 3 ft over the corner stake's foot, which is called 100 ft.
 *
 * <pre>{@code
 * StringDrops drops = StringDrops.below(Length.ofFeet(103))
 *         .drop(Length.ZERO, Length.ofFeet(3))
 *         .drop(Length.ofFeet(8), Length.ofFeetAndInches(3, 7))
 *         .drop(Length.ofFeet(16), Length.ofFeetAndInches(4, 5.5))
 *         .levelWithin(Slope.of(Length.ofInches(0.25), Length.ofFeet(20)))
 *         .build();
 * drops.profile().elevationAt(Length.ofFeet(16));    // 98 ft 6 1/2 in
 * }</pre>
 */
public final class StringDrops {

    private static final int MOST = 10_000;

    /** One stake: the string over it, and how far down the ground is. */
    private record Drop(Length station, Length string, Length down) {
        Length ground() {
            return string.minus(down);
        }
    }

    private final List<Drop> drops;
    private final @Nullable Slope levelWithin;
    private final Profile profile;

    private StringDrops(List<Drop> drops, @Nullable Slope levelWithin) {
        this.drops = drops;
        this.levelWithin = levelWithin;
        Profile.Builder ground = Profile.builder();
        drops.forEach(drop -> ground.point(drop.station(), drop.ground()));
        profile = ground.build();
    }

    /**
     * Starts at a level string.
     *
     * @param string the elevation of the string
     * @return a builder without drops
     * @throws IllegalArgumentException if the elevation is over 1,000,000 km from zero
     */
    public static Builder below(Length string) {
        return new Builder(string);
    }

    /**
     * Returns the ground along the string.
     *
     * @return elevations at the stations of the drops
     */
    public Profile profile() {
        return profile;
    }

    /**
     * Returns how far the ground at the last stake may be off for the string's being off level.
     *
     * @return the distance from the first stake to the last times what {@link Builder#levelWithin} says; empty if it was
     *     not said
     */
    public Optional<Length> uncertainty() {
        return Optional.ofNullable(levelWithin)
                .map(within -> within.riseOver(profile.extent().length()));
    }

    /**
     * Returns cautions about the string:
     *
     * <ul>
     *   <li>{@code string-off-level}: how far the far end may be off, if it was said how well the string was levelled
     *   <li>{@code string-level-unknown}: it was not said
     * </ul>
     *
     * @return one finding, a note
     */
    public List<Finding> findings() {
        return List.of(uncertainty().map(this::offLevel).orElseGet(StringDrops::levelUnknown));
    }

    private Finding offLevel(Length uncertainty) {
        return Finding.note(
                        "string-off-level",
                        "string",
                        "over " + Written.station(profile.extent().length()) + " the string may be off level by "
                                + Written.inches(uncertainty) + ", and the ground at the far end as much")
                .withRemedy("turn the level end for end and take the mean, or use a better level")
                .withSource(Citation.COMMON_PRACTICE);
    }

    private static Finding levelUnknown() {
        return Finding.note("string-level-unknown", "string", "it was not said how near to level the string is")
                .withRemedy("hang a line level at mid-span and turn it end for end, or check the ends by water level")
                .withSource(Citation.COMMON_PRACTICE);
    }

    /**
     * Returns the calculation stake by stake, ending with the elevation at the last.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Drops from a level string");
        Length string = null;
        for (Drop drop : drops) {
            if (!drop.string().equals(string)) {
                string = drop.string();
                sheet.given("elevation of the string", string, Written.feet(string));
            }
            sheet.line(
                    "ground at " + Written.station(drop.station()),
                    "string - drop",
                    Written.feet(drop.string()) + " - " + Written.feet(drop.down()),
                    drop.ground(),
                    Written.feet(drop.ground()),
                    Citation.GEOMETRY);
        }
        return sheet.build();
    }

    /**
     * Describes the drops.
     *
     * @return such as {@code 3 drops from a level string over 16.00 ft}
     */
    @Override
    public String toString() {
        return drops.size() + " drops from a level string over "
                + Written.station(profile.extent().length());
    }

    /** Takes the drops in order along the string. Not for use by several threads at once. */
    public static final class Builder {

        private final List<Drop> drops = new ArrayList<>();
        private Length string;
        private @Nullable Slope levelWithin;

        private Builder(Length string) {
            Heights.checked(string);
            this.string = string;
        }

        /**
         * Adds a drop.
         *
         * @param station the level distance along the string, after that of the drop before
         * @param down how far the ground is below the string
         * @return this builder
         * @throws IllegalArgumentException if the station is not after the one before, if the drop is negative, or if there
         *     are 10,000 already
         */
        public Builder drop(Length station, Length down) {
            if (down.isNegative()) {
                throw new IllegalArgumentException("drop at " + station + " was " + down
                        + "; it must be 0 or more: where the ground is over the string, set the string higher");
            }
            if (!drops.isEmpty() && drops.get(drops.size() - 1).station().compareTo(station) >= 0) {
                throw new IllegalArgumentException("station was " + station + ", not after the one before at "
                        + drops.get(drops.size() - 1).station() + "; give the drops in order, one at a stake");
            }
            if (drops.size() == MOST) {
                throw new IllegalArgumentException("the drop at " + station + " would be number " + (MOST + 1)
                        + "; a string has up to 10,000, so use several strings");
            }
            drops.add(new Drop(station, string, down));
            return this;
        }

        /**
         * Sets the string to another height for the drops to come.
         *
         * @param newString its new elevation
         * @return this builder
         * @throws IllegalArgumentException if the elevation is over 1,000,000 km from zero
         */
        public Builder reset(Length newString) {
            Heights.checked(newString);
            string = newString;
            return this;
        }

        /**
         * Tells how near to level the string is, such as 1/4 in over 20 ft.
         *
         * @param within the most it may rise or fall, zero or more
         * @return this builder
         * @throws IllegalArgumentException if it is negative
         */
        public Builder levelWithin(Slope within) {
            if (within.compareTo(Slope.LEVEL) < 0) {
                throw new IllegalArgumentException(
                        "within was " + within + "; it must be 0 or more, for it goes both up and down");
            }
            levelWithin = within;
            return this;
        }

        /**
         * Returns the drops.
         *
         * @return the drops, with {@link StringDrops#findings}
         * @throws IllegalArgumentException if there are fewer than 2, or a value is over 1,000,000 km from zero
         */
        public StringDrops build() {
            return new StringDrops(List.copyOf(drops), levelWithin);
        }
    }
}
