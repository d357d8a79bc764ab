package org.fencecore.drawing;

import java.util.Locale;

/**
 * What a part of a drawing shows. Layers are painted in the order they have here, each over those before it, and all
 * parts of a layer are drawn alike.
 */
public enum Layer {
    /** Gravel under the posts. */
    GRAVEL,
    /** Concrete round the posts. */
    CONCRETE,
    /** How deep the ground freezes. */
    FROST,
    /** Boards on the inside face. */
    INSIDE_BOARDS,
    /** Boards on the outside face, and those of a stretch too long to draw them one by one. */
    OUTSIDE_BOARDS,
    /** Boards or battens over the gaps of those on the outside face. */
    COVER_BOARDS,
    /** Boards laid lengthwise under the others, before they are scribed to the ground. */
    KICK_BOARDS,
    /** Posts in elevation, seen through the boards. */
    POSTS,
    /** Rails in elevation, seen through the boards. */
    RAILS,
    /** Where two pieces of a rail are joined on a post. */
    RAIL_JOINTS,
    /** Stiles and rails of a gate's frame. */
    GATE_FRAME,
    /** Braces of a gate. */
    GATE_BRACE,
    /** Straps of a gate's hinges, and the blocks behind them. */
    HINGES,
    /** The surface of the ground. */
    GROUND,
    /** Buried lines, trees, walls and what else is in the way. */
    OBSTACLES,
    /** The edges of the ground for which rules of the place hold. */
    ZONES,
    /** The boundary of the lot. */
    BOUNDARY,
    /** The strings the posts are set to. */
    STRINGS,
    /** Where a drawing goes on on another sheet. */
    MATCH_LINES,
    /** The boards on stakes that hold the strings, marked by place and not to scale. */
    BATTER_BOARDS,
    /** The leaf of a gate standing open, and the way it swings. */
    SWING,
    /** Where posts stand, marked by kind and not to scale. */
    POST_MARKS,
    /** Dimension lines and tables. */
    DIMENSIONS,
    /** Everything written. */
    LETTERING;

    /**
     * Returns its name as files write it.
     *
     * @return small letters with hyphens, such as {@code outside-boards}
     */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
