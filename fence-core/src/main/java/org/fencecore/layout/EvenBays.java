package org.fencecore.layout;

import org.fencecore.units.Length;

/**
 * Bays of one length side by side, in nanometres. Posts stand at exact portions, each rounded once.
 *
 * @param start the station of the first post
 * @param length the length from the first post to the last
 * @param bays how many bays, at least 1
 * @param backwards whether portions are counted from the far end, as in the mirror image of others
 */
record EvenBays(long start, long length, int bays, boolean backwards) {

    static EvenBays of(long start, long length, long bays) {
        return new EvenBays(start, length, (int) bays, false);
    }

    long station(int post) {
        Length whole = Length.ofNanometres(length);
        return backwards
                ? start + length - whole.portion(bays - post, bays).nanometres()
                : start + whole.portion(post, bays).nanometres();
    }

    long end() {
        return start + length;
    }

    /** The same seen from the other end of the whole stretch. */
    EvenBays mirrored(long stretch) {
        return new EvenBays(stretch - end(), length, bays, !backwards);
    }

    /** The first post between its ends that stands further than one station and not as far as another; 0 if none does. */
    int postWithin(long from, long to) {
        // A little before where it must be, so that no rounding steps over it.
        int post = (int) Math.max(1, (long) ((double) (from - start) / length * bays) - 1);
        while (post < bays && station(post) <= from) {
            post++;
        }
        return post < bays && station(post) < to ? post : 0;
    }
}
