package org.fencecore.stakeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.PostKind;
import org.fencecore.Run;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

class StakeSheetTest {

    private static final Length HALF = Length.ofInches(1.75);

    private static FencePlan side(double... shots) {
        return FencePlanner.plan(
                Site.on(Plans.rectangle(50, 40))
                        .fenceOn(1)
                        .ground(1, Plans.shots(shots))
                        .build(),
                FenceStyle.builder().build());
    }

    /** By hand: 49 ft of string, posts 1 3/4 in inside, seven bays of 584.5 / 7 = 83.5 in between them. */
    @Test
    void aLevelSideWorkedByHand() {
        List<Stake> stakes = StakeSheet.of(side(0, 100, 50, 100)).stakes();

        assertThat(stakes).hasSize(8);
        for (int i = 0; i < 8; i++) {
            Stake stake = stakes.get(i);
            assertThat(stake.post().number()).isEqualTo(i + 1);
            assertThat(stake.post().kind()).isEqualTo(i == 0 || i == 7 ? PostKind.END : PostKind.LINE);
            assertThat(stake.fromStart()).isEqualTo(Length.ofInches(1.75 + 83.5 * i));
            assertThat(stake.fromEnd()).isEqualTo(Length.ofInches(1.75 + 83.5 * (7 - i)));
            assertThat(stake.fromStartOnGround()).isEqualTo(stake.fromStart());
            assertThat(stake.fromEndOnGround()).isEqualTo(stake.fromEnd());
            assertThat(stake.offset()).isEqualTo(HALF);
            assertThat(stake.string()).isEqualTo(Length.ofFeet(101));
            assertThat(stake.drop()).isEqualTo(Length.ofFeet(1));
            assertThat(stake.cut()).isEqualTo(Length.ZERO);
        }
    }

    /** By hand, on 10 %: 584.5 in level are 584.5 x sqrt(1.01) = 587.4153 in along the ground and 58.45 in up. */
    @Test
    void aSlopingSideWorkedByHand() {
        FencePlan plan = side(0, 100, 50, 105);
        List<Stake> stakes = StakeSheet.of(plan).stakes();
        Stake first = stakes.get(0);
        Stake last = stakes.get(7);

        assertThat(first.drop().inches()).isCloseTo(70.45, within(1e-6));
        assertThat(first.cut().inches()).isCloseTo(-58.45, within(1e-6)); // a fill
        assertThat(last.drop()).isEqualTo(Length.ofFeet(1));
        assertThat(last.fromStart()).isEqualTo(Length.ofFeetAndInches(48, 10.25));
        assertThat(last.fromStartOnGround().inches()).isCloseTo(589.1653, within(1e-4));
        assertThat(last.fromEnd()).isEqualTo(HALF);
        assertThat(first.fromEndOnGround()).isEqualTo(last.fromStartOnGround());
        // Of seven bays the third post has gone two, and five are left: 1.75 + 83.5 n x sqrt(1.01).
        assertThat(stakes.get(2).fromStartOnGround().inches()).isCloseTo(169.5829, within(1e-4));
        assertThat(stakes.get(2).fromEndOnGround().inches()).isCloseTo(421.3324, within(1e-4));

        StakeSheet along = StakeSheet.of(plan, StringHeight.alongGround(Length.ofInches(18)));
        assertThat(along.stakes()).allSatisfy(stake -> {
            assertThat(stake.drop().inches()).isCloseTo(18, within(1e-6));
            assertThat(stake.cut().inches()).isCloseTo(0, within(1e-6));
        });
        assertThat(StakeSheet.of(plan).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("tape-on-slope");
            assertThat(finding.message())
                    .isEqualTo("a tape laid on the ground reads 2 15/16\" more than a level one over the whole run");
        });
    }

    /** Ground that rises 2 ft to the middle: a string a foot over its ends would be a foot in it. */
    @Test
    void aHumpReachesTheString() {
        StakeSheet sheet = StakeSheet.of(side(0, 100, 25, 102, 50, 100));
        assertThat(sheet.findings()).extracting("code").containsExactly("string-in-ground", "tape-on-slope");
        // Its ends lie 7 3/4 in up the slope of 8 %, 0.62 in over 100 ft: 24 - 12.62 = 11.38 in, and 1 ft more is
        // clear.
        assertThat(sheet.findings().get(0).message())
                .isEqualTo("the ground reaches 11 7/16\" over the string 24.50 ft from its start");
        assertThat(sheet.findings().get(0).remedy()).startsWith("tie the string 1' 11 7/16\" higher");
        assertThat(StakeSheet.of(side(0, 100, 25, 102, 50, 100), StringHeight.level(Length.ofFeet(3)))
                        .findings())
                .extracting("code")
                .containsExactly("tape-on-slope");
    }

    @Test
    void aCornerPostHasAStakeOnBothRuns() {
        Site site = Site.on(Plans.rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, Plans.shots(0, 100, 50, 101))
                .ground(2, Plans.shots(0, 101, 40, 103))
                .build();
        FencePlan plan = FencePlanner.plan(site, FenceStyle.builder().build());
        StakeSheet sheet = StakeSheet.of(plan);
        Run first = plan.runs().get(0);
        Run second = plan.runs().get(1);

        assertThat(sheet.stakes()).hasSize(plan.posts().size() + 1);
        List<Stake> one = sheet.stakes(first);
        List<Stake> two = sheet.stakes(second);
        assertThat(one.get(one.size() - 1).post()).isEqualTo(two.get(0).post());
        assertThat(one.get(one.size() - 1).fromEnd()).isEqualTo(HALF);
        assertThat(two.get(0).fromStart()).isEqualTo(HALF);
        assertThat(two.get(0)).hasToString("stake of " + two.get(0).post() + " on side 2");
        for (Stake stake : sheet.stakes()) {
            assertThat(stake.fromStart().plus(stake.fromEnd()))
                    .isEqualTo(stake.run().string().length());
            assertThat(stake.drop().plus(stake.ground())).isEqualTo(stake.string());
        }
    }

    @Test
    void theWorksheetsEndWithTheCut() {
        StakeSheet sheet = StakeSheet.of(side(0, 100, 50, 105));
        List<Worksheet> worksheets = sheet.worksheets();
        assertThat(worksheets).hasSize(8);
        for (int i = 0; i < 8; i++) {
            assertThat(worksheets.get(i).result())
                    .isEqualTo(sheet.stakes().get(i).cut());
        }
        assertThat(worksheets.get(1).title()).isEqualTo("side 1, post 2: Stake");
        assertThat(worksheets.get(1).toText())
                .contains("from the end = string - from the start = 49 ft - 7.1042 ft = 41' 10 3/4\"");
    }

    @Test
    void badInputIsRefused() {
        FencePlan plan = side(0, 100, 50, 100);
        Run other = side(0, 100, 50, 100).runs().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StakeSheet.of(plan).stakes(other))
                .withMessageContaining("not one of this plan");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StringHeight.level(Length.ofInches(-1)))
                .withMessageContaining("above was -1 in");
    }
}
