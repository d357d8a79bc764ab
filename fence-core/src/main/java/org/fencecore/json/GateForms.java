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
import org.fencecore.gate.hang.PoolGate;
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
                    usual("middleRail", FLAG, GateSpec::middleRail, "whether there is a rail in the middle"),
                    GateSpec.Builder::middleRail)
            .with(
                    usual("braceKind", Basics.oneOf(BraceKind.class), GateSpec::braceKind, "what the brace is"),
                    GateSpec.Builder::braceKind)
            .with(
                    usual("braceEnds", Basics.oneOf(BraceEnds.class), GateSpec::braceEnds, "how its ends are cut"),
                    GateSpec.Builder::braceEnds)
            .with(
                    usual("braceReversed", FLAG, GateSpec::braceReversed, "whether it runs the other way"),
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

    /** The rule for a pool gate's release. */
    private record ReleaseRule(Length high, Length underTop, Length opening, Length radius) {}

    private static final Form<ReleaseRule> RELEASE_RULE = Made.<ReleaseRule>named(
                    "releaseRule", "Where the release of a pool gate's latch may sit.")
            .from(
                    required("high", LENGTH, ReleaseRule::high, "the height from which it may sit anywhere"),
                    required("underTop", LENGTH, ReleaseRule::underTop, "how far under the top it must be when lower"),
                    required("opening", LENGTH, ReleaseRule::opening, "the largest opening near it when lower"),
                    required("radius", LENGTH, ReleaseRule::radius, "how far from it openings count"),
                    ReleaseRule::new)
            .end(rule -> rule);

    static final Made<PoolGate, ?> POOL_GATE = Made.<PoolGate>named("poolGate", "What makes a gate one of a pool.")
            .from(PoolGate::builder)
            .with(usual("gateTop", LENGTH, PoolGate::gateTop, "how high the gate is"), PoolGate.Builder::gateTop)
            .with(usual("release", LENGTH, PoolGate::release, "how high its release is"), PoolGate.Builder::release)
            .with(
                    usual("opensAway", FLAG, PoolGate::opensAway, "whether it opens away from the water"),
                    PoolGate.Builder::opensAway)
            .with(
                    usual("selfClosing", FLAG, PoolGate::isSelfClosing, "whether it closes by itself"),
                    PoolGate.Builder::selfClosing)
            .with(
                    usual("selfLatching", FLAG, PoolGate::isSelfLatching, "whether it latches by itself"),
                    PoolGate.Builder::selfLatching)
            .with(usual("lockable", FLAG, PoolGate::isLockable, "whether it takes a lock"), PoolGate.Builder::lockable)
            .with(
                    usual("releaseOnPoolSide", FLAG, PoolGate::isReleaseOnPoolSide, "on which side the release is"),
                    PoolGate.Builder::releaseOnPoolSide)
            .with(
                    usual(
                            "widestOpeningNearRelease",
                            LENGTH,
                            PoolGate::widestOpeningNearRelease,
                            "the widest opening near it"),
                    PoolGate.Builder::widestOpeningNearRelease)
            .with(
                    usual(
                            "rule",
                            RELEASE_RULE,
                            gate -> new ReleaseRule(
                                    gate.highRelease(),
                                    gate.leastUnderTop(),
                                    gate.largestOpening(),
                                    gate.shieldRadius()),
                            "the rule it is held against"),
                    (gate, rule) -> gate.rule(rule.high(), rule.underTop(), rule.opening(), rule.radius()))
            .end(PoolGate.Builder::build);

    /** A gate of a pool, and where the water is. */
    private record AtPool(PoolGate gate, boolean waterInside) {}

    private static final Form<AtPool> AT_POOL = Made.<AtPool>named("atPool", "A gate of a pool.")
            .from(
                    required("gate", POOL_GATE, AtPool::gate, "what makes it one"),
                    required("waterInside", FLAG, AtPool::waterInside, "whether the water is inside the fence"),
                    AtPool::new)
            .end(pool -> pool);

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
                    usual("twoLeaves", FLAG, GateLocation::twoLeaves, "whether it has two leaves"),
                    GateLocation.Builder::twoLeaves)
            .with(
                    usual("raked", FLAG, GateLocation::isRaked, "whether it follows the ground"),
                    GateLocation.Builder::raked)
            .with(
                    maybe("pool", AT_POOL, GateForms::atPool, "for a gate of a pool"),
                    (gate, pool) -> gate.pool(pool.gate(), pool.waterInside()))
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

    private static Optional<AtPool> atPool(GateLocation gate) {
        return gate.pool().map(pool -> new AtPool(pool, gate.waterInside()));
    }
}
