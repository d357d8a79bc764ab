package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.boarding.BoardMovement;
import org.fencecore.boarding.Privacy;
import org.fencecore.geometry.Interval;
import org.fencecore.internal.Once;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.PostSpacing;
import org.fencecore.rail.RailHeights;
import org.fencecore.rail.RailPieces;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.TopLine;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The fence between two fixed posts (corner, end or gate): its bays, the pieces of its rails, and the boards that run
 * unbroken past the line posts.
 *
 * <p>The boards on the outside face begin and end full at the edges of {@link #boarded}; those of a shadowbox's inside
 * face stand behind the gaps and are ripped where they meet a post.
 */
public final class Stretch {

    private final List<Bay> bays;
    private final Optional<PostSpacing> spacing;
    private final TopLine topLine;
    private final Optional<Once<RailPieces>> railPieces;
    private final Interval boarded;
    private final Optional<BoardLayout> boards;
    private final Once<List<BoardAtPost>> boardsAtPosts;
    private final List<CourseRun> courses;
    private final FenceStyle style;

    Stretch(
            List<Bay> bays,
            Optional<PostSpacing> spacing,
            TopLine topLine,
            Optional<Once<RailPieces>> railPieces,
            Interval boarded,
            Optional<BoardLayout> boards,
            Once<List<BoardAtPost>> boardsAtPosts,
            List<CourseRun> courses,
            FenceStyle style) {
        this.bays = List.copyOf(bays);
        this.spacing = spacing;
        this.topLine = topLine;
        this.railPieces = railPieces;
        this.boarded = boarded;
        this.boards = boards;
        this.boardsAtPosts = boardsAtPosts;
        this.courses = List.copyOf(courses);
        this.style = style;
    }

    /**
     * Returns the fixed post where it begins.
     *
     * @return the post
     */
    public Post from() {
        return bays.get(0).from();
    }

    /**
     * Returns the fixed post where it ends.
     *
     * @return the post
     */
    public Post to() {
        return bays.get(bays.size() - 1).to();
    }

    /**
     * Returns its bays.
     *
     * @return the bays along the run, at least one, unmodifiable
     */
    public List<Bay> bays() {
        return bays;
    }

    /**
     * Returns its posts, the fixed ones at both ends among them.
     *
     * @return the posts along the run, one more than bays; a piece of rail gives its posts by their places in this list
     */
    public List<Post> posts() {
        List<Post> posts = new ArrayList<>();
        bays.forEach(bay -> posts.add(bay.from()));
        posts.add(to());
        return List.copyOf(posts);
    }

    /**
     * Returns how its posts were spaced.
     *
     * @return the spacing, from the first post to the last; empty where the posts stand as they were set
     */
    public Optional<PostSpacing> spacing() {
        return spacing;
    }

    /**
     * Returns how it meets the ground; {@link SlopeFit#choice} compares that with the other treatments.
     *
     * @return the slope of every bay; stations are along the run
     */
    public SlopeFit slope() {
        return topLine.fit();
    }

    /**
     * Returns where the tops of its boards run, and so how long each board is.
     *
     * @return the line of the tops; stations are along the run
     */
    public TopLine topLine() {
        return topLine;
    }

    /**
     * Returns its rails in the pieces they are cut in.
     *
     * @return the pieces, over one or more bays each, joined on posts; empty for horizontal boards, which have no rails
     */
    public Optional<RailPieces> railPieces() {
        return railPieces.map(Once::get);
    }

    /**
     * Returns the part of the run that is boarded on the outside face: from the outer edge of one fixed post, or past a
     * corner to the neighbouring boards, to that of the other.
     *
     * @return stations along the run; the first may be negative
     */
    public Interval boarded() {
        return boarded;
    }

    /**
     * Returns the upright boards.
     *
     * @return the layout, its zero at the start of {@link #boarded}; empty when the stretch is too short for the pattern, or
     *     its boards are horizontal
     */
    public Optional<BoardLayout> boards() {
        return boards;
    }

    /**
     * Returns the horizontal boards, part by part: a part ends where the fence bends or steps.
     *
     * @return the parts along the run, unmodifiable; empty for upright boards
     */
    public List<CourseRun> courses() {
        return courses;
    }

    /**
     * Returns how every upright board is cut: its length from the line of the bottoms, or from the ground, to that of the
     * tops, its ends, dog-ears and width.
     *
     * @return the cuts, in the order of the layout's boards, their heights in the datum of the shots; empty without upright
     *     boards
     */
    public Optional<BoardCuts> cuts() {
        return boards.map(layout ->
                BoardCuts.under(layout, topLine, boarded.start(), style.boards().ends()));
    }

    /**
     * Returns what one sees between the boards.
     *
     * @return the privacy, for horizontal boards of the first part; empty without boards
     */
    public Optional<Privacy> privacy() {
        return boards.or(() ->
                        courses.stream().findFirst().map(part -> part.layout().courses()))
                .map(style::privacy);
    }

    /**
     * Returns how many boards it takes on both faces.
     *
     * @return the number of boards, those left out at posts not counted
     */
    public int boardCount() {
        long leftOut = boardsAtPosts().stream().filter(BoardAtPost::isLeftOut).count();
        int horizontal = courses.stream().mapToInt(CourseRun::boardCount).sum();
        return boards.map(BoardLayout::count).orElse(0) - (int) leftOut + horizontal;
    }

    /**
     * Returns the boards of the inside face that stand where a post is.
     *
     * @return what is kept of each, along the run, unmodifiable
     */
    public List<BoardAtPost> boardsAtPosts() {
        return boardsAtPosts.get();
    }

    /**
     * Returns the level length from the first post to the last.
     *
     * @return centre to centre
     */
    public Length length() {
        return bays.get(bays.size() - 1).slope().end().minus(bays.get(0).slope().start());
    }

    /** Spacing, bays with their rails, and boards. */
    List<Worksheet> worksheets(String side) {
        List<Worksheet> sheets = new ArrayList<>();
        String place = side + ", " + this;
        spacing.ifPresent(posts -> sheets.add(posts.worksheet().within(place)));
        // On level ground every treatment is the same.
        if (bays.stream().anyMatch(bay -> !bay.slope().rise().isZero())) {
            sheets.add(slope().choice().worksheet().within(place));
        }
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = bays.get(i);
            String bayPlace = side + ", " + bay + ", " + bay.from();
            sheets.add(slope().worksheet(i).within(bayPlace + " to " + bay.to()));
            if (!bay.rails().isEmpty()) {
                sheets.add(RailHeights.of(
                                style.rails(),
                                bay.slope().aboveStart(),
                                bay.slope().grade())
                        .worksheet()
                        .within(bayPlace));
            }
            bay.kickBoards().forEach(board -> sheets.add(board.worksheet().within(bayPlace)));
        }
        railPieces().ifPresent(pieces -> sheets.add(pieces.worksheet().within(place)));
        boards.ifPresent(layout -> tell(sheets, layout, place));
        for (CourseRun part : courses) {
            String partPlace = courses.size() == 1
                    ? place
                    : place + ", from " + Written.station(part.stations().start());
            sheets.add(part.layout().worksheet().within(partPlace));
            movement(part.layout().courses())
                    .ifPresent(moved -> sheets.add(moved.worksheet().within(partPlace)));
        }
        privacy().ifPresent(seen -> sheets.add(seen.worksheet().within(place)));
        return sheets;
    }

    private void tell(List<Worksheet> sheets, BoardLayout layout, String place) {
        sheets.add(layout.worksheet().within(place));
        movement(layout).ifPresent(moved -> sheets.add(moved.worksheet().within(place)));
    }

    private Optional<BoardMovement> movement(BoardLayout layout) {
        return style.boards().wood().map(wood -> BoardMovement.of(layout, wood));
    }

    @Override
    public String toString() {
        return from() + " to " + to();
    }
}
