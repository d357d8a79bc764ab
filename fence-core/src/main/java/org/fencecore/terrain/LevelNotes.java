package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.fencecore.geometry.Station;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.jspecify.annotations.Nullable;

/**
 * Differential level notes, reduced: from a benchmark of known elevation over turning points to the points wanted, by
 * height of instrument.
 *
 * <pre>
 * height of instrument = elevation + backsight
 * elevation            = height of instrument - intermediate sight or foresight
 * arithmetic check:      sum of backsights - sum of foresights = last elevation - first
 * misclosure           = elevation of the last point as read - its known elevation
 * correction           = -misclosure x set-ups to the point / all set-ups, or by distance
 * </pre>
 *
 * <p>The line closes if the elevation of its last point is known, or if it ends on the benchmark where it began. An
 * intermediate sight is corrected as its set-up is. Nothing is rounded but a correction, to the nearest nanometre.
 *
 * <p>The usual allowable misclosure is 5 mm times the square root of the number of set-ups (common practice, no source);
 * give the one that the job asks for. It assumes level sights of about equal length back and forward, so it leaves out
 * the collimation of the instrument, the curve of the earth and refraction. It has up to 10,000 points.
 *
 * <p>Sources: the arithmetic check and the equal parts for every set-up, NAVEDTRA 14071, Engineering Aid Advanced,
 * "Level Computations" (read in a copy).
 *
 * <p>Example: two turning points between A and B, no closing benchmark.
 *
 * <pre>{@code
 * LevelNotes notes = LevelNotes.from("A", Length.ofMetres(100))
 *         .metric()
 *         .backsight(Length.ofMetres(2.365))
 *         .foresight("S1", Length.ofMetres(1.235))
 *         .backsight(Length.ofMetres(0.685))
 *         .foresight("S2", Length.ofMetres(3.570))
 *         .backsight(Length.ofMetres(1.745))
 *         .foresight("B", Length.ofMetres(2.340))
 *         .build();
 * notes.elevation("B");    // 97.650 m
 * notes.rise();            // -2.350 m
 * }</pre>
 */
public final class LevelNotes {

    private static final Length USUAL_FOR_ONE_SETUP = Length.ofMillimetres(5);

    private final List<LevelEntry> entries;
    private final Map<String, LevelEntry> byName;
    private final Length backsightSum;
    private final Length foresightSum;
    private final int setUps;
    private final @Nullable Length known;
    private final MisclosureSpread spread;
    private final @Nullable Length givenAllowable;
    private final Map<String, Length> written;
    private final @Nullable Length writtenBacksights;
    private final @Nullable Length writtenForesights;
    private final boolean metric;

    private LevelNotes(Builder from) {
        setUps = from.sights.setUps();
        known = from.known();
        spread = from.spread;
        givenAllowable = from.allowable;
        written = Collections.unmodifiableMap(new LinkedHashMap<>(from.written));
        writtenBacksights = from.writtenBacksights;
        writtenForesights = from.writtenForesights;
        metric = from.metric;
        entries = from.entries();
        byName = new HashMap<>();
        Length back = Length.ZERO;
        Length fore = Length.ZERO;
        for (LevelEntry entry : entries) {
            byName.putIfAbsent(entry.point(), entry);
            back = back.plus(entry.backsight().orElse(Length.ZERO));
            fore = fore.plus(entry.foresight().orElse(Length.ZERO));
        }
        backsightSum = back;
        foresightSum = fore;
    }

    /**
     * Starts notes at a benchmark.
     *
     * @param benchmark its name
     * @param elevation its known elevation; 100 ft for a benchmark of one's own
     * @return a builder without readings
     * @throws IllegalArgumentException if the name is blank or the elevation over 1,000,000 km from zero
     */
    public static Builder from(String benchmark, Length elevation) {
        return new Builder(benchmark, elevation);
    }

    /**
     * Returns the lines of the level book in the order of the notes.
     *
     * @return the entries, from the benchmark to the last point, unmodifiable
     */
    public List<LevelEntry> entries() {
        return entries;
    }

    /**
     * Returns the elevation of a point, corrected for the misclosure.
     *
     * @param point the name of the point; where a line ends at its first benchmark, that name is the benchmark's
     * @return the elevation
     * @throws IllegalArgumentException if there is no such point
     */
    public Length elevation(String point) {
        LevelEntry entry = byName.get(point);
        if (entry == null) {
            throw new IllegalArgumentException(
                    "point was '" + point + "', which is not in the notes; ask for one of " + names());
        }
        return entry.elevation();
    }

    private String names() {
        List<String> names = entries.stream().map(LevelEntry::point).distinct().toList();
        return names.size() <= 12 ? names.toString() : names.subList(0, 12) + " and " + (names.size() - 12) + " more";
    }

    /**
     * Returns the sum of the backsights.
     *
     * @return the sum of all readings back
     */
    public Length backsightSum() {
        return backsightSum;
    }

    /**
     * Returns the sum of the foresights; intermediate sights do not count.
     *
     * @return the sum of all readings forward
     */
    public Length foresightSum() {
        return foresightSum;
    }

    /**
     * Returns how much higher the last point is than the first, as read: the arithmetic check.
     *
     * @return the sum of the backsights less that of the foresights, negative for a fall
     */
    public Length rise() {
        return backsightSum.minus(foresightSum);
    }

    /**
     * Returns how often the level was set up.
     *
     * @return the number of backsights
     */
    public int setUps() {
        return setUps;
    }

    /**
     * Returns by how much the line misses its known end.
     *
     * @return the elevation of the last point as read less its known elevation; empty if it is not known
     */
    public Optional<Length> misclosure() {
        return Optional.ofNullable(known).map(end -> last().observed().minus(end));
    }

    /**
     * Returns how much the line may miss its known end.
     *
     * @return the allowable misclosure, that given or the usual one
     */
    public Length allowableMisclosure() {
        return givenAllowable != null ? givenAllowable : usualAllowable();
    }

    private Length usualAllowable() {
        return Length.ofNanometres(Math.round(USUAL_FOR_ONE_SETUP.nanometres() * Math.sqrt(setUps)));
    }

    /**
     * Returns the ground along the fence line, through the points that have a station.
     *
     * @return elevations by station; empty if fewer than two points have one
     */
    public Optional<Profile> profile() {
        TreeMap<Length, Length> ground = new TreeMap<>();
        for (LevelEntry entry : entries) {
            entry.station().ifPresent(station -> ground.put(station, entry.elevation()));
        }
        if (ground.size() < 2) {
            return Optional.empty();
        }
        Profile.Builder profile = Profile.builder();
        ground.forEach(profile::point);
        return Optional.of(profile.build());
    }

    /**
     * Returns what does not check in the notes:
     *
     * <ul>
     *   <li>{@code level-misclosure}: the line misses its known end by more than is allowed
     *   <li>{@code level-not-closed}: no known end, so a wrong reading would not show
     *   <li>{@code level-sums-differ}: a sum at the foot of the page is not the sum of the readings
     *   <li>{@code level-written-differs}: an elevation in the book is not what the readings give
     * </ul>
     *
     * @return all findings, empty if everything checks
     */
    public List<Finding> findings() {
        return new LevelChecks(this).findings();
    }

    /**
     * Returns the page of the level book line by line: every height of instrument and elevation, the sums and their
     * check, the misclosure and the corrections, ending with the elevation of the last point.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        return new LevelPage(this).worksheet();
    }

    LevelEntry last() {
        return entries.get(entries.size() - 1);
    }

    Optional<Length> known() {
        return Optional.ofNullable(known);
    }

    MisclosureSpread spread() {
        return spread;
    }

    boolean hasGivenAllowable() {
        return givenAllowable != null;
    }

    Map<String, Length> written() {
        return written;
    }

    Optional<Length> writtenBacksights() {
        return Optional.ofNullable(writtenBacksights);
    }

    Optional<Length> writtenForesights() {
        return Optional.ofNullable(writtenForesights);
    }

    boolean isMetric() {
        return metric;
    }

    /**
     * Describes the notes.
     *
     * @return such as {@code level notes from A to B, 3 set-ups}
     */
    @Override
    public String toString() {
        return "level notes from " + entries.get(0).point() + " to " + last().point() + ", " + setUps
                + (setUps == 1 ? " set-up" : " set-ups");
    }

    /** Takes the readings in the order of the book. Not for use by several threads at once. */
    public static final class Builder {

        private final LevelSights sights;
        private final Map<String, Length> stations = new HashMap<>();
        private final Map<String, Length> distances = new HashMap<>();
        private final Map<String, Length> written = new LinkedHashMap<>();
        private @Nullable Length knownEnd;
        private @Nullable Length allowable;
        private @Nullable Length writtenBacksights;
        private @Nullable Length writtenForesights;
        private MisclosureSpread spread = MisclosureSpread.BY_SETUP;
        private boolean metric;

        private Builder(String name, Length elevation) {
            sights = new LevelSights(name, elevation);
        }

        /**
         * Sets the level up and reads back to the benchmark or to the last turning point.
         *
         * @param reading the reading of the rod
         * @return this builder
         * @throws IllegalArgumentException if the level stands already, if the line has come back to its benchmark, or if
         *     the reading is over 100 ft
         */
        public Builder backsight(Length reading) {
            sights.backsight(reading);
            return this;
        }

        /**
         * Adds a sight on a point that the line is not carried on from.
         *
         * @param point its name, not yet in the notes
         * @param reading the reading of the rod
         * @return this builder
         * @throws IllegalArgumentException if there is no backsight before it, if the name is blank or taken, or if the
         *     reading is over 100 ft
         */
        public Builder intermediate(String point, Length reading) {
            sights.intermediate(point, reading);
            return this;
        }

        /**
         * Adds a sight on a station of the fence line; the point is named as the station is written, such as 0+30.50.
         *
         * @param station the station
         * @param reading the reading of the rod
         * @return this builder
         * @throws IllegalArgumentException as {@link #intermediate(String, Length)} does
         */
        public Builder intermediate(Station station, Length reading) {
            return intermediate(station.toString(), reading).station(station.toString(), station.distance());
        }

        /**
         * Adds the sight forward to a turning point, or to the last point. A foresight back on the benchmark closes the
         * line.
         *
         * @param point its name, not yet in the notes unless it is the benchmark
         * @param reading the reading of the rod
         * @return this builder
         * @throws IllegalArgumentException if there is no backsight before it, if the name is blank or taken, or if the
         *     reading is over 100 ft
         */
        public Builder foresight(String point, Length reading) {
            sights.foresight(point, reading);
            return this;
        }

        /**
         * Tells where a point is along the fence line, so that it belongs to the profile.
         *
         * @param point the name of the point
         * @param station the level distance from station 0+00
         * @return this builder
         */
        public Builder station(String point, Length station) {
            stations.put(point, Objects.requireNonNull(station, "station"));
            return this;
        }

        /**
         * Tells how far the line was levelled to a point, for a spread {@link MisclosureSpread#BY_DISTANCE}.
         *
         * @param point the name of the point
         * @param fromBenchmark the distance along the levelled line
         * @return this builder
         */
        public Builder distance(String point, Length fromBenchmark) {
            distances.put(point, Objects.requireNonNull(fromBenchmark, "fromBenchmark"));
            return this;
        }

        /**
         * Tells the known elevation of the last point.
         *
         * @param elevation its elevation from elsewhere
         * @return this builder
         * @throws IllegalArgumentException if it is over 1,000,000 km from zero
         */
        public Builder closesOn(Length elevation) {
            Heights.checked(elevation);
            knownEnd = elevation;
            return this;
        }

        /**
         * Sets how much the line may miss its known end.
         *
         * @param misclosure the allowable misclosure, zero or more; 5 mm times the root of the set-ups when not said
         * @return this builder
         * @throws IllegalArgumentException if it is negative
         */
        public Builder allowable(Length misclosure) {
            if (misclosure.isNegative()) {
                throw new IllegalArgumentException("allowable was " + misclosure + "; it must be 0 or more");
            }
            allowable = misclosure;
            return this;
        }

        /**
         * Sets how the misclosure is spread.
         *
         * @param how by set-up when not said
         * @return this builder
         */
        public Builder spread(MisclosureSpread how) {
            spread = Objects.requireNonNull(how, "how");
            return this;
        }

        /**
         * Tells the elevation that the book has for a point as read, to be checked.
         *
         * @param point the name of the point
         * @param elevation the elevation in the book, before any correction
         * @return this builder
         */
        public Builder written(String point, Length elevation) {
            written.put(point, Objects.requireNonNull(elevation, "elevation"));
            return this;
        }

        /**
         * Tells the sums at the foot of the page, to be checked.
         *
         * @param backsights the sum of the backsights in the book
         * @param foresights the sum of the foresights in the book
         * @return this builder
         */
        public Builder writtenSums(Length backsights, Length foresights) {
            writtenBacksights = Objects.requireNonNull(backsights, "backsights");
            writtenForesights = Objects.requireNonNull(foresights, "foresights");
            return this;
        }

        /**
         * Has the page and the findings written in metres and not in feet.
         *
         * @return this builder
         */
        public Builder metric() {
            metric = true;
            return this;
        }

        /**
         * Reduces the notes.
         *
         * @return the notes, with {@link LevelNotes#findings} if they do not check
         * @throws IllegalArgumentException if the last sight is no foresight, if a station, distance or elevation is told
         *     of a point that is not in the notes, if two points have the same station, or if the misclosure is to be
         *     spread by distance and a point has none between zero and that of the last
         */
        public LevelNotes build() {
            sights.requireEnded();
            requireKnown("station", stations.keySet());
            requireKnown("distance", distances.keySet());
            requireKnown("written elevation", written.keySet());
            Map<Length, String> at = new HashMap<>();
            stations.forEach((point, station) -> {
                String other = at.put(station, point);
                if (other != null) {
                    throw new IllegalArgumentException("station " + station + " was given for " + other + " and "
                            + point + "; the profile has one elevation at a station");
                }
            });
            return new LevelNotes(this);
        }

        private void requireKnown(String what, Set<String> points) {
            for (String point : points) {
                if (!sights.has(point)) {
                    throw new IllegalArgumentException("a " + what + " was given for '" + point
                            + "', which is not in the notes; give a sight on it, or correct the name");
                }
            }
        }

        private @Nullable Length known() {
            return knownEnd == null && sights.isLoop() ? sights.first().observed() : knownEnd;
        }

        private List<LevelEntry> entries() {
            Length known = known();
            Length observed = sights.last().observed();
            Length toSpread = known == null ? Length.ZERO : known.minus(observed);
            List<LevelEntry> entries = new ArrayList<>();
            for (LevelSights.Sight sight : sights.all()) {
                boolean isFirst = entries.isEmpty();
                boolean isBackAtFirst =
                        !isFirst && sight.point().equals(sights.first().point());
                Length correction = isFirst ? Length.ZERO : correction(sight, toSpread);
                Length station = isBackAtFirst ? null : stations.get(sight.point());
                entries.add(sight.entry(correction, station));
            }
            return List.copyOf(entries);
        }

        private Length correction(LevelSights.Sight sight, Length toSpread) {
            return switch (spread) {
                case NONE -> Length.ZERO;
                case BY_SETUP -> toSpread.portion(sight.setUp(), sights.setUps());
                case BY_DISTANCE -> byDistance(sight, toSpread);
            };
        }

        private Length byDistance(LevelSights.Sight sight, Length toSpread) {
            Length whole = distances.get(sights.last().point());
            if (whole == null || !whole.isPositive()) {
                throw refusedDistance(sights.last().point(), whole, "over 0 at the last point");
            }
            Length part = sight == sights.last() ? whole : distances.get(sight.point());
            if (part == null || part.isNegative() || part.compareTo(whole) > 0) {
                throw refusedDistance(sight.point(), part, "from 0 to that of the last point, " + whole);
            }
            return part.equals(whole) ? toSpread : toSpread.times(part.ratioTo(whole));
        }

        private static IllegalArgumentException refusedDistance(
                String point, @Nullable Length distance, String allowed) {
            return new IllegalArgumentException("distance of " + point + " was "
                    + (distance == null ? "not given" : distance)
                    + "; to spread the misclosure by distance it must be " + allowed);
        }
    }
}
