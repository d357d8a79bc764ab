package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Zone;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.rules.LocalRule;
import org.fencecore.rules.LocalRules;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;

/** What is underground and in the way, and where rules of the place hold, as far as it is near the lot. */
final class ZoneParts {

    private static final Length AROUND = Length.ofFeet(10);
    private static final Length NEAR = Length.ofMillimetres(1.6);
    private static final int ROUND = 24;

    private final Layer layer;
    private final Zone sheet;
    private final List<Shape> shapes = new ArrayList<>();

    private ZoneParts(Polygon lot, Layer layer) {
        this.layer = layer;
        Length west =
                lot.vertices().stream().map(Point::east).reduce(Length::min).orElseThrow();
        Length east =
                lot.vertices().stream().map(Point::east).reduce(Length::max).orElseThrow();
        Length south =
                lot.vertices().stream().map(Point::north).reduce(Length::min).orElseThrow();
        Length north =
                lot.vertices().stream().map(Point::north).reduce(Length::max).orElseThrow();
        sheet = Zone.inside(Polygon.of(List.of(
                        Point.of(west, south), Point.of(east, south), Point.of(east, north), Point.of(west, north))))
                .widenedBy(AROUND);
    }

    static List<Shape> of(Polygon lot, Obstacles obstacles) {
        ZoneParts parts = new ZoneParts(lot, Layer.OBSTACLES);
        obstacles.list().forEach(parts::add);
        return parts.shapes;
    }

    /** The edges of the zones; none of a rule that holds everywhere. */
    static List<Shape> of(Polygon lot, LocalRules rules) {
        ZoneParts parts = new ZoneParts(lot, Layer.ZONES);
        rules.list().forEach(parts::add);
        return parts.shapes;
    }

    private void add(LocalRule rule) {
        Zone zone = rule.zone();
        zone.line().ifPresent(line -> {
            boolean named = along(line, zone.margin(), rule.words());
            if (zone.margin().isPositive()) {
                along(line, zone.margin().negated(), named ? "" : rule.words());
            }
        });
        add(zone, rule.words());
    }

    private void add(Zone ground, String text) {
        ground.area().ifPresent(area -> outline(area.vertices(), text));
        ground.point().ifPresent(centre -> outline(circle(centre, ground.margin()), text));
    }

    private void add(Obstacle obstacle) {
        String text = obstacle.name()
                + (obstacle.clear().isPositive() ? ", keep " + Written.tape(obstacle.clear()) + " clear" : "");
        Zone ground = obstacle.ground();
        ground.line().ifPresent(line -> along(line, Length.ZERO, text));
        add(ground, text);
    }

    /** A line, or one beside it that far to the right; returns whether any of it is on the sheet. */
    private boolean along(Polyline line, Length right, String text) {
        Segment longest = null;
        for (Segment middle : line.segments()) {
            Segment segment = middle.offset(right);
            for (Interval seen : sheet.stretchesOf(segment, Length.ZERO)) {
                if (seen.length().isPositive()) {
                    Segment part = Segment.of(segment.pointAt(seen.start()), segment.pointAt(seen.end()));
                    shapes.add(Line.of(layer, Spot.of(part.start()), Spot.of(part.end())));
                    longest = longest == null || part.length().compareTo(longest.length()) > 0 ? part : longest;
                }
            }
        }
        if (longest != null && !text.isEmpty()) {
            Angle direction = Angle.RIGHT.minus(longest.bearing().azimuth());
            shapes.add(Label.beside(
                            Spot.of(longest.start().midpoint(longest.end())), direction.plus(Angle.RIGHT), NEAR, text)
                    .withTurn(direction));
        }
        return longest != null;
    }

    private void outline(List<Point> corners, String text) {
        if (corners.stream().anyMatch(corner -> sheet.isReachedFrom(corner, Length.ZERO))) {
            shapes.add(new Outline(layer, corners.stream().map(Spot::of).toList()));
            shapes.add(
                    layer == Layer.ZONES
                            ? Label.on(middle(corners), text)
                            : Label.beside(Spot.of(corners.get(0)), Angle.RIGHT, NEAR, text));
        }
    }

    private static Spot middle(List<Point> corners) {
        Length across = corners.stream().map(Point::east).reduce(Length.ZERO, Length::plus);
        Length up = corners.stream().map(Point::north).reduce(Length.ZERO, Length::plus);
        return Spot.of(across.dividedBy(corners.size()), up.dividedBy(corners.size()));
    }

    private static List<Point> circle(Point centre, Length radius) {
        return IntStream.range(0, ROUND)
                .mapToObj(i -> centre.plus(Bearing.ofAzimuth(Angle.ofDegrees(360.0 * i / ROUND)), radius))
                .toList();
    }
}
