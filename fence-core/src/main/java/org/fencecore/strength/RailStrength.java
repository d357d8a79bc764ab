package org.fencecore.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Whether a rail is strong and stiff enough for the boards it carries and the wind on them.
 *
 * <p>Weight bends it down and wind sideways, both spread evenly over the span. One span: {@code M = W L / 8} and {@code 5 W
 * L^3 / (384 E I)}; over two equal spans {@code W L / 8} and 0.0054161; over three {@code W L / 10} and 0.0068842. The
 * parts of the strength that both use up are added, weight and wind together at the duration of wind, and weight alone
 * at its own for good. In years a wet rail sags twice as far as at first, a dry one half as far again (NDS 2018, section
 * 3.5.2, from memory).
 *
 * <p>Left out: the fastening at the posts, the stiffness the boards add, a person climbing, and twisting.
 *
 * <p>Example: a 2x4 of No.2 Southern Pine on edge over 8 ft, with 60 lb of boards.
 *
 * <pre>{@code
 * WoodMember rail = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.TWO_BY_FOUR).build();
 * RailStrength check = RailStrength.onEdge(rail, Length.ofFeet(8), Force.ofPoundsForce(60), Force.ofPoundsForce(80));
 * check.used();       // 0.5114
 * check.sag();        // 0.102 in at first
 * }</pre>
 *
 * <p>Sources: NDS 2018, sections 3.3, 3.5 and 3.9; beam formulas are statics.
 */
public final class RailStrength {

    private static final double[] MOMENT = {0.125, 0.125, 0.1};
    private static final double[] DEFLECTION = {5 / 384.0, 0.0054161, 0.0068842};
    private static final double[] SHEAR = {0.5, 0.625, 0.6};

    /** Part of the span a rail may sag in years; common practice, no source. */
    private static final int SAG = 240;

    private static final int SWAY = 120;

    private static final String PLACE = "rail";

    private static final Citation COMBINED = Citation.of("NDS", "section 3.9", "2018");

    private static final Citation CREEP = Citation.of("NDS", "section 3.5.2, from memory", "2018");

    private final WoodMember member;
    private final boolean flat;
    private final Length span;
    private final int spans;
    private final Force weight;
    private final Force wind;

    private RailStrength(WoodMember member, boolean flat, Length span, int spans, Force weight, Force wind) {
        this.member = member;
        this.flat = flat;
        this.span = Limits.length("span", span);
        this.spans = spans;
        this.weight = Limits.force("weight", weight);
        this.wind = Limits.force("wind", wind);
    }

    /**
     * Checks a rail with its wide side upright, over one span.
     *
     * @param member the rail
     * @param span the span from post to post, over 0, to 100 ft
     * @param weight what one span of it carries, its own weight with it, 0 to 1,000,000 lbf
     * @param wind what of the wind on one bay goes to it at allowable stress level, 0 to 1,000,000 lbf
     * @return the check
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static RailStrength onEdge(WoodMember member, Length span, Force weight, Force wind) {
        return new RailStrength(Objects.requireNonNull(member, "member"), false, span, 1, weight, wind);
    }

    /**
     * Checks a rail with its wide side level, over one span.
     *
     * @param member the rail
     * @param span the span from post to post, over 0, to 100 ft
     * @param weight what one span of it carries, its own weight with it, 0 to 1,000,000 lbf
     * @param wind what of the wind on one bay goes to it at allowable stress level, 0 to 1,000,000 lbf
     * @return the check
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static RailStrength flat(WoodMember member, Length span, Force weight, Force wind) {
        return new RailStrength(Objects.requireNonNull(member, "member"), true, span, 1, weight, wind);
    }

    /**
     * Returns the check of a rail that goes through over several equal spans in one piece.
     *
     * @param number how many spans, 1 to 3
     * @return the check
     * @throws IllegalArgumentException if out of that range
     */
    public RailStrength overSpans(int number) {
        if (number < 1 || number > 3) {
            throw new IllegalArgumentException(
                    "number was " + number + "; it must be from 1 to 3, and longer rails count as 3");
        }
        return new RailStrength(member, flat, span, number, weight, wind);
    }

    /**
     * Returns the rail.
     *
     * @return the member
     */
    public WoodMember member() {
        return member;
    }

    /**
     * Returns how much of the rail's strength is used.
     *
     * @return the greatest part of weight alone, weight and wind together, and shear; strong enough up to 1
     */
    public Ratio used() {
        return Ratio.of(Math.max(shear(), Math.max(byWeightAlone(), together())));
    }

    private double byWeightAlone() {
        return stress(weight, flat) / member.bending(LoadDuration.PERMANENT, flat);
    }

    private double together() {
        return stress(weight, flat) / member.bending(LoadDuration.WIND, flat)
                + stress(wind, !flat) / member.bending(LoadDuration.WIND, !flat);
    }

    private double shear() {
        double allowed =
                member.adjusted().shear().pascals() / member.duration().factor().value();
        double area = member.section().area().squareMetres();
        double down = 1.5 * SHEAR[spans - 1] * weight.newtons() / area;
        double both = Math.hypot(down, 1.5 * SHEAR[spans - 1] * wind.newtons() / area);
        return Math.max(
                down / (allowed * LoadDuration.PERMANENT.factor().value()),
                both / (allowed * LoadDuration.WIND.factor().value()));
    }

    private double stress(Force force, boolean across) {
        return MOMENT[spans - 1]
                * force.newtons()
                * span.metres()
                / member.section().modulus(across);
    }

    /**
     * Tells whether the stresses are within what the wood allows.
     *
     * @return true if {@link #used} is no more than 1
     */
    public boolean isStrongEnough() {
        return used().value() <= 1;
    }

    /**
     * Returns how far the weight bends the rail down at first.
     *
     * @return the sag
     */
    public Length sag() {
        return deflection(weight, flat);
    }

    /**
     * Returns how far the weight bends the rail down in years.
     *
     * @return twice the first sag if wet, else half as much again
     */
    public Length lastingSag() {
        return sag().times(Ratio.of(creep()));
    }

    private double creep() {
        return member.isWet() ? 2.0 : 1.5;
    }

    /**
     * Returns how far the wind bends the rail sideways.
     *
     * @return the deflection
     */
    public Length sway() {
        return deflection(wind, !flat);
    }

    private Length deflection(Force force, boolean across) {
        double cube = span.metres() * span.metres() * span.metres();
        return Length.ofMetres(DEFLECTION[spans - 1]
                * force.newtons()
                * cube
                / (member.elasticity() * member.section().inertia(across)));
    }

    /**
     * Returns what a builder should know about this rail, worst first: {@code rail-overstressed}, {@code rail-sags},
     * {@code rail-sways} and {@code strength-local-code}.
     *
     * @return the findings, at least the one that defers to local code
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (!isStrongEnough()) {
            findings.add(Finding.warning(
                            "rail-overstressed",
                            PLACE,
                            "the rail of " + member + " over " + Written.tape(span) + " has to bear "
                                    + Written.factor(used()) + " times what its wood allows")
                    .withRemedy("set the posts closer, or use more or stronger rails")
                    .withSource(member.reference().source()));
        }
        if (lastingSag().compareTo(span.dividedBy(SAG)) > 0) {
            findings.add(Finding.warning(
                            "rail-sags",
                            PLACE,
                            "the rail sags by " + Written.tape(lastingSag(), Rounding.UP)
                                    + " in years under the boards, more than 1/" + SAG + " of its span")
                    .withRemedy("turn it on edge, set the posts closer, or use more rails")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        if (sway().compareTo(span.dividedBy(SWAY)) > 0) {
            findings.add(Finding.note(
                            "rail-sways",
                            PLACE,
                            "the rail bends by " + Written.tape(sway(), Rounding.UP) + " in the design wind, more than"
                                    + " 1/" + SWAY + " of its span")
                    .withRemedy("use more rails or set the posts closer")
                    .withSource(Limits.DEFLECTION));
        }
        findings.add(Finding.note(
                        "strength-local-code",
                        PLACE,
                        "local code and a licensed engineer decide what a rail has to bear; this is arithmetic with sound"
                                + " wood")
                .withRemedy("show the worksheet to the local building department"));
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(findings);
    }

    /**
     * Returns the check worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #used}
     */
    public Worksheet worksheet() {
        Citation statics = Citation.of("statics, " + spans + (spans == 1 ? " span" : " equal spans"), "", "");
        Worksheet.Builder sheet = Worksheet.titled("Strength of a rail")
                .given("rail", member, member + (flat ? ", flat" : ", on edge"))
                .given("span L", span, Written.feet(span))
                .given("weight on a span", weight, Written.force(weight))
                .given("wind on a span", wind, Written.force(wind));
        (flat ? member.adjustedFlat() : member.adjusted()).explain(sheet);
        String of = Written.factor(Ratio.of(MOMENT[spans - 1])) + " x ";
        String bend = Written.factor(Ratio.of(DEFLECTION[spans - 1])) + " W L^3 / (E' I)";
        Ratio alone = Ratio.of(byWeightAlone());
        Ratio both = Ratio.of(together());
        Ratio inShear = Ratio.of(shear());
        return sheet.line("sag at first", bend, "", sag(), Written.inches(sag()), statics)
                .line(
                        "sag in years",
                        "creep x sag",
                        Written.factor(Ratio.of(creep())) + " x " + Written.inches(sag()),
                        lastingSag(),
                        Written.inches(lastingSag()),
                        CREEP)
                .line("sideways in the wind", bend, "", sway(), Written.inches(sway()), statics)
                .line("used in shear", "", "", inShear, Written.factor(inShear), COMBINED)
                .line(
                        "used by weight alone",
                        of + "W L / (S Fb'), permanent",
                        "",
                        alone,
                        Written.factor(alone),
                        COMBINED)
                .line(
                        "used by weight and wind",
                        of + "W L / (S Fb') both ways, wind",
                        "",
                        both,
                        Written.factor(both),
                        COMBINED)
                .line("used", "the greatest", "", used(), Written.factor(used()), COMBINED)
                .build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RailStrength that
                && member.equals(that.member)
                && flat == that.flat
                && span.equals(that.span)
                && spans == that.spans
                && weight.equals(that.weight)
                && wind.equals(that.wind);
    }

    @Override
    public int hashCode() {
        return Objects.hash(member, flat, span, spans, weight, wind);
    }

    @Override
    public String toString() {
        return "rail of " + member + ", " + Written.factor(used()) + " of its strength used";
    }
}
