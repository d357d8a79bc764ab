package org.fencecore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polygon;
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
        return plan(site, style, Map.of());
    }

    /** Plans the fence to the posts that stand already; none, for a fence that is yet to be built. */
    static FencePlan plan(Site site, FenceStyle style, Map<Integer, SetPost> set) {
        Findings findings = new Findings();
        findings.later(site.lot()::findings);
        Optional<Polygon> outline = site.lot().outline();
        List<LaidLine> laid = outline.isPresent() ? lay(site, style, findings) : List.of();
        Map<Integer, Post> planned = new HashMap<>();
        if (!set.isEmpty()) {
            plan(site, style).posts().forEach(post -> planned.put(post.number(), post));
            laid = AsBuilt.move(site, style, laid, set, findings);
        }
        PostBook book = new PostBook(site, style, planned, set);
        FencePath path = new FencePath(laid.stream().map(LaidLine::line).toList());
        Map<FenceLine, LaidLine> byLine = new HashMap<>();
        laid.forEach(each -> byLine.put(each.line(), each));
        List<RunDraft> drafts = new ArrayList<>();
        for (LaidLine here : laid) {
            boolean meetsAtStart = path.before(here.line())
                    .map(byLine::get)
                    .filter(LaidLine::hasFenceAtEnd)
                    .isPresent();
            boolean meetsAtEnd = path.after(here.line())
                    .map(byLine::get)
                    .filter(LaidLine::hasFenceAtStart)
                    .isPresent();
            drafts.add(new RunDraft(
                    style,
                    here.line(),
                    here.ground(),
                    site.surface(),
                    here.row(),
                    meetsAtStart,
                    meetsAtEnd,
                    book,
                    findings));
        }
        List<Post> posts = book.posts(findings);
        findings.later(() -> PostSpace.check(posts, style));
        findings.later(() -> checkObstacles(site, style, path, posts));
        if (site.line().isPresent() || !set.isEmpty()) {
            outline.ifPresent(lot -> findings.later(() -> BoundaryCheck.of(lot, path.lines(), posts, style)));
        }
        Map<Integer, Post> byNumber = new HashMap<>();
        posts.forEach(post -> byNumber.put(post.number(), post));
        List<Run> runs = new ArrayList<>();
        int bays = 0;
        for (RunDraft draft : drafts) {
            Run run = draft.build(byNumber, bays);
            bays += run.stretches().stream().mapToInt(s -> s.bays().size()).sum();
            findings.later(run::throughGates);
            runs.add(run);
        }
        outline.ifPresent(lot -> findings.later(() -> BoundaryCheck.ofGates(lot, runs)));
        findings.later(() -> new RailLoads(site, style).findings(runs));
        findings.later(() -> RuleCheck.of(site.rules(), style, runs));
        return new FencePlan(site, style, runs, posts, findings, set);
    }

    private static List<LaidLine> lay(Site site, FenceStyle style, Findings findings) {
        FencePath path = FencePath.of(site, style, findings);
        if (path.lines().isEmpty()) {
            return List.of();
        }
        if (site.line().isEmpty()) {
            findings.later(() -> checkOverhang(site, style));
        }
        findings.later(() -> checkCornerHeights(site, path));
        findings.later(() -> checkGates(site));
        Map<FenceLine, List<GateLocation>> gates = new HashMap<>();
        for (GateLocation gate : site.gates()) {
            path.lineOf(gate)
                    .ifPresent(line -> gates.computeIfAbsent(line, its -> new ArrayList<>())
                            .add(gate));
        }
        List<LaidLine> laid = new ArrayList<>();
        PostNumbers numbers = new PostNumbers();
        for (FenceLine line : path.lines()) {
            line.ground(site, findings).ifPresent(ground -> {
                List<GatePlacing.Placed> placed =
                        GatePlacing.place(gates.getOrDefault(line, List.of()), line, style, findings);
                List<Interval> forbidden =
                        forbidden(site, line, style.holeDiameter().dividedBy(2));
                laid.add(new LaidLine(line, ground, PostRow.lay(line, placed, style, forbidden, numbers, findings)));
            });
        }
        return laid;
    }

    /** Where no line post may stand: in the ground of what is in the way, and where a rule wants no holes. */
    private static List<Interval> forbidden(Site site, FenceLine line, Length holeRadius) {
        List<Interval> forbidden = new ArrayList<>(site.obstacles().forbidden(line.postLine, holeRadius));
        forbidden.addAll(site.rules().forbidden(line.postLine, holeRadius));
        return Interval.merged(forbidden);
    }

    private static List<Finding> checkGates(Site site) {
        List<Finding> findings = new ArrayList<>();
        for (GateLocation gate : site.gates()) {
            if (!site.fencedSides().contains(gate.side())) {
                findings.add(Finding.blocker(
                                "gate-without-fence",
                                gate.toString(),
                                "side " + gate.side() + " is not fenced, so the gate has no fence to be in")
                        .withRemedy("fence that side, or put the gate on one that is"));
            }
        }
        return findings;
    }

    /** Line posts were kept clear of what is in the way where that could be; corner, end and gate posts cannot move. */
    private static List<Finding> checkObstacles(Site site, FenceStyle style, FencePath path, List<Post> posts) {
        List<Finding> findings = new ArrayList<>();
        Length hole = style.holeDiameter().dividedBy(2);
        for (Post post : posts) {
            findings.addAll(site.obstacles().atPost(post.toString(), post.centre(), hole));
        }
        Length reach = FenceLine.reach(style);
        for (FenceLine line : path.lines()) {
            findings.addAll(site.obstacles().alongFence(line.name, line.postLine, line.startAlongSide, reach));
        }
        if (!posts.isEmpty()) {
            findings.add(site.obstacles().undergroundNote());
        }
        return findings;
    }

    /** Two sides' shots of the corner they share must agree, or their heights are not of one datum. */
    private static List<Finding> checkCornerHeights(Site site, FencePath path) {
        List<Finding> findings = new ArrayList<>();
        for (FenceLine line : path.lines()) {
            int side = line.side;
            int next = side % site.sideCount() + 1;
            if (path.after(line).filter(after -> after.side == next).isEmpty()) {
                continue;
            }
            Optional<Length> here = height(site, side, site.sideLength(side));
            Optional<Length> there = height(site, next, Length.ZERO);
            if (here.isEmpty() || there.isEmpty()) {
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
        return findings;
    }

    private static Optional<Length> height(Site site, int side, Length station) {
        return site.ground(side)
                .flatMap(shots -> FenceLine.covering(shots, Interval.of(station, station)))
                .map(shots -> shots.elevationAt(station));
    }

    /** No part of the fence may stand over the boundary: neither boards and rails, nor the caps, nor the concrete. */
    private static List<Finding> checkOverhang(Site site, FenceStyle style) {
        Length face = FenceLine.facing(style);
        Length hole = style.holeDiameter().minus(style.postLumber().width()).dividedBy(2);
        Length cap = style.postCapWidth().minus(style.postLumber().width()).dividedBy(2);
        Length reach = Length.max(Length.max(face, cap), hole);
        if (reach.compareTo(site.setback()) <= 0) {
            return List.of();
        }
        return List.of(Finding.warning(
                        "over-the-boundary",
                        "lot",
                        (reach.equals(hole) ? "the post holes" : reach.equals(face) ? "rails and boards" : "post caps")
                                + " reach "
                                + Written.tape(reach, Rounding.UP) + " outside the string, and the boundary is "
                                + Written.tape(site.setback()) + " away")
                .withRemedy("set the string at least " + Written.tape(reach, Rounding.UP) + " inside the boundary")
                .withSource(Citation.GEOMETRY));
    }
}
