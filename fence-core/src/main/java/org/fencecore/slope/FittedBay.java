package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Angle;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * One bay, from post centre to post centre, fitted to the ground: the straight line of its board bottoms and what
 * follows from it, whichever treatment it has.
 *
 * <p>Rise over run is the grade, and its angle is how far off square the rail ends are cut against the plumb posts. A
 * rail measures the square root of run squared plus rise squared. All rails of the bay share that grade and length,
 * whatever their height. In a stepped bay rise and grade are zero.
 *
 * <p>Lengths are from centre to centre of the posts. A rail that ends at the post faces is shorter; what is left for
 * the post is not taken off here.
 *
 * <p>Example: 1.6 ft up in an 8 ft bay, racked, and the same bay stepped, its boards 2 in up at the higher post.
 *
 * <pre>{@code
 * bay.run();                      // 8 ft
 * bay.rise();                     // 1.6 ft
 * bay.grade().percent();          // 20
 * bay.grade().risePerFoot();      // 2.4 in
 * bay.railLength();               // 8.1584 ft
 * bay.endCut().degrees();         // 11.3099
 *
 * stepped.railLength();           // 8 ft
 * stepped.aboveStart();           // 21.2 in
 * stepped.aboveEnd();             // 2 in
 * stepped.gapArea();              // 7.7333 sq ft: 8 ft times 11.6 in on the average
 * }</pre>
 */
public final class FittedBay {

    private final Treatment treatment;
    private final Profile ground;
    private final long start;
    private final long startBottom;
    private final long end;
    private final long endBottom;

    /** Takes the ground, and the station and board-bottom elevation at either end in nanometres. */
    FittedBay(Treatment treatment, Profile ground, long start, long startBottom, long end, long endBottom) {
        this.treatment = treatment;
        this.ground = ground;
        this.start = start;
        this.startBottom = startBottom;
        this.end = end;
        this.endBottom = endBottom;
    }

    /**
     * Returns by which treatment this bay meets the ground; in a mixed run, its own.
     *
     * @return the treatment, never {@link Treatment#MIXED}
     */
    public Treatment treatment() {
        return treatment;
    }

    /**
     * Returns the station of the post where the bay begins.
     *
     * @return the station of the post centre
     */
    public Length start() {
        return Length.ofNanometres(start);
    }

    /**
     * Returns the station of the post where the bay ends.
     *
     * @return the station of the post centre
     */
    public Length end() {
        return Length.ofNanometres(end);
    }

    /**
     * Returns the level distance between the posts, exact.
     *
     * @return end less start, over zero
     */
    public Length run() {
        return Length.ofNanometres(end - start);
    }

    /**
     * Returns how much the board bottoms climb from the start to the end of the bay, exact. In a racked bay that is the
     * rise of the ground between the posts, unless the boards are lifted more at one post than at the other.
     *
     * @return the rise, negative for a fall
     */
    public Length rise() {
        return Length.ofNanometres(endBottom - startBottom);
    }

    /**
     * Returns how much the ground climbs from post to post.
     *
     * @return the rise, negative for a fall
     */
    public Length groundRise() {
        return ground.rise(start(), end());
    }

    /**
     * Returns the grade of the rails and board bottoms: rise over run.
     *
     * @return the grade, positive where it climbs towards the end
     */
    public Slope grade() {
        return Slope.of(rise(), run());
    }

    /**
     * Returns the length of a rail along the slope: the square root of run squared plus rise squared.
     *
     * @return the length from post centre to post centre, to the nearest nanometre
     */
    public Length railLength() {
        return Length.ofMetres(Math.hypot(run().metres(), rise().metres()));
    }

    /**
     * Returns how far off square the rail ends are cut so that they stand plumb against the posts: the angle of the
     * grade. Both ends of a rail take the same angle, slanting the same way.
     *
     * @return the angle off a square cut, zero or more, uphill and downhill alike
     */
    public Angle endCut() {
        return grade().angle().abs();
    }

    /**
     * Returns the height of the board bottoms at the post where the bay begins, in the datum of the ground.
     *
     * @return the elevation, exact
     */
    public Length bottomAtStart() {
        return Length.ofNanometres(startBottom);
    }

    /**
     * Returns the height of the board bottoms at the post where the bay ends, in the datum of the ground.
     *
     * @return the elevation, exact
     */
    public Length bottomAtEnd() {
        return Length.ofNanometres(endBottom);
    }

    /**
     * Returns the height of the line of the board bottoms at a station, beyond the posts on the same grade: start bottom
     * plus grade times the distance from the start.
     *
     * @param station the station, in the bay or past it
     * @return the elevation, to the nearest nanometre
     */
    public Length bottomAt(Length station) {
        return bottomAtStart().plus(grade().riseOver(station.minus(start())));
    }

    /**
     * Returns how high the board bottoms of this bay stand over the ground at the post where it begins.
     *
     * @return the height over the ground
     */
    public Length aboveStart() {
        return bottomAtStart().minus(ground.elevationAt(start()));
    }

    /**
     * Returns how high the board bottoms of this bay stand over the ground at the post where it ends.
     *
     * @return the height over the ground
     */
    public Length aboveEnd() {
        return bottomAtEnd().minus(ground.elevationAt(end()));
    }

    /**
     * Returns the narrowest and widest gap under the boards in this bay, and where they are.
     *
     * @return the gaps between the ground and the line of the board bottoms
     */
    public Clearance clearance() {
        return ground.clearanceUnder(Profile.straight(start(), bottomAtStart(), end(), bottomAtEnd()));
    }

    /**
     * Returns the narrowest and widest gap under one board that is cut square at the bottom: its bottom is level, with
     * its middle on the line of the board bottoms. On a grade its uphill corner comes nearer to the ground than the
     * line does, by half its width times the grade.
     *
     * @param board the stations of its edges; what lies off the ground profile is left out
     * @return the gaps and their stations
     * @throws IllegalArgumentException if the board has no width or stands wholly off the ground profile
     */
    public Clearance underBoard(Interval board) {
        if (!board.length().isPositive()) {
            throw new IllegalArgumentException("board was from " + board.start() + " to " + board.end()
                    + "; it must have some width, so give the stations of its two edges");
        }
        Length bottom = bottomAt(board.middle());
        return ground.clearanceUnder(Profile.straight(board.start(), bottom, board.end(), bottom));
    }

    /**
     * Returns the stretches of this bay where the gap under the boards is wider than a given one: what is to be filled,
     * or closed with a kick board or with boards cut to the ground.
     *
     * @param gap the gap, such as the maximum clearance
     * @return the stretches in order, their ends to the nearest nanometre, unmodifiable; empty if there are none
     */
    public List<Interval> widerThan(Length gap) {
        List<Interval> wider = new ArrayList<>();
        List<ProfilePoint> shots = ground.between(start(), end()).points();
        Length began = start();
        for (int shot = 0; shot < shots.size(); shot++) {
            Length here = shots.get(shot).station();
            Length over = bottomAt(here).minus(shots.get(shot).elevation()).minus(gap);
            boolean last = shot == shots.size() - 1;
            if (over.isPositive()) {
                if (last) {
                    wider.add(Interval.of(began, here));
                }
                continue;
            }
            if (shot > 0) {
                ProfilePoint before = shots.get(shot - 1);
                Length overBefore =
                        bottomAt(before.station()).minus(before.elevation()).minus(gap);
                if (overBefore.isPositive()) {
                    wider.add(Interval.of(began, crossing(before.station(), overBefore, here, over)));
                }
            }
            if (!last) {
                ProfilePoint after = shots.get(shot + 1);
                Length overAfter =
                        bottomAt(after.station()).minus(after.elevation()).minus(gap);
                began = overAfter.isPositive() ? crossing(here, over, after.station(), overAfter) : began;
            }
        }
        return List.copyOf(wider);
    }

    /**
     * Returns how much is open between the ground and the line of the board bottoms, seen from the side. Under a stepped
     * bay on a straight grade that is a triangle and the strip under it: run times the mean of the gaps at the two posts.
     *
     * @return the area; where boards would stand in the ground it counts as negative
     */
    public Area gapArea() {
        List<ProfilePoint> shots = ground.between(start(), end()).points();
        double squareMetres = 0;
        for (int shot = 1; shot < shots.size(); shot++) {
            ProfilePoint before = shots.get(shot - 1);
            ProfilePoint here = shots.get(shot);
            double gaps = bottomAt(before.station()).minus(before.elevation()).metres()
                    + bottomAt(here.station()).minus(here.elevation()).metres();
            squareMetres += here.station().minus(before.station()).metres() * gaps / 2;
        }
        return Area.ofSquareMetres(squareMetres);
    }

    /** Where a gap that is linear from one station to another is as wide as asked. */
    private static Length crossing(Length a, Length overA, Length b, Length overB) {
        double share = overA.metres() / (overA.metres() - overB.metres());
        return a.plus(Length.ofNanometres(Math.round(b.minus(a).nanometres() * share)));
    }
}
