package org.fencecore;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.HoleList;
import org.fencecore.rules.GatePart;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;

/**
 * Everything a crew needs to build one fence: posts, bays, boards, gates, footings, and what is wrong with the design.
 *
 * <p>A plan is immutable and complete. It is made by {@link FencePlanner#plan}; takeoff, drawings and sheets read it. A
 * plan with a finding of severity {@link Severity#BLOCKER} holds what could be worked out all the same;
 * {@link #requireBuildable} refuses it.
 */
public final class FencePlan {

    private final Site site;
    private final FenceStyle style;
    private final List<Run> runs;
    private final List<Post> posts;
    private final Findings findings;
    private final Map<Integer, SetPost> set;

    FencePlan(
            Site site,
            FenceStyle style,
            List<Run> runs,
            List<Post> posts,
            Findings findings,
            Map<Integer, SetPost> set) {
        this.site = site;
        this.style = style;
        this.runs = List.copyOf(runs);
        this.posts = List.copyOf(posts);
        this.findings = findings;
        this.set = Map.copyOf(set);
    }

    /**
     * Returns the site the plan is for.
     *
     * @return the site
     */
    public Site site() {
        return site;
    }

    /**
     * Returns the style the plan follows.
     *
     * @return the style
     */
    public FenceStyle style() {
        return style;
    }

    /**
     * Returns the fence side by side, in the order of the lot's courses.
     *
     * @return the runs, unmodifiable; none when the lot cannot be laid out
     */
    public List<Run> runs() {
        return runs;
    }

    /**
     * Returns every post once, in the order of their numbers.
     *
     * @return the posts, unmodifiable
     */
    public List<Post> posts() {
        return posts;
    }

    /**
     * Returns every bay of fence between two posts, gates left out.
     *
     * @return the bays along the fence, unmodifiable
     */
    public List<Bay> bays() {
        return stretches().stream().flatMap(stretch -> stretch.bays().stream()).toList();
    }

    /**
     * Returns every stretch of fence between fixed posts.
     *
     * @return the stretches along the fence, unmodifiable
     */
    public List<Stretch> stretches() {
        return runs.stream().flatMap(run -> run.stretches().stream()).toList();
    }

    /**
     * Returns every gate.
     *
     * @return the gates along the fence, unmodifiable
     */
    public List<GateBay> gates() {
        return runs.stream().flatMap(run -> run.gates().stream()).toList();
    }

    /**
     * Returns the rules for pools that hold for a gate.
     *
     * @param gate one of {@link #gates}
     * @return those of the site's rules that it is part of the barrier for
     * @throws IllegalArgumentException if it is the gate of another plan
     */
    public List<PoolBarrier> poolBarriers(GateBay gate) {
        Run run = runs.stream()
                .filter(each -> each.gates().contains(gate))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "gate was " + gate + " of another plan; take it from the gates of this one"));
        GatePart part = RuleCheck.gate(style, run, gate);
        return site.rules().list().stream()
                .filter(PoolBarrier.class::isInstance)
                .map(PoolBarrier.class::cast)
                .filter(rule -> rule.concerns(part))
                .toList();
    }

    /**
     * Returns every upright board as the pattern places it: those of the stretches along the fence, outside face first, then those
     * of the gates. What is left of those that meet a post is told by {@link Stretch#boardsAtPosts}; horizontal boards are
     * told by {@link Stretch#courses} and {@link HungLeaf#courses}.
     *
     * @return an unmodifiable view that works out a board when it is asked for
     */
    public List<PlannedBoard> boards() {
        return new BoardsView(stretches(), gates());
    }

    /**
     * Returns how many boards the fence takes, on both faces and on the gates.
     *
     * @return the number of boards, those left out at posts not counted
     */
    public int boardCount() {
        int fence = stretches().stream().mapToInt(Stretch::boardCount).sum();
        return fence + gates().stream().mapToInt(GateBay::boardCount).sum();
    }

    /**
     * Returns every footing once; posts that are alike share one.
     *
     * @return the footings in the order in which posts first need them, unmodifiable
     */
    public List<FootingDesign> footings() {
        return posts.stream().map(Post::footing).distinct().toList();
    }

    /**
     * Returns the holes to dig, alike ones together.
     *
     * @return the list; its first place is post 1
     */
    public HoleList holes() {
        return HoleList.of(posts.stream().map(Post::footing).toList());
    }

    /**
     * Returns all that is wrong with the design or worth knowing, most serious first.
     *
     * <p>Each has a code that programs can rely on. Besides those of the lot and of the trade modules, which keep theirs,
     * a plan has these:
     *
     * <ul>
     *   <li>blockers of the lot and the ground: {@code lot-too-narrow}, {@code side-lost}, {@code line-too-tight},
     *       {@code corner-too-sharp}, {@code no-ground}, {@code ground-not-covered}, {@code ground-does-not-meet} (a warning up to 1 ft), {@code ground-too-steep};
     *   <li>blockers of posts and boards: {@code posts-collide}, {@code post-too-tall}, {@code post-below-ground},
     *       {@code too-many-posts}, {@code too-short-for-rails}, {@code too-short-for-boards}, {@code too-many-boards};
     *   <li>blockers of gates: {@code gate-without-fence}, {@code gate-wider-than-run}, {@code gate-off-run},
     *       {@code gates-overlap}, {@code gate-leaves-no-post}, {@code gate-too-narrow};
     *   <li>warnings: {@code over-the-boundary}, {@code holes-run-together}, {@code gate-gap},
     *       {@code gate-rake-steep}, {@code gate-boards-tall}, {@code gate-opens-over-boundary};
     *   <li>of posts as set: blocker {@code set-post-misplaced}; warnings {@code post-out-of-line}, {@code bay-too-wide},
     *       {@code set-post-too-short}, {@code set-footing-shallow}; note {@code gate-remeasured};
     *   <li>notes: {@code curve-in-parts}, {@code ground-continued}, {@code gate-moved}, {@code gate-swing-unknown},
     *       {@code gate-not-weighed}, {@code gate-latch-chamfer}, {@code gate-open-wind}, {@code boards-ripped},
     *       {@code courses-break}, {@code courses-off-at-gate}, {@code courses-not-checked}.
     * </ul>
     *
     * @return the findings, worked out when first asked for, unmodifiable
     */
    public List<Finding> findings() {
        return findings.all();
    }

    /**
     * Plans the same fence to posts that stand already: they keep their places, and rails, boards and gates are worked out
     * anew to fit them. Posts that are not given stay where this plan has them: those set before as they stand, those still
     * to be set on the line, beside their planned places.
     *
     * <p>Each line of posts runs from the middle of its first to the middle of its last as they were set. Findings tell
     * which bays are now too wide, which posts stand out of line, which gates have another opening, and which footings
     * are too little for what the post now carries.
     *
     * @param measured the posts as they were found standing
     * @return a plan like this one, made to them
     * @throws IllegalArgumentException if this plan has no post of that number, or one is given twice
     */
    public FencePlan withSetPosts(Collection<SetPost> measured) {
        Map<Integer, SetPost> all = new TreeMap<>(set);
        Set<Integer> known = posts.stream().map(Post::number).collect(Collectors.toSet());
        Set<Integer> given = new HashSet<>();
        for (SetPost post : measured) {
            if (!known.contains(post.number())) {
                throw new IllegalArgumentException("number of a set post was " + post.number()
                        + "; the plan has posts 1 to " + posts.size() + ": give each the number it has on the plan");
            }
            if (!given.add(post.number())) {
                throw new IllegalArgumentException(
                        "post " + post.number() + " was given twice; give each post that stands once");
            }
            all.put(post.number(), post);
        }
        return FencePlanner.plan(site, style, all);
    }

    /**
     * Returns the posts that stand already, as they were measured.
     *
     * @return what {@link #withSetPosts} was given, by number, unmodifiable; empty for a plan as designed
     */
    public List<SetPost> setPosts() {
        return set.values().stream()
                .sorted(Comparator.comparingInt(SetPost::number))
                .toList();
    }

    /**
     * Tells whether nothing stands in the way of building it.
     *
     * @return true if no finding is a blocker
     */
    public boolean isBuildable() {
        return findings().stream().noneMatch(finding -> finding.severity() == Severity.BLOCKER);
    }

    /**
     * Returns this plan if nothing stands in the way of building it.
     *
     * @return this plan
     * @throws NotBuildableException if a finding is a blocker; it lists them all
     */
    public FencePlan requireBuildable() {
        if (!isBuildable()) {
            throw new NotBuildableException(findings().stream()
                    .filter(finding -> finding.severity() == Severity.BLOCKER)
                    .toList());
        }
        return this;
    }

    /**
     * Works out the calculations behind the plan, written line by line and built when asked for: how the lot closes; for
     * every run the wind in its hardest zone, where a wind is said; for every stretch the spacing of its posts, each bay with the rail marks at its first post, and the boards; for every
     * gate each leaf, its braces, boards, weight, hinges, their screws, its post, the wind on it, what slack means at the
     * latch, and its swing; each
     * footing once, its embedment, its concrete and, where its wood and the wind are known, the strength of the post; and the
     * strength of rails, once for bays that are alike, where their wood is known.
     *
     * <p>Each title begins with what the sheet is for, and no two are alike: {@code side 1, bay 4, post 4 to post 5:
     * Racked bay from 18.84 ft to 25.14 ft}, {@code posts 1 to 4 and 9: Embedment of a post} or {@code bays 1 to 3: Strength of
     * a rail}.
     *
     * @return the worksheets in the order of the work, unmodifiable
     */
    public List<Worksheet> worksheets() {
        List<Worksheet> sheets = new ArrayList<>();
        sheets.add(site.lot().worksheet());
        for (Run run : runs) {
            run.wind().ifPresent(wind -> sheets.add(wind.worksheet().within(run.toString())));
            for (Stretch stretch : run.stretches()) {
                sheets.addAll(stretch.worksheets(run.toString()));
            }
            for (GateBay gate : run.gates()) {
                sheets.addAll(gate.worksheets(run.toString()));
                GatePart part = RuleCheck.gate(style, run, gate);
                String place = run + ", " + gate.name();
                poolBarriers(gate)
                        .forEach(rule -> sheets.add(rule.worksheet(part).within(place)));
            }
        }
        Map<FootingDesign, List<Post>> alike =
                posts.stream().collect(Collectors.groupingBy(Post::footing, LinkedHashMap::new, Collectors.toList()));
        alike.forEach((footing, its) -> {
            String place = FootingNotes.numbers(its);
            sheets.add(footing.worksheet().within(place));
            sheets.add(footing.concreteWorksheet().within(place));
            FootingNotes.strength(footing, style.postLumber())
                    .ifPresent(strength -> sheets.add(strength.worksheet().within(place)));
        });
        new RailLoads(site, style)
                .checks(runs)
                .forEach((rails, bays) -> sheets.add(rails.worksheet().within(RailLoads.numbers(bays))));
        return List.copyOf(sheets);
    }
}
