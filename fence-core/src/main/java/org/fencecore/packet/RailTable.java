package org.fencecore.packet;

import java.util.List;
import java.util.stream.Collectors;
import org.fencecore.Bay;
import org.fencecore.FencePlan;
import org.fencecore.RailCut;
import org.fencecore.slope.RailMarks;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The rails of every bay: spacing, grade, length, end cut and the marks on both posts. */
final class RailTable {

    private RailTable() {}

    static TextTable of(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "bay",
                "posts",
                "spacing",
                "rise",
                "grade",
                "rails",
                "rail length",
                "end cut",
                "marks at first",
                "marks at second");
        for (Bay bay : plan.bays()) {
            List<RailCut> rails = bay.rails();
            table.row(
                    bay.number(),
                    bay.from().number() + "-" + bay.to().number(),
                    tape.format(bay.spacing()),
                    tape.format(bay.slope().rise()),
                    Written.percent(bay.slope().grade()),
                    rails.size(),
                    tape.format(rails.get(0).length()),
                    Written.saw(rails.get(0).endCut()),
                    marks(rails.stream().map(RailCut::from).toList(), tape),
                    marks(rails.stream().map(RailCut::to).toList(), tape));
        }
        return table;
    }

    private static String marks(List<RailMarks> marks, TapeFormat tape) {
        return marks.stream().map(mark -> tape.format(mark.top())).collect(Collectors.joining(" | "));
    }
}
