package org.fencecore.strength;

/** A kind of wood, or a group of kinds sold together, as the grading rules name it. */
public enum WoodSpecies {
    /** Southern Pine, the usual treated post. */
    SOUTHERN_PINE("Southern Pine"),
    /** Douglas Fir-Larch. */
    DOUGLAS_FIR_LARCH("Douglas Fir-Larch"),
    /** Hem-Fir. */
    HEM_FIR("Hem-Fir"),
    /** Spruce-Pine-Fir. */
    SPRUCE_PINE_FIR("Spruce-Pine-Fir"),
    /** Western Cedars. */
    WESTERN_CEDARS("Western Cedars"),
    /** Redwood. */
    REDWOOD("Redwood");

    private final String words;

    WoodSpecies(String words) {
        this.words = words;
    }

    /**
     * Returns the name of the wood.
     *
     * @return such as {@code Southern Pine}
     */
    @Override
    public String toString() {
        return words;
    }
}
