package org.fencecore.slope;

import org.fencecore.geometry.ground.Clearance;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** Writes out how one bay of a fit comes about, under any treatment. */
final class SlopeSheet {

    private final SlopeFit fit;
    private final int index;
    private final FittedBay bay;
    private final Worksheet.Builder sheet;

    SlopeSheet(SlopeFit fit, int index, String place) {
        this.fit = fit;
        this.index = index;
        this.bay = fit.bay(index);
        String title = bay.treatment() == Treatment.STRINGS ? place + ", on a string" : bay.treatment() + " " + place;
        this.sheet = Worksheet.titled(Character.toUpperCase(title.charAt(0)) + title.substring(1));
    }

    Worksheet sheet() {
        switch (bay.treatment()) {
            case STRINGS -> string();
            case STEPPED, EVENLY_STEPPED -> levels();
            default -> {
                racked("start", bay.start(), bay.bottomAtStart(), bay.aboveStart());
                racked("end", bay.end(), bay.bottomAtEnd(), bay.aboveEnd());
            }
        }
        grade();
        return sheet.build();
    }

    private void racked(String end, Length station, Length bottom, Length above) {
        Length height = ground(end, station);
        Length lift = above.minus(fit.spec().clearance());
        sheet.line(
                "bottom at " + end,
                "ground + clearance + lift",
                Written.feet(height) + " + " + Written.inches(fit.spec().clearance()) + " + " + Written.inches(lift),
                bottom,
                Written.feet(bottom),
                Citation.COMMON_PRACTICE);
    }

    private Length ground(String end, Length station) {
        Length height = fit.ground().elevationAt(station);
        sheet.given("station at " + end, station, Written.feet(station));
        sheet.given("ground at " + end, height, Written.feet(height));
        return height;
    }

    private void string() {
        FittedBay string = fit.string(index);
        nail("first nail", string.start(), string.bottomAtStart());
        nail("second nail", string.end(), string.bottomAtEnd());
        sheet.line(
                "grade of the string",
                "(second nail - first nail) / level distance",
                "(" + Written.feet(string.bottomAtEnd()) + " - " + Written.feet(string.bottomAtStart()) + ") / "
                        + Written.feet(string.run()),
                string.grade(),
                Written.percent(string.grade()),
                Citation.GEOMETRY);
        onString("start", string, bay.start(), bay.bottomAtStart());
        onString("end", string, bay.end(), bay.bottomAtEnd());
    }

    private void nail(String name, Length station, Length height) {
        sheet.given("station of the " + name, station, Written.feet(station));
        sheet.given(name, height, Written.feet(height));
    }

    private void onString(String end, FittedBay string, Length station, Length bottom) {
        ground(end, station);
        sheet.line(
                "bottom at " + end,
                "first nail + grade of the string * distance from it",
                Written.feet(string.bottomAtStart()) + " + " + Written.percent(string.grade()) + " * "
                        + Written.feet(station.minus(string.start())),
                bottom,
                Written.feet(bottom),
                Citation.GEOMETRY);
    }

    private void levels() {
        ground("start", bay.start());
        ground("end", bay.end());
        sheet.given(
                "bottoms, in whole steps of " + Written.inches(fit.spec().stepIncrement()),
                bay.bottomAtStart(),
                Written.feet(bay.bottomAtStart()));
        step("start", index);
        above("start", bay.start(), bay.aboveStart());
        above("end", bay.end(), bay.aboveEnd());
        step("end", index + 1);
        Clearance gap = bay.clearance();
        Length triangle = gap.max().minus(gap.min());
        Length most = gap.max().minus(fit.spec().minimumClearance());
        sheet.line(
                        "height of the triangle under the bay",
                        "widest gap - narrowest gap",
                        Written.inches(gap.max()) + " - " + Written.inches(gap.min()),
                        triangle,
                        Written.tape(triangle),
                        Citation.GEOMETRY)
                .line(
                        "kick board, or longest piece of boards cut to the ground",
                        "widest gap - minimum clearance",
                        Written.inches(gap.max()) + " - "
                                + Written.inches(fit.spec().minimumClearance()),
                        most,
                        Written.tape(most),
                        Citation.COMMON_PRACTICE);
    }

    private void step(String end, int post) {
        Length step = fit.step(post);
        sheet.line(
                "step at " + end,
                "bottom after - bottom before",
                Written.inches(fit.bottomAfter(post)) + " - " + Written.inches(fit.bottomBefore(post)),
                step,
                Written.tape(step),
                Citation.GEOMETRY);
    }

    private void above(String end, Length station, Length above) {
        sheet.line(
                "clearance at " + end,
                "bottom - ground",
                Written.feet(bay.bottomAtStart()) + " - "
                        + Written.feet(fit.ground().elevationAt(station)),
                above,
                Written.tape(above),
                Citation.GEOMETRY);
    }

    private void grade() {
        Length run = bay.run();
        Length rise = bay.rise();
        Clearance gap = bay.clearance();
        Length underneath = fit.ground().elevationAt(gap.minStation());
        sheet.line(
                        "run",
                        "end - start",
                        Written.feet(bay.end()) + " - " + Written.feet(bay.start()),
                        run,
                        Written.feet(run),
                        Citation.GEOMETRY)
                .line(
                        "rise",
                        "bottom at end - bottom at start",
                        Written.feet(bay.bottomAtEnd()) + " - " + Written.feet(bay.bottomAtStart()),
                        rise,
                        Written.feet(rise),
                        Citation.GEOMETRY)
                .line(
                        "least clearance, at " + Written.station(gap.minStation()),
                        "bottom line - ground",
                        Written.feet(underneath.plus(gap.min())) + " - " + Written.feet(underneath),
                        gap.min(),
                        Written.tape(gap.min()),
                        Citation.GEOMETRY)
                .line(
                        "grade",
                        "rise / run",
                        Written.feet(rise) + " / " + Written.feet(run),
                        bay.grade(),
                        Written.percent(bay.grade()),
                        Citation.GEOMETRY)
                .line(
                        "rise per foot",
                        "grade * 12 in",
                        Written.percent(bay.grade()) + " * 12 in",
                        bay.grade().risePerFoot(),
                        Written.inches(bay.grade().risePerFoot()),
                        Citation.GEOMETRY)
                .line(
                        "end cut off square",
                        "atan(|grade|)",
                        "atan(" + Written.percent(bay.grade().abs()) + ")",
                        bay.endCut(),
                        Written.degrees(bay.endCut()),
                        Citation.GEOMETRY)
                .line(
                        "rail length, centre to centre",
                        "sqrt(run^2 + rise^2)",
                        "sqrt((" + Written.feet(run) + ")^2 + (" + Written.feet(rise) + ")^2)",
                        bay.railLength(),
                        Written.tape(bay.railLength()),
                        Citation.GEOMETRY);
    }
}
