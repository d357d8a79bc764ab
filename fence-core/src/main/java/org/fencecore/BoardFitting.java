package org.fencecore;

import java.util.List;
import java.util.Optional;
import org.fencecore.boarding.BoardMovement;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Fitting;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Fits upright boards into the stretches and leaves of one line, and tells what is to be said of them. */
final class BoardFitting {

    private static final int MOST_BOARDS = 5_000_000;

    private final FenceStyle style;
    private final FenceLine line;
    private final PostBook book;
    private final Findings findings;

    BoardFitting(FenceStyle style, FenceLine line, PostBook book, Findings findings) {
        this.style = style;
        this.line = line;
        this.book = book;
        this.findings = findings;
    }

    /** Boards of the style's pattern; none, with a finding, where they do not fit. */
    Optional<BoardLayout> fit(Length clear, String place) {
        Length least = style.pattern().minimumLength();
        if (clear.compareTo(least) < 0) {
            findings.add(Finding.blocker(
                            "too-short-for-boards",
                            place,
                            Written.tape(clear, Rounding.DOWN) + " is too short for the pattern, which needs "
                                    + Written.tape(least, Rounding.UP))
                    .withRemedy("move the gate or the end of the fence, or use narrower boards"));
            return Optional.empty();
        }
        if (clear.wholePieces(style.pattern().width()) >= MOST_BOARDS) {
            findings.add(Finding.blocker(
                            "too-many-boards",
                            place,
                            Written.feet(clear) + " would take over " + MOST_BOARDS + " boards of "
                                    + style.pattern().width())
                    .withRemedy("check the width of the boards and its unit"));
            return Optional.empty();
        }
        BoardLayout layout = BoardLayout.fit(clear, style.pattern());
        findings.later(layout::findings, place);
        return Optional.of(layout);
    }

    /** The same for a leaf, which says at once how wide it would need no rip. */
    Optional<BoardLayout> fitLeaf(Length width, String place) {
        Optional<BoardLayout> boards = fit(width, place);
        boards.ifPresent(layout -> findings.later(
                () -> rips(layout, place, "the leaf", "narrower", "wider, by the opening or the gaps beside it")));
        return boards;
    }

    /** What the boards as laid out close of the wind, and how they move. */
    void close(BoardLayout layout, String place) {
        book.close(line, () -> style.privacy(layout).solid());
        style.boards().wood().ifPresent(wood -> {
            findings.later(() -> BoardMovement.of(layout, wood).findings(wood.allowedGap()), place);
        });
        findings.later(() -> style.boards().isHorizontal()
                ? rips(layout, place, "the fence", "lower", "higher")
                : rips(layout, place, "the boarding", "shorter", "longer, by moving the post at either end"));
    }

    /** Says what length would need no rip, so that a post, a gate or the height can be changed. */
    private static List<Finding> rips(BoardLayout layout, String place, String what, String less, String more) {
        if (layout.choice() == Fitting.FULL_BOARDS) {
            return List.of();
        }
        Length shorter = layout.clearLength().minus(layout.flushShorter());
        Length longer = layout.flushLonger().minus(layout.clearLength());
        return List.of(Finding.note("boards-ripped", place, layout.reason())
                .withRemedy("for full boards alone make " + what + " " + Written.tape(shorter, Rounding.UP) + " " + less
                        + " or " + Written.tape(longer, Rounding.UP) + " " + more)
                .withSource(Citation.GEOMETRY));
    }
}
