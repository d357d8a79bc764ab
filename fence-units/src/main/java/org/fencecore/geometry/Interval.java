package org.fencecore.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Length;

/**
 * A stretch of a line from one station to another, such as the bay between two posts or the stretch a gate takes.
 *
 * <p>Both ends belong to it. An interval of no length is a single station.
 *
 * <p>Example: the first two 8 ft bays of a fence touch at 8 ft and do not overlap.
 *
 * <pre>{@code
 * Interval first = Interval.of(Length.ZERO, Length.ofFeet(8));
 * Interval second = first.shiftedBy(Length.ofFeet(8));
 * first.contains(Length.ofFeet(8));   // true
 * first.overlaps(second);             // false
 * second.middle();                    // 12 ft
 * }</pre>
 *
 * @param start the station where it begins
 * @param end the station where it ends, not before {@code start}
 */
public record Interval(Length start, Length end) {

    /**
     * Checks that the ends are in order.
     *
     * @param start the station where it begins
     * @param end the station where it ends, not before {@code start}
     * @throws IllegalArgumentException if {@code start} is after {@code end}
     */
    public Interval {
        if (start.compareTo(end) > 0) {
            throw new IllegalArgumentException(
                    "start was " + start + ", after the end at " + end + "; give the smaller station first");
        }
    }

    /**
     * Returns the stretch between two stations.
     *
     * @param start the station where it begins
     * @param end the station where it ends, not before {@code start}
     * @return the interval
     * @throws IllegalArgumentException if {@code start} is after {@code end}
     */
    public static Interval of(Length start, Length end) {
        return new Interval(start, end);
    }

    /**
     * Returns how long it is, exact.
     *
     * @return end minus start, zero or more
     * @throws ArithmeticException if the difference is beyond what a length holds
     */
    public Length length() {
        return end.minus(start);
    }

    /**
     * Returns the station half way, rounded down to the nanometre.
     *
     * @return the middle
     */
    public Length middle() {
        long s = start.nanometres();
        long e = end.nanometres();
        return Length.ofNanometres((s & e) + ((s ^ e) >> 1)); // (s + e) / 2 without overflow
    }

    /**
     * Tells whether a station lies in this interval, its ends included.
     *
     * @param station the station
     * @return true if it is neither before the start nor after the end
     */
    public boolean contains(Length station) {
        return start.compareTo(station) <= 0 && station.compareTo(end) <= 0;
    }

    /**
     * Tells whether another interval lies wholly in this one; it may share its ends.
     *
     * @param other the other interval
     * @return true if no part of it lies outside
     */
    public boolean contains(Interval other) {
        return contains(other.start) && contains(other.end);
    }

    /**
     * Tells whether two intervals share more than a single station, as two parts in each other's way do.
     *
     * @param other the other interval
     * @return true if a stretch of some length is common to both; neighbours that only touch do not overlap
     */
    public boolean overlaps(Interval other) {
        return Length.max(start, other.start).compareTo(Length.min(end, other.end)) < 0;
    }

    /**
     * Returns what two intervals have in common.
     *
     * @param other the other interval
     * @return the common stretch, of no length if they only touch; empty if they are apart
     */
    public Optional<Interval> intersection(Interval other) {
        Length from = Length.max(start, other.start);
        Length to = Length.min(end, other.end);
        return from.compareTo(to) <= 0 ? Optional.of(new Interval(from, to)) : Optional.empty();
    }

    /**
     * Returns this interval moved along the line.
     *
     * @param shift how far, negative towards the start of the line
     * @return the interval of the same length there
     * @throws ArithmeticException if an end would be beyond what a length holds
     */
    public Interval shiftedBy(Length shift) {
        return new Interval(start.plus(shift), end.plus(shift));
    }

    /**
     * Returns the stretches that several intervals cover together, such as the places where no post may stand when each
     * of many things bars some.
     *
     * @param intervals the intervals in any order
     * @return what they cover, in order; intervals that overlap or touch have become one
     */
    public static List<Interval> merged(List<Interval> intervals) {
        List<Interval> sorted = new ArrayList<>(intervals);
        sorted.sort(Comparator.comparing(Interval::start));
        List<Interval> merged = new ArrayList<>(sorted.size());
        for (Interval next : sorted) {
            int last = merged.size() - 1;
            if (last >= 0 && next.start.compareTo(merged.get(last).end) <= 0) {
                Interval before = merged.get(last);
                merged.set(last, new Interval(before.start, Length.max(before.end, next.end)));
            } else {
                merged.add(next);
            }
        }
        return List.copyOf(merged);
    }

    /**
     * Returns the stretches that two sets of intervals have in common.
     *
     * @param some intervals in any order
     * @param others intervals in any order
     * @return what both cover, in order; stations at which they only touch are left out
     */
    public static List<Interval> common(List<Interval> some, List<Interval> others) {
        List<Interval> a = merged(some);
        List<Interval> b = merged(others);
        List<Interval> common = new ArrayList<>();
        for (int i = 0, j = 0; i < a.size() && j < b.size(); ) {
            if (a.get(i).overlaps(b.get(j))) {
                a.get(i).intersection(b.get(j)).ifPresent(common::add);
            }
            if (a.get(i).end.compareTo(b.get(j).end) < 0) {
                i++;
            } else {
                j++;
            }
        }
        return List.copyOf(common);
    }
}
