package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.boarding.CornerBoards;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.terrain.GroundUnder;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * One straight line of the fence: its string and post line, and how it ends. It follows a side of the lot or of a line
 * given point by point, or a part of one where the side is curved or cut in two.
 */
final class FenceLine {

    /** A post stands a little off the lot corner where the shot was taken; further than this is another matter. */
    private static final Length FURTHEST_PAST_SHOTS = Length.ofFeet(2);

    private static final Angle SHARPEST_TURN = Angle.ofDegrees(175);

    final int side;
    /** What the line is called, such as {@code side 3} or {@code side 3, part 2}. */
    final String name;

    final Segment string;
    final Segment postLine;
    final Side outside;
    /** The distance along the side at which the post line begins. */
    final Length startAlongSide;
    /** Numbers of the places where the line begins and ends, shared with the line that it meets there. */
    final int startNode;

    final int endNode;
    /** The corners of the post lines where the fence goes on along another line. */
    final Optional<Corner> start;

    final Optional<Corner> end;

    private final Length half;
    private final Length face;
    private final Length boardThickness;

    FenceLine(
            FenceStyle style,
            int side,
            String name,
            Segment string,
            Segment postLine,
            Side outside,
            Length startAlongSide,
            int startNode,
            int endNode,
            Optional<Corner> start,
            Optional<Corner> end) {
        this.side = side;
        this.name = name;
        this.string = string;
        this.postLine = postLine;
        this.outside = outside;
        this.startAlongSide = startAlongSide;
        this.startNode = startNode;
        this.endNode = endNode;
        this.start = start;
        this.end = end;
        half = style.postLumber().width().dividedBy(2);
        face = half.plus(style.boardsOffPosts());
        boardThickness = style.boardLumber().thickness();
    }

    /** How far the fence's outermost face stands outside the string. */
    static Length facing(FenceStyle style) {
        return style.boardsOffPosts().plus(style.boardLumber().thickness());
    }

    /** How far the fence reaches from the middle of its posts to the outside. */
    static Length reach(FenceStyle style) {
        return style.postLumber().width().dividedBy(2).plus(facing(style));
    }

    /** The first of two ends at which lines meet too sharply. */
    static Optional<Corner> tooSharp(Optional<Corner> start, Optional<Corner> end) {
        return Stream.of(start, end)
                .flatMap(Optional::stream)
                .filter(FenceLine::isTooSharp)
                .findFirst();
    }

    /** Tells whether two lines meet at so sharp a corner that posts, rails and boards of both have no room. */
    static boolean isTooSharp(Corner corner) {
        return corner.turn().abs().compareTo(SHARPEST_TURN) > 0;
    }

    static Finding tooSharp(String place, Corner corner) {
        return Finding.blocker(
                        "corner-too-sharp",
                        place,
                        "the two sides meet at "
                                + Written.degrees(
                                        Angle.STRAIGHT.minus(corner.turn().abs()))
                                + ", and under " + Written.degrees(Angle.STRAIGHT.minus(SHARPEST_TURN))
                                + " there is no room for posts and rails between them")
                .withRemedy("check the bearings; if they are right, cut the corner off with a short side");
    }

    /** The part of its side that the line takes up. */
    Interval alongSide() {
        return Interval.of(startAlongSide, startAlongSide.plus(postLine.length()));
    }

    /**
     * How far something reaches past the centres of the first and last post of the line.
     *
     * @param start how far before the first
     * @param end how far beyond the last
     */
    record Past(Length start, Length end) {}

    /** How far the rails reach past the corner posts where they meet those of the next run, and else the posts' edges. */
    Past railsPast(boolean meetsAtStart, boolean meetsAtEnd) {
        return new Past(
                meetsAtStart
                        ? start.map(corner -> longPoint(corner, half, face)).orElse(half)
                        : half,
                meetsAtEnd ? end.map(corner -> longPoint(corner, half, face)).orElse(half) : half);
    }

    /** How far the outside boards reach: at a corner as {@link CornerBoards} tells, and else to the posts' edges. */
    Past boardsPast(boolean meetsAtStart, boolean meetsAtEnd) {
        return new Past(
                meetsAtStart ? start.map(corner -> at(corner).leavingBefore()).orElse(half) : half,
                meetsAtEnd ? end.map(corner -> at(corner).arrivingPast()).orElse(half) : half);
    }

    private CornerBoards at(Corner corner) {
        return CornerBoards.at(corner, face, boardThickness);
    }

    /** How far past a corner post's middle the lines meet that lie so far outside both post lines; negative if before. */
    private static Length pastTo(Corner corner, Length outside) {
        return corner.mitreRun(outside.negated()).negated();
    }

    /** A mitred rail's long point is on its outer face, but on its inner one where the corner points into the lot. */
    private static Length longPoint(Corner corner, Length innerFace, Length outerFace) {
        return Length.max(pastTo(corner, innerFace), pastTo(corner, outerFace));
    }

    /** The ground under the post line, in stations along it; empty, with a finding, when the shots do not cover it. */
    Optional<Profile> ground(Site site, Findings findings) {
        Optional<Profile> shots = site.ground(side);
        Interval needed = alongSide();
        if (shots.isEmpty() && site.surface().isPresent()) {
            return underSurface(site.surface().get(), findings);
        }
        if (shots.isEmpty()) {
            findings.add(Finding.blocker("no-ground", name, "no heights of the ground were given")
                    .withRemedy("take at least two shots on this side, from " + Written.station(needed.start())
                            + " or before to " + Written.station(needed.end()) + " or beyond"));
            return Optional.empty();
        }
        Interval have = shots.get().extent();
        Optional<Profile> covering = covering(shots.get(), needed);
        if (covering.isEmpty()) {
            findings.add(Finding.blocker(
                            "ground-not-covered",
                            name,
                            "the ground shots run from " + Written.station(have.start()) + " to "
                                    + Written.station(have.end()) + ", and the fence from "
                                    + Written.station(needed.start()) + " to " + Written.station(needed.end())
                                    + " along the side")
                    .withRemedy("take shots at both ends of the fence"));
            return Optional.empty();
        }
        if (!have.contains(needed)) {
            Length past =
                    Length.max(have.start().minus(needed.start()), needed.end().minus(have.end()));
            findings.add(Finding.note(
                            "ground-continued",
                            name,
                            "the fence reaches up to " + Written.tape(past)
                                    + " past the ground shots, where the ground was taken to go on at the same grade")
                    .withRemedy("take shots at both ends of the fence"));
        }
        return Optional.of(
                covering.get().between(needed.start(), needed.end()).shiftedBy(startAlongSide.negated(), Length.ZERO));
    }

    private Optional<Profile> underSurface(Surface surface, Findings findings) {
        GroundUnder ground = GroundUnder.of(Polyline.of(List.of(postLine.start(), postLine.end())), surface);
        findings.later(ground::findings, name);
        return ground.profile();
    }

    /** The shots, carried on at their first and last grade for a little where that covers what is needed. */
    static Optional<Profile> covering(Profile shots, Interval needed) {
        Interval have = shots.extent();
        Length before = have.start().minus(needed.start());
        Length after = needed.end().minus(have.end());
        if (Length.max(before, after).compareTo(FURTHEST_PAST_SHOTS) > 0) {
            return Optional.empty();
        }
        return Optional.of(have.contains(needed) ? shots : continued(shots, needed));
    }

    private static Profile continued(Profile shots, Interval needed) {
        List<ProfilePoint> points = new ArrayList<>(shots.points());
        ProfilePoint first = points.get(0);
        ProfilePoint last = points.get(points.size() - 1);
        if (needed.start().compareTo(first.station()) < 0) {
            Slope grade = shots.slopeAt(first.station());
            points.add(0, on(first, grade, needed.start()));
        }
        if (needed.end().compareTo(last.station()) > 0) {
            Slope grade = shots.slopeBetween(
                    shots.points().get(shots.points().size() - 2).station(), last.station());
            points.add(on(last, grade, needed.end()));
        }
        return Profile.of(points);
    }

    private static ProfilePoint on(ProfilePoint known, Slope grade, Length station) {
        return new ProfilePoint(station, known.elevation().plus(grade.riseOver(station.minus(known.station()))));
    }
}
