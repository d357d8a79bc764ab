package org.fencecore.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** One gate held against the figures of a pool barrier. */
final class GateAtPool {

    private final PoolBarrier rule;
    private final GatePart gate;

    GateAtPool(PoolBarrier rule, GatePart gate) {
        this.rule = rule;
        this.gate = gate;
    }

    static List<String> requirements(PoolBarrier rule) {
        return List.of(
                "opens away from the water",
                "closes and latches by itself from any position, and takes a lock",
                "release of the latch " + wanted(rule));
    }

    private static String wanted(PoolBarrier rule) {
        return Written.tape(rule.releaseHeight(), Rounding.UP) + " up or higher, or on the side of the water, "
                + Written.tape(rule.releaseUnderTop(), Rounding.UP) + " or more under the top, with no opening over "
                + Written.tape(rule.openingAtRelease(), Rounding.DOWN) + " within "
                + Written.tape(rule.nearRelease(), Rounding.UP) + " of it unless behind a shield";
    }

    List<Finding> findings() {
        List<Finding> found = new ArrayList<>();
        if (opensToWater()) {
            found.add(rule.broken(
                    "pool-gate-swing",
                    gate.name(),
                    "the gate opens towards the water",
                    "let it open away from the water"));
        }
        List<String> missing = Stream.of(gate.isSelfClosing() ? "" : "close", gate.isSelfLatching() ? "" : "latch")
                .filter(verb -> !verb.isEmpty())
                .toList();
        if (!missing.isEmpty()) {
            String both = String.join(" and ", missing);
            found.add(rule.broken(
                    "pool-gate-closing",
                    gate.name(),
                    "the gate is not said to " + both + " by itself",
                    "fit hinges or a spring, and a latch, that " + both + " it"));
        }
        if (gate.isLockable().filter(locks -> !locks).isPresent()) {
            found.add(rule.broken(
                    "pool-gate-lock", gate.name(), "the gate takes no lock", "fit a latch that a lock can be put on"));
        }
        List<String> faults = releaseFaults();
        if (!faults.isEmpty()) {
            found.add(rule.broken(
                    "pool-gate-release",
                    gate.name(),
                    "the release of the latch, under " + Written.tape(rule.releaseHeight()) + " up, is "
                            + Written.list(faults),
                    "set it " + wanted(rule)));
        }
        return found;
    }

    private boolean opensToWater() {
        return gate.swing().filter(side -> side == rule.water()).isPresent();
    }

    private boolean isWithinReach() {
        return gate.releaseHeight()
                .filter(up -> up.compareTo(rule.releaseHeight().minus(LocalRule.ROUNDING)) < 0)
                .isPresent();
    }

    private Length underTop() {
        return gate.leaf().top().lowest().elevation().minus(gate.releaseHeight().orElseThrow());
    }

    private List<String> releaseFaults() {
        List<String> faults = new ArrayList<>();
        if (!isWithinReach()) {
            return faults;
        }
        if (gate.releaseSide().orElseThrow() != rule.water()) {
            faults.add("on the side away from the water");
        }
        Length underTop = underTop();
        if (underTop.compareTo(rule.releaseUnderTop().minus(LocalRule.ROUNDING)) < 0) {
            faults.add(
                    underTop.isNegative()
                            ? "over the top of the gate"
                            : "only " + Written.tape(underTop, Rounding.DOWN) + " under the top of the gate");
        }
        gate.openingAtRelease()
                .filter(width -> width.compareTo(rule.openingAtRelease().plus(LocalRule.ROUNDING)) > 0)
                .ifPresent(width -> faults.add("near openings of up to " + Written.tape(width, Rounding.UP)));
        return faults;
    }

    Worksheet worksheet() {
        Length top = gate.leaf().top().lowest().elevation();
        Worksheet.Builder sheet =
                Worksheet.titled("Pool gate").given("top of the gate where it is lowest", top, Written.tape(top));
        gate.swing()
                .ifPresent(side -> told(
                        sheet,
                        "opens away from the water",
                        "swing not on the side of the water",
                        side != rule.water()));
        told(sheet, "closes by itself", "said to", gate.isSelfClosing());
        told(sheet, "latches by itself", "said to", gate.isSelfLatching());
        gate.isLockable().ifPresent(locks -> told(sheet, "takes a lock", "said to", locks));
        gate.releaseHeight().ifPresent(up -> release(sheet, up));
        int broken = findings().size();
        return sheet.line("rule broken in", "number of findings", "", broken, Integer.toString(broken), rule.source())
                .build();
    }

    private void release(Worksheet.Builder sheet, Length up) {
        Citation source = rule.source();
        sheet.given("release of the latch", up, Written.tape(up));
        told(
                sheet,
                "release out of reach",
                "release at or over " + Written.tape(rule.releaseHeight()),
                !isWithinReach());
        if (!isWithinReach()) {
            return;
        }
        told(
                sheet,
                "release on the side of the water",
                "asked of one within reach",
                gate.releaseSide().orElseThrow() == rule.water());
        sheet.line(
                "release under the top",
                "top - release, at least " + Written.tape(rule.releaseUnderTop()),
                Written.inches(up.plus(underTop())) + " - " + Written.inches(up),
                underTop(),
                Written.tape(underTop()),
                source);
        gate.openingAtRelease()
                .ifPresent(width -> sheet.line(
                        "widest opening within " + Written.tape(rule.nearRelease()) + " of it",
                        "no more than " + Written.tape(rule.openingAtRelease()),
                        "",
                        width,
                        Written.tape(width),
                        source));
    }

    private void told(Worksheet.Builder sheet, String what, String rulesWords, boolean isSo) {
        sheet.line(what, rulesWords, "", isSo, isSo ? "yes" : "no", rule.source());
    }
}
