package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class GateBoardsTest {

    private static final BoardPattern PICKETS = BoardPattern.spaced(in(3.5), in(2));

    /* By hand: 7 x 3.5 + 6 x 2 = 36.5 and 17 x 3.5 + 16 x 2 = 91.5. */
    @Test
    void theExample() {
        GateBoards boards = GateBoards.fit(PICKETS, in(91.5), in(36.5), in(91.5));

        assertThat(boards.leaf().count()).isEqualTo(7);
        assertThat(boards.before()).map(BoardLayout::count).hasValue(17);
        assertThat(boards.after()).isEqualTo(boards.before());
        assertThat(boards.readsThrough()).isTrue();
        assertThat(boards).hasToString("17 boards, 7 on the leaf, 17");
    }

    @Test
    void whatBreaksThePatternIsFound() {
        // 8 in of leaf are two pickets of 3 1/2 with 1 in between; the fence has them 2 in apart.
        GateBoards narrow = GateBoards.fit(PICKETS, in(91.5), in(8), in(91.5));
        assertThat(narrow.findings())
                .extracting(Finding::code, Finding::place)
                .containsExactly(
                        tuple("gate-gap-differs", "left of the gate"), tuple("gate-gap-differs", "right of the gate"));
        // 12 in of a tight fence are three boards of 4 in.
        GateBoards ripped = GateBoards.fit(BoardPattern.sideBySide(in(5.5)), in(55), in(12), in(55));
        assertThat(ripped.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("ripped-at-gate");
            assertThat(finding.place()).isEqualTo("leaf");
            assertThat(finding.remedy()).isEqualTo("make it 11 1/8\" or 1' 4 1/2\" long");
        });
        assertThat(ripped.nearestLeafWidths()).containsExactly(in(11.125), in(16.5));
    }

    /**
     * Pickets of 3 1/2 in, 2 in apart beside the gate, are every 5 1/2 in: a leaf takes n x 5.5 - 2, so 3 1/2 or 9 for one of
     * 8 in. With 1 in apart on one side and 2 on the other it is the mean, every 5 in less 1 1/2: 3 1/2 or 8 1/2 in.
     */
    @Test
    void aLeafReadsThroughAsWideAsSoManyBoardsAndGapsOfTheFence() {
        GateBoards narrow = GateBoards.fit(PICKETS, in(91.5), in(8), in(91.5));
        assertThat(narrow.readsThrough()).isFalse();
        assertThat(narrow.readThroughWidths()).containsExactly(in(3.5), in(9));
        assertThat(narrow.findings().get(0).message()).isEqualTo("the gap between boards is 2\", and on the leaf 1\"");
        assertThat(narrow.findings().get(0).remedy())
                .isEqualTo("make the leaf 3 1/2\" or 9\" wide, and its boards come out as far apart");
        BoardLayout leaf = BoardLayout.fit(in(8), PICKETS);
        Optional<BoardLayout> wide = Optional.of(BoardLayout.fit(in(91.5), PICKETS));
        Optional<BoardLayout> close = Optional.of(BoardLayout.fit(in(8), PICKETS));
        assertThat(GateBoards.of(wide, leaf, close).readThroughWidths()).containsExactly(in(3.5), in(8.5));
        // A single board beside it has no gap to go by, and with none at all full boards do.
        Optional<BoardLayout> single = Optional.of(BoardLayout.fit(in(3.5), PICKETS));
        assertThat(GateBoards.of(wide, leaf, single).readThroughWidths()).containsExactly(in(3.5), in(9));
        assertThat(GateBoards.of(single, leaf, Optional.empty()).readThroughWidths())
                .isEqualTo(GateBoards.of(single, leaf, Optional.empty()).nearestLeafWidths());
        // With a gap at both ends a leaf takes n x 5.5 + 2, and one of 6 in has room for none.
        BoardPattern open = PICKETS.withGapAtEnds();
        GateBoards ends = GateBoards.fit(open, in(90), in(6), in(90));
        assertThat(ends.readThroughWidths()).containsExactly(in(7.5));
    }

    /** A gap that differs by 1/4 in is not seen, one that differs by more is, but a single board has none to differ. */
    @Test
    void gapsThatDifferALittleReadThrough() {
        BoardPattern any = BoardPattern.spaced(in(3.5), in(2)).withGaps(in(1), in(2), in(3));
        Length hair = Length.ofNanometres(1);
        assertThat(GateBoards.fit(any, in(9), in(9.25), in(9)).readsThrough()).isTrue();
        assertThat(GateBoards.fit(any, in(9), in(9.25).plus(hair), in(9)).readsThrough())
                .isFalse();
        assertThat(GateBoards.fit(any, in(3.5), in(9.5), in(3.5)).readsThrough())
                .isTrue();
        assertThat(GateBoards.fit(any, in(9.5), in(3.5), in(9.5)).readsThrough())
                .isTrue();
    }

    @Property
    void withoutAFindingAllEdgesAreFull(
            @ForAll @DoubleRange(min = 6, max = 200) double before,
            @ForAll @DoubleRange(min = 6, max = 60) double leaf,
            @ForAll @DoubleRange(min = 6, max = 200) double after) {
        GateBoards boards = GateBoards.fit(BoardPattern.shadowbox(in(5.5)), in(before), in(leaf), in(after));
        boolean full = true;
        for (BoardLayout layout : new BoardLayout[] {
            boards.before().orElseThrow(), boards.leaf(), boards.after().orElseThrow()
        }) {
            var outside = layout.row(Face.OUTSIDE).boards();
            full &= outside.get(0).isFull() && outside.get(outside.size() - 1).isFull();
        }
        assertThat(boards.findings().stream()
                        .noneMatch(finding -> finding.code().equals("ripped-at-gate")))
                .isEqualTo(full);
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
