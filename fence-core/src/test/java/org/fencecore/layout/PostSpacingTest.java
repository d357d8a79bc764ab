package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

class PostSpacingTest {

    private static final Length LONGEST = Length.ofFeet(8);
    private static final Length SHORTEST = Length.ofFeet(4);

    @Test
    void theExampleOfTheClass() {
        PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(50), Length.ofFeet(8), Length.ofFeet(4));

        assertThat(spacing.bayCount()).isEqualTo(7);
        // 15.24 m / 7 = 2.177142857142... m
        assertThat(spacing.spacing()).isEqualTo(Length.ofNanometres(2_177_142_857L));
        List<Length> stations = spacing.stations();
        assertThat(stations).hasSize(8);
        assertThat(stations.get(0)).isEqualTo(Length.ZERO);
        // 6 / 7 of 15.24 m is 13.06285714285...; seven spacings of the rounded one would end a nanometre short.
        assertThat(stations.get(6)).isEqualTo(Length.ofNanometres(13_062_857_143L));
        assertThat(stations.get(7)).isEqualTo(Length.ofFeet(50));
        assertThat(spacing.findings()).isEmpty();
    }

    @Test
    void aStretchThatIsAMultipleOfTheMaximumHasFullBays() {
        PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(48), LONGEST, SHORTEST);

        assertThat(spacing.bayCount()).isEqualTo(6);
        assertThat(spacing.spacing()).isEqualTo(LONGEST);
        assertThat(spacing.stations()).contains(Length.ofFeet(24));
        assertThat(spacing).hasToString("6 bays of 8' 0\" in 48' 0\"");
        // A nanometre more takes another bay.
        assertThat(PostSpacing.equalBays(Length.ofFeet(48).plus(Length.ofNanometres(1)), LONGEST, SHORTEST)
                        .bayCount())
                .isEqualTo(7);
    }

    @Test
    void stationsAreTheSameFromBothEnds() {
        Length length = Length.ofNanometres(10_000_000_003L);
        List<Length> stations =
                PostSpacing.equalBays(length, LONGEST, Length.ZERO).stations();

        assertThat(stations).hasSize(6);
        for (int post = 0; post < stations.size(); post++) {
            assertThat(stations.get(post).plus(stations.get(stations.size() - 1 - post)))
                    .isEqualTo(length);
        }
    }

    @Test
    void baysUnderTheMinimumAreNoted() {
        assertThat(PostSpacing.equalBays(Length.ofFeet(9), LONGEST, Length.ofFeet(6))
                        .findings())
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.code()).isEqualTo("bay-short");
                    assertThat(finding.message())
                            .isEqualTo("2 bays are 4' 6\", under the minimum of 6' 0\"; 1 would be 9' 0\", over the"
                                    + " maximum of 8' 0\"");
                });
        assertThat(PostSpacing.equalBays(Length.ofFeet(3), LONGEST, SHORTEST)
                        .findings()
                        .get(0)
                        .remedy())
                .isEqualTo("lengthen the stretch by moving an end post, or accept other limits");
        assertThat(PostSpacing.equalBays(Length.ofFeet(3), LONGEST, SHORTEST).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .isEqualTo("1 bay of 3' 0\", under the minimum of 4' 0\"; the stretch itself is no longer than"
                                + " that"));
        // Exactly at the minimum, and a nanometre of the whole stretch under it.
        assertThat(PostSpacing.equalBays(Length.ofFeet(9), LONGEST, Length.ofFeet(4.5))
                        .findings())
                .isEmpty();
        assertThat(PostSpacing.equalBays(Length.ofFeet(9).minus(Length.ofNanometres(1)), LONGEST, Length.ofFeet(4.5))
                        .findings())
                .hasSize(1);
    }

    @Test
    void theWorksheetEndsWithTheSpacing() {
        PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(45), LONGEST, SHORTEST);

        assertThat(spacing.worksheet().result()).isEqualTo(spacing.spacing());
        assertThat(spacing.worksheet().toText())
                .contains("bays = length / maximum spacing, rounded up = 45 ft / 8 ft = 6")
                .contains("spacing = length / bays = 45 ft / 6 = 7' 6\"");
    }

    @Test
    void equalSpacingsAreEqual() {
        PostSpacing spacing = PostSpacing.equalBays(Length.ofFeet(45), LONGEST, SHORTEST);

        assertThat(spacing)
                .isEqualTo(PostSpacing.equalBays(Length.ofInches(540), LONGEST, SHORTEST))
                .hasSameHashCodeAs(PostSpacing.equalBays(Length.ofInches(540), LONGEST, SHORTEST))
                .isNotEqualTo(PostSpacing.equalBays(Length.ofFeet(45), LONGEST, LONGEST));
        assertThatThrownBy(() -> spacing.stations().set(0, LONGEST)).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void badInputIsRefusedWithTheWayOut() {
        assertRefused(
                () -> PostSpacing.equalBays(Length.ZERO, LONGEST, SHORTEST), "length was 0 in", "over 0", "leave out");
        assertRefused(
                () -> PostSpacing.equalBays(LONGEST, Length.ofFeet(-8), SHORTEST),
                "maximumSpacing was -8 ft",
                "over 0");
        assertRefused(
                () -> PostSpacing.equalBays(Length.ofFeet(50), SHORTEST, LONGEST),
                "minimumSpacing was 8 ft",
                "from 0 to the maximumSpacing of 4 ft",
                "swapped");
        assertRefused(
                () -> PostSpacing.equalBays(Length.ofFeet(50), LONGEST, Length.ofFeet(-1)), "minimumSpacing was -1 ft");
        assertThat(PostSpacing.equalBays(Length.ofFeet(8e7), LONGEST, Length.ZERO)
                        .bayCount())
                .isEqualTo(10_000_000);
        assertRefused(
                () -> PostSpacing.equalBays(Length.ofFeet(1e8), Length.ofFeet(8), Length.ZERO),
                "length was 100000000 ft",
                "over 10,000,000 bays",
                "check the units");
    }

    private static void assertRefused(ThrowingCallable call, String... parts) {
        assertThatIllegalArgumentException()
                .isThrownBy(call)
                .satisfies(refusal -> assertThat(refusal.getMessage()).contains(parts));
    }
}
