package org.fencecore.gate.hang;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * What a leaf does to the post it hangs on, in plain amounts that a footing or a beam calculation takes.
 *
 * <pre>
 * arm of the weight   a = post width / 2 + gap and build-out + centre of gravity from the hinge edge
 * moment              weight x a + load at the latch x (post width / 2 + gap and build-out + leaf width)
 * </pre>
 *
 * <p>The moment of the weight is in the plane of the leaf, the same at any height of the post; the wind is square to it.
 * A leaf that stands open turns its weight across the fence, and a wind along the fence then has all of its face. Shut, its
 * weight is in line with the fence and the wind across it.
 *
 * <p>Source: statics. Example: a leaf of 76.83 lbf, its centre 23 3/8 in from its hinge edge, 1/2 in from a post of 3 1/2 in:
 * 76.83 x (1.75 + 0.5 + 23.375) / 12 = 164.1 lbf-ft.
 *
 * <pre>{@code
 * HingePostLoad post = HingePostLoad.of(loads, Length.ofInches(3.5))
 *         .withWind(LeafWind.on(loads, Pressure.ofPsf(20), Length.ofInches(2), Length.ofInches(74), Length.ofInches(6)));
 * // For its footing.
 * LateralLoad.of(post.wind(), post.windHeight()).withGate(post.moment());     // 467.5 lbf at 3.3917 ft above grade, gate of 164 lbf-ft
 * }</pre>
 */
public final class HingePostLoad {

    private final HingeLoads loads;
    private final Length postWidth;
    private final @Nullable LeafWind wind;

    private HingePostLoad(HingeLoads loads, Length postWidth, @Nullable LeafWind wind) {
        this.loads = loads;
        this.postWidth = postWidth;
        this.wind = wind;
    }

    /**
     * Returns what the weight of a leaf does to its post.
     *
     * @param loads the leaf on its hinges
     * @param postWidth how wide the post is along the fence, over 0, to 100 ft
     * @return weight and moment, without wind
     * @throws IllegalArgumentException if the width is out of range
     */
    public static HingePostLoad of(HingeLoads loads, Length postWidth) {
        return new HingePostLoad(Objects.requireNonNull(loads, "loads"), Sizes.require("postWidth", postWidth), null);
    }

    /**
     * Returns the same with the wind on the leaf.
     *
     * @param onLeaf the wind, on the leaf as it stands open or is held
     * @return weight, moment and wind
     */
    public HingePostLoad withWind(LeafWind onLeaf) {
        return new HingePostLoad(loads, postWidth, Objects.requireNonNull(onLeaf, "onLeaf"));
    }

    /**
     * Returns what hangs on the post.
     *
     * @return the weight of the leaf and what hangs on its latch, straight down
     */
    public Force weight() {
        return loads.carried();
    }

    /** From the middle of the post to the hinge edge of the leaf. */
    private Length toLeaf() {
        return postWidth.dividedBy(2).plus(leafWeight().leaf().spec().besideHinges());
    }

    private LeafWeight leafWeight() {
        return loads.leafWeight();
    }

    private Length arm() {
        return toLeaf().plus(leafWeight().fromHingeEdge());
    }

    /**
     * Returns the moment of what hangs on the post about its middle.
     *
     * @return the moment, in the plane of the leaf
     */
    public Moment moment() {
        Force atLatch = loads.hinges().loadAtLatch();
        return leafWeight()
                .total()
                .times(arm())
                .plus(atLatch.times(toLeaf().plus(leafWeight().leaf().width())));
    }

    /**
     * Returns the wind that comes to the post through the hinges.
     *
     * @return the level force, square to the leaf; zero if no wind was given
     */
    public Force wind() {
        return wind == null ? Force.ZERO : wind.onHinges();
    }

    /**
     * Returns how high it acts.
     *
     * @return the height over the ground; zero if no wind was given
     */
    public Length windHeight() {
        return wind == null ? Length.ZERO : wind.heightOnPost();
    }

    /**
     * Returns the wind on the leaf.
     *
     * @return the wind, if it was given
     */
    public Optional<LeafWind> leafWind() {
        return Optional.ofNullable(wind);
    }

    /**
     * Returns the moment at the foot of the post with both going the same way, as a footing is worked out.
     *
     * @return moment of the weight and moment of the wind
     */
    public Moment atGround() {
        return wind == null ? moment() : moment().plus(wind.atGround());
    }

    /**
     * Returns the load of the post worked out line by line.
     *
     * @return the worksheet; its last line is {@link #atGround}
     */
    public Worksheet worksheet() {
        LeafWeight leaf = leafWeight();
        Length beside = leaf.leaf().spec().besideHinges();
        Force atLatch = loads.hinges().loadAtLatch();
        Worksheet.Builder sheet = Worksheet.titled("Hinge post")
                .given("weight of the leaf W", leaf.total(), Written.force(leaf.total()))
                .given("post width b", postWidth, Written.tape(postWidth))
                .given("gap and build-out beside the hinges g", beside, Written.tape(beside))
                .given(
                        "centre of gravity from the hinge edge x",
                        leaf.fromHingeEdge(),
                        Written.tape(leaf.fromHingeEdge()))
                .line(
                        "arm of the weight a",
                        "b / 2 + g + x",
                        Written.inches(postWidth) + " / 2 + " + Written.inches(beside) + " + "
                                + Written.inches(leaf.fromHingeEdge()),
                        arm(),
                        Written.inches(arm()),
                        Citation.GEOMETRY);
        String byWeight = Written.force(leaf.total()) + " x " + Written.feet(arm());
        if (atLatch.isPositive()) {
            Length toLatch = toLeaf().plus(leaf.leaf().width());
            sheet.given("load at the latch", atLatch, Written.force(atLatch));
            byWeight += " + " + Written.force(atLatch) + " x " + Written.feet(toLatch);
        }
        sheet.line(
                "moment of the weight Mg",
                atLatch.isPositive() ? "W a + load at the latch x (b / 2 + g + leaf width)" : "W a",
                byWeight,
                moment(),
                Written.moment(moment()),
                Citation.GEOMETRY);
        if (wind != null) {
            wind.explain(sheet);
            sheet.line(
                    "moment at the foot of the post",
                    "Mg + M, as if both went one way",
                    Written.moment(moment()) + " + " + Written.moment(wind.atGround()),
                    atGround(),
                    Written.moment(atGround()),
                    Citation.GEOMETRY);
        }
        return sheet.build();
    }

    @Override
    public String toString() {
        return Written.force(weight()) + " down, " + Written.moment(moment()) + ", " + Written.force(wind())
                + " of wind";
    }
}
