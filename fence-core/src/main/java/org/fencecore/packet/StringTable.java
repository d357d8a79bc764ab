package org.fencecore.packet;

import org.fencecore.FencePlan;
import org.fencecore.Run;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The strings with the ties of their end posts to the lot, and the corners with what proves and closes them. */
final class StringTable {

    private static final Angle SECOND = Angle.ofDms(0, 0, 1);

    private StringTable() {}

    static TextTable strings(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "run", "string", "bearing", "first post", "from corner", "last post", "to corner", "off the side");
        Length half = plan.style().postLumber().width().dividedBy(2);
        for (Run run : plan.runs()) {
            Length side = plan.site().sideLength(run.side());
            table.row(
                    run.name(),
                    tape.format(run.string().length()),
                    run.string().bearing().roundedTo(SECOND),
                    run.posts().get(0).number(),
                    tape.format(run.startAlongSide()),
                    run.posts().get(run.posts().size() - 1).number(),
                    tape.format(side.minus(run.startAlongSide()).minus(run.length())),
                    tape.format(
                            plan.site().line().isPresent()
                                    ? half
                                    : plan.site().setback().plus(half)));
        }
        return table;
    }

    static TextTable corners(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "corner",
                "post",
                "angle",
                "on each string",
                "diagonal must read",
                "rails mitred",
                "boards stop",
                "boards lap");
        for (int i = 0; i < plan.runs().size(); i++) {
            CornerCheck.after(plan, i)
                    .ifPresent(check -> table.row(
                            check.arriving() + " and " + check.leaving(),
                            check.post().number(),
                            Written.saw(check.angle()),
                            tape.format(check.leg()),
                            tape.format(check.diagonal()),
                            Written.saw(check.mitre()),
                            check.arriving(),
                            check.leaving()));
        }
        return table;
    }
}
