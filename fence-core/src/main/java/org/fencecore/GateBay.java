package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.CourseLayout;
import org.fencecore.site.GateLocation;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;

/**
 * A gate between its two posts: the leaf, its boards, and how high it hangs.
 */
public final class GateBay {

    private final GateLocation location;
    private final Post from;
    private final Post to;
    private final Post hingePost;
    private final Interval opening;
    private final GateDesign design;
    private final Optional<BoardLayout> boards;
    private final Optional<CourseLayout> courses;
    private final Length boardBottom;
    private final Optional<GateSwing> swing;

    GateBay(
            GateLocation location,
            Post from,
            Post to,
            Post hingePost,
            Interval opening,
            GateDesign design,
            Optional<BoardLayout> boards,
            Optional<CourseLayout> courses,
            Length boardBottom,
            Optional<GateSwing> swing) {
        this.location = location;
        this.from = from;
        this.to = to;
        this.hingePost = hingePost;
        this.opening = opening;
        this.design = design;
        this.boards = boards;
        this.courses = courses;
        this.boardBottom = boardBottom;
        this.swing = swing;
    }

    /**
     * Returns where the owner wanted it.
     *
     * @return where the owner wanted it
     */
    public GateLocation location() {
        return location;
    }

    /**
     * Returns the post where the opening begins, going along the run.
     *
     * @return the post where the opening begins, going along the run
     */
    public Post from() {
        return from;
    }

    /**
     * Returns the post where the opening ends.
     *
     * @return the post where the opening ends
     */
    public Post to() {
        return to;
    }

    /**
     * Returns the one of the two that carries the hinges.
     *
     * @return the one of the two that carries the hinges
     */
    public Post hingePost() {
        return hingePost;
    }

    /**
     * Returns the opening as it will be, post face to post face, in stations along the run.
     *
     * @return the opening as it will be, post face to post face, in stations along the run
     */
    public Interval opening() {
        return opening;
    }

    /**
     * Returns the gate worked out for its opening.
     *
     * @return leaf and gaps
     */
    public GateDesign design() {
        return design;
    }

    /**
     * Returns the leaf that hangs in it: frame, braces and where it is in the opening.
     *
     * @return the leaf, of two the active one
     */
    public GateLeaf leaf() {
        return design.activeLeaf();
    }

    /**
     * Returns the upright boards on the leaf, from its left edge seen from outside.
     *
     * @return the boards; empty when the leaf is too narrow for the pattern, or boards are horizontal
     */
    public Optional<BoardLayout> boards() {
        return boards;
    }

    /**
     * Returns the horizontal boards on the leaf, from its bottom up.
     *
     * @return the courses, each one board; empty when the leaf is too low for the pattern, or boards are upright
     */
    public Optional<CourseLayout> courses() {
        return courses;
    }

    /**
     * Returns the height of the board bottoms on the leaf, level, in the datum of the shots.
     *
     * @return the height of the board bottoms on the leaf, level, in the datum of the shots
     */
    public Length boardBottom() {
        return boardBottom;
    }

    /**
     * Returns how the leaf swings over the ground.
     *
     * @return the swing; empty when the ground is not given as a surface or does not reach under all of it
     */
    public Optional<GateSwing> swing() {
        return swing;
    }

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
        return boards.map(BoardLayout::count)
                .or(() -> courses.map(CourseLayout::pieceCount))
                .orElse(0);
    }

    List<Worksheet> worksheets(String side) {
        List<Worksheet> sheets = new ArrayList<>();
        sheets.add(leaf().worksheet());
        leaf().braces().forEach(brace -> sheets.add(brace.worksheet()));
        boards.ifPresent(layout -> sheets.add(layout.worksheet()));
        courses.ifPresent(layout -> sheets.add(layout.worksheet()));
        swing.ifPresent(over -> sheets.add(over.worksheet()));
        return sheets.stream().map(sheet -> sheet.within(side + ", " + name())).toList();
    }

    @Override
    public String toString() {
        return name();
    }
}
