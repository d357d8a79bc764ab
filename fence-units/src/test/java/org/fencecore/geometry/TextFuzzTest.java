package org.fencecore.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Text with one to eight slips of the keyboard in it is read or refused as documented, whatever the slips are, and what is
 * read comes back from its own writing. Seeded; {@code -Dfuzz.inputs=1000000} makes the long run.
 */
class TextFuzzTest {

    private static final int INPUTS = Integer.getInteger("fuzz.inputs", 10_000);

    /** What is struck by mistake: the signs of the formats, others that look like them, and what breaks readers. */
    private static final String SIGNS =
            "0123456789 .,-+/'\"°′″ftinmcydNESWdegrad%:eE()x½¼⅝–−٣\u00a0\u2009\t\n\0\ud83d\udd28\ud800";

    /** A reader and texts that it reads. */
    private record Reader(String name, Function<String, Object> parse, List<String> samples) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Reader> readers() {
        return Stream.of(
                new Reader(
                        "lengths",
                        Length::parse,
                        List.of(
                                "6' 2 3/4\"",
                                "12 ft 6 in",
                                "5-1/2\"",
                                "1.25 m",
                                "38 mm",
                                "-3 1/2 in",
                                "6.23 ft",
                                "2 yd",
                                "100 usft")),
                new Reader(
                        "angles",
                        Angle::parse,
                        List.of("45°30'15\"", "45-30-15", "12.5 deg", "0.25 rad", "45 deg 30 min")),
                new Reader("slopes", Slope::parse, List.of("20 %", "1:5", "3/8 in per ft", "11.3 deg", "-4.5 %")),
                new Reader(
                        "bearings",
                        Bearing::parse,
                        List.of("N 45°30'15\" E", "S89°18'W", "N45-30-15E", "North 45 deg 30 min East", "Due South")),
                new Reader("stations", Station::parse, List.of("1+25.50", "0+00", "12+34.5", "3+05.25")));
    }

    @ParameterizedTest
    @MethodSource("readers")
    void slipsOfTheKeyboardAreReadOrRefused(Reader reader) {
        Random random = new Random(20_261_125);
        int read = assertTimeoutPreemptively(Duration.ofMinutes(10), () -> {
            int count = 0;
            for (int input = 0; input < INPUTS; input++) {
                String text = slipped(reader.samples.get(random.nextInt(reader.samples.size())), random);
                count += reads(reader, text) ? 1 : 0;
            }
            return count;
        });
        // Many slips still make sense, and many do not: the check sees both.
        assertThat(read).isBetween(INPUTS / 100, INPUTS * 99 / 100);
    }

    private static boolean reads(Reader reader, String text) {
        Object value;
        try {
            value = reader.parse.apply(text);
        } catch (IllegalArgumentException refused) {
            assertThat(refused).as("refusal of '%s'", text).isExactlyInstanceOf(IllegalArgumentException.class);
            assertThat(refused.getMessage()).isNotBlank().hasSizeLessThan(1_000);
            return false;
        }
        Object again = reader.parse.apply(value.toString());
        if (value instanceof Slope grade) {
            // As documented, to about 1 part in 10^15 of grades that can be seen.
            double percent = grade.percent();
            assertThat(((Slope) again).percent())
                    .as(text)
                    .isCloseTo(percent, within(1e-12 + 1e-14 * Math.abs(percent)));
        } else if (value instanceof Angle angle) {
            // As documented; degrees that are not whole thousandths of a second are decimals of a binary fraction.
            double radians = angle.radians();
            assertThat(((Angle) again).radians()).as(text).isCloseTo(radians, within(1e-14 * Math.abs(radians)));
        } else if (value instanceof Station) {
            // As documented, to the hundredth.
            assertThat(again).as(text).hasToString(value.toString());
        } else {
            assertThat(again).as(text).isEqualTo(value);
        }
        return true;
    }

    private static String slipped(String sample, Random random) {
        StringBuilder text = new StringBuilder(sample);
        for (int slips = 1 + random.nextInt(8); slips > 0; slips--) {
            int at = random.nextInt(text.length() + 1);
            char sign = SIGNS.charAt(random.nextInt(SIGNS.length()));
            switch (random.nextInt(6)) {
                case 0 -> text.insert(at, sign);
                case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(3)));
                case 2 -> text.append(sample);
                case 3 -> text.insert(at, String.valueOf(sign).repeat(random.nextInt(40)));
                default -> text.replace(at, Math.min(text.length(), at + 1), String.valueOf(sign));
            }
        }
        // Now and then far more than anyone writes.
        return random.nextInt(1000) == 0 ? text.toString().repeat(2_000) : text.toString();
    }
}
