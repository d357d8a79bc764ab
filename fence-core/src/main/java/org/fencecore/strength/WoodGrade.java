package org.fencecore.strength;

/** A visual grade of lumber as it is stamped. */
public enum WoodGrade {
    /** Number 1. */
    NO_1("No.1"),
    /** Number 2, what yards sell if nothing is said. */
    NO_2("No.2");

    private final String words;

    WoodGrade(String words) {
        this.words = words;
    }

    /**
     * Returns the stamp.
     *
     * @return such as {@code No.2}
     */
    @Override
    public String toString() {
        return words;
    }
}
