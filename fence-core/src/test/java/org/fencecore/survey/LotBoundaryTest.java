package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fencecore.Plans;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.WorkLine;
import org.junit.jupiter.api.Test;

class LotBoundaryTest {

    private static final LotBoundary LOT = Plans.rectangle(50, 40);

    @Test
    void aLotThatClosesSaysSo() {
        assertThat(LOT.closure().isExact()).isTrue();
        assertThat(LOT.closure().toString()).isEqualTo("closes exactly");
        assertThat(LOT.area().orElseThrow().squareFeet()).isEqualTo(2000);
        assertThat(LOT.worksheet().result()).isEqualTo(LOT.closure().misclosure());
    }

    @Test
    void worksheetEndsInTheMisclosure() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 30), Plans.course(90, 40), Plans.course(180, 30), Plans.course(270, 39.9)));
        assertThat(open.worksheet().result()).isEqualTo(open.closure().misclosure());
        assertThat(open.worksheet().toText()).isEqualTo("""
                Closure of the lot
                  course 1 = N 0° E, 30.00 ft   [given]
                  latitude 1 = distance x cos(azimuth) = 30 ft x cos(0°) = 30 ft
                  departure 1 = distance x sin(azimuth) = 30 ft x sin(0°) = 0 ft
                  course 2 = N 90° E, 40.00 ft   [given]
                  latitude 2 = distance x cos(azimuth) = 40 ft x cos(90°) = 0 ft
                  departure 2 = distance x sin(azimuth) = 40 ft x sin(90°) = 40 ft
                  course 3 = S 0° E, 30.00 ft   [given]
                  latitude 3 = distance x cos(azimuth) = 30 ft x cos(180°) = -30 ft
                  departure 3 = distance x sin(azimuth) = 30 ft x sin(180°) = 0 ft
                  course 4 = N 90° W, 39.90 ft   [given]
                  latitude 4 = distance x cos(azimuth) = 39.9 ft x cos(270°) = 0 ft
                  departure 4 = distance x sin(azimuth) = 39.9 ft x sin(270°) = -39.9 ft
                  sum of latitudes = all latitudes added = 30 ft + 0 ft - 30 ft + 0 ft = 0 ft
                  sum of departures = all departures added = 0 ft + 40 ft + 0 ft - 39.9 ft = 0.1 ft
                  misclosure = sqrt((sum of latitudes)^2 + (sum of departures)^2) = sqrt((0 ft)^2 + (0.1 ft)^2) = 0.1 ft   \
                [Purdue University ASM 215, traverse calculations, compass rule]
                """);
        assertThat(open.closure().toString()).contains("0.10 ft").contains("1 part in 1399");
    }

    /** The lot of the package's documentation: 100 by 120 ft, its south-east corner rounded with a radius of 25 ft. */
    private static LotBoundary rounded() {
        Course front = Course.of(Bearing.parse("N 90° E"), Length.parse("75 ft"));
        Course rounding = Course.curve(Side.LEFT)
                .radius(Length.parse("25 ft"))
                .delta(Angle.RIGHT)
                .tangentTo(front)
                .build();
        return LotBoundary.of(List.of(
                front,
                rounding,
                Course.of(Bearing.parse("N 0° E"), Length.parse("95 ft")),
                Course.of(Bearing.parse("N 90° W"), Length.parse("100 ft")),
                Course.of(Bearing.parse("S 0° E"), Length.parse("120 ft"))));
    }

    @Test
    void aRoundedCornerIsLaidOutInChords() {
        LotBoundary lot = rounded();

        assertThat(lot.findings()).isEmpty();
        assertThat(lot.closure().perimeter().feet()).isCloseTo(75 + 39.2699 + 95 + 100 + 120, within(1e-4));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(11_865.87, within(0.005));
        LotSide curved = lot.sides().get(1);
        assertThat(curved.isCurved()).isTrue();
        assertThat(curved.facets()).isEqualTo(10);
        assertThat(curved.firstFacet()).isEqualTo(1);
        assertThat(lot.sides().get(2).firstFacet()).isEqualTo(11);
        assertThat(lot.outline().orElseThrow().vertices()).hasSize(14);
        // Every chord is as long, its ends on the curve and its middle within an inch of it, on the side of the lot.
        Point centre = Point.of(Length.ofFeet(75), Length.ofFeet(25));
        Length chord = curved.line().segments().get(0).length();
        for (Segment facet : curved.line().segments()) {
            assertThat(facet.length().inches()).isCloseTo(chord.inches(), within(1e-6));
            assertThat(facet.start().distanceTo(centre).feet()).isCloseTo(25, within(1e-7));
            Length off =
                    Length.ofFeet(25).minus(facet.start().midpoint(facet.end()).distanceTo(centre));
            assertThat(off.inches()).isBetween(0.0, 1.0);
        }
        // By hand: 10 chords lie off by 25 ft (1 - cos 4.5°) = 0.92 in, 9 by 25 ft (1 - cos 5°) = 1.14 in.
    }

    @Test
    void aCurveThatBulgesInIsLaidOutInTangents() {
        LotBoundary lot = scooped();
        assertThat(lot.findings()).isEmpty();
        LotSide curved = lot.sides().get(1);
        Point centre = Point.of(Length.ofFeet(100), Length.ZERO);
        List<Segment> facets = curved.line().segments();
        Length whole = facets.get(1).length();
        for (int i = 0; i < facets.size(); i++) {
            Segment facet = facets.get(i);
            boolean atAnEnd = i == 0 || i == facets.size() - 1;
            assertThat(facet.length().inches()).isCloseTo(whole.inches() / (atAnEnd ? 2 : 1), within(1e-6));
            // Every facet touches the curve and stays on the side of the lot.
            assertThat(facet.distanceTo(centre).feet()).isCloseTo(25, within(1e-7));
            assertThat(facet.end().distanceTo(centre).minus(Length.ofFeet(25)).inches())
                    .isBetween(-1e-6, 1.0);
        }
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(100 * 120 - 625 * Math.PI / 4, within(0.001));
        Area facetted = lot.outline().orElseThrow().area();
        assertThat(facetted).isLessThan(lot.area().orElseThrow());
        assertThat(facetted.squareFeet()).isCloseTo(lot.area().orElseThrow().squareFeet(), within(2.0));
    }

    /** The same lot with a quarter of a circle of 25 ft cut out of its south-east corner. */
    private static LotBoundary scooped() {
        return LotBoundary.of(List.of(
                Course.of(Bearing.EAST, Length.ofFeet(75)),
                Course.curve(Side.RIGHT)
                        .radius(Length.ofFeet(25))
                        .delta(Angle.RIGHT)
                        .tangentIn(Bearing.NORTH)
                        .build(),
                Course.of(Bearing.NORTH, Length.ofFeet(95)),
                Course.of(Bearing.WEST, Length.ofFeet(100)),
                Course.of(Bearing.SOUTH, Length.ofFeet(120))));
    }

    @Test
    void finerFacetsComeNearerToTheCurve() {
        LotBoundary fine = scooped().withFacetsWithin(Length.ofInches(1 / 16.0));
        assertThat(fine.sides().get(1).facets())
                .isGreaterThan(scooped().sides().get(1).facets());
        assertThat(fine.area()).isEqualTo(scooped().area());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> fine.withFacetsWithin(Length.ZERO))
                .withMessageContaining("within was 0 in")
                .withMessageContaining("or more");
    }

    @Test
    void theAreaWorksheetAddsUp() {
        for (LotBoundary lot : List.of(rounded(), scooped(), LOT)) {
            assertThat(lot.areaWorksheet().orElseThrow().result())
                    .isEqualTo(lot.area().orElseThrow());
            double doubled = amount(lot, "sum of double areas").squareFeet();
            double segments = lot.sides().stream()
                    .flatMap(side -> side.adjusted().curve().stream())
                    .mapToDouble(curve -> (curve.turn() == Side.LEFT ? 1 : -1)
                            * curve.segmentArea().squareFeet())
                    .sum();
            assertThat(Math.abs(doubled / 2 + segments))
                    .isCloseTo(lot.area().orElseThrow().squareFeet(), within(1e-6));
        }
        assertThat(LOT.areaWorksheet().orElseThrow().toText())
                .contains("DMD 2 = 2 x departures before + departure = 0 ft + (40 ft) = 40 ft")
                .contains("double area 3 = DMD x latitude = 80 ft x -50 ft = -4000.00 sq ft")
                .endsWith("area = sum of double areas / 2, without sign = -4000.00 sq ft / 2 = 2000.00 sq ft\n");
    }

    private static Area amount(LotBoundary lot, String name) {
        return lot.areaWorksheet().orElseThrow().lines().stream()
                .filter(line -> line.name().equals(name))
                .map(WorkLine::result)
                .map(Area.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cornersOfKnownCoordinatesStayWhereTheyAre() {
        List<Point> corners = List.of(point(406.31, 1259.97), point(235.12, 1489.47), point(65.81, 1126.40));
        LotBoundary lot = LotBoundary.ofCorners(corners);

        assertThat(lot.closure().isExact()).isTrue();
        assertThat(lot.findings()).isEmpty();
        assertThat(lot.outline().orElseThrow().vertices()).isEqualTo(corners);
        assertThat(lot.courses().get(0).bearing()).isEqualTo(corners.get(0).bearingTo(corners.get(1)));
    }

    private static Point point(double north, double east) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    @Test
    void curvesThatCrossOtherSidesAreFound() {
        // A strip 10 ft wide; the curve on its long south side, 100 ft of chord, bulges 13.4 ft in, over the north
        // side.
        LotBoundary lot = LotBoundary.of(List.of(
                Course.curve(Side.RIGHT)
                        .radius(Length.ofFeet(100))
                        .chord(Length.ofFeet(100))
                        .minor()
                        .chordBearing(Bearing.EAST)
                        .build(),
                Course.of(Bearing.NORTH, Length.ofFeet(10)),
                Course.of(Bearing.WEST, Length.ofFeet(100)),
                Course.of(Bearing.SOUTH, Length.ofFeet(10))));
        assertThat(lot.outline()).isEmpty();
        assertThat(lot.sides()).isEmpty();
        assertThat(lot.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("lot-crosses-itself");
            assertThat(finding.message())
                    .startsWith("side 1 crosses side 3 at east ")
                    .contains("north 10.00 ft");
        });
    }

    @Test
    void curvesThatOnlyComeNearAreNoCrossing() {
        // The same on a strip of 13 ft 5 in, a quarter of an inch over what the curve needs: 100 (1 - cos 30°) ft. The
        // tangents within an inch of the curve cross the other side, those within a sixteenth do not.
        List<Course> courses = List.of(
                Course.curve(Side.RIGHT)
                        .radius(Length.ofFeet(100))
                        .chord(Length.ofFeet(100))
                        .minor()
                        .chordBearing(Bearing.EAST)
                        .build(),
                Course.of(Bearing.NORTH, Length.parse("13' 5\"")),
                Course.of(Bearing.WEST, Length.ofFeet(100)),
                Course.of(Bearing.SOUTH, Length.parse("13' 5\"")));
        LotBoundary coarse = LotBoundary.of(courses);
        assertThat(coarse.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
            assertThat(finding.message()).startsWith("side 1 comes within 1\" of side 3");
        });
        LotBoundary fine = coarse.withFacetsWithin(Length.ofInches(1 / 16.0));
        assertThat(fine.findings()).isEmpty();
        assertThat(fine.outline()).isPresent();
    }

    @Test
    void twoCurvesThatCrossAndTwoThatDoNot() {
        // Both long sides bow in by 13.4 ft: on a strip of 20 ft they cross, on one of 30 ft they do not.
        assertThat(bowed(20).findings()).extracting(Finding::code).containsExactly("lot-crosses-itself");
        assertThat(bowed(30).findings()).isEmpty();
        assertThat(bowed(30).area().orElseThrow().squareFeet())
                .isCloseTo(3000 - 2 * 10_000 * (Math.PI / 3 - Math.sin(Math.PI / 3)) / 2, within(0.01));
    }

    private static LotBoundary bowed(double width) {
        CurveCall side = Course.curve(Side.RIGHT)
                .radius(Length.ofFeet(100))
                .chord(Length.ofFeet(100))
                .minor();
        return LotBoundary.of(List.of(
                side.chordBearing(Bearing.EAST).build(),
                Course.of(Bearing.NORTH, Length.ofFeet(width)),
                side.chordBearing(Bearing.WEST).build(),
                Course.of(Bearing.SOUTH, Length.ofFeet(width))));
    }

    @Test
    void theInsideIsJudgedWithTheCurves() {
        // A chord polygon going clockwise whose curve, 3/4 of a circle to the left, makes it go counter-clockwise.
        LotBoundary lot = LotBoundary.of(List.of(
                Course.curve(Side.LEFT)
                        .radius(Length.ofFeet(100))
                        .delta(Angle.ofDegrees(270))
                        .chordBearing(Bearing.WEST)
                        .build(),
                Course.of(Bearing.parse("N 85° E"), Length.ofFeet(100 / Math.sqrt(2) / Math.sin(Math.toRadians(85)))),
                Course.of(Bearing.parse("S 85° E"), Length.ofFeet(100 / Math.sqrt(2) / Math.sin(Math.toRadians(85))))));
        double segment = 10_000 * (1.5 * Math.PI + 1) / 2;
        double triangle = 5000 / Math.tan(Math.toRadians(85));
        assertThat(lot.findings()).isEmpty();
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(segment - triangle, within(0.01));
        assertThat(lot.outline().orElseThrow().inside()).isEqualTo(Side.LEFT);
    }

    @Test
    void theAreaOfTheDeedIsCompared() {
        assertThat(LOT.areaAgainst(Area.ofSquareFeet(2000), Ratio.ZERO)).isEmpty();
        assertThat(LOT.areaAgainst(Area.ofAcres(0.046), Ratio.ofPercent(1))).isEmpty();
        assertThat(LOT.areaAgainst(Area.ofAcres(0.055), Ratio.ofPercent(2)))
                .hasValueSatisfying(finding -> assertThat(finding.toString())
                        .contains("WARNING lot-area-differs")
                        .contains("enclose 2000.00 sq ft")
                        .contains("states 2395.80 sq ft"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LOT.areaAgainst(Area.ZERO, Ratio.ZERO))
                .withMessageContaining("stated area was 0 sq ft");
    }

    @Test
    void manyCoursesAreCheckedFast() {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < LotBoundary.MOST_COURSES; i++) {
            double turn = 2 * Math.PI * i / LotBoundary.MOST_COURSES;
            double radius = 1000 + 100 * (i % 2);
            corners.add(point(radius * Math.cos(turn), radius * Math.sin(turn)));
        }
        LotBoundary lot = LotBoundary.ofCorners(corners);
        assertThat(lot.sides()).hasSize(LotBoundary.MOST_COURSES);
        assertThat(lot.findings()).isEmpty();
        Collections.swap(corners, 3, 7_000);
        assertThat(LotBoundary.ofCorners(corners).findings())
                .extracting(Finding::code)
                .containsExactly("lot-crosses-itself");
    }

    @Test
    void theOutlineOfALotWithoutCurvesIsItsCorners() {
        Polygon outline = LOT.outline().orElseThrow();
        for (LotSide side : LOT.sides()) {
            assertThat(side.facets()).isEqualTo(1);
            assertThat(side.isCurved()).isFalse();
            assertThat(outline.side(side.firstFacet())).isEqualTo(Segment.of(side.start(), side.end()));
            assertThat(side.adjusted()).isEqualTo(side.course());
            assertThat(side.length()).isEqualTo(side.course().distance());
        }
        assertThat(LOT.sides().get(1)).hasToString("side 2: N 90° E, 40.00 ft");
    }

    @Test
    void badInputIsRefusedWithTheValueAndTheWayOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.of(Bearing.NORTH, Length.ZERO))
                .withMessageContaining("was 0 in")
                .withMessageContaining("over 0")
                .withMessageContaining("leave the course out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Course.of(Bearing.NORTH, Length.ofMetres(500_001)))
                .withMessageContaining("check its unit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.of(List.of(Plans.course(0, 1), Plans.course(180, 1))))
                .withMessageContaining("2 courses")
                .withMessageContaining("from 3 to 10000");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.of(Collections.nCopies(10_001, Plans.course(0, 1))))
                .withMessageContaining("10001 courses");
        Point a = Point.ORIGIN;
        Point b = point(0, 10);
        Point c = point(10, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.ofCorners(List.of(a, b, b, c)))
                .withMessageContaining("corners 2 and 3 were both (E 10 ft, N 0 in)")
                .withMessageContaining("once");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.ofCorners(List.of(a, b, c, a)))
                .withMessageContaining("corners 4 and 1 were both");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.ofCorners(List.of(a, b)))
                .withMessageContaining("2 corners");
        Course wide = Course.curve(Side.LEFT)
                .radius(Length.ofMetres(100_000))
                .delta(Angle.RIGHT)
                .tangentIn(Bearing.EAST)
                .build();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.of(List.of(
                                wide,
                                wide.moved(Bearing.parse("N 45° W"), wide.distance()),
                                wide.moved(Bearing.parse("S 45° W"), wide.distance()),
                                wide.moved(Bearing.parse("S 45° E"), wide.distance())))
                        .withFacetsWithin(Length.ofMillimetres(1)))
                .withMessageContaining("facets")
                .withMessageContaining("10,000 or fewer");
    }
}
