package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Whether any part of a fence stands over the boundary, with the real widths of holes, caps, rails and boards: for a fence
 * that does not follow the lot's sides, or whose posts were set elsewhere.
 */
final class BoundaryCheck {

    private final Polygon lot;
    private final List<Box> sides;

    private BoundaryCheck(Polygon lot) {
        this.lot = lot;
        this.sides = lot.sides().stream().map(Box::of).toList();
    }

    /** A side in the upright rectangle that just holds it, in nanometres, which spares most sides a closer look. */
    private record Box(Segment side, long west, long east, long south, long north) {

        static Box of(Segment side) {
            long startEast = side.start().east().nanometres();
            long endEast = side.end().east().nanometres();
            long startNorth = side.start().north().nanometres();
            long endNorth = side.end().north().nanometres();
            return new Box(
                    side,
                    Math.min(startEast, endEast),
                    Math.max(startEast, endEast),
                    Math.min(startNorth, endNorth),
                    Math.max(startNorth, endNorth));
        }

        /** No part of the side is nearer to a place. */
        double leastSquared(long placeEast, long placeNorth) {
            double across = Math.max(0, Math.max(west - placeEast, placeEast - east));
            double up = Math.max(0, Math.max(south - placeNorth, placeNorth - north));
            return across * across + up * up;
        }

        boolean meets(Box other) {
            return west <= other.east && other.west <= east && south <= other.north && other.south <= north;
        }
    }

    static List<Finding> of(Polygon lot, List<FenceLine> lines, List<Post> posts, FenceStyle style) {
        BoundaryCheck check = new BoundaryCheck(lot);
        List<Finding> findings = new ArrayList<>();
        check.posts(posts, style, findings);
        for (FenceLine line : lines) {
            check.faces(line, style, findings);
        }
        return findings;
    }

    /** A leaf that opens outwards stands its whole width outside the fence when it is square to it. */
    static List<Finding> ofGates(Polygon lot, List<Run> runs) {
        BoundaryCheck check = new BoundaryCheck(lot);
        List<Finding> findings = new ArrayList<>();
        for (Run run : runs) {
            for (GateBay gate : run.gates()) {
                if (gate.location().opensOutward()) {
                    check.leaf(run, gate, findings);
                }
            }
        }
        return findings;
    }

    private void leaf(Run run, GateBay gate, List<Finding> findings) {
        Length hinges = gate.hingePost().equals(gate.from())
                ? gate.opening().start()
                : gate.opening().end();
        Point pin = run.pointAt(hinges, Length.ZERO);
        Length width = gate.leaf().width();
        Length face = run.string().offsetOf(pin).abs();
        Point tip = run.pointAt(hinges, face.plus(width));
        Length over = inside(tip).negated();
        if (over.isPositive()) {
            findings.add(Finding.warning(
                            "gate-opens-over-boundary",
                            run + ", " + gate.name(),
                            "the leaf opens outwards and is " + Written.tape(width) + " wide, so that it reaches up to "
                                    + Written.tape(over, Rounding.UP) + " over the boundary")
                    .withRemedy(
                            "let it open into the lot, or move the fence back by the width of the leaf there; over a"
                                    + " street or a walk the local office may not allow it")
                    .withSource(Citation.GEOMETRY));
        }
    }

    private void posts(List<Post> posts, FenceStyle style, List<Finding> findings) {
        Length round = Length.max(style.holeDiameter(), style.postCapWidth()).dividedBy(2);
        List<Post> over = new ArrayList<>();
        Length most = Length.ZERO;
        for (Post post : posts) {
            Length past = round.minus(inside(post.centre()));
            if (past.isPositive()) {
                over.add(post);
                most = Length.max(most, past);
            }
        }
        if (!over.isEmpty()) {
            findings.add(Finding.warning(
                            "over-the-boundary",
                            FootingNotes.numbers(over),
                            "the hole or cap, " + Written.tape(round) + " around the middle of the post, reaches up to "
                                    + Written.tape(most, Rounding.UP) + " over the boundary")
                    .withRemedy("move the posts inside, or make the holes narrower")
                    .withSource(Citation.GEOMETRY));
        }
    }

    /** The outer face of rails and boards, beside the string, must begin and end inside and cross no side of the lot. */
    private void faces(FenceLine line, FenceStyle style, List<Finding> findings) {
        Length face = style.boardsOffPosts().plus(style.boardLumber().thickness());
        Segment outer = line.string.offset(line.outside == Side.RIGHT ? face : face.negated());
        Length least = Length.min(inside(outer.start()), inside(outer.end()));
        Box box = Box.of(outer);
        boolean crosses = sides.stream().anyMatch(other -> other.meets(box) && outer.crosses(other.side));
        if (least.isNegative() || crosses) {
            String far = least.isNegative() ? ", up to " + Written.tape(least.abs(), Rounding.UP) + " over it" : "";
            findings.add(Finding.warning(
                            "over-the-boundary",
                            line.name,
                            "rails and boards, which reach " + Written.tape(face)
                                    + " outside the string, cross the boundary" + far)
                    .withRemedy("move the line inside")
                    .withSource(Citation.GEOMETRY));
        }
    }

    /** How far inside the lot a place is; negative outside. */
    private Length inside(Point place) {
        long east = place.east().nanometres();
        long north = place.north().nanometres();
        Length nearest = sides.get(0).side.distanceTo(place);
        for (Box box : sides) {
            double known = nearest.nanometres();
            if (box.leastSquared(east, north) < known * known) {
                nearest = Length.min(nearest, box.side.distanceTo(place));
            }
        }
        return lot.contains(place) ? nearest : nearest.negated();
    }
}
