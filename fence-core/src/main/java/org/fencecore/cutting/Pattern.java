package org.fencecore.cutting;

import java.util.Arrays;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** One way to cut one kind of stick: which sizes, and how many of each. */
final class Pattern {

    /** By the longest piece, since sizes are numbered from the longest; among those, most of it first. */
    static final Comparator<Pattern> LONGEST_FIRST = Comparator.comparingInt((Pattern pattern) -> pattern.sizes[0])
            .thenComparingInt(pattern -> pattern.kind)
            .thenComparingInt(pattern -> -pattern.counts[0])
            .thenComparing(pattern -> pattern.sizes, Arrays::compare)
            .thenComparing(pattern -> pattern.counts, Arrays::compare);

    final int kind;
    final int[] sizes;
    final int[] counts;
    private final int hash;

    private Pattern(int kind, int[] sizes, int[] counts) {
        this.kind = kind;
        this.sizes = sizes;
        this.counts = counts;
        this.hash = 31 * (31 * Arrays.hashCode(sizes) + Arrays.hashCode(counts)) + kind;
    }

    /** The pattern of a count for every size of the job. */
    static Pattern of(int kind, int[] perSize) {
        int used = 0;
        for (int count : perSize) {
            used += count > 0 ? 1 : 0;
        }
        int[] sizes = new int[used];
        int[] counts = new int[used];
        int next = 0;
        for (int size = 0; size < perSize.length; size++) {
            if (perSize[size] > 0) {
                sizes[next] = size;
                counts[next++] = perSize[size];
            }
        }
        return new Pattern(kind, sizes, counts);
    }

    static Pattern ofOneSize(int kind, int size, int count) {
        return new Pattern(kind, new int[] {size}, new int[] {count});
    }

    Pattern of(int otherKind) {
        return new Pattern(otherKind, sizes, counts);
    }

    /** How many of a size it gives. */
    int count(int size) {
        for (int i = 0; i < sizes.length; i++) {
            if (sizes[i] == size) {
                return counts[i];
            }
        }
        return 0;
    }

    /** The pattern with no more of any size than is wanted. */
    Pattern within(int[] demand) {
        int[] perSize = new int[demand.length];
        for (int i = 0; i < sizes.length; i++) {
            perSize[sizes[i]] = Math.min(counts[i], demand[sizes[i]]);
        }
        return of(kind, perSize);
    }

    /** How many sticks can be cut so before a size is cut more often than it is wanted. */
    int timesWithin(int[] demand) {
        int times = Integer.MAX_VALUE;
        for (int i = 0; i < sizes.length; i++) {
            times = Math.min(times, demand[sizes[i]] / counts[i]);
        }
        return times;
    }

    void addTo(int[] demand, int times) {
        for (int i = 0; i < sizes.length; i++) {
            demand[sizes[i]] += times * counts[i];
        }
    }

    /** What its pieces take of a kind of stick; {@link Job#DOES_NOT_FIT} if one of them is too long. */
    long take(Job job, int onKind) {
        long sum = 0;
        for (int i = 0; i < sizes.length; i++) {
            if (!job.fits(sizes[i], onKind)) {
                return Job.DOES_NOT_FIT;
            }
            sum += counts[i] * job.take(sizes[i], onKind);
        }
        return sum;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Pattern that
                && kind == that.kind
                && Arrays.equals(sizes, that.sizes)
                && Arrays.equals(counts, that.counts);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
