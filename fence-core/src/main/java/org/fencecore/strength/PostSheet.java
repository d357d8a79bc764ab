package org.fencecore.strength;

import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** The check of a post written out. */
final class PostSheet {

    private static final Citation STATICS = Citation.of("statics", "", "");

    private static final Citation BENDING = Citation.of("NDS", "section 3.3", "2018");

    private static final Citation SHEAR = Citation.of("NDS", "section 3.4", "2018");

    private PostSheet() {}

    static Worksheet of(PostStrength check) {
        WoodMember member = check.member();
        WoodSection section = member.section();
        Worksheet.Builder sheet = Worksheet.titled("Strength of a post")
                .given("post", member, member.toString())
                .given("push P", check.push(), Written.force(check.push()))
                .given("height h of P above grade", check.height(), Written.feet(check.height()))
                .given("height H of the post above grade", check.exposed(), Written.feet(check.exposed()));
        boolean gate = !check.hung().isZero();
        if (gate) {
            sheet.given("moment Mg of the gate", check.hung(), Written.moment(check.hung()));
        }
        member.adjusted().explain(sheet);
        Moment moment = check.moment();
        sheet.line(
                "moment M at the ground line",
                gate ? "P h + Mg" : "P h",
                Written.force(check.push()) + " x " + Written.feet(check.height())
                        + (gate ? " + " + Written.moment(check.hung()) : ""),
                moment,
                Written.moment(moment),
                STATICS);
        String b = Written.inches(section.thickness());
        String d = Written.inches(section.width());
        Pressure bending = check.bendingStress();
        sheet.line(
                "bending stress fb",
                "6 M / (b d^2)",
                "6 x 12 x " + Written.moment(moment) + " / (" + b + " x (" + d + ")^2)",
                bending,
                Written.stress(bending),
                BENDING);
        Pressure shear = check.shearStress();
        sheet.line(
                "shear stress fv",
                "1.5 P / (b d)",
                "1.5 x " + Written.force(check.push()) + " / (" + b + " x " + d + ")",
                shear,
                Written.stress(shear),
                SHEAR);
        sheet.line("top of the post bends", "", "", check.deflection(), Written.inches(check.deflection()), STATICS);
        Pressure allowed = member.adjusted().bending();
        Pressure allowedShear = member.adjusted().shear();
        sheet.line(
                "used in shear",
                "fv / Fv'",
                Written.stress(shear) + " / " + Written.stress(allowedShear),
                shear.ratioTo(allowedShear),
                Written.factor(shear.ratioTo(allowedShear)),
                SHEAR);
        Ratio inBending = bending.ratioTo(allowed);
        sheet.line(
                "used in bending",
                "fb / Fb'",
                Written.stress(bending) + " / " + Written.stress(allowed),
                inBending,
                Written.factor(inBending),
                BENDING);
        if (gate) {
            sheet.line(
                    "used by the gate alone, for good",
                    "Mg / (S Fb' 0.9 / CD)",
                    "",
                    check.lasting(),
                    Written.factor(check.lasting()),
                    BENDING);
        }
        return sheet.line("used", "the greatest", "", check.used(), Written.factor(check.used()), BENDING)
                .build();
    }
}
