package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.terrain.Feet.ft;

import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class StringDropsTest {

    private static StringDrops.Builder fence() {
        return StringDrops.below(ft(103))
                .drop(Length.ZERO, ft(3))
                .drop(ft(8), Length.ofFeetAndInches(3, 7))
                .drop(ft(16), Length.ofFeetAndInches(4, 5.5));
    }

    @Test
    void measuresDownFromTheString() {
        StringDrops drops = fence().build();
        assertThat(drops.profile())
                .isEqualTo(Profile.builder()
                        .point(ft(0), ft(100))
                        .point(ft(8), Length.ofFeetAndInches(99, 5))
                        .point(ft(16), Length.ofFeetAndInches(98, 6.5))
                        .build());
        assertThat(drops.worksheet().result()).isEqualTo(Length.ofFeetAndInches(98, 6.5));
        assertThat(drops.findings()).extracting(Finding::code).containsExactly("string-level-unknown");
        assertThat(drops).hasToString("3 drops from a level string over 16.00 ft");
    }

    @Test
    void takesAStringSetLowerOnTheWay() {
        StringDrops drops = fence().reset(ft(100)).drop(ft(24), ft(2.5)).build();
        assertThat(drops.profile().elevationAt(ft(24))).isEqualTo(ft(97.5));
        assertThat(drops.worksheet().toText())
                .contains("elevation of the string = 100 ft")
                .contains("ground at 24.00 ft = string - drop = 100 ft - 2.5 ft = 97.5 ft");
    }

    /** 1/4 in over 20 ft comes to 0.2 in over 16 ft. */
    @Test
    void saysHowFarTheEndMayBeOff() {
        StringDrops drops =
                fence().levelWithin(Slope.of(Length.ofInches(0.25), ft(20))).build();
        assertThat(drops.uncertainty()).contains(Length.ofInches(0.2));
        assertThat(drops.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("string-off-level");
            assertThat(finding.message()).contains("over 16.00 ft").contains("0.2 in");
        });
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> fence().drop(ft(16), ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station was 16 ft, not after the one before at 16 ft");
        assertThatThrownBy(() -> fence().drop(ft(20), ft(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("drop at 20 ft was -1 ft");
        assertThatThrownBy(() -> StringDrops.below(ft(1)).drop(ft(0), ft(1)).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of points was 1");
        assertThatThrownBy(() -> fence().levelWithin(Slope.ofPercent(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("within was");
        StringDrops.Builder many = StringDrops.below(ft(1));
        for (int i = 0; i < 10_000; i++) {
            many.drop(ft(i), ft(1));
        }
        assertThatThrownBy(() -> many.drop(ft(10_000), ft(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number 10001");
    }
}
