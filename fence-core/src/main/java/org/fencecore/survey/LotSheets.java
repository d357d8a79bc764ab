package org.fencecore.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Area;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** Writes out how the courses of a lot close and what they enclose. */
final class LotSheets {

    private static final Citation DMD =
            Citation.of("Handbook of Civil Engineering Calculations", "section 5, double meridian distances", "");

    private LotSheets() {}

    static Worksheet closure(List<Course> courses, Closure closure) {
        Worksheet.Builder sheet = Worksheet.titled("Closure of the lot");
        List<Length> latitudes = new ArrayList<>();
        List<Length> departures = new ArrayList<>();
        for (int i = 0; i < courses.size(); i++) {
            Course course = courses.get(i);
            latitudes.add(course.latitude());
            departures.add(course.departure());
            String distance = Written.feet(course.distance());
            String azimuth = "(" + Dms.azimuth(course.bearing()) + ")";
            String line = course.curve().isPresent() ? "chord" : "distance";
            sheet.given("course " + (i + 1), course.distance(), course.toString());
            line(
                    sheet,
                    "latitude " + (i + 1),
                    line + " x cos(azimuth)",
                    distance + " x cos" + azimuth,
                    course.latitude());
            line(
                    sheet,
                    "departure " + (i + 1),
                    line + " x sin(azimuth)",
                    distance + " x sin" + azimuth,
                    course.departure());
        }
        line(sheet, "sum of latitudes", "all latitudes added", sum(latitudes), closure.north());
        line(sheet, "sum of departures", "all departures added", sum(departures), closure.east());
        return misclosure(sheet, closure).build();
    }

    static Worksheet.Builder misclosure(Worksheet.Builder sheet, Closure closure) {
        return sheet.line(
                "misclosure",
                "sqrt((sum of latitudes)^2 + (sum of departures)^2)",
                "sqrt((" + Written.feet(closure.north()) + ")^2 + (" + Written.feet(closure.east()) + ")^2)",
                closure.misclosure(),
                Written.feet(closure.misclosure()),
                CompassRule.SOURCE);
    }

    static Worksheet area(LotBoundary lot, Area area) {
        Closure closure = lot.closure();
        Worksheet.Builder sheet = Worksheet.titled("Adjustment and area of the lot")
                .given("perimeter", closure.perimeter(), Written.feet(closure.perimeter()))
                .given("sum of latitudes", closure.north(), Written.feet(closure.north()))
                .given("sum of departures", closure.east(), Written.feet(closure.east()));
        Length meridian = lot.sides().get(0).start().east();
        Area doubled = Area.ZERO;
        Area segments = Area.ZERO;
        List<String> doubles = new ArrayList<>();
        for (LotSide side : lot.sides()) {
            adjustment(sheet, side, closure);
            Area ofSide = doubleArea(sheet, side, meridian);
            doubled = doubled.plus(ofSide);
            doubles.add(Dms.squareFeet(ofSide));
            segments = segments.plus(segment(sheet, side));
        }
        sheet.line(
                "sum of double areas",
                "all double areas added",
                String.join(" + ", doubles).replace("+ -", "- "),
                doubled,
                Dms.squareFeet(doubled),
                DMD);
        boolean curved = lot.sides().stream().anyMatch(LotSide::isCurved);
        return sheet.line(
                        "area",
                        curved
                                ? "sum of double areas / 2 + segments of curves to the left - to the right, without sign"
                                : "sum of double areas / 2, without sign",
                        Dms.squareFeet(doubled) + " / 2" + (curved ? " + (" + Dms.squareFeet(segments) + ")" : ""),
                        area,
                        Dms.squareFeet(area),
                        Citation.GEOMETRY)
                .build();
    }

    private static void adjustment(Worksheet.Builder sheet, LotSide side, Closure closure) {
        Course adjusted = side.adjusted();
        String number = " " + side.number();
        String share = Written.feet(side.course().length()) + " / " + Written.feet(closure.perimeter());
        Length latitude = latitude(side);
        Length departure = departure(side);
        sheet.given("course" + number, side.course().distance(), side.course().toString());
        adjusted(sheet, "latitude" + number, side.course().latitude(), closure.north(), share, latitude);
        adjusted(sheet, "departure" + number, side.course().departure(), closure.east(), share, departure);
        line(
                sheet,
                "adjusted distance" + number,
                "sqrt(latitude^2 + departure^2)",
                "sqrt((" + Written.feet(latitude) + ")^2 + (" + Written.feet(departure) + ")^2)",
                adjusted.distance());
        sheet.line(
                "adjusted bearing" + number,
                "the direction with tangent departure / latitude",
                Written.feet(departure) + " / " + Written.feet(latitude),
                adjusted.bearing(),
                adjusted.bearing().roundedTo(Dms.SECOND).toString(),
                Citation.GEOMETRY);
    }

    private static Area doubleArea(Worksheet.Builder sheet, LotSide side, Length meridian) {
        String number = " " + side.number();
        Length before = side.start().east().minus(meridian).times(2);
        Length dmd = before.plus(departure(side));
        line(
                sheet,
                "DMD" + number,
                "2 x departures before + departure",
                Written.feet(before) + " + (" + Written.feet(departure(side)) + ")",
                dmd);
        Area doubled = dmd.times(latitude(side));
        sheet.line(
                "double area" + number,
                "DMD x latitude",
                Written.feet(dmd) + " x " + Written.feet(latitude(side)),
                doubled,
                Dms.squareFeet(doubled),
                DMD);
        return doubled;
    }

    /** What a curve adds to the area left of its chord, nothing for a straight side. */
    private static Area segment(Worksheet.Builder sheet, LotSide side) {
        Optional<Curve> curve = side.adjusted().curve();
        curve.ifPresent(arc -> sheet.line(
                "segment " + side.number(),
                "R^2 (delta x pi / 180 - sin delta) / 2",
                arc.toString(),
                arc.segmentArea(),
                Dms.squareFeet(arc.segmentArea()),
                Citation.GEOMETRY));
        return curve.map(Curve::areaLeftOfChord).orElse(Area.ZERO);
    }

    private static Length latitude(LotSide side) {
        return side.end().north().minus(side.start().north());
    }

    private static Length departure(LotSide side) {
        return side.end().east().minus(side.start().east());
    }

    private static void adjusted(
            Worksheet.Builder sheet, String name, Length called, Length sum, String share, Length result) {
        line(
                sheet,
                "adjusted " + name,
                name + " - sum x length / perimeter",
                Written.feet(called) + " - (" + Written.feet(sum) + ") x " + share,
                result);
    }

    private static void line(Worksheet.Builder sheet, String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.feet(result), Citation.GEOMETRY);
    }

    private static String sum(List<Length> parts) {
        StringBuilder sum = new StringBuilder(Written.feet(parts.get(0)));
        for (Length part : parts.subList(1, parts.size())) {
            sum.append(part.isNegative() ? " - " : " + ").append(Written.feet(part.abs()));
        }
        return sum.toString();
    }
}
