package org.fencecore.wood;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of the width of a board as its moisture changes.
 *
 * <pre>
 * change = width x C x (to - from)                      where both are from 6 % to 14 %
 * change = width x (to - from) / (30 / S - 30 + from)   elsewhere
 * C      = change coefficient of the species, for each percent
 * S      = its shrinkage from green to ovendry, as a share; from and to in percent
 * </pre>
 *
 * <p>Moisture counts up to 30 %: above that, cell walls are full and wood does not swell further. Along the grain wood
 * hardly moves, so lengths stay.
 *
 * <p>It assumes wood free to move and sawn wholly flat or wholly vertical. Boards between the two move less than flat
 * ones, so the result for flat grain is the most that is to be expected.
 *
 * <p>Sources: USDA Wood Handbook (FPL-GTR-190, 2010), chapter 13; the second formula is from memory.
 *
 * <p>Example: a white fir board of 9.15 in, flat, that goes from 8 % to 11 % grows by 9.15 x 0.00245 x 3 = 0.067 in.
 *
 * <pre>{@code
 * WoodMovement wetting = WoodMovement.of(WoodSpecies.WHITE_FIR, Grain.FLAT, Length.ofInches(9.15),
 *         Ratio.ofPercent(8), Ratio.ofPercent(11));
 * wetting.change();    // 0.067 in
 * }</pre>
 */
public final class WoodMovement {

    private static final Citation HANDBOOK = Citation.of("USDA Wood Handbook", "chapter 13", "FPL-GTR-190, 2010");
    private static final Citation HANDBOOK_FROM_MEMORY =
            Citation.of("USDA Wood Handbook", "chapter 13, formula from memory", "FPL-GTR-190, 2010");
    private static final Length WIDEST = Length.ofMetres(100);
    private static final Ratio WETTEST = Ratio.ofPercent(200);
    private static final double FIBRES_FULL = 30;
    private static final double COEFFICIENT_FROM = 6;
    private static final double COEFFICIENT_TO = 14;

    private final WoodSpecies species;
    private final Grain grain;
    private final Length before;
    private final Ratio from;
    private final Ratio to;
    private final Length change;

    private WoodMovement(WoodSpecies species, Grain grain, Length before, Ratio from, Ratio to) {
        this.species = species;
        this.grain = grain;
        this.before = before;
        this.from = from;
        this.to = to;
        this.change = before.times(Ratio.of(share()));
    }

    /**
     * Works out how a width changes.
     *
     * @param species the wood
     * @param grain how the board is sawn
     * @param width the width at the first moisture content, over zero and up to 100 m
     * @param from the moisture content before, as a share of the dry weight, from 0 to 200 %
     * @param to the moisture content after, likewise
     * @return the movement
     * @throws IllegalArgumentException if the width or a moisture content is out of its range
     */
    public static WoodMovement of(WoodSpecies species, Grain grain, Length width, Ratio from, Ratio to) {
        Objects.requireNonNull(species, "species");
        Objects.requireNonNull(grain, "grain");
        if (!width.isPositive() || width.compareTo(WIDEST) > 0) {
            throw new IllegalArgumentException("width was " + width + "; it must be over 0 and up to " + WIDEST);
        }
        requireMoisture("moisture from", from);
        requireMoisture("moisture to", to);
        return new WoodMovement(species, grain, width, from, to);
    }

    /** Refuses what is no moisture content, most often a percentage taken for a share. */
    static void requireMoisture(String name, Ratio moisture) {
        if (moisture.compareTo(Ratio.ZERO) < 0 || moisture.compareTo(WETTEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + moisture.percent()
                            + " %; it must be from 0 to 200 %: the water's share of the dry weight, such as Ratio.ofPercent(12)");
        }
    }

    private static double counted(Ratio moisture) {
        return Math.min(FIBRES_FULL, moisture.percent());
    }

    private boolean isWithinCoefficient() {
        return Math.min(from.percent(), to.percent()) >= COEFFICIENT_FROM
                && Math.max(from.percent(), to.percent()) <= COEFFICIENT_TO;
    }

    /** The change as a share of the width before. */
    private double share() {
        double rise = counted(to) - counted(from);
        return isWithinCoefficient()
                ? species.changeForEachPercent(grain).value() * rise
                : rise / (FIBRES_FULL / species.shrinkage(grain).value() - FIBRES_FULL + counted(from));
    }

    /**
     * Returns how much wider the board gets.
     *
     * @return the change to the nearest nanometre, negative if it shrinks
     */
    public Length change() {
        return change;
    }

    /**
     * Returns how wide the board is afterwards.
     *
     * @return the width before and the change together
     */
    public Length width() {
        return before.plus(change);
    }

    /**
     * Returns the calculation, ending with the width afterwards.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Movement of " + words(species) + ", " + words(grain) + " grain")
                .given("width", before, Written.inches(before))
                .given("moisture before", from, percent(from.percent()))
                .given("moisture after", to, percent(to.percent()));
        String rise = "(" + number(counted(to)) + " - " + number(counted(from)) + ")";
        if (isWithinCoefficient()) {
            Ratio coefficient = species.changeForEachPercent(grain);
            sheet.line(
                    "change",
                    "width x coefficient x (moisture after - before)",
                    Written.inches(before) + " x " + coefficient.value() + " x " + rise,
                    change,
                    Written.inches(change),
                    HANDBOOK);
        } else {
            sheet.line(
                    "change",
                    "width x (moisture after - before) / (30 / shrinkage - 30 + moisture before), moisture up to 30 %",
                    Written.inches(before) + " x " + rise + " / (30 / "
                            + number(species.shrinkage(grain).percent() / 100) + " - 30 + " + number(counted(from))
                            + ")",
                    change,
                    Written.inches(change),
                    HANDBOOK_FROM_MEMORY);
        }
        return sheet.line(
                        "width afterwards",
                        "width + change",
                        Written.inches(before) + " + " + Written.inches(change),
                        width(),
                        Written.inches(width()),
                        Citation.GEOMETRY)
                .build();
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String percent(double value) {
        return number(value) + " %";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value)
                .setScale(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WoodMovement that
                && species == that.species
                && grain == that.grain
                && before.equals(that.before)
                && from.equals(that.from)
                && to.equals(that.to);
    }

    @Override
    public int hashCode() {
        return Objects.hash(species, grain, before, from, to);
    }

    /**
     * Describes the movement.
     *
     * @return such as {@code 5 1/2" to 5 1/4"}
     */
    @Override
    public String toString() {
        return Written.tape(before) + " to " + Written.tape(width());
    }
}
