package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.Stretch;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.RailMarks;
import org.fencecore.slope.RailPiece;
import org.fencecore.units.Length;

/** The rails and boards of one stretch in elevation. */
final class StretchParts {

    private final Stretch stretch;
    private final Unrolled unrolled;
    private final Profile ground;
    private final Length boardLength;

    StretchParts(Stretch stretch, Unrolled unrolled, Profile ground, Length boardLength) {
        this.stretch = stretch;
        this.unrolled = unrolled;
        this.ground = ground;
        this.boardLength = boardLength;
    }

    /** Every piece of a rail; where two of them meet on a post their edges show the joint. */
    List<Shape> rails() {
        List<Shape> shapes = new ArrayList<>();
        for (RailPiece piece : stretch.railPieces().pieces()) {
            Bay first = stretch.bays().get(piece.fromPost());
            if (!first.rails().isEmpty()) {
                shapes.add(rail(
                        piece, first.slope(), first.rails().get(piece.rail()).from()));
            }
        }
        return shapes;
    }

    private Shape rail(RailPiece piece, FittedBay first, RailMarks marks) {
        Length bottom = ground.elevationAt(first.start()).plus(marks.bottom());
        Interval reach = piece.reach();
        return unrolled.leaning(
                Layer.RAILS,
                reach,
                bottom.plus(piece.grade().riseOver(reach.start().minus(first.start()))),
                bottom.plus(piece.grade().riseOver(reach.end().minus(first.start()))),
                marks.top().minus(marks.bottom()));
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

    /** A board or a strip of it; its bottom is that of the whole board. */
    private Outline board(BoardPlacement board, Length left, Length right) {
        Length start = stretch.boarded().start();
        Length bottom = stretch.slope()
                .bottomAt(Interval.of(board.left(), board.right())
                        .shiftedBy(start)
                        .middle());
        Layer layer = Layer.of(board.face());
        return unrolled.upright(layer, Interval.of(left, right).shiftedBy(start), bottom, bottom.plus(boardLength));
    }

    /** The boards of each bay as one piece. */
    List<Shape> boardedBays() {
        List<Shape> shapes = new ArrayList<>();
        for (Bay bay : stretch.bays()) {
            Interval stations = Interval.of(bay.slope().start(), bay.slope().end());
            shapes.add(unrolled.leaning(
                    Layer.OUTSIDE_BOARDS,
                    stations,
                    bay.slope().bottomAtStart(),
                    bay.slope().bottomAtEnd(),
                    boardLength));
        }
        return shapes;
    }
}
