package org.fencecore.units;

import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import tech.units.indriya.unit.Units;

/**
 * The units of the fence trade as JSR-385 units, for passing quantities to and from other code.
 *
 * <p>Sources: international yard and pound (1959), inch 0.0254 m and pound 0.45359237 kg exactly; standard gravity
 * 9.80665 m/s2; US survey foot 1200/3937 m (NIST Handbook 44-2024, appendix C); chain of 66 ft, 4 rods or 100 links.
 */
public final class TradeUnits {

    /** The nanometre, the unit in which a length is held. */
    public static final Unit<Length> NANOMETRE = MetricPrefix.NANO(Units.METRE);

    /** The inch of 25.4 mm. */
    public static final Unit<Length> INCH = Units.METRE.multiply(254).divide(10_000);

    /** The foot of 0.3048 m. */
    public static final Unit<Length> FOOT = Units.METRE.multiply(3_048).divide(10_000);

    /** The yard of 0.9144 m. */
    public static final Unit<Length> YARD = Units.METRE.multiply(9_144).divide(10_000);

    /** The chain of 66 ft. */
    public static final Unit<Length> CHAIN = FOOT.multiply(66);

    /** The rod of 16.5 ft. */
    public static final Unit<Length> ROD = FOOT.multiply(33).divide(2);

    /** The link, a hundredth of a chain. */
    public static final Unit<Length> LINK = CHAIN.divide(100);

    /** The US survey foot of 1200/3937 m, for old deeds. */
    public static final Unit<Length> US_SURVEY_FOOT =
            Units.METRE.multiply(1_200).divide(3_937);

    /** The pound of 0.45359237 kg. */
    public static final Unit<Mass> POUND = Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);

    /** The pound-force, a pound under standard gravity: 4.4482216152605 N. */
    public static final Unit<Force> POUND_FORCE =
            Units.NEWTON.multiply(44_482_216_152_605L).divide(10_000_000_000_000L);

    /** Pounds-force per square inch. */
    public static final Unit<Pressure> PSI =
            POUND_FORCE.divide(INCH.multiply(INCH)).asType(Pressure.class);

    /** Pounds-force per square foot. */
    public static final Unit<Pressure> PSF =
            POUND_FORCE.divide(FOOT.multiply(FOOT)).asType(Pressure.class);

    /** Miles per hour, 0.44704 m/s. */
    public static final Unit<Speed> MILE_PER_HOUR =
            Units.METRE_PER_SECOND.multiply(44_704).divide(100_000);

    private TradeUnits() {}
}
