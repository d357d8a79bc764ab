package org.fencecore;

import java.util.Optional;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Surface;
import org.fencecore.site.GateLocation;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;

/**
 * The swing of a planned gate over the ground: hung flush with the faces of its posts on the side it opens to, with the
 * pins of its hinges in that face.
 */
final class LeafSwing {

    /** What a leaf should clear the ground by while it swings: common practice, no source. */
    private static final Length CLEARANCE = Length.ofInches(1);

    private LeafSwing() {}

    /** The swing, if the surface reaches under all of it. */
    static Optional<GateSwing> of(
            GateLeaf leaf,
            GateLocation location,
            Interval opening,
            FenceLine line,
            FenceStyle style,
            Length bottom,
            Surface ground) {
        boolean beginsLeft = line.outside == Side.RIGHT;
        boolean hingesAtStart = beginsLeft == (leaf.hingeSide() == HingeSide.LEFT);
        Side opensTo = location.opensOutward() ? line.outside : line.outside.opposite();
        Length half = style.postLumber().width().dividedBy(2);
        Segment face = line.postLine.offset(opensTo == Side.RIGHT ? half : half.negated());
        Length beside = leaf.spec().besideHinges();
        Length pin =
                hingesAtStart ? opening.start().plus(beside) : opening.end().minus(beside);
        Length latch = hingesAtStart ? pin.plus(leaf.width()) : pin.minus(leaf.width());
        return GateSwing.over(ground)
                .closed(Segment.of(face.pointAt(pin), face.pointAt(latch)))
                .opens(hingesAtStart ? opensTo : opensTo.opposite())
                .bottom(bottom)
                .thickness(style.gateLumber()
                        .thickness()
                        .plus(style.boardLumber().thickness().times(2)))
                .clearance(CLEARANCE)
                .buildWhereKnown();
    }
}
