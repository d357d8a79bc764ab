package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.Side;
import org.fencecore.layout.BoardLayout;
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

    private static final int MOST_BAYS = 50_000;
    private static final int MOST_BOARDS = 5_000_000;

    private final FenceStyle style;
    private final FenceLine line;
    private final Profile ground;
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
            int firstPost, SlopeFit slope, Interval boarded, Interval railed, Optional<BoardLayout> boards) {}

    /** A gate and which post of this run it begins at. */
    private record GateDraft(
            int firstPost,
            GatePlacing.Placed placed,
            GateDesign design,
            Optional<BoardLayout> boards,
            Length boardBottom) {}

    RunDraft(
            FenceStyle style,
            FenceLine line,
            Profile ground,
            List<GatePlacing.Placed> placed,
            boolean meetsAtStart,
            boolean meetsAtEnd,
            PostBook book,
            List<Finding> findings) {
        this.style = style;
        this.line = line;
        this.ground = ground;
        this.railsPast = line.railsPast(meetsAtStart, meetsAtEnd);
        this.boardsPast = line.boardsPast(meetsAtStart, meetsAtEnd);
        this.book = book;
        this.findings = findings;
        this.half = style.postLumber().width().dividedBy(2);
        layOut(placed);
    }

    /** Goes along the run from fixed post to fixed post; what lies between two is a stretch or an opening. */
    private void layOut(List<GatePlacing.Placed> placed) {
        Length end = line.postLine.length();
        enterCorner(line.startCorner, line.cornerAtStart, Length.ZERO);
        for (GatePlacing.Placed gate : placed) {
            fenceTo(gate.opening().start().minus(half), PostKind.GATE);
            int first = posts.size() - 1;
            Length beyond = gate.opening().end().plus(half);
            if (beyond.equals(end)) {
                enterCorner(line.endCorner, line.cornerAtEnd, end);
            } else {
                enter(PostKind.GATE, beyond);
            }
            hang(gate, first);
        }
        fenceTo(end, line.cornerAtEnd ? PostKind.CORNER : PostKind.END);
    }

    private void enter(PostKind kind, Length station) {
        posts.add(book.add(kind, line.postLine.pointAt(station), ground.elevationAt(station)));
        stations.add(station);
    }

    private void enterCorner(int lotCorner, boolean shared, Length station) {
        PostKind kind = shared ? PostKind.CORNER : PostKind.END;
        posts.add(book.atCorner(lotCorner, kind, line.postLine.pointAt(station), ground.elevationAt(station)));
        stations.add(station);
    }

    /** Enters the posts of a stretch from the last post to a fixed one there; nothing when that is the last post. */
    private void fenceTo(Length station, PostKind kind) {
        int first = posts.size() - 1;
        Length here = stations.get(first);
        if (station.equals(here)) {
            return;
        }
        Length length = station.minus(here);
        if (length.wholePieces(style.maximumPostSpacing()) >= MOST_BAYS) {
            findings.add(Finding.blocker(
                            "too-many-posts",
                            "side " + line.side,
                            "a stretch of " + Written.feet(length) + " would take over " + MOST_BAYS + " bays")
                    .withRemedy("plan it in parts, or set the posts further apart"));
            enterFixed(kind, station);
            for (PostBook.Entry post : List.of(posts.get(first), posts.get(first + 1))) {
                reachUsual(post);
            }
            return;
        }
        PostSpacing spacing = PostSpacing.equalBays(length, style.maximumPostSpacing(), style.minimumPostSpacing());
        for (Length along : spacing.stations().subList(1, spacing.bayCount())) {
            enter(PostKind.LINE, here.plus(along));
        }
        enterFixed(kind, station);
        tell(spacing.findings(), stretchName(first));
        fence(first);
    }

    private void enterFixed(PostKind kind, Length station) {
        if (kind == PostKind.GATE) {
            enter(kind, station);
        } else {
            enterCorner(line.endCorner, line.cornerAtEnd, station);
        }
    }

    private void reachUsual(PostBook.Entry post) {
        post.reach(
                post.ground().plus(style.slope().clearance()).plus(style.rails().boardLength()));
    }

    private void fence(int first) {
        List<Length> at = List.copyOf(stations.subList(first, stations.size()));
        for (int bay = 0; bay < at.size() - 1; bay++) {
            Length spacing = at.get(bay + 1).minus(at.get(bay));
            posts.get(first + bay).carryHalf(spacing);
            posts.get(first + bay + 1).carryHalf(spacing);
        }
        if (isTooSteep(first)) {
            posts.subList(first, posts.size()).forEach(this::reachUsual);
            return;
        }
        SlopeFit slope = SlopeFit.of(ground, at, style.slope());
        tell(slope.findings(), stretchName(first));
        for (int post = 0; post < at.size(); post++) {
            posts.get(first + post)
                    .reach(slope.bottomAt(at.get(post))
                            .plus(style.rails().boardLength())
                            .plus(style.postAboveBoards()));
        }
        boolean fromEnd = first == 0;
        boolean toEnd = at.get(at.size() - 1).equals(line.postLine.length());
        Interval railed = Interval.of(
                at.get(0).minus(fromEnd ? railsPast.start() : half),
                at.get(at.size() - 1).plus(toEnd ? railsPast.end() : half));
        Interval boarded = Interval.of(
                at.get(0).minus(fromEnd ? boardsPast.start() : half),
                at.get(at.size() - 1).plus(toEnd ? boardsPast.end() : half));
        Optional<BoardLayout> boards = fit(boarded.length(), stretchName(first));
        stretches.add(new StretchDraft(first, slope, boarded, railed, boards));
    }

    private boolean isTooSteep(int first) {
        boolean tooSteep = false;
        for (int post = first; post < posts.size() - 1; post++) {
            Slope grade = ground.slopeBetween(stations.get(post), stations.get(post + 1));
            if (grade.abs().compareTo(SlopeFit.STEEPEST) > 0) {
                tooSteep = true;
                findings.add(Finding.blocker(
                                "ground-too-steep",
                                "side " + line.side + ", post " + posts.get(post).number + " to post "
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

    private List<BoardAtPost> boardsAtPosts(StretchDraft draft, List<Post> own) {
        if (draft.boards().isEmpty()) {
            return List.of();
        }
        int past = draft.firstPost() + draft.slope().bays().size() + 1;
        List<Interval> bodies = stations.subList(draft.firstPost(), past).stream()
                .map(at -> Interval.of(at.minus(half), at.plus(half))
                        .shiftedBy(draft.boarded().start().negated()))
                .toList();
        return BoardAtPost.among(draft.boards().get(), own.subList(draft.firstPost(), past), bodies);
    }

    private void hang(GatePlacing.Placed gate, int first) {
        Interval opening = gate.opening();
        String place = "side " + line.side + ", " + gate.location().name();
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
            post.carryHalf(stations.get(first + 1).minus(stations.get(first)));
        }
        gates.add(new GateDraft(first, gate, design, fit(design.leafWidth(), place), bottom));
    }

    private String stretchName(int first) {
        return "side " + line.side + ", post " + posts.get(first).number + " to post "
                + posts.get(posts.size() - 1).number;
    }

    private void tell(List<Finding> news, String place) {
        news.forEach(finding -> findings.add(finding.within(place)));
    }

    /** Puts the run together from the finished posts; bays are numbered on from those of the runs before. */
    Run build(List<Post> finished, int baysBefore) {
        List<Post> own =
                posts.stream().map(post -> finished.get(post.number - 1)).toList();
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
            built.add(new Stretch(bays, draft.slope(), draft.boarded(), draft.boards(), boardsAtPosts(draft, own)));
        }
        List<GateBay> hung = gates.stream().map(draft -> hung(draft, own)).toList();
        return new Run(
                line.side, line.string, line.postLine, line.outside, ground, line.startAlongSide, own, built, hung);
    }

    private GateBay hung(GateDraft draft, List<Post> own) {
        Post from = own.get(draft.firstPost());
        Post to = own.get(draft.firstPost() + 1);
        // Someone outside, facing the fence, has the run's beginning on the left when the outside is on its right.
        boolean beginsLeft = line.outside == Side.RIGHT;
        boolean hingesLeft = draft.design().hingeSide() == HingeSide.LEFT;
        return new GateBay(
                draft.placed().location(),
                from,
                to,
                beginsLeft == hingesLeft ? from : to,
                draft.placed().opening(),
                draft.design(),
                draft.boards(),
                draft.boardBottom());
    }

    /** Rails meet on the middle of line posts and run past the fixed posts at both ends of the stretch. */
    private List<RailCut> rails(StretchDraft draft, int bay) {
        FittedBay slope = draft.slope().bays().get(bay);
        boolean lastBay = bay == draft.slope().bays().size() - 1;
        Length start = bay == 0 ? draft.railed().start() : slope.start();
        Length end = lastBay ? draft.railed().end() : slope.end();
        Length length = slope.grade().lengthOver(end.minus(start));
        if (slope.grade().abs().compareTo(SlopeFit.STEEPEST) > 0) {
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
