package org.fencecore.rules;

import java.util.Objects;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;

/**
 * One post as the rules of the place see it: a hole in the ground.
 *
 * <p>Example: {@code PostPart.of("side 2", "post 7", centre, Length.ofInches(6))}.
 */
public final class PostPart {

    private final String place;
    private final String name;
    private final Point centre;
    private final Length holeRadius;

    private PostPart(String place, String name, Point centre, Length holeRadius) {
        this.place = FencePart.requireText("place", place);
        this.name = FencePart.requireText("name", name);
        this.centre = Objects.requireNonNull(centre, "centre");
        this.holeRadius = LocalRule.requireSize("holeRadius", holeRadius);
    }

    /**
     * Returns one post.
     *
     * @param place the part of the fence it is in, such as {@code side 2}; posts of one place are told together
     * @param name what one calls the post, such as {@code post 7}
     * @param centre the middle of its hole
     * @param holeRadius how far the hole reaches from there
     * @return the post
     * @throws IllegalArgumentException if a text is blank, or the radius is negative or over 10,000 ft
     */
    public static PostPart of(String place, String name, Point centre, Length holeRadius) {
        return new PostPart(place, name, centre, holeRadius);
    }

    /**
     * Returns the part of the fence it is in.
     *
     * @return the place
     */
    public String place() {
        return place;
    }

    /**
     * Returns what one calls the post.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns where it stands.
     *
     * @return the middle of its hole
     */
    public Point centre() {
        return centre;
    }

    /**
     * Returns how far its hole reaches.
     *
     * @return the radius of the hole
     */
    public Length holeRadius() {
        return holeRadius;
    }

    @Override
    public String toString() {
        return name + " in " + place;
    }
}
