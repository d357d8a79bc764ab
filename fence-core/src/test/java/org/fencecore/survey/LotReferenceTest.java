package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/** Closures, adjustments and areas against published traverses and public land descriptions. */
class LotReferenceTest {

    /**
     * Purdue University ASM 215, traverse calculations: perimeter 2466.05 ft, misclosure -0.71 north and +0.53 east, 0.89
     * ft. The page sums latitudes rounded to 0.01 ft, so its last digit is off by one; area after the compass rule was
     * recomputed from the same courses, 272,611.24 sq ft.
     */
    @Test
    void purdueTraverse() {
        LotBoundary lot = bearings(
                "N26°10'E", 285.10, "S75°25'E", 610.45, "S15°30'W", 720.48, "N1°42'W", 203.00, "N53°06'W", 647.02);
        assertThat(lot.closure().perimeter()).isEqualTo(Length.ofFeet(2466.05));
        assertThat(lot.closure().north().feet()).isCloseTo(-0.71, offset(0.01));
        assertThat(lot.closure().east().feet()).isCloseTo(0.53, offset(0.01));
        assertThat(lot.closure().misclosure().feet()).isCloseTo(0.89, offset(0.01));
        assertThat(1 / lot.closure().precision().value()).isCloseTo(2791.8, offset(0.1));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(272_611.24, offset(0.01));
        assertThat(lot.findings()).extracting(Finding::code).containsExactly("lot-closes-poorly");
    }

    /**
     * Open Access Surveying Library, traverse computations, bearing traverse: adjusted coordinates by the compass rule,
     * to 0.001 ft, and the area from its cross products, 102,935.75 sq ft.
     */
    @Test
    void adjustedBearingTraverse() {
        LotBoundary lot = bearings(
                "S68°05'35\"W", 472.68, "N19°46'00\"W", 216.13, "N45°55'20\"E", 276.52, "S54°59'15\"E", 382.24);
        double[][] northEast = {{500.000, 2000.000}, {323.614, 1561.426}, {526.996, 1488.321}, {719.336, 1686.956}};
        List<Point> corners = lot.outline().orElseThrow().vertices();
        for (int i = 0; i < northEast.length; i++) {
            assertThat(corners.get(i).north().feet()).isCloseTo(northEast[i][0] - 500, offset(0.001));
            assertThat(corners.get(i).east().feet()).isCloseTo(northEast[i][1] - 2000, offset(0.001));
        }
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(102_935.75, offset(0.1));
    }

    /**
     * United States Executive Order 7804 (1938), azimuths from south, as transcribed by The American Presidency Project:
     * it states 3365 sq ft, but misses closing by 76.93 ft.
     */
    @Test
    void executiveOrder7804AsTranscribedDoesNotClose() {
        LotBoundary lot = fromSouth("287°00'", 91.00, "318°06'", 40.60, "57°00'", 76.85, "120°00'", 45.00);
        assertThat(lot.closure().misclosure().feet()).isCloseTo(76.93, offset(0.005));
        assertThat(lot.outline()).isEmpty();
        assertThat(lot.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("lot-does-not-close");
            assertThat(finding.message()).contains("76.93 ft").contains("1 part in 3");
        });
    }

    /** The same with its first azimuth as 237 degrees closes to 0.016 ft and encloses the stated 3365 sq ft. */
    @Test
    void executiveOrder7804CorrectedEnclosesItsStatedArea() {
        LotBoundary lot = fromSouth("237°00'", 91.00, "318°06'", 40.60, "57°00'", 76.85, "120°00'", 45.00);
        assertThat(lot.closure().misclosure().feet()).isCloseTo(0.016, offset(0.0005));
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(3365, offset(1.0));
        assertThat(lot.findings()).isEmpty();
    }

    /**
     * The same on its worksheet, as a class would check it: the printed latitudes and departures, each to 4 decimals, add
     * up to the printed sums within half a last digit a course, and the sums give 0.016 ft.
     */
    @Test
    void executiveOrder7804CanBeAddedUpByHand() {
        LotBoundary lot = fromSouth("237°00'", 91.00, "318°06'", 40.60, "57°00'", 76.85, "120°00'", 45.00);
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

    /** United States Executive Order 7893 (Upolu Point), azimuths from south: 0.979 acres. */
    @Test
    void executiveOrder7893() {
        LotBoundary lot = fromSouth(
                "162°16'", 110.00, "252°16'", 337.54, "264°15'", 61.55, "354°15'", 110.00, "84°15'", 50.00, "72°16'",
                326.00);
        assertThat(lot.closure().misclosure().feet()).isCloseTo(0.0012, offset(0.0001));
        assertThat(lot.area().orElseThrow().acres()).isCloseTo(0.979, offset(0.0005));
    }

    /** City of Lubbock, Texas, Resolution 1305 (1983): 1466 sq ft. */
    @Test
    void lubbockResolution1305() {
        LotBoundary lot = bearings("S89°18'W", 146.6, "N0°40'W", 10.00, "N89°18'E", 146.6, "S0°40'E", 10.00);
        assertThat(lot.closure().isExact()).isTrue();
        assertThat(lot.area().orElseThrow().squareFeet()).isCloseTo(1466, offset(0.01));
    }

    /** United States Executive Order 978 (1908), strip (b): 0.22 acres. */
    @Test
    void executiveOrder978() {
        LotBoundary lot = bearings("N30°04'W", 27.2, "S17°15'W", 485.2, "N83°37'E", 21.8, "N17°15'E", 458);
        assertThat(lot.closure().misclosure().feet()).isCloseTo(0.0312, offset(0.0001));
        assertThat(lot.area().orElseThrow().acres()).isCloseTo(0.22, offset(0.005));
    }

    private static LotBoundary bearings(Object... pairs) {
        List<Course> courses = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            courses.add(Course.of(Bearing.parse((String) pairs[i]), feet(pairs[i + 1])));
        }
        return LotBoundary.of(courses);
    }

    private static LotBoundary fromSouth(Object... pairs) {
        List<Course> courses = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            courses.add(Course.of(Bearing.ofAzimuthFromSouth(Angle.parse((String) pairs[i])), feet(pairs[i + 1])));
        }
        return LotBoundary.of(courses);
    }

    private static Length feet(Object number) {
        return Length.ofFeet(((Number) number).doubleValue());
    }
}
