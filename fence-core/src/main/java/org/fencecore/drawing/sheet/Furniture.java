package org.fencecore.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Key;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.units.tape.TapeReading;

/**
 * What stands round a drawing on its sheet: the frame, and a strip below or beside the drawing with title, notes, key,
 * scale and north arrow. What is left of the sheet is the drawing's. All in mm from the upper left corner of the sheet.
 */
final class Furniture {

    static final double MARGIN = 10;
    private static final double PAD = 3;
    private static final double SIDE_STRIP = 70;
    private static final double KEY_WIDTH = 58;
    private static final double SCALE_WIDTH = 68;
    private static final double LONGEST_BAR = 50;
    private static final double BAR_HEIGHT = 1.6;
    private static final double LEADING = 1.4;
    /** More feet than this are beyond what a length holds. */
    private static final long MOST_UNITS = 1_000_000_000;

    private static final double LONGEST_LINE = 150;
    private static final int LINES_BELOW = 14;
    private static final int LINES_BESIDE = 40;
    private static final Layer BLACK = Layer.POST_MARKS;
    private static final Layer THIN = Layer.DIMENSIONS;

    final Ink ink = new Ink();
    final double areaWidth;
    final double areaHeight;

    private Furniture(Drawing drawing, Paper paper, Scale scale, List<String> notes, boolean beside) {
        double width = paper.width().millimetres() - 2 * MARGIN;
        double height = paper.height().millimetres() - 2 * MARGIN;
        ink.add(Trace.rectangle(THIN, MARGIN, MARGIN, width, height));
        Ink keyBlock = keyBlock(drawing.key());
        Ink scaleBlock = scaleBlock(drawing, paper, scale);
        if (beside) {
            double x = MARGIN + width - SIDE_STRIP;
            ink.add(Trace.line(THIN, x, MARGIN, x, MARGIN + height));
            Ink words = wordBlock(drawing, notes, SIDE_STRIP - 2 * PAD, LINES_BESIDE);
            ink.addAll(words, x + PAD, MARGIN + PAD);
            ink.addAll(keyBlock, x + PAD, MARGIN + 3 * PAD + words.height());
            ink.addAll(scaleBlock, x + PAD, MARGIN + height - PAD - scaleBlock.height());
            boolean isRoom = words.height() + keyBlock.height() + scaleBlock.height() + 6 * PAD <= height;
            areaWidth = width - SIDE_STRIP - 2 * PAD;
            // Under zero where even a drawing without lines has no room, for the strip itself runs over.
            areaHeight = isRoom ? height - 2 * PAD : -1;
        } else {
            double scaleX = width - SCALE_WIDTH;
            double keyX = drawing.key().isEmpty() ? scaleX : scaleX - KEY_WIDTH;
            Ink words = wordBlock(drawing, notes, Math.min(keyX - 2 * PAD, LONGEST_LINE), LINES_BELOW);
            double tallest = Math.max(words.height(), Math.max(keyBlock.height(), scaleBlock.height()));
            double top = MARGIN + height - tallest - 2 * PAD;
            ink.add(Trace.line(THIN, MARGIN, top, MARGIN + width, top));
            ink.addAll(words, MARGIN + PAD, top + PAD);
            ink.addAll(keyBlock, MARGIN + keyX + PAD, top + PAD);
            ink.addAll(scaleBlock, MARGIN + scaleX + PAD, top + PAD);
            areaWidth = width - 2 * PAD;
            areaHeight = top - MARGIN - 2 * PAD;
        }
    }

    static Furniture below(Drawing drawing, Paper paper, Scale scale, List<String> notes) {
        return new Furniture(drawing, paper, scale, notes, false);
    }

    static Furniture beside(Drawing drawing, Paper paper, Scale scale, List<String> notes) {
        return new Furniture(drawing, paper, scale, notes, true);
    }

    /** How far right a drawing of a width begins to stand in the middle of its area. */
    double centredX(double drawingWidth) {
        return MARGIN + PAD + (areaWidth - drawingWidth) / 2;
    }

    /** How far down a drawing of a height begins to stand in the middle of its area. */
    double centredY(double drawingHeight) {
        return MARGIN + PAD + (areaHeight - drawingHeight) / 2;
    }

    private static Ink wordBlock(Drawing drawing, List<String> notes, double width, int mostLines) {
        Ink block = new Ink();
        double y = 0;
        for (String line : title(drawing.title(), width)) {
            y = line(block, line, Lettering.TITLE, 0, y);
        }
        for (String line : cut(Words.wrap(drawing.job().map(Words::oneLine).orElse(""), Lettering.NUMBER, width), 2)) {
            y = line(block, line, Lettering.NUMBER, 0, y);
        }
        for (String line : cut(Words.wrap(drawing.caution().orElse(""), Lettering.NUMBER, width), mostLines / 2)) {
            y = line(block, line, Lettering.NUMBER, 0, y);
        }
        List<String> lines = new ArrayList<>(Words.wrap(drawing.description(), Lettering.NOTE, width));
        notes.forEach(note -> lines.addAll(Words.wrap(note, Lettering.NOTE, width)));
        for (String line : cut(lines, mostLines)) {
            y = line(block, line, Lettering.NOTE, 0, y);
        }
        return block;
    }

    private static List<String> cut(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, most - 1));
        first.add("More than this sheet has room for.");
        return first;
    }

    private static List<String> title(String title, double width) {
        List<String> lines = Words.wrap(title, Lettering.TITLE, width);
        return lines.size() <= 2 ? lines : List.of(lines.get(0), lines.get(1) + "…");
    }

    /** Writes a line below y and returns where the next one begins. */
    private static double line(Ink block, String text, Lettering lettering, double x, double y) {
        double leading = LEADING * lettering.size().millimetres();
        if (text.isEmpty()) {
            return y;
        }
        block.add(Writing.from(text, lettering, x, y + leading / 2));
        return y + leading;
    }

    private static Ink keyBlock(List<Key> key) {
        double swatchWidth = 7;
        double swatchHeight = 2.4;
        Ink block = new Ink();
        double y = 0;
        for (Key entry : key) {
            double middle = y + LEADING * Lettering.NOTE.size().millimetres() / 2;
            if (entry.symbol().isPresent()) {
                block.add(Trace.symbol(entry.layer(), entry.symbol().orElseThrow(), swatchWidth / 2, middle));
            } else if (isPiece(entry.layer())) {
                block.add(Trace.rectangle(entry.layer(), 0, middle - swatchHeight / 2, swatchWidth, swatchHeight));
            } else {
                block.add(Trace.line(entry.layer(), 0, middle, swatchWidth, middle));
            }
            for (String text : Words.wrap(entry.text(), Lettering.NOTE, KEY_WIDTH - swatchWidth - 2 * PAD)) {
                y = line(block, text, Lettering.NOTE, swatchWidth + PAD / 2, y);
            }
        }
        return block;
    }

    private static boolean isPiece(Layer layer) {
        return layer == Layer.POSTS || layer == Layer.RAILS || Pen.of(layer).isFilled();
    }

    private static Ink scaleBlock(Drawing drawing, Paper paper, Scale scale) {
        Ink block = new Ink();
        if (drawing.shapes().isEmpty()) {
            return block;
        }
        double y = line(block, "Scale " + scale, Lettering.NUMBER, 0, 0);
        Length bar = bar(paper, scale);
        double length = scale.millimetres(bar);
        TapeFormat real = paper.isMetric() ? TapeFormat.metres(1) : TapeFormat.decimalFeet(0);
        block.add(Writing.upTo(
                real.format(bar),
                Lettering.NOTE,
                length,
                y + LEADING * Lettering.NOTE.size().millimetres() / 2));
        y = line(block, "0", Lettering.NOTE, 0, y);
        block.add(Trace.rectangle(THIN, 0, y, length, BAR_HEIGHT));
        for (int part = 0; part < 4; part += 2) {
            block.add(Trace.rectangle(BLACK, length * part / 4, y, length / 4, BAR_HEIGHT));
        }
        TapeFormat tape = paper.isMetric() ? TapeFormat.millimetres(1) : TapeFormat.inches(16);
        TapeReading onPaper = tape.read(scale.onPaper(bar));
        y = line(
                block,
                "Bar on paper: " + (onPaper.isExact() ? "" : "about ") + onPaper.text() + ".",
                Lettering.NOTE,
                0,
                y + BAR_HEIGHT + 1);
        line(block, "Print at 100 % on " + paper + ".", Lettering.NOTE, 0, y);
        if (drawing.isNorthUp()) {
            double x = SCALE_WIDTH - 2 * PAD - 4;
            block.add(Trace.piece(BLACK, x, 0, x + 2.2, 12, x, 9.5, x - 2.2, 12));
            block.add(Writing.centred("N", Lettering.NUMBER, x, 15, 0));
        }
        return block;
    }

    /** The longest of 1, 2, 5, 10, 20 ... feet, or tenths of a metre, that is no longer on paper than the bar may be. */
    private static Length bar(Paper paper, Scale scale) {
        Length unit = paper.isMetric() ? Length.ofMillimetres(100) : Length.ofFeet(1);
        long best = 1;
        for (long tens = 1; tens <= MOST_UNITS && scale.millimetres(unit.times(tens)) <= LONGEST_BAR; tens *= 10) {
            for (long steps : new long[] {1, 2, 5}) {
                if (scale.millimetres(unit.times(tens * steps)) <= LONGEST_BAR) {
                    best = tens * steps;
                }
            }
        }
        return unit.times(best);
    }
}
