package org.fencecore.footing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How deep to set a post, how wide and deep to dig its hole, and what to fill it with.
 *
 * <p>The embedment, from grade to the bottom of the post, is the deepest that any of these rules asks for, rounded up:
 *
 * <ul>
 *   <li>lateral soil bearing, for a post free at grade: {@code d = 0.5 A (1 + sqrt(1 + 4.36 h / A))} with
 *       {@code A = 2.34 P / (S1 b)}, where P is the force and h its height above grade, b the width that bears on the
 *       soil, here the diameter of the hole, and S1 the soil's lateral bearing at a third of d. Found to 0.1 mm, never
 *       short; with a gate's moment Mg as if the force stood higher. A post held at grade by a slab needs {@code (4.25 M /
 *       (S3 b))^0.5}, with the moment M at grade and S3 the bearing at d;
 *   <li>frost: the bottom of the concrete at the frost line, or as far below it as asked for;
 *   <li>the least embedment of any post;
 *   <li>a third of the post in the ground: half of what stands out of it;
 *   <li>if asked for, what the standard for chain-link posts has: 24 in and 3 in more for each foot over 4 ft.
 * </ul>
 *
 * <p>The post stands on the gravel base, and the concrete reaches down as far as the post. The gravel drains the foot of
 * the post; it counts neither as embedment, since it does not hold the post, nor toward frost. Where the concrete stops
 * below grade the ground above it is not counted either: grade is taken at the top of the concrete, and the force
 * higher above it by as much. Concrete above grade bears on nothing.
 *
 * <p>Freezing ground that grips the concrete may lift a post however deep it is; a finding has the force. Left out: the
 * strength of the post itself, groups of posts, sloping ground and water in it. Local code and licensed practice decide.
 *
 * <p>Sources: IBC 2018, sections 1807.3.2.1 and 1807.3.2.2, equations 18-1 to 18-3, and section 1806.3.4; ASTM F567-07; IBC 2012, table 1806.2; IRC, section
 * R403.1.4.1; the rules without a document are common practice, no source.
 *
 * <p>Example: 15 psf of wind on a 6 ft fence with posts every 8 ft, in sand with 24 in of frost.
 *
 * <pre>{@code
 * LateralLoad load = LateralLoad.ofPressure(
 *         Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74));
 * FootingSpec spec = FootingSpec.builder()
 *         .exposedHeight(Length.ofFeetAndInches(6, 2))
 *         .soil(SoilClass.SAND)
 *         .frostDepth(Length.ofInches(24))
 *         .build();
 * FootingDesign footing = FootingDesign.forPost(load, spec);
 * footing.embedment();                  // 91 in
 * footing.governing().rule();           // lateral soil bearing
 * footing.holeDepth();                  // 97 in
 * footing.postLength();                 // 165 in
 * footing.concrete();                   // 3.915 cu ft
 * footing.bags(BagSize.POUNDS_80);      // 7
 * }</pre>
 */
public final class FootingDesign {

    private static final double CONCRETE_PCF = 145;

    private final LateralLoad load;
    private final FootingSpec spec;
    private final List<EmbedmentCriterion> criteria;
    private final EmbedmentCriterion governing;
    private final Length embedment;

    private FootingDesign(LateralLoad load, FootingSpec spec) {
        this.load = load;
        this.spec = spec;
        this.criteria = criteriaOf(load, spec);
        this.governing = deepestOf(criteria);
        this.embedment = spec.roundUp(governing.depth());
    }

    /**
     * Works out the footing of a post.
     *
     * @param load the push on the post, or {@link LateralLoad#NONE} if the wind is not known
     * @param spec the post, the ground and the hole
     * @return the footing
     */
    public static FootingDesign forPost(LateralLoad load, FootingSpec spec) {
        return new FootingDesign(Objects.requireNonNull(load, "load"), Objects.requireNonNull(spec, "spec"));
    }

    private static List<EmbedmentCriterion> criteriaOf(LateralLoad load, FootingSpec spec) {
        List<EmbedmentCriterion> criteria = new ArrayList<>(5);
        if (!load.isNone()) {
            criteria.add(new EmbedmentCriterion(
                    EmbedmentRule.LATERAL_BEARING,
                    bearingDepth(load, spec),
                    spec.setting().isHeldAtGrade() ? Sources.HELD_POLE : Sources.POLE_EQUATION));
        }
        if (spec.frostDepth().isPresent()) {
            criteria.add(new EmbedmentCriterion(
                    EmbedmentRule.FROST,
                    spec.frostDepth().get().plus(spec.setting().belowFrostLine()),
                    Sources.FROST));
        }
        criteria.add(new EmbedmentCriterion(
                EmbedmentRule.MINIMUM,
                spec.setting().minimumEmbedment(),
                spec.setting().minimumEmbedment().equals(PostSetting.USUAL_MINIMUM)
                        ? Sources.USUAL_MINIMUM
                        : Sources.GIVEN));
        if (spec.setting().hasThirdOfPostInGround()) {
            criteria.add(new EmbedmentCriterion(
                    EmbedmentRule.THIRD_OF_POST, spec.exposedHeight().dividedBy(2), Citation.COMMON_PRACTICE));
        }
        if (spec.setting().hasFenceStandardMinimum()) {
            criteria.add(new EmbedmentCriterion(
                    EmbedmentRule.FENCE_STANDARD, standardDepth(spec.exposedHeight()), Sources.FENCE_STANDARD));
        }
        return List.copyOf(criteria);
    }

    /** 24 in, and 3 in for each foot over 4 ft. */
    private static Length standardDepth(Length exposed) {
        Length over = Length.max(Length.ZERO, exposed.minus(Length.ofFeet(4)));
        return Length.ofInches(24).plus(over.dividedBy(4));
    }

    private static Length bearingDepth(LateralLoad load, FootingSpec spec) {
        Length notCounted = spec.groundNotCounted();
        double moment = load.force().newtons() * load.height().plus(notCounted).metres()
                + load.gate().newtonMetres();
        double bearing = spec.bearing().newtonsPerCubicMetre();
        double width = spec.hole().bearingWidth().metres();
        double depth = spec.setting().isHeldAtGrade()
                ? LateralBearing.held(moment, bearing, width)
                : LateralBearing.free(load.force().newtons(), moment, bearing, width);
        return Length.ofMetres(depth).plus(notCounted);
    }

    private static EmbedmentCriterion deepestOf(List<EmbedmentCriterion> criteria) {
        EmbedmentCriterion deepest = criteria.get(0);
        for (EmbedmentCriterion criterion : criteria) {
            if (criterion.depth().compareTo(deepest.depth()) > 0) {
                deepest = criterion;
            }
        }
        return deepest;
    }

    /**
     * Returns the push on the post.
     *
     * @return the load
     */
    public LateralLoad load() {
        return load;
    }

    /**
     * Returns how the post is set.
     *
     * @return the options
     */
    public FootingSpec spec() {
        return spec;
    }

    /**
     * Returns how deep the post stands: from grade to its bottom.
     *
     * @return the deepest criterion, rounded up to the increment
     */
    public Length embedment() {
        return embedment;
    }

    /**
     * Returns what each rule asks for.
     *
     * @return the criteria that apply: lateral bearing, frost, minimum, third of the post; at least one, unmodifiable
     */
    public List<EmbedmentCriterion> criteria() {
        return criteria;
    }

    /**
     * Returns the criterion that decides the embedment.
     *
     * @return the deepest, of equal ones the first
     */
    public EmbedmentCriterion governing() {
        return governing;
    }

    /**
     * Returns how deep to dig.
     *
     * @return the embedment and the base
     */
    public Length holeDepth() {
        return embedment.plus(spec.setting().base());
    }

    /**
     * Returns how wide to dig.
     *
     * @return the diameter of the hole at grade, or the side of a square one
     */
    public Length holeDiameter() {
        return spec.holeDiameter();
    }

    /**
     * Returns how long the post is.
     *
     * @return what stands out of the ground and the embedment
     */
    public Length postLength() {
        return spec.exposedHeight().plus(embedment);
    }

    /**
     * Returns the concrete around the post from its base to its top, with a base of dry mix, as if the hole were dug
     * true; nothing for waste. A crown is a cone from the edge of the hole to a round post of the same area.
     *
     * @return the volume of the hole less that of the post
     */
    public Volume concrete() {
        double post = spec.postWidth().times(spec.postWidth()).squareMetres();
        double around = spec.hole()
                        .volume(
                                spec.setting().base(),
                                holeDepth().plus(spec.setting().concreteTop()),
                                holeDepth())
                - post * concreteHeight().metres();
        return Volume.ofCubicMetres(around + crown(post) + (spec.setting().isDryMixBase() ? baseVolume() : 0));
    }

    private double crown(double post) {
        double hole = spec.hole().areaAtTop();
        return spec.setting().crown().metres() * ((hole + Math.sqrt(hole * post) + post) / 3 - post);
    }

    /**
     * Returns what the concrete weighs, at 145 lb per cubic foot (plain concrete, from memory).
     *
     * @return the mass of {@link #concrete}
     */
    public Mass concreteWeight() {
        return Mass.ofPounds(CONCRETE_PCF * concrete().cubicFeet());
    }

    /**
     * Returns the gravel under the post, as if the hole were dug true; nothing for waste.
     *
     * @return the volume, zero if the base is dry mix
     */
    public Volume gravel() {
        return spec.setting().isDryMixBase() ? Volume.ZERO : Volume.ofCubicMetres(baseVolume());
    }

    private double baseVolume() {
        return spec.hole().volume(Length.ZERO, spec.setting().base(), holeDepth());
    }

    /**
     * Returns how many bags of concrete mix this one hole takes. For many holes mixed together add up
     * {@link #concrete} first, or each hole is rounded up.
     *
     * @param size the bag
     * @return whole bags, rounded up
     */
    public int bags(BagSize size) {
        return size.holding(concrete());
    }

    /**
     * Returns what a builder should know about this footing, worst first: {@code bearing-over-12-ft},
     * {@code wind-not-checked}, {@code frost-not-checked}, {@code doubled-bearing}, {@code narrow-hole},
     * {@code hole-wider-at-top}, {@code frost-grip}, {@code held-at-grade}, {@code lateral-bearing-governs},
     * {@code presumptive-soil}, {@code post-strength-not-checked} and {@code local-code}.
     *
     * @return the findings, at least the one that defers to local code and licensed practice
     */
    public List<Finding> findings() {
        return FootingFindings.of(this);
    }

    /**
     * Returns the embedment worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #embedment}
     */
    public Worksheet worksheet() {
        return FootingSheets.embedment(this);
    }

    /**
     * Returns hole, post, gravel and concrete worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #concrete}
     */
    public Worksheet concreteWorksheet() {
        return FootingSheets.concrete(this);
    }

    Length concreteHeight() {
        return embedment.plus(spec.setting().concreteTop());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof FootingDesign that && load.equals(that.load) && spec.equals(that.spec);
    }

    @Override
    public int hashCode() {
        return Objects.hash(load, spec);
    }

    @Override
    public String toString() {
        return "post embedded " + Written.tape(embedment) + " by " + governing.rule() + ", hole "
                + Written.tape(holeDiameter()) + " wide and " + Written.tape(holeDepth()) + " deep";
    }
}
