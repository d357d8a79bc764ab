package org.fencecore.takeoff;

/** What sort of thing a line of the shopping list is: what is bought, wasted and loaded alike. */
public enum MaterialGroup {
    /** Sticks for posts, rails, kick boards and frames of gates. */
    LUMBER("lumber"),
    /** Boards and battens, of the fence and of gates. */
    BOARDS("boards"),
    /** Bags of concrete mix. */
    CONCRETE("concrete"),
    /** Bags of gravel. */
    GRAVEL("gravel"),
    /** Screws and nails, with what else holds or covers lumber. */
    FASTENERS("fasteners"),
    /** Hinges, latches and rods. */
    GATE_HARDWARE("gate hardware"),
    /** What lays out the fence and holds its posts while they cure. */
    LAYOUT("layout");

    private final String words;

    MaterialGroup(String words) {
        this.words = words;
    }

    /**
     * Returns its name in the trade's words, such as {@code gate hardware}.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
