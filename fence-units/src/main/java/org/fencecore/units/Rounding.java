package org.fencecore.units;

/** How a length that falls between two marks is brought to one of them. */
public enum Rounding {
    /** To the nearer mark; half way goes away from zero, as a carpenter rounds half a sixteenth up. */
    NEAREST,
    /** To the mark at or below: for a part that must fit. */
    DOWN,
    /** To the mark at or above: for a hole that must be deep enough, or stock that must be long enough. */
    UP;

    long divide(long value, long divisor) {
        long floor = Math.floorDiv(value, divisor);
        long rest = value - floor * divisor;
        return switch (this) {
            case DOWN -> floor;
            case UP -> rest == 0 ? floor : floor + 1;
            case NEAREST -> {
                long other = divisor - rest;
                boolean up = rest != other ? rest > other : value > 0;
                yield up ? floor + 1 : floor;
            }
        };
    }
}
