package org.fencecore.geometry;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.exact.Exact;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Ground in plan on which something holds: a front yard with a height limit of its own, an easement along a line, the
 * tolerance zone of a buried pipe, the root zone of a tree.
 *
 * <p>It is all that lies within a margin of a point, of a line or of an area; round a point that is a circle, along a
 * line a strip with round ends and corners. What is exactly at the margin is outside. An area without a margin holds
 * what is inside it or on its boundary.
 *
 * <p>Example: an easement of 10 ft, 5 ft either side of its line, that a fence crosses square at 30 ft.
 *
 * <pre>{@code
 * Zone easement = Zone.along(centreLine, Length.ofFeet(5));
 * easement.stretchesOf(fence, Length.ZERO);        // from 25 ft to 35 ft
 * easement.stretchesOf(fence, Length.ofInches(6)); // from 24 ft 6 in to 35 ft 6 in, for holes a foot wide
 * }</pre>
 */
public final class Zone {

    private static final Zone EVERYWHERE = new Zone(null, null, null, Length.ZERO);

    private final @Nullable Point point;
    private final @Nullable Polyline line;
    private final @Nullable Polygon area;
    private final Length margin;

    private Zone(@Nullable Point point, @Nullable Polyline line, @Nullable Polygon area, Length margin) {
        this.point = point;
        this.line = line;
        this.area = area;
        this.margin = margin;
    }

    /**
     * Returns the zone that has no bounds.
     *
     * @return the zone that holds everywhere
     */
    public static Zone everywhere() {
        return EVERYWHERE;
    }

    /**
     * Returns the circle round a point.
     *
     * @param centre the point
     * @param radius how far the zone reaches, zero or more
     * @return the zone
     * @throws IllegalArgumentException if the radius is negative or over 1,000,000 km
     */
    public static Zone around(Point centre, Length radius) {
        return new Zone(Objects.requireNonNull(centre, "centre"), null, null, requireMargin("radius", radius));
    }

    /**
     * Returns the strip along a line.
     *
     * @param line the line
     * @param eachSide how far the zone reaches on either side of the line and past its ends, zero or more
     * @return the zone, twice as wide
     * @throws IllegalArgumentException if the distance is negative or over 1,000,000 km
     */
    public static Zone along(Polyline line, Length eachSide) {
        return new Zone(null, Objects.requireNonNull(line, "line"), null, requireMargin("eachSide", eachSide));
    }

    /**
     * Returns the inside of a closed boundary.
     *
     * @param area the boundary
     * @return the zone
     */
    public static Zone inside(Polygon area) {
        return new Zone(null, null, Objects.requireNonNull(area, "area"), Length.ZERO);
    }

    /**
     * Returns this zone with more ground round it.
     *
     * @param distance how much further it reaches, zero or more
     * @return the wider zone; everywhere stays everywhere
     * @throws IllegalArgumentException if the distance is negative or the margin would be over 1,000,000 km
     */
    public Zone widenedBy(Length distance) {
        requireMargin("distance", distance);
        return isEverywhere() ? this : new Zone(point, line, area, requireMargin("margin", margin.plus(distance)));
    }

    private static Length requireMargin(String name, Length value) {
        if (value.isNegative() || value.nanometres() > Exact.LIMIT) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be from 0 to 1,000,000 km, so check its unit and sign");
        }
        return value;
    }

    /**
     * Returns the point that the zone lies round.
     *
     * @return the point, if it is a circle
     */
    public Optional<Point> point() {
        return Optional.ofNullable(point);
    }

    /**
     * Returns the line that the zone lies along.
     *
     * @return the line, if it is a strip
     */
    public Optional<Polyline> line() {
        return Optional.ofNullable(line);
    }

    /**
     * Returns the boundary that the zone lies in, or round.
     *
     * @return the boundary, if it is an area
     */
    public Optional<Polygon> area() {
        return Optional.ofNullable(area);
    }

    /**
     * Returns how far the zone reaches from its point, line or area.
     *
     * @return the margin, zero or more
     */
    public Length margin() {
        return margin;
    }

    /**
     * Tells whether the zone has no bounds.
     *
     * @return true for the zone that holds everywhere
     */
    public boolean isEverywhere() {
        return point == null && line == null && area == null;
    }

    /**
     * Tells whether something round reaches into the zone, such as a post hole.
     *
     * @param centre its middle
     * @param reach how far it reaches from there; less than zero to ask what lies so far within the margin
     * @return true if the distance from the centre to the zone's point, line or area is less than margin and reach, or
     *     if the centre is in the zone's area
     */
    public boolean isReachedFrom(Point centre, Length reach) {
        Length distance = within(reach);
        if (point != null) {
            return point.distanceTo(centre).compareTo(distance) < 0;
        }
        if (line != null) {
            return line.distanceTo(centre).compareTo(distance) < 0;
        }
        return area == null || area.contains(centre) || area.distanceTo(centre).compareTo(distance) < 0;
    }

    /**
     * Returns the stretches of a line in the zone, or so near that what stands on the line and reaches off it gets into
     * the zone.
     *
     * @param fence the line, such as that of the posts
     * @param reach how far things reach from the line to either side; less than zero to ask what lies so far within the
     *     margin
     * @return the stations in order, apart from each other, to the nearest nanometre; empty if there are none
     */
    public List<Interval> stretchesOf(Segment fence, Length reach) {
        Nearness nearness = new Nearness(fence);
        if (point != null) {
            return nearness.near(point, within(reach)).map(List::of).orElse(List.of());
        }
        if (line != null) {
            return nearness.near(line, within(reach));
        }
        return area != null ? nearness.near(area, within(reach)) : List.of(Interval.of(Length.ZERO, fence.length()));
    }

    private Length within(Length reach) {
        return Length.max(Length.ZERO, margin.plus(reach));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Zone zone
                && Objects.equals(point, zone.point)
                && Objects.equals(line, zone.line)
                && Objects.equals(area, zone.area)
                && margin.equals(zone.margin);
    }

    @Override
    public int hashCode() {
        return Objects.hash(point, line, area, margin);
    }

    /**
     * Returns the zone as text.
     *
     * @return such as {@code within 5 ft of (E 0 in, N 3 in)}
     */
    @Override
    public String toString() {
        if (isEverywhere()) {
            return "everywhere";
        }
        Object what = point != null ? point : line != null ? line : area;
        return (margin.isZero() && area != null ? "in " : "within " + margin + " of ") + what;
    }
}
