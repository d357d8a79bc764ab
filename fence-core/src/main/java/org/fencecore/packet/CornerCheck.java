package org.fencecore.packet;

import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.Run;
import org.fencecore.geometry.Corner;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * How to prove that two strings cross at the right angle: the same distance marked on both, and what the tape must read
 * between the marks.
 */
record CornerCheck(String name, Angle angle, Length leg, Length diagonal) {

    private static final Length LONGEST_LEG = Length.ofFeet(12);

    /** The check at the corner where a run ends and the next begins; empty where they do not meet. */
    static Optional<CornerCheck> after(FencePlan plan, int run) {
        Run here = plan.runs().get(run);
        Run next = plan.runs().get((run + 1) % plan.runs().size());
        if (plan.runs().size() < 2 || !here.string().end().equals(next.string().start())) {
            return Optional.empty();
        }
        Corner corner = Corner.of(
                here.string().end(),
                here.string().bearing(),
                next.string().bearing(),
                here.outside().opposite());
        Length shorter = Length.min(here.string().length(), next.string().length());
        Length leg = Length.ofFeet(Math.floor(Length.min(LONGEST_LEG, shorter).feet()));
        if (!leg.isPositive()) {
            return Optional.empty();
        }
        return Optional.of(new CornerCheck(
                "side " + here.side() + " and " + next.side(), corner.interiorAngle(), leg, corner.diagonal(leg, leg)));
    }
}
