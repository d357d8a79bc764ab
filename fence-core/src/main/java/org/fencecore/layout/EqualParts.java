package org.fencecore.layout;

/**
 * An amount of nanometres cut into equal parts, each mark rounded once so that nothing adds up.
 *
 * <p>Marks are the nearest nanometre, and those past the middle are measured from the far end. So both directions give
 * the same marks, the parts are the rounded-down or rounded-up share and no other, and they sum to the whole exactly.
 * Only the mark in the very middle of an odd whole is half a nanometre off.
 */
final class EqualParts {

    private final long whole;
    private final int parts;
    private final long share;
    private final long rest;

    /**
     * @param whole zero or more
     * @param parts zero or more; zero only for a whole of zero
     */
    EqualParts(long whole, int parts) {
        this.whole = whole;
        this.parts = parts;
        long divisor = Math.max(parts, 1);
        this.share = whole / divisor;
        this.rest = whole % divisor;
    }

    /** Returns how much the first parts come to, from 0 to all of them. */
    long upTo(int count) {
        return 2 * count > parts ? whole - fromNearEnd(parts - count) : fromNearEnd(count);
    }

    private long fromNearEnd(int count) {
        if (count == 0) {
            return 0;
        }
        // count * whole / parts to the nearest, half going down; the products stay below parts squared.
        return count * share + (2L * count * rest + parts - 1) / (2L * parts);
    }

    /** Returns one part to the nearest nanometre, or zero if there is none. */
    long part() {
        return 2 * rest >= Math.max(parts, 1) ? share + 1 : share;
    }
}
