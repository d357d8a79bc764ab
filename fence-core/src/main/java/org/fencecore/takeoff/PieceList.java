package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.CourseRun;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCut;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.geometry.Corner;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailPiece;
import org.fencecore.rail.RailPieces;
import org.fencecore.slope.KickBoard;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/** Goes through a plan and writes down every piece once: posts, rails, gates, boards. */
final class PieceList {

    static final int MOST_PIECES = 100_000;
    static final int MOST_BOARDS = 10_000_000;

    private static final Length CUT_ALIKE = Length.ofMillimetres(0.01);

    private static final Length CUT_LONG = Length.ofInches(1);

    private final FencePlan plan;
    private final FenceStyle style;
    private final List<Piece> pieces = new ArrayList<>();

    private PieceList(FencePlan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    static List<Piece> of(FencePlan plan) {
        requireSize(plan);
        PieceList list = new PieceList(plan);
        plan.posts().forEach(list::addPost);
        plan.runs().forEach(list::addRails);
        plan.bays().forEach(list::addKickBoards);
        plan.gates().stream().flatMap(gate -> gate.leaves().stream()).forEach(list::addFrame);
        for (Stretch stretch : plan.stretches()) {
            stretch.courses().forEach(part -> list.addNailers(stretch.toString(), part));
        }
        for (Stretch stretch : plan.stretches()) {
            stretch.cuts().ifPresent(cuts -> list.addBoards(stretch.toString(), cuts, stretch.boardsAtPosts()));
            stretch.courses().forEach(part -> list.addCourses(stretch.toString(), part));
        }
        for (GateBay gate : plan.gates()) {
            for (HungLeaf leaf : gate.leaves()) {
                leaf.cuts().ifPresent(cuts -> list.addBoards(leaf.name(), cuts, List.of()));
                leaf.courses().ifPresent(part -> list.addCourses(leaf.name(), part));
            }
        }
        return List.copyOf(list.pieces);
    }

    private static void requireSize(FencePlan plan) {
        long sticks = plan.posts().size();
        long boards = 0;
        for (Stretch stretch : plan.stretches()) {
            sticks += stretch.railPieces().map(rails -> rails.pieces().size()).orElse(0);
            sticks += stretch.bays().stream()
                    .mapToInt(bay -> bay.kickBoards().size())
                    .sum();
            boards += stretch.boardCount();
            sticks += stretch.courses().stream()
                    .mapToInt(part -> part.nailers().size())
                    .sum();
        }
        for (GateBay gate : plan.gates()) {
            for (HungLeaf leaf : gate.leaves()) {
                sticks += leaf.leaf().pieces().size()
                        + leaf.leaf().braces().size()
                        + leaf.blocks().size();
            }
            boards += gate.boardCount();
        }
        if (sticks > MOST_PIECES || boards > MOST_BOARDS) {
            throw new IllegalArgumentException(
                    "plan had " + sticks + " posts, rails, kick boards and parts of gates and " + boards
                            + " boards; a takeoff takes up to " + MOST_PIECES + " and " + MOST_BOARDS
                            + ", so plan the job in parts, some sides of the lot at a time");
        }
    }

    private void addPost(Post post) {
        pieces.add(new Piece(
                PieceKind.POST,
                post.toString(),
                1,
                style.postLumber(),
                post.footing().postLength(),
                style.postLumber().width(),
                EndCuts.top(post.topGrade())));
    }

    private void addRails(Run run) {
        Post first = run.posts().get(0);
        Post last = run.posts().get(run.posts().size() - 1);
        for (Stretch stretch : run.stretches()) {
            List<Post> posts = stretch.posts();
            for (RailPiece rail : stretch.railPieces().map(RailPieces::pieces).orElse(List.of())) {
                if (!rail.length().isPositive()) {
                    // Between posts that touch there is no rail.
                    continue;
                }
                Post from = posts.get(rail.fromPost());
                Post to = posts.get(rail.toPost());
                boolean onFace = !style.rails().isBetweenPosts();
                Optional<EndCuts.Mitre> start =
                        onFace && from.equals(first) ? mitre(first, run.startCorner()) : Optional.empty();
                Optional<EndCuts.Mitre> end =
                        onFace && to.equals(last) ? mitre(last, run.endCorner()) : Optional.empty();
                EndCuts ends = EndCuts.plumb(rail.endCut(), style.railLumber().width(), start, end);
                pieces.add(new Piece(
                        PieceKind.RAIL,
                        from + " to " + to + " rail " + (rail.rail() + 1),
                        1,
                        style.railLumber(),
                        rail.length(),
                        style.railLumber().width(),
                        rail.trim().isZero() ? ends : ends.leftLong(rail.trim())));
            }
        }
    }

    /** Between the ends of a bay they are cut plumb, like its rails. */
    private void addKickBoards(Bay bay) {
        for (KickBoard board : bay.kickBoards()) {
            EndCuts ends =
                    EndCuts.plumb(board.grade().angle().abs(), board.depth(), Optional.empty(), Optional.empty());
            boolean ripped = board.depth().compareTo(style.kickLumber().width()) < 0;
            pieces.add(new Piece(
                    PieceKind.KICK_BOARD,
                    bay + " " + board,
                    1,
                    style.kickLumber(),
                    board.length(),
                    board.depth(),
                    (ripped ? ends.and("ripped to " + Written.tape(board.depth())) : ends)
                            .and("scribed to the ground")));
        }
    }

    /** Rails of two runs meet at a corner post in a mitre, each cut to half of the corner. */
    private Optional<EndCuts.Mitre> mitre(Post post, Optional<Corner> corner) {
        boolean gateHangsThere = plan.gates().stream()
                .anyMatch(gate -> gate.from().equals(post) || gate.to().equals(post));
        return corner.filter(meeting -> !gateHangsThere)
                .map(meeting -> new EndCuts.Mitre(
                        Angle.RIGHT.minus(meeting.interiorAngle().dividedBy(2)).abs(), post.toString()));
    }

    private void addFrame(HungLeaf gate) {
        for (FramePiece piece : gate.leaf().pieces()) {
            PieceKind kind = piece.member().isStile() ? PieceKind.GATE_STILE : PieceKind.GATE_RAIL;
            addGatePiece(kind, gate.name() + " " + piece.member(), piece.length(), piece.width(), EndCuts.of(piece));
        }
        int number = 0;
        for (GateBrace brace : gate.leaf().braces()) {
            if (brace.kind() == BraceKind.CABLE) {
                continue;
            }
            number++;
            addGatePiece(
                    PieceKind.GATE_BRACE,
                    gate.name() + " brace " + number,
                    brace.length(),
                    brace.width(),
                    EndCuts.of(brace));
        }
        int block = 0;
        for (Length length : gate.blocks()) {
            block++;
            addGatePiece(
                    PieceKind.GATE_BLOCK,
                    gate.name() + " block " + block,
                    length,
                    style.gateLumber().width(),
                    EndCuts.SQUARE.and(
                            gate.leaf().rake().isZero()
                                    ? "behind a hinge, fitted to the brace"
                                    : "level behind a hinge, fitted to brace and raked rail"));
        }
    }

    private void addGatePiece(PieceKind kind, String label, Length length, Length width, EndCuts ends) {
        boolean ripped = width.compareTo(style.gateLumber().width()) < 0;
        EndCuts cuts = ripped ? ends.and("ripped to " + Written.tape(width)) : ends;
        pieces.add(new Piece(kind, label, 1, style.gateLumber(), length, width, cuts));
    }

    private void addNailers(String where, CourseRun part) {
        add(
                PieceKind.NAILER,
                where + " nailers",
                part.nailers().size(),
                style.railLumber(),
                style.rails().boardLength(),
                style.railLumber().width(),
                EndCuts.SQUARE);
    }

    /** Every second course is alike, and those that are ripped come out of full boards. */
    private void addCourses(String where, CourseRun part) {
        Map<CourseCut, Integer> alike = new LinkedHashMap<>();
        part.boards()
                .forEach(board -> alike.merge(
                        new CourseCut(board.length(), board.placement().width()), 1, Integer::sum));
        alike.forEach((cut, count) -> {
            EndCuts ends = EndCuts.plumb(part.endCut(), cut.width(), Optional.empty(), Optional.empty());
            addBoards(where, count, cut.length(), cut.width(), ends);
        });
    }

    private record CourseCut(Length length, Length width) {}

    /** Boards that stand straight up and are cut square are counted; others are gone through one by one. */
    private void addBoards(String where, BoardCuts cuts, List<BoardAtPost> atPosts) {
        if (cuts.areAllSquare()) {
            addSquareBoards(where, cuts.layout(), atPosts);
        } else {
            addCutBoards(where, cuts.cuts(), atPosts);
        }
    }

    /** Boards one by one, those cut alike counted together. */
    private void addCutBoards(String where, List<BoardCut> cuts, List<BoardAtPost> atPosts) {
        Map<BoardPlacement, BoardAtPost> met = new HashMap<>();
        atPosts.forEach(board -> met.put(board.board(), board));
        record Cut(PieceKind kind, Length length, Length width, String words) {}
        Map<Cut, Integer> alike = new LinkedHashMap<>();
        for (BoardCut cut : cuts) {
            @Nullable BoardAtPost atPost = met.get(cut.board());
            if (atPost != null && atPost.isLeftOut()) {
                continue;
            }
            boolean batten = style.hasBattens() && cut.board().face() == Face.COVER;
            String words = atPost == null ? cut.work() : cut.work() + ", " + atPostWords(atPost);
            // Those marked in place are cut a little long first; on one grade boards differ by a nanometre's rounding.
            Length length = cut.isMarkedInPlace()
                    ? cut.length().roundedTo(CUT_LONG, Rounding.UP)
                    : cut.length().roundedTo(CUT_ALIKE, Rounding.NEAREST);
            if (length.isZero()) {
                // The tops come down to the bottoms there, which the plan tells.
                continue;
            }
            alike.merge(
                    new Cut(
                            batten ? PieceKind.BATTEN : PieceKind.BOARD,
                            length,
                            cut.board().width(),
                            words),
                    1,
                    Integer::sum);
        }
        alike.forEach((cut, count) -> add(
                cut.kind(),
                where + (cut.kind() == PieceKind.BATTEN ? " battens" : " boards"),
                count,
                cut.kind() == PieceKind.BATTEN ? style.battenLumber() : style.boardLumber(),
                cut.length(),
                cut.width(),
                new EndCuts(cut.words(), Length.ZERO, 1)));
    }

    /** Boards ripped to fill a stretch stand outside and those at posts inside, so no board is both. */
    private void addSquareBoards(String where, BoardLayout layout, List<BoardAtPost> atPosts) {
        int notched = (int) atPosts.stream().filter(BoardAtPost::isNotched).count();
        int beside = (int) atPosts.stream().filter(board -> !board.isLeftOut()).count() - notched;
        Length full = style.boardLumber().width();
        Length length = style.rails().boardLength();
        int ripped = layout.ripped().size();
        int battens = style.hasBattens() ? layout.row(Face.COVER).count() : 0;
        addBoards(where, layout.count() - battens - ripped - atPosts.size(), length, full, EndCuts.SQUARE);
        if (ripped > 0) {
            addBoards(where, ripped, length, layout.ripped().get(0).width(), EndCuts.SQUARE);
        }
        addBoards(where, beside, length, full, EndCuts.SQUARE.and("ripped beside a post"));
        addBoards(where, notched, length, full, EndCuts.SQUARE.and("notched round a post"));
        add(
                PieceKind.BATTEN,
                where + " battens",
                battens,
                style.battenLumber(),
                length,
                style.battenLumber().width(),
                EndCuts.SQUARE);
    }

    private static String atPostWords(BoardAtPost board) {
        return board.isNotched() ? "notched round a post" : "ripped beside a post";
    }

    private void addBoards(String where, int count, Length length, Length width, EndCuts ends) {
        boolean ripped = width.compareTo(style.boardLumber().width()) < 0;
        EndCuts cuts = ripped ? ends.and("ripped to " + Written.tape(width)) : ends;
        add(PieceKind.BOARD, where + " boards", count, style.boardLumber(), length, width, cuts);
    }

    private void add(
            PieceKind kind, String label, int count, Lumber lumber, Length length, Length width, EndCuts ends) {
        if (count > 0) {
            pieces.add(new Piece(kind, label, count, lumber, length, width, ends));
        }
    }
}
