package org.fencecore.gate;

/**
 * An inner corner of a gate's frame, where a rail meets a stile; a brace bears on both.
 *
 * @param rail the rail
 * @param stile the stile
 */
public record FrameCorner(FrameMember rail, FrameMember stile) {

    /**
     * Checks that a rail meets a stile.
     *
     * @param rail the rail
     * @param stile the stile
     * @throws IllegalArgumentException if {@code rail} is a stile or {@code stile} is a rail
     */
    public FrameCorner {
        if (rail.isStile() || !stile.isStile()) {
            throw new IllegalArgumentException("rail was the " + rail + " and stile the " + stile
                    + "; a corner is where one rail meets one stile");
        }
    }

    @Override
    public String toString() {
        return rail + " at " + stile;
    }
}
