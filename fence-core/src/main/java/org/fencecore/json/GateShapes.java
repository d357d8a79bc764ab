package org.fencecore.json;

import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.toldListOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.GeometryForms.INTERVAL;
import static org.fencecore.json.GeometryForms.PROFILE;
import static org.fencecore.json.Quantities.ANGLE;
import static org.fencecore.json.Quantities.FORCE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.MOMENT;
import static org.fencecore.json.Quantities.SLOPE;

import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameCorner;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.FrameMember;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.Chamfer;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.gate.hang.LeafWind;
import org.fencecore.slope.BayTop;

/** How planned gates are told. */
final class GateShapes {

    private static final Shape<FramePiece> PIECE = Told.of(
            "framePiece",
            "A piece of a gate's frame.",
            required("member", Basics.oneOf(FrameMember.class), FramePiece::member, "which it is"),
            required("joint", Basics.oneOf(FrameJoint.class), FramePiece::joint, "how its ends are joined"),
            required("length", LENGTH, FramePiece::length, "the length to cut, long edge"),
            required("width", LENGTH, FramePiece::width, "how wide"),
            required("thickness", LENGTH, FramePiece::thickness, "how thick"),
            required("firstCut", ANGLE, FramePiece::firstCut, "the cut at its first end, off square"),
            required("otherCut", ANGLE, FramePiece::otherCut, "the cut at its other end, off square"));

    private static final Shape<FrameCorner> CORNER = Told.of(
            "frameCorner",
            "A corner of the frame.",
            required("rail", Basics.oneOf(FrameMember.class), FrameCorner::rail, "its rail"),
            required("stile", Basics.oneOf(FrameMember.class), FrameCorner::stile, "its stile"));

    private static final Shape<GateBrace> BRACE = Told.of(
            "brace",
            "A brace of a gate.",
            required("braceKind", Basics.oneOf(BraceKind.class), GateBrace::kind, "what it is"),
            required("foot", CORNER, GateBrace::foot, "where it begins"),
            required("head", CORNER, GateBrace::head, "where it ends"),
            required("rise", ANGLE, GateBrace::rise, "its angle over the level"),
            required("length", LENGTH, GateBrace::length, "the length to cut, point to point"),
            required("width", LENGTH, GateBrace::width, "how wide"),
            required("thickness", LENGTH, GateBrace::thickness, "how thick"),
            maybe("railCut", ANGLE, GateBrace::railCut, "the cut along the rail, off square"),
            maybe("stileCut", ANGLE, GateBrace::stileCut, "the cut along the stile, off square"),
            required("rightWay", FLAG, GateBrace::isRightWay, "whether it runs up from the hinges"));

    private static final Shape<HingeLoads> LOADS = Told.of(
            "hingeLoads",
            "What the hinges carry.",
            required("carried", FORCE, HingeLoads::carried, "the weight"),
            required("moment", MOMENT, HingeLoads::moment, "the moment about the pins"),
            required("pullAtTop", FORCE, HingeLoads::pullAtTop, "the pull at the top hinge"),
            required(
                    "heights",
                    toldListOf(LENGTH),
                    loads -> loads.hinges().heightsOn(loads.leafWeight().leaf()),
                    "where the hinges sit, from the bottom of the frame"));

    private static final Shape<LeafWind> WIND = Told.of(
            "leafWind",
            "The wind square to a leaf.",
            required("force", FORCE, LeafWind::force, "how hard it pushes the leaf"),
            required("height", LENGTH, LeafWind::height, "how high over the ground it acts"),
            required("atLatchEdge", FORCE, LeafWind::atLatchEdge, "the push on what holds the latch edge, if anything"),
            required("onHinges", FORCE, LeafWind::onHinges, "the push on all hinges together"),
            required("atHinges", toldListOf(FORCE), LeafWind::atHinges, "the push on each hinge, the lowest first"),
            required("atGround", MOMENT, LeafWind::atGround, "the moment at the foot of the hinge post"));

    private static final Shape<GateSwing> SWING = Told.of(
            "swing",
            "How the leaf swings over the ground.",
            required("clear", FLAG, GateSwing::isClear, "whether it clears the ground"),
            required("smallestClearance", LENGTH, GateSwing::smallestClearance, "the least room under it"),
            required("atAngle", ANGLE, GateSwing::atAngle, "where that is: how far it is open"),
            required("fromHinge", LENGTH, GateSwing::fromHinge, "where that is: from the hinge along the leaf"));

    private static final Shape<Chamfer> CHAMFER = Told.of(
            "chamfer",
            "What is planed off the edge of a stile so that it swings free.",
            required("alongEdge", LENGTH, Chamfer::alongEdge, "along the edge"),
            required("alongFace", LENGTH, Chamfer::alongFace, "along the face"));

    private static final Shape<HungLeaf> LEAF = Told.of(
            "leaf",
            "A leaf of a gate as it hangs.",
            required("name", TEXT, HungLeaf::name, "its name"),
            required(
                    "hingeSide",
                    Basics.oneOf(HingeSide.class),
                    leaf -> leaf.leaf().hingeSide(),
                    "where it hangs"),
            required("place", INTERVAL, leaf -> leaf.leaf().place(), "where it is in the opening"),
            required("width", LENGTH, leaf -> leaf.leaf().width(), "how wide"),
            required("frameHeight", LENGTH, leaf -> leaf.leaf().frameHeight(), "how high its frame is"),
            required("rake", SLOPE, leaf -> leaf.leaf().rake(), "how it follows the ground"),
            required("frameBottom", LENGTH, HungLeaf::frameBottom, "the height of the lower left corner of its frame"),
            required("boardBottom", LENGTH, HungLeaf::boardBottom, "the height of the bottoms of its boards"),
            required("thickness", LENGTH, HungLeaf::thickness, "how thick with its boards"),
            required("pieces", toldListOf(PIECE), leaf -> leaf.leaf().pieces(), "its frame"),
            required("braces", toldListOf(BRACE), leaf -> leaf.leaf().braces(), "its braces"),
            maybe("boards", BoardShapes.BOARDS, HungLeaf::boards, "its upright boards"),
            maybe(
                    "courses",
                    BoardShapes.COURSES,
                    HungLeaf::courses,
                    "its horizontal boards, from its left edge seen from outside"),
            maybe("loads", LOADS, HungLeaf::loads, "what its hinges carry"),
            maybe("windShut", WIND, HungLeaf::windShut, "the wind on it shut, where one is known"),
            maybe("windOpen", WIND, HungLeaf::windOpen, "the wind on it open with nothing to hold its far end"),
            maybe("swing", SWING, HungLeaf::swing, "how it swings, where the ground is a surface"),
            maybe(
                    "chamfer",
                    CHAMFER,
                    HungLeaf::chamfer,
                    "what is planed off its latch stile, where its thickness asks for it"),
            required("blocks", toldListOf(LENGTH), HungLeaf::blocks, "blocks that hinges need, by length"));

    private static final Shape<BayTop> TOP = Told.of(
            "gateTop",
            "Where the tops of a gate's boards run.",
            required("shape", StyleForms.TOP, BayTop::shape, "how they run"),
            maybe("radius", LENGTH, BayTop::radius, "the radius of an arch or a dip"),
            required("shortest", LENGTH, BayTop::shortest, "how far they are over the bottoms where that is least"),
            required("longest", LENGTH, BayTop::longest, "how far they are over the bottoms where that is most"));

    static final Shape<GateBay> GATE = Told.of(
            "plannedGate",
            "A gate as planned.",
            required("name", TEXT, GateBay::name, "its name"),
            required("from", Basics.COUNT, gate -> gate.from().number(), "the number of its first post"),
            required("to", Basics.COUNT, gate -> gate.to().number(), "the number of its last post"),
            required("opening", INTERVAL, GateBay::opening, "the stretch between its posts along the run"),
            required("bottomLine", PROFILE, GateBay::bottomLine, "the height of its boards' bottoms along the run"),
            required("top", TOP, GateBay::top, "where its tops run, over both leaves where there are two"),
            required("leaves", toldListOf(LEAF), GateBay::leaves, "its leaves"));

    private GateShapes() {}
}
