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
import org.fencecore.Post;
import org.fencecore.RailCut;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCut;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.CourseLayout;
import org.fencecore.layout.Face;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

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
        plan.gates().forEach(list::addFrame);
        for (Stretch stretch : plan.stretches()) {
            stretch.courses().forEach(part -> list.addNailers(stretch.toString(), part));
        }
        for (Stretch stretch : plan.stretches()) {
            stretch.boards().ifPresent(layout -> list.addBoards(stretch, layout));
            stretch.courses().forEach(part -> list.addCourses(stretch.toString(), part));
        }
        for (GateBay gate : plan.gates()) {
            gate.boards().ifPresent(layout -> list.addLeafBoards(gate.name(), layout));
            gate.courses().ifPresent(layout -> list.addCourses(gate.name(), layout, Slope.LEVEL));
        }
        return List.copyOf(list.pieces);
    }

    private static void requireSize(FencePlan plan) {
        long sticks = plan.posts().size();
        long boards = 0;
        for (Stretch stretch : plan.stretches()) {
            sticks += (long) stretch.bays().size() * plan.style().rails().rails();
            boards += stretch.boardCount();
            sticks += stretch.courses().stream()
                    .mapToInt(part -> part.nailers().size())
                    .sum();
        }
        for (GateBay gate : plan.gates()) {
            sticks += gate.leaf().pieces().size() + gate.leaf().braces().size();
            boards += gate.boardCount();
        }
        if (sticks > MOST_PIECES || boards > MOST_BOARDS) {
            throw new IllegalArgumentException("plan had " + sticks + " posts, rails and parts of gates and " + boards
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
                EndCuts.SQUARE));
    }

    private void addRails(Run run) {
        Post first = run.posts().get(0);
        Post last = run.posts().get(run.posts().size() - 1);
        for (Stretch stretch : run.stretches()) {
            for (Bay bay : stretch.bays()) {
                Optional<EndCuts.Mitre> start =
                        bay.from().number() == first.number() ? mitre(first, run.startCorner()) : Optional.empty();
                Optional<EndCuts.Mitre> end =
                        bay.to().number() == last.number() ? mitre(last, run.endCorner()) : Optional.empty();
                for (RailCut rail : bay.rails()) {
                    pieces.add(new Piece(
                            PieceKind.RAIL,
                            bay + " rail " + rail.number(),
                            1,
                            style.railLumber(),
                            rail.length(),
                            style.railLumber().width(),
                            EndCuts.plumb(rail.endCut(), style.railLumber().width(), start, end)));
                }
            }
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

    private void addFrame(GateBay gate) {
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

    private void addCourses(String where, CourseRun part) {
        addCourses(where, part.layout(), part.grade());
    }

    /** Every second course is alike, and those that are ripped come out of full boards. */
    private void addCourses(String where, CourseLayout layout, Slope grade) {
        Map<CourseCut, Integer> alike = new LinkedHashMap<>();
        List<BoardPlacement> courses = layout.courses().boards();
        for (int course = 0; course < courses.size(); course++) {
            for (Interval piece : layout.pieces(course)) {
                CourseCut cut = new CourseCut(
                        grade.lengthOver(piece.length()), courses.get(course).width());
                alike.merge(cut, 1, Integer::sum);
            }
        }
        alike.forEach((cut, count) -> {
            EndCuts ends = EndCuts.plumb(grade.angle().abs(), cut.width(), Optional.empty(), Optional.empty());
            addBoards(where, count, cut.length(), cut.width(), ends);
        });
    }

    private record CourseCut(Length length, Length width) {}

    private void addBoards(Stretch stretch, BoardLayout layout) {
        if (isPlain(style.boardEnds())) {
            addSquareBoards(stretch.toString(), layout, stretch.boardsAtPosts());
        } else {
            addCutBoards(stretch.toString(), stretch.cuts().orElseThrow().cuts(), stretch.boardsAtPosts());
        }
    }

    private static boolean isPlain(BoardEnds ends) {
        return ends.equals(BoardEnds.square());
    }

    /** A leaf hangs level, so its boards are cut square, with dog-ears as on the fence. */
    private void addLeafBoards(String where, BoardLayout layout) {
        if (style.boardEnds().dogEar().isZero()) {
            addSquareBoards(where, layout, List.of());
        } else {
            addCutBoards(where, style.levelCuts(layout).cuts(), List.of());
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
            // Boards on one grade differ by the rounding of a nanometre, and are cut alike.
            Length length = cut.length().roundedTo(CUT_ALIKE, Rounding.NEAREST);
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
