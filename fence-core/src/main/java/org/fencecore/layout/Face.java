package org.fencecore.layout;

/** The two faces of a fence that boards can be fixed to. */
public enum Face {
    /** The face the layout starts from: its row reaches from end to end of the clear length. */
    OUTSIDE,
    /** The other face: its boards stand behind the gaps of the outside. */
    INSIDE
}
