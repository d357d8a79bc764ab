package org.fencecore.terrain;

/** How the misclosure of a level line is shared out among its points. */
public enum MisclosureSpread {
    /** The same part at every set-up of the level, so that a point gets as many parts as there were set-ups to it. */
    BY_SETUP,
    /** In proportion to the distance levelled to a point. */
    BY_DISTANCE,
    /** Not at all: the elevations stay as read. */
    NONE
}
