package org.fencecore.rules;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;

/**
 * Ground to be kept clear: an easement, or the strip along a line that a fence has to be set back from.
 *
 * <p>The fence breaks it where its line, as thick as the fence was told to be, is in the zone; a post hole where any of it
 * is. What stands exactly at the edge of a strip keeps the rule; the boundary of an area belongs to it, as in {@link Zone}.
 *
 * <p>Example: an easement 10 ft wide, and a fence at least 25 ft from the front line.
 *
 * <pre>{@code
 * ClearGround.easement(Zone.along(middle, Length.ofFeet(5)), "drainage easement", plat);
 * ClearGround.setback(frontLine, Length.ofFeet(25), "front setback", ordinance);
 * }</pre>
 *
 * <p>Sources: none of its own; the plat, the deed and the local office tell.
 */
public final class ClearGround extends LocalRule {

    private final Zone zone;
    private final boolean barsFence;
    private final boolean barsHoles;

    private ClearGround(Zone zone, boolean barsFence, boolean barsHoles, String words, Citation source) {
        super(words, source);
        this.zone = zone;
        this.barsFence = barsFence;
        this.barsHoles = barsHoles;
    }

    /**
     * Returns ground to be kept clear of fences and of post holes.
     *
     * @param zone the ground: a strip along a line, or an area
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule
     * @throws IllegalArgumentException if the words are blank
     */
    public static ClearGround easement(Zone zone, String words, Citation source) {
        return new ClearGround(zone, true, true, words, source);
    }

    /**
     * Returns ground that a fence may pass over but where no hole may be dug.
     *
     * @param zone the ground: a strip along a line, or an area
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule
     * @throws IllegalArgumentException if the words are blank
     */
    public static ClearGround noHoles(Zone zone, String words, Citation source) {
        return new ClearGround(zone, false, true, words, source);
    }

    /**
     * Returns the distance that a fence keeps from a line, on either side of it. Its posts' holes may reach in.
     *
     * @param line the line, such as the front lot line
     * @param distance how far the fence stays from it
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule
     * @throws IllegalArgumentException if the distance is negative or over 10,000 ft, or the words are blank
     */
    public static ClearGround setback(Polyline line, Length distance, String words, Citation source) {
        return new ClearGround(Zone.along(line, requireSize("distance", distance)), true, false, words, source);
    }

    /**
     * Returns the ground.
     *
     * @return the zone that stays clear
     */
    @Override
    public Zone zone() {
        return zone;
    }

    /**
     * Tells whether no fence may stand there.
     *
     * @return true if the fence itself is barred
     */
    public boolean barsFence() {
        return barsFence;
    }

    /**
     * Tells whether no hole may be dug there, so that posts have to be spaced round it.
     *
     * @return true if post holes are barred
     */
    public boolean barsHoles() {
        return barsHoles;
    }

    @Override
    List<Interval> forbidden(Segment postLine, Length holeRadius) {
        return barsHoles ? zone.stretchesOf(postLine, holeRadius.minus(ROUNDING)) : List.of();
    }

    @Override
    List<Finding> check(Fence fence) {
        Breaches standing = new Breaches(Length::max);
        for (FencePart part : fence.parts()) {
            List<Interval> where = barsFence ? part.stretchesIn(zone) : List.of();
            if (!where.isEmpty()) {
                standing.along(part, where, Length.ZERO);
            }
        }
        for (PostPart post : fence.posts()) {
            if (barsHoles && zone.isReachedFrom(post.centre(), post.holeRadius().minus(ROUNDING))) {
                standing.at(post);
            }
        }
        return standing.findings(this::finding);
    }

    private Finding finding(Breaches.Breach breach) {
        String stands = breach.hasStretches() ? "the fence stands in it " + breach.stations() : "";
        String holes = breach.hasPosts() ? "the hole reaches into it at " + breach.postNames() : "";
        String both = stands.isEmpty() || holes.isEmpty() ? "" : ", and ";
        return Finding.blocker(
                        breach.hasStretches() ? "rule-clear-ground" : "rule-no-holes",
                        breach.place(),
                        words() + ": " + stands + both + holes)
                .withRemedy(
                        breach.hasStretches()
                                ? "move the fence off it, or ask whoever holds the right to it"
                                : "move the posts off it, or ask whoever holds the right to it")
                .withSource(source());
    }
}
