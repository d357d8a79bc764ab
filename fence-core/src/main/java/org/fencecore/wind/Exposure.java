package org.fencecore.wind;

/** How open the ground around the place is to the wind, as ASCE 7 names it. */
public enum Exposure {
    /** Towns, suburbs and woods: closely spaced obstructions the size of houses or larger. */
    B("B, town, suburb or wood"),
    /** Open ground with scattered obstructions; what is taken if nothing is known. */
    C("C, open ground"),
    /** Flat, unobstructed ground and water. */
    D("D, flat shore");

    private final String words;

    Exposure(String words) {
        this.words = words;
    }

    /**
     * Returns the letter and what it stands for.
     *
     * @return such as {@code C, open ground}
     */
    @Override
    public String toString() {
        return words;
    }
}
