package org.fencecore;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.internal.InsetRings;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotSide;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Every straight line of the fence in the order in which it is built, from the sides of a lot or from a line given point
 * by point.
 */
final class FencePath {

    private final List<FenceLine> lines;
    private final Map<Integer, FenceLine> arriving = new HashMap<>();
    private final Map<Integer, FenceLine> leaving = new HashMap<>();

    FencePath(List<FenceLine> lines) {
        this.lines = lines;
        for (FenceLine line : lines) {
            arriving.put(line.endNode, line);
            leaving.put(line.startNode, line);
        }
    }

    List<FenceLine> lines() {
        return lines;
    }

    /** The line that the fence comes from where this one begins. */
    Optional<FenceLine> before(FenceLine line) {
        return line.start.map(corner -> arriving.get(line.startNode));
    }

    /** The line along which the fence goes on where this one ends. */
    Optional<FenceLine> after(FenceLine line) {
        return line.end.map(corner -> leaving.get(line.endNode));
    }

    /** The line that a gate belongs to: that part of its side in which its middle lies, or the nearest to it. */
    Optional<FenceLine> lineOf(GateLocation gate) {
        return lines.stream()
                .filter(line -> line.side == gate.side())
                .min(Comparator.comparing(line -> past(line.alongSide(), gate.centre())));
    }

    private static Length past(Interval stretch, Length station) {
        return Length.max(Length.ZERO, Length.max(stretch.start().minus(station), station.minus(stretch.end())));
    }

    static FencePath of(Site site, FenceStyle style, Findings findings) {
        if (site.line().isPresent()) {
            return along(site.line().get(), site.lineOutside(), style, findings);
        }
        return site.lot()
                .outline()
                .map(outline -> new Rings(site, style, outline).path(findings))
                .orElseGet(() -> new FencePath(List.of()));
    }

    /** A line given point by point is the string; the posts stand half their width inside it. */
    private static FencePath along(Polyline line, Side outside, FenceStyle style, Findings findings) {
        List<Point> points = line.points();
        int sides = points.size() - 1;
        boolean closed = points.get(0).equals(points.get(sides));
        Side inside = outside.opposite();
        Length half = style.postLumber().width().dividedBy(2);
        Length right = inside == Side.RIGHT ? half : half.negated();
        List<FenceLine> lines = new ArrayList<>();
        for (int side = 0; side < sides; side++) {
            Segment string = Segment.of(points.get(side), points.get(side + 1));
            Segment offset = string.offset(right);
            boolean joinedAtStart = side > 0 || closed;
            boolean joinedAtEnd = side < sides - 1 || closed;
            Optional<Corner> start = joinedAtStart
                    ? Optional.of(
                            Corner.of(points.get((side + sides - 1) % sides), string.start(), string.end(), inside))
                    : Optional.empty();
            Optional<Corner> end = joinedAtEnd
                    ? Optional.of(Corner.of(
                            string.start(), string.end(), points.get(side + 2 > sides ? 1 : side + 2), inside))
                    : Optional.empty();
            Optional<Corner> sharp = FenceLine.tooSharp(start, end);
            if (sharp.isPresent()) {
                findings.add(FenceLine.tooSharp("side " + (side + 1), sharp.get()));
                return new FencePath(List.of());
            }
            Point from = start.map(corner -> corner.mitrePoint(half)).orElse(offset.start());
            Point to = end.map(corner -> corner.mitrePoint(half)).orElse(offset.end());
            String name = "side " + (side + 1);
            if (string.stationOf(to).compareTo(string.stationOf(from)) <= 0) {
                findings.add(Finding.blocker(
                                "line-too-tight",
                                name,
                                "the line of the posts, " + Written.tape(half)
                                        + " inside the string, would turn back on"
                                        + " itself between the corners of this side")
                        .withRemedy("leave this side out, or move its points further apart"));
                return new FencePath(List.of());
            }
            lines.add(new FenceLine(
                    style,
                    side + 1,
                    name,
                    string,
                    Segment.of(from, to),
                    outside,
                    string.stationOf(from),
                    side,
                    closed && side == sides - 1 ? 0 : side + 1,
                    start.map(corner -> movedTo(corner, from)),
                    end.map(corner -> movedTo(corner, to))));
        }
        return new FencePath(List.copyOf(lines));
    }

    private static Corner movedTo(Corner corner, Point vertex) {
        return Corner.of(vertex, corner.arriving(), corner.leaving(), corner.inside());
    }

    /** The sides of a lot, moved inwards: one ring of lines, or several where the lot falls apart. */
    private static final class Rings {

        private final Site site;
        private final FenceStyle style;
        private final Polygon outline;
        private final List<LotSide> sides;
        private final Length toStrings;
        private final Length toPosts;

        Rings(Site site, FenceStyle style, Polygon outline) {
            this.site = site;
            this.style = style;
            this.outline = outline;
            this.sides = new ArrayList<>();
            for (LotSide side : site.lot().sides()) {
                sides.addAll(Collections.nCopies(side.facets(), side));
            }
            this.toStrings = site.setback();
            this.toPosts = site.setback().plus(style.postLumber().width().dividedBy(2));
        }

        /** A straight piece of the moved boundary: which facet of the outline it follows, and where it runs. */
        private record Edge(int facet, Segment string, Segment postLine, int startNode, int endNode) {}

        FencePath path(Findings findings) {
            for (int facet = 0; facet < sides.size(); facet++) {
                Corner corner = outline.corner(facet);
                if (FenceLine.isTooSharp(corner)) {
                    findings.add(FenceLine.tooSharp(
                            "start of side " + sides.get(facet).number(), corner));
                    return new FencePath(List.of());
                }
            }
            List<Edge> edges = edges();
            if (edges.isEmpty()) {
                findings.add(Finding.blocker(
                                "lot-too-narrow",
                                "lot",
                                "nothing is left of the lot inside the line of the posts, " + Written.tape(toPosts)
                                        + " from every side")
                        .withRemedy("bring the strings nearer to the boundary"));
            }
            tellLostSides(edges, findings);
            Map<Integer, Edge> fencedFrom = new HashMap<>();
            Map<Integer, Edge> fencedTo = new HashMap<>();
            Map<Integer, List<Edge>> bySide = new HashMap<>();
            for (Edge edge : edges) {
                if (site.fencedSides().contains(side(edge))) {
                    fencedFrom.put(edge.startNode, edge);
                    fencedTo.put(edge.endNode, edge);
                    bySide.computeIfAbsent(side(edge), side -> new ArrayList<>())
                            .add(edge);
                }
            }
            tellCurves(bySide, findings);
            List<FenceLine> lines = new ArrayList<>();
            for (int side : site.fencedSides()) {
                List<Edge> parts = bySide.getOrDefault(side, List.of()).stream()
                        .sorted(Comparator.comparing(this::alongSide))
                        .toList();
                for (int part = 0; part < parts.size(); part++) {
                    Edge edge = parts.get(part);
                    lines.add(new FenceLine(
                            style,
                            side,
                            "side " + side + (parts.size() == 1 ? "" : ", part " + (part + 1)),
                            edge.string,
                            edge.postLine,
                            outline.inside().opposite(),
                            alongSide(edge),
                            edge.startNode,
                            edge.endNode,
                            corner(fencedTo.get(edge.startNode), edge),
                            corner(edge, fencedFrom.get(edge.endNode))));
                }
            }
            return new FencePath(List.copyOf(lines));
        }

        private void tellCurves(Map<Integer, List<Edge>> bySide, Findings findings) {
            for (LotSide side : site.lot().sides()) {
                List<Edge> parts = bySide.getOrDefault(side.number(), List.of());
                if (side.isCurved() && !parts.isEmpty()) {
                    Length longest =
                            parts.stream().map(part -> part.postLine.length()).reduce(Length.ZERO, Length::max);
                    findings.add(Finding.note(
                                    "curve-in-parts",
                                    "side " + side.number(),
                                    "the curve is fenced in " + parts.size() + " straight parts of up to "
                                            + Written.tape(longest) + ", a post where they meet")
                            .withRemedy("for fewer posts, let the lot's facets stray further from the curve"));
                }
            }
        }

        private Optional<Corner> corner(@Nullable Edge arriving, @Nullable Edge leaving) {
            if (arriving == null || leaving == null) {
                return Optional.empty();
            }
            // The sides themselves tell the directions; short pieces of them have lost digits.
            return Optional.of(Corner.of(
                    leaving.postLine.start(),
                    outline.side(arriving.facet).bearing(),
                    outline.side(leaving.facet).bearing(),
                    outline.inside()));
        }

        private int side(Edge edge) {
            return sides.get(edge.facet).number();
        }

        private Length alongSide(Edge edge) {
            LotSide side = sides.get(edge.facet);
            return side.line()
                    .stationOfPoint(edge.facet - side.firstFacet())
                    .plus(outline.side(edge.facet).stationOf(edge.postLine.start()));
        }

        private List<Edge> edges() {
            Optional<Polygon> strings = outline.inset(toStrings);
            Optional<Polygon> postLines = outline.inset(toPosts);
            return strings.isPresent() && postLines.isPresent()
                    ? allEdges(strings.get(), postLines.get())
                    : edgesLeft(InsetRings.sides(outline, toPosts));
        }

        /** Where every facet lasts, its strings and post lines are the sides of the moved boundaries. */
        private List<Edge> allEdges(Polygon strings, Polygon postLines) {
            int facets = sides.size();
            return IntStream.range(0, facets)
                    .mapToObj(facet ->
                            new Edge(facet, strings.side(facet), postLines.side(facet), facet, (facet + 1) % facets))
                    .toList();
        }

        private List<Edge> edgesLeft(List<List<Integer>> rings) {
            List<Edge> edges = new ArrayList<>();
            for (List<Integer> ring : rings) {
                int first = edges.size();
                for (int i = 0; i < ring.size(); i++) {
                    int before = ring.get((i + ring.size() - 1) % ring.size());
                    int facet = ring.get(i);
                    int after = ring.get((i + 1) % ring.size());
                    Optional<Segment> string = between(toStrings, before, facet, after);
                    Optional<Segment> postLine = between(toPosts, before, facet, after);
                    if (string.isPresent() && postLine.isPresent()) {
                        edges.add(new Edge(
                                facet, string.get(), postLine.get(), first + i, first + (i + 1) % ring.size()));
                    }
                }
            }
            return edges;
        }

        private Optional<Segment> between(Length distance, int before, int facet, int after) {
            Optional<Point> from = InsetRings.corner(outline, distance, before, facet);
            Optional<Point> to = InsetRings.corner(outline, distance, facet, after);
            return from.isPresent() && to.isPresent() && !from.equals(to)
                    ? Optional.of(Segment.of(from.get(), to.get()))
                    : Optional.empty();
        }

        private void tellLostSides(List<Edge> edges, Findings findings) {
            List<Integer> left = edges.stream().map(this::side).toList();
            for (int side : site.fencedSides()) {
                if (!edges.isEmpty() && !left.contains(side)) {
                    findings.add(Finding.blocker(
                                    "side-lost",
                                    "side " + side,
                                    "its neighbours meet before the line of the posts, " + Written.tape(toPosts)
                                            + " inside the lot, leaves room for it")
                            .withRemedy("bring the strings nearer to the boundary, or do not fence this side"));
                }
            }
        }
    }
}
