package org.fencecore.geometry.ground;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.jspecify.annotations.Nullable;

/**
 * The ground, or a rail, seen from the side: heights at stations along a line, straight in between.
 *
 * <p>Stations are level distances and increase; the height between two shots is theirs in proportion, rounded once to
 * the nearest nanometre. A profile says nothing beyond its first and last station, so asking there is an error and not
 * a guess. It has from 2 to 1,000,000 points.
 *
 * <p>Example: ground that falls 2 ft in 24 ft, then 4 ft in the next 24 ft.
 *
 * <pre>{@code
 * Profile ground = Profile.builder()
 *         .point(Length.ZERO, Length.ofFeet(100))
 *         .point(Length.ofFeet(24), Length.ofFeet(98))
 *         .point(Length.ofFeet(48), Length.ofFeet(94))
 *         .build();
 * ground.elevationAt(Length.ofFeet(36));                      // 96 ft
 * ground.rise(Length.ZERO, Length.ofFeet(48));                // -6 ft
 * ground.slopeBetween(Length.ZERO, Length.ofFeet(48));        // -12.5 %
 * }</pre>
 */
public final class Profile {

    private static final int MOST_POINTS = 1_000_000;

    private final long[] stations;
    private final long[] elevations;

    private Profile(long[] stations, long[] elevations) {
        this.stations = stations;
        this.elevations = elevations;
    }

    /**
     * Starts a profile.
     *
     * @return a builder without points
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Makes a profile that runs straight between two points, such as a string or a rail.
     *
     * @param start the station of the first point
     * @param startElevation its height
     * @param end the station of the last point
     * @param endElevation its height
     * @return the profile
     * @throws IllegalArgumentException if the end is not after the start, or a number is out of range
     */
    public static Profile straight(Length start, Length startElevation, Length end, Length endElevation) {
        requireForward(start, end);
        Exact.requireInRange("start", start);
        Exact.requireInRange("startElevation", startElevation);
        Exact.requireInRange("end", end);
        Exact.requireInRange("endElevation", endElevation);
        return new Profile(
                new long[] {start.nanometres(), end.nanometres()},
                new long[] {startElevation.nanometres(), endElevation.nanometres()});
    }

    /**
     * Returns the profile through the given shots.
     *
     * @param points the shots in order of increasing station, 2 to 1,000,000 of them
     * @return the profile
     * @throws IllegalArgumentException if there are too few or too many points or a station does not increase
     */
    public static Profile of(List<ProfilePoint> points) {
        Builder builder = new Builder();
        for (ProfilePoint point : points) {
            builder.point(point.station(), point.elevation());
        }
        return builder.build();
    }

    /**
     * Returns the stretch the profile tells about, from its first to its last station.
     *
     * @return the stretch
     */
    public Interval extent() {
        return Interval.of(Length.ofNanometres(firstStation()), Length.ofNanometres(lastStation()));
    }

    /**
     * Returns the shots in order of station: the two ends and every break between.
     *
     * @return the points, unmodifiable
     */
    public List<ProfilePoint> points() {
        return new AbstractList<>() { // makes each point when asked
            @Override
            public ProfilePoint get(int index) {
                return pointAt(index);
            }

            @Override
            public int size() {
                return stations.length;
            }
        };
    }

    /**
     * Tells whether the profile tells about the whole of a stretch.
     *
     * @param stretch the stretch
     * @return true if it lies within the extent
     */
    public boolean covers(Interval stretch) {
        return extent().contains(stretch);
    }

    /**
     * Returns the height at a station: {@code z0 + (z1 - z0) * (s - s0) / (s1 - s0)} between the shots before and
     * after.
     *
     * @param station the station, within the extent
     * @return the elevation, to the nearest nanometre
     * @throws IllegalArgumentException if the station is outside the extent
     */
    public Length elevationAt(Length station) {
        return Length.ofNanometres(heightAt(requireWithin("station", station)));
    }

    /**
     * Returns how much higher the profile is at one station than at another.
     *
     * @param a the station to measure from
     * @param b the station to measure to, on either side of {@code a}
     * @return the elevation at {@code b} less that at {@code a}, negative for a fall
     * @throws IllegalArgumentException if a station is outside the extent
     */
    public Length rise(Length a, Length b) {
        return Length.ofNanometres(heightAt(requireWithin("station b", b)) - heightAt(requireWithin("station a", a)));
    }

    /**
     * Returns the grade of the straight line between two stations, whatever the ground does in between.
     *
     * @param a the first station
     * @param b the second station, after {@code a}
     * @return the rise over the level distance
     * @throws IllegalArgumentException if a station is outside the extent or {@code b} is not after {@code a}
     */
    public Slope slopeBetween(Length a, Length b) {
        requireForward(a, b);
        return Slope.of(rise(a, b), b.minus(a));
    }

    /**
     * Returns the grade at a station. At a break it is the grade ahead, at the last station the grade arriving there.
     *
     * @param station the station, within the extent
     * @return the grade
     * @throws IllegalArgumentException if the station is outside the extent
     */
    public Slope slopeAt(Length station) {
        int i = pieceAt(requireWithin("station", station));
        return Slope.of(
                Length.ofNanometres(elevations[i + 1] - elevations[i]),
                Length.ofNanometres(stations[i + 1] - stations[i]));
    }

    /**
     * Returns the distance along the slope between two stations, following every break: what a rail along the ground
     * measures. Each straight piece is its level length times the square root of 1 plus its grade squared.
     *
     * @param a the first station
     * @param b the second station, not before {@code a}
     * @return the distance, to the nearest nanometre
     * @throws IllegalArgumentException if a station is outside the extent or {@code b} is before {@code a}
     */
    public Length lengthAlong(Length a, Length b) {
        long from = requireWithin("station a", a);
        long to = requireWithin("station b", b);
        if (from > to) {
            throw new IllegalArgumentException("station b was " + b + ", before station a at " + a + "; swap them");
        }
        double sum = 0;
        for (int i = pieceAt(from); stations[i] < to; i++) {
            double run = Math.min(stations[i + 1], to) - Math.max(stations[i], from);
            double grade = (double) (elevations[i + 1] - elevations[i]) / (stations[i + 1] - stations[i]);
            sum += run * Math.sqrt(1 + grade * grade);
        }
        return Length.ofNanometres(Math.round(sum));
    }

    /**
     * Returns the part of the profile between two stations: both ends, worked out in proportion, and every break
     * between.
     *
     * @param a the first station
     * @param b the second station, after {@code a}
     * @return the part, at the same stations and elevations
     * @throws IllegalArgumentException if a station is outside the extent or {@code b} is not after {@code a}
     */
    public Profile between(Length a, Length b) {
        requireForward(a, b);
        long from = requireWithin("station a", a);
        long to = requireWithin("station b", b);
        int first = pieceAt(from) + 1; // the first break after a
        int last = pieceAt(to); // the last break at or before b
        int breaks = last - first + (stations[last] < to ? 1 : 0);
        long[] s = new long[breaks + 2];
        long[] z = new long[breaks + 2];
        System.arraycopy(stations, first, s, 1, breaks);
        System.arraycopy(elevations, first, z, 1, breaks);
        s[0] = from;
        z[0] = heightAt(from);
        s[breaks + 1] = to;
        z[breaks + 1] = heightAt(to);
        return new Profile(s, z);
    }

    /**
     * Returns the same profile at other stations and elevations, such as a rail line a height over the ground.
     *
     * @param stationShift what to add to every station
     * @param elevationShift what to add to every elevation
     * @return the moved profile
     * @throws IllegalArgumentException if a shift is, or a point would be, over 1,000,000 km from zero
     */
    public Profile shiftedBy(Length stationShift, Length elevationShift) {
        Exact.requireInRange("stationShift", stationShift);
        Exact.requireInRange("elevationShift", elevationShift);
        int n = stations.length;
        long[] s = new long[n];
        long[] z = new long[n];
        for (int i = 0; i < n; i++) {
            s[i] = stations[i] + stationShift.nanometres();
            z[i] = elevations[i] + elevationShift.nanometres();
            Exact.requireInRange("station", Length.ofNanometres(s[i]));
            Exact.requireInRange("elevation", Length.ofNanometres(z[i]));
        }
        return new Profile(s, z);
    }

    /**
     * Returns the profile seen from the other side: what was the height at a station is now the height the same
     * distance from the other end. The extent stays; a station becomes start plus end less station.
     *
     * @return the mirrored profile
     */
    public Profile reversed() {
        int n = stations.length;
        long[] s = new long[n];
        long[] z = new long[n];
        for (int i = 0; i < n; i++) {
            // In this order no step leaves the range of the stations by more than their extent.
            s[i] = firstStation() + (lastStation() - stations[n - 1 - i]);
            z[i] = elevations[n - 1 - i];
        }
        return new Profile(s, z);
    }

    /**
     * Returns the highest shot, the first if several are as high.
     *
     * @return the highest point
     */
    public ProfilePoint highest() {
        return extreme(1);
    }

    /**
     * Returns the lowest shot, the first if several are as low.
     *
     * @return the lowest point
     */
    public ProfilePoint lowest() {
        return extreme(-1);
    }

    /**
     * Returns the narrowest and widest gap between this ground and a line over it, over the stretch both tell about.
     *
     * @param line the line, such as the bottom rail
     * @return the gaps, the height of the line less that of this ground, and their stations
     * @throws IllegalArgumentException if the two have no station in common
     */
    public Clearance clearanceUnder(Profile line) {
        long from = Math.max(firstStation(), line.firstStation());
        long to = Math.min(lastStation(), line.lastStation());
        if (from > to) {
            throw new IllegalArgumentException("the line runs from "
                    + line.extent().start() + " to " + line.extent().end() + ", the ground from "
                    + extent().start() + " to " + extent().end()
                    + "; they have no station in common, so shift one of them");
        }
        // Between two neighbouring breaks of either profile both are straight, so the gap is linear there and is
        // least and most at one of those breaks: looking at all breaks and the two ends finds the true extremes.
        int ground = pieceAt(from) + 1;
        int rail = line.pieceAt(from) + 1;
        long minAt = from;
        long maxAt = from;
        long min = line.heightAt(from) - heightAt(from);
        long max = min;
        for (long at = from; at < to; ) {
            at = Math.min(to, Math.min(stations[ground], line.stations[rail]));
            long gap = line.height(rail - 1, at) - height(ground - 1, at);
            if (gap < min) {
                min = gap;
                minAt = at;
            }
            if (gap > max) {
                max = gap;
                maxAt = at;
            }
            ground += stations[ground] == at ? 1 : 0;
            rail += line.stations[rail] == at ? 1 : 0;
        }
        return new Clearance(
                Length.ofNanometres(min),
                Length.ofNanometres(minAt),
                Length.ofNanometres(max),
                Length.ofNanometres(maxAt));
    }

    /**
     * Returns where the profile is higher than a level, such as where a fence is over a height.
     *
     * @param level the level
     * @return the stretches in order, their ends to the nearest nanometre; empty if it is nowhere higher
     */
    public List<Interval> stretchesAbove(Length level) {
        return stretchesPast(level.nanometres(), 1);
    }

    /**
     * Returns where the profile is lower than a level.
     *
     * @param level the level
     * @return the stretches in order, their ends to the nearest nanometre; empty if it is nowhere lower
     */
    public List<Interval> stretchesBelow(Length level) {
        return stretchesPast(level.nanometres(), -1);
    }

    private List<Interval> stretchesPast(long level, int upOrDown) {
        List<Interval> found = new ArrayList<>();
        for (int i = 0; i < stations.length - 1; i++) {
            double before = upOrDown * ((double) elevations[i] - level);
            double after = upOrDown * ((double) elevations[i + 1] - level);
            if (before > 0 || after > 0) {
                long cross = stations[i] + Math.round((stations[i + 1] - stations[i]) * (before / (before - after)));
                long from = before > 0 || before == after ? stations[i] : cross;
                long to = after > 0 || before == after ? stations[i + 1] : cross;
                if (from < to) {
                    found.add(Interval.of(Length.ofNanometres(from), Length.ofNanometres(to)));
                }
            }
        }
        return Interval.merged(found);
    }

    private ProfilePoint extreme(int upOrDown) {
        int found = 0;
        for (int i = 1; i < elevations.length; i++) {
            if (upOrDown * elevations[i] > upOrDown * elevations[found]) {
                found = i;
            }
        }
        return pointAt(found);
    }

    private ProfilePoint pointAt(int i) {
        return new ProfilePoint(Length.ofNanometres(stations[i]), Length.ofNanometres(elevations[i]));
    }

    private long firstStation() {
        return stations[0];
    }

    private long lastStation() {
        return stations[stations.length - 1];
    }

    private long heightAt(long station) {
        return height(pieceAt(station), station);
    }

    private long height(int piece, long station) {
        long rise = elevations[piece + 1] - elevations[piece];
        long run = stations[piece + 1] - stations[piece];
        return elevations[piece] + Exact.timesOver(rise, station - stations[piece], run);
    }

    /** Returns which straight piece a station within the extent is on; a break belongs to the piece it begins. */
    private int pieceAt(long station) {
        int found = Arrays.binarySearch(stations, station);
        int piece = found >= 0 ? found : -found - 2;
        return Math.min(piece, stations.length - 2);
    }

    private long requireWithin(String name, Length station) {
        long value = station.nanometres();
        if (value < firstStation() || value > lastStation()) {
            throw new IllegalArgumentException(name + " was " + station + "; the profile runs from "
                    + extent().start() + " to " + extent().end()
                    + ", so ask within that or add a point beyond the station");
        }
        return value;
    }

    private static void requireForward(Length a, Length b) {
        if (a.compareTo(b) >= 0) {
            throw new IllegalArgumentException(
                    "station b was " + b + ", not after station a at " + a + "; give two stations in order");
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Profile profile
                && Arrays.equals(profile.stations, stations)
                && Arrays.equals(profile.elevations, elevations);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(stations) + Arrays.hashCode(elevations);
    }

    @Override
    public String toString() {
        return "Profile of " + stations.length + " points from " + extent().start() + " to " + extent().end();
    }

    /** Takes the shots of a profile in order of station. Not for use by several threads at once. */
    public static final class Builder {

        private long[] stations = new long[8];
        private long[] elevations = new long[8];
        private int size;

        private Builder() {}

        /**
         * Adds the next shot.
         *
         * @param station the station, after the one before
         * @param elevation the height there
         * @return this builder
         * @throws IllegalArgumentException if the station is not after the one before, if a value is over 1,000,000 km
         *     from zero, or if there are 1,000,000 points already
         */
        public Builder point(Length station, Length elevation) {
            Exact.requireInRange("station", station);
            Exact.requireInRange("elevation", elevation);
            if (size == MOST_POINTS) {
                throw new IllegalArgumentException("station " + station + " would be point number " + (size + 1)
                        + "; a profile has at most 1,000,000, so thin the points out or split the line");
            }
            if (size > 0 && station.nanometres() <= stations[size - 1]) {
                throw new IllegalArgumentException("station was " + station + ", not after the one before at "
                        + Length.ofNanometres(stations[size - 1])
                        + "; put the points in order of station and give each station once");
            }
            if (size == stations.length) {
                stations = Arrays.copyOf(stations, 2 * size);
                elevations = Arrays.copyOf(elevations, 2 * size);
            }
            stations[size] = station.nanometres();
            elevations[size] = elevation.nanometres();
            size++;
            return this;
        }

        /**
         * Returns the profile through the shots so far.
         *
         * @return the profile
         * @throws IllegalArgumentException if there are fewer than 2
         */
        public Profile build() {
            if (size < 2) {
                throw new IllegalArgumentException(
                        "number of points was " + size + "; a profile needs at least its two ends");
            }
            return new Profile(Arrays.copyOf(stations, size), Arrays.copyOf(elevations, size));
        }
    }
}
