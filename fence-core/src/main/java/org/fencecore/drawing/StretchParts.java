package org.fencecore.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fencecore.Bay;
import org.fencecore.BoardAtPost;
import org.fencecore.CourseBoard;
import org.fencecore.CourseRun;
import org.fencecore.RailCut;
import org.fencecore.Stretch;
import org.fencecore.boarding.BoardCut;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.slope.FittedBay;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;

/** The rails and boards of one stretch in elevation. */
final class StretchParts {

    private final Stretch stretch;
    private final Unrolled unrolled;
    private final Profile ground;
    private final Length boardLength;
    private final Length nailerWidth;

    StretchParts(Stretch stretch, Unrolled unrolled, Profile ground, Length boardLength, Length nailerWidth) {
        this.stretch = stretch;
        this.unrolled = unrolled;
        this.ground = ground;
        this.boardLength = boardLength;
        this.nailerWidth = nailerWidth;
    }

    List<Shape> rails() {
        List<Shape> shapes = new ArrayList<>();
        for (CourseRun part : stretch.courses()) {
            Length half = nailerWidth.dividedBy(2);
            for (Length nailer : part.nailers()) {
                Length bottom = part.bottomAt(nailer);
                shapes.add(unrolled.upright(
                        Layer.RAILS,
                        Interval.of(nailer.minus(half), nailer.plus(half)),
                        bottom,
                        bottom.plus(boardLength)));
            }
        }
        List<Bay> bays = stretch.bays();
        for (int bay = 0; bay < bays.size(); bay++) {
            boolean last = bay == bays.size() - 1;
            Length end = last ? stretch.boarded().end() : bays.get(bay).slope().end();
            for (RailCut rail : bays.get(bay).rails()) {
                shapes.add(rail(bays.get(bay), rail, end));
            }
        }
        return shapes;
    }

    /** A rail reaches back from its end by its level length: past the first post of the stretch, if it is the first. */
    private Shape rail(Bay bay, RailCut rail, Length end) {
        FittedBay slope = bay.slope();
        Length start = end.minus(rail.length().times(Ratio.of(rail.endCut().cos())));
        Length bottom = ground.elevationAt(slope.start()).plus(rail.from().bottom());
        Length depth = rail.from().top().minus(rail.from().bottom());
        return unrolled.leaning(
                Layer.RAILS,
                Interval.of(start, end),
                bottom.plus(slope.grade().riseOver(start.minus(slope.start()))),
                bottom.plus(slope.grade().riseOver(end.minus(slope.start()))),
                depth);
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
            if (met.isNotched()) {
                shapes.add(head(met));
            }
        }
        stretch.courses().forEach(part -> part.boards().forEach(board -> shapes.add(course(part, board))));
        stretch.cuts().ifPresent(cuts -> {
            for (BoardCut cut : cuts.cuts()) {
                if (!atPosts.contains(cut.board())) {
                    shapes.add(board(cut));
                }
            }
        });
        return shapes;
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

    private Shape board(BoardCut cut) {
        Length start = stretch.boarded().start();
        List<Spot> corners = cut.outline().stream()
                .map(corner -> unrolled.spot(corner.station().plus(start), corner.elevation()))
                .toList();
        return new Outline(Layer.of(cut.board().face()), corners);
    }

    /** What goes on over a post between the strips beside it. */
    private Shape head(BoardAtPost met) {
        BoardPlacement board = met.board();
        Interval over = Interval.of(
                        board.left().plus(met.before()), board.right().minus(met.after()))
                .shiftedBy(stretch.boarded().start());
        Length bottom = met.post().top();
        return unrolled.upright(Layer.of(board.face()), over, bottom, bottom.plus(met.head()));
    }

    /** A strip of a board; its bottom is that of the whole board. */
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
