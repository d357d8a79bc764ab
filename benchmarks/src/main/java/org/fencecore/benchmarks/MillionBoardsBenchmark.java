package org.fencecore.benchmarks;

import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.units.Length;
import org.openjdk.jmh.annotations.Benchmark;

/**
 * What it costs to fit a million boards, and to go through them and add up both edges of each, against plain loops that
 * come to the same nanometres in the same order.
 *
 * <p>Fitting takes the same time for ten boards and for a million; going through takes up to 3 times the plain loop and
 * leaves no garbage. {@code java -jar benchmarks/target/benchmarks.jar MillionBoardsBenchmark -prof gc}
 */
public class MillionBoardsBenchmark extends SteadyBenchmark {

    private static final long WIDTH = Length.ofInches(5.5).nanometres();
    /** What the gaps have over the preferred ones, so that they do not come out even. */
    private static final long OVER = 12_345_678;

    private final BoardPattern spaced = BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2.5));
    private final BoardPattern shadowbox = BoardPattern.shadowbox(Length.ofInches(5.5));
    private final Length tenSpaced = lengthOf(10, spaced);
    private final Length millionSpaced = lengthOf(1_000_000, spaced);
    private final BoardLayout oneRow = BoardLayout.fit(millionSpaced, spaced);
    private final BoardLayout twoRows = BoardLayout.fit(lengthOf(500_001, shadowbox), shadowbox);

    private static Length lengthOf(int boards, BoardPattern pattern) {
        return pattern.width()
                .times(boards)
                .plus(pattern.preferredGap().times(boards - 1L))
                .plus(Length.ofNanometres(OVER));
    }

    /** How many boards the two layouts have. */
    int count() {
        return oneRow.count() + twoRows.count();
    }

    /** Fits ten boards. */
    @Benchmark
    public BoardLayout fitTen() {
        return BoardLayout.fit(tenSpaced, spaced);
    }

    /** Fits a million. */
    @Benchmark
    public BoardLayout fitMillion() {
        return BoardLayout.fit(millionSpaced, spaced);
    }

    /** A million boards in one row, as a caller goes through them. */
    @Benchmark
    public long oneRow() {
        return edges(oneRow);
    }

    /** A million and one boards of a shadowbox, as a caller goes through them. */
    @Benchmark
    public long twoRows() {
        return edges(twoRows);
    }

    private static long edges(BoardLayout layout) {
        long sum = 0;
        for (BoardPlacement board : layout.boards()) {
            sum += board.left().nanometres() + board.right().nanometres();
        }
        return sum;
    }

    /** The million boards in one row by a plain loop. */
    @Benchmark
    public long plainOneRow() {
        return front(oneRow.clearLength().nanometres(), 1_000_000);
    }

    /** The boards of the shadowbox by plain loops, one for each row. */
    @Benchmark
    public long plainTwoRows() {
        long length = twoRows.clearLength().nanometres();
        return front(length, 500_001) + back(length, 500_001);
    }

    /** What is left over of the gaps is handed out a nanometre at a time, whenever it has grown to one. */
    private static long front(long length, int boards) {
        int spaces = boards - 1;
        long gaps = length - boards * WIDTH;
        long share = gaps / spaces;
        long rest = gaps % spaces;
        long grown = spaces - 1L;
        long right = WIDTH;
        long sum = right;
        for (int board = 1; board < boards; board++) {
            grown += 2 * rest + (board == spaces / 2 + 1 ? 1 : 0);
            long left = right + share;
            if (grown >= 2L * spaces) {
                grown -= 2L * spaces;
                left++;
            }
            right = left + WIDTH;
            sum += left + right;
        }
        return sum;
    }

    private static long back(long length, int boards) {
        int spaces = boards - 1;
        long gaps = length - boards * WIDTH;
        long share = gaps / spaces;
        long rest = gaps % spaces;
        long grown = spaces - 1L;
        long right = WIDTH;
        long sum = 0;
        for (int board = 1; board < boards; board++) {
            grown += 2 * rest + (board == spaces / 2 + 1 ? 1 : 0);
            long gap = share;
            if (grown >= 2L * spaces) {
                grown -= 2L * spaces;
                gap++;
            }
            long laps = WIDTH - gap;
            long behind = right - (2 * board - 1 < spaces ? laps - laps / 2 : laps / 2);
            sum += behind + (behind + WIDTH);
            right += gap + WIDTH;
        }
        return sum;
    }
}
