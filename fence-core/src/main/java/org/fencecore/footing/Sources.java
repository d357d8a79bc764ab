package org.fencecore.footing;

import org.fencecore.worksheet.Citation;

/** The documents a footing is reckoned by. */
final class Sources {

    static final Citation GIVEN = Citation.of("given", "", "");

    static final Citation POLE = Citation.of("IBC", "section 1807.3.2.1", "2018");

    static final Citation POLE_EQUATION = Citation.of("IBC", "section 1807.3.2.1, equation 18-1", "2018");

    static final Citation HELD_POLE = Citation.of("IBC", "section 1807.3.2.2, equations 18-2 and 18-3", "2018");

    static final Citation FENCE_STANDARD = Citation.of("ASTM F567", "line posts", "2007");

    static final Citation FROST_GRIP =
            Citation.of("Canadian Foundation Engineering Manual", "adfreeze, from memory", "");

    static final Citation DOUBLED_BEARING = Citation.of("IBC", "section 1806.3.4", "2018");

    /** The same words stand in section 1807.3.3 of later editions (from memory). */
    static final Citation BACKFILL = Citation.of("IBC", "section 1805.7.3, later 1807.3.3", "2006");

    static final Citation FROST = Citation.of("IRC", "section R403.1.4.1; local frost depth as given", "");

    static final Citation USUAL_MINIMUM =
            Citation.of("USDA NRCS Conservation Practice Standard 382 (Fence)", "wood line posts", "Kentucky 2007");

    static final Citation RESULTANT =
            Citation.of("ASCE 7-16", "figure 29.3-1, resultant at 0.55 h for s/h = 1, else at mid-height", "");

    private Sources() {}
}
