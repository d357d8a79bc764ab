package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardRow;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class NotchesTest {

    /** Boards at 0, 8, 16 ... 88, 5 1/2 in wide. */
    private static final BoardRow ROW =
            BoardLayout.fit(in(93.5), BoardPattern.spaced(in(5.5), in(2.5))).row(Face.OUTSIDE);

    private static final Length THICK = in(0.75);

    /* By hand: board 5 is from 40 to 45.5, board 6 from 48; a post from 45 to 48.5 overlaps either by 0.5. */
    @Test
    void theExample() {
        List<Interval> posts = List.of(Interval.of(in(45), in(48.5)));
        Notches still = Notches.of(ROW, posts, in(1.5), THICK);

        assertThat(still.count()).isEqualTo(2);
        assertThat(still.shift()).isEqualTo(Length.ZERO);
        Notch first = still.notches().get(0);
        assertThat(first.board().index()).isEqualTo(5);
        assertThat(first.across()).isEqualTo(Interval.of(in(5), in(5.5)));
        assertThat(first.depth()).isEqualTo(THICK);
        assertThat(first.isAtEdge()).isTrue();
        assertThat(first).hasToString("OUTSIDE board 5: 1/2\" wide at 5\", 3/4\" deep");
        assertThat(still.notches().get(1).across()).isEqualTo(Interval.of(in(0), in(0.5)));

        Notches least = Notches.fewest(ROW, posts, in(1.5), THICK, in(1));
        assertThat(least.count()).isEqualTo(1);
        assertThat(least.shift()).isEqualTo(in(0.5));
        assertThat(least.notches().get(0).board().index()).isEqualTo(5);
        assertThat(least.notches().get(0).across()).isEqualTo(Interval.of(in(4.5), in(5.5)));
        assertThat(least).hasToString("1 notch, shifted 1/2\"");
    }

    @Test
    void depthIsHowFarPostsStandProud() {
        List<Interval> posts = List.of(Interval.of(in(40), in(43.5)));
        Notch shallow = Notches.of(ROW, posts, in(0.25), THICK).notches().get(0);
        assertThat(shallow.depth()).isEqualTo(in(0.25));
        assertThat(shallow.isWholeWidth()).isFalse();
        assertThat(Notches.of(ROW, posts, Length.ZERO, THICK).notches()).isEmpty();
        // A post within a board is not at its edge; one wider than the board takes all of it.
        List<Interval> others = List.of(Interval.of(in(41), in(44.5)), Interval.of(in(47), in(55)));
        List<Notch> notches = Notches.of(ROW, others, in(1), THICK).notches();
        assertThat(notches.get(0).isAtEdge()).isFalse();
        assertThat(notches.get(1).isWholeWidth()).isTrue();
        assertThat(notches.get(1).post()).isEqualTo(1);
    }

    @Test
    void aPostNarrowerThanAGapNeedsNone() {
        // A 2 in post touches board 6 at 48 when the row is still; it fits the gap from 45 1/2 to 48.
        List<Interval> posts = List.of(Interval.of(in(47), in(49)));
        Notches least = Notches.fewest(ROW, posts, in(1), THICK, in(4));
        assertThat(least.count()).isZero();
        assertThat(least.shift()).isEqualTo(in(1));
    }

    @Test
    void badInputIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Notches.fewest(ROW, List.of(), in(1), THICK, in(9)))
                .withMessageContaining("mostShift was 9 in; it must be from 0 to 8 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Notches.of(ROW, List.of(), in(-1), THICK))
                .withMessageContaining("proud was -1 in");
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
