package org.fencecore.boarding;

import java.util.Optional;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.Face;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * How much of a fence is solid, and what is seen through it at an angle.
 *
 * <p>Square in front of one row of boards one sees its gaps; a second row that laps the first closes them all. Going off
 * square, the edges of boards close the gaps of one row, and open those of a shadowbox: a sight line gets past a lap once
 * it moves sideways between the faces by more than the lap,
 *
 * <pre>
 * tan(see-through angle) = lap / distance between the faces
 * </pre>
 *
 * <p>unless the boards are so thick for their gaps that at this angle each gap is closed by its own edges. The part that
 * is seen through at an angle is the part of a pitch, board and gap, that sight lines at this angle pass: the overlap of
 * the two gaps, each narrowed by the thickness times the tangent, and shifted against each other by the distance between
 * the faces times it.
 *
 * <p>Rows that touch, as board on board and board and batten, are closed at every angle. Angles are from square to the
 * fence, in plan. At ripped boards of a shadowbox less is seen than told, and rails and posts, which hide more, are left
 * out.
 *
 * <p>Sources: geometry.
 *
 * <p>Example: a shadowbox of 5 1/2 in boards that lap 1 in, its faces 1 1/2 in apart, boards 3/4 in thick. One begins to
 * see through at atan(1 / 1.5) = 33.69 degrees. At 45 degrees the gaps of 3 1/2 in are narrowed to 2 3/4 in, and sight
 * lines have moved 1 1/2 in, 1/2 in past the lap: 1/2 in of each 9 in, 5.6 %, is seen through.
 *
 * <pre>{@code
 * Privacy privacy = Privacy.of(BoardPattern.shadowbox(Length.ofInches(5.5)), Length.ofInches(0.75),
 *         Length.ofInches(1.5));
 * privacy.solid();                             // 1
 * privacy.seeThroughFrom();                    // 33.69 deg
 * privacy.visibleAt(Angle.ofDegrees(45));      // 0.0556
 * }</pre>
 */
public final class Privacy {

    private static final Length THICKEST = Length.ofMetres(100);

    private final Ratio solid;
    private final Length width;
    private final Length gap;
    private final Optional<Length> cover;
    private final boolean touching;
    private final Length thickness;
    private final Length between;

    private Privacy(BoardPattern pattern, Length gap, Ratio solid, Length thickness, Length between) {
        requireDistance("thickness", thickness);
        requireDistance("between", between);
        this.solid = solid;
        this.width = pattern.width();
        this.gap = gap;
        this.cover = pattern.coverWidth();
        this.touching = pattern.secondFace().filter(face -> face == Face.COVER).isPresent();
        this.thickness = thickness;
        this.between = between;
    }

    private static void requireDistance(String name, Length value) {
        if (value.isNegative() || value.compareTo(THICKEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be from 0 to " + THICKEST + ": measure it across the fence");
        }
    }

    /**
     * Returns the privacy of boards at their preferred gap, before they are laid out.
     *
     * @param pattern how the boards follow each other
     * @param thickness how thick the boards are, from 0 to 100 m
     * @param between how far the backs of the boards of a shadowbox's two faces are apart, from 0 to 100 m; of no account
     *     for other patterns
     * @return the privacy of the endless pattern
     * @throws IllegalArgumentException if {@code thickness} or {@code between} is out of its range
     */
    public static Privacy of(BoardPattern pattern, Length thickness, Length between) {
        Length gap = pattern.preferredGap();
        Length open = pattern.isLapped() ? Length.ZERO : gap;
        Ratio solid =
                pattern.width().plus(gap).minus(open).ratioTo(pattern.width().plus(gap));
        return new Privacy(pattern, gap, solid, thickness, between);
    }

    /**
     * Returns the privacy of boards as laid out.
     *
     * @param layout the boards
     * @param thickness how thick the boards are, from 0 to 100 m
     * @param between how far the backs of the boards of a shadowbox's two faces are apart, from 0 to 100 m; of no account
     *     for other patterns
     * @return the privacy
     * @throws IllegalArgumentException if {@code thickness} or {@code between} is out of its range
     */
    public static Privacy of(BoardLayout layout, Length thickness, Length between) {
        int full = layout.row(Face.OUTSIDE).count() - layout.ripped().size();
        Length boards = layout.pattern().width().times(full).plus(ripped(layout));
        Length open = layout.clearLength().minus(boards);
        if (layout.pattern().isLapped()) {
            Length uncovered = layout.lap().map(lap -> lap.times(-2)).orElse(Length.ZERO);
            int gaps = layout.row(Face.OUTSIDE).count() - 1;
            open = uncovered.isPositive() ? uncovered.times(gaps) : Length.ZERO;
        }
        return new Privacy(
                layout.pattern(),
                layout.row(Face.OUTSIDE).gap(),
                layout.clearLength().minus(open).ratioTo(layout.clearLength()),
                thickness,
                between);
    }

    /** The ripped boards together: they stand in a row and their gaps are alike, so two edges tell. */
    private static Length ripped(BoardLayout layout) {
        int count = layout.ripped().size();
        if (count == 0) {
            return Length.ZERO;
        }
        return layout.ripped()
                .get(count - 1)
                .right()
                .minus(layout.ripped().get(0).left())
                .minus(layout.row(Face.OUTSIDE).gap().times(count - 1L));
    }

    /**
     * Returns which part of the boarded length is closed, seen square.
     *
     * @return the share, over 0 and up to 1: what a wind load takes as the ratio of solid to gross area, between the tops
     *     and bottoms of the boards
     */
    public Ratio solid() {
        return solid;
    }

    /**
     * Returns the angle from square at which one starts to see through.
     *
     * @return zero where gaps are open seen square; empty if nothing is seen at any angle
     */
    public Optional<Angle> seeThroughFrom() {
        if (cover.isEmpty() || !lap().isPositive()) {
            return gap.isPositive() && lap().compareTo(Length.ZERO) <= 0 ? Optional.of(Angle.ZERO) : Optional.empty();
        }
        if (touching || between.isZero()) {
            return Optional.empty();
        }
        Angle pastTheLap = Angle.ofTangent(lap(), between);
        // Gaps close where thickness times the tangent is as wide as they are.
        Length narrower = Length.min(gap, gapBehind());
        double closes = narrower.metres() / thickness.metres();
        return closes > pastTheLap.tan() ? Optional.of(pastTheLap) : Optional.empty();
    }

    private Length lap() {
        return cover.map(wide -> wide.minus(gap).dividedBy(2)).orElse(Length.ZERO);
    }

    private Length pitch() {
        return width.plus(gap);
    }

    private Length gapBehind() {
        return pitch().minus(cover.orElse(Length.ZERO));
    }

    /**
     * Returns which part of the fence is seen through at an angle, to either hand.
     *
     * @param offSquare the angle from square to the fence, from -90 to 90 degrees without either
     * @return the share, from 0 to 1
     * @throws IllegalArgumentException if the angle is out of its range
     */
    public Ratio visibleAt(Angle offSquare) {
        double off = Math.abs(offSquare.degrees());
        if (off >= 90) {
            throw new IllegalArgumentException("offSquare was " + offSquare
                    + "; it must be within 90 degrees of square: along the fence nothing is seen through it");
        }
        double tangent = Math.abs(offSquare.tan());
        double narrowed = thickness.metres() * tangent;
        double front = gap.metres() - narrowed;
        if (front <= 0) {
            return Ratio.ZERO;
        }
        double pitch = pitch().metres();
        if (cover.isEmpty()) {
            return Ratio.of(front / pitch);
        }
        double back = gapBehind().metres() - narrowed;
        if (back <= 0 || (touching && lap().compareTo(Length.ZERO) >= 0)) {
            return Ratio.ZERO;
        }
        // Sight lines by where they leave the front, from the edge of a gap on: past the back's boards on one side, and
        // before those on the other.
        double apart = touching ? 0 : between.metres();
        double to = apart * tangent - lap().metres();
        double from = to - back;
        double shift = Math.floor(from / pitch) * pitch;
        double seen =
                overlap(front, from - shift, to - shift) + overlap(front, from - shift - pitch, to - shift - pitch);
        return Ratio.of(Math.min(1, seen / pitch));
    }

    /** What an interval shares with one from zero to a width. */
    private static double overlap(double width, double from, double to) {
        return Math.max(0, Math.min(width, to) - Math.max(0, from));
    }

    /**
     * Returns the calculation, ending with the solid part.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Privacy")
                .given("board width", width, Written.tape(width))
                .given("gap", gap, Written.tape(gap));
        cover.ifPresent(wide -> sheet.line(
                "lap",
                "(width behind - gap) / 2",
                "(" + Written.inches(wide) + " - " + Written.inches(gap) + ") / 2",
                lap(),
                Written.tape(lap()),
                Citation.GEOMETRY));
        if (cover.isPresent() && !touching) {
            sheet.given("between the faces", between, Written.tape(between));
            seeThroughFrom()
                    .ifPresent(angle -> sheet.line(
                            "seen through from",
                            "atan(lap / between the faces), from square",
                            "atan(" + Written.inches(lap()) + " / " + Written.inches(between) + ")",
                            angle,
                            Written.degrees(angle),
                            Citation.GEOMETRY));
        }
        return sheet.line(
                        "solid part",
                        "closed length / whole length, seen square",
                        "",
                        solid,
                        solid.toString(),
                        Citation.GEOMETRY)
                .build();
    }

    /**
     * Describes the privacy.
     *
     * @return such as {@code 1 solid, seen through from 33.69 deg}
     */
    @Override
    public String toString() {
        return solid + " solid"
                + seeThroughFrom()
                        .map(angle -> ", seen through from " + Written.degrees(angle))
                        .orElse("");
    }
}
