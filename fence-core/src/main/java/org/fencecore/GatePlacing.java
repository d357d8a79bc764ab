package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fencecore.gate.GateSpec;
import org.fencecore.geometry.Interval;
import org.fencecore.site.GateLocation;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Puts the gates of one run in their places: every opening between two posts, no two over each other, and a gate post
 * so near to a fixed post that their holes would run together moved onto it.
 */
final class GatePlacing {

    /** A gate that has found its place; the opening is in stations along the run. */
    record Placed(GateLocation location, Interval opening) {}

    private final FenceLine line;
    private final Length half;
    private final Length hole;
    private final FenceStyle style;
    private final Findings findings;

    private GatePlacing(FenceLine line, FenceStyle style, Findings findings) {
        this.line = line;
        this.style = style;
        this.half = style.postLumber().width().dividedBy(2);
        this.hole = style.holeDiameter();
        this.findings = findings;
    }

    static List<Placed> place(List<GateLocation> gates, FenceLine line, FenceStyle style, Findings findings) {
        return new GatePlacing(line, style, findings).placeAll(gates);
    }

    private List<Placed> placeAll(List<GateLocation> gates) {
        Length length = line.postLine.length();
        List<GateLocation> inOrder = gates.stream()
                .filter(this::isBigEnough)
                .sorted(Comparator.comparing(gate -> gate.opening().start()))
                .toList();
        List<Placed> placed = new ArrayList<>();
        // Openings lie between the inner faces of posts; this is where the last fixed post's face is.
        Length free = half;
        for (GateLocation gate : inOrder) {
            Interval wanted = gate.opening().shiftedBy(line.startAlongSide.negated());
            Length last = length.minus(half);
            if (wanted.length().compareTo(last.minus(half)) > 0) {
                findings.add(Finding.blocker(
                                "gate-wider-than-run",
                                place(gate),
                                "the opening of " + Written.tape(wanted.length()) + " is wider than the "
                                        + Written.tape(Length.max(last.minus(half), Length.ZERO))
                                        + " between the posts at the ends of this side")
                        .withRemedy("make the opening smaller, or put the gate on a longer side"));
            } else if (!placed.isEmpty() && wanted.start().compareTo(free.minus(half.times(2))) < 0) {
                Placed before = placed.get(placed.size() - 1);
                findings.add(Finding.blocker(
                                "gates-overlap",
                                place(gate),
                                "its opening begins at " + along(wanted.start()) + ", before that of "
                                        + before.location().name() + " ends at "
                                        + along(before.opening().end()))
                        .withRemedy("move one of them; with a shared post the openings must be "
                                + Written.tape(half.times(2), Rounding.UP) + " apart"));
            } else if (wanted.start().compareTo(free.minus(hole)) < 0
                    || wanted.end().compareTo(last.plus(hole)) > 0) {
                findings.add(Finding.blocker(
                                "gate-off-run",
                                place(gate),
                                "its opening from " + along(wanted.start()) + " to " + along(wanted.end())
                                        + " reaches past the posts of this side, whose faces are at " + along(half)
                                        + " and " + along(last))
                        .withRemedy("centre it from "
                                + along(half.plus(wanted.length().dividedBy(2))) + " to "
                                + along(last.minus(wanted.length().dividedBy(2)))));
            } else {
                Interval opening = settle(gate, wanted, free, last);
                Length left = last.minus(opening.end());
                if (left.isNegative() || (left.isPositive() && left.compareTo(hole) < 0)) {
                    findings.add(Finding.blocker(
                                    "gate-leaves-no-post",
                                    place(gate),
                                    "the " + Written.tape(last.minus(free)) + " between the posts beside it leave "
                                            + Written.tape(last.minus(free).minus(opening.length()))
                                            + " next to the opening of " + Written.tape(opening.length())
                                            + ", too little for a gate post and its hole")
                            .withRemedy("make the opening " + Written.tape(last.minus(free))
                                    + " to hang it between those posts, or narrower than "
                                    + Written.tape(last.minus(free).minus(hole), Rounding.DOWN)));
                } else {
                    placed.add(new Placed(gate, opening));
                    free = opening.end().plus(half.times(2));
                }
            }
        }
        return placed;
    }

    /** Smaller openings than a leaf needs are judged by the gate's own findings; this one leaves nothing to design. */
    private boolean isBigEnough(GateLocation gate) {
        Length least = takenUp(gate, style.gate());
        if (gate.clearOpening().compareTo(least) > 0) {
            return true;
        }
        findings.add(Finding.blocker(
                        "gate-too-narrow",
                        place(gate),
                        "the opening of " + Written.tape(gate.clearOpening()) + " is no wider than "
                                + tooNarrowFor(gate) + ", " + Written.tape(least))
                .withRemedy("make it at least "
                        + Written.tape(
                                gate.hasTwoLeaves()
                                        ? style.gate().minimumPairOpening()
                                        : style.gate().minimumOpening())));
        return false;
    }

    /** What leaves nothing to hang in an opening: its gaps, and of two leaves a nanometre, so that neither is nothing. */
    static Length takenUp(GateLocation gate, GateSpec spec) {
        return gate.hasTwoLeaves() ? spec.pairGaps().plus(Length.ofNanometres(1)) : spec.gaps();
    }

    static String tooNarrowFor(GateLocation gate) {
        return gate.hasTwoLeaves() ? "the gaps beside and between two leaves" : "the gaps beside the leaf";
    }

    /** Moves an opening onto a fixed post whose hole its own gate post's would run into. */
    private Interval settle(GateLocation gate, Interval wanted, Length free, Length last) {
        Length shift = Length.ZERO;
        if (wanted.start().minus(free).compareTo(hole) < 0) {
            shift = free.minus(wanted.start());
        } else if (last.minus(wanted.end()).compareTo(hole) < 0) {
            shift = last.minus(wanted.end());
        }
        if (!shift.isZero()) {
            findings.add(Finding.note(
                            "gate-moved",
                            place(gate),
                            "moved " + Written.tape(shift.abs()) + (shift.isPositive() ? " on" : " back")
                                    + " to share the post beside it, because its own post would stand in or too near that one")
                    .withRemedy("to keep a post of its own, leave over " + Written.tape(hole, Rounding.UP)
                            + " between the posts"));
        }
        return wanted.shiftedBy(shift);
    }

    private String along(Length station) {
        return Written.station(line.startAlongSide.plus(station));
    }

    private String place(GateLocation gate) {
        return line.name + ", " + gate.name();
    }
}
