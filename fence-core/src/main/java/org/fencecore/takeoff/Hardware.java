package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.Bay;
import org.fencecore.CourseRun;
import org.fencecore.FencePlan;
import org.fencecore.HungLeaf;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.gate.BraceKind;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.slope.KickBoard;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;

/** Counts by rule what is not lumber and does not go into a hole. The rules are listed with {@link Takeoff}. */
final class Hardware {

    private static final int PER_BOARD_AND_RAIL = 2;
    private static final int PER_BATTEN_AND_RAIL = 1;
    private static final int PER_END = 2;
    private static final int PER_CAP = 2;
    private static final int BRACES_PER_POST = 2;
    private static final Length GRIP = Length.ofInches(2);
    private static final Length STRING_PAST_CORNER = Length.ofFeet(3);
    private static final int POSTS_PER_CAN = 50;

    private static final String COATED = "; hot-dip galvanized or stainless in treated wood (IBC 2012, 2304.9.5)";

    private final FencePlan plan;
    private final FenceStyle style;

    Hardware(FencePlan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    List<MaterialLine> fasteners() {
        Length thinnest =
                Length.min(style.railLumber().thickness(), style.gateLumber().thickness());
        Length through = style.boardLumber().thickness().plus(thinnest);
        Length railScrew = style.railLumber().thickness().plus(GRIP);
        Length frameScrew = style.gate().memberWidth().plus(GRIP);
        int railEnds = railsOnPosts();
        int frameEnds = leaves().stream()
                .mapToInt(hung -> 2 * (rails(hung) + hung.leaf().braces().size() - cables(hung))
                        + hung.blocks().size())
                .sum();
        int covers = coverCrossings();
        List<MaterialLine> lines = new ArrayList<>(List.of(
                new MaterialLine(
                        "exterior screw or ring-shank nail, under " + Written.tape(through, Rounding.DOWN),
                        PER_BOARD_AND_RAIL * (boardCrossings() - covers),
                        "pieces",
                        "boards: " + PER_BOARD_AND_RAIL
                                + (style.boards().isHorizontal()
                                        ? " where a board crosses a post, nailer or stile, or ends on one"
                                        : " where a board crosses a rail")
                                + COATED),
                new MaterialLine(
                        "structural screw, " + Written.tape(railScrew),
                        PER_END * railEnds,
                        "pieces",
                        "rails to posts: " + PER_END + " at each of " + railEnds + " rail ends and crossings" + COATED),
                new MaterialLine(
                        "structural screw, " + Written.tape(frameScrew),
                        PER_END * frameEnds,
                        "pieces",
                        "gate frames: " + PER_END + " at each of " + frameEnds
                                + " ends of rails and braces, and of blocks at the stile" + COATED)));
        lines.add(1, covers(covers, through));
        lines.addAll(kickBoards());
        lines.addAll(caps());
        return lines;
    }

    /** A batten is held in its middle, between the boards, so that these can move; a board over boards at both edges. */
    private MaterialLine covers(int crossings, Length through) {
        boolean battens = style.hasBattens();
        Length cover = (battens ? style.battenLumber() : style.boardLumber()).thickness();
        int each = battens ? PER_BATTEN_AND_RAIL : PER_BOARD_AND_RAIL;
        return new MaterialLine(
                "exterior screw or ring-shank nail, under " + Written.tape(through.plus(cover), Rounding.DOWN),
                each * crossings,
                "pieces",
                (battens ? "battens: " : "boards over boards: ") + each + " where one crosses a rail" + COATED);
    }

    private int coverCrossings() {
        int crossings = 0;
        for (Stretch stretch : plan.stretches()) {
            crossings += stretch.boards().map(Hardware::covers).orElse(0)
                    * stretch.bays().get(0).rails().size();
        }
        for (HungLeaf hung : leaves()) {
            crossings += hung.boards().map(Hardware::covers).orElse(0) * rails(hung);
        }
        return crossings;
    }

    private static int covers(BoardLayout layout) {
        return layout.row(Face.COVER).count();
    }

    /** Kick boards end on posts, or between them on cleats. */
    private List<MaterialLine> kickBoards() {
        int boards = 0;
        int cleats = 0;
        for (Bay bay : plan.bays()) {
            for (KickBoard board : bay.kickBoards()) {
                boards++;
                cleats += board.reach().start().equals(bay.slope().start()) ? 0 : 1;
                cleats += board.reach().end().equals(bay.slope().end()) ? 0 : 1;
            }
        }
        return List.of(
                new MaterialLine(
                        "exterior screw, "
                                + Written.tape(style.kickLumber().thickness().plus(GRIP)),
                        PER_END * 2 * boards + PER_END * cleats,
                        "pieces",
                        "kick boards: " + PER_END + " at each end, and " + PER_END + " to hold each cleat" + COATED),
                new MaterialLine(
                        "cleat, an offcut of rail", cleats, "pieces", "1 where a kick board ends between posts"));
    }

    private List<MaterialLine> caps() {
        int caps = style.postCapWidth().isPositive() ? plan.posts().size() : 0;
        return List.of(
                new MaterialLine(
                        "post cap, " + Written.tape(style.postCapWidth()) + " wide", caps, "pieces", "1 a post"),
                new MaterialLine(
                        "finish nail or trim screw for post caps",
                        PER_CAP * caps,
                        "pieces",
                        PER_CAP + " a cap" + COATED));
    }

    private static int cables(HungLeaf hung) {
        return (int) hung.leaf().braces().stream()
                .filter(brace -> brace.kind() == BraceKind.CABLE)
                .count();
    }

    /** Every piece is fixed at both ends, and to each post that it runs past. */
    private int railsOnPosts() {
        return plan.stretches().stream()
                .flatMap(stretch -> stretch.railPieces().stream())
                .flatMap(rails -> rails.pieces().stream())
                .mapToInt(piece -> piece.bays() + 1)
                .sum();
    }

    private int boardCrossings() {
        int crossings = 0;
        for (Stretch stretch : plan.stretches()) {
            if (!style.boards().isHorizontal()) {
                crossings +=
                        stretch.boardCount() * stretch.bays().get(0).rails().size();
            }
            crossings +=
                    stretch.courses().stream().mapToInt(CourseRun::fixingCount).sum();
        }
        for (HungLeaf hung : leaves()) {
            crossings += hung.boards().map(BoardLayout::count).orElse(0) * rails(hung)
                    + hung.courses().map(CourseRun::fixingCount).orElse(0);
        }
        return crossings;
    }

    private List<HungLeaf> leaves() {
        return plan.gates().stream().flatMap(gate -> gate.leaves().stream()).toList();
    }

    private static int rails(HungLeaf hung) {
        return (int) hung.leaf().pieces().stream()
                .filter(piece -> !piece.member().isStile())
                .count();
    }

    private static int hinges(HungLeaf hung) {
        return hung.loads()
                .map(loads -> loads.hinges().count())
                .orElse(hung.leaf().usualHinges());
    }

    List<MaterialLine> gates() {
        int hinges = leaves().stream().mapToInt(Hardware::hinges).sum();
        int pairs = (int)
                plan.gates().stream().filter(gate -> gate.design().isPair()).count();
        int hingesThatClose = plan.gates().stream()
                .filter(gate -> gate.location().isSelfClosing())
                .flatMap(gate -> gate.leaves().stream())
                .mapToInt(Hardware::hinges)
                .sum();
        int latching = (int) plan.gates().stream()
                .filter(gate -> gate.location().isSelfLatching())
                .count();
        int locking = (int) plan.gates().stream()
                .filter(gate ->
                        gate.location().isSelfLatching() && gate.location().isLockable())
                .count();
        String howMany = style.gateHardware().hinges().isPresent()
                ? style.gateHardware().hinges().getAsInt() + " a leaf"
                : "2 a leaf, 3 where the frame is over 5 ft high or the leaf over "
                        + Written.stock(style.gate().reasonableLeafWidth()) + " wide";
        List<MaterialLine> lines = new ArrayList<>();
        lines.add(new MaterialLine(
                "gate hinge with its screws",
                hinges - hingesThatClose,
                "pieces",
                howMany + "; each a " + style.gateHardware()));
        lines.add(new MaterialLine("gate latch with its screws", plan.gates().size() - latching, "pieces", "1 a gate"));
        if (hingesThatClose > 0) {
            lines.add(new MaterialLine(
                    "self-closing gate hinge with its screws",
                    hingesThatClose,
                    "pieces",
                    howMany + ", where the gate closes by itself"));
        }
        if (latching > locking) {
            lines.add(new MaterialLine(
                    "self-latching gate latch", latching - locking, "pieces", "1 a gate that latches by itself"));
        }
        if (locking > 0) {
            lines.add(new MaterialLine(
                    "self-latching gate latch that takes a lock",
                    locking,
                    "pieces",
                    "1 a gate that latches by itself and can be locked"));
        }
        int cables = leaves().stream().mapToInt(Hardware::cables).sum();
        lines.add(new MaterialLine("gate cable with its turnbuckle", cables, "pieces", "1 a brace that is a cable"));
        if (pairs > 0) {
            lines.add(new MaterialLine(
                    "drop rod with its sleeve in the ground", pairs, "pieces", "1 on the fixed one of two leaves"));
        }
        return lines;
    }

    List<MaterialLine> layoutAids() {
        int runs = plan.runs().size();
        int posts = plan.posts().size();
        Length strings = plan.runs().stream()
                .map(Run::string)
                .map(string -> string.length().plus(STRING_PAST_CORNER.times(2)))
                .reduce(Length.ZERO, Length::plus);
        Length foot = Length.ofFeet(1);
        return List.of(
                new MaterialLine(
                        "batter board, two stakes and a crosspiece",
                        2 * runs,
                        "pieces",
                        "1 at each end of " + runs + (runs == 1 ? " string" : " strings")),
                new MaterialLine(
                        "mason's line",
                        (int) strings.roundedTo(foot, Rounding.UP).wholePieces(foot),
                        "ft",
                        "strings, and " + Written.stock(STRING_PAST_CORNER) + " past each end to the batter board"),
                new MaterialLine("stake", posts, "pieces", "1 at the centre of each post"),
                new MaterialLine(
                        "post brace with its stake",
                        plan.holes().concrete().isPositive() ? BRACES_PER_POST * posts : 0,
                        "pieces",
                        BRACES_PER_POST
                                + " a post, square to each other, until the concrete has hardened; fewer if posts are set"
                                + " some at a time"),
                new MaterialLine(
                        "marking paint",
                        (posts + POSTS_PER_CAN - 1) / POSTS_PER_CAN,
                        "cans",
                        "1 for each " + POSTS_PER_CAN + " holes begun"));
    }
}
