package org.fencecore.packet;

import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.Corner;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * How to prove that two strings cross at the right angle: the same distance marked on both, and what the tape must read
 * between the marks.
 */
record CornerCheck(String arriving, String leaving, Post post, Angle angle, Angle mitre, Length leg, Length diagonal) {

    private static final Length LONGEST_LEG = Length.ofFeet(12);

    /** The check at the corner where a run ends and the next begins; empty where they do not meet. */
    static Optional<CornerCheck> after(FencePlan plan, int run) {
        Run here = plan.runs().get(run);
        Post post = here.posts().get(here.posts().size() - 1);
        Optional<Run> goesOn = plan.runs().stream()
                .filter(other ->
                        here.endCorner().isPresent() && other.posts().get(0).equals(post))
                .findFirst();
        if (goesOn.isEmpty()) {
            return Optional.empty();
        }
        Run next = goesOn.get();
        Corner corner = Corner.of(
                here.string().end(),
                here.string().bearing(),
                next.string().bearing(),
                here.outside().opposite());
        Length shorter = Length.min(here.string().length(), next.string().length());
        Length whole = Length.ofFeet(1).times(shorter.wholePieces(Length.ofFeet(1)));
        Length leg = Length.min(LONGEST_LEG, whole.isPositive() ? whole : shorter);
        Angle mitre = corner.interiorAngle().dividedBy(2).complement().abs();
        return Optional.of(new CornerCheck(
                here.name(), next.name(), post, corner.interiorAngle(), mitre, leg, corner.diagonal(leg, leg)));
    }
}
