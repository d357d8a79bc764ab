package org.fencecore.survey;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/**
 * A slip in writing or reading a call that would explain why a lot does not close.
 *
 * @param course the call without the slip
 * @param words what the slip is
 */
record Misreading(Course course, String words) {

    private static final long MINUTES_PER_DEGREE = 60;

    /** The units that deeds write lengths in, with their names, and how many parts each is written to. */
    private enum Unit {
        FEET("ft", 304_800_000, 2),
        METRES("m", 1_000_000_000, 3),
        CHAINS("chains", 20_116_800_000L, 2);

        private final String symbol;
        private final long nanometres;
        private final int decimals;

        Unit(String symbol, long nanometres, int decimals) {
            this.symbol = symbol;
            this.nanometres = nanometres;
            this.decimals = decimals;
        }

        long step() {
            return nanometres / BigDecimal.TEN.pow(decimals).longValueExact();
        }

        String write(long steps) {
            return BigDecimal.valueOf(steps, decimals).toPlainString() + " " + symbol;
        }
    }

    /** Looks for the slip that closes best, and at least to a distance. */
    static Optional<Misreading> of(Course called, CourseChange change, Bearing bearing, Length length, Length close) {
        Point closing = Point.ORIGIN.plus(bearing, length);
        Misreading best = null;
        Length least = close;
        for (Misreading slip : change == CourseChange.BEARING ? bearings(called) : lengths(called, length, close)) {
            Length misses = slip.misses(closing);
            if (best == null ? misses.compareTo(least) <= 0 : misses.compareTo(least) < 0) {
                best = slip;
                least = misses;
            }
        }
        return Optional.ofNullable(best);
    }

    /** How far the course without the slip ends from where it must. */
    Length misses(Point closing) {
        return Point.ORIGIN.plus(course.bearing(), course.distance()).distanceTo(closing);
    }

    private static List<Misreading> bearings(Course called) {
        List<Misreading> slips = new ArrayList<>();
        Bearing own = called.bearing();
        Angle azimuth = own.azimuth();
        add(slips, called, own.reversed(), "called the wrong way round");
        add(slips, called, Bearing.ofAzimuth(azimuth.negated()), "E and W swapped");
        add(slips, called, Bearing.ofAzimuth(Angle.STRAIGHT.minus(azimuth)), "N and S swapped");
        long minutes = Math.round(azimuth.degrees() * MINUTES_PER_DEGREE);
        Angle seconds = azimuth.minus(Angle.ofDegrees(minutes / (double) MINUTES_PER_DEGREE));
        long turn = 360 * MINUTES_PER_DEGREE;
        long half = turn / 2;
        // In degrees and minutes, as the quadrant bearing and the azimuths from both ends would have been written.
        long fromSouth = (minutes + half) % turn;
        long quadrantal = minutes % half;
        long size = Math.min(quadrantal, half - quadrantal);
        slips(degreesAndMinutes(size), digits -> {
            long other = minutesOf(digits);
            if (other >= 0 && other <= half / 2) {
                long turned = quadrantal == size ? other - size : size - other;
                addDigits(slips, called, minutes + turned, seconds, other, size, "in the bearing");
            }
        });
        azimuths(slips, called, minutes % turn, 0, seconds, "as azimuth");
        azimuths(slips, called, fromSouth, half, seconds, "as azimuth from south");
        return slips;
    }

    private static void azimuths(
            List<Misreading> slips, Course called, long minutes, long zero, Angle seconds, String how) {
        slips(degreesAndMinutes(minutes), digits -> {
            long other = minutesOf(digits);
            if (other >= 0 && other < 360 * MINUTES_PER_DEGREE) {
                addDigits(slips, called, other + zero, seconds, other, minutes, how);
            }
        });
    }

    private static void addDigits(
            List<Misreading> slips, Course called, long azimuth, Angle seconds, long other, long own, String how) {
        Angle angle = Angle.ofDegrees(azimuth / (double) MINUTES_PER_DEGREE).plus(seconds);
        String words = digitWords(degreesAndMinutes(other), degreesAndMinutes(own)) + ", " + minutesText(other)
                + " for " + minutesText(own) + " " + how;
        add(slips, called, Bearing.ofAzimuth(angle), words);
    }

    private static void add(List<Misreading> slips, Course called, Bearing bearing, String words) {
        slips.add(new Misreading(called.moved(bearing, called.distance()), words));
    }

    /** Degrees and minutes as one number, 237°05' as 23705. */
    private static long degreesAndMinutes(long minutes) {
        return minutes / MINUTES_PER_DEGREE * 100 + minutes % MINUTES_PER_DEGREE;
    }

    private static long minutesOf(long digits) {
        return digits % 100 < MINUTES_PER_DEGREE ? digits / 100 * MINUTES_PER_DEGREE + digits % 100 : -1;
    }

    private static String minutesText(long minutes) {
        return Angle.ofDms((int) (minutes / MINUTES_PER_DEGREE), (int) (minutes % MINUTES_PER_DEGREE), 0)
                .toString();
    }

    private static List<Misreading> lengths(Course called, Length length, Length close) {
        List<Misreading> slips = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            long own = Math.round(called.distance().nanometres() / (double) unit.step());
            if (Math.abs(called.distance().nanometres() - own * unit.step()) > 1) {
                continue;
            }
            slips(own, other -> {
                Length changed = Length.ofNanometres(other * unit.step());
                boolean near = changed.minus(length).abs().compareTo(close) <= 0;
                if (near && changed.compareTo(Course.SHORTEST) >= 0 && changed.compareTo(Course.LONGEST) <= 0) {
                    String words = digitWords(other, own) + ", " + unit.write(other) + " for " + unit.write(own);
                    slips.add(new Misreading(called.moved(called.bearing(), changed), words));
                }
            });
        }
        return slips;
    }

    /** Every number that differs from this one by one digit, or by two neighbouring digits swapped. */
    private static void slips(long number, LongConsumer each) {
        long limit = Math.max(10_000, number);
        for (long place = 1; place <= limit; place *= 10) {
            long digit = number / place % 10;
            for (long other = 0; other < 10; other++) {
                if (other != digit) {
                    each.accept(number + (other - digit) * place);
                }
            }
            long next = number / place / 10 % 10;
            if (next != digit) {
                each.accept(number + (next - digit) * place + (digit - next) * place * 10);
            }
        }
    }

    private static String digitWords(long a, long b) {
        int differ = 0;
        for (long x = a, y = b; x != y; x /= 10, y /= 10) {
            differ += x % 10 == y % 10 ? 0 : 1;
        }
        return differ == 1 ? "one digit" : "two digits swapped";
    }
}
