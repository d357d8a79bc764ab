package org.fencecore;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** The lines of one fenced side: lot side, string and post line, and how the fence ends at both of its corners. */
final class FenceLine {

    final int side;
    final Segment string;
    final Segment postLine;
    final Side outside;
    /** The distance along the lot side at which the post line begins. */
    final Length startAlongSide;
    /** Vertex numbers of the lot where the side begins and ends. */
    final int startCorner;

    final int endCorner;
    final boolean cornerAtStart;
    final boolean cornerAtEnd;
    /** How far rails reach past the centres of the first and last post. */
    final Length railPastStart;

    final Length railPastEnd;
    /** How far boards reach past the centres of the first and last post. */
    final Length boardsPastStart;

    final Length boardsPastEnd;

    private final Site site;

    FenceLine(Site site, FenceStyle style, Polygon outline, Polygon strings, Polygon postLines, int side) {
        this.site = site;
        this.side = side;
        int sides = outline.vertices().size();
        startCorner = side - 1;
        endCorner = side % sides;
        string = strings.side(startCorner);
        postLine = postLines.side(startCorner);
        outside = outline.inside().opposite();
        startAlongSide = outline.side(startCorner).stationOf(postLine.start());
        cornerAtStart = site.fencedSides().contains(side == 1 ? sides : side - 1);
        cornerAtEnd = site.fencedSides().contains(side == sides ? 1 : side + 1);
        Length half = style.postLumber().width().dividedBy(2);
        Corner start = postLines.corner(startCorner);
        Corner end = postLines.corner(endCorner);
        // Seen from the post line, the rails' outer faces lie this far outside; there both runs' rails meet.
        Length out = half.plus(style.railLumber().thickness()).negated();
        railPastStart = cornerAtStart ? start.mitreRun(out).negated() : half;
        railPastEnd = cornerAtEnd ? end.mitreRun(out).negated() : half;
        // The arriving run's boards stop flush with its rails; the first board that leaves covers their edge, which
        // lies the board's thickness times the sine of the corner further back.
        Length lap = style.boardLumber()
                .thickness()
                .times(Ratio.of(start.interiorAngle().sin()));
        boardsPastStart = cornerAtStart ? railPastStart.plus(lap) : half;
        boardsPastEnd = railPastEnd;
    }

    /** The ground under the post line, in stations along it; empty, with a finding, when the shots do not cover it. */
    Optional<Profile> ground(List<Finding> findings) {
        Optional<Profile> shots = site.ground(side);
        Interval needed = Interval.of(startAlongSide, startAlongSide.plus(postLine.length()));
        if (shots.isEmpty()) {
            findings.add(Finding.blocker("no-ground", "side " + side, "no heights of the ground were given")
                    .remedy("take at least two shots on this side, from " + Written.station(needed.start())
                            + " or before to " + Written.station(needed.end()) + " or beyond"));
            return Optional.empty();
        }
        if (!shots.get().covers(needed)) {
            Interval have = shots.get().extent();
            findings.add(Finding.blocker(
                            "ground-not-covered",
                            "side " + side,
                            "the ground shots run from " + Written.station(have.start()) + " to "
                                    + Written.station(have.end()) + ", and the fence from "
                                    + Written.station(needed.start()) + " to " + Written.station(needed.end())
                                    + " along the side")
                    .remedy("take shots at both lot corners"));
            return Optional.empty();
        }
        return Optional.of(
                shots.get().between(needed.start(), needed.end()).shiftedBy(startAlongSide.negated(), Length.ZERO));
    }
}
