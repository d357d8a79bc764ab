package org.fencecore.packet;

import java.util.stream.Collectors;
import org.fencecore.takeoff.Piece;
import org.fencecore.takeoff.Stick;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.tape.TapeFormat;

/** Which pieces come out of which stick. */
final class CutTable {

    private CutTable() {}

    static TextTable of(Takeoff takeoff, TapeFormat tape) {
        TextTable table = TextTable.of("sticks", "lumber", "length", "left", "cut");
        for (Stick stick : takeoff.sticks()) {
            table.row(
                    stick.count(),
                    stick.lumber(),
                    tape.format(stick.length()),
                    tape.format(stick.left()),
                    stick.pieces().stream().map(piece -> cut(piece, tape)).collect(Collectors.joining("; ")));
        }
        return table;
    }

    private static String cut(Piece piece, TapeFormat tape) {
        return piece.label() + " " + tape.format(piece.length()) + ", " + piece.cuts();
    }
}
