package org.fencecore.rules;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How high a fence may be in a zone, or how high it may be without a permit.
 *
 * <p>Heights are over the ground beside the fence. A fence exactly as high as the limit keeps it. How the local office
 * measures on a slope, over a retaining wall or to the caps of posts is for it to say; give heights measured its way.
 *
 * <p>Example: 4 ft in front yards, but fences at least half open may go to 5 ft; and a permit over 7 ft anywhere.
 *
 * <pre>{@code
 * Zone front = Zone.inside(frontYard);
 * HeightLimit.of(front, Length.ofFeet(4), "front yards", ordinance).withExemption(Ratio.ofPercent(50));
 * HeightLimit.of(front, Length.ofFeet(5), "front yards, open fences", ordinance);
 * HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(7), "fence permit", ordinance);
 * }</pre>
 *
 * <p>Sources: none of its own. That such rules need a zone, a height and an openness is seen from the ordinances quoted in
 * this package's tests.
 */
public final class HeightLimit extends LocalRule {

    private final Zone zone;
    private final Length limit;
    private final boolean permit;
    private final @Nullable Ratio exemptFrom;

    private HeightLimit(
            Zone zone, Length limit, boolean permit, @Nullable Ratio exemptFrom, String words, Citation source) {
        super(words, source);
        this.zone = zone;
        this.limit = requireSize("limit", limit);
        this.permit = permit;
        this.exemptFrom = exemptFrom;
    }

    /**
     * Returns a limit to the height.
     *
     * @param zone where it holds
     * @param limit how high a fence may be over the ground
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule
     * @throws IllegalArgumentException if the limit is negative or over 10,000 ft, or the words are blank
     */
    public static HeightLimit of(Zone zone, Length limit, String words, Citation source) {
        return new HeightLimit(zone, limit, false, null, words, source);
    }

    /**
     * Returns a height over which a fence needs a permit; a fence that is higher gets a note.
     *
     * @param zone where it holds
     * @param limit how high a fence may be without a permit
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule
     * @throws IllegalArgumentException if the limit is negative or over 10,000 ft, or the words are blank
     */
    public static HeightLimit permitOver(Zone zone, Length limit, String words, Citation source) {
        return new HeightLimit(zone, limit, true, null, words, source);
    }

    /**
     * Returns this rule for fences less open than a share; others are exempt.
     *
     * @param openness the open part of the face from which on a fence is exempt
     * @return the rule with that exemption
     * @throws IllegalArgumentException if the share is not from 0 to 100 %
     */
    public HeightLimit withExemption(Ratio openness) {
        return new HeightLimit(zone, limit, permit, requireShare("openness", openness), words(), source());
    }

    /**
     * Returns where it holds.
     *
     * @return the zone
     */
    @Override
    public Zone zone() {
        return zone;
    }

    /**
     * Returns the greatest height.
     *
     * @return the limit
     */
    public Length limit() {
        return limit;
    }

    /**
     * Tells whether a higher fence needs a permit rather than being too high.
     *
     * @return true for a permit height
     */
    public boolean isPermit() {
        return permit;
    }

    /**
     * Returns how open a fence must be to be exempt.
     *
     * @return the open part of the face, if there is such an exemption
     */
    public Optional<Ratio> exemptFrom() {
        return Optional.ofNullable(exemptFrom);
    }

    @Override
    List<Finding> check(Fence fence) {
        Breaches tooHigh = new Breaches(Length::max);
        for (FencePart part : fence.parts()) {
            if (part.isAtLeastAsOpenAs(exemptFrom)) {
                continue;
            }
            List<Interval> where =
                    Interval.common(part.stretchesIn(zone), part.top().stretchesAbove(limit.plus(ROUNDING)));
            if (!where.isEmpty()) {
                tooHigh.along(part, where, highest(part.top(), where));
            }
        }
        return tooHigh.findings(this::finding);
    }

    private Finding finding(Breaches.Breach breach) {
        String high = words() + ": the fence is up to " + Written.tape(breach.worst(), Rounding.UP) + " high "
                + breach.stations();
        String allowed = Written.tape(limit);
        return (permit
                        ? Finding.note("permit-needed", breach.place(), high + ", and needs a permit over " + allowed)
                                .withRemedy("ask the local office for the permit, or build it no higher")
                        : Finding.blocker("rule-height", breach.place(), high + ", and " + allowed + " is the limit")
                                .withRemedy("lower it there, or move it out of the zone; the local office may allow"
                                        + " exceptions"))
                .withSource(source());
    }
}
