package org.fencecore.benchmarks;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.PlannedBoard;
import org.fencecore.Stretch;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;

/**
 * What it costs to go through all the boards of the fence in a plan for 5,000 ft and add up both edges of each, against
 * plain loops over the same boards.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar BoardsBenchmark}
 */
public class BoardsBenchmark extends SteadyBenchmark {

    private static final int FEET = 5000;
    private static final double BOARD = 5.5;
    private static final long BOARD_NANOMETRES = 139_700_000;

    private final FencePlan plan = FencePlanner.plan(FenceJob.ofFeet(FEET).site(), FenceJob.style());
    private final List<BoardLayout> layouts = plan.stretches().stream()
            .map(Stretch::boards)
            .flatMap(boards -> boards.stream())
            .toList();
    private final PlainFence plain = PlainFence.plan(FenceJob.ofFeet(FEET));
    private final long[] boardedNanometres = layouts.stream()
            .mapToLong(layout -> layout.clearLength().nanometres())
            .toArray();

    /** How many boards there are. */
    int count() {
        return layouts.stream().mapToInt(BoardLayout::count).sum();
    }

    /** The boards of the plan, each a placement with its edges as lengths. */
    @Benchmark
    public long placements() {
        long sum = 0;
        for (BoardLayout layout : layouts) {
            for (BoardPlacement board : layout.boards()) {
                sum += board.left().nanometres() + board.right().nanometres();
            }
        }
        return sum;
    }

    /** All boards of the plan, fence and gates, through the plan's own list. */
    @Benchmark
    public long boardsOfThePlan() {
        long sum = 0;
        for (PlannedBoard board : plan.boards()) {
            sum += board.placement().left().nanometres()
                    + board.placement().right().nanometres();
        }
        return sum;
    }

    /** The same summed as lengths, as a caller would who never leaves the type. */
    @Benchmark
    public Length placementsAsLengths() {
        Length sum = Length.ZERO;
        for (BoardLayout layout : layouts) {
            for (BoardPlacement board : layout.boards()) {
                sum = sum.plus(board.left()).plus(board.right());
            }
        }
        return sum;
    }

    /** The boards of the plan row by row, outside and then inside. */
    @Benchmark
    public long placementsByRow() {
        long sum = 0;
        for (BoardLayout layout : layouts) {
            sum += edges(layout.row(Face.OUTSIDE).boards())
                    + edges(layout.row(Face.INSIDE).boards());
        }
        return sum;
    }

    private static long edges(List<BoardPlacement> boards) {
        long sum = 0;
        for (BoardPlacement board : boards) {
            sum += board.left().nanometres() + board.right().nanometres();
        }
        return sum;
    }

    /** A loop on whole nanometres that shares out what the gaps leave over, as the plan does: a division a gap. */
    @Benchmark
    public long nanometres() {
        long sum = 0;
        for (int stretch = 0; stretch < plain.stretches; stretch++) {
            int boards = plain.boards[stretch];
            long gaps = boardedNanometres[stretch] - boards * BOARD_NANOMETRES;
            long spaces = boards - 1L;
            long gapStart = 0;
            for (int board = 0; board < boards; board++) {
                long left = board * BOARD_NANOMETRES + (2L * board * gaps + spaces) / (2 * spaces);
                if (board > 0) {
                    long behind = gapStart - (BOARD_NANOMETRES - (left - gapStart)) / 2;
                    sum += behind + (behind + BOARD_NANOMETRES);
                }
                gapStart = left + BOARD_NANOMETRES;
                sum += left + gapStart;
            }
        }
        return sum;
    }

    /** The baseline: a loop on inches in {@code double}, front row and then back row. */
    @Benchmark
    public double doubles() {
        double sum = 0;
        for (int stretch = 0; stretch < plain.stretches; stretch++) {
            int boards = plain.boards[stretch];
            double gap = plain.gap[stretch];
            double pitch = BOARD + gap;
            for (int board = 0; board < boards; board++) {
                double left = board * pitch;
                double right = left + BOARD;
                sum += left + right;
            }
            double behind = BOARD - (BOARD - gap) / 2;
            for (int board = 0; board < boards - 1; board++) {
                double left = behind + board * pitch;
                double right = left + BOARD;
                sum += left + right;
            }
        }
        return sum;
    }
}
