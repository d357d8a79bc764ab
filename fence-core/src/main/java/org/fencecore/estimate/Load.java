package org.fencecore.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fencecore.units.Mass;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * What is bought for a fence as a load: what each line weighs, all of it, the concrete once it is in the ground, and the
 * trips it takes.
 *
 * <pre>
 * stick  = thickness x width x length x unit weight of the wood with its moisture
 * line   = packs x pack size x what one weighs
 * load   = sum of the lines
 * </pre>
 *
 * <p>Lumber weighs what its species and moisture give, at its dressed size; a bag of concrete mix what its label says; a
 * bag of gravel, 1/2 cu ft at 100 pcf, 50 lb. What else weighs is only known if the price book says so, and is left out
 * where it does not. Also left out: what treatment adds (wood fresh from treatment can weigh half as much again), water,
 * tools, people and packing. What a truck may carry is on its door.
 *
 * <p>Sources: wood, National Design Specification for Wood Construction Supplement 2018, 3.1.3; gravel, common practice,
 * no source. Example: see the package.
 */
public final class Load {

    private static final int MOST_TRIPS = 10_000;

    private final List<EstimateLine> lines;
    private final Mass concreteInPlace;

    Load(List<EstimateLine> lines, Mass concreteInPlace) {
        this.lines = lines;
        this.concreteInPlace = concreteInPlace;
    }

    /**
     * So many of one line on one trip.
     *
     * @param line the line
     * @param count how many, in the unit of the shopping list
     */
    public record Part(EstimateLine line, int count) {

        @Override
        public String toString() {
            return count + " " + line.material().item();
        }
    }

    /**
     * What one trip takes.
     *
     * @param parts what is on it, in the order of the shopping list, unmodifiable
     * @param weight what that weighs
     */
    public record Trip(List<Part> parts, Mass weight) {

        /**
         * Copies the parts.
         *
         * @param parts what is on it
         * @param weight what that weighs
         */
        public Trip {
            parts = List.copyOf(parts);
        }

        @Override
        public String toString() {
            return Written.mass(weight) + ": "
                    + parts.stream().map(Part::toString).collect(Collectors.joining(", "));
        }
    }

    /**
     * Returns what is known to weigh.
     *
     * @return the sum of all lines whose weight is known
     */
    public Mass weight() {
        return lines.stream()
                .map(EstimateLine::weight)
                .flatMap(Optional::stream)
                .reduce(Mass.ZERO, Mass::plus);
    }

    /**
     * Returns what is not in the weight.
     *
     * @return the lines whose weight is not known, unmodifiable
     */
    public List<EstimateLine> unknown() {
        return lines.stream().filter(line -> line.weightEach().isEmpty()).toList();
    }

    /**
     * Returns what the concrete weighs once it is in the ground, with its water.
     *
     * @return the weight of the concrete of all holes
     */
    public Mass concreteInPlace() {
        return concreteInPlace;
    }

    /**
     * Shares the load out over trips, in the order of the shopping list: each trip takes what comes next until the next
     * stick or bag would be too much. What is not known to weigh anything is left out.
     *
     * @param payload what one trip may carry
     * @return the trips, unmodifiable; empty if there is nothing to load
     * @throws IllegalArgumentException if the payload is less than a single stick or bag, or there are over 10,000 trips
     */
    public List<Trip> trips(Mass payload) {
        List<Trip> trips = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        Mass loaded = Mass.ZERO;
        for (EstimateLine line : lines) {
            Optional<Mass> known = line.weightEach();
            if (known.isEmpty()) {
                continue;
            }
            Mass each = known.get();
            if (each.compareTo(payload) > 0) {
                throw new IllegalArgumentException("payload was " + payload + ", and one "
                        + line.material().item() + " weighs " + Written.mass(each)
                        + "; give what the truck carries, or have it delivered");
            }
            int left = Math.multiplyExact(line.packs(), line.packSize());
            while (left > 0) {
                int fitting = fitting(payload.minus(loaded), each, left);
                if (fitting > 0) {
                    parts.add(new Part(line, fitting));
                    loaded = loaded.plus(each.times(fitting));
                    left -= fitting;
                }
                if (left > 0) {
                    trips.add(new Trip(parts, loaded));
                    parts.clear();
                    loaded = Mass.ZERO;
                    if (trips.size() == MOST_TRIPS) {
                        throw new IllegalArgumentException("payload was " + payload + " for a load of "
                                + Written.mass(weight()) + "; that is over 10,000 trips: is its unit right?");
                    }
                }
            }
        }
        if (!parts.isEmpty()) {
            trips.add(new Trip(parts, loaded));
        }
        return List.copyOf(trips);
    }

    private static int fitting(Mass room, Mass each, int left) {
        // A billionth of one is the rounding of doubles, not weight.
        return each.isZero() ? left : (int) Math.min(left, room.ratioTo(each).value() + 1e-9);
    }

    /** To a thousandth, since it is multiplied. */
    private static String pounds(Mass each) {
        return BigDecimal.valueOf(each.pounds())
                        .setScale(3, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " lb";
    }

    /**
     * Returns the weight worked out line by line.
     *
     * @return the worksheet; its last line is {@link #weight}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Weight of the load");
        List<String> weights = new ArrayList<>();
        for (EstimateLine line : lines) {
            String name = line.material().item();
            if (line.unitMass().isPresent() && line.weight().isPresent()) {
                UnitMass one = line.unitMass().get();
                String each = pounds(one.each());
                sheet.line(name + ", each", one.how(), "", one.each(), each, one.source());
                Mass weight = line.weight().get();
                int count = Math.multiplyExact(line.packs(), line.packSize());
                sheet.line(name, "count x each", count + " x " + each, weight, Written.mass(weight), Citation.GEOMETRY);
                weights.add(Written.mass(weight));
            } else {
                sheet.given(name, "not known", "weight not known");
            }
        }
        sheet.line(
                unknown().isEmpty() ? "load" : "load without what is not known",
                "sum of the lines",
                weights.isEmpty() ? "0" : String.join(" + ", weights),
                weight(),
                Written.mass(weight()),
                Citation.GEOMETRY);
        return sheet.build();
    }

    /** Returns the load in words, such as {@code load of 1662.2 lb}. */
    @Override
    public String toString() {
        return "load of " + Written.mass(weight());
    }
}
