package org.fencecore.footing;

import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;

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
            String shown = Shown.inches(criterion.depth());
            switch (criterion.rule()) {
                case LATERAL_BEARING -> {
                    // Its lines are above.
                }
                case FROST, MINIMUM -> sheet.line(name, "", "", criterion.depth(), shown, criterion.source());
                case THIRD_OF_POST ->
                    sheet.line(
                            name,
                            "height above grade / 2",
                            Shown.inchNumber(spec.exposedHeight()) + " / 2",
                            criterion.depth(),
                            shown,
                            criterion.source());
            }
        }
        return sheet.line(
                        "embedment",
                        "deepest, rounded up to " + Shown.inches(spec.increment()),
                        Shown.inchNumber(design.governing().depth()) + ", by "
                                + design.governing().rule(),
                        design.embedment(),
                        Shown.inches(design.embedment()),
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
            sheet.given("ground above the concrete, not counted", notCounted, Shown.inches(notCounted));
            sheet.line(
                    "height h of P above the top of the concrete",
                    "",
                    Shown.footNumber(load.height()) + " + " + Shown.footNumber(notCounted),
                    height,
                    Shown.feet(height),
                    Citation.COMMON_PRACTICE);
        }
        Length width = spec.holeDiameter();
        sheet.line(
                "width b bearing on the soil",
                "hole diameter",
                Shown.inches(width),
                width,
                Shown.feet(width),
                Sources.POLE);
        sheet.given(
                "gravel base, below the post and not counted as embedment",
                spec.gravelBase(),
                Shown.inches(spec.gravelBase()));
        UnitWeight bearing = soil(spec, sheet);
        Pressure atThird = bearing.times(fitting).dividedBy(3);
        Length a = Length.ofMetres(LateralBearing.a(load.force().newtons(), atThird.pascals(), width.metres()));
        sheet.line(
                "depth d to be found, at which the last formula below gives d again",
                "",
                "",
                fitting,
                Shown.feet(fitting),
                Sources.POLE);
        sheet.line(
                "bearing S1 at a third of the depth",
                "S x d / 3",
                Shown.number(bearing.pcf(), 2) + " x " + Shown.footNumber(fitting) + " / 3",
                atThird,
                Shown.pressure(atThird),
                Sources.POLE);
        sheet.line(
                "A",
                "2.34 P / (S1 b)",
                "2.34 x " + Shown.number(load.force().poundsForce(), 2) + " / (" + Shown.number(atThird.psf(), 2)
                        + " x " + Shown.footNumber(width) + ")",
                a,
                Shown.feet(a),
                Sources.POLE);
        String shownA = Shown.footNumber(a);
        sheet.line(
                "depth for " + EmbedmentRule.LATERAL_BEARING,
                "0.5 A (1 + sqrt(1 + 4.36 h / A))" + (notCounted.isZero() ? "" : " + ground not counted"),
                "0.5 x " + shownA + " x (1 + sqrt(1 + 4.36 x " + Shown.footNumber(height) + " / " + shownA + "))"
                        + (notCounted.isZero() ? "" : " + " + Shown.footNumber(notCounted)),
                depth,
                Shown.feet(depth) + " = " + Shown.inches(depth),
                Sources.POLE_EQUATION);
    }

    private static UnitWeight soil(FootingSpec spec, Worksheet.Builder sheet) {
        UnitWeight single = spec.soil().lateralBearing();
        sheet.line(
                "lateral bearing S of " + spec.soil().name(),
                "",
                "",
                single,
                Shown.bearing(single),
                spec.soil().source());
        if (!spec.doubledBearing()) {
            return single;
        }
        UnitWeight doubled = single.times(2);
        sheet.line(
                "S doubled for a post that may move 1/2 in at grade",
                "2 S",
                "2 x " + Shown.number(single.pcf(), 2),
                doubled,
                Shown.bearing(doubled),
                Sources.DOUBLED_BEARING);
        return doubled;
    }

    static Worksheet concrete(FootingDesign design) {
        FootingSpec spec = design.spec();
        String hole = Shown.inchNumber(spec.holeDiameter());
        String gravel = Shown.inchNumber(spec.gravelBase());
        String embedment = Shown.inchNumber(design.embedment());
        return Worksheet.titled("Hole and concrete of a post")
                .given("embedment", design.embedment(), Shown.inches(design.embedment()))
                .given("post, square", spec.postWidth(), Shown.inches(spec.postWidth()))
                .given("hole diameter", spec.holeDiameter(), Shown.inches(spec.holeDiameter()))
                .given("gravel base", spec.gravelBase(), Shown.inches(spec.gravelBase()))
                .given("top of the concrete above grade", spec.concreteTop(), Shown.inches(spec.concreteTop()))
                .line(
                        "hole depth",
                        "embedment + gravel base",
                        embedment + " + " + gravel,
                        design.holeDepth(),
                        Shown.inches(design.holeDepth()),
                        Citation.GEOMETRY)
                .line(
                        "post length",
                        "height above grade + embedment",
                        Shown.inchNumber(spec.exposedHeight()) + " + " + embedment,
                        design.postLength(),
                        Shown.inches(design.postLength()),
                        Citation.GEOMETRY)
                .line(
                        "gravel",
                        "pi / 4 x hole^2 x gravel base",
                        "0.7854 x " + hole + "^2 x " + gravel + " / 1728",
                        design.gravel(),
                        Shown.volume(design.gravel()),
                        Citation.GEOMETRY)
                .line(
                        "height of the concrete",
                        "embedment + top above grade",
                        embedment + " + " + Shown.inchNumber(spec.concreteTop()),
                        design.concreteHeight(),
                        Shown.inches(design.concreteHeight()),
                        Citation.GEOMETRY)
                .line(
                        "concrete",
                        "(pi / 4 x hole^2 - post^2) x height",
                        "(0.7854 x " + hole + "^2 - " + Shown.inchNumber(spec.postWidth()) + "^2) x "
                                + Shown.inchNumber(design.concreteHeight()) + " / 1728",
                        design.concrete(),
                        Shown.volume(design.concrete()),
                        Citation.GEOMETRY)
                .build();
    }
}
