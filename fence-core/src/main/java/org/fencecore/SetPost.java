package org.fencecore;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A post as it was found standing once its concrete had set: where its middle is, and if it was measured how far it
 * stands out of the ground.
 *
 * <p>A tape along the string gives the place; {@link Run#pointAt} turns it into plan.
 *
 * <pre>{@code
 * SetPost third = SetPost.of(3, run.pointAt(Length.parse("15' 10 1/2\""), Length.parse("1/4 in")));
 * FencePlan asBuilt = plan.withSetPosts(List.of(third));
 * }</pre>
 */
public final class SetPost {

    private final int number;
    private final Point centre;
    private final @Nullable Length exposed;

    private SetPost(int number, Point centre, @Nullable Length exposed) {
        this.number = number;
        this.centre = Objects.requireNonNull(centre, "centre");
        this.exposed = exposed;
    }

    /**
     * Returns a post as it stands.
     *
     * @param number its number on the plan
     * @param centre the middle of the post in plan, at the height of the string
     * @return the post
     */
    public static SetPost of(int number, Point centre) {
        return new SetPost(number, centre, null);
    }

    /**
     * Returns the same post with its height.
     *
     * @param length how far its top stands out of the ground, over zero
     * @return a post like this one
     * @throws IllegalArgumentException if not over zero
     */
    public SetPost withExposed(Length length) {
        if (!length.isPositive()) {
            throw new IllegalArgumentException("length of post " + number + " out of the ground was " + length
                    + "; it must be over 0: leave out a post that is not set");
        }
        return new SetPost(number, centre, length);
    }

    /**
     * Returns its number.
     *
     * @return its number on the plan
     */
    public int number() {
        return number;
    }

    /**
     * Returns where it stands.
     *
     * @return the middle of the post in plan, east and north of the first lot corner
     */
    public Point centre() {
        return centre;
    }

    /**
     * Returns how far it stands out of the ground.
     *
     * @return the length, or empty if it was not measured
     */
    public Optional<Length> exposed() {
        return Optional.ofNullable(exposed);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SetPost that
                && number == that.number
                && centre.equals(that.centre)
                && Objects.equals(exposed, that.exposed);
    }

    @Override
    public int hashCode() {
        return Objects.hash(number, centre, exposed);
    }

    @Override
    public String toString() {
        return "post " + number + " set at " + centre;
    }
}
