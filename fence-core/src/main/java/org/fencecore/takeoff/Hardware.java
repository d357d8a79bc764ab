package org.fencecore.takeoff;

import java.util.List;
import org.fencecore.CourseRun;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;

/** Counts by rule what is not lumber and does not go into a hole. The rules are listed with {@link Takeoff}. */
final class Hardware {

    private static final int PER_BOARD_AND_RAIL = 2;
    private static final int PER_END = 2;
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
        int railEnds = 2 * railCount();
        int frameEnds = plan.gates().stream()
                .mapToInt(gate -> 2 * (rails(gate) + gate.leaf().braces().size()))
                .sum();
        return List.of(
                new MaterialLine(
                        "exterior screw or ring-shank nail, under " + Written.tape(through, Rounding.DOWN),
                        PER_BOARD_AND_RAIL * boardCrossings(),
                        "pieces",
                        "boards: " + PER_BOARD_AND_RAIL
                                + (style.isHorizontal()
                                        ? " where a board crosses a post, nailer or stile, or ends on one"
                                        : " where a board crosses a rail")
                                + COATED),
                new MaterialLine(
                        "structural screw, " + Written.tape(railScrew),
                        PER_END * railEnds,
                        "pieces",
                        "rails to posts: " + PER_END + " at each of " + railEnds + " rail ends" + COATED),
                new MaterialLine(
                        "structural screw, " + Written.tape(frameScrew),
                        PER_END * frameEnds,
                        "pieces",
                        "gate frames: " + PER_END + " at each of " + frameEnds + " ends of rails and braces" + COATED));
    }

    private int railCount() {
        return plan.bays().stream().mapToInt(bay -> bay.rails().size()).sum();
    }

    private int boardCrossings() {
        int crossings = 0;
        for (Stretch stretch : plan.stretches()) {
            if (!style.isHorizontal()) {
                crossings +=
                        stretch.boardCount() * stretch.bays().get(0).rails().size();
            }
            crossings +=
                    stretch.courses().stream().mapToInt(CourseRun::fixingCount).sum();
        }
        for (GateBay gate : plan.gates()) {
            // A horizontal board on a leaf is fixed to both stiles.
            crossings += gate.boardCount() * (style.isHorizontal() ? 2 : rails(gate));
        }
        return crossings;
    }

    private static int rails(GateBay gate) {
        return (int) gate.leaf().pieces().stream()
                .filter(piece -> !piece.member().isStile())
                .count();
    }

    List<MaterialLine> gates() {
        int hinges = plan.gates().stream()
                .mapToInt(gate -> gate.leaf().usualHinges())
                .sum();
        return List.of(
                new MaterialLine(
                        "gate hinge with its screws",
                        hinges,
                        "pieces",
                        "2 a leaf, 3 where the frame is over 5 ft high or the leaf wider than is reasonable"),
                new MaterialLine("gate latch with its screws", plan.gates().size(), "pieces", "1 a gate"));
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
                        "marking paint",
                        (posts + POSTS_PER_CAN - 1) / POSTS_PER_CAN,
                        "cans",
                        "1 for each " + POSTS_PER_CAN + " holes begun"));
    }
}
