package org.fencecore.rail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Staggered joints against every layout there is. */
class StaggerProperties {

    @Property(tries = 150)
    void noLayoutHasFewerCrowdedPostsOrThenFewerJoints(
            @ForAll @IntRange(min = 1, max = 3) int rails,
            @ForAll @IntRange(min = 1, max = 4) int mostBays,
            @ForAll @IntRange(min = 8, max = 24) int stick,
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 4, max = 8) Integer> widths) {
        int[] at = new int[widths.size() + 1];
        for (int bay = 0; bay < widths.size(); bay++) {
            at[bay + 1] = at[bay] + widths.get(bay);
        }
        Stagger.Fits fits = (from, to) -> at[to] - at[from] <= stick;

        boolean[][] cuts = Stagger.spread(rails, widths.size(), mostBays, fits);

        List<Integer> layouts = new ArrayList<>();
        for (int layout = 0; layout < 1 << (widths.size() - 1); layout++) {
            if (isAllowed(layout, widths.size(), mostBays, fits)) {
                layouts.add(layout);
            }
        }
        int[] chosen = new int[rails];
        for (int rail = 0; rail < rails; rail++) {
            for (int post = 1; post < widths.size(); post++) {
                chosen[rail] |= cuts[rail][post] ? 1 << (post - 1) : 0;
            }
            assertThat(layouts).contains(chosen[rail]);
        }
        assertThat(cost(chosen)).isEqualTo(least(layouts, new int[rails], 0));
    }

    private static boolean isAllowed(int layout, int bays, int mostBays, Stagger.Fits fits) {
        int begin = 0;
        for (int post = 1; post <= bays; post++) {
            if (post == bays || ((layout >> (post - 1)) & 1) == 1) {
                if (post - begin > mostBays || (post - begin > 1 && !fits.test(begin, post))) {
                    return false;
                }
                begin = post;
            }
        }
        return true;
    }

    private static int least(List<Integer> layouts, int[] chosen, int rail) {
        if (rail == chosen.length) {
            return cost(chosen);
        }
        int least = Integer.MAX_VALUE;
        for (int layout : layouts) {
            chosen[rail] = layout;
            least = Math.min(least, least(layouts, chosen, rail + 1));
        }
        return least;
    }

    private static int cost(int[] chosen) {
        int once = 0;
        int crowded = 0;
        int joints = 0;
        for (int layout : chosen) {
            crowded |= once & layout;
            once |= layout;
            joints += Integer.bitCount(layout);
        }
        return 1000 * Integer.bitCount(crowded) + joints;
    }
}
