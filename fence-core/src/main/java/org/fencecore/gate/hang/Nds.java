package org.fencecore.gate.hang;

import org.fencecore.worksheet.Citation;

/** The sections of the design specification that hanging a gate rests on. */
final class Nds {

    static final Citation DENSITY =
            Citation.of("National Design Specification for Wood Construction, Supplement", "3.1.3", "2018");
    static final Citation LAG_WITHDRAWAL =
            Citation.of("National Design Specification for Wood Construction", "12.2.1, equation 12.2-1", "2018");
    static final Citation SCREW_WITHDRAWAL =
            Citation.of("National Design Specification for Wood Construction", "12.2.2, equation 12.2-2", "2018");
    static final Citation ADJUSTMENT =
            Citation.of("National Design Specification for Wood Construction", "Table 11.3.1", "2018");

    private Nds() {}
}
