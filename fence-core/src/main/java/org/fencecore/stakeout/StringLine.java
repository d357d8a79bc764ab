package org.fencecore.stakeout;

import java.util.Optional;
import org.fencecore.Run;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * One string: along the outside face of the posts of a run, tied to a batter board beyond each end. Where the fence only
 * bends a little there are no boards, and the string is tied to a stake at the bend.
 */
public final class StringLine {

    private final Run run;
    private final Segment line;
    private final @Nullable BatterBoard atStart;
    private final @Nullable BatterBoard atEnd;

    StringLine(Run run, Segment line, @Nullable BatterBoard atStart, @Nullable BatterBoard atEnd) {
        this.run = run;
        this.line = line;
        this.atStart = atStart;
        this.atEnd = atEnd;
    }

    /**
     * Returns the run it is for.
     *
     * @return the run
     */
    public Run run() {
        return run;
    }

    /**
     * Returns the string from corner to corner.
     *
     * @return from where it crosses the string before to where it crosses the next, or to where the fence's line ends
     */
    public Segment line() {
        return line;
    }

    /**
     * Returns the board beyond its start.
     *
     * @return the board; empty where it is tied to a stake at a bend
     */
    public Optional<BatterBoard> boardAtStart() {
        return Optional.ofNullable(atStart);
    }

    /**
     * Returns the board beyond its end.
     *
     * @return the board; empty where it is tied to a stake at a bend
     */
    public Optional<BatterBoard> boardAtEnd() {
        return Optional.ofNullable(atEnd);
    }

    /**
     * Returns how much string it takes between the boards, or the stakes at bends.
     *
     * @return the level distance between where it crosses them
     */
    public Length lengthBetweenBoards() {
        Length from = atStart == null ? Length.ZERO : atStart.station();
        Length to = atEnd == null ? line.length() : atEnd.station();
        return to.minus(from);
    }

    @Override
    public String toString() {
        return "string of " + run;
    }
}
