package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fencecore.Bay;
import org.fencecore.CourseRun;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Ladder;
import org.fencecore.drawing.Lettering;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.units.Length;

/** The table under an elevation: what a crew reads off it, post by post and bay by bay. */
final class ElevationTable {

    private final Run run;
    private final Unrolled unrolled;
    private final SlopeSpec spec;
    private final Figures figures;
    private final String none;

    private ElevationTable(Run run, Unrolled unrolled, SlopeSpec spec, Figures figures) {
        this.figures = figures;
        this.none = figures.of(Length.ZERO);
        this.run = run;
        this.unrolled = unrolled;
        this.spec = spec;
    }

    static Ladder of(Run run, Unrolled unrolled, SlopeSpec spec, Figures figures) {
        return new ElevationTable(run, unrolled, spec, figures).ladder();
    }

    private Ladder ladder() {
        List<Ladder.Rung> rungs = new ArrayList<>();
        rungs.add(new Ladder.Rung("post", Lettering.NUMBER, posts(post -> Integer.toString(post.number()))));
        rungs.add(row("centre to centre", spacings()));
        rungs.add(row("from post " + run.posts().get(0).number(), posts(post -> figures.of(run.station(post)))));
        rungs.add(row("post above ground", posts(post -> figures.of(post.exposed()))));
        rungs.add(row("depth of hole", posts(post -> figures.of(post.footing().holeDepth()))));
        rungs.add(row("gap under boards", gaps()));
        rungs.add(row("rise to the right", rises()));
        List<Ladder.Cell> steps = steps();
        if (!steps.isEmpty()) {
            rungs.add(row("step to the right", steps));
        }
        if (run.stretches().stream().allMatch(stretch -> stretch.courses().isEmpty())) {
            rungs.add(row(boardsHeading(), boarded(ElevationTable::boards)));
        } else {
            rungs.add(row("courses", boarded((layout, count) -> Integer.toString(layout.count()))));
            rungs.add(row("boards in them", boarded((layout, count) -> Integer.toString(count))));
        }
        if (layouts().map(this::space).anyMatch(space -> !space.equals(none))) {
            rungs.add(row("space between, about", boarded((layout, count) -> space(layout))));
        }
        return new Ladder(deepest(), rungs);
    }

    private Stream<BoardLayout> layouts() {
        return Stream.concat(
                run.stretches().stream()
                        .flatMap(stretch -> Stream.concat(stretch.boards().stream(), courses(stretch.courses()))),
                run.gates().stream()
                        .flatMap(gate -> gate.leaves().stream())
                        .flatMap(leaf -> Stream.concat(
                                leaf.boards().stream(),
                                courses(leaf.courses().stream().toList()))));
    }

    private static Stream<BoardLayout> courses(List<CourseRun> parts) {
        return parts.stream().map(part -> part.layout().courses());
    }

    private String boardsHeading() {
        if (layouts().anyMatch(layout -> layout.row(Face.COVER).count() > 0)) {
            return "boards + over the gaps";
        }
        return layouts().anyMatch(layout -> layout.row(Face.INSIDE).count() > 0) ? "boards outside + inside" : "boards";
    }

    private static Ladder.Rung row(String heading, List<Ladder.Cell> cells) {
        return new Ladder.Rung(heading, Lettering.NOTE, cells);
    }

    private Length deepest() {
        Length deepest = run.ground().lowest().elevation();
        for (Post post : run.posts()) {
            deepest = Length.min(deepest, post.ground().minus(post.footing().holeDepth()));
        }
        return deepest;
    }

    private List<Ladder.Cell> posts(Function<Post, String> figure) {
        List<Ladder.Cell> cells = new ArrayList<>();
        for (Post post : run.posts()) {
            Length across = unrolled.across(run.station(post));
            cells.add(new Ladder.Cell(Interval.of(across, across), figure.apply(post)));
        }
        return cells;
    }

    private List<Ladder.Cell> spacings() {
        List<Ladder.Cell> cells = new ArrayList<>();
        for (int post = 1; post < run.posts().size(); post++) {
            Interval stations = between(run.posts().get(post - 1), run.posts().get(post));
            cells.add(cell(stations, figures.of(stations.length())));
        }
        return cells;
    }

    private List<Ladder.Cell> gaps() {
        List<Ladder.Cell> cells = new ArrayList<>();
        bays().forEach(bay ->
                cells.add(cell(stations(bay), closedGap(bay.slope().clearance()))));
        for (GateBay gate : run.gates()) {
            cells.add(cell(between(gate.from(), gate.to()), gap(run.ground().clearanceUnder(gate.bottomLine()))));
        }
        return cells;
    }

    /** What there is before kick boards, or boards cut to the ground, close it. */
    private String closedGap(Clearance gap) {
        return gap(gap) + (spec.closes(gap.max()) ? ", closed" : "");
    }

    private String gap(Clearance gap) {
        String least = figures.of(gap.min());
        String most = figures.of(gap.max());
        return least.equals(most) ? least : least + " to " + most;
    }

    private List<Ladder.Cell> rises() {
        List<Ladder.Cell> cells = new ArrayList<>();
        for (Bay bay : bays()) {
            Length rise = unrolled.turned()
                    ? bay.slope().rise().negated()
                    : bay.slope().rise();
            cells.add(cell(stations(bay), signed(rise)));
        }
        return cells;
    }

    /** The posts where the line of the board bottoms steps, up or down as one looks from left to right. */
    private List<Ladder.Cell> steps() {
        List<Ladder.Cell> cells = new ArrayList<>();
        for (Stretch stretch : run.stretches()) {
            for (int post = 1; post < stretch.bays().size(); post++) {
                Length step = stretch.slope().step(post);
                if (!step.isZero()) {
                    Length at = stretch.bays().get(post).slope().start();
                    cells.add(cell(Interval.of(at, at), signed(unrolled.turned() ? step.negated() : step)));
                }
            }
        }
        return cells;
    }

    private String signed(Length rise) {
        String figure = figures.of(rise);
        return figure.startsWith("-") || figure.startsWith("0") ? figure : "+" + figure;
    }

    /** A figure for each stretch and leaf that has boards, from its layout and how many boards it takes. */
    private List<Ladder.Cell> boarded(BiFunction<BoardLayout, Integer, String> figure) {
        List<Ladder.Cell> cells = new ArrayList<>();
        for (Stretch stretch : run.stretches()) {
            stretch.boards()
                    .map(layout -> figure.apply(layout, stretch.boardCount()))
                    .ifPresent(text -> cells.add(cell(between(stretch.from(), stretch.to()), text)));
            for (CourseRun part : stretch.courses()) {
                Interval stations = Interval.of(
                        part.posts().get(0), part.posts().get(part.posts().size() - 1));
                cells.add(cell(stations, figure.apply(part.layout().courses(), part.boardCount())));
            }
        }
        for (GateBay gate : run.gates()) {
            for (HungLeaf leaf : gate.leaves()) {
                leaf.boards()
                        .or(() -> leaf.courses().map(part -> part.layout().courses()))
                        .map(layout -> figure.apply(layout, layout.count()))
                        .ifPresent(text -> cells.add(new Ladder.Cell(across(gate, leaf), text)));
            }
        }
        return cells;
    }

    /** From post to post under a leaf that is alone; of two leaves, each under itself. */
    private Interval across(GateBay gate, HungLeaf leaf) {
        return gate.design().isPair()
                ? leaf.leaf().place().shiftedBy(unrolled.across(gate.opening()).start())
                : unrolled.across(between(gate.from(), gate.to()));
    }

    /** Boards of the first row and, if there are any, of the second, those left out at posts not counted. */
    private static String boards(BoardLayout layout, int count) {
        int outside = layout.row(Face.OUTSIDE).count();
        return count == outside ? Integer.toString(outside) : outside + " + " + (count - outside);
    }

    private String space(BoardLayout layout) {
        return figures.of(layout.row(Face.OUTSIDE).gap());
    }

    private Interval between(Post from, Post to) {
        return Interval.of(run.station(from), run.station(to));
    }

    private List<Bay> bays() {
        return run.stretches().stream()
                .flatMap(stretch -> stretch.bays().stream())
                .toList();
    }

    private static Interval stations(Bay bay) {
        return Interval.of(bay.slope().start(), bay.slope().end());
    }

    private Ladder.Cell cell(Interval stations, String figure) {
        return new Ladder.Cell(unrolled.across(stations), figure);
    }
}
