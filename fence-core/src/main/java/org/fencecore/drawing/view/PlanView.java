package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.Post;
import org.fencecore.PostKind;
import org.fencecore.Run;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Mark;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;
import org.fencecore.drawing.Symbol;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.survey.LotSide;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/**
 * The plan of a fence, north up: the boundary with the number, bearing and distance of each side, the strings with their
 * lengths, every post by kind and number, and the gates with the way they swing.
 *
 * <p>Posts are marked with symbols that are not to scale; everything else is. A gate is drawn the way it swings, on
 * the hinge side it was designed for: into the lot unless its place says otherwise. A lot that could not be laid out gives a sheet with notes alone.
 *
 * <pre>{@code
 * Drawing drawing = PlanView.of(plan);
 * Files.writeString(file, Svg.write(drawing, Paper.LETTER));
 * }</pre>
 */
public final class PlanView {

    /** The most posts a plan is drawn with. */
    public static final int MOST_POSTS = 10_000;

    private static final Length NEAR = Length.ofMillimetres(1.6);
    private static final Length FAR = Length.ofMillimetres(9);

    private final FencePlan plan;
    private final Figures figures;
    /** The runs a post stands in, by its number; a corner post stands in two. */
    private final Map<Integer, List<Run>> runsByPost = new HashMap<>();

    private final Drawing.Builder drawing;

    private PlanView(FencePlan plan, Figures figures) {
        this.plan = plan;
        this.figures = figures;
        for (Run run : plan.runs()) {
            for (Post post : run.posts()) {
                runsByPost
                        .computeIfAbsent(post.number(), number -> new ArrayList<>(2))
                        .add(run);
            }
        }
        this.drawing = Drawing.titled("Fence plan").northUp();
    }

    /**
     * Draws the plan of a fence, dimensions in feet and inches.
     *
     * @param plan the plan, buildable or not
     * @return the drawing, across being east and up being north
     * @throws IllegalArgumentException if the plan has more than {@value #MOST_POSTS} posts
     */
    public static Drawing of(FencePlan plan) {
        return of(plan, Figures.USUAL);
    }

    /**
     * Draws the plan of a fence with its dimensions written for some tape.
     *
     * @param plan the plan, buildable or not
     * @param tape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the drawing, across being east and up being north
     * @throws IllegalArgumentException if the plan has more than {@value #MOST_POSTS} posts
     */
    public static Drawing of(FencePlan plan, TapeFormat tape) {
        if (plan.posts().size() > MOST_POSTS) {
            throw new IllegalArgumentException("the plan has " + plan.posts().size()
                    + " posts; one drawing shows up to " + MOST_POSTS + ": plan the fence in parts");
        }
        return new PlanView(plan, new Figures(tape)).draw();
    }

    private Drawing draw() {
        drawing.description("Seen from above, north up. " + counts());
        Notes.blockers(plan.findings()).ifPresent(drawing::caution);
        Optional<Polygon> outline = plan.site().lot().outline();
        outline.ifPresent(this::boundary);
        outline.ifPresent(lot -> ZoneParts.of(lot, plan.site().obstacles()).forEach(drawing::add));
        plan.runs().forEach(this::run);
        posts();
        // Where there is room for one label only, the number of a post stays, then its gate's name.
        plan.runs().forEach(this::gateNames);
        outline.ifPresent(this::sideNames);
        outline.ifPresent(this::zones);
        plan.runs().forEach(this::stringLength);
        if (!plan.runs().isEmpty()) {
            drawing.key(Layer.STRINGS, "string, outside face of posts");
            drawing.note(
                    plan.site().line().isPresent()
                            ? "Strings run along the line that was given, not along the boundary."
                            : "Strings run " + figures.inText(plan.site().setback()) + " inside the boundary.");
        }
        if (!plan.site().obstacles().list().isEmpty()) {
            drawing.key(Layer.OBSTACLES, "underground and in the way, as told");
        }
        if (!plan.gates().isEmpty()) {
            drawing.key(Layer.SWING, "gate leaf, open, and swing");
            boolean anyOut =
                    plan.gates().stream().anyMatch(gate -> gate.location().opensOutward());
            drawing.note(anyOut ? "Gates are drawn the way they swing." : "Gates are drawn swinging into the lot.");
        }
        drawing.note("Before digging, have the boundary staked by a licensed surveyor and buried lines marked.");
        return drawing.build();
    }

    private String counts() {
        int gates = plan.gates().size();
        return Notes.count(
                        (int) plan.runs().stream()
                                .mapToInt(Run::side)
                                .distinct()
                                .count(),
                        "side") + " fenced, " + Notes.count(plan.posts().size(), "post") + ", "
                + Notes.count(gates, "gate") + ".";
    }

    private void boundary(Polygon outline) {
        drawing.key(Layer.BOUNDARY, "boundary");
        drawing.add(new Outline(
                Layer.BOUNDARY, outline.vertices().stream().map(Spot::of).toList()));
    }

    private void zones(Polygon lot) {
        List<Shape> zones = ZoneParts.of(lot, plan.site().rules());
        if (!zones.isEmpty()) {
            zones.forEach(drawing::add);
            drawing.key(Layer.ZONES, "edge of the ground a rule holds for");
        }
    }

    private void sideNames(Polygon outline) {
        for (LotSide side : plan.site().lot().sides()) {
            Segment line = outline.side(side.firstFacet() + side.facets() / 2);
            Angle along = direction(line);
            Angle outward = along.plus(outline.inside() == Side.LEFT ? Angle.RIGHT.negated() : Angle.RIGHT);
            Spot middle = Spot.of(line.start().midpoint(line.end()));
            drawing.add(Label.beside(middle, outward, NEAR, "side " + side.number() + ": " + side.course())
                    .withTurn(along));
        }
    }

    /** The direction of a line, anticlockwise from east. */
    private static Angle direction(Segment line) {
        return Angle.RIGHT.minus(line.bearing().azimuth());
    }

    private static Angle inward(Run run) {
        return direction(run.postLine()).plus(run.outside() == Side.RIGHT ? Angle.RIGHT : Angle.RIGHT.negated());
    }

    private void run(Run run) {
        drawing.add(Line.of(
                Layer.STRINGS,
                Spot.of(run.string().start()),
                Spot.of(run.string().end())));
        run.gates().forEach(gate -> gate.leaves().forEach(leaf -> swing(run, gate, leaf.leaf())));
    }

    private void swing(Run run, GateBay gate, GateLeaf hung) {
        boolean startsLeft = run.outside() == Side.RIGHT;
        boolean hingesAtStart = startsLeft == (hung.hingeSide() == HingeSide.LEFT);
        Length hingeGap = hung.spec().besideHinges();
        Length leaf = hung.width();
        Length hinge = hingesAtStart
                ? gate.opening().start().plus(hingeGap)
                : gate.opening().end().minus(hingeGap);
        Length latch = hingesAtStart ? hinge.plus(leaf) : hinge.minus(leaf);
        boolean outward = gate.location().opensOutward();
        boolean toTheRight = (run.outside() == Side.RIGHT) == outward;
        Length opened = toTheRight ? leaf : leaf.negated();
        Spot hinges = Spot.of(run.postLine().pointAt(hinge));
        Spot closed = Spot.of(run.postLine().pointAt(latch));
        Spot open = Spot.of(run.postLine().pointAt(hinge, opened));
        boolean anticlockwise = (hingesAtStart == startsLeft) != outward;
        drawing.add(Line.of(Layer.SWING, hinges, open));
        drawing.add(new SwingArc(Layer.SWING, hinges, closed, anticlockwise ? Angle.RIGHT : Angle.RIGHT.negated()));
    }

    private void posts() {
        Set<PostKind> kinds = EnumSet.noneOf(PostKind.class);
        for (Post post : plan.posts()) {
            kinds.add(post.kind());
            drawing.add(new Mark(Layer.POST_MARKS, Spot.of(post.centre()), symbol(post.kind())));
        }
        for (Post post : plan.posts()) {
            drawing.add(Label.beside(Spot.of(post.centre()), towardLot(post), NEAR, Integer.toString(post.number()))
                    .withLettering(Lettering.NUMBER));
        }
        kinds.forEach(kind -> drawing.key(Layer.POST_MARKS, symbol(kind), Notes.word(kind) + " post"));
    }

    private static Symbol symbol(PostKind kind) {
        return switch (kind) {
            case CORNER -> Symbol.FILLED_SQUARE;
            case END -> Symbol.OPEN_SQUARE;
            case GATE -> Symbol.DIAMOND;
            case LINE -> Symbol.DOT;
        };
    }

    /** Into the lot from a post; from a corner post, between both its sides. */
    private Angle towardLot(Post post) {
        double across = 0;
        double up = 0;
        for (Run run : runsByPost.getOrDefault(post.number(), List.of())) {
            across += inward(run).cos();
            up += inward(run).sin();
        }
        return Angle.ofRadians(StrictMath.atan2(up, across));
    }

    private void gateNames(Run run) {
        for (GateBay gate : run.gates()) {
            Length leaf = gate.leaf().width();
            Length inside = run.outside() == Side.RIGHT ? leaf.negated() : leaf;
            Spot beyondSwing = Spot.of(run.postLine().pointAt(gate.opening().middle(), inside));
            String name = gate.name() + ", " + figures.of(gate.opening().length()) + " clear";
            drawing.add(Label.beside(beyondSwing, inward(run), NEAR, name).withTurn(direction(run.postLine())));
        }
    }

    private void stringLength(Run run) {
        Spot middle = Spot.of(run.string().start().midpoint(run.string().end()));
        String length = "string " + figures.of(run.string().length());
        drawing.add(Label.beside(middle, inward(run), FAR, length).withTurn(direction(run.postLine())));
    }
}
