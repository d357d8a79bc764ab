package org.fencecore.rules;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Zone;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The triangle at a street corner, an alley or a driveway that is kept open to view, and the heights between which
 * nothing may stand in it.
 *
 * <p>The triangle has its legs along two base lines from the point where they meet, as a {@link Corner}. Which lines
 * those are differs by town: lot or right-of-way lines, curbs, or the centre lines of the streets, extended to where they
 * meet. The caller chooses, since only the caller knows the town. Legs, heights and openness are the caller's as well.
 *
 * <p>A fence breaks the rule where it is in the triangle, its top higher than the lower limit and its bottom lower than
 * the upper one. Heights are over the ground beside the fence; where a town measures them from the curb, give the
 * heights less the rise from there. A fence at least as open as the exemption says is left out of it.
 *
 * <p>Example: legs of 25 ft at a square corner; nothing between 30 in and 8 ft.
 *
 * <pre>{@code
 * CornerVisibility rule = CornerVisibility.of(
 *                 corner, Length.ofFeet(25), Length.ofFeet(25), Length.ofInches(30), "corner visibility", ordinance)
 *         .withUpTo(Length.ofFeet(8));
 * rule.triangle().area();      // 312.5 sq ft
 * rule.triangle().side(1).length();     // 35.355 ft, the open side
 * }</pre>
 *
 * <p>Sources: the triangle is plane geometry. That base line, legs, heights and openness all differ is seen from the
 * ordinances quoted in this package's tests.
 */
public final class CornerVisibility extends LocalRule {

    private final Corner corner;
    private final Length arrivingLeg;
    private final Length leavingLeg;
    private final Polygon triangle;
    private final Length from;
    private final @Nullable Length upTo;
    private final @Nullable Ratio exemptFrom;

    private CornerVisibility(
            Corner corner,
            Length arrivingLeg,
            Length leavingLeg,
            Length from,
            @Nullable Length upTo,
            @Nullable Ratio exemptFrom,
            String words,
            Citation source) {
        super(words, source);
        this.corner = corner;
        this.arrivingLeg = arrivingLeg;
        this.leavingLeg = leavingLeg;
        Point before = corner.vertex().plus(corner.arriving().reversed(), arrivingLeg);
        Point after = corner.vertex().plus(corner.leaving(), leavingLeg);
        this.triangle = Polygon.of(List.of(corner.vertex(), before, after));
        this.from = requireSize("from", from);
        this.upTo = upTo;
        this.exemptFrom = exemptFrom;
    }

    /**
     * Returns the rule for one corner.
     *
     * @param corner where the base lines meet, and their directions; which side is its inside does not matter
     * @param arrivingLeg the leg back along the line that arrives at the corner
     * @param leavingLeg the leg along the line that leaves it
     * @param from the height over the ground above which the view is kept open
     * @param words what the rule is called
     * @param source where it comes from
     * @return the rule, without an upper limit and without an exemption
     * @throws IllegalArgumentException if a leg is not over 0 and at most 10,000 ft, the height negative or over
     *     10,000 ft, the base lines on one line, or the words blank
     */
    public static CornerVisibility of(
            Corner corner, Length arrivingLeg, Length leavingLeg, Length from, String words, Citation source) {
        requireLeg("arrivingLeg", arrivingLeg);
        requireLeg("leavingLeg", leavingLeg);
        if (Math.abs(corner.turn().sin()) < 1e-6) {
            throw new IllegalArgumentException("corner at " + corner.vertex() + " turns by " + corner.turn()
                    + ", so that its legs make no triangle; give two base lines that meet at an angle");
        }
        return new CornerVisibility(corner, arrivingLeg, leavingLeg, from, null, null, words, source);
    }

    private static void requireLeg(String name, Length leg) {
        if (!requireSize(name, leg).isPositive()) {
            throw new IllegalArgumentException(
                    name + " was " + leg + "; a leg must be over 0: measure it from where the base lines meet");
        }
    }

    /**
     * Returns this rule with an upper limit, over which the view need not be kept open.
     *
     * @param newUpTo the height over the ground below which the view is kept open, over the lower one
     * @return the rule with that limit
     * @throws IllegalArgumentException if it is not over the lower limit, or over 10,000 ft
     */
    public CornerVisibility withUpTo(Length newUpTo) {
        if (requireSize("upTo", newUpTo).compareTo(from) <= 0) {
            throw new IllegalArgumentException(
                    "upTo was " + newUpTo + ", not over the lower limit of " + from + "; swap them");
        }
        return new CornerVisibility(corner, arrivingLeg, leavingLeg, from, newUpTo, exemptFrom, words(), source());
    }

    /**
     * Returns this rule for fences less open than a share; others are exempt.
     *
     * @param openness the open part of the face from which on a fence is exempt
     * @return the rule with that exemption
     * @throws IllegalArgumentException if the share is not from 0 to 100 %
     */
    public CornerVisibility withExemption(Ratio openness) {
        return new CornerVisibility(
                corner, arrivingLeg, leavingLeg, from, upTo, requireShare("openness", openness), words(), source());
    }

    /**
     * Returns where the base lines meet.
     *
     * @return the corner
     */
    public Corner corner() {
        return corner;
    }

    /**
     * Returns how long the leg along the arriving line is.
     *
     * @return the leg
     */
    public Length arrivingLeg() {
        return arrivingLeg;
    }

    /**
     * Returns how long the leg along the leaving line is.
     *
     * @return the leg
     */
    public Length leavingLeg() {
        return leavingLeg;
    }

    /**
     * Returns the ground inside the triangle.
     *
     * @return the zone
     */
    @Override
    public Zone zone() {
        return Zone.inside(triangle);
    }

    /**
     * Returns the triangle.
     *
     * @return the corner, the end of the arriving leg, the end of the leaving leg; side 1 is the open side
     */
    public Polygon triangle() {
        return triangle;
    }

    /**
     * Returns the lower limit.
     *
     * @return the height above which the view is kept open
     */
    public Length from() {
        return from;
    }

    /**
     * Returns the upper limit.
     *
     * @return the height below which the view is kept open, if there is one
     */
    public Optional<Length> upTo() {
        return Optional.ofNullable(upTo);
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
        Breaches inView = new Breaches(Length::max);
        Zone zone = zone();
        for (FencePart part : fence.parts()) {
            if (part.isAtLeastAsOpenAs(exemptFrom)) {
                continue;
            }
            List<Interval> where =
                    Interval.common(part.stretchesIn(zone), part.top().stretchesAbove(from.plus(ROUNDING)));
            if (upTo != null) {
                where = Interval.common(where, part.bottom().stretchesBelow(upTo.minus(ROUNDING)));
            }
            if (!where.isEmpty()) {
                inView.along(part, where, highest(part.top(), where));
            }
        }
        return inView.findings(this::finding);
    }

    private Finding finding(Breaches.Breach breach) {
        String band = upTo == null
                ? "over " + Written.tape(from)
                : "between " + Written.tape(from) + " and " + Written.tape(upTo) + " up";
        String message = words() + ": the fence, up to " + Written.tape(breach.worst(), Rounding.UP) + " high, stands "
                + breach.stations() + " in the triangle where the view is kept open " + band;
        String remedy = "keep it no higher than " + Written.tape(from, Rounding.DOWN)
                + " there, or lead it round the triangle"
                + exemptFrom()
                        .map(open -> ", or build it at least " + percent(open) + " open")
                        .orElse("");
        return Finding.blocker("rule-visibility", breach.place(), message)
                .withRemedy(remedy)
                .withSource(source());
    }

    private static String percent(Ratio share) {
        return Math.round(share.percent()) + " %";
    }
}
