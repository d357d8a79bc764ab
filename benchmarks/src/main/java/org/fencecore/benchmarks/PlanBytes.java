package org.fencecore.benchmarks;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;

/**
 * What a plan keeps in memory: as many plans of one site as make some 100 MB are held on to, and what the heap grew by is
 * shared out among them. The site and the style, which all of them share, are not in it.
 *
 * <p>{@code java -Xmx1g -cp benchmarks/target/benchmarks.jar org.fencecore.benchmarks.PlanBytes}
 */
public final class PlanBytes {

    private static final int[] FEET = {50, 200, 500, 5_000, 26_400};

    private PlanBytes() {}

    /**
     * Prints a line for each length of fence: as planned, and after it was asked for all that it puts off.
     *
     * @param args none
     */
    public static void main(String[] args) {
        System.out.println("  feet  posts   boards  bytes as planned  bytes when asked");
        for (int feet : FEET) {
            Site site = FenceJob.ofFeet(feet).site();
            FenceStyle style = FenceJob.style();
            FencePlan one = FencePlanner.plan(site, style);
            System.out.printf(
                    Locale.ROOT,
                    "%6d %6d %8d %17d %17d%n",
                    feet,
                    one.posts().size(),
                    one.boards().size(),
                    kept(site, style, false),
                    kept(site, style, true));
        }
    }

    private static long kept(Site site, FenceStyle style, boolean asked) {
        FencePlan[] plans = new FencePlan
                [Math.max(20, 100_000 / FencePlanner.plan(site, style).posts().size())];
        long before = used();
        for (int i = 0; i < plans.length; i++) {
            plans[i] = FencePlanner.plan(site, style);
            if (asked) {
                WholePlanBenchmark.ask(plans[i]);
            }
        }
        long kept = (used() - before) / plans.length;
        if (plans[0].posts().size() != plans[plans.length - 1].posts().size()) {
            throw new IllegalStateException("two plans of one site have different posts");
        }
        return kept;
    }

    private static long used() {
        // One collection may leave what the one before it only unlinked.
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }
}
