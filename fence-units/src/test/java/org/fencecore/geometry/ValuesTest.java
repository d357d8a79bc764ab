package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.geometry.Geo.ft;
import static org.fencecore.geometry.Geo.lot;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fencecore.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Values are equal when their parts are, and different as soon as one part is. */
class ValuesTest {

    private static Stream<Arguments> types() {
        return Stream.of(
                type("bearings", () -> List.of(Bearing.ofAzimuth(Angle.ofDegrees(30)), Bearing.NORTH)),
                type(
                        "corners",
                        () -> List.of(
                                Corner.of(ft(1, 2), Bearing.NORTH, Bearing.EAST, Side.RIGHT),
                                Corner.of(ft(1, 3), Bearing.NORTH, Bearing.EAST, Side.RIGHT),
                                Corner.of(ft(1, 2), Bearing.SOUTH, Bearing.EAST, Side.RIGHT),
                                Corner.of(ft(1, 2), Bearing.NORTH, Bearing.WEST, Side.RIGHT),
                                Corner.of(ft(1, 2), Bearing.NORTH, Bearing.EAST, Side.LEFT))),
                type("polygons", () -> List.of(lot("0,0 3,0 3,4"), lot("0,0 3,0 3,5"))),
                type(
                        "polylines",
                        () -> List.of(
                                Polyline.of(List.of(ft(0, 0), ft(3, 0))), Polyline.of(List.of(ft(0, 0), ft(4, 0))))),
                type(
                        "right triangles",
                        () -> List.of(
                                RightTriangle.ofLegs(ft(3), ft(4)),
                                RightTriangle.ofLegs(ft(4), ft(3)),
                                RightTriangle.ofLegs(ft(3), ft(5)),
                                RightTriangle.ofLegs(ft(5), ft(4)))),
                type(
                        "stations",
                        () -> List.of(Station.of(ft(153.25)), Station.of(ft(153)), Station.ofMetric(ft(153.25)))),
                type(
                        "triangles",
                        () -> List.of(
                                Triangle.ofSides(ft(3), ft(4), ft(5)),
                                Triangle.ofSides(ft(4), ft(4), ft(5)),
                                Triangle.ofSides(ft(3), ft(5), ft(5)),
                                Triangle.ofSides(ft(3), ft(4), ft(6)))),
                type(
                        "zones",
                        () -> List.of(
                                Zone.around(ft(1, 2), ft(3)),
                                Zone.around(ft(1, 4), ft(3)),
                                Zone.around(ft(1, 2), ft(4)),
                                Zone.along(Polyline.of(List.of(ft(0, 0), ft(3, 0))), ft(3)),
                                Zone.inside(lot("0,0 3,0 3,4")),
                                Zone.inside(lot("0,0 3,0 3,5")),
                                Zone.everywhere())));
    }

    private static Arguments type(String name, Supplier<List<?>> different) {
        return Arguments.of(name, different);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("types")
    void areEqualWhenTheirPartsAre(String type, Supplier<List<?>> different) {
        List<?> once = different.get();
        List<?> again = different.get();

        Set<Integer> hashes = new HashSet<>();
        for (int i = 0; i < once.size(); i++) {
            for (int j = 0; j < again.size(); j++) {
                assertThat(once.get(i).equals(again.get(j)))
                        .as("%s: %s and %s", type, once.get(i), again.get(j))
                        .isEqualTo(i == j);
            }
            assertThat(once.get(i)).hasSameHashCodeAs(again.get(i)).isNotEqualTo("a text");
            hashes.add(once.get(i).hashCode());
        }
        assertThat(hashes).as("hashes tell them apart").hasSameSizeAs(once);
    }
}
