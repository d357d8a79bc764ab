package org.fencecore.stakeout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.FencePlan;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The strings of a plan: what to stretch, where the boards that hold them stand, and what proves that they are right
 * before the first hole is dug.
 *
 * <p>Each run has a string on the outside face of its posts, from where it crosses the string before to where it crosses
 * the next, carried on by the set-back to a board beyond each corner. Corners are proved one by one with a check
 * triangle, and all together by diagonals: across each corner, from the corner before to the corner after, with bends
 * passed over.
 *
 * <p>All distances are level and in plan; strings are taken as straight and without sag. It does not know what stands on
 * the lot, so a house corner may be in the way.
 *
 * <p>Sources: batter boards, diagonals and 3-4-5 triangles, NAVEDTRA 14043, fig. 5-16; 4 ft of set-back, common practice,
 * no source.
 *
 * <p>Example: a lot of 50 by 40 ft with strings 6 in inside takes four strings of 49 and 39 ft, 57 and 47 ft from board
 * to board. Both diagonals are the square root of 49² + 39², 62 ft 7 1/2 in, and each corner is proved by 36, 48 and 60 ft.
 *
 * <pre>{@code
 * StringLayout layout = StringLayout.of(plan);
 * layout.strings().get(0).lengthBetweenBoards();     // 57 ft
 * layout.corners().get(0).diagonal();                // 60 ft
 * layout.diagonals().get(0).length();                // 62.6259 ft
 * }</pre>
 */
public final class StringLayout {

    static final Length EIGHTH = Length.ofInches(1).dividedBy(8);

    /** A corner that 1/8 in can put off by more is hardly proved. */
    private static final Angle BLURRED = Angle.ofDegrees(1);

    private final StringSpec spec;
    private final List<StringLine> strings;
    private final List<StringCorner> corners;
    private final List<ProvingDiagonal> diagonals;

    StringLayout(
            StringSpec spec, List<StringLine> strings, List<StringCorner> corners, List<ProvingDiagonal> diagonals) {
        this.spec = spec;
        this.strings = List.copyOf(strings);
        this.corners = List.copyOf(corners);
        this.diagonals = List.copyOf(diagonals);
    }

    /**
     * Returns the strings of a plan with boards 4 ft beyond the corners.
     *
     * @param plan the plan, buildable or not
     * @return the layout, without strings if the plan has no runs
     */
    public static StringLayout of(FencePlan plan) {
        return of(plan, StringSpec.builder().build());
    }

    /**
     * Returns the strings of a plan.
     *
     * @param plan the plan, buildable or not
     * @param spec where boards stand and what the tape is like
     * @return the layout, without strings if the plan has no runs
     */
    public static StringLayout of(FencePlan plan, StringSpec spec) {
        Objects.requireNonNull(spec, "spec");
        return new Stretching(plan, spec).layout();
    }

    /**
     * Returns where boards stand and what the tape is like.
     *
     * @return the spec
     */
    public StringSpec spec() {
        return spec;
    }

    /**
     * Returns the strings.
     *
     * @return one for each run, in their order, unmodifiable
     */
    public List<StringLine> strings() {
        return strings;
    }

    /**
     * Returns the corners where two strings cross.
     *
     * @return corners and bends along the fence, unmodifiable
     */
    public List<StringCorner> corners() {
        return corners;
    }

    /**
     * Returns all batter boards.
     *
     * @return the boards in the order of their numbers, unmodifiable
     */
    public List<BatterBoard> boards() {
        List<BatterBoard> boards = new ArrayList<>();
        for (StringLine string : strings) {
            string.boardAtStart().ifPresent(boards::add);
            string.boardAtEnd().ifPresent(boards::add);
        }
        return List.copyOf(boards);
    }

    /**
     * Returns the distances that prove the strings all together.
     *
     * @return one across each corner, bends left out, and none twice; unmodifiable
     */
    public List<ProvingDiagonal> diagonals() {
        return diagonals;
    }

    /**
     * Returns what is to be watched for:
     *
     * <ul>
     *   <li>warning {@code corner-hard-to-prove}, a corner that the tape cannot tell to within a degree;
     *   <li>note {@code board-off-lot}, batter boards that stand on a neighbour's ground or in the street.
     * </ul>
     *
     * @return all findings, unmodifiable
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (StringCorner corner : corners) {
            boolean proved = corner.meaningOf(EIGHTH)
                    .filter(off -> off.compareTo(BLURRED) <= 0)
                    .isPresent();
            if (!proved && !corner.isBend()) {
                findings.add(Finding.warning(
                                "corner-hard-to-prove",
                                corner.toString(),
                                "with " + Written.tape(corner.onArriving()) + " on one string and "
                                        + Written.tape(corner.onLeaving())
                                        + " on the other, 1/8 in on the tape is over 1 degree")
                        .withRemedy("set this corner by the diagonals and by its ties to the lot corner")
                        .withSource(Citation.GEOMETRY));
            }
        }
        List<BatterBoard> off =
                boards().stream().filter(board -> !board.isOnLot()).toList();
        if (!off.isEmpty()) {
            String numbers = Written.list(
                    off.stream().map(board -> Integer.toString(board.number())).toList());
            findings.add(Finding.note(
                            "board-off-lot",
                            "strings",
                            (off.size() == 1
                                            ? "batter board " + numbers + " stands"
                                            : "batter boards " + numbers + " stand")
                                    + " outside the boundary, " + Written.tape(spec.setBack())
                                    + " beyond the corner of the strings")
                    .withRemedy(
                            "ask the neighbour or the street's owner first, set boards nearer, or tie the string to a"
                                    + " stake at the corner and prove it again after digging there"));
        }
        return List.copyOf(findings);
    }

    /**
     * Works out how each corner is proved, line by line.
     *
     * @return a worksheet for each corner, ending with its diagonal, unmodifiable
     */
    public List<Worksheet> worksheets() {
        return corners.stream().map(StringCorner::worksheet).toList();
    }
}
