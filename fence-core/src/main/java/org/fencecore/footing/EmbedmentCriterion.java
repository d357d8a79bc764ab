package org.fencecore.footing;

import java.util.Objects;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Written;

/**
 * How deep one rule asks a post to stand, before rounding.
 *
 * @param rule the rule
 * @param depth the depth below grade it asks for, not rounded
 * @param source where the rule or its figure comes from
 */
public record EmbedmentCriterion(EmbedmentRule rule, Length depth, Citation source) {

    /**
     * Checks the parts.
     *
     * @param rule the rule
     * @param depth the depth below grade it asks for, not rounded
     * @param source where the rule or its figure comes from
     */
    public EmbedmentCriterion {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(depth, "depth");
        Objects.requireNonNull(source, "source");
    }

    /**
     * Returns by how much this criterion falls short of another, such as the governing one.
     *
     * @param other the other criterion
     * @return the other's depth less this one's; negative if this is the deeper
     */
    public Length shortOf(EmbedmentCriterion other) {
        return other.depth.minus(depth);
    }

    @Override
    public String toString() {
        return rule + " " + Written.tape(depth, Rounding.UP) + " [" + source + "]";
    }
}
