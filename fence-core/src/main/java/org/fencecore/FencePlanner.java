package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Polygon;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Plans a fence: posts, bays, boards, gates and footings from a site and a style.
 *
 * <p>The strings are the lot's outline moved inside by the setback, with mitred corners; posts stand half their width
 * further in. Every fenced side is then planned in turn: gates where they were asked for, line posts evenly between the
 * fixed ones, rails racked to the ground, boards full at every corner, end and gate, and a footing for each post.
 *
 * <p>Planning is a pure function: the same site and style give the same plan, on any thread. What does not work is told
 * by the plan's findings and never by an exception.
 *
 * <pre>{@code
 * FencePlan plan = FencePlanner.plan(site, FenceStyle.builder().build());
 * plan.findings().forEach(System.out::println);
 * }</pre>
 *
 * <p>Rails sit on the outside face of the posts. At a corner both runs' rails are cut to the long point of the mitre;
 * the boards of the run that arrives stop flush with its rails, and the first board of the run that leaves laps their
 * edge. Ground between the shots is taken as straight, and level across the fence.
 */
public final class FencePlanner {

    /** Shots of one corner from two set-ups may differ by so much. */
    private static final Length SAME_SHOT = Length.ofInches(1);

    private FencePlanner() {}

    /**
     * Plans the fence.
     *
     * @param site the lot, its ground and gates
     * @param style what is to be built
     * @return the plan with all findings; a plan without runs when the lot cannot be laid out
     */
    public static FencePlan plan(Site site, FenceStyle style) {
        List<Finding> findings = new ArrayList<>(site.lot().findings());
        PostBook book = new PostBook(site, style);
        List<RunDraft> drafts = new ArrayList<>();
        site.lot().outline().ifPresent(outline -> drafts.addAll(lay(site, style, outline, book, findings)));
        List<Post> posts = book.posts(findings);
        List<Run> runs = new ArrayList<>();
        int bays = 0;
        for (RunDraft draft : drafts) {
            Run run = draft.build(posts, bays);
            bays += run.stretches().stream().mapToInt(s -> s.bays().size()).sum();
            runs.add(run);
        }
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return new FencePlan(site, style, runs, posts, findings);
    }

    private static List<RunDraft> lay(
            Site site, FenceStyle style, Polygon outline, PostBook book, List<Finding> findings) {
        Length half = style.postLumber().width().dividedBy(2);
        Optional<Polygon> strings = outline.inset(site.setback());
        Optional<Polygon> postLines = outline.inset(site.setback().plus(half));
        if (strings.isEmpty() || postLines.isEmpty()) {
            findings.add(Finding.blocker(
                            "lot-too-narrow",
                            "lot",
                            "no fence line is left " + Written.tape(site.setback()) + " inside the boundary")
                    .remedy("bring the strings nearer to the boundary, or fence fewer sides"));
            return List.of();
        }
        checkOverhang(site, style, findings);
        checkCornerHeights(site, outline, findings);
        List<RunDraft> drafts = new ArrayList<>();
        for (int side : site.fencedSides()) {
            FenceLine line = new FenceLine(site, style, outline, strings.get(), postLines.get(), side);
            line.ground(findings).ifPresent(ground -> {
                RunDraft draft = new RunDraft(site, style, line, ground, book, findings);
                drafts.add(draft);
            });
        }
        return drafts;
    }

    /** Two sides' shots of the corner they share must agree, or their heights are not of one datum. */
    private static void checkCornerHeights(Site site, Polygon outline, List<Finding> findings) {
        int sides = outline.vertices().size();
        for (int side : site.fencedSides()) {
            int next = side % sides + 1;
            Length corner = outline.side(side - 1).length();
            Optional<Length> here = height(site, side, corner);
            Optional<Length> there = height(site, next, Length.ZERO);
            if (!site.fencedSides().contains(next) || here.isEmpty() || there.isEmpty()) {
                continue;
            }
            Length difference = here.get().minus(there.get()).abs();
            if (difference.compareTo(SAME_SHOT) > 0) {
                findings.add(Finding.warning(
                                "ground-does-not-meet",
                                "corner of sides " + side + " and " + next,
                                "the shots of the two sides put the ground here " + Written.tape(difference) + " apart")
                        .remedy("check the datum and the shots; the corner post takes the lower height"));
            }
        }
    }

    private static Optional<Length> height(Site site, int side, Length station) {
        return site.ground(side)
                .filter(shots -> shots.extent().contains(station))
                .map(shots -> shots.elevationAt(station));
    }

    /** No part of the fence may stand over the boundary: neither boards and rails, nor the concrete. */
    private static void checkOverhang(Site site, FenceStyle style, List<Finding> findings) {
        Length face = style.railLumber().thickness().plus(style.boardLumber().thickness());
        Length hole = style.holeDiameter().minus(style.postLumber().width()).dividedBy(2);
        Length reach = Length.max(face, hole);
        if (reach.compareTo(site.setback()) > 0) {
            findings.add(Finding.warning(
                            "over-the-boundary",
                            "lot",
                            (hole.compareTo(face) > 0 ? "the post holes" : "rails and boards") + " reach "
                                    + Written.tape(reach, Rounding.UP) + " outside the string, and the boundary is "
                                    + Written.tape(site.setback()) + " away")
                    .remedy("set the string at least " + Written.tape(reach, Rounding.UP) + " inside the boundary")
                    .source(Citation.GEOMETRY));
        }
    }
}
