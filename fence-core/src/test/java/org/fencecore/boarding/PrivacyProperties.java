package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.layout.BoardPattern;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Privacy against sight lines drawn one by one past the boards. */
class PrivacyProperties {

    private static final int LINES = 4000;

    @Property(tries = 300)
    void sightLinesTellTheSame(
            @ForAll @DoubleRange(min = 2, max = 8) double width,
            @ForAll @DoubleRange(min = 0.01, max = 0.48) double lapPart,
            @ForAll @DoubleRange(min = 0, max = 1.5) double thickness,
            @ForAll @DoubleRange(min = 0.1, max = 6) double between,
            @ForAll @DoubleRange(min = 0, max = 85) double degrees) {
        double lap = lapPart * width;
        BoardPattern pattern = BoardPattern.shadowbox(Length.ofInches(width))
                .withLaps(Length.ZERO, Length.ofInches(lap), Length.ofInches(0.49 * width));
        Privacy privacy = Privacy.of(pattern, Length.ofInches(thickness), Length.ofInches(between));
        Angle angle = Angle.ofDegrees(degrees);

        double seen = seen(width, lap, thickness, between, angle.tan());
        double told = privacy.visibleAt(angle).value();
        assertThat(told).isCloseTo(seen, within(4.0 / LINES));
        assertThat(told).isBetween(0.0, 1.0);
        boolean seesThrough =
                privacy.seeThroughFrom().map(from -> from.degrees() < degrees).orElse(false);
        if (told > 1e-9) {
            assertThat(seesThrough).isTrue();
        }
        if (privacy.seeThroughFrom().isPresent()) {
            double just = privacy.seeThroughFrom().orElseThrow().degrees() + 1e-4;
            assertThat(privacy.visibleAt(Angle.ofDegrees(just)).value()).isPositive();
        }
    }

    /** The share of sight lines through one pitch that meet no board, each board taken as the box it is. */
    private static double seen(double width, double lap, double thickness, double between, double tangent) {
        double pitch = 2 * (width - lap);
        int through = 0;
        for (int line = 0; line < LINES; line++) {
            double entry = (line + 0.5) / LINES * pitch;
            boolean hit = meets(entry, entry + thickness * tangent, 0, width, pitch);
            double back = entry + (thickness + between) * tangent;
            hit |= meets(back, back + thickness * tangent, width - lap, width, pitch);
            through += hit ? 0 : 1;
        }
        return (double) through / LINES;
    }

    /** Whether a line that goes sideways from one place to another meets a board of a row. */
    private static boolean meets(double from, double to, double firstLeft, double width, double pitch) {
        long board = (long) Math.floor((from - firstLeft) / pitch);
        double left = firstLeft + board * pitch;
        return from < left + width || to > left + pitch;
    }
}
