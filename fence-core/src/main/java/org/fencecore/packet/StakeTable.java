package org.fencecore.packet;

import java.util.Locale;
import org.fencecore.stakeout.Stake;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/** Every stake of every run, with its marks from both ends of the string; a corner post has one on both runs. */
final class StakeTable {

    private StakeTable() {}

    static TextTable of(StakeSheet sheet, TapeFormat tape) {
        TextTable table = TextTable.of(
                "run",
                "post",
                "kind",
                "from start",
                "from end",
                "from start on ground",
                "from end on ground",
                "off string",
                "ground",
                "string",
                "drop",
                "cut or fill");
        TapeFormat heights = tape.surveyed();
        for (Stake stake : sheet.stakes()) {
            table.row(
                    stake.run().name(),
                    stake.post().number(),
                    stake.post().kind().name().toLowerCase(Locale.ROOT),
                    tape.format(stake.fromStart()),
                    tape.format(stake.fromEnd()),
                    tape.format(stake.fromStartOnGround()),
                    tape.format(stake.fromEndOnGround()),
                    tape.format(stake.offset()),
                    heights.format(stake.ground()),
                    heights.format(stake.string()),
                    tape.format(stake.drop()),
                    cut(stake.cut(), tape));
        }
        return table;
    }

    private static String cut(Length cut, TapeFormat tape) {
        if (tape.read(cut).length().isZero()) {
            return "-";
        }
        return (cut.isPositive() ? "cut " : "fill ") + tape.format(cut.abs());
    }
}
