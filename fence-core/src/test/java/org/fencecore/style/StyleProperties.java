package org.fencecore.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.units.Length;

class StyleProperties {

    /** The stick to buy is the shortest that holds the piece, and there is none only where none does. */
    @Property
    void theShortestLengthThatHoldsAPieceIsBought(
            @ForAll @Size(min = 1, max = 8) Set<@IntRange(min = 1, max = 240) Integer> inches,
            @ForAll @LongRange(min = 0, max = 7_000_000_000L) long nanometres) {
        Length piece = Length.ofNanometres(nanometres);
        Lumber lumber = Lumber.of("1x6", Length.ofInches(0.75), Length.ofInches(5.5))
                .soldIn(inches.stream().map(Length::ofInches).toArray(Length[]::new));
        List<Length> sold = new TreeSet<>(inches).stream().map(Length::ofInches).toList();
        assertThat(lumber.lengths()).isEqualTo(sold);
        assertThat(lumber.shortestFor(piece))
                .isEqualTo(sold.stream()
                        .filter(length -> length.compareTo(piece) >= 0)
                        .findFirst());
    }

    /** What is seen square to a fence is the gaps: of boards side by side in a clear length, (clear - boards) / clear. */
    @Property
    void privacyOfBoardsSideBySideIsTheirShareOfTheLength(
            @ForAll @DoubleRange(min = 2, max = 12) double wide,
            @ForAll @DoubleRange(min = 0.25, max = 6) double gap,
            @ForAll @DoubleRange(min = 20, max = 2000) double clear) {
        BoardPattern pattern = BoardPattern.spaced(Length.ofInches(wide), Length.ofInches(gap));
        FenceStyle style = FenceStyle.builder()
                .pattern(pattern)
                .boardLumber(Lumber.of("board", Length.ofInches(0.75), Length.ofInches(wide))
                        .soldIn(Length.ofFeet(6)))
                .build();
        BoardLayout layout = BoardLayout.fit(Length.ofInches(clear), pattern);
        double boards = layout.boards().stream()
                .mapToDouble(board -> board.width().inches())
                .sum();
        assertThat(style.privacy(layout).solid().value()).isCloseTo(boards / clear, within(1e-6));
    }

    /** A dog-ear on both corners leaves some of the top, or the style is refused. */
    @Property
    void dogEarsLeaveSomeOfTheTopOrAreRefused(@ForAll @DoubleRange(min = 0.1, max = 6) double ear) {
        FenceStyle.Builder style = FenceStyle.builder()
                .boards(BoardStyle.upright().withEnds(BoardEnds.square().withDogEars(Length.ofInches(ear))));
        Length left = Length.ofInches(5.5).minus(Length.ofInches(ear).times(2));
        if (left.isPositive()) {
            assertThat(style.build().boards().ends().dogEar()).isEqualTo(Length.ofInches(ear));
        } else {
            assertThatIllegalArgumentException().isThrownBy(style::build).withMessageContaining("dog-ears were");
        }
    }
}
