package org.fencecore.gate;

/** How the ends of a wood brace are cut to fit the corners of the frame; both ends are alike. */
public enum BraceEnds {
    /** Two cuts that meet in a point on the centreline, which runs from corner to corner. */
    POINTS("pointed"),
    /** One cut along the rail, with one edge of the brace in each corner; it leaves the stiles alone. */
    RAIL_CUTS("cut along the rails"),
    /** One cut along the stile, with one edge of the brace in each corner; it leaves the rails alone. */
    STILE_CUTS("cut along the stiles");

    private final String words;

    BraceEnds(String words) {
        this.words = words;
    }

    /**
     * Returns its name in the trade's words.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
