package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.GateDesign;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.site.GateLocation;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;

/**
 * A gate between its two posts: the leaf, its boards, and how high it hangs.
 *
 * @param location where the owner wanted it
 * @param from the post where the opening begins, going along the run
 * @param to the post where the opening ends
 * @param hingePost the one of the two that carries the hinges
 * @param opening the opening as it will be, post face to post face, in stations along the run
 * @param design the leaf: frame, brace and gaps
 * @param boards the boards on the leaf, from its left edge seen from outside; empty when it is too narrow for the pattern
 * @param boardBottom the height of the board bottoms on the leaf, level, in the datum of the shots
 */
public record GateBay(
        GateLocation location,
        Post from,
        Post to,
        Post hingePost,
        Interval opening,
        GateDesign design,
        Optional<BoardLayout> boards,
        Length boardBottom) {

    /**
     * Returns what the crew calls it.
     *
     * @return the name
     */
    public String name() {
        return location.name();
    }

    /**
     * Returns the post that the latch is on.
     *
     * @return the one of the two posts that does not carry the hinges
     */
    public Post latchPost() {
        return hingePost.equals(from) ? to : from;
    }

    /**
     * Returns how many boards the leaf takes.
     *
     * @return the number of boards on both faces
     */
    public int boardCount() {
        return boards.map(BoardLayout::count).orElse(0);
    }

    List<Worksheet> worksheets() {
        List<Worksheet> sheets = new ArrayList<>();
        sheets.add(design.worksheet());
        design.braces().forEach(brace -> sheets.add(brace.worksheet()));
        boards.ifPresent(layout -> sheets.add(layout.worksheet()));
        return sheets;
    }

    @Override
    public String toString() {
        return name();
    }
}
