package org.fencecore.gate.hang;

import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * How far the latch edge of a leaf sinks when something gives a little.
 *
 * <pre>
 * slip d along the brace           drop = d / sin rise
 * hinges give d, s apart           drop = d x leaf width / s
 * diagonals differ by d            drop = d x sqrt(4 D^2 - d^2) / (4 H)
 * </pre>
 *
 * <p>with the diagonal D and the height H of the square frame. The first holds for a small slip; the last is exact for a
 * frame whose pieces keep their lengths and whose corners turn. Measuring both diagonals is the shop's check that a frame
 * is square; the last line tells what a difference means once the leaf hangs.
 *
 * <p>Source: geometry. Example: in a leaf of 46 3/4 by 56 in, diagonals that differ by 1/8 in mean 0.081 in at the latch.
 */
public final class LatchDrop {

    private final Length drop;
    private final Worksheet worksheet;

    private LatchDrop(Length drop, Worksheet worksheet) {
        this.drop = drop;
        this.worksheet = worksheet;
    }

    /**
     * Returns the drop when the joints at the ends of a brace give, or a cable stretches.
     *
     * @param brace the brace or cable
     * @param slip how much shorter wood or longer a cable gets from corner to corner, 0 to 100 ft
     * @return the drop
     * @throws IllegalArgumentException if {@code slip} is out of range, or the brace does not rise and so holds nothing
     */
    public static LatchDrop ofSlip(GateBrace brace, Length slip) {
        Sizes.requireOrZero("slip", slip);
        if (!brace.rise().isPositive()) {
            throw new IllegalArgumentException("brace rose at " + Written.degrees(brace.rise())
                    + "; it must rise from foot to head to hold up the latch");
        }
        Length drop = slip.times(Ratio.of(1 / brace.rise().sin()));
        Worksheet sheet = Worksheet.titled("Drop at the latch from slip in the joints")
                .given("slip along the brace d", slip, Written.inches(slip))
                .given("rise of the brace", brace.rise(), Written.degrees(brace.rise()))
                .line(
                        "drop",
                        "d / sin rise",
                        Written.inches(slip) + " / sin " + Written.degrees(brace.rise()),
                        drop,
                        Written.inches(drop),
                        Citation.GEOMETRY)
                .build();
        return new LatchDrop(drop, sheet);
    }

    /**
     * Returns the drop when the hinges give: the top one pulls away, or the bottom one sinks in, or the post leans.
     *
     * @param loads the leaf on its hinges
     * @param play how much the top hinge moves out and the bottom one moves in, together, 0 to 100 ft
     * @return the drop
     * @throws IllegalArgumentException if {@code play} is out of range
     */
    public static LatchDrop ofHingePlay(HingeLoads loads, Length play) {
        Sizes.requireOrZero("play", play);
        Length width = loads.latchArm();
        Length apart = loads.apart();
        Length drop = play.times(width.ratioTo(apart));
        Worksheet sheet = Worksheet.titled("Drop at the latch from play in the hinges")
                .given("play d", play, Written.inches(play))
                .given("pins to latch edge w", width, Written.tape(width))
                .given("hinges apart s", apart, Written.tape(apart))
                .line(
                        "drop",
                        "d w / s",
                        Written.inches(play) + " x " + Written.inches(width) + " / " + Written.inches(apart),
                        drop,
                        Written.inches(drop),
                        Citation.GEOMETRY)
                .build();
        return new LatchDrop(drop, sheet);
    }

    /**
     * Returns how much out of level the latch edge of a level leaf is when its diagonals differ.
     *
     * @param leaf the leaf, not raked
     * @param difference the longer diagonal less the shorter, from 0 to twice the height or the width, whichever is less
     * @return how much the latch edge is too low, or too high if the diagonal from the bottom at the hinges is the longer
     * @throws IllegalArgumentException if {@code difference} is out of range or the leaf is raked
     */
    public static LatchDrop ofDiagonals(GateLeaf leaf, Length difference) {
        if (!leaf.rake().isZero()) {
            throw new IllegalArgumentException("leaf was raked " + Written.percent(leaf.rake())
                    + "; its diagonals differ by design, so compare each with its own length");
        }
        Length most = Length.min(leaf.width(), leaf.frameHeight()).times(2);
        if (difference.isNegative() || difference.compareTo(most) > 0) {
            throw new IllegalArgumentException("difference was " + difference + "; it must be from 0 to " + most
                    + ", so measure both diagonals again");
        }
        double d = difference.nanometres();
        double diagonal = leaf.diagonal().nanometres();
        double height = leaf.frameHeight().nanometres();
        Length drop = Length.ofNanometres(Math.round(d * Math.sqrt(4 * diagonal * diagonal - d * d) / (4 * height)));
        Worksheet sheet = Worksheet.titled("Drop at the latch from unequal diagonals")
                .given("difference of the diagonals d", difference, Written.inches(difference))
                .given("diagonal when square D", leaf.diagonal(), Written.inches(leaf.diagonal()))
                .given("frame height H", leaf.frameHeight(), Written.tape(leaf.frameHeight()))
                .line(
                        "drop",
                        "d sqrt(4 D^2 - d^2) / (4 H)",
                        Written.inches(difference) + " x sqrt(4 x (" + Written.inches(leaf.diagonal()) + ")^2 - ("
                                + Written.inches(difference) + ")^2) / (4 x " + Written.inches(leaf.frameHeight())
                                + ")",
                        drop,
                        Written.inches(drop),
                        Citation.GEOMETRY)
                .build();
        return new LatchDrop(drop, sheet);
    }

    /**
     * Returns how far the latch edge sinks.
     *
     * @return the drop, to the nearest nanometre
     */
    public Length drop() {
        return drop;
    }

    /**
     * Returns the drop worked out line by line.
     *
     * @return the worksheet; its last line is {@link #drop}
     */
    public Worksheet worksheet() {
        return worksheet;
    }

    @Override
    public String toString() {
        return "latch down " + Written.inches(drop);
    }
}
