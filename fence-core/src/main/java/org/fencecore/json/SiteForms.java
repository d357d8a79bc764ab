package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.LINE;
import static org.fencecore.json.GeometryForms.PROFILE;
import static org.fencecore.json.GeometryForms.SIDE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.PRESSURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.site.Site;

/** The form of what the ground is. */
final class SiteForms {

    private static final int MOST_SIDES = 10_000;
    private static final int MOST_GATES = 10_000;

    /** A line that the fence follows. */
    private record Along(Polyline line, Side outside) {}

    private static final Form<Along> ALONG = Made.<Along>named("fenceAlong", "A line that the fence follows.")
            .from(
                    required("line", LINE, Along::line, "the string, point by point"),
                    required("outside", SIDE, Along::outside, "on which hand the outside is"),
                    Along::new)
            .end(along -> along);

    /** The ground along one side. */
    private record Ground(int side, Profile heights) {}

    private static final Form<Ground> GROUND = Made.<Ground>named("ground", "The ground along a side.")
            .from(
                    required("side", COUNT, Ground::side, "the side, from 1"),
                    required("heights", PROFILE, Ground::heights, "heights from the corner where the side begins"),
                    Ground::new)
            .end(ground -> ground);

    static final Made<Site, ?> SITE = Made.<Site>named("site", "What the ground is.")
            .from(required("lot", LotForms.LOT, Site::lot, "the boundary"), Site::on)
            .with(
                    maybe("fenceOn", listOf(COUNT, MOST_SIDES), SiteForms::fencedSides, "the sides that get a fence"),
                    (site, sides) -> {
                        sides.forEach(site::fenceOn);
                        return site;
                    })
            .with(
                    maybe("fenceAlong", ALONG, SiteForms::along, "a line in place of sides of the lot"),
                    (site, along) -> site.fenceAlong(along.line(), along.outside()))
            .with(
                    usual("setback", LENGTH, Site::setback, "how far inside the boundary the strings run"),
                    Site.Builder::setback)
            .with(
                    usual("ground", listOf(GROUND, MOST_SIDES), SiteForms::ground, "the ground side by side"),
                    (site, ground) -> {
                        ground.forEach(along -> site.ground(along.side(), along.heights()));
                        return site;
                    })
            .with(
                    maybe("surface", GroundForms.SURFACE, Site::surface, "the ground as a surface"),
                    (Site.Builder site, Surface surface) -> site.ground(surface))
            .with(usual("gates", listOf(GateForms.LOCATION, MOST_GATES), Site::gates, "the gates"), (site, gates) -> {
                gates.forEach(site::gate);
                return site;
            })
            .with(
                    usual("obstacles", ObstacleForms.OBSTACLES, Site::obstacles, "what is in the way"),
                    Site.Builder::obstacles)
            .with(usual("rules", RuleForms.RULES, Site::rules, "the rules of the place"), Site.Builder::rules)
            .with(usual("soil", GroundForms.SOIL, Site::soil, "what posts stand in"), Site.Builder::soil)
            .with(
                    usual(
                            "doubledBearing",
                            FLAG,
                            Site::hasDoubledBearing,
                            "whether twice the lateral bearing counts for wind"),
                    Site.Builder::doubledBearing)
            .with(
                    maybe("frostDepth", LENGTH, Site::frostDepth, "how deep the ground freezes"),
                    Site.Builder::frostDepth)
            .with(
                    maybe("frostGrip", PRESSURE, Site::frostGrip, "how hard freezing ground grips concrete"),
                    Site.Builder::frostGrip)
            .with(
                    maybe("windPressure", PRESSURE, Site::windPressure, "the design pressure on the face"),
                    Site.Builder::windPressure)
            .with(maybe("wind", GroundForms.WIND, Site::wind, "the design wind in its place"), Site.Builder::wind)
            .end(Site.Builder::build);

    private SiteForms() {}

    private static Optional<List<Integer>> fencedSides(Site site) {
        return site.line().isPresent() ? Optional.empty() : Optional.of(List.copyOf(site.fencedSides()));
    }

    private static Optional<Along> along(Site site) {
        return site.line().map(line -> new Along(line, site.lineOutside()));
    }

    private static List<Ground> ground(Site site) {
        List<Ground> ground = new ArrayList<>();
        for (int i = 1; i <= site.sideCount(); i++) {
            int side = i;
            site.ground(side).ifPresent(heights -> ground.add(new Ground(side, heights)));
        }
        return ground;
    }
}
