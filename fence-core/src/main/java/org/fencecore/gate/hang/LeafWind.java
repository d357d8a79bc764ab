package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.units.Area;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The wind square to a leaf, and how it goes into the hinges and into what holds the latch edge: a latch, a hook that holds
 * it open, a rod in the ground, or nothing.
 *
 * <pre>
 * wind on the leaf          F = pressure x width x (top - bottom),  at z = larger of 0.55 top and (bottom + top) / 2
 * held at the latch edge    R = (F (e + w/2) + L (e + w)) / (e + w),  at the height of what holds it
 * level on the hinges       P = F + L - R
 * moment at the ground      M = F z + L zl - R zr
 * square at one hinge       P / n + (M - P y) (yi - y) / sum of (yi - y)^2,  y the mean height of the hinges
 * </pre>
 *
 * <p>with the leaf w wide, its pins e from it, and the push L of another leaf that latches to it at the height zl. It is
 * the statics of a stiff plate on a plumb line of hinges and one more place. A leaf that nothing holds leaves all of the
 * wind to its hinges, and to the stop that it swings against.
 *
 * <p>A rod holds the foot of a fixed leaf, not its head: the ground takes half of its wind and all of what the other leaf
 * pushes, but with no height. So the moment at the foot of its post is that of its own wind and half of the other leaf's,
 * while the other leaf's post has half of its own.
 *
 * <p>Left out: gusts that swing and slam it, the twist that an open leaf puts on its post, and how stiff the leaf is.
 *
 * <p>Sources: statics; where the wind acts is of ASCE 7-16, figure 29.3-1, as for the fence. Example: 20 psf on a leaf 4 ft
 * wide, its boards from 2 to 74 in up, is 480 lbf at 40.7 in. With pins 1/4 in from it and a latch 40.7 in up, 241.2 lbf go
 * to the latch and 238.8 lbf to the hinges, as high up; on a rod in the ground the hinge post has the 238.8 lbf at 81.8 in.
 */
public final class LeafWind {

    private static final Citation RESULTANT =
            Citation.of("Minimum Design Loads for Buildings and Other Structures, ASCE 7", "figure 29.3-1", "2016");
    private static final Ratio WALL_ON_GROUND = Ratio.of(0.55);

    private final HingeLoads loads;
    private final Pressure wind;
    private final Length bottom;
    private final Length top;
    private final Length frame;
    private final @Nullable Length hold;
    private final @Nullable LeafWind other;

    private LeafWind(
            HingeLoads loads,
            Pressure wind,
            Length bottom,
            Length top,
            Length frame,
            @Nullable Length hold,
            @Nullable LeafWind other) {
        this.loads = loads;
        this.wind = wind;
        this.bottom = bottom;
        this.top = top;
        this.frame = frame;
        this.hold = hold;
        this.other = other;
    }

    /**
     * Returns the wind on a leaf that nothing holds at its latch edge.
     *
     * @param loads the leaf on its hinges
     * @param wind the pressure over the whole face of the leaf, zero or more; where it lets wind through, with its solid part
     *     already taken
     * @param bottom how far its boards begin over the ground at its post, 0 to 100 ft
     * @param top how far they end over it, over {@code bottom}, to 100 ft
     * @param frame how far the lower edge of its frame is over it, 0 to 100 ft
     * @return the wind
     * @throws IllegalArgumentException if one is out of range
     */
    public static LeafWind on(HingeLoads loads, Pressure wind, Length bottom, Length top, Length frame) {
        Objects.requireNonNull(loads, "loads");
        if (wind.isNegative()) {
            throw new IllegalArgumentException(
                    "wind was " + Written.pressure(wind) + "; it must be zero or more, whichever way it blows");
        }
        Sizes.requireOrZero("bottom", bottom);
        Sizes.require("top", top);
        if (bottom.compareTo(top) >= 0) {
            throw new IllegalArgumentException(
                    "bottom was " + bottom + " and top " + top + "; the top must be higher, so check their order");
        }
        return new LeafWind(loads, wind, bottom, top, Sizes.requireOrZero("frame", frame), null, null);
    }

    /**
     * Returns the wind on this leaf held at its latch edge.
     *
     * @param aboveGround how high it is held over the ground: at a latch or a hook, or 0 by a rod in the ground; to 100 ft
     * @return the leaf, held there
     * @throws IllegalArgumentException if out of that range
     */
    public LeafWind heldAt(Length aboveGround) {
        return new LeafWind(loads, wind, bottom, top, frame, Sizes.requireOrZero("aboveGround", aboveGround), other);
    }

    /**
     * Returns the wind on this leaf with the other one of two latched to it.
     *
     * @param active the leaf that latches to this one, held at the height of its latch
     * @return this leaf with what that one pushes
     * @throws IllegalArgumentException if that one is not held, or this one is not
     */
    public LeafWind carrying(LeafWind active) {
        if (active.hold == null || hold == null) {
            throw new IllegalArgumentException(
                    (hold == null ? "this leaf" : "active") + " was not held at its latch edge;"
                            + " of two leaves call heldAt on the one for its latch and on the other for its rod");
        }
        return new LeafWind(loads, wind, bottom, top, frame, hold, active);
    }

    /**
     * Returns how hard the wind pushes the leaf.
     *
     * @return pressure times face
     */
    public Force force() {
        Area face = loads.leafWeight().leaf().width().times(top.minus(bottom));
        return wind.times(face);
    }

    /**
     * Returns how high the wind acts on the leaf.
     *
     * @return the height over the ground
     */
    public Length height() {
        return Length.max(top.times(WALL_ON_GROUND), bottom.plus(top).dividedBy(2));
    }

    private Optional<LeafWind> other() {
        return Optional.ofNullable(other);
    }

    private Force pushOfOther() {
        return other().map(LeafWind::atLatchEdge).orElse(Force.ZERO);
    }

    private Length heightOfOther() {
        return other().map(leaf -> Objects.requireNonNull(leaf.hold, "hold")).orElse(Length.ZERO);
    }

    /**
     * Returns how hard what holds the latch edge is pushed.
     *
     * @return the force on latch, hook or rod; zero if nothing holds it
     */
    public Force atLatchEdge() {
        if (hold == null) {
            return Force.ZERO;
        }
        Length middle = loads.latchArm().minus(loads.leafWeight().leaf().width().dividedBy(2));
        return force().times(middle.ratioTo(loads.latchArm())).plus(pushOfOther());
    }

    /**
     * Returns how hard the hinges are pushed together, and through them the post.
     *
     * @return the level force, square to the leaf
     */
    public Force onHinges() {
        return force().plus(pushOfOther()).minus(atLatchEdge());
    }

    /**
     * Returns the moment of the wind at the foot of the hinge post.
     *
     * @return the moment at the ground
     */
    public Moment atGround() {
        Length held = hold == null ? Length.ZERO : hold;
        return force().times(height())
                .plus(pushOfOther().times(heightOfOther()))
                .minus(atLatchEdge().times(held));
    }

    /**
     * Returns how high the force on the post acts, so that it has the moment at the ground.
     *
     * @return moment over force; zero without wind
     */
    public Length heightOnPost() {
        return onHinges().isZero()
                ? Length.ZERO
                : Length.ofMetres(atGround().newtonMetres() / onHinges().newtons());
    }

    /**
     * Returns the force square to the leaf at each hinge, shared as by hinges that give alike.
     *
     * @return the forces with the wind, the lowest hinge first; together what the hinges are pushed
     */
    public List<Force> atHinges() {
        List<Length> heights = loads.hinges().heightsOn(loads.leafWeight().leaf());
        int count = heights.size();
        double mean = heights.stream().mapToDouble(Length::metres).sum() / count;
        double squares = heights.stream()
                .mapToDouble(height -> (height.metres() - mean) * (height.metres() - mean))
                .sum();
        double level = onHinges().newtons();
        double turning = atGround().newtonMetres() - level * (frame.metres() + mean);
        List<Force> forces = new ArrayList<>();
        for (Length height : heights) {
            forces.add(Force.ofNewtons(level / count + turning * (height.metres() - mean) / squares));
        }
        return List.copyOf(forces);
    }

    /**
     * Returns the greatest force square to the leaf at one hinge, with or against the wind.
     *
     * @return the force without its sign
     */
    public Force mostAtHinge() {
        return atHinges().stream().map(Force::abs).reduce(Force.ZERO, (a, b) -> a.compareTo(b) > 0 ? a : b);
    }

    /**
     * Returns what a builder should know: warning {@code hinge-screws-wind} where the wind pulls at a hinge, square to the
     * face, more than its screws hold in withdrawal, as it does on straps screwed to the face.
     *
     * @return the findings, unmodifiable; none if all is well or screws are not judged
     */
    public List<Finding> findings() {
        return loads.hinges()
                .screws()
                .filter(screws -> mostAtHinge().compareTo(screws.ofHinge()) > 0)
                .map(screws -> List.of(Finding.warning(
                                "hinge-screws-wind",
                                "gate hinges",
                                "the wind pulls up to " + Written.force(mostAtHinge())
                                        + " at a hinge, square to the leaf, over the "
                                        + Written.force(screws.ofHinge()) + " its screws hold in withdrawal")
                        .withRemedy("bolt the straps through, use longer or more screws, or more hinges")
                        .withSource(Nds.SCREW_WITHDRAWAL)))
                .orElse(List.of());
    }

    /**
     * Returns the wind on the leaf worked out line by line.
     *
     * @return the worksheet; its last line is {@link #mostAtHinge}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled(
                hold == null ? "Wind on a leaf that nothing holds" : "Wind on a leaf held at its latch edge");
        explain(sheet);
        Force most = mostAtHinge();
        return sheet.line(
                        "most at one hinge, square to the leaf",
                        "P / n + (M - P y) (yi - y) / sum of (yi - y)^2",
                        "n = " + loads.hinges().count(),
                        most,
                        Written.force(most),
                        Citation.GEOMETRY)
                .build();
    }

    /** Everything to the level force on the hinges and the moment at the ground. */
    void explain(Worksheet.Builder sheet) {
        Length width = loads.leafWeight().leaf().width();
        sheet.given("wind pressure", wind, Written.pressure(wind))
                .given("leaf width w", width, Written.tape(width))
                .given("boards begin over the ground", bottom, Written.tape(bottom))
                .given("boards end over the ground", top, Written.tape(top))
                .line(
                        "wind on the leaf F",
                        "pressure x w x (top - bottom)",
                        Written.pressure(wind) + " x " + Written.feet(width) + " x (" + Written.feet(top) + " - "
                                + Written.feet(bottom) + ")",
                        force(),
                        Written.force(force()),
                        Citation.GEOMETRY)
                .line(
                        "its height z",
                        "larger of 0.55 top and (bottom + top) / 2",
                        "larger of 0.55 x " + Written.feet(top) + " and (" + Written.feet(bottom) + " + "
                                + Written.feet(top) + ") / 2",
                        height(),
                        Written.feet(height()),
                        RESULTANT);
        if (other != null) {
            sheet.given("push of the leaf that latches to it L", pushOfOther(), Written.force(pushOfOther()))
                    .given("height of its latch zl", heightOfOther(), Written.feet(heightOfOther()));
        }
        if (hold != null) {
            held(sheet, width, hold);
        }
        String f = Written.force(force());
        String l = Written.force(pushOfOther());
        String r = Written.force(atLatchEdge());
        boolean plain = other == null && hold == null;
        sheet.line(
                        "level on the hinges P",
                        plain ? "F" : other == null ? "F - R" : "F + L - R",
                        plain ? f : other == null ? f + " - " + r : f + " + " + l + " - " + r,
                        onHinges(),
                        Written.force(onHinges()),
                        Citation.GEOMETRY)
                .line(
                        "moment at the ground M",
                        "F z" + (other == null ? "" : " + L zl") + (hold == null ? "" : " - R zr"),
                        f + " x " + Written.feet(height())
                                + (other == null ? "" : " + " + l + " x " + Written.feet(heightOfOther()))
                                + (hold == null ? "" : " - " + r + " x " + Written.feet(hold)),
                        atGround(),
                        Written.moment(atGround()),
                        Citation.GEOMETRY);
    }

    private void held(Worksheet.Builder sheet, Length width, Length at) {
        Length pin = loads.hinges().pinFromLeaf();
        String e = Written.feet(pin);
        String w = Written.feet(width);
        sheet.given("pin from the leaf e", pin, Written.tape(pin))
                .given("height of what holds it zr", at, Written.feet(at))
                .line(
                        "held at the latch edge R",
                        "F (e + w / 2) / (e + w)" + (other == null ? "" : " + L"),
                        Written.force(force()) + " x (" + e + " + " + w + " / 2) / (" + e + " + " + w + ")"
                                + (other == null ? "" : " + " + Written.force(pushOfOther())),
                        atLatchEdge(),
                        Written.force(atLatchEdge()),
                        Citation.GEOMETRY);
    }

    @Override
    public String toString() {
        return Written.force(force()) + " of wind, " + Written.force(onHinges()) + " on the hinges";
    }
}
