package org.fencecore.rules;

import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;

/**
 * What a fence round a pool is asked to be, so that a small child does not get through, under or over it: its height, the
 * gap under it, its openings, its horizontal members, and its gates.
 *
 * <p>Every figure is the caller's to set. Those that the builder starts with have been published widely and are a start
 * to compare with what the local office says; many places are stricter, with 5 ft or 6 ft for the height. The office
 * decides which hold, how it measures, and whether a fence will do.
 *
 * <p>Closely spaced horizontal members make a ladder: where they are nearer to each other than the spacing, they have to
 * be on the side of the water, and openings have to be narrower, too narrow for a foot. A gate opens away from the water,
 * closes and latches by itself, and takes a lock. The release of its latch is out of a child's reach, or else it is on the side of the
 * water, well under the top of the gate, and behind openings too narrow for a hand. What just meets a figure keeps it.
 *
 * <p>Heights are taken as the parts tell them; the published height is measured on the side away from the water. Not
 * looked at: ground kept clear of what one could climb, the fixed leaf of a double gate, meshes, walls of houses,
 * and alarms.
 *
 * <p>Example: the published figures, but 5 ft high; the water is on the left of the fence's lines.
 *
 * <pre>{@code
 * PoolBarrier rule = PoolBarrier.builder(Side.LEFT, "pool barrier", ordinance)
 *         .height(Length.ofFeet(5))
 *         .build();
 * }</pre>
 *
 * <p>Sources: the figures to start with are those of the International Swimming Pool and Spa Code, section 305, and before
 * it of the International Residential Code, appendix G, as guides to builders and pages of local offices repeat them, such
 * as the pool barrier rules of Rutherford County, Tennessee, for gates. They were read there and not in the codes, so check
 * them against the edition that holds at the place.
 */
public final class PoolBarrier extends LocalRule {

    /** Where the figures come from that a builder starts with; to be given as the source of a rule that keeps to them. */
    public static final Citation PUBLISHED =
            Citation.of("International Swimming Pool and Spa Code", "section 305, as repeated by local offices", "");

    private final Side water;
    private final Zone zone;
    private final Length height;
    private final Length gap;
    private final Length gapOverPaving;
    private final Length opening;
    private final Length openingAtLadder;
    private final Length ladderSpacing;
    private final Length releaseHeight;
    private final Length releaseUnderTop;
    private final Length openingAtRelease;
    private final Length nearRelease;

    private PoolBarrier(Builder from) {
        super(from.words, from.source);
        water = from.water;
        zone = from.zone;
        height = from.height;
        gap = from.gap;
        gapOverPaving = from.gapOverPaving;
        opening = from.opening;
        openingAtLadder = from.openingAtLadder;
        ladderSpacing = from.ladderSpacing;
        releaseHeight = from.releaseHeight;
        releaseUnderTop = from.releaseUnderTop;
        openingAtRelease = from.openingAtRelease;
        nearRelease = from.nearRelease;
    }

    /**
     * Starts a rule from the published figures.
     *
     * @param water the side of the fence's lines on which the water is; where lines run both ways, give one rule for each
     *     way, each with its zone
     * @param words what the rule is called
     * @param source where its figures come from; {@link #PUBLISHED} if none of them is changed
     * @return a builder
     */
    public static Builder builder(Side water, String words, Citation source) {
        return new Builder(water, words, source);
    }

    /**
     * Returns on which side the water is.
     *
     * @return the side of the fence's lines
     */
    public Side water() {
        return water;
    }

    /**
     * Returns where a fence is part of the barrier.
     *
     * @return the zone
     */
    @Override
    public Zone zone() {
        return zone;
    }

    /**
     * Returns how high the top has to be.
     *
     * @return the least height over the ground
     */
    public Length height() {
        return height;
    }

    /**
     * Returns how far the bottom may be off soft ground.
     *
     * @return the greatest gap over grass or gravel
     */
    public Length gap() {
        return gap;
    }

    /**
     * Returns how far the bottom may be off solid ground.
     *
     * @return the greatest gap over paving
     */
    public Length gapOverPaving() {
        return gapOverPaving;
    }

    /**
     * Returns how wide an opening may be.
     *
     * @return the widest opening
     */
    public Length opening() {
        return opening;
    }

    /**
     * Returns how wide an opening may be where horizontal members are closely spaced.
     *
     * @return the widest opening there
     */
    public Length openingAtLadder() {
        return openingAtLadder;
    }

    /**
     * Returns how far apart horizontal members have to be so as not to count as closely spaced.
     *
     * @return the least distance from top to top
     */
    public Length ladderSpacing() {
        return ladderSpacing;
    }

    /**
     * Returns from which height on the release of a latch is out of reach.
     *
     * @return the height over the ground
     */
    public Length releaseHeight() {
        return releaseHeight;
    }

    /**
     * Returns how far a release within reach has to be under the top of its gate.
     *
     * @return the least distance
     */
    public Length releaseUnderTop() {
        return releaseUnderTop;
    }

    /**
     * Returns how wide openings may be near a release within reach.
     *
     * @return the widest opening
     */
    public Length openingAtRelease() {
        return openingAtRelease;
    }

    /**
     * Returns how near to a release within reach such openings count.
     *
     * @return the distance all round
     */
    public Length nearRelease() {
        return nearRelease;
    }

    @Override
    List<Finding> check(Fence fence) {
        return new FenceAtPool(this, fence).findings();
    }

    /**
     * Tells whether a gate is part of the barrier.
     *
     * @param gate the gate
     * @return true if some of its leaf is in the zone
     */
    public boolean concerns(GatePart gate) {
        return !gate.leaf().stretchesIn(zone).isEmpty();
    }

    /**
     * Returns what the rule asks of a gate, each in a sentence with its figures.
     *
     * @return the sentences, for whoever hangs the gate; unmodifiable
     */
    public List<String> gateRequirements() {
        return GateAtPool.requirements(this);
    }

    /**
     * Returns a gate beside the figures of the rule, line by line.
     *
     * @param gate the gate
     * @return the worksheet; its last line is in how many of swing, closing, lock and release it breaks the rule
     */
    public Worksheet worksheet(GatePart gate) {
        return new GateAtPool(this, gate).worksheet();
    }

    Finding broken(String code, String place, String message, String remedy) {
        return Finding.blocker(code, place, words() + ": " + message)
                .withRemedy(remedy + "; the local office decides")
                .withSource(source());
    }

    /** Takes the figures of a pool barrier. Not for use by several threads at once. */
    public static final class Builder {

        private final Side water;
        private final String words;
        private final Citation source;
        private Zone zone = Zone.everywhere();
        private Length height = Length.ofInches(48);
        private Length gap = Length.ofInches(2);
        private Length gapOverPaving = Length.ofInches(4);
        private Length opening = Length.ofInches(4);
        private Length openingAtLadder = Length.ofInches(1.75);
        private Length ladderSpacing = Length.ofInches(45);
        private Length releaseHeight = Length.ofInches(54);
        private Length releaseUnderTop = Length.ofInches(3);
        private Length openingAtRelease = Length.ofInches(0.5);
        private Length nearRelease = Length.ofInches(18);

        private Builder(Side water, String words, Citation source) {
            this.water = Objects.requireNonNull(water, "water");
            this.words = Objects.requireNonNull(words, "words");
            this.source = Objects.requireNonNull(source, "source");
        }

        /**
         * Sets where a fence is part of the barrier; everywhere if not said.
         *
         * @param where the zone
         * @return this builder
         */
        public Builder zone(Zone where) {
            zone = Objects.requireNonNull(where, "where");
            return this;
        }

        /**
         * Sets how high the top has to be; 48 in if not said.
         *
         * @param least the least height over the ground
         * @return this builder
         * @throws IllegalArgumentException if negative or over 10,000 ft
         */
        public Builder height(Length least) {
            height = requireSize("height", least);
            return this;
        }

        /**
         * Sets how far the bottom may be off the ground; 2 in over grass or gravel and 4 in over paving if not said.
         *
         * @param overSoft the greatest gap over grass or gravel
         * @param overPaving the greatest gap over solid ground, such as concrete
         * @return this builder
         * @throws IllegalArgumentException if one is negative or over 10,000 ft
         */
        public Builder gap(Length overSoft, Length overPaving) {
            gap = requireSize("overSoft", overSoft);
            gapOverPaving = requireSize("overPaving", overPaving);
            return this;
        }

        /**
         * Sets how wide an opening may be; 4 in if not said.
         *
         * @param most the widest opening
         * @return this builder
         * @throws IllegalArgumentException if negative or over 10,000 ft
         */
        public Builder opening(Length most) {
            opening = requireSize("opening", most);
            return this;
        }

        /**
         * Sets what holds for horizontal members; 45 in and 1-3/4 in if not said.
         *
         * @param least how far apart from top to top they have to be so as not to count as closely spaced
         * @param openingBelow how wide an opening may be where they are nearer to each other
         * @return this builder
         * @throws IllegalArgumentException if one is negative or over 10,000 ft
         */
        public Builder ladder(Length least, Length openingBelow) {
            ladderSpacing = requireSize("least", least);
            openingAtLadder = requireSize("openingBelow", openingBelow);
            return this;
        }

        /**
         * Sets what holds for the release of a latch; 54 in, 3 in, 1/2 in and 18 in if not said.
         *
         * @param outOfReach the height over the ground from which on it is out of a child's reach
         * @param underTop how far a lower one has to be under the lowest point of the top of its gate
         * @param openingNear how wide openings near a lower one may be
         * @param near how near to it they count
         * @return this builder
         * @throws IllegalArgumentException if one is negative or over 10,000 ft
         */
        public Builder release(Length outOfReach, Length underTop, Length openingNear, Length near) {
            releaseHeight = requireSize("outOfReach", outOfReach);
            releaseUnderTop = requireSize("underTop", underTop);
            openingAtRelease = requireSize("openingNear", openingNear);
            nearRelease = requireSize("near", near);
            return this;
        }

        /**
         * Returns the rule.
         *
         * @return the rule
         * @throws IllegalArgumentException if the words are blank, or openings may be wider between closely spaced
         *     horizontal members than elsewhere
         */
        public PoolBarrier build() {
            if (openingAtLadder.compareTo(opening) > 0) {
                throw new IllegalArgumentException("openingBelow was " + openingAtLadder + ", over the opening of "
                        + opening + " allowed elsewhere; give at most that");
            }
            return new PoolBarrier(this);
        }
    }
}
