package org.fencecore.gate;

import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** A leaf and its frame worked out line by line. */
final class LeafSheet {

    private final GateLeaf leaf;
    private final GateSpec spec;
    private final Worksheet.Builder sheet = Worksheet.titled("Gate leaf and frame");
    private final String width;
    private final String height;
    private final String member;
    private final boolean level;

    private LeafSheet(GateLeaf leaf) {
        this.leaf = leaf;
        this.spec = leaf.spec();
        this.width = Written.inches(leaf.width());
        this.height = Written.inches(leaf.frameHeight());
        this.member = Written.inches(spec.memberWidth());
        this.level = leaf.rake().isZero();
    }

    static Worksheet of(GateLeaf leaf) {
        return new LeafSheet(leaf).build();
    }

    private Worksheet build() {
        given("clear opening", leaf.clearOpening());
        givenIfAny("hinge build-out", spec.hingeBuildOut());
        given("hinge gap", spec.hingeGap());
        if (leaf.isPaired()) {
            given("centre gap", spec.centreGap());
        } else {
            given("latch gap", spec.latchGap());
            givenIfAny("latch build-out", spec.latchBuildOut());
        }
        given("frame height", leaf.frameHeight());
        given("member width", spec.memberWidth());
        if (!level) {
            sheet.given("rake, left to right", leaf.rake(), Written.percent(leaf.rake()));
        }
        leafWidth();
        lengths();
        leaf.middleRailCentre()
                .ifPresent(centre -> practice("middle rail centre", "frame height / 2", height + " / 2", centre));
        clearHeight();
        diagonals();
        return sheet.build();
    }

    private void given(String name, Length value) {
        sheet.given(name, value, Written.tape(value));
    }

    private void givenIfAny(String name, Length value) {
        if (value.isPositive()) {
            given(name, value);
        }
    }

    private void leafWidth() {
        String opening = Written.inches(leaf.clearOpening());
        String hinge = Written.inches(spec.hingeGap());
        boolean builtAtHinge = spec.hingeBuildOut().isPositive();
        if (leaf.isPaired()) {
            String beside = builtAtHinge ? "(hinge build-out + hinge gap)" : "hinge gap";
            String besideIn = builtAtHinge ? "(" + Written.inches(spec.hingeBuildOut()) + " + " + hinge + ")" : hinge;
            practice(
                    "leaf width",
                    "(clear opening - 2 x " + beside + " - centre gap) / 2",
                    "(" + opening + " - 2 x " + besideIn + " - " + Written.inches(spec.centreGap()) + ") / 2",
                    leaf.width());
            return;
        }
        boolean builtAtLatch = spec.latchBuildOut().isPositive();
        practice(
                "leaf width",
                "clear opening" + (builtAtHinge ? " - hinge build-out" : "") + " - hinge gap - latch gap"
                        + (builtAtLatch ? " - latch build-out" : ""),
                opening + (builtAtHinge ? " - " + Written.inches(spec.hingeBuildOut()) : "") + " - " + hinge + " - "
                        + Written.inches(spec.latchGap())
                        + (builtAtLatch ? " - " + Written.inches(spec.latchBuildOut()) : ""),
                leaf.width());
    }

    private void lengths() {
        if (!level) {
            sheet.line(
                    "plumb depth of a rail",
                    "member width / cos rake",
                    member + " / cos " + Written.degrees(leaf.rake().angle()),
                    leaf.railDepth(),
                    Written.tape(leaf.railDepth()),
                    Citation.GEOMETRY);
            sheet.line(
                    "clear width",
                    "leaf width - 2 x member width",
                    width + " - 2 x " + member,
                    leaf.clearWidth(),
                    Written.tape(leaf.clearWidth()),
                    Citation.GEOMETRY);
            for (FramePiece piece : leaf.pieces()) {
                sheet.line(
                        piece.member() + " length, over all",
                        "from long point to long point",
                        "",
                        piece.length(),
                        Written.tape(piece.length()),
                        Citation.GEOMETRY);
            }
            return;
        }
        boolean stilesShort = spec.joint() == FrameJoint.STILES_BETWEEN_RAILS;
        Length stile = stilesShort ? leaf.frameHeight().minus(spec.memberWidth().times(2)) : leaf.frameHeight();
        practice(
                spec.joint() == FrameJoint.MITRE ? "stile length, long point to long point" : "stile length",
                stilesShort ? "frame height - 2 x member width" : "frame height",
                stilesShort ? height + " - 2 x " + member : "",
                stile);
        switch (spec.joint()) {
            case RAILS_BETWEEN_STILES -> railsBetween("rail length");
            case HALF_LAP -> practice("rail length", "leaf width", "", leaf.width());
            case STILES_BETWEEN_RAILS -> {
                practice("rail length", "leaf width", "", leaf.width());
                middleRailBetween();
            }
            case MITRE -> {
                practice("rail length, long point to long point", "leaf width", "", leaf.width());
                middleRailBetween();
            }
        }
    }

    private void middleRailBetween() {
        if (spec.hasMiddleRail()) {
            railsBetween("middle rail length");
        }
    }

    private void railsBetween(String name) {
        practice(name, "leaf width - 2 x member width", width + " - 2 x " + member, leaf.clearWidth());
    }

    private void clearHeight() {
        String depth = level ? "member width" : "depth";
        String depthIn = Written.inches(leaf.railDepth());
        geometry(
                spec.hasMiddleRail() ? "clear height of each half" : "clear height",
                spec.hasMiddleRail() ? "(frame height - 3 x " + depth + ") / 2" : "frame height - 2 x " + depth,
                spec.hasMiddleRail() ? "(" + height + " - 3 x " + depthIn + ") / 2" : height + " - 2 x " + depthIn,
                leaf.lowestClearHeight());
    }

    private void diagonals() {
        if (level) {
            geometry(
                    "diagonal",
                    "sqrt(leaf width^2 + frame height^2)",
                    "sqrt((" + width + ")^2 + (" + height + ")^2)",
                    leaf.diagonal());
            return;
        }
        Length rise = leaf.rake().riseOver(leaf.width());
        String risen = Written.inches(rise);
        geometry("rise over the leaf", "leaf width x rake", width + " x " + Written.percent(leaf.rake()), rise);
        geometry(
                "diagonal, upper left to lower right",
                "sqrt(leaf width^2 + (frame height - rise)^2)",
                "sqrt((" + width + ")^2 + (" + height + " - " + risen + ")^2)",
                leaf.fallingDiagonal());
        geometry(
                "diagonal, lower left to upper right",
                "sqrt(leaf width^2 + (frame height + rise)^2)",
                "sqrt((" + width + ")^2 + (" + height + " + " + risen + ")^2)",
                leaf.risingDiagonal());
    }

    private void practice(String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.tape(result), Citation.COMMON_PRACTICE);
    }

    private void geometry(String name, String formula, String numbers, Length result) {
        sheet.line(name, formula, numbers, result, Written.tape(result), Citation.GEOMETRY);
    }
}
