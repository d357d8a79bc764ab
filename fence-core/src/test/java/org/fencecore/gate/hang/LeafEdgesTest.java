package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.EqualValues;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** Chamfers and hinge seats by hand. */
class LeafEdgesTest {

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static GateLeaf leaf(FrameJoint joint) {
        return GateDesign.forOpening(
                        inches(47.5),
                        inches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().joint(joint).build())
                .activeLeaf();
    }

    /** A leaf of the usual size and thickness needs none: sqrt(47^2 + 1.5^2) - 47 = 0.024, under the gap of 1/4. */
    @Test
    void aThinWideLeafNeedsNoChamferAtTheLatch() {
        assertThat(Chamfer.ofLatchStile(inches(47), inches(1.5), inches(0.25)).isNeeded())
                .isFalse();
        Chamfer thick = Chamfer.ofLatchStile(inches(18), inches(3.5), inches(0.25));
        assertThat(thick.alongEdge().inches()).isCloseTo(0.489, within(0.001));
        assertThat(thick.alongFace().inches()).isCloseTo(0.089, within(0.001));
        assertThat(thick.worksheet().result()).isEqualTo(thick.alongEdge());
        assertThat(thick.worksheet().toText()).contains("3.5 in - sqrt((18.25 in)^2 - (18 in)^2)");
        assertThat(thick.isNeeded()).isTrue();
        assertThat(thick).hasToString("chamfer 1/2\" by 1/16\"");
        EqualValues.assertDistinct(
                () -> Chamfer.ofLatchStile(inches(18), inches(3.5), inches(0.25)),
                () -> Chamfer.ofLatchStile(inches(18), inches(3.5), inches(0.2)),
                () -> Chamfer.ofLatchStile(inches(18), inches(3.25), inches(0.25)),
                () -> Chamfer.ofLatchStile(inches(47), inches(1.5), inches(0.25)));
        // Both ends of the cut go round on the reach of 18.25 in.
        double edgeEnd = 3.5 - thick.alongEdge().inches();
        double faceEnd = 18 - thick.alongFace().inches();
        assertThat(Math.hypot(18, edgeEnd)).isCloseTo(18.25, within(1e-6));
        assertThat(Math.hypot(faceEnd, 3.5)).isCloseTo(18.25, within(1e-6));
    }

    @Test
    void woodBeyondThePinNeedsAChamferAtTheHinges() {
        Chamfer cut = Chamfer.ofHingeStile(inches(0.25), inches(0.25), inches(0.75), Angle.ofDegrees(60));

        assertThat(cut.alongEdge().inches()).isCloseTo(0.317, within(0.001));
        assertThat(cut.alongFace().inches()).isCloseTo(0.549, within(0.001));
        assertThat(cut.worksheet().result()).isEqualTo(cut.alongEdge());
        assertThat(cut.worksheet().toText()).contains("(0.25 in + 0.25 in x cos 60 deg) / sin 60 deg = 0.433 in");
        // Turned by 60 degrees, both ends of the cut lie in the face of the post, 1/4 in beyond the pin.
        double edgeEnd = 0.75 - cut.alongEdge().inches();
        double faceEnd = 0.25 + cut.alongFace().inches();
        assertThat(0.25 * Math.cos(Math.PI / 3) - edgeEnd * Math.sin(Math.PI / 3))
                .isCloseTo(-0.25, within(1e-6));
        assertThat(faceEnd * Math.cos(Math.PI / 3) - 0.75 * Math.sin(Math.PI / 3))
                .isCloseTo(-0.25, within(1e-6));
        assertThat(Chamfer.ofHingeStile(inches(0.5), inches(0.5), inches(0.5), Angle.ofDegrees(60)))
                .hasToString("no chamfer");
        assertThatThrownBy(() -> Chamfer.ofHingeStile(inches(0.5), inches(0.5), inches(0.5), Angle.RIGHT))
                .hasMessageContaining("open was 90 deg");
        assertThatThrownBy(() -> Chamfer.ofLatchStile(inches(3), inches(3.5), inches(0.25)))
                .hasMessageContaining("depth was 3 1/2 in; it must be under the reach of 3 1/4 in");
        assertThatThrownBy(() -> Chamfer.ofLatchStile(inches(3.25), inches(3.5), inches(0.25)))
                .hasMessageContaining("depth was 3 1/2 in; it must be under the reach of 3 1/2 in");
    }

    @Test
    void aStrapOffTheRailNeedsABlock() {
        GateLeaf leaf = leaf(FrameJoint.RAILS_BETWEEN_STILES);
        HingeSeat onRail = HingeSeat.ofStrap(leaf, inches(1.75), inches(2), inches(12));
        HingeSeat offRail = HingeSeat.ofStrap(leaf, inches(10), inches(2), inches(12));

        assertThat(onRail.blockLength()).isEmpty();
        assertThat(onRail.findings()).isEmpty();
        assertThat(offRail.blockLength()).contains(inches(8.5));
        assertThat(offRail.findings()).extracting(Finding::code).containsExactly("hinge-block");
        assertThat(offRail.findings().get(0).remedy())
                .isEqualTo(
                        "set a block of frame lumber 8 1/2\" long behind it, its grain level, or move the strap onto a rail");
        assertThat(offRail).hasToString("strap from 9\" to 11\" up");
        // A strap over the whole leaf needs a block from stile to stile: 46 3/4 - 7 = 39 3/4.
        assertThat(HingeSeat.ofStrap(leaf, inches(10), inches(2), leaf.width()).blockLength())
                .contains(inches(39.75));
        assertThat(HingeSeat.ofStrap(leaf, inches(10), inches(2), inches(3.5)).blockLength())
                .isEmpty();
    }

    /**
     * By hand, 10 % up from the hinges: the bottom rail is 3.5 x sqrt(1.01) = 3.517 in deep, from 0.35 to 3.867 at the
     * stile's inner edge and from 1.2 to 4.717 at 12 in. A level strap of 2 in is on it with its middle from 2.2 to 2.867.
     */
    @Test
    void aLevelStrapLeavesARakedRail() {
        for (HingeSide side : HingeSide.values()) {
            GateLeaf leaf = raked(side, side == HingeSide.LEFT ? 10 : -10);
            assertThat(strap(leaf, 2.21).findings()).isEmpty();
            assertThat(strap(leaf, 2.86).findings()).isEmpty();
            assertThat(strap(leaf, 2.87).blockLength()).contains(inches(8.5));
            assertThat(strap(leaf, 2.87).findings().get(0).remedy()).endsWith("or take a shorter strap");
            HingeSeat out = strap(leaf, 2.19);
            assertThat(out.isOnFrame()).isFalse();
            assertThat(out.findings()).extracting(Finding::code).containsExactly("hinge-off-frame", "hinge-block");
            // The top rail comes down to the strap from above: 52.833 to 56.35 at the stile, 53.683 to 57.2 at its end.
            assertThat(strap(leaf, 55).findings()).isEmpty();
            assertThat(strap(leaf, 54.6).blockLength()).isPresent();
            // Falling from the hinges it is the other way round: the top rail ends at 56 - 1.2 = 54.8 in.
            GateLeaf falling = raked(side, side == HingeSide.LEFT ? -10 : 10);
            assertThat(strap(falling, 53.81).isOnFrame()).isFalse();
            assertThat(strap(falling, 53.79).findings()).isEmpty();
        }
        // A butt hinge on the edge does not reach where the rail has risen.
        assertThat(HingeSeat.ofButt(raked(HingeSide.LEFT, 30), inches(6), inches(3.5))
                        .findings())
                .isEmpty();
    }

    private static HingeSeat strap(GateLeaf leaf, double up) {
        return HingeSeat.ofStrap(leaf, inches(up), inches(2), inches(12));
    }

    private static GateLeaf raked(HingeSide hinges, double percent) {
        return GateDesign.forOpening(
                        inches(47.5), inches(56), hinges, GateSpec.builder().build())
                .withRake(Slope.ofPercent(percent))
                .activeLeaf();
    }

    private static GateLeaf withMiddleRail(FrameJoint joint) {
        return GateDesign.forOpening(
                        inches(47.5),
                        inches(56),
                        HingeSide.LEFT,
                        GateSpec.builder().joint(joint).middleRail(true).build())
                .activeLeaf();
    }

    @Test
    void aButtHingeAtTheEndOfARailIsInEndGrain() {
        Length low = inches(3);
        Length size = inches(3.5);

        assertThat(HingeSeat.ofButt(leaf(FrameJoint.RAILS_BETWEEN_STILES), low, size)
                        .isOnEndGrain())
                .isFalse();
        assertThat(HingeSeat.ofButt(leaf(FrameJoint.MITRE), low, size).isOnEndGrain())
                .isFalse();
        HingeSeat end = HingeSeat.ofButt(leaf(FrameJoint.STILES_BETWEEN_RAILS), low, size);
        assertThat(end.isOnEndGrain()).isTrue();
        assertThat(end.findings()).extracting(Finding::code).containsExactly("hinge-end-grain");
        assertThat(HingeSeat.ofButt(leaf(FrameJoint.HALF_LAP), low, size).isOnEndGrain())
                .isTrue();
        assertThat(HingeSeat.ofButt(leaf(FrameJoint.HALF_LAP), inches(12), size).isOnEndGrain())
                .isFalse();
        // The top rail begins at 52 1/2; a middle rail, from 26 1/4 to 29 3/4, shows its end only half-lapped.
        assertThat(HingeSeat.ofButt(leaf(FrameJoint.HALF_LAP), inches(51), size).isOnEndGrain())
                .isTrue();
        assertThat(HingeSeat.ofButt(withMiddleRail(FrameJoint.HALF_LAP), inches(28), size)
                        .isOnEndGrain())
                .isTrue();
        assertThat(HingeSeat.ofButt(withMiddleRail(FrameJoint.HALF_LAP), inches(12), size)
                        .isOnEndGrain())
                .isFalse();
        assertThat(HingeSeat.ofButt(withMiddleRail(FrameJoint.STILES_BETWEEN_RAILS), inches(28), size)
                        .isOnEndGrain())
                .isFalse();
        assertThat(HingeSeat.ofButt(withMiddleRail(FrameJoint.STILES_BETWEEN_RAILS), inches(51), size)
                        .isOnEndGrain())
                .isTrue();
        assertThat(end).hasToString("butt hinge from 1 1/4\" to 4 3/4\" up");
        assertThatThrownBy(() -> HingeSeat.ofButt(leaf(FrameJoint.MITRE), inches(1), size))
                .hasMessageContaining("height was 1 in; a hinge 3 1/2 in high must lie on the frame");
        assertThatThrownBy(() -> HingeSeat.ofStrap(leaf(FrameJoint.MITRE), inches(5), inches(2), inches(60)))
                .hasMessageContaining("reach was 5 ft");
    }
}
