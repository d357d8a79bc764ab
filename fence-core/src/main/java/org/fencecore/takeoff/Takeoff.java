package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Written;

/**
 * What to buy for a plan, which pieces to cut, and which stick each comes from.
 *
 * <p><b>Lumber.</b> Every piece of the plan is listed once and put on a stick of its lumber, so that the sticks cost the
 * least, or without prices have the least length in all, that {@link org.fencecore.cutting.CuttingPlan} finds;
 * {@link #cuts} says how near to the least there is that is proven to be. Rails and gate parts of the same lumber share
 * sticks, and boards share theirs with boards. Each piece takes its length over all and one saw cut, of the kerf or, off
 * square, of kerf / cos(cut), and slanting ends are not nested; the last cut of a stick may run off its end. Sticks are
 * taken at the length they are sold by, less the trim. Over 100,000 boards are cut by length, each length from the
 * stick that is best for it alone.
 *
 * <p><b>The rest</b> is counted by rule, and rounded up:
 *
 * <table>
 * <caption>What is counted how</caption>
 * <tr><th scope="col">item</th><th scope="col">rule</th><th scope="col">source</th></tr>
 * <tr><td>concrete mix</td><td>the bags each hole takes, rounded up hole by hole</td><td>see {@code BagSize}</td></tr>
 * <tr><td>gravel</td><td>the sum over all holes, up to the next half cubic foot, which is a bag</td><td>1</td></tr>
 * <tr><td>screws or nails for boards</td><td>2 where a board crosses a rail, of the fence or of a gate, or a horizontal
 * board a post or nailer, or ends there; shorter than board and rail are thick together</td><td>1</td></tr>
 * <tr><td>screws, rails to posts</td><td>2 at each end of a rail; they reach 2 in into the post</td><td>1</td></tr>
 * <tr><td>screws, gate frames</td><td>2 at each end of a rail or brace, and at the stile end of a block; they reach 2 in past the stile</td><td>1</td></tr>
 * <tr><td>screws or nails for what covers boards</td><td>1 in the middle of a batten, or 2 in a board over boards, at each
 * rail; longer by its thickness</td><td>1</td></tr>
 * <tr><td>screws, kick boards</td><td>2 at each end, and 2 for each cleat, 1 of which holds an end between posts</td><td>1</td></tr>
 * <tr><td>post caps</td><td>1 a post if the style has caps, with 2 nails or screws</td><td>1</td></tr>
 * <tr><td>coating of fasteners</td><td>hot-dip galvanized or stainless in treated wood</td><td>2</td></tr>
 * <tr><td>hinges</td><td>as many a leaf as the style says, or 2; 3 if its frame is over 5 ft high, or it is wider than is
 * reasonable; self-closing at a pool</td><td>1</td></tr>
 * <tr><td>latches</td><td>1 a gate; self-latching at a pool</td><td>1</td></tr>
 * <tr><td>cables of gates</td><td>1 a brace that is a cable</td><td>1</td></tr>
 * <tr><td>drop rods</td><td>1 for two leaves</td><td>1</td></tr>
 * <tr><td>batter boards</td><td>1 at each end of a string</td><td>1</td></tr>
 * <tr><td>mason's line</td><td>each string and 3 ft past both ends, up to the next foot in all</td><td>1</td></tr>
 * <tr><td>stakes</td><td>1 a post</td><td>1</td></tr>
 * <tr><td>braces with stakes</td><td>2 a post that is set in concrete</td><td>1</td></tr>
 * <tr><td>marking paint</td><td>1 can for each 50 holes begun</td><td>1</td></tr>
 * </table>
 *
 * <p>Sources: 1 common practice, no source; 2 IBC 2012, section 2304.9.5.
 *
 * <p>Left out: spares and waste, spilt concrete and holes wider than true, splices, what stains and caps take, and
 * whether fasteners and hinges carry their load. Local code and licensed practice decide.
 *
 * <p>A takeoff is immutable. It takes up to 100,000 posts, rails and gate parts, and up to 10,000,000 boards.
 *
 * <p>Example: see the package.
 */
public final class Takeoff {

    private static final int PLACES_NAMED = 6;

    private final TakeoffSpec spec;
    private final List<Piece> pieces;
    private final List<Stick> sticks;
    private final List<LumberCut> cuts;
    private final List<MaterialLine> materials;
    private final List<Finding> findings;

    private Takeoff(FencePlan plan, TakeoffSpec spec) {
        this.spec = spec;
        this.pieces = PieceList.of(plan);
        Cutting cutting = Cutting.of(pieces, spec);
        this.sticks = cutting.sticks();
        this.cuts = cutting.cuts();
        this.materials = Materials.of(plan, pieces, sticks, spec);
        this.findings = findings(plan, pieces, spec);
    }

    /**
     * Takes off a plan with a kerf of 1/8 in and 60 lb bags of concrete mix.
     *
     * @param plan the plan, buildable or not
     * @return the takeoff
     * @throws IllegalArgumentException if the plan has over 100,000 posts, rails and gate parts or over 10,000,000 boards
     */
    public static Takeoff of(FencePlan plan) {
        return of(plan, TakeoffSpec.builder().build());
    }

    /**
     * Takes off a plan.
     *
     * @param plan the plan, buildable or not
     * @param spec how to count
     * @return the takeoff
     * @throws IllegalArgumentException if the plan has over 100,000 posts, rails and gate parts or over 10,000,000 boards
     */
    public static Takeoff of(FencePlan plan, TakeoffSpec spec) {
        return new Takeoff(plan, spec);
    }

    /**
     * Returns how it counts.
     *
     * @return the spec
     */
    public TakeoffSpec spec() {
        return spec;
    }

    /**
     * Returns every piece to cut, once: posts, rails bay by bay, the parts of each gate, and boards, those alike of one
     * stretch or gate in one entry.
     *
     * @return the pieces, unmodifiable
     */
    public List<Piece> pieces() {
        return pieces;
    }

    /**
     * Returns the cut list: the sticks to buy and which pieces come from which. Pieces too long for any length sold are
     * on none of them.
     *
     * @return the sticks, by lumber and, within it, in the order of their longest piece, unmodifiable
     */
    public List<Stick> sticks() {
        return sticks;
    }

    /**
     * Returns how near to the least the sticks are, lumber by lumber: proven best, or with the gap that is left.
     *
     * @return one for each kind of lumber that is cut, in the order of the sticks, unmodifiable
     */
    public List<LumberCut> cuts() {
        return cuts;
    }

    /**
     * Returns the shopping list in the order in which it is loaded: posts, rails and gate lumber, boards, of each the longest sticks first, lumber to order,
     * then bags, then hardware, and last what the layout takes, which is wanted first on site.
     *
     * @return the lines, unmodifiable; what is not needed has none
     */
    public List<MaterialLine> materials() {
        return materials;
    }

    /**
     * Returns what keeps the list from being bought or cut as it stands:
     *
     * <ul>
     *   <li>{@code piece-too-long}, a blocker: no length sold is long enough; the shopping list has the piece as one to
     *       order;
     *   <li>{@code plan-not-buildable}, a warning: the plan has blockers, and what could not be laid out is not counted.
     * </ul>
     *
     * <p>The findings of the plan are not repeated.
     *
     * @return the findings, most serious first, unmodifiable; empty if all is well
     */
    public List<Finding> findings() {
        return findings;
    }

    private static List<Finding> findings(FencePlan plan, List<Piece> pieces, TakeoffSpec spec) {
        List<Finding> findings = new ArrayList<>();
        alike(pieces.stream().filter(piece -> piece.isTooLong(spec)).toList())
                .forEach(places -> findings.add(tooLong(places, spec.cutting().endTrim())));
        long blockers = plan.findings().stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .count();
        if (blockers > 0) {
            findings.add(Finding.warning(
                            "plan-not-buildable",
                            "plan",
                            "the plan has " + blockers + (blockers == 1 ? " blocker" : " blockers")
                                    + ", and what could not be laid out is not counted here")
                    .withRemedy("settle them first, then take off again"));
        }
        return List.copyOf(findings);
    }

    /** Pieces of one kind and length share a finding. */
    private static List<List<Piece>> alike(List<Piece> pieces) {
        record Size(PieceKind kind, Length overall) {}
        Map<Size, List<Piece>> sizes = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            sizes.computeIfAbsent(new Size(piece.kind(), piece.overall()), size -> new ArrayList<>())
                    .add(piece);
        }
        return List.copyOf(sizes.values());
    }

    private static String places(List<Piece> pieces) {
        List<String> labels = pieces.stream().map(Piece::label).distinct().toList();
        int more = labels.size() - PLACES_NAMED;
        return more <= 0
                ? Written.list(labels)
                : String.join(", ", labels.subList(0, PLACES_NAMED)) + " and " + more + " more like these";
    }

    private static Finding tooLong(List<Piece> pieces, Length trim) {
        Piece piece = pieces.get(0);
        Lumber lumber = piece.lumber();
        Length longest = lumber.lengths().get(lumber.lengths().size() - 1);
        String needed = Written.tape(piece.overall(), Rounding.UP);
        String remedy = piece.kind() == PieceKind.RAIL
                ? "set the posts nearer together, or order " + lumber + " of that length"
                : "order " + lumber + " of that length, and add it to the lengths sold";
        return Finding.blocker(
                        "piece-too-long",
                        places(pieces),
                        "the " + piece.kind() + " takes " + needed + ", and the longest " + lumber + " sold is "
                                + Written.stock(longest)
                                + (trim.isZero() ? "" : " less " + Written.tape(trim) + " of trim"))
                .withRemedy(remedy)
                .withSource(Citation.GEOMETRY);
    }

    /**
     * Describes the takeoff.
     *
     * @return the shopping list, a line each
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("takeoff");
        materials.forEach(line -> text.append("\n  ").append(line));
        return text.toString();
    }
}
