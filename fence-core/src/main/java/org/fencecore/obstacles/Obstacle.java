package org.fencecore.obstacles;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.jspecify.annotations.Nullable;

/**
 * One thing in the way: its own ground, and the clear distance from its outer edge within which no post hole may be dug.
 *
 * <p>A hole of radius {@code r} stands clear if its centre is at least {@code clear + r} from the outer edge. The edge of
 * a line is half its width from its middle. With the usual 24 in, holes 12 in wide and a line 4 in wide, centres stay
 * 24 + 6 + 2 = 32 in from the middle of the line.
 *
 * <table>
 * <caption>What bars what</caption>
 * <tr><th scope="col">thing</th><th scope="col">clear distance for holes</th><th scope="col">the fence itself</th></tr>
 * <tr><td>{@link #utility(UtilityKind, Polyline) utility line}</td><td>24 in, {@link #USUAL_TOLERANCE}</td>
 *     <td>may pass over</td></tr>
 * <tr><td>{@link #tree tree}</td><td>to the end of its root zone</td><td>not through the trunk</td></tr>
 * <tr><td>{@link #wall wall}</td><td>none but its own ground</td><td>not through it</td></tr>
 * <tr><td>{@link #hydrant hydrant}</td><td>as given</td><td>not within it either</td></tr>
 * <tr><td>{@link #structure structure}</td><td>none but its own ground</td><td>not through it</td></tr>
 * <tr><td>{@link #area area}</td><td>none but its own ground</td><td>may pass over</td></tr>
 * </table>
 *
 * <p>The clear distance is the caller's to give, with {@link #withClear}: how wide the tolerance zone of a marked line is
 * differs by state. It assumes that the marks lie over the line; depth is not known and does not count.
 *
 * <p>Sources: 24 in from the outside edges on either side, Sunshine 811 (Florida); 18 in, MS 811 (Mississippi); 2 ft in
 * Minnesota and Kentucky. The root zone of a tree and the space at a hydrant are for the local office or an arborist to
 * say; no figure is offered here.
 */
public final class Obstacle {

    /** How far holes stay from the outer edge of a marked line when not said: 24 in. */
    public static final Length USUAL_TOLERANCE = Length.ofInches(24);

    private static final Citation TOLERANCE =
            Citation.of("Sunshine 811", "tolerance zone, 24 in from outside edges", "");
    private static final Length LARGEST = Length.ofFeet(1_000);

    /** How near the fence itself may come, between its posts. */
    private enum Passing {
        OVER,
        NOT_THROUGH,
        NOT_NEAR
    }

    private final String name;
    private final Zone ground;
    private final Length clear;
    private final Passing passing;
    private final @Nullable UtilityKind utility;
    private final Citation source;

    private Obstacle(
            String name, Zone ground, Length clear, Passing passing, @Nullable UtilityKind utility, Citation source) {
        this.name = name;
        this.ground = ground;
        this.clear = clear;
        this.passing = passing;
        this.utility = utility;
        this.source = source;
    }

    /**
     * Returns a marked line of which the width is not known: its mark is taken for its outer edge on both sides.
     *
     * @param kind what it carries
     * @param mark the line as marked on the ground
     * @return the line, with a tolerance zone of 24 in either side
     */
    public static Obstacle utility(UtilityKind kind, Polyline mark) {
        return utility(kind, mark, Length.ZERO);
    }

    /**
     * Returns a marked line of which the width is known.
     *
     * @param kind what it carries
     * @param middle the middle of the line, in plan
     * @param width how wide the pipe, cable or trench of pipes is
     * @return the line, with a tolerance zone of 24 in from either outer edge
     * @throws IllegalArgumentException if the width is negative or over 1,000 ft
     */
    public static Obstacle utility(UtilityKind kind, Polyline middle, Length width) {
        return new Obstacle(
                Objects.requireNonNull(kind, "kind").toString(),
                Zone.along(middle, requireSize("width", width).dividedBy(2)),
                USUAL_TOLERANCE,
                Passing.OVER,
                kind,
                TOLERANCE);
    }

    /**
     * Returns a tree.
     *
     * @param centre the middle of the trunk
     * @param trunkRadius half the thickness of the trunk at the ground
     * @param rootZone the radius, from the middle of the trunk, within which no hole is to be dug; not less than that of
     *     the trunk
     * @return the tree
     * @throws IllegalArgumentException if a radius is negative or over 1,000 ft, or the root zone is less than the trunk
     */
    public static Obstacle tree(Point centre, Length trunkRadius, Length rootZone) {
        requireSize("trunkRadius", trunkRadius);
        requireSize("rootZone", rootZone);
        if (rootZone.compareTo(trunkRadius) < 0) {
            throw new IllegalArgumentException("rootZone was " + rootZone + ", less than the trunk's " + trunkRadius
                    + "; measure both from the middle of the trunk");
        }
        return new Obstacle(
                "tree",
                Zone.around(centre, trunkRadius),
                rootZone.minus(trunkRadius),
                Passing.NOT_THROUGH,
                null,
                Citation.COMMON_PRACTICE);
    }

    /**
     * Returns a wall. Its footing may be wider: tell how much with {@link #withClear}.
     *
     * @param middle the middle of the wall, in plan
     * @param thickness how thick it is
     * @return the wall; holes may be dug right beside it
     * @throws IllegalArgumentException if the thickness is negative or over 1,000 ft
     */
    public static Obstacle wall(Polyline middle, Length thickness) {
        Zone ground = Zone.along(middle, requireSize("thickness", thickness).dividedBy(2));
        return new Obstacle("wall", ground, Length.ZERO, Passing.NOT_THROUGH, null, Citation.GEOMETRY);
    }

    /**
     * Returns a hydrant, or anything else that people have to get at from all sides.
     *
     * @param centre its middle
     * @param clear the radius, from the middle, that is to stay clear of holes and of the fence
     * @return the hydrant
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public static Obstacle hydrant(Point centre, Length clear) {
        return new Obstacle(
                "hydrant",
                Zone.around(centre, Length.ZERO),
                requireSize("clear", clear),
                Passing.NOT_NEAR,
                null,
                Citation.COMMON_PRACTICE);
    }

    /**
     * Returns something that no fence can pass through, such as a shed, a pond or a pile of rocks.
     *
     * @param outline its outline, in plan
     * @return the structure; holes may be dug right beside it
     */
    public static Obstacle structure(Polygon outline) {
        return new Obstacle(
                "structure", Zone.inside(outline), Length.ZERO, Passing.NOT_THROUGH, null, Citation.GEOMETRY);
    }

    /**
     * Returns ground where no hole may be dug and which a fence may pass over, such as a drain field.
     *
     * @param outline its outline, in plan
     * @return the area
     */
    public static Obstacle area(Polygon outline) {
        return new Obstacle(
                "keep-out area", Zone.inside(outline), Length.ZERO, Passing.OVER, null, Citation.COMMON_PRACTICE);
    }

    /**
     * Returns this obstacle with another name.
     *
     * @param newName what one calls it on this job, such as {@code the oak}
     * @return the obstacle with that name
     * @throws IllegalArgumentException if the name is blank
     */
    public Obstacle withName(String newName) {
        if (newName.isBlank()) {
            throw new IllegalArgumentException("name was blank; findings name the thing, so give it a name");
        }
        return new Obstacle(newName, ground, clear, passing, utility, source);
    }

    /**
     * Returns this obstacle with another clear distance, such as the tolerance zone that the state asks for.
     *
     * @param newClear how far holes stay from its outer edge
     * @param newSource where that distance comes from
     * @return the obstacle with that distance
     * @throws IllegalArgumentException if the distance is negative or over 1,000 ft
     */
    public Obstacle withClear(Length newClear, Citation newSource) {
        requireSize("clear", newClear);
        return new Obstacle(name, ground, newClear, passing, utility, Objects.requireNonNull(newSource, "newSource"));
    }

    static Length requireSize(String what, Length value) {
        if (value.isNegative() || value.compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException(
                    what + " was " + value + "; it must be from 0 to 1,000 ft, so check its unit and sign");
        }
        return value;
    }

    /**
     * Returns what it is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns what a buried line carries.
     *
     * @return the kind; empty for everything above the ground and for areas
     */
    public Optional<UtilityKind> utility() {
        return Optional.ofNullable(utility);
    }

    /**
     * Returns the ground it takes itself.
     *
     * @return the trunk, the wall, the width of the pipe; a point or a line without width where that is not known
     */
    public Zone ground() {
        return ground;
    }

    /**
     * Returns the ground that has to stay clear of holes.
     *
     * @return its own ground with the clear distance round it
     */
    public Zone clearGround() {
        return ground.widenedBy(clear);
    }

    /**
     * Returns how far holes stay from its outer edge.
     *
     * @return the clear distance
     */
    public Length clear() {
        return clear;
    }

    /**
     * Returns where the clear distance comes from.
     *
     * @return the source
     */
    public Citation source() {
        return source;
    }

    /**
     * Tells whether the fence itself may not run through it, as through a wall; it may pass over a pipe.
     *
     * @return true if it may not
     */
    public boolean barsFence() {
        return passing != Passing.OVER;
    }

    /**
     * Tells whether the fence itself may not come within its clear distance either, as at a hydrant.
     *
     * @return true if it may not
     */
    public boolean barsFenceNearby() {
        return passing == Passing.NOT_NEAR;
    }

    /**
     * Returns where along a line of posts no hole may be dug: where the distance from the hole's centre to the outer edge
     * is less than the clear distance and the radius.
     *
     * @param postLine the line of the posts' centres
     * @param holeRadius how far a hole reaches from its centre
     * @return the stations in order, apart from each other; a post may stand at either end of an interval
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public List<Interval> forbidden(Segment postLine, Length holeRadius) {
        return clearGround().stretchesOf(postLine, requireSize("holeRadius", holeRadius));
    }

    /**
     * Tells whether a hole comes too near. What is too near by less than a thousandth of a millimetre does not count, so
     * that a post at the end of a {@linkplain #forbidden forbidden} interval is clear whichever way it was rounded.
     *
     * @param centre the middle of the hole
     * @param holeRadius how far it reaches from there
     * @return true if no hole may be dug there
     * @throws IllegalArgumentException if the radius is negative or over 1,000 ft
     */
    public boolean blocks(Point centre, Length holeRadius) {
        return clearGround()
                .isReachedFrom(centre, requireSize("holeRadius", holeRadius).minus(Obstacles.ROUNDING));
    }

    /** Its name in a sentence. */
    String phrase() {
        return name.startsWith("the ") ? name : "the " + name;
    }

    /** Where the fence itself runs through it. */
    List<Interval> crossed(Segment fence, Length reach) {
        return passing == Passing.OVER ? List.of() : ground.stretchesOf(fence, reach.minus(Obstacles.ROUNDING));
    }

    /** Where the fence itself runs through the space that has to stay clear of it. */
    List<Interval> crowded(Segment fence, Length reach) {
        return passing == Passing.NOT_NEAR
                ? clearGround().stretchesOf(fence, reach.minus(Obstacles.ROUNDING))
                : List.of();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Obstacle that
                && name.equals(that.name)
                && ground.equals(that.ground)
                && clear.equals(that.clear)
                && passing == that.passing
                && utility == that.utility
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, ground, clear, passing, utility, source);
    }

    /**
     * Returns its name.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return name;
    }
}
