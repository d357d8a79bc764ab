package org.fencecore.json;

import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.MOST_POINTS;
import static org.fencecore.json.GeometryForms.POINT;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.RATIO;
import static org.fencecore.json.Quantities.SLOPE;
import static org.fencecore.json.Quantities.SPEED;
import static org.fencecore.json.Quantities.UNIT_WEIGHT;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.terrain.GridSurface;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.wind.AsceEdition;
import org.fencecore.wind.AsceWind;
import org.fencecore.wind.EnTerrain;
import org.fencecore.wind.EnWind;
import org.fencecore.wind.Exposure;
import org.fencecore.wind.Wind;

/** The forms of the ground, the soil and the wind. */
final class GroundForms {

    private static final Form<Shot> SHOT = Made.<Shot>named("shot", "The height of the ground at a place.")
            .from(
                    required("place", POINT, Shot::place, "the place"),
                    required("elevation", LENGTH, Shot::elevation, "the height over the datum of the job"),
                    Shot::new)
            .end(shot -> shot);

    static final Form<Surface> SURFACE = Kinds.<Surface>named("surface", "The ground as a surface.")
            .kind(
                    "plane",
                    Plane.class,
                    plane -> true,
                    Made.<Plane>named("plane", "Ground that rises evenly.")
                            .from(
                                    required("place", POINT, Plane::place, "a place on it"),
                                    required("elevation", LENGTH, Plane::elevation, "the height there"),
                                    required("eastward", SLOPE, Plane::eastward, "how it rises eastward"),
                                    required("northward", SLOPE, Plane::northward, "how it rises northward"),
                                    Plane::of)
                            .end(plane -> plane))
            .kind(
                    "grid",
                    GridSurface.class,
                    grid -> true,
                    Made.<GridSurface>named("grid", "Heights at the crossings of a square grid.")
                            .from(
                                    required("origin", POINT, GridSurface::origin, "the south-west crossing"),
                                    required("spacing", LENGTH, GridSurface::spacing, "how far crossings are apart"),
                                    required(
                                            "heights",
                                            listOf(listOf(LENGTH, MOST_POINTS), MOST_POINTS),
                                            GridSurface::heights,
                                            "row after row from the south, each from the west"),
                                    GridSurface::of)
                            .end(grid -> grid))
            .kind(
                    "shots",
                    ShotSurface.class,
                    shots -> true,
                    Made.<ShotSurface>named("shots", "Heights at any places, with triangles between them.")
                            .from(
                                    required("shots", listOf(SHOT, MOST_POINTS), ShotSurface::shots, "the shots"),
                                    ShotSurface::of)
                            .with(
                                    usual("reach", LENGTH, ShotSurface::reach, "how far off a line a shot is on it"),
                                    ShotSurface::withReach)
                            .end(shots -> shots));

    static final Form<SoilClass> SOIL = Kinds.<SoilClass>named("soil", "The soil that posts stand in.")
            .kind(
                    "presumptive",
                    SoilClass.class,
                    SoilClass::isPresumptive,
                    Made.<SoilClass>named("presumptive", "A class of the building code.")
                            .from(required("class", Basics.oneOf(soils()), soil -> soil, "the class"), soil -> soil)
                            .end(soil -> soil))
            .kind(
                    "symbol",
                    SoilClass.class,
                    soil -> false, // written as the class that it stands for
                    Made.<SoilClass>named("symbol", "A soil of the unified classification.")
                            .from(required("symbol", TEXT, SoilClass::name, "such as SM or CL"), SoilClass::ofSymbol)
                            .end(soil -> soil))
            .kind(
                    "tested",
                    SoilClass.class,
                    soil -> true,
                    Made.<SoilClass>named("tested", "A soil of which the bearing is known.")
                            .from(
                                    required("name", TEXT, SoilClass::name, "what it is called"),
                                    required(
                                            "lateralBearing",
                                            UNIT_WEIGHT,
                                            SoilClass::lateralBearing,
                                            "how much it bears sideways for each foot of depth"),
                                    SoilClass::ofLateralBearing)
                            .end(soil -> soil));

    static final Made<AsceWind, ?> ASCE_WIND = Made.<AsceWind>named("asceWind", "Wind by ASCE 7.")
            .from(
                    required("speed", SPEED, AsceWind::speed, "the ultimate gust speed of the place"),
                    speed -> AsceWind.builder().speed(speed))
            .with(
                    usual("edition", Basics.oneOf(AsceEdition.class), AsceWind::edition, "the edition"),
                    AsceWind.Builder::edition)
            .with(
                    usual(
                            "exposure",
                            Basics.oneOf(Exposure.class),
                            AsceWind::exposure,
                            "how open the surroundings are"),
                    AsceWind.Builder::exposure)
            .with(
                    usual("topographicFactor", RATIO, AsceWind::topographicFactor, "Kzt"),
                    AsceWind.Builder::topographicFactor)
            .with(
                    maybe("groundElevation", LENGTH, AsceWind::groundElevation, "the height over the sea"),
                    AsceWind.Builder::groundElevation)
            .with(
                    usual("tabulatedKz", FLAG, AsceWind::hasTabulatedKz, "whether Kz is read from the table"),
                    AsceWind.Builder::tabulatedKz)
            .with(
                    usual("metricConstants", FLAG, AsceWind::hasMetricConstants, "whether constants are metric"),
                    AsceWind.Builder::metricConstants)
            .end(AsceWind.Builder::build);

    static final Made<EnWind, ?> EN_WIND = Made.<EnWind>named("enWind", "Wind by EN 1991-1-4.")
            .from(
                    required("basicSpeed", SPEED, EnWind::basicSpeed, "the basic wind speed of the place"),
                    speed -> EnWind.builder().basicSpeed(speed))
            .with(
                    usual("terrain", Basics.oneOf(EnTerrain.class), EnWind::terrain, "the category of terrain"),
                    EnWind.Builder::terrain)
            .with(usual("orography", RATIO, EnWind::orography, "the orography factor"), EnWind.Builder::orography)
            .end(EnWind.Builder::build);

    static final Form<Wind> WIND = Kinds.<Wind>named("wind", "The design wind of the place.")
            .kind("asce", AsceWind.class, wind -> true, ASCE_WIND)
            .kind("en", EnWind.class, wind -> true, EN_WIND);

    private GroundForms() {}

    private static Map<String, SoilClass> soils() {
        List<String> names = List.of("CRYSTALLINE_BEDROCK", "SEDIMENTARY_ROCK", "SANDY_GRAVEL", "SAND", "CLAY");
        Map<String, SoilClass> soils = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            soils.put(names.get(i), SoilClass.PRESUMPTIVE.get(i));
        }
        return soils;
    }
}
