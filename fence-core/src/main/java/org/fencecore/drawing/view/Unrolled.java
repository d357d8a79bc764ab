package org.fencecore.drawing.view;

import org.fencecore.Run;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Side;
import org.fencecore.units.Length;

/**
 * How the stations of a run lie across its elevation, seen from outside: along it, or turned round.
 *
 * @param turned whether the run begins at the right
 * @param length the length of the run
 */
record Unrolled(boolean turned, Length length) {

    static Unrolled of(Run run) {
        return new Unrolled(run.outside() == Side.LEFT, run.length());
    }

    Length across(Length station) {
        return turned ? length.minus(station) : station;
    }

    Interval across(Interval stations) {
        Length start = across(stations.start());
        Length end = across(stations.end());
        return turned ? Interval.of(end, start) : Interval.of(start, end);
    }

    Spot spot(Length station, Length height) {
        return Spot.of(across(station), height);
    }

    Outline upright(Layer layer, Interval stations, Length bottom, Length top) {
        Interval across = across(stations);
        return Outline.rectangle(layer, across.start(), bottom, across.end(), top);
    }

    /** A piece with plumb ends of the same depth whose lower edge goes straight from one height to another. */
    Outline leaning(Layer layer, Interval stations, Length bottomAtStart, Length bottomAtEnd, Length depth) {
        return Outline.of(
                layer,
                spot(stations.start(), bottomAtStart),
                spot(stations.end(), bottomAtEnd),
                spot(stations.end(), bottomAtEnd.plus(depth)),
                spot(stations.start(), bottomAtStart.plus(depth)));
    }
}
