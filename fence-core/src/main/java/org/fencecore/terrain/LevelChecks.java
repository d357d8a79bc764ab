package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;

/** Finds what does not check in level notes. */
final class LevelChecks {

    private static final Citation CHECK = Citation.of("NAVEDTRA 14071", "Level Computations", "");

    private final LevelNotes notes;
    private final LevelPage page;
    private final List<Finding> findings = new ArrayList<>();

    LevelChecks(LevelNotes notes) {
        this.notes = notes;
        page = new LevelPage(notes);
    }

    List<Finding> findings() {
        checkClosure();
        notes.writtenBacksights().ifPresent(sum -> checkSum("backsights", sum, notes.backsightSum()));
        notes.writtenForesights().ifPresent(sum -> checkSum("foresights", sum, notes.foresightSum()));
        for (LevelEntry entry : notes.entries()) {
            Length written = notes.written().get(entry.point());
            if (written != null && !written.equals(entry.observed()) && isFirst(entry)) {
                findings.add(Finding.warning(
                                "level-written-differs",
                                entry.point(),
                                "the book has " + page.write(written) + ", the readings give "
                                        + page.write(entry.observed()))
                        .withRemedy("see whether a reading or the sum was written down wrong"));
            }
        }
        return List.copyOf(findings);
    }

    /** A line that ends on its benchmark has that name twice; the book's elevation is that at the beginning. */
    private boolean isFirst(LevelEntry entry) {
        return entry != notes.last()
                || !entry.point().equals(notes.entries().get(0).point());
    }

    private void checkClosure() {
        String end = notes.last().point();
        if (notes.misclosure().isEmpty()) {
            findings.add(Finding.note(
                            "level-not-closed",
                            end,
                            "the elevation of the last point is not known from elsewhere, so a wrong reading does not show")
                    .withRemedy("level back to the benchmark, or on to another one")
                    .withSource(Citation.COMMON_PRACTICE));
            return;
        }
        Length misclosure = notes.misclosure().get();
        Length allowable = notes.allowableMisclosure();
        if (misclosure.abs().compareTo(allowable) > 0) {
            String rule =
                    notes.hasGivenAllowable() ? "" : " (5 mm times the square root of " + notes.setUps() + " set-ups)";
            findings.add(Finding.warning(
                            "level-misclosure",
                            end,
                            "the line ends " + page.write(misclosure.abs())
                                    + (misclosure.isPositive() ? " too high" : " too low") + ", over the allowable "
                                    + page.write(allowable) + rule)
                    .withRemedy("check the readings at the turning points, and level again if none is found wrong")
                    .withSource(notes.hasGivenAllowable() ? Citation.of("given", "", "") : Citation.COMMON_PRACTICE));
        }
    }

    private void checkSum(String which, Length written, Length sum) {
        if (!written.equals(sum)) {
            findings.add(Finding.warning(
                            "level-sums-differ",
                            "foot of the page",
                            "the book has " + page.write(written) + " for the sum of the " + which
                                    + ", the readings add up to " + page.write(sum))
                    .withRemedy("add the column again, and see whether a reading was written down wrong")
                    .withSource(CHECK));
        }
    }
}
