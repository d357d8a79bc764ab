package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;

/**
 * Takes a line over the ground piece by piece. Every piece is worked out from the same one of its ends, whichever way the
 * line goes, so that the ground under a line and under the same line reversed are mirror images to the nanometre.
 */
final class GroundPieces {

    private final Polyline line;
    private final Piecewise ground;

    private GroundPieces(Polyline line, Piecewise ground) {
        this.line = line;
        this.ground = ground;
    }

    /** Returns the ground under a line, or empty if some of it is not covered. */
    static Optional<Profile> profile(Polyline line, Piecewise ground) {
        // The covered ground is convex, so a piece is covered if its ends are.
        List<Point> points = line.points();
        long[] heights = new long[points.size()];
        for (int i = 0; i < heights.length; i++) {
            OptionalLong height = heightAt(points.get(i), ground);
            if (height.isEmpty()) {
                return Optional.empty();
            }
            heights[i] = height.getAsLong();
        }
        GroundPieces pieces = new GroundPieces(line, ground);
        Profile.Builder profile = Profile.builder();
        profile.point(Length.ZERO, Length.ofNanometres(heights[0]));
        for (int i = 1; i < heights.length; i++) {
            pieces.addBreaks(i, profile);
            profile.point(line.stationOfPoint(i), Length.ofNanometres(heights[i]));
        }
        return Optional.of(profile.build());
    }

    /** Returns the height at a place, or empty if it is not covered. */
    static Optional<Length> elevation(Point place, Piecewise ground) {
        OptionalLong height = heightAt(place, ground);
        return height.isPresent() ? Optional.of(Length.ofNanometres(height.getAsLong())) : Optional.empty();
    }

    /** Returns the stretches of a line that are not covered. */
    static List<Interval> uncovered(Polyline line, Piecewise ground) {
        GroundPieces pieces = new GroundPieces(line, ground);
        List<Interval> gaps = new ArrayList<>();
        for (int i = 1; i < line.points().size(); i++) {
            pieces.addGaps(i, gaps);
        }
        return List.copyOf(gaps);
    }

    private static OptionalLong heightAt(Point place, Piecewise ground) {
        return ground.heightAt(x(place), y(place));
    }

    private void addBreaks(int end, Profile.Builder profile) {
        boolean turned = isTurned(end);
        Point a = line.points().get(turned ? end : end - 1);
        Point b = line.points().get(turned ? end - 1 : end);
        long before = line.stationOfPoint(end - 1).nanometres();
        Breaks breaks = new Breaks(line.stationOfPoint(end).nanometres() - before);
        ground.addBreaks(x(a), y(a), x(b), y(b), breaks);
        breaks.tell(
                turned,
                (station, elevation) ->
                        profile.point(Length.ofNanometres(before + station), Length.ofNanometres(elevation)));
    }

    private void addGaps(int end, List<Interval> gaps) {
        boolean turned = isTurned(end);
        Point a = line.points().get(turned ? end : end - 1);
        Point b = line.points().get(turned ? end - 1 : end);
        boolean hasA = heightAt(a, ground).isPresent();
        boolean hasB = heightAt(b, ground).isPresent();
        if (hasA && hasB) {
            return;
        }
        double[] part = ground.clip(x(a), y(a), x(b), y(b));
        long length =
                line.stationOfPoint(end).minus(line.stationOfPoint(end - 1)).nanometres();
        if (part[0] >= part[1]) { // no more of it than an end is covered
            add(gaps, end, 0, length);
            return;
        }
        long from = hasA ? 0 : Math.round(part[0] * length);
        long to = hasB ? length : Math.round(part[1] * length);
        long first = turned ? length - to : from;
        long last = turned ? length - from : to;
        if (first > 0) {
            add(gaps, end, 0, first);
        }
        if (last < length) {
            add(gaps, end, last, length);
        }
    }

    private void add(List<Interval> gaps, int end, long from, long to) {
        Length start = line.stationOfPoint(end - 1);
        Interval gap = Interval.of(start.plus(Length.ofNanometres(from)), start.plus(Length.ofNanometres(to)));
        int last = gaps.size() - 1;
        if (last >= 0 && gaps.get(last).end().equals(gap.start())) {
            gaps.set(last, Interval.of(gaps.get(last).start(), gap.end()));
        } else {
            gaps.add(gap);
        }
    }

    private boolean isTurned(int end) {
        Point a = line.points().get(end - 1);
        Point b = line.points().get(end);
        return x(a) != x(b) ? x(a) > x(b) : y(a) > y(b);
    }

    private static long x(Point place) {
        return place.east().nanometres();
    }

    private static long y(Point place) {
        return place.north().nanometres();
    }
}
