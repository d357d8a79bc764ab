package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.geometry.Geo.ft;

import java.util.List;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Squaring a layout by the tape, against published figures. */
class SquaringReferenceTest {

    private static final Length FOOT = ft(1);
    private static final Length EIGHTH = Length.ofInches(0.125);

    /** NAVEDTRA 14043, fig. 5-16: sides of 35 and 40 ft have a diagonal of approximately 53.1 ft. */
    @Test
    void thirtyFiveByForty() {
        assertThat(RightTriangle.ofLegs(ft(35), ft(40)).hypotenuse().feet()).isCloseTo(53.1, within(0.06));
    }

    /** The same figure: 3-4-5 laid out as 30, 40 and 50 ft. */
    @Test
    void thirtyFortyFifty() {
        assertThat(RightTriangle.largest345(ft(31), ft(43.9), FOOT)).contains(RightTriangle.ofLegs(ft(30), ft(40)));
        assertThat(RightTriangle.largest345(ft(43.9), ft(31), FOOT)).contains(RightTriangle.ofLegs(ft(40), ft(30)));
    }

    /** 300, 400 and 500 mm and its multiples, Canadian Wood-Frame House Construction; 6-8-10 and 9-12-15, common practice. */
    @Test
    void multiplesThatFit() {
        Length unit = Length.ofMillimetres(100);
        assertThat(RightTriangle.largest345(Length.ofMillimetres(500), Length.ofMillimetres(400), unit))
                .contains(RightTriangle.ofLegs(Length.ofMillimetres(400), Length.ofMillimetres(300)));
        assertThat(RightTriangle.largest345(ft(8), ft(8), FOOT)).contains(RightTriangle.ofLegs(ft(6), ft(8)));
        assertThat(RightTriangle.largest345(ft(12), ft(9), FOOT)).contains(RightTriangle.ofLegs(ft(12), ft(9)));
        assertThat(RightTriangle.largest345(ft(100), ft(2.9), FOOT)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RightTriangle.largest345(ft(9), ft(12), Length.ZERO))
                .withMessageContaining("unit was 0 in");
    }

    /** A pole-building construction manual: 50 by 84 ft is 97 ft 9 1/16 in across; other rectangles by calculation. */
    @ParameterizedTest
    @CsvSource({
        "50, 84, 97.754795",
        "20, 30, 36.0555",
        "24, 36, 43.2666",
        "40, 60, 72.1110",
        "50, 100, 111.8034",
        "75, 120, 141.5097"
    })
    void bothDiagonalsOfARectangleReadTheSame(double east, double north, double diagonal) {
        List<Point> corners = Polygon.of(List.of(
                        Point.ORIGIN,
                        Point.of(ft(east), Length.ZERO),
                        Point.of(ft(east), ft(north)),
                        Point.of(Length.ZERO, ft(north))))
                .vertices();
        Length across = corners.get(0).distanceTo(corners.get(2));
        assertThat(across.feet()).isCloseTo(diagonal, within(6e-5));
        assertThat(corners.get(1).distanceTo(corners.get(3))).isEqualTo(across);
        assertThat(RightTriangle.ofLegs(ft(east), ft(north)).hypotenuse()).isEqualTo(across);
    }

    /** The manual's mark on the tape. */
    @Test
    void fiftyByEightyFourOnTheTape() {
        assertThat(RightTriangle.ofLegs(ft(50), ft(84))
                        .hypotenuse()
                        .roundedTo(Length.ofInches(1 / 16.0), Rounding.NEAREST))
                .isEqualTo(Length.ofFeetAndInches(97, 9.0625));
    }

    /** Law of cosines, by calculation with another program. */
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
    void theCheckDistanceOfAnyCorner(double a, double b, double degrees, double c) {
        Corner corner = corner(degrees);
        Length diagonal = corner.diagonal(ft(a), ft(b));
        assertThat(diagonal.feet()).isCloseTo(c, within(6e-5));
        // And back: the tape that reads it tells the angle, and from outside the rest of the circle.
        assertThat(corner.interiorAngleAt(ft(a), ft(b), diagonal).degrees()).isCloseTo(degrees, within(1e-6));
        Corner inward = corner(360 - degrees);
        assertThat(inward.diagonal(ft(a), ft(b)).feet()).isCloseTo(c, within(6e-5));
        assertThat(inward.interiorAngleAt(ft(a), ft(b), diagonal).degrees()).isCloseTo(360 - degrees, within(1e-6));
    }

    /** What a diagonal too long means, by calculation with another program. */
    @ParameterizedTest
    @CsvSource({"3, 4, 0.125, 90.2489", "6, 8, 0.125, 90.1244", "9, 12, 0.125, 90.0829", "20, 30, 0.25, 90.0718"})
    void whatAnEighthOfAnInchMeans(double a, double b, double inches, double degrees) {
        Length read = RightTriangle.ofLegs(ft(a), ft(b)).hypotenuse().plus(Length.ofInches(inches));
        assertThat(corner(90).interiorAngleAt(ft(a), ft(b), read).degrees()).isCloseTo(degrees, within(6e-5));
        assertThat(RightTriangle.ofLegs(ft(a), ft(b)).outOfSquare(read).degrees())
                .isCloseTo(degrees - 90, within(6e-5));
    }

    @Test
    void aTapeThatCannotBeRightIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> corner(90).interiorAngleAt(ft(3), ft(4), ft(7).plus(EIGHTH)))
                .withMessageContaining("measure again");
    }

    /** A corner of a yard on the right, its first line due north. */
    private static Corner corner(double interior) {
        Bearing leaving = Bearing.ofAzimuth(Angle.ofDegrees(180 - interior));
        return Corner.of(Point.ORIGIN, Bearing.NORTH, leaving, Side.RIGHT);
    }
}
