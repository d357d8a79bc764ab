package org.fencecore.json;

import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.Quantities.BEARING;
import static org.fencecore.json.Quantities.LENGTH;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.worksheet.Citation;

/** The forms of places, lines, areas and heights, and of sources. */
final class GeometryForms {

    /** The most points of a line, a boundary or a profile. */
    static final int MOST_POINTS = 1_000_000;

    static final Form<Side> SIDE = Basics.oneOf(Side.class);

    static final Form<Point> POINT = Made.<Point>named("point", "A place in plan, from the first corner of the lot.")
            .from(
                    required("east", LENGTH, Point::east, "how far east"),
                    required("north", LENGTH, Point::north, "how far north"),
                    Point::of)
            .end(point -> point);

    static final Form<List<Point>> POINTS = listOf(POINT, MOST_POINTS);

    static final Form<Polyline> LINE = Basics.as(POINTS, Polyline::of, Polyline::points);

    static final Form<Polygon> AREA = Basics.as(POINTS, Polygon::of, Polygon::vertices);

    static final Form<Segment> SEGMENT = Made.<Segment>named("segment", "A straight line in plan.")
            .from(
                    required("start", POINT, Segment::start, "where it begins"),
                    required("end", POINT, Segment::end, "where it ends"),
                    Segment::of)
            .end(segment -> segment);

    static final Form<Interval> INTERVAL = Made.<Interval>named("interval", "A stretch between two stations.")
            .from(
                    required("start", LENGTH, Interval::start, "the station where it begins"),
                    required("end", LENGTH, Interval::end, "the station where it ends"),
                    Interval::of)
            .end(interval -> interval);

    private static final Form<ProfilePoint> PROFILE_POINT = Made.<ProfilePoint>named(
                    "height", "The height of the ground at a station.")
            .from(
                    required("station", LENGTH, ProfilePoint::station, "the level distance from the start"),
                    required("elevation", LENGTH, ProfilePoint::elevation, "the height over the datum of the job"),
                    ProfilePoint::new)
            .end(point -> point);

    static final Form<Profile> PROFILE = Basics.as(listOf(PROFILE_POINT, MOST_POINTS), Profile::of, Profile::points);

    static final Form<Corner> CORNER = Made.<Corner>named("corner", "Where two lines meet.")
            .from(
                    required("vertex", POINT, Corner::vertex, "where they meet"),
                    required("arriving", BEARING, Corner::arriving, "the direction of the line that arrives"),
                    required("leaving", BEARING, Corner::leaving, "the direction of the line that leaves"),
                    required("inside", SIDE, Corner::inside, "on which hand the inside is"),
                    Corner::of)
            .end(corner -> corner);

    static final Form<Zone> ZONE = Kinds.<Zone>named("zone", "Ground on which something holds.")
            .kind(
                    "everywhere",
                    Zone.class,
                    Zone::isEverywhere,
                    Made.<Zone>named("everywhere", "Everywhere.")
                            .from(Zone::everywhere)
                            .end(zone -> zone))
            .kind(
                    "around",
                    Zone.class,
                    zone -> zone.point().isPresent(),
                    Made.<Zone>named("around", "A circle.")
                            .from(
                                    required(
                                            "centre",
                                            POINT,
                                            zone -> zone.point().orElseThrow(),
                                            "its middle"),
                                    required("margin", LENGTH, Zone::margin, "how far it reaches"),
                                    Zone::around)
                            .end(zone -> zone))
            .kind(
                    "along",
                    Zone.class,
                    zone -> zone.line().isPresent(),
                    Made.<Zone>named("along", "A strip.")
                            .from(
                                    required("line", LINE, zone -> zone.line().orElseThrow(), "the middle of it"),
                                    required("margin", LENGTH, Zone::margin, "how far it reaches on either side"),
                                    Zone::along)
                            .end(zone -> zone))
            .kind(
                    "inside",
                    Zone.class,
                    zone -> zone.area().isPresent(),
                    Made.<Zone>named("inside", "An area.")
                            .from(
                                    required("area", AREA, zone -> zone.area().orElseThrow(), "its corners, each once"),
                                    Zone::inside)
                            .with(
                                    usual("margin", LENGTH, Zone::margin, "how far it reaches round the area"),
                                    Zone::widenedBy)
                            .end(zone -> zone));

    static final Form<Citation> CITATION = Made.<Citation>named("citation", "Where something is said.")
            .from(
                    required("document", TEXT, Citation::document, "the document"),
                    document -> Citation.of(document, "", ""))
            .with(
                    maybe("section", TEXT, citation -> present(citation.section()), "section or table"),
                    (citation, section) -> Citation.of(citation.document(), section, citation.edition()))
            .with(
                    maybe("edition", TEXT, citation -> present(citation.edition()), "the edition"),
                    (citation, edition) -> Citation.of(citation.document(), citation.section(), edition))
            .end(citation -> citation);

    private GeometryForms() {}

    private static Optional<String> present(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
