package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;
import static org.fencecore.geometry.Geo.lot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Boundaries against published descriptions of land, and against two other geometry libraries. */
class PolygonReferenceTest {

    @ParameterizedTest(name = "{0} inset {2} ft")
    @CsvFileSource(
            files = "src/test/resources/reference/geometry/mitre-offsets.csv",
            delimiter = '|',
            useHeadersInDisplayName = true)
    void insetsAgreeWithJtsAndGeos(String name, String vertices, double distance, String area, String perimeter) {
        Optional<Polygon> inset = lot(vertices).inset(ft(distance));

        if (area.equals("none")) {
            assertThat(inset).as(name).isEmpty();
            return;
        }
        assertThat(inset.orElseThrow().area().squareFeet()).isCloseTo(Double.parseDouble(area), within(2e-6));
        assertThat(inset.orElseThrow().perimeter().feet()).isCloseTo(Double.parseDouble(perimeter), within(1e-6));
    }

    /** Vertices computed with JTS 1.20.0 and GEOS 3.11.1, mitre limit 100, printed to 6 decimals of a foot. */
    @Test
    void insetVerticesAgreeWithJtsAndGeos() {
        Polygon eo7893 = lot(
                "0,0 -33.5046,104.7733 287.9970,207.5837 349.2373,213.7502 360.2580,104.3037" + " 310.5096,99.2943");
        Polygon expected = lot("6.478981,12.570688 -20.933883,98.294329 290.043166,197.739168 340.289496,202.798646"
                + " 349.306433,113.251505 308.463444,109.138832");
        Polygon inset = eo7893.inset(ft(10)).orElseThrow();

        for (int i = 0; i < 6; i++) {
            assertThat(inset.vertices().get(i).distanceTo(expected.vertices().get(i)))
                    .isLessThan(ft(1e-6));
        }
        assertThat(lot("0,0 100,0 100,60 60,60 60,140 0,140").inset(ft(5)))
                .contains(lot("5,5 95,5 95,55 55,55 55,135 5,135"));
        // One corner of this strip is reflex by 11.98 degrees.
        assertThat(eo7893.corner(5).isReflex()).isTrue();
        assertThat(eo7893.corner(5).interiorAngle().degrees()).isCloseTo(191.98, within(0.005));
    }

    /** US Executive Order 7893 (Upolu Point, Hawaii): azimuths from south; 0.979 acre. */
    @Test
    void executiveOrder7893() {
        List<Point> points = walk(
                Point.ORIGIN,
                "162-16-00 110.00, 252-16-00 337.54, 264-15-00 61.55, "
                        + "354-15-00 110.00, 84-15-00 50.00, 72-16-00 326.00");
        Polygon lot = Polygon.of(points.subList(0, 6));

        assertThat(points.get(6).distanceTo(Point.ORIGIN).feet()).isCloseTo(0.0012, within(5e-5)); // computed
        assertThat(lot.area().acres()).isCloseTo(0.979, within(5e-4));
        assertThat(lot.firstSelfCrossing()).isEmpty();
    }

    /**
     * US Executive Order 7804 (1938): azimuths from south; 3365 square feet. As printed in one transcription the first
     * course is 287°00' and the boundary fails to close by 76.93 ft; with 237°00' it closes and has the stated area.
     */
    @Test
    void executiveOrder7804() {
        String rest = ", 318-06-00 40.60, 57-00-00 76.85, 120-00-00 45.00";
        List<Point> printed = walk(Point.ORIGIN, "287-00-00 91.00" + rest);
        List<Point> corrected = walk(Point.ORIGIN, "237-00-00 91.00" + rest);
        Polygon lot = Polygon.of(corrected.subList(0, 4));

        assertThat(printed.get(4).distanceTo(Point.ORIGIN).feet()).isCloseTo(76.93, within(0.005)); // computed
        assertThat(corrected.get(4).distanceTo(Point.ORIGIN).feet()).isCloseTo(0.0160, within(5e-5)); // computed
        assertThat(lot.area().squareFeet()).isCloseTo(3365, within(1.5));
        // Interior angles from the stated azimuths; the first closes the figure, so it takes up the misclosure.
        double[] angles = {63.00, 98.90, 81.10, 117.00};
        for (int i = 0; i < 4; i++) {
            assertThat(lot.corner(i).interiorAngle().degrees()).isCloseTo(angles[i], within(0.03));
        }
    }

    /** Lubbock, Texas, Resolution 1305 (1983): 1466 square feet, 0.0337 acre. */
    @Test
    void lubbockResolution1305() {
        Point b = Point.ORIGIN.plus(Bearing.parse("S89°18'W"), ft(146.6));
        Point c = b.plus(Bearing.parse("N0°40'W"), ft(10));
        Point d = c.plus(Bearing.parse("N89°18'E"), ft(146.6));
        Polygon lot = Polygon.of(List.of(Point.ORIGIN, b, c, d));

        assertThat(d.plus(Bearing.parse("S0°40'E"), ft(10)).distanceTo(Point.ORIGIN))
                .isLessThan(ft(1e-8));
        assertThat(lot.area().squareFeet()).isCloseTo(1466, within(0.005));
        assertThat(lot.area().acres()).isCloseTo(0.0337, within(5e-5));
        assertThat(lot.inside()).isEqualTo(Side.RIGHT);
        assertThat(lot.corner(0).interiorAngle().degrees()).isCloseTo(90 + 2 / 60.0, within(1e-6));
        assertThat(lot.corner(1).interiorAngle().degrees()).isCloseTo(89 + 58 / 60.0, within(1e-6));
        assertThat(lot.corner(2).interiorAngle().degrees()).isCloseTo(90 + 2 / 60.0, within(1e-6));
    }

    /** Open Access Surveying Library, coordinate geometry ch. H: cross sums 2,190,612 and 1,909,624, area 140,494 square feet. */
    @Test
    void areaByCoordinates() {
        // Printed north first: C 406.31,1259.97; D 235.12,1489.47; E 65.81,1126.40; A 317.89,942.04; B 675.32,1282.54.
        Polygon parcel = lot("1259.97,406.31 1489.47,235.12 1126.40,65.81 942.04,317.89 1282.54,675.32");

        assertThat(parcel.area().squareFeet()).isCloseTo(140_494, within(1.0));
        assertThat(parcel.area().squareFeet()).isCloseTo(140_493.11, within(0.005)); // computed from the coordinates
    }

    /** Purdue University ASM 215, traverse calculations: adjusted coordinates printed to 0.01 ft. */
    @Test
    void areaOfTheAdjustedTraverse() {
        // End N/E of legs A to E: 10255.96,10125.66; 10102.44,10716.31; 9408.37,10523.62; 9611.34,10517.55;
        // 10000,10000.
        Polygon parcel = lot("10125.66,10255.96 10716.31,10102.44 10523.62,9408.37 10517.55,9611.34 10000,10000");

        // The area is computed by the compass rule from the unrounded courses, not printed on the page.
        assertThat(parcel.area().squareFeet()).isCloseTo(272_611.24, within(10.0));
        assertThat(parcel.area().acres()).isCloseTo(6.2583, within(3e-4));
    }

    private static List<Point> walk(Point start, String courses) {
        List<Point> points = new ArrayList<>(List.of(start));
        for (String course : courses.split(", ", -1)) {
            String[] parts = course.split(" ", -1);
            points.add(points.get(points.size() - 1)
                    .plus(Bearing.ofAzimuthFromSouth(Angle.parse(parts[0])), ft(Double.parseDouble(parts[1]))));
        }
        return points;
    }
}
