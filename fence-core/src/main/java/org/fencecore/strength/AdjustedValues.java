package org.fencecore.strength;

import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * What a piece of wood may be loaded with: its reference values times the factors for duration, moisture, heat, size,
 * flat use and incising.
 *
 * <p>{@code Fb' = Fb CD CM Ct CF Cfu Ci}, {@code Fv' = Fv CD CM Ct Ci}, {@code E' = E CM Ct Ci}. Wet bending strength
 * is not lowered where Fb CF is no more than 1,150 psi. Posts and timbers have no incising factor, and in bending and
 * shear no wet one. Left out: beam stability (CL), as posts are square and rails held by the boards, and repetitive use.
 *
 * <p>Example: a No.1 Douglas Fir-Larch 2x8, wet, under snow: {@code 1000 x 1.15 x 0.85 x 1.2} is 1,173 psi in bending.
 *
 * <p>Sources: NDS 2018, sections 2.3 and 4.3; NDS Supplement 2018, adjustment factors of tables 4A, 4B and 4D.
 */
public final class AdjustedValues {

    private static final Citation FACTORS =
            Citation.of("NDS", "section 4.3; Supplement, adjustment factors of tables 4A, 4B and 4D", "2018");

    private static final double MOST_UNLOWERED = Pressure.ofPsi(1150).pascals();

    private final WoodMember member;
    private final boolean flat;

    AdjustedValues(WoodMember member, boolean flat) {
        this.member = member;
        this.flat = flat;
    }

    /**
     * Returns the piece.
     *
     * @return the member
     */
    public WoodMember member() {
        return member;
    }

    /**
     * Tells whether the piece is bent across its thickness.
     *
     * @return true if flat
     */
    public boolean isFlat() {
        return flat;
    }

    /**
     * Returns the allowable bending stress.
     *
     * @return Fb'
     */
    public Pressure bending() {
        return member.reference().bending().times(cd() * wetBending() * heat() * size() * flatUse() * incising());
    }

    /**
     * Returns the allowable shear stress.
     *
     * @return Fv'
     */
    public Pressure shear() {
        return member.reference().shear().times(cd() * wet(0.97) * heat() * incising());
    }

    /**
     * Returns the adjusted modulus of elasticity.
     *
     * @return E'
     */
    public Pressure elasticity() {
        return member.reference().elasticity().times(wet(0.9) * heatOnStiffness() * incisingOnStiffness());
    }

    private double cd() {
        return member.duration().factor().value();
    }

    private boolean isPost() {
        return member.section().isPost();
    }

    /** CM of dimension lumber where it is wet; that of posts is 1 in what is used here. */
    private double wet(double ofDimension) {
        return member.isWet() && !isPost() ? ofDimension : 1;
    }

    private double wetBending() {
        // A hair above, for the rounding of doubles.
        boolean lowered = member.reference().bending().pascals() * size() > MOST_UNLOWERED * (1 + 1e-9);
        return lowered ? wet(0.85) : 1;
    }

    private double heat() {
        return member.temperature().onStress(member.isWet());
    }

    private double heatOnStiffness() {
        return member.temperature().onStiffness();
    }

    private double incising() {
        return member.isIncised() && !isPost() ? 0.80 : 1;
    }

    private double incisingOnStiffness() {
        return member.isIncised() && !isPost() ? 0.95 : 1;
    }

    /** CF of table 4A; table 4B and given values have it in them, and posts to 12 in deep have none. */
    private double size() {
        if (member.reference().isWithSize()) {
            return 1;
        }
        boolean four = member.section().isFourThick();
        return switch (member.section().nominalWidth()) {
            case 4 -> 1.5;
            case 5 -> 1.4;
            case 6 -> 1.3;
            case 8 -> four ? 1.3 : 1.2;
            case 10 -> four ? 1.2 : 1.1;
            default -> four ? 1.1 : 1.0;
        };
    }

    private double flatUse() {
        if (!flat || isPost()) {
            return 1;
        }
        boolean four = member.section().isFourThick();
        return switch (member.section().nominalWidth()) {
            case 4 -> four ? 1.0 : 1.1;
            case 5 -> four ? 1.05 : 1.1;
            case 6, 8 -> four ? 1.05 : 1.15;
            default -> four ? 1.1 : 1.2;
        };
    }

    /**
     * Returns the values worked out line by line.
     *
     * @return the worksheet, whose last line is {@link #bending}
     */
    public Worksheet worksheet() {
        return explain(Worksheet.titled("Allowable values of " + member)).build();
    }

    Worksheet.Builder explain(Worksheet.Builder sheet) {
        ReferenceValues reference = member.reference();
        return sheet.line(
                        "modulus of elasticity E'",
                        "E CM Ct Ci",
                        product(reference.elasticity(), wet(0.9), heatOnStiffness(), incisingOnStiffness()),
                        elasticity(),
                        Written.stress(elasticity()),
                        FACTORS)
                .line(
                        "allowable shear Fv'",
                        "Fv CD CM Ct Ci",
                        product(reference.shear(), cd(), wet(0.97), heat(), incising()),
                        shear(),
                        Written.stress(shear()),
                        FACTORS)
                .line(
                        "reference bending Fb",
                        "",
                        "",
                        reference.bending(),
                        Written.stress(reference.bending()),
                        reference.source())
                .line(
                        "allowable bending Fb'",
                        "Fb CD CM Ct CF Cfu Ci",
                        product(reference.bending(), cd(), wetBending(), heat(), size(), flatUse(), incising()),
                        bending(),
                        Written.stress(bending()),
                        FACTORS);
    }

    private static String product(Pressure value, double... factors) {
        StringBuilder text = new StringBuilder(Written.stress(value));
        for (double factor : factors) {
            text.append(" x ").append(Written.factor(Ratio.of(factor)));
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return member + (flat ? " flat" : "") + ": bending " + Written.stress(bending()) + ", shear "
                + Written.stress(shear()) + ", elasticity " + Written.stress(elasticity());
    }
}
