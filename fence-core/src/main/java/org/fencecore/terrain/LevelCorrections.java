package org.fencecore.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/** Spreads the misclosure of level notes over their sights. */
final class LevelCorrections {

    private final LevelSights sights;
    private final MisclosureSpread spread;
    private final Map<String, Length> distances;
    private final Length toSpread;

    /** Takes the elevation of the last point, if it is known. */
    LevelCorrections(
            LevelSights sights, MisclosureSpread spread, Map<String, Length> distances, @Nullable Length known) {
        this.sights = sights;
        this.spread = spread;
        this.distances = distances;
        toSpread = known == null ? Length.ZERO : known.minus(sights.last().observed());
    }

    /** The lines of the level book; a line that comes back to its benchmark has the station of that where it began. */
    List<LevelEntry> entries(Map<String, Length> stations) {
        List<LevelEntry> entries = new ArrayList<>();
        for (LevelSights.Sight sight : sights.all()) {
            boolean isFirst = entries.isEmpty();
            boolean isBackAtFirst =
                    !isFirst && sight.point().equals(sights.first().point());
            Length station = isBackAtFirst ? null : stations.get(sight.point());
            entries.add(sight.entry(isFirst ? Length.ZERO : correction(sight), station));
        }
        return List.copyOf(entries);
    }

    private Length correction(LevelSights.Sight sight) {
        return switch (spread) {
            case NONE -> Length.ZERO;
            case BY_SETUP -> toSpread.portion(sight.setUp(), sights.setUps());
            case BY_DISTANCE -> byDistance(sight);
        };
    }

    private Length byDistance(LevelSights.Sight sight) {
        Length whole = distances.get(sights.last().point());
        if (whole == null || !whole.isPositive()) {
            throw refusedDistance(sights.last().point(), whole, "over 0 at the last point");
        }
        Length part = sight == sights.last() ? whole : distances.get(sight.point());
        if (part == null || part.isNegative() || part.compareTo(whole) > 0) {
            throw refusedDistance(sight.point(), part, "from 0 to that of the last point, " + whole);
        }
        return part.equals(whole) ? toSpread : toSpread.times(part.ratioTo(whole));
    }

    private static IllegalArgumentException refusedDistance(String point, @Nullable Length distance, String allowed) {
        return new IllegalArgumentException("distance of " + point + " was "
                + (distance == null ? "not given" : distance)
                + "; to spread the misclosure by distance it must be " + allowed);
    }
}
