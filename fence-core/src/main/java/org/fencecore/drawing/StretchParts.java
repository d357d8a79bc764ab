package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.Stretch;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.geometry.ProfilePoint;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.KickBoard;
import org.fencecore.slope.RailMarks;
import org.fencecore.slope.RailPiece;
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

    /** Every piece of a rail. */
    List<Shape> rails() {
        List<Shape> shapes = new ArrayList<>();
        for (RailPiece piece : stretch.railPieces().pieces()) {
            bottomAtStart(piece).ifPresent(bottom -> {
                Length end = bottom.plus(piece.grade().riseOver(piece.run()));
                shapes.add(unrolled.leaning(Layer.RAILS, piece.reach(), bottom, end, depth(piece)));
            });
        }
        return shapes;
    }

    /** A plumb line across the rail where a piece is joined to the one before. */
    List<Shape> joints() {
        List<Shape> shapes = new ArrayList<>();
        for (RailPiece piece : stretch.railPieces().pieces()) {
            if (stretch.railPieces().jointsAt(piece.fromPost()) > 0) {
                Length at = piece.reach().start();
                bottomAtStart(piece)
                        .ifPresent(bottom -> shapes.add(new Line(
                                Layer.RAIL_JOINTS,
                                List.of(unrolled.spot(at, bottom), unrolled.spot(at, bottom.plus(depth(piece)))))));
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

    /** Every board; of an inside board that meets a post, the strips that are kept beside it. */
    List<Shape> boards() {
        List<Shape> shapes = new ArrayList<>();
        Set<BoardPlacement> atPosts = new HashSet<>();
        for (BoardAtPost met : stretch.boardsAtPosts()) {
            BoardPlacement board = met.board();
            atPosts.add(board);
            if (met.before().isPositive()) {
                shapes.add(board(board, board.left(), board.left().plus(met.before())));
            }
            if (met.after().isPositive()) {
                shapes.add(board(board, board.right().minus(met.after()), board.right()));
            }
        }
        stretch.boards().ifPresent(layout -> {
            for (BoardPlacement board : layout.boards()) {
                if (!atPosts.contains(board)) {
                    shapes.add(board(board, board.left(), board.right()));
                }
            }
        });
        return shapes;
    }

    /** A board or a strip of it; its ends are those of the whole board. */
    private Outline board(BoardPlacement board, Length left, Length right) {
        Length start = stretch.boarded().start();
        Interval whole = Interval.of(board.left(), board.right()).shiftedBy(start);
        Interval strip = Interval.of(left, right).shiftedBy(start);
        List<Spot> corners = new ArrayList<>();
        stretch.topLine().lowerEdge(whole, strip).forEach(corner -> corners.add(spot(corner)));
        List<ProfilePoint> upper = stretch.topLine().upperEdge(whole, strip);
        for (int corner = upper.size() - 1; corner >= 0; corner--) {
            corners.add(spot(upper.get(corner)));
        }
        return new Outline(Layer.of(board.face()), corners);
    }

    private Spot spot(ProfilePoint corner) {
        return unrolled.spot(corner.station(), corner.elevation());
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
