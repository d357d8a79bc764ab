package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** Follows the lower edge of a leaf through its arc. */
final class SwingSearch {

    private static final double STEP = Length.ofInches(1).nanometres();
    private static final int LEAST_STEPS = 90;
    private static final int MOST_STEPS = 2000;
    private static final int NARROWED = 3;
    private static final double TOLERANCE = 1e-7;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Surface ground;
    private final Segment closed;
    private final Side opens;
    private final Length width;
    private final Length thickness;
    private final Length bottom;
    private final Slope rake;
    private final double openTo;

    /** Where the leaf is nearest to the ground. */
    record Nearest(double angle, Length fromHinge, Point place, Length bottom, Length ground) {

        double clearance() {
            return bottom.minus(ground).nanometres();
        }
    }

    SwingSearch(Surface ground, Segment closed, Side opens, Length thickness, Length bottom, Slope rake, Angle openTo) {
        this.ground = ground;
        this.closed = closed;
        this.opens = opens;
        this.width = closed.length();
        this.thickness = thickness;
        this.bottom = bottom;
        this.rake = rake;
        this.openTo = openTo.radians();
    }

    /** The nearest place of the whole swing; empty where the ground is not known. */
    Optional<Nearest> nearest() {
        return least(this::nearestAt, Nearest::clearance);
    }

    /**
     * The least value over the whole arc: on a grid of angles first, then between the neighbours of its lowest ones; empty
     * if the ground is not known at an angle of the grid. Between two angles with ground there may be none, which counts
     * as no value.
     */
    private <T> Optional<T> least(DoubleFunction<Optional<T>> at, ToDoubleFunction<T> value) {
        double arc = openTo * Math.hypot((double) width.nanometres(), (double) thickness.nanometres());
        int steps = (int) Math.min(MOST_STEPS, Math.max(LEAST_STEPS, Math.ceil(arc / STEP)));
        List<T> grid = new ArrayList<>(steps + 1);
        for (int i = 0; i <= steps; i++) {
            Optional<T> here = at.apply(openTo * i / steps);
            if (here.isEmpty()) {
                return Optional.empty();
            }
            grid.add(here.get());
        }
        List<Integer> dips = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double here = value.applyAsDouble(grid.get(i));
            boolean belowBefore = i == 0 || here <= value.applyAsDouble(grid.get(i - 1));
            boolean belowAfter = i == steps || here <= value.applyAsDouble(grid.get(i + 1));
            if (belowBefore && belowAfter) {
                dips.add(i);
            }
        }
        dips.sort(Comparator.comparingDouble(i -> value.applyAsDouble(grid.get(i))));
        T best = grid.get(dips.get(0));
        for (int dip : dips.subList(0, Math.min(NARROWED, dips.size()))) {
            double from = openTo * Math.max(0, dip - 1) / steps;
            double to = openTo * Math.min(steps, dip + 1) / steps;
            Optional<T> narrowed = narrow(at, value, from, to);
            if (narrowed.isPresent() && value.applyAsDouble(narrowed.get()) < value.applyAsDouble(best)) {
                best = narrowed.get();
            }
        }
        return Optional.of(best);
    }

    /** Golden section: each turn keeps the part of the stretch round the lower of two angles. */
    private static <T> Optional<T> narrow(
            DoubleFunction<Optional<T>> at, ToDoubleFunction<T> value, double from, double to) {
        double low = from;
        double high = to;
        while (high - low > TOLERANCE) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            double atA = at.apply(a).map(value::applyAsDouble).orElse(Double.POSITIVE_INFINITY);
            double atB = at.apply(b).map(value::applyAsDouble).orElse(Double.POSITIVE_INFINITY);
            if (atA <= atB) {
                high = b;
            } else {
                low = a;
            }
        }
        return at.apply((low + high) / 2);
    }

    private Optional<Nearest> nearestAt(double angle) {
        return under(angle)
                .map(spots -> spots.stream()
                        .min(Comparator.comparingDouble(Nearest::clearance))
                        .orElseThrow());
    }

    /** How much the bottom must rise for each length from the pin, to clear the ground by so much everywhere. */
    double steepestRakeNeeded(Length clearance) {
        return -least(
                        angle -> under(angle)
                                .map(spots -> spots.stream()
                                        .mapToDouble(spot -> -rakeNeeded(spot, clearance))
                                        .min()
                                        .orElseThrow()),
                        negated -> negated)
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private double rakeNeeded(Nearest spot, Length clearance) {
        double missing = spot.ground().plus(clearance).minus(bottom).nanometres();
        double from = spot.fromHinge().nanometres();
        if (from == 0) {
            return missing > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return missing / from;
    }

    /** All places under the leaf at one angle where the clearance may be least: its corners and the ground's breaks. */
    private Optional<List<Nearest>> under(double angle) {
        boolean right = opens == Side.RIGHT;
        Bearing along = closed.bearing().plus(Angle.ofRadians(right ? angle : -angle));
        Bearing back = along.plus(right ? Angle.RIGHT.negated() : Angle.RIGHT);
        Point pin = closed.start();
        Point latch = pin.plus(along, width);
        Polyline round = Polyline.of(List.of(pin, latch, latch.plus(back, thickness), pin.plus(back, thickness)));
        return ground.under(round).map(profile -> places(angle, round, profile));
    }

    private List<Nearest> places(double angle, Polyline round, Profile profile) {
        List<Nearest> spots = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            Length station = round.stationOfPoint(corner);
            spots.add(spot(angle, round, station, profile.elevationAt(station)));
        }
        for (ProfilePoint shot : profile.points()) {
            spots.add(spot(angle, round, shot.station(), shot.elevation()));
        }
        return spots;
    }

    private Nearest spot(double angle, Polyline round, Length station, Length elevation) {
        Length out = Length.min(station, round.stationOfPoint(1));
        Length back = Length.max(station.minus(round.stationOfPoint(2)), Length.ZERO);
        Length fromHinge = Length.max(out.minus(back), Length.ZERO);
        return new Nearest(angle, fromHinge, round.pointAt(station), bottom.plus(rake.riseOver(fromHinge)), elevation);
    }
}
