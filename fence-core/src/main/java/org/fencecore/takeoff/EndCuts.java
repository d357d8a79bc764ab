package org.fencecore.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Written;

/**
 * How the ends of a piece are cut, and what that costs in lumber.
 *
 * @param words the cuts as the person at the saw is told
 * @param slant how much longer the piece is over all than along its edge, what is left to trim included
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

    /** The ends of a post, whose length is that of its longer side. */
    static EndCuts top(Slope grade) {
        Angle cut = grade.angle().abs();
        String off = Written.saw(cut);
        return off.equals(Written.saw(Angle.ZERO))
                ? SQUARE
                : new EndCuts(
                        "top " + off + " off square", Length.ZERO, Math.min(Math.hypot(1, cut.tan()), MOST_SAWING));
    }

    /** The ends of a stile or rail of a gate, whose length is over all. */
    static EndCuts of(FramePiece piece) {
        double steepest = Math.max(piece.firstCut().tan(), piece.otherCut().tan());
        String first = Written.saw(piece.firstCut());
        String other = Written.saw(piece.otherCut());
        String square = Written.saw(Angle.ZERO);
        String words;
        if (first.equals(other)) {
            words = first.equals(square) ? SQUARE.words : "both ends " + first + " off square";
        } else {
            words = "ends " + first + " and " + other + " off square";
        }
        String laps = piece.laps() == 0 ? "" : ", " + piece.laps() + " half-laps";
        return new EndCuts(words + laps, Length.ZERO, Math.min(Math.hypot(1, steepest), MOST_SAWING));
    }

    /** The cuts at each end of a wood brace, whose length is over all. */
    static EndCuts of(GateBrace brace) {
        double steepest = Math.max(
                brace.railCut().map(Angle::tan).orElse(0.0),
                brace.stileCut().map(Angle::tan).orElse(0.0));
        String cuts = Stream.of(
                        brace.railCut().map(cut -> Written.saw(cut) + " off square against the rail"),
                        brace.stileCut()
                                .map(cut -> brace.railCut().isPresent()
                                        ? Written.saw(cut) + " against the stile"
                                        : Written.saw(cut) + " off square against the stile"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return new EndCuts(
                "both ends " + (brace.ends() == BraceEnds.POINTS ? "pointed: " : "cut ") + cuts,
                Length.ZERO,
                Math.min(Math.hypot(1, steepest), MOST_SAWING));
    }

    /** Cut so much longer, and trimmed when the piece is up. */
    EndCuts leftLong(Length more) {
        return new EndCuts(words + ", " + Written.tape(more) + " left to trim", slant.plus(more), sawing);
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
