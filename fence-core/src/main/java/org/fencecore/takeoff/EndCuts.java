package org.fencecore.takeoff;

import java.util.List;
import java.util.Optional;
import org.fencecore.gate.GateBrace;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Written;

/**
 * How the ends of a piece are cut, and what that costs in lumber.
 *
 * @param words the cuts as the person at the saw is told
 * @param slant how much longer the piece is over all than along its edge
 * @param sawing how much wider than its kerf the saw cuts, measured along the piece; 1 when square
 */
record EndCuts(String words, Length slant, double sawing) {

    static final EndCuts SQUARE = new EndCuts("square ends", Length.ZERO, 1);

    /** Cuts flatter than this are not made on a saw, and what they would take makes no sense. */
    private static final double MOST_SAWING = 100;

    /**
     * The ends of a rail that stand plumb: both slant the same way, so that the piece is a parallelogram, longer over
     * all than its edge by depth x tan(cut). A mitre at a corner is cut through the thickness on top of that.
     */
    static EndCuts plumb(Angle cut, Length depth, Optional<Mitre> start, Optional<Mitre> end) {
        String slope = Written.saw(cut);
        StringBuilder words = new StringBuilder(
                slope.equals(Written.saw(Angle.ZERO)) ? SQUARE.words : "both ends " + slope + " off square");
        double steepest = 0;
        for (Optional<Mitre> mitre : List.of(start, end)) {
            if (mitre.isPresent()) {
                words.append(", mitred ")
                        .append(Written.saw(mitre.get().angle()))
                        .append(" at ")
                        .append(mitre.get().post());
                steepest = Math.max(steepest, mitre.get().angle().tan());
            }
        }
        double sawing = Math.sqrt(1 + cut.tan() * cut.tan() + steepest * steepest);
        return new EndCuts(words.toString(), depth.times(Ratio.of(cut.tan())), Math.min(sawing, MOST_SAWING));
    }

    /** The two cuts that meet in a point at each end of a brace. */
    static EndCuts points(GateBrace brace) {
        double steepest = Math.max(brace.railCut().tan(), brace.stileCut().tan());
        return new EndCuts(
                "both ends pointed: " + Written.saw(brace.railCut()) + " off square against the rail, "
                        + Written.saw(brace.stileCut()) + " against the stile",
                Length.ZERO,
                Math.min(Math.hypot(1, steepest), MOST_SAWING));
    }

    EndCuts and(String work) {
        return new EndCuts(words + ", " + work, slant, sawing);
    }

    /**
     * The mitre of a rail at a corner of the fence.
     *
     * @param angle how far off square it is cut through the thickness
     * @param post the corner post
     */
    record Mitre(Angle angle, String post) {}
}
