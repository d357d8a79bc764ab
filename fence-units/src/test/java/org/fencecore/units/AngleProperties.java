package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class AngleProperties {

    @Property
    void textReadsBackAsTheSameAngle(@ForAll @DoubleRange(min = -7, max = 7) double radians) {
        Angle angle = Angle.ofRadians(radians);
        assertThat(Angle.parse(angle.toString()).radians())
                .isCloseTo(radians, within(1e-15 * Math.max(1, Math.abs(radians))));
    }

    @Property
    void textOfDegreesMinutesAndSecondsReadsBackExactly(
            @ForAll @IntRange(max = 360) int degrees,
            @ForAll @IntRange(max = 59) int minutes,
            @ForAll @IntRange(max = 59_999) int thousandths) {
        Angle angle = Angle.ofDms(degrees, minutes, thousandths / 1000.0);
        assertThat(angle.toString()).startsWith(degrees + "°").doesNotContain(".°");
        assertThat(Angle.parse(angle.toString())).isEqualTo(angle);
    }

    @Property
    void normalizedIsTheSameDirectionWithinOneTurn(@ForAll @DoubleRange(min = -1000, max = 1000) double degrees) {
        Angle angle = Angle.ofDegrees(degrees);
        Angle normalized = angle.normalized();
        assertThat(normalized.degrees()).isBetween(0.0, 360.0).isNotEqualTo(360.0);
        assertThat(normalized.sin()).isCloseTo(angle.sin(), within(1e-12));
        assertThat(normalized.cos()).isCloseTo(angle.cos(), within(1e-12));
    }
}
