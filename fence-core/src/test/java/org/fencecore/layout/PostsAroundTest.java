package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.fencecore.EqualValues;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** Posts by every rule, and around what is in their way; the figures are worked by hand. */
class PostsAroundTest {

    private static final PostSpacingSpec USUAL =
            PostSpacingSpec.builder().minimum(Length.ofFeet(4)).build();

    /** As a caller writes it. */
    @Test
    void aPipeIsInTheWayOfAPost() {
        PostSpacing moved = PostSpacing.fit(
                Length.ofFeet(50),
                PostSpacingSpec.builder().minimum(Length.ofFeet(4)).build(),
                List.of(Interval.of(Length.ofFeet(20), Length.ofFeet(23))));

        // At the near edge 20^2 / 3 + 30^2 / 4 = 358.3, at the far one 23^2 / 3 + 27^2 / 4 = 358.6.
        assertThat(moved.stations().get(3)).isEqualTo(Length.ofFeet(20));
        assertThat(moved.longestBay()).isEqualTo(Length.ofFeetAndInches(7, 6));
        assertThat(moved.shortestBay()).isEqualTo(Length.ofFeetAndInches(6, 8));
        assertThat(moved.bayCount()).isEqualTo(7);
        assertThat(moved.isEven()).isFalse();
        assertThat(moved).hasToString("7 bays of 6' 8\" to 7' 6\" in 50' 0\"");
        assertThat(moved.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.code()).isEqualTo("posts-moved");
            assertThat(finding.message())
                    .isEqualTo("a post would have stood from 20.00 ft to 23.00 ft, where none may; bays are now from"
                            + " 6' 8\" to 7' 6\"");
        });
        assertThat(moved.worksheet().result()).isEqualTo(moved.longestBay());
        assertThat(moved.worksheet().toText())
                .contains("no post = from 20.00 ft to 23.00 ft")
                .contains("bays 1 to 3 = (to - from) / bays = (20 ft - 0 ft) / 3 = 6' 8\"")
                .contains("bays 4 to 7 = (to - from) / bays = (50 ft - 20 ft) / 4 = 7' 6\"");
    }

    @Test
    void whatStandsBetweenPostsMovesNothing() {
        PostSpacing free = PostSpacing.fit(Length.ofFeet(50), USUAL);
        PostSpacing beside = PostSpacing.fit(Length.ofFeet(50), USUAL, feet(15, 21, 22, 28, 60, 70));

        assertThat(beside.stations()).isEqualTo(free.stations());
        assertThat(beside.findings()).isEmpty();
        // 48 ft in 6 bays has posts at 16 and 24 ft: the very edges will do, and a stretch of no length forbids
        // nothing.
        assertThat(PostSpacing.fit(Length.ofFeet(48), USUAL, feet(16, 24, 32, 32))
                        .findings())
                .isEmpty();
    }

    /** 24 ft takes three bays of 8 ft; with both posts kept out there must be four. */
    @Test
    void fullBaysThatCannotMoveTakeAnotherPost() {
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(24), USUAL, feet(7.5, 8.5));

        assertThat(spacing.stations()).containsExactly(stations(0, 6, 12, 18, 24));
        assertThat(spacing.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).endsWith("6' 0\", with 1 post more"));
    }

    @Test
    void aWideStretchIsSpannedAndNotDugInto() {
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(40), USUAL, feet(12, 17, 16, 22));

        // 12 ft take two bays, 18 ft three.
        assertThat(spacing.stations()).containsExactly(stations(0, 6, 12, 22, 28, 34, 40));
        assertThat(codes(spacing)).containsExactly("forbidden-too-wide", "posts-moved");
        assertThat(spacing.findings().get(0)).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.BLOCKER);
            assertThat(finding.message())
                    .isEqualTo(
                            "no post may stand from 12.00 ft to 22.00 ft: the bay across is 10' 0\" or more, over the"
                                    + " maximum of 8' 0\"");
        });
    }

    /** In 16 ft two bays of 8 ft would be the only ones not under 6 ft. */
    @Test
    void theMinimumGivesWayAndTheCulpritIsNamed() {
        PostSpacingSpec atLeast6 =
                PostSpacingSpec.builder().minimum(Length.ofFeet(6)).build();
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(16), atLeast6, feet(1, 2, 7, 8.5));

        // From 8.5 ft on there are 7.5 ft, from 7 ft on 9 ft: three bays in any case, the most even at thirds.
        assertThat(spacing.bayCount()).isEqualTo(3);
        assertThat(spacing.longestBay()).isEqualTo(Length.ofFeet(16).dividedBy(3));
        assertThat(codes(spacing)).containsExactly("bay-short", "posts-moved");
        assertThat(spacing.findings().get(0).remedy())
                .isEqualTo("move an end post, accept other limits, or narrow what keeps the posts out");
        assertThat(spacing.findings().get(0).message())
                .isEqualTo("3 bays are 5' 4\", under the minimum of 6' 0\"; it could be kept if posts were allowed from"
                        + " 7.00 ft to 8.50 ft");
        // It is named as well if it is the first.
        assertThat(PostSpacing.fit(Length.ofFeet(16), atLeast6, feet(7, 8.5))
                        .findings()
                        .get(0)
                        .message())
                .endsWith("it could be kept if posts were allowed from 7.00 ft to 8.50 ft");
        // Those that overlap are one.
        PostSpacing both = PostSpacing.fit(Length.ofFeet(15), atLeast6, feet(6, 7.5, 7.5, 9, 2, 3, 7, 8));
        assertThat(both.findings().get(0).message()).endsWith("allowed from 6.00 ft to 9.00 ft");
        // Those that touch leave the edge they share.
        PostSpacing between = PostSpacing.fit(Length.ofFeet(13), atLeast6, feet(5, 6.5, 6.5, 8));
        assertThat(between.findings()).isEmpty();
    }

    @Test
    void aGivenPostInAForbiddenStretchIsTold() {
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(24), USUAL, feet(-1, 1, 23, 24));
        assertThat(codes(spacing)).containsExactly("end-post-forbidden");
        assertThat(spacing.findings().get(0).message())
                .isEqualTo("the first post stands where no post may, from 0.00 ft to 1.00 ft");
        assertThat(PostSpacing.fit(Length.ofFeet(5), USUAL, feet(-1, 6))
                        .findings()
                        .get(0)
                        .message())
                .startsWith("the first and the last post stand where");
    }

    /** 44 ft is five bays of 8 ft and 4 ft over; 42 ft leaves 2 ft, under the minimum. */
    @Test
    void whatRemainsGoesWhereItIsAsked() {
        assertThat(bays(44, BayRule.EQUAL)).containsOnly(Length.ofFeetAndInches(7, 4));
        assertThat(bays(44, BayRule.REMAINDER_AT_END)).containsExactly(stations(8, 8, 8, 8, 8, 4));
        assertThat(bays(44, BayRule.REMAINDER_AT_START)).containsExactly(stations(4, 8, 8, 8, 8, 8));
        assertThat(bays(44, BayRule.REMAINDER_IN_MIDDLE)).containsExactly(stations(8, 8, 6, 6, 8, 8));
        assertThat(bays(36, BayRule.REMAINDER_IN_MIDDLE)).containsExactly(stations(8, 8, 4, 8, 8));
        assertThat(bays(44, BayRule.REMAINDER_SPLIT)).containsExactly(stations(6, 8, 8, 8, 8, 6));

        assertThat(bays(42, BayRule.REMAINDER_AT_END)).containsExactly(stations(8, 8, 8, 8, 5, 5));
        assertThat(bays(42, BayRule.REMAINDER_AT_START)).containsExactly(stations(5, 5, 8, 8, 8, 8));
        assertThat(bays(40, BayRule.REMAINDER_SPLIT)).containsOnly(Length.ofFeet(8));
        assertThat(bays(5, BayRule.REMAINDER_SPLIT)).containsExactly(stations(5));
        // Two ft over one full bay: the two share it whatever the rule.
        for (BayRule rule : BayRule.values()) {
            assertThat(bays(10, rule)).as("%s", rule).containsExactly(stations(5, 5));
        }
    }

    /** With a minimum of 7 ft and 8 ft full bays, 1 ft over takes six of them to share. */
    @Test
    void asManyFullBaysShareAsTheMinimumTakes() {
        PostSpacingSpec atLeast7 = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(7))
                .rule(BayRule.REMAINDER_AT_END)
                .build();
        assertThat(PostSpacing.fit(Length.ofFeet(65), atLeast7).bays())
                .containsExactly(stations(8, 8, 7, 7, 7, 7, 7, 7, 7));
        // Five full bays are too few to share 1 ft.
        PostSpacing tooFew = PostSpacing.fit(Length.ofFeet(41), atLeast7);
        assertThat(tooFew.isEven()).isTrue();
        assertThat(codes(tooFew)).containsExactly("bay-short");
    }

    @Test
    void fullBaysGoOnBesideAForbiddenStretch() {
        PostSpacingSpec full = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(3))
                .rule(BayRule.REMAINDER_AT_END)
                .build();
        // 8, 16, 24, 32, 40 and 4 over; 24 is forbidden. Up to 23 ft: 8, 8, 7; the 21 ft beyond: 8, 8, 5.
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(44), full, feet(23, 25));
        assertThat(spacing.bays()).containsExactly(stations(8, 8, 7, 8, 8, 5));
        PostSpacingSpec mirrored = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(3))
                .rule(BayRule.REMAINDER_AT_START)
                .build();
        assertThat(PostSpacing.fit(Length.ofFeet(44), mirrored, feet(19, 21)).bays())
                .containsExactly(stations(5, 8, 8, 7, 8, 8));
    }

    /** 44 ft is five bays of 8 ft, with posts at 32 and 40, and 4 ft over. */
    @Test
    void aPostBetweenFullBaysAndTheOthersMayStandAtTheVeryEdge() {
        PostSpacingSpec atEnd = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(4))
                .rule(BayRule.REMAINDER_AT_END)
                .build();
        assertThat(PostSpacing.fit(Length.ofFeet(44), atEnd, feet(38, 40)).findings())
                .isEmpty();
        assertThat(PostSpacing.fit(Length.ofFeet(44), atEnd, feet(40, 42)).findings())
                .isEmpty();
        assertThat(codes(PostSpacing.fit(Length.ofFeet(44), atEnd, feet(38, 40.1))))
                .containsExactly("posts-moved");
    }

    /**
     * 42 3/4 ft: five full bays would leave 2 3/4, under 5 ft, so that four stay and 10 3/4 are shared, with a post at 37
     * 3/8. Moved to 38 1/2 it would leave a last bay of 4 1/4; up to 36 1/2 it is three full bays and two of 6 1/4, and one
     * of 6 1/4 is left.
     */
    @Test
    void theMinimumIsKeptRatherThanMoreFullBays() {
        PostSpacingSpec atLeast5 = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(5))
                .rule(BayRule.REMAINDER_AT_END)
                .build();
        assertThat(PostSpacing.fit(Length.ofFeet(42.75), atLeast5, feet(36.5, 38.5))
                        .bays())
                .containsExactly(stations(8, 8, 8, 6.25, 6.25, 6.25));
    }

    /** With the minimum as long as a full bay none can give, so that all bays are equal and under it. */
    @Test
    void fullBaysThatMayNotGiveAreAllLeftEqual() {
        PostSpacingSpec all8 = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(8))
                .rule(BayRule.REMAINDER_AT_END)
                .build();
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(44), all8);
        assertThat(spacing.bays()).containsOnly(Length.ofFeetAndInches(7, 4)).hasSize(6);
        assertThat(codes(spacing)).containsExactly("bay-short");
    }

    /** 53 ft with a minimum of 7: 5 ft over takes two full bays to share, and one more so that both ends get as many. */
    @Test
    void aRemainderSplitBetweenTheEndsGivesEachAsManyBays() {
        PostSpacingSpec split = PostSpacingSpec.builder()
                .minimum(Length.ofFeet(7))
                .rule(BayRule.REMAINDER_SPLIT)
                .build();
        assertThat(PostSpacing.fit(Length.ofFeet(53), split).bays())
                .containsExactly(stations(7.25, 7.25, 8, 8, 8, 7.25, 7.25));
    }

    /**
     * Three bays in 24 ft, kept out from 7 1/2 to 9 and from 15 to 16 1/2: 7 1/2, 9, 7 1/2 have squares of 193 1/2 together,
     * and so have 7 1/2, 7 1/2, 9; of the two the one that is the same from both ends is taken.
     */
    @Test
    void aStretchThatIsTheSameFromBothEndsHasPostsThatAreSo() {
        PostSpacingSpec to9 =
                PostSpacingSpec.builder().maximum(Length.ofFeet(9)).build();
        assertThat(PostSpacing.fit(Length.ofFeet(24), to9, feet(7.5, 9, 15, 16.5))
                        .bays())
                .containsExactly(stations(7.5, 9, 7.5));
    }

    @Test
    void theStretchThatMovedAPostIsNamed() {
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(50), USUAL, feet(1, 2, 21, 22));
        assertThat(spacing.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .startsWith("a post would have stood from 21.00 ft to 22.00 ft, where none may"));
        assertThat(spacing.worksheet().toText())
                .contains(
                        "bays if posts could stand anywhere = length / maximum spacing, rounded up = 50 ft / 8 ft = 7");
    }

    @Test
    void aBayLongerThanTheRailStockLeavesNoWasteToTell() {
        PostSpacingSpec rails =
                PostSpacingSpec.builder().railStock(Length.ofFeet(8)).build();
        PostSpacing spanned = PostSpacing.fit(Length.ofFeet(24), rails, feet(7, 17));
        assertThat(spanned.longestBay()).isEqualTo(Length.ofFeet(10));
        assertThat(spanned.railWaste()).isEmpty();
    }

    /** One nanometre over 8 ft, and the post moved by one from 4 ft. */
    @Test
    void baysThatDifferByANanometreAreEven() {
        Length hair = Length.ofNanometres(1);
        PostSpacing spacing = PostSpacing.fit(
                Length.ofFeet(8).plus(hair),
                PostSpacingSpec.builder().maximum(Length.ofFeet(5)).build(),
                List.of(Interval.of(Length.ofFeet(3.5), Length.ofFeet(4).plus(hair))));
        assertThat(spacing.bays()).containsExactly(Length.ofFeet(4).plus(hair), Length.ofFeet(4));
        assertThat(spacing.isEven()).isTrue();
    }

    @Test
    void baysThatSuitTheRailStock() {
        PostSpacingSpec.Builder sevenFeet =
                PostSpacingSpec.builder().maximum(Length.ofFeet(7)).railStock(Length.ofFeet(16));
        assertThat(sevenFeet.build().fullBay()).isEqualTo(Length.ofFeetAndInches(5, 4));
        assertThat(sevenFeet.build().minimum()).isEqualTo(Length.ofFeetAndInches(2, 8));

        PostSpacing full = PostSpacing.fit(
                Length.ofFeet(36), sevenFeet.rule(BayRule.REMAINDER_AT_END).build());
        // Two sticks span three bays each; the third carries the 4 ft that remain.
        assertThat(full.bayCount()).isEqualTo(7);
        assertThat(full.railWaste()).contains(Length.ofFeet(12));
        assertThat(full.worksheet().toText())
                .contains("full bay = rail stock / whole bays to a stick, not over the maximum"
                        + " = 16 ft / 3 = 5' 4\"");
        assertThat(PostSpacing.fit(Length.ofFeet(32), sevenFeet.build()).railWaste())
                .contains(Length.ZERO);
        // Shorter than the maximum: no bay may be longer than the stick.
        assertThat(PostSpacingSpec.builder().railStock(Length.ofFeet(6)).build().fullBay())
                .isEqualTo(Length.ofFeet(6));
        // 8 1/2 ft would leave half of every 16 ft stick; two bays to a stick are taken.
        assertThat(PostSpacingSpec.builder()
                        .maximum(Length.ofFeet(8.5))
                        .railStock(Length.ofFeet(16))
                        .build()
                        .fullBay())
                .isEqualTo(Length.ofFeet(8));
        assertThat(PostSpacing.fit(Length.ofFeet(30), USUAL).railWaste()).isEmpty();
    }

    @Test
    void equalRulesAndPlacesAreEqual() {
        PostSpacing spacing = PostSpacing.fit(Length.ofFeet(50), USUAL, feet(20, 23, 1, 2));
        assertThat(spacing)
                .isEqualTo(PostSpacing.fit(Length.ofFeet(50), USUAL, feet(1, 2, 20, 23)))
                .hasSameHashCodeAs(PostSpacing.fit(Length.ofFeet(50), USUAL, feet(1, 2, 20, 23)))
                .isNotEqualTo(PostSpacing.fit(Length.ofFeet(50), USUAL, feet(20, 23)));
        EqualValues.assertDistinct(
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL),
                () -> PostSpacing.fit(Length.ofFeet(49), USUAL),
                () -> PostSpacing.fit(
                        Length.ofFeet(50),
                        PostSpacingSpec.builder().minimum(Length.ofFeet(3)).build()),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(20, 23)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(20, 22)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(19, 23)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(-1, 1)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(0, 1)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(49, 51)),
                () -> PostSpacing.fit(Length.ofFeet(50), USUAL, feet(49, 50)));
        EqualValues.assertDistinct(
                () -> PostSpacingSpec.builder().build(),
                () -> PostSpacingSpec.builder().maximum(Length.ofFeet(7)).build(),
                () -> PostSpacingSpec.builder().minimum(Length.ofFeet(3)).build(),
                () -> PostSpacingSpec.builder().rule(BayRule.REMAINDER_SPLIT).build(),
                () -> PostSpacingSpec.builder().railStock(Length.ofFeet(16)).build());
        assertThat(USUAL).hasToString("EQUAL, bays from 4 ft to 8 ft");
    }

    @Test
    void badInputIsRefusedWithTheWayOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostSpacing.fit(
                        Length.ofFeet(50),
                        USUAL,
                        Collections.nCopies(201, feet(1, 2).get(0))))
                .withMessageContaining("201 stretches");
        assertThat(PostSpacing.fit(
                                Length.ofFeet(50),
                                USUAL,
                                Collections.nCopies(200, feet(1, 2).get(0)))
                        .findings())
                .isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostSpacing.fit(Length.ofFeet(100_000), USUAL, feet(7, 9)))
                .withMessageContaining("over 10,000 bays");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostSpacingSpec.builder()
                        .maximum(Length.ofFeet(7))
                        .minimum(Length.ofFeet(6))
                        .railStock(Length.ofFeet(16))
                        .build())
                .withMessageContaining("full bay of 5 ft 4 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PostSpacingSpec.builder().railStock(Length.ZERO))
                .withMessageContaining("railStock was 0 in");
    }

    private static List<Length> bays(double lengthFeet, BayRule rule) {
        return PostSpacing.fit(
                        Length.ofFeet(lengthFeet),
                        PostSpacingSpec.builder()
                                .minimum(Length.ofFeet(4))
                                .rule(rule)
                                .build())
                .bays();
    }

    private static List<String> codes(PostSpacing spacing) {
        return spacing.findings().stream().map(Finding::code).toList();
    }

    private static Length[] stations(double... feet) {
        return Arrays.stream(feet).mapToObj(Length::ofFeet).toArray(Length[]::new);
    }

    private static List<Interval> feet(double... pairs) {
        List<Interval> intervals = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            intervals.add(Interval.of(Length.ofFeet(pairs[i]), Length.ofFeet(pairs[i + 1])));
        }
        return intervals;
    }
}
