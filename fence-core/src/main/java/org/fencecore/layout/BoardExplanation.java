package org.fencecore.layout;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;

/** Puts a layout in words: why it is so, and what is wrong with it. */
final class BoardExplanation {

    private static final String PLACE = "boards";

    private final Length clearLength;
    private final BoardPattern pattern;
    private final BoardFit fit;
    private final BoardFitter fitter;

    BoardExplanation(BoardLayout layout, BoardFit fit) {
        this.clearLength = layout.clearLength();
        this.pattern = layout.pattern();
        this.fit = fit;
        this.fitter = new BoardFitter(clearLength, pattern);
    }

    // ---- why ----

    String reason() {
        String range = "the gap from " + pattern.leastGap() + " to " + pattern.mostGap();
        if (fit.choice() == Fitting.FULL_BOARDS) {
            return boards(fit.count(), " full") + ": of the counts that keep " + range
                    + " it has the gap nearest the preferred " + pattern.preferredGap();
        }
        int over = fitter.reaching();
        String noCount = "no count of full boards keeps " + range + ": " + fullBoards(over - 1) + " and "
                + fullBoards(over) + "; so ";
        return noCount + chosenInstead();
    }

    private String chosenInstead() {
        String middle = fit.ripped() + " in the middle of " + fit.count() + " are ripped to " + rippedWidth();
        return switch (fit.choice()) {
            case FULL_BOARDS -> throw new IllegalStateException("full boards are not a way out");
            case MIDDLE_RIPPED -> middle + " at the preferred gap of " + gap();
            case MIDDLE_RIPPED_CLOSER ->
                middle + " and the gap is closed to " + gap()
                        + ", because at the preferred gap of " + pattern.preferredGap()
                        + " ripping would leave less than "
                        + Length.ofNanometres(
                                fitter.leastWidth(pattern.preferredGap().nanometres())) + " or reach the end boards";
            case ALL_RIPPED ->
                "all " + fit.count() + " are ripped to " + rippedWidth() + " with a gap of " + gap()
                        + ", because the boards between the ends are too few to take up the difference and keep "
                        + smallest();
            case RULES_BROKEN ->
                "with no ripped board under " + smallest() + " the nearest is " + boards(fit.count(), "")
                        + " with a gap of " + gap();
        };
    }

    /** Says what so many full boards come to. */
    private String fullBoards(int count) {
        long over = count * pattern.width().nanometres() - clearLength.nanometres();
        if (over > 0) {
            return count + " are " + Length.ofNanometres(over) + " too long";
        }
        return fitter.spaces(count) == 0
                ? count + " leaves " + Length.ofNanometres(-over) + " open"
                : count + " leave a gap of " + Length.ofNanometres(fitter.fullGap(count));
    }

    private static String boards(int count, String kind) {
        return count + kind + (count == 1 ? " board" : " boards");
    }

    // ---- what is wrong ----

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (fit.spaces() > 0 && (gap().compareTo(pattern.leastGap()) < 0 || gap().compareTo(pattern.mostGap()) > 0)) {
            findings.add(Finding.blocker(
                            "gap-out-of-range",
                            PLACE,
                            "the gap is " + gap() + (pattern.isShadowbox() ? ", a lap of " + lap() : "") + ", not from "
                                    + pattern.leastGap() + " to " + pattern.mostGap())
                    .remedy("change the clear length of " + clearLength
                            + " by moving a post, accept other gaps, or take another width of board")
                    .source(Citation.GEOMETRY));
        }
        if (fit.ripped() > 0 && rippedWidth().compareTo(smallest()) < 0) {
            findings.add(Finding.blocker(
                            "board-too-narrow",
                            PLACE,
                            "boards would be ripped to " + rippedWidth() + ", under the least of " + smallest())
                    .remedy("change the clear length of " + clearLength
                            + " by moving a post, accept narrower ripped boards, or take another width of board")
                    .source(Citation.GEOMETRY));
        }
        if (fit.ripped() > 0 && fit.ripped() == fit.count()) {
            findings.add(Finding.warning(
                            "end-board-ripped",
                            PLACE,
                            "all " + fit.count() + " boards, those at the ends too, are ripped to " + rippedWidth())
                    .remedy("for full boards at the ends change the clear length of " + clearLength
                            + " by moving a post")
                    .source(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    private Length gap() {
        return Length.ofNanometres(fit.gap());
    }

    private Length lap() {
        return pattern.width().minus(gap()).dividedBy(2);
    }

    private Length rippedWidth() {
        return Length.ofNanometres(fit.rippedWidth());
    }

    private Length smallest() {
        return Length.ofNanometres(fitter.smallest());
    }
}
