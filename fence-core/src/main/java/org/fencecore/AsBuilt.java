package org.fencecore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Moves the lines of a plan onto the posts as they were set. A line runs from the middle of its first post to that of its
 * last. The posts between that are set keep their measured places on it or a little off it; those still to be set stand on
 * the new line, beside where they were planned.
 */
final class AsBuilt {

    /** Rails bend or shim over so much; what stands further off shows in the fence. Common practice, no source. */
    private static final Length OFF_LINE = Length.ofInches(1).dividedBy(2);

    /** Half the finest mark of the usual tape: an opening that differs by less is the one that was planned. */
    private static final Length UNREADABLE = Length.ofInches(1).dividedBy(32);

    private final Site site;
    private final FenceStyle style;
    private final Map<Integer, SetPost> set;
    private final Findings findings;
    private final Length half;

    private AsBuilt(Site site, FenceStyle style, Map<Integer, SetPost> set, Findings findings) {
        this.site = site;
        this.style = style;
        this.set = set;
        this.findings = findings;
        this.half = style.postLumber().width().dividedBy(2);
    }

    /** The lines as planned, moved; a post measured nearer to another's place than to its own is left where it was planned. */
    static List<LaidLine> move(
            Site site, FenceStyle style, List<LaidLine> planned, Map<Integer, SetPost> set, Findings findings) {
        return new AsBuilt(site, style, believable(planned, set, findings), findings).move(planned);
    }

    private static Map<Integer, SetPost> believable(
            List<LaidLine> planned, Map<Integer, SetPost> set, Findings findings) {
        Map<Integer, SetPost> believed = new HashMap<>(set);
        for (LaidLine laid : planned) {
            List<PostRow.Spot> spots = laid.row().spots();
            for (int i = 0; i < spots.size(); i++) {
                SetPost post = set.get(spots.get(i).number());
                if (post == null) {
                    continue;
                }
                Length off = post.centre().distanceTo(spots.get(i).centre());
                Length room =
                        Length.min(spacing(spots, i - 1), spacing(spots, i)).dividedBy(2);
                if (off.compareTo(room) >= 0 && believed.remove(post.number()) != null) {
                    findings.add(Finding.blocker(
                                    "set-post-misplaced",
                                    "post " + post.number(),
                                    "it was measured " + Written.tape(off)
                                            + " from its planned place, over halfway to the next post, and is left where"
                                            + " it was planned")
                            .withRemedy(
                                    "check the number of the post and the tape; if it does stand there, plan the fence"
                                            + " anew with a gate or corner where it is wanted"));
                }
            }
        }
        return believed;
    }

    /** From a post to the next, or without end before the first and after the last. */
    private static Length spacing(List<PostRow.Spot> spots, int first) {
        return first < 0 || first + 1 >= spots.size()
                ? Length.ofFeet(1_000_000)
                : spots.get(first + 1).station().minus(spots.get(first).station());
    }

    private List<LaidLine> move(List<LaidLine> planned) {
        List<Segment> postLines = new ArrayList<>();
        Map<Integer, Integer> arriving = new HashMap<>();
        Map<Integer, Integer> leaving = new HashMap<>();
        for (int i = 0; i < planned.size(); i++) {
            LaidLine laid = planned.get(i);
            List<PostRow.Spot> spots = laid.row().spots();
            postLines.add(Segment.of(centre(spots.get(0)), centre(spots.get(spots.size() - 1))));
            arriving.put(laid.line().endNode, i);
            leaving.put(laid.line().startNode, i);
        }
        List<LaidLine> moved = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            FenceLine old = planned.get(i).line();
            Segment own = postLines.get(i);
            Integer before = arriving.get(old.startNode);
            Integer after = leaving.get(old.endNode);
            // A neighbour that could not be laid out leaves the corner as it was planned.
            Optional<Corner> start = old.start.map(corner -> Corner.of(
                    own.start(),
                    before == null ? corner.arriving() : postLines.get(before).bearing(),
                    own.bearing(),
                    corner.inside()));
            Optional<Corner> end = old.end.map(corner -> Corner.of(
                    own.end(),
                    own.bearing(),
                    after == null ? corner.leaving() : postLines.get(after).bearing(),
                    corner.inside()));
            Optional<Corner> sharp = FenceLine.tooSharp(start, end);
            if (sharp.isPresent()) {
                findings.add(FenceLine.tooSharp(old.name, sharp.get()));
                continue;
            }
            Length alongSide = old.startAlongSide.plus(old.postLine.stationOf(own.start()));
            FenceLine line = new FenceLine(
                    style,
                    old.side,
                    old.name,
                    string(old, own, start, end),
                    own,
                    old.outside,
                    alongSide,
                    old.startNode,
                    old.endNode,
                    start,
                    end);
            PostRow row = row(planned.get(i).row(), line);
            line.ground(site, findings).ifPresent(ground -> moved.add(new LaidLine(line, ground, row)));
        }
        return moved;
    }

    private Point centre(PostRow.Spot spot) {
        SetPost post = set.get(spot.number());
        return post == null ? spot.centre() : post.centre();
    }

    /** Half a post outside the new post line: to the neighbour's string at a corner, and as far past the post elsewhere. */
    private Segment string(FenceLine old, Segment postLine, Optional<Corner> start, Optional<Corner> end) {
        Segment beside = postLine.offset(old.outside == Side.RIGHT ? half : half.negated());
        Length before = old.postLine.stationOf(old.string.start());
        Length beyond = old.postLine.stationOf(old.string.end()).minus(old.postLine.length());
        return Segment.of(
                start.map(corner -> corner.mitrePoint(half.negated())).orElse(beside.pointAt(before)),
                end.map(corner -> corner.mitrePoint(half.negated()))
                        .orElse(beside.pointAt(postLine.length().plus(beyond))));
    }

    private PostRow.Spot moved(PostRow.Spot spot, FenceLine line) {
        Point centre = centre(spot);
        Length station = line.postLine.stationOf(centre);
        boolean stands = set.containsKey(spot.number()) || spot.node().isPresent();
        return new PostRow.Spot(
                spot.number(), spot.kind(), station, stands ? centre : line.postLine.pointAt(station), spot.node());
    }

    private PostRow row(PostRow planned, FenceLine line) {
        List<PostRow.Spot> spots =
                planned.spots().stream().map(spot -> moved(spot, line)).toList();
        for (PostRow.Spot spot : spots) {
            Length off = line.postLine.offsetOf(spot.centre());
            if (off.abs().compareTo(OFF_LINE) > 0) {
                boolean outwards = (line.outside == Side.RIGHT) == off.isPositive();
                findings.add(Finding.warning(
                                "post-out-of-line",
                                "post " + spot.number(),
                                "it stands " + Written.tape(off.abs()) + " " + (outwards ? "outside" : "inside")
                                        + " the line between the posts at the ends of " + line.name)
                        .withRemedy("plane the post or shim the rails where it is little, or reset it")
                        .withSource(Citation.COMMON_PRACTICE));
            }
        }
        List<PostRow.Part> parts = new ArrayList<>();
        for (PostRow.Part part : planned.parts()) {
            parts.add(
                    part.gate().isPresent() ? opening(part, part.gate().get(), spots, line) : bays(part, spots, line));
        }
        return new PostRow(spots, parts);
    }

    private PostRow.Part opening(PostRow.Part part, GatePlacing.Placed gate, List<PostRow.Spot> spots, FenceLine line) {
        Length from = spots.get(part.first()).station().plus(half);
        Length to = spots.get(part.last()).station().minus(half);
        Length least = GatePlacing.takenUp(gate.location(), style.gate());
        if (to.minus(from).compareTo(least) <= 0) {
            findings.add(Finding.blocker(
                            "gate-too-narrow",
                            line.name + ", " + gate.location().name(),
                            "the posts as set leave " + Written.tape(to.minus(from))
                                    + " between them, no wider than " + GatePlacing.tooNarrowFor(gate.location())
                                    + ", " + Written.tape(least))
                    .withRemedy("reset one of the gate posts"));
            return part.leftOut();
        }
        Length planned = gate.opening().length();
        Length now = to.minus(from);
        if (now.minus(planned).abs().compareTo(UNREADABLE) > 0) {
            findings.add(Finding.note(
                            "gate-remeasured",
                            line.name + ", " + gate.location().name(),
                            "the posts as set leave an opening of " + Written.tape(now) + "; it was planned as "
                                    + Written.tape(planned))
                    .withRemedy("cut the leaf to this plan, not to the one before"));
        }
        return new PostRow.Part(
                part.first(),
                part.last(),
                Optional.of(new GatePlacing.Placed(gate.location(), Interval.of(from, to))),
                Optional.empty(),
                false);
    }

    private PostRow.Part bays(PostRow.Part part, List<PostRow.Spot> spots, FenceLine line) {
        boolean asPlanned = true;
        for (int post = part.first(); post < part.last(); post++) {
            PostRow.Spot from = spots.get(post);
            PostRow.Spot to = spots.get(post + 1);
            boolean isSet = set.containsKey(from.number()) || set.containsKey(to.number());
            asPlanned &= !isSet;
            Length bay = to.station().minus(from.station());
            if (isSet && bay.compareTo(style.postSpacing().maximum()) > 0) {
                findings.add(Finding.warning(
                                "bay-too-wide",
                                line.name + ", post " + from.number() + " to post " + to.number(),
                                "the posts as set are " + Written.tape(bay) + " apart, over the maximum of "
                                        + Written.tape(style.postSpacing().maximum()))
                        .withRemedy("set another post between, or reset one of them"));
            }
        }
        return asPlanned
                ? part
                : new PostRow.Part(part.first(), part.last(), Optional.empty(), Optional.empty(), part.isLeftOut());
    }
}
