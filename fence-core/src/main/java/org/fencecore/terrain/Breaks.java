package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fencecore.units.Length;

/**
 * Where the ground breaks under one straight piece of a line, collected in any order and from either end, and thinned so
 * that no two are within {@link Near#SAME_BREAK}.
 */
final class Breaks {

    /** A break; a shot on the line goes before an edge that the line crosses. */
    private record Break(long station, long elevation, boolean isShot) {}

    private static final Comparator<Break> ALONG = Comparator.comparingLong(Break::station)
            .thenComparing(Break::isShot, Comparator.reverseOrder())
            .thenComparingLong(Break::elevation);

    private static final int MOST = 1_000_000; // as many points as a profile has

    private final long length;
    private final List<Break> found = new ArrayList<>();

    Breaks(long length) {
        this.length = length;
    }

    /** Adds a break, unless it is at an end of the piece. */
    void add(double station, double elevation, boolean isShot) {
        if (station >= Near.SAME_BREAK && station <= length - Near.SAME_BREAK) {
            if (found.size() == MOST) {
                throw new IllegalArgumentException("a piece of the line, " + Length.ofNanometres(length)
                        + " long, breaks over 1,000,000 times; take a shorter line or a coarser surface");
            }
            found.add(new Break(Math.round(station), Math.round(elevation), isShot));
        }
    }

    /** Takes a thinned break at a station from the start of the piece. */
    @FunctionalInterface
    interface Taker {
        void take(long station, long elevation);
    }

    /** Hands over the thinned breaks in order, from the start or from the end of the piece. */
    void tell(boolean fromTheEnd, Taker taker) {
        List<Break> kept = thinned();
        for (int i = 0; i < kept.size(); i++) {
            Break next = kept.get(fromTheEnd ? kept.size() - 1 - i : i);
            taker.take(fromTheEnd ? length - next.station : next.station, next.elevation);
        }
    }

    private List<Break> thinned() {
        found.sort(ALONG);
        List<Break> kept = new ArrayList<>();
        for (Break next : found) {
            int last = kept.size() - 1;
            if (last < 0 || next.station - kept.get(last).station >= Near.SAME_BREAK) {
                kept.add(next);
            } else if (next.isShot && !kept.get(last).isShot) {
                kept.set(last, next);
            }
        }
        return kept;
    }
}
