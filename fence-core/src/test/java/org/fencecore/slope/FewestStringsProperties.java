package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;

/** Strings against every choice of nails, each solved as a linear program. */
class FewestStringsProperties {

    /** Gaps from 1 in to 2 in. */
    private static final SlopeSpec SPEC = SlopeSpec.builder()
            .clearance(Length.ofInches(1.5))
            .minimumClearance(Length.ofInches(1))
            .maximumClearance(Length.ofInches(2))
            .longestString(Length.ofFeet(32))
            .build();

    /** Ground and posts made for each other. */
    record Run(Profile ground, List<Length> posts) {}

    @Property(tries = 300)
    void stringsAreTheFewestAndTheirGapsDifferLeast(@ForAll("gentleRuns") Run run) {
        int fewest = Integer.MAX_VALUE;
        double spread = Double.POSITIVE_INFINITY;
        int inner = run.posts().size() - 2;
        for (int choice = 0; choice < 1 << inner; choice++) {
            int strings = Integer.bitCount(choice) + 1;
            double least = leastSpread(run, choice);
            if (least <= 1 + 1e-7 && (strings < fewest || (strings == fewest && least < spread))) {
                fewest = strings;
                spread = least;
            }
        }
        Assume.that(fewest < Integer.MAX_VALUE);

        SlopeFit fit = SlopeFit.strings(run.ground(), run.posts(), SPEC);

        assertThat(fit.strings()).hasSize(fewest);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (FittedBay bay : fit.bays()) {
            least = Math.min(least, bay.clearance().min().inches());
            most = Math.max(most, bay.clearance().max().inches());
        }
        assertThat(most - least).isEqualTo(spread, within(1e-4));
        assertThat(least).isGreaterThanOrEqualTo(1 - 1e-7);
        assertThat(most).isLessThanOrEqualTo(2 + 1e-7);
        assertThat((least + most) / 2).isEqualTo(1.5, within(1e-4));
        assertThat(fit.findings()).isEmpty();
    }

    /** Over hundreds of bays: with a twentieth of a millimetre less between minimum and maximum, more strings are needed. */
    @Property(tries = 20)
    void longRunsNeedMoreStringsWithLessRoom(
            @ForAll @IntRange(min = 300, max = 1200) int bays,
            @ForAll @IntRange(min = 50, max = 450) int rough,
            @ForAll @IntRange(min = 16, max = 100) int longest,
            @ForAll Random random) {
        Profile.Builder ground = Profile.builder();
        List<Length> posts = new ArrayList<>();
        for (int third = 0; third <= 3 * bays; third++) {
            double feet = third * 8 / 3.0;
            double inches = 40 * Math.sin(feet / 300) + rough / 1000.0 * (2 * random.nextDouble() - 1);
            ground.point(Length.ofFeet(feet), Length.ofInches(inches));
            if (third % 3 == 0) {
                posts.add(Length.ofFeet(feet));
            }
        }
        Run run = new Run(ground.build(), posts);

        SlopeFit fit = SlopeFit.strings(run.ground(), posts, withRoom(Length.ofInches(1), longest));

        Assume.that(fit.findings().isEmpty());
        Length spread = spread(fit);
        Length little = Length.ofMillimetres(0.05);
        SlopeFit enough = SlopeFit.strings(run.ground(), posts, withRoom(spread.plus(little), longest));
        assertThat(enough.strings()).hasSameSizeAs(fit.strings());
        assertThat(spread(enough).millimetres()).isEqualTo(spread.millimetres(), within(0.003));
        if (spread.compareTo(little) > 0) {
            SlopeFit tooLittle = SlopeFit.strings(run.ground(), posts, withRoom(spread.minus(little), longest));
            assertThat(!tooLittle.findings().isEmpty()
                            || tooLittle.strings().size() > fit.strings().size())
                    .isTrue();
        }
    }

    private static SlopeSpec withRoom(Length room, int longestFeet) {
        Length minimum = Length.ofInches(1);
        return SlopeSpec.builder()
                .clearance(minimum)
                .minimumClearance(minimum)
                .maximumClearance(minimum.plus(room))
                .longestString(Length.ofFeet(longestFeet))
                .build();
    }

    private static Length spread(SlopeFit fit) {
        Length least = fit.bays().get(0).clearance().min();
        Length most = fit.bays().get(0).clearance().max();
        for (FittedBay bay : fit.bays()) {
            least = bay.clearance().min().compareTo(least) < 0 ? bay.clearance().min() : least;
            most = bay.clearance().max().compareTo(most) > 0 ? bay.clearance().max() : most;
        }
        return most.minus(least);
    }

    /** On any ground: unbroken, never under the minimum, mirrored with the run, and at most one string a bay. */
    @Property(tries = 500)
    void stringsMeetAndKeepTheMinimumOnAnyGround(@ForAll("roughRuns") Run run) {
        SlopeFit fit = SlopeFit.strings(run.ground(), run.posts(), SPEC);
        Length ends = run.ground().extent().start().plus(run.ground().extent().end());
        List<Length> mirrored = new ArrayList<>();
        run.posts().forEach(post -> mirrored.add(0, ends.minus(post)));

        SlopeFit mirror = SlopeFit.strings(run.ground().reversed(), mirrored, SPEC);

        int bays = run.posts().size() - 1;
        boolean itsOwnMirror = run.ground().reversed().equals(run.ground()) && mirrored.equals(run.posts());
        assertThat(mirror.strings()).hasSameSizeAs(fit.strings());
        for (int post = 0; post <= bays; post++) {
            assertThat(fit.step(post)).isEqualTo(Length.ZERO);
            if (!itsOwnMirror) {
                assertThat(mirror.bottomAbove(bays - post).millimetres())
                        .isEqualTo(fit.bottomAbove(post).millimetres(), within(1e-5));
            }
        }
        for (FittedBay bay : fit.bays()) {
            assertThat(bay.clearance().min().inches()).isGreaterThan(1 - 1e-6);
        }
        assertThat(fit.strings()).allSatisfy(string -> {
            boolean oneBay = fit.bays().stream()
                    .anyMatch(bay ->
                            bay.start().equals(string.start()) && bay.end().equals(string.end()));
            assertThat(oneBay || string.length().compareTo(SPEC.longestString()) <= 0)
                    .isTrue();
        });
    }

    /** Returns how little the gaps can differ with these nails, in inches; endless where a string would be too long. */
    private static double leastSpread(Run run, int choice) {
        List<Length> nails = new ArrayList<>();
        for (int post = 0; post < run.posts().size(); post++) {
            boolean end = post == 0 || post == run.posts().size() - 1;
            if (end || ((choice >> (post - 1)) & 1) == 1) {
                nails.add(run.posts().get(post));
            }
        }
        int spread = nails.size();
        List<LinearConstraint> constraints = new ArrayList<>();
        int string = 0;
        for (ProfilePoint point : run.ground().points()) {
            while (point.station().compareTo(nails.get(string + 1)) > 0) {
                string++;
            }
            Length from = nails.get(string);
            Length to = nails.get(string + 1);
            if (to.minus(from).compareTo(SPEC.longestString()) > 0 && bays(run, from, to) > 1) {
                return Double.POSITIVE_INFINITY;
            }
            double share = point.station().minus(from).inches() / to.minus(from).inches();
            double[] line = new double[spread + 1];
            line[string] = 1 - share;
            line[string + 1] = share;
            constraints.add(new LinearConstraint(
                    line, Relationship.GEQ, point.elevation().inches()));
            double[] under = line.clone();
            under[spread] = -1;
            constraints.add(new LinearConstraint(
                    under, Relationship.LEQ, point.elevation().inches()));
        }
        double[] cost = new double[spread + 1];
        cost[spread] = 1;
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(cost, 0),
                        new LinearConstraintSet(constraints),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(false))
                .getValue();
    }

    private static long bays(Run run, Length from, Length to) {
        return run.posts().stream()
                .filter(post -> post.compareTo(from) > 0 && post.compareTo(to) <= 0)
                .count();
    }

    @Provide
    static Arbitrary<Run> gentleRuns() {
        return runs(6, 400);
    }

    @Provide
    static Arbitrary<Run> roughRuns() {
        return Arbitraries.oneOf(runs(12, 900), runs(12, 3000));
    }

    /** Runs of bays of 4 to 10 ft with shots at the posts and two in each bay, rough by thousandths of an inch. */
    private static Arbitrary<Run> runs(int mostBays, int rough) {
        Arbitrary<List<Integer>> widths =
                Arbitraries.integers().between(4, 10).list().ofMinSize(1).ofMaxSize(mostBays);
        Arbitrary<List<Integer>> heights = Arbitraries.oneOf(
                        Arbitraries.of(0, rough, rough / 2),
                        Arbitraries.integers().between(-rough, rough))
                .list()
                .ofSize(3 * mostBays + 1);
        Arbitrary<Integer> hill = Arbitraries.integers().between(-30, 30);
        return Combinators.combine(widths, heights, hill).as(FewestStringsProperties::run);
    }

    private static Run run(List<Integer> widths, List<Integer> heights, int hill) {
        Profile.Builder ground = Profile.builder();
        List<Length> posts = new ArrayList<>();
        double feet = 0;
        int shot = 0;
        for (int width : widths) {
            posts.add(Length.ofFeet(feet));
            for (double share : new double[] {0, 0.3, 0.6}) {
                point(ground, feet + share * width, heights.get(shot++), hill);
            }
            feet += width;
        }
        posts.add(Length.ofFeet(feet));
        point(ground, feet, heights.get(shot), hill);
        return new Run(ground.build(), posts);
    }

    /** A rounded hill under the roughness. */
    private static void point(Profile.Builder ground, double feet, int thousandths, int hill) {
        ground.point(Length.ofFeet(feet), Length.ofInches(thousandths / 1000.0 + hill * feet * feet / 3000));
    }
}
