package org.fencecore.gate;

import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** A brace worked out line by line, as it is set out on the board. */
final class BraceSheet {

    private static final Citation DIRECTION =
            Citation.of("Building Construction (chestofbooks.com, Building-Construction-5)", "Doors", "");

    private final GateBrace brace;
    private final boolean level;
    private final Worksheet.Builder sheet;
    private final String w;
    private final String h;
    private final String b;

    private BraceSheet(GateBrace brace) {
        this.brace = brace;
        this.level = brace.rake().isZero();
        this.w = Written.inches(brace.clearWidth());
        this.h = Written.inches(brace.clearHeight());
        this.b = Written.inches(brace.width());
        this.sheet = Worksheet.titled("Gate " + brace.kind() + " from "
                + brace.foot().rail() + " to " + brace.head().rail());
    }

    static Worksheet of(GateBrace brace) {
        return new BraceSheet(brace).build();
    }

    private Worksheet build() {
        Citation direction = brace.kind() == BraceKind.WOOD ? DIRECTION : Citation.COMMON_PRACTICE;
        sheet.line("foot", side(brace.foot()), "", brace.foot(), brace.foot().toString(), direction)
                .line("head", side(brace.head()), "", brace.head(), brace.head().toString(), direction)
                .given("clear width W", brace.clearWidth(), Written.tape(brace.clearWidth()))
                .given("clear height H", brace.clearHeight(), Written.tape(brace.clearHeight()));
        if (!level) {
            sheet.given(
                    "rake of the rails t, foot to head",
                    brace.rake().angle(),
                    Written.degrees(brace.rake().angle()));
        }
        if (brace.kind() == BraceKind.CABLE) {
            angle("rise", "atan(" + risen() + " / W)", "atan(" + risenIn() + " / " + w + ")", brace.rise());
            length(
                    "length, corner to corner",
                    "sqrt(W^2 + " + risen() + "^2)",
                    "sqrt((" + w + ")^2 + (" + risenIn() + ")^2)",
                    brace.edgeLength());
            return sheet.build();
        }
        sheet.given("brace width b", brace.width(), Written.tape(brace.width()));
        if (brace.ends() == BraceEnds.POINTS) {
            pointed();
        } else {
            oneCut();
        }
        return sheet.build();
    }

    private static String side(FrameCorner corner) {
        return corner.stile() == FrameMember.HINGE_STILE ? "on the hinge side" : "on the latch side";
    }

    private String risen() {
        return level ? "H" : "(H + W tan t)";
    }

    private String risenIn() {
        return level ? h : "(" + h + " + " + w + " tan " + t() + ")";
    }

    private String t() {
        return Written.degrees(brace.rake().angle());
    }

    private String rise() {
        return Written.degrees(brace.rise());
    }

    private String fromRail() {
        return level ? "rise" : "(rise - t)";
    }

    private String fromRailIn() {
        return level ? rise() : "(" + rise() + " - " + t() + ")";
    }

    private void pointed() {
        Length corners = Outlines.distance(brace.footPoint(), brace.headPoint());
        length(
                level ? "length, point to point L" : "corner to corner L",
                "sqrt(W^2 + " + risen() + "^2)",
                "sqrt((" + w + ")^2 + (" + risenIn() + ")^2)",
                corners);
        angle(
                level ? "rise from the rail" : "rise from level",
                "atan(" + risen() + " / W)",
                "atan(" + risenIn() + " / " + w + ")",
                brace.rise());
        railCut();
        brace.stileCut().ifPresent(cut -> angle("cut against the stile, off square", "rise", "", cut));
        length(
                "bearing on the rail",
                "b / (2 sin " + fromRail() + ")",
                b + " / (2 sin " + fromRailIn() + ")",
                brace.railBearing());
        length("bearing on the stile", "b / (2 cos rise)", b + " / (2 cos " + rise() + ")", brace.stileBearing());
        String l = Written.inches(corners);
        if (level) {
            length(
                    "edge length",
                    "L - b / 2 * (W / H + H / W)",
                    l + " - " + b + " / 2 * (" + w + " / " + h + " + " + h + " / " + w + ")",
                    brace.edgeLength());
        } else {
            length(
                    "edge length",
                    "L - b / 2 * (1 / tan (rise - t) + tan rise)",
                    l + " - " + b + " / 2 * (1 / tan " + fromRailIn() + " + tan " + rise() + ")",
                    brace.edgeLength());
        }
    }

    private void oneCut() {
        boolean alongRail = brace.ends() == BraceEnds.RAIL_CUTS;
        Length corners = Outlines.distance(brace.footPoint(), brace.headPoint());
        String d = Written.inches(corners);
        length(
                "corner to corner D",
                "sqrt(W^2 + " + risen() + "^2)",
                "sqrt((" + w + ")^2 + (" + risenIn() + ")^2)",
                corners);
        String sign = alongRail ? " + " : " - ";
        angle(
                "rise",
                "atan(" + risen() + " / W)" + sign + "asin(b / D)",
                "atan(" + risenIn() + " / " + w + ")" + sign + "asin(" + b + " / " + d + ")",
                brace.rise());
        if (alongRail) {
            railCut();
            length("bearing on the rail", "b / sin " + fromRail(), b + " / sin " + fromRailIn(), brace.railBearing());
            length(
                    "edge length, long point to short point",
                    level ? "H / sin rise" : "H cos t / sin (rise - t)",
                    level ? h + " / sin " + rise() : h + " cos " + t() + " / sin " + fromRailIn(),
                    brace.edgeLength());
        } else {
            brace.stileCut().ifPresent(cut -> angle("cut against the stile, off square", "rise", "", cut));
            length("bearing on the stile", "b / cos rise", b + " / cos " + rise(), brace.stileBearing());
            length(
                    "edge length, long point to short point",
                    "W / cos rise",
                    w + " / cos " + rise(),
                    brace.edgeLength());
        }
    }

    private void railCut() {
        brace.railCut()
                .ifPresent(cut -> angle(
                        "cut against the rail, off square", "90 deg - " + fromRail(), "90 deg - " + fromRailIn(), cut));
    }

    private void length(String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.tape(result), Citation.GEOMETRY);
    }

    private void angle(String name, String formula, String numbers, Angle result) {
        sheet.line(name, formula, numbers, result, Written.degrees(result), Citation.GEOMETRY);
    }
}
