package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.internal.Limits;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
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
 * LateralLoad load = LateralLoad.ofPressure(
 *         Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74));
 * }</pre>
 */
public final class LateralLoad {

    /** Nothing known about the wind; a footing designed for this has its usual minimums only, and a finding says so. */
    public static final LateralLoad NONE = new LateralLoad(Force.ZERO, Length.ZERO, Moment.ZERO, null);

    private static final Pressure MOST_PRESSURE = Pressure.ofPsf(1000);
    private static final Force LEAST_FORCE = Force.ofPoundsForce(0.01);
    private static final Force MOST_FORCE = Force.ofPoundsForce(1_000_000);
    private static final Moment MOST_MOMENT = Moment.ofPoundFeet(1_000_000);
    private static final Length MOST_HEIGHT = Length.ofFeet(100);
    private static final Length MOST_WIDTH = Length.ofFeet(1000);
    private static final Ratio WALL_ON_GROUND = Ratio.of(0.55);

    private final Force force;
    private final Length height;
    private final Moment gate;
    private final @Nullable Origin origin;

    private LateralLoad(Force force, Length height, Moment gate, @Nullable Origin origin) {
        this.force = force;
        this.height = height;
        this.gate = gate;
        this.origin = origin;
    }

    /** What a push was worked out from, for the worksheet. */
    private sealed interface Origin permits WindOnFence, TwoRuns {}

    private record WindOnFence(Pressure pressure, Length width, Length bottom, Length top) implements Origin {}

    private record TwoRuns(LateralLoad first, LateralLoad second, Angle turn) implements Origin {}

    /**
     * Returns a load that is known by its force.
     *
     * @param force the force at allowable stress level, 0.01 to 1,000,000 lbf
     * @param height how far above grade it acts, over 0, to 100 ft
     * @return the load
     * @throws IllegalArgumentException if either is out of its range
     */
    public static LateralLoad of(Force force, Length height) {
        return new LateralLoad(requireForce(force), Limits.overZero("height", height, MOST_HEIGHT), Moment.ZERO, null);
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
        if (!windPressure.isPositive() || windPressure.compareTo(MOST_PRESSURE) > 0) {
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
                Moment.ZERO,
                new WindOnFence(windPressure, tributaryWidth, bottom, top));
    }

    /**
     * Returns the push on a post where two runs meet, each pushed as hard as it can be: the two pushes added as arrows
     * square to their runs. Straight on they add up; at a right angle it is the root of their squares.
     *
     * <p>Example: 300 lbf and 400 lbf at a right angle, both 3 ft up, are 500 lbf 3 ft up.
     *
     * @param other the push of the other run
     * @param turn how much the fence turns at the post, 0 straight on; to which side does not matter
     * @return the load of both, with what hangs on either
     */
    public LateralLoad together(LateralLoad other, Angle turn) {
        Objects.requireNonNull(turn, "turn");
        Moment hung = gate.plus(other.gate);
        if (!other.knowsPush() || !knowsPush()) {
            LateralLoad known = knowsPush() ? this : other;
            return new LateralLoad(known.force, known.height, hung, known.origin);
        }
        double cosine = Math.abs(turn.cos());
        double both = sum(force.newtons(), other.force.newtons(), cosine);
        double moment = sum(
                force.times(height).newtonMetres(),
                other.force.times(other.height).newtonMetres(),
                cosine);
        return new LateralLoad(
                requireForce(Force.ofNewtons(both)),
                Length.ofMetres(moment / both),
                hung,
                new TwoRuns(this, other, turn));
    }

    private static double sum(double a, double b, double cosine) {
        return Math.sqrt(a * a + b * b + 2 * a * b * cosine);
    }

    /**
     * Returns this load with a gate hung on the post. Its moment is taken to go the way of the push, as it does when the
     * gate is open; known alone, it has an embedment of its own.
     *
     * <p>Example: a gate of 80 lb, 4 ft wide: 80 lb x 2 ft = 160 lbf-ft.
     *
     * @param moment the weight of the gate times how far its middle is from the post, 0 to 1,000,000 lbf-ft
     * @return the load
     * @throws IllegalArgumentException if out of that range
     */
    public LateralLoad withGate(Moment moment) {
        Objects.requireNonNull(moment, "moment");
        if (moment.isNegative() || moment.compareTo(MOST_MOMENT) > 0) {
            throw new IllegalArgumentException("moment was " + Written.moment(moment)
                    + "; it must be from 0 to 1,000,000 lbf-ft, so check its unit and sign");
        }
        return moment.equals(gate) ? this : new LateralLoad(force, height, moment, origin);
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
     * Returns the moment of a gate hung on the post.
     *
     * @return the moment, zero without a gate
     */
    public Moment gate() {
        return gate;
    }

    /**
     * Returns the moment at grade.
     *
     * @return force times height, and the gate's moment
     */
    public Moment moment() {
        return force.times(height).plus(gate);
    }

    /**
     * Tells whether nothing is known about the load.
     *
     * @return true for {@link #NONE}
     */
    public boolean isNone() {
        return force.isZero() && gate.isZero();
    }

    /**
     * Tells whether the push of the wind is known, rather than at most a gate's weight.
     *
     * @return true if there is a force
     */
    public boolean knowsPush() {
        return !force.isZero();
    }

    /** Adds to a worksheet where the load comes from. */
    void explain(Worksheet.Builder sheet) {
        if (origin instanceof WindOnFence wind) {
            explain(sheet, wind);
        } else if (origin instanceof TwoRuns runs) {
            explain(sheet, runs);
        } else if (knowsPush()) {
            sheet.given("force P", force, Written.force(force));
            sheet.given("height h of P above grade", height, Written.feet(height));
        }
        if (!gate.isZero()) {
            sheet.given("moment Mg of the gate's weight", gate, Written.moment(gate));
        }
    }

    private void explain(Worksheet.Builder sheet, TwoRuns runs) {
        String first = Written.force(runs.first.force);
        String second = Written.force(runs.second.force);
        sheet.given("push P1 of the one run", runs.first, runs.first.toString());
        sheet.given("push P2 of the other run", runs.second, runs.second.toString());
        sheet.given("turn t of the fence", runs.turn, Written.degrees(runs.turn));
        sheet.line(
                "force P",
                "sqrt(P1^2 + P2^2 + 2 P1 P2 |cos t|)",
                "sqrt((" + first + ")^2 + (" + second + ")^2 + 2 x " + first + " x " + second + " x |cos "
                        + Written.degrees(runs.turn) + "|)",
                force,
                Written.force(force),
                Citation.GEOMETRY);
        sheet.line(
                "height h of P above grade",
                "moments added alike / P",
                "",
                height,
                Written.feet(height),
                Citation.GEOMETRY);
    }

    private void explain(Worksheet.Builder sheet, WindOnFence wind) {
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
                && gate.equals(that.gate)
                && Objects.equals(origin, that.origin);
    }

    @Override
    public int hashCode() {
        // Where the load comes from tells apart what these do not once in a thousand.
        return 31 * (31 * force.hashCode() + height.hashCode()) + gate.hashCode();
    }

    @Override
    public String toString() {
        String push =
                knowsPush() ? Written.force(force) + " at " + Written.feet(height) + " above grade" : "wind not known";
        return gate.isZero() ? push : push + ", gate of " + Written.moment(gate);
    }
}
