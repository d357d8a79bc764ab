package org.fencecore.footing;

import org.fencecore.units.Length;
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
                case FROST, MINIMUM -> sheet.line(name, "", "", criterion.depth(), shown, criterion.source());
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
                        "deepest, rounded up to " + Written.tape(spec.increment()),
                        Written.inches(design.governing().depth()) + ", by "
                                + design.governing().rule(),
                        design.embedment(),
                        Written.tape(design.embedment()),
                        Citation.COMMON_PRACTICE)
                .build();
    }

    /** Writes out equation 18-1 at the depth that fits it. */
    private static void bearing(FootingDesign design, Worksheet.Builder sheet) {
        FootingSpec spec = design.spec();
        LateralLoad load = design.load();
        Length notCounted = spec.groundNotCounted();
        Length depth = design.criteria().get(0).depth();
        Length fitting = depth.minus(notCounted);
        Length height = load.height().plus(notCounted);
        load.explain(sheet);
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
        Length width = spec.holeDiameter();
        sheet.line(
                "width b bearing on the soil",
                "hole diameter",
                Written.inches(width),
                width,
                Written.feet(width),
                Sources.POLE);
        sheet.given(
                "gravel base, below the post and not counted as embedment",
                spec.gravelBase(),
                Written.tape(spec.gravelBase()));
        UnitWeight bearing = soil(spec, sheet);
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
                "depth for " + EmbedmentRule.LATERAL_BEARING,
                "0.5 A (1 + sqrt(1 + 4.36 h / A))" + (notCounted.isZero() ? "" : " + ground not counted"),
                "0.5 x " + shownA + " x (1 + sqrt(1 + 4.36 x " + Written.feet(height) + " / " + shownA + "))"
                        + (notCounted.isZero() ? "" : " + " + Written.feet(notCounted)),
                depth,
                Written.feet(depth) + " = " + Written.tape(depth, Rounding.UP),
                Sources.POLE_EQUATION);
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
        if (!spec.doubledBearing()) {
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
        String hole = Written.inches(spec.holeDiameter());
        String gravel = Written.inches(spec.gravelBase());
        String embedment = Written.inches(design.embedment());
        return Worksheet.titled("Hole and concrete of a post")
                .given("embedment", design.embedment(), Written.tape(design.embedment()))
                .given("post, square", spec.postWidth(), Written.tape(spec.postWidth()))
                .given("hole diameter", spec.holeDiameter(), Written.tape(spec.holeDiameter()))
                .given("gravel base", spec.gravelBase(), Written.tape(spec.gravelBase()))
                .given("top of the concrete above grade", spec.concreteTop(), Written.tape(spec.concreteTop()))
                .line(
                        "hole depth",
                        "embedment + gravel base",
                        embedment + " + " + gravel,
                        design.holeDepth(),
                        Written.tape(design.holeDepth()),
                        Citation.GEOMETRY)
                .line(
                        "post length",
                        "height above grade + embedment",
                        Written.inches(spec.exposedHeight()) + " + " + embedment,
                        design.postLength(),
                        Written.tape(design.postLength()),
                        Citation.GEOMETRY)
                .line(
                        "gravel",
                        "pi / 4 x hole^2 x gravel base",
                        "0.7854 x (" + hole + ")^2 x " + gravel + " / 1728",
                        design.gravel(),
                        Written.volume(design.gravel()),
                        Citation.GEOMETRY)
                .line(
                        "height of the concrete",
                        "embedment + top above grade",
                        embedment + " + " + Written.inches(spec.concreteTop()),
                        design.concreteHeight(),
                        Written.tape(design.concreteHeight()),
                        Citation.GEOMETRY)
                .line(
                        "concrete",
                        "(pi / 4 x hole^2 - post^2) x height",
                        "(0.7854 x (" + hole + ")^2 - (" + Written.inches(spec.postWidth()) + ")^2) x "
                                + Written.inches(design.concreteHeight()) + " / 1728",
                        design.concrete(),
                        Written.volume(design.concrete()),
                        Citation.GEOMETRY)
                .build();
    }
}
