package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.gate.hang.HingePostLoad;
import org.fencecore.gate.hang.LeafWind;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** What the weight of the leaves and the wind on them, shut and open, come to at hinges and posts of a finished gate. */
final class GateWind {

    private static final Length HIGHEST = Length.ofFeet(100);

    private final FenceStyle style;
    private final GateBay gate;
    private final Optional<Pressure> pressure;

    GateWind(FenceStyle style, GateBay gate, Optional<Pressure> pressure) {
        this.style = style;
        this.gate = gate;
        this.pressure = pressure;
    }

    /** The leaves with their loads, in the order of the gate. */
    List<HungLeaf> blow() {
        List<HungLeaf> blown = new ArrayList<>();
        for (HungLeaf leaf : gate.leaves()) {
            blown.add(leaf.loads()
                    .map(loads -> {
                        Optional<LeafWind> open = open(leaf);
                        HingePostLoad post =
                                HingePostLoad.of(loads, style.postLumber().width());
                        return leaf.withLoads(open.map(post::withWind).orElse(post), shut(leaf));
                    })
                    .orElse(leaf));
        }
        return List.copyOf(blown);
    }

    /** Standing open with nothing to hold it. */
    private Optional<LeafWind> open(HungLeaf leaf) {
        Length ground = gate.hingePost(leaf).ground();
        Length bottom = gate.bottomLine()
                .elevationAt(
                        leaf.hingesAtStart()
                                ? gate.opening().start()
                                : gate.opening().end());
        Length up = bottom.minus(ground);
        Length top = up.plus(gate.top().longest());
        Length frame = up.plus(style.rails().bottomRailAboveBottoms());
        boolean sizeable = !up.isNegative() && top.compareTo(up) > 0 && top.compareTo(HIGHEST) <= 0;
        Optional<HingeLoads> loads = leaf.loads();
        return sizeable && loads.isPresent()
                ? pressure.map(psf -> LeafWind.on(loads.get(), psf, up, top, frame))
                : Optional.empty();
    }

    /** Shut: one leaf on its latch; of two the active one on the latch, the other on its rod with that one pushing it. */
    private Optional<LeafWind> shut(HungLeaf leaf) {
        Optional<LeafWind> latched = open(leaf).map(wind -> wind.heldAt(latch(wind)));
        boolean fixed = gate.design().isPair() && !leaf.leaf().equals(gate.leaf());
        if (!fixed) {
            return latched;
        }
        Optional<LeafWind> active = gate.leaves().stream()
                .filter(each -> each.leaf().equals(gate.leaf()))
                .findFirst()
                .flatMap(this::shut);
        return active.isEmpty()
                ? Optional.empty()
                : open(leaf).map(wind -> wind.heldAt(Length.ZERO).carrying(active.get()));
    }

    /** Where the latch is said to be, or else where the wind acts. */
    private Length latch(LeafWind wind) {
        return gate.location().releaseHeight().orElse(wind.height());
    }

    /** A caution where the wind is known, and what it does to each leaf shut. */
    static List<Finding> findings(List<HungLeaf> leaves, String line, String gate) {
        List<Finding> findings = new ArrayList<>();
        caution(leaves, line + ", " + gate).ifPresent(findings::add);
        for (HungLeaf leaf : leaves) {
            leaf.windShut()
                    .ifPresent(wind -> wind.findings()
                            .forEach(finding -> findings.add(finding.within(line + ", " + leaf.name()))));
        }
        return findings;
    }

    private static Optional<Finding> caution(List<HungLeaf> leaves, String place) {
        Force most = Force.ZERO;
        Force atHinge = Force.ZERO;
        for (HungLeaf leaf : leaves) {
            Optional<LeafWind> open = leaf.windOpen();
            if (open.isPresent() && open.get().force().compareTo(most) > 0) {
                most = open.get().force();
                atHinge = open.get().mostAtHinge();
            }
        }
        return most.isZero()
                ? Optional.empty()
                : Optional.of(Finding.note(
                                "gate-open-wind",
                                place,
                                "standing open, a leaf catches up to " + Written.force(most)
                                        + " of the wind that the fence is worked out for, " + Written.force(atHinge)
                                        + " of it square to one hinge; footings count that on the hinge post")
                        .withRemedy(
                                "shut and latch it before a storm; while it is open hold its far end by a hook or a rod,"
                                        + " never by the hinges alone")
                        .withSource(Citation.COMMON_PRACTICE));
    }
}
