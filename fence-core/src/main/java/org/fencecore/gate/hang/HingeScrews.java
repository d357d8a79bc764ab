package org.fencecore.gate.hang;

import java.util.Objects;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The screws that hold one hinge to a piece of wood, and what they hold against being pulled straight out.
 *
 * <pre>
 * wood screws  W = 2850 G^2 D         lbf for each inch of thread in the wood
 * lag screws   W = 1800 G^1.5 D^0.75  lbf for each inch of thread in the wood, its tip left out
 * one screw    W x CD x CM x Ceg x thread in the wood
 * </pre>
 *
 * <p>with the specific gravity G of the wood and the diameter D of the shank in inches. The load duration factor CD is 0.9, for a weight that hangs there always, unless set; the wet
 * service factor CM is 0.7, for wood that is or gets wet, unless set. In end grain lag screws count with Ceg = 0.75, and
 * wood screws do not count at all.
 *
 * <p>Left out: the sideways load that the same screws carry and how both work together (12.4), temperature, spacing and
 * edge distances, the strength of the screw and of its head, and lead holes.
 *
 * <p>Sources: National Design Specification for Wood Construction, 2018: 12.2.1 and 12.2.2; the factors 0.9 (Table
 * 2.3.2), 0.7 (Table 11.3.3) and 0.75 (12.5.2) from memory.
 *
 * <p>Example: three No. 10 wood screws (0.190 in) with 1 1/4 in of thread in Douglas fir-larch (G = 0.50) hold 2850 x 0.25
 * x 0.19 = 135.4 lbf for each inch, and so 135.4 x 0.9 x 0.7 x 1.25 x 3 = 319.8 lbf together.
 */
public final class HingeScrews {

    private static final Length INCH = Length.ofInches(1);
    private static final int MOST = 100;
    private static final Ratio END_GRAIN_LAG = Ratio.of(0.75);

    private final boolean lag;
    private final int count;
    private final Length diameter;
    private final Length thread;
    private final GateWood wood;
    private final Ratio loadDuration;
    private final Ratio wetService;
    private final boolean endGrain;

    private HingeScrews(
            boolean lag,
            int count,
            Length diameter,
            Length thread,
            GateWood wood,
            Ratio loadDuration,
            Ratio wetService,
            boolean endGrain) {
        this.lag = lag;
        this.count = count;
        this.diameter = diameter;
        this.thread = thread;
        this.wood = wood;
        this.loadDuration = loadDuration;
        this.wetService = wetService;
        this.endGrain = endGrain;
    }

    /**
     * Describes wood screws.
     *
     * @param count how many hold one hinge to this wood, from 1 to 100
     * @param diameter the diameter of the shank, over 0, to 100 ft
     * @param thread how much thread is in the wood, over 0, to 100 ft
     * @param wood the wood
     * @return the screws
     * @throws IllegalArgumentException if one is out of range
     */
    public static HingeScrews wood(int count, Length diameter, Length thread, GateWood wood) {
        return usual(false, count, diameter, thread, wood);
    }

    /**
     * Describes lag screws.
     *
     * @param count how many hold one hinge to this wood, from 1 to 100
     * @param diameter the diameter of the shank, over 0, to 100 ft
     * @param thread how much thread is in the wood without the tip, over 0, to 100 ft
     * @param wood the wood
     * @return the screws
     * @throws IllegalArgumentException if one is out of range
     */
    public static HingeScrews lag(int count, Length diameter, Length thread, GateWood wood) {
        return usual(true, count, diameter, thread, wood);
    }

    private static HingeScrews usual(boolean lag, int count, Length diameter, Length thread, GateWood wood) {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException(
                    "count was " + count + "; it must be from 1 to " + MOST + " screws in one hinge");
        }
        Sizes.require("diameter", diameter);
        Sizes.require("thread", thread);
        Objects.requireNonNull(wood, "wood");
        return new HingeScrews(lag, count, diameter, thread, wood, Ratio.of(0.9), Ratio.of(0.7), false);
    }

    /**
     * Returns the same screws with other factors.
     *
     * @param newLoadDuration the load duration factor CD, over 0, to 2
     * @param newWetService the wet service factor CM, over 0, to 1; 1 for wood that stays dry
     * @return the screws with those factors
     * @throws IllegalArgumentException if one is out of range
     */
    public HingeScrews withFactors(Ratio newLoadDuration, Ratio newWetService) {
        requireFactor("newLoadDuration", newLoadDuration, 2);
        requireFactor("newWetService", newWetService, 1);
        return new HingeScrews(lag, count, diameter, thread, wood, newLoadDuration, newWetService, endGrain);
    }

    private static void requireFactor(String name, Ratio factor, int most) {
        if (!factor.isPositive() || factor.compareTo(Ratio.of(most)) > 0) {
            throw new IllegalArgumentException(name + " was " + Written.factor(factor)
                    + "; it must be over 0 and no more than " + most + ", so take it from the specification");
        }
    }

    /**
     * Returns the same screws driven into the end of a piece, along its grain.
     *
     * @return the screws in end grain
     */
    public HingeScrews intoEndGrain() {
        return new HingeScrews(lag, count, diameter, thread, wood, loadDuration, wetService, true);
    }

    /**
     * Tells whether they are driven into end grain.
     *
     * @return true in the end of a piece
     */
    public boolean isInEndGrain() {
        return endGrain;
    }

    /**
     * Returns the reference withdrawal design value of one screw for an inch of thread in side grain, W.
     *
     * @return the force for each inch of thread
     */
    public Force perInchOfThread() {
        double g = wood.specificGravity().value();
        double d = diameter.inches();
        return Force.ofPoundsForce(lag ? 1800 * Math.pow(g, 1.5) * Math.pow(d, 0.75) : 2850 * g * g * d);
    }

    private Ratio grain() {
        if (!endGrain) {
            return Ratio.of(1);
        }
        return lag ? END_GRAIN_LAG : Ratio.ZERO;
    }

    /**
     * Returns what one screw holds with all factors.
     *
     * @return the adjusted withdrawal design value; zero for wood screws in end grain
     */
    public Force ofOne() {
        return perInchOfThread()
                .times(loadDuration)
                .times(wetService)
                .times(grain())
                .times(thread.ratioTo(INCH));
    }

    /**
     * Returns what the screws of one hinge hold together, all pulled alike.
     *
     * @return count x one screw
     */
    public Force ofHinge() {
        return ofOne().times(count);
    }

    /**
     * Returns the withdrawal worked out line by line.
     *
     * @return the worksheet; its last line is {@link #ofHinge}
     */
    public Worksheet worksheet() {
        String g = Written.factor(wood.specificGravity());
        String d = Written.factor(Ratio.of(diameter.inches()));
        return Worksheet.titled((lag ? "Lag" : "Wood") + " screws of a hinge in withdrawal")
                .given("specific gravity G, " + wood, wood.specificGravity(), g)
                .given("diameter D", diameter, Written.inches(diameter))
                .given("thread in the wood p", thread, Written.tape(thread))
                .given("load duration CD", loadDuration, Written.factor(loadDuration))
                .given("wet service CM", wetService, Written.factor(wetService))
                .given(endGrain ? "end grain Ceg" : "side grain Ceg", grain(), Written.factor(grain()))
                .given("screws in one hinge n", count, Integer.toString(count))
                .line(
                        "W for each inch of thread",
                        lag ? "1800 G^1.5 D^0.75" : "2850 G^2 D",
                        lag ? "1800 x " + g + "^1.5 x " + d + "^0.75" : "2850 x " + g + "^2 x " + d,
                        perInchOfThread(),
                        Written.force(perInchOfThread()),
                        lag ? Nds.LAG_WITHDRAWAL : Nds.SCREW_WITHDRAWAL)
                .line(
                        "one screw",
                        "W x CD x CM x Ceg x p",
                        Written.force(perInchOfThread()) + " x " + Written.factor(loadDuration) + " x "
                                + Written.factor(wetService) + " x " + Written.factor(grain()) + " x "
                                + Written.factor(Ratio.of(thread.inches())),
                        ofOne(),
                        Written.force(ofOne()),
                        Nds.ADJUSTMENT)
                .line(
                        "one hinge",
                        "n x one screw",
                        count + " x " + Written.force(ofOne()),
                        ofHinge(),
                        Written.force(ofHinge()),
                        Citation.GEOMETRY)
                .build();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HingeScrews that
                && lag == that.lag
                && count == that.count
                && diameter.equals(that.diameter)
                && thread.equals(that.thread)
                && wood.equals(that.wood)
                && loadDuration.equals(that.loadDuration)
                && wetService.equals(that.wetService)
                && endGrain == that.endGrain;
    }

    @Override
    public int hashCode() {
        return Objects.hash(lag, count, diameter, thread, wood, loadDuration, wetService, endGrain);
    }

    @Override
    public String toString() {
        return count + (lag ? " lag screws " : " wood screws ") + Written.inches(diameter) + " thick, "
                + Written.tape(thread) + " of thread in " + wood + (endGrain ? ", in end grain" : "");
    }
}
