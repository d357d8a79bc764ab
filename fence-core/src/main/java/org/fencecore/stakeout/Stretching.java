package org.fencecore.stakeout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.jspecify.annotations.Nullable;

/** Puts the strings of a plan together: which of them cross, where their boards stand, and what lies across. */
final class Stretching {

    /** Boards of a blunter corner would meet too far out to make an L. */
    private static final Angle BLUNTEST_L = Angle.ofDegrees(135);

    private static final int NONE = -1;

    private final List<Run> runs;
    private final StringSpec spec;
    private final Optional<Polygon> lot;
    private final List<@Nullable StringCorner> after = new ArrayList<>();
    /** The runs that each meets where it ends and where it begins. */
    private final int[] next;

    private final int[] previous;
    private int boards;

    Stretching(FencePlan plan, StringSpec spec) {
        runs = plan.runs();
        this.spec = spec;
        lot = plan.site().lot().outline();
        next = new int[runs.size()];
        previous = new int[runs.size()];
        Arrays.fill(next, NONE);
        Arrays.fill(previous, NONE);
        Map<Post, Integer> beginningAt = new HashMap<>();
        for (int i = 0; i < runs.size(); i++) {
            if (runs.get(i).startCorner().isPresent()) {
                beginningAt.put(runs.get(i).posts().get(0), i);
            }
        }
        for (int i = 0; i < runs.size(); i++) {
            List<Post> here = runs.get(i).posts();
            Integer there = runs.get(i).endCorner().isPresent() ? beginningAt.get(here.get(here.size() - 1)) : null;
            if (there != null) {
                next[i] = there;
                previous[there] = i;
            }
        }
    }

    StringLayout layout() {
        List<Segment> lines = lines();
        for (int i = 0; i < runs.size(); i++) {
            after.add(meetsNext(i) ? corner(lines, i) : null);
        }
        List<StringLine> strings = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            StringCorner before = before(i);
            strings.add(string(runs.get(i), lines.get(i), before, after.get(i)));
        }
        return new StringLayout(
                spec, strings, after.stream().flatMap(Stream::ofNullable).toList(), diagonals(lines));
    }

    private boolean meetsNext(int run) {
        return next[run] != NONE;
    }

    private Run next(int run) {
        return runs.get(next[run]);
    }

    /** The strings from where each crosses the one before to where it crosses the next. */
    private List<Segment> lines() {
        List<Point> crossings = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Segment here = runs.get(i).string();
            Point end = here.end();
            if (meetsNext(i) && !end.equals(next(i).string().start())) {
                // Where they do not end in the same point already, they are carried on until they do.
                end = here.intersectionOfLines(next(i).string()).orElse(end);
            }
            crossings.add(end);
        }
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            Point start = previous[i] != NONE
                    ? crossings.get(previous[i])
                    : runs.get(i).string().start();
            lines.add(Segment.of(start, crossings.get(i)));
        }
        return lines;
    }

    private StringCorner corner(List<Segment> lines, int run) {
        Segment here = lines.get(run);
        Segment there = lines.get(next[run]);
        Corner corner = Corner.of(
                here.end(),
                here.bearing(),
                there.bearing(),
                runs.get(run).outside().opposite());
        return StringCorner.of(runs.get(run), next(run), corner, here.length(), there.length(), spec);
    }

    private StringLine string(Run run, Segment line, @Nullable StringCorner before, @Nullable StringCorner behind) {
        BatterBoard atStart = before != null && before.isBend()
                ? null
                : board("before the start of " + run, line, spec.setBack().negated(), before);
        BatterBoard atEnd = behind != null && behind.isBend()
                ? null
                : board("beyond the end of " + run, line, line.length().plus(spec.setBack()), behind);
        return new StringLine(run, line, atStart, atEnd);
    }

    private BatterBoard board(String place, Segment line, Length station, @Nullable StringCorner corner) {
        Point crossing = line.pointAt(station);
        boolean onLot = lot.map(outline -> outline.contains(crossing)).orElse(false);
        return new BatterBoard(
                ++boards, place, crossing, station, corner == null ? null : fromOuterStake(corner), onLot);
    }

    private @Nullable Length fromOuterStake(StringCorner corner) {
        Angle between = Angle.STRAIGHT.minus(corner.corner().turn().abs());
        return between.compareTo(BLUNTEST_L) > 0
                ? null
                : spec.setBack().times(Ratio.of(between.dividedBy(2).tan()));
    }

    /** One place that strings can be measured from: a corner, or an end of the fence. */
    private record Mark(String name, Point place) {}

    private List<ProvingDiagonal> diagonals(List<Segment> lines) {
        List<ProvingDiagonal> diagonals = new ArrayList<>();
        Set<Set<Point>> known = new HashSet<>();
        for (int i = 0; i < runs.size(); i++) {
            StringCorner corner = after.get(i);
            if (corner == null || corner.isBend()) {
                continue;
            }
            Mark from = markBefore(lines, i);
            Mark to = markAfter(lines, next[i]);
            if (!from.place.equals(to.place) && known.add(Set.of(from.place, to.place))) {
                diagonals.add(new ProvingDiagonal(from.name, to.name, Segment.of(from.place, to.place)));
            }
        }
        return diagonals;
    }

    /** The next corner or end going back from the end of a run. */
    private Mark markBefore(List<Segment> lines, int run) {
        int at = run;
        while (previous[at] != NONE && isBend(previous[at]) && previous[at] != run) {
            at = previous[at];
        }
        StringCorner corner = before(at);
        return new Mark(
                corner == null ? "start of " + runs.get(at) : corner.toString(),
                lines.get(at).start());
    }

    /** The next corner or end going on from the start of a run. */
    private Mark markAfter(List<Segment> lines, int run) {
        int at = run;
        while (isBend(at) && next[at] != run) {
            at = next[at];
        }
        StringCorner corner = after.get(at);
        return new Mark(
                corner == null ? "end of " + runs.get(at) : corner.toString(),
                lines.get(at).end());
    }

    private @Nullable StringCorner before(int run) {
        return previous[run] == NONE ? null : after.get(previous[run]);
    }

    private boolean isBend(int run) {
        StringCorner corner = after.get(run);
        return corner != null && corner.isBend();
    }
}
