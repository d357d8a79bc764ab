package org.fencecore.gate;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/** Where the pieces of a frame lie, by its joints. */
final class FrameLayout {

    private final GateLeaf leaf;
    private final FrameJoint joint;
    private final Length member;
    private final Length depth;
    private final Length width;
    private final Length height;

    private FrameLayout(GateLeaf leaf) {
        this.leaf = leaf;
        this.joint = leaf.spec().joint();
        this.member = leaf.spec().memberWidth();
        this.depth = leaf.railDepth();
        this.width = leaf.width();
        this.height = leaf.frameHeight();
    }

    static List<FramePiece> pieces(GateLeaf leaf) {
        return new FrameLayout(leaf).pieces();
    }

    private List<FramePiece> pieces() {
        boolean onLeft = leaf.hingeSide() == HingeSide.LEFT;
        List<FramePiece> pieces = new ArrayList<>();
        pieces.add(stile(FrameMember.HINGE_STILE, onLeft));
        pieces.add(stile(FrameMember.LATCH_STILE, !onLeft));
        for (int i = 0; i < leaf.rails().size(); i++) {
            pieces.add(rail(leaf.rails().get(i), leaf.railBottoms().get(i)));
        }
        return List.copyOf(pieces);
    }

    private FramePiece stile(FrameMember which, boolean onLeft) {
        Length left = onLeft ? Length.ZERO : width.minus(member);
        Length right = left.plus(member);
        Length shorter = joint == FrameJoint.STILES_BETWEEN_RAILS ? depth : Length.ZERO;
        // A mitre takes the depth of a rail off the inner edge.
        Length offLeft = joint == FrameJoint.MITRE && !onLeft ? depth : shorter;
        Length offRight = joint == FrameJoint.MITRE && onLeft ? depth : shorter;
        List<ProfilePoint> outline = List.of(
                leaf.at(left, offLeft),
                leaf.at(right, offRight),
                leaf.at(right, height.minus(offRight)),
                leaf.at(left, height.minus(offLeft)));
        int laps = joint == FrameJoint.HALF_LAP ? leaf.rails().size() : 0;
        return new FramePiece(which, joint, outline, member, leaf.spec().memberThickness(), laps);
    }

    private FramePiece rail(FrameMember which, Length bottom) {
        boolean middle = which == FrameMember.MIDDLE_RAIL;
        FrameJoint ends = middle && joint != FrameJoint.HALF_LAP ? FrameJoint.RAILS_BETWEEN_STILES : joint;
        Length inset = ends == FrameJoint.RAILS_BETWEEN_STILES ? member : Length.ZERO;
        // A mitre takes the width of a stile off the inner edge.
        boolean mitred = ends == FrameJoint.MITRE;
        Length offLower = mitred && which == FrameMember.TOP_RAIL ? member : inset;
        Length offUpper = mitred && which == FrameMember.BOTTOM_RAIL ? member : inset;
        Length top = bottom.plus(depth);
        List<ProfilePoint> outline = List.of(
                leaf.at(offLower, bottom),
                leaf.at(width.minus(offLower), bottom),
                leaf.at(width.minus(offUpper), top),
                leaf.at(offUpper, top));
        int laps = ends == FrameJoint.HALF_LAP ? 2 : 0;
        return new FramePiece(which, ends, outline, member, leaf.spec().memberThickness(), laps);
    }
}
