package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.geometry.Corner;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.slope.BayTop;
import org.fencecore.slope.KickBoard;
import org.fencecore.slope.RailPiece;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Written;

/** Goes through a plan and writes down every piece once: posts, rails, gates, boards. */
final class PieceList {

    static final int MOST_PIECES = 100_000;
    static final int MOST_BOARDS = 10_000_000;

    private static final Length CUT_ALIKE = Length.ofMillimetres(0.01);

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
            stretch.boards().ifPresent(layout -> list.addBoards(stretch.toString(), layout, stretch.boardsAtPosts()));
        }
        for (GateBay gate : plan.gates()) {
            for (HungLeaf leaf : gate.leaves()) {
                if (gate.top().shape().isStraight()) {
                    leaf.boards().ifPresent(layout -> list.addBoards(leaf.name(), layout, List.of()));
                } else {
                    leaf.boards().ifPresent(layout -> list.addShaped(leaf, layout, gate.top()));
                }
            }
        }
        return List.copyOf(list.pieces);
    }

    private static void requireSize(FencePlan plan) {
        long sticks = plan.posts().size();
        long boards = 0;
        for (Stretch stretch : plan.stretches()) {
            sticks += stretch.railPieces().pieces().size();
            sticks += stretch.bays().stream()
                    .mapToInt(bay -> bay.kickBoards().size())
                    .sum();
            boards += stretch.boardCount();
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
            for (RailPiece rail : stretch.railPieces().pieces()) {
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

    /** Boards ripped to fill a stretch stand outside and those at posts inside, so no board is both. */
    private void addBoards(String where, BoardLayout layout, List<BoardAtPost> atPosts) {
        int beside = (int) atPosts.stream().filter(board -> !board.isLeftOut()).count();
        Length full = style.boardLumber().width();
        int ripped = layout.ripped().size();
        int battens = style.hasBattens() ? layout.row(Face.COVER).count() : 0;
        addBoards(where, layout.count() - battens - ripped - atPosts.size(), full, EndCuts.SQUARE);
        if (ripped > 0) {
            Length width = layout.ripped().get(0).width();
            addBoards(where, ripped, width, EndCuts.SQUARE.and("ripped to " + Written.tape(width)));
        }
        addBoards(where, beside, full, EndCuts.SQUARE.and("ripped beside a post"));
        add(
                PieceKind.BATTEN,
                where + " battens",
                battens,
                style.battenLumber(),
                style.battenLumber().width(),
                EndCuts.SQUARE);
    }

    /** Boards of a leaf whose tops run along a line of their own, those of one length together. */
    private void addShaped(HungLeaf leaf, BoardLayout layout, BayTop top) {
        record Cut(boolean batten, Length length, Length width) {}
        Map<Cut, Integer> alike = new LinkedHashMap<>();
        for (BoardPlacement board : layout.boards()) {
            boolean batten = style.hasBattens() && board.face() == Face.COVER;
            // The two halves of an arch differ by the rounding of a nanometre, and are cut alike.
            Length length = leaf.boardLength(board).roundedTo(CUT_ALIKE, Rounding.NEAREST);
            if (length.isPositive()) {
                alike.merge(new Cut(batten, length, board.width()), 1, Integer::sum);
            }
        }
        alike.forEach((cut, count) -> {
            Lumber lumber = cut.batten() ? style.battenLumber() : style.boardLumber();
            EndCuts ends = EndCuts.SQUARE.and("then the top to the line of the tops, " + top.shape());
            boolean ripped = cut.width().compareTo(lumber.width()) < 0;
            pieces.add(new Piece(
                    cut.batten() ? PieceKind.BATTEN : PieceKind.BOARD,
                    leaf.name() + (cut.batten() ? " battens" : " boards"),
                    count,
                    lumber,
                    cut.length(),
                    cut.width(),
                    ripped ? ends.and("ripped to " + Written.tape(cut.width())) : ends));
        });
    }

    private void addBoards(String where, int count, Length width, EndCuts ends) {
        add(PieceKind.BOARD, where + " boards", count, style.boardLumber(), width, ends);
    }

    private void add(PieceKind kind, String label, int count, Lumber lumber, Length width, EndCuts ends) {
        if (count > 0) {
            pieces.add(new Piece(kind, label, count, lumber, style.rails().boardLength(), width, ends));
        }
    }
}
