package org.fencecore.strength;

/** Kinds of wood that are graded and sold together, with one set of design values. */
public enum SpeciesGroup {
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

    SpeciesGroup(String words) {
        this.words = words;
    }

    /**
     * Returns the name of the group.
     *
     * @return such as {@code Southern Pine}
     */
    @Override
    public String toString() {
        return words;
    }
}
