package org.fencecore;

import java.util.Optional;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.site.GateLocation;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * The swing of a planned leaf over the ground: hung flush with the faces of its posts on the side it opens to, with the
 * pins of its hinges in that face.
 */
final class LeafSwing {

    private LeafSwing() {}

    /** The swing, if the surface reaches under all of it. */
    static Optional<GateSwing> of(
            GateLeaf leaf,
            boolean hingesAtStart,
            GateLocation location,
            Interval opening,
            Profile bottomLine,
            FenceLine line,
            FenceStyle style,
            Length thickness,
            Surface ground) {
        Side opensTo = location.opensOutward() ? line.outside : line.outside.opposite();
        Length half = style.postLumber().width().dividedBy(2);
        Segment face = line.postLine.offset(opensTo == Side.RIGHT ? half : half.negated());
        Length beside = leaf.spec().besideHinges();
        Length pin =
                hingesAtStart ? opening.start().plus(beside) : opening.end().minus(beside);
        Length latch = hingesAtStart ? pin.plus(leaf.width()) : pin.minus(leaf.width());
        Slope rising = bottomLine.slopeBetween(opening.start(), opening.end());
        return GateSwing.over(ground)
                .closed(Segment.of(face.pointAt(pin), face.pointAt(latch)))
                .opens(hingesAtStart ? opensTo : opensTo.opposite())
                .openTo(style.gateHardware().openTo())
                .bottom(bottomLine.elevationAt(pin))
                .rake(hingesAtStart ? rising : rising.negated())
                .thickness(thickness)
                .clearance(style.gateHardware().swingClearance())
                .buildWhereKnown();
    }
}
