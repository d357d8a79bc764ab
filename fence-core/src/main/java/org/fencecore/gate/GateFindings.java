package org.fencecore.gate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** What is wrong with a gate, and the way out. */
final class GateFindings {

    private static final Citation LEAST_RISE = Citation.of("Manual of Purpose-Made Woodworking Joinery", "p. 85", "");

    private final GateDesign gate;
    private final GateSpec spec;
    private final Length clearWidth;
    private final Length clearHeight;

    private GateFindings(GateDesign gate) {
        this.gate = gate;
        this.spec = gate.spec();
        this.clearWidth = gate.clearWidth();
        this.clearHeight = gate.lowestClearHeight();
    }

    static List<Finding> of(GateDesign gate) {
        GateFindings of = new GateFindings(gate);
        return Stream.of(of.narrowLeaf(), of.lowFrame(), of.wideBrace(), of.wideLeaf(), of.flatBrace())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Finding> narrowLeaf() {
        if (clearWidth.isPositive()) {
            return Optional.empty();
        }
        String message = "the leaf of " + Written.tape(gate.leafWidth())
                + " leaves no room for rails between two stiles of " + Written.tape(spec.memberWidth());
        return Optional.of(Finding.blocker("gate-leaf-narrow", "gate frame", message)
                .withRemedy("use narrower stiles, or an opening of at least "
                        + Written.tape(spec.minimumOpening(), Rounding.UP))
                .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> lowFrame() {
        if (clearHeight.isPositive()) {
            return Optional.empty();
        }
        String message = "the frame height of " + Written.tape(gate.frameHeight()) + " leaves no room between "
                + (spec.middleRail() ? "three" : "two") + " rails of " + Written.tape(spec.memberWidth());
        return Optional.of(Finding.blocker("gate-frame-low", "gate frame", message)
                .withRemedy("use narrower or fewer rails, or a frame at least "
                        + Written.tape(spec.minimumHeight(), Rounding.UP) + " high")
                .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> wideBrace() {
        if (!gate.hasRoom() || GateBrace.fits(spec.braceWidth(), clearWidth, clearHeight)) {
            return Optional.empty();
        }
        String message =
                "a brace " + Written.tape(spec.braceWidth()) + " wide does not fit a clear space of " + clearSpace();
        return Optional.of(Finding.blocker("gate-brace-wide", "gate brace", message)
                .withRemedy("use a brace under "
                        + Written.tape(GateBrace.widest(clearWidth, clearHeight), Rounding.DOWN) + " wide")
                .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> wideLeaf() {
        if (gate.leafWidth().compareTo(spec.reasonableLeafWidth()) <= 0) {
            return Optional.empty();
        }
        String message = "the leaf of " + Written.tape(gate.leafWidth(), Rounding.UP) + " is wider than the reasonable "
                + Written.tape(spec.reasonableLeafWidth());
        return Optional.of(Finding.warning("gate-leaf-wide", "gate leaf", message)
                .withRemedy("hang two leaves, or choose frame, hinges and posts for its weight")
                .withSource(Citation.COMMON_PRACTICE));
    }

    private Optional<Finding> flatBrace() {
        if (!gate.hasRoom() || clearHeight.compareTo(clearWidth) >= 0) {
            return Optional.empty();
        }
        String message = "in a clear space of " + clearSpace() + " a brace rises at only " + rise(clearHeight)
                + "; it should rise at 45 deg or more";
        // The manual's own way out: line the braces up into one steep brace.
        Length wholeHeight = gate.frameHeight().minus(spec.memberWidth().times(2));
        String remedy = spec.middleRail() && wholeHeight.compareTo(clearWidth) >= 0
                ? "leave out the middle rail, so that one brace rises at " + rise(wholeHeight)
                : "hang two leaves, or make the frame higher";
        return Optional.of(Finding.warning("gate-brace-flat", "gate brace", message)
                .withRemedy(remedy)
                .withSource(LEAST_RISE));
    }

    private String rise(Length height) {
        return Written.degrees(Angle.ofTangent(height, clearWidth));
    }

    private String clearSpace() {
        return Written.tape(clearWidth) + " by " + Written.tape(clearHeight);
    }
}
