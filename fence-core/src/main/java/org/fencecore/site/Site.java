package org.fencecore.site;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Profile;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.jspecify.annotations.Nullable;

/**
 * One lot as the crew finds it: the boundary, which sides get a fence, the ground along them, where the gates go, and
 * what wind, soil and frost the posts must stand.
 *
 * <p>The strings run inside the chosen sides at the setback, 6 in when not said (common practice, no source); the
 * string is the outside face of the posts. Wind and frost have no default, since they belong to the place: what is not
 * said is not checked, and the plan says so.
 *
 * <pre>{@code
 * Site site = Site.on(lot)
 *         .fenceOn(1, 2)
 *         .ground(1, shotsAlongSide1)
 *         .ground(2, shotsAlongSide2)
 *         .gate(gardenGate)
 *         .frostDepth(Length.ofInches(24))
 *         .windPressure(Pressure.ofPsf(15))
 *         .build();
 * }</pre>
 */
public final class Site {

    /** How far inside the boundary the strings run when not said: 6 in, common practice, no source. */
    public static final Length USUAL_SETBACK = Length.ofInches(6);

    private static final Length DEEPEST_FROST = Length.ofFeet(20);
    private static final Pressure LEAST_WIND = Pressure.ofPsf(1);
    private static final Pressure MOST_WIND = Pressure.ofPsf(500);

    private final LotBoundary lot;
    private final SortedSet<Integer> fencedSides;
    private final Length setback;
    private final Map<Integer, Profile> ground;
    private final List<GateLocation> gates;
    private final SoilClass soil;
    private final boolean doubledBearing;
    private final @Nullable Length frostDepth;
    private final @Nullable Pressure windPressure;

    private Site(Builder from) {
        lot = from.lot;
        fencedSides = Collections.unmodifiableSortedSet(new TreeSet<>(from.fencedSides));
        setback = from.setback;
        ground = Collections.unmodifiableMap(new TreeMap<>(from.ground));
        gates = List.copyOf(from.gates);
        soil = from.soil;
        doubledBearing = from.doubledBearing;
        frostDepth = from.frostDepth;
        windPressure = from.windPressure;
    }

    /**
     * Starts a site.
     *
     * @param lot the boundary
     * @return a builder with no side fenced
     */
    public static Builder on(LotBoundary lot) {
        return new Builder(lot);
    }

    /**
     * Returns the boundary.
     *
     * @return the lot
     */
    public LotBoundary lot() {
        return lot;
    }

    /**
     * Returns the sides that get a fence.
     *
     * @return side numbers from 1, in order, unmodifiable
     */
    public SortedSet<Integer> fencedSides() {
        return fencedSides;
    }

    /**
     * Returns how far inside the boundary the strings run.
     *
     * @return the distance from the boundary to the outside face of the posts
     */
    public Length setback() {
        return setback;
    }

    /**
     * Returns the ground along a side.
     *
     * @param side the number of the side, from 1
     * @return heights by level distance from the corner where the side begins; empty when none were given
     */
    public Optional<Profile> ground(int side) {
        return Optional.ofNullable(ground.get(side));
    }

    /**
     * Returns the gates.
     *
     * @return the gates in the order given, unmodifiable
     */
    public List<GateLocation> gates() {
        return gates;
    }

    /**
     * Returns the soil the posts stand in.
     *
     * @return the class of soil
     */
    public SoilClass soil() {
        return soil;
    }

    /**
     * Tells whether twice the soil's lateral bearing is used for wind.
     *
     * @return true if the local office accepts it for these posts
     */
    public boolean doubledBearing() {
        return doubledBearing;
    }

    /**
     * Returns how deep the ground freezes.
     *
     * @return the frost depth; empty when not said
     */
    public Optional<Length> frostDepth() {
        return Optional.ofNullable(frostDepth);
    }

    /**
     * Returns the design pressure of the wind on the face of the fence.
     *
     * @return the pressure on the whole face at allowable-stress level; empty when not said
     */
    public Optional<Pressure> windPressure() {
        return Optional.ofNullable(windPressure);
    }

    /** Collects what is known of a site. */
    public static final class Builder {

        private final LotBoundary lot;
        private final SortedSet<Integer> fencedSides = new TreeSet<>();
        private Length setback = USUAL_SETBACK;
        private final Map<Integer, Profile> ground = new TreeMap<>();
        private final List<GateLocation> gates = new ArrayList<>();
        private SoilClass soil = SoilClass.CLAY;
        private boolean doubledBearing;
        private @Nullable Length frostDepth;
        private @Nullable Pressure windPressure;

        private Builder(LotBoundary lot) {
            this.lot = Objects.requireNonNull(lot, "lot");
        }

        /**
         * Adds sides that get a fence. Neighbouring sides share a corner post.
         *
         * @param sides side numbers, from 1 in the order of the courses
         * @return this builder
         * @throws IllegalArgumentException if the lot has no such side
         */
        public Builder fenceOn(int... sides) {
            for (int side : sides) {
                fencedSides.add(requireSide("fenced side", side));
            }
            return this;
        }

        /**
         * Sets how far inside the boundary the strings run.
         *
         * @param newSetback the distance from the boundary to the outside face of the posts, 0 or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder setback(Length newSetback) {
            if (newSetback.isNegative()) {
                throw new IllegalArgumentException("setback was " + newSetback
                        + "; it must be 0 or more: a fence over the line stands on the neighbour's land");
            }
            setback = newSetback;
            return this;
        }

        /**
         * Sets the ground along a side.
         *
         * @param side the number of the side, from 1
         * @param heights heights by level distance from the corner where the side begins; the datum is the caller's,
         *     the same for all sides
         * @return this builder
         * @throws IllegalArgumentException if the lot has no such side
         */
        public Builder ground(int side, Profile heights) {
            ground.put(requireSide("side with ground shots", side), Objects.requireNonNull(heights, "heights"));
            return this;
        }

        /**
         * Adds a gate.
         *
         * @param gate where it goes
         * @return this builder
         * @throws IllegalArgumentException if the lot has no such side, or another gate has that name
         */
        public Builder gate(GateLocation gate) {
            requireSide("side of " + gate.name(), gate.side());
            if (gates.stream().anyMatch(other -> other.name().equals(gate.name()))) {
                throw new IllegalArgumentException(
                        "two gates are named '" + gate.name() + "'; give each a name of its own");
            }
            gates.add(gate);
            return this;
        }

        /**
         * Sets the soil; clay and silt, the weakest with a presumptive value, when not said.
         *
         * @param newSoil the class of soil
         * @return this builder
         */
        public Builder soil(SoilClass newSoil) {
            soil = Objects.requireNonNull(newSoil, "newSoil");
            return this;
        }

        /**
         * Sets whether twice the soil's lateral bearing is used for wind, as IBC 1806.3.4 allows for isolated poles that
         * half an inch of movement at the ground does not hurt; not used if not set. Whether a fence post is one is for
         * the local office to say, and the plan warns of it.
         *
         * @param doubled true to use twice the bearing
         * @return this builder
         */
        public Builder doubledBearing(boolean doubled) {
            doubledBearing = doubled;
            return this;
        }

        /**
         * Sets how deep the ground freezes, as the local office states it.
         *
         * @param newFrostDepth the depth, from 0 to 20 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder frostDepth(Length newFrostDepth) {
            if (newFrostDepth.isNegative() || newFrostDepth.compareTo(DEEPEST_FROST) > 0) {
                throw new IllegalArgumentException("frost depth was " + newFrostDepth + "; it must be from 0 to "
                        + DEEPEST_FROST + ", measured down from the ground: check its unit");
            }
            frostDepth = newFrostDepth;
            return this;
        }

        /**
         * Sets the design pressure of the wind on the face of the fence, from the local office or an engineer.
         *
         * @param newWindPressure the pressure on the whole face at allowable-stress level, from 1 to 500 psf
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder windPressure(Pressure newWindPressure) {
            if (newWindPressure.compareTo(LEAST_WIND) < 0 || newWindPressure.compareTo(MOST_WIND) > 0) {
                throw new IllegalArgumentException("wind pressure was " + newWindPressure
                        + "; it must be from 1 to 500 psf: leave it out if it is not known");
            }
            windPressure = newWindPressure;
            return this;
        }

        /**
         * Returns the site.
         *
         * @return the site
         * @throws IllegalArgumentException if no side is fenced
         */
        public Site build() {
            if (fencedSides.isEmpty()) {
                throw new IllegalArgumentException("no side is fenced; call fenceOn with at least one side");
            }
            return new Site(this);
        }

        private int requireSide(String what, int side) {
            if (side < 1 || side > lot.courses().size()) {
                throw new IllegalArgumentException(what + " was " + side + "; the lot has sides 1 to "
                        + lot.courses().size());
            }
            return side;
        }
    }
}
