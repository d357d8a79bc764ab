package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Profile;
import org.fencecore.site.GateLocation;
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
 * fixed ones, rails along the ground or stepped by the style's treatment, boards full at every corner, end and gate, and
 * a footing for each post.
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

    /** Shots of one corner that differ by more are not heights over the same datum. */
    private static final Length ANOTHER_DATUM = Length.ofFeet(1);

    private FencePlanner() {}

    /**
     * Plans the fence.
     *
     * @param site the lot, its ground and gates
     * @param style what is to be built
     * @return the plan with all findings; a plan without runs when the lot cannot be laid out
     */
    public static FencePlan plan(Site site, FenceStyle style) {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(style, "style");
        List<Finding> findings = new ArrayList<>(site.lot().findings());
        PostBook book = new PostBook(site, style);
        List<RunDraft> drafts = new ArrayList<>();
        site.lot().outline().ifPresent(outline -> drafts.addAll(lay(site, style, outline, book, findings)));
        List<Post> posts = book.posts(findings);
        findings.addAll(PostSpace.check(posts, style));
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
                            "the line of the posts, "
                                    + Written.tape(site.setback().plus(half))
                                    + " inside every side, would cross itself or lose a side")
                    .withRemedy(
                            "bring the strings nearer to the boundary, or leave short sides out of the description"));
            return List.of();
        }
        checkOverhang(site, style, findings);
        checkCornerHeights(site, outline, findings);
        checkGates(site, findings);
        Map<Integer, Laid> laid = new TreeMap<>();
        for (int side : site.fencedSides()) {
            FenceLine line = new FenceLine(site, style, outline, strings.get(), postLines.get(), side);
            line.ground(findings)
                    .ifPresent(ground -> laid.put(
                            side, new Laid(line, ground, GatePlacing.place(site.gates(), line, style, findings))));
        }
        int sides = outline.vertices().size();
        List<RunDraft> drafts = new ArrayList<>();
        for (Laid here : laid.values()) {
            Laid before = laid.get(here.line.side == 1 ? sides : here.line.side - 1);
            Laid after = laid.get(here.line.side % sides + 1);
            boolean meetsAtStart = before != null && before.hasFenceAtEnd(half);
            boolean meetsAtEnd = after != null && after.hasFenceAtStart(half);
            drafts.add(
                    new RunDraft(style, here.line, here.ground, here.gates, meetsAtStart, meetsAtEnd, book, findings));
        }
        return drafts;
    }

    /**
     * A side with its ground and gates. Rails and boards of two runs meet at a corner only where no gate hangs on the
     * corner post.
     */
    private record Laid(FenceLine line, Profile ground, List<GatePlacing.Placed> gates) {

        boolean hasFenceAtStart(Length half) {
            return gates.isEmpty() || gates.get(0).opening().start().compareTo(half) > 0;
        }

        boolean hasFenceAtEnd(Length half) {
            return gates.isEmpty()
                    || gates.get(gates.size() - 1).opening().end().plus(half).compareTo(line.postLine.length()) < 0;
        }
    }

    private static void checkGates(Site site, List<Finding> findings) {
        for (GateLocation gate : site.gates()) {
            if (!site.fencedSides().contains(gate.side())) {
                findings.add(Finding.blocker(
                                "gate-without-fence",
                                gate.toString(),
                                "side " + gate.side() + " is not fenced, so the gate has no fence to be in")
                        .withRemedy("fence that side, or put the gate on one that is"));
            }
        }
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
                String place = "corner of sides " + side + " and " + next;
                String message =
                        "the shots of the two sides put the ground here " + Written.tape(difference) + " apart";
                Finding finding = difference.compareTo(ANOTHER_DATUM) > 0
                        ? Finding.blocker("ground-does-not-meet", place, message)
                        : Finding.warning("ground-does-not-meet", place, message);
                findings.add(
                        finding.withRemedy("check the datum and the shots; the corner post takes the lower height"));
            }
        }
    }

    private static Optional<Length> height(Site site, int side, Length station) {
        return site.ground(side)
                .flatMap(shots -> FenceLine.covering(shots, Interval.of(station, station)))
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
                    .withRemedy("set the string at least " + Written.tape(reach, Rounding.UP) + " inside the boundary")
                    .withSource(Citation.GEOMETRY));
        }
    }
}
