package org.fencecore.takeoff;

import java.util.Objects;
import org.fencecore.footing.BagSize;
import org.fencecore.units.Length;

/**
 * How a takeoff counts: the width of the saw cut and the bag the concrete comes in.
 *
 * <p>What is not said is a kerf of 1/8 in, that of a usual circular saw blade, and bags of 60 lb (both common practice,
 * no source).
 *
 * <pre>{@code
 * TakeoffSpec spec = TakeoffSpec.builder().bag(BagSize.POUNDS_80).build();
 * }</pre>
 */
public final class TakeoffSpec {

    private static final Length WIDEST_KERF = Length.ofInches(1);

    private final Length kerf;
    private final BagSize bag;

    private TakeoffSpec(Builder from) {
        kerf = from.kerf;
        bag = from.bag;
    }

    /**
     * Starts from the usual.
     *
     * @return a builder with the values named above
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how wide a square saw cut is.
     *
     * @return the kerf
     */
    public Length kerf() {
        return kerf;
    }

    /**
     * Returns the bag the concrete mix comes in.
     *
     * @return the bag
     */
    public BagSize bag() {
        return bag;
    }

    /** Collects how a takeoff counts, starting from the usual. */
    public static final class Builder {

        private Length kerf = Length.ofInches(0.125);
        private BagSize bag = BagSize.POUNDS_60;

        private Builder() {}

        /**
         * Sets how wide a square saw cut is; 1/8 in if not set.
         *
         * @param newKerf the kerf, from 0 to 1 in
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder kerf(Length newKerf) {
            if (newKerf.isNegative() || newKerf.compareTo(WIDEST_KERF) > 0) {
                throw new IllegalArgumentException("kerf was " + newKerf
                        + "; it must be from 0 to 1 in: give the width of the cut that the saw blade leaves");
            }
            kerf = newKerf;
            return this;
        }

        /**
         * Sets the bag the concrete mix comes in; 60 lb if not set.
         *
         * @param newBag the bag
         * @return this builder
         */
        public Builder bag(BagSize newBag) {
            bag = Objects.requireNonNull(newBag, "newBag");
            return this;
        }

        /**
         * Returns the spec.
         *
         * @return the spec
         */
        public TakeoffSpec build() {
            return new TakeoffSpec(this);
        }
    }
}
