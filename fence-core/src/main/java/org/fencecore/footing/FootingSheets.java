package org.fencecore.footing;

import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Rounding;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** The calculations of a footing written out, in feet and pounds as the handbooks have them. */
final class FootingSheets {

    private FootingSheets() {}

    static Worksheet embedment(FootingDesign design) {
        FootingSpec spec = design.spec();
        Worksheet.Builder sheet = Worksheet.titled("Embedment of a post");
        if (!design.load().isNone()) {
            bearing(design, sheet);
        }
        for (EmbedmentCriterion criterion : design.criteria()) {
            String name = "depth for " + criterion.rule();
            String shown = Written.tape(criterion.depth(), Rounding.UP);
            switch (criterion.rule()) {
                case LATERAL_BEARING -> {
                    // Its lines are above.
                }
                case FROST ->
                    sheet.line(
                            name,
                            spec.setting().belowFrostLine().isZero() ? "" : "frost depth + how far below it",
                            spec.setting().belowFrostLine().isZero()
                                    ? ""
                                    : Written.inches(criterion
                                                    .depth()
                                                    .minus(spec.setting().belowFrostLine())) + " + "
                                            + Written.inches(spec.setting().belowFrostLine()),
                            criterion.depth(),
                            shown,
                            criterion.source());
                case MINIMUM -> sheet.line(name, "", "", criterion.depth(), shown, criterion.source());
                case FENCE_STANDARD ->
                    sheet.line(name, "24 in + 3 in x feet over 4", "", criterion.depth(), shown, criterion.source());
                case THIRD_OF_POST ->
                    sheet.line(
                            name,
                            "height above grade / 2",
                            Written.inches(spec.exposedHeight()) + " / 2",
                            criterion.depth(),
                            shown,
                            criterion.source());
            }
        }
        return sheet.line(
                        "embedment",
                        "deepest, rounded up to " + Written.tape(spec.setting().increment()),
                        Written.inches(design.governing().depth()) + ", by "
                                + design.governing().rule(),
                        design.embedment(),
                        Written.tape(design.embedment()),
                        Citation.COMMON_PRACTICE)
                .build();
    }

    /** Writes out equation 18-1, or 18-2, at the depth that fits it. */
    private static void bearing(FootingDesign design, Worksheet.Builder sheet) {
        FootingSpec spec = design.spec();
        LateralLoad load = design.load();
        Length notCounted = spec.groundNotCounted();
        Length depth = design.criteria().get(0).depth();
        Length fitting = depth.minus(notCounted);
        load.explain(sheet);
        Length height = height(spec, load, sheet);
        Length width = spec.hole().bearingWidth();
        sheet.line(
                "width b bearing on the soil",
                spec.hole().isSquare() ? "diagonal of the hole" : "hole diameter",
                spec.hole().isSquare() ? "1.4142 x " + Written.inches(spec.holeDiameter()) : Written.inches(width),
                width,
                Written.feet(width),
                Sources.POLE);
        sheet.given(
                fill(spec) + ", below the post and not counted as embedment",
                spec.setting().base(),
                Written.tape(spec.setting().base()));
        UnitWeight bearing = soil(spec, sheet);
        String added = notCounted.isZero() ? "" : " + ground not counted";
        String addedFeet = notCounted.isZero() ? "" : " + " + Written.feet(notCounted);
        String name = "depth for " + EmbedmentRule.LATERAL_BEARING;
        String shown = Written.feet(depth) + " = " + Written.tape(depth, Rounding.UP);
        if (spec.setting().isHeldAtGrade() || !load.knowsPush()) {
            Moment moment = load.force().times(height).plus(load.knowsPush() ? Moment.ZERO : load.gate());
            // 1.09 x 7.02, what equation 18-1 comes to without a force.
            String factor = spec.setting().isHeldAtGrade() ? "4.25" : "7.6518";
            sheet.line("moment M", "", "", moment, Written.moment(moment), Citation.GEOMETRY);
            sheet.line(
                    name,
                    "cube root of " + factor + " M / (S b)" + added,
                    "cube root of " + factor + " x " + Written.moment(moment) + " / (" + Written.bearing(bearing)
                            + " x " + Written.feet(width) + ")" + addedFeet,
                    depth,
                    shown,
                    spec.setting().isHeldAtGrade() ? Sources.HELD_POLE : Sources.POLE_EQUATION);
            return;
        }
        Pressure atThird = bearing.times(fitting).dividedBy(3);
        Length a = Length.ofMetres(LateralBearing.a(load.force().newtons(), atThird.pascals(), width.metres()));
        sheet.line(
                "depth d to be found, at which the last formula below gives d again",
                "",
                "",
                fitting,
                Written.feet(fitting),
                Sources.POLE);
        sheet.line(
                "bearing S1 at a third of the depth",
                "S x d / 3",
                Written.bearing(bearing) + " x " + Written.feet(fitting) + " / 3",
                atThird,
                Written.pressure(atThird),
                Sources.POLE);
        sheet.line(
                "A",
                "2.34 P / (S1 b)",
                "2.34 x " + Written.force(load.force()) + " / (" + Written.pressure(atThird) + " x "
                        + Written.feet(width) + ")",
                a,
                Written.feet(a),
                Sources.POLE);
        String shownA = Written.feet(a);
        sheet.line(
                name,
                "0.5 A (1 + sqrt(1 + 4.36 h / A))" + added,
                "0.5 x " + shownA + " x (1 + sqrt(1 + 4.36 x " + Written.feet(height) + " / " + shownA + "))"
                        + addedFeet,
                depth,
                shown,
                Sources.POLE_EQUATION);
    }

    /** Writes out how far above the ground that counts the force would stand to have the moment of the gate as well. */
    private static Length height(FootingSpec spec, LateralLoad load, Worksheet.Builder sheet) {
        Length notCounted = spec.groundNotCounted();
        Length height = load.height().plus(notCounted);
        if (!notCounted.isZero()) {
            sheet.given("ground above the concrete, not counted", notCounted, Written.tape(notCounted));
            sheet.line(
                    "height h of P above the top of the concrete",
                    "",
                    Written.feet(load.height()) + " + " + Written.feet(notCounted),
                    height,
                    Written.feet(height),
                    Citation.COMMON_PRACTICE);
        }
        if (load.gate().isZero() || !load.knowsPush()) {
            return height;
        }
        Length raised = height.plus(
                Length.ofMetres(load.gate().newtonMetres() / load.force().newtons()));
        sheet.line(
                "height h of P with the moment of the gate",
                "h + Mg / P",
                Written.feet(height) + " + " + Written.moment(load.gate()) + " / " + Written.force(load.force()),
                raised,
                Written.feet(raised),
                Citation.GEOMETRY);
        return raised;
    }

    private static UnitWeight soil(FootingSpec spec, Worksheet.Builder sheet) {
        UnitWeight single = spec.soil().lateralBearing();
        sheet.line(
                "lateral bearing S of " + spec.soil().name(),
                "",
                "",
                single,
                Written.bearing(single),
                spec.soil().source());
        if (!spec.hasDoubledBearing()) {
            return single;
        }
        UnitWeight doubled = single.times(2);
        sheet.line(
                "S doubled for a post that may move 1/2 in at grade",
                "2 S",
                "2 x " + Written.bearing(single),
                doubled,
                Written.bearing(doubled),
                Sources.DOUBLED_BEARING);
        return doubled;
    }

    static Worksheet concrete(FootingDesign design) {
        FootingSpec spec = design.spec();
        String base = Written.inches(spec.setting().base());
        String embedment = Written.inches(design.embedment());
        String fill = fill(spec);
        Worksheet.Builder sheet = Worksheet.titled("Hole and concrete of a post")
                .given("embedment", design.embedment(), Written.tape(design.embedment()))
                .given("post, square", spec.postWidth(), Written.tape(spec.postWidth()))
                .given(isPlain(spec.hole()) ? "hole diameter" : "hole", spec.hole(), shown(spec.hole()))
                .given(fill, spec.setting().base(), Written.tape(spec.setting().base()))
                .given(
                        "top of the concrete above grade",
                        spec.setting().concreteTop(),
                        Written.tape(spec.setting().concreteTop()))
                .line(
                        "hole depth",
                        "embedment + " + fill,
                        embedment + " + " + base,
                        design.holeDepth(),
                        Written.tape(design.holeDepth()),
                        Citation.GEOMETRY)
                .line(
                        "post length",
                        "height above grade + embedment",
                        Written.inches(spec.exposedHeight()) + " + " + embedment,
                        design.postLength(),
                        Written.tape(design.postLength()),
                        Citation.GEOMETRY);
        if (!spec.setting().isDryMixBase()) {
            sheet.line(
                    "gravel",
                    areaFormula(spec) + " x gravel base",
                    areaOfHole(spec) + " x " + base + (spec.hole().isStraight() ? " / 1728" : ""),
                    design.gravel(),
                    Written.volume(design.gravel()),
                    Citation.GEOMETRY);
        }
        if (!spec.setting().crown().isZero()) {
            sheet.given(
                    "crown, a cone up to the post",
                    spec.setting().crown(),
                    Written.tape(spec.setting().crown()));
        }
        return sheet.line(
                        "height of the concrete",
                        "embedment + top above grade",
                        embedment + " + " + Written.inches(spec.setting().concreteTop()),
                        design.concreteHeight(),
                        Written.tape(design.concreteHeight()),
                        Citation.GEOMETRY)
                .line(
                        "concrete",
                        "(" + areaFormula(spec) + " - post^2) x height"
                                + (spec.setting().crown().isZero() ? "" : " + crown")
                                + (spec.setting().isDryMixBase() ? " + dry mix base" : ""),
                        "(" + areaOfHole(spec) + " - (" + Written.inches(spec.postWidth()) + ")^2) x "
                                + Written.inches(design.concreteHeight())
                                + (spec.hole().isStraight() ? " / 1728" : ""),
                        design.concrete(),
                        Written.volume(design.concrete()),
                        Citation.GEOMETRY)
                .build();
    }

    private static boolean isPlain(HoleShape hole) {
        return hole.isStraight() && !hole.isSquare();
    }

    private static String shown(HoleShape hole) {
        return isPlain(hole) ? Written.tape(hole.width()) : hole.toString();
    }

    private static String fill(FootingSpec spec) {
        return spec.setting().isDryMixBase() ? "dry mix base" : "gravel base";
    }

    private static String areaFormula(FootingSpec spec) {
        if (!spec.hole().isStraight()) {
            return "area of the hole";
        }
        return spec.hole().isSquare() ? "hole^2" : "pi / 4 x hole^2";
    }

    private static String areaOfHole(FootingSpec spec) {
        HoleShape hole = spec.hole();
        if (!hole.isStraight()) {
            return "area of a hole " + hole;
        }
        return (hole.isSquare() ? "" : "0.7854 x ") + "(" + Written.inches(hole.width()) + ")^2";
    }
}
