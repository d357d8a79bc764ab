package org.fencecore.slope;

import org.fencecore.geometry.Clearance;
import org.fencecore.geometry.Profile;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * One bay, from post centre to post centre, fitted to the ground: the straight line of its board bottoms and what
 * follows from it.
 *
 * <p>Rise over run is the grade, and its angle is how far off square the rail ends are cut against the plumb posts. A
 * rail measures the square root of run squared plus rise squared. All rails of the bay share that grade and length,
 * whatever their height.
 *
 * <p>Lengths are from centre to centre of the posts. A rail that ends at the post faces is shorter; what is left for
 * the post is not taken off here.
 *
 * <p>Example: 1.6 ft up in an 8 ft bay.
 *
 * <pre>{@code
 * bay.run();                      // 8 ft
 * bay.rise();                     // 1.6 ft
 * bay.grade().percent();          // 20
 * bay.grade().risePerFoot();      // 2.4 in
 * bay.railLength();               // 8.1584 ft
 * bay.endCut().degrees();         // 11.3099
 * }</pre>
 */
public final class FittedBay {

    private final Profile ground;
    private final long start;
    private final long startBottom;
    private final long end;
    private final long endBottom;

    /** Takes the ground, and the station and board-bottom elevation at either end in nanometres. */
    FittedBay(Profile ground, long start, long startBottom, long end, long endBottom) {
        this.ground = ground;
        this.start = start;
        this.startBottom = startBottom;
        this.end = end;
        this.endBottom = endBottom;
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
     * Returns how much the board bottoms climb from the start to the end of the bay, exact. That is the rise of the
     * ground between the posts, unless the boards are lifted more at one post than at the other.
     *
     * @return the rise, negative for a fall
     */
    public Length rise() {
        return Length.ofNanometres(endBottom - startBottom);
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
     * Returns the narrowest and widest gap under the boards in this bay, and where they are.
     *
     * @return the gaps between the ground and the line of the board bottoms
     */
    public Clearance clearance() {
        return ground.clearanceUnder(Profile.builder()
                .point(start(), Length.ofNanometres(startBottom))
                .point(end(), Length.ofNanometres(endBottom))
                .build());
    }
}
