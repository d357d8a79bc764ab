package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.BoardRow;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;

/** The strips that a plan's document tells put every board where it is. */
class BoardStripsProperties {

    @Property
    void everyBoardIsWhereItsStripPutsIt(
            @ForAll @DoubleRange(min = 2, max = 400) double feet,
            @ForAll @DoubleRange(min = 2, max = 12) double width,
            @ForAll @IntRange(min = 0, max = 3) int arrangement) {
        Length board = Length.ofInches(width);
        BoardPattern pattern = List.of(
                        BoardPattern.shadowbox(board),
                        BoardPattern.sideBySide(board),
                        BoardPattern.spaced(board, Length.ofInches(1.7)),
                        BoardPattern.boardOnBoard(board))
                .get(arrangement);
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(feet), pattern);
        for (Face face : Face.values()) {
            BoardRow row = layout.row(face);
            List<BoardShapes.Strip> strips = BoardShapes.Strip.of(row.boards());
            int index = 0;
            for (BoardShapes.Strip strip : strips) {
                for (int k = 0; k < strip.count(); k++) {
                    BoardPlacement actual = row.boards().get(index++);
                    assertNear(leftOf(strip, k), actual.left());
                    assertNear(strip.first().width(), actual.width());
                }
            }
            assertThat(index).isEqualTo(row.count());
            // A block of ripped boards in the middle parts the others at most.
            assertThat(strips).hasSizeLessThanOrEqualTo(9);
        }
    }

    private static Length leftOf(BoardShapes.Strip strip, int k) {
        Length reach = strip.last().left().minus(strip.first().left());
        return strip.count() == 1
                ? strip.first().left()
                : strip.first().left().plus(reach.portion(k, strip.count() - 1));
    }

    private static void assertNear(Length told, Length actual) {
        assertThat(Math.abs(told.nanometres() - actual.nanometres())).isLessThanOrEqualTo(3);
    }
}
