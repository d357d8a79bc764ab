package org.fencecore.slope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.internal.Once;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * The line of the board bottoms: a straight piece in each bay, laid by its treatment, and the nails that the crew's strings
 * are tied to where it bends, steps or ends. In nanometres.
 */
final class BottomLine {

    private final Profile ground;
    private final SlopeSpec spec;
    private final long[] stations;
    private final long[] grounds;
    private final long[] starts;
    private final long[] ends;
    private final Treatment[] treatments;
    private final boolean[] laidNails;
    private final Once<boolean[]> nails;

    /** Begins with no bay laid. */
    private BottomLine(Treatment treatment, Profile ground, long[] stations, long[] grounds, SlopeSpec spec) {
        this.ground = ground;
        this.spec = spec;
        this.stations = stations;
        this.grounds = grounds;
        int bays = stations.length - 1;
        starts = new long[bays];
        ends = new long[bays];
        treatments = new Treatment[bays];
        laidNails = endNails();
        nails = treatment == Treatment.RACKED ? Once.of(this::rackedNails) : Once.known(laidNails);
    }

    /**
     * Lays every bay by a treatment.
     *
     * @param stations where the posts are
     * @param grounds how high the ground is at each
     */
    static BottomLine of(Treatment treatment, Profile ground, long[] stations, long[] grounds, SlopeSpec spec) {
        BottomLine line = new BottomLine(treatment, ground, stations, grounds, spec);
        switch (treatment) {
            case RACKED -> line.layRacked();
            case STEPPED -> line.layLevel(Treatment.STEPPED, 0, SteppedLine.own(ground, stations, spec));
            case EVENLY_STEPPED -> line.layLevel(Treatment.EVENLY_STEPPED, 0, SteppedLine.even(ground, stations, spec));
            case STRINGS -> line.layStrings(0, stations.length - 1);
            case MIXED -> line.layMixed();
        }
        return line;
    }

    private void layRacked() {
        long[] bottoms = RackedLine.bottoms(ground, stations, grounds, spec);
        int bays = stations.length - 1;
        for (int bay = 0; bay < bays; bay++) {
            lay(bay, Treatment.RACKED, bottoms[bay], bottoms[bay + 1]);
        }
    }

    /** Racked bays that run on straight, to the nanometre of rounding, are one string to the crew. */
    private boolean[] rackedNails() {
        boolean[] found = endNails();
        LineReach straight = new LineReach();
        int nail = 0;
        straight.begin(0, 0, 0);
        for (int post = 1; post < stations.length; post++) {
            if (!passes(straight, nail, post)) {
                nail = post - 1;
                found[nail] = true;
                straight.begin(0, 0, 0);
                passes(straight, nail, post);
            }
        }
        return found;
    }

    private boolean passes(LineReach straight, int nail, int post) {
        double height = ends[post - 1] - starts[nail];
        double along = stations[post] - stations[nail];
        return straight.pass(along, height - 1, height + 1);
    }

    /** Nails at the ends of the run alone. */
    private boolean[] endNails() {
        boolean[] atEnds = new boolean[stations.length];
        atEnds[0] = true;
        atEnds[stations.length - 1] = true;
        return atEnds;
    }

    private void layLevel(Treatment level, int first, long[] levels) {
        for (int bay = 0; bay < levels.length; bay++) {
            lay(first + bay, level, levels[bay], levels[bay]);
            laidNails[first + bay] |= bay == 0 || levels[bay] != levels[bay - 1];
        }
        laidNails[first + levels.length] = true;
    }

    private void layStrings(int first, int last) {
        long[] heights = FewestStrings.nails(ground, Arrays.copyOfRange(stations, first, last + 1), spec);
        int nail = first;
        for (int post = first + 1; post <= last; post++) {
            if (heights[post - first] == Long.MIN_VALUE) {
                continue;
            }
            FittedBay string = new FittedBay(
                    Treatment.STRINGS,
                    ground,
                    stations[nail],
                    heights[nail - first],
                    stations[post],
                    heights[post - first]);
            for (int bay = nail; bay < post; bay++) {
                lay(
                        bay,
                        Treatment.STRINGS,
                        string.bottomAt(station(bay)).nanometres(),
                        string.bottomAt(station(bay + 1)).nanometres());
            }
            laidNails[nail] = true;
            laidNails[post] = true;
            nail = post;
        }
    }

    private void layMixed() {
        int bays = stations.length - 1;
        Slope limit = spec.maximumGrade().orElse(SlopeFit.STEEPEST);
        int first = 0;
        while (first < bays) {
            boolean steep = isOver(limit, first);
            int past = first + 1;
            while (past < bays && isOver(limit, past) == steep) {
                past++;
            }
            if (steep) {
                layLevel(
                        Treatment.STEPPED,
                        first,
                        SteppedLine.own(ground, Arrays.copyOfRange(stations, first, past + 1), spec));
            } else {
                layStrings(first, past);
            }
            first = past;
        }
    }

    private boolean isOver(Slope limit, int bay) {
        return ground.slopeBetween(station(bay), station(bay + 1)).abs().compareTo(limit) > 0;
    }

    private void lay(int bay, Treatment own, long start, long end) {
        treatments[bay] = own;
        starts[bay] = start;
        ends[bay] = end;
    }

    int postCount() {
        return stations.length;
    }

    Length station(int post) {
        return Length.ofNanometres(stations[post]);
    }

    Length groundAt(int post) {
        return Length.ofNanometres(grounds[post]);
    }

    /** Tells whether the line bends or steps at a post, or ends there. */
    private boolean isNail(int post) {
        return nails.get()[post];
    }

    FittedBay bay(int index) {
        return new FittedBay(
                treatments[index], ground, stations[index], starts[index], stations[index + 1], ends[index]);
    }

    /** The number of the bay that a station is in, past the ends the outermost; at a post that of the higher bottom. */
    int bayAt(Length station) {
        int found = Arrays.binarySearch(stations, station.nanometres());
        boolean between = found > 0 && found < starts.length;
        if (between && ends[found - 1] > starts[found]) {
            return found - 1;
        }
        return Math.max(0, Math.min(found >= 0 ? found : -found - 2, starts.length - 1));
    }

    /** From nail to nail. */
    List<Interval> strings() {
        List<Interval> strings = new ArrayList<>();
        int nail = 0;
        for (int post = 1; post < stations.length; post++) {
            if (isNail(post)) {
                strings.add(Interval.of(station(nail), station(post)));
                nail = post;
            }
        }
        return List.copyOf(strings);
    }

    /** Returns the string that a bay hangs on, as one long bay. */
    FittedBay string(int bay) {
        int from = bay;
        while (!isNail(from)) {
            from--;
        }
        int to = bay + 1;
        while (!isNail(to)) {
            to++;
        }
        return new FittedBay(treatments[bay], ground, stations[from], starts[from], stations[to], ends[to - 1]);
    }
}
