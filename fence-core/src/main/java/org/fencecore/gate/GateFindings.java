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

/** What is wrong with a leaf, and the way out. */
final class GateFindings {

    private static final Citation LEAST_RISE = Citation.of("Manual of Purpose-Made Woodworking Joinery", "p. 85", "");
    private static final Citation DIRECTION =
            Citation.of("Building Construction (chestofbooks.com, Building-Construction-5)", "Doors", "");

    private final GateLeaf leaf;
    private final GateSpec spec;
    private final Length clearWidth;
    private final Length clearHeight;

    private GateFindings(GateLeaf leaf) {
        this.leaf = leaf;
        this.spec = leaf.spec();
        this.clearWidth = leaf.clearWidth();
        this.clearHeight = leaf.lowestClearHeight();
    }

    static List<Finding> of(GateLeaf leaf) {
        GateFindings of = new GateFindings(leaf);
        return Stream.of(
                        of.narrowLeaf(),
                        of.lowFrame(),
                        of.wideBrace(),
                        of.fallingBrace(),
                        of.wideLeaf(),
                        of.flatBrace(),
                        of.wrongWay())
                .flatMap(Optional::stream)
                .toList();
    }

    private Length minimumOpening() {
        return leaf.isPaired() ? spec.minimumPairOpening() : spec.minimumOpening();
    }

    private Optional<Finding> narrowLeaf() {
        if (clearWidth.isPositive()) {
            return Optional.empty();
        }
        String message = "the leaf of " + Written.tape(leaf.width())
                + " leaves no room for rails between two stiles of " + Written.tape(spec.memberWidth());
        return Optional.of(Finding.blocker("gate-leaf-narrow", "gate frame", message)
                .withRemedy(
                        "use narrower stiles, or an opening of at least " + Written.tape(minimumOpening(), Rounding.UP))
                .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> lowFrame() {
        if (clearHeight.isPositive()) {
            return Optional.empty();
        }
        String message = "the frame height of " + Written.tape(leaf.frameHeight()) + " leaves no room between "
                + (spec.hasMiddleRail() ? "three" : "two") + " rails of " + Written.tape(leaf.railDepth());
        int rails = leaf.rails().size();
        Length least = leaf.railDepth()
                .times(rails)
                .plus(leaf.rake().lengthOver(spec.braceWidth()).times(rails - 1L));
        return Optional.of(Finding.blocker("gate-frame-low", "gate frame", message)
                .withRemedy("use narrower or fewer rails, or a frame at least " + Written.tape(least, Rounding.UP)
                        + " high")
                .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> wideBrace() {
        if (!leaf.hasRoom()) {
            return Optional.empty();
        }
        return leaf.bracesThatMayNotFit().stream()
                .filter(brace -> !brace.fits())
                .findFirst()
                .map(brace -> Finding.blocker(
                                "gate-brace-wide",
                                "gate brace",
                                "a brace " + Written.tape(spec.braceWidth()) + " wide does not fit a clear space of "
                                        + clearSpace())
                        .withRemedy("use a brace under " + Written.tape(brace.widest(), Rounding.DOWN) + " wide")
                        .withSource(Citation.GEOMETRY));
    }

    /** Raked down towards the head by more than the frame is high, a brace would not rise at all. */
    private Optional<Finding> fallingBrace() {
        return leaf.braces().stream()
                .filter(brace -> !brace.rise().isPositive())
                .findFirst()
                .map(brace -> Finding.blocker(
                                "gate-brace-falls",
                                "gate brace",
                                "raked at " + Written.percent(leaf.rake()) + ", the " + brace.kind()
                                        + " would rise at " + Written.degrees(brace.rise())
                                        + " and cannot hold up the latch side")
                        .withRemedy("hang the leaf on its other side, rake it less, or make the frame higher")
                        .withSource(Citation.GEOMETRY));
    }

    private Optional<Finding> wideLeaf() {
        if (leaf.width().compareTo(spec.reasonableLeafWidth()) <= 0) {
            return Optional.empty();
        }
        String message = "the leaf of " + Written.tape(leaf.width(), Rounding.UP) + " is wider than the reasonable "
                + Written.tape(spec.reasonableLeafWidth());
        String remedy = leaf.isPaired() || leaf.clearOpening().compareTo(spec.minimumPairOpening()) < 0
                ? "choose frame, hinges and posts for its weight, or make the opening smaller"
                : "hang two leaves of "
                        + Written.tape(
                                leaf.clearOpening().minus(spec.pairGaps()).portion(1, 2), Rounding.DOWN)
                        + ", or choose frame, hinges and posts for its weight";
        return Optional.of(Finding.warning("gate-leaf-wide", "gate leaf", message)
                .withRemedy(remedy)
                .withSource(Citation.COMMON_PRACTICE));
    }

    private Optional<Finding> flatBrace() {
        if (!leaf.hasRoom() || spec.braceKind() == BraceKind.CABLE) {
            return Optional.empty();
        }
        // Judged by its corners, exactly: a brace of any width between them should rise at 45 degrees or more.
        return leaf.bracesThatMayNotFit().stream()
                .filter(brace -> rises(brace).compareTo(clearWidth) < 0)
                .findFirst()
                .map(this::flat);
    }

    private static Length rises(GateBrace brace) {
        return brace.headPoint().elevation().minus(brace.footPoint().elevation());
    }

    private Finding flat(GateBrace brace) {
        String message = "in a clear space of " + clearSpace() + " a brace rises at only " + rise(rises(brace))
                + "; it should rise at 45 deg or more";
        // The manual's own way out: line the braces up into one steep brace.
        Length extra = rises(brace).minus(brace.clearHeight());
        Length whole = leaf.frameHeight().minus(leaf.railDepth().times(2)).plus(extra);
        String remedy = spec.hasMiddleRail() && whole.compareTo(clearWidth) >= 0
                ? "leave out the middle rail, so that one brace rises at " + rise(whole)
                : leaf.isPaired() ? "make the frame higher" : "hang two leaves, or make the frame higher";
        return Finding.warning("gate-brace-flat", "gate brace", message)
                .withRemedy(remedy)
                .withSource(LEAST_RISE);
    }

    private Optional<Finding> wrongWay() {
        return leaf.braces().stream()
                .filter(brace -> !brace.isRightWay())
                .findFirst()
                .map(GateFindings::wrongWay);
    }

    private static Finding wrongWay(GateBrace brace) {
        if (brace.kind() == BraceKind.WOOD) {
            return Finding.warning(
                            "gate-brace-wrong-way",
                            "gate brace",
                            "the brace rises to the hinges, so the weight of the leaf pulls at its joints instead of"
                                    + " pushing it against the hinge stile, and the latch side sags as they give")
                    .withRemedy("run it from the bottom at the hinges up to the top at the latch")
                    .withSource(DIRECTION);
        }
        return Finding.warning(
                        "gate-brace-wrong-way",
                        "gate brace",
                        "the cable rises to the latch, so the weight of the leaf slackens it, and it holds nothing up")
                .withRemedy("run it from the top at the hinges down to the bottom at the latch")
                .withSource(Citation.COMMON_PRACTICE);
    }

    private String rise(Length height) {
        return Written.degrees(Angle.ofTangent(height, clearWidth));
    }

    private String clearSpace() {
        return Written.tape(clearWidth) + " by " + Written.tape(clearHeight);
    }
}
