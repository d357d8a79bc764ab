package org.fencecore.layout;

import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

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
        if (isBattened()) {
            given("batten width", pattern.coverWidth().orElseThrow());
        }
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
            case MIDDLE_SPLIT, MIDDLE_RIPPED, MIDDLE_RIPPED_CLOSER, ALL_RIPPED ->
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
                fit.choice() == Fitting.MIDDLE_SPLIT
                        ? "the preferred gap, closed by half of what the boards are too long"
                        : "the preferred gap, or what comes nearest it and leaves ripped boards their least width",
                Written.inches(pattern.preferredGap()) + " preferred",
                layout.row(Face.OUTSIDE).gap());
        choice(
                "ripped boards",
                fitter.asAsked().isPresent()
                        ? "as asked, in the middle, and no narrower than the least width"
                        : fit.ripped() == fit.count()
                                ? "all, as those between the ends are too few"
                                : "the fewest in the middle that keep the least width, " + parity + " as the boards",
                "least width " + Written.inches(leastWidth),
                fit.ripped());
        Length together = Length.ofNanometres(fit.rippedTotal());
        total(
                "ripped boards together",
                "clear length - full boards x board width - spaces x gap aimed at",
                clearLength() + " - " + full() + " x " + width() + " - " + fit.spaces() + " x "
                        + Written.inches(layout.row(Face.OUTSIDE).gap()),
                together);
        line(
                "width of a ripped board",
                "ripped boards together / ripped boards",
                Written.inches(together) + " / " + fit.ripped(),
                Length.ofNanometres(fit.rippedWidth()));
    }

    private void gap() {
        Length together = layout.clearLength().minus(Length.ofNanometres(fit.gapTotal()));
        total(
                "width of all boards",
                "full boards x board width" + (fit.ripped() > 0 ? " + ripped boards together" : ""),
                full() + " x " + width()
                        + (fit.ripped() > 0 ? " + " + Written.inches(Length.ofNanometres(fit.rippedTotal())) : ""),
                together);
        String formula = "(clear length - width of all boards) / spaces";
        String numbers = fit.spaces() == 0
                ? "none"
                : "(" + clearLength() + " - " + Written.inches(together) + ") / " + fit.spaces();
        layout.lap()
                .ifPresent(lap -> line(
                        "lap",
                        (isBattened() ? "(batten width - " : "(board width - ") + formula + ") / 2" + moved(" - moved"),
                        "(" + Written.inches(pattern.coverWidth().orElseThrow()) + " - " + numbers + ") / 2"
                                + moved(" - " + Written.inches(layout.shift().abs())),
                        lap));
        line("gap", formula, numbers, layout.row(Face.OUTSIDE).gap());
    }

    private String moved(String words) {
        return layout.shift().isZero() ? "" : words;
    }

    private boolean isBattened() {
        return pattern.coverWidth().map(cover -> !cover.equals(pattern.width())).orElse(false);
    }

    private int full() {
        return fit.count() - fit.ripped();
    }

    private String countFormula(String gap) {
        return "(clear length" + sign() + gap + ") / (board width + " + gap + ")";
    }

    private String countNumbers(Length gap) {
        String shown = Written.inches(gap);
        return "(" + clearLength() + sign() + shown + ") / (" + width() + " + " + shown + ")";
    }

    private String sign() {
        return pattern.hasGapAtEnds() ? " - " : " + ";
    }

    private void given(String name, Length value) {
        sheet.given(name, value, Written.tape(value));
    }

    private String clearLength() {
        return Written.inches(layout.clearLength());
    }

    private String width() {
        return Written.inches(pattern.width());
    }

    private void line(String name, String formula, String numbers, Object result) {
        sheet.line(name, formula, numbers, result, shown(result), Citation.GEOMETRY);
    }

    private void choice(String name, String rule, String numbers, Object result) {
        sheet.line(name, rule, numbers, result, shown(result), Citation.COMMON_PRACTICE);
    }

    /** A total, which goes into the next line and not on the tape. */
    private void total(String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.inches(result), Citation.GEOMETRY);
    }

    private static String shown(Object result) {
        return result instanceof Length length ? Written.tape(length) : result.toString();
    }
}
