package org.fencecore.layout;

import java.util.List;

/** Divides a stretch without anything in its way into bays by the rule of a spec, in nanometres. */
final class BayPattern {

    private final BayRule rule;
    private final long full;
    private final long least;

    BayPattern(PostSpacingSpec spec, BayRule rule) {
        this.rule = rule;
        full = spec.fullBay().nanometres();
        least = spec.minimum().nanometres();
    }

    /** The fewest bays that a length takes. */
    long fewest(long length) {
        return -Math.floorDiv(-length, full);
    }

    /** The bays of a length that begins at a station, in up to three groups of equal ones. */
    List<EvenBays> bays(long start, long length) {
        long whole = length / full;
        long rest = length % full;
        long sharing = sharing(whole, rest);
        if (rule == BayRule.EQUAL || rest == 0 || sharing >= whole) {
            return List.of(EvenBays.of(start, length, fewest(length)));
        }
        long fulls = whole - sharing;
        long shared = sharing * full + rest;
        return switch (rule) {
            case REMAINDER_AT_START ->
                List.of(EvenBays.of(start, shared, sharing + 1), EvenBays.of(start + shared, fulls * full, fulls));
            case REMAINDER_IN_MIDDLE -> {
                long side = fulls / 2 * full;
                yield List.of(
                        EvenBays.of(start, side, fulls / 2),
                        EvenBays.of(start + side, shared, sharing + 1),
                        EvenBays.of(start + side + shared, side, fulls / 2));
            }
            case REMAINDER_SPLIT -> {
                long first = shared / 2;
                long last = shared - first;
                long ends = (sharing + 1) / 2;
                yield List.of(
                        EvenBays.of(start, first, ends),
                        EvenBays.of(start + first, fulls * full, fulls),
                        EvenBays.of(start + length - last, last, ends));
            }
            case REMAINDER_AT_END, EQUAL ->
                List.of(
                        EvenBays.of(start, fulls * full, fulls),
                        EvenBays.of(start + fulls * full, shared, sharing + 1));
        };
    }

    /** How many full bays share with what remains, so that all of them keep the minimum and stand where they should. */
    private long sharing(long whole, long rest) {
        if (rest < least && least == full) {
            return whole;
        }
        long sharing = rest >= least ? 0 : -Math.floorDiv(rest - least, full - least);
        boolean oddOneLeft = rule == BayRule.REMAINDER_IN_MIDDLE && (whole - sharing) % 2 != 0;
        boolean oddShare = rule == BayRule.REMAINDER_SPLIT && sharing % 2 == 0;
        return oddOneLeft || oddShare ? sharing + 1 : sharing;
    }
}
