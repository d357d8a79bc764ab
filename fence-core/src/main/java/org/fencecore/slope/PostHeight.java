package org.fencecore.slope;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** How high one post stands above the ground, how its top is cut, and what lumber gives it. */
public final class PostHeight {

    private final Length highSide;
    private final Length lowSide;
    private final Slope grade;

    PostHeight(Length highSide, Length lowSide, Slope grade) {
        this.highSide = highSide;
        this.lowSide = lowSide;
        this.grade = grade;
    }

    /**
     * Returns the height of its higher side above the ground at its middle.
     *
     * @return the height, plumb
     */
    public Length highSide() {
        return highSide;
    }

    /**
     * Returns the height of its lower side above the ground at its middle.
     *
     * @return the height, plumb; that of the higher side if it is cut level
     */
    public Length lowSide() {
        return lowSide;
    }

    /**
     * Returns how far off level the top is cut.
     *
     * @return the angle, zero or more
     */
    public Angle cut() {
        return grade.angle().abs();
    }

    /**
     * Returns the grade its top is cut to.
     *
     * @return the grade, positive where it climbs along the run, level if it is cut level
     */
    public Slope grade() {
        return grade;
    }

    /**
     * Returns how long the post is with what stands in the ground.
     *
     * @param embedment how deep it stands in the ground
     * @return the embedment and the higher side
     * @throws IllegalArgumentException if the embedment is negative
     */
    public Length lengthWith(Length embedment) {
        if (embedment.isNegative()) {
            throw new IllegalArgumentException(
                    "embedment was " + embedment + "; it must be 0 or more, measured down from the ground");
        }
        return embedment.plus(highSide);
    }

    /**
     * Returns the shortest stick on the shelf that gives the post.
     *
     * @param embedment how deep it stands in the ground
     * @param stock the lengths on the shelf
     * @return the length of the stick; empty if none is long enough
     * @throws IllegalArgumentException if the embedment is negative
     */
    public Optional<Length> stockFor(Length embedment, List<Length> stock) {
        Length needed = lengthWith(embedment);
        return stock.stream().filter(length -> length.compareTo(needed) >= 0).min(Comparator.naturalOrder());
    }

    @Override
    public String toString() {
        return highSide + " above the ground";
    }
}
