package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.json.Job;
import org.fencecore.json.JobJson;
import org.fencecore.json.PlanJson;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.packet.BuildPacket;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** Jobs that were written as JSON and read again are planned to the same fence, however wild they are. */
class WildJobsAsJsonProperties {

    private final NeverThrowsProperties wild = new NeverThrowsProperties();

    @Provide
    Arbitrary<Site> sites() {
        return wild.sites();
    }

    @Provide
    Arbitrary<FenceStyle> styles() {
        return wild.styles();
    }

    @Provide
    Arbitrary<LotBoundary> curvedLots() {
        return wild.curvedLots();
    }

    @Provide
    Arbitrary<Obstacles> obstacles() {
        return wild.obstacles();
    }

    private static void assertSameAgain(Job job) {
        String written = JobJson.write(job);
        Job read = JobJson.read(written);
        assertThat(JobJson.write(read)).isEqualTo(written);
        FencePlan plan = job.plan();
        FencePlan again = read.plan();
        assertThat(BuildPacket.of(again).sheet().toText())
                .isEqualTo(BuildPacket.of(plan).sheet().toText());
        String told = PlanJson.write(plan);
        assertThat(PlanJson.write(again)).isEqualTo(told);
        assertThat(PlanJson.write(PlanJson.read(told))).isEqualTo(told);
    }

    @Property(tries = 150)
    void wildJobsStayTheSame(@ForAll("sites") Site site, @ForAll("styles") FenceStyle style) {
        assertSameAgain(Job.of(site, style));
    }

    @Property(tries = 60)
    void curvedLotsAndObstaclesStayTheSame(
            @ForAll("curvedLots") LotBoundary lot,
            @ForAll("obstacles") Obstacles inTheWay,
            @ForAll @IntRange(min = 2, max = 40) int feet,
            @ForAll("styles") FenceStyle style) {
        Site.Builder site = Site.on(lot)
                .obstacles(inTheWay)
                .ground(Plane.of(
                        Point.ORIGIN,
                        Length.ofInches(feet / 3.0),
                        Slope.of(Length.ofFeet(1), Length.ofFeet(feet)),
                        Slope.ofPercent(feet / 7.0)))
                .gate(GateLocation.named("on the curve")
                        .onSide(2)
                        .centredAt(Length.ofFeet(feet))
                        .clearOpening(Length.ofInches(36))
                        .build());
        for (int side = 1; side <= lot.courses().size(); side++) {
            site.fenceOn(side);
        }
        assertSameAgain(Job.of(site.build(), style));
    }
}
