package org.fencecore.packet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.boarding.BoardCut;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.gate.hang.HingeSeat;
import org.fencecore.gate.hang.LeafWeight;
import org.fencecore.gate.hang.LeafWind;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * One gate as the person at the saw needs it: sizes, pieces with their cuts, brace, boards, hinges and what they hold, how
 * high it hangs and how it swings.
 */
final class GateText {

    private static final Length EIGHTH = Length.ofInches(0.125);

    private final GateBay gate;
    private final FencePlan plan;
    private final TapeFormat tape;
    private final SheetText text;

    private GateText(SheetText text, GateBay gate, FencePlan plan, TapeFormat tape) {
        this.text = text;
        this.gate = gate;
        this.plan = plan;
        this.tape = tape;
    }

    static void write(SheetText text, GateBay gate, FencePlan plan, TapeFormat tape) {
        new GateText(text, gate, plan, tape).write();
    }

    private void write() {
        heading();
        for (HungLeaf hung : gate.leaves()) {
            if (gate.design().isPair()) {
                boolean active = hung.leaf().equals(gate.leaf());
                say(side(hung.leaf()).toUpperCase(Locale.ROOT)
                        + " LEAF, hinges on " + gate.hingePost(hung)
                        + (active ? ", opens first, carries the latch" : ", held by the drop rod, carries the strike"));
            }
            frame(hung);
            boards(hung);
            courses(hung);
            hinges(hung);
            swing(hung);
        }
        hang();
        atPool();
    }

    private void say(String sentence) {
        text.detail(sentence);
    }

    private static String side(GateLeaf leaf) {
        return leaf.hingeSide().name().toLowerCase(Locale.ROOT);
    }

    private void heading() {
        GateSpec spec = gate.design().spec();
        String way = gate.location().opensOutward() ? "opens out of the lot" : "opens into the lot";
        String posts = gate.name() + ", " + gate.from() + " to " + gate.to();
        String opening = "opening " + tape.format(gate.design().clearOpening()) + " between posts, ";
        String frame = "frame " + tape.format(gate.design().frameHeight()) + " high";
        if (gate.design().isPair()) {
            List<HungLeaf> leaves = gate.leaves();
            text.part(posts + ", two leaves, " + way);
            say(opening + "leaves " + tape.format(leaves.get(0).leaf().width()) + " and "
                    + tape.format(leaves.get(1).leaf().width()) + " wide (gaps " + tape.format(spec.hingeGap())
                    + " at the hinges, " + tape.format(spec.centreGap()) + " between the leaves), " + frame);
        } else {
            text.part(posts + ", hinges on " + gate.hingePost() + ", " + side(gate.leaf()) + " seen from outside, "
                    + way);
            say(opening + "leaf " + tape.format(gate.leaf().width()) + " wide (gaps " + tape.format(spec.hingeGap())
                    + " at the hinges, " + tape.format(spec.latchGap()) + " at the latch), " + frame);
        }
    }

    private void frame(HungLeaf hung) {
        GateLeaf leaf = hung.leaf();
        TextTable pieces = TextTable.of("piece", "length", "cuts");
        for (FramePiece piece : leaf.pieces()) {
            pieces.row(piece.member(), tape.format(piece.length()), cuts(piece));
        }
        for (GateBrace brace : leaf.braces()) {
            boolean cable = brace.kind() == BraceKind.CABLE;
            pieces.row(
                    brace.kind(),
                    tape.format(brace.length()) + (cable ? " corner to corner" : " point to point"),
                    cable ? "less eyes and turnbuckle" : braceCuts(brace));
        }
        for (HingeSeat seat : hung.hingeSeats()) {
            seat.blockLength()
                    .ifPresent(length -> pieces.row(
                            "block",
                            tape.format(length),
                            "square, level behind the " + seat + ", fitted to the brace"
                                    + (leaf.rake().isZero() ? "" : " and to the raked rail")));
        }
        text.detail(pieces);
        for (GateBrace brace : leaf.braces()) {
            say(brace.kind() + " from the " + brace.foot() + " up to the " + brace.head() + ", rising "
                    + Written.saw(brace.rise()));
        }
        say(
                leaf.rake().isZero()
                        ? "square when both diagonals of the frame read " + tape.format(leaf.diagonal())
                        : "true when the diagonal rising to the right seen from outside reads "
                                + tape.format(leaf.risingDiagonal()) + " and the other "
                                + tape.format(leaf.fallingDiagonal()));
        hung.dropFromDiagonals()
                .ifPresent(drop -> say("diagonals " + tape.format(EIGHTH) + " apart put the latch edge about "
                        + tape.format(drop.drop()) + " out of level, too low if the one from the top at the hinges is"
                        + " the longer"));
        hung.dropFromSlip()
                .ifPresent(drop -> say(tape.format(EIGHTH) + " of slack at the ends of the brace drops the latch about "
                        + tape.format(drop.drop()) + ": fit it tight"));
        hung.chamfer()
                .ifPresent(
                        chamfer -> say("plane a " + chamfer + " on the latch stile, on the edge away from the swing"));
    }

    private void boards(HungLeaf hung) {
        hung.boards()
                .ifPresent(layout -> say("boards: " + BoardTable.outside(layout) + " outside, "
                        + BoardTable.second(layout) + " " + BoardTable.second(plan)
                        + "; first mark at the left edge seen from outside, a full board at both edges"));
        if (!gate.top().shape().isStraight()) {
            hung.cuts().ifPresent(this::shapedBoards);
        }
    }

    /** Tops along a line of their own: how long each board is at its longest, and where the line meets its edges. */
    private void shapedBoards(BoardCuts cuts) {
        TextTable table = TextTable.of("face", "board", "mark", "longest", "left edge", "right edge");
        for (BoardCut cut : cuts.cuts()) {
            BoardPlacement board = cut.board();
            table.row(
                    BoardTable.words(board.face()),
                    board.index() + 1,
                    tape.format(board.left()),
                    tape.format(cut.length()),
                    tape.format(cut.leftEdge()),
                    tape.format(cut.rightEdge()));
        }
        say("tops " + gate.top().shape()
                + ": set the boards cut long, draw the line over all of them and cut along it");
        text.detail(table);
    }

    private void hinges(HungLeaf hung) {
        if (hung.loads().isEmpty()) {
            return;
        }
        HingeLoads loads = hung.loads().get();
        LeafWeight weight = loads.leafWeight();
        say("weighs about " + pounds(weight.total()) + " without hinges and latch: frame " + pounds(weight.frame())
                + ", braces " + pounds(weight.braces()) + ", boards " + pounds(weight.boards()));
        List<String> heights =
                loads.hinges().heightsOn(hung.leaf()).stream().map(tape::format).toList();
        say(loads.hinges().count() + " hinges, their middles " + Written.list(heights)
                + " above the lower edge of the frame at the hinges, pins plumb in one line"
                + (hung.leaf().rake().isZero() ? "" : ", straps level, square to them and not along the rails")
                + "; each a " + plan.style().gateHardware());
        hung.onPost()
                .ifPresent(post -> say("its post carries " + pounds(post.weight()) + ", "
                        + Math.round(post.moment().poundFeet()) + " lbf-ft about its middle"));
        hung.windShut().ifPresent(wind -> wind(hung, wind));
        Optional<Force> held = loads.hinges().screws().map(screws -> screws.ofHinge());
        say("the top hinge is pulled by " + pounds(loads.pullAtTop())
                + held.map(force -> "; its screws are counted on for " + pounds(force))
                        .orElse(""));
    }

    private void wind(HungLeaf hung, LeafWind shut) {
        boolean rod = gate.design().isPair() && !hung.leaf().equals(gate.leaf());
        say("shut in the wind, of " + pounds(shut.force()) + " on it: " + pounds(shut.atLatchEdge()) + " at the "
                + (rod ? "drop rod with what the other leaf pushes" : "latch") + ", "
                + pounds(shut.mostAtHinge()) + " square to one hinge");
        hung.windOpen()
                .ifPresent(open -> say("left open and loose, up to " + pounds(open.mostAtHinge())
                        + " square to one hinge: hook or rod its far end, and shut it before a storm"));
    }

    /** No scale weighs a gate closer than that. */
    private static String pounds(Force force) {
        return Math.round(force.poundsForce()) + " lbf";
    }

    private void swing(HungLeaf hung) {
        if (hung.swing().isEmpty()) {
            return;
        }
        GateSwing swing = hung.swing().get();
        say("swing: " + nearest(swing) + "; "
                + swing.otherWay()
                        .map(other -> "opening the other way: " + nearest(other))
                        .orElse("the other way the ground is not known"));
        for (Finding finding : swing.findings()) {
            say("cure: " + finding.remedy());
        }
    }

    private String nearest(GateSwing swing) {
        Length least = swing.smallestClearance();
        String where = " at " + Written.saw(swing.atAngle()) + " open, " + tape.format(swing.fromHinge())
                + " from the hinge edge";
        return least.isNegative()
                ? "DRAGS, "
                        + tape.format(least.abs().roundedTo(Length.ofInches(1).dividedBy(16), Rounding.UP))
                        + " in the ground" + where
                : "clears the ground by " + tape.format(least) + where;
    }

    private void hang() {
        Profile bottoms = gate.bottomLine();
        Length from =
                bottoms.elevationAt(gate.opening().start()).minus(gate.from().ground());
        Length to = bottoms.elevationAt(gate.opening().end()).minus(gate.to().ground());
        String how = gate.design().rake().isZero()
                ? "hang level: "
                : "hang raked " + Written.percent(gate.design().rake().abs()) + ", rising to the "
                        + (gate.design().rake().isPositive() ? "right" : "left") + " seen from outside: ";
        say(how + "board bottoms " + tape.format(from) + " above the ground at " + gate.from() + " and "
                + tape.format(to) + " at " + gate.to() + "; frame "
                + tape.format(plan.style().rails().bottomRailAboveBottoms()) + " above the board bottoms");
    }

    private void atPool() {
        List<PoolBarrier> rules = plan.poolBarriers(gate);
        rules.forEach(rule -> rule.gateRequirements().forEach(asked -> say(rule.words() + ": " + asked)));
        if (rules.isEmpty()) {
            return;
        }
        gate.location()
                .releaseHeight()
                .ifPresent(up -> say("release of the latch " + tape.format(up) + " above the ground, worked from "
                        + (gate.location().isReleaseInside() ? "inside" : "outside") + " the lot"));
    }

    private static String braceCuts(GateBrace brace) {
        String rail = brace.railCut()
                .map(cut -> Written.saw(cut) + " off square against the rail")
                .orElse("");
        String stile = brace.stileCut()
                .map(cut -> Written.saw(cut) + (rail.isEmpty() ? " off square" : "") + " against the stile")
                .orElse("");
        return "both ends: " + rail + (rail.isEmpty() || stile.isEmpty() ? "" : ", ") + stile;
    }

    private static String cuts(FramePiece piece) {
        String first = Written.saw(piece.firstCut());
        String other = Written.saw(piece.otherCut());
        String square = Written.saw(Angle.ZERO);
        String slanted = first.equals(other) ? "both ends " + first : first + " and " + other;
        String ends = first.equals(square) && other.equals(square) ? "square" : slanted + " off square";
        return piece.laps() == 0 ? ends : ends + ", " + piece.laps() + " half-laps";
    }

    private void courses(HungLeaf hung) {
        hung.courses()
                .ifPresent(part -> say("boards: " + part.boardCount() + " courses, each one board of "
                        + tape.format(part.boards().get(0).length()) + " with both ends "
                        + Written.saw(part.endCut()) + " off square, fixed to both stiles; their marks above the bottom"
                        + " line are in courses.csv"));
    }
}
