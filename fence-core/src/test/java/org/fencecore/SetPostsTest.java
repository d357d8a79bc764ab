package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.levelSide;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

/** Plans made again to posts as they stand: one level side of 50 ft with 8 posts 83 1/2 in apart, worked on paper. */
class SetPostsTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();
    private static final FencePlan PLANNED = FencePlanner.plan(levelSide().build(), USUAL);
    private static final Run RUN = PLANNED.runs().get(0);

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }

    private static SetPost set(int number, double alongInches, double outwardInches) {
        return SetPost.of(number, RUN.pointAt(in(alongInches), in(outwardInches)));
    }

    @Test
    void postsSetWhereTheyWerePlannedChangeNothingThatIsBuilt() {
        FencePlan again = PLANNED.withSetPosts(PLANNED.posts().stream()
                .map(post -> SetPost.of(post.number(), post.centre()))
                .toList());
        assertThat(again.findings()).isEqualTo(PLANNED.findings());
        assertThat(again.boards()).isEqualTo(PLANNED.boards());
        assertThat(again.stretches()
                        .get(0)
                        .railPieces()
                        .orElseThrow()
                        .worksheet()
                        .toText())
                .isEqualTo(PLANNED.stretches()
                        .get(0)
                        .railPieces()
                        .orElseThrow()
                        .worksheet()
                        .toText());
        assertThat(again.posts()).allMatch(Post::isSet);
        assertThat(PLANNED.posts()).noneMatch(Post::isSet);
    }

    /** Post 3 was planned at 167 in and stands at 168; its bays are 84 1/2 and 82 1/2 in, and so long are their rails. */
    @Test
    void raisesTheRailsToWhereAPostStands() {
        FencePlan built = PLANNED.withSetPosts(List.of(set(3, 168, 0.25)));
        assertThat(built.bays().subList(1, 3)).extracting(Bay::spacing).containsExactly(in(84.5), in(82.5));
        assertThat(built.stretches().get(0).railPieces().orElseThrow().pieces()).anySatisfy(piece -> {
            assertThat(piece.fromPost()).isEqualTo(1);
            assertThat(piece.length()).isEqualTo(in(84.5 + (piece.bays() == 2 ? 82.5 : 0)));
        });
        assertThat(built.boardCount()).isEqualTo(PLANNED.boardCount());
        assertThat(built.posts().get(2).centre()).isEqualTo(RUN.pointAt(in(168), in(0.25)));
        assertThat(built.stretches().get(0).spacing()).isEmpty();
        assertThat(built.findings()).extracting(Finding::code).doesNotContain("post-out-of-line", "bay-too-wide");
    }

    /** The last post stands 2 in on, so the posts are 586 1/2 in apart and the boards cover 590 in. */
    @Test
    void fitsTheBoardsBetweenTheEndsAsTheyStand() {
        FencePlan built = PLANNED.withSetPosts(List.of(set(8, 586.5, 0)));
        assertThat(built.runs().get(0).length()).isEqualTo(in(586.5));
        assertThat(built.stretches().get(0).boarded()).isEqualTo(Interval.of(in(-1.75), in(588.25)));
        assertThat(built.stretches().get(0).boards().orElseThrow().clearLength())
                .isEqualTo(in(590));
    }

    @Test
    void tellsWhatTheCrewHasToKnow() {
        FencePlan built = PLANNED.withSetPosts(
                List.of(set(3, 180, 0), set(5, 334, -0.75), set(6, 417.5, 0).withExposed(in(70))));
        assertThat(built.findings())
                .extracting(finding -> finding.code() + " at " + finding.place())
                .contains(
                        "bay-too-wide at side 1, post 2 to post 3",
                        "post-out-of-line at post 5",
                        "set-post-too-short at post 6");
        assertThat(message(built, "bay-too-wide")).contains("8' 0 1/2\"").contains("8' 0\"");
        assertThat(message(built, "post-out-of-line")).contains("3/4\" inside");
        assertThat(message(built, "set-post-too-short")).contains("5' 10\"").contains("6' 2\"");
    }

    @Test
    void leavesAPostWhereItWasPlannedThatWasMeasuredAtAnother() {
        FencePlan built = PLANNED.withSetPosts(List.of(set(3, 252, 0)));
        assertThat(built.isBuildable()).isFalse();
        assertThat(message(built, "set-post-misplaced")).contains("7' 1\"");
        assertThat(built.bays()).extracting(Bay::spacing).containsOnly(in(83.5));
    }

    /** A gate post half an inch off makes the opening half an inch wider, and the leaf with it. */
    @Test
    void makesTheGateForTheOpeningThatIsThere() {
        FencePlan planned = FencePlanner.plan(
                levelSide().gate(gate("garden gate", 1, 20, 48)).build(), USUAL);
        GateBay before = planned.gates().get(0);
        Run run = planned.runs().get(0);
        SetPost latch = SetPost.of(
                before.to().number(), run.pointAt(run.station(before.to()).plus(in(0.5)), Length.ZERO));
        FencePlan built = planned.withSetPosts(List.of(latch));
        GateBay after = built.gates().get(0);
        assertThat(after.opening().length()).isEqualTo(in(48.5));
        assertThat(after.leaf().width()).isEqualTo(before.leaf().width().plus(in(0.5)));
        assertThat(message(built, "gate-remeasured")).contains("4' 0 1/2\"").contains("4' 0\"");
    }

    /** Two sides of 50 and 40 ft: the corner post 1 in further north makes the first run longer and turns the second. */
    @Test
    void turnsBothRunsOfACornerPost() {
        Site site = Site.on(rectangle(50, 40))
                .fenceOn(1, 2)
                .ground(1, shots(0, 0, 50, 0))
                .ground(2, shots(0, 0, 40, 0))
                .build();
        FencePlan planned = FencePlanner.plan(site, USUAL);
        Run first = planned.runs().get(0);
        Post corner = first.posts().get(first.posts().size() - 1);
        FencePlan built = planned.withSetPosts(List.of(
                SetPost.of(corner.number(), first.pointAt(first.length().plus(in(1)), Length.ZERO))));
        assertThat(built.runs().get(0).length()).isEqualTo(first.length().plus(in(1)));
        Run second = built.runs().get(1);
        assertThat(second.posts().get(0))
                .isEqualTo(built.runs().get(0).posts().get(first.posts().size() - 1));
        assertThat(second.postLine().start())
                .isEqualTo(first.pointAt(first.length().plus(in(1)), Length.ZERO));
        // The string of the second run begins where it meets the first's, half a post outside both post lines.
        assertThat(built.runs().get(0).string().end()).isEqualTo(second.string().start());
        assertThat(second.postLine().sideOf(second.string().start())).contains(second.outside());
        assertThat(built.posts())
                .extracting(Post::number)
                .isEqualTo(planned.posts().stream().map(Post::number).toList());
    }

    /** The last post stands 4 in inside: a post not yet set goes on the new string, 2 in inside halfway, and not beside it. */
    @Test
    void stringsPostsStillToBeSetAnew() {
        FencePlan built = PLANNED.withSetPosts(List.of(set(8, 584.5, -4), set(3, 167, 0)));
        assertThat(built.findings())
                .filteredOn(finding -> finding.code().equals("post-out-of-line"))
                .extracting(Finding::place)
                .containsExactly("post 3");
        Run run = built.runs().get(0);
        for (Post post : built.posts()) {
            double off = run.postLine().distanceTo(post.centre()).inches();
            // Of the 4 in, 167 / 584 1/2 fall to the third post, which stands on the old line.
            assertThat(off).isCloseTo(post.number() == 3 ? 1.143 : 0, offset(1e-3));
        }
        assertThat(RUN.postLine().offsetOf(built.posts().get(4).centre()).abs().inches())
                .isCloseTo(4 * 334 / 584.5, offset(1e-3));
    }

    /** The line turns by 4 in over its length, which narrows no opening by what a tape can show. */
    @Test
    void doesNotRemeasureAGateWhosePostsAreStillToBeSet() {
        FencePlan planned = FencePlanner.plan(
                levelSide().gate(gate("garden gate", 1, 20, 48)).build(), USUAL);
        Run run = planned.runs().get(0);
        int last = run.posts().get(run.posts().size() - 1).number();
        FencePlan built = planned.withSetPosts(List.of(SetPost.of(last, run.pointAt(run.length(), in(-4)))));
        assertThat(built.findings()).extracting(Finding::code).doesNotContain("gate-remeasured", "post-out-of-line");
    }

    @Test
    void keepsTheFootingThatIsInTheGroundAndSaysWhenItIsTooLittle() {
        FencePlan planned =
                FencePlanner.plan(levelSide().windPressure(Pressure.ofPsf(15)).build(), USUAL);
        FencePlan built = planned.withSetPosts(
                List.of(SetPost.of(2, planned.posts().get(1).centre()), set(3, 190, 0)));
        assertThat(built.posts().get(1).footing())
                .isEqualTo(planned.posts().get(1).footing());
        assertThat(built.findings())
                .filteredOn(finding -> finding.code().equals("set-footing-shallow"))
                .extracting(Finding::place)
                .contains("post 2");
    }

    @Test
    void remembersPostsSetBefore() {
        FencePlan twice = PLANNED.withSetPosts(List.of(set(3, 168, 0))).withSetPosts(List.of(set(4, 251.5, 0)));
        assertThat(twice.bays().subList(1, 4)).extracting(Bay::spacing).containsExactly(in(84.5), in(83.5), in(82.5));
    }

    @Test
    void refusesPostsThatAreNotOnThePlan() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLANNED.withSetPosts(List.of(set(9, 0, 0))))
                .withMessageContaining("number of a set post was 9")
                .withMessageContaining("posts 1 to 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PLANNED.withSetPosts(List.of(set(3, 167, 0), set(3, 168, 0))))
                .withMessageContaining("post 3 was given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set(3, 167, 0).withExposed(in(0)))
                .withMessageContaining("over 0");
    }

    private static String message(FencePlan plan, String code) {
        return plan.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::message)
                .findFirst()
                .orElse("");
    }
}
