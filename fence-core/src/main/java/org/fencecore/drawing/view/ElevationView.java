package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.footing.FootingDesign;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.layout.Face;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/**
 * One side of a fence unrolled, as one sees it standing outside: the ground and the frost line, posts with hole, gravel
 * and concrete, rails, every board of both faces, and the gates; under it a table with spacings, distances from the first
 * post, heights of posts, depths of holes and gaps under the boards.
 *
 * <p>Where the outside is on the right hand going along the run, the run goes from left to right; where it is on the
 * left, the drawing is turned round, so that the run begins at the right. The drawing says which way one looks. Across is
 * the station along the run, or on a turned drawing the run's length less the station; up is height in the datum of the
 * shots. Boards stand plumb and are cut square, so each one's bottom is drawn level, with its middle on the line of the
 * board bottoms. Of an inside board that meets a post, the strips that are kept beside it are drawn.
 *
 * <p>A run with over {@link #MOST_BOARDS} boards has them drawn bay by bay as one piece, and says so. Beyond the first and
 * the last post the ground is drawn level as far as the holes reach.
 *
 * <pre>{@code
 * for (Run run : plan.runs()) {
 *     Drawing drawing = ElevationView.of(plan, run);
 * }
 * }</pre>
 */
public final class ElevationView {

    /** The most boards that are drawn one by one. */
    public static final int MOST_BOARDS = 20_000;

    /** The most posts an elevation is drawn with. */
    public static final int MOST_POSTS = 10_000;

    private static final Length NEAR = Length.ofMillimetres(1.2);
    private static final List<String> WINDS =
            List.of("north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest");

    private final FencePlan plan;
    private final Run run;
    private final Unrolled unrolled;
    private final Figures figures;
    private final Length boardLength;
    private final Drawing.Builder drawing;
    private final Map<Integer, Length> boardTops;

    private ElevationView(FencePlan plan, Run run, Figures figures) {
        this.figures = figures;
        this.plan = plan;
        this.run = run;
        this.unrolled = Unrolled.of(run);
        this.boardLength = plan.style().rails().boardLength();
        this.boardTops = boardTops(run);
        this.drawing = Drawing.titled("Elevation of " + run.name());
    }

    /**
     * Draws a run from outside, dimensions in feet and inches.
     *
     * @param plan the plan
     * @param run one of its runs
     * @return the drawing
     * @throws IllegalArgumentException if the run is not one of the plan's, or has more than {@value #MOST_POSTS} posts
     */
    public static Drawing of(FencePlan plan, Run run) {
        return of(plan, run, Figures.USUAL);
    }

    /**
     * Draws a run from outside with its dimensions written for some tape.
     *
     * @param plan the plan
     * @param run one of its runs
     * @param tape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the drawing
     * @throws IllegalArgumentException if the run is not one of the plan's, or has more than {@value #MOST_POSTS} posts
     */
    public static Drawing of(FencePlan plan, Run run, TapeFormat tape) {
        if (!plan.runs().contains(run)) {
            throw new IllegalArgumentException(
                    "run was " + run + " of another plan; take it from the runs of the plan that is drawn");
        }
        if (run.posts().size() > MOST_POSTS) {
            throw new IllegalArgumentException(
                    "the run along " + run + " has " + run.posts().size() + " posts; one drawing shows up to "
                            + MOST_POSTS + ": plan the fence in parts");
        }
        return new ElevationView(plan, run, new Figures(tape)).draw();
    }

    /**
     * Draws a run from outside, broken at posts over as few sheets as can be, from left to right and about equally long.
     * Neighbouring sheets join at a match line; the post there is on both.
     *
     * @param plan the plan
     * @param run one of its runs
     * @param longest how much of the run is on one sheet at most, unless two posts are farther apart
     * @return the sheets from left to right, one alone if the run is not longer
     * @throws IllegalArgumentException as {@link #of(FencePlan, Run)} does, or if {@code longest} is under 1 ft
     */
    public static List<Drawing> sheets(FencePlan plan, Run run, Length longest) {
        return sheets(plan, run, longest, Figures.USUAL);
    }

    /**
     * Draws a run over sheets as {@link #sheets(FencePlan, Run, Length)} does, with its dimensions written for some tape.
     *
     * @param plan the plan
     * @param run one of its runs
     * @param longest how much of the run is on one sheet at most, unless two posts are farther apart
     * @param tape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the sheets from left to right, one alone if the run is not longer
     * @throws IllegalArgumentException as {@link #of(FencePlan, Run)} does, or if {@code longest} is under 1 ft
     */
    public static List<Drawing> sheets(FencePlan plan, Run run, Length longest, TapeFormat tape) {
        if (longest.compareTo(Length.ofFeet(1)) < 0) {
            throw new IllegalArgumentException("longest was " + longest
                    + "; it must be 1 ft or more: give how much of a run one sheet shows, such as 30 ft");
        }
        Unrolled unrolled = Unrolled.of(run);
        List<Length> posts = run.posts().stream()
                .map(post -> unrolled.across(run.station(post)))
                .toList();
        return of(plan, run, tape).sheets(posts, longest);
    }

    private Drawing draw() {
        drawing.description("Seen from outside the lot, looking " + lookingTo() + ". The run begins at the "
                + (unrolled.turned() ? "right" : "left") + ". " + counts());
        Notes.blockers(plan.findings()).ifPresent(drawing::caution);
        if (run.posts().isEmpty()) {
            return drawing.build();
        }
        run.posts().forEach(this::post);
        ground();
        fence();
        run.gates()
                .forEach(gate -> drawing.add(Label.beside(
                        Spot.of(
                                unrolled.across(gate.opening()).middle(),
                                gate.bottomLine()
                                        .highest()
                                        .elevation()
                                        .plus(gate.top().longest())),
                        Angle.RIGHT,
                        NEAR,
                        gate.name())));
        drawing.add(ElevationTable.of(run, unrolled, plan.style().slope(), figures));
        FenceStyle style = plan.style();
        drawing.note("Posts " + style.postLumber() + (style.boards().isHorizontal() ? ", nailers " : ", rails ")
                + style.railLumber() + ", boards " + style.boardLumber() + ", "
                + (style.boards().isHorizontal()
                        ? "in courses " + figures.inText(boardLength) + " high together"
                        : figures.inText(boardLength) + " long")
                + (style.top().isStraight() ? "" : " as usual, their tops " + style.top())
                + (style.slope().underBoards() == SlopeSpec.UnderBoards.BOARDS_TO_GROUND
                        ? ", longer where cut to the ground"
                        : "")
                + ", plumb. Figures are level and plumb measures.");
        return drawing.build();
    }

    /** Square to the run, from outside to inside. */
    private String lookingTo() {
        Angle azimuth = run.postLine()
                .bearing()
                .plus(unrolled.turned() ? Angle.RIGHT : Angle.RIGHT.negated())
                .azimuth();
        return WINDS.get((int) Math.round(azimuth.degrees() / 45) % WINDS.size());
    }

    private int boardCount() {
        return run.stretches().stream().mapToInt(Stretch::boardCount).sum()
                + run.gates().stream().mapToInt(GateBay::boardCount).sum();
    }

    private String counts() {
        return Notes.count(run.posts().size(), "post") + ", " + Notes.count(boardCount(), "board") + ", "
                + Notes.count(run.gates().size(), "gate") + ".";
    }

    private void post(Post post) {
        Length station = run.station(post);
        FootingDesign footing = post.footing();
        Length half = footing.spec().postWidth().dividedBy(2);
        Length holeHalf = footing.holeDiameter().dividedBy(2);
        Interval body = Interval.of(station.minus(half), station.plus(half));
        Interval hole = Interval.of(station.minus(holeHalf), station.plus(holeHalf));
        Length foot = post.ground().minus(footing.embedment());
        Length concreteTop = post.ground().plus(footing.spec().setting().concreteTop());
        drawing.add(unrolled.upright(Layer.GRAVEL, hole, post.ground().minus(footing.holeDepth()), foot));
        drawing.add(unrolled.upright(Layer.CONCRETE, hole, foot, concreteTop));
        Length lower = post.topGrade().riseOver(half.times(2)).abs();
        boolean climbs = !post.topGrade().isNegative();
        drawing.add(Outline.of(
                Layer.POSTS,
                unrolled.spot(body.start(), foot),
                unrolled.spot(body.end(), foot),
                unrolled.spot(body.end(), climbs ? post.top() : post.top().minus(lower)),
                unrolled.spot(body.start(), climbs ? post.top().minus(lower) : post.top())));
        drawing.add(Label.beside(
                        unrolled.spot(
                                station, Length.max(post.top(), boardTops.getOrDefault(post.number(), post.top()))),
                        Angle.RIGHT,
                        NEAR,
                        Integer.toString(post.number()))
                .withLettering(Lettering.NUMBER));
    }

    /** The tops of the boards at each post, by its number. */
    private static Map<Integer, Length> boardTops(Run run) {
        Map<Integer, Length> tops = new HashMap<>();
        for (Stretch stretch : run.stretches()) {
            for (Post post : stretch.posts()) {
                tops.merge(post.number(), stretch.topLine().topAt(run.station(post)), Length::max);
            }
        }
        return tops;
    }

    private void ground() {
        drawing.key(Layer.GROUND, "ground");
        Length reach = run.posts().get(0).footing().holeDiameter();
        List<ProfilePoint> points = new ArrayList<>(run.ground().points());
        ProfilePoint first = points.get(0);
        ProfilePoint last = points.get(points.size() - 1);
        points.add(0, new ProfilePoint(first.station().minus(reach), first.elevation()));
        points.add(new ProfilePoint(last.station().plus(reach), last.elevation()));
        drawing.add(line(Layer.GROUND, points, Length.ZERO));
        plan.site().frostDepth().filter(Length::isPositive).ifPresent(depth -> {
            drawing.key(Layer.FROST, "frost, " + figures.inText(depth) + " deep");
            drawing.add(line(Layer.FROST, points, depth));
        });
        drawing.key(Layer.CONCRETE, "concrete");
        drawing.key(Layer.GRAVEL, "gravel");
    }

    private Line line(Layer layer, List<ProfilePoint> points, Length below) {
        return new Line(
                layer,
                points.stream()
                        .map(point ->
                                unrolled.spot(point.station(), point.elevation().minus(below)))
                        .toList());
    }

    private void fence() {
        boolean oneByOne = boardCount() <= MOST_BOARDS;
        boolean joined = false;
        boolean kicked = false;
        for (Stretch stretch : run.stretches()) {
            StretchParts parts = new StretchParts(stretch, unrolled, run.ground());
            parts.rails().forEach(drawing::add);
            parts.nailers(plan.style().railLumber().width(), boardLength).forEach(drawing::add);
            List<Shape> joints = parts.joints();
            joints.forEach(drawing::add);
            joined |= !joints.isEmpty();
            List<Shape> kickBoards = parts.kickBoards();
            kickBoards.forEach(drawing::add);
            kicked |= !kickBoards.isEmpty();
            (oneByOne ? parts.boards() : parts.boardedBays()).forEach(drawing::add);
        }
        if (joined) {
            drawing.key(Layer.RAIL_JOINTS, "joint of a rail");
        }
        if (kicked) {
            drawing.key(Layer.KICK_BOARDS, "kick board, to scribe to the ground");
        }
        for (GateBay gate : run.gates()) {
            for (HungLeaf hung : gate.leaves()) {
                LeafParts leaf = new LeafParts(hung, gate, unrolled);
                if (oneByOne) {
                    leaf.boards().forEach(drawing::add);
                }
                leaf.frame().forEach(drawing::add);
            }
        }
        boolean horizontal = plan.style().boards().isHorizontal();
        drawing.key(Layer.POSTS, horizontal ? "post, nailer behind boards" : "post, rail behind boards");
        if (!oneByOne) {
            drawing.note("Boards are drawn bay by bay: over " + MOST_BOARDS + " are not drawn one by one.");
            return;
        }
        drawing.key(Layer.OUTSIDE_BOARDS, "board, outside face");
        plan.style()
                .pattern()
                .secondFace()
                .ifPresent(face -> drawing.key(
                        StretchParts.layer(face),
                        face == Face.INSIDE ? "board, inside face" : "over the gaps, outside face"));
    }
}
