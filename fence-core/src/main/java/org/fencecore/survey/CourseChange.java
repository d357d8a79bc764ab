package org.fencecore.survey;

/** What of one course would have to be wrong for a lot that does not close. */
public enum CourseChange {
    /** Its bearing alone: the length that closes the lot is its own. */
    BEARING,
    /** Its length alone: the bearing that closes the lot is its own. */
    LENGTH,
    /** The whole course: the others close without it. */
    LEFT_OUT,
    /** Bearing and length both, which one slip seldom does. */
    BOTH
}
