package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.boarding.BoardMovement;
import org.fencecore.boarding.Privacy;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.PostSpacing;
import org.fencecore.slope.RailHeights;
import org.fencecore.slope.SlopeFit;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The fence between two fixed posts (corner, end or gate): its bays, and the boards that run unbroken past the line
 * posts.
 *
 * <p>The boards on the outside face begin and end full at the edges of {@link #boarded}; those of a shadowbox's inside
 * face stand behind the gaps and are ripped where they meet a post.
 */
public final class Stretch {

    private final List<Bay> bays;
    private final Optional<PostSpacing> spacing;
    private final SlopeFit slope;
    private final Interval boarded;
    private final Optional<BoardLayout> boards;
    private final List<BoardAtPost> boardsAtPosts;
    private final List<CourseRun> courses;
    private final FenceStyle style;

    Stretch(
            List<Bay> bays,
            Optional<PostSpacing> spacing,
            SlopeFit slope,
            Interval boarded,
            Optional<BoardLayout> boards,
            List<BoardAtPost> boardsAtPosts,
            List<CourseRun> courses,
            FenceStyle style) {
        this.bays = List.copyOf(bays);
        this.spacing = spacing;
        this.slope = slope;
        this.boarded = boarded;
        this.boards = boards;
        this.boardsAtPosts = List.copyOf(boardsAtPosts);
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
     * Returns how its posts were spaced.
     *
     * @return the spacing, from the first post to the last; empty where the posts stand as they were set
     */
    public Optional<PostSpacing> spacing() {
        return spacing;
    }

    /**
     * Returns how it meets the ground.
     *
     * @return the slope of every bay; stations are along the run
     */
    public SlopeFit slope() {
        return slope;
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
     * Returns how every upright board is cut: its length from the line of the bottoms to that of the tops, its ends,
     * dog-ears and width.
     *
     * @return the cuts, in the order of the layout's boards, their heights in the datum of the shots; empty without upright
     *     boards
     */
    public Optional<BoardCuts> cuts() {
        return boards.map(layout -> {
            Profile bottoms = bottoms();
            return BoardCuts.of(
                    layout, bottoms.shiftedBy(Length.ZERO, style.rails().boardLength()), bottoms, ends());
        });
    }

    /** A board at a step stands level with one bay or the other, and so would no end cut along the line. */
    private BoardEnds ends() {
        boolean steps = IntStream.range(1, bays.size())
                .anyMatch(post -> !slope.step(post).isZero());
        BoardEnds ends = style.boardEnds();
        if (!steps || ends.dogEar().isZero()) {
            return steps ? BoardEnds.square() : ends;
        }
        return BoardEnds.square().withDogEars(ends.dogEar());
    }

    /** The line of the bottoms over the boarded length, from zero at its start; steps are steep rather than upright. */
    private Profile bottoms() {
        Profile.Builder line = Profile.builder();
        Length start = boarded.start();
        line.point(Length.ZERO, bays.get(0).slope().bottomAt(start));
        for (int bay = 1; bay < bays.size(); bay++) {
            Length post = bays.get(bay).slope().start().minus(start);
            line.point(post, bays.get(bay - 1).slope().bottomAtEnd());
            if (!slope.step(bay).isZero()) {
                line.point(
                        post.plus(Length.ofNanometres(1)), bays.get(bay).slope().bottomAtStart());
            }
        }
        return line.point(boarded.length(), bays.get(bays.size() - 1).slope().bottomAt(boarded.end()))
                .build();
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
        long leftOut = boardsAtPosts.stream().filter(BoardAtPost::isLeftOut).count();
        int horizontal = courses.stream().mapToInt(CourseRun::boardCount).sum();
        return boards.map(BoardLayout::count).orElse(0) - (int) leftOut + horizontal;
    }

    /**
     * Returns the boards of the inside face that stand where a post is.
     *
     * @return what is kept of each, along the run, unmodifiable
     */
    public List<BoardAtPost> boardsAtPosts() {
        return boardsAtPosts;
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
        for (int i = 0; i < bays.size(); i++) {
            Bay bay = bays.get(i);
            String bayPlace = side + ", " + bay + ", " + bay.from();
            sheets.add(slope.worksheet(i).within(bayPlace + " to " + bay.to()));
            if (!bay.rails().isEmpty()) {
                sheets.add(RailHeights.of(
                                style.rails(),
                                bay.slope().aboveStart(),
                                bay.slope().grade())
                        .worksheet()
                        .within(bayPlace));
            }
        }
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
        return style.boardWood().map(wood -> BoardMovement.of(layout, wood));
    }

    @Override
    public String toString() {
        return from() + " to " + to();
    }
}
