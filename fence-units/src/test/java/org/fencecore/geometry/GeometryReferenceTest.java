package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;

import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Courses, slopes, corners and stations against published figures. */
class GeometryReferenceTest {

    /** Of a traverse text: bearing, length, latitude and departure in feet. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            # NAVEDTRA 14071, Engineering Aid Advanced, p. 7-9
            S61°25'E    | 520.16 | -248.86  |  456.76  | 0.005
            # Purdue University ASM 215, traverse calculations, legs A to E
            N26°10'E    | 285.10 |  255.88  |  125.72  | 0.006
            S75°25'E    | 610.45 | -153.70  |  590.78  | 0.006
            S15°30'W    | 720.48 | -694.28  | -192.54  | 0.006
            N1°42'W     | 203.00 |  202.91  |   -6.02  | 0.006
            N53°06'W    | 647.02 |  388.48  | -517.41  | 0.006
            # Open Access Surveying Library, traverse computations, bearing traverse, legs AB to DA
            S68°05'35"W | 472.68 | -176.357 | -438.548 | 0.0006
            N19°46'00"W | 216.13 |  203.395 |  -73.093 | 0.0006
            N45°55'20"E | 276.52 |  192.357 |  198.651 | 0.0006
            S54°59'15"E | 382.24 | -219.312 |  313.065 | 0.0006
            # A four-course text problem, copy at justaaa.com/civil-engineering/19749
            N22°36'40"W | 314.02 |  289.883 | -120.733 | 0.001
            S60°39'24"W | 264.49 | -129.611 | -230.556 | 0.001
            S38°46'10"E | 213.50 | -166.460 |  133.691 | 0.001
            N88°22'58"E | 217.69 |    6.144 |  217.603 | 0.001
            """)
    void latitudesAndDepartures(String bearing, double length, double latitude, double departure, double tolerance) {
        Point end = Point.ORIGIN.plus(Bearing.parse(bearing), ft(length));

        assertThat(end.north().feet()).isCloseTo(latitude, within(tolerance));
        assertThat(end.east().feet()).isCloseTo(departure, within(tolerance));
    }

    /**
     * Open Access Surveying Library, traverse computations: the adjusted bearing traverse from A = N 500.000, E 2000.000, to 0.001 ft
     * and 1 second. The page prints the length of CD as 276.479, a swap of digits: its coordinates give 276.497.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            AB | 500.000 | 2000.000 | S68°05'27.4"W | 472.715 | 323.614 | 1561.426
            BC | 323.614 | 1561.426 | N19°46'14.9"W | 216.122 | 526.996 | 1488.321
            CD | 526.996 | 1488.321 | N45°55'20.7"E | 276.497 | 719.336 | 1686.956
            DA | 719.336 | 1686.956 | S54°58'58.0"E | 382.237 | 500.000 | 2000.000
            """)
    void walkingAndMeasuringAnAdjustedTraverse(
            String leg, double north, double east, String bearing, double length, double endNorth, double endEast) {
        Point start = ft(east, north);
        Point end = ft(endEast, endNorth);

        assertThat(start.plus(Bearing.parse(bearing), ft(length)).distanceTo(end))
                .isLessThan(ft(0.002));
        assertThat(start.distanceTo(end).feet()).as(leg).isCloseTo(length, within(0.001));
        assertThat(start.bearingTo(end).turnTo(Bearing.parse(bearing)).abs()).isLessThan(Angle.ofDms(0, 0, 1));
    }

    /** Test values of the groma survey program (GeoSpark/groma, tests/test_calculation.py), to 0.0001 m. */
    @Test
    void intersectionOfTwoBearings() {
        Point a = Point.of(Length.ofMetres(100), Length.ofMetres(200));
        Point b = Point.of(Length.ofMetres(150), Length.ofMetres(250));
        Length far = Length.ofMetres(1000);
        Segment fromA = Segment.of(a, a.plus(Bearing.ofAzimuth(Angle.ofDegrees(25)), far));
        Segment fromB = Segment.of(b, b.plus(Bearing.ofAzimuth(Angle.ofDegrees(310)), far));

        Point crossing = fromA.intersection(fromB).orElseThrow();

        assertThat(crossing.east().metres()).isCloseTo(130.8201, within(6e-5));
        assertThat(crossing.north().metres()).isCloseTo(266.0939, within(6e-5));
    }

    /**
     * The same program's polar points: direction on the circle plus the orientation of the station, which is given to
     * the second; half a second is 0.0005 m at the distance of these points.
     */
    @ParameterizedTest
    @CsvSource({"145-10-16, 206.17, 13270.4141, 12480.4691", "201-30-47, 219.38, 13267.5785, 12681.6903"})
    void polarPoints(String direction, double distance, double east, double north) {
        Point station = Point.of(Length.ofMetres(13456.25), Length.ofMetres(12569.75));
        Bearing sight = Bearing.ofAzimuth(Angle.parse("99-10-05")).plus(Angle.parse(direction));

        Point shot = station.plus(sight, Length.ofMetres(distance));

        assertThat(shot.east().metres()).isCloseTo(east, within(5e-4));
        assertThat(shot.north().metres()).isCloseTo(north, within(5e-4));
    }

    /** NPTEL surveying course, module 4, lecture on profile levelling: stations of 100, 153.25 is 1+53.25. */
    @Test
    void stations() {
        assertThat(Station.ofMetric(Length.ofMetres(153.25))).hasToString("1+53.25");
        assertThat(Station.of(ft(153.25))).hasToString("1+53.25");
        assertThat(Station.of(ft(0))).hasToString("0+00.00");
    }

    /** civilnoteppt.com: a 30 m tape with its ends 0.70 m apart in height reaches 29.99183 m level. */
    @Test
    void slopeOfATape() {
        RightTriangle tape = RightTriangle.ofLegAndHypotenuse(Length.ofMetres(0.70), Length.ofMetres(30));

        assertThat(tape.legB().metres()).isCloseTo(29.99183, within(5e-6));
    }

    /** assignmentexpert.com question 259114: 756.52 m measured at 15°25' is 729.30 m level. */
    @Test
    void slopeDistanceToLevel() {
        RightTriangle grade = RightTriangle.ofHypotenuseAndAngle(Length.ofMetres(756.52), Angle.ofDms(15, 25, 0));

        assertThat(grade.legA().metres()).isCloseTo(729.30, within(0.005));
    }

    /**
     * Diagonals for squaring, in feet. 35 by 40 and 30-40-50: NAVEDTRA 14043, fig. 5-16 ("approximately 53.1"); 50 by 84
     * is 97 ft 9 1/16 in: a pole-building construction manual. 300-400-500 mm: Canadian Wood-Frame House Construction.
     */
    @ParameterizedTest
    @CsvSource({"35, 40, 53.1, 0.06", "30, 40, 50, 1e-9", "50, 84, 97.7552, 0.0026", "0.3, 0.4, 0.5, 1e-9"})
    void diagonalsOfSquareCorners(double a, double b, double diagonal, double tolerance) {
        assertThat(RightTriangle.ofLegs(ft(a), ft(b)).hypotenuse().feet()).isCloseTo(diagonal, within(tolerance));
        assertThat(Corner.of(ft(0, a), Point.ORIGIN, ft(b, 0), Side.LEFT)
                        .diagonal(ft(a), ft(b))
                        .feet())
                .isCloseTo(diagonal, within(tolerance));
    }

    /** Law of cosines, computed independently: two legs, the corner's angle, the distance between the marks. */
    @ParameterizedTest
    @CsvSource({
        "10, 10, 60, 10.0000",
        "10, 10, 75, 12.1752",
        "10, 10, 100, 15.3209",
        "10, 10, 105, 15.8671",
        "10, 10, 120, 17.3205",
        "10, 10, 135, 18.4776",
        "6, 8, 85, 9.5725",
        "6, 8, 95, 10.4099",
        "20, 30, 82.5, 33.8137"
    })
    void marksOnTheLegsOfAnyCorner(double a, double b, double angle, double across) {
        Triangle triangle = Triangle.ofTwoSides(ft(a), ft(b), Angle.ofDegrees(angle));

        assertThat(triangle.c().feet()).isCloseTo(across, within(5e-5));
        assertThat(triangle.angleC().degrees()).isCloseTo(angle, within(1e-6));
    }

    /** How far out of square a corner is when its diagonal is too long, computed independently, in degrees. */
    @ParameterizedTest
    @CsvSource({"3, 4, 0.125, 90.2489", "6, 8, 0.125, 90.1244", "9, 12, 0.125, 90.0829", "20, 30, 0.25, 90.0718"})
    void diagonalTooLong(double a, double b, double inchesTooLong, double angle) {
        RightTriangle corner = RightTriangle.ofLegs(ft(a), ft(b));
        Length measured = corner.hypotenuse().plus(Length.ofInches(inchesTooLong));

        assertThat(corner.outOfSquare(measured).degrees()).isCloseTo(angle - 90, within(5.1e-5));
    }

    /** Braces, in inches: NAVEDTRA 14044, pp. 2-8 and 2-9, length of brace of a framing square. */
    @ParameterizedTest
    @CsvSource({"24, 24, 33.94", "27, 27, 38.18", "30, 30, 42.43", "8, 8, 11.31", "40, 40, 56.57", "18, 24, 30"})
    void braces(double rise, double run, double brace) {
        assertThat(RightTriangle.ofLegs(Length.ofInches(rise), Length.ofInches(run))
                        .hypotenuse()
                        .inches())
                .isCloseTo(brace, within(0.005));
    }

    /** Length of common rafter per foot of run for a rise of 2 to 18 in: NAVEDTRA 14044, fig. 2-17. */
    @Test
    void lengthsPerFootOfRun() {
        double[] perFoot = {
            12.17, 12.37, 12.65, 13.00, 13.42, 13.89, 14.42, 15.00, 15.62, 16.28, 16.97, 17.69, 18.44, 19.21, 20.00,
            20.81, 21.63
        };
        for (int rise = 2; rise <= 18; rise++) {
            assertThat(RightTriangle.ofLegs(ft(1), Length.ofInches(rise))
                            .hypotenuse()
                            .inches())
                    .isCloseTo(perFoot[rise - 2], within(0.0051));
        }
        // Same source: a rise of 7 in over a span of 16 ft, a run of 8 ft, is 8 x 13.89 = 111.12 in.
        assertThat(RightTriangle.ofLegs(ft(8), Length.ofInches(56)).hypotenuse().inches())
                .isCloseTo(111.12, within(0.04));
    }

    /** A corner kept clear for sight, 25 ft along each line: computed independently for three corner angles. */
    @ParameterizedTest
    @CsvSource({"90, 35.3553, 312.5", "75, 30.4381, 301.852", "105, 39.6677, 301.852"})
    void sightTriangles(double angle, double across, double squareFeet) {
        Triangle clear = Triangle.ofTwoSides(ft(25), ft(25), Angle.ofDegrees(angle));

        assertThat(clear.c().feet()).isCloseTo(across, within(6e-5));
        assertThat(clear.area().squareFeet()).isCloseTo(squareFeet, within(5.1e-4));
    }
}
