package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.internal.Once;
import org.fencecore.site.GateLocation;
import org.fencecore.slope.BayTop;
import org.fencecore.worksheet.Worksheet;

/**
 * A gate between its two posts: one leaf or two, and the line of its board bottoms.
 */
public final class GateBay {

    private final GateLocation location;
    private final Post from;
    private final Post to;
    private final Interval opening;
    private final GateDesign design;
    private final Profile bottomLine;
    private final BayTop top;
    private final Once<List<HungLeaf>> leaves;

    GateBay(
            GateLocation location,
            Post from,
            Post to,
            Interval opening,
            GateDesign design,
            Profile bottomLine,
            BayTop top,
            Once<List<HungLeaf>> leaves) {
        this.location = location;
        this.from = from;
        this.to = to;
        this.opening = opening;
        this.design = design;
        this.bottomLine = bottomLine;
        this.top = top;
        this.leaves = leaves;
    }

    GateBay withLeaves(Once<List<HungLeaf>> blown) {
        return new GateBay(location, from, to, opening, design, bottomLine, top, blown);
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
     * Returns the post that carries the leaf people open.
     *
     * @return the hinge post of the only leaf, or of the active one of two
     */
    public Post hingePost() {
        return hingePost(leaves().get(leaves().size() > 1 && leaf().hingeSide() == HingeSide.RIGHT ? 1 : 0));
    }

    /**
     * Returns the post that carries a leaf.
     *
     * @param leaf one of {@link #leaves}
     * @return its hinge post
     * @throws IllegalArgumentException if it is the leaf of another gate
     */
    public Post hingePost(HungLeaf leaf) {
        if (!leaves().contains(leaf)) {
            throw new IllegalArgumentException("leaf was " + leaf + ", which does not hang in " + name()
                    + "; take it from the leaves of this gate");
        }
        return leaf.hingesAtStart() ? from : to;
    }

    /**
     * Returns the post that the latch is on.
     *
     * @return the post that does not carry the only leaf; empty for two leaves, which latch to each other
     */
    public Optional<Post> latchPost() {
        return design.isPair() ? Optional.empty() : Optional.of(hingePost().equals(from) ? to : from);
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
     * @return leaves and gaps
     */
    public GateDesign design() {
        return design;
    }

    /**
     * Returns the leaf that people open: frame, braces and where it is in the opening.
     *
     * @return the leaf, of two the active one
     */
    public GateLeaf leaf() {
        return design.activeLeaf();
    }

    /**
     * Returns the leaves as they hang, from left to right seen from outside.
     *
     * @return one or two leaves, unmodifiable
     */
    public List<HungLeaf> leaves() {
        return leaves.get();
    }

    /**
     * Returns the line of the board bottoms, straight across the opening.
     *
     * @return the heights at both ends of the opening, by station along the run, in the datum of the shots
     */
    public Profile bottomLine() {
        return bottomLine;
    }

    /**
     * Returns where the tops of its boards run, over both leaves where there are two.
     *
     * @return the tops over the opening, by station along the run, in the datum of the shots
     */
    public BayTop top() {
        return top;
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
     * Returns how many boards its leaves take.
     *
     * @return the number of boards on both faces
     */
    public int boardCount() {
        return leaves().stream().mapToInt(HungLeaf::boardCount).sum();
    }

    List<Worksheet> worksheets(String side) {
        List<Worksheet> sheets = new ArrayList<>();
        if (!top.shape().isStraight()) {
            sheets.add(top.worksheet(opening.middle()).within(side + ", " + name() + ", middle of the opening"));
        }
        for (HungLeaf leaf : leaves()) {
            leaf.worksheets().forEach(sheet -> sheets.add(sheet.within(side + ", " + leaf.name())));
        }
        return sheets;
    }

    @Override
    public String toString() {
        return name();
    }
}
