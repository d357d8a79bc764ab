package org.fencecore.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Areas and perimeters: mitred offsets by JTS 1.20.0 (flat caps, mitre limit 100), equal to those of GEOS 3.11.1 to 1e-6,
 * computed once from these outlines.
 */
class InsetRingsTest {

    private static final Polygon RECTANGLE = lot(0, 0, 75, 0, 75, 120, 0, 120);
    private static final Polygon ELL = lot(0, 0, 100, 0, 100, 60, 60, 60, 60, 140, 0, 140);
    private static final Polygon YOU = lot(0, 0, 120, 0, 120, 80, 70, 80, 70, 30, 50, 30, 50, 80, 0, 80);

    private static Polygon lot(double... eastNorth) {
        return Polygon.of(IntStream.range(0, eastNorth.length / 2)
                .mapToObj(i -> Point.of(Length.ofFeet(eastNorth[2 * i]), Length.ofFeet(eastNorth[2 * i + 1])))
                .toList());
    }

    static Stream<Arguments> published() {
        return Stream.of(
                Arguments.of("rectangle", RECTANGLE, 0.5, 1, 8806.0, 386.0),
                Arguments.of("rectangle", RECTANGLE, 8.0, 1, 6136.0, 326.0),
                Arguments.of("rectangle", RECTANGLE, 37.6, 0, 0.0, 0.0),
                Arguments.of("L", ELL, 5.0, 1, 8500.0, 440.0),
                Arguments.of("L", ELL, 10.0, 1, 6400.0, 400.0),
                Arguments.of("L", ELL, 30.1, 0, 0.0, 0.0),
                Arguments.of("U", YOU, 5.0, 1, 6200.0, 460.0),
                Arguments.of("U", YOU, 14.9, 1, 2038.04, 380.8),
                Arguments.of("U", YOU, 15.1, 2, 1972.08, 278.4));
    }

    @ParameterizedTest(name = "{0} moved in by {2} ft")
    @MethodSource("published")
    void leavesTheAreasOfTwoGeneralLibraries(
            String name, Polygon lot, double feet, int pieces, double squareFeet, double perimeter) {
        for (Polygon turned : List.of(lot, lot.reversed())) {
            List<Polygon> left = inset(turned, Length.ofFeet(feet));
            assertThat(left).hasSize(pieces);
            assertThat(left).allMatch(piece -> piece.inside() == turned.inside());
            assertThat(left.stream()
                            .mapToDouble(piece -> piece.area().squareFeet())
                            .sum())
                    .isCloseTo(squareFeet, within(1e-6));
            assertThat(left.stream()
                            .mapToDouble(piece -> piece.perimeter().feet())
                            .sum())
                    .isCloseTo(perimeter, within(1e-6));
        }
    }

    @Test
    void keepsTheOrderOfTheSidesThatAreLeft() {
        assertThat(InsetRings.sides(YOU, Length.ofFeet(5))).containsExactly(List.of(0, 1, 2, 3, 4, 5, 6, 7));
        assertThat(InsetRings.sides(YOU, Length.parse("15.1 ft")))
                .containsExactly(List.of(0, 5, 6, 7), List.of(0, 1, 2, 3));
    }

    /** The cut corner of 2 ft is gone 5 ft inside: its neighbours meet instead. */
    @Test
    void losesAShortSide() {
        Polygon cut = lot(0, 0, 98, 0, 100, 2, 100, 80, 0, 80);
        assertThat(InsetRings.sides(cut, Length.ofFeet(5))).containsExactly(List.of(0, 2, 3, 4));
        assertThat(InsetRings.corner(cut, Length.ofFeet(5), 0, 2))
                .contains(Point.of(Length.ofFeet(95), Length.ofFeet(5)));
    }

    /** A curve of 2 degrees to a facet that bulges into the lot: no vertex may be skipped. */
    @Test
    void keepsEveryFacetOfAShallowHollow() {
        List<Point> points = new ArrayList<>(List.of(
                Point.of(Length.ofFeet(-60), Length.ofFeet(0)),
                Point.of(Length.ofFeet(60), Length.ofFeet(0)),
                Point.of(Length.ofFeet(60), Length.ofFeet(100))));
        for (int i = 10; i >= -10; i--) {
            double angle = Math.toRadians(2 * i);
            points.add(Point.of(
                    Length.ofFeet(150 * Math.sin(angle)), Length.ofFeet(100 - 20 + 150 * (1 - Math.cos(angle)))));
        }
        points.add(Point.of(Length.ofFeet(-60), Length.ofFeet(100)));
        Polygon lot = Polygon.of(points);
        assertThat(InsetRings.sides(lot, Length.ofFeet(4)))
                .containsExactly(IntStream.range(0, points.size()).boxed().toList());
    }

    private static List<Polygon> inset(Polygon lot, Length distance) {
        return InsetRings.sides(lot, distance).stream()
                .map(ring -> Polygon.of(IntStream.range(0, ring.size())
                        .mapToObj(i -> InsetRings.corner(
                                        lot, distance, ring.get((i + ring.size() - 1) % ring.size()), ring.get(i))
                                .orElseThrow())
                        .toList()))
                .toList();
    }
}
