package org.fencecore.gate;

/** The side of the opening the gate hangs on, seen from outside. */
public enum HingeSide {
    /** Hinges on the left. */
    LEFT,
    /** Hinges on the right. */
    RIGHT
}
