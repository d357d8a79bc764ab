package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

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
