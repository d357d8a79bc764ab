package org.fencecore.slope;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.internal.Once;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * How each bay of a run meets the ground: the line of the board bottoms and, bay by bay, grade, rail length, end cut
 * and the gaps under the boards, for every {@link Treatment} alike.
 *
 * <p>The boards stand plumb, and in each bay their bottoms follow one straight line. Where the lines of two bays do not
 * meet at the post between them, the fence steps there: {@link #step}.
 *
 * <table>
 * <caption>The treatments</caption>
 * <tr><th scope="col">factory</th><th scope="col">the line of the board bottoms</th></tr>
 * <tr><td>{@link #rack}</td><td>straight from post to post along the ground</td></tr>
 * <tr><td>{@link #step(Profile, List, SlopeSpec) step}, {@link #stepEvenly}</td><td>level in each bay, a step at the posts</td></tr>
 * <tr><td>{@link #strings}</td><td>straight over as many bays as can be</td></tr>
 * <tr><td>{@link #mix}</td><td>level in steep bays, on strings in the others</td></tr>
 * </table>
 *
 * <p>In a racked run the line is unbroken, with its bends at the posts. At a
 * post it stands the clearance over the ground. Where a high spot between two posts would come nearer to it than the
 * minimum clearance, it is lifted at both posts of that bay just as much as is lacking; a post that a needier neighbour
 * lifts higher already counts, and then the other one is lifted less or not at all. The result is the same seen from
 * either end of the run, it keeps the minimum clearance everywhere, and no single post could stand lower.
 *
 * <p>It takes from 2 to 100,000 posts. It assumes plumb posts at the given stations and ground that is straight between
 * its shots. It leaves out the thickness of the posts and the width of the boards: the line runs through the middle of
 * each board bottom, and a bottom cut square comes nearer to the ground at its uphill corner by half the board's width
 * times the grade, 0.55 in for a 5 1/2 in board on 20 %.
 *
 * <p>Example: level ground with a mound of 3 in, 4 ft into the first of two 8 ft bays. Boards 2 in up would run 1 in
 * into the mound; kept 1 in clear of it they rise 2 in at the two posts beside it.
 *
 * <pre>{@code
 * Profile ground = Profile.builder()
 *         .point(Length.ZERO, Length.ZERO)
 *         .point(Length.ofFeet(3), Length.ZERO)
 *         .point(Length.ofFeet(4), Length.ofInches(3))
 *         .point(Length.ofFeet(5), Length.ZERO)
 *         .point(Length.ofFeet(16), Length.ZERO)
 *         .build();
 * List<Length> posts = List.of(Length.ZERO, Length.ofFeet(8), Length.ofFeet(16));
 * SlopeFit fit = SlopeFit.rack(ground, posts, SlopeSpec.builder().build());
 * fit.bottomAbove(0);             // 4 in
 * fit.bottomAbove(1);             // 4 in
 * fit.bottomAbove(2);             // 2 in
 * fit.findings();                 // lifted-post, lifted-post: those at 0 ft and 8 ft
 * }</pre>
 */
public final class SlopeFit {

    /** The steepest grade between two posts that is fitted, 45 degrees. */
    public static final Slope STEEPEST = Slope.ofPercent(100);

    private static final int MOST_POSTS = 100_000;

    private final Profile ground;
    private final SlopeSpec spec;
    private final Treatment treatment;
    private final long[] stations;
    private final long[] grounds;
    private final long[] starts;
    private final long[] ends;
    private final Treatment[] treatments;
    private final boolean[] laidNails;
    private final Once<boolean[]> nails;

    /** Begins with no bay fitted. */
    private SlopeFit(Treatment treatment, Profile ground, List<Length> posts, SlopeSpec spec) {
        Objects.requireNonNull(spec, "spec");
        this.treatment = treatment;
        this.ground = ground;
        this.spec = spec;
        this.stations = stations(posts);
        requireCovered(ground, posts);
        this.grounds = new long[stations.length];
        for (int post = 0; post < stations.length; post++) {
            grounds[post] = ground.elevationAt(posts.get(post)).nanometres();
        }
        requireNotTooSteep();
        int bays = stations.length - 1;
        this.starts = new long[bays];
        this.ends = new long[bays];
        this.treatments = new Treatment[bays];
        this.laidNails = endNails();
        this.nails = treatment == Treatment.RACKED ? Once.of(this::rackedNails) : Once.known(laidNails);
    }

    /**
     * Fits the bays by the treatment of the spec.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the treatment, its clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit of(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(spec.treatment(), ground, posts, spec);
    }

    static SlopeFit of(Treatment treatment, Profile ground, List<Length> posts, SlopeSpec spec) {
        SlopeFit fit = new SlopeFit(treatment, ground, posts, spec);
        int bays = posts.size() - 1;
        switch (treatment) {
            case RACKED -> fit.layRacked();
            case STEPPED -> fit.layLevel(Treatment.STEPPED, 0, SteppedLine.own(ground, fit.stations, spec));
            case EVENLY_STEPPED ->
                fit.layLevel(Treatment.EVENLY_STEPPED, 0, SteppedLine.even(ground, fit.stations, spec));
            case STRINGS -> fit.layStrings(0, bays);
            case MIXED -> fit.layMixed();
        }
        return fit;
    }

    /**
     * Fits racked bays to the ground: each runs straight from post to post.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit rack(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(Treatment.RACKED, ground, posts, spec);
    }

    /**
     * Fits level bays to the ground, each as low as it can stand: the clearance over the ground at its two posts and the
     * minimum in between, in steps of whole increments. The bay that needs to stand highest stands exactly so.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit step(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(Treatment.STEPPED, ground, posts, spec);
    }

    /**
     * Fits level bays to the ground with the same step at every post, a whole number of increments: the staircase that
     * meets every bay's need and stands lowest at the middle of the run.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit stepEvenly(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(Treatment.EVENLY_STEPPED, ground, posts, spec);
    }

    /**
     * Fits the run to the fewest straight strings that bend only at posts, meet there, are no longer than the longest
     * string, and keep the gap between the minimum and the maximum at every post and every break of the ground; among
     * those, to strings whose gaps differ least, hung so that the middle of their gaps is the clearance, as far as the
     * two limits allow. In a bay where no string can keep both limits the maximum is given up, and its gap is a finding.
     *
     * <p>Strings of two bays meet at one height, since their rails meet on the post and their boards run on past it. The
     * number of strings is the least there is, and so is the difference of their gaps, to a thousandth of a millimetre; a
     * run and its mirror image have mirrored strings, unless the ground is its own mirror image.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit strings(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(Treatment.STRINGS, ground, posts, spec);
    }

    /**
     * Fits each stretch of bays over the rack limit by steps, and each stretch of the others to the fewest strings: the
     * steep part in short pieces and the gentle part in long ones. Where the two meet, the fence steps at the post.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit mix(Profile ground, List<Length> posts, SlopeSpec spec) {
        return of(Treatment.MIXED, ground, posts, spec);
    }

    /**
     * Fits the run by each treatment and compares them by {@link SlopeChoice#USUAL}: first what can be built with the
     * parts, then the gaps, the steps, the cuts and the lumber.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeChoice best(Profile ground, List<Length> posts, SlopeSpec spec) {
        return SlopeChoice.among(ground, posts, spec, SlopeChoice.USUAL);
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
        Slope limit = spec.maximumGrade().orElse(STEEPEST);
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

    private static long[] stations(List<Length> posts) {
        int count = posts.size();
        if (count < 2 || count > MOST_POSTS) {
            throw new IllegalArgumentException("number of posts was " + count + "; a run has from 2 to 100,000, so "
                    + (count < 2 ? "give at least its two ends" : "split the run"));
        }
        long[] stations = new long[count];
        for (int post = 0; post < count; post++) {
            stations[post] = posts.get(post).nanometres();
            if (post > 0 && stations[post] <= stations[post - 1]) {
                throw new IllegalArgumentException("station of post " + (post + 1) + " was " + posts.get(post)
                        + ", not after post " + post + " at " + posts.get(post - 1)
                        + "; put the posts in order of station and give each once");
            }
        }
        return stations;
    }

    private static void requireCovered(Profile ground, List<Length> posts) {
        Interval extent = ground.extent();
        for (int post : new int[] {0, posts.size() - 1}) {
            if (!extent.contains(posts.get(post))) {
                throw new IllegalArgumentException("station of post " + (post + 1) + " was " + posts.get(post)
                        + ", off the ground profile, which runs from " + extent.start() + " to " + extent.end()
                        + "; take a shot at or beyond the post, or move it");
            }
        }
    }

    private void requireNotTooSteep() {
        for (int post = 1; post < stations.length; post++) {
            Slope grade = Slope.of(
                    groundAt(post).minus(groundAt(post - 1)), station(post).minus(station(post - 1)));
            if (grade.abs().compareTo(STEEPEST) > 0) {
                throw new IllegalArgumentException("grade of the ground from post " + post + " at "
                        + station(post - 1) + " to post " + (post + 1) + " at " + station(post) + " was "
                        + Written.percent(grade) + "; a bay takes up to 100 % either way, so check the unit of"
                        + " the shots, or put the fence on a retaining wall or steps there");
            }
        }
    }

    /**
     * Returns the bays in order, one fewer than there are posts. Each is made when asked for.
     *
     * @return the bays, unmodifiable
     */
    public List<FittedBay> bays() {
        return new Bays(this);
    }

    /**
     * Returns by which treatment the run was fitted.
     *
     * @return the treatment
     */
    public Treatment treatment() {
        return treatment;
    }

    /**
     * Returns the ground the run was fitted to.
     *
     * @return the ground
     */
    public Profile ground() {
        return ground;
    }

    /**
     * Returns the spec the run was fitted by.
     *
     * @return the clearances and limits
     */
    public SlopeSpec spec() {
        return spec;
    }

    /**
     * Returns the straight strings a crew stretches for the board bottoms, each over one or more bays: from where the
     * line bends or steps to where it does so next.
     *
     * @return the stations of the posts where each begins and ends, in order, unmodifiable
     */
    public List<Interval> strings() {
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

    /**
     * Returns the height of the line of the board bottoms at a station, in the datum of the ground: past the first and
     * the last post on the grade of the bay there, and at a post where the line steps that of the higher side.
     *
     * @param station the station, on the run or past it
     * @return the elevation, to the nearest nanometre
     */
    public Length bottomAt(Length station) {
        return bayAt(station).bottomAt(station);
    }

    /**
     * Returns the bay that a station is in, past the ends the outermost one.
     *
     * @param station the station, on the run or past it
     * @return the bay; at a post the one with the higher bottoms there
     */
    public FittedBay bayAt(Length station) {
        int found = Arrays.binarySearch(stations, station.nanometres());
        boolean between = found > 0 && found < starts.length;
        if (between && ends[found - 1] > starts[found]) {
            return bay(found - 1);
        }
        return bay(Math.max(0, Math.min(found >= 0 ? found : -found - 2, starts.length - 1)));
    }

    /**
     * Returns how high the board bottoms stand over the ground at a post, on the higher side if the line steps there:
     * how far the post must reach up before the boards begin.
     *
     * @param post the number of the post, from 0
     * @return the height over the ground
     * @throws IllegalArgumentException if there is no such post
     */
    public Length bottomAbove(int post) {
        return Length.max(bottomBefore(post), bottomAfter(post));
    }

    /**
     * Returns how high the board bottoms of the bay before a post stand over the ground at that post; at the first post,
     * those of the bay after it.
     *
     * @param post the number of the post, from 0
     * @return the height over the ground
     * @throws IllegalArgumentException if there is no such post
     */
    public Length bottomBefore(int post) {
        requireIndex("post", post, stations.length);
        return post == 0 ? bay(0).aboveStart() : bay(post - 1).aboveEnd();
    }

    /**
     * Returns how high the board bottoms of the bay after a post stand over the ground at that post; at the last post,
     * those of the bay before it.
     *
     * @param post the number of the post, from 0
     * @return the height over the ground
     * @throws IllegalArgumentException if there is no such post
     */
    public Length bottomAfter(int post) {
        requireIndex("post", post, stations.length);
        return post == starts.length ? bay(post - 1).aboveEnd() : bay(post).aboveStart();
    }

    /**
     * Returns how far the line of the board bottoms steps up at a post, seen along the run.
     *
     * @param post the number of the post, from 0
     * @return the bottom after the post less the bottom before it: negative for a step down, zero where the line is
     *     unbroken and at both ends of the run
     * @throws IllegalArgumentException if there is no such post
     */
    public Length step(int post) {
        return bottomAfter(post).minus(bottomBefore(post));
    }

    /**
     * Returns what the builder should know about the fit, posts first and then bays, each in order and placed by its
     * stations:
     *
     * <ul>
     *   <li>{@code lifted-post}, a note: the boards of a racked run stand higher at a post than the clearance, to clear a
     *       high spot;
     *   <li>{@code wide-gap}, a warning: the gap under the boards is wider than the maximum clearance, and nothing is
     *       to close it or it is over 4 ft;
     *   <li>{@code rack-limit}, a warning: a bay that is not stepped is steeper than the parts can rack;
     *   <li>{@code too-steep}, a blocker: lifting made the bay steeper than 100 %.
     * </ul>
     *
     * @return the findings, worked out anew at each call; empty if all is well
     */
    public List<Finding> findings() {
        return new SlopeNotes(this).findings();
    }

    /**
     * Fits the same run by every treatment and compares them, see {@link #best}.
     *
     * @return the comparison, this treatment among the others
     */
    public SlopeChoice choice() {
        List<Length> posts = new ArrayList<>();
        for (int post = 0; post < stations.length; post++) {
            posts.add(station(post));
        }
        return best(ground, posts, spec);
    }

    /**
     * Returns how the board bottoms, the grade, the end cut and the rail length of a bay come about.
     *
     * @param bay the number of the bay, from 0
     * @return the calculation; its last line is the rail length
     * @throws IllegalArgumentException if there is no such bay
     */
    public Worksheet worksheet(int bay) {
        requireIndex("bay", bay, starts.length);
        return new SlopeSheet(this, bay, place(bay)).sheet();
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

    int postCount() {
        return stations.length;
    }

    /** Tells whether the line bends or steps at a post, or ends there. */
    boolean isNail(int post) {
        return nails.get()[post];
    }

    FittedBay bay(int index) {
        return new FittedBay(
                treatments[index], ground, stations[index], starts[index], stations[index + 1], ends[index]);
    }

    Length station(int post) {
        return Length.ofNanometres(stations[post]);
    }

    /** Returns the height of the ground at a post. */
    Length groundAt(int post) {
        return Length.ofNanometres(grounds[post]);
    }

    /** By stations alone: a plan numbers its bays through, and its numbers are not those of this run. */
    String place(int bay) {
        return "bay from " + Written.station(station(bay)) + " to " + Written.station(station(bay + 1));
    }

    private static void requireIndex(String name, int index, int count) {
        if (index < 0 || index >= count) {
            throw new IllegalArgumentException(
                    name + " was " + index + "; this run has " + count + ", numbered from 0 to " + (count - 1));
        }
    }

    /** The bays as a list that makes each one when asked. */
    private static final class Bays extends AbstractList<FittedBay> implements RandomAccess {

        private final SlopeFit fit;

        Bays(SlopeFit fit) {
            this.fit = fit;
        }

        @Override
        public FittedBay get(int index) {
            return fit.bay(Objects.checkIndex(index, size()));
        }

        @Override
        public int size() {
            return fit.stations.length - 1;
        }
    }
}
