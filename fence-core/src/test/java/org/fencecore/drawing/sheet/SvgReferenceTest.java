package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.fencecore.drawing.Drawing;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** Sizes and scales against what the documents named beside each check say. */
class SvgReferenceTest {

    /**
     * SVG 1.1 (Second Edition), section 7.7: the view box is stretched to the sheet, here by the same factor both ways.
     * CSS 2.1, section 4.3.2: 1 in is 2.54 cm and 96 px. So a user unit must come out at 96 / 25.4 px, which is 1 mm.
     */
    @Test
    void aUserUnitIsAMillimetreOfPaper() throws Exception {
        Element root = SvgSheet.read(Svg.write(Drawing.titled("Empty").build(), Paper.TABLOID))
                .root();
        double[] box = Arrays.stream(root.getAttribute("viewBox").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double widthInPixels = millimetres(root, "width") / 25.4 * 96;
        double heightInPixels = millimetres(root, "height") / 25.4 * 96;

        assertThat(box).startsWith(0, 0).hasSize(4);
        assertThat(widthInPixels).isEqualTo(17 * 96, within(1e-9));
        assertThat(widthInPixels / box[2]).isEqualTo(96 / 25.4, within(1e-9));
        assertThat(heightInPixels / box[3]).isEqualTo(96 / 25.4, within(1e-9));
    }

    private static double millimetres(Element root, String attribute) {
        String value = root.getAttribute(attribute);
        assertThat(value).endsWith("mm");
        return Double.parseDouble(value.substring(0, value.length() - 2));
    }

    /** ANSI/ASME Y14.1, sizes A and B; ISO 216, A4 and A3; from memory. */
    @Test
    void papersHaveTheirStandardSizes() {
        assertThat(Paper.LETTER.width()).isEqualTo(Length.ofInches(11));
        assertThat(Paper.LETTER.height()).isEqualTo(Length.ofInches(8.5));
        assertThat(Paper.TABLOID.width()).isEqualTo(Length.ofInches(17));
        assertThat(Paper.TABLOID.height()).isEqualTo(Length.ofInches(11));
        assertThat(Paper.A4.width()).isEqualTo(Length.ofMillimetres(297));
        assertThat(Paper.A4.height()).isEqualTo(Length.ofMillimetres(210));
        assertThat(Paper.A3.width()).isEqualTo(Length.ofMillimetres(420));
        assertThat(Paper.A3.height()).isEqualTo(Length.ofMillimetres(297));
    }

    /** The faces of the architect's and the engineer's rule, common practice, no source; 12 in to the foot. */
    @ParameterizedTest
    @CsvSource({
        "8, 1:8 (1 1/2\" = 1' 0\")",
        "12, 1:12 (1\" = 1' 0\")",
        "16, 1:16 (3/4\" = 1' 0\")",
        "24, 1:24 (1/2\" = 1' 0\")",
        "32, 1:32 (3/8\" = 1' 0\")",
        "48, 1:48 (1/4\" = 1' 0\")",
        "64, 1:64 (3/16\" = 1' 0\")",
        "96, 1:96 (1/8\" = 1' 0\")",
        "128, 1:128 (3/32\" = 1' 0\")",
        "192, 1:192 (1/16\" = 1' 0\")",
        "120, 1:120 (1\" = 10')",
        "240, 1:240 (1\" = 20')",
        "1200, 1:1200 (1\" = 100')",
        "20, 1:20",
        "50, 1:50",
        "100, 1:100",
        "2500, 1:2500"
    })
    void scalesAreNamedAsOnTheRule(long denominator, String name) {
        assertThat(Scale.oneTo(denominator)).hasToString(name);
    }

    /** The example of the scale's Javadoc. */
    @Test
    void atAQuarterInchToTheFootABayOfEightFeetIsTwoInches() {
        assertThat(Scale.oneTo(48).onPaper(Length.ofFeet(8))).isEqualTo(Length.ofInches(2));
        assertThat(Scale.oneTo(48)).isEqualTo(Scale.oneTo(48)).hasSameHashCodeAs(Scale.oneTo(48));
        assertThat(Scale.oneTo(48).denominator()).isEqualTo(48);
    }
}
