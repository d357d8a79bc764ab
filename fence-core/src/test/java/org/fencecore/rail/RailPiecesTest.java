package org.fencecore.rail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

class RailPiecesTest {

    private static final RailSpec THREE = RailSpec.builder().build();
    private static final Length WIDTH = Length.ofInches(3.5);
    private static final SlopeSpec USUAL = SlopeSpec.builder().build();

    /** The example of the class. */
    @Test
    void jointsAreStaggeredAmongTheRails() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 20, 0), feet(0, 5, 10, 15, 20), USUAL);

        RailPieces pieces = RailPieces.lay(fit, THREE, WIDTH);

        assertThat(pieces.pieces()).hasSize(6);
        assertThat(List.of(pieces.jointsAt(1), pieces.jointsAt(2), pieces.jointsAt(3)))
                .containsExactly(1, 1, 1);
        assertThat(pieces.jointsAt(0)).isZero();
        assertThat(pieces.jointsAt(4)).isZero();
        // Out to out of the end posts, 20 ft and a post's width, for each of three rails.
        assertThat(pieces.totalLength()).isEqualTo(Length.ofInches(3 * 243.5));
        assertThat(pieces.worksheet().result()).isEqualTo(pieces.totalLength());
        assertThat(pieces.findings()).isEmpty();
    }

    /** Bays of 8 ft and sticks of 16 ft: three rails need a joint every other post, one and a half on each. */
    @Test
    void whereSticksAreTooShortPostsSharingJointsAreFew() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 40, 0), feet(0, 8, 16, 24, 32, 40), USUAL);

        RailPieces pieces = RailPieces.lay(
                fit, RailSpec.builder().longestStick(Length.ofInches(200)).build(), WIDTH);

        assertThat(List.of(pieces.jointsAt(1), pieces.jointsAt(2), pieces.jointsAt(3), pieces.jointsAt(4)))
                .containsExactlyInAnyOrder(1, 2, 1, 2);
        assertThat(pieces.findings()).isEmpty();
        assertThat(pieces.pieces()).allSatisfy(piece -> assertThat(piece.bays()).isBetween(1, 2));
    }

    /** A bend in the middle: every rail is joined there, and each piece is cut to its own grade. */
    @Test
    void everyRailIsJoinedWhereTheGradeChanges() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 10, 2, 20, 2), feet(0, 5, 10, 15, 20), USUAL);

        RailPieces pieces =
                RailPieces.lay(fit, RailSpec.builder().trim(Length.ofInches(2)).build(), WIDTH);

        assertThat(pieces.pieces()).hasSize(6);
        assertThat(pieces.jointsAt(2)).isEqualTo(3);
        RailPiece uphill = pieces.pieces().get(0);
        RailPiece level = pieces.pieces().get(1);
        assertThat(uphill.endCut().degrees()).isEqualTo(11.3099, within(0.00005));
        assertThat(level.endCut().degrees()).isZero();
        // 121.75 in level at 20 %, S/H 1.01980; the slanting ends take 3 1/2 in * 20 %, and 2 in are trimmed.
        assertThat(uphill.length().inches()).isEqualTo(121.75 * 1.01980, within(0.001));
        assertThat(uphill.stick().inches()).isEqualTo(121.75 * 1.01980 + 0.7 + 2, within(0.001));
        assertThat(pieces.findings()).isEmpty();
    }

    /** Two rails over a bend: 121 3/4 in, or 10.1458 ft, to the bend from either end, x 1.0198 = 124.161 in on 20 %. */
    @Test
    void theSheetHasALineForEachPiece() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 10, 2, 20, 2), feet(0, 5, 10, 15, 20), USUAL);
        RailPieces pieces = RailPieces.lay(fit, RailSpec.builder().rails(2).build(), WIDTH);
        assertThat(pieces.pieces())
                .extracting(RailPiece::rail, RailPiece::fromPost, RailPiece::toPost)
                .containsExactly(tuple(0, 0, 2), tuple(0, 2, 4), tuple(1, 0, 2), tuple(1, 2, 4));
        assertThat(pieces.worksheet().toText()).isEqualTo("""
                Pieces of the rails
                  rail 1 from post 1 to post 3 = level length * sqrt(1 + grade^2) = 10.1458 ft * sqrt(1 + (20 %)^2) = 10' 4 3/16", ends 11.3 deg off square
                  rail 1 from post 3 to post 5 = level length * sqrt(1 + grade^2) = 10.1458 ft * sqrt(1 + (0 %)^2) = 10' 1 3/4", ends 0 deg off square
                  rail 2 from post 1 to post 3 = level length * sqrt(1 + grade^2) = 10.1458 ft * sqrt(1 + (20 %)^2) = 10' 4 3/16", ends 11.3 deg off square
                  rail 2 from post 3 to post 5 = level length * sqrt(1 + grade^2) = 10.1458 ft * sqrt(1 + (0 %)^2) = 10' 1 3/4", ends 0 deg off square
                  all pieces = sum = 40.9852 ft
                """);
    }

    /** Two bays of 8 ft from face to face are 16 ft: a stick of that length is just enough, and a trim at both ends is not. */
    @Test
    void aStickMayBeUsedToItsLastNanometre() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 16, 0), feet(0, 8, 16), USUAL);
        Interval reach = Interval.of(Length.ZERO, Length.ofFeet(16));
        assertThat(RailPieces.lay(fit, THREE, reach, WIDTH).pieces()).hasSize(3);
        RailSpec trimmed = RailSpec.builder()
                .longestStick(Length.ofFeet(20))
                .trim(Length.ofFeet(2))
                .build();
        assertThat(RailPieces.lay(fit, trimmed, reach, WIDTH).pieces())
                .hasSize(3)
                .allSatisfy(piece -> {
                    assertThat(piece.trim()).isEqualTo(Length.ofFeet(4));
                    assertThat(piece.stick()).isEqualTo(Length.ofFeet(20));
                });
        // What is on the shelf may be shorter than what could be handled, but not longer.
        assertThat(trimmed.withSticksUpTo(Length.ofFeet(12)).longestStick()).isEqualTo(Length.ofFeet(12));
        assertThat(trimmed.withSticksUpTo(Length.ofFeet(12)).trim()).isEqualTo(Length.ofFeet(2));
        assertThat(trimmed.withSticksUpTo(Length.ofFeet(24))).isSameAs(trimmed);
        assertThat(trimmed.withSticksUpTo(Length.ofFeet(20))).isSameAs(trimmed);
    }

    @Test
    void betweenThePostsEachBayHasItsOwn() {
        SlopeFit fit = SlopeFit.step(ground(0, 0, 16, 1), feet(0, 8, 16), USUAL);

        RailPieces pieces =
                RailPieces.lay(fit, RailSpec.builder().betweenPosts().build(), WIDTH);

        assertThat(pieces.pieces())
                .hasSize(6)
                .allSatisfy(piece -> assertThat(piece.length()).isEqualTo(Length.ofInches(92.5)));
        assertThat(pieces.jointsAt(1)).isZero();
    }

    @Test
    void aBayLongerThanTheStickIsABlocker() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 24, 0), feet(0, 8, 24), USUAL);

        assertThat(RailPieces.lay(fit, THREE, WIDTH).findings())
                .filteredOn(finding -> finding.severity() == Severity.BLOCKER)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("rail-over-stick");
                    assertThat(finding.message()).contains("16' 1 3/4\"").contains("the longest is 16 ft");
                });
    }

    /** Sticks of 16 ft are too short for two bays of 8 ft that run past the end posts: all rails are joined at post 2. */
    @Test
    void whereAllRailsAreJoinedOnOnePostIsTold() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 16, 0), feet(0, 8, 16), USUAL);

        assertThat(RailPieces.lay(fit, THREE, WIDTH).findings())
                .extracting(Finding::code, Finding::place)
                .containsExactly(tuple("joints-on-one-post", "post at 8.00 ft"));
        assertThat(joined(16)).isEqualTo("all 3 rails are joined here, though the fence runs on straight");
        assertThat(joined(24))
                .isEqualTo("all 3 rails are joined here, and at 1 more post, though the fence runs on straight");
        assertThat(joined(32))
                .isEqualTo("all 3 rails are joined here, and at 2 more posts, though the fence runs on straight");
        RailSpec single = RailSpec.builder().mostBays(1).build();
        assertThat(RailPieces.lay(fit, single, WIDTH).findings()).isEmpty();
    }

    /** What is told of bays of 8 ft with sticks of 10 ft, which are too short for two of them. */
    private static String joined(int feet) {
        SlopeFit fit = SlopeFit.rack(
                ground(0, 0, feet, 0),
                IntStream.rangeClosed(0, feet / 8)
                        .mapToObj(bay -> Length.ofFeet(8 * bay))
                        .toList(),
                USUAL);
        RailSpec shortSticks =
                RailSpec.builder().longestStick(Length.ofFeet(10)).build();
        return RailPieces.lay(fit, shortSticks, WIDTH).findings().get(0).message();
    }

    /** To a corner at one end and short of one at the other. */
    @Test
    void endPiecesReachAsFarAsTheyAreTold() {
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 12, 0), feet(0, 6, 12), USUAL);
        Interval reach = Interval.of(Length.ofInches(-3.25), Length.ofInches(142.25));

        assertThat(RailPieces.lay(fit, THREE, reach, WIDTH).pieces())
                .hasSize(3)
                .allSatisfy(piece -> assertThat(piece.length()).isEqualTo(Length.ofInches(145.5)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailPieces.lay(fit, THREE, Interval.of(Length.ofFeet(6), Length.ofFeet(12)), WIDTH))
                .withMessageContaining("reach of the rails");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailPieces.lay(fit, THREE, Interval.of(Length.ZERO, Length.ofFeet(6)), WIDTH))
                .withMessageContaining("it must begin in the first bay or before it and end in the last or beyond it");
        RailPieces pieces = RailPieces.lay(fit, THREE, reach, WIDTH);
        for (int post : new int[] {-1, 3}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> pieces.jointsAt(post))
                    .withMessage("post was " + post + "; this run has 3, numbered from 0 to 2");
        }
    }

    /** A thousand bays of ten rails are laid in the time it takes to look. */
    @Test
    void manyRailsOverManyBaysAreLaid() {
        List<Length> posts = IntStream.rangeClosed(0, 1_000)
                .mapToObj(bay -> Length.ofFeet(4 * bay))
                .toList();
        SlopeFit fit = SlopeFit.rack(ground(0, 0, 4_000, 0), posts, USUAL);
        RailSpec ten = RailSpec.builder().rails(10).mostBays(4).build();

        assertThat(RailPieces.lay(fit, ten, WIDTH).pieces()).hasSizeBetween(2_500, 3_400);
    }

    /** Common practice, no source: on 6 ft boards a space of up to 30 in takes three rails, of up to 20 in four. */
    @Test
    void railsBySpacing() {
        // Span 64 in: two rails leave 57, three 26 3/4, four 16 2/3 in between.
        assertThat(spaced(57).rails()).isEqualTo(2);
        assertThat(spaced(56.9).rails()).isEqualTo(3);
        assertThat(spaced(30).rails()).isEqualTo(3);
        assertThat(spaced(26.75).rails()).isEqualTo(3);
        assertThat(spaced(26.7).rails()).isEqualTo(4);
        assertThat(spaced(20).rails()).isEqualTo(4);
        assertThat(spaced(3.25).rails()).isEqualTo(10); // (64 - 35) / 9 = 3.22
        assertThatIllegalArgumentException()
                .isThrownBy(() -> spaced(1))
                .withMessageContaining("maximumSpace was 1 in, which takes 15 rails");
    }

    private static RailSpec spaced(double inches) {
        return RailSpec.builder().maximumSpace(Length.ofInches(inches)).build();
    }

    @Test
    void misuseIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailSpec.builder().mostBays(5))
                .withMessageContaining("mostBays was 5; it must be from 1 to 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailSpec.builder().longestStick(Length.ZERO))
                .withMessageContaining("longestStick was 0 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailSpec.builder().trim(Length.ofInches(-1)))
                .withMessageContaining("trim was -1 in");
    }

    private static Profile ground(double... feet) {
        Profile.Builder ground = Profile.builder();
        for (int i = 0; i < feet.length; i += 2) {
            ground.point(Length.ofFeet(feet[i]), Length.ofFeet(feet[i + 1]));
        }
        return ground.build();
    }

    private static List<Length> feet(double... stations) {
        return Arrays.stream(stations).mapToObj(Length::ofFeet).toList();
    }
}
