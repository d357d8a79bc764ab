package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class ZoneTest {

    private static final Segment FENCE = Segment.of(at(0, 0), at(100, 0));
    private static final Polyline SQUARE_TO_IT = Polyline.of(List.of(at(30, -50), at(30, 50)));

    private static Point at(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    private static Interval feet(double start, double end) {
        return Interval.of(Length.ofFeet(start), Length.ofFeet(end));
    }

    @Test
    void anEasementIsCrossedSquare() {
        Zone easement = Zone.along(SQUARE_TO_IT, Length.ofFeet(5));

        assertThat(easement.stretchesOf(FENCE, Length.ZERO)).containsExactly(feet(25, 35));
        assertThat(easement.stretchesOf(FENCE, Length.ofInches(6))).containsExactly(feet(24.5, 35.5));
        assertThat(easement.widenedBy(Length.ofFeet(1)).stretchesOf(FENCE, Length.ofFeet(-2)))
                .containsExactly(feet(26, 34));
        assertThat(easement.line()).contains(SQUARE_TO_IT);
        assertThat(easement.margin()).isEqualTo(Length.ofFeet(5));
    }

    @Test
    void aHoleReachesInWhenItsEdgeIsPastTheMargin() {
        Zone roots = Zone.around(at(50, 5), Length.ofFeet(4));

        assertThat(roots.isReachedFrom(at(50, 0), Length.ofFeet(1)))
                .as("touches")
                .isFalse();
        assertThat(roots.isReachedFrom(at(50, 0), Length.ofInches(12.5))).isTrue();
        assertThat(roots.stretchesOf(FENCE, Length.ofFeet(9))).containsExactly(feet(38, 62));
        assertThat(Zone.along(SQUARE_TO_IT, Length.ofFeet(5)).isReachedFrom(at(36, 0), Length.ofFeet(2)))
                .isTrue();
        assertThat(Zone.along(SQUARE_TO_IT, Length.ofFeet(5)).isReachedFrom(at(37, 0), Length.ofFeet(2)))
                .as("touches")
                .isFalse();
    }

    @Test
    void anAreaHoldsItsInsideAndItsBoundary() {
        Zone yard = Zone.inside(Polygon.of(List.of(at(20, 0), at(40, 0), at(40, 30), at(20, 30))));

        assertThat(yard.stretchesOf(FENCE, Length.ZERO)).containsExactly(feet(20, 40));
        assertThat(yard.stretchesOf(FENCE, Length.ofFeet(-1))).containsExactly(feet(20, 40));
        assertThat(yard.widenedBy(Length.ofFeet(2)).stretchesOf(FENCE, Length.ofFeet(1)))
                .containsExactly(feet(17, 43));
        assertThat(yard.isReachedFrom(at(20, 0), Length.ZERO)).isTrue();
        assertThat(yard.isReachedFrom(at(18, 0), Length.ofFeet(2))).isFalse();
        assertThat(yard.isReachedFrom(at(18, 0), Length.ofFeet(2.1))).isTrue();
    }

    @Test
    void everywhereIsTheWholeLine() {
        assertThat(Zone.everywhere().stretchesOf(FENCE, Length.ZERO)).containsExactly(feet(0, 100));
        assertThat(Zone.everywhere().isReachedFrom(at(-7, 8), Length.ZERO)).isTrue();
        assertThat(Zone.everywhere().widenedBy(Length.ofFeet(1))).isEqualTo(Zone.everywhere());
        assertThat(Zone.everywhere()).hasToString("everywhere");
    }

    @Test
    void saysWhereItLies() {
        Polygon yard = Polygon.of(List.of(at(20, 0), at(40, 0), at(40, 30)));

        assertThat(Zone.around(at(0, 0), Length.ofFeet(2))).hasToString("within 2 ft of (E 0 in, N 0 in)");
        assertThat(Zone.around(at(0, 0), Length.ZERO)).hasToString("within 0 in of (E 0 in, N 0 in)");
        assertThat(Zone.along(SQUARE_TO_IT, Length.ofFeet(2))).hasToString("within 2 ft of " + SQUARE_TO_IT);
        assertThat(Zone.inside(yard)).hasToString("in " + yard);
        assertThat(Zone.inside(yard).widenedBy(Length.ofFeet(2))).hasToString("within 2 ft of " + yard);
        assertThat(Zone.inside(yard).area()).contains(yard);
        assertThat(Zone.around(at(1, 2), Length.ofFeet(2)).point()).contains(at(1, 2));
    }

    @Test
    void refusesAReachThatIsNone() {
        assertThatThrownBy(() -> Zone.around(Point.ORIGIN, Length.ofFeet(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("radius was -1 ft")
                .hasMessageContaining("from 0 to 1,000,000 km");
        assertThat(Zone.around(Point.ORIGIN, Length.ofMetres(1e9)).margin()).isEqualTo(Length.ofMetres(1e9));
        assertThatThrownBy(() -> Zone.around(Point.ORIGIN, Length.ofMetres(1e9)).widenedBy(Length.ofNanometres(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("margin was ");
        assertThatThrownBy(() -> Zone.everywhere().widenedBy(Length.ofFeet(-1)))
                .hasMessageContaining("distance was -1 ft");
    }
}
