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
import java.util.stream.IntStream;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.rules.LocalRules;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.wind.Wind;
import org.fencecore.worksheet.Written;
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

    private static final int MOST_SIDES = 1000;
    private static final Length DEEPEST_FROST = Length.ofFeet(20);
    private static final Pressure LEAST_WIND = Pressure.ofPsf(1);
    private static final Pressure MOST_WIND = Pressure.ofPsf(500);

    private final LotBoundary lot;
    private final SortedSet<Integer> fencedSides;
    private final Length setback;
    private final @Nullable Polyline line;
    private final Side lineOutside;
    private final Map<Integer, Profile> ground;
    private final @Nullable Surface surface;
    private final List<GateLocation> gates;
    private final Obstacles obstacles;
    private final LocalRules rules;
    private final SoilClass soil;
    private final boolean doubledBearing;
    private final @Nullable Length frostDepth;
    private final @Nullable Pressure frostGrip;
    private final @Nullable Pressure windPressure;
    private final @Nullable Wind wind;

    private Site(Builder from) {
        lot = from.lot;
        TreeSet<Integer> sides = new TreeSet<>(from.fencedSides);
        if (from.line != null) {
            IntStream.rangeClosed(1, sideCount(from.lot, from.line)).forEach(sides::add);
        }
        fencedSides = Collections.unmodifiableSortedSet(sides);
        setback = from.setback;
        line = from.line;
        lineOutside = from.lineOutside;
        surface = from.surface;
        ground = Collections.unmodifiableMap(new TreeMap<>(from.ground));
        gates = List.copyOf(from.gates);
        obstacles = from.obstacles;
        rules = from.rules;
        soil = from.soil;
        doubledBearing = from.doubledBearing;
        frostDepth = from.frostDepth;
        frostGrip = from.frostGrip;
        windPressure = from.windPressure;
        wind = from.wind;
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
     * Returns the sides that get a fence: of the lot, or all of the line that it follows instead.
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
     * Returns the line that the fence follows instead of sides of the lot.
     *
     * @return the string, point by point; empty when the fence follows sides of the lot
     */
    public Optional<Polyline> line() {
        return Optional.ofNullable(line);
    }

    /**
     * Returns on which hand the outside is, going along a line given point by point.
     *
     * @return the side on which the boards are; it says nothing where the fence follows sides of the lot
     */
    public Side lineOutside() {
        return lineOutside;
    }

    /**
     * Returns how many sides the lot has, or the line that the fence follows instead.
     *
     * @return the number of the last side
     */
    public int sideCount() {
        return sideCount(lot, line);
    }

    /**
     * Returns how long a side of the lot is, its misclosure spread and a curve in its facets, or a side of the line that
     * the fence follows instead.
     *
     * @param side the number of the side, from 1
     * @return its level length
     * @throws IllegalArgumentException if there is no such side, or the lot has no outline
     */
    public Length sideLength(int side) {
        if (side < 1 || side > sideCount() || (line == null && lot.outline().isEmpty())) {
            throw new IllegalArgumentException(
                    "side was " + side + "; it must be from 1 to " + sideCount() + ", of a lot that closes");
        }
        return line == null
                ? lot.sides().get(side - 1).line().length()
                : line.points().get(side - 1).distanceTo(line.points().get(side));
    }

    private static int sideCount(LotBoundary lot, @Nullable Polyline line) {
        return line == null ? lot.courses().size() : line.points().size() - 1;
    }

    /**
     * Returns the ground as a surface.
     *
     * @return the surface; empty when the ground is told side by side, or not at all
     */
    public Optional<Surface> surface() {
        return Optional.ofNullable(surface);
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
     * Returns what is underground and in the way.
     *
     * @return buried lines, trees, walls and the like; none when not said
     */
    public Obstacles obstacles() {
        return obstacles;
    }

    /**
     * Returns the rules of the place.
     *
     * @return the rules that the fence is checked against; none when not said
     */
    public LocalRules rules() {
        return rules;
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
    public boolean hasDoubledBearing() {
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
     * Returns how hard freezing ground may grip the concrete.
     *
     * @return the stress; empty when not said, and then as {@link FootingSpec#frostGrip} has it for the soil
     */
    public Optional<Pressure> frostGrip() {
        return Optional.ofNullable(frostGrip);
    }

    /**
     * Returns the design pressure of the wind on the face of the fence.
     *
     * @return the pressure on the whole face at allowable-stress level; empty when not said
     */
    public Optional<Pressure> windPressure() {
        return Optional.ofNullable(windPressure);
    }

    /**
     * Returns the design wind of the place, from which each run gets its pressure zone by zone.
     *
     * @return the wind; empty when not said, or said as a pressure
     */
    public Optional<Wind> wind() {
        return Optional.ofNullable(wind);
    }

    /** Collects what is known of a site. */
    public static final class Builder {

        private static final Pressure STRONGEST_GRIP = Pressure.ofPascals(1_000_000);

        private final LotBoundary lot;
        private final SortedSet<Integer> fencedSides = new TreeSet<>();
        private Length setback = USUAL_SETBACK;
        private @Nullable Polyline line;
        private Side lineOutside = Side.LEFT;
        private @Nullable Surface surface;
        private final Map<Integer, Profile> ground = new TreeMap<>();
        private final List<GateLocation> gates = new ArrayList<>();
        private Obstacles obstacles = Obstacles.none();
        private LocalRules rules = LocalRules.none();
        private SoilClass soil = SoilClass.CLAY;
        private boolean doubledBearing;
        private @Nullable Length frostDepth;
        private @Nullable Pressure frostGrip;
        private @Nullable Pressure windPressure;
        private @Nullable Wind wind;

        private Builder(LotBoundary lot) {
            this.lot = Objects.requireNonNull(lot, "lot");
        }

        /**
         * Adds sides that get a fence. Neighbouring sides share a corner post.
         *
         * @param sides side numbers, from 1 in the order of the courses
         * @return this builder
         */
        public Builder fenceOn(int... sides) {
            for (int side : sides) {
                fencedSides.add(side);
            }
            return this;
        }

        /**
         * Sets the string point by point, for a fence that does not follow the lot's sides. From each point to the next is
         * a side of the fence, numbered from 1; ground and gates go by these numbers. A line that ends where it began is
         * closed, with a corner post there. The setback is not added: the line is the outside face of the posts.
         *
         * @param newLine the string, east and north of the first lot corner; at most 1,000 sides
         * @param outside on which hand the outside is, going along the line; boards are on this side of the posts
         * @return this builder
         * @throws IllegalArgumentException if the line has more sides
         */
        public Builder fenceAlong(Polyline newLine, Side outside) {
            if (newLine.points().size() - 1 > MOST_SIDES) {
                throw new IllegalArgumentException(
                        "the line had " + (newLine.points().size() - 1) + " sides; it must have at most " + MOST_SIDES
                                + ": plan it in parts");
            }
            line = newLine;
            lineOutside = Objects.requireNonNull(outside, "outside");
            return this;
        }

        /**
         * Sets the ground as a surface, for every side that has no heights of its own.
         *
         * @param newSurface the ground, in the same datum as any heights given side by side
         * @return this builder
         */
        public Builder ground(Surface newSurface) {
            surface = Objects.requireNonNull(newSurface, "newSurface");
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
         */
        public Builder ground(int side, Profile heights) {
            ground.put(side, Objects.requireNonNull(heights, "heights"));
            return this;
        }

        /**
         * Adds a gate.
         *
         * @param gate where it goes
         * @return this builder
         * @throws IllegalArgumentException if another gate has that name
         */
        public Builder gate(GateLocation gate) {
            if (gates.stream().anyMatch(other -> other.name().equals(gate.name()))) {
                throw new IllegalArgumentException(
                        "two gates are named '" + gate.name() + "'; give each a name of its own");
            }
            gates.add(gate);
            return this;
        }

        /**
         * Sets what is underground and in the way; nothing when not said. Line posts are spaced so that no hole falls into
         * its ground, and findings tell what else runs into it.
         *
         * @param newObstacles buried lines as they were marked, trees, walls and the like, east and north of the first lot
         *     corner
         * @return this builder
         */
        public Builder obstacles(Obstacles newObstacles) {
            obstacles = Objects.requireNonNull(newObstacles, "newObstacles");
            return this;
        }

        /**
         * Sets the rules of the place, as the local office states them; none when not said. The plan's findings tell where
         * the fence breaks one. What the rules are, and whether a fence keeps them, is for the office to say.
         *
         * @param newRules the rules, their zones east and north of the first lot corner
         * @return this builder
         */
        public Builder rules(LocalRules newRules) {
            rules = Objects.requireNonNull(newRules, "newRules");
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
         * Sets how hard freezing ground may grip the side of the concrete; as is usual for the soil when not said.
         *
         * @param stress the stress, from 0 to 1,000 kPa
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder frostGrip(Pressure stress) {
            if (stress.isNegative() || stress.compareTo(STRONGEST_GRIP) > 0) {
                throw new IllegalArgumentException("frost grip was " + Written.pressure(stress)
                        + "; it must be from 0 to 1,000 kPa, so check its unit");
            }
            frostGrip = stress;
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
         * Sets the design wind of the place, from which each run gets its pressure zone by zone: more at free ends and
         * corners than in the middle.
         *
         * @param newWind the wind; not together with {@link #windPressure}
         * @return this builder
         */
        public Builder wind(Wind newWind) {
            wind = Objects.requireNonNull(newWind, "newWind");
            return this;
        }

        /**
         * Returns the site.
         *
         * @return the site
         * @throws IllegalArgumentException if no side is fenced, if both sides and a line are given to fence, or if a fenced
         *     side, one with ground shots or one with a gate is not there, or if both a wind and its pressure are given
         */
        public Site build() {
            if (line == null && fencedSides.isEmpty()) {
                throw new IllegalArgumentException(
                        "no side is fenced; call fenceOn with at least one side, or fenceAlong with a line");
            }
            if (line != null && !fencedSides.isEmpty()) {
                throw new IllegalArgumentException("both sides " + fencedSides
                        + " of the lot and a line were given to fence; plan them one by one, as two sites");
            }
            int count = sideCount(lot, line);
            fencedSides.forEach(side -> requireSide("fenced side", side, count));
            ground.keySet().forEach(side -> requireSide("side with ground shots", side, count));
            gates.forEach(gate -> requireSide("side of " + gate.name(), gate.side(), count));
            if (wind != null && windPressure != null) {
                throw new IllegalArgumentException("windPressure was " + Written.pressure(windPressure) + " and wind "
                        + wind + "; give one of them, the pressure if an engineer gave it");
            }
            return new Site(this);
        }

        private void requireSide(String what, int side, int count) {
            if (side < 1 || side > count) {
                throw new IllegalArgumentException(what + " was " + side + "; "
                        + (line == null ? "the lot" : "the line") + " has sides 1 to " + count);
            }
        }
    }
}
