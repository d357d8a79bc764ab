package org.fencecore.rail;

import java.util.List;
import java.util.stream.IntStream;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The marks to draw on a post for the rails that end at it, as plumb heights above the ground there.
 *
 * <p>The bottom of the bottom rail is its distance above the board bottoms, and the top of the top rail its distance
 * below the board tops. A rail on a grade takes more of the post than its own depth: the depth times the square root of
 * 1 plus the grade squared. The rails between share the clear height evenly: each space is the clear height less the
 * plumb depths of those rails, over the number of spaces.
 *
 * <p>Where two bays of different grade meet, the marks differ on the two sides of the post; ask once for each.
 *
 * <p>Example: three rails of 3 1/2 in on 6 ft boards that stand 2 in over level ground.
 *
 * <pre>{@code
 * RailHeights marks = RailHeights.of(RailSpec.builder().build(), Length.ofInches(2));
 * marks.rails().get(0).bottom();    // 6 in, the bottom rail
 * marks.rails().get(0).top();       // 9 1/2 in
 * marks.rails().get(1).bottom();    // 36 1/4 in, the middle rail
 * marks.rails().get(1).top();       // 39 3/4 in
 * marks.rails().get(2).bottom();    // 66 1/2 in, the top rail
 * marks.rails().get(2).top();       // 70 in
 * }</pre>
 */
public final class RailHeights {

    private final RailSpec spec;
    private final Length clearance;
    private final Slope grade;
    private final Length plumbDepth;
    private final Length room;

    private RailHeights(RailSpec spec, Length clearance, Slope grade) {
        this.spec = spec;
        this.clearance = clearance;
        this.grade = grade;
        this.plumbDepth = spec.railDepth().times(grade.stretch());
        this.room = spec.requireRoom(plumbDepth);
    }

    /**
     * Returns the marks for level rails.
     *
     * @param spec where the rails sit on the boards
     * @param clearance how high the board bottoms stand above the ground at the post, zero or more
     * @return the marks
     * @throws IllegalArgumentException if the clearance is negative
     */
    public static RailHeights of(RailSpec spec, Length clearance) {
        return of(spec, clearance, Slope.LEVEL);
    }

    /**
     * Returns the marks for rails on a grade.
     *
     * @param spec where the rails sit on the boards
     * @param clearance how high the board bottoms stand above the ground at the post, zero or more
     * @param grade the grade of the bay, uphill or downhill
     * @return the marks
     * @throws IllegalArgumentException if the clearance is negative, or if on this grade the rails leave no space
     *     between them
     */
    public static RailHeights of(RailSpec spec, Length clearance, Slope grade) {
        if (clearance.isNegative()) {
            throw new IllegalArgumentException("clearance was " + clearance
                    + "; it must be 0 or more, so lift the boards out of the ground first");
        }
        return new RailHeights(spec, clearance, grade);
    }

    /**
     * Returns the marks of each rail, the bottom rail first and the top rail last.
     *
     * @return the marks, to the nanometre, unmodifiable
     */
    public List<RailMarks> rails() {
        return IntStream.range(0, spec.rails()).mapToObj(this::rail).toList();
    }

    /** All spaces are alike but for a nanometre, and end exactly at the top rail. */
    private RailMarks rail(int rail) {
        Length bottom = clearance
                .plus(spec.bottomRailAboveBottoms())
                .plus(plumbDepth.times(rail))
                .plus(room.portion(rail, spec.rails() - 1));
        return new RailMarks(bottom, bottom.plus(plumbDepth));
    }

    /**
     * Returns how the marks come about.
     *
     * @return the calculation; its last line is the top mark of the rail below the top rail
     */
    public Worksheet worksheet() {
        int between = spec.rails() - 2;
        RailMarks bottomRail = rail(0);
        RailMarks topRail = rail(spec.rails() - 1);
        Worksheet.Builder sheet = Worksheet.titled("Rail marks above the ground at a post")
                .given("board length", spec.boardLength(), Written.tape(spec.boardLength()))
                .given("clearance", clearance, Written.tape(clearance))
                .given("rail depth", spec.railDepth(), Written.tape(spec.railDepth()))
                .given("grade", grade, Written.percent(grade))
                .line(
                        "plumb depth",
                        "rail depth * sqrt(1 + grade^2)",
                        Written.inches(spec.railDepth()) + " * sqrt(1 + (" + Written.percent(grade) + ")^2)",
                        plumbDepth,
                        Written.inches(plumbDepth),
                        Citation.GEOMETRY)
                .line(
                        "top rail, top",
                        "clearance + board length - distance below the tops",
                        Written.inches(clearance) + " + " + Written.inches(spec.boardLength()) + " - "
                                + Written.inches(spec.topRailBelowTops()),
                        topRail.top(),
                        Written.tape(topRail.top()),
                        Citation.COMMON_PRACTICE)
                .line(
                        "top rail, bottom",
                        "top - plumb depth",
                        Written.inches(topRail.top()) + " - " + Written.inches(plumbDepth),
                        topRail.bottom(),
                        Written.tape(topRail.bottom()),
                        Citation.GEOMETRY)
                .line(
                        "bottom rail, bottom",
                        "clearance + distance above the bottoms",
                        Written.inches(clearance) + " + " + Written.inches(spec.bottomRailAboveBottoms()),
                        bottomRail.bottom(),
                        Written.tape(bottomRail.bottom()),
                        Citation.COMMON_PRACTICE);
        topMark(sheet, "bottom rail", bottomRail);
        if (between > 0) {
            Length clear = topRail.bottom().minus(bottomRail.top());
            Length space = room.dividedBy(between + 1);
            sheet.line(
                            "clear height",
                            "bottom of top rail - top of bottom rail",
                            Written.inches(topRail.bottom()) + " - " + Written.inches(bottomRail.top()),
                            clear,
                            Written.inches(clear),
                            Citation.GEOMETRY)
                    .line(
                            "space",
                            "(clear height - rails between * plumb depth) / (rails between + 1)",
                            "(" + Written.inches(clear) + " - " + between + " * " + Written.inches(plumbDepth) + ") / "
                                    + (between + 1),
                            space,
                            Written.tape(space),
                            Citation.GEOMETRY);
            for (int rail = 1; rail <= between; rail++) {
                String name = between == 1 ? "middle rail" : "middle rail " + rail;
                Length under = rail(rail - 1).top();
                Length bottom = rail(rail).bottom();
                sheet.line(
                        name + ", bottom",
                        "top of the rail under it + space",
                        Written.inches(under) + " + " + Written.inches(space),
                        bottom,
                        Written.tape(bottom),
                        Citation.GEOMETRY);
                topMark(sheet, name, rail(rail));
            }
        }
        return sheet.build();
    }

    private void topMark(Worksheet.Builder sheet, String rail, RailMarks marks) {
        sheet.line(
                rail + ", top",
                "bottom + plumb depth",
                Written.inches(marks.bottom()) + " + " + Written.inches(plumbDepth),
                marks.top(),
                Written.tape(marks.top()),
                Citation.GEOMETRY);
    }
}
