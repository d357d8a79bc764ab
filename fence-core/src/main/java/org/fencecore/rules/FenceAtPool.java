package org.fencecore.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** A fence held against the figures of a pool barrier: its own parts, its gates, and what is not told of them. */
final class FenceAtPool {

    private final PoolBarrier rule;
    private final List<FencePart> parts;
    private final List<GatePart> gates;

    FenceAtPool(PoolBarrier rule, LocalRule.Fence fence) {
        this.rule = rule;
        parts = fence.parts().stream()
                .filter(part -> !part.stretchesIn(rule.zone()).isEmpty())
                .toList();
        gates = fence.gates().stream().filter(rule::concerns).toList();
    }

    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        found.addAll(tooLow());
        found.addAll(tooFarUp(false, rule.gap(), "grass or gravel"));
        found.addAll(tooFarUp(true, rule.gapOverPaving(), "paving"));
        found.addAll(tooOpen(false, rule.opening(), ""));
        found.addAll(tooOpen(true, rule.openingAtLadder(), " between closely spaced horizontal members"));
        found.addAll(climbable());
        gates.forEach(gate -> found.addAll(new GateAtPool(rule, gate).findings()));
        Untold untold = new Untold();
        parts.forEach(untold::ask);
        gates.forEach(untold::ask);
        found.addAll(untold.findings());
        return found;
    }

    private List<Finding> tooLow() {
        Breaches low = new Breaches(Length::min);
        for (FencePart part : parts) {
            List<Interval> where = Interval.common(
                    part.stretchesIn(rule.zone()),
                    part.top().stretchesBelow(rule.height().minus(LocalRule.ROUNDING)));
            if (!where.isEmpty()) {
                low.along(part, where, LocalRule.lowest(part.top(), where));
            }
        }
        return low.findings(breach -> rule.broken(
                "pool-height",
                breach.place(),
                "the fence is only " + Written.tape(breach.worst(), Rounding.DOWN) + " high " + breach.stations()
                        + ", and " + Written.tape(rule.height()) + " is the least",
                "make it higher there"));
    }

    private List<Finding> tooFarUp(boolean paved, Length most, String ground) {
        Breaches high = new Breaches(Length::max);
        for (FencePart part : parts) {
            List<Interval> where = Interval.common(
                    part.stretchesIn(rule.zone()), part.bottom().stretchesAbove(most.plus(LocalRule.ROUNDING)));
            if (part.isOverPaving() == paved && !where.isEmpty()) {
                high.along(part, where, LocalRule.highest(part.bottom(), where));
            }
        }
        return high.findings(breach -> rule.broken(
                "pool-clearance",
                breach.place(),
                "the fence is up to " + Written.tape(breach.worst(), Rounding.UP) + " off the ground "
                        + breach.stations() + ", and " + Written.tape(most) + " is the most over " + ground,
                "lower the bottom there, let it follow the ground, or fill under it"));
    }

    private List<Finding> tooOpen(boolean ladder, Length most, String where) {
        Breaches open = new Breaches(Length::max);
        for (FencePart part : parts) {
            Optional<Length> widest =
                    part.opening().filter(width -> width.compareTo(most.plus(LocalRule.ROUNDING)) > 0);
            if (isLadder(part) == ladder && widest.isPresent()) {
                open.along(part, part.stretchesIn(rule.zone()), widest.orElseThrow());
            }
        }
        return open.findings(breach -> rule.broken(
                "pool-opening",
                breach.place(),
                "openings are up to " + Written.tape(breach.worst(), Rounding.UP) + " wide " + breach.stations()
                        + ", and " + Written.tape(most) + " is the most" + where,
                "set the boards nearer to each other" + (ladder ? ", or the horizontal members further apart" : "")));
    }

    private List<Finding> climbable() {
        Breaches ladders = new Breaches(Length::min);
        for (FencePart part : parts) {
            if (isLadder(part) && part.horizontalSide().orElseThrow() != rule.water()) {
                ladders.along(
                        part,
                        part.stretchesIn(rule.zone()),
                        part.horizontalSpacing().orElseThrow());
            }
        }
        return ladders.findings(breach -> rule.broken(
                "pool-climbable",
                breach.place(),
                "horizontal members on the side away from the water are only "
                        + Written.tape(breach.worst(), Rounding.DOWN) + " apart " + breach.stations() + ", and under "
                        + Written.tape(rule.ladderSpacing()) + " they have to be on the side of the water",
                "turn the fence round, or set them further apart"));
    }

    private boolean isLadder(FencePart part) {
        return part.horizontalSpacing()
                .filter(spacing -> spacing.compareTo(rule.ladderSpacing().minus(LocalRule.ROUNDING)) < 0)
                .isPresent();
    }

    /** What could not be checked, place by place. */
    private final class Untold {

        private final Map<String, Set<String>> byPlace = new LinkedHashMap<>();

        void ask(FencePart part) {
            if (part.opening().isEmpty()) {
                add(part.place(), "how wide its openings are");
            }
            if (!part.isSmooth() && part.horizontalSpacing().isEmpty()) {
                add(part.place(), "where its horizontal members are");
            }
        }

        void ask(GatePart gate) {
            if (gate.swing().isEmpty()) {
                add(gate.name(), "to which side it opens");
            }
            if (gate.isLockable().isEmpty()) {
                add(gate.name(), "whether it takes a lock");
            }
            if (gate.releaseHeight().isEmpty()) {
                add(gate.name(), "where the release of its latch is");
            } else if (gate.openingAtRelease().isEmpty()) {
                add(gate.name(), "how wide openings near the release are");
            }
        }

        private void add(String place, String what) {
            byPlace.computeIfAbsent(place, any -> new LinkedHashSet<>()).add(what);
        }

        List<Finding> findings() {
            return byPlace.entrySet().stream()
                    .map(each -> Finding.note(
                                    "pool-not-told",
                                    each.getKey(),
                                    rule.words() + ": not checked, since not told: "
                                            + Written.list(List.copyOf(each.getValue())))
                            .withRemedy("tell it, or check it by hand")
                            .withSource(rule.source()))
                    .toList();
        }
    }
}
