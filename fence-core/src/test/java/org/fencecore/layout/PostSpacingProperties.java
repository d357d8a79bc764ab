package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;

class PostSpacingProperties {

    private static final Length NANOMETRE = Length.ofNanometres(1);

    /** A stretch in whole inches with what is in the way. */
    record Job(int length, int maximum, int minimum, List<int[]> forbidden) {

        PostSpacing fit(BayRule rule) {
            return PostSpacing.fit(Length.ofInches(length), spec(rule), intervals());
        }

        PostSpacingSpec spec(BayRule rule) {
            return PostSpacingSpec.builder()
                    .maximum(Length.ofInches(maximum))
                    .minimum(Length.ofInches(minimum))
                    .rule(rule)
                    .build();
        }

        List<Interval> intervals() {
            return forbidden.stream()
                    .map(f -> Interval.of(Length.ofInches(f[0]), Length.ofInches(f[1])))
                    .toList();
        }

        Job mirrored() {
            return new Job(
                    length,
                    maximum,
                    minimum,
                    forbidden.stream()
                            .map(f -> new int[] {length - f[1], length - f[0]})
                            .toList());
        }

        boolean isFree(int station) {
            return forbidden.stream().noneMatch(f -> f[0] < station && station < f[1]);
        }

        @Override
        public String toString() {
            return length + " in, bays " + minimum + " to " + maximum + ", not in "
                    + forbidden.stream().map(Arrays::toString).toList();
        }
    }

    /**
     * Lengths and edges in multiples of 12 and at most 4 bays, so that any even posts between edges are whole inches and
     * going through all whole inches misses nothing.
     */
    @Provide
    Arbitrary<Job> small() {
        Arbitrary<Integer> dozens = Arbitraries.integers().between(1, 12);
        return job(dozens.map(d -> 12 * d), Arbitraries.integers().between(24, 60), 12, 4);
    }

    @Provide
    Arbitrary<Job> large() {
        return job(
                Arbitraries.integers().between(100, 2400),
                Arbitraries.integers().between(40, 100),
                1,
                12);
    }

    private static Arbitrary<Job> job(Arbitrary<Integer> lengths, Arbitrary<Integer> maxima, int step, int most) {
        Arbitrary<Integer> least = Arbitraries.integers().between(0, 100);
        return Combinators.combine(lengths, maxima, least).as(Length3::new).flatMap(sizes -> {
            Arbitrary<int[]> stretch = Combinators.combine(
                            Arbitraries.integers().between(-2, sizes.length / step),
                            Arbitraries.integers().between(0, Math.max(1, 40 / step)))
                    .as((from, width) -> new int[] {from * step, (from + width) * step});
            return stretch.list()
                    .ofMaxSize(most)
                    .map(forbidden ->
                            new Job(sizes.length, sizes.maximum, sizes.maximum * sizes.leastPercent / 100, forbidden));
        });
    }

    private record Length3(int length, int maximum, int leastPercent) {}

    /** The fewest posts, then the least sum of squares, by trying all that stand on whole inches. */
    @Property(tries = 400)
    void smallStretchesAreAsGoodAsBruteForce(@ForAll("small") Job job) {
        long[] best = {5, Long.MAX_VALUE};
        bruteForce(job, 0, 0, 0, best);
        PostSpacing spacing = job.fit(BayRule.EQUAL);
        boolean kept = spacing.findings().stream()
                .noneMatch(finding ->
                        finding.code().equals("bay-short") || finding.code().equals("forbidden-too-wide"));
        if (best[0] == 5) {
            assertThat(!kept || spacing.bayCount() > 4).isTrue();
            return;
        }
        assertThat(kept).isTrue();
        assertThat(spacing.bayCount()).isEqualTo((int) best[0]);
        assertThat(squares(spacing)).isCloseTo((double) best[1], within(1e-6));
    }

    private static void bruteForce(Job job, int station, int bays, long squares, long[] best) {
        if (station == job.length) {
            if (bays < best[0] || (bays == best[0] && squares < best[1])) {
                best[0] = bays;
                best[1] = squares;
            }
            return;
        }
        long baysLeft = Math.min(4, best[0]) - bays;
        if (baysLeft * job.maximum < job.length - station) {
            return;
        }
        for (int bay = Math.max(1, job.minimum); bay <= job.maximum && station + bay <= job.length; bay++) {
            int next = station + bay;
            if (next == job.length || job.isFree(next)) {
                bruteForce(job, next, bays + 1, squares + (long) bay * bay, best);
            }
        }
    }

    /** If a stretch that is the same from both ends has posts that are not, no such posts are as good. */
    @Property(tries = 300)
    void postsAreTheSameFromBothEndsWhereThatIsAsGood(@ForAll("small") Job half) {
        List<int[]> both = new ArrayList<>(half.forbidden);
        both.addAll(half.mirrored().forbidden);
        Job job = new Job(half.length, half.maximum, half.minimum, both);
        PostSpacing spacing = job.fit(BayRule.EQUAL);
        List<Length> bays = spacing.bays();
        boolean same = true;
        for (int i = 0; i < bays.size(); i++) {
            Length difference = bays.get(i).minus(bays.get(bays.size() - 1 - i));
            same &= difference.abs().compareTo(NANOMETRE) <= 0;
        }
        if (!same && bays.size() <= 4) {
            assertThat(symmetricSquares(job, bays.size())).isGreaterThan(squares(spacing) + 1e-6);
        }
    }

    private static double symmetricSquares(Job job, int bays) {
        double least = Double.POSITIVE_INFINITY;
        for (int first = 0; first <= (bays == 4 ? job.length : 0); first++) {
            for (int second = Math.max(1, first); 2 * second <= job.length; second++) {
                int[] posts = {0, first, second, job.length - second, job.length - first, job.length};
                int[] distinct = Arrays.stream(posts).sorted().distinct().toArray();
                double squares = 0;
                boolean fits = distinct.length == bays + 1;
                for (int i = 1; i < distinct.length; i++) {
                    int bay = distinct[i] - distinct[i - 1];
                    fits &= bay >= job.minimum && bay <= job.maximum;
                    fits &= i == distinct.length - 1 || job.isFree(distinct[i]);
                    squares += (double) bay * bay;
                }
                least = fits ? Math.min(least, squares) : least;
            }
        }
        return least;
    }

    /** A dynamic programme over whole inches never finds anything better. */
    @Property(tries = 300)
    void nothingOnAGridIsBetter(@ForAll("large") Job job) {
        double[] grid = onInches(job);
        PostSpacing spacing = job.fit(BayRule.EQUAL);
        if (Double.isInfinite(grid[1])) {
            return;
        }
        assertThat(spacing.findings()).extracting("code").doesNotContain("bay-short", "forbidden-too-wide");
        assertThat(spacing.bayCount()).isLessThanOrEqualTo((int) grid[0]);
        if (spacing.bayCount() == (int) grid[0]) {
            assertThat(squares(spacing)).isLessThanOrEqualTo(grid[1] + 1e-6);
        }
    }

    /** Bays and sum of squares, the latter infinite if no posts on whole inches keep all limits. */
    private static double[] onInches(Job job) {
        int[] bays = new int[job.length + 1];
        double[] squares = new double[job.length + 1];
        Arrays.fill(squares, Double.POSITIVE_INFINITY);
        squares[0] = 0;
        for (int to = 1; to <= job.length; to++) {
            if (to < job.length && !job.isFree(to)) {
                continue;
            }
            for (int bay = Math.max(1, job.minimum); bay <= Math.min(to, job.maximum); bay++) {
                int from = to - bay;
                double sum = squares[from] + (double) bay * bay;
                boolean fewer = bays[from] + 1 < bays[to];
                if (Double.isFinite(sum)
                        && (Double.isInfinite(squares[to])
                                || fewer
                                || (bays[from] + 1 == bays[to] && sum < squares[to]))) {
                    bays[to] = bays[from] + 1;
                    squares[to] = sum;
                }
            }
        }
        return new double[] {bays[job.length], squares[job.length]};
    }

    @Property
    void everyRuleKeepsItsLimitsOrSaysSo(@ForAll("large") Job job, @ForAll BayRule rule) {
        PostSpacing spacing = job.fit(rule);
        List<Length> stations = spacing.stations();
        List<String> codes =
                spacing.findings().stream().map(finding -> finding.code()).toList();

        assertThat(stations.get(0)).isEqualTo(Length.ZERO);
        assertThat(stations.get(spacing.bayCount())).isEqualTo(Length.ofInches(job.length));
        assertThat(spacing.bays().stream().reduce(Length.ZERO, Length::plus)).isEqualTo(Length.ofInches(job.length));
        for (Interval forbidden : job.intervals()) {
            assertThat(stations.subList(1, spacing.bayCount()))
                    .noneMatch(station ->
                            station.compareTo(forbidden.start()) > 0 && station.compareTo(forbidden.end()) < 0);
        }
        for (Length bay : spacing.bays()) {
            assertThat(bay.isPositive()).isTrue();
            if (!codes.contains("forbidden-too-wide")) {
                assertThat(bay).isLessThanOrEqualTo(Length.ofInches(job.maximum));
            }
            if (!codes.contains("bay-short")) {
                assertThat(bay).isGreaterThanOrEqualTo(Length.ofInches(job.minimum));
            }
            assertThat(bay.minus(spacing.longestBay())).isLessThanOrEqualTo(NANOMETRE);
            assertThat(spacing.shortestBay().minus(bay)).isLessThanOrEqualTo(NANOMETRE);
        }
        assertThat(spacing.worksheet().result()).isIn(spacing.spacing(), spacing.longestBay());
        assertThat(spacing.bayCount()).isEqualTo(job.fit(BayRule.EQUAL).bayCount());
    }

    @Property
    void aMirroredStretchHasMirroredPosts(@ForAll("large") Job job, @ForAll BayRule rule) {
        BayRule other = switch (rule) {
            case REMAINDER_AT_START -> BayRule.REMAINDER_AT_END;
            case REMAINDER_AT_END -> BayRule.REMAINDER_AT_START;
            default -> rule;
        };
        List<Length> stations = job.fit(rule).stations();
        List<Length> mirrored = job.mirrored().fit(other).stations();
        List<Length> expected = new ArrayList<>();
        for (int i = stations.size() - 1; i >= 0; i--) {
            expected.add(Length.ofInches(job.length).minus(stations.get(i)));
        }
        assertThat(mirrored).hasSameSizeAs(expected);
        for (int i = 0; i < expected.size(); i++) {
            // The very middle of an odd number of nanometres is half of one off.
            assertThat(mirrored.get(i).minus(expected.get(i)).abs()).isLessThanOrEqualTo(NANOMETRE);
        }
    }

    @Property
    void sticksAreNeverShorterThanTheirBays(
            @ForAll @IntRange(min = 10, max = 3000) int length,
            @ForAll @IntRange(min = 20, max = 240) int stock,
            @ForAll @IntRange(min = 20, max = 120) int maximum,
            @ForAll BayRule rule) {
        PostSpacing spacing = PostSpacing.fit(
                Length.ofInches(length),
                PostSpacingSpec.builder()
                        .maximum(Length.ofInches(maximum))
                        .railStock(Length.ofInches(stock))
                        .rule(rule)
                        .build());
        Length waste = spacing.railWaste().orElseThrow();
        assertThat(waste).isGreaterThanOrEqualTo(Length.ZERO);
        assertThat(waste.plus(Length.ofInches(length)).nanometres()
                        % Length.ofInches(stock).nanometres())
                .isZero();
        // With full bays no stick but those of the bays that share the remainder loses more than rounding.
        assertThat(spacing.spec().fullBay()).isLessThanOrEqualTo(Length.ofInches(Math.min(stock, maximum)));
    }

    private static double squares(PostSpacing spacing) {
        return spacing.bays().stream()
                .mapToDouble(bay -> bay.inches() * bay.inches())
                .sum();
    }
}
