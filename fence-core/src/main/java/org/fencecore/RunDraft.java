package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.boarding.BoardMovement;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.HingeSide;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Surface;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.CourseLayout;
import org.fencecore.layout.Fitting;
import org.fencecore.layout.PostSpacing;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.RailHeights;
import org.fencecore.slope.RailMarks;
import org.fencecore.slope.SlopeFit;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * One run in the making: posts are entered in the book and what stands between them is worked out; once all posts of the
 * plan are known, {@link #build} puts the run together.
 */
final class RunDraft {

    private static final int MOST_BOARDS = 5_000_000;

    private final FenceStyle style;
    private final FenceLine line;
    private final Profile ground;
    private final Optional<Surface> surface;
    private final FenceLine.Past railsPast;
    private final FenceLine.Past boardsPast;
    private final PostBook book;
    private final List<Finding> findings;
    private final Length half;
    private final List<PostBook.Entry> posts = new ArrayList<>();
    private final List<Length> stations = new ArrayList<>();
    private final List<StretchDraft> stretches = new ArrayList<>();
    private final List<GateDraft> gates = new ArrayList<>();

    /** Fence between two fixed posts: which posts of this run, and all that does not need them finished. */
    private record StretchDraft(
            int firstPost,
            Optional<PostSpacing> spacing,
            SlopeFit slope,
            Interval boarded,
            Interval railed,
            Optional<BoardLayout> boards,
            List<CourseRun> courses) {}

    /** A gate and which post of this run it begins at. */
    private record GateDraft(
            int firstPost,
            GatePlacing.Placed placed,
            GateDesign design,
            Optional<BoardLayout> boards,
            Optional<CourseLayout> courses,
            Length boardBottom,
            Optional<GateSwing> swing) {}

    RunDraft(
            FenceStyle style,
            FenceLine line,
            Profile ground,
            Optional<Surface> surface,
            PostRow row,
            boolean meetsAtStart,
            boolean meetsAtEnd,
            PostBook book,
            List<Finding> findings) {
        this.style = style;
        this.line = line;
        this.ground = ground;
        this.surface = surface;
        this.railsPast = line.railsPast(meetsAtStart, meetsAtEnd);
        this.boardsPast = line.boardsPast(meetsAtStart, meetsAtEnd);
        this.book = book;
        this.findings = findings;
        this.half = style.postLumber().width().dividedBy(2);
        row.spots().forEach(this::enter);
        row.parts().forEach(this::buildBetween);
    }

    private void enter(PostRow.Spot spot) {
        posts.add(book.add(spot, ground.elevationAt(spot.station())));
        stations.add(spot.station());
    }

    private void buildBetween(PostRow.Part part) {
        if (part.gate().isPresent()) {
            hang(part.gate().get(), part.first());
        } else if (part.isLeftOut()) {
            posts.subList(part.first(), part.last() + 1).forEach(this::reachUsual);
        } else {
            tell(part.findings(), name(part));
            fence(part);
        }
    }

    /** Gives either post half of the bay or opening between them to hold in the wind. */
    private void carry(int first) {
        Interval between = Interval.of(stations.get(first), stations.get(first + 1));
        posts.get(first).carry(line, Interval.of(between.start(), between.middle()));
        posts.get(first + 1).carry(line, Interval.of(between.middle(), between.end()));
    }

    private void reachUsual(PostBook.Entry post) {
        post.reach(
                post.ground().plus(style.slope().clearance()).plus(style.rails().boardLength()));
    }

    private void fence(PostRow.Part part) {
        int first = part.first();
        List<Length> at = List.copyOf(stations.subList(first, part.last() + 1));
        for (int bay = 0; bay < at.size() - 1; bay++) {
            carry(first + bay);
        }
        if (isTooSteep(part)) {
            posts.subList(first, part.last() + 1).forEach(this::reachUsual);
            return;
        }
        boolean fromEnd = first == 0;
        boolean toEnd = part.last() == stations.size() - 1;
        Optional<Interval> railed = reach(part, fromEnd ? railsPast.start() : half, toEnd ? railsPast.end() : half);
        Optional<Interval> boarded = reach(part, fromEnd ? boardsPast.start() : half, toEnd ? boardsPast.end() : half);
        if (railed.isEmpty() || boarded.isEmpty()) {
            findings.add(Finding.blocker(
                            "too-short-for-rails",
                            name(part),
                            "the corner beside it takes up a whole bay, and leaves nothing to fence there")
                    .withRemedy("move the post further from the corner, or cut the corner off with a short side"));
            posts.subList(first, part.last() + 1).forEach(this::reachUsual);
            return;
        }
        SlopeFit slope = SlopeFit.of(ground, at, style.slope());
        tell(slope.findings(), name(part));
        for (int post = 0; post < at.size(); post++) {
            posts.get(first + post)
                    .reach(slope.bottomAt(at.get(post))
                            .plus(style.rails().boardLength())
                            .plus(style.postAboveBoards()));
        }
        Optional<BoardLayout> boards = Optional.empty();
        List<CourseRun> courses = List.of();
        if (style.isHorizontal()) {
            courses = new CourseFitting(style, slope, boarded.get(), name(part), findings).fit();
            courses.forEach(each -> close(each.layout().courses(), name(part)));
        } else {
            Length start = boarded.get().start();
            boolean areNotched = style.postAboveBoards().negated().compareTo(BoardAtPost.LEAST_HEAD) >= 0;
            boards = fit(boarded.get().length(), name(part))
                    .map(layout -> areNotched
                            ? BoardAtPost.keptOff(
                                    layout,
                                    bodies(at, start),
                                    style.boardLumber().thickness())
                            : layout);
            boards.ifPresent(layout -> close(layout, name(part)));
        }
        stretches.add(new StretchDraft(first, part.spacing(), slope, boarded.get(), railed.get(), boards, courses));
    }

    /**
     * How far something reaches along a stretch; empty where it would end before its first bay does, as rails do at a sharp
     * corner that points into the lot.
     */
    private Optional<Interval> reach(PostRow.Part part, Length before, Length beyond) {
        Length start = stations.get(part.first()).minus(before);
        Length end = stations.get(part.last()).plus(beyond);
        boolean room = start.compareTo(end) < 0
                && start.compareTo(stations.get(part.first() + 1)) < 0
                && end.compareTo(stations.get(part.last() - 1)) > 0;
        return room ? Optional.of(Interval.of(start, end)) : Optional.empty();
    }

    private boolean isTooSteep(PostRow.Part part) {
        boolean tooSteep = false;
        for (int post = part.first(); post < part.last(); post++) {
            Slope grade = ground.slopeBetween(stations.get(post), stations.get(post + 1));
            if (grade.abs().compareTo(SlopeFit.STEEPEST) > 0) {
                tooSteep = true;
                findings.add(Finding.blocker(
                                "ground-too-steep",
                                line.name + ", post " + posts.get(post).number + " to post "
                                        + posts.get(post + 1).number,
                                "the ground rises or falls " + Written.percent(grade.abs()) + ", and no bay over "
                                        + Written.percent(SlopeFit.STEEPEST) + " is laid out")
                        .withRemedy("check the shots; if they are right, a retaining wall or another line is needed"));
            }
        }
        return tooSteep;
    }

    private Optional<BoardLayout> fit(Length clear, String place) {
        Length least = style.pattern().minimumLength();
        if (clear.compareTo(least) < 0) {
            findings.add(Finding.blocker(
                            "too-short-for-boards",
                            place,
                            Written.tape(clear, Rounding.DOWN) + " is too short for the pattern, which needs "
                                    + Written.tape(least, Rounding.UP))
                    .withRemedy("move the gate or the end of the fence, or use narrower boards"));
            return Optional.empty();
        }
        if (clear.wholePieces(style.pattern().width()) >= MOST_BOARDS) {
            findings.add(Finding.blocker(
                            "too-many-boards",
                            place,
                            Written.feet(clear) + " would take over " + MOST_BOARDS + " boards of "
                                    + style.pattern().width())
                    .withRemedy("check the width of the boards and its unit"));
            return Optional.empty();
        }
        BoardLayout layout = BoardLayout.fit(clear, style.pattern());
        tell(layout.findings(), place);
        return Optional.of(layout);
    }

    /** What the boards as laid out close of the wind, and how they move. */
    private void close(BoardLayout layout, String place) {
        book.close(line, style.privacy(layout).solid());
        style.boardWood().ifPresent(wood -> {
            List<Finding> moved = BoardMovement.of(layout, wood).findings(wood.allowedGap()).stream()
                    .map(finding -> finding.within(place))
                    .filter(finding -> !findings.contains(finding))
                    .toList();
            findings.addAll(moved);
        });
        tellRips(layout, place);
    }

    /** Says what length would need no rip, so that a post or the height can be changed. */
    private void tellRips(BoardLayout layout, String place) {
        if (layout.choice() == Fitting.FULL_BOARDS) {
            return;
        }
        Length shorter = layout.clearLength().minus(layout.flushShorter());
        Length longer = layout.flushLonger().minus(layout.clearLength());
        String what = style.isHorizontal() ? "the fence" : "the boarding";
        Finding finding = Finding.note("boards-ripped", place, layout.reason())
                .withRemedy("for full boards alone make " + what + " " + Written.tape(shorter, Rounding.UP)
                        + (style.isHorizontal() ? " lower or " : " shorter or ")
                        + Written.tape(longer, Rounding.UP)
                        + (style.isHorizontal() ? " higher" : " longer, by moving the post at either end"))
                .withSource(Citation.GEOMETRY);
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }

    private List<BoardAtPost> boardsAtPosts(StretchDraft draft, List<Post> own) {
        if (draft.boards().isEmpty()) {
            return List.of();
        }
        int past = draft.firstPost() + draft.slope().bays().size() + 1;
        List<Interval> bodies = bodies(
                stations.subList(draft.firstPost(), past), draft.boarded().start());
        Length length = style.rails().boardLength();
        return BoardAtPost.among(
                draft.boards().get(),
                own.subList(draft.firstPost(), past),
                bodies,
                board -> draft.slope()
                        .bottomAt(Interval.of(board.left(), board.right())
                                .shiftedBy(draft.boarded().start())
                                .middle())
                        .plus(length));
    }

    /** From where to where each post stands, from the start of the boarding. */
    private List<Interval> bodies(List<Length> posts, Length start) {
        return posts.stream()
                .map(at -> Interval.of(at.minus(half), at.plus(half)).shiftedBy(start.negated()))
                .toList();
    }

    private void hang(GatePlacing.Placed gate, int first) {
        Interval opening = gate.opening();
        String place = line.name + ", " + gate.location().name();
        GateDesign design = GateDesign.forOpening(
                opening.length(), style.gateFrameHeight(), gate.location().hinges(), style.gate());
        tell(design.findings(), place);
        Profile underLeaf = ground.between(opening.start(), opening.end());
        Length bottom = underLeaf.highest().elevation().plus(style.slope().clearance());
        Length gap = bottom.minus(underLeaf.lowest().elevation());
        if (gap.compareTo(style.slope().maximumClearance()) > 0) {
            findings.add(Finding.warning(
                            "gate-gap",
                            place,
                            "the leaf hangs level over ground that falls, so the gap under it grows to "
                                    + Written.tape(gap) + ", over the maximum of "
                                    + Written.tape(style.slope().maximumClearance()))
                    .withRemedy("level the ground under the gate, close the gap, or move the gate to flatter ground")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        Length top = bottom.plus(style.rails().boardLength()).plus(style.postAboveBoards());
        for (PostBook.Entry post : List.of(posts.get(first), posts.get(first + 1))) {
            post.reach(top);
        }
        carry(first);
        Optional<GateSwing> swing = surface.flatMap(
                shots -> LeafSwing.of(design.activeLeaf(), gate.location(), opening, line, style, bottom, shots));
        swing.ifPresent(clear -> tell(clear.findings(), place));
        if (surface.isPresent() && swing.isEmpty()) {
            findings.add(Finding.note(
                            "gate-swing-unknown",
                            place,
                            "the shots do not reach under the whole swing of the leaf, so that it may drag")
                    .withRemedy("take shots as far out as the leaf opens"));
        }
        Length width = design.activeLeaf().width();
        Optional<BoardLayout> boards = style.isHorizontal() ? Optional.empty() : fit(width, place);
        boards.ifPresent(layout -> tellRips(layout, place));
        gates.add(new GateDraft(first, gate, design, boards, coursesOnLeaf(width, place), bottom, swing));
    }

    /** The courses of a leaf are those of level fence, each one board. */
    private Optional<CourseLayout> coursesOnLeaf(Length width, String place) {
        Length height = style.rails().boardLength();
        if (!style.isHorizontal() || height.compareTo(style.pattern().minimumLength()) < 0) {
            return Optional.empty();
        }
        List<Length> sold = style.boardLumber().lengths();
        CourseLayout layout = CourseLayout.fit(height, style.pattern(), width, List.of(), sold.get(sold.size() - 1));
        tell(layout.findings(), place);
        return Optional.of(layout);
    }

    private String name(PostRow.Part part) {
        return line.name + ", post " + posts.get(part.first()).number + " to post " + posts.get(part.last()).number;
    }

    private void tell(List<Finding> news, String place) {
        news.forEach(finding -> findings.add(finding.within(place)));
    }

    /** Puts the run together from the finished posts; bays are numbered on from those of the runs before. */
    Run build(Map<Integer, Post> finished, int baysBefore) {
        List<Post> own = posts.stream()
                .map(post -> Objects.requireNonNull(finished.get(post.number), "finished post"))
                .toList();
        List<Stretch> built = new ArrayList<>();
        int number = baysBefore;
        for (StretchDraft draft : stretches) {
            List<Bay> bays = new ArrayList<>();
            for (int bay = 0; bay < draft.slope().bays().size(); bay++) {
                number++;
                bays.add(new Bay(
                        number,
                        own.get(draft.firstPost() + bay),
                        own.get(draft.firstPost() + bay + 1),
                        draft.slope().bays().get(bay),
                        rails(draft, bay)));
            }
            built.add(new Stretch(
                    bays,
                    draft.spacing(),
                    draft.slope(),
                    draft.boarded(),
                    draft.boards(),
                    boardsAtPosts(draft, own),
                    draft.courses(),
                    style));
        }
        List<GateBay> hung = gates.stream().map(draft -> hung(draft, own)).toList();
        return new Run(line, ground, own, built, hung);
    }

    private GateBay hung(GateDraft draft, List<Post> own) {
        Post from = own.get(draft.firstPost());
        Post to = own.get(draft.firstPost() + 1);
        // Someone outside, facing the fence, has the run's beginning on the left when the outside is on its right.
        boolean beginsLeft = line.outside == Side.RIGHT;
        boolean hingesLeft = draft.design().activeLeaf().hingeSide() == HingeSide.LEFT;
        return new GateBay(
                draft.placed().location(),
                from,
                to,
                beginsLeft == hingesLeft ? from : to,
                draft.placed().opening(),
                draft.design(),
                draft.boards(),
                draft.courses(),
                draft.boardBottom(),
                draft.swing());
    }

    /** Rails meet on the middle of line posts and run past the fixed posts at both ends of the stretch. */
    private List<RailCut> rails(StretchDraft draft, int bay) {
        FittedBay slope = draft.slope().bays().get(bay);
        boolean lastBay = bay == draft.slope().bays().size() - 1;
        Length start = bay == 0 ? draft.railed().start() : slope.start();
        Length end = lastBay ? draft.railed().end() : slope.end();
        Length length = slope.grade().lengthOver(end.minus(start));
        if (style.isHorizontal() || slope.grade().abs().compareTo(SlopeFit.STEEPEST) > 0) {
            // The slope's own finding says so; there is no rail to cut for it.
            return List.of();
        }
        List<RailMarks> from =
                RailHeights.of(style.rails(), slope.aboveStart(), slope.grade()).rails();
        List<RailMarks> to =
                RailHeights.of(style.rails(), slope.aboveEnd(), slope.grade()).rails();
        List<RailCut> rails = new ArrayList<>();
        for (int rail = 0; rail < from.size(); rail++) {
            rails.add(new RailCut(rail + 1, length, slope.endCut(), from.get(rail), to.get(rail)));
        }
        return rails;
    }
}
