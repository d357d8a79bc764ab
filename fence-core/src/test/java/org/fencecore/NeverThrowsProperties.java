package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Plane;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.Side;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.packet.BuildPacket;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodSpecies;

/**
 * A site or style that the builders take is planned, however wild: what does not work comes back as findings, never as an
 * exception, and no gate disappears without a word.
 */
class NeverThrowsProperties {

    @Provide
    Arbitrary<Site> sites() {
        Arbitrary<List<Course>> courses = Combinators.combine(
                        Arbitraries.doubles().between(0, 360).ofScale(2),
                        Arbitraries.doubles().between(0.5, 300).ofScale(2))
                .as(Plans::course)
                .list()
                .ofMinSize(2)
                .ofMaxSize(7);
        Arbitrary<LotBoundary> lots = Arbitraries.oneOf(
                courses.map(NeverThrowsProperties::closed),
                Combinators.combine(
                                Arbitraries.doubles().between(1, 300).ofScale(2),
                                Arbitraries.doubles().between(1, 300).ofScale(2))
                        .as(Plans::rectangle));
        return lots.flatMap(NeverThrowsProperties::siteOn);
    }

    /** The courses, and one that leads back to the beginning. */
    private static LotBoundary closed(List<Course> courses) {
        Point at = Point.ORIGIN;
        for (Course course : courses) {
            at = at.plus(course.bearing(), course.distance());
        }
        List<Course> all = new ArrayList<>(courses);
        if (!at.equals(Point.ORIGIN)) {
            all.add(Course.of(at.bearingTo(Point.ORIGIN), at.distanceTo(Point.ORIGIN)));
        }
        return all.size() < 3 ? Plans.rectangle(40, 40) : LotBoundary.of(all);
    }

    private static Arbitrary<Site> siteOn(LotBoundary lot) {
        int sides = lot.courses().size();
        Arbitrary<Double> heights = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(8, Arbitraries.doubles().between(-6, 6).ofScale(2)),
                net.jqwik.api.Tuple.of(
                        1, Arbitraries.doubles().between(-1000, 1000).ofScale(2)));
        Arbitrary<List<GateLocation>> gates = Combinators.combine(
                        Arbitraries.integers().between(1, sides),
                        Arbitraries.doubles().between(0, 300).ofScale(2),
                        Arbitraries.doubles().between(0.25, 150).ofScale(2),
                        Arbitraries.of(HingeSide.class))
                .as((side, centre, opening, hinges) -> GateLocation.named("gate at " + centre + " on " + side)
                        .onSide(side)
                        .centredAt(Length.ofFeet(centre))
                        .clearOpening(Length.ofInches(opening))
                        .hinges(hinges)
                        .build())
                .list()
                .ofMaxSize(3)
                .uniqueElements(GateLocation::name);
        return Combinators.combine(
                        Arbitraries.integers().between(1, sides).set().ofMinSize(1),
                        heights.list().ofSize(3 * sides),
                        gates,
                        Arbitraries.doubles().between(0, 30).ofScale(1),
                        Arbitraries.doubles().between(1, 500).ofScale(1).injectNull(0.3),
                        Arbitraries.integers().between(-3, 1))
                .as((fenced, ups, places, setback, wind, shotsShortBy) -> {
                    Site.Builder site = Site.on(lot).setback(Length.ofInches(setback));
                    fenced.forEach(site::fenceOn);
                    IntStream.rangeClosed(1, sides)
                            .forEach(side -> site.ground(side, ground(lot, side, ups, shotsShortBy)));
                    places.forEach(site::gate);
                    if (wind != null) {
                        site.windPressure(Pressure.ofPsf(wind));
                    }
                    return site.build();
                });
    }

    private static Profile ground(LotBoundary lot, int side, List<Double> ups, int shortBy) {
        double length = lot.courses().get(side - 1).distance().feet();
        double first = Math.max(0, shortBy) * length / 10;
        return Plans.shots(
                first,
                ups.get(3 * side - 3),
                first + length / 2,
                ups.get(3 * side - 2),
                Math.max(first + length, first + length - shortBy),
                ups.get(3 * side - 1));
    }

    @Provide
    Arbitrary<FenceStyle> styles() {
        return Combinators.combine(
                        Arbitraries.of(
                                BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1)),
                                BoardPattern.sideBySide(Length.ofInches(5.5)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2))
                                        .withGapAtEnds(),
                                BoardPattern.boardOnBoard(Length.ofInches(5.5)),
                                BoardPattern.boardAndBatten(Length.ofInches(5.5), Length.ofInches(2.5))),
                        Arbitraries.of(Lumber.fourByFour(), Lumber.sixBySix()),
                        Arbitraries.doubles().between(0.75, 20).ofScale(2),
                        Arbitraries.doubles().between(5.5, 30).ofScale(1),
                        Arbitraries.of(true, false),
                        Arbitraries.of(
                                BoardEnds.square(),
                                BoardEnds.square().withDogEars(Length.ofInches(1.5)),
                                BoardEnds.square().withSlopedTop().withSlopedBottom()),
                        Arbitraries.of(true, false))
                .as((pattern, posts, spacing, hole, middleRail, ends, lying) -> boards(pattern, lying)
                        .boardEnds(ends)
                        .postLumber(posts)
                        .postSpacing(PostSpacingSpec.builder()
                                .minimum(Length.ZERO)
                                .maximum(Length.ofFeet(spacing))
                                .build())
                        .holeDiameter(
                                Length.ofInches(Math.max(hole, posts.width().inches() * 1.5)))
                        .gate(GateSpec.builder().middleRail(middleRail).build())
                        .build());
    }

    /** Boards that lie, where the pattern takes that, of lumber that may be too short for the bays. */
    private static FenceStyle.Builder boards(BoardPattern pattern, boolean lying) {
        FenceStyle.Builder style = FenceStyle.builder()
                .pattern(pattern)
                .boardWood(WoodInUse.of(WoodSpecies.LOBLOLLY_PINE, Ratio.ofPercent(19))
                        .between(Ratio.ofPercent(12), Ratio.ofPercent(25)));
        return lying && !pattern.isLapped() && !pattern.hasGapAtEnds() ? style.horizontal() : style;
    }

    @Property(tries = 500)
    void whateverTheBuildersTakeIsPlanned(@ForAll("sites") Site site, @ForAll("styles") FenceStyle style) {
        FencePlan plan = FencePlanner.plan(site, style);
        for (GateLocation gate : site.gates()) {
            boolean planned =
                    plan.gates().stream().anyMatch(there -> there.location().equals(gate));
            assertThat(planned || !plan.isBuildable())
                    .as("gate %s is in the plan, or a blocker says why not", gate)
                    .isTrue();
        }
        if (plan.isBuildable()) {
            assertThat(plan.runs().stream().map(Run::side).distinct()).hasSameSizeAs(site.fencedSides());
            assertThat(plan.bays())
                    .allSatisfy(bay -> assertThat(bay.rails().isEmpty()).isEqualTo(style.isHorizontal()));
            assertThat(plan.stretches())
                    .allSatisfy(stretch -> assertThat(stretch.boardCount()).isPositive());
        }
        assertThat(plan.worksheets()).isNotEmpty();
        assertThat(BuildPacket.of(plan).files()).containsKey("build-sheet.txt");
    }

    @Property(tries = 200)
    void whereverPostsWereSetTheFenceIsPlannedToThem(
            @ForAll("sites") Site site,
            @ForAll("styles") FenceStyle style,
            @ForAll @Size(max = 12) List<@IntRange(min = -40, max = 40) Integer> inches) {
        FencePlan plan = FencePlanner.plan(site, style);
        List<SetPost> set = new ArrayList<>();
        for (int i = 0; i < Math.min(inches.size(), plan.posts().size()); i++) {
            Post post = plan.posts().get(i);
            set.add(SetPost.of(
                            post.number(),
                            Point.of(
                                    post.centre().east().plus(Length.ofInches(inches.get(i))),
                                    post.centre().north().minus(Length.ofInches(inches.get(i) / 2))))
                    .withExposed(Length.ofInches(50 + inches.get(i))));
        }
        FencePlan built = plan.withSetPosts(set);
        assertThat(built.worksheets()).isNotEmpty();
        assertThat(BuildPacket.of(built).files()).containsKey("build-sheet.txt");
        for (GateBay gate : plan.gates()) {
            boolean planned =
                    built.gates().stream().anyMatch(there -> there.location().equals(gate.location()));
            assertThat(planned || !built.isBuildable())
                    .as("%s is in the plan, or a blocker says why not", gate)
                    .isTrue();
        }
    }

    @Property(tries = 200)
    void anyLineOnAnyPlaneIsPlanned(
            @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = -20, max = 120) Double> easts,
            @ForAll @Size(min = 8, max = 8) List<@DoubleRange(min = -20, max = 120) Double> norths,
            @ForAll @DoubleRange(min = -150, max = 150) double percent,
            @ForAll boolean closed,
            @ForAll Side outside,
            @ForAll("styles") FenceStyle style) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < easts.size(); i++) {
            Point point = Point.of(Length.ofFeet(easts.get(i)), Length.ofFeet(norths.get(i)));
            if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                points.add(point);
            }
        }
        if (closed && points.size() > 2 && !points.get(0).equals(points.get(points.size() - 1))) {
            points.add(points.get(0));
        }
        if (points.size() < 2) {
            points.add(Point.of(Length.ofFeet(500), Length.ZERO));
        }
        FencePlan plan = FencePlanner.plan(
                Site.on(Plans.rectangle(100, 100))
                        .fenceAlong(Polyline.of(points), outside)
                        .ground(Plane.of(Point.ORIGIN, Length.ZERO, Slope.ofPercent(percent), Slope.LEVEL))
                        .build(),
                style);
        assertThat(plan.worksheets()).isNotEmpty();
        assertThat(BuildPacket.of(plan).files()).containsKey("build-sheet.txt");
        if (plan.isBuildable()) {
            assertThat(plan.runs()).hasSize(points.size() - 1);
        }
    }
}
