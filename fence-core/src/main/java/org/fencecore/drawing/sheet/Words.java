package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.drawing.Lettering;
import org.fencecore.worksheet.Written;

/** Text as it can be written on a sheet: of characters that XML holds, on one line, and not longer than a sheet. */
final class Words {

    /** A name longer than this is cut; no sheet has room for it. */
    static final int MOST_CHARACTERS = 60;

    private Words() {}

    /** Returns a text on one line, without what no file may hold. */
    static String clean(String text) {
        return Written.printable(text).strip();
    }

    /** Returns a clean text, cut with an ellipsis if no sheet could hold it. */
    static String oneLine(String text) {
        String clean = clean(text);
        if (clean.codePointCount(0, clean.length()) <= MOST_CHARACTERS) {
            return clean;
        }
        return clean.substring(0, clean.offsetByCodePoints(0, MOST_CHARACTERS - 1)) + "…";
    }

    /** Breaks a text into lines no longer than a width in mm; a word longer than that is broken. */
    static List<String> wrap(String text, Lettering lettering, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : clean(text).split(" +", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, lettering) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(breakOff(word, lettering, width, lines));
        }
        lines.add(line.toString());
        return lines;
    }

    /** Adds full lines of a word that is too long for one, and returns the rest. */
    private static String breakOff(String word, Lettering lettering, double width, List<String> lines) {
        StringBuilder part = new StringBuilder();
        int[] letters = word.codePoints().toArray();
        for (int letter : letters) {
            int length = part.length();
            part.appendCodePoint(letter);
            if (length > 0 && width(part.toString(), lettering) > width) {
                part.setLength(length);
                lines.add(part.toString());
                part.setLength(0);
                part.appendCodePoint(letter);
            }
        }
        return part.toString();
    }

    /**
     * Returns about how long a text is on paper, in mm. No font is at hand when a drawing is written, so this takes the
     * widths of a wide one, and full width for what is not Latin.
     */
    static double width(String text, Lettering lettering) {
        double ems = text.codePoints().mapToDouble(Words::ems).sum();
        return ems * lettering.size().millimetres() * (lettering.isBold() ? 1.1 : 1);
    }

    private static double ems(int letter) {
        int type = Character.getType(letter);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        if (" '.,:;|!iIjl()[]/-".indexOf(letter) >= 0) {
            return 0.38;
        }
        if ("mwMW%".indexOf(letter) >= 0) {
            return 0.98;
        }
        if (letter > 0x24F) {
            return 1.05;
        }
        return Character.isUpperCase(letter) ? 0.75 : 0.62;
    }
}
