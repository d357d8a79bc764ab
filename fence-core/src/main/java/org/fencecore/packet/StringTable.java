package org.fencecore.packet;

import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.stakeout.ProvingDiagonal;
import org.fencecore.stakeout.StringCorner;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.stakeout.StringLine;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The strings with the ties of their end posts to the lot, and the corners with what proves and closes them. */
final class StringTable {

    private static final Angle SECOND = Angle.ofDms(0, 0, 1);
    private static final Length EIGHTH = Length.ofInches(0.125);

    private StringTable() {}

    static TextTable strings(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "run",
                "string",
                "bearing",
                "first post",
                "from corner",
                "first off side",
                "last post",
                "to corner",
                "last off side");
        for (Run run : plan.runs()) {
            Length side = plan.site().sideLength(run.side());
            Post first = run.posts().get(0);
            Post last = run.posts().get(run.posts().size() - 1);
            Segment along = beside(plan, run);
            table.row(
                    run.name(),
                    tape.format(run.string().length()),
                    run.string().bearing().roundedTo(SECOND),
                    first.number(),
                    tape.format(run.startAlongSide()),
                    tape.format(along.offsetOf(first.centre()).abs()),
                    last.number(),
                    tape.format(side.minus(run.startAlongSide()).minus(run.length())),
                    tape.format(along.offsetOf(last.centre()).abs()));
        }
        return table;
    }

    /** The side that a run follows, or that straight part of it where the side is curved. */
    private static Segment beside(FencePlan plan, Run run) {
        if (plan.site().line().isPresent()) {
            return plan.site().line().get().segments().get(run.side() - 1);
        }
        Polyline side = plan.site().lot().sides().get(run.side() - 1).line();
        Length middle = run.startAlongSide().plus(run.length().dividedBy(2));
        int part = 0;
        while (part + 2 < side.points().size() && side.stationOfPoint(part + 1).compareTo(middle) <= 0) {
            part++;
        }
        return side.segments().get(part);
    }

    static TextTable boards(StringLayout layout, TapeFormat tape) {
        TextTable table =
                TextTable.of("board", "where", "string", "along the string", "from outer stake", "on the lot");
        for (StringLine string : layout.strings()) {
            Stream.of(string.boardAtStart(), string.boardAtEnd())
                    .flatMap(Optional::stream)
                    .forEach(board -> table.row(
                            board.number(),
                            board.place(),
                            tape.format(string.lengthBetweenBoards()),
                            tape.format(board.station()),
                            board.fromOuterStake().map(tape::format).orElse("-"),
                            board.isOnLot() ? "yes" : "no"));
        }
        return table;
    }

    static TextTable corners(StringLayout layout, TapeFormat tape) {
        TextTable table = TextTable.of(
                "corner",
                "post",
                "angle",
                "on first string",
                "on second string",
                "diagonal must read",
                "1/8\" off is",
                "rails mitred",
                "boards stop",
                "boards lap");
        for (StringCorner corner : layout.corners()) {
            Angle angle = corner.corner().interiorAngle();
            table.row(
                    corner.arriving() + " and " + corner.leaving(),
                    corner.post().number(),
                    Written.saw(angle),
                    tape.format(corner.onArriving()),
                    tape.format(corner.onLeaving()),
                    tape.format(corner.diagonal()),
                    corner.meaningOf(EIGHTH).map(Written::degrees).orElse("-"),
                    Written.saw(angle.dividedBy(2).complement().abs()),
                    corner.arriving(),
                    corner.leaving());
        }
        return table;
    }

    static TextTable diagonals(StringLayout layout, TapeFormat tape) {
        TextTable table = TextTable.of("from", "to", "must read");
        for (ProvingDiagonal diagonal : layout.diagonals()) {
            table.row(diagonal.from(), diagonal.to(), tape.format(diagonal.length()));
        }
        return table;
    }
}
