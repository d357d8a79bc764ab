package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * Breaks a drawing that is long across into sheets that go side by side, with a match line where one ends and the next
 * begins. What is not much wider than a post and stands at a match line is on both sheets.
 */
final class MatchLines {

    /** How far the drawing goes on past a match line. */
    private static final Length BEYOND = Length.ofInches(9);

    /** Pieces up to this wide are never cut. */
    private static final Length WHOLE = Length.ofInches(24);

    /** Farther than a drawing goes on past the outermost places at which it may be broken. */
    private static final Length FAR = Length.ofFeet(1_000_000);

    private static final Length ABOVE = Length.ofInches(12);
    private static final Length NEAR = Length.ofMillimetres(2);
    private static final int LETTERS = 26;

    private final Drawing whole;
    private final List<Length> ends;
    private Length lowest = Length.ZERO;
    private Length highest = Length.ZERO;

    private MatchLines(Drawing whole, List<Length> ends) {
        this.whole = whole;
        this.ends = ends;
        List<Length> heights = whole.shapes().stream()
                .flatMap(MatchLines::spots)
                .map(Spot::up)
                .sorted()
                .toList();
        if (!heights.isEmpty()) {
            lowest = heights.get(0);
            highest = heights.get(heights.size() - 1).plus(ABOVE);
        }
    }

    /**
     * Breaks a drawing into as few sheets as can be, about equally long.
     *
     * @param whole the drawing
     * @param places where it may be broken, its ends among them
     * @param longest how much of it may be on one sheet, unless two places are farther apart
     */
    static List<Drawing> split(Drawing whole, List<Length> places, Length longest) {
        List<Length> sorted = places.stream().sorted().distinct().toList();
        if (sorted.size() < 3) {
            return List.of(whole);
        }
        Length last = sorted.get(sorted.size() - 1);
        Length from = sorted.get(0);
        List<Length> ends = new ArrayList<>(List.of(from));
        while (from.compareTo(last) < 0) {
            Length rest = last.minus(from);
            // As many sheets as the rest takes, rounded up.
            long sheets = 1 + (rest.nanometres() - 1) / longest.nanometres();
            from = nearest(sorted, from, from.plus(rest.dividedBy(sheets)), from.plus(longest));
            ends.add(from);
        }
        return ends.size() == 2 ? List.of(whole) : new MatchLines(whole, ends).sheets();
    }

    /** The place past another that is nearest to where one aims and not too far, or the very next one. */
    private static Length nearest(List<Length> places, Length after, Length aim, Length last) {
        List<Length> past =
                places.stream().filter(place -> place.compareTo(after) > 0).toList();
        Length best = past.get(0);
        for (Length place : past) {
            if (place.compareTo(last) <= 0
                    && place.minus(aim).abs().compareTo(best.minus(aim).abs()) < 0) {
                best = place;
            }
        }
        return best;
    }

    private List<Drawing> sheets() {
        List<Drawing> sheets = new ArrayList<>();
        for (int sheet = 0; sheet < ends.size() - 1; sheet++) {
            sheets.add(sheet(sheet));
        }
        return List.copyOf(sheets);
    }

    private Drawing sheet(int index) {
        int count = ends.size() - 1;
        boolean first = index == 0;
        boolean last = index == count - 1;
        Interval shown = Interval.of(
                first ? ends.get(0).minus(FAR) : ends.get(index),
                last ? ends.get(count).plus(FAR) : ends.get(index + 1));
        Drawing.Builder sheet = Drawing.titled(whole.title() + ", sheet " + (index + 1) + " of " + count)
                .description(whole.description());
        whole.job().ifPresent(sheet::job);
        whole.caution().ifPresent(sheet::caution);
        if (whole.isNorthUp()) {
            sheet.northUp();
        }
        boolean starred = false;
        for (Shape shape : whole.shapes()) {
            if (shape instanceof Ladder ladder) {
                Ladder cut = cut(ladder, shown);
                starred |= cut.rungs().stream()
                        .flatMap(rung -> rung.cells().stream())
                        .anyMatch(MatchLines::isStarred);
                sheet.add(cut);
            } else {
                part(shape, shown).ifPresent(sheet::add);
            }
        }
        String lines = "";
        if (!first) {
            matchLine(sheet, index - 1);
            lines = "on the left at match line " + letter(index - 1) + " to sheet " + index;
        }
        if (!last) {
            matchLine(sheet, index);
            lines += (lines.isEmpty() ? "" : ", ") + "on the right at match line " + letter(index) + " to sheet "
                    + (index + 2);
        }
        sheet.note("Joins " + lines + ".");
        if (starred) {
            sheet.note("* counts the whole stretch, on this sheet and past the match line.");
        }
        whole.notes().forEach(sheet::note);
        for (Key entry : whole.key()) {
            sheet.key(entry);
        }
        return sheet.build();
    }

    private void matchLine(Drawing.Builder sheet, int index) {
        Length across = ends.get(index + 1);
        Spot top = Spot.of(across, highest);
        sheet.add(Line.of(Layer.MATCH_LINES, Spot.of(across, lowest), top));
        sheet.add(Label.beside(top, Angle.RIGHT, NEAR, "match line " + letter(index))
                .withLettering(Lettering.NUMBER));
    }

    /** A to Z, then AA, AB and so on. */
    private static String letter(int index) {
        String last = Character.toString('A' + index % LETTERS);
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }

    private static Stream<Spot> spots(Shape shape) {
        if (shape instanceof Outline outline) {
            return outline.corners().stream();
        }
        return shape instanceof Line line ? line.spots().stream() : Stream.empty();
    }

    private static Optional<Shape> part(Shape shape, Interval shown) {
        if (shape instanceof Outline outline) {
            return part(outline, shown);
        }
        if (shape instanceof Line line) {
            List<Spot> spots = Strip.of(shown, BEYOND).along(line.spots());
            return spots.size() < 2 ? Optional.empty() : Optional.of(new Line(line.layer(), spots));
        }
        if (shape instanceof Label label) {
            return Optional.of(shape).filter(kept -> shown.contains(label.at().across()));
        }
        if (shape instanceof Mark mark) {
            return Optional.of(shape).filter(kept -> shown.contains(mark.at().across()));
        }
        if (shape instanceof SwingArc arc) {
            return Optional.of(shape).filter(kept -> shown.contains(arc.hinge().across()));
        }
        if (shape instanceof Dimension dimension) {
            return Optional.of(shape)
                    .filter(kept -> shown.contains(
                            dimension.from().middle(dimension.to()).across()));
        }
        return Optional.of(shape);
    }

    private static Optional<Shape> part(Outline outline, Interval shown) {
        Length left =
                outline.corners().stream().map(Spot::across).reduce(Length::min).orElseThrow();
        Length right =
                outline.corners().stream().map(Spot::across).reduce(Length::max).orElseThrow();
        if (right.compareTo(shown.start()) <= 0 || left.compareTo(shown.end()) >= 0) {
            return Optional.empty();
        }
        if (right.minus(left).compareTo(WHOLE) <= 0) {
            return Optional.of(outline);
        }
        List<Spot> corners = Strip.of(shown, BEYOND).around(outline.corners());
        return corners.size() < 3 ? Optional.empty() : Optional.of(new Outline(outline.layer(), corners));
    }

    private static Ladder cut(Ladder ladder, Interval shown) {
        List<Ladder.Rung> rungs = new ArrayList<>();
        for (Ladder.Rung rung : ladder.rungs()) {
            List<Ladder.Cell> cells = new ArrayList<>();
            for (Ladder.Cell cell : rung.cells()) {
                Length start = Length.max(cell.across().start(), shown.start());
                Length end = Length.min(cell.across().end(), shown.end());
                boolean isPlace = cell.across().length().isZero();
                if (start.compareTo(end) < 0 || (isPlace && start.equals(end))) {
                    Interval across = Interval.of(start, end);
                    boolean whole = across.equals(cell.across());
                    cells.add(new Ladder.Cell(across, whole ? cell.text() : cell.text() + " *"));
                }
            }
            rungs.add(new Ladder.Rung(rung.heading(), rung.lettering(), cells));
        }
        return new Ladder(ladder.top(), rungs);
    }

    private static boolean isStarred(Ladder.Cell cell) {
        return cell.text().endsWith(" *");
    }
}
