package org.fencecore.json;

import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Field.instead;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.RATIO;

import java.util.Optional;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPattern.Arrangement;
import org.fencecore.layout.Ripping;
import org.fencecore.units.Length;

/** The forms of board patterns. */
final class PatternForms {

    /** The least, the preferred and the most of a gap or a lap. */
    private record Span(Length least, Length preferred, Length most) {}

    private static final Form<Span> SPAN = Made.<Span>named("span", "What is allowed and what is liked best.")
            .from(
                    required("least", LENGTH, Span::least, "the least"),
                    required("preferred", LENGTH, Span::preferred, "the best"),
                    required("most", LENGTH, Span::most, "the most"),
                    Span::new)
            .end(span -> span);

    private static final Field<BoardPattern, Length> WIDTH =
            required("width", LENGTH, BoardPattern::width, "how wide a board is");

    static final Form<BoardPattern> PATTERN = Kinds.<BoardPattern>named("pattern", "How boards are set.")
            .kind(
                    "sideBySide",
                    BoardPattern.class,
                    pattern -> pattern.arrangement() == Arrangement.SIDE_BY_SIDE,
                    gapped(Made.<BoardPattern>named("sideBySide", "One row, touching or nearly so.")
                            .from(WIDTH, BoardPattern::sideBySide)))
            .kind(
                    "spaced",
                    BoardPattern.class,
                    pattern -> pattern.arrangement() == Arrangement.SPACED,
                    gapped(Made.<BoardPattern>named("spaced", "One row with gaps.")
                            .from(
                                    WIDTH,
                                    required("preferredGap", LENGTH, PatternForms::positiveGap, "the gap liked best"),
                                    BoardPattern::spaced)))
            .kind(
                    "shadowbox",
                    BoardPattern.class,
                    BoardPattern::isShadowbox,
                    lapped(Made.<BoardPattern>named("shadowbox", "Two rows on either face.")
                            .from(WIDTH, BoardPattern::shadowbox)))
            .kind(
                    "boardOnBoard",
                    BoardPattern.class,
                    pattern -> pattern.arrangement() == Arrangement.BOARD_ON_BOARD,
                    lapped(Made.<BoardPattern>named("boardOnBoard", "Boards over the gaps of a first row.")
                            .from(WIDTH, BoardPattern::boardOnBoard)))
            .kind(
                    "boardAndBatten",
                    BoardPattern.class,
                    pattern -> pattern.arrangement() == Arrangement.BOARD_AND_BATTEN,
                    lapped(Made.<BoardPattern>named("boardAndBatten", "Battens over the gaps of the boards.")
                            .from(
                                    WIDTH,
                                    required(
                                            "battenWidth",
                                            LENGTH,
                                            pattern -> pattern.coverWidth().orElseThrow(),
                                            "how wide a batten is"),
                                    BoardPattern::boardAndBatten)));

    private PatternForms() {}

    private static Made<BoardPattern, BoardPattern> gapped(Made.Begun<BoardPattern, BoardPattern> begun) {
        return any(begun.with(
                        usual("gaps", SPAN, PatternForms::gaps, "the gaps that are allowed"),
                        (pattern, gaps) -> pattern.withGaps(gaps.least(), gaps.preferred(), gaps.most()))
                .with(
                        usual("gapAtEnds", FLAG, BoardPattern::hasGapAtEnds, "whether a gap is left at both ends"),
                        (pattern, wanted) -> wanted ? pattern.withGapAtEnds() : pattern));
    }

    private static Made<BoardPattern, BoardPattern> lapped(Made.Begun<BoardPattern, BoardPattern> begun) {
        return any(begun.with(instead("lap", LENGTH, "the lap liked best"), BoardPattern::withLap)
                .with(
                        maybe("laps", SPAN, PatternForms::laps, "the laps that are allowed"),
                        (pattern, laps) -> pattern.withLaps(laps.least(), laps.preferred(), laps.most())));
    }

    private static Made<BoardPattern, BoardPattern> any(Made.Begun<BoardPattern, BoardPattern> begun) {
        return begun.with(
                        usual("smallestPart", RATIO, BoardPattern::smallestPart, "how much of a ripped board is kept"),
                        BoardPattern::withSmallestPart)
                .with(
                        usual(
                                "ripping",
                                Basics.oneOf(Ripping.class),
                                BoardPattern::ripping,
                                "which boards are ripped where full ones do not fill a length"),
                        BoardPattern::withRipping)
                .end(pattern -> pattern);
    }

    private static Span gaps(BoardPattern pattern) {
        return new Span(pattern.leastGap(), pattern.preferredGap(), pattern.mostGap());
    }

    /** Any gap over zero to begin with; the gaps that are written beside it count. */
    private static Length positiveGap(BoardPattern pattern) {
        return Length.max(pattern.preferredGap(), Length.ofNanometres(2));
    }

    /** Empty where the gaps are no whole nanometres of lap, which only those of a batten when not said can be. */
    private static Optional<Span> laps(BoardPattern pattern) {
        Length cover = pattern.coverWidth().orElseThrow();
        Span laps = new Span(
                cover.minus(pattern.mostGap()).dividedBy(2),
                cover.minus(pattern.preferredGap()).dividedBy(2),
                cover.minus(pattern.leastGap()).dividedBy(2));
        BoardPattern same = pattern.withLaps(laps.least(), laps.preferred(), laps.most());
        return same.equals(pattern) ? Optional.of(laps) : Optional.empty();
    }
}
