package org.fencecore.slope;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.RandomAccess;
import org.fencecore.geometry.Clearance;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * How each bay of a run meets the ground: the line of the board bottoms and, bay by bay, grade, rail length, end cut
 * and the gaps under the boards.
 *
 * <p>In a racked run the boards stand plumb and their bottoms follow one unbroken line with its bends at the posts. At a
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
 * SlopeFit fit = SlopeFit.rack(ground, posts, RackSpec.builder().build());
 * fit.bottomAbove(0);             // 4 in
 * fit.bottomAbove(1);             // 4 in
 * fit.bottomAbove(2);             // 2 in
 * fit.findings();                 // two notes: the posts at 0 ft and 8 ft are lifted
 * }</pre>
 */
public final class SlopeFit {

    /** The steepest grade between two posts that is fitted, 45 degrees. */
    public static final Slope STEEPEST = Slope.ofPercent(100);

    private static final int MOST_POSTS = 100_000;

    private final Profile ground;
    private final RackSpec spec;
    private final long[] stations;
    private final long[] bottoms;

    private SlopeFit(Profile ground, RackSpec spec, long[] stations, long[] bottoms) {
        this.ground = ground;
        this.spec = spec;
        this.stations = stations;
        this.bottoms = bottoms;
    }

    /**
     * Fits racked bays to the ground: each runs straight from post to post.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and the rack limit
     * @return the fit
     * @throws IllegalArgumentException if there are too few or too many posts, if a station does not increase or lies
     *     outside the ground, or if the ground from one post to the next is steeper than 100 %
     */
    public static SlopeFit rack(Profile ground, List<Length> posts, RackSpec spec) {
        Objects.requireNonNull(spec, "spec");
        long[] stations = stations(posts);
        requireCovered(ground, posts);
        requireRackable(ground, posts);
        return new SlopeFit(ground, spec, stations, RackedLine.bottoms(ground, stations, spec));
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

    private static void requireRackable(Profile ground, List<Length> posts) {
        for (int post = 1; post < posts.size(); post++) {
            Slope grade = ground.slopeBetween(posts.get(post - 1), posts.get(post));
            if (grade.abs().compareTo(STEEPEST) > 0) {
                throw new IllegalArgumentException("grade of the ground from post " + post + " at "
                        + posts.get(post - 1) + " to post " + (post + 1) + " at " + posts.get(post) + " was "
                        + Written.percent(grade) + "; a racked bay takes up to 100 % either way, so check the unit of"
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
     * Returns the line of the board bottoms, with a point at every post.
     *
     * @return the profile of the board bottoms
     */
    public Profile bottomLine() {
        Profile.Builder line = Profile.builder();
        for (int post = 0; post < stations.length; post++) {
            line.point(station(post), Length.ofNanometres(bottoms[post]));
        }
        return line.build();
    }

    /**
     * Returns how high the board bottoms stand over the ground at a post: the clearance and whatever the post is lifted.
     *
     * @param post the number of the post, from 0
     * @return the height over the ground
     * @throws IllegalArgumentException if there is no such post
     */
    public Length bottomAbove(int post) {
        requireIndex("post", post, stations.length);
        return Length.ofNanometres(bottoms[post]).minus(ground.elevationAt(station(post)));
    }

    /**
     * Returns what the builder should know about the fit, posts first and then bays, each in order and placed by its
     * stations:
     *
     * <ul>
     *   <li>{@code lifted-post}, a note: the boards stand higher at a post than the clearance, to clear a high spot;
     *   <li>{@code wide-gap}, a warning: the gap under the boards is wider than the maximum clearance;
     *   <li>{@code rack-limit}, a warning: the bay is steeper than the parts can rack;
     *   <li>{@code too-steep}, a blocker: lifting made the bay steeper than 100 %.
     * </ul>
     *
     * @return the findings, worked out anew at each call; empty if all is well
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int post = 0; post < stations.length; post++) {
            liftedPost(post).ifPresent(findings::add);
        }
        for (int bay = 0; bay < stations.length - 1; bay++) {
            wideGap(bay).ifPresent(findings::add);
            steepBay(bay).ifPresent(findings::add);
        }
        return List.copyOf(findings);
    }

    private Optional<Finding> liftedPost(int post) {
        Length above = bottomAbove(post);
        if (above.equals(spec.clearance())) {
            return Optional.empty();
        }
        // The high spot is in the bay, of the two beside the post, where the boards come nearest to the ground.
        Clearance before = bay(Math.max(post - 1, 0)).clearance();
        Clearance after = bay(Math.min(post, stations.length - 2)).clearance();
        Clearance nearest = before.min().compareTo(after.min()) <= 0 ? before : after;
        return Optional.of(Finding.note(
                        "lifted-post",
                        "post at " + Written.station(station(post)),
                        "the boards stand " + Written.tape(above) + " above the ground here, "
                                + Written.tape(above.minus(spec.clearance()))
                                + " more than the clearance, to stay " + Written.tape(spec.minimumClearance())
                                + " clear of the ground at " + Written.station(nearest.minStation()))
                .withRemedy("build it so, or take the high spot down"));
    }

    private Optional<Finding> wideGap(int index) {
        Clearance gap = bay(index).clearance();
        if (gap.max().compareTo(spec.maximumClearance()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(
                        "wide-gap",
                        place(index),
                        "the gap under the boards at " + Written.station(gap.maxStation()) + " is "
                                + Written.tape(gap.max(), Rounding.UP) + ", "
                                + Written.tape(gap.max().minus(spec.maximumClearance()), Rounding.UP)
                                + " over the maximum of "
                                + Written.tape(spec.maximumClearance()))
                .withRemedy("fill the low spot, or close the gap with a kick board"));
    }

    private Optional<Finding> steepBay(int index) {
        Slope grade = bay(index).grade();
        Slope limit = spec.maximumGrade().orElse(STEEPEST);
        if (grade.abs().compareTo(STEEPEST) > 0) {
            return Optional.of(Finding.blocker(
                            "too-steep",
                            place(index),
                            "lifted over the high spots, the bay has a grade of " + Written.percent(grade)
                                    + ", and a racked bay takes up to 100 %")
                    .withRemedy("take the high spot down, or set a post on it"));
        }
        if (grade.abs().compareTo(limit) > 0) {
            return Optional.of(Finding.warning(
                            "rack-limit",
                            place(index),
                            "the grade of " + Written.percent(grade) + " is over the " + Written.percent(limit)
                                    + " the bays can rack")
                    .withRemedy("step this bay, or use rails and fixings that rack further"));
        }
        return Optional.empty();
    }

    /**
     * Returns how the grade, the end cut and the rail length of a bay come about.
     *
     * @param bay the number of the bay, from 0
     * @return the calculation; its last line is the rail length
     * @throws IllegalArgumentException if there is no such bay
     */
    public Worksheet worksheet(int bay) {
        requireIndex("bay", bay, stations.length - 1);
        FittedBay fitted = bay(bay);
        Length run = fitted.run();
        Length rise = fitted.rise();
        Slope grade = fitted.grade();
        Clearance gap = fitted.clearance();
        Worksheet.Builder sheet = Worksheet.titled("Racked " + place(bay));
        bottom(sheet, "start", bay);
        bottom(sheet, "end", bay + 1);
        return sheet.line(
                        "run",
                        "end - start",
                        Written.feet(fitted.end()) + " - " + Written.feet(fitted.start()),
                        run,
                        Written.feet(run),
                        Citation.GEOMETRY)
                .line(
                        "rise",
                        "bottom at end - bottom at start",
                        Written.feet(Length.ofNanometres(bottoms[bay + 1])) + " - "
                                + Written.feet(Length.ofNanometres(bottoms[bay])),
                        rise,
                        Written.feet(rise),
                        Citation.GEOMETRY)
                .line(
                        "least clearance, at " + Written.station(gap.minStation()),
                        "bottom line - ground",
                        Written.feet(ground.elevationAt(gap.minStation()).plus(gap.min())) + " - "
                                + Written.feet(ground.elevationAt(gap.minStation())),
                        gap.min(),
                        Written.tape(gap.min()),
                        Citation.GEOMETRY)
                .line(
                        "grade",
                        "rise / run",
                        Written.feet(rise) + " / " + Written.feet(run),
                        grade,
                        Written.percent(grade),
                        Citation.GEOMETRY)
                .line(
                        "rise per foot",
                        "grade * 12 in",
                        Written.percent(grade) + " * 12 in",
                        grade.risePerFoot(),
                        Written.inches(grade.risePerFoot()),
                        Citation.GEOMETRY)
                .line(
                        "end cut off square",
                        "atan(|grade|)",
                        "atan(" + Written.percent(grade.abs()) + ")",
                        fitted.endCut(),
                        Written.degrees(fitted.endCut()),
                        Citation.GEOMETRY)
                .line(
                        "rail length, centre to centre",
                        "sqrt(run^2 + rise^2)",
                        "sqrt((" + Written.feet(run) + ")^2 + (" + Written.feet(rise) + ")^2)",
                        fitted.railLength(),
                        Written.tape(fitted.railLength()),
                        Citation.GEOMETRY)
                .build();
    }

    private void bottom(Worksheet.Builder sheet, String end, int post) {
        Length height = ground.elevationAt(station(post));
        Length lift = bottomAbove(post).minus(spec.clearance());
        Length bottom = Length.ofNanometres(bottoms[post]);
        sheet.given("station at " + end, station(post), Written.feet(station(post)));
        sheet.given("ground at " + end, height, Written.feet(height));
        sheet.line(
                "bottom at " + end,
                "ground + clearance + lift",
                Written.feet(height) + " + " + Written.inches(spec.clearance()) + " + " + Written.inches(lift),
                bottom,
                Written.feet(bottom),
                Citation.COMMON_PRACTICE);
    }

    private FittedBay bay(int index) {
        return new FittedBay(ground, stations[index], bottoms[index], stations[index + 1], bottoms[index + 1]);
    }

    private Length station(int post) {
        return Length.ofNanometres(stations[post]);
    }

    /** By stations alone: a plan numbers its bays through, and its numbers are not those of this run. */
    private String place(int bay) {
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
