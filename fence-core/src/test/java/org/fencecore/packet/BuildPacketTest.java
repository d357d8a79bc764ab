package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.tape.TapeFormat;
import org.junit.jupiter.api.Test;

class BuildPacketTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    private static FencePlan withGate() {
        Site site = Plans.levelSide().gate(Plans.gate("walk gate", 1, 12, 47.5)).build();
        return FencePlanner.plan(site, USUAL);
    }

    /** The figures of the hand-worked side of {@code FencePlannerTest}, as the crew reads them. */
    @Test
    void theSheetSaysWhatWasWorkedOutByHand() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        String sheet = BuildSheet.of(plan, Takeoff.of(plan)).toText();
        assertThat(sheet)
                .contains("48' 8 1/2\" on 1 side, 8 posts, 7 bays, 0 gates, 131 boards")
                .containsPattern(
                        "1 +1-2 +6' 11 1/2\" +0\" +0 % +3 +7' 1 1/4\" +0 deg +9 1/2\" \\| 3' 3 3/4\" \\| 5' 10\"")
                .containsPattern("post 1 to post 8 +1 3/4\" before +49' 0\" +66 +3 7/16\" +none +65");
    }

    @Test
    void theSheetGivesTheGateAsItIsCut() {
        FencePlan plan = withGate();
        assertThat(BuildSheet.of(plan, Takeoff.of(plan)).toText())
                .contains("walk gate, post 3 to post 4, hinges on post 4, left seen from outside")
                .contains(
                        "opening 3' 11 1/2\" between posts, leaf 3' 10 3/4\" wide (gaps 1/2\" at the hinges, 1/4\" at")
                .contains("5' 9 1/2\" point to point");
    }

    @Test
    void theSheetForAMetricTape() {
        FencePlan plan = withGate();
        assertThat(BuildSheet.of(plan, Takeoff.of(plan))
                        .withTape(TapeFormat.millimetres(0))
                        .toText())
                .contains("leaf 1187 mm wide");
    }

    /** What a crew must be told every time, and what must never be claimed. */
    @Test
    void cautionsComeFirstAndNothingIsPromised() {
        FencePlan plan = withGate();
        String sheet = BuildSheet.of(plan, Takeoff.of(plan)).toText();
        assertThat(sheet.indexOf("811")).isPositive().isLessThan(sheet.indexOf("2. FINDINGS"));
        assertThat(sheet)
                .contains("silica")
                .contains("Treated wood")
                .contains("licensed engineer")
                .contains("wind");
        for (String text : BuildPacket.of(plan).files().values()) {
            assertThat(text.toLowerCase(Locale.ROOT))
                    .doesNotContainPattern("\\bsafe\\b")
                    .doesNotContain("code compliant");
        }
    }

    @Test
    void everyPostRailAndBoardIsInItsTable() {
        FencePlan plan = withGate();
        var files = BuildPacket.of(plan).files();
        assertThat(files.keySet())
                .containsExactly(
                        "build-sheet.txt",
                        "strings.csv",
                        "batter-boards.csv",
                        "stakes.csv",
                        "posts.csv",
                        "rails.csv",
                        "boards.csv",
                        "to-buy.csv",
                        "plan.svg",
                        "side-1.svg",
                        "gate-1.svg",
                        "worksheets.txt");
        assertThat(lines(files, "stakes.csv")).isEqualTo(1 + plan.posts().size());
        assertThat(lines(files, "batter-boards.csv")).isEqualTo(1 + 2);
        assertThat(lines(files, "posts.csv")).isEqualTo(1 + plan.posts().size());
        assertThat(lines(files, "rails.csv")).isEqualTo(1 + plan.bays().size());
        long inTwo = plan.stretches().stream()
                .flatMap(stretch -> stretch.boardsAtPosts().stream())
                .filter(board -> board.before().isPositive() && board.after().isPositive())
                .count();
        assertThat(lines(files, "boards.csv")).isEqualTo(1 + plan.boards().size() + inTwo);
    }

    /** Board 10 of the hand-worked side is ripped to the 3.6346 in after post 2, whose edge is 87 in from the beginning. */
    @Test
    void aStripBesideAPostHasItsOwnMark() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        assertThat(BuildPacket.of(plan).files())
                .extractingByKey("boards.csv", InstanceOfAssertFactories.STRING)
                .contains(
                        "post 1 to post 8,\"1 3/4\"\" before the middle of post 1\",inside,10,\"7' 3\"\"\",\"3 5/8\"\"\","
                                + "\"6' 0\"\"\",\"ripped, begins against post 2\",square ends\n");
    }

    private static long lines(Map<String, String> files, String name) {
        return files.getOrDefault(name, "").lines().count();
    }

    @Test
    void aPlanThatCannotBeBuiltSaysSoOnTop() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        FencePlan plan = FencePlanner.plan(Site.on(open).fenceOn(1).build(), USUAL);
        var files = BuildPacket.of(plan).files();
        assertThat(files.keySet()).containsExactly("build-sheet.txt", "worksheets.txt");
        assertThat(files)
                .extractingByKey("build-sheet.txt", InstanceOfAssertFactories.STRING)
                .contains("*** THIS FENCE CANNOT BE BUILT AS DESCRIBED")
                .contains("BLOCKER  lot: the courses do not close");
    }

    @Test
    void samePlanSameBytes() {
        assertThat(BuildPacket.of(withGate()).files())
                .isEqualTo(BuildPacket.of(withGate()).files());
    }
}
