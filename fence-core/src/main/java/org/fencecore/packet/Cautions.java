package org.fencecore.packet;

import java.util.List;

/**
 * The usual cautions that go with every sheet. They do not replace the law of the place, the makers' instructions or the
 * judgement of a licensed engineer.
 *
 * <p>Sources: excavation 29 CFR 1926.651(b) (locate lines before opening the ground); silica 29 CFR 1926.1153; treated
 * wood, USDA Forest Products Laboratory Wood Handbook FPL-GTR-190; the burns of wet concrete, from memory; wind and
 * gates, common practice, no source.
 */
public final class Cautions {

    private static final List<String> ALL = List.of(
            "Before digging, and before a stake or a batter board is driven, have underground lines marked by the local"
                    + " one-call service (in the United States dial 811) and wait until all have answered. It marks public lines only: find private ones (gas to a grill,"
                    + " sprinklers, lights, septic) as well. Near a mark dig by hand.",
            "This sheet is arithmetic from the figures that were given. The lot line is what a licensed surveyor sets;"
                    + " heights, setbacks, permits and footings are what the local office requires. Where soil is soft or"
                    + " filled, on slopes, in strong wind, or for anything that people lean on or depend on, ask a licensed"
                    + " engineer.",
            "Treated wood: wear gloves and eye protection, a dust mask when sawing, wash before eating, and never burn the"
                    + " scraps. Use fasteners made for it.",
            "Dry concrete mix holds silica: keep the dust down, stand upwind and wear a respirator that fits. Wet concrete"
                    + " burns skin and eyes: wear gloves, boots and eye protection and rinse at once.",
            "Boards and gates catch the wind before the concrete has cured: brace the posts, hang gates last, and do not"
                    + " leave a leaf unlatched. Keep hands clear of the hinge side. Cover open holes when you leave them.",
            "A gate at a pool or above a drop has rules of its own; this plan checks those it was given, and no others.");

    private Cautions() {}

    /**
     * Returns the cautions.
     *
     * @return one paragraph each, unmodifiable
     */
    public static List<String> all() {
        return ALL;
    }
}
