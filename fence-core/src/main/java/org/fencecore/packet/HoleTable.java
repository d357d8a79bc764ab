package org.fencecore.packet;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.footing.HoleList;
import org.fencecore.footing.HoleShape;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The holes to dig by size, the most of one size first, with what each takes. */
final class HoleTable {

    private HoleTable() {}

    static TextTable of(FencePlan plan, Takeoff takeoff, TapeFormat tape) {
        List<Post> posts = plan.posts();
        TextTable table = TextTable.of("holes", "hole", "deep", "base", "bags each", "bags", "posts");
        for (HoleList.Group group : plan.holes().groups()) {
            int each = group.bagsEach(takeoff.spec().bag());
            table.row(
                    group.places().size(),
                    across(group.hole(), tape),
                    tape.format(group.depth()),
                    tape.format(group.base()),
                    each,
                    each * group.places().size(),
                    Written.numbers(group.places().stream()
                            .map(place -> posts.get(place - 1).number())
                            .toList()));
        }
        return table;
    }

    private static String across(HoleShape hole, TapeFormat tape) {
        if (!hole.width().equals(hole.bottomWidth())) {
            return hole.toString();
        }
        return tape.format(hole.width()) + (hole.isSquare() ? " square" : "");
    }
}
