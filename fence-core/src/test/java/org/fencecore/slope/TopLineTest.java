package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class TopLineTest {

    private static final SlopeSpec USUAL = SlopeSpec.builder().build();
    private static final Length SIX_FEET = Length.ofFeet(6);
    private static final Length POST = Length.ofInches(3.5);

    private final SlopeFit level =
            SlopeFit.rack(TreatmentsTest.ground(0, 0, 16, 0), TreatmentsTest.feet(0, 8, 16), USUAL);
    private final SlopeFit hill =
            SlopeFit.rack(TreatmentsTest.ground(0, 0, 16, 3.2), TreatmentsTest.feet(0, 8, 16), USUAL);

    /** The example of the class: half a bay of 48 in and a rise of 6 in, so r = (2304 + 36) / 12 = 195 in. */
    @Test
    void anArchIsPartOfACircle() {
        TopLine top = TopLine.of(TopShape.arched(Length.ofInches(6)), level, SIX_FEET);

        assertThat(top.boardLengthAt(Length.ofFeet(4)).inches()).isEqualTo(78, within(1e-6));
        assertThat(top.boardLengthAt(Length.ofFeet(2)).inches())
                .isEqualTo(72 + 6 - 195 + Math.sqrt(195 * 195 - 24 * 24), within(1e-6))
                .isEqualTo(76.5174, within(0.00005));
        assertThat(top.boardLengthAt(Length.ofFeet(8)).inches()).isEqualTo(72, within(1e-6));
        assertThat(top.boardLengthAt(Length.ofFeet(-1))).isEqualTo(SIX_FEET);
        // A board over the middle reaches the crown; one beside it the line at its inner edge.
        assertThat(top.boardLength(Interval.of(Length.ofInches(45), Length.ofInches(51)))
                        .inches())
                .isEqualTo(78, within(1e-6));
        assertThat(top.boardLength(Interval.of(Length.ofInches(18), Length.ofInches(24))))
                .isEqualTo(top.boardLengthAt(Length.ofFeet(2)));
        assertThat(top.worksheet(Length.ofFeet(2)).result()).isEqualTo(top.boardLengthAt(Length.ofFeet(2)));
        assertThat(top.worksheet(Length.ofFeet(2)).toText())
                .contains("radius = (half bay^2 + rise^2) / (2 * rise) = ((48 in)^2 + (6 in)^2) / (2 * 6 in) = 195 in");
    }

    @Test
    void aDipIsTheArchUpsideDown() {
        TopLine arch = TopLine.of(TopShape.arched(Length.ofInches(6)), hill, SIX_FEET);
        TopLine dip = TopLine.of(TopShape.dipped(Length.ofInches(6)), hill, SIX_FEET);

        for (int inch = 0; inch <= 192; inch += 7) {
            Length at = Length.ofInches(inch);
            assertThat(arch.boardLengthAt(at).plus(dip.boardLengthAt(at))).isEqualTo(SIX_FEET.times(2));
        }
        assertThat(dip.boardLengthAt(Length.ofFeet(4)).inches()).isEqualTo(66, within(1e-6));
    }

    @Test
    void straightTopsGiveBoardsOfOneLength() {
        TopLine top = TopLine.of(TopShape.straight(), hill, SIX_FEET);

        assertThat(top.boardLengthAt(Length.ofFeet(3))).isEqualTo(SIX_FEET);
        Interval board = Interval.of(Length.ofInches(10), Length.ofInches(15.5));
        assertThat(top.boardLength(board)).isEqualTo(SIX_FEET);
        // Square cut: both corners as high as the middle, 12.75 in along 20 %, 2 in up.
        assertThat(top.upperEdge(board, board))
                .extracting(corner -> corner.elevation().inches())
                .containsExactly(2.55 + 2 + 72, 2.55 + 2 + 72);
        assertThat(top.topAt(Length.ofFeet(8)).inches()).isEqualTo(19.2 + 2 + 72, within(1e-6));
        assertThat(top.worksheet(Length.ofFeet(3)).result()).isEqualTo(SIX_FEET);
    }

    /** Ground with a mound of 3 in: racked bottoms are lifted over it to 4 in, tops that follow it rise and fall. */
    @Test
    void topsThatFollowTheGroundVaryWithTheGap() {
        SlopeFit fit = SlopeFit.rack(
                TreatmentsTest.ground(0, 0, 3, 0, 4, 0.25, 5, 0, 16, 0), TreatmentsTest.feet(0, 8, 16), USUAL);
        TopLine top = TopLine.of(TopShape.followingGround(), fit, SIX_FEET);

        assertThat(top.topAt(Length.ofFeet(4))).isEqualTo(Length.ofInches(3 + 2 + 72));
        assertThat(top.boardLengthAt(Length.ofFeet(4)).inches()).isEqualTo(73, within(1e-6));
        assertThat(top.boardLengthAt(Length.ofFeet(1)).inches()).isEqualTo(70, within(1e-6));
        assertThat(top.boardLength(Interval.of(Length.ofFeet(3.9), Length.ofFeet(4.2)))
                        .inches())
                .isEqualTo(73, within(1e-6));
        assertThat(top.topAt(Length.ofFeet(-1))).isEqualTo(Length.ofInches(74));
    }

    /** Level tops over racked bottoms: 19.2 in longer at the low end of each bay. */
    @Test
    void steppedTopsOverRackedBottoms() {
        TopLine top = TopLine.of(TopShape.stepped(), hill, SIX_FEET);

        assertThat(top.boardLengthAt(Length.ofFeet(0)).inches()).isEqualTo(72 + 19.2, within(1e-6));
        assertThat(top.boardLengthAt(Length.ofFeet(7.999)).inches()).isEqualTo(72, within(0.01));
    }

    /** The example of the class of the post tops: 3 1/2 in at 20 % is 0.7 in, half of it to either side. */
    @Test
    void postsCutLevelOrToTheSlope() {
        TopLine top = TopLine.of(TopShape.straight(), hill, SIX_FEET);

        PostHeight flat = PostTops.cutLevel(top, POST, Length.ZERO).heights().get(1);
        PostHeight slant = PostTops.cutToSlope(top, POST, Length.ZERO).heights().get(1);

        assertThat(flat.highSide().inches()).isEqualTo(74.35, within(1e-6));
        assertThat(flat.lowSide()).isEqualTo(flat.highSide());
        assertThat(flat.cut()).isEqualTo(Angle.ZERO);
        assertThat(flat.lengthWith(Length.ofInches(36)).inches()).isEqualTo(110.35, within(1e-6));
        assertThat(flat.stockFor(Length.ofInches(36), List.of(Length.ofFeet(12), Length.ofFeet(8), Length.ofFeet(10))))
                .isEqualTo(Optional.of(Length.ofFeet(10)));
        assertThat(flat.stockFor(Length.ofInches(36), List.of(Length.ofFeet(8))))
                .isEmpty();
        assertThat(slant.highSide()).isEqualTo(flat.highSide());
        assertThat(slant.lowSide().inches()).isEqualTo(73.65, within(1e-6));
        assertThat(slant.cut().degrees()).isEqualTo(11.3099, within(0.00005));
        assertThat(PostTops.cutToSlope(top, POST, Length.ofInches(1))
                        .worksheet(1)
                        .result())
                .isEqualTo(Length.ofInches(75.35));
    }

    /**
     * On 20 %, 2 ft from the first post: the bottoms are at 1/6 + 0.4 = 0.5667 ft, the ground at 0.4; level tops stand over
     * 1.6 + 1/6 at the upper post; arch and dip are 6 - 195 + sqrt(195^2 - 24^2) = 4.5174 in off the line.
     */
    @Test
    void theSheetNamesTheRuleOfTheShape() {
        assertThat(sheet(TopShape.straight())).isEqualTo("""
                Board at 2.00 ft
                  board length = 6' 0"   [given]
                  top = bottom + board length = 6.5667 ft
                  bottom = bottom at start + grade * distance from it = 0.1667 ft + 20 % * 2 ft = 0.5667 ft
                  length here = top - bottom = 6.5667 ft - 0.5667 ft = 6' 0"
                """);
        assertThat(sheet(TopShape.followingGround())).contains("top = ground + clearance + board length = 6.5667 ft");
        assertThat(sheet(TopShape.stepped()))
                .contains("top = higher bottom of the bay + board length = 7.7667 ft")
                .doesNotContain("radius");
        assertThat(sheet(TopShape.arched(Length.ofInches(6)))).isEqualTo("""
                Board at 2.00 ft
                  board length = 6' 0"   [given]
                  rise between posts = 6"   [given]
                  radius = (half bay^2 + rise^2) / (2 * rise) = ((48 in)^2 + (6 in)^2) / (2 * 6 in) = 195 in
                  offset = rise - radius + sqrt(radius^2 - distance from the middle^2), none past the posts = 6 in - 195 in + sqrt((195 in)^2 - (24 in)^2) = 4.5174 in
                  top = bottom + board length + offset = 6.9431 ft
                  bottom = bottom at start + grade * distance from it = 0.1667 ft + 20 % * 2 ft = 0.5667 ft
                  length here = top - bottom = 6.9431 ft - 0.5667 ft = 6' 4 1/2"
                """);
        assertThat(sheet(TopShape.dipped(Length.ofInches(6))))
                .contains("top = bottom + board length - offset = 6.1902 ft");
    }

    private String sheet(TopShape shape) {
        return TopLine.of(shape, hill, SIX_FEET).worksheet(Length.ofFeet(2)).toText();
    }

    /** 74 in of boards and 1 in more, 3 1/2 in at 20 % half of it to either side. */
    @Test
    void theSheetOfAPostTellsBothItsSides() {
        TopLine top = TopLine.of(TopShape.straight(), hill, SIX_FEET);
        assertThat(PostTops.cutToSlope(top, POST, Length.ofInches(1))
                        .worksheet(1)
                        .toText())
                .isEqualTo("""
                Top of the post at 8.00 ft
                  bottoms of the boards above the ground = 2 in   [given]
                  tops of the boards above the ground = 74 in   [given]
                  above the boards = 1 in   [given]
                  boards higher on the uphill side by = post width / 2 * mean grade = 3.5 in / 2 * 20 % = 0.35 in
                  lower side of the post = tops + above - half rise = 74 in + 1 in - 0.35 in = 6' 2 5/8"
                  higher side of the post = tops + above + half rise = 74 in + 1 in + 0.35 in = 6' 3 3/8"
                """);
        PostTops flat = PostTops.cutLevel(top, POST, Length.ofInches(1));
        assertThat(flat.worksheet(1).toText())
                .contains("lower side of the post = tops + above + half rise = 74 in + 1 in + 0.35 in = 6' 3 3/8\"");
        assertThat(flat).hasToString("tops of the posts from 0.00 ft to 16.00 ft");
        assertThat(PostTops.cutToSlope(top, POST, Length.ZERO).heights().get(1).grade())
                .isEqualTo(hill.bay(0).grade());
    }

    /** Stepped 20 % bays in steps of 19.2 in: a post between two of them reaches to the boards of the higher one. */
    @Test
    void atAStepTheHigherSideCounts() {
        SlopeFit stepped = SlopeFit.step(
                TreatmentsTest.ground(0, 0, 16, 3.2),
                TreatmentsTest.feet(0, 8, 16),
                SlopeSpec.builder().stepIncrement(Length.ofInches(0.1)).build());

        List<PostHeight> heights = PostTops.cutToSlope(
                        TopLine.of(TopShape.straight(), stepped, SIX_FEET), POST, Length.ofInches(2))
                .heights();

        assertThat(heights)
                .extracting(PostHeight::highSide)
                .containsExactly(Length.ofInches(21.2 + 74), Length.ofInches(21.2 + 74), Length.ofInches(2 + 74));
        assertThat(heights).extracting(PostHeight::cut).containsOnly(Angle.ZERO);
    }

    /** A crest between 20 % up and 20 % down: level in the mean. */
    @Test
    void onACrestTheTopIsLevel() {
        SlopeFit crest =
                SlopeFit.rack(TreatmentsTest.ground(0, 0, 8, 1.6, 16, 0), TreatmentsTest.feet(0, 8, 16), USUAL);

        PostHeight top = PostTops.cutToSlope(TopLine.of(TopShape.straight(), crest, SIX_FEET), POST, Length.ZERO)
                .heights()
                .get(1);

        assertThat(top.cut()).isEqualTo(Angle.ZERO);
        assertThat(top.highSide().inches()).isEqualTo(74, within(1e-6));
    }

    /** An arch of 49 in would be more than half a circle in a bay of 8 ft: it is that half circle, 48 in high. */
    @Test
    void aNarrowBayTakesHalfACircle() {
        TopLine top = TopLine.of(TopShape.arched(Length.ofInches(49)), level, SIX_FEET);

        assertThat(top.boardLengthAt(Length.ofFeet(4))).isEqualTo(Length.ofInches(72 + 48));
        assertThat(top.findings(Length.ofInches(4)))
                .extracting(Finding::code, Finding::place)
                .containsExactly(tuple("arch-limited", "bay from 0.00 ft to 8.00 ft"));
        assertThat(TopLine.of(TopShape.arched(Length.ofInches(48)), level, SIX_FEET)
                        .findings(Length.ofInches(4)))
                .isEmpty();
    }

    /** A dip of 6 in comes 2 in under the top rail, which is 4 in below the tops; a rail 6 in below is covered. */
    @Test
    void aDipUnderTheTopRailIsTold() {
        TopLine top = TopLine.of(TopShape.dipped(Length.ofInches(6)), level, SIX_FEET);

        assertThat(top.findings(Length.ofInches(4)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.code()).isEqualTo("rail-above-boards"))
                .satisfies(finding -> assertThat(finding.message()).contains("up to 2\" above"));
        assertThat(top.findings(Length.ofInches(6))).isEmpty();
    }

    /** A stepped bay over a hollow of 7 ft: tops that follow the ground come down to the bottoms of 6 ft boards. */
    @Test
    void whereNoBoardIsLeftIsTold() {
        SlopeFit fit = SlopeFit.step(
                TreatmentsTest.ground(0, 0, 4, -7, 8, 0),
                TreatmentsTest.feet(0, 8),
                SlopeSpec.builder().build());
        TopLine top = TopLine.of(TopShape.followingGround(), fit, SIX_FEET);

        assertThat(top.findings(Length.ofInches(4))).extracting(Finding::code).containsExactly("no-board-left");
        assertThat(top.boardLengthAt(Length.ofFeet(4))).isEqualTo(Length.ZERO);
    }

    /**
     * A stepped bay of 8 ft on 20 %, 2 in up at its upper post: 21.2 in of gap at the lower one. Boards cut to the ground
     * end 2 in over it: the first, 0 to 5 1/2 in from the lower post, is 19.2 in longer than usual at its lower edge.
     */
    @Test
    void boardsCutToTheGroundAreLonger() {
        SlopeFit fit = SlopeFit.step(
                TreatmentsTest.ground(0, 0, 8, 1.6),
                TreatmentsTest.feet(0, 8),
                SlopeSpec.builder()
                        .stepIncrement(Length.ofMillimetres(1))
                        .underBoards(SlopeSpec.UnderBoards.BOARDS_TO_GROUND)
                        .build());
        TopLine top = TopLine.of(TopShape.straight(), fit, SIX_FEET);
        Interval first = Interval.of(Length.ZERO, Length.ofInches(5.5));

        assertThat(top.boardLength(first).inches()).isEqualTo(72 + 19.2, within(1e-6));
        assertThat(top.lowerEdge(first, first))
                .extracting(corner -> corner.elevation().inches())
                .containsExactly(2.0, 2 + 1.1);
        assertThat(top.isCutToGround(first)).isTrue();
        assertThat(fit.spec().underBoards()).hasToString("closed by boards cut to the ground");
        // On a bay whose gap is within the maximum they end level on their line.
        TopLine usual = TopLine.of(TopShape.straight(), level, SIX_FEET);
        assertThat(usual.isCutToGround(first)).isFalse();
        assertThat(usual.lowerEdge(first, first))
                .extracting(corner -> corner.elevation().inches())
                .containsExactly(2.0, 2.0);
        assertThat(fit.findings()).isEmpty();
    }

    @Test
    void misuseIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TopLine.of(TopShape.straight(), level, Length.ZERO))
                .withMessageContaining("boardLength was 0 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TopShape.arched(Length.ZERO))
                .withMessageContaining("rise between posts was 0 in; it must be over 0 and up to 10 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TopLine.of(TopShape.dipped(Length.ofInches(20)), level, Length.ofInches(20)))
                .withMessageContaining("dip was 1 ft 8 in, no less than the boards");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        PostTops.cutLevel(TopLine.of(TopShape.straight(), level, SIX_FEET), POST, Length.ofInches(-72)))
                .withMessageContaining("height above the boards was -6 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        PostTops.cutLevel(TopLine.of(TopShape.straight(), level, SIX_FEET), Length.ZERO, Length.ZERO))
                .withMessageContaining("postWidth was 0 in; it must be over 0");
        PostHeight post = PostTops.cutLevel(TopLine.of(TopShape.straight(), level, SIX_FEET), POST, Length.ZERO)
                .heights()
                .get(0);
        assertThat(post).hasToString("6 ft 2 in above the ground");
        assertThat(post.lengthWith(Length.ZERO)).isEqualTo(Length.ofInches(74));
        assertThat(post.stockFor(Length.ofInches(22), List.of(Length.ofFeet(8))))
                .contains(Length.ofFeet(8));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> post.lengthWith(Length.ofInches(-1)))
                .withMessageContaining("embedment was -1 in; it must be 0 or more");
        assertThat(TopShape.arched(Length.ofFeet(10))).hasToString("arched between posts by 10 ft");
        assertThat(TopShape.straight()).hasToString("straight to the string");
        assertThat(TopShape.dipped(Length.ofInches(6)).overPosts()).isEqualTo(Length.ofInches(-6));
        assertThat(TopShape.arched(Length.ofInches(6)).overPosts()).isEqualTo(Length.ofInches(6));
    }
}
