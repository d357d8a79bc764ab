package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.packet.BuildPacket;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Worksheet;

/**
 * A site or style that the builders take is planned, however wild: what does not work comes back as findings, never as an
 * exception, and no gate disappears without a word.
 */
class NeverThrowsProperties {

    @Provide
    Arbitrary<Site> sites() {
        return AnySite.sites();
    }

    @Provide
    Arbitrary<FenceStyle> styles() {
        return AnyStyle.styles();
    }

    @Provide
    Arbitrary<LotBoundary> curvedLots() {
        return AnySite.curvedLots();
    }

    @Provide
    Arbitrary<Obstacles> obstacles() {
        return AnySite.obstacles();
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
                .ground(AnySite.bumps(heights))
                .setback(Length.ofInches(setbackInches))
                .obstacles(inTheWay)
                .rules(AnySite.rules(feet))
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
