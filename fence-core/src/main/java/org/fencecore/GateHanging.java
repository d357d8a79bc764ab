package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.Chamfer;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.gate.hang.HingeSeat;
import org.fencecore.gate.hang.HingeSpec;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.internal.Once;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.site.GateLocation;
import org.fencecore.slope.BayTop;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Hangs the gates of one run: how high and at what rake, which boards and hinges each leaf gets, how it swings, and what
 * is wrong with all that.
 */
final class GateHanging {

    private static final Length HIGHEST = Length.ofFeet(100);

    private final FenceStyle style;
    private final FenceLine line;
    private final Profile ground;
    private final Optional<Surface> surface;
    private final BiFunction<Length, String, Optional<BoardLayout>> boards;
    private final Findings findings;

    /** A gate that hangs, before its posts are finished. */
    record HungGate(
            GatePlacing.Placed placed, GateDesign design, Profile bottomLine, BayTop top, List<HungLeaf> leaves) {

        GateBay between(Post from, Post to) {
            return new GateBay(
                    placed.location(), from, to, placed.opening(), design, bottomLine, top, Once.known(leaves));
        }
    }

    /**
     * Takes what all gates of a run have in common.
     *
     * @param boards fits boards into a width, and tells at a place where it cannot
     */
    GateHanging(
            FenceStyle style,
            FenceLine line,
            Profile ground,
            Optional<Surface> surface,
            BiFunction<Length, String, Optional<BoardLayout>> boards,
            Findings findings) {
        this.style = style;
        this.line = line;
        this.ground = ground;
        this.surface = surface;
        this.boards = boards;
        this.findings = findings;
    }

    /** Someone outside, facing the fence, has the run's beginning on the left when the outside is on its right. */
    private boolean beginsLeft() {
        return line.outside == Side.RIGHT;
    }

    /** Hangs a gate between the middles of two posts. */
    HungGate hang(GatePlacing.Placed gate, Interval posts) {
        GateLocation location = gate.location();
        String place = line.name + ", " + location.name();
        Slope rising = location.isRaked() ? rake(posts, place) : Slope.LEVEL;
        GateDesign design =
                design(location, gate.opening().length()).withRake(beginsLeft() ? rising : rising.negated());
        findings.later(
                () -> design.findings().stream()
                        .map(finding -> offerTwo(design, finding))
                        .toList(),
                place);
        Profile bottoms = location.isRaked() ? raked(gate.opening(), posts, rising) : level(gate.opening());
        findings.later(() -> gap(bottoms, !rising.isZero(), place));
        BayTop top = BayTop.over(
                bottoms,
                ground,
                style.gateTop(),
                style.slope().clearance(),
                style.rails().boardLength());
        findings.later(() -> top.findings(location.name(), style.rails().topRailBelowTops()), line.name);
        findings.later(() -> overhang(top, place));
        List<HungLeaf> leaves = new ArrayList<>();
        for (GateLeaf leaf : design.leaves()) {
            leaves.add(hang(leaf, design, gate, bottoms, top));
        }
        return new HungGate(gate, design, bottoms, top, leaves);
    }

    private GateDesign design(GateLocation location, Length opening) {
        Length height = style.gateFrameHeight();
        return location.hasTwoLeaves()
                ? GateDesign.pairForOpening(opening, height, location.hinges(), style.gate())
                : GateDesign.forOpening(opening, height, location.hinges(), style.gate());
    }

    /** The gate knows the way out of a leaf that is too wide; here it has a call. */
    private Finding offerTwo(GateDesign design, Finding finding) {
        boolean twoWouldDo = finding.code().equals("gate-leaf-wide")
                && !design.isPair()
                && design.clearOpening().compareTo(style.gate().minimumPairOpening()) >= 0;
        return twoWouldDo
                ? finding.withRemedy(finding.remedy() + "; for two leaves set twoLeaves(true) on its GateLocation")
                : finding;
    }

    private Slope rake(Interval posts, String place) {
        Slope grade = ground.slopeBetween(posts.start(), posts.end());
        if (grade.abs().compareTo(GateDesign.STEEPEST_RAKE) <= 0) {
            return grade;
        }
        findings.add(Finding.warning(
                        "gate-rake-steep",
                        place,
                        "the ground rises or falls " + Written.percent(grade.abs())
                                + " from post to post, and no gate is raked over "
                                + Written.percent(GateDesign.STEEPEST_RAKE) + ", so that it hangs level")
                .withRemedy("check the shots; if they are right, move the gate to flatter ground"));
        return Slope.LEVEL;
    }

    private Profile level(Interval opening) {
        Length bottom = ground.between(opening.start(), opening.end())
                .highest()
                .elevation()
                .plus(style.slope().clearance());
        return straight(opening, bottom, bottom);
    }

    /** From post to post like a bay of the fence beside it, and higher where the ground between would be too near. */
    private Profile raked(Interval opening, Interval posts, Slope rising) {
        Length clearance = style.slope().clearance();
        Length first = ground.elevationAt(posts.start())
                .plus(clearance)
                .plus(rising.riseOver(opening.start().minus(posts.start())));
        Length last = first.plus(rising.riseOver(opening.length()));
        Clearance gap = ground.clearanceUnder(straight(opening, first, last));
        Length raise = Length.max(Length.ZERO, style.slope().minimumClearance().minus(gap.min()));
        return straight(opening, first.plus(raise), last.plus(raise));
    }

    private static Profile straight(Interval opening, Length first, Length last) {
        return Profile.straight(opening.start(), first, opening.end(), last);
    }

    private List<Finding> gap(Profile bottoms, boolean raked, String place) {
        Length gap = ground.clearanceUnder(bottoms).max();
        if (gap.compareTo(style.slope().maximumClearance()) <= 0) {
            return List.of();
        }
        return List.of(Finding.warning(
                        "gate-gap",
                        place,
                        (raked
                                        ? "the leaf follows the posts over ground that dips"
                                        : "the leaf hangs level over ground that falls")
                                + ", so the gap under it grows to " + Written.tape(gap) + ", over the maximum of "
                                + Written.tape(style.slope().maximumClearance()))
                .withRemedy((raked ? "" : "rake the gate, ")
                        + "level the ground under it, close the gap, or move it to flatter ground")
                .withSource(Citation.COMMON_PRACTICE));
    }

    /** Thin boards far above the last rail bend and cup. */
    private List<Finding> overhang(BayTop top, String place) {
        Length over = top.longest()
                .minus(style.rails().boardLength())
                .plus(style.rails().topRailBelowTops());
        if (over.compareTo(style.gate().reasonableOverhang()) <= 0) {
            return List.of();
        }
        return List.of(Finding.warning(
                        "gate-boards-tall",
                        place,
                        "boards stand up to " + Written.tape(over, Rounding.UP)
                                + " above the top rail of the frame, over the "
                                + Written.tape(style.gate().reasonableOverhang()) + " held reasonable")
                .withRemedy("let the top rise less, set the top rail nearer to the tops, or tie the boards with a"
                        + " batten along their tops")
                .withSource(Citation.COMMON_PRACTICE));
    }

    private HungLeaf hang(GateLeaf leaf, GateDesign design, GatePlacing.Placed gate, Profile bottoms, BayTop top) {
        boolean left = leaf.hingeSide() == HingeSide.LEFT;
        String name = gate.location().name() + (design.isPair() ? (left ? " left leaf" : " right leaf") : "");
        String place = line.name + ", " + name;
        boolean hingesAtStart = beginsLeft() == left;
        Length leftEdge = beginsLeft()
                ? gate.opening().start().plus(leaf.place().start())
                : gate.opening().end().minus(leaf.place().start());
        Length bottom = bottoms.elevationAt(leftEdge);
        Optional<BoardCuts> boarding = style.boards().isHorizontal()
                ? Optional.empty()
                : boards.apply(leaf.width(), place).map(layout -> cuts(layout, top, leftEdge));
        Optional<CourseRun> courses = style.boards().isHorizontal()
                ? CourseFitting.onLeaf(style, leaf.width(), bottom, leaf.rake(), place, findings)
                : Optional.empty();
        Length thickness = thickness(boarding.map(BoardCuts::layout), courses);
        Optional<HingeLoads> loads = loads(leaf, boarding, courses, place);
        loads.ifPresent(its -> findings.later(its::findings, place));
        Once<List<HingeSeat>> seats =
                Once.of(() -> loads.map(its -> seats(leaf, its.hinges())).orElse(List.of()));
        findings.later(
                () -> seats.get().stream()
                        .flatMap(seat -> seat.findings().stream())
                        .toList(),
                place);
        return new HungLeaf(
                name,
                leaf,
                hingesAtStart,
                bottom,
                bottom.plus(style.rails().bottomRailAboveBottoms()),
                beginsLeft()
                        ? Interval.of(leftEdge, leftEdge.plus(leaf.width()))
                        : Interval.of(leftEdge.minus(leaf.width()), leftEdge),
                boarding,
                courses,
                thickness,
                swing(leaf, hingesAtStart, gate, bottoms, thickness, place),
                loads,
                seats,
                chamfer(leaf, design, thickness, place),
                Optional.empty(),
                Optional.empty());
    }

    /** Under the tops of the whole opening, seen from outside: there, a run that goes to the left counts backwards. */
    private BoardCuts cuts(BoardLayout layout, BayTop top, Length leftEdge) {
        return beginsLeft()
                ? BoardCuts.under(layout, top, leftEdge, style.boards().ends())
                : BoardCuts.under(
                        layout,
                        top.reversed(),
                        leftEdge.negated(),
                        style.boards().ends());
    }

    /** Of the frame with what is on its faces: boards outside, and behind or over their gaps a second row. */
    private Length thickness(Optional<BoardLayout> boarding, Optional<CourseRun> courses) {
        Length frame = style.gateLumber().thickness();
        Length board = style.boardLumber().thickness();
        if (boarding.isEmpty()) {
            return courses.isPresent() ? frame.plus(board) : frame;
        }
        boolean second =
                boarding.get().count() > boarding.get().row(Face.OUTSIDE).count();
        return frame.plus(board).plus(second ? LeafScale.secondRow(style).thickness() : Length.ZERO);
    }

    private Optional<HingeLoads> loads(
            GateLeaf leaf, Optional<BoardCuts> boarding, Optional<CourseRun> courses, String place) {
        if (leaf.pieces().isEmpty()) {
            // The leaf's own blocker says why it cannot be made.
            return Optional.empty();
        }
        Optional<HingeLoads> loads = LeafScale.weigh(leaf, boarding, courses, style)
                .map(weight -> {
                    GateHardware hardware = style.gateHardware();
                    return HingeLoads.of(weight, hardware.hingesOn(leaf, hardware.woodOf(style.gateLumber())));
                });
        if (loads.isEmpty()) {
            findings.add(Finding.note(
                            "gate-not-weighed",
                            place,
                            "the leaf is beyond anything that hangs on hinges, and neither they nor its post were"
                                    + " looked at")
                    .withRemedy("check the sizes of its boards and lumber"));
        }
        return loads;
    }

    private List<HingeSeat> seats(GateLeaf leaf, HingeSpec hinges) {
        GateHardware hardware = style.gateHardware();
        List<Length> heights = hinges.heightsOn(leaf);
        // No wider than lies on the frame at the lowest and the highest hinge.
        Length overTop = leaf.frameHeight().minus(heights.get(heights.size() - 1));
        Length width = Length.min(
                hardware.strapWidth(), Length.min(heights.get(0), overTop).times(2));
        Length reach = Length.min(hardware.strapReach(), leaf.width());
        return heights.stream()
                .map(height -> reach.isZero()
                        ? HingeSeat.ofButt(leaf, height, width)
                        : HingeSeat.ofStrap(leaf, height, width, reach))
                .toList();
    }

    private Optional<GateSwing> swing(
            GateLeaf leaf,
            boolean hingesAtStart,
            GatePlacing.Placed gate,
            Profile bottoms,
            Length thickness,
            String place) {
        Optional<GateSwing> swing = surface.flatMap(shots -> LeafSwing.of(
                leaf, hingesAtStart, gate.location(), gate.opening(), bottoms, line, style, thickness, shots));
        swing.ifPresent(clear -> findings.later(clear::findings, place));
        if (surface.isPresent() && swing.isEmpty()) {
            findings.add(Finding.note(
                            "gate-swing-unknown",
                            place,
                            "the shots do not reach under the whole swing of the leaf, so that it may drag")
                    .withRemedy("take shots as far out as the leaf opens"));
        }
        return swing;
    }

    /** The pins are in the face that the leaf opens from, so that only the latch stile may touch as it turns. */
    private Optional<Chamfer> chamfer(GateLeaf leaf, GateDesign design, Length depth, String place) {
        GateSpec spec = leaf.spec();
        Length gap = design.isPair() ? spec.centreGap() : spec.latchGap();
        Length pinToEdge = leaf.width().plus(style.gateHardware().pinOf(spec));
        boolean sizeable = pinToEdge.compareTo(HIGHEST) <= 0 && depth.compareTo(HIGHEST) <= 0;
        if (!sizeable || depth.compareTo(pinToEdge.plus(gap)) >= 0) {
            return Optional.empty();
        }
        Chamfer chamfer = Chamfer.ofLatchStile(pinToEdge, depth, gap);
        if (chamfer.isNeeded()) {
            findings.add(Finding.note(
                            "gate-latch-chamfer",
                            place,
                            "the far edge of the latch stile would touch as the leaf turns, which is "
                                    + Written.tape(depth) + " deep and has a gap of " + Written.tape(gap) + " there")
                    .withRemedy("plane a " + chamfer + " on that edge, or leave a wider gap")
                    .withSource(Citation.GEOMETRY));
        }
        return Optional.of(chamfer).filter(Chamfer::isNeeded);
    }
}
