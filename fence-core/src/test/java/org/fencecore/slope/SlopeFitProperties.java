package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

class SlopeFitProperties {

    private static final SlopeSpec SPEC = SlopeSpec.builder()
            .clearance(Length.ofInches(2))
            .minimumClearance(Length.ofInches(1))
            .build();

    private static final double MINIMUM = Length.ofInches(1).nanometres();

    /** Ground and posts made for each other. */
    record Run(Profile ground, List<Length> posts) {}

    @Property
    void boardsSampledAlongTheRunKeepTheMinimumAndTheReportedGaps(@ForAll("runs") Run run) {
        SlopeFit fit = SlopeFit.rack(run.ground(), run.posts(), SPEC);

        for (FittedBay bay : fit.bays()) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (double station : samples(run.ground(), bay)) {
                double gap = height(line(fit), station) - height(run.ground(), station);
                min = Math.min(min, gap);
                max = Math.max(max, gap);
            }
            // Heights at the posts are whole nanometres, so the two ways of working differ by that.
            assertThat(min).isGreaterThan(MINIMUM - 2);
            assertThat((double) bay.clearance().min().nanometres()).isEqualTo(min, within(2.0));
            assertThat((double) bay.clearance().max().nanometres()).isEqualTo(max, within(2.0));
        }
    }

    @Property
    void aMirroredRunHasTheMirroredFit(@ForAll("runs") Run run) {
        Length ends = run.ground().extent().start().plus(run.ground().extent().end());
        List<Length> mirrored = new ArrayList<>();
        for (Length post : run.posts()) {
            mirrored.add(0, ends.minus(post));
        }
        int bays = run.posts().size() - 1;

        SlopeFit fit = SlopeFit.rack(run.ground(), run.posts(), SPEC);
        SlopeFit mirror = SlopeFit.rack(run.ground().reversed(), mirrored, SPEC);

        for (int post = 0; post <= bays; post++) {
            assertThat(mirror.bottomAbove(bays - post)).isEqualTo(fit.bottomAbove(post));
        }
        for (int bay = 0; bay < bays; bay++) {
            FittedBay here = fit.bays().get(bay);
            FittedBay there = mirror.bays().get(bays - 1 - bay);
            assertThat(there.rise()).isEqualTo(here.rise().negated());
            assertThat(there.railLength()).isEqualTo(here.railLength());
            assertThat(there.endCut()).isEqualTo(here.endCut());
            assertThat(there.clearance().min()).isEqualTo(here.clearance().min());
            assertThat(there.clearance().max()).isEqualTo(here.clearance().max());
        }
        assertThat(mirror.findings()).hasSameSizeAs(fit.findings());
    }

    /** Shots are at least a tenth of a bay from the posts, so 1/1000 in less at a post shows at the high spot. */
    @Property
    void noPostCouldStandLower(@ForAll("runs") Run run) {
        SlopeFit fit = SlopeFit.rack(run.ground(), run.posts(), SPEC);
        List<ProfilePoint> line = line(fit).points();

        for (int post = 0; post < line.size(); post++) {
            if (fit.bottomAbove(post).equals(SPEC.clearance())) {
                continue;
            }
            List<ProfilePoint> lowered = new ArrayList<>(line);
            lowered.set(
                    post,
                    new ProfilePoint(
                            line.get(post).station(), line.get(post).elevation().minus(Length.ofInches(0.001))));
            assertThat(run.ground().clearanceUnder(Profile.of(lowered)).min()).isLessThan(SPEC.minimumClearance());
        }
    }

    @Property
    void noPostStandsHigherThanItsNeedierBayAsks(@ForAll("runs") Run run) {
        SlopeFit fit = SlopeFit.rack(run.ground(), run.posts(), SPEC);

        int last = run.posts().size() - 1;
        for (int post = 0; post <= last; post++) {
            long need = Math.max(need(run, Math.max(post - 1, 0)), need(run, Math.min(post, last - 1)));
            assertThat(fit.bottomAbove(post).minus(SPEC.clearance()).nanometres())
                    .isBetween(0L, need);
        }
    }

    @Property
    void groundStraightBetweenThePostsIsFollowed(
            @ForAll("runs") Run run, @ForAll @LongRange(min = -1_000_000_000L, max = 1_000_000_000L) long datum) {
        Profile.Builder straight = Profile.builder();
        for (Length post : run.posts()) {
            straight.point(post, run.ground().elevationAt(post).plus(Length.ofNanometres(datum)));
        }
        Profile ground = straight.build();

        SlopeFit fit = SlopeFit.rack(ground, run.posts(), SPEC);

        assertThat(line(fit)).isEqualTo(ground.shiftedBy(Length.ZERO, SPEC.clearance()));
        assertThat(fit.findings()).isEmpty();
        for (FittedBay bay : fit.bays()) {
            assertThat(bay.rise()).isEqualTo(ground.rise(bay.start(), bay.end()));
            assertThat(bay.railLength()).isEqualTo(ground.lengthAlong(bay.start(), bay.end()));
        }
    }

    /** The line of a fit without steps. */
    static Profile line(SlopeFit fit) {
        Profile.Builder line = Profile.builder()
                .point(fit.bays().get(0).start(), fit.bays().get(0).bottomAtStart());
        fit.bays().forEach(bay -> line.point(bay.end(), bay.bottomAtEnd()));
        return line.build();
    }

    /** How far the line at the bare clearance comes under the minimum in a bay, zero if it does not. */
    private static long need(Run run, int bay) {
        Length start = run.posts().get(bay);
        Length end = run.posts().get(bay + 1);
        Profile bare = Profile.builder()
                .point(start, run.ground().elevationAt(start).plus(SPEC.clearance()))
                .point(end, run.ground().elevationAt(end).plus(SPEC.clearance()))
                .build();
        Length lacking =
                SPEC.minimumClearance().minus(run.ground().clearanceUnder(bare).min());
        return Math.max(0, lacking.nanometres());
    }

    /** Every inch of the bay, its ends and the shots in it. */
    private static List<Double> samples(Profile ground, FittedBay bay) {
        double start = bay.start().nanometres();
        double end = bay.end().nanometres();
        List<Double> samples = new ArrayList<>(List.of(start, end));
        for (double at = start; at < end; at += Length.ofInches(1).nanometres()) {
            samples.add(at);
        }
        for (ProfilePoint shot : ground.points()) {
            double at = shot.station().nanometres();
            if (at > start && at < end) {
                samples.add(at);
            }
        }
        return samples;
    }

    /** The height of a line at a station, found shot by shot and in floating point. */
    private static double height(Profile line, double station) {
        List<ProfilePoint> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            double s0 = points.get(i - 1).station().nanometres();
            double s1 = points.get(i).station().nanometres();
            if (station <= s1) {
                double z0 = points.get(i - 1).elevation().nanometres();
                double z1 = points.get(i).elevation().nanometres();
                return z0 + (z1 - z0) * (station - s0) / (s1 - s0);
            }
        }
        throw new AssertionError("station " + station + " is beyond the line");
    }

    /**
     * Runs of 1 to 8 bays of 4 to 10 ft with four shots in each, at tenths of the bay; up to 6 in of roughness on a
     * straight grade of up to 40 % either way, coarse enough in its values that equal needs are common.
     */
    @Provide
    static Arbitrary<Run> runs() {
        Arbitrary<List<Integer>> widths =
                Arbitraries.integers().between(4, 10).list().ofMinSize(1).ofMaxSize(8);
        Arbitrary<List<Integer>> rough = Arbitraries.oneOf(
                        Arbitraries.of(0, 0, 3), Arbitraries.integers().between(-6_000, 6_000))
                .withoutEdgeCases()
                .list()
                .ofSize(41);
        Arbitrary<Integer> grade = Arbitraries.integers().between(-40, 40);
        return Combinators.combine(widths, rough, grade).as(SlopeFitProperties::run);
    }

    /** Roughness under 10 is in inches, else in thousandths. */
    private static Run run(List<Integer> widths, List<Integer> rough, int grade) {
        int[] tenths = {1, 4, 5, 8};
        Profile.Builder ground = Profile.builder();
        List<Length> posts = new ArrayList<>();
        Length start = Length.ZERO;
        int shot = 0;
        for (int width : widths) {
            posts.add(start);
            ground.point(start, elevation(start, grade, rough.get(shot++)));
            for (int tenth : tenths) {
                Length station = start.plus(Length.ofFeet(width * tenth / 10.0));
                ground.point(station, elevation(station, grade, rough.get(shot++)));
            }
            start = start.plus(Length.ofFeet(width));
        }
        posts.add(start);
        ground.point(start, elevation(start, grade, rough.get(shot)));
        return new Run(ground.build(), posts);
    }

    private static Length elevation(Length station, int grade, int rough) {
        double inches = Math.abs(rough) < 10 ? rough : rough / 1000.0;
        return Length.ofNanometres(station.nanometres() / 100 * grade).plus(Length.ofInches(inches));
    }
}
