package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopLine;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class BoardCutsTest {

    private static final Profile LEVEL = line(6, 6);
    private static final Profile RISING = line(0, 1);
    private static final BoardLayout SPACED = BoardLayout.fit(Length.ofFeet(10), BoardPattern.spaced(in(5.5), in(2)));

    /* By hand: the ground rises 0.1 in an inch, 0.55 in over the first board and 0.275 in to its middle. */
    @Test
    void theExample() {
        BoardCuts sloped =
                BoardCuts.of(SPACED, LEVEL, RISING, BoardEnds.square().withSlopedBottom());
        BoardCut first = sloped.cuts().get(0);
        assertThat(first.leftEdge()).isEqualTo(Length.ofFeet(6));
        assertThat(first.rightEdge()).isEqualTo(in(72 - 0.55));
        assertThat(first.length()).isEqualTo(Length.ofFeet(6));
        assertThat(first.bottomCut().degrees()).isCloseTo(5.7106, within(0.0001));
        assertThat(first.topCut().degrees()).isZero();
        assertThat(first).hasToString("6' 0\" long, top square, bottom 5.7 deg");

        BoardCut square =
                BoardCuts.of(SPACED, LEVEL, RISING, BoardEnds.square()).cuts().get(0);
        assertThat(square.length()).isEqualTo(in(72 - 0.275));
        assertThat(square.bottom()).isEqualTo(in(0.275));
        assertThat(square.bottomCut().degrees()).isZero();
    }

    @Test
    void rackedBoardsAreAllAlike() {
        // Top and bottom rise together: cut to the slope, each board is longer than its edges by its rise, 0.55 in.
        BoardCuts cuts = BoardCuts.of(
                SPACED, line(6, 7), RISING, BoardEnds.square().withSlopedTop().withSlopedBottom());
        for (BoardCut cut : cuts.cuts()) {
            assertThat(cut.leftEdge()).isEqualTo(Length.ofFeet(6));
            assertThat(cut.length().inches()).isCloseTo(72.55, within(1e-6));
        }
        assertThat(cuts.stock(List.of(Length.ofFeet(6), Length.ofFeet(8)), in(0.125)))
                .containsExactly(new StockUse(in(5.5), Length.ofFeet(8), 1, SPACED.count(), SPACED.count()));
    }

    /*
     * By hand: 4 ft high, 10 ft long, shadowbox of 14 boards outside and 13 behind. An 8 ft stick gives one board of 48 in
     * with a kerf of 1/8 in, since two need 96 1/8; a 10 ft stick gives two. 120 / 2 = 60 in of stick a board beats 96.
     */
    @Test
    void boardsAreSharedOutAmongStock() {
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(10), BoardPattern.shadowbox(in(5.5)));
        BoardCuts cuts = BoardCuts.of(layout, line(4, 4), line(0, 0), BoardEnds.square());
        int boards = layout.count();

        List<Length> stock = List.of(Length.ofFeet(8), Length.ofFeet(10));
        assertThat(cuts.stock(stock, in(0.125)))
                .containsExactly(new StockUse(in(5.5), Length.ofFeet(10), 2, boards, (boards + 1) / 2));
        assertThat(cuts.stock(stock, Length.ZERO))
                .containsExactly(new StockUse(in(5.5), Length.ofFeet(8), 2, boards, (boards + 1) / 2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cuts.stock(List.of(Length.ofFeet(3)), Length.ZERO))
                .withMessageContaining("a board was 4 ft long, which none of the stock holds");
    }

    @Test
    void battensComeFromTheirOwnStock() {
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(5), BoardPattern.boardAndBatten(in(5.5), in(2.5)));
        BoardCuts cuts = BoardCuts.of(layout, line(6, 6), line(0, 0), BoardEnds.square());

        assertThat(cuts.stock(List.of(Length.ofFeet(6)), in(0.125)))
                .containsExactly(
                        new StockUse(in(5.5), Length.ofFeet(6), 1, 10, 10),
                        new StockUse(in(2.5), Length.ofFeet(6), 1, 9, 9));
    }

    @Test
    void dogEarsNeedRoom() {
        BoardLayout ripped = BoardLayout.fit(Length.ofFeet(8), BoardPattern.sideBySide(in(5.5)));
        BoardEnds ends = BoardEnds.square().withDogEars(in(2.25));
        BoardCuts cuts = BoardCuts.of(ripped, line(6, 6), line(0, 0), ends);

        assertThat(cuts.cuts().get(0).dogEar()).isEqualTo(in(2.25));
        assertThat(cuts.cuts().get(0)).hasToString("6' 0\" long, square ends, dog-ears 2 1/4\"");
        // Two of 4 in do not hold 4 1/2.
        assertThat(cuts.cuts().get(8).isRipped()).isTrue();
        assertThat(cuts.cuts().get(8).dogEar()).isEqualTo(Length.ZERO);
        assertThat(cuts.cuts().get(8)).hasToString("6' 0\" long, ripped to 4\", square ends");
        assertThat(cuts.findings()).extracting(Finding::code).containsExactly("no-room-for-dog-ears");
        assertThat(ends).hasToString("top square, bottom square, dog-ears 2 1/4\"");
        assertThat(BoardCuts.of(
                                ripped,
                                line(6, 6),
                                line(0, 0),
                                BoardEnds.square().withDogEars(in(1.5)))
                        .findings())
                .isEmpty();
    }

    private static TopLine tops(TopShape shape, SlopeSpec spec, double... ground) {
        Profile.Builder line = Profile.builder();
        for (int i = 0; i < ground.length; i += 2) {
            line.point(Length.ofFeet(ground[i]), Length.ofFeet(ground[i + 1]));
        }
        SlopeFit fit = SlopeFit.of(line.build(), List.of(Length.ZERO, Length.ofFeet(8), Length.ofFeet(16)), spec);
        return TopLine.of(shape, fit, Length.ofFeet(6));
    }

    /*
     * By hand: bays of 8 ft, arched 6 in, so the radius is (48^2 + 6^2) / (2 x 6) = 195 in. Boards of 5 1/2 in laid from
     * 45 1/4 in, the first round the middle of the bay: its crown is 78 in up, its corners 2 3/4 in from the middle are
     * lower by 195 - sqrt(195^2 - 2.75^2) = 0.0194 in.
     */
    @Test
    void boardsUnderAnArchAreMarkedAlongIt() {
        TopLine arched = tops(TopShape.arched(in(6)), SlopeSpec.builder().build(), 0, 0, 16, 0);
        BoardLayout layout = BoardLayout.fit(in(13), BoardPattern.spaced(in(5.5), in(2)));
        BoardCuts cuts = BoardCuts.under(layout, arched, in(45.25), BoardEnds.square());
        BoardCut first = cuts.cuts().get(0);
        assertThat(cuts.areAllSquare()).isFalse();
        assertThat(first.length().inches()).isCloseTo(78, within(1e-6));
        assertThat(first.leftEdge().inches()).isCloseTo(78 - 0.01939, within(1e-5));
        assertThat(first.rightEdge()).isEqualTo(first.leftEdge());
        assertThat(first.isMarkedInPlace()).isTrue();
        assertThat(first).hasToString("6' 6\" long, top to the line, bottom square");
        assertThat(first.outline()).hasSize(5);
        // The second is on the falling half: longest at its left corner, 7 1/2 in less 2 3/4 in past the middle.
        BoardCut second = cuts.cuts().get(1);
        assertThat(second.length()).isEqualTo(second.leftEdge());
        assertThat(second.length().inches()).isCloseTo(72 + 6 - 195 + Math.sqrt(195 * 195 - 4.75 * 4.75), within(1e-6));
    }

    /** Whatever the line, a board that is cut square is as long as the line of the tops says by itself. */
    @Test
    void cutsAreAsLongAsTheLineOfTheTopsSays() {
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(16), BoardPattern.spaced(in(5.5), in(2)));
        for (Treatment treatment : Treatment.values()) {
            for (SlopeSpec.UnderBoards under : SlopeSpec.UnderBoards.values()) {
                for (TopShape shape : List.of(
                        TopShape.straight(), TopShape.stepped(), TopShape.followingGround(), TopShape.dipped(in(6)))) {
                    SlopeSpec spec = SlopeSpec.builder()
                            .treatment(treatment)
                            .underBoards(under)
                            .build();
                    TopLine top = tops(shape, spec, 0, 0, 5, 1.5, 16, 2);
                    for (BoardCut cut : BoardCuts.under(layout, top, Length.ZERO, BoardEnds.square())
                            .cuts()) {
                        Interval board =
                                Interval.of(cut.board().left(), cut.board().right());
                        assertThat(cut.length()).isEqualTo(top.boardLength(board));
                        assertThat(cut.lowest()).isEqualTo(top.bottomUnder(board));
                    }
                }
            }
        }
    }

    /* Steps of a foot at the post 8 ft along: a board over it stands with the bay that its middle is in, level. */
    @Test
    void aBoardAtAStepGoesByTheBayItsMiddleIsIn() {
        SlopeSpec stepped = SlopeSpec.builder().treatment(Treatment.STEPPED).build();
        TopLine top = tops(TopShape.straight(), stepped, 0, 0, 16, 2);
        Length step = top.fit()
                .bays()
                .get(1)
                .bottomAtStart()
                .minus(top.fit().bays().get(0).bottomAtEnd());
        assertThat(step).isEqualTo(Length.ofFeet(1));
        BoardLayout layout = BoardLayout.fit(Length.ofFeet(16), BoardPattern.spaced(in(5.5), in(2)));
        BoardCuts cuts = BoardCuts.under(
                layout, top, Length.ZERO, BoardEnds.square().withSlopedTop().withSlopedBottom());
        for (BoardCut cut : cuts.cuts()) {
            Length middle = Interval.of(cut.board().left(), cut.board().right()).middle();
            int bay = middle.compareTo(Length.ofFeet(8)) < 0 ? 0 : 1;
            assertThat(cut.length()).isEqualTo(Length.ofFeet(6));
            assertThat(cut.bottom()).isEqualTo(top.fit().bays().get(bay).bottomAtStart());
            assertThat(cut.ends()).isEqualTo("square ends");
        }
    }

    /* A strip of a board with dog-ears of 1 in keeps the ear at its own edge alone. */
    @Test
    void stripsOfABoardKeepItsEnds() {
        BoardCut cut = BoardCuts.of(
                        SPACED, LEVEL, line(0, 0), BoardEnds.square().withDogEars(in(1)))
                .cuts()
                .get(0);
        assertThat(cut.outline(Interval.of(in(0), in(3))))
                .extracting(
                        corner -> corner.station().inches(),
                        corner -> corner.elevation().inches())
                .containsExactly(
                        tuple(0.0, 0.0), tuple(3.0, 0.0), tuple(3.0, 72.0), tuple(1.0, 72.0), tuple(0.0, 71.0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cut.outline(Interval.of(in(3), in(6))))
                .withMessageContaining("it must be over 0 wide and within the board");
    }

    @Property(tries = 200)
    void cutsReachFromLineToLine(
            @ForAll @DoubleRange(min = -2, max = 2) double rise,
            @ForAll @DoubleRange(min = 4, max = 8) double topStart,
            @ForAll @DoubleRange(min = 4, max = 8) double topEnd) {
        BoardEnds ends = BoardEnds.square().withSlopedTop().withSlopedBottom();
        Profile top = line(topStart, topEnd);
        Profile bottom = line(0, rise);
        BoardCuts sloped = BoardCuts.of(SPACED, top, bottom, ends);
        BoardCuts square = BoardCuts.of(SPACED, top, bottom, BoardEnds.square());
        List<BoardCut> cuts = sloped.cuts();
        int i = 0;
        for (BoardCut cut : cuts) {
            assertThat(cut).isEqualTo(cuts.get(i));
            Length left = cut.board().left();
            assertThat(cut.leftEdge()).isEqualTo(top.elevationAt(left).minus(bottom.elevationAt(left)));
            assertThat(cut.length()).isGreaterThanOrEqualTo(cut.leftEdge()).isGreaterThanOrEqualTo(cut.rightEdge());
            // Straight lines: the square board is as long as the two edges on average.
            assertThat(square.cuts().get(i).length().inches())
                    .isCloseTo(cut.leftEdge().plus(cut.rightEdge()).inches() / 2, within(1e-6));
            i++;
        }
        long boards = 0;
        for (StockUse use : sloped.stock(List.of(Length.ofFeet(8), Length.ofFeet(12)), in(0.125))) {
            boards += use.boards();
            assertThat(use.sticks() * use.each()).isBetween(use.boards(), use.boards() + use.each() - 1);
        }
        assertThat(boards).isEqualTo(SPACED.count());
    }

    @Test
    void badInputIsRefused() {
        assertRefused(RISING, LEVEL, BoardEnds.square(), "top was -6 ft over bottom");
        assertRefused(Profile.of(LEVEL.points()).shiftedBy(in(1), Length.ZERO), RISING, BoardEnds.square(), "top ran");
        assertRefused(
                LEVEL, RISING, BoardEnds.square().withDogEars(in(2.75)), "dog-ears were 2 3/4 in on boards 5 1/2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoardEnds.square().withDogEars(Length.ZERO))
                .withMessageContaining("size of dog-ears was 0 in");
        BoardCuts cuts = BoardCuts.of(SPACED, LEVEL, RISING, BoardEnds.square());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cuts.stock(List.of(Length.ofFeet(8)), in(2)))
                .withMessageContaining("kerf was 2 in");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> cuts.stock(List.of(Length.ZERO), in(0.125)))
                .withMessageContaining("every length must be over 0");
    }

    private static void assertRefused(Profile top, Profile bottom, BoardEnds ends, String part) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BoardCuts.of(SPACED, top, bottom, ends))
                .withMessageContaining(part);
    }

    /** A straight line over 10 ft, heights in feet. */
    private static Profile line(double start, double end) {
        return Profile.builder()
                .point(Length.ZERO, Length.ofFeet(start))
                .point(Length.ofFeet(10), Length.ofFeet(end))
                .build();
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
