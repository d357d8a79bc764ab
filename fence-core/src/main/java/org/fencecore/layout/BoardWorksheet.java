package org.fencecore.layout;

import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;

/** Writes out how the outside row of a layout was worked out. */
final class BoardWorksheet {

    private final BoardLayout layout;
    private final BoardPattern pattern;
    private final BoardFit fit;
    private final BoardFitter fitter;
    private final Worksheet.Builder sheet = Worksheet.titled("Boards, outside row");

    BoardWorksheet(BoardLayout layout, BoardFit fit) {
        this.layout = layout;
        this.pattern = layout.pattern();
        this.fit = fit;
        this.fitter = new BoardFitter(layout.clearLength(), pattern);
    }

    Worksheet worksheet() {
        given("clear length", layout.clearLength());
        given("board width", pattern.width());
        given("least gap", pattern.leastGap());
        given("preferred gap", pattern.preferredGap());
        given("most gap", pattern.mostGap());
        line(
                "fewest full boards",
                countFormula("most gap") + ", rounded up, at least 1",
                countNumbers(pattern.mostGap()),
                fitter.fewest());
        line(
                "most full boards",
                countFormula("least gap") + ", rounded down",
                countNumbers(pattern.leastGap()),
                fitter.mostBoards());
        boards();
        String ends = pattern.hasGapAtEnds() ? " + 1" : " - 1";
        line("spaces", "boards" + ends, fit.count() + ends, fit.spaces());
        if (fit.ripped() > 0) {
            ripped();
        }
        gap();
        return sheet.build();
    }

    private void boards() {
        String fewestToMost = fitter.fewest() + " to " + fitter.mostBoards();
        switch (fit.choice()) {
            case FULL_BOARDS ->
                choice("boards", "from fewest to most, the gap nearest the preferred", fewestToMost, fit.count());
            case MIDDLE_RIPPED, MIDDLE_RIPPED_CLOSER, ALL_RIPPED ->
                choice(
                        "boards",
                        "no count from fewest to most, so some are ripped of " + countFormula("preferred gap")
                                + ", rounded up",
                        countNumbers(pattern.preferredGap()),
                        fit.count());
            case RULES_BROKEN ->
                choice(
                        "boards",
                        "no count from fewest to most, and too little to rip, so the gap nearest its range",
                        fewestToMost,
                        fit.count());
        }
    }

    private void ripped() {
        String parity = fit.count() % 2 == 0 ? "even" : "odd";
        Length leastWidth = Length.ofNanometres(fitter.leastWidth(fit.gap()));
        choice(
                "gap aimed at",
                "the preferred gap, or what comes nearest it and leaves ripped boards their least width",
                pattern.preferredGap() + " preferred",
                layout.row(Face.OUTSIDE).gap());
        choice(
                "ripped boards",
                fit.ripped() == fit.count()
                        ? "all, as those between the ends are too few"
                        : "the fewest in the middle that keep the least width, " + parity + " as the boards",
                "least width " + leastWidth,
                fit.ripped());
        Length together = Length.ofNanometres(fit.rippedTotal());
        line(
                "ripped boards together",
                "clear length - full boards x board width - spaces x gap aimed at",
                layout.clearLength() + " - " + full() + " x " + pattern.width() + " - " + fit.spaces() + " x "
                        + layout.row(Face.OUTSIDE).gap(),
                together);
        line(
                "width of a ripped board",
                "ripped boards together / ripped boards",
                together + " / " + fit.ripped(),
                Length.ofNanometres(fit.rippedWidth()));
    }

    private void gap() {
        Length together = layout.clearLength().minus(Length.ofNanometres(fit.gapTotal()));
        line(
                "width of all boards",
                "full boards x board width" + (fit.ripped() > 0 ? " + ripped boards together" : ""),
                full() + " x " + pattern.width()
                        + (fit.ripped() > 0 ? " + " + Length.ofNanometres(fit.rippedTotal()) : ""),
                together);
        String formula = "(clear length - width of all boards) / spaces";
        String numbers =
                fit.spaces() == 0 ? "none" : "(" + layout.clearLength() + " - " + together + ") / " + fit.spaces();
        layout.lap()
                .ifPresent(lap -> line(
                        "lap",
                        "(board width - " + formula + ") / 2",
                        "(" + pattern.width() + " - " + numbers + ") / 2",
                        lap));
        line("gap", formula, numbers, layout.row(Face.OUTSIDE).gap());
    }

    private int full() {
        return fit.count() - fit.ripped();
    }

    private String countFormula(String gap) {
        return "(clear length" + sign() + gap + ") / (board width + " + gap + ")";
    }

    private String countNumbers(Length gap) {
        return "(" + layout.clearLength() + sign() + gap + ") / (" + pattern.width() + " + " + gap + ")";
    }

    private String sign() {
        return pattern.hasGapAtEnds() ? " - " : " + ";
    }

    private void given(String name, Length value) {
        sheet.given(name, value, value.toString());
    }

    private void line(String name, String formula, String numbers, Object result) {
        sheet.line(name, formula, numbers, result, result.toString(), Citation.GEOMETRY);
    }

    private void choice(String name, String rule, String numbers, Object result) {
        sheet.line(name, rule, numbers, result, result.toString(), Citation.COMMON_PRACTICE);
    }
}
