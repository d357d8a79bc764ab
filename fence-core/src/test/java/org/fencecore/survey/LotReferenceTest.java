package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Closures, adjustments and areas against published traverses and public land descriptions. */
class LotReferenceTest {

    /** The courses of traverses.csv. */
    private static final Map<String, LotBoundary> TRAVERSES = Map.of(
            "Purdue",
            lot(10_000, 10_000, "N26°10'E 285.10; S75°25'E 610.45; S15°30'W 720.48; N1°42'W 203.00; N53°06'W 647.02"),
            "Mahun",
            lot(500, 2000, "S68°05'35\"W 472.68; N19°46'00\"W 216.13; N45°55'20\"E 276.52; S54°59'15\"E 382.24"),
            "Text",
            lot(5000, 10_000, "N22°36'40\"W 314.02; S60°39'24\"W 264.49; S38°46'10\"E 213.50; N88°22'58\"E 217.69"));

    private static LotBoundary traverse(String name) {
        return Objects.requireNonNull(TRAVERSES.get(name), name);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/reference/survey/traverses.csv", useHeadersInDisplayName = true, quoteCharacter = '~')
    void latitudesAndDepartures(
            String name, String bearing, double length, double latitude, double departure, double tolerance) {
        Course course = Course.of(Bearing.parse(bearing), Length.ofFeet(length));
        assertThat(course.latitude().feet()).as(name).isCloseTo(latitude, offset(tolerance));
        assertThat(course.departure().feet()).as(name).isCloseTo(departure, offset(tolerance));
        if (TRAVERSES.containsKey(name)) {
            assertThat(traverse(name).courses()).contains(course);
        }
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/reference/survey/adjusted.csv", useHeadersInDisplayName = true, quoteCharacter = '~')
    void compassRule(
            String name,
            int number,
            double north,
            double east,
            @Nullable Double latitude,
            @Nullable Double departure,
            @Nullable Double length,
            @Nullable String bearing,
            double tolerance) {
        LotSide side = traverse(name).sides().get(number - 1);
        assertThat(side.end().north().feet()).isCloseTo(north, offset(tolerance));
        assertThat(side.end().east().feet()).isCloseTo(east, offset(tolerance));
        if (latitude != null && departure != null && length != null && bearing != null) {
            Course adjusted = side.adjusted();
            assertThat(adjusted.latitude().feet()).isCloseTo(latitude, offset(tolerance));
            assertThat(adjusted.departure().feet()).isCloseTo(departure, offset(tolerance));
            assertThat(adjusted.distance().feet()).isCloseTo(length, offset(tolerance));
            assertThat(adjusted.bearing().turnTo(Bearing.parse(bearing)).abs()).isLessThan(Angle.ofDms(0, 0, 1));
        }
    }

    /**
     * Purdue University ASM 215, traverse calculations: perimeter 2466.05 ft, misclosure -0.71 north and +0.53 east, 0.89
     * ft, 1/2771. The page sums latitudes rounded to 0.01 ft: unrounded it is 0.88332 ft and 1/2791.8. Area after the
     * compass rule recomputed apart from this library, 272,611.24 sq ft.
     */
    @Test
    void purdueTraverse() {
        LotBoundary lot = traverse("Purdue");
        assertThat(lot.closure().perimeter()).isEqualTo(Length.ofFeet(2466.05));
        assertThat(lot.closure().north().feet()).isCloseTo(-0.71, offset(0.01));
        assertThat(lot.closure().east().feet()).isCloseTo(0.53, offset(0.01));
        assertThat(lot.closure().misclosure().feet())
                .isCloseTo(0.89, offset(0.01))
                .isCloseTo(0.88332, offset(5e-6));
        assertThat(1 / lot.closure().precision().value())
                .isCloseTo(2771, offset(28.0))
                .isCloseTo(2791.8, offset(0.1));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(272_611.24, offset(0.01));
        assertThat(lot.area().orElseThrow().acres()).isCloseTo(6.25829, offset(0.00001));
        assertThat(lot.findings()).extracting(Finding::code).containsExactly("lot-closes-poorly");
    }

    /**
     * Open Access Surveying Library, traverse computations, bearing traverse: errors +0.083 and +0.075, and the area from
     * its cross products, (3,590,045.6 - 3,384,174.1) / 2 = 102,935.75 sq ft. Recomputed: misclosure 0.11123, 1/12,115.6;
     * from the printed corners 102,935.722559 sq ft, 2.36308 acres.
     */
    @Test
    void adjustedBearingTraverse() {
        LotBoundary lot = traverse("Mahun");
        assertThat(lot.closure().perimeter()).isEqualTo(Length.ofFeet(1347.57));
        assertThat(lot.closure().north().feet()).isCloseTo(0.083, offset(0.001));
        assertThat(lot.closure().east().feet()).isCloseTo(0.075, offset(0.001));
        assertThat(lot.closure().misclosure().feet()).isCloseTo(0.11123, offset(5e-6));
        assertThat(1 / lot.closure().precision().value()).isCloseTo(12_115.6, offset(0.1));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(102_935.75, offset(0.1));
        LotBoundary printed = LotBoundary.ofCorners(List.of(
                point(500, 2000), point(323.614, 1561.426), point(526.996, 1488.321), point(719.336, 1686.956)));
        assertThat(printed.area().orElseThrow().squareFeet()).isCloseTo(102_935.722559, offset(1e-6));
        assertThat(lot.area().orElseThrow().acres()).isCloseTo(2.36308, offset(0.00001));
        assertThat(lot.findings()).isEmpty();
    }

    /**
     * A four-course text problem, copy at justaaa.com/civil-engineering/19749: misclosure 0.045, 1:22,500. Recomputed:
     * 0.04484, 1/22,517, area 59,763.79 sq ft.
     */
    @Test
    void fourCourseProblem() {
        LotBoundary lot = traverse("Text");
        assertThat(lot.closure().misclosure().feet())
                .isCloseTo(0.045, offset(0.0005))
                .isCloseTo(0.04484, offset(5e-6));
        assertThat(1 / lot.closure().precision().value())
                .isCloseTo(22_500, offset(225.0))
                .isCloseTo(22_517, offset(1.0));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(59_763.79, offset(0.01));
    }

    /** The descriptions of descriptions.csv: closure, enclosed area, and the area stated. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "/reference/survey/descriptions.csv",
            useHeadersInDisplayName = true,
            delimiter = '|',
            quoteCharacter = '~')
    void publicDescriptions(
            String name,
            String courses,
            double misclosure,
            double misclosureTolerance,
            double oneIn,
            double area,
            double areaTolerance,
            double stated,
            String unit,
            double statedTolerance) {
        LotBoundary lot = lot(0, 0, courses);
        Area own = lot.area().orElseThrow();
        assertThat(lot.findings()).as(name).isEmpty();
        assertThat(lot.closure().misclosure().feet()).isCloseTo(misclosure, offset(misclosureTolerance));
        assertThat(own.squareFeet()).isCloseTo(area, offset(areaTolerance));
        assertThat(unit.equals("ac") ? own.acres() : own.squareFeet()).isCloseTo(stated, offset(statedTolerance));
        if (oneIn > 0) {
            assertThat(1 / lot.closure().precision().value()).isCloseTo(oneIn, offset(oneIn * 0.001));
        } else {
            assertThat(lot.closure().isExact()).isTrue();
        }
        assertThat(own.squareFeet()).as("by DMD").isCloseTo(byDmd(lot), offset(1e-6));
    }

    /** The area as the worksheet adds it up. */
    private static double byDmd(LotBoundary lot) {
        double doubled = lot.areaWorksheet().orElseThrow().lines().stream()
                .filter(line -> line.name().startsWith("double area "))
                .mapToDouble(line -> ((Area) line.result()).squareFeet())
                .sum();
        return Math.abs(doubled) / 2;
    }

    /**
     * United States Executive Order 7588: the courses close to 1 part in 16,896, and enclose 665.5 of the stated 806 sq
     * ft, since one side follows a shore.
     */
    @Test
    void closureDoesNotProveTheArea() {
        LotBoundary lot = lot(0, 0, "241°30' 15.0; 206°47' 18.88; 348°50' 57.55; 134°40' 46.17");
        assertThat(lot.findings()).isEmpty();
        assertThat(lot.areaAgainst(Area.ofSquareFeet(806), Ratio.ofPercent(2)))
                .hasValueSatisfying(finding -> assertThat(finding.code()).isEqualTo("lot-area-differs"));
    }

    /** City of Lubbock, Texas, Resolution 1305 (1983): corners of 89°58' and 90°02'. */
    @Test
    void cornersOfLubbockResolution1305() {
        LotBoundary lot = lot(0, 0, "S89°18'W 146.6; N0°40'W 10.00; N89°18'E 146.6; S0°40'E 10.00");
        assertThat(interiorAngles(lot)).containsExactly("90°02'", "89°58'", "90°02'", "89°58'");
    }

    /** Executive Order 7804 with 237 degrees: interior angles 63.00, 98.90, 81.10 and 117.00, recomputed. */
    @Test
    void cornersOfExecutiveOrder7804() {
        LotBoundary lot = lot(0, 0, "237°00' 91.00; 318°06' 40.60; 57°00' 76.85; 120°00' 45.00");
        double[] angles = {63.00, 98.90, 81.10, 117.00};
        for (int i = 0; i < angles.length; i++) {
            assertThat(lot.outline().orElseThrow().corner(i).interiorAngle().degrees())
                    .isCloseTo(angles[i], offset(0.03));
        }
    }

    private static List<String> interiorAngles(LotBoundary lot) {
        return Stream.iterate(0, i -> i + 1)
                .limit(lot.courses().size())
                .map(i -> lot.outline().orElseThrow().corner(i).interiorAngle())
                .map(angle ->
                        Bearing.ofAzimuth(angle).roundedTo(Angle.ofDms(0, 1, 0)).azimuth())
                .map(Dms::text)
                .toList();
    }

    /**
     * United States Executive Order 7804 (1938), azimuths from south, as transcribed by The American Presidency Project:
     * it states 3365 sq ft, but misses closing by 76.93 ft, 1 part in 3.3. Solving each course in turn for closure, apart
     * from this library, gives azimuth, length and area as below: only the first keeps its own length and encloses the
     * stated area, with 237 degrees for 287.
     */
    @Test
    void executiveOrder7804AsTranscribedIsDiagnosed() {
        LotBoundary lot = lot(0, 0, "287°00' 91.00; 318°06' 40.60; 57°00' 76.85; 120°00' 45.00");
        assertThat(lot.closure().misclosure().feet()).isCloseTo(76.93, offset(0.005));
        assertThat(1 / lot.closure().precision().value()).isCloseTo(3.3, offset(0.05));
        assertThat(lot.outline()).isEmpty();
        assertThat(lot.sides()).isEmpty();
        assertThat(lot.area()).isEmpty();
        assertThat(lot.areaWorksheet()).isEmpty();

        double[][] solved = {
            {236.990, 90.998, 3365.7}, {199.637, 48.80, 677}, {114.544, 82.63, 1131}, {153.275, 110.48, 5174}
        };
        ClosureDiagnosis diagnosis = lot.diagnosis();
        for (int i = 0; i < solved.length; i++) {
            CourseFix fix = diagnosis.fixes().get(i);
            assertThat(fix.closingBearing().orElseThrow().azimuthFromSouth().degrees())
                    .isCloseTo(solved[i][0], offset(0.0006));
            assertThat(fix.closingLength().feet()).isCloseTo(solved[i][1], offset(0.006));
            assertThat(fix.area().squareFeet()).isCloseTo(solved[i][2], offset(0.6));
            assertThat(fix.worksheet().result()).isEqualTo(fix.closingLength());
        }

        assertThat(diagnosis.likely()).singleElement().satisfies(fix -> {
            assertThat(fix.number()).isEqualTo(1);
            assertThat(fix.change()).isEqualTo(CourseChange.BEARING);
            assertThat(fix.reading()).contains("one digit, 237° for 287° as azimuth from south");
            assertThat(fix.corrected().orElseThrow()).hasToString("N 57° E, 91.00 ft");
            assertThat(fix.misclosure().feet()).isCloseTo(0.0160, offset(0.0001));
        });
        assertThat(diagnosis.worksheet().result()).isEqualTo(1);
        assertThat(lot.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("lot-does-not-close");
            assertThat(finding.message()).contains("76.93 ft").contains("1 part in 3");
            assertThat(finding.remedy())
                    .endsWith("look first at course 1 as N 57° E, 91.00 ft instead of S 73° E closes to 0.02 ft (one"
                            + " digit, 237° for 287° as azimuth from south)");
        });
    }

    /**
     * Executive Order 7804 on its worksheet, as a class would check it: the printed latitudes and departures, each to 4
     * decimals, add up to the printed sums within half a last digit a course, and the sums give 0.016 ft.
     */
    @Test
    void executiveOrder7804CanBeAddedUpByHand() {
        LotBoundary lot = lot(0, 0, "237°00' 91.00; 318°06' 40.60; 57°00' 76.85; 120°00' 45.00");
        Worksheet sheet = lot.worksheet();
        // From south 237° is from north 57°.
        assertThat(sheet.lines())
                .extracting(WorkLine::numbers)
                .contains("91 ft x cos(57°)", "40.6 ft x sin(138°06')", "76.85 ft x cos(237°)");
        double north = printed(sheet, "latitude ");
        double east = printed(sheet, "departure ");
        assertThat(north).isCloseTo(printed(sheet, "sum of latitudes"), offset(4 * 0.00005 + 0.00005));
        assertThat(east).isCloseTo(printed(sheet, "sum of departures"), offset(4 * 0.00005 + 0.00005));
        assertThat(Math.hypot(north, east)).isCloseTo(0.016, offset(0.0005));
        assertThat(sheet.result()).isEqualTo(lot.closure().misclosure());
    }

    /** Adds the results as they are printed, in feet. */
    private static double printed(Worksheet sheet, String name) {
        return sheet.lines().stream()
                .filter(line -> line.name().startsWith(name))
                .mapToDouble(line -> Double.parseDouble(line.shown().replace(" ft", "")))
                .sum();
    }

    /**
     * Open Access Surveying Library, coordinate geometry, chapter H: five corners with cross sums of 2,190,612 and
     * 1,909,624, so 140,494 sq ft; recomputed 140,493.11.
     */
    @Test
    void areaByCoordinates() {
        LotBoundary lot = LotBoundary.ofCorners(List.of(
                point(406.31, 1259.97),
                point(235.12, 1489.47),
                point(65.81, 1126.40),
                point(317.89, 942.04),
                point(675.32, 1282.54)));
        assertThat(lot.area().orElseThrow().squareFeet())
                .isCloseTo(140_494, offset(1.0))
                .isCloseTo(140_493.11, offset(0.006));
    }

    /**
     * Handbook of Civil Engineering Calculations, section 5: latitudes and departures that sum to zero. Double meridian
     * distances and double areas from D recomputed apart from this library; the area is 72,106.19 sq ft.
     */
    @Test
    void areaByDoubleMeridianDistances() {
        double[][] latDep = {
            {161.9, 143.6}, {-35.3, 246.7}, {-101.8, 21.3}, {-132.3, -135.6}, {9.6, -77.5}, {97.9, -198.5}
        };
        double[] dmd = {143.6, 533.9, 801.9, 687.6, 474.5, 198.5};
        double[] doubled = {23_248.84, -18_846.67, -81_633.42, -90_969.48, 4555.20, 19_433.15};
        List<Point> corners = new ArrayList<>();
        double north = 0;
        double east = 0;
        for (double[] side : latDep) {
            corners.add(point(north, east));
            north += side[0];
            east += side[1];
        }
        LotBoundary lot = LotBoundary.ofCorners(corners);
        Worksheet sheet = lot.areaWorksheet().orElseThrow();
        for (int i = 0; i < dmd.length; i++) {
            Length distance = (Length) result(sheet, "DMD " + (i + 1));
            Area area = (Area) result(sheet, "double area " + (i + 1));
            assertThat(distance.feet()).isCloseTo(dmd[i], offset(1e-6));
            assertThat(area.squareFeet()).isCloseTo(doubled[i], offset(0.006));
        }
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(72_106.19, offset(0.006));
    }

    private static Object result(Worksheet sheet, String name) {
        return sheet.lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow()
                .result();
    }

    private static Point point(double north, double east) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    /** A lot of courses such as {@code N26°10'E 285.10; ...}, bearings or azimuths from south and feet. */
    private static LotBoundary lot(double north, double east, String courses) {
        List<Course> calls = new ArrayList<>();
        for (String call : courses.split("; ", -1)) {
            int blank = call.lastIndexOf(' ');
            String direction = call.substring(0, blank);
            Bearing bearing = Character.isDigit(direction.charAt(0))
                    ? Bearing.ofAzimuthFromSouth(Angle.parse(direction))
                    : Bearing.parse(direction);
            calls.add(Course.of(bearing, Length.parse(call.substring(blank + 1) + " ft")));
        }
        return LotBoundary.startingAt(point(north, east), calls);
    }
}
