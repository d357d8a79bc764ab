package org.fencecore.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.fencecore.footing.PostSetting;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class FenceStyleTest {

    /** Common practice, no source: what an owner gets who says nothing. */
    @Test
    void theUsualFence() {
        FenceStyle style = FenceStyle.builder().build();
        assertThat(style.pattern().isShadowbox()).isTrue();
        assertThat(style.pattern().preferredGap()).isEqualTo(in(3.5));
        assertThat(style.rails().boardLength()).isEqualTo(Length.ofFeet(6));
        assertThat(style.postSpacing().maximum()).isEqualTo(Length.ofFeet(8));
        assertThat(style.postSpacing().minimum()).isEqualTo(Length.ofFeet(6));
        assertThat(style.holeDiameter()).isEqualTo(in(10.5));
        assertThat(style.gateFrameHeight()).isEqualTo(in(64));
    }

    /** Dressed sizes: American Softwood Lumber Standard PS 20, minimum dry. */
    @Test
    void dressedSizes() {
        assertThat(Lumber.twoByFour().thickness()).isEqualTo(in(1.5));
        assertThat(Lumber.twoByFour().width()).isEqualTo(in(3.5));
        assertThat(Lumber.fourByFour().width()).isEqualTo(in(3.5));
        assertThat(Lumber.sixBySix().width()).isEqualTo(in(5.5));
        assertThat(Lumber.oneBySix().thickness()).isEqualTo(in(0.75));
        assertThat(Lumber.oneBySix().width()).isEqualTo(in(5.5));
        assertThat(Lumber.oneByFour().width()).isEqualTo(in(3.5));
    }

    @Test
    void theShortestStickThatWillDo() {
        Lumber rails = Lumber.twoByFour();
        assertThat(rails.shortestFor(Length.ofFeet(8))).contains(Length.ofFeet(8));
        assertThat(rails.shortestFor(Length.ofFeet(8).plus(Length.ofNanometres(1))))
                .contains(Length.ofFeet(10));
        assertThat(rails.shortestFor(Length.ofFeet(17))).isEmpty();
    }

    @Test
    void partsThatDoNotFitTheirLumberAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .pattern(BoardPattern.sideBySide(in(3.5)))
                        .build())
                .withMessageContaining("3 1/2 in")
                .withMessageContaining("1x6 is 5 1/2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .rails(RailSpec.builder().railDepth(in(5.5)).build())
                        .build())
                .withMessageContaining("depth of the rails");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        FenceStyle.builder().postLumber(Lumber.twoByFour()).build())
                .withMessageContaining("square");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .railLumber(Lumber.of("2x4", in(1.5), in(3.5)))
                        .build())
                .withMessageContaining("soldIn");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .postSpacing(PostSpacingSpec.builder()
                                .minimum(Length.ofFeet(6))
                                .maximum(Length.ofFeet(5))
                                .build())
                        .build())
                .withMessageContaining("5 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .setting(PostSetting.builder().holeDiameter(in(3)).build())
                        .build())
                .withMessageContaining("the post must fit in its hole, 3 in wide");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder().postAboveBoards(in(-4.5)).build())
                .withMessageContaining("posts carry the top rail");
    }

    /** Ten rails of 3 1/2 in leave room on the level, but not on a 45 degree bay, where each takes 4.95 in. */
    @Test
    void railsThatWouldMeetOnTheSteepestBayAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder()
                        .rails(RailSpec.builder().boardLength(in(52)).rails(10).build())
                        .build())
                .withMessageContaining("number of rails was 10");
    }

    @Test
    void lumberIsChecked() {
        assertThatIllegalArgumentException().isThrownBy(() -> Lumber.of(" ", in(1), in(2)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Lumber.of("x", in(2), in(1)))
                .withMessageContaining("2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Lumber.of("x", in(1), in(2)).soldIn())
                .withMessageContaining("at least one");
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }

    @Test
    void battensAreThoseOfTheirLumber() {
        BoardPattern pattern = BoardPattern.boardAndBatten(Length.ofInches(5.5), Length.ofInches(3.5));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FenceStyle.builder().pattern(pattern).build())
                .withMessageContaining("batten width of the pattern was 3 1/2 in but 1x3 is 2 1/2 in wide");
        FenceStyle style = FenceStyle.builder()
                .pattern(pattern)
                .battenLumber(Lumber.oneByFour())
                .build();
        assertThat(style.hasBattens()).isTrue();
        assertThat(style.battenLumber()).isEqualTo(Lumber.oneByFour());
        assertThat(FenceStyle.builder().build().hasBattens()).isFalse();
    }
}
