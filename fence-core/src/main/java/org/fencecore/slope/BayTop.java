package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * Where the tops of the boards run over one straight line of bottoms: in a bay of fence, or over the opening of a gate, which
 * carries the line of the fence through. {@link TopLine} is made of such bays.
 *
 * <p>An arch is a circular arc over the straight line from end to end, its offsets taken plumb: with half the bay c and the
 * rise h the radius is {@code r = (c^2 + h^2) / (2 h)}, and at a distance d from the middle the offset is
 * {@code h - r + sqrt(r^2 - d^2)}. A dip takes the same offsets downwards. Past either end there is no offset.
 *
 * <p>Source: geometry. Example: a gate arched 6 in over an opening of 4 ft has a radius of (24^2 + 6^2) / 12 = 51 in; half
 * way to its post the boards are {@code 6 - 51 + sqrt(51^2 - 12^2) = 4.568} in longer than at it.
 *
 * <pre>{@code
 * BayTop top = BayTop.over(level, ground, TopShape.arched(Length.ofInches(6)), Length.ofInches(2), Length.ofFeet(6));
 * top.boardLength(Interval.of(Length.ofInches(21), Length.ofInches(27)));     // 78 in, the middle one
 * }</pre>
 */
public final class BayTop {

    private final TopShape shape;
    private final FittedBay bay;
    private final Profile ground;
    private final Length clearance;
    private final Length boardLength;

    BayTop(TopShape shape, FittedBay bay, Profile ground, Length clearance, Length boardLength) {
        this.shape = shape;
        this.bay = bay;
        this.ground = ground;
        this.clearance = clearance;
        this.boardLength = boardLength;
    }

    /**
     * Returns the tops over a line of bottoms.
     *
     * @param bottoms the straight line of the bottoms, from one end of the opening to the other
     * @param ground the ground below, in the same stations and datum
     * @param shape how the tops run
     * @param clearance how far over the ground a board stands that follows it
     * @param boardLength the length of a board where it stands as usual, over zero
     * @return the tops
     * @throws IllegalArgumentException if the bottoms are not straight, or the length is not over zero
     */
    public static BayTop over(Profile bottoms, Profile ground, TopShape shape, Length clearance, Length boardLength) {
        Objects.requireNonNull(ground, "ground");
        if (bottoms.points().size() != 2) {
            throw new IllegalArgumentException("bottoms had " + bottoms.points().size()
                    + " points; give the two ends of one straight line, and a bay for each if there are more");
        }
        if (!boardLength.isPositive()) {
            throw new IllegalArgumentException("boardLength was " + boardLength + "; it must be over 0");
        }
        ProfilePoint first = bottoms.points().get(0);
        ProfilePoint last = bottoms.points().get(1);
        FittedBay bay = new FittedBay(
                Treatment.RACKED,
                ground,
                first.station().nanometres(),
                first.elevation().nanometres(),
                last.station().nanometres(),
                last.elevation().nanometres());
        return new BayTop(shape, bay, ground, Objects.requireNonNull(clearance, "clearance"), boardLength);
    }

    /**
     * Returns the same tops seen from the other side.
     *
     * @return the tops with every station negated
     */
    public BayTop reversed() {
        Interval shots = ground.extent();
        Profile mirrored =
                ground.reversed().shiftedBy(shots.start().plus(shots.end()).negated(), Length.ZERO);
        FittedBay back = new FittedBay(
                bay.treatment(),
                mirrored,
                -bay.end().nanometres(),
                bay.bottomAtEnd().nanometres(),
                -bay.start().nanometres(),
                bay.bottomAtStart().nanometres());
        return new BayTop(shape, back, mirrored, clearance, boardLength);
    }

    /**
     * Returns how the tops run.
     *
     * @return the shape
     */
    public TopShape shape() {
        return shape;
    }

    /**
     * Returns the height of the tops at a station; never under the bottoms.
     *
     * @param station the station, on the bay or past it
     * @return the elevation, to the nearest nanometre
     */
    public Length topAt(Length station) {
        return Length.max(ruled(station), bay.bottomAt(station));
    }

    private Length ruled(Length station) {
        return switch (shape.kind()) {
            case STRAIGHT -> bay.bottomAt(station).plus(boardLength);
            case GROUND -> groundAt(station).plus(clearance).plus(boardLength);
            case STEPPED -> Length.max(bay.bottomAtStart(), bay.bottomAtEnd()).plus(boardLength);
            case ARCHED -> bay.bottomAt(station).plus(boardLength).plus(offset(station));
            case DIPPED -> bay.bottomAt(station).plus(boardLength).minus(offset(station));
        };
    }

    /** Returns the height of the ground, beyond the shots that of the nearest. */
    private Length groundAt(Length station) {
        Interval shots = ground.extent();
        return ground.elevationAt(Length.max(shots.start(), Length.min(shots.end(), station)));
    }

    /**
     * Returns how long a board must be: from its square-cut bottom, the middle of which is on the line of the bottoms, to
     * the highest place of the line of the tops over its width. Under a straight line all boards are of one length.
     *
     * @param board the stations of its edges
     * @return the length to cut it to before its top is cut to the line
     */
    public Length boardLength(Interval board) {
        return shape.isStraight() ? boardLength : highestOver(board).minus(bay.bottomAt(board.middle()));
    }

    Length highestOver(Interval board) {
        Length highest = Length.max(topAt(board.start()), topAt(board.end()));
        for (Length station : turns()) {
            if (board.contains(station)) {
                highest = Length.max(highest, topAt(station));
            }
        }
        return highest;
    }

    /**
     * Returns the height of the bottoms at a station.
     *
     * @param station the station, on the bay or past it
     * @return the elevation on their straight line, to the nearest nanometre
     */
    public Length bottomAt(Length station) {
        return bay.bottomAt(station);
    }

    /**
     * Returns the upper edge of a board as it is cut: level under a straight line, else along the line of the tops.
     *
     * @param board the stations of its edges
     * @return the corners of the edge in order of station, two or more
     */
    public List<ProfilePoint> upperEdge(Interval board) {
        return upperEdge(board, board);
    }

    List<ProfilePoint> upperEdge(Interval board, Interval part) {
        return shape.isStraight()
                ? level(part, bay.bottomAt(board.middle()).plus(boardLength))
                : along(part, turns(), this::topAt);
    }

    static List<ProfilePoint> level(Interval part, Length height) {
        return List.of(new ProfilePoint(part.start(), height), new ProfilePoint(part.end(), height));
    }

    static List<ProfilePoint> along(Interval part, List<Length> breaks, UnaryOperator<Length> line) {
        List<ProfilePoint> edge = new ArrayList<>();
        edge.add(new ProfilePoint(part.start(), line.apply(part.start())));
        for (Length station : breaks) {
            if (station.compareTo(part.start()) > 0 && station.compareTo(part.end()) < 0) {
                edge.add(new ProfilePoint(station, line.apply(station)));
            }
        }
        edge.add(new ProfilePoint(part.end(), line.apply(part.end())));
        return List.copyOf(edge);
    }

    /** Returns where the line can be higher or lower than on either side. */
    List<Length> turns() {
        if (shape.kind() != TopShape.Kind.GROUND) {
            return List.of(Interval.of(bay.start(), bay.end()).middle());
        }
        return breaks();
    }

    List<Length> breaks() {
        return ground.between(bay.start(), bay.end()).points().stream()
                .map(ProfilePoint::station)
                .toList();
    }

    private List<Length> places() {
        List<Length> places = new ArrayList<>(turns());
        places.add(bay.start());
        places.add(bay.end());
        return places;
    }

    /**
     * Returns how far the tops are over the line of the bottoms where they are nearest to it.
     *
     * @return the length of the shortest board without width; zero or less where none is left
     */
    public Length shortest() {
        return places().stream()
                .map(place -> ruled(place).minus(bay.bottomAt(place)))
                .reduce(boardLength, Length::min);
    }

    /**
     * Returns how far the tops are over the line of the bottoms where they are furthest from it.
     *
     * @return the length of the longest board without width
     */
    public Length longest() {
        Length longest = Length.ZERO;
        for (Length place : places()) {
            longest = Length.max(longest, topAt(place).minus(bay.bottomAt(place)));
        }
        return longest;
    }

    /**
     * Returns what the builder should know about the tops: {@code arch-limited}, {@code rail-above-boards} and
     * {@code no-board-left}, as {@link TopLine#findings} tells them.
     *
     * @param place where it is
     * @param topRailBelowTops how far the top of the top rail is below the usual tops
     * @return the findings; none if all is well
     */
    public List<Finding> findings(String place, Length topRailBelowTops) {
        List<Finding> findings = new ArrayList<>();
        if (isLimited()) {
            findings.add(limited(place, shape.rise()));
        }
        Length lacking = boardLength.minus(shortest()).minus(topRailBelowTops);
        if (lacking.isPositive()) {
            findings.add(showing(place, lacking, !shortest().isPositive()));
        }
        return List.copyOf(findings);
    }

    static Finding limited(String place, Length rise) {
        return Finding.note(
                        "arch-limited",
                        place,
                        "the bay is too narrow for " + Written.tape(rise) + " between posts, and takes half a circle")
                .withRemedy("build it so, or space the posts evenly")
                .withSource(Citation.GEOMETRY);
    }

    static Finding showing(String place, Length lacking, boolean isGone) {
        String message = isGone
                ? "the tops of the boards come down to their bottoms"
                : "the top rail stands up to " + Written.tape(lacking, Rounding.UP) + " above the tops of the boards";
        Finding finding = isGone
                ? Finding.blocker("no-board-left", place, message)
                : Finding.warning("rail-above-boards", place, message);
        return finding.withRemedy("put the top rail lower below the tops, or take another line for the tops");
    }

    boolean isLimited() {
        return riseIn().compareTo(shape.rise()) < 0;
    }

    private Length offset(Length station) {
        if (!Interval.of(bay.start(), bay.end()).contains(station)) {
            return Length.ZERO;
        }
        double d = fromMiddle(station).metres();
        double r = arcRadius().metres();
        // The same as h - r + sqrt(r^2 - d^2), without taking two large numbers from each other.
        return riseIn().minus(Length.ofMetres(d * d / (r + Math.sqrt(Math.max(0, r * r - d * d)))));
    }

    /** At most half a circle. */
    private Length riseIn() {
        return Length.min(shape.rise(), bay.run().dividedBy(2));
    }

    private Length fromMiddle(Length station) {
        return station.minus(Interval.of(bay.start(), bay.end()).middle()).abs();
    }

    /**
     * Returns the radius to swing an arch or a dip by.
     *
     * @return the radius; empty for the other shapes
     */
    public Optional<Length> radius() {
        return shape.rise().isPositive() ? Optional.of(arcRadius()) : Optional.empty();
    }

    private Length arcRadius() {
        double c = bay.run().metres() / 2;
        double h = riseIn().metres();
        return Length.ofMetres((c * c + h * h) / (2 * h));
    }

    /**
     * Returns how the length of a board at a station comes about.
     *
     * @param station the station, on the bay or past it
     * @return the calculation; its last line is how far the tops are over the bottoms there
     */
    public Worksheet worksheet(Length station) {
        Length top = topAt(station);
        Length bottom = bay.bottomAt(station);
        Worksheet.Builder sheet = Worksheet.titled("Board at " + Written.station(station))
                .given("board length", boardLength, Written.tape(boardLength));
        if (shape.rise().isPositive()) {
            arc(sheet, station);
        }
        return sheet.line("top", rule(), "", top, Written.feet(top), Citation.GEOMETRY)
                .line(
                        "bottom",
                        "bottom at start + grade * distance from it",
                        Written.feet(bay.bottomAtStart()) + " + " + Written.percent(bay.grade()) + " * "
                                + Written.feet(station.minus(bay.start())),
                        bottom,
                        Written.feet(bottom),
                        Citation.GEOMETRY)
                .line(
                        "length here",
                        "top - bottom",
                        Written.feet(top) + " - " + Written.feet(bottom),
                        top.minus(bottom),
                        Written.tape(top.minus(bottom)),
                        Citation.GEOMETRY)
                .build();
    }

    private void arc(Worksheet.Builder sheet, Length station) {
        Length rise = riseIn();
        Length radius = arcRadius();
        Length distance = fromMiddle(station);
        Length offset = offset(station);
        sheet.given("rise between posts", rise, Written.tape(rise))
                .line(
                        "radius",
                        "(half bay^2 + rise^2) / (2 * rise)",
                        "((" + Written.inches(bay.run().dividedBy(2)) + ")^2 + (" + Written.inches(rise)
                                + ")^2) / (2 * " + Written.inches(rise) + ")",
                        radius,
                        Written.inches(radius),
                        Citation.GEOMETRY)
                .line(
                        "offset",
                        "rise - radius + sqrt(radius^2 - distance from the middle^2), none past the posts",
                        Written.inches(rise) + " - " + Written.inches(radius) + " + sqrt((" + Written.inches(radius)
                                + ")^2 - (" + Written.inches(distance) + ")^2)",
                        offset,
                        Written.inches(offset),
                        Citation.GEOMETRY);
    }

    private String rule() {
        return switch (shape.kind()) {
            case STRAIGHT -> "bottom + board length";
            case GROUND -> "ground + clearance + board length";
            case STEPPED -> "higher bottom of the bay + board length";
            case ARCHED -> "bottom + board length + offset";
            case DIPPED -> "bottom + board length - offset";
        };
    }

    @Override
    public String toString() {
        return "tops " + shape;
    }
}
