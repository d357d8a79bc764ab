package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.SelfCrossing;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;

class SurveyProperties {

    private static final Length INCH = Length.ofInches(1);

    @Provide
    Arbitrary<Point> points() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 12),
                        Arbitraries.integers().between(0, 12))
                .as((east, north) -> Point.of(Length.ofFeet(east), Length.ofFeet(north)));
    }

    /** Corners all round a circle, at any distance from its centre: a lot that does not cross itself. */
    @Provide
    Arbitrary<List<Point>> stars() {
        return Arbitraries.integers()
                .between(40, 200)
                .list()
                .ofMinSize(4)
                .ofMaxSize(12)
                .map(radii -> {
                    List<Point> corners = new ArrayList<>();
                    for (int i = 0; i < radii.size(); i++) {
                        Bearing out = Bearing.ofAzimuth(Angle.ofDegrees(360.0 * i / radii.size() + 3));
                        corners.add(Point.ORIGIN.plus(out, Length.ofFeet(radii.get(i))));
                    }
                    return corners;
                });
    }

    @Property(tries = 300)
    void aTurnedCourseIsAmongTheLikely(@ForAll("stars") List<Point> corners, @ForAll @IntRange(max = 3) int wrong) {
        List<Course> courses = new ArrayList<>(LotBoundary.ofCorners(corners).courses());
        Course sound = courses.get(wrong);
        courses.set(wrong, Course.of(sound.bearing().reversed(), sound.distance()));
        LotBoundary lot = LotBoundary.of(courses);

        assertThat(lot.findings()).extracting(Finding::code).contains("lot-does-not-close");
        assertThat(lot.diagnosis().likely()).anySatisfy(fix -> {
            assertThat(fix.number()).isEqualTo(wrong + 1);
            assertThat(fix.misclosure().millimetres()).isLessThan(0.01);
        });
        for (CourseFix fix : lot.diagnosis().fixes()) {
            assertThat(fix.worksheet().result()).isEqualTo(fix.closingLength());
            List<Course> mended = new ArrayList<>(courses);
            fix.closingBearing()
                    .filter(bearing -> fix.closingLength().compareTo(INCH) > 0)
                    .ifPresent(bearing -> {
                        mended.set(fix.number() - 1, Course.of(bearing, fix.closingLength()));
                        assertThat(LotBoundary.of(mended).closure().misclosure().millimetres())
                                .isLessThan(0.001);
                    });
        }
    }

    @Property(tries = 300)
    void theCompassRuleClosesAndKeepsTheArea(
            @ForAll("stars") List<Point> corners, @ForAll @DoubleRange(min = -0.02, max = 0.02) double lengthOff) {
        List<Course> courses = new ArrayList<>(LotBoundary.ofCorners(corners).courses());
        Course first = courses.get(0);
        courses.set(0, Course.of(first.bearing(), first.distance().plus(Length.ofFeet(lengthOff))));
        LotBoundary lot = LotBoundary.of(courses);

        assertThat(lot.closure().misclosure().feet()).isCloseTo(Math.abs(lengthOff), within(1e-6));
        for (int i = 0; i < courses.size(); i++) {
            LotSide side = lot.sides().get(i);
            assertThat(side.end())
                    .isEqualTo(lot.sides().get((i + 1) % courses.size()).start());
            assertThat(side.adjusted()
                            .distance()
                            .minus(side.course().distance())
                            .abs()
                            .feet())
                    .isLessThanOrEqualTo(Math.abs(lengthOff) + 1e-6);
        }
        assertThat(lot.area().orElseThrow().squareMetres())
                .isCloseTo(lot.outline().orElseThrow().area().squareMetres(), within(1e-6));
        assertThat(lot.areaWorksheet().orElseThrow().result())
                .isEqualTo(lot.area().orElseThrow());
        // From another corner the same lot has the same shape.
        Point elsewhere = Point.of(Length.ofFeet(1234.5), Length.ofFeet(-99));
        assertThat(LotBoundary.startingAt(elsewhere, courses)
                        .area()
                        .orElseThrow()
                        .squareMetres())
                .isCloseTo(lot.area().orElseThrow().squareMetres(), within(1e-6));
    }

    @Property
    void facetsOfACurveStayInTheLotAndNearTheCurve(
            @ForAll @DoubleRange(min = 2, max = 3000) double radius,
            @ForAll @DoubleRange(min = 1, max = 170) double degrees,
            @ForAll Side turn,
            @ForAll @DoubleRange(min = 0.05, max = 6) double inches) {
        Length within = Length.ofInches(inches);
        Curve curve = Curve.of(turn, Length.ofFeet(radius), Angle.ofDegrees(degrees));
        Course course = Course.curve(turn)
                .radius(curve.radius())
                .delta(curve.delta())
                .chordBearing(Bearing.EAST)
                .build();
        // A rectangle deep enough beside the chord, the lot on its left.
        Length deep = curve.radius().times(4);
        LotBoundary lot = LotBoundary.of(List.of(
                        course,
                        Course.of(Bearing.NORTH, deep),
                        Course.of(Bearing.WEST, course.distance()),
                        Course.of(Bearing.SOUTH, deep)))
                .withFacetsWithin(within);
        Assume.that(lot.outline().isPresent());
        LotSide side = lot.sides().get(0);
        boolean bulgesOut = turn == Side.LEFT;
        Point centre = side.start()
                .plus(
                        side.adjusted().tangentIn().plus(turn == Side.LEFT ? Angle.RIGHT.negated() : Angle.RIGHT),
                        curve.radius());
        int last = side.facets() - 1;
        for (int i = 0; i <= last; i++) {
            Segment facet = side.line().segments().get(i);
            double near = facet.distanceTo(centre).minus(curve.radius()).millimetres();
            double far = Length.max(
                            facet.start().distanceTo(centre), facet.end().distanceTo(centre))
                    .minus(curve.radius())
                    .millimetres();
            double slack = 1e-3;
            if (bulgesOut) {
                assertThat(far).isLessThan(slack);
                assertThat(near).isGreaterThan(-within.millimetres() - slack);
            } else {
                assertThat(near).isGreaterThan(-slack);
                assertThat(far).isLessThan(within.millimetres() + slack);
            }
            double whole =
                    side.line().segments().get(Math.min(1, last)).length().millimetres();
            boolean half = !bulgesOut && last > 1 && (i == 0 || i == last);
            assertThat(facet.length().millimetres()).isCloseTo(half ? whole / 2 : whole, within(1e-3));
        }
        double area = lot.area().orElseThrow().squareMetres();
        double facetted = lot.outline().orElseThrow().area().squareMetres();
        assertThat(facetted).isBetween(area - curve.arc().metres() * within.metres(), area + 1e-6 * area);
    }

    @Property
    void anyTwoCallsMakeTheSameCurve(
            @ForAll @DoubleRange(min = 5, max = 2000) double radius,
            @ForAll @DoubleRange(min = 2, max = 358) double degrees,
            @ForAll Side turn) {
        Curve curve = Curve.of(turn, Length.ofFeet(radius), Angle.ofDegrees(degrees));
        Course told = Course.curve(turn)
                .radius(curve.radius())
                .delta(curve.delta())
                .arc(curve.arc())
                .chord(curve.chord())
                .tangentIn(Bearing.NORTH)
                .build();
        assertThat(told.findings()).isEmpty();
        CurveCall byChord =
                Course.curve(turn).radius(curve.radius()).chord(curve.chord()).tangentIn(Bearing.NORTH);
        for (Course again : List.of(
                Course.curve(turn)
                        .radius(curve.radius())
                        .arc(curve.arc())
                        .tangentIn(Bearing.NORTH)
                        .build(),
                Course.curve(turn)
                        .delta(curve.delta())
                        .arc(curve.arc())
                        .tangentOut(told.tangentOut())
                        .build(),
                (curve.isMajor() ? byChord.major() : byChord.minor()).build())) {
            assertThat(again.distance().millimetres()).isCloseTo(told.distance().millimetres(), within(1e-3));
            assertThat(again.length().millimetres()).isCloseTo(told.length().millimetres(), within(1.0));
            assertThat(again.bearing().turnTo(told.bearing()).abs().degrees()).isLessThan(0.001);
        }
    }

    /** Without curves the search that knows curves finds the same pair of sides as that of the polygon. */
    @Property
    void bothSearchesForCrossingsAgree(@ForAll @Size(min = 3, max = 9) List<@From("points") Point> corners) {
        for (int i = 0; i < corners.size(); i++) {
            Assume.that(!corners.get(i).equals(corners.get((i + 1) % corners.size())));
        }
        List<Course> courses = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            courses.add(Course.between(corners.get(i), corners.get((i + 1) % corners.size())));
        }
        Optional<SelfCrossing> expected = Polygon.of(corners).firstSelfCrossing();
        Optional<SelfCrossing> found = CurvedCrossing.first(corners, courses);
        assertThat(found.map(crossing -> List.of(crossing.side(), crossing.otherSide())))
                .isEqualTo(expected.map(crossing -> List.of(crossing.side(), crossing.otherSide())));
    }

    /** A lot whose corners are rounded has the area of the square ones less that of each fillet. */
    @Property
    void fillets(
            @ForAll @DoubleRange(min = 1, max = 20) double radius,
            @ForAll @DoubleRange(min = 41, max = 90) double wide) {
        Length run = Length.ofFeet(wide - 2 * radius);
        List<Course> courses = new ArrayList<>();
        for (Bearing bearing : List.of(Bearing.NORTH, Bearing.EAST, Bearing.SOUTH, Bearing.WEST)) {
            Course side = Course.of(bearing, run);
            courses.add(side);
            courses.add(Course.curve(Side.RIGHT)
                    .radius(Length.ofFeet(radius))
                    .delta(Angle.RIGHT)
                    .tangentTo(side)
                    .build());
        }
        LotBoundary lot = LotBoundary.of(courses);
        assertThat(lot.findings()).isEmpty();
        assertThat(lot.area().orElseThrow().squareFeet())
                .isCloseTo(wide * wide - (4 - Math.PI) * radius * radius, within(1e-4));
        assertThat(lot.closure().perimeter().feet())
                .isCloseTo(4 * (wide - 2 * radius) + 2 * Math.PI * radius, within(1e-6));
    }
}
