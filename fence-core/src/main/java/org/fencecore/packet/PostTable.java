package org.fencecore.packet;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The stake and hole list: every post once, in the run it is first met in. */
final class PostTable {

    private PostTable() {}

    static TextTable of(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "post",
                "kind",
                "run",
                "ground",
                "exposed",
                "top cut",
                "in ground",
                "post length",
                "hole across",
                "hole deep");
        TapeFormat heights = tape.surveyed();
        Set<Post> listed = new HashSet<>();
        for (Run run : plan.runs()) {
            for (Post post : run.posts()) {
                if (listed.add(post)) {
                    table.row(
                            post.number(),
                            post.kind().name().toLowerCase(Locale.ROOT) + (post.isSet() ? ", set" : ""),
                            run.name(),
                            heights.format(post.ground()),
                            tape.format(post.exposed()),
                            Written.saw(post.topGrade().angle().abs()),
                            tape.format(post.footing().embedment()),
                            tape.format(post.footing().postLength()),
                            tape.format(post.footing().holeDiameter()),
                            tape.format(post.footing().holeDepth()));
                }
            }
        }
        return table;
    }
}
