package org.fencecore.rail;

import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** One piece of a rail: from which post to which, its length, its cuts and the stick it takes. */
public final class RailPiece {

    private final int rail;
    private final int fromPost;
    private final int toPost;
    private final Interval reach;
    private final Slope grade;
    private final Length depth;
    private final Length trim;

    RailPiece(int rail, int fromPost, int toPost, Interval reach, Slope grade, Length depth, Length trim) {
        this.rail = rail;
        this.fromPost = fromPost;
        this.toPost = toPost;
        this.reach = reach;
        this.grade = grade;
        this.depth = depth;
        this.trim = trim;
    }

    /**
     * Returns which rail it is part of.
     *
     * @return the number of the rail, from 0 at the bottom
     */
    public int rail() {
        return rail;
    }

    /**
     * Returns the post where it begins.
     *
     * @return the number of the post, from 0
     */
    public int fromPost() {
        return fromPost;
    }

    /**
     * Returns the post where it ends.
     *
     * @return the number of the post, from 0
     */
    public int toPost() {
        return toPost;
    }

    /**
     * Returns over how many bays it runs.
     *
     * @return the number of bays
     */
    public int bays() {
        return toPost - fromPost;
    }

    /**
     * Returns where it begins and ends: on the middle of a post, at its face, or past the end of the run.
     *
     * @return the stations of its ends
     */
    public Interval reach() {
        return reach;
    }

    /**
     * Returns the level distance from end to end.
     *
     * @return the distance
     */
    public Length run() {
        return reach.length();
    }

    /**
     * Returns the grade it lies on.
     *
     * @return the grade, positive where it climbs along the run
     */
    public Slope grade() {
        return grade;
    }

    /**
     * Returns the length along either edge once it is cut and trimmed: the level distance times the square root of 1 plus
     * the grade squared.
     *
     * @return the length
     */
    public Length length() {
        return grade.lengthOver(run());
    }

    /**
     * Returns how far off square its ends are cut, so that they stand plumb; both slant the same way. Where two pieces of
     * different grade meet on a post, each takes its own.
     *
     * @return the angle off a square cut, zero or more
     */
    public Angle endCut() {
        return grade.angle().abs();
    }

    /**
     * Returns how much longer it is left than it will be, to be trimmed flush when it is up.
     *
     * @return the length at both ends together, zero if it is cut to fit
     */
    public Length trim() {
        return trim;
    }

    /**
     * Returns the shortest stick it can be cut from: the length, what the slanting ends take more, the depth of the rail
     * times the grade, and what runs past to be trimmed.
     *
     * @return the length of the stick
     */
    public Length stick() {
        return length().plus(depth.times(grade.abs().ratio())).plus(trim);
    }

    @Override
    public String toString() {
        return "rail " + (rail + 1) + " from post " + (fromPost + 1) + " to post " + (toPost + 1);
    }
}
