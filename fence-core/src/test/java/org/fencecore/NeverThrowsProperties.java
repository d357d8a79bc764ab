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
import org.fencecore.footing.PostSetting;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.packet.BuildPacket;
import org.fencecore.rail.RailSpec;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodSpecies;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;

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
                        Arbitraries.of(HingeSide.class),
                        Arbitraries.integers().between(0, 15))
                .as((side, centre, opening, hinges, wishes) -> GateLocation.named("gate at " + centre + " on " + side)
                        .onSide(side)
                        .centredAt(Length.ofFeet(centre))
                        .clearOpening(Length.ofInches(opening))
                        .hinges(hinges)
                        .twoLeaves((wishes & 1) != 0)
                        .raked((wishes & 2) != 0)
                        .opensOutward((wishes & 4) != 0)
                        .selfClosing((wishes & 8) != 0)
                        .selfLatching((wishes & 8) != 0)
                        .latchRelease(Length.ofInches(40 + wishes), (wishes & 8) != 0)
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
                        boards(Arbitraries.of(
                                BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1)),
                                BoardPattern.sideBySide(Length.ofInches(5.5)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2))
                                        .withGapAtEnds(),
                                BoardPattern.boardOnBoard(Length.ofInches(5.5)),
                                BoardPattern.boardAndBatten(Length.ofInches(5.5), Length.ofInches(2.5)))),
                        Arbitraries.of(Lumber.fourByFour(), Lumber.sixBySix()),
                        Arbitraries.doubles().between(0.75, 20).ofScale(2),
                        Arbitraries.doubles().between(5.5, 30).ofScale(1),
                        Arbitraries.integers().between(0, 40),
                        slopes(),
                        Arbitraries.of(
                                TopShape.straight(),
                                TopShape.followingGround(),
                                TopShape.stepped(),
                                TopShape.arched(Length.ofInches(8)),
                                TopShape.dipped(Length.ofInches(8))),
                        rails())
                .as((boards, posts, spacing, hole, hardware, slope, top, rails) -> boards.on(slope, top)
                        .gateHardware(hardware(hardware))
                        .rails(rails)
                        .postLumber(posts)
                        .postSpacing(PostSpacingSpec.builder()
                                .minimum(Length.ZERO)
                                .maximum(Length.ofFeet(spacing))
                                .build())
                        .setting(PostSetting.builder()
                                .holeDiameter(Length.ofInches(
                                        Math.max(hole, posts.width().inches() * 1.5)))
                                .build())
                        .gate(GateSpec.builder()
                                .middleRail(hardware % 3 == 0)
                                .joint(List.of(FrameJoint.values()).get(hardware % 4))
                                .build())
                        .build());
    }

    /** Boards that lie, where all else takes that, with ends cut in every way and posts of every height. */
    private record Boards(BoardPattern pattern, BoardEnds ends, boolean lying, Length postsAbove) {

        FenceStyle.Builder on(SlopeSpec slope, TopShape top) {
            FenceStyle.Builder style = FenceStyle.builder().pattern(pattern).slope(slope);
            WoodInUse wood = WoodInUse.of(WoodSpecies.LOBLOLLY_PINE, Ratio.ofPercent(19))
                    .between(Ratio.ofPercent(12), Ratio.ofPercent(25));
            boolean lies = lying
                    && !pattern.isLapped()
                    && !pattern.hasGapAtEnds()
                    && slope.underBoards() != SlopeSpec.UnderBoards.BOARDS_TO_GROUND;
            return lies
                    ? style.boards(BoardStyle.horizontal().withWood(wood))
                    : style.boards(BoardStyle.upright().withEnds(ends).withWood(wood))
                            .top(top)
                            .postAboveBoards(postsAbove);
        }
    }

    private static Arbitrary<Boards> boards(Arbitrary<BoardPattern> patterns) {
        return Combinators.combine(
                        patterns,
                        Arbitraries.of(
                                BoardEnds.square(),
                                BoardEnds.square().withDogEars(Length.ofInches(1.5)),
                                BoardEnds.square().withSlopedTop().withSlopedBottom()),
                        Arbitraries.of(true, false),
                        Arbitraries.of(0, 2, -4).map(Length::ofInches))
                .as(Boards::new);
    }

    private static GateHardware hardware(int size) {
        GateHardware.Builder hardware = GateHardware.builder();
        if (size % 3 != 1) {
            hardware.hingeInset(Length.ofInches(size + 0.5));
        }
        return (size % 2 == 0
                        ? hardware.butts(Length.ofInches(size + 1))
                        : hardware.straps(Length.ofInches(size), Length.ofInches(3 * size)))
                .openTo(Angle.ofDegrees(30 + 3 * size))
                .hinges(2 + size % 5)
                .build();
    }

    private static Arbitrary<SlopeSpec> slopes() {
        return Combinators.combine(
                        Arbitraries.of(Treatment.class),
                        Arbitraries.of(SlopeSpec.UnderBoards.class),
                        Arbitraries.doubles().between(2, 100).ofScale(1).injectNull(0.3))
                .as((treatment, under, limit) -> {
                    SlopeSpec.Builder slope =
                            SlopeSpec.builder().treatment(treatment).underBoards(under);
                    if (limit != null) {
                        slope.maximumGrade(Slope.ofPercent(limit));
                    }
                    return slope.build();
                });
    }

    private static Arbitrary<RailSpec> rails() {
        return Combinators.combine(
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.doubles().between(1, 20).ofScale(1))
                .as((between, bays, stick) -> {
                    RailSpec.Builder rails = RailSpec.builder().mostBays(bays).longestStick(Length.ofFeet(stick));
                    return (between ? rails.betweenPosts() : rails.trim(Length.ofInches(1))).build();
                });
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
                    .allSatisfy(bay -> assertThat(bay.rails().isEmpty())
                            .isEqualTo(style.boards().isHorizontal()));
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
            @ForAll boolean twoLeaves,
            @ForAll boolean raked,
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
                        .ground(Plane.of(
                                Point.ORIGIN, Length.ZERO, Slope.ofPercent(percent), Slope.ofPercent(percent / 7)))
                        .gate(GateLocation.named("gate")
                                .onSide(1)
                                .centredAt(Length.ofFeet(easts.get(0) / 3 + 8))
                                .clearOpening(Length.ofInches(40 + norths.get(0)))
                                .twoLeaves(twoLeaves)
                                .raked(raked)
                                .opensOutward(outside == Side.LEFT)
                                .build())
                        .build(),
                style);
        assertThat(plan.worksheets()).isNotEmpty();
        assertThat(plan.worksheets().stream().map(Worksheet::title)).doesNotHaveDuplicates();
        assertThat(BuildPacket.of(plan).files()).containsKey("build-sheet.txt");
        if (plan.isBuildable()) {
            assertThat(plan.runs()).hasSize(points.size() - 1);
        }
    }

    /** A lot of five sides whose second is a curve to either hand, from nearly straight to more than half round. */
    @Provide
    Arbitrary<LotBoundary> curvedLots() {
        return Combinators.combine(
                        Arbitraries.doubles().between(1, 80).ofScale(2),
                        Arbitraries.doubles().between(2, 200).ofScale(1),
                        Arbitraries.doubles().between(5, 60).ofScale(2),
                        Arbitraries.of(Side.class),
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(0, 90))
                .as((front, delta, radius, turn, clockwise, back) -> {
                    Course first = Plans.course(0, front);
                    Course curve = Course.curve(turn)
                            .radius(Length.ofFeet(radius))
                            .delta(Angle.ofDegrees(delta))
                            .tangentTo(first)
                            .build();
                    double way = clockwise ? 90 : 270;
                    return closed(List.of(first, curve, Plans.course(way, 100), Plans.course(way + 60 + back, 90)));
                });
    }

    private static Point at(int eastFeet, int northFeet) {
        return Point.of(Length.ofFeet(eastFeet), Length.ofFeet(northFeet));
    }

    private static Polyline line(int east, int north, int along, int up) {
        return Polyline.of(List.of(at(east, north), at(east + along, north + up)));
    }

    @Provide
    Arbitrary<Obstacles> obstacles() {
        Arbitrary<Integer> place = Arbitraries.integers().between(-60, 160);
        Arbitrary<Integer> reach = Arbitraries.integers().between(1, 150);
        return Combinators.combine(place, place, reach, Arbitraries.integers().between(0, 5))
                .as((east, north, size, kind) -> {
                    Polyline line = line(east, north, size, 40 - size);
                    Length small = Length.ofInches(size);
                    return switch (kind) {
                        case 0 -> Obstacle.utility(UtilityKind.GAS, line);
                        case 1 -> Obstacle.tree(at(east, north), small, small.times(2));
                        case 2 -> Obstacle.wall(line, small);
                        case 3 -> Obstacle.hydrant(at(east, north), small);
                        case 4 ->
                            Obstacle.structure(Polygon.of(
                                    List.of(at(east, north), at(east + size, north), at(east, north + size))));
                        default -> Obstacle.utility(UtilityKind.OTHER, line, small);
                    };
                })
                .list()
                .ofMaxSize(8)
                .map(Obstacles::of);
    }

    private static LocalRules rules(int feet) {
        Citation town = Citation.of("invented town code", "1", "");
        Polyline street = line(-20, 0, 200, feet);
        return LocalRules.of(List.of(
                HeightLimit.of(Zone.along(street, Length.ofFeet(feet)), Length.ofInches(10 * feet), "front", town),
                HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(6), "permit", town),
                CornerVisibility.of(
                        Corner.of(at(0, 0), Bearing.SOUTH, Bearing.EAST, Side.LEFT),
                        Length.ofFeet(feet),
                        Length.ofFeet(25),
                        Length.ofFeet(3),
                        "corner",
                        town),
                ClearGround.easement(Zone.along(street, Length.ofFeet(2)), "drain", town),
                ClearGround.noHoles(Zone.around(at(40, 40), Length.ofFeet(feet)), "tank", town),
                PoolBarrier.builder(Side.RIGHT, "pool", PoolBarrier.PUBLISHED).build()));
    }

    private static ShotSurface bumps(List<Integer> inches) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < inches.size(); i++) {
            // Twelve shots a row, 40 ft apart and a little out of line, round every lot that is tried here.
            Point place = at(-180 + 40 * (i % 12) + i % 7, -180 + 40 * (i / 12) + i % 5);
            shots.add(new Shot(place, Length.ofInches(inches.get(i))));
        }
        return ShotSurface.of(shots);
    }

    /** Everything that a site can hold at once, and posts set elsewhere on top of it. */
    @Property(tries = 100)
    void curvedLotsWithAllThatIsInTheirWayArePlanned(
            @ForAll("curvedLots") LotBoundary lot,
            @ForAll("obstacles") Obstacles inTheWay,
            @ForAll @Size(144) List<@IntRange(min = -60, max = 60) Integer> heights,
            @ForAll @IntRange(min = 2, max = 40) int feet,
            @ForAll @IntRange(max = 120) int setbackInches,
            @ForAll boolean outward,
            @ForAll @Size(max = 30) List<@IntRange(min = -40, max = 40) Integer> off,
            @ForAll("styles") FenceStyle style) {
        Site.Builder site = Site.on(lot)
                .ground(bumps(heights))
                .setback(Length.ofInches(setbackInches))
                .obstacles(inTheWay)
                .rules(rules(feet))
                .gate(GateLocation.named("on the curve")
                        .onSide(2)
                        .centredAt(Length.ofFeet(feet))
                        .clearOpening(Length.ofInches(36))
                        .opensOutward(outward)
                        .build());
        for (int side = 1; side <= lot.courses().size(); side++) {
            site.fenceOn(side);
        }
        FencePlan plan = FencePlanner.plan(site.build(), style);
        assertThat(plan.worksheets()).isNotEmpty();
        assertThat(BuildPacket.of(plan).files()).containsKey("build-sheet.txt");
        assertThat(!plan.gates().isEmpty() || !plan.isBuildable()).isTrue();
        Length least = site.build()
                .setback()
                .plus(style.postLumber().width().dividedBy(2))
                .minus(Length.ofMillimetres(0.01));
        for (Post post : plan.posts()) {
            assertThat(lot.outline().orElseThrow().sides())
                    .allMatch(side -> side.distanceTo(post.centre()).compareTo(least) >= 0);
        }

        List<SetPost> set = new ArrayList<>();
        for (int i = 0; i < Math.min(off.size(), plan.posts().size()); i++) {
            Post post = plan.posts().get(i);
            Point centre = post.centre();
            set.add(SetPost.of(
                    post.number(),
                    Point.of(
                            centre.east().plus(Length.ofInches(off.get(i))),
                            centre.north().minus(Length.ofInches(off.get(off.size() - 1 - i))))));
        }
        FencePlan built = plan.withSetPosts(set);
        assertThat(BuildPacket.of(built).files()).containsKey("build-sheet.txt");
        for (Run run : built.runs()) {
            // Along a run, posts stay in the order of the stretches between them.
            List<Length> stations = run.posts().stream().map(run::station).toList();
            assertThat(stations).isSorted();
        }
    }
}
