package org.fencecore.rules;

import java.util.List;
import java.util.stream.Stream;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;

/**
 * All rules of the place that hold on one job, up to 1,000.
 *
 * <p>Checking gives everything that is broken at once. One rule broken along one place is one finding, however many parts
 * of the fence break it. Nothing found means that the figures given keep the rules given, and no more: the local office
 * decides.
 *
 * <p>Example: see {@link org.fencecore.rules}.
 */
public final class LocalRules {

    private static final int MOST_RULES = 1_000;
    private static final int MOST_PARTS = 100_000;
    private static final LocalRules NONE = new LocalRules(List.of());

    private final List<LocalRule> list;

    private LocalRules(List<LocalRule> list) {
        this.list = list;
    }

    /**
     * Returns a place of which no rules were told.
     *
     * @return no rules
     */
    public static LocalRules none() {
        return NONE;
    }

    /**
     * Returns the rules of a place.
     *
     * @param rules up to 1,000 rules
     * @return all of them
     * @throws IllegalArgumentException if there are more
     */
    public static LocalRules of(List<? extends LocalRule> rules) {
        requireAtMost("rules", rules.size(), MOST_RULES, "leave out those that do not hold at this fence");
        return new LocalRules(List.copyOf(rules));
    }

    private static void requireAtMost(String what, int count, int most, String wayOut) {
        if (count > most) {
            throw new IllegalArgumentException(
                    "number of " + what + " was " + count + "; give no more than " + most + ", so " + wayOut);
        }
    }

    /**
     * Returns the rules one by one.
     *
     * @return the rules in the order given, unmodifiable
     */
    public List<LocalRule> list() {
        return list;
    }

    /**
     * Returns where along a line of posts no hole may be dug, for any of the rules.
     *
     * @param postLine the line of the posts' centres
     * @param holeRadius how far a hole reaches from its centre
     * @return the stations in order, apart from each other; a post may stand at either end of an interval
     * @throws IllegalArgumentException if the radius is negative or over 10,000 ft
     */
    public List<Interval> forbidden(Segment postLine, Length holeRadius) {
        LocalRule.requireSize("holeRadius", holeRadius);
        return Interval.merged(list.stream()
                .flatMap(rule -> rule.forbidden(postLine, holeRadius).stream())
                .toList());
    }

    /**
     * Checks a fence of which no posts and gates are told.
     *
     * @param parts the parts of the fence
     * @return what breaks the rules, as {@link #check(List, List, List)} tells it
     * @throws IllegalArgumentException if there are more than 100,000 parts
     */
    public List<Finding> check(List<FencePart> parts) {
        return check(parts, List.of(), List.of());
    }

    /**
     * Checks a fence. All codes are blockers if not said otherwise, and every finding has the source of its rule:
     *
     * <ul>
     *   <li>{@code rule-height}: over a height limit; {@code permit-needed}, a note: over a permit height
     *   <li>{@code rule-visibility}: in a triangle that is kept open to view
     *   <li>{@code rule-clear-ground}: the fence stands in an easement or a setback; {@code rule-no-holes}: only its holes
     *       do
     *   <li>{@code pool-height}, {@code pool-clearance}, {@code pool-opening}, {@code pool-climbable}: a pool barrier is
     *       too low, too far off the ground, too open or too easy to climb
     *   <li>{@code pool-gate-swing}, {@code pool-gate-closing}, {@code pool-gate-lock}, {@code pool-gate-release}: a gate
     *       opens towards the water, does not close and latch by itself, takes no lock, or can be opened by a child
     *   <li>{@code pool-not-told}, a note: what was not checked since it was not told
     * </ul>
     *
     * @param parts the parts of the fence, without the gates' leaves
     * @param posts the posts
     * @param gates the gates, each with its leaf
     * @return the findings, rule by rule in the order of the rules, place by place in the order of the parts
     * @throws IllegalArgumentException if there are more than 100,000 parts, posts or gates
     */
    public List<Finding> check(List<FencePart> parts, List<PostPart> posts, List<GatePart> gates) {
        String wayOut = "check the fence side by side";
        requireAtMost("parts", parts.size(), MOST_PARTS, wayOut);
        requireAtMost("posts", posts.size(), MOST_PARTS, wayOut);
        requireAtMost("gates", gates.size(), MOST_PARTS, wayOut);
        List<FencePart> all = Stream.concat(parts.stream(), gates.stream().map(GatePart::leaf))
                .toList();
        LocalRule.Fence fence = new LocalRule.Fence(all, List.copyOf(posts), List.copyOf(gates));
        return list.stream().flatMap(rule -> rule.check(fence).stream()).toList();
    }

    /**
     * Returns the rules' names.
     *
     * @return such as {@code [front yards, corner visibility]}
     */
    @Override
    public String toString() {
        return list.toString();
    }
}
