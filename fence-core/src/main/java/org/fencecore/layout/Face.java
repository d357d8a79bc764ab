package org.fencecore.layout;

/** Where a row of boards is fixed: to one of the two faces of the rails, or on top of the boards outside. */
public enum Face {
    /** The face the layout starts from: its row reaches from end to end of the clear length. */
    OUTSIDE,
    /** The other face: its boards stand behind the gaps of the outside. */
    INSIDE,
    /** The outside again, as a second layer: its boards or battens lie over the gaps of the first. */
    COVER
}
