package org.fencecore.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.HingeSpec;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** How high on a leaf its hinges sit: on the rails, behind raked ones, or off the ends of those that show. */
final class HingePlaces {

    private final GateHardware hardware;
    private final GateLeaf leaf;
    private final int count;
    /** How deep a rail is, plumb. */
    private final Length rail;

    HingePlaces(GateHardware hardware, GateLeaf leaf) {
        this.hardware = hardware;
        this.leaf = leaf;
        count = hardware.hinges().orElse(leaf.usualHinges());
        rail = leaf.rake().lengthOver(leaf.spec().memberWidth());
    }

    HingeSpec spec() {
        Length wanted = hardware.hingeInset()
                .orElseGet(() -> Length.max(rail, hardware.strapWidth()).dividedBy(2));
        boolean isFree = hardware.hingeInset().isEmpty();
        if (!leaf.rake().isZero() && isFree && !isButt()) {
            Optional<HingeSpec> onRails = behindRakedRails(wanted);
            if (onRails.isPresent()) {
                return onRails.get();
            }
        }
        if (isFree && isButt() && showsRailEnds()) {
            Optional<HingeSpec> onStile = betweenRails();
            if (onStile.isPresent()) {
                return onStile.get();
            }
        }
        Length inset = Length.min(wanted, leaf.frameHeight().portion(1, 4));
        return HingeSpec.evenly(count, Length.max(inset, Length.ofNanometres(1)));
    }

    private boolean showsRailEnds() {
        FrameJoint joint = leaf.spec().joint();
        return joint == FrameJoint.STILES_BETWEEN_RAILS || joint == FrameJoint.HALF_LAP;
    }

    /** Butt hinges on the edge of a stile, off the ends of the rails that show there, which hold screws badly. */
    private Optional<HingeSpec> betweenRails() {
        Length half = hardware.strapWidth().dividedBy(2);
        Length bottom = rail.plus(half);
        Length apart = leaf.frameHeight().minus(bottom.times(2));
        boolean middleShows = leaf.spec().joint() == FrameJoint.HALF_LAP;
        Length off = rail.dividedBy(2).plus(half);
        List<Length> heights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Length up = bottom.plus(apart.portion(i, count - 1L));
            Optional<Length> middle = leaf.middleRailCentre()
                    .filter(centre -> middleShows && up.minus(centre).abs().compareTo(off) < 0);
            heights.add(middle.map(centre -> centre.plus(off)).orElse(up));
        }
        if (heights.get(count - 1).plus(bottom).compareTo(leaf.frameHeight()) > 0) {
            return Optional.empty();
        }
        for (int i = 1; i < count; i++) {
            if (heights.get(i).minus(heights.get(i - 1)).compareTo(hardware.strapWidth()) < 0) {
                return Optional.empty();
            }
        }
        return Optional.of(HingeSpec.at(heights.toArray(Length[]::new)));
    }

    /** Level straps over rails that rise: on the middle of these half way from the stile to the end of the strap. */
    private Optional<HingeSpec> behindRakedRails(Length railMiddle) {
        Slope rake =
                leaf.hingeSide() == HingeSide.LEFT ? leaf.rake() : leaf.rake().negated();
        Length reach = Length.min(hardware.strapReach(), leaf.width());
        Length half = hardware.strapWidth().dividedBy(2);
        Length atEnd = rake.riseOver(reach);
        Length lowest = half.plus(Length.max(Length.ZERO, atEnd));
        Length highest = leaf.frameHeight().minus(half).plus(Length.min(Length.ZERO, atEnd));
        Length risen = rake.riseOver(
                Length.min(leaf.spec().memberWidth(), reach).plus(reach).dividedBy(2));
        Length bottom = Length.max(lowest, railMiddle.plus(risen));
        Length top = Length.min(highest, leaf.frameHeight().minus(railMiddle).plus(risen));
        if (bottom.compareTo(highest) > 0
                || top.minus(bottom).compareTo(leaf.frameHeight().portion(1, 4)) < 0) {
            return Optional.empty();
        }
        List<Length> heights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            heights.add(bottom.plus(top.minus(bottom).portion(i, count - 1L)));
        }
        return Optional.of(HingeSpec.at(heights.toArray(Length[]::new)));
    }

    private boolean isButt() {
        return hardware.strapReach().isZero();
    }
}
