package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;

/** Writes level notes as a page of the level book. */
final class LevelPage {

    private static final TapeFormat METRES = TapeFormat.metres(3);
    private static final TapeFormat FEET = TapeFormat.decimalFeet(3);
    private static final Citation CHECK = Citation.of("NAVEDTRA 14071", "Level Computations", "");

    private final LevelNotes notes;
    private final Worksheet.Builder sheet;

    LevelPage(LevelNotes notes) {
        this.notes = notes;
        LevelEntry first = notes.entries().get(0);
        sheet = Worksheet.titled(
                "Level notes from " + first.point() + " to " + notes.last().point());
    }

    String write(Length amount) {
        return (notes.isMetric() ? METRES : FEET).format(amount);
    }

    Worksheet worksheet() {
        reduce();
        sum();
        notes.known().ifPresent(this::close);
        LevelEntry last = notes.last();
        if (!isAdjusted()) {
            line(
                    "elevation of " + last.point() + " by the sums",
                    "first elevation + sum BS - sum FS",
                    write(notes.entries().get(0).observed()) + " + " + write(notes.backsightSum()) + " - "
                            + write(notes.foresightSum()),
                    last.elevation(),
                    CHECK);
        }
        return sheet.build();
    }

    private boolean isAdjusted() {
        return notes.known().isPresent() && notes.spread() != MisclosureSpread.NONE;
    }

    private void reduce() {
        Length height = Length.ZERO;
        for (LevelEntry entry : notes.entries()) {
            Optional<Length> sight = entry.foresight().or(entry::intermediateSight);
            if (sight.isEmpty()) {
                sheet.given("elevation of " + entry.point(), entry.observed(), write(entry.observed()));
            } else {
                boolean isFore = entry.foresight().isPresent();
                line(
                        entry.point(),
                        isFore ? "HI - FS" : "HI - IS",
                        write(height) + " - " + write(sight.get()),
                        entry.observed(),
                        Citation.GEOMETRY);
            }
            if (entry.heightOfInstrument().isPresent()) {
                height = entry.heightOfInstrument().get();
                line(
                        "HI over " + entry.point(),
                        "elevation + BS",
                        write(entry.observed()) + " + "
                                + write(entry.backsight().orElseThrow()),
                        height,
                        Citation.GEOMETRY);
            }
        }
    }

    private void sum() {
        List<String> back = new ArrayList<>();
        List<String> fore = new ArrayList<>();
        for (LevelEntry entry : notes.entries()) {
            entry.backsight().ifPresent(reading -> back.add(write(reading)));
            entry.foresight().ifPresent(reading -> fore.add(write(reading)));
        }
        line("sum BS", "all backsights", String.join(" + ", back), notes.backsightSum(), Citation.GEOMETRY);
        line("sum FS", "all foresights", String.join(" + ", fore), notes.foresightSum(), Citation.GEOMETRY);
        line(
                "rise by the sums",
                "sum BS - sum FS",
                write(notes.backsightSum()) + " - " + write(notes.foresightSum()),
                notes.rise(),
                CHECK);
        Length first = notes.entries().get(0).observed();
        line(
                "rise by the elevations",
                "last elevation - first, must be the same",
                write(notes.last().observed()) + " - " + write(first),
                notes.last().observed().minus(first),
                CHECK);
    }

    private void close(Length known) {
        LevelEntry last = notes.last();
        sheet.given("known elevation of " + last.point(), known, write(known));
        Length misclosure = last.observed().minus(known);
        line(
                "misclosure",
                "as read - known",
                write(last.observed()) + " - " + write(known),
                misclosure,
                Citation.GEOMETRY);
        if (notes.hasGivenAllowable()) {
            sheet.given("allowable", notes.allowableMisclosure(), write(notes.allowableMisclosure()));
        } else {
            line(
                    "allowable",
                    "5 mm x sqrt(set-ups)",
                    "5 mm x sqrt(" + notes.setUps() + ")",
                    notes.allowableMisclosure(),
                    Citation.COMMON_PRACTICE);
        }
        if (!isAdjusted()) {
            return;
        }
        String rule = notes.spread() == MisclosureSpread.BY_SETUP
                ? "as read - misclosure x set-ups to it / " + notes.setUps()
                : "as read - misclosure x distance to it / whole distance";
        for (LevelEntry entry : notes.entries().subList(1, notes.entries().size())) {
            String sign = entry.correction().isNegative() ? " - " : " + ";
            line(
                    "elevation of " + entry.point(),
                    rule,
                    write(entry.observed()) + sign + write(entry.correction().abs()),
                    entry.elevation(),
                    CHECK);
        }
    }

    private void line(String name, String formula, String numbers, Length result, Citation source) {
        sheet.line(name, formula, numbers, result, write(result), source);
    }
}
