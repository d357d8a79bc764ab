package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published grades and lengths along the slope; where each comes from heads its file. */
class SlopeReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/slope/grades.csv", useHeadersInDisplayName = true)
    void gradesInDegreesAndAlongTheSlope(double percent, double degrees, double stretch) {
        FittedBay bay = bay(Length.ofFeet(100), Length.ofFeet(percent));

        assertThat(bay.grade().percent()).isEqualTo(percent, within(1e-9));
        assertThat(bay.endCut().degrees()).isEqualTo(degrees, within(0.00005));
        assertThat(bay.railLength().feet()).isEqualTo(100 * stretch, within(0.0005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/slope/rafter-lengths.csv", useHeadersInDisplayName = true)
    void lengthsForEachFootOfRun(double rise, double length) {
        FittedBay bay = bay(Length.ofFeet(1), Length.ofInches(rise));

        assertThat(bay.railLength().inches()).isEqualTo(length, within(0.005));
        assertThat(bay.grade().risePerFoot()).isEqualTo(Length.ofInches(rise));
    }

    /**
     * NAVEDTRA 14044, chapter 2: 7 in of rise to the foot over half of a 16 ft span, 13.89 in * 8 = 111.12 in, laid off
     * as 111 1/8 in. The exact length of 111.1396 in is the same sixteenth.
     */
    @Test
    void aLengthLaidOffToTheSixteenth() {
        FittedBay bay = bay(Length.ofFeet(8), Length.ofInches(56));

        assertThat(bay.railLength().roundedTo(Length.ofInches(1 / 16.0), Rounding.NEAREST))
                .isEqualTo(Length.ofInches(111.125));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/slope/slope-corrections.csv", useHeadersInDisplayName = true)
    void distancesMeasuredAlongTheSlope(double slope, double rise, double level, double tolerance) {
        FittedBay bay = bay(Length.ofMetres(level), Length.ofMetres(rise));

        assertThat(bay.railLength().metres()).isEqualTo(slope, within(tolerance));
    }

    private static FittedBay bay(Length run, Length rise) {
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(run, rise)
                .build();
        return SlopeFit.rack(
                        ground, List.of(Length.ZERO, run), SlopeSpec.builder().build())
                .bays()
                .get(0);
    }
}
