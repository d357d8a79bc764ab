package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.geometry.Bearing;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.Volume;

/** What is written of a quantity reads back as the very value. */
class QuantitiesProperties {

    private static <T> void assertExact(Form<T> form, T value) {
        String text = (String) form.write(value);
        assertThat(text).hasSizeLessThanOrEqualTo(64);
        Place place = Place.root(new Node(Node.Kind.TEXT, text, 1, 1));
        assertThat(form.read(place)).as(text).isEqualTo(value);
    }

    @Property
    void lengths(@ForAll long nanometres) {
        assertExact(Quantities.LENGTH, Length.ofNanometres(nanometres));
    }

    @Property
    void anglesAndBearings(@ForAll @DoubleRange(min = -7, max = 7) double radians) {
        assertExact(Quantities.ANGLE, Angle.ofRadians(radians));
        assertExact(Quantities.BEARING, Bearing.ofAzimuth(Angle.ofRadians(radians)));
    }

    @Property
    void bearingsByTheSecond(@ForAll @DoubleRange(min = 0, max = 360) double degrees) {
        Angle angle = Angle.ofDms((int) degrees, (int) (degrees * 60 % 60), Math.floor(degrees * 3600 % 60));
        assertExact(Quantities.ANGLE, angle);
        assertExact(Quantities.BEARING, Bearing.ofAzimuth(angle));
    }

    @Property
    void slopes(@ForAll @DoubleRange(min = -20, max = 20) double grade) {
        assertExact(Quantities.SLOPE, Slope.ofPercent(grade));
        assertExact(Quantities.SLOPE, Slope.LEVEL.plus(Slope.ofPercent(1e-20 * grade)));
    }

    @Property
    void measuresInAnyUnit(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        assertExact(Quantities.PRESSURE, Pressure.ofPsf(value));
        assertExact(Quantities.PRESSURE, Pressure.ofPsi(value));
        assertExact(Quantities.PRESSURE, Pressure.ofPascals(value));
        assertExact(Quantities.FORCE, Force.ofNewtons(value));
        assertExact(Quantities.FORCE, Force.ofPoundsForce(value));
        assertExact(Quantities.MOMENT, Moment.ofPoundFeet(value));
        assertExact(Quantities.UNIT_WEIGHT, UnitWeight.ofPcf(value));
        assertExact(Quantities.SPEED, Speed.ofMilesPerHour(value));
        assertExact(Quantities.VOLUME, Volume.ofCubicYards(value));
        assertExact(Quantities.RATIO, Ratio.of(value));
    }

    @Property
    void measuresOfAnySize(@ForAll long bits) {
        double value = Double.longBitsToDouble(bits);
        Assume.that(Double.isFinite(value));
        assertExact(Quantities.PRESSURE, Pressure.ofPascals(value));
        assertExact(Quantities.RATIO, Ratio.of(value));
    }
}
