package org.fencecore.cutting;

import org.jspecify.annotations.Nullable;

/** The work a search may do, counted and not timed, so that the same job gives the same answer on any machine. */
final class Effort {

    private static final long A_PIECE = 100_000;
    private static final long A_FEW = 9_000_000;
    private static final long A_SIZE_CUBED = 130;
    private static final long LARGEST = 3_500_000_000L;

    private final @Nullable Effort whole;
    private final long most;
    private long spent;

    Effort(long most) {
        this(null, most);
    }

    private Effort(@Nullable Effort whole, long most) {
        this.whole = whole;
        this.most = most;
    }

    /** What usually does: it grows with the pieces of small jobs and with the sizes of large ones. */
    static Effort usual(Job job, int times) {
        long pieces = 0;
        for (int count : job.demand) {
            pieces += count;
        }
        long sizes = job.sizes();
        long work = Math.min(A_FEW, A_PIECE * pieces) + Math.min(LARGEST, A_SIZE_CUBED * sizes * sizes * sizes);
        return new Effort(work * times);
    }

    /** A share of what is left; what is spent of it is spent of the whole. */
    Effort share(double share) {
        return new Effort(this, (long) (share * Math.max(0, most - spent)));
    }

    /** Twice what this was at the start, and apart from it: for the first relaxation, which all else rests on. */
    Effort forFirstRelaxation() {
        return new Effort(2 * most);
    }

    void spend(long work) {
        spent += work;
        if (whole != null) {
            whole.spend(work);
        }
    }

    boolean isSpent() {
        return spent >= most;
    }

    long spent() {
        return spent;
    }
}
