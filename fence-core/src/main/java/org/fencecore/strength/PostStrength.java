package org.fencecore.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Whether a post is strong and stiff enough at the ground line for a push that the ground holds it against.
 *
 * <p>The post is a cantilever fixed at grade: {@code M = P h} (and the weight of a gate, if it hangs there), bending stress
 * {@code fb = M / S}, shear {@code fv = 1.5 P / (b d)}, each over what the wood allows. A gate's weight alone is also held
 * against the strength that lasts for good. The top leans by the push spread evenly about its height as far as the top
 * of the post, the gate's moment added: {@code w (H (b^3 - a^3) - (b^4 - a^4) / 4) / (6 E I) + Mg H^2 / (2 E I)}.
 *
 * <p>Left out: the give of the ground, which often leans more than the post bends; that in soft ground the post bends most
 * some way below grade; notches and decay at the ground line, where posts fail; and buckling. Local code and a licensed
 * engineer decide.
 *
 * <p>Example: 160 lb of wind on each foot of a 6x6 of Southern Pine that stands 6 ft out of the ground.
 *
 * <pre>{@code
 * WoodMember post = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.SIX_BY_SIX).build();
 * PostStrength check = PostStrength.of(post, Force.ofPoundsForce(960), Length.ofFeet(3), Length.ofFeet(6));
 * check.bendingStress();                       // 1246 psi of 1360 psi
 * check.shearStress();                         // 47.6 psi
 * check.deflection();                          // 0.489 in
 * check.isStrongEnough();                      // true
 * check.largestSpacing(Length.ofFeet(8));      // 8 ft 8.75 in
 * }</pre>
 *
 * <p>Source: NDS 2018, chapter 3; beam formulas are statics.
 */
public final class PostStrength {

    /** A cantilever counts twice its length: 1/120 of twice the height. */
    private static final int LEAN = 60;

    private static final String PLACE = "post";

    private final WoodMember member;
    private final Force push;
    private final Length height;
    private final Length exposed;
    private final Moment hung;

    private PostStrength(WoodMember member, Force push, Length height, Length exposed, Moment hung) {
        this.member = member;
        this.push = push;
        this.height = height;
        this.exposed = exposed;
        this.hung = hung;
    }

    /**
     * Checks a post against a push.
     *
     * @param member the post; where it is not square, its width stands in the direction of the push
     * @param push the force at allowable stress level, 0 to 1,000,000 lbf
     * @param height how far above grade it acts, over 0, no higher than {@code exposed}
     * @param exposed how far the post stands out of the ground, over 0, to 100 ft
     * @return the check
     * @throws IllegalArgumentException if any of them is out of its range
     */
    public static PostStrength of(WoodMember member, Force push, Length height, Length exposed) {
        Objects.requireNonNull(member, "member");
        Limits.force("push", push);
        Limits.length("height", height);
        Limits.length("exposed", exposed);
        if (height.compareTo(exposed) > 0) {
            throw new IllegalArgumentException("height was " + height + " on a post standing " + exposed
                    + " out of the ground; it must be no higher than the post");
        }
        return new PostStrength(member, push, height, exposed, Moment.ZERO);
    }

    /**
     * Returns the check of the same post with a gate hung on it. Its moment is taken to go the way of the push, as it does
     * with the gate open.
     *
     * @param moment the weight of the gate times how far its middle is from the post, 0 to 1,000,000 lbf-ft
     * @return the check
     * @throws IllegalArgumentException if out of that range
     */
    public PostStrength withGate(Moment moment) {
        return new PostStrength(member, push, height, exposed, Limits.moment("moment", moment));
    }

    /**
     * Returns the post.
     *
     * @return the member
     */
    public WoodMember member() {
        return member;
    }

    /**
     * Returns the moment at the ground line.
     *
     * @return force times height, and the gate's moment
     */
    public Moment moment() {
        return push.times(height).plus(hung);
    }

    /**
     * Returns the greatest bending stress at the ground line.
     *
     * @return fb
     */
    public Pressure bendingStress() {
        return Pressure.ofPascals(moment().newtonMetres() / modulus());
    }

    /**
     * Returns the greatest shear stress.
     *
     * @return fv
     */
    public Pressure shearStress() {
        return Pressure.ofPascals(1.5 * push.newtons() / member.section().area().squareMetres());
    }

    /**
     * Returns how much of the post's strength is used.
     *
     * @return the greatest part of bending, shear and the lasting bending of a gate; the post is strong enough up to 1
     */
    public Ratio used() {
        return Ratio.of(usedValue());
    }

    private double usedValue() {
        double allowed = allowedBending();
        double bending = moment().newtonMetres() / modulus() / allowed;
        double shear = shearStress().pascals() / member.adjusted().shear().pascals();
        return Math.max(Math.max(bending, shear), lasting(allowed));
    }

    private double allowedBending() {
        return member.adjusted().bending().pascals();
    }

    /** The gate's weight alone against what the wood bears for good. */
    private double lasting(double allowed) {
        double forGood = allowed
                * LoadDuration.PERMANENT.factor().value()
                / member.duration().factor().value();
        return hung.newtonMetres() / modulus() / forGood;
    }

    private double modulus() {
        return member.section().modulus(false);
    }

    /**
     * Tells whether the stresses are within what the wood allows.
     *
     * @return true if {@link #used} is no more than 1
     */
    public boolean isStrongEnough() {
        return usedValue() <= 1;
    }

    /**
     * Returns how far the top of the post moves, the ground not giving.
     *
     * @return the deflection
     */
    public Length deflection() {
        double top = exposed.metres();
        double half = Math.min(height.metres(), top - height.metres());
        double bend = member.elasticity() * member.section().inertia(false);
        return Length.ofMetres(
                (push.newtons() * shape(height.metres(), half, top) + hung.newtonMetres() * top * top / 2) / bend);
    }

    /** Deflection at the top for a unit of force spread evenly from {@code middle - half} to {@code middle + half}. */
    private static double shape(double middle, double half, double top) {
        double a = middle - half;
        double b = middle + half;
        if (b - a < 1e-6) {
            return middle * middle * (3 * top - middle) / 6;
        }
        return (top * (b * b * b - a * a * a) - (b * b * b * b - a * a * a * a) / 4) / (6 * (b - a));
    }

    /**
     * Returns how far apart posts of this kind could stand in the same wind; the push grows with the spacing, the gate's
     * weight does not.
     *
     * @param present the spacing that the push was worked out for, over 0, to 100 ft
     * @return the largest spacing at which the post is strong enough, zero if a gate is too much for it alone
     * @throws IllegalArgumentException if out of that range, or there is no push that could grow
     */
    public Length largestSpacing(Length present) {
        Limits.length("present", present);
        if (push.isZero()) {
            throw new IllegalArgumentException("push was 0, which any spacing has; give the push of the wind");
        }
        double allowed = allowedBending();
        if (lasting(allowed) > 1) {
            return Length.ZERO;
        }
        double spare = allowed * modulus() - hung.newtonMetres();
        double byBending = spare / push.times(height).newtonMetres();
        double byShear = member.adjusted().shear().ratioTo(shearStress()).value();
        return present.times(Ratio.of(Math.max(0, Math.min(byBending, byShear))));
    }

    /**
     * Returns the first of some sizes of the same wood and grade that is strong enough.
     *
     * @param sizes the sizes to try in order, such as {@link WoodSection#POSTS}, to 1,000 of them
     * @return the size; empty if none is, or no values are held for it
     */
    public Optional<WoodSection> sizeThatWorks(List<WoodSection> sizes) {
        if (sizes.size() > 1000) {
            throw new IllegalArgumentException("sizes were " + sizes.size()
                    + "; give no more than 1,000, such as the usual ones of WoodSection.POSTS");
        }
        return sizes.stream()
                .filter(size -> member.withSection(size)
                        .filter(other -> new PostStrength(other, push, height, exposed, hung).isStrongEnough())
                        .isPresent())
                .findFirst();
    }

    /**
     * Returns what a builder should know about this post, worst first: {@code post-overstressed}, {@code post-bends} and
     * {@code strength-local-code}.
     *
     * @return the findings, at least the one that defers to local code
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (!isStrongEnough()) {
            findings.add(Finding.warning(
                            "post-overstressed",
                            PLACE,
                            "the " + member + " is bent by " + Written.moment(moment()) + " at the ground line, "
                                    + Written.factor(used()) + " times what its wood allows")
                    .withRemedy(remedy())
                    .withSource(member.reference().source()));
        }
        Length deflection = deflection();
        Length limit = exposed.dividedBy(LEAN);
        if (deflection.compareTo(limit) > 0) {
            findings.add(Finding.note(
                            "post-bends",
                            PLACE,
                            "the top of the post bends by " + Written.tape(deflection, Rounding.UP) + ", more than 1/"
                                    + LEAN + " of its height, in the design wind")
                    .withRemedy("a thicker post or posts set closer bend less")
                    .withSource(Limits.DEFLECTION));
        }
        findings.add(Finding.note(
                        "strength-local-code",
                        PLACE,
                        "local code and a licensed engineer decide what a post has to bear; this is arithmetic with sound"
                                + " wood, and posts rot at the ground line first")
                .withRemedy("use posts treated for ground contact and show the worksheet to the building department"));
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(findings);
    }

    private String remedy() {
        String size = sizeThatWorks(WoodSection.POSTS)
                .map(section -> "a post of " + section + " in the same wood would do for this push")
                .orElse("no usual size of this wood would do; have an engineer look at it");
        return "set the posts closer, or let wind through the fence; " + size;
    }

    /**
     * Returns the check worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #used}
     */
    public Worksheet worksheet() {
        return PostSheet.of(this);
    }

    Force push() {
        return push;
    }

    Length height() {
        return height;
    }

    Length exposed() {
        return exposed;
    }

    Moment hung() {
        return hung;
    }

    Ratio lasting() {
        return Ratio.of(lasting(allowedBending()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PostStrength that
                && member.equals(that.member)
                && push.equals(that.push)
                && height.equals(that.height)
                && exposed.equals(that.exposed)
                && hung.equals(that.hung);
    }

    @Override
    public int hashCode() {
        return Objects.hash(member, push, height, exposed, hung);
    }

    @Override
    public String toString() {
        return member + ", " + Written.factor(used()) + " of its strength used";
    }
}
