package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardPattern;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.Treatment;
import org.fencecore.style.FenceStyle;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/**
 * Varied lots planned one after the other and all at once give the same fences. Seeded; {@code -Dfuzz.plans=10000} makes
 * the long run.
 */
class ParallelPlanningTest {

    private static final int PLANS = Integer.getInteger("fuzz.plans", 400);

    /** All that is bought, dug and told of one fence. */
    private record Told(List<Post> posts, int boards, List<Length> rails, List<String> lines, List<Finding> findings) {

        static Told of(int seed) {
            FencePlan plan = plan(new Random(seed));
            return new Told(
                    plan.posts(),
                    plan.boardCount(),
                    plan.bays().stream().map(bay -> bay.slope().railLength()).toList(),
                    Takeoff.of(plan).materials().stream().map(Object::toString).toList(),
                    plan.findings());
        }
    }

    @Test
    void oneAfterTheOtherAndAllAtOnceAreTheSame() {
        List<Told> serial = IntStream.range(0, PLANS).mapToObj(Told::of).toList();

        List<Told> parallel =
                IntStream.range(0, PLANS).parallel().mapToObj(Told::of).toList();

        assertThat(parallel).isEqualTo(serial);
        assertThat(serial.stream().distinct().count()).isGreaterThan(PLANS * 9L / 10);
    }

    /** One plan asked by many threads at once says to each what it has to say. */
    @Test
    void findingsAreTheSameToWhoeverAsks() {
        for (int seed = 0; seed < 20; seed++) {
            FencePlan shared = plan(new Random(seed));
            List<List<Finding>> told = IntStream.range(0, 16)
                    .parallel()
                    .mapToObj(asker -> shared.findings())
                    .toList();
            assertThat(told).allMatch(plan(new Random(seed)).findings()::equals);
        }
    }

    private static FencePlan plan(Random random) {
        double wide = 30 + random.nextInt(80);
        double deep = 30 + random.nextInt(80);
        Site.Builder site = Site.on(Plans.rectangle(deep, wide));
        double height = 0;
        for (int side = 1; side <= 1 + random.nextInt(4); side++) {
            double length = side % 2 == 1 ? deep : wide;
            Profile.Builder ground = Profile.builder().point(Length.ZERO, Length.ofFeet(height));
            for (double at = 7; at < length; at += 7) {
                height += random.nextGaussian() / 2;
                ground.point(Length.ofFeet(at), Length.ofFeet(height));
            }
            site.fenceOn(side)
                    .ground(
                            side,
                            ground.point(Length.ofFeet(length), Length.ofFeet(height))
                                    .build());
            if (random.nextInt(3) == 0) {
                site.gate(Plans.gate("gate " + side, side, length / 3, 36 + random.nextInt(24)));
            }
        }
        List<BoardPattern> patterns = List.of(
                BoardPattern.sideBySide(Length.ofInches(5.5)),
                BoardPattern.shadowbox(Length.ofInches(5.5)),
                BoardPattern.boardOnBoard(Length.ofInches(5.5)));
        List<Treatment> treatments = List.of(Treatment.values());
        FenceStyle style = FenceStyle.builder()
                .pattern(patterns.get(random.nextInt(patterns.size())))
                .slope(SlopeSpec.builder()
                        .treatment(treatments.get(random.nextInt(treatments.size())))
                        .build())
                .build();
        return FencePlanner.plan(site.build(), style);
    }
}
