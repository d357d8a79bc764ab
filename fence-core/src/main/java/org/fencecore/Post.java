package org.fencecore;

import java.util.Objects;
import org.fencecore.footing.FootingDesign;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.jspecify.annotations.Nullable;

/**
 * One post: where it stands, how far it stands out of the ground, and its footing.
 */
public final class Post {

    private final int number;
    private final PostKind kind;
    private final Point centre;
    private final Length ground;
    private final Length exposed;
    private final Slope topGrade;
    private final FootingDesign footing;
    private final boolean set;

    Post(
            int number,
            PostKind kind,
            Point centre,
            Length ground,
            Length exposed,
            Slope topGrade,
            FootingDesign footing,
            boolean set) {
        this.number = number;
        this.kind = kind;
        this.centre = centre;
        this.ground = ground;
        this.exposed = exposed;
        this.topGrade = topGrade;
        this.footing = footing;
        this.set = set;
    }

    /**
     * Returns its number on the plan, from 1 along the fence.
     *
     * @return its number on the plan, from 1 along the fence
     */
    public int number() {
        return number;
    }

    /**
     * Returns what it does.
     *
     * @return what it does
     */
    public PostKind kind() {
        return kind;
    }

    /**
     * Returns the middle of the post in plan, east and north of the first lot corner.
     *
     * @return the middle of the post in plan, east and north of the first lot corner
     */
    public Point centre() {
        return centre;
    }

    /**
     * Returns the height of the ground there, in the datum of the shots.
     *
     * @return the height of the ground there, in the datum of the shots
     */
    public Length ground() {
        return ground;
    }

    /**
     * Returns how far its top stands above that ground, on its higher side where it is cut to the slope.
     *
     * @return how far its top stands above that ground
     */
    public Length exposed() {
        return exposed;
    }

    /**
     * Returns the grade its top is cut to.
     *
     * @return the grade, positive where it climbs along the run; level unless the style cuts tops to the slope
     */
    public Slope topGrade() {
        return topGrade;
    }

    /**
     * Returns depth, hole and concrete.
     *
     * @return depth, hole and concrete
     */
    public FootingDesign footing() {
        return footing;
    }

    /**
     * Tells whether it stands already and the plan was made to it.
     *
     * @return true if it was given to {@link FencePlan#withSetPosts}
     */
    public boolean isSet() {
        return set;
    }

    /**
     * Returns the height of the post's top.
     *
     * @return ground plus exposed height, in the datum of the shots
     */
    public Length top() {
        return ground.plus(exposed);
    }

    @Override
    public String toString() {
        return "post " + number;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Post that
                && number == that.number
                && kind == that.kind
                && centre.equals(that.centre)
                && ground.equals(that.ground)
                && exposed.equals(that.exposed)
                && topGrade.equals(that.topGrade)
                && footing.equals(that.footing)
                && set == that.set;
    }

    @Override
    public int hashCode() {
        return Objects.hash(number, kind, centre, ground, exposed, topGrade, footing, set);
    }
}
