package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The sideways push on one post: how hard, and how far above grade.
 *
 * <p>Soil bearing values are allowable ones, so the load has to be at allowable stress level as well: where the wind
 * speed is an ultimate one (ASCE 7-10 and later), that is 0.6 of the pressure worked out from it. A fence that lets
 * wind through has less; multiply the pressure by its solid part before.
 *
 * <p>Example: 15 psf on 8 ft of a fence whose boards reach from 2 in to 6 ft 2 in above grade is 720 lbf, 40.7 in up.
 *
 * <pre>{@code
 * LateralLoad.ofPressure(Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74))
 * }</pre>
 */
public final class LateralLoad {

    /** Nothing known about the wind; a footing designed for this has its usual minimums only, and a finding says so. */
    public static final LateralLoad NONE = new LateralLoad(Force.ZERO, Length.ZERO, null);

    private static final Force LEAST_FORCE = Force.ofPoundsForce(0.01);
    private static final Force MOST_FORCE = Force.ofPoundsForce(1_000_000);
    private static final Length MOST_HEIGHT = Length.ofFeet(100);
    private static final Length MOST_WIDTH = Length.ofFeet(1000);
    private static final Ratio WALL_ON_GROUND = Ratio.of(0.55);

    private final Force force;
    private final Length height;
    private final @Nullable WindOnFence wind;

    private LateralLoad(Force force, Length height, @Nullable WindOnFence wind) {
        this.force = force;
        this.height = height;
        this.wind = wind;
    }

    /** What a load was worked out from, for the worksheet. */
    private record WindOnFence(Pressure pressure, Length width, Length bottom, Length top) {}

    /**
     * Returns a load that is known by its force.
     *
     * @param force the force at allowable stress level, 0.01 to 1,000,000 lbf
     * @param height how far above grade it acts, over 0, to 100 ft
     * @return the load
     * @throws IllegalArgumentException if either is out of its range
     */
    public static LateralLoad of(Force force, Length height) {
        return new LateralLoad(requireForce(force), Limits.overZero("height", height, MOST_HEIGHT), null);
    }

    /**
     * Returns the load of the wind on the part of a fence that one post holds: pressure times width times height of its
     * surface.
     *
     * <p>The force acts at 0.55 of the height of the top, or at mid-height of the surface if that is higher. ASCE 7 has
     * 0.55 of the height for a wall that stands on the ground and mid-height for one that does not; taking the higher
     * of the two agrees with it on the ground and for a surface high above it, and for boards with a small gap below
     * errs to the higher side by no more than a twentieth of the height.
     *
     * <p>Source: ASCE 7-16, figure 29.3-1.
     *
     * @param windPressure the wind pressure at allowable stress level, over 0, to 1,000 psf
     * @param tributaryWidth the length of fence the post holds: half the bay on either side, over 0, to 1,000 ft
     * @param bottom how far above grade the surface starts, from 0
     * @param top how far above grade the surface ends, over {@code bottom}, to 100 ft
     * @return the load
     * @throws IllegalArgumentException if any of them, or the force, is out of its range
     */
    public static LateralLoad ofPressure(Pressure windPressure, Length tributaryWidth, Length bottom, Length top) {
        Objects.requireNonNull(windPressure, "windPressure");
        if (!(windPressure.psf() > 0 && windPressure.psf() <= 1000)) {
            throw new IllegalArgumentException("windPressure was " + Written.pressure(windPressure)
                    + "; it must be over 0 and no more than 1,000 psf; if it is not known, use LateralLoad.NONE");
        }
        Limits.overZero("tributaryWidth", tributaryWidth, MOST_WIDTH);
        Limits.within("bottom", bottom, Length.ZERO, MOST_HEIGHT);
        Limits.overZero("top", top, MOST_HEIGHT);
        if (bottom.compareTo(top) >= 0) {
            throw new IllegalArgumentException(
                    "bottom was " + bottom + " and top " + top + "; the top must be higher, so check their order");
        }
        Force force = windPressure.times(tributaryWidth.times(top.minus(bottom)));
        Length middle = bottom.plus(top).dividedBy(2);
        return new LateralLoad(
                requireForce(force),
                Length.max(top.times(WALL_ON_GROUND), middle),
                new WindOnFence(windPressure, tributaryWidth, bottom, top));
    }

    private static Force requireForce(Force force) {
        Objects.requireNonNull(force, "force");
        if (force.compareTo(LEAST_FORCE) < 0 || force.compareTo(MOST_FORCE) > 0) {
            throw new IllegalArgumentException("force was " + Written.force(force)
                    + "; it must be from 0.01 to 1,000,000 lbf; if there is none or it is not known, use"
                    + " LateralLoad.NONE");
        }
        return force;
    }

    /**
     * Returns how hard the push is.
     *
     * @return the force, zero for {@link #NONE}
     */
    public Force force() {
        return force;
    }

    /**
     * Returns how far above grade the force acts.
     *
     * @return the height, zero for {@link #NONE}
     */
    public Length height() {
        return height;
    }

    /**
     * Tells whether nothing is known about the load.
     *
     * @return true for {@link #NONE}
     */
    public boolean isNone() {
        return force.isZero();
    }

    /** Adds to a worksheet where the load comes from. */
    void explain(Worksheet.Builder sheet) {
        if (wind == null) {
            sheet.given("force P", force, Written.force(force));
            sheet.given("height h of P above grade", height, Written.feet(height));
            return;
        }
        sheet.given("wind pressure, allowable stress level", wind.pressure, Written.pressure(wind.pressure));
        sheet.given("tributary width of fence", wind.width, Written.tape(wind.width));
        sheet.given("bottom of the wind's surface above grade", wind.bottom, Written.tape(wind.bottom));
        sheet.given("top of the wind's surface above grade", wind.top, Written.tape(wind.top));
        String bottom = Written.feet(wind.bottom);
        String top = Written.feet(wind.top);
        sheet.line(
                "force P",
                "pressure x width x (top - bottom)",
                Written.pressure(wind.pressure) + " x " + Written.feet(wind.width) + " x (" + top + " - " + bottom
                        + ")",
                force,
                Written.force(force),
                Citation.GEOMETRY);
        sheet.line(
                "height h of P above grade",
                "larger of 0.55 top and (bottom + top) / 2",
                "larger of 0.55 x " + top + " and (" + bottom + " + " + top + ") / 2",
                height,
                Written.feet(height),
                Sources.RESULTANT);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LateralLoad that
                && force.equals(that.force)
                && height.equals(that.height)
                && Objects.equals(wind, that.wind);
    }

    @Override
    public int hashCode() {
        return Objects.hash(force, height, wind);
    }

    @Override
    public String toString() {
        return isNone() ? "wind not known" : Written.force(force) + " at " + Written.feet(height) + " above grade";
    }
}
