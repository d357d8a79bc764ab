package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * A gate in the fence around a pool, held against the dimensions of a barrier rule: it opens away from the water, closes
 * and latches by itself, can be locked, and its latch is high up, or on the pool side behind a shield that no small hand
 * reaches around.
 *
 * <pre>
 * release at or over the high release  nothing more is asked of it
 * release lower                        on the pool side, at least so far under the top of the gate,
 *                                      and no opening wider than so much within so far of it
 * </pre>
 *
 * <p>The dimensions are parameters, because states and towns differ: as a start, 54 in, 3 in, 1/2 in and 18 in, which the
 * International Swimming Pool and Spa Code gives in section 305 (as summarised by a county's published pool barrier rules;
 * edition not seen). This tells what to look at. Local codes decide, and whoever inspects for them.
 *
 * <p>Example: a release 48 in up on the pool side, 8 in under the top of a gate 56 in high, with 1/4 in gaps around it,
 * has no finding if the leaf opens away from the water, closes and latches itself and can be locked.
 *
 * <pre>{@code
 * PoolGate gate = PoolGate.builder().gateTop(Length.ofInches(56)).release(Length.ofInches(48))
 *         .releaseOnPoolSide(true).widestOpeningNearRelease(Length.ofInches(0.25)).build();
 * gate.findings();    // none
 * }</pre>
 */
public final class PoolGate {

    private static final Citation RULE =
            Citation.of("International Swimming Pool and Spa Code", "305, as parameters", "edition not seen");

    private final Builder facts;

    private PoolGate(Builder facts) {
        this.facts = facts;
    }

    /**
     * Starts from a gate that does all by itself and opens away from the water, with its release 54 in up.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns a builder that starts from this gate, to change some of it.
     *
     * @return a builder with all that is said of this gate
     */
    public Builder toBuilder() {
        return facts.copy();
    }

    /**
     * Returns how high the release of the latch is.
     *
     * @return the height over the ground
     */
    public Length release() {
        return facts.release;
    }

    /**
     * Tells on which side the release is.
     *
     * @return true if on the pool side
     */
    public boolean isReleaseOnPoolSide() {
        return facts.releaseOnPoolSide;
    }

    /**
     * Returns how high the gate is.
     *
     * @return its top, over the ground
     */
    public Length gateTop() {
        return facts.gateTop;
    }

    /**
     * Tells whether the gate opens away from the water.
     *
     * @return true if it does
     */
    public boolean opensAway() {
        return facts.opensAway;
    }

    /**
     * Tells whether the gate takes a lock.
     *
     * @return true if it does
     */
    public boolean isLockable() {
        return facts.lockable;
    }

    /**
     * Returns how high a release must be to sit anywhere.
     *
     * @return the height over the ground
     */
    public Length highRelease() {
        return facts.highRelease;
    }

    /**
     * Returns how far under the top a lower release must be.
     *
     * @return the least distance
     */
    public Length leastUnderTop() {
        return facts.leastUnderTop;
    }

    /**
     * Returns how wide openings near a lower release may be.
     *
     * @return the largest opening
     */
    public Length largestOpening() {
        return facts.largestOpening;
    }

    /**
     * Returns how far from a lower release openings count.
     *
     * @return the radius
     */
    public Length shieldRadius() {
        return facts.shieldRadius;
    }

    /**
     * Tells whether it closes by itself.
     *
     * @return true if so
     */
    public boolean isSelfClosing() {
        return facts.selfClosing;
    }

    /**
     * Tells whether it latches by itself.
     *
     * @return true if so
     */
    public boolean isSelfLatching() {
        return facts.selfLatching;
    }

    /**
     * Returns the widest opening of gate and fence near the release.
     *
     * @return the opening, zero for none
     */
    public Length widestOpeningNearRelease() {
        return facts.widestOpening;
    }

    /**
     * Returns what the rule asks of such a gate, each in a sentence with its dimensions.
     *
     * @return the sentences, for whoever hangs the gate; unmodifiable
     */
    public List<String> requirements() {
        String release = "release of the latch " + Written.tape(facts.release) + " above the ground";
        String low = ": on the pool side, at least " + Written.tape(facts.leastUnderTop, Rounding.UP)
                + " under the top of the gate, and no opening over "
                + Written.tape(facts.largestOpening, Rounding.DOWN) + " within "
                + Written.tape(facts.shieldRadius, Rounding.UP) + " of it, or a shield over them";
        return List.of(
                "opens away from the water",
                "closes and latches by itself from any position, and takes a lock",
                isReleaseHigh()
                        ? release + ", no lower than " + Written.tape(facts.highRelease, Rounding.UP)
                        : release + low);
    }

    /**
     * Tells whether the release is so high that nothing is asked of what surrounds it.
     *
     * @return true at or over the high release
     */
    public boolean isReleaseHigh() {
        return facts.release.compareTo(facts.highRelease) >= 0;
    }

    /**
     * Returns how far the release is under the top of the gate.
     *
     * @return the top less the release; negative if above
     */
    public Length underTop() {
        return facts.gateTop.minus(facts.release);
    }

    /**
     * Returns what departs from the rule: warnings {@code pool-gate-opens-in}, {@code pool-gate-self-closing},
     * {@code pool-gate-self-latching}, {@code pool-gate-lock}, and with a low release {@code pool-release-outside},
     * {@code pool-release-near-top} and {@code pool-release-shield}.
     *
     * @return the findings, unmodifiable; none if it departs in nothing
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        say(
                !facts.opensAway,
                "pool-gate-opens-in",
                "the gate opens towards the water",
                "hang it to open away from the water",
                findings);
        say(
                !facts.selfClosing,
                "pool-gate-self-closing",
                "the gate does not close by itself",
                "use spring hinges or a closer",
                findings);
        say(
                !facts.selfLatching,
                "pool-gate-self-latching",
                "the gate does not latch by itself",
                "use a latch that catches when the gate falls shut",
                findings);
        say(!facts.lockable, "pool-gate-lock", "the gate cannot be locked", "use a latch that takes a lock", findings);
        if (isReleaseHigh()) {
            return List.copyOf(findings);
        }
        String low = "the release at " + Written.tape(facts.release) + " is under " + Written.tape(facts.highRelease);
        String raise = ", or raise it to " + Written.tape(facts.highRelease, Rounding.UP);
        say(
                !facts.releaseOnPoolSide,
                "pool-release-outside",
                low + " and not on the pool side",
                "put it on the pool side" + raise,
                findings);
        say(
                underTop().compareTo(facts.leastUnderTop) < 0,
                "pool-release-near-top",
                low + " and only " + Written.tape(underTop()) + " under the top of the gate, where a hand reaches over",
                "put it at least " + Written.tape(facts.leastUnderTop, Rounding.UP) + " under the top" + raise,
                findings);
        say(
                facts.widestOpening.compareTo(facts.largestOpening) > 0,
                "pool-release-shield",
                low + ", and openings of " + Written.tape(facts.widestOpening) + " near it are over "
                        + Written.tape(facts.largestOpening),
                "cover gate and fence within " + Written.tape(facts.shieldRadius) + " of it" + raise,
                findings);
        return List.copyOf(findings);
    }

    private static void say(boolean departs, String code, String message, String remedy, List<Finding> findings) {
        if (departs) {
            findings.add(Finding.warning(code, "pool gate", message)
                    .withRemedy(remedy)
                    .withSource(RULE));
        }
    }

    /**
     * Returns the dimensions beside those of the rule, line by line.
     *
     * @return the worksheet; its last line is how many findings there are
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Pool gate")
                .given("top of the gate", facts.gateTop, Written.tape(facts.gateTop))
                .given("release of the latch", facts.release, Written.tape(facts.release))
                .line(
                        "high release",
                        "release at or over " + Written.tape(facts.highRelease),
                        "",
                        isReleaseHigh(),
                        isReleaseHigh() ? "yes" : "no",
                        RULE);
        if (!isReleaseHigh()) {
            sheet.line(
                            "release under the top",
                            "top - release, at least " + Written.tape(facts.leastUnderTop),
                            Written.inches(facts.gateTop) + " - " + Written.inches(facts.release),
                            underTop(),
                            Written.tape(underTop()),
                            RULE)
                    .line(
                            "widest opening near it",
                            "no more than " + Written.tape(facts.largestOpening) + " within "
                                    + Written.tape(facts.shieldRadius),
                            "",
                            facts.widestOpening,
                            Written.tape(facts.widestOpening),
                            RULE);
        }
        int found = (int) findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .count();
        return sheet.line("departures from the rule", "findings", "", found, Integer.toString(found), RULE)
                .build();
    }

    @Override
    public String toString() {
        return "pool gate, release " + Written.tape(facts.release) + " up";
    }

    /** Collects what a gate is like, and the dimensions of the rule. */
    public static final class Builder {

        private Length gateTop = Length.ofInches(60);
        private Length release = Length.ofInches(54);
        private boolean opensAway = true;
        private boolean selfClosing = true;
        private boolean selfLatching = true;
        private boolean lockable = true;
        private boolean releaseOnPoolSide = true;
        private Length widestOpening = Length.ZERO;
        private Length highRelease = Length.ofInches(54);
        private Length leastUnderTop = Length.ofInches(3);
        private Length largestOpening = Length.ofInches(0.5);
        private Length shieldRadius = Length.ofInches(18);

        private Builder() {}

        private Builder copy() {
            Builder copy = new Builder();
            copy.gateTop = gateTop;
            copy.release = release;
            copy.opensAway = opensAway;
            copy.selfClosing = selfClosing;
            copy.selfLatching = selfLatching;
            copy.lockable = lockable;
            copy.releaseOnPoolSide = releaseOnPoolSide;
            copy.widestOpening = widestOpening;
            copy.highRelease = highRelease;
            copy.leastUnderTop = leastUnderTop;
            copy.largestOpening = largestOpening;
            copy.shieldRadius = shieldRadius;
            return copy;
        }

        /**
         * Sets how high the top of the gate is over the ground; 60 in if not set.
         *
         * @param height the height, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder gateTop(Length height) {
            gateTop = Sizes.require("height", height);
            return this;
        }

        /**
         * Sets how high the release of the latch is over the ground; 54 in if not set.
         *
         * @param height the height, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder release(Length height) {
            release = Sizes.require("height", height);
            return this;
        }

        /**
         * Sets whether the gate opens away from the water; it does if not set.
         *
         * @param away true if away from it
         * @return this builder
         */
        public Builder opensAway(boolean away) {
            opensAway = away;
            return this;
        }

        /**
         * Sets whether it closes by itself; it does if not set.
         *
         * @param closes true if so
         * @return this builder
         */
        public Builder selfClosing(boolean closes) {
            selfClosing = closes;
            return this;
        }

        /**
         * Sets whether it latches by itself; it does if not set.
         *
         * @param latches true if so
         * @return this builder
         */
        public Builder selfLatching(boolean latches) {
            selfLatching = latches;
            return this;
        }

        /**
         * Sets whether it can be locked; it can if not set.
         *
         * @param locks true if so
         * @return this builder
         */
        public Builder lockable(boolean locks) {
            lockable = locks;
            return this;
        }

        /**
         * Sets whether the release is on the pool side; it is if not set.
         *
         * @param poolSide true if so
         * @return this builder
         */
        public Builder releaseOnPoolSide(boolean poolSide) {
            releaseOnPoolSide = poolSide;
            return this;
        }

        /**
         * Sets the widest opening of gate and fence within the shield's reach of the release; none if not set.
         *
         * @param opening the opening, 0 to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder widestOpeningNearRelease(Length opening) {
            widestOpening = Sizes.requireOrZero("opening", opening);
            return this;
        }

        /**
         * Sets the dimensions of the rule; 54, 3, 1/2 and 18 in if not set.
         *
         * @param high the height from which on a release needs no shield, over 0, to 100 ft
         * @param underTop how far a lower one must be under the top of the gate, over 0, to 100 ft
         * @param opening the widest opening near a lower one, over 0, to 100 ft
         * @param radius how near that is, over 0, to 100 ft
         * @return this builder
         * @throws IllegalArgumentException if one is out of that range
         */
        public Builder rule(Length high, Length underTop, Length opening, Length radius) {
            highRelease = Sizes.require("high", high);
            leastUnderTop = Sizes.require("underTop", underTop);
            largestOpening = Sizes.require("opening", opening);
            shieldRadius = Sizes.require("radius", radius);
            return this;
        }

        /**
         * Returns the gate.
         *
         * @return the gate
         */
        public PoolGate build() {
            return new PoolGate(copy());
        }
    }
}
