package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Ladder;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Outline;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/**
 * The board marks of a stretch as a story pole: a pole as long as the boarding with the edge of every board, each told
 * from the beginning of the boarding, so that nothing adds up.
 *
 * <p>A mark is the edge of the board nearer to that beginning, level and to the nearest sixteenth of an inch. The pole is
 * seen from outside like the elevation: where the outside is on the left going along the run, it begins at the right.
 * Boards of the second row are a row of their own above, marked whole: what is left of them beside a post is in the board
 * table. The boards' length and their height above ground are not shown.
 *
 * <p>A long stretch is broken at posts over sheets with match lines, about 38 boards of the
 * outside row to a sheet, so that every figure has room.
 *
 * <pre>{@code
 * for (Drawing sheet : BoardMarksView.sheets(plan, run, stretch)) {
 *     String svg = Svg.write(sheet, Paper.LETTER);
 * }
 * }</pre>
 */
public final class BoardMarksView {

    private static final int BOARDS_PER_SHEET = 38;
    private static final Length POLE = Length.ofInches(6);
    private static final Length ROW = Length.ofInches(10);

    private final Run run;
    private final Stretch stretch;
    private final BoardLayout layout;
    private final boolean turned;
    private final Figures figures;
    private final Drawing.Builder drawing;

    private BoardMarksView(Run run, Stretch stretch, BoardLayout layout, Figures figures) {
        this.figures = figures;
        this.run = run;
        this.stretch = stretch;
        this.layout = layout;
        this.turned = Unrolled.of(run).turned();
        this.drawing = Drawing.titled("Board marks, " + stretch);
    }

    /**
     * Draws the marks of a stretch in feet and inches.
     *
     * @param plan the plan
     * @param run one of its runs
     * @param stretch one of the run's stretches
     * @return the sheets from left to right; none when the stretch has no boards, or over {@link ElevationView#MOST_BOARDS}
     * @throws IllegalArgumentException if the run is not the plan's or the stretch not the run's
     */
    public static List<Drawing> sheets(FencePlan plan, Run run, Stretch stretch) {
        return sheets(plan, run, stretch, Figures.USUAL);
    }

    /**
     * Draws the marks of a stretch with its dimensions written for some tape.
     *
     * @param plan the plan
     * @param run one of its runs
     * @param stretch one of the run's stretches
     * @param tape how lengths are written, such as {@code TapeFormat.millimetres(0)}
     * @return the sheets from left to right; none when the stretch has no boards, or over {@link ElevationView#MOST_BOARDS}
     * @throws IllegalArgumentException if the run is not the plan's or the stretch not the run's
     */
    public static List<Drawing> sheets(FencePlan plan, Run run, Stretch stretch, TapeFormat tape) {
        if (!plan.runs().contains(run) || !run.stretches().contains(stretch)) {
            throw new IllegalArgumentException("run and stretch were " + run + " and " + stretch
                    + ", not both of this plan; take them from the plan that is drawn");
        }
        return stretch.boards()
                .filter(layout -> layout.count() <= ElevationView.MOST_BOARDS)
                .map(layout -> new BoardMarksView(run, stretch, layout, new Figures(tape)).sheets(plan))
                .orElse(List.of());
    }

    private List<Drawing> sheets(FencePlan plan) {
        Drawing whole = draw(plan);
        List<Length> posts = new ArrayList<>();
        posts.add(Length.ZERO);
        stretch.bays().stream()
                .skip(1)
                .map(bay -> across(fromBeginning(bay.slope().start())))
                .forEach(posts::add);
        posts.add(layout.clearLength());
        Length longest =
                Length.max(Length.ofFeet(8), layout.row(Face.OUTSIDE).pitch().times(BOARDS_PER_SHEET));
        return whole.sheets(posts, longest);
    }

    private Drawing draw(FencePlan plan) {
        Notes.blockers(plan.findings()).ifPresent(drawing::caution);
        Length before = fromBeginning(stretch.bays().get(0).slope().start());
        drawing.description("A story pole for " + run.name()
                + ", seen from outside. Every mark is level, from where the"
                + " boarding begins, " + figures.inText(before) + " before the middle of " + stretch.from()
                + ", at the "
                + (turned ? "right" : "left") + ", to the edge of the board nearer to there.");
        drawing.add(Outline.rectangle(Layer.RAILS, Length.ZERO, POLE.negated(), layout.clearLength(), Length.ZERO));
        List<Ladder.Cell> posts = new ArrayList<>();
        for (Post post : posts()) {
            Length middle = fromBeginning(run.station(post));
            Length half = post.footing().spec().postWidth().dividedBy(2);
            Interval body = across(Interval.of(middle.minus(half), middle.plus(half)));
            drawing.add(Outline.rectangle(Layer.POSTS, body.start(), POLE.negated(), body.end(), ROW.times(2)));
            posts.add(new Ladder.Cell(place(middle), Integer.toString(post.number())));
        }
        List<Ladder.Rung> rungs = new ArrayList<>();
        rungs.add(new Ladder.Rung("post", Lettering.NUMBER, posts));
        rungs.add(new Ladder.Rung("its middle at", Lettering.NOTE, marks(posts())));
        drawing.key(Layer.POSTS, "post");
        row(Face.OUTSIDE, Length.ZERO, rungs);
        plan.style().pattern().secondFace().ifPresent(face -> row(face, ROW, rungs));
        drawing.add(new Ladder(POLE.negated(), rungs));
        drawing.note(ripped());
        if (!stretch.boardsAtPosts().isEmpty()) {
            drawing.note("Inside boards are cut where they meet a post: see the board table.");
        }
        return drawing.build();
    }

    private String ripped() {
        List<BoardPlacement> ripped = layout.ripped();
        if (ripped.isEmpty()) {
            return "No board is ripped to fill the stretch.";
        }
        int first = ripped.get(0).index() + 1;
        return "Ripped to " + figures.of(ripped.get(0).width()) + ": "
                + (ripped.size() == 1
                        ? "outside board " + first
                        : "outside boards " + first + " to " + (first + ripped.size() - 1))
                + ", counted from where the boarding begins.";
    }

    private void row(Face face, Length bottom, List<Ladder.Rung> rungs) {
        List<BoardPlacement> boards = layout.row(face).boards();
        if (boards.isEmpty()) {
            return;
        }
        List<BoardPlacement> leftOut = stretch.boardsAtPosts().stream()
                .filter(BoardAtPost::isLeftOut)
                .map(BoardAtPost::board)
                .toList();
        List<BoardPlacement> kept =
                boards.stream().filter(board -> !leftOut.contains(board)).toList();
        for (BoardPlacement board : kept) {
            Interval across = across(Interval.of(board.left(), board.right()));
            drawing.add(Outline.rectangle(
                    StretchParts.layer(face), across.start(), bottom, across.end(), bottom.plus(ROW)));
        }
        String name = words(face);
        drawing.key(StretchParts.layer(face), name);
        List<Ladder.Cell> marks = new ArrayList<>();
        kept.forEach(board -> marks.add(new Ladder.Cell(place(board.left()), figures.of(board.left()))));
        rungs.add(new Ladder.Rung(name, Lettering.NOTE, marks));
    }

    private static String words(Face face) {
        return switch (face) {
            case OUTSIDE -> "outside boards";
            case INSIDE -> "inside boards";
            case COVER -> "over the gaps";
        };
    }

    private List<Ladder.Cell> marks(List<Post> posts) {
        return posts.stream()
                .map(post -> fromBeginning(run.station(post)))
                .map(mark -> new Ladder.Cell(place(mark), figures.of(mark)))
                .toList();
    }

    private List<Post> posts() {
        List<Post> posts = new ArrayList<>(List.of(stretch.from()));
        stretch.bays().stream().map(Bay::to).forEach(posts::add);
        return posts;
    }

    private Length fromBeginning(Length station) {
        return station.minus(stretch.boarded().start());
    }

    private Length across(Length mark) {
        return turned ? layout.clearLength().minus(mark) : mark;
    }

    private Interval across(Interval marks) {
        return turned ? Interval.of(across(marks.end()), across(marks.start())) : marks;
    }

    private Interval place(Length mark) {
        return Interval.of(across(mark), across(mark));
    }
}
