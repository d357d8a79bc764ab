package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * The link traverse of the groma survey program (GeoSpark/groma, tests/test_calculation.py): K to V, in metres and degrees,
 * minutes and seconds; distances are means of both ways, angles differences of directions. Points to 0.001 m.
 */
class LinkTraverseReferenceTest {

    private static final Point K = metres(599767.21, 148946.70);
    private static final Point V = metres(599733.75, 149831.76);

    private static LinkTraverse.Builder legs() {
        return LinkTraverse.from(K, Bearing.ofAzimuth(Angle.parse("351-12-05")))
                .leg(Angle.parse("17-14-18"), mean(139.82, 139.85))
                .leg(Angle.parse("236-13-46").minus(Angle.parse("79-28-20")), mean(269.32, 269.36))
                .leg(Angle.parse("82-18-45").minus(Angle.parse("217-58-34")).normalized(), mean(169.40, 169.45))
                .leg(Angle.parse("41-18-10").minus(Angle.parse("262-18-44")).normalized(), mean(345.90, 345.94));
    }

    private static LinkTraverse traverse() {
        return legs().closingOn(
                        V,
                        Angle.parse("257-44-08").negated().normalized(),
                        Bearing.ofAzimuth(Angle.parse("270-47-46")));
    }

    private static Length mean(double there, double back) {
        return Length.ofMetres((there + back) / 2);
    }

    private static Point metres(double east, double north) {
        return Point.of(Length.ofMetres(east), Length.ofMetres(north));
    }

    @Test
    void angularMisclosureIsSpreadEqually() {
        // Published as known less observed: +28.0" over 5 angles.
        assertThat(traverse().angularMisclosure().degrees() * 3600).isCloseTo(-28.0, within(0.05));
        assertThat(traverse().correction().degrees() * 3600).isCloseTo(5.6, within(0.01));
    }

    @Test
    void linearMisclosure() {
        Closure closure = traverse().closure();
        // Published as known less reached: +0.0749 E, -0.0808 N.
        assertThat(closure.east().metres()).isCloseTo(-0.0749, within(0.0005));
        assertThat(closure.north().metres()).isCloseTo(0.0808, within(0.0005));
        assertThat(closure.misclosure().metres()).isCloseTo(0.1102, within(0.0005));
        assertThat(1 / closure.precision().value()).isCloseTo(8390, within(84.0));
    }

    @Test
    void adjustedPoints() {
        double[][] eastNorth = {
            {599787.74865, 149085.0079}, {599718.9691, 149345.3886}, {599802.5094, 149492.7786}, {599733.75, 149831.76}
        };
        for (int i = 0; i < eastNorth.length; i++) {
            Point point = traverse().points().get(i + 1);
            assertThat(point.east().metres()).isCloseTo(eastNorth[i][0], within(0.001));
            assertThat(point.north().metres()).isCloseTo(eastNorth[i][1], within(0.001));
        }
        assertThat(traverse().points().get(0)).isEqualTo(K);
        assertThat(traverse().findings()).isEmpty();
        assertThat(traverse().worksheet().result())
                .isEqualTo(traverse().closure().misclosure());
        assertThat(traverse().worksheet().toText())
                .contains("angular misclosure")
                .contains("-0°00'28\"")
                .contains("correction of each angle");
        assertThat(traverse()).hasToString("4 legs, angles miss by -0°00'28\", then 1 part in 8391");
    }

    @Test
    void grossErrorsAreTold() {
        LinkTraverse wrong = legs().closingOn(
                        metres(599734.75, 149831.76),
                        Angle.parse("102-25-52"),
                        Bearing.ofAzimuth(Angle.parse("270-47-46")));
        assertThat(wrong.findings())
                .extracting(Finding::code)
                .containsExactly("traverse-angles-miss", "traverse-closes-poorly");
    }

    @Test
    void aLoopClosesOnItsOwnPointAndDirection() {
        // From a mark in the west: north, and then square to the left each time, back to the first point.
        LinkTraverse.Builder loop = LinkTraverse.from(Point.ORIGIN, Bearing.WEST);
        for (int i = 0; i < 4; i++) {
            loop.leg(Angle.RIGHT, Length.ofFeet(10));
        }
        // The last leg arrives from the west, so the mark lies straight behind.
        LinkTraverse traverse = loop.closingOn(Point.ORIGIN, Angle.ZERO, Bearing.WEST);
        assertThat(traverse.angularMisclosure().abs())
                .isLessThan(Angle.ofDms(0, 0, 1).times(1e-6));
        assertThat(traverse.closure().misclosure().millimetres()).isLessThan(0.001);
        assertThat(traverse.points().get(2).east().feet()).isCloseTo(-10, within(1e-6));
        assertThat(traverse.points().get(2).north().feet()).isCloseTo(10, within(1e-6));
    }

    @Test
    void misuseIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinkTraverse.from(K, Bearing.NORTH).closingOn(V, Angle.ZERO, Bearing.NORTH))
                .withMessageContaining("no legs");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinkTraverse.from(K, Bearing.NORTH).leg(Angle.ofDegrees(-1), Length.ofFeet(1)))
                .withMessageContaining("angle of leg 1 was -1°");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinkTraverse.from(K, Bearing.NORTH).leg(Angle.ZERO, Length.ZERO))
                .withMessageContaining("distance of leg 1 was 0 in");
    }
}
