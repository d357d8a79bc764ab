package org.fencecore.stakeout;

import java.util.Optional;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.RightTriangle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * A corner of the fence where two strings cross, and the triangle that proves it: marks on both strings, and what the tape
 * must read between them.
 *
 * <p>A square corner is proved by the largest multiple of 3-4-5 that fits on both strings and under the tape. A corner is
 * square if the tape cannot tell it from one, the diagonal being within 1/32 in. At any other corner both legs are as
 * long as fits, and the diagonal is, by the law of cosines,
 *
 * <pre>
 * diagonal = sqrt(a^2 + b^2 - 2 a b cos(angle))
 * </pre>
 *
 * <p>Everything is level distance. A corner that points into the lot is measured on its outside all the same.
 *
 * <p>Sources: squaring by the 3-4-5 triangle and its multiples, NAVEDTRA 14043, fig. 5-16.
 *
 * <p>Example: at a square corner between strings of 49 and 39 ft, 48 ft and 36 ft are 60 ft apart. A tape that reads 1/8 in
 * more or less means a corner that is 0.02 degrees off.
 */
public final class StringCorner {

    /** The least turn of a corner; under it is a bend, where a batter board beyond it would stand in the next run. */
    private static final Angle LEAST_TURN = Angle.ofDegrees(30);

    private static final Length READING = Length.ofInches(1).dividedBy(32);
    private static final Citation SQUARING = Citation.of("NAVEDTRA 14043", "fig. 5-16", "");

    private final Run arriving;
    private final Run leaving;
    private final Corner corner;
    private final Length onArriving;
    private final Length onLeaving;
    private final boolean square;

    private StringCorner(
            Run arriving, Run leaving, Corner corner, Length onArriving, Length onLeaving, boolean square) {
        this.arriving = arriving;
        this.leaving = leaving;
        this.corner = corner;
        this.onArriving = onArriving;
        this.onLeaving = onLeaving;
        this.square = square;
    }

    static StringCorner of(
            Run arriving, Run leaving, Corner corner, Length arrivingString, Length leavingString, StringSpec spec) {
        // Legs of three and four fifths of the tape, the longer on the longer string, are the most that it can prove.
        long multiple = spec.tape().wholePieces(spec.step()) / 5;
        Length three = spec.step().times(3 * multiple);
        Length four = spec.step().times(4 * multiple);
        boolean arrivingLonger = arrivingString.compareTo(leavingString) > 0;
        Length a = Length.min(arrivingString, arrivingLonger ? four : three);
        Length b = Length.min(leavingString, arrivingLonger ? three : four);
        Optional<RightTriangle> best = multiple == 0 ? Optional.empty() : RightTriangle.largest345(a, b, spec.step());
        Optional<RightTriangle> proof = best.filter(triangle -> corner.diagonal(triangle.legA(), triangle.legB())
                        .minus(triangle.hypotenuse())
                        .abs()
                        .compareTo(READING)
                <= 0);
        if (proof.isPresent()) {
            return new StringCorner(
                    arriving, leaving, corner, proof.get().legA(), proof.get().legB(), true);
        }
        Length leg = equalLeg(corner, Length.min(arrivingString, leavingString), spec);
        return new StringCorner(arriving, leaving, corner, leg, leg, false);
    }

    /** The longest leg in whole steps with a diagonal that the tape reaches; less than a step only if no more fits. */
    private static Length equalLeg(Corner corner, Length shorter, StringSpec spec) {
        double across = 2 * corner.interiorAngle().dividedBy(2).sin();
        Length reached = Length.ofNanometres((long) (spec.tape().nanometres() / Math.max(1, across)));
        Length leg = Length.min(shorter, reached);
        long steps = leg.wholePieces(spec.step());
        return steps == 0 ? leg : spec.step().times(steps);
    }

    /**
     * Returns the run whose string arrives.
     *
     * @return the run that ends here
     */
    public Run arriving() {
        return arriving;
    }

    /**
     * Returns the run whose string leaves.
     *
     * @return the run that begins here
     */
    public Run leaving() {
        return leaving;
    }

    /**
     * Returns the post that stands here.
     *
     * @return the post that both runs share
     */
    public Post post() {
        return leaving.posts().get(0);
    }

    /**
     * Returns where the strings cross and at what angle.
     *
     * @return the corner of the strings, its inside that of the lot
     */
    public Corner corner() {
        return corner;
    }

    /**
     * Tells whether the fence only bends here, by under 30 degrees. A bend takes a stake and no batter boards.
     *
     * @return true for a bend
     */
    public boolean isBend() {
        return corner.turn().abs().compareTo(LEAST_TURN) < 0;
    }

    /**
     * Returns where to mark the string that arrives.
     *
     * @return the level distance back from where the strings cross
     */
    public Length onArriving() {
        return onArriving;
    }

    /**
     * Returns where to mark the string that leaves.
     *
     * @return the level distance on from where the strings cross
     */
    public Length onLeaving() {
        return onLeaving;
    }

    /**
     * Returns what the tape must read between the two marks.
     *
     * @return the level distance, to the nearest nanometre
     */
    public Length diagonal() {
        return corner.diagonal(onArriving, onLeaving);
    }

    /**
     * Tells whether the corner is square as far as the tape can tell, and proved by a multiple of 3-4-5.
     *
     * @return true for such a corner
     */
    public boolean isThreeFourFive() {
        return square;
    }

    /**
     * Returns how far off the corner is when the tape does not read the diagonal.
     *
     * <p>Example: with 6 and 8 ft on the strings, 1/8 in means 0.1244 degrees.
     *
     * @param error how much more the tape reads than it must, over zero; less where more cannot be at all
     * @return the angle, over zero; empty if the triangle is too small to tell
     * @throws IllegalArgumentException if the error is not over zero
     */
    public Optional<Angle> meaningOf(Length error) {
        if (!error.isPositive()) {
            throw new IllegalArgumentException(
                    "error was " + error + "; it must be over 0, such as 1/8 in: how far the reading may be off");
        }
        Length read = diagonal().plus(error);
        if (read.compareTo(onArriving.plus(onLeaving)) >= 0) {
            read = diagonal().minus(error);
        }
        if (read.compareTo(onArriving.minus(onLeaving).abs()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(corner.interiorAngleAt(onArriving, onLeaving, read)
                .minus(corner.interiorAngle())
                .abs());
    }

    /**
     * Returns the calculation line by line, ending with the diagonal.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Angle angle = corner.interiorAngle();
        Worksheet.Builder sheet = Worksheet.titled("Check triangle")
                .given("angle between the strings", angle, Written.degrees(angle))
                .given("on the string of " + arriving, onArriving, Written.feet(onArriving))
                .given("on the string of " + leaving, onLeaving, Written.feet(onLeaving));
        meaningOf(StringLayout.EIGHTH)
                .ifPresent(off -> sheet.line(
                        "1/8 in on the tape",
                        "the angle with the diagonal 1/8 in off, less the angle",
                        "",
                        off,
                        Written.degrees(off),
                        Citation.GEOMETRY));
        return sheet.line(
                        "diagonal",
                        "sqrt(a^2 + b^2 - 2 a b cos(angle))",
                        "sqrt(" + Written.feet(onArriving) + "^2 + " + Written.feet(onLeaving) + "^2 - 2 * "
                                + Written.feet(onArriving) + " * " + Written.feet(onLeaving) + " * cos("
                                + Written.degrees(angle) + "))",
                        diagonal(),
                        Written.tape(diagonal()),
                        square ? SQUARING : Citation.GEOMETRY)
                .build()
                .within(toString());
    }

    @Override
    public String toString() {
        return "corner of " + arriving + " and " + leaving;
    }
}
