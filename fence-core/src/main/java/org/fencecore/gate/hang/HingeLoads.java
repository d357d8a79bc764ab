package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * What the weight of a leaf does to its hinges, its braces and its post.
 *
 * <pre>
 * moment about the pins     M = weight x (pin from leaf + centre of gravity from hinge edge)
 *                             + load at the latch x (pin from leaf + leaf width)
 * pull at a hinge           M x y / sum of y^2,  y its height over the lowest hinge
 * push at the lowest hinge  the sum of the pulls above it
 * two hinges s apart        pull = push = M / s
 * load at the latch edge that the frame must hold
 *                           P = weight x centre of gravity from hinge edge / leaf width + load at the latch
 * force in a brace          P / (number of braces x sin rise)
 * </pre>
 *
 * <p>The leaf is taken as rigid, turning about the lowest hinge, so that each hinge above is pulled in proportion to its
 * height. Which hinge carries the weight depends on how they are set; every one should be able to carry all of it. In the
 * brace the joints of the frame are taken to turn freely, so that the braces alone keep it from racking; boards screwed
 * to the frame help, and are not counted.
 *
 * <p>Left out: swinging and slamming, buckling of a slender brace, and the strength of the hinges themselves. The wind is
 * of {@link LeafWind}, and the post of {@link HingePostLoad}.
 *
 * <p>Source: statics. Example: a leaf of 300 N with its centre 0.9 m from the pins, on two hinges 1.2 m apart, pulls and
 * pushes 300 x 0.9 / 1.2 = 225 N; a lower hinge that carries all the weight bears 375 N at 53.13 degrees from level.
 */
public final class HingeLoads {

    private static final int MOST_ADVISED = 6;

    private final LeafWeight leafWeight;
    private final HingeSpec spec;
    private final List<Length> heights;

    private HingeLoads(LeafWeight leafWeight, HingeSpec spec, List<Length> heights) {
        this.leafWeight = leafWeight;
        this.spec = spec;
        this.heights = heights;
    }

    /**
     * Works out the loads of a leaf on its hinges.
     *
     * @param leafWeight the leaf and its weight
     * @param spec how it is hung
     * @return the loads
     * @throws IllegalArgumentException if a hinge is beyond the frame, or there is no room between them
     */
    public static HingeLoads of(LeafWeight leafWeight, HingeSpec spec) {
        Objects.requireNonNull(leafWeight, "leafWeight");
        return new HingeLoads(leafWeight, spec, spec.heightsOn(leafWeight.leaf()));
    }

    /**
     * Returns the leaf and its weight.
     *
     * @return what hangs on the hinges
     */
    public LeafWeight leafWeight() {
        return leafWeight;
    }

    /**
     * Returns how the leaf is hung.
     *
     * @return the hinges
     */
    public HingeSpec hinges() {
        return spec;
    }

    private GateLeaf leaf() {
        return leafWeight.leaf();
    }

    /**
     * Returns what the hinges carry down: the leaf and what hangs on its latch.
     *
     * @return the weight
     */
    public Force carried() {
        return leafWeight.total().plus(spec.loadAtLatch());
    }

    private Length weightArm() {
        return spec.pinFromLeaf().plus(leafWeight.fromHingeEdge());
    }

    Length latchArm() {
        return spec.pinFromLeaf().plus(leaf().width());
    }

    /** How far the lowest and the highest hinge are apart. */
    Length apart() {
        return heights.get(heights.size() - 1).minus(heights.get(0));
    }

    /**
     * Returns the moment of the weight about the pins, which the hinges hold.
     *
     * @return the moment
     */
    public Moment moment() {
        return leafWeight.total().times(weightArm()).plus(spec.loadAtLatch().times(latchArm()));
    }

    /**
     * Returns the level force at each hinge, the lowest first.
     *
     * @return away from the post where positive, against it where negative; together zero
     */
    public List<Force> pulls() {
        double squares = 0;
        for (Length height : heights) {
            double y = height.minus(heights.get(0)).metres();
            squares += y * y;
        }
        List<Force> pulls = new ArrayList<>();
        Force sum = Force.ZERO;
        for (Length height : heights.subList(1, heights.size())) {
            double y = height.minus(heights.get(0)).metres();
            Force pull = Force.ofNewtons(moment().newtonMetres() * y / squares);
            pulls.add(pull);
            sum = sum.plus(pull);
        }
        pulls.add(0, sum.negated());
        return List.copyOf(pulls);
    }

    /**
     * Returns the pull at the top hinge, the greatest there is.
     *
     * @return the pull away from the post
     */
    public Force pullAtTop() {
        List<Force> pulls = pulls();
        return pulls.get(pulls.size() - 1);
    }

    /**
     * Returns the load at the latch edge that the frame must keep from sinking.
     *
     * @return the share of the weight that hangs at the latch edge, and the load there
     */
    public Force atLatch() {
        return leafWeight
                .total()
                .times(leafWeight.fromHingeEdge().ratioTo(leaf().width()))
                .plus(spec.loadAtLatch());
    }

    /**
     * Returns the force along each brace, shared alike.
     *
     * @return the push in wood or the pull in a cable; negative where it is the wrong way round; empty without braces
     * @throws IllegalArgumentException if a brace does not rise from foot to head, which the leaf's findings tell
     */
    public List<Force> inBraces() {
        List<GateBrace> braces = leaf().braces();
        return braces.stream()
                .map(brace -> brace.forceFrom(atLatch().dividedBy(braces.size())))
                .toList();
    }

    /**
     * Returns how few hinges evenly spread between the lowest and the highest would keep the pull at the top within what
     * the screws of one hinge hold.
     *
     * @return the number, from 2 to 6; empty if screws are not judged or even 6 hinges would pull more
     */
    public OptionalInt fewestHinges() {
        if (spec.screws().isEmpty()) {
            return OptionalInt.empty();
        }
        Force held = spec.screws().get().ofHinge();
        for (int number = 2; number <= MOST_ADVISED; number++) {
            if (of(leafWeight, spec.withCount(leaf(), number)).pullAtTop().compareTo(held) <= 0) {
                return OptionalInt.of(number);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Returns everything a builder should know about the hinges: warnings {@code hinge-screws-pull} and
     * {@code hinge-screws-end-grain}, note {@code hinges-usual}.
     *
     * @return the findings, unmodifiable; none if all is well
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        spec.screws().ifPresent(screws -> judge(screws, findings));
        int usual = leaf().usualHinges();
        if (spec.count() < usual) {
            findings.add(Finding.note(
                            "hinges-usual",
                            "gate hinges",
                            "a leaf " + Written.tape(leaf().width()) + " wide and "
                                    + Written.tape(leaf().frameHeight()) + " high usually has " + usual
                                    + " hinges, not " + spec.count())
                    .withRemedy("add a hinge near the top one")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    private void judge(HingeScrews screws, List<Finding> findings) {
        if (screws.isInEndGrain()) {
            findings.add(Finding.warning(
                            "hinge-screws-end-grain",
                            "gate hinges",
                            "the hinges are screwed into end grain, which does not hold screws well")
                    .withRemedy("screw them into the face or edge of a stile, or set an infill block behind them")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        if (pullAtTop().compareTo(screws.ofHinge()) > 0) {
            OptionalInt enough = fewestHinges();
            findings.add(Finding.warning(
                            "hinge-screws-pull",
                            "top gate hinge",
                            "the leaf pulls " + Written.force(pullAtTop()) + " at the top hinge, over the "
                                    + Written.force(screws.ofHinge()) + " its screws hold in withdrawal")
                    .withRemedy("set the hinges further apart, use longer or more screws, lag screws or bolts"
                            + (enough.isPresent() ? ", or hang it on " + enough.getAsInt() + " hinges" : ""))
                    .withSource(Nds.SCREW_WITHDRAWAL));
        }
    }

    /**
     * Returns the pull on the hinges and the force in the braces worked out line by line; the screws have a worksheet of
     * their own.
     *
     * @return the worksheet; its last line is {@link #pullAtTop}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Gate hinges")
                .given("weight of the leaf", leafWeight.total(), Written.force(leafWeight.total()))
                .given(
                        "centre of gravity from the hinge edge x",
                        leafWeight.fromHingeEdge(),
                        Written.tape(leafWeight.fromHingeEdge()))
                .given("pin from the leaf e", spec.pinFromLeaf(), Written.tape(spec.pinFromLeaf()))
                .given("leaf width w", leaf().width(), Written.tape(leaf().width()))
                .given("load at the latch", spec.loadAtLatch(), Written.force(spec.loadAtLatch()));
        for (int i = 0; i < heights.size(); i++) {
            sheet.given("height of hinge " + (i + 1), heights.get(i), Written.tape(heights.get(i)));
        }
        String weight = Written.force(leafWeight.total());
        sheet.line(
                "load at the latch edge P",
                "weight x x / w + load at the latch",
                weight + " x " + Written.inches(leafWeight.fromHingeEdge()) + " / " + Written.inches(leaf().width())
                        + " + " + Written.force(spec.loadAtLatch()),
                atLatch(),
                Written.force(atLatch()),
                Citation.GEOMETRY);
        braces(sheet);
        String e = Written.feet(spec.pinFromLeaf());
        sheet.line(
                "moment about the pins M",
                "weight x (e + x) + load at the latch x (e + w)",
                weight + " x (" + e + " + " + Written.feet(leafWeight.fromHingeEdge()) + ") + "
                        + Written.force(spec.loadAtLatch()) + " x (" + e + " + "
                        + Written.feet(leaf().width()) + ")",
                moment(),
                Written.moment(moment()),
                Citation.GEOMETRY);
        List<Force> pulls = pulls();
        for (int i = 1; i < pulls.size() - 1; i++) {
            pull(sheet, "pull at hinge " + (i + 1), i, pulls.get(i));
        }
        sheet.line(
                "push at hinge 1",
                "sum of the pulls",
                "",
                pulls.get(0).negated(),
                Written.force(pulls.get(0).negated()),
                Citation.GEOMETRY);
        pull(sheet, "pull at the top hinge", pulls.size() - 1, pullAtTop());
        return sheet.build();
    }

    private void braces(Worksheet.Builder sheet) {
        List<GateBrace> braces = leaf().braces();
        if (braces.stream().anyMatch(brace -> !brace.rise().isPositive())) {
            return;
        }
        for (int i = 0; i < braces.size(); i++) {
            Force force = inBraces().get(i);
            sheet.line(
                    "force in " + braces.get(i).kind() + " " + (i + 1),
                    "P / (number x sin rise)",
                    Written.force(atLatch()) + " / (" + braces.size() + " x sin "
                            + Written.degrees(braces.get(i).rise()) + ")",
                    force,
                    Written.force(force),
                    Citation.GEOMETRY);
        }
    }

    private void pull(Worksheet.Builder sheet, String name, int hinge, Force pull) {
        StringBuilder squares = new StringBuilder();
        for (Length height : heights.subList(1, heights.size())) {
            squares.append(squares.isEmpty() ? "" : " + ")
                    .append('(')
                    .append(Written.feet(height.minus(heights.get(0))))
                    .append(")^2");
        }
        sheet.line(
                name,
                "M y / sum of y^2",
                Written.moment(moment()) + " x "
                        + Written.feet(heights.get(hinge).minus(heights.get(0))) + " / (" + squares + ")",
                pull,
                Written.force(pull),
                Citation.GEOMETRY);
    }

    @Override
    public String toString() {
        return spec + ", " + Written.force(pullAtTop()) + " away from the post at the top";
    }
}
