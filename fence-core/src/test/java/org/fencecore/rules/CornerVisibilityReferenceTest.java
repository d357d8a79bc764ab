package org.fencecore.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.rules.Plans.ORDINANCE;
import static org.fencecore.rules.Plans.at;
import static org.fencecore.rules.Plans.east;
import static org.fencecore.rules.Plans.feet;

import java.util.List;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Side;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Triangles by plane trigonometry, and the rules of eight towns as one can tell them with these parameters.
 *
 * <p>The towns' figures are quotations, seen at the publishers of their codes; they are here to show that the parameters
 * are enough, and none of them is part of the library.
 */
class CornerVisibilityReferenceTest {

    /** Base lines that meet at the origin: one due east, the other so many degrees from it to the left. */
    private static Corner corner(double degrees) {
        Angle angle = Angle.ofDegrees(degrees);
        return Corner.of(at(100 * angle.cos(), 100 * angle.sin()), at(0, 0), at(100, 0), Side.LEFT);
    }

    private static List<Finding> check(LocalRule rule, FencePart part) {
        return LocalRules.of(List.of(rule)).check(List.of(part));
    }

    /** Open side 2 L sin(a/2), area L^2 sin(a) / 2, and at a right angle L / sqrt 2 from the corner to the open side. */
    @ParameterizedTest
    @CsvSource({"90, 35.3553, 312.5, 17.6777", "75, 30.4381, 301.852, 19.8338", "105, 39.6677, 301.852, 15.2190"})
    void trianglesWithLegsOf25Feet(double degrees, double openSide, double area, double height) {
        CornerVisibility rule =
                CornerVisibility.of(corner(degrees), feet(25), feet(25), feet(2.5), "corner visibility", ORDINANCE);

        assertThat(rule.triangle().side(1).length().feet()).isCloseTo(openSide, within(5e-5));
        assertThat(rule.triangle().area().squareFeet()).isCloseTo(area, within(5e-4));
        assertThat(rule.triangle().side(1).distanceTo(at(0, 0)).feet()).isCloseTo(height, within(5e-5));
    }

    /**
     * A fence 6 ft high and 5 ft off one base line is in a square triangle for as long as the leg less 5 ft; one no higher
     * than the lower limit is not, and one whose bottom is as high as the upper limit is not either.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "'Carlisle, Ohio, zoning code; legs along right-of-way lines', 20, 2.5, 6",
        "'Groton, Connecticut, zoning, section 7.4; street lines', 25, 3, ",
        "'Burtchville Township, Michigan, zoning; right-of-way lines extended, streets', 25, 2.5, ",
        "'Burtchville Township, Michigan, zoning; an alley or a driveway', 15, 2.5, ",
        "'Hudson, town code; lot lines, heights over the curb', 25, 3.5, 7.5",
        "'Reading, Pennsylvania, zoning; centre lines of streets', 75, 2.5, ",
        "'Buffalo, New York, unified development ordinance; curb lines', 20, 3.5, 10",
        "'Augusta, Georgia, zoning; centre lines of streets under 60 ft wide', 60, 3, ",
        "'Corry, Pennsylvania, 156.109; centre lines', 80, 3, "
    })
    void rulesOfTowns(String town, double leg, double from, Double upTo) {
        Citation source = Citation.of(town, "", "");
        CornerVisibility open =
                CornerVisibility.of(corner(90), feet(leg), feet(leg), feet(from), "corner visibility", source);
        CornerVisibility rule = upTo == null ? open : open.withUpTo(feet(upTo));
        FencePart.Builder fence = FencePart.on("side 1", east(-10, 100, 5)).firstStation(feet(-10));

        assertThat(check(rule, fence.top(feet(6)).build())).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("rule-visibility");
            assertThat(finding.source()).contains(source);
            assertThat(finding.message()).contains("stands from 0.00 ft to " + "%.2f ft in".formatted(leg - 5));
        });
        assertThat(check(rule, fence.top(feet(from)).build())).isEmpty();
        assertThat(check(
                        rule,
                        FencePart.on("side 1", east(-10, 100, leg + 0.01))
                                .top(feet(6))
                                .build()))
                .isEmpty();
        Length high = upTo == null ? feet(20) : feet(upTo);
        FencePart arbor = fence.bottom(high).top(high.plus(feet(1))).build();
        assertThat(check(rule, arbor)).hasSize(upTo == null ? 1 : 0);
    }

    /** Reading, Pennsylvania: fences over 75 % see-through are exempt; at an alley, legs of 15 ft and 10 ft. */
    @Test
    void openFencesAndUnequalLegs() {
        Citation source = Citation.of("Reading, Pennsylvania, zoning", "", "");
        CornerVisibility rule = CornerVisibility.of(corner(90), feet(10), feet(15), feet(2.5), "alley", source)
                .withExemption(Ratio.ofPercent(75));
        FencePart.Builder fence = FencePart.on("side 1", east(0, 100, 4)).top(feet(6));

        // Along the street 15 ft and along the alley 10 ft: 4 ft up the alley, 15 x (1 - 4/10) = 9 ft are left.
        assertThat(check(rule, fence.openness(Ratio.ofPercent(60)).build()))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).contains("from 0.00 ft to 9.00 ft");
                    assertThat(finding.remedy()).contains("75 % open");
                });
        assertThat(check(rule, fence.openness(Ratio.ofPercent(80)).build())).isEmpty();
        assertThat(rule.triangle().area().squareFeet()).isCloseTo(75, within(1e-9));
    }

    @Test
    void aRuleThatMakesNoTriangleIsRefused() {
        Corner straight = Corner.of(at(-10, 0), at(0, 0), at(10, 0), Side.LEFT);

        assertThatThrownBy(() -> CornerVisibility.of(straight, feet(25), feet(25), feet(3), "corner", ORDINANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("make no triangle");
        assertThatThrownBy(() -> CornerVisibility.of(corner(90), feet(0), feet(25), feet(3), "corner", ORDINANCE))
                .hasMessageContaining("arrivingLeg was 0 in; a leg must be over 0");
        CornerVisibility rule = CornerVisibility.of(corner(90), feet(25), feet(25), feet(3), "corner", ORDINANCE);
        assertThatThrownBy(() -> rule.withUpTo(feet(3)))
                .hasMessageContaining("upTo was 3 ft, not over the lower limit");
    }
}
