package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The lower edge of a leaf followed over the ground from shut to open: where it comes nearest, and what cures it if it
 * drags.
 *
 * <pre>
 * clearance = bottom at the pin + rake x distance from the pin - ground below
 * </pre>
 *
 * <p>looked at under both faces and the latch edge of a leaf of real thickness, which stands on the far side of the line
 * it opens from. At one angle the smallest clearance is exact, because the ground is straight between its breaks. From
 * angle to angle the latch edge goes no more than an inch (in leaves over 50 ft a two-thousandth of the arc), and the
 * three lowest places are then narrowed down to a ten-millionth of a radian; a hump narrower than an inch along the arc
 * may be missed. On a plane that rises by m in its steepest direction, the least clearance under the far corner is
 * {@code bottom + rake x w - m sqrt(w^2 + t^2)} if the corner sweeps through that direction, with the leaf w wide and t
 * thick.
 *
 * <p>Left out: ground that heaves or grows grass, and what the leaf sags.
 *
 * <p>Source: geometry. Example: a leaf 4 ft wide and of no thickness to speak of, its bottom 3 in over the ground at the
 * hinges, opens straight up a slope of 5 %: at the latch the ground is 48 x 0.05 = 2.4 in higher and 0.6 in of clearance
 * is left.
 */
public final class GateSwing {

    private final Builder setup;
    private final SwingSearch.Nearest nearest;

    private GateSwing(Builder setup, SwingSearch.Nearest nearest) {
        this.setup = setup;
        this.nearest = nearest;
    }

    /**
     * Starts from the ground.
     *
     * @param ground the ground around the gate
     * @return a builder that still needs the closed line and the bottom
     */
    public static Builder over(Surface ground) {
        return new Builder(ground);
    }

    /**
     * Returns the smallest clearance of the whole swing.
     *
     * @return the clearance, negative where the leaf would be in the ground
     */
    public Length smallestClearance() {
        return nearest.bottom().minus(nearest.ground());
    }

    /**
     * Returns how far open the leaf is where it comes nearest to the ground.
     *
     * @return the angle from shut
     */
    public Angle atAngle() {
        return Angle.ofRadians(nearest.angle());
    }

    /**
     * Returns how far from the pin it comes nearest to the ground.
     *
     * @return the distance along the leaf
     */
    public Length fromHinge() {
        return nearest.fromHinge();
    }

    /**
     * Returns where on the ground that is.
     *
     * @return the place in plan
     */
    public Point place() {
        return nearest.place();
    }

    /**
     * Tells whether the leaf goes through the whole swing with the wanted clearance.
     *
     * @return true if the smallest clearance is no less than wanted
     */
    public boolean isClear() {
        return smallestClearance().compareTo(setup.clearance) >= 0;
    }

    /**
     * Returns the same leaf opening the other way.
     *
     * @return that swing; empty where the ground is not known all the way
     */
    public Optional<GateSwing> otherWay() {
        Builder other = setup.copy();
        other.opens = setup.opens.opposite();
        return other.search();
    }

    /**
     * Returns the same leaf hung on the other side of its opening and opening to the same side of the fence.
     *
     * @return that swing; empty where the ground is not known all the way
     */
    public Optional<GateSwing> otherHinge() {
        Builder other = setup.copy();
        Segment closed = Objects.requireNonNull(setup.closed, "closed");
        Length bottom = Objects.requireNonNull(setup.bottom, "bottom");
        other.closed = closed.reversed();
        other.opens = setup.opens.opposite();
        other.bottom = bottom.plus(setup.rake.riseOver(closed.length()));
        other.rake = setup.rake.negated();
        return other.search();
    }

    /**
     * Returns how much higher the leaf must hang to go through its swing with the wanted clearance.
     *
     * @return the rise, zero if it is clear
     */
    public Length raiseNeeded() {
        return Length.max(setup.clearance.minus(smallestClearance()), Length.ZERO);
    }

    /**
     * Returns the least rake of the lower edge, rising from the pin, that gives the wanted clearance all the way with the
     * bottom at the pin where it is.
     *
     * @return the rake, rounded up to a tenth of a percent; empty if even 100 % would not do, because the ground near the
     *     pin is too high
     */
    public Optional<Slope> rakeNeeded() {
        double needed = setup.searchOf().steepestRakeNeeded(setup.clearance);
        if (needed > 1) {
            return Optional.empty();
        }
        return Optional.of(Slope.ofPercent(Math.ceil(needed * 1000 - 1e-6) / 10));
    }

    /**
     * Returns what a builder should know: blocker {@code gate-drags} where the leaf would be in the ground, warning
     * {@code gate-swing-close} where there is less than the wanted clearance; each with whatever of the other way, the
     * other hinge side, a higher bottom and a raked bottom would cure it.
     *
     * @return the findings, unmodifiable; none if the swing is clear
     */
    public List<Finding> findings() {
        if (isClear()) {
            return List.of();
        }
        String where = Written.degrees(atAngle()) + " open, " + Written.tape(fromHinge()) + " from the hinges";
        Finding finding = smallestClearance().isNegative()
                ? Finding.blocker(
                        "gate-drags",
                        "gate swing",
                        "the leaf would be " + Written.tape(smallestClearance().abs(), Rounding.UP)
                                + " in the ground at " + where)
                : Finding.warning(
                        "gate-swing-close",
                        "gate swing",
                        "the leaf clears the ground by only "
                                + Written.tape(smallestClearance(), Rounding.DOWN) + " at " + where + ", under the "
                                + Written.tape(setup.clearance) + " wanted");
        return List.of(finding.withRemedy(String.join("; or ", cures())).withSource(Citation.GEOMETRY));
    }

    private List<String> cures() {
        List<String> cures = new ArrayList<>();
        cure(otherWay(), "let it open the other way", cures);
        cure(otherHinge(), "hinge it on the other side", cures);
        cure(
                otherHinge().flatMap(GateSwing::otherWay),
                "hinge it on the other side and let it open the other way",
                cures);
        cures.add("hang it " + Written.tape(raiseNeeded(), Rounding.UP) + " higher");
        rakeNeeded()
                .ifPresent(rake -> cures.add("rake its bottom to rise " + Written.percent(rake) + " from the hinges"));
        cures.add("take the ground down");
        return cures;
    }

    private static void cure(Optional<GateSwing> swing, String words, List<String> cures) {
        swing.filter(GateSwing::isClear)
                .ifPresent(clear -> cures.add(
                        words + ", which clears by " + Written.tape(clear.smallestClearance(), Rounding.DOWN)));
    }

    /**
     * Returns the nearest place worked out line by line; the angle itself comes from a search.
     *
     * @return the worksheet; its last line is {@link #smallestClearance}
     */
    public Worksheet worksheet() {
        Length bottom = Objects.requireNonNull(setup.bottom, "bottom");
        String from = Written.inches(fromHinge());
        return Worksheet.titled("Swing of the gate over the ground")
                .given("bottom of the leaf at the pin", bottom, Written.feet(bottom))
                .given("rake of the bottom, rising from the pin", setup.rake, Written.percent(setup.rake))
                .given("thickness of the leaf", setup.thickness, Written.tape(setup.thickness))
                .line(
                        "nearest at an angle of",
                        "least clearance of all angles from 0 to " + Written.degrees(setup.openTo),
                        "",
                        atAngle(),
                        Written.degrees(atAngle()),
                        Citation.GEOMETRY)
                .line(
                        "distance from the pin there",
                        "least clearance of all places under the leaf",
                        "",
                        fromHinge(),
                        Written.tape(fromHinge()),
                        Citation.GEOMETRY)
                .line(
                        "bottom of the leaf there",
                        "bottom at the pin + rake x distance",
                        Written.feet(bottom) + " + " + Written.percent(setup.rake) + " x " + from,
                        nearest.bottom(),
                        Written.feet(nearest.bottom()),
                        Citation.GEOMETRY)
                .given("ground there", nearest.ground(), Written.feet(nearest.ground()))
                .line(
                        "smallest clearance",
                        "bottom there - ground there",
                        Written.feet(nearest.bottom()) + " - " + Written.feet(nearest.ground()),
                        smallestClearance(),
                        Written.tape(smallestClearance()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public String toString() {
        return "clears the ground by " + Written.tape(smallestClearance()) + " at " + Written.degrees(atAngle());
    }

    /** Collects how a leaf swings, starting from a leaf 1 1/2 in thick that opens to the right by 90 degrees. */
    public static final class Builder {

        private final Surface ground;
        private @Nullable Segment closed;
        private @Nullable Length bottom;
        private Side opens = Side.RIGHT;
        private Length thickness = Length.ofInches(1.5);
        private Slope rake = Slope.LEVEL;
        private Angle openTo = Angle.RIGHT;
        private Length clearance = Length.ofInches(2);

        private Builder(Surface ground) {
            this.ground = Objects.requireNonNull(ground, "ground");
        }

        private Builder copy() {
            Builder copy = new Builder(ground);
            copy.closed = closed;
            copy.bottom = bottom;
            copy.opens = opens;
            copy.thickness = thickness;
            copy.rake = rake;
            copy.openTo = openTo;
            copy.clearance = clearance;
            return copy;
        }

        /**
         * Sets where the shut leaf is.
         *
         * @param fromPinToLatch from the pin of the hinges to the latch edge of the leaf, in plan, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if its length is out of range
         */
        public Builder closed(Segment fromPinToLatch) {
            Sizes.require("length of fromPinToLatch", fromPinToLatch.length());
            closed = fromPinToLatch;
            return this;
        }

        /**
         * Sets the side it opens to; right if not set.
         *
         * @param side the side of the closed leaf, looking from the pin to the latch
         * @return this builder
         */
        public Builder opens(Side side) {
            opens = Objects.requireNonNull(side, "side");
            return this;
        }

        /**
         * Sets how high the lower edge of leaf and boards is at the pin.
         *
         * @param elevation the height in the datum of the ground
         * @return this builder
         */
        public Builder bottom(Length elevation) {
            bottom = Objects.requireNonNull(elevation, "elevation");
            return this;
        }

        /**
         * Sets how thick the leaf is with its boards; 1 1/2 in if not set.
         *
         * @param newThickness the thickness, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder thickness(Length newThickness) {
            thickness = Sizes.require("newThickness", newThickness);
            return this;
        }

        /**
         * Sets how the lower edge rises from the pin to the latch; level if not set.
         *
         * @param risingFromPin the grade, 100 % at most either way
         * @return this builder
         * @throws IllegalArgumentException if steeper than that
         */
        public Builder rake(Slope risingFromPin) {
            if (risingFromPin.abs().compareTo(Slope.ofPercent(100)) > 0) {
                throw new IllegalArgumentException(
                        "risingFromPin was " + risingFromPin + "; it must be from -100 % to 100 %, so check its unit");
            }
            rake = risingFromPin;
            return this;
        }

        /**
         * Sets how far it opens; 90 degrees if not set.
         *
         * @param angle the angle from shut, over 0, to 180 degrees
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder openTo(Angle angle) {
            if (!angle.isPositive() || angle.compareTo(Angle.STRAIGHT) > 0) {
                throw new IllegalArgumentException("angle was " + Written.degrees(angle)
                        + "; it must be over 0 and no more than 180 deg, measured from the shut gate");
            }
            openTo = angle;
            return this;
        }

        /**
         * Sets the clearance that is wanted all the way; 2 in if not set (common practice, no source).
         *
         * @param wanted the clearance, 0 to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder clearance(Length wanted) {
            clearance = Sizes.requireOrZero("wanted", wanted);
            return this;
        }

        private SwingSearch searchOf() {
            if (closed == null || bottom == null) {
                throw new IllegalArgumentException((closed == null ? "closed" : "bottom")
                        + " was not set; a swing needs the closed line and the bottom of the leaf");
            }
            return new SwingSearch(ground, closed, opens, thickness, bottom, rake, openTo);
        }

        private Optional<GateSwing> search() {
            return searchOf().nearest().map(nearest -> new GateSwing(this, nearest));
        }

        /**
         * Returns the swing, if the ground is known under all of it.
         *
         * @return the swing, searched; empty where the ground is not known
         * @throws IllegalArgumentException if the closed line or the bottom was not set
         */
        public Optional<GateSwing> buildWhereKnown() {
            return copy().search();
        }

        /**
         * Returns the swing.
         *
         * @return the swing, searched
         * @throws IllegalArgumentException if the closed line or the bottom was not set, or the ground is not known under
         *     the whole swing
         */
        public GateSwing build() {
            Builder kept = copy();
            return kept.search()
                    .orElseThrow(() -> new IllegalArgumentException("ground does not reach under the whole swing of "
                            + kept.closed + " to the " + kept.opens + " by " + Written.degrees(kept.openTo)
                            + "; give shots of the ground out to there"));
        }
    }
}
