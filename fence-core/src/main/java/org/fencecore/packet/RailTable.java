package org.fencecore.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fencecore.Bay;
import org.fencecore.BayRail;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Stretch;
import org.fencecore.rail.RailMarks;
import org.fencecore.rail.RailPiece;
import org.fencecore.rail.RailPieces;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Written;

/** The rails: the marks of every bay on its two posts, and the pieces they are made of. */
final class RailTable {

    private RailTable() {}

    /** Spacing, rise, grade and the marks on both posts of every bay. */
    static TextTable marks(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of(
                "bay",
                "posts",
                "spacing",
                "rise",
                "grade",
                "rails",
                "marks at first",
                "marks at second",
                "boards at first",
                "boards at second");
        for (Bay bay : plan.bays()) {
            List<BayRail> rails = bay.rails();
            if (rails.isEmpty()) {
                continue;
            }
            table.row(
                    bay.number(),
                    bay.from().number() + "-" + bay.to().number(),
                    tape.format(bay.spacing()),
                    tape.format(bay.slope().rise()),
                    Written.percent(bay.slope().grade()),
                    rails.size(),
                    marks(rails.stream().map(BayRail::from).toList(), tape),
                    marks(rails.stream().map(BayRail::to).toList(), tape),
                    tape.format(bay.slope().aboveStart()),
                    tape.format(bay.slope().aboveEnd()));
        }
        return table;
    }

    private static String marks(List<RailMarks> marks, TapeFormat tape) {
        return marks.stream().map(mark -> tape.format(mark.top())).collect(Collectors.joining(" | "));
    }

    /** The pieces, those between the same two posts in one row: they are cut alike. */
    static TextTable pieces(FencePlan plan, TapeFormat tape) {
        TextTable table = TextTable.of("posts", "bays", "rails", "length", "end cut", "leave long");
        for (Stretch stretch : plan.stretches()) {
            List<Post> posts = stretch.posts();
            Map<List<Integer>, List<RailPiece>> alike =
                    new TreeMap<>(Comparator.<List<Integer>, Integer>comparing(ends -> ends.get(0))
                            .thenComparing(ends -> ends.get(1)));
            for (RailPiece piece : stretch.railPieces().map(RailPieces::pieces).orElse(List.of())) {
                alike.computeIfAbsent(List.of(piece.fromPost(), piece.toPost()), ends -> new ArrayList<>())
                        .add(piece);
            }
            for (List<RailPiece> pieces : alike.values()) {
                RailPiece first = pieces.get(0);
                table.row(
                        posts.get(first.fromPost()).number() + "-"
                                + posts.get(first.toPost()).number(),
                        first.bays(),
                        pieces.stream()
                                .map(piece -> Integer.toString(piece.rail() + 1))
                                .collect(Collectors.joining(", ")),
                        tape.format(first.length()),
                        Written.saw(first.endCut()),
                        first.trim().isZero() ? "" : tape.format(first.trim()));
            }
        }
        return table;
    }
}
