package org.fencecore.stakeout;

import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * A board on two stakes beyond a corner, square to the string that is tied to it, so that the string outlasts the digging.
 *
 * <p>At a corner two boards make an L around an outer stake. Each string crosses its board at
 *
 * <pre>
 * from outer stake = set-back * tan(angle / 2)
 * </pre>
 *
 * with the angle between the strings; at a square corner that is the set-back itself.
 */
public final class BatterBoard {

    private final int number;
    private final String place;
    private final Point crossing;
    private final Length station;
    private final @Nullable Length fromOuterStake;
    private final boolean onLot;

    BatterBoard(
            int number, String place, Point crossing, Length station, @Nullable Length fromOuterStake, boolean onLot) {
        this.number = number;
        this.place = place;
        this.crossing = crossing;
        this.station = station;
        this.fromOuterStake = fromOuterStake;
        this.onLot = onLot;
    }

    /**
     * Returns its number, from 1 along the fence.
     *
     * @return the number
     */
    public int number() {
        return number;
    }

    /**
     * Returns which string it holds, and where.
     *
     * @return such as {@code beyond the end of side 1}
     */
    public String place() {
        return place;
    }

    /**
     * Returns where the string crosses it.
     *
     * @return the point in plan, east and north of the first lot corner
     */
    public Point crossing() {
        return crossing;
    }

    /**
     * Returns where that is along the string.
     *
     * @return the level distance from the string's first corner; negative for the board before it
     */
    public Length station() {
        return station;
    }

    /**
     * Returns how far the string crosses it from the stake at the outer end of the L that both boards of a corner make.
     *
     * @return the distance along the board; empty where the fence ends and there is no second board, or where the corner is
     *     so blunt that the boards do not meet
     */
    public Optional<Length> fromOuterStake() {
        return Optional.ofNullable(fromOuterStake);
    }

    /**
     * Tells whether it stands on the lot.
     *
     * @return false if the string crosses it outside the boundary
     */
    public boolean isOnLot() {
        return onLot;
    }

    @Override
    public String toString() {
        return "board " + number + " " + place;
    }
}
