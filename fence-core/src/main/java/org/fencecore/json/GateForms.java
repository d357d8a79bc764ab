package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.Quantities.ANGLE;
import static org.fencecore.json.Quantities.FORCE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.RATIO;

import java.util.Optional;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.site.GateLocation;
import org.fencecore.style.GateHardware;
import org.fencecore.units.Length;

/** The forms of gates: where they go, how they are made and what they hang with. */
final class GateForms {

    static final Made<GateSpec, ?> SPEC = Made.<GateSpec>named("gateSpec", "How gates are made.")
            .from(GateSpec::builder)
            .with(usual("hingeGap", LENGTH, GateSpec::hingeGap, "the gap at the hinges"), GateSpec.Builder::hingeGap)
            .with(usual("latchGap", LENGTH, GateSpec::latchGap, "the gap at the latch"), GateSpec.Builder::latchGap)
            .with(
                    usual("centreGap", LENGTH, GateSpec::centreGap, "the gap between two leaves"),
                    GateSpec.Builder::centreGap)
            .with(
                    usual("hingeBuildOut", LENGTH, GateSpec::hingeBuildOut, "what is put on the post under the hinges"),
                    GateSpec.Builder::hingeBuildOut)
            .with(
                    usual("latchBuildOut", LENGTH, GateSpec::latchBuildOut, "what is put on the post at the latch"),
                    GateSpec.Builder::latchBuildOut)
            .with(
                    usual("joint", Basics.oneOf(FrameJoint.class), GateSpec::joint, "how the frame's corners are made"),
                    GateSpec.Builder::joint)
            .with(
                    usual("memberWidth", LENGTH, GateSpec::memberWidth, "how wide the members of the frame are"),
                    GateSpec.Builder::memberWidth)
            .with(
                    usual("memberThickness", LENGTH, GateSpec::memberThickness, "how thick they are"),
                    GateSpec.Builder::memberThickness)
            .with(
                    usual("middleRail", FLAG, GateSpec::hasMiddleRail, "whether there is a rail in the middle"),
                    GateSpec.Builder::middleRail)
            .with(
                    usual("braceKind", Basics.oneOf(BraceKind.class), GateSpec::braceKind, "what the brace is"),
                    GateSpec.Builder::braceKind)
            .with(
                    usual("braceEnds", Basics.oneOf(BraceEnds.class), GateSpec::braceEnds, "how its ends are cut"),
                    GateSpec.Builder::braceEnds)
            .with(
                    usual("braceReversed", FLAG, GateSpec::isBraceReversed, "whether it runs the other way"),
                    GateSpec.Builder::braceReversed)
            .with(
                    usual("braceWidth", LENGTH, GateSpec::braceWidth, "how wide the brace is"),
                    GateSpec.Builder::braceWidth)
            .with(
                    usual(
                            "reasonableLeafWidth",
                            LENGTH,
                            GateSpec::reasonableLeafWidth,
                            "how wide a leaf may be before a note is made of it"),
                    GateSpec.Builder::reasonableLeafWidth)
            .with(
                    usual(
                            "reasonableOverhang",
                            LENGTH,
                            GateSpec::reasonableOverhang,
                            "how far boards may stand over the frame before a note is made of it"),
                    GateSpec.Builder::reasonableOverhang)
            .end(GateSpec.Builder::build);

    /** A strap hinge. */
    private record Strap(Length width, Length reach) {}

    private static final Form<Strap> STRAPS = Made.<Strap>named("straps", "Strap hinges.")
            .from(
                    required("width", LENGTH, Strap::width, "how wide the strap is"),
                    required("reach", LENGTH, Strap::reach, "how far it reaches over the leaf"),
                    Strap::new)
            .end(strap -> strap);

    /** The screws of a hinge. */
    private record Screws(int count, Length diameter, Length thread) {}

    private static final Form<Screws> SCREWS = Made.<Screws>named("screws", "The screws of each hinge.")
            .from(
                    required("count", COUNT, Screws::count, "how many"),
                    required("diameter", LENGTH, Screws::diameter, "how thick"),
                    required("thread", LENGTH, Screws::thread, "how much thread is in the wood"),
                    Screws::new)
            .end(screws -> screws);

    static final Made<GateHardware, ?> HARDWARE = Made.<GateHardware>named(
                    "gateHardware", "What gates hang with, and how they swing.")
            .from(GateHardware::builder)
            .with(
                    usual("moisture", RATIO, GateHardware::moisture, "the water in the wood, by dry weight"),
                    GateHardware.Builder::moisture)
            .with(
                    maybe("hinges", COUNT, GateForms::hinges, "how many hinges; by the leaf when not said"),
                    GateHardware.Builder::hinges)
            .with(
                    maybe("hingeInset", LENGTH, GateHardware::hingeInset, "how far the outer ones sit from the ends"),
                    GateHardware.Builder::hingeInset)
            .with(
                    maybe("straps", STRAPS, GateForms::straps, "strap hinges"),
                    (hardware, strap) -> hardware.straps(strap.width(), strap.reach()))
            .with(maybe("butts", LENGTH, GateForms::butts, "butt hinges so high"), GateHardware.Builder::butts)
            .with(
                    maybe("pinFromLeaf", LENGTH, GateHardware::pinFromLeaf, "how far the pins stand off the leaf"),
                    GateHardware.Builder::pinFromLeaf)
            .with(
                    maybe("woodScrews", SCREWS, hardware -> screws(hardware, false), "wood screws"),
                    (hardware, screws) -> hardware.woodScrews(screws.count(), screws.diameter(), screws.thread()))
            .with(
                    maybe("lagScrews", SCREWS, hardware -> screws(hardware, true), "lag screws"),
                    (hardware, screws) -> hardware.lagScrews(screws.count(), screws.diameter(), screws.thread()))
            .with(
                    usual("loadAtLatch", FORCE, GateHardware::loadAtLatch, "what hangs on the latch side"),
                    GateHardware.Builder::loadAtLatch)
            .with(usual("openTo", ANGLE, GateHardware::openTo, "how far gates open"), GateHardware.Builder::openTo)
            .with(
                    usual(
                            "swingClearance",
                            LENGTH,
                            GateHardware::swingClearance,
                            "the least room under a swinging leaf"),
                    GateHardware.Builder::swingClearance)
            .end(GateHardware.Builder::build);

    /** Where the release of a latch is. */
    private record Release(Length height, boolean inside) {}

    private static final Form<Release> RELEASE = Made.<Release>named("latchRelease", "Where a latch is released.")
            .from(
                    required("height", LENGTH, Release::height, "how high over the ground"),
                    required("inside", FLAG, Release::inside, "whether it is worked from inside the lot"),
                    Release::new)
            .end(release -> release);

    static final Made<GateLocation, ?> LOCATION = Made.<GateLocation>named("gate", "A gate and where it goes.")
            .from(required("name", TEXT, GateLocation::name, "what the crew calls it"), GateLocation::named)
            .with(required("onSide", COUNT, GateLocation::side, "the side, from 1"), GateLocation.Builder::onSide)
            .with(
                    required("centredAt", LENGTH, GateLocation::centre, "its middle, from where the side begins"),
                    GateLocation.Builder::centredAt)
            .with(
                    required("clearOpening", LENGTH, GateLocation::clearOpening, "from post to post"),
                    GateLocation.Builder::clearOpening)
            .with(
                    usual(
                            "hinges",
                            Basics.oneOf(HingeSide.class),
                            GateLocation::hinges,
                            "on which hand they are, seen from outside"),
                    GateLocation.Builder::hinges)
            .with(
                    usual("opensOutward", FLAG, GateLocation::opensOutward, "whether it opens out of the lot"),
                    GateLocation.Builder::opensOutward)
            .with(
                    usual("twoLeaves", FLAG, GateLocation::hasTwoLeaves, "whether it has two leaves"),
                    GateLocation.Builder::twoLeaves)
            .with(
                    usual("raked", FLAG, GateLocation::isRaked, "whether it follows the ground"),
                    GateLocation.Builder::raked)
            .with(
                    usual("selfClosing", FLAG, GateLocation::isSelfClosing, "whether it closes by itself"),
                    GateLocation.Builder::selfClosing)
            .with(
                    usual("selfLatching", FLAG, GateLocation::isSelfLatching, "whether it latches by itself"),
                    GateLocation.Builder::selfLatching)
            .with(
                    usual("lockable", FLAG, GateLocation::isLockable, "whether its latch takes a lock"),
                    GateLocation.Builder::lockable)
            .with(
                    maybe("latchRelease", RELEASE, GateForms::release, "where its latch is released"),
                    (gate, release) -> gate.latchRelease(release.height(), release.inside()))
            .end(GateLocation.Builder::build);

    private GateForms() {}

    private static Optional<Integer> hinges(GateHardware hardware) {
        return hardware.hinges().stream().boxed().findFirst();
    }

    private static Optional<Strap> straps(GateHardware hardware) {
        return hardware.strapReach().isZero()
                ? Optional.empty()
                : Optional.of(new Strap(hardware.strapWidth(), hardware.strapReach()));
    }

    private static Optional<Length> butts(GateHardware hardware) {
        return hardware.strapReach().isZero() ? Optional.of(hardware.strapWidth()) : Optional.empty();
    }

    private static Optional<Screws> screws(GateHardware hardware, boolean lag) {
        return hardware.hasLagScrews() == lag
                ? Optional.of(new Screws(hardware.screwCount(), hardware.screwDiameter(), hardware.screwThread()))
                : Optional.empty();
    }

    private static Optional<Release> release(GateLocation gate) {
        return gate.releaseHeight().map(height -> new Release(height, gate.isReleaseInside()));
    }
}
