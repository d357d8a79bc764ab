package org.fencecore.packet;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.Point;
import org.fencecore.stakeout.StringCorner;
import org.fencecore.stakeout.StringLayout;
import org.fencecore.survey.LotSide;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;

/**
 * Where strings cross or end, tied to the lot: how far from two of its corners, for two tapes swung until they meet. It is
 * what finds the corners of a curved side, and of a line that follows no side.
 */
final class TieTable {

    /** Lot corners that are looked at for a mark; the nearest will do. */
    private static final int NEAREST = 8;

    /** Arcs that cross more flatly, under 30 or over 150 degrees, are left where others do better. */
    private static final double FLATTEST = 0.5;

    private static final Length TOO_NEAR = Length.ofInches(1);

    private final List<LotSide> corners;
    private final TapeFormat tape;
    private final Map<Point, String> crossings = new HashMap<>();
    private final Set<Point> told = new HashSet<>();
    private final TextTable table = TextTable.of(
            "where strings", "post", "east", "north", "one corner", "one reads", "other corner", "other reads");

    private TieTable(List<LotSide> corners, StringLayout layout, TapeFormat tape) {
        this.corners = corners;
        this.tape = tape;
        for (StringCorner corner : layout.corners()) {
            crossings.put(corner.corner().vertex(), "cross: " + corner.arriving() + " and " + corner.leaving());
        }
    }

    /** A lot corner and how far it is from a mark. */
    private record Near(LotSide corner, Length distance) {}

    /** Two lot corners to measure a mark from, and how well the tapes cross. */
    private record Ties(LotSide one, LotSide other, Length toOne, Length toOther, double sine) {

        static Ties of(Point mark, LotSide one, LotSide other) {
            Point a = one.start();
            Point b = other.start();
            double cross = metres(a.east().minus(mark.east()))
                            * metres(b.north().minus(mark.north()))
                    - metres(a.north().minus(mark.north())) * metres(b.east().minus(mark.east()));
            Length toOne = a.distanceTo(mark);
            Length toOther = b.distanceTo(mark);
            return new Ties(one, other, toOne, toOther, Math.abs(cross) / (metres(toOne) * metres(toOther)));
        }

        private static double metres(Length length) {
            return length.metres();
        }

        boolean isFlat() {
            return sine < FLATTEST;
        }

        /** Of ties that cross well the shortest, of others those that cross best. */
        static final Comparator<Ties> BEST = Comparator.comparing(Ties::isFlat)
                .thenComparing((a, b) -> a.isFlat()
                        ? Double.compare(b.sine, a.sine)
                        : a.together().compareTo(b.together()));

        private Length together() {
            return toOne.plus(toOther);
        }
    }

    static TextTable of(FencePlan plan, StringLayout layout, TapeFormat tape) {
        TieTable ties = new TieTable(plan.site().lot().sides(), layout, tape);
        layout.strings().forEach(string -> {
            Run run = string.run();
            List<Post> posts = run.posts();
            ties.mark("begin: " + run, posts.get(0), string.line().start());
            ties.mark("end: " + run, posts.get(posts.size() - 1), string.line().end());
        });
        return ties.table;
    }

    private void mark(String end, Post post, Point mark) {
        if (!told.add(mark)) {
            return;
        }
        TapeFormat plane = tape.surveyed();
        Optional<Ties> best = ties(mark);
        table.row(
                crossings.getOrDefault(mark, end),
                post.number(),
                plane.format(mark.east()),
                plane.format(mark.north()),
                best.map(ties -> corner(ties.one)).orElse("-"),
                best.map(ties -> tape.format(ties.toOne)).orElse("-"),
                best.map(ties -> corner(ties.other)).orElse("-"),
                best.map(ties -> tape.format(ties.toOther)).orElse("-"));
    }

    private static String corner(LotSide side) {
        return "start of side " + side.number();
    }

    private Optional<Ties> ties(Point mark) {
        List<LotSide> near = nearest(mark);
        return near.stream()
                .flatMap(one -> near.stream()
                        .filter(other -> other.number() > one.number())
                        .map(other -> Ties.of(mark, one, other)))
                .min(Ties.BEST);
    }

    private List<LotSide> nearest(Point mark) {
        PriorityQueue<Near> best =
                new PriorityQueue<>(Comparator.comparing(Near::distance).reversed());
        for (LotSide corner : corners) {
            Length distance = corner.start().distanceTo(mark);
            if (distance.compareTo(TOO_NEAR) >= 0) {
                best.add(new Near(corner, distance));
                if (best.size() > NEAREST) {
                    best.remove();
                }
            }
        }
        return best.stream().map(Near::corner).toList();
    }
}
