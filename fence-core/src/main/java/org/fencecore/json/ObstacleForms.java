package org.fencecore.json;

import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.AREA;
import static org.fencecore.json.GeometryForms.CITATION;
import static org.fencecore.json.GeometryForms.LINE;
import static org.fencecore.json.GeometryForms.POINT;
import static org.fencecore.json.Quantities.LENGTH;

import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.units.Length;

/** The forms of what is underground and in the way. */
final class ObstacleForms {

    private static final int MOST = 10_000;

    private static final Field<Obstacle, Polyline> MIDDLE =
            required("line", LINE, obstacle -> obstacle.ground().line().orElseThrow(), "the middle of it, in plan");
    private static final Field<Obstacle, Polygon> OUTLINE = required(
            "outline", AREA, obstacle -> obstacle.ground().area().orElseThrow(), "its corners in plan, each once");
    private static final Field<Obstacle, Point> CENTRE =
            required("centre", POINT, obstacle -> obstacle.ground().point().orElseThrow(), "its middle");
    private static final Field<Obstacle, Length> CLEAR = usual(
            "clear", LENGTH, Obstacle::clear, "how far holes stay from its outer edge; say with it who asks for that");

    static final Form<Obstacle> OBSTACLE = Kinds.<Obstacle>named("obstacle", "Something in the way of holes or fence.")
            .kind(
                    "utility",
                    Obstacle.class,
                    obstacle -> obstacle.utility().isPresent(),
                    named(Made.<Obstacle>named("utility", "A buried line, as marked on the ground.")
                            .from(
                                    required(
                                            "carries",
                                            Basics.oneOf(UtilityKind.class),
                                            obstacle -> obstacle.utility().orElseThrow(),
                                            "what it carries"),
                                    MIDDLE,
                                    Obstacle::utility)
                            .with(
                                    usual("width", LENGTH, ObstacleForms::width, "how wide it is; 0 for a mark alone"),
                                    (line, width) -> Obstacle.utility(
                                            line.utility().orElseThrow(),
                                            line.ground().line().orElseThrow(),
                                            width))
                            .with(CLEAR, ObstacleForms::clear)))
            .kind(
                    "tree",
                    Obstacle.class,
                    obstacle -> obstacle.ground().point().isPresent() && !obstacle.barsFenceNearby(),
                    named(Made.<Obstacle>named("tree", "A tree.")
                            .from(
                                    CENTRE,
                                    required(
                                            "trunkRadius",
                                            LENGTH,
                                            obstacle -> obstacle.ground().margin(),
                                            "half the thickness of the trunk at the ground"),
                                    required(
                                            "rootZone",
                                            LENGTH,
                                            ObstacleForms::reach,
                                            "the radius, from the middle of the trunk, that stays clear of holes"),
                                    Obstacle::tree)))
            .kind(
                    "hydrant",
                    Obstacle.class,
                    Obstacle::barsFenceNearby,
                    named(Made.<Obstacle>named("hydrant", "A hydrant, or what else people have to get at.")
                            .from(
                                    CENTRE,
                                    required("clear", LENGTH, Obstacle::clear, "the radius that is to stay clear"),
                                    Obstacle::hydrant)))
            .kind(
                    "wall",
                    Obstacle.class,
                    obstacle -> obstacle.ground().line().isPresent(),
                    named(Made.<Obstacle>named("wall", "A wall.")
                            .from(
                                    MIDDLE,
                                    required("thickness", LENGTH, ObstacleForms::width, "how thick it is"),
                                    Obstacle::wall)
                            .with(CLEAR, ObstacleForms::clear)))
            .kind(
                    "structure",
                    Obstacle.class,
                    Obstacle::barsFence,
                    named(Made.<Obstacle>named("structure", "Something that no fence can pass through.")
                            .from(OUTLINE, Obstacle::structure)
                            .with(CLEAR, ObstacleForms::clear)))
            .kind(
                    "area",
                    Obstacle.class,
                    obstacle -> true,
                    named(Made.<Obstacle>named("area", "Ground without holes, over which a fence may pass.")
                            .from(OUTLINE, Obstacle::area)
                            .with(CLEAR, ObstacleForms::clear)));

    static final Form<Obstacles> OBSTACLES = Basics.as(Basics.listOf(OBSTACLE, MOST), Obstacles::of, Obstacles::list);

    private ObstacleForms() {}

    private static Length width(Obstacle obstacle) {
        return obstacle.ground().margin().times(2);
    }

    private static Length reach(Obstacle tree) {
        return tree.ground().margin().plus(tree.clear());
    }

    private static Obstacle clear(Obstacle obstacle, Length clear) {
        return obstacle.withClear(clear, obstacle.source());
    }

    /** What any obstacle may have. */
    private static Made<Obstacle, Obstacle> named(Made.Begun<Obstacle, Obstacle> begun) {
        return begun.with(usual("name", TEXT, Obstacle::name, "what it is called on this job"), Obstacle::withName)
                .with(
                        usual("source", CITATION, Obstacle::source, "who asks for the clear distance"),
                        (obstacle, source) -> obstacle.withClear(obstacle.clear(), source))
                .end(obstacle -> obstacle);
    }
}
