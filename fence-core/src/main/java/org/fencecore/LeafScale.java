package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.boarding.BoardCut;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.hang.GateWood;
import org.fencecore.gate.hang.LeafBoards;
import org.fencecore.gate.hang.LeafWeight;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Force;
import org.fencecore.units.Length;

/** Weighs the leaves of a plan with the boards that are really on them. */
final class LeafScale {

    private static final int MOST_BOARDS = 10_000;
    private static final Length LARGEST = Length.ofFeet(100);

    /** Far beyond any leaf; the footing of a post that holds several such still knows what to do. */
    private static final Force HEAVIEST = Force.ofPoundsForce(2_000);

    private LeafScale() {}

    /** The leaf with its boards; empty if it is beyond anything that hangs on hinges. */
    static Optional<LeafWeight> weigh(
            GateLeaf leaf, Optional<BoardCuts> boarding, Optional<CourseRun> courses, FenceStyle style) {
        List<LeafBoards> lots = new ArrayList<>();
        if (courses.isPresent()) {
            if (!isSizeable(style.boardLumber())
                    || courses.get().stations().length().compareTo(LARGEST) > 0) {
                return Optional.empty();
            }
            lots.add(pile(courses.get(), style));
        }
        if (boarding.isPresent()) {
            BoardLayout layout = boarding.get().layout();
            boolean sizeable = layout.count() <= MOST_BOARDS
                    && isSizeable(style.boardLumber())
                    && isSizeable(style.battenLumber());
            if (!sizeable) {
                return Optional.empty();
            }
            if (boarding.get().areAllSquare()) {
                addAlike(lots, layout, style);
            } else {
                boarding.get().cuts().forEach(cut -> addShaped(lots, cut, style));
            }
        }
        GateWood frame = style.gateHardware().woodOf(style.gateLumber());
        LeafWeight weight = LeafWeight.of(leaf, frame, lots.toArray(LeafBoards[]::new));
        return weight.total().compareTo(HEAVIEST) <= 0 ? Optional.of(weight) : Optional.empty();
    }

    private static void addAlike(List<LeafBoards> lots, BoardLayout layout, FenceStyle style) {
        int battens = style.hasBattens() ? layout.row(Face.COVER).count() : 0;
        int ripped = layout.ripped().size();
        Lumber board = style.boardLumber();
        add(lots, layout.count() - battens - ripped, board, board.width(), style);
        if (ripped > 0) {
            add(lots, ripped, board, layout.ripped().get(0).width(), style);
        }
        add(lots, battens, style.battenLumber(), style.battenLumber().width(), style);
    }

    /** One whose ends are cut to a line, or dog-eared, weighs where it is. */
    private static void addShaped(List<LeafBoards> lots, BoardCut cut, FenceStyle style) {
        BoardPlacement board = cut.board();
        Length mean = cut.meanLength();
        if (!mean.isPositive() || mean.compareTo(LARGEST) > 0) {
            // Cut down to nothing, or beyond any board, which the findings of the tops tell.
            return;
        }
        Lumber lumber = board.face() == Face.COVER ? secondRow(style) : style.boardLumber();
        Length middle = board.left().plus(board.width().dividedBy(2));
        lots.add(LeafBoards.of(
                        1,
                        board.width(),
                        lumber.thickness(),
                        mean,
                        style.rails().bottomRailAboveBottoms().negated(),
                        style.gateHardware().woodOf(lumber))
                .at(middle));
    }

    /** Boards that lie, as one as high as they are wide together, its middle where theirs is. */
    private static LeafBoards pile(CourseRun courses, FenceStyle style) {
        BoardLayout layout = courses.layout().courses();
        Length wood = layout.boards().stream().map(BoardPlacement::width).reduce(Length.ZERO, Length::plus);
        Length gaps = layout.clearLength().minus(wood);
        return LeafBoards.of(
                1,
                courses.stations().length(),
                style.boardLumber().thickness(),
                courses.grade().lengthOver(wood),
                courses.grade()
                        .lengthOver(gaps.dividedBy(2))
                        .minus(style.rails().bottomRailAboveBottoms()),
                style.gateHardware().woodOf(style.boardLumber()));
    }

    private static boolean isSizeable(Lumber lumber) {
        return lumber.width().compareTo(LARGEST) <= 0;
    }

    /** What a row behind the boards or over their gaps is made of: battens, or more boards. */
    static Lumber secondRow(FenceStyle style) {
        return style.hasBattens() ? style.battenLumber() : style.boardLumber();
    }

    private static void add(List<LeafBoards> lots, int count, Lumber lumber, Length width, FenceStyle style) {
        if (count > 0) {
            lots.add(LeafBoards.of(
                    count,
                    width,
                    lumber.thickness(),
                    style.rails().boardLength(),
                    style.rails().bottomRailAboveBottoms().negated(),
                    style.gateHardware().woodOf(lumber)));
        }
    }
}
