package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/** The sights of a level line in their order, reduced as they come. */
final class LevelSights {

    private static final Length LONGEST_READING = Length.ofFeet(100);
    private static final int MOST_POINTS = 10_000;

    /** A sight on a point; the first, on the benchmark, has no reading. */
    static final class Sight {

        private final String point;
        private final boolean isForesight;
        private final @Nullable Length reading;
        private final Length observed;
        private final int setUp;
        private @Nullable Length backsight;

        private Sight(String point, boolean isForesight, @Nullable Length reading, Length observed, int setUp) {
            this.point = point;
            this.isForesight = isForesight;
            this.reading = reading;
            this.observed = observed;
            this.setUp = setUp;
        }

        String point() {
            return point;
        }

        Length observed() {
            return observed;
        }

        /** Returns how many times the level was set up until this sight. */
        int setUp() {
            return setUp;
        }

        LevelEntry entry(Length correction, @Nullable Length station) {
            return new LevelEntry(
                    point,
                    backsight,
                    isForesight ? null : reading,
                    isForesight ? reading : null,
                    backsight == null ? null : observed.plus(backsight),
                    observed,
                    correction,
                    station);
        }
    }

    private final List<Sight> sights = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private Sight turning;
    private @Nullable Length heightOfInstrument;
    private int setUps;

    LevelSights(String benchmark, Length elevation) {
        requireName(benchmark);
        Heights.checked(elevation);
        turning = new Sight(benchmark, true, null, elevation, 0);
        sights.add(turning);
        names.add(benchmark);
    }

    void backsight(Length reading) {
        requireReading("backsight", reading);
        if (heightOfInstrument != null) {
            throw new IllegalArgumentException("backsight " + reading + " follows the one on " + turning.point
                    + "; before the level is set up again, give a foresight on a turning point");
        }
        if (isLoop()) {
            throw new IllegalArgumentException("backsight " + reading + " follows the foresight back to "
                    + turning.point + ", which closes the line; start new notes there");
        }
        turning.backsight = reading;
        heightOfInstrument = turning.observed.plus(reading);
        setUps++;
    }

    void intermediate(String point, Length reading) {
        sight(point, false, reading);
    }

    void foresight(String point, Length reading) {
        turning = sight(point, true, reading);
        heightOfInstrument = null;
    }

    private Sight sight(String point, boolean isForesight, Length reading) {
        String kind = isForesight ? "foresight" : "intermediate";
        requireName(point);
        requireReading(kind, reading);
        if (heightOfInstrument == null) {
            throw new IllegalArgumentException(kind + " " + reading + " on " + point
                    + " has no backsight before it; give the backsight on " + turning.point + " first");
        }
        if (sights.size() == MOST_POINTS) {
            throw new IllegalArgumentException("point " + point + " would be number " + (MOST_POINTS + 1)
                    + "; level notes have up to 10,000 points, so split them at a turning point");
        }
        boolean closes = isForesight && point.equals(first().point);
        if (!names.add(point) && !closes) {
            throw new IllegalArgumentException("point was '" + point
                    + "', which is in the notes already; name the second sight differently, such as " + point
                    + " again");
        }
        Sight sight = new Sight(point, isForesight, reading, heightOfInstrument.minus(reading), setUps);
        sights.add(sight);
        return sight;
    }

    private static void requireName(String point) {
        if (point.isBlank()) {
            throw new IllegalArgumentException("point was blank; name it as the book does");
        }
    }

    private static void requireReading(String name, Length reading) {
        if (reading.abs().compareTo(LONGEST_READING) > 0) {
            throw new IllegalArgumentException(name + " was " + reading + "; a rod reads up to " + LONGEST_READING
                    + ", negative if held upside down, so check the unit");
        }
    }

    void requireEnded() {
        if (heightOfInstrument != null || sights.size() == 1) {
            throw new IllegalArgumentException("the last reading was on " + last().point
                    + ", not a foresight; end the notes with the foresight on the last point");
        }
    }

    /** Tells whether the line has come back to the benchmark where it began. */
    boolean isLoop() {
        return turning != first() && turning.point.equals(first().point);
    }

    boolean has(String point) {
        return names.contains(point);
    }

    int setUps() {
        return setUps;
    }

    Sight first() {
        return sights.get(0);
    }

    Sight last() {
        return sights.get(sights.size() - 1);
    }

    List<Sight> all() {
        return sights;
    }
}
