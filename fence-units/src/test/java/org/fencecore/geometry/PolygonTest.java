package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;
import static org.fencecore.geometry.Geo.lot;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class PolygonTest {

    private static final Polygon LOT = lot("0,0 75,0 75,120 0,120");
    private static final Polygon L = lot("0,0 100,0 100,60 60,60 60,140 0,140");
    private static final Polygon BOW_TIE = lot("0,0 10,10 10,0 0,10");

    @Test
    void aRectangularLot() {
        assertThat(LOT.area().squareFeet()).isCloseTo(9000, within(1e-9));
        assertThat(LOT.perimeter()).isEqualTo(ft(390));
        assertThat(LOT.inside()).isEqualTo(Side.LEFT);
        assertThat(LOT.inset(ft(5))).contains(lot("5,5 70,5 70,115 5,115"));
        assertThat(LOT.inset(ft(5)).orElseThrow().area().squareFeet()).isCloseTo(7150, within(1e-9));
        assertThat(LOT.inset(ft(37.5))).isEmpty();
        assertThat(LOT.inset(ft(0))).contains(LOT);
        assertThat(LOT.inset(ft(-5))).contains(lot("-5,-5 80,-5 80,125 -5,125"));
        assertThat(LOT.firstSelfCrossing()).isEmpty();
        assertThat(LOT.side(3)).isEqualTo(Segment.of(ft(0, 120), ft(0, 0)));
        assertThat(LOT.sides()).hasSize(4);
    }

    @Test
    void theOtherWayRound() {
        Polygon clockwise = LOT.reversed();

        assertThat(clockwise).isEqualTo(lot("0,0 0,120 75,120 75,0"));
        assertThat(clockwise.inside()).isEqualTo(Side.RIGHT);
        assertThat(clockwise.area()).isEqualTo(LOT.area());
        assertThat(clockwise.inset(ft(5))).contains(lot("5,5 5,115 70,115 70,5"));
        assertThat(clockwise.corner(0).interiorAngle().degrees()).isCloseTo(90, within(1e-12));
        assertThat(clockwise.corner(0).arriving()).isEqualTo(Bearing.WEST);
    }

    @Test
    void theInnerCornerOfAnL() {
        assertThat(L.corner(3).isReflex()).isTrue();
        assertThat(L.corner(3).interiorAngle().degrees()).isCloseTo(270, within(1e-12));
        assertThat(L.corner(2).isReflex()).isFalse();
        assertThat(L.inset(ft(5))).contains(lot("5,5 95,5 95,55 55,55 55,135 5,135"));
    }

    @Test
    void knowsInsideFromOutside() {
        assertThat(L.contains(ft(30, 100))).isTrue();
        assertThat(L.contains(ft(80, 30))).isTrue();
        assertThat(L.contains(ft(80, 100))).isFalse();
        assertThat(L.contains(ft(60, 60))).isTrue();
        assertThat(L.contains(ft(80, 60))).isTrue();
        assertThat(L.contains(ft(-1, 60))).isFalse();
        assertThat(L.contains(ft(-1, 0))).isFalse();
        assertThat(L.contains(ft(50, 140))).isTrue();
        assertThat(L.contains(Point.at(Length.ofFeet(100).nanometres() + 1, 1))).isFalse();
        assertThat(L.reversed().contains(ft(30, 100))).isTrue();
    }

    @Test
    void tellsWhereItCrossesItself() {
        assertThat(BOW_TIE.firstSelfCrossing()).contains(new SelfCrossing(0, 2, ft(5, 5)));
        assertThatThrownBy(() -> BOW_TIE.inset(ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sides 0 and 2 of the boundary meet at " + ft(5, 5));
    }

    @Test
    void touchingItselfCountsAsCrossing() {
        assertThat(lot("0,0 10,0 10,10 5,0 0,10").firstSelfCrossing()).contains(new SelfCrossing(0, 2, ft(5, 0)));
        assertThat(lot("0,0 10,0 5,0 5,10").firstSelfCrossing()).contains(new SelfCrossing(0, 1, ft(10, 0)));
        assertThat(lot("5,0 5,10 0,0 10,0").firstSelfCrossing()).contains(new SelfCrossing(0, 2, ft(5, 0)));
        assertThat(lot("0,0 5,10 10,0 -3,0").firstSelfCrossing()).contains(new SelfCrossing(0, 2, ft(0, 0)));
        assertThat(lot("10,0 0,0 5,0").firstSelfCrossing()).contains(new SelfCrossing(0, 1, ft(0, 0)));
        assertThat(lot("0,0 10,0 10,10 6,0 4,0 0,10").firstSelfCrossing()).isPresent();
        // A corner of later sides touches the first from the west.
        assertThat(lot("5,0 5,20 20,20 20,-10 -10,-10 -10,5 5,10 -5,0").firstSelfCrossing())
                .contains(new SelfCrossing(0, 5, ft(5, 10)));
        // A later side runs along the first: past its end as far as 4 ft, and past both its ends.
        assertThat(lot("0,0 10,0 10,10 12,10 12,0 4,0 4,20 0,20").firstSelfCrossing())
                .contains(new SelfCrossing(0, 4, ft(4, 0)));
        assertThat(lot("0,0 10,0 10,10 12,10 12,0 -4,0 -4,20 0,20").firstSelfCrossing())
                .contains(new SelfCrossing(0, 4, ft(0, 0)));
    }

    @Test
    void aPointOnAStraightSideIsNoCrossing() {
        Polygon lot = lot("0,0 30,0 75,0 75,120 0,120");

        assertThat(lot.firstSelfCrossing()).isEmpty();
        assertThat(lot.corner(1).interiorAngle()).isEqualTo(Angle.STRAIGHT);
        assertThat(lot.inset(ft(5))).contains(lot("5,5 30,5 70,5 70,115 5,115"));
    }

    @Test
    void noInsetWhenTheNeckIsTooNarrow() {
        // No side vanishes at 6 ft, but the neck between the two yards is 10 ft wide.
        Polygon dumbbell = lot("0,0 50,0 50,20 90,20 90,0 140,0 140,50 90,50 90,30 50,30 50,50 0,50");

        assertThat(dumbbell.inset(ft(4.9))).isPresent();
        assertThat(dumbbell.inset(ft(6))).isEmpty();
    }

    @Test
    void refusesWhatIsNoBoundary() {
        assertThatThrownBy(() -> lot("0,0 1,1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of points was 2; give from 3");
        assertThatThrownBy(() -> lot("0,0 1,1 2,0 0,0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("leave out the last");
        assertThatThrownBy(() -> lot("0,0 1,1 1,1 2,0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("points 1 and 2");
    }

    @Test
    void checksTenThousandVerticesForCrossings() {
        List<Point> comb = new ArrayList<>();
        for (int i = 0; i < 5_000; i++) {
            comb.add(Point.of(Length.ofMetres(i), Length.ofMetres(i % 2)));
        }
        for (int i = 4_999; i >= 0; i--) {
            comb.add(Point.of(Length.ofMetres(i), Length.ofMetres(2 + i % 2)));
        }

        assertThat(Polygon.of(comb).firstSelfCrossing()).isEmpty();
        comb.set(9_000, Point.of(Length.ofMetres(1_000), Length.ofMetres(-1)));
        assertThat(Polygon.of(comb).firstSelfCrossing()).isPresent();
    }

    @Test
    void aRoundOfAnyNumberOfSidesIsSound() {
        // Around the numbers of sides at which the search starts another block.
        for (int n : new int[] {63, 64, 65, 127, 128, 129}) {
            List<Point> round = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                round.add(Point.ORIGIN.plus(Bearing.ofAzimuth(Angle.ofDegrees(360.0 * i / n)), ft(100)));
            }
            assertThat(Polygon.of(round).firstSelfCrossing()).as("%s sides", n).isEmpty();
            round.set(n - 1, Point.ORIGIN.plus(Bearing.EAST, ft(200)));
            assertThat(Polygon.of(round).firstSelfCrossing()).as("%s sides", n).isPresent();
        }
    }

    @Test
    void saysWhichVerticesItHas() {
        assertThat(lot("0,0 3,0 3,4")).hasToString("Polygon[" + ft(0, 0) + ", " + ft(3, 0) + ", " + ft(3, 4) + "]");
    }
}
