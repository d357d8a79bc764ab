package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** The tops over one opening of 4 ft, its bottoms 2 in over level ground unless they rise. */
class BayTopTest {

    private static final Length TWO = Length.ofInches(2);
    private static final Length BOARD = Length.ofFeet(6);

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static Profile line(double first, double last) {
        return Profile.of(List.of(
                new ProfilePoint(Length.ZERO, inches(first)), new ProfilePoint(Length.ofFeet(4), inches(last))));
    }

    private static BayTop over(Profile bottoms, TopShape shape) {
        return BayTop.over(bottoms, line(0, 0), shape, TWO, BOARD);
    }

    /** By hand: r = (24^2 + 6^2) / 12 = 51 in, and 12 in from the middle 6 - 51 + sqrt(51^2 - 12^2) = 4.5681 in. */
    @Test
    void anArchIsACircularArcOverTheOpening() {
        BayTop top = over(line(2, 2), TopShape.arched(inches(6)));
        assertThat(top.topAt(inches(24))).isEqualTo(inches(80));
        assertThat(top.topAt(inches(12)).inches()).isCloseTo(74 + 4.5681, within(0.0001));
        assertThat(top.topAt(Length.ZERO)).isEqualTo(inches(74));
        assertThat(top.topAt(inches(-3))).isEqualTo(inches(74));
        assertThat(top.boardLength(Interval.of(inches(21), inches(27)))).isEqualTo(inches(78));
        assertThat(top.longest()).isEqualTo(inches(78));
        assertThat(top.shortest()).isEqualTo(BOARD);
        assertThat(top.worksheet(inches(12)).result())
                .isEqualTo(top.topAt(inches(12)).minus(TWO));
        assertThat(top.findings("gate", inches(4))).isEmpty();
        assertThat(top.radius()).contains(inches(51));
        assertThat(top).hasToString("tops arched between posts by 6 in");
        assertThat(over(line(2, 2), TopShape.stepped()).radius()).isEmpty();
    }

    /** With the bottoms rising 2.4 in in 48, a board of 6 in stands on the line with its middle. */
    @Test
    void everyShapeOverRisingBottoms() {
        Profile rising = line(2, 4.4);
        Interval board = Interval.of(inches(6), inches(12));
        BayTop straight = over(rising, TopShape.straight());
        assertThat(straight.bottomAt(board.middle())).isEqualTo(inches(2.45));
        assertThat(straight.upperEdge(board))
                .extracting(ProfilePoint::elevation)
                .containsExactly(inches(74.45), inches(74.45));
        assertThat(over(rising, TopShape.stepped()).topAt(inches(6))).isEqualTo(inches(76.4));
        assertThat(over(rising, TopShape.followingGround()).topAt(inches(40))).isEqualTo(inches(74));
        assertThat(over(rising, TopShape.dipped(inches(3))).topAt(inches(24))).isEqualTo(inches(72.2));
        // An arch over the rise is cut higher on the board's upper edge: (24^2 + 3^2) / 6 = 97.5 in.
        BayTop arched = over(rising, TopShape.arched(inches(3)));
        assertThat(arched.boardLength(board).inches())
                .isCloseTo(72 + 0.15 + 3 - 97.5 + Math.sqrt(97.5 * 97.5 - 144), within(1e-6));
    }

    /** What was 6 in from the one end of uneven ground is as far from the other. */
    @Test
    void seenFromTheOtherSideItIsMirrored() {
        Profile ground = Profile.of(List.of(
                new ProfilePoint(inches(-10), Length.ZERO),
                new ProfilePoint(inches(20), inches(4)),
                new ProfilePoint(inches(60), inches(1))));
        for (TopShape shape : List.of(TopShape.followingGround(), TopShape.arched(inches(5)), TopShape.stepped())) {
            BayTop top = BayTop.over(line(6, 9), ground, shape, TWO, BOARD);
            for (double at = 0; at <= 48; at += 6) {
                assertThat(top.reversed().topAt(inches(-at))).isEqualTo(top.topAt(inches(at)));
                assertThat(top.reversed().bottomAt(inches(-at))).isEqualTo(top.bottomAt(inches(at)));
            }
        }
    }

    /** The same of an opening that does not begin at station zero. */
    @Test
    void anOpeningElsewhereIsMirroredToo() {
        Profile bottoms =
                Profile.of(List.of(new ProfilePoint(inches(12), inches(6)), new ProfilePoint(inches(60), inches(9))));
        Profile ground = Profile.of(
                List.of(new ProfilePoint(Length.ZERO, Length.ZERO), new ProfilePoint(inches(70), inches(2))));
        BayTop top = BayTop.over(bottoms, ground, TopShape.arched(inches(5)), TWO, BOARD);
        for (double at = 12; at <= 60; at += 6) {
            assertThat(top.reversed().topAt(inches(-at))).isEqualTo(top.topAt(inches(at)));
        }
        assertThat(top.reversed().bottomAt(inches(-12))).isEqualTo(inches(6));
    }

    @Test
    void tellsWhatTheTopsDoToTheRail() {
        assertThat(over(line(2, 2), TopShape.dipped(inches(5))).findings("gate", inches(4)))
                .extracting(Finding::code)
                .containsExactly("rail-above-boards");
        assertThat(over(line(2, 2), TopShape.arched(inches(30))).findings("gate", inches(4)))
                .extracting(Finding::code)
                .containsExactly("arch-limited");
        // Following ground that lies 80 in under the level bottoms, nothing is left of a board of 72 in.
        BayTop gone = BayTop.over(line(2, 2), line(-80, -80), TopShape.followingGround(), TWO, BOARD);
        assertThat(gone.findings("gate", inches(4))).extracting(Finding::code).containsExactly("no-board-left");
        assertThat(gone.topAt(inches(24))).isEqualTo(TWO);
    }

    @Test
    void refusesBottomsThatAreNotOneLine() {
        Profile bent = Profile.of(List.of(
                new ProfilePoint(Length.ZERO, TWO),
                new ProfilePoint(inches(20), TWO),
                new ProfilePoint(inches(40), Length.ZERO)));
        assertThatThrownBy(() -> over(bent, TopShape.straight()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bottoms had 3 points");
        assertThatThrownBy(() -> BayTop.over(line(2, 2), line(0, 0), TopShape.straight(), TWO, Length.ZERO))
                .hasMessageContaining("boardLength was 0");
    }
}
