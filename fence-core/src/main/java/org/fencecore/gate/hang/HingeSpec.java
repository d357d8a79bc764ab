package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.gate.GateLeaf;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How a leaf is hung: how many hinges and where, how far their pins are from its edge, what screws hold them, and what
 * may hang on the latch end besides the leaf's own weight.
 *
 * <p>What is not said: pins 1/4 in from the edge, which is the middle of the usual gap (common practice, no source), no
 * load at the latch, screws not judged.
 *
 * <p>Example: two hinges 7 in from the ends of a frame 56 in high are 42 in apart.
 *
 * <pre>{@code
 * HingeSpec hinges = HingeSpec.evenly(2, Length.ofInches(7))
 *         .withScrews(HingeScrews.wood(3, Length.ofInches(0.19), Length.ofInches(1.25), pine));
 * hinges.heightsOn(leaf);    // 7 in, 49 in
 * }</pre>
 */
public final class HingeSpec {

    private static final int MOST = 20;

    private final int count;
    private final Length inset;
    private final List<Length> given;
    private final Length pinFromLeaf;
    private final Force loadAtLatch;
    private final @Nullable HingeScrews screws;

    private HingeSpec(
            int count,
            Length inset,
            List<Length> given,
            Length pinFromLeaf,
            Force loadAtLatch,
            @Nullable HingeScrews screws) {
        this.count = count;
        this.inset = inset;
        this.given = given;
        this.pinFromLeaf = pinFromLeaf;
        this.loadAtLatch = loadAtLatch;
        this.screws = screws;
    }

    /**
     * Describes hinges as far apart as each other.
     *
     * @param count how many, from 2 to 20
     * @param inset how far the middle of the lowest is over the lower edge of the frame, and of the highest under the
     *     upper edge, over 0, to 100 ft
     * @return the hinges
     * @throws IllegalArgumentException if one is out of range
     */
    public static HingeSpec evenly(int count, Length inset) {
        if (count < 2 || count > MOST) {
            throw new IllegalArgumentException("count was " + count + "; it must be from 2 to " + MOST
                    + " hinges, because one cannot hold a leaf");
        }
        return new HingeSpec(count, Sizes.require("inset", inset), List.of(), Length.ofInches(0.25), Force.ZERO, null);
    }

    /**
     * Describes hinges at given heights.
     *
     * @param heights how high the middle of each is over the lower edge of the frame, the lowest first, each higher than
     *     the one before; from 2 to 20
     * @return the hinges
     * @throws IllegalArgumentException if there are too few or too many, or they are out of order
     */
    public static HingeSpec at(Length... heights) {
        if (heights.length < 2 || heights.length > MOST) {
            throw new IllegalArgumentException("heights were " + heights.length + "; give from 2 to " + MOST);
        }
        for (int i = 1; i < heights.length; i++) {
            if (heights[i].compareTo(heights[i - 1]) <= 0) {
                throw new IllegalArgumentException("heights were " + List.of(heights)
                        + "; each must be over the one before, so give them from the bottom up");
            }
        }
        return new HingeSpec(heights.length, Length.ZERO, List.of(heights), Length.ofInches(0.25), Force.ZERO, null);
    }

    /**
     * Returns the same hinges with their pins elsewhere.
     *
     * @param distance how far the pins are beyond the hinge edge of the leaf, 0 to 100 ft
     * @return the hinges with that distance
     * @throws IllegalArgumentException if out of that range
     */
    public HingeSpec withPinFromLeaf(Length distance) {
        return new HingeSpec(count, inset, given, Sizes.requireOrZero("distance", distance), loadAtLatch, screws);
    }

    /**
     * Returns the same hinges with a load on the latch end, such as someone who leans on it.
     *
     * @param load the load at the latch edge, zero or more
     * @return the hinges with that load
     * @throws IllegalArgumentException if under zero
     */
    public HingeSpec withLoadAtLatch(Force load) {
        if (load.isNegative()) {
            throw new IllegalArgumentException(
                    "load was " + Written.force(load) + "; it must be zero or more, because it pulls down");
        }
        return new HingeSpec(count, inset, given, pinFromLeaf, load, screws);
    }

    /**
     * Returns the same hinges held by screws that are judged.
     *
     * @param newScrews the screws that hold one hinge to the leaf or to the post, whichever is weaker
     * @return the hinges with those screws
     */
    public HingeSpec withScrews(HingeScrews newScrews) {
        return new HingeSpec(
                count, inset, given, pinFromLeaf, loadAtLatch, Objects.requireNonNull(newScrews, "newScrews"));
    }

    /** The same with another number of hinges between the lowest and the highest. */
    HingeSpec withCount(GateLeaf leaf, int number) {
        List<Length> heights = heightsOn(leaf);
        Length low = heights.get(0);
        Length apart = heights.get(heights.size() - 1).minus(low);
        List<Length> even = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            even.add(low.plus(apart.portion(i, number - 1L)));
        }
        return new HingeSpec(number, Length.ZERO, List.copyOf(even), pinFromLeaf, loadAtLatch, screws);
    }

    /**
     * Returns how many hinges there are.
     *
     * @return the number, 2 at least
     */
    public int count() {
        return count;
    }

    /**
     * Returns how far the pins are beyond the hinge edge of the leaf.
     *
     * @return the distance
     */
    public Length pinFromLeaf() {
        return pinFromLeaf;
    }

    /**
     * Returns what hangs on the latch edge besides the leaf.
     *
     * @return the load
     */
    public Force loadAtLatch() {
        return loadAtLatch;
    }

    /**
     * Returns the screws that hold one hinge.
     *
     * @return the screws, empty if they are not judged
     */
    public Optional<HingeScrews> screws() {
        return Optional.ofNullable(screws);
    }

    /**
     * Returns where the hinges are on a leaf.
     *
     * @param leaf the leaf
     * @return the height of the middle of each over the lower edge of the frame at the hinges, the lowest first
     * @throws IllegalArgumentException if a hinge is beyond the frame, or an inset leaves no room between them
     */
    public List<Length> heightsOn(GateLeaf leaf) {
        Length high = leaf.frameHeight();
        if (!given.isEmpty()) {
            Length lowest = given.get(0);
            Length highest = given.get(given.size() - 1);
            if (lowest.isNegative() || highest.compareTo(high) > 0) {
                throw new IllegalArgumentException("hinges were from " + lowest + " to " + highest
                        + " up; they must be on the frame, from 0 to " + high + ", so move them closer together");
            }
            return given;
        }
        Length apart = high.minus(inset.times(2));
        if (!apart.isPositive()) {
            throw new IllegalArgumentException("inset was " + inset + "; it must be under half the frame height of "
                    + high + ", so that there is room between the hinges");
        }
        List<Length> heights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            heights.add(inset.plus(apart.portion(i, count - 1L)));
        }
        return List.copyOf(heights);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HingeSpec that
                && count == that.count
                && inset.equals(that.inset)
                && given.equals(that.given)
                && pinFromLeaf.equals(that.pinFromLeaf)
                && loadAtLatch.equals(that.loadAtLatch)
                && Objects.equals(screws, that.screws);
    }

    @Override
    public int hashCode() {
        return Objects.hash(count, inset, given, pinFromLeaf, loadAtLatch, screws);
    }

    @Override
    public String toString() {
        return count + " hinges, pins " + Written.tape(pinFromLeaf) + " from the leaf";
    }
}
