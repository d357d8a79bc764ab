package org.fencecore.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Where no post may stand along a stretch, in order and in nanometres: overlapping intervals are one, and what lies beyond
 * the ends of the stretch is left out. Posts may stand at the edges.
 */
final class ForbiddenStretches {

    private final long length;
    private final long[] starts;
    private final long[] ends;
    private final boolean pastStart;
    private final boolean pastEnd;

    private ForbiddenStretches(long length, long[] starts, long[] ends, boolean pastStart, boolean pastEnd) {
        this.length = length;
        this.starts = starts;
        this.ends = ends;
        this.pastStart = pastStart;
        this.pastEnd = pastEnd;
    }

    static ForbiddenStretches of(long length, List<Interval> intervals) {
        List<Interval> sorted = new ArrayList<>(intervals);
        sorted.sort(Comparator.comparing(Interval::start));
        long[] starts = new long[sorted.size()];
        long[] ends = new long[sorted.size()];
        int count = 0;
        boolean pastStart = false;
        boolean pastEnd = false;
        for (Interval interval : sorted) {
            long start = Math.max(0, interval.start().nanometres());
            long end = Math.min(length, interval.end().nanometres());
            if (start >= end) {
                continue;
            }
            pastStart |= interval.start().isNegative();
            pastEnd |= interval.end().nanometres() > length;
            if (count > 0 && start < ends[count - 1]) {
                ends[count - 1] = Math.max(ends[count - 1], end);
            } else {
                starts[count] = start;
                ends[count++] = end;
            }
        }
        return new ForbiddenStretches(
                length, Arrays.copyOf(starts, count), Arrays.copyOf(ends, count), pastStart, pastEnd);
    }

    /** Tells whether one reaches past the start of the stretch, so that the post there stands within it. */
    boolean coversStart(int index) {
        return pastStart && index == 0;
    }

    /** Tells whether one reaches past the end of the stretch. */
    boolean coversEnd(int index) {
        return pastEnd && index == count() - 1;
    }

    long length() {
        return length;
    }

    int count() {
        return starts.length;
    }

    long start(int index) {
        return starts[index];
    }

    long end(int index) {
        return ends[index];
    }

    Interval interval(int index) {
        return Interval.of(Length.ofNanometres(starts[index]), Length.ofNanometres(ends[index]));
    }

    /** The same without one of them. */
    ForbiddenStretches without(int index) {
        List<Interval> others = new ArrayList<>();
        for (int i = 0; i < count(); i++) {
            if (i != index) {
                others.add(interval(i));
            }
        }
        return of(length, others);
    }

    /** The same seen from the other end of the stretch. */
    ForbiddenStretches mirrored() {
        int n = count();
        long[] mirroredStarts = new long[n];
        long[] mirroredEnds = new long[n];
        for (int i = 0; i < n; i++) {
            mirroredStarts[i] = length - ends[n - 1 - i];
            mirroredEnds[i] = length - starts[n - 1 - i];
        }
        return new ForbiddenStretches(
                length, mirroredStarts, mirroredEnds, /* pastStart= */ pastEnd, /* pastEnd= */ pastStart);
    }

    /** Compares with the mirror image, by what comes first: 0 if both ends are alike, for starts mirror ends. */
    int compareToMirrored() {
        return Arrays.compare(starts, mirrored().starts);
    }

    /** The first that some post of these bays stands in; -1 if none does. */
    int firstHit(List<EvenBays> bays) {
        for (int i = 0; i < count(); i++) {
            if (isHit(bays, i)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Tells whether a post of these bays, the very first and last left out, stands within one of them, which begins no
     * sooner than they.
     */
    boolean isHit(List<EvenBays> groups, int index) {
        long from = starts[index];
        long to = ends[index];
        for (EvenBays group : groups) {
            boolean joint = group.start() > from && group.start() < to;
            if (joint || group.postWithin(from, to) > 0) {
                return true;
            }
        }
        return false;
    }

    /** Stations that a best layout may bend at: both ends of the stretch and the edges within it, in order. */
    long[] pins() {
        long[] pins = new long[2 * count() + 2];
        int size = 1;
        for (int i = 0; i < count(); i++) {
            for (long edge : new long[] {starts[i], ends[i]}) {
                if (edge > pins[size - 1]) {
                    pins[size++] = edge;
                }
            }
        }
        if (pins[size - 1] < length) {
            pins[size++] = length;
        }
        return Arrays.copyOf(pins, size);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ForbiddenStretches that
                && length == that.length
                && pastStart == that.pastStart
                && pastEnd == that.pastEnd
                && Arrays.equals(starts, that.starts)
                && Arrays.equals(ends, that.ends);
    }

    @Override
    public int hashCode() {
        return Objects.hash(Arrays.hashCode(starts), Arrays.hashCode(ends));
    }
}
