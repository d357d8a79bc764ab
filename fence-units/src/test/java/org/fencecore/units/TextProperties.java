package org.fencecore.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** What the readers make of any text at all. */
class TextProperties {

    private static final List<Function<String, Object>> READERS = List.of(Length::parse, Angle::parse, Slope::parse);

    @Provide
    Arbitrary<String> nearlyMeasurements() {
        return Arbitraries.of(
                        "1", "12", "0", "5.5", ".5", "3/4", "½", "/", " ", "-", "–", "+", "'", "\"", "°", "%", ":",
                        "in", "ft", "ft.", "mm", "chains", "links", "US", "survey", "deg", "per", ",", "x", "\u0000",
                        "𝟏")
                .list()
                .ofMinSize(1)
                .ofMaxSize(12)
                .map(parts -> String.join("", parts));
    }

    @Property
    void areReadOrRefusedWithTheirColumn(@ForAll("nearlyMeasurements") String text) {
        READERS.forEach(reader -> readOrRefused(reader, text));
    }

    @Property
    void anyTextIsReadOrRefused(@ForAll @StringLength(max = 80) String text) {
        READERS.forEach(reader -> readOrRefused(reader, text));
    }

    private static void readOrRefused(Function<String, Object> reader, String text) {
        Throwable refusal = catchThrowable(() -> reader.apply(text));
        if (refusal != null) {
            assertThat(refusal)
                    .isExactlyInstanceOf(IllegalArgumentException.class)
                    .message()
                    .containsPattern("cannot be read: at column \\d+ (the text ends|stands .+); expected .+"
                            + "|characters; it must have 64 or fewer");
        }
    }

    // Decimal feet of a plat and decimal millimetres of a drawing: the text and the number are the same length.
    @Property(tries = 5000)
    void textAndNumberAreTheSameLength(@ForAll @IntRange(min = -1_000_000, max = 1_000_000) int hundredths) {
        String number = BigDecimal.valueOf(hundredths, 2).toPlainString();
        assertThat(Length.parse(number + " ft")).isEqualTo(Length.ofFeet(hundredths / 100.0));
        assertThat(Length.parse(number + " in")).isEqualTo(Length.ofInches(hundredths / 100.0));
        assertThat(Length.parse(number + " mm")).isEqualTo(Length.ofMillimetres(hundredths / 100.0));
        assertThat(Length.parse(number + " m")).isEqualTo(Length.ofMetres(hundredths / 100.0));
        assertThat(Length.parse(number + " US survey ft")).isEqualTo(Length.ofSurveyFeet(hundredths / 100.0));
    }
}
