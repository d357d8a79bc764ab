package org.fencecore.obstacles;

import java.util.Locale;

/** What a buried line carries. */
public enum UtilityKind {
    /** Drinking water, from the main or a well. */
    WATER,
    /** Gas or fuel, also to a grill or a pool heater. */
    GAS,
    /** Electric power. */
    ELECTRIC,
    /** Telephone, television, data. */
    COMMUNICATION,
    /** Sewer and storm drains. */
    SEWER,
    /** A septic tank's lines and field; as a rule private. */
    SEPTIC,
    /** Sprinklers and other watering; as a rule private. */
    IRRIGATION,
    /** Yard and garden lights; as a rule private. */
    LIGHTING,
    /** Anything else. */
    OTHER;

    /**
     * Returns what one calls such a line.
     *
     * @return such as {@code gas line}
     */
    @Override
    public String toString() {
        return this == OTHER ? "buried line" : name().toLowerCase(Locale.ROOT) + " line";
    }
}
