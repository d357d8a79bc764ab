package org.fencecore.layout;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Puts a layout in words: why it is so, and what is wrong with it. */
final class BoardExplanation {

    private static final String PLACE = "boards";

    private final BoardLayout layout;
    private final BoardPattern pattern;
    private final BoardFit fit;
    private final BoardFitter fitter;

    BoardExplanation(BoardLayout layout, BoardFit fit) {
        this.layout = layout;
        this.pattern = layout.pattern();
        this.fit = fit;
        this.fitter = new BoardFitter(layout.clearLength(), pattern);
    }

    // ---- why ----

    String reason() {
        return switch (fit.choice()) {
            case FULL_BOARDS ->
                fit.count() + (fit.count() == 1 ? " full board" : " full boards")
                        + ": of the counts that keep " + range() + " it has the gap nearest the preferred "
                        + Written.tape(pattern.preferredGap());
            case MIDDLE_SPLIT ->
                noFullCount() + middleRipped() + " and the gap is closed to " + Written.tape(gap())
                        + ", which shares out the " + Written.tape(Length.ofNanometres(fitter.over()))
                        + " that they are too long at the preferred gap of " + Written.tape(pattern.preferredGap());
            case MIDDLE_RIPPED -> noFullCount() + middleRipped() + " at the preferred gap of " + Written.tape(gap());
            case MIDDLE_RIPPED_CLOSER ->
                noFullCount() + middleRipped() + " and the gap is closed to " + Written.tape(gap())
                        + ", because at the preferred gap of " + Written.tape(pattern.preferredGap())
                        + " ripping would leave less than "
                        + Written.tape(Length.ofNanometres(
                                fitter.leastWidth(pattern.preferredGap().nanometres())))
                        + " or reach the end boards";
            case ALL_RIPPED ->
                noFullCount() + "all " + fit.count() + " are ripped to " + Written.tape(rippedWidth())
                        + " with a gap of " + Written.tape(gap())
                        + ", because the boards between the ends are too few to take up the difference and keep "
                        + Written.tape(smallest());
            case RULES_BROKEN ->
                noFullCount() + "as no board may be ripped under " + Written.tape(smallest()) + ", the nearest is "
                        + fit.count() + (fit.count() == 1 ? " board" : " boards") + " with a gap of "
                        + Written.tape(gap());
        };
    }

    private String range() {
        return "the gap from " + Written.tape(pattern.leastGap()) + " to " + Written.tape(pattern.mostGap());
    }

    private String noFullCount() {
        int reaching = fitter.reaching();
        return "no count of full boards keeps " + range() + ": " + fullBoards(reaching - 1) + " and "
                + fullBoards(reaching) + "; " + notAsAsked() + "so ";
    }

    /** Why the boards that the pattern asks to be ripped are not. */
    private String notAsAsked() {
        int asked = fitter.asked();
        if (asked == 0 || fitter.asAsked().isPresent()) {
            return "";
        }
        String rips = asked == 1 ? "one board ripped" : "two boards ripped";
        if (asked > fitter.reaching() - 2) {
            return rips + ", as asked, would reach the ends; ";
        }
        boolean split = pattern.ripping() == Ripping.SPLIT;
        Length left = pattern.width().minus(Length.ofNanometres(fitter.over()).dividedBy(split ? 2 : asked));
        return rips + (split ? " by half of the difference" : "") + ", as asked, would be left with "
                + (left.isPositive() ? Written.tape(left) : "nothing")
                + (split ? ", or the gap under its least; " : ", under the least; ");
    }

    /** Says what so many full boards come to. */
    private String fullBoards(int count) {
        long over = count * pattern.width().nanometres() - layout.clearLength().nanometres();
        if (over > 0) {
            return count + " are " + Written.tape(Length.ofNanometres(over)) + " too long";
        }
        String leave = count + (count == 1 ? " leaves " : " leave ");
        return fitter.spaces(count) == 0
                ? leave + Written.tape(Length.ofNanometres(-over)) + " open"
                : leave + "a gap of " + Written.tape(Length.ofNanometres(fitter.fullGap(count)));
    }

    private String middleRipped() {
        return fit.ripped() + " in the middle of " + fit.count() + " are ripped to " + Written.tape(rippedWidth());
    }

    // ---- what is wrong ----

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        // By the totals: rounded to the nanometre, a gap or width could pass that is not quite in range.
        boolean tight = fit.gapTotal() < fit.spaces() * pattern.leastGap().nanometres();
        if (tight || fit.gapTotal() > fit.spaces() * pattern.mostGap().nanometres()) {
            findings.add(Finding.blocker(
                            "gap-out-of-range",
                            PLACE,
                            "the gap is " + Written.tape(gap(), tight ? Rounding.DOWN : Rounding.UP)
                                    + layout.lap()
                                            .map(lap -> ", a lap of "
                                                    + Written.tape(lap, tight ? Rounding.UP : Rounding.DOWN))
                                            .orElse("")
                                    + ", not from " + Written.tape(pattern.leastGap()) + " to "
                                    + Written.tape(pattern.mostGap()))
                    .withRemedy("change the clear length of " + Written.tape(layout.clearLength())
                            + " by moving a post, accept other gaps, or take another width of board")
                    .withSource(Citation.GEOMETRY));
        }
        if (fit.rippedTotal() < fit.ripped() * fitter.smallest()) {
            findings.add(Finding.blocker(
                            "board-too-narrow",
                            PLACE,
                            "boards would be ripped to " + Written.tape(rippedWidth(), Rounding.DOWN)
                                    + ", under the least of " + Written.tape(smallest(), Rounding.UP))
                    .withRemedy("change the clear length of " + Written.tape(layout.clearLength())
                            + " by moving a post, accept narrower ripped boards, or take another width of board")
                    .withSource(Citation.GEOMETRY));
        }
        if (fit.ripped() > 0 && fit.ripped() == fit.count()) {
            findings.add(Finding.warning(
                            "end-board-ripped",
                            PLACE,
                            "all " + fit.count() + " boards, those at the ends too, are ripped to "
                                    + Written.tape(rippedWidth()))
                    .withRemedy("for full boards at the ends change the clear length of "
                            + Written.tape(layout.clearLength()) + " by moving a post")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    private Length gap() {
        return Length.ofNanometres(fit.gap());
    }

    private Length rippedWidth() {
        return Length.ofNanometres(fit.rippedWidth());
    }

    private Length smallest() {
        return Length.ofNanometres(fitter.smallest());
    }
}
