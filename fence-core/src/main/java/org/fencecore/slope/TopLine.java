package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;

/**
 * Where the tops of the boards run: straight to the string, following the ground, stepped, or arched or dipped between
 * posts; and so how long every board is.
 *
 * <p>It is a rule and not a list: a board's length is worked out from the stations of its edges when asked. Under a
 * straight line boards are cut square, all of one length. Under any other a board must reach the line at its highest over
 * the board's width, and is cut to the line from there.
 *
 * <p>An arch is a circular arc in each bay over the straight line from post to post; {@link BayTop} says how it runs.
 *
 * <p>Example: boards of 6 ft on level ground, arched 6 in between posts 8 ft apart.
 *
 * <pre>{@code
 * TopLine top = TopLine.of(TopShape.arched(Length.ofInches(6)), fit, Length.ofFeet(6));
 * top.boardLengthAt(Length.ofFeet(4));    // 78 in in the middle of the bay
 * top.boardLengthAt(Length.ofFeet(2));    // 76.5174 in half way to the post: the radius is 195 in
 * top.boardLengthAt(Length.ofFeet(8));    // 72 in at the post
 * }</pre>
 */
public final class TopLine {

    private final TopShape shape;
    private final SlopeFit fit;
    private final Length boardLength;

    private TopLine(TopShape shape, SlopeFit fit, Length boardLength) {
        this.shape = Objects.requireNonNull(shape, "shape");
        this.fit = Objects.requireNonNull(fit, "fit");
        this.boardLength = boardLength;
        if (!boardLength.isPositive()) {
            throw new IllegalArgumentException("boardLength was " + boardLength + "; it must be over 0");
        }
        if (shape.kind() == TopShape.Kind.DIPPED && shape.rise().compareTo(boardLength) >= 0) {
            throw new IllegalArgumentException("dip was " + shape.rise() + ", no less than the boards of " + boardLength
                    + "; nothing would be left in the middle of a bay, so dip them less");
        }
    }

    /**
     * Returns the line of the tops over a run.
     *
     * @param shape how the tops run
     * @param fit how the bottoms meet the ground
     * @param boardLength the length of a board where it stands as usual: of every board of a straight line, of one at a
     *     post under an arch or a dip, of the shortest of a stepped line, and where the gap is the clearance of a line
     *     that follows the ground; over zero
     * @return the line of the tops
     * @throws IllegalArgumentException if the length is not over zero, or no more than the dip
     */
    public static TopLine of(TopShape shape, SlopeFit fit, Length boardLength) {
        return new TopLine(shape, fit, boardLength);
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
     * the highest place of the line of the tops over its width. Under a straight line all boards are of one length.
     *
     * <p>Where the boards are to be cut to the ground, {@link SlopeSpec.UnderBoards#BOARDS_TO_GROUND}, and the gap under
     * the bay is over the maximum, the length counts from the clearance over the lowest ground under the board.
     *
     * @param board the stations of its edges
     * @return the length to cut it to before its ends are cut to the lines
     */
    public Length boardLength(Interval board) {
        FittedBay bay = fit.bayAt(board.middle());
        Length line = bay.bottomAt(board.middle());
        Length bottom = bottomUnder(board);
        if (shape.isStraight()) {
            return boardLength.plus(line.minus(bottom));
        }
        return in(bay).highestOver(board).minus(bottom);
    }

    /**
     * Returns how low a board reaches: to the line of the bottoms at its middle, or nearer to the ground where it is to be
     * cut to that.
     *
     * @param board the stations of its edges
     * @return the elevation of its lowest point
     */
    public Length bottomUnder(Interval board) {
        FittedBay bay = fit.bayAt(board.middle());
        Length line = bay.bottomAt(board.middle());
        if (!isCutToGround(bay)) {
            return line;
        }
        Length lowest = line;
        for (ProfilePoint corner : lowerEdge(board, board)) {
            lowest = Length.min(lowest, corner.elevation());
        }
        return lowest;
    }

    /**
     * Tells whether the bottom of a board is cut to the ground: where that is asked for and the gap under its bay is over
     * the maximum.
     *
     * @param board the stations of its edges
     * @return false where it ends on the line of the bottoms
     */
    public boolean isCutToGround(Interval board) {
        return isCutToGround(fit.bayAt(board.middle()));
    }

    private boolean isCutToGround(FittedBay bay) {
        return fit.spec().underBoards() == SlopeSpec.UnderBoards.BOARDS_TO_GROUND
                && fit.spec().closes(bay.clearance().max());
    }

    /**
     * Returns the upper edge of a board as it is cut: level under a straight line, else along the line of the tops.
     *
     * @param board the stations of the whole board's edges
     * @param part the stations of the strip of it that is kept, the board itself if it is all kept
     * @return the corners of the edge in order of station, two or more
     */
    public List<ProfilePoint> upperEdge(Interval board, Interval part) {
        FittedBay bay = fit.bayAt(board.middle());
        return in(bay).upperEdge(board, part);
    }

    /**
     * Returns the lower edge of a board as it is cut: level, or to the ground where that is asked for.
     *
     * @param board the stations of the whole board's edges
     * @param part the stations of the strip of it that is kept, the board itself if it is all kept
     * @return the corners of the edge in order of station, two or more
     */
    public List<ProfilePoint> lowerEdge(Interval board, Interval part) {
        FittedBay bay = fit.bayAt(board.middle());
        Length line = bay.bottomAt(board.middle());
        if (!isCutToGround(bay)) {
            return BayTop.level(part, line);
        }
        return BayTop.along(
                part,
                in(bay).breaks(),
                station -> Length.min(line, groundAt(station).plus(fit.spec().clearance())));
    }

    /** Returns the length of a board where it stands as usual. */
    Length usualLength() {
        return boardLength;
    }

    /** Returns the height of the ground, beyond the shots that of the nearest. */
    private Length groundAt(Length station) {
        Interval shots = fit.ground().extent();
        return fit.ground().elevationAt(Length.max(shots.start(), Length.min(shots.end(), station)));
    }

    /**
     * Returns the shape of the line.
     *
     * @return the shape
     */
    public TopShape shape() {
        return shape;
    }

    /**
     * Returns what the builder should know about the tops:
     *
     * <ul>
     *   <li>{@code arch-limited}, a note: a bay is narrower than twice the rise or dip, which is half a circle there;
     *   <li>{@code rail-above-boards}, a warning: the tops come down under the top of the top rail, which shows above them;
     *   <li>{@code no-board-left}, a blocker: they come down to the bottoms.
     * </ul>
     *
     * @param topRailBelowTops how far the top of the top rail is below the usual tops
     * @return the findings, each told once with the first bay it is in
     */
    public List<Finding> findings(Length topRailBelowTops) {
        List<Finding> findings = new ArrayList<>();
        int limited = -1;
        int showing = -1;
        Length most = Length.ZERO;
        for (int index = 0; index < fit.postCount() - 1 && !shape.isStraight(); index++) {
            FittedBay bay = fit.bay(index);
            limited = limited < 0 && in(bay).isLimited() ? index : limited;
            Length lacking = boardLength.minus(in(bay).shortest()).minus(topRailBelowTops);
            if (lacking.compareTo(most) > 0) {
                showing = index;
                most = lacking;
            }
        }
        if (limited >= 0) {
            findings.add(BayTop.limited(fit.place(limited), shape.rise()));
        }
        if (showing >= 0) {
            boolean gone = !in(fit.bay(showing)).shortest().isPositive();
            findings.add(BayTop.showing(fit.place(showing), most, gone));
        }
        return List.copyOf(findings);
    }

    /**
     * Returns the height of the tops at a station by the line of one bay, past its posts too; never under the bottoms.
     *
     * @param bay one of the bays of the fit
     * @param station the station
     * @return the elevation, to the nearest nanometre
     */
    public Length topIn(FittedBay bay, Length station) {
        return in(bay).topAt(station);
    }

    private BayTop in(FittedBay bay) {
        return new BayTop(shape, bay, fit.ground(), fit.spec().clearance(), boardLength);
    }

    /** Returns the grade of the tops of a bay from post to post. */
    Slope grade(FittedBay bay) {
        return switch (shape.kind()) {
            case STEPPED -> Slope.LEVEL;
            case GROUND -> Slope.of(bay.groundRise(), bay.run());
            default -> bay.grade();
        };
    }

    /**
     * Returns how the bottoms of the boards meet the ground.
     *
     * @return the fit
     */
    public SlopeFit fit() {
        return fit;
    }

    /**
     * Returns how the length of a board at a station comes about.
     *
     * @param station the station, on the run or past it
     * @return the calculation; its last line is {@link #boardLengthAt}
     */
    public Worksheet worksheet(Length station) {
        return in(fit.bayAt(station)).worksheet(station);
    }
}
