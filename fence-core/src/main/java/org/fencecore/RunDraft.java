package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.gate.hang.HingePostLoad;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.internal.Once;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.PostSpacing;
import org.fencecore.rail.RailHeights;
import org.fencecore.rail.RailMarks;
import org.fencecore.rail.RailPieces;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.KickBoard;
import org.fencecore.slope.PostHeight;
import org.fencecore.slope.PostTops;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopLine;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Written;

/**
 * One run in the making: posts are entered in the book and what stands between them is worked out; once all posts of the
 * plan are known, {@link #build} puts the run together.
 */
final class RunDraft {

    private final FenceStyle style;
    private final FenceLine line;
    private final Profile ground;
    private final FenceLine.Past railsPast;
    private final FenceLine.Past boardsPast;
    private final PostBook book;
    private final Findings findings;
    private final Length half;
    private final List<PostBook.Entry> posts = new ArrayList<>();
    private final List<Length> stations = new ArrayList<>();
    private final List<Length> heights = new ArrayList<>();
    private final List<StretchDraft> stretches = new ArrayList<>();
    private final List<GateDraft> gates = new ArrayList<>();
    private final GateHanging hanging;
    private final BoardFitting boarding;

    /** Fence between two fixed posts: which posts of this run, and all that does not need them finished. */
    private record StretchDraft(
            int firstPost,
            Optional<PostSpacing> spacing,
            TopLine top,
            Optional<Once<RailPieces>> railPieces,
            Interval boarded,
            Optional<BoardLayout> boards,
            List<CourseRun> courses) {

        SlopeFit slope() {
            return top.fit();
        }
    }

    /** A gate and which post of this run it begins at. */
    private record GateDraft(int firstPost, GateHanging.HungGate gate) {}

    RunDraft(
            FenceStyle style,
            FenceLine line,
            Profile ground,
            Optional<Surface> surface,
            PostRow row,
            boolean meetsAtStart,
            boolean meetsAtEnd,
            PostBook book,
            Findings findings) {
        this.style = style;
        this.line = line;
        this.ground = ground;
        this.railsPast = line.railsPast(meetsAtStart, meetsAtEnd);
        this.boardsPast = line.boardsPast(meetsAtStart, meetsAtEnd);
        this.book = book;
        this.findings = findings;
        this.half = style.postLumber().width().dividedBy(2);
        this.boarding = new BoardFitting(style, line, book, findings);
        this.hanging = new GateHanging(style, line, ground, surface, boarding::fitLeaf, findings);
        row.spots().forEach(this::enter);
        row.parts().forEach(this::buildBetween);
    }

    private void enter(PostRow.Spot spot) {
        Length height = ground.elevationAt(spot.station());
        posts.add(book.add(spot, height));
        stations.add(spot.station());
        heights.add(height);
    }

    private void buildBetween(PostRow.Part part) {
        if (part.gate().isPresent()) {
            hang(part.gate().get(), part.first());
        } else if (part.isLeftOut()) {
            posts.subList(part.first(), part.last() + 1).forEach(this::reachUsual);
        } else {
            findings.later(part::findings, name(part));
            fence(part);
        }
    }

    /** Gives either post half of the bay or opening between them to hold in the wind. */
    private void carry(int first) {
        Interval between = Interval.of(stations.get(first), stations.get(first + 1));
        posts.get(first).carry(line, Interval.of(between.start(), between.middle()));
        posts.get(first + 1).carry(line, Interval.of(between.middle(), between.end()));
    }

    /**
     * Both posts of a single leaf hold half of it. Of two leaves the fixed one is held at its foot, so that its own wind and
     * half of the other's bend its post; the other post holds its own, for a leaf may stand ajar.
     */
    private void carry(int first, GateHanging.HungGate hung) {
        carry(first);
        Length start = stations.get(first);
        Length end = stations.get(first + 1);
        Length part = end.minus(start).portion(3, 4);
        for (HungLeaf leaf : hung.leaves()) {
            if (hung.design().isPair() && !leaf.leaf().equals(hung.design().activeLeaf())) {
                boolean atStart = leaf.hingesAtStart();
                posts.get(atStart ? first : first + 1)
                        .carry(
                                line,
                                atStart ? Interval.of(start, start.plus(part)) : Interval.of(end.minus(part), end));
            }
        }
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
        findings.later(slope::findings, name(part));
        TopLine top = TopLine.of(style.top(), slope, style.rails().boardLength());
        findings.later(() -> top.findings(style.rails().topRailBelowTops()), name(part));
        reach(top, first);
        Optional<BoardLayout> boards = Optional.empty();
        Optional<Once<RailPieces>> pieces = Optional.empty();
        List<CourseRun> courses = List.of();
        if (style.boards().isHorizontal()) {
            courses = new CourseFitting(style, slope, boarded.get(), name(part), findings).fit();
            courses.forEach(each -> boarding.close(each.layout().courses(), name(part)));
        } else {
            boards = boarding.fit(boarded.get().length(), name(part))
                    .map(layout -> keptOff(layout, at, boarded.get().start()));
            boards.ifPresent(layout -> boarding.close(layout, name(part)));
            Once<RailPieces> laid = Once.of(() -> RailPieces.lay(
                    slope, style.rails(), railed.get(), style.postLumber().width()));
            findings.later(() -> railFindings(laid.get()), name(part));
            pieces = Optional.of(laid);
        }
        stretches.add(new StretchDraft(first, part.spacing(), top, pieces, boarded.get(), boards, courses));
    }

    /** Where posts end low enough to be notched round, inside boards are moved so that the fewest meet one. */
    private BoardLayout keptOff(BoardLayout layout, List<Length> at, Length start) {
        boolean areNotched = style.postAboveBoards().negated().compareTo(BoardAtPost.LEAST_HEAD) >= 0;
        return areNotched
                ? BoardAtPost.keptOff(
                        layout, bodies(at, start), style.boardLumber().thickness())
                : layout;
    }

    /** Lets the posts of a stretch reach over the tops of its boards. */
    private void reach(TopLine top, int first) {
        Length width = style.postLumber().width();
        PostTops tops = style.hasPostTopsToSlope()
                ? PostTops.cutToSlope(top, width, style.postAboveBoards())
                : PostTops.cutLevel(top, width, style.postAboveBoards());
        int post = first;
        for (PostHeight height : tops.heights()) {
            posts.get(post).reach(heights.get(post).plus(height.highSide()));
            posts.get(post).cutTo(height.grade());
            post++;
        }
    }

    /** Pieces longer than any that is sold are for the takeoff to tell, with all others of their kind. */
    private List<Finding> railFindings(RailPieces pieces) {
        List<Length> sold = style.railLumber().lengths();
        boolean ownLimit = style.rails().longestStick().compareTo(sold.get(sold.size() - 1)) < 0;
        return pieces.findings().stream()
                .filter(finding -> ownLimit || finding.severity() != Severity.BLOCKER)
                .toList();
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
            Slope grade = Slope.of(
                    heights.get(post + 1).minus(heights.get(post)),
                    stations.get(post + 1).minus(stations.get(post)));
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

    private List<BoardAtPost> boardsAtPosts(StretchDraft draft, List<Post> own) {
        if (draft.boards().isEmpty()) {
            return List.of();
        }
        int past = draft.firstPost() + draft.slope().bays().size() + 1;
        List<Interval> bodies = bodies(
                stations.subList(draft.firstPost(), past), draft.boarded().start());
        return List.copyOf(BoardAtPost.among(
                draft.boards().get(), own.subList(draft.firstPost(), past), bodies, board -> {
                    Length middle = Interval.of(board.left(), board.right())
                            .shiftedBy(draft.boarded().start())
                            .middle();
                    return draft.top().topIn(draft.slope().bayAt(middle), middle);
                }));
    }

    /** From where to where each post stands, from the start of the boarding. */
    private List<Interval> bodies(List<Length> posts, Length start) {
        return posts.stream()
                .map(at -> Interval.of(at.minus(half), at.plus(half)).shiftedBy(start.negated()))
                .toList();
    }

    private void hang(GatePlacing.Placed gate, int first) {
        Interval between = Interval.of(stations.get(first), stations.get(first + 1));
        GateHanging.HungGate hung = hanging.hang(gate, between);
        PostBook.Entry start = posts.get(first);
        PostBook.Entry end = posts.get(first + 1);
        start.reach(hung.top().topAt(gate.opening().start()).plus(style.postAboveBoards()));
        end.reach(hung.top().topAt(gate.opening().end()).plus(style.postAboveBoards()));
        carry(first, hung);
        for (HungLeaf leaf : hung.leaves()) {
            PostBook.Entry post = leaf.hingesAtStart() ? start : end;
            leaf.loads()
                    .ifPresent(loads -> post.hang(
                            HingePostLoad.of(loads, style.postLumber().width()).moment()));
            post.open(line, leaf.stations(), hung.top().longest());
        }
        gates.add(new GateDraft(first, hung));
    }

    private String name(PostRow.Part part) {
        return line.name + ", post " + posts.get(part.first()).number + " to post " + posts.get(part.last()).number;
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
                FittedBay slope = draft.slope().bays().get(bay);
                bays.add(new Bay(
                        number,
                        own.get(draft.firstPost() + bay),
                        own.get(draft.firstPost() + bay + 1),
                        slope,
                        () -> rails(slope),
                        kickBoards(slope)));
            }
            built.add(new Stretch(
                    bays,
                    draft.spacing(),
                    draft.top(),
                    draft.railPieces(),
                    draft.boarded(),
                    draft.boards(),
                    Once.of(() -> boardsAtPosts(draft, own)),
                    draft.courses(),
                    style));
        }
        List<GateBay> hung = gates.stream().map(draft -> finish(draft, own)).toList();
        return new Run(line, ground, own, built, hung, book.windOn(line));
    }

    private GateBay finish(GateDraft draft, List<Post> own) {
        GateBay gate = draft.gate().between(own.get(draft.firstPost()), own.get(draft.firstPost() + 1));
        Optional<Pressure> pressure = book.pressureOn(line, gate.opening());
        Once<List<HungLeaf>> blown = Once.of(() -> new GateWind(style, gate, pressure).blow());
        findings.later(() -> GateWind.findings(blown.get(), line.name, gate.name()));
        return gate.withLeaves(blown);
    }

    private List<KickBoard> kickBoards(FittedBay slope) {
        return style.slope().underBoards() == SlopeSpec.UnderBoards.KICK_BOARD
                ? KickBoard.under(slope, style.slope(), style.kickLumber().width())
                : List.of();
    }

    private List<BayRail> rails(FittedBay slope) {
        if (style.boards().isHorizontal() || slope.grade().abs().compareTo(SlopeFit.STEEPEST) > 0) {
            // The slope's own finding says so; there is no rail to set in it.
            return List.of();
        }
        List<RailMarks> from =
                RailHeights.of(style.rails(), slope.aboveStart(), slope.grade()).rails();
        List<RailMarks> to =
                RailHeights.of(style.rails(), slope.aboveEnd(), slope.grade()).rails();
        List<BayRail> rails = new ArrayList<>();
        for (int rail = 0; rail < from.size(); rail++) {
            rails.add(new BayRail(rail + 1, from.get(rail), to.get(rail)));
        }
        return List.copyOf(rails);
    }
}
