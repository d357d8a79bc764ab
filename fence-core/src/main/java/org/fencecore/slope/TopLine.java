package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * Where the tops of the boards run: straight to the string, following the ground, stepped, or arched or dipped between
 * posts; and so how long every board is.
 *
 * <p>It is a rule and not a list: a board's length is worked out from the stations of its edges when asked. A board
 * must reach the line at its highest over the board's width, and is cut to the line from there.
 *
 * <p>An arch is a circular arc in each bay over the straight line from post to post, its offsets taken plumb: with half
 * the bay c and the rise h the radius is {@code r = (c^2 + h^2) / (2 h)}, and at a distance d from the middle of the bay
 * the offset is {@code h - r + sqrt(r^2 - d^2)}. A dip takes the same offsets downwards.
 *
 * <p>Example: boards of 6 ft on level ground, arched 6 in between posts 8 ft apart.
 *
 * <pre>{@code
 * TopLine top = TopLine.arched(fit, Length.ofFeet(6), Length.ofInches(6));
 * top.boardLengthAt(Length.ofFeet(4));    // 78 in in the middle of the bay
 * top.boardLengthAt(Length.ofFeet(2));    // 76.5174 in half way to the post: the radius is 195 in
 * top.boardLengthAt(Length.ofFeet(8));    // 72 in at the post
 * }</pre>
 */
public final class TopLine {

    private enum Shape {
        STRAIGHT,
        GROUND,
        STEPPED,
        ARCHED,
        DIPPED
    }

    private final Shape shape;
    private final SlopeFit fit;
    private final Length boardLength;
    private final Length rise;

    private TopLine(Shape shape, SlopeFit fit, Length boardLength, Length rise) {
        this.shape = shape;
        this.fit = Objects.requireNonNull(fit, "fit");
        this.boardLength = boardLength;
        this.rise = rise;
        if (!boardLength.isPositive()) {
            throw new IllegalArgumentException("boardLength was " + boardLength + "; it must be over 0");
        }
    }

    /**
     * Returns tops parallel to the bottoms: all boards are of one length.
     *
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of every board, over zero
     * @return the line of the tops
     * @throws IllegalArgumentException if the length is not over zero
     */
    public static TopLine straight(SlopeFit fit, Length boardLength) {
        return new TopLine(Shape.STRAIGHT, fit, boardLength, Length.ZERO);
    }

    /**
     * Returns tops that follow the ground at the height of a board standing at the clearance.
     *
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of a board where the gap is the clearance, over zero
     * @return the line of the tops
     * @throws IllegalArgumentException if the length is not over zero
     */
    public static TopLine followingGround(SlopeFit fit, Length boardLength) {
        return new TopLine(Shape.GROUND, fit, boardLength, Length.ZERO);
    }

    /**
     * Returns tops that are level in each bay, a board's length over the higher end of the bay's bottoms. Over stepped
     * bays it is the straight line; over racked bays the boards are longer downhill.
     *
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of the shortest board, over zero
     * @return the line of the tops
     * @throws IllegalArgumentException if the length is not over zero
     */
    public static TopLine stepped(SlopeFit fit, Length boardLength) {
        return new TopLine(Shape.STEPPED, fit, boardLength, Length.ZERO);
    }

    /**
     * Returns tops that rise between the posts.
     *
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of a board at a post, over zero
     * @param rise how much higher the tops are in the middle of a bay, over zero and up to half the narrowest bay
     * @return the line of the tops
     * @throws IllegalArgumentException if the length or the rise is out of its range
     */
    public static TopLine arched(SlopeFit fit, Length boardLength, Length rise) {
        requireRise(fit, rise);
        return new TopLine(Shape.ARCHED, fit, boardLength, rise);
    }

    /**
     * Returns tops that dip between the posts.
     *
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of a board at a post, over zero
     * @param dip how much lower the tops are in the middle of a bay, over zero, less than the boards and up to half the
     *     narrowest bay
     * @return the line of the tops
     * @throws IllegalArgumentException if the length or the dip is out of its range
     */
    public static TopLine dipped(SlopeFit fit, Length boardLength, Length dip) {
        requireRise(fit, dip);
        if (dip.compareTo(boardLength) >= 0) {
            throw new IllegalArgumentException("dip was " + dip + ", no less than the boards of " + boardLength
                    + "; nothing would be left in the middle of a bay, so dip them less");
        }
        return new TopLine(Shape.DIPPED, fit, boardLength, dip);
    }

    private static void requireRise(SlopeFit fit, Length rise) {
        for (FittedBay bay : fit.bays()) {
            if (!rise.isPositive() || rise.times(2).compareTo(bay.run()) > 0) {
                throw new IllegalArgumentException("rise between posts was " + rise + " in a bay of " + bay.run()
                        + " at " + bay.start() + "; it must be over 0 and up to half the bay, a half circle");
            }
        }
    }

    /**
     * Returns the height of the tops at a station, in the datum of the ground; at a post where the bottoms step, on the
     * side where these are higher.
     *
     * @param station the station, on the run or past it
     * @return the elevation, to the nearest nanometre
     */
    public Length topAt(Length station) {
        return topIn(fit.bayAt(station), station);
    }

    /**
     * Returns how far the tops are over the bottoms at a station.
     *
     * @param station the station, on the run or past it
     * @return the length of a board without width there
     */
    public Length boardLengthAt(Length station) {
        FittedBay bay = fit.bayAt(station);
        return topIn(bay, station).minus(bay.bottomAt(station));
    }

    /**
     * Returns how long a board must be: from its square-cut bottom, the middle of which is on the line of the bottoms, to
     * the highest place of the line of the tops over its width.
     *
     * @param board the stations of its edges
     * @return the length to cut it to before its top is cut to the line
     */
    public Length boardLength(Interval board) {
        FittedBay bay = fit.bayAt(board.middle());
        Length highest = Length.max(topIn(bay, board.start()), topIn(bay, board.end()));
        for (Length station : turns(bay)) {
            if (board.contains(station)) {
                highest = Length.max(highest, topIn(bay, station));
            }
        }
        return highest.minus(bay.bottomAt(board.middle()));
    }

    /** Returns where in a bay the line can be higher than on either side. */
    private List<Length> turns(FittedBay bay) {
        if (shape != Shape.GROUND) {
            return List.of(Interval.of(bay.start(), bay.end()).middle());
        }
        List<Length> turns = new ArrayList<>();
        for (ProfilePoint point : fit.ground().between(bay.start(), bay.end()).points()) {
            turns.add(point.station());
        }
        return turns;
    }

    /** Returns the height at a station by the rule of one bay, past its posts too. */
    Length topIn(FittedBay bay, Length station) {
        return switch (shape) {
            case STRAIGHT -> bay.bottomAt(station).plus(boardLength);
            case GROUND -> {
                Interval shot = fit.ground().extent();
                Length near = Length.max(shot.start(), Length.min(shot.end(), station));
                yield fit.ground()
                        .elevationAt(near)
                        .plus(fit.spec().clearance())
                        .plus(boardLength);
            }
            case STEPPED -> Length.max(bay.bottomAtStart(), bay.bottomAtEnd()).plus(boardLength);
            case ARCHED -> bay.bottomAt(station).plus(boardLength).plus(offset(bay, station));
            case DIPPED -> bay.bottomAt(station).plus(boardLength).minus(offset(bay, station));
        };
    }

    /** Returns the grade of the tops of a bay from post to post. */
    Slope grade(FittedBay bay) {
        return switch (shape) {
            case STEPPED -> Slope.LEVEL;
            case GROUND -> Slope.of(bay.groundRise(), bay.run());
            default -> bay.grade();
        };
    }

    SlopeFit fit() {
        return fit;
    }

    private Length offset(FittedBay bay, Length station) {
        if (!Interval.of(bay.start(), bay.end()).contains(station)) {
            return Length.ZERO;
        }
        double d = fromMiddle(bay, station).metres();
        double r = radius(bay).metres();
        // The same as h - r + sqrt(r^2 - d^2), without taking two large numbers from each other.
        return rise.minus(Length.ofMetres(d * d / (r + Math.sqrt(Math.max(0, r * r - d * d)))));
    }

    private static Length fromMiddle(FittedBay bay, Length station) {
        return station.minus(Interval.of(bay.start(), bay.end()).middle()).abs();
    }

    private Length radius(FittedBay bay) {
        double c = bay.run().metres() / 2;
        double h = rise.metres();
        return Length.ofMetres((c * c + h * h) / (2 * h));
    }

    /**
     * Returns how the length of a board at a station comes about.
     *
     * @param station the station, on the run or past it
     * @return the calculation; its last line is {@link #boardLengthAt}
     */
    public Worksheet worksheet(Length station) {
        FittedBay bay = fit.bayAt(station);
        Length top = topIn(bay, station);
        Length bottom = bay.bottomAt(station);
        Worksheet.Builder sheet = Worksheet.titled("Board at " + Written.station(station))
                .given("board length", boardLength, Written.tape(boardLength));
        if (shape == Shape.ARCHED || shape == Shape.DIPPED) {
            arc(sheet, bay, station);
        }
        return sheet.line("top", rule(), "", top, Written.feet(top), Citation.GEOMETRY)
                .line(
                        "bottom",
                        "bottom at start + grade * distance from it",
                        Written.feet(bay.bottomAtStart()) + " + " + Written.percent(bay.grade()) + " * "
                                + Written.feet(station.minus(bay.start())),
                        bottom,
                        Written.feet(bottom),
                        Citation.GEOMETRY)
                .line(
                        "length here",
                        "top - bottom",
                        Written.feet(top) + " - " + Written.feet(bottom),
                        top.minus(bottom),
                        Written.tape(top.minus(bottom)),
                        Citation.GEOMETRY)
                .build();
    }

    private void arc(Worksheet.Builder sheet, FittedBay bay, Length station) {
        Length radius = radius(bay);
        Length distance = fromMiddle(bay, station);
        Length offset = offset(bay, station);
        sheet.given("rise between posts", rise, Written.tape(rise))
                .line(
                        "radius",
                        "(half bay^2 + rise^2) / (2 * rise)",
                        "((" + Written.inches(bay.run().dividedBy(2)) + ")^2 + (" + Written.inches(rise)
                                + ")^2) / (2 * " + Written.inches(rise) + ")",
                        radius,
                        Written.inches(radius),
                        Citation.GEOMETRY)
                .line(
                        "offset",
                        "rise - radius + sqrt(radius^2 - distance from the middle^2), none past the posts",
                        Written.inches(rise) + " - " + Written.inches(radius) + " + sqrt((" + Written.inches(radius)
                                + ")^2 - (" + Written.inches(distance) + ")^2)",
                        offset,
                        Written.inches(offset),
                        Citation.GEOMETRY);
    }

    private String rule() {
        return switch (shape) {
            case STRAIGHT -> "bottom + board length";
            case GROUND -> "ground + clearance + board length";
            case STEPPED -> "higher bottom of the bay + board length";
            case ARCHED -> "bottom + board length + offset";
            case DIPPED -> "bottom + board length - offset";
        };
    }
}
