package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.CourseBoard;
import org.fencecore.CourseRun;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCut;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailMarks;
import org.fencecore.rail.RailPiece;
import org.fencecore.rail.RailPieces;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.KickBoard;
import org.fencecore.units.Length;

/** The rails and boards of one stretch in elevation. */
final class StretchParts {

    private final Stretch stretch;
    private final Unrolled unrolled;
    private final Profile ground;

    StretchParts(Stretch stretch, Unrolled unrolled, Profile ground) {
        this.stretch = stretch;
        this.unrolled = unrolled;
        this.ground = ground;
    }

    /** The layer of the boards of a row. */
    static Layer layer(Face face) {
        return switch (face) {
            case OUTSIDE -> Layer.OUTSIDE_BOARDS;
            case INSIDE -> Layer.INSIDE_BOARDS;
            case COVER -> Layer.COVER_BOARDS;
        };
    }

    /** Every piece of a rail. */
    List<Shape> rails() {
        List<Shape> shapes = new ArrayList<>();
        for (RailPiece piece : pieces()) {
            bottomAtStart(piece).ifPresent(bottom -> {
                Length end = bottom.plus(piece.grade().riseOver(piece.run()));
                shapes.add(unrolled.leaning(Layer.RAILS, piece.reach(), bottom, end, depth(piece)));
            });
        }
        return shapes;
    }

    private List<RailPiece> pieces() {
        return stretch.railPieces().map(RailPieces::pieces).orElse(List.of());
    }

    /** A plumb line across the rail where a piece is joined to the one before. */
    List<Shape> joints() {
        List<Shape> shapes = new ArrayList<>();
        for (RailPiece piece : pieces()) {
            if (stretch.railPieces().orElseThrow().jointsAt(piece.fromPost()) > 0) {
                Length at = piece.reach().start();
                bottomAtStart(piece)
                        .ifPresent(bottom -> shapes.add(new Line(
                                Layer.RAIL_JOINTS,
                                List.of(unrolled.spot(at, bottom), unrolled.spot(at, bottom.plus(depth(piece)))))));
            }
        }
        return shapes;
    }

    /** The uprights behind horizontal boards. */
    List<Shape> nailers(Length width, Length length) {
        List<Shape> shapes = new ArrayList<>();
        Length half = width.dividedBy(2);
        for (CourseRun part : stretch.courses()) {
            for (Length nailer : part.nailers()) {
                Length bottom = part.bottomAt(nailer);
                shapes.add(unrolled.upright(
                        Layer.RAILS, Interval.of(nailer.minus(half), nailer.plus(half)), bottom, bottom.plus(length)));
            }
        }
        return shapes;
    }

    /** Empty where the bay is too steep for rails. */
    private Optional<Length> bottomAtStart(RailPiece piece) {
        Bay first = stretch.bays().get(piece.fromPost());
        if (first.rails().isEmpty()) {
            return Optional.empty();
        }
        Length station = first.slope().start();
        return Optional.of(ground.elevationAt(station)
                .plus(first.rails().get(piece.rail()).from().bottom())
                .plus(piece.grade().riseOver(piece.reach().start().minus(station))));
    }

    private Length depth(RailPiece piece) {
        RailMarks marks =
                stretch.bays().get(piece.fromPost()).rails().get(piece.rail()).from();
        return marks.top().minus(marks.bottom());
    }

    /** Every board; of an inside board that meets a post, what is kept beside it and over it. */
    List<Shape> boards() {
        List<Shape> shapes = new ArrayList<>();
        Map<BoardPlacement, BoardAtPost> atPosts = new HashMap<>();
        stretch.boardsAtPosts().forEach(met -> atPosts.put(met.board(), met));
        stretch.cuts()
                .ifPresent(cuts -> cuts.cuts().forEach(cut -> {
                    BoardAtPost met = atPosts.get(cut.board());
                    if (met == null) {
                        shapes.add(board(
                                cut, Interval.of(cut.board().left(), cut.board().right())));
                    } else {
                        shapes.addAll(atPost(cut, met));
                    }
                }));
        stretch.courses().forEach(part -> part.boards().forEach(board -> shapes.add(course(part, board))));
        return shapes;
    }

    private List<Shape> atPost(BoardCut cut, BoardAtPost met) {
        List<Shape> shapes = new ArrayList<>();
        BoardPlacement board = met.board();
        Length first = board.left().plus(met.before());
        Length last = board.right().minus(met.after());
        if (met.before().isPositive()) {
            shapes.add(board(cut, Interval.of(board.left(), first)));
        }
        if (met.after().isPositive()) {
            shapes.add(board(cut, Interval.of(last, board.right())));
        }
        if (met.isNotched()) {
            Length bottom = met.post().top();
            Interval over = Interval.of(first, last).shiftedBy(stretch.boarded().start());
            shapes.add(unrolled.upright(layer(board.face()), over, bottom, bottom.plus(met.head())));
        }
        return shapes;
    }

    private Shape board(BoardCut cut, Interval strip) {
        Length start = stretch.boarded().start();
        return new Outline(
                layer(cut.board().face()),
                cut.outline(strip).stream()
                        .map(corner -> unrolled.spot(corner.station().plus(start), corner.elevation()))
                        .toList());
    }

    private Shape course(CourseRun part, CourseBoard board) {
        Length mark = part.mark(board.placement());
        return unrolled.leaning(
                Layer.OUTSIDE_BOARDS,
                board.stations(),
                part.bottomAt(board.stations().start()).plus(mark),
                part.bottomAt(board.stations().end()).plus(mark),
                part.plumbWidth(board.placement()));
    }

    /** Kick boards as they are before they are scribed to the ground. */
    List<Shape> kickBoards() {
        List<Shape> shapes = new ArrayList<>();
        for (Bay bay : stretch.bays()) {
            for (KickBoard board : bay.kickBoards()) {
                Length start = board.topAtStart().minus(board.depth());
                shapes.add(unrolled.leaning(
                        Layer.KICK_BOARDS,
                        board.reach(),
                        start,
                        start.plus(board.grade().riseOver(board.reach().length())),
                        board.depth()));
            }
        }
        return shapes;
    }

    /** The boards of each bay as one piece. */
    List<Shape> boardedBays() {
        List<Shape> shapes = new ArrayList<>();
        for (Bay bay : stretch.bays()) {
            FittedBay slope = bay.slope();
            Interval stations = Interval.of(slope.start(), slope.end());
            Length depth = stretch.topLine().topIn(slope, slope.start()).minus(slope.bottomAtStart());
            shapes.add(unrolled.leaning(
                    Layer.OUTSIDE_BOARDS, stations, slope.bottomAtStart(), slope.bottomAtEnd(), depth));
        }
        return shapes;
    }
}
