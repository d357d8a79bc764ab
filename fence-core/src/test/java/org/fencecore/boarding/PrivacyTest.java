package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.junit.jupiter.api.Test;

class PrivacyTest {

    private static final BoardPattern SHADOWBOX = BoardPattern.shadowbox(in(5.5));
    private static final Length THICK = in(0.75);

    /*
     * By hand: lap 1 in, faces 1 1/2 in apart: atan(1 / 1.5) = 33.690 degrees. At 45 degrees the gap of 3 1/2 in loses 3/4
     * in to the thickness and sight lines move 1 1/2 in between the faces, 1/2 in past the lap: 0.5 / 9 is seen through.
     */
    @Test
    void aShadowboxWorkedByHand() {
        Privacy privacy = Privacy.of(SHADOWBOX, THICK, in(1.5));

        assertThat(privacy.solid()).isEqualTo(Ratio.of(1));
        assertThat(privacy.seeThroughFrom().orElseThrow().degrees()).isCloseTo(33.690, within(0.0005));
        assertThat(privacy.visibleAt(Angle.ZERO)).isEqualTo(Ratio.ZERO);
        assertThat(privacy.visibleAt(Angle.ofDegrees(33.6))).isEqualTo(Ratio.ZERO);
        assertThat(privacy.visibleAt(Angle.ofDegrees(45)).value()).isCloseTo(0.5 / 9, within(1e-12));
        assertThat(privacy.visibleAt(Angle.ofDegrees(-45)).value()).isCloseTo(0.5 / 9, within(1e-12));
        assertThat(privacy).hasToString("1 solid, seen through from 33.69 deg");
        assertThat(privacy.worksheet().result()).isEqualTo(privacy.solid());
        assertThat(privacy.worksheet().toText())
                .contains("lap = (width behind - gap) / 2 = (5.5 in - 3.5 in) / 2 = 1\"")
                .contains("atan(1 in / 1.5 in) = 33.69 deg");
    }

    /** The layout of the package: 11 boards in 94 1/2 in lap 1.05 in, so atan(1.05 / 1.5) = 34.992 degrees. */
    @Test
    void theExampleOfThePackage() {
        BoardLayout layout =
                BoardLayout.fit(Length.parse("7 ft 10 1/2 in"), BoardPattern.shadowbox(Length.ofInches(5.5)));
        Privacy privacy = Privacy.of(layout, THICK, Length.ofInches(1.5));

        assertThat(privacy.solid()).isEqualTo(Ratio.of(1));
        assertThat(privacy.seeThroughFrom().orElseThrow().degrees()).isCloseTo(34.992, within(0.0005));
    }

    @Test
    void openGapsAreSeenSquareAndCloseAtAnAngle() {
        // 3 1/2 in pickets 2 in apart: 3.5 / 5.5 solid; at 45 degrees 1 1/4 in of 5 1/2 is open; at atan(2 / 0.75)
        // none.
        Privacy privacy = Privacy.of(BoardPattern.spaced(in(3.5), in(2)), THICK, Length.ZERO);

        assertThat(privacy.solid().value()).isCloseTo(3.5 / 5.5, within(1e-12));
        assertThat(privacy.seeThroughFrom()).contains(Angle.ZERO);
        assertThat(privacy.visibleAt(Angle.ZERO).value()).isCloseTo(2 / 5.5, within(1e-12));
        assertThat(privacy.visibleAt(Angle.ofDegrees(45)).value()).isCloseTo(1.25 / 5.5, within(1e-12));
        assertThat(privacy.visibleAt(Angle.ofDegrees(69.5))).isEqualTo(Ratio.ZERO);
        // Three pickets with gaps at both ends in 20 in: 10.5 / 20.
        BoardLayout between =
                BoardLayout.fit(in(20), BoardPattern.spaced(in(3.5), in(2)).withGapAtEnds());
        assertThat(Privacy.of(between, THICK, Length.ZERO).solid().value()).isCloseTo(0.525, within(1e-12));
    }

    @Test
    void tightBoardsAndTouchingRowsAreClosed() {
        for (BoardPattern pattern : new BoardPattern[] {
            BoardPattern.sideBySide(in(5.5)),
            BoardPattern.boardOnBoard(in(5.5)),
            BoardPattern.boardAndBatten(in(5.5), in(2.5))
        }) {
            Privacy privacy = Privacy.of(pattern, THICK, in(1.5));
            assertThat(privacy.solid()).isEqualTo(Ratio.of(1));
            assertThat(privacy.seeThroughFrom()).isEmpty();
            assertThat(privacy.visibleAt(Angle.ofDegrees(60))).isEqualTo(Ratio.ZERO);
        }
        // 8 ft of tight boards with two ripped ones is closed all the same.
        BoardLayout ripped = BoardLayout.fit(Length.ofFeet(8), BoardPattern.sideBySide(in(5.5)));
        assertThat(ripped.ripped()).isNotEmpty();
        assertThat(Privacy.of(ripped, THICK, Length.ZERO).solid()).isEqualTo(Ratio.of(1));
    }

    @Test
    void thickBoardsBehindSmallGapsAreNeverSeenThrough() {
        // Lap 2 in at 1/2 in apart needs a tangent of 4, at which 3/4 in boards close 3 in; the gap is 1 1/2 in.
        Privacy privacy = Privacy.of(SHADOWBOX.withLap(in(2)), THICK, in(0.5));

        assertThat(privacy.seeThroughFrom()).isEmpty();
        for (int degrees = 0; degrees < 90; degrees++) {
            assertThat(privacy.visibleAt(Angle.ofDegrees(degrees))).isEqualTo(Ratio.ZERO);
        }
    }

    @Test
    void badInputIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Privacy.of(SHADOWBOX, in(-1), in(1.5)))
                .withMessageContaining("thickness was -1 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Privacy.of(SHADOWBOX, THICK, in(-1)))
                .withMessageContaining("between was -1 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Privacy.of(SHADOWBOX, THICK, in(1)).visibleAt(Angle.ofDegrees(90)))
                .withMessageContaining("within 90 degrees of square");
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
