package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class CornerBoardsTest {

    /* 4x4 post, 1 1/2 in rails outside it: the backs are 1 3/4 + 1 1/2 out, and the lap is a board thick. */
    @Test
    void theExample() {
        CornerBoards boards = CornerBoards.at(corner(-10, 0, Side.LEFT), in(3.25), in(0.75));
        assertThat(boards.arrivingPast()).isEqualTo(in(3.25));
        assertThat(boards.leavingBefore()).isEqualTo(in(4));
        assertThat(boards.bevel().degrees()).isCloseTo(0, offset(1e-9));
        assertThat(boards.worksheet().result()).isEqualTo(boards.leavingBefore());
        assertThat(boards).hasToString("arriving boards 3 1/4\" past the post, leaving ones from 4\" before it");
    }

    /* Round a corner that points into the lot the outside is the short way: 3 1/4 in before the post, less the lap. */
    @Test
    void aCornerThatPointsIntoTheLot() {
        CornerBoards boards = CornerBoards.at(corner(-10, 0, Side.RIGHT), in(3.25), in(0.75));
        assertThat(boards.arrivingPast()).isEqualTo(in(-3.25));
        assertThat(boards.leavingBefore()).isEqualTo(in(-4));
    }

    /* A turn of 45 degrees: 3.25 x tan 22.5 = 1.34619 in, and 0.75 x sin 135 = 0.53033 in of lap. */
    @Test
    void aCornerOf135Degrees() {
        CornerBoards boards = CornerBoards.at(corner(-10, 10, Side.LEFT), in(3.25), in(0.75));
        assertThat(boards.arrivingPast().inches()).isCloseTo(1.34619, offset(1e-5));
        assertThat(boards.leavingBefore().inches()).isCloseTo(1.87652, offset(1e-5));
        assertThat(boards.bevel().degrees()).isCloseTo(45, offset(1e-9));
    }

    @Test
    void lengthsAreOutwards() {
        Corner square = corner(-10, 0, Side.LEFT);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CornerBoards.at(square, in(-1), in(0.75)))
                .withMessageContaining("backs were");
    }

    /** Comes north to the corner and leaves to a place east and north of it. */
    private static Corner corner(double east, double north, Side inside) {
        return Corner.of(
                Point.of(Length.ZERO, Length.ofFeet(-10)),
                Point.ORIGIN,
                Point.of(Length.ofFeet(east), Length.ofFeet(north)),
                inside);
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
