package org.fencecore.packet;

import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Spot;
import org.fencecore.geometry.Segment;
import org.fencecore.stakeout.BatterBoard;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.stakeout.StringLine;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** The strings out to their batter boards, put on a plan; the drawings alone know of no stakes. */
final class StringParts {

    private static final Length HALF_BOARD = Length.ofInches(18);
    private static final Length NEAR = Length.ofMillimetres(1.6);

    private StringParts() {}

    static Drawing on(Drawing plan, StringLayout layout) {
        Drawing.Builder drawing = plan.toBuilder();
        for (StringLine string : layout.strings()) {
            Segment line = string.line();
            string.boardAtStart().ifPresent(board -> {
                drawing.add(Line.of(Layer.STRINGS, Spot.of(board.crossing()), Spot.of(line.start())));
                board(drawing, line, board, Angle.STRAIGHT);
            });
            string.boardAtEnd().ifPresent(board -> {
                drawing.add(Line.of(Layer.STRINGS, Spot.of(line.end()), Spot.of(board.crossing())));
                board(drawing, line, board, Angle.ZERO);
            });
        }
        boolean any = layout.strings().stream()
                .flatMap(string -> Stream.of(string.boardAtStart(), string.boardAtEnd()))
                .anyMatch(Optional::isPresent);
        if (any) {
            drawing.key(Layer.BATTER_BOARDS, "batter board with its number");
        }
        return drawing.build();
    }

    /** A board square to its string, numbered beyond it. */
    private static void board(Drawing.Builder drawing, Segment line, BatterBoard board, Angle turned) {
        Length station = line.stationOf(board.crossing());
        drawing.add(Line.of(
                Layer.BATTER_BOARDS,
                Spot.of(line.pointAt(station, HALF_BOARD.negated())),
                Spot.of(line.pointAt(station, HALF_BOARD))));
        Angle along = Angle.RIGHT.minus(line.bearing().azimuth());
        drawing.add(Label.beside(Spot.of(board.crossing()), along.plus(turned), NEAR, "board " + board.number()));
    }
}
