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
    private final List<Segment> sides;

    private BoundaryCheck(Polygon lot) {
        this.lot = lot;
        this.sides = lot.sides();
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
        if (least.isNegative() || sides.stream().anyMatch(outer::crosses)) {
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
        Length nearest = sides.stream()
                .map(side -> side.distanceTo(place))
                .reduce(Length::min)
                .orElseThrow();
        return lot.contains(place) ? nearest : nearest.negated();
    }
}
