package org.fencecore.style;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.hang.GateWood;
import org.fencecore.gate.hang.HingeScrews;
import org.fencecore.gate.hang.HingeSpec;
import org.fencecore.internal.Limits;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What gates are hung with and how they swing: hinges, their screws, how wet the wood is, and how far the leaf opens.
 *
 * <p>What is not said is as usual: as many hinges as a leaf of its size has, the lowest and the highest on the middle of
 * the rails, on a raked leaf on that of the rail behind the strap and always inside the frame, and butt hinges off the
 * ends of rails that show at the edge; straps 2 in wide
 * that reach 12 in over the leaf; pins in the middle of the hinge gap; four No. 10 screws (0.190 in) with 1 1/4 in of
 * thread in the wood at each hinge; no load at the latch besides the leaf; wood at 19 % moisture, southern pine where the
 * lumber does not say; the leaf opens 90 degrees and should clear the ground by 1 in. All common practice without a source.
 *
 * <p>Example: two hinges 7 in from the ends of the frame, each held by three lag screws.
 *
 * <pre>{@code
 * GateHardware hardware = GateHardware.builder()
 *         .hinges(2)
 *         .hingeInset(Length.ofInches(7))
 *         .lagScrews(3, Length.ofInches(0.25), Length.ofInches(1.25))
 *         .build();
 * hardware.hingesOn(leaf, southernPine).heightsOn(leaf);   // 7 in, 49 in, on a frame 56 in high
 * }</pre>
 */
public final class GateHardware {

    private static final Length LARGEST = Length.ofFeet(100);
    private static final int MOST_HINGES = 20;
    private static final Ratio WETTEST = Ratio.ofPercent(30);

    private final int hinges;
    private final @Nullable Length hingeInset;
    private final Length strapWidth;
    private final Length strapReach;
    private final @Nullable Length pinFromLeaf;
    private final Screws screws;
    private final Force loadAtLatch;
    private final Ratio moisture;
    private final Angle openTo;
    private final Length swingClearance;

    /** Screws before it is known what wood they go into. */
    private record Screws(boolean lag, int count, Length diameter, Length thread) {

        HingeScrews in(GateWood wood) {
            return lag
                    ? HingeScrews.lag(count, diameter, thread, wood)
                    : HingeScrews.wood(count, diameter, thread, wood);
        }
    }

    private GateHardware(Builder from) {
        hinges = from.hinges;
        hingeInset = from.hingeInset;
        strapWidth = from.strapWidth;
        strapReach = from.strapReach;
        pinFromLeaf = from.pinFromLeaf;
        screws = from.screws;
        loadAtLatch = from.loadAtLatch;
        moisture = from.moisture;
        openTo = from.openTo;
        swingClearance = from.swingClearance;
    }

    /**
     * Starts from the usual hardware.
     *
     * @return a builder with what is named above
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how many hinges every leaf gets.
     *
     * @return the number, empty for as many as a leaf of its size usually has
     */
    public OptionalInt hinges() {
        return hinges == 0 ? OptionalInt.empty() : OptionalInt.of(hinges);
    }

    /**
     * Returns how wide the hinges are on the leaf, up and down.
     *
     * @return the width of a strap, or the height of a butt hinge
     */
    public Length strapWidth() {
        return strapWidth;
    }

    /**
     * Returns how far the hinges reach over the face of the leaf.
     *
     * @return the reach of a strap, zero for butt hinges on the edge
     */
    public Length strapReach() {
        return strapReach;
    }

    /**
     * Returns how far the outer hinges sit from the ends of the leaf.
     *
     * @return the distance to their middles; empty when not said, and then half a rail or half a hinge, whichever is more
     */
    public Optional<Length> hingeInset() {
        return Optional.ofNullable(hingeInset);
    }

    /**
     * Returns how far the pins stand from the edge of the leaf.
     *
     * @return the distance; empty when not said, and then half the gap at the hinges
     */
    public Optional<Length> pinFromLeaf() {
        return Optional.ofNullable(pinFromLeaf);
    }

    /**
     * Tells whether the hinges are held by lag screws.
     *
     * @return true for lag screws, false for wood screws
     */
    public boolean hasLagScrews() {
        return screws.lag;
    }

    /**
     * Returns how many screws hold each hinge.
     *
     * @return the number in one leaf of the hinge
     */
    public int screwCount() {
        return screws.count;
    }

    /**
     * Returns how thick the screws are.
     *
     * @return the diameter
     */
    public Length screwDiameter() {
        return screws.diameter;
    }

    /**
     * Returns how much of each screw holds in the wood.
     *
     * @return the length of thread in the wood
     */
    public Length screwThread() {
        return screws.thread;
    }

    /**
     * Returns what hangs on the latch side, such as a person leaning there.
     *
     * @return the force; zero when not said
     */
    public Force loadAtLatch() {
        return loadAtLatch;
    }

    /**
     * Returns how wet the wood of gates is.
     *
     * @return the share of water by dry weight
     */
    public Ratio moisture() {
        return moisture;
    }

    /**
     * Returns how far gates open.
     *
     * @return the angle from shut
     */
    public Angle openTo() {
        return openTo;
    }

    /**
     * Returns by how much a leaf should clear the ground all the way.
     *
     * @return the clearance
     */
    public Length swingClearance() {
        return swingClearance;
    }

    /**
     * Returns how far the pins are beyond the hinge edge of a leaf.
     *
     * @param spec how the gate is made
     * @return the distance, half the hinge gap if not set
     */
    public Length pinOf(GateSpec spec) {
        return pinFromLeaf != null ? pinFromLeaf : spec.hingeGap().dividedBy(2);
    }

    /**
     * Returns where the hinges go on a leaf. Where the frame is too low for the inset, it is a quarter of the height.
     * Pins stand plumb in one line, on a raked leaf as on a level one.
     *
     * @param leaf the leaf
     * @param wood what the screws go into
     * @return the hinges with their screws
     */
    public HingeSpec hingesOn(GateLeaf leaf, GateWood wood) {
        return new HingePlaces(this, leaf)
                .spec()
                .withPinFromLeaf(pinOf(leaf.spec()))
                .withLoadAtLatch(loadAtLatch)
                .withScrews(screws.in(wood));
    }

    /**
     * Returns what lumber weighs and how it holds screws: of its own group of species, or southern pine.
     *
     * @param lumber the lumber
     * @return its wood, as wet as is said here
     */
    public GateWood woodOf(Lumber lumber) {
        return switch (lumber.species().orElse(SpeciesGroup.SOUTHERN_PINE)) {
            case SOUTHERN_PINE -> GateWood.southernPine(moisture);
            case DOUGLAS_FIR_LARCH -> GateWood.douglasFirLarch(moisture);
            case HEM_FIR -> GateWood.hemFir(moisture);
            case SPRUCE_PINE_FIR -> GateWood.sprucePineFir(moisture);
            case WESTERN_CEDARS -> GateWood.westernCedars(moisture);
            case REDWOOD -> GateWood.redwood(moisture);
        };
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GateHardware that
                && hinges == that.hinges
                && Objects.equals(hingeInset, that.hingeInset)
                && strapWidth.equals(that.strapWidth)
                && strapReach.equals(that.strapReach)
                && Objects.equals(pinFromLeaf, that.pinFromLeaf)
                && screws.equals(that.screws)
                && loadAtLatch.equals(that.loadAtLatch)
                && moisture.equals(that.moisture)
                && openTo.equals(that.openTo)
                && swingClearance.equals(that.swingClearance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                hinges,
                hingeInset,
                strapWidth,
                strapReach,
                pinFromLeaf,
                screws,
                loadAtLatch,
                moisture,
                openTo,
                swingClearance);
    }

    /**
     * Describes a hinge and its screws.
     *
     * @return such as {@code strap 12 in long with 4 wood screws of 0.19 in, 1.25 in of thread}
     */
    @Override
    public String toString() {
        return (strapReach.isZero()
                        ? "butt hinge " + Written.tape(strapWidth) + " high"
                        : "strap hinge " + Written.tape(strapReach) + " long")
                + " with " + screws.count + (screws.lag ? " lag" : " wood") + " screws of "
                + Written.inches(screws.diameter) + ", " + Written.inches(screws.thread) + " of thread in the wood";
    }

    /** Collects how gates are hung. */
    public static final class Builder {

        private int hinges;
        private @Nullable Length hingeInset;
        private Length strapWidth = Length.ofInches(2);
        private Length strapReach = Length.ofInches(12);
        private @Nullable Length pinFromLeaf;
        private Screws screws = new Screws(false, 4, Length.ofInches(0.19), Length.ofInches(1.25));
        private Force loadAtLatch = Force.ZERO;
        private Ratio moisture = Ratio.ofPercent(19);
        private Angle openTo = Angle.RIGHT;
        private Length swingClearance = Length.ofInches(1);

        private Builder() {}

        private static Length requireSize(String name, Length value) {
            return Limits.overZero(name, value, LARGEST);
        }

        /**
         * Sets how many hinges every leaf gets.
         *
         * @param count how many, from 2 to 20
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder hinges(int count) {
            if (count < 2 || count > MOST_HINGES) {
                throw new IllegalArgumentException("count of hinges was " + count + "; it must be from 2 to "
                        + MOST_HINGES + ", because one cannot hold a leaf");
            }
            hinges = count;
            return this;
        }

        /**
         * Sets how far the lowest and the highest hinge are from the ends of the frame, to their middles.
         *
         * @param inset the distance, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder hingeInset(Length inset) {
            hingeInset = requireSize("inset", inset);
            return this;
        }

        /**
         * Hangs gates on strap or T hinges on the face of the leaf.
         *
         * @param width how wide the strap is, up and down, over 0, to 100 ft
         * @param reach how far it reaches over the leaf, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if one is out of range
         */
        public Builder straps(Length width, Length reach) {
            strapWidth = requireSize("width", width);
            strapReach = requireSize("reach", reach);
            return this;
        }

        /**
         * Hangs gates on butt hinges on the edge of the leaf.
         *
         * @param height how high the hinge itself is, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder butts(Length height) {
            strapWidth = requireSize("height", height);
            strapReach = Length.ZERO;
            return this;
        }

        /**
         * Sets how far the pins are beyond the hinge edge of the leaf.
         *
         * @param distance the distance, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder pinFromLeaf(Length distance) {
            pinFromLeaf = requireSize("distance", distance);
            return this;
        }

        /**
         * Holds every hinge to the leaf with wood screws.
         *
         * @param count how many in one hinge, from 1 to 100
         * @param diameter the diameter of the shank, over 0, to 100 ft
         * @param thread how much thread is in the wood, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if one is out of range
         */
        public Builder woodScrews(int count, Length diameter, Length thread) {
            return screws(new Screws(false, count, diameter, thread));
        }

        /**
         * Holds every hinge to the leaf with lag screws.
         *
         * @param count how many in one hinge, from 1 to 100
         * @param diameter the diameter of the shank, over 0, to 100 ft
         * @param thread how much thread is in the wood without the tip, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if one is out of range
         */
        public Builder lagScrews(int count, Length diameter, Length thread) {
            return screws(new Screws(true, count, diameter, thread));
        }

        private Builder screws(Screws wanted) {
            // Which wood they go into does not change what sizes they may have.
            Objects.requireNonNull(wanted.in(GateWood.southernPine(moisture)));
            screws = wanted;
            return this;
        }

        /**
         * Sets what may hang on the latch besides the leaf, such as someone who leans on it.
         *
         * @param load the load at the latch edge, from 0 to 1,000 lbf
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder loadAtLatch(Force load) {
            if (load.isNegative() || load.compareTo(Force.ofPoundsForce(1_000)) > 0) {
                throw new IllegalArgumentException(
                        "load was " + Written.force(load) + "; it must be from 0 to 1,000 lbf, so check its unit");
            }
            loadAtLatch = load;
            return this;
        }

        /**
         * Sets how wet the wood of the gates is.
         *
         * @param share the moisture as a share of the oven-dry weight, from 0 to 30 %
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder moisture(Ratio share) {
            if (share.isNegative() || share.compareTo(WETTEST) > 0) {
                throw new IllegalArgumentException("share was " + Written.factor(share.times(100))
                        + " %; it must be from 0 to 30 %, beyond which the weight of wood is not worked out");
            }
            moisture = share;
            return this;
        }

        /**
         * Sets how far gates open.
         *
         * @param angle the angle from shut, over 0, to 180 degrees
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder openTo(Angle angle) {
            if (!angle.isPositive() || angle.compareTo(Angle.STRAIGHT) > 0) {
                throw new IllegalArgumentException("angle was " + Written.degrees(angle)
                        + "; it must be over 0 and no more than 180 deg, measured from the shut gate");
            }
            openTo = angle;
            return this;
        }

        /**
         * Sets by how much a leaf should clear the ground all the way.
         *
         * @param clearance the clearance, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder swingClearance(Length clearance) {
            swingClearance = requireSize("clearance", clearance);
            return this;
        }

        /**
         * Returns the hardware.
         *
         * @return the hardware
         */
        public GateHardware build() {
            return new GateHardware(this);
        }
    }
}
