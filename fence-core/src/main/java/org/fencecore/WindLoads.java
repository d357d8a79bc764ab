package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.fencecore.boarding.Privacy;
import org.fencecore.footing.LateralLoad;
import org.fencecore.geometry.Interval;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.wind.FenceFace;
import org.fencecore.wind.FenceWind;
import org.fencecore.worksheet.Finding;

/**
 * What the wind on the lines of a plan puts on each post: the pressure of its zones over what it holds of a line, and at a
 * corner that of both lines together.
 */
final class WindLoads {

    /** Bays that differ by rounding alone must not need a footing each. */
    private static final Length SPAN_STEP = Length.ofInches(1).dividedBy(16);

    /** Nor must posts in one zone. */
    private static final double PRESSURE_STEP = 0.01;

    /** What no post feels. */
    private static final Force LEAST = Force.ofPoundsForce(0.01);

    /** From this turn on, fence round a corner shelters the end of a line; common practice, no source. */
    private static final Angle RETURN = Angle.ofDegrees(45);

    private final Site site;
    private final FenceStyle style;
    private final Map<FenceLine, Ends> ends = new HashMap<>();
    private final Map<FenceLine, List<Supplier<Ratio>>> solid = new HashMap<>();
    private final Map<FenceLine, FenceWind> winds = new LinkedHashMap<>();

    WindLoads(Site site, FenceStyle style) {
        this.site = site;
        this.style = style;
    }

    /** How much fence turns the corner at either end of a line. */
    private static final class Ends {
        private Length atStart = Length.ZERO;
        private Length atEnd = Length.ZERO;
    }

    /** Takes in that lines meet at a post which holds them; all that do must be told before loads are asked for. */
    void meet(List<PostBook.Held> held) {
        if (held.size() != 2 || site.wind().isEmpty()) {
            return;
        }
        FenceLine a = held.get(0).line();
        FenceLine b = held.get(1).line();
        if (turn(a, b).compareTo(RETURN) < 0) {
            return;
        }
        turnsInto(a, b);
        turnsInto(b, a);
    }

    private void turnsInto(FenceLine line, FenceLine other) {
        Ends of = ends.computeIfAbsent(line, unseen -> new Ends());
        Length length = other.postLine.length();
        if (line.startNode == other.endNode || line.startNode == other.startNode) {
            of.atStart = length;
        } else {
            of.atEnd = length;
        }
    }

    private static Angle turn(FenceLine a, FenceLine b) {
        return a.postLine.bearing().turnTo(b.postLine.bearing()).abs();
    }

    /** The load of the parts of lines that one post holds, of which a gate may stand higher than the fence. */
    LateralLoad load(List<PostBook.Held> held, Length exposed, Length gateOver) {
        LateralLoad load = LateralLoad.NONE;
        FenceLine before = null;
        for (PostBook.Held part : held) {
            LateralLoad more = load(part.line(), part.part(), exposed, gateOver);
            load = before == null ? more : load.together(more, turn(before, part.line()));
            before = part.line();
        }
        return load;
    }

    /** The load of a part of a line. */
    LateralLoad load(FenceLine line, Interval part, Length exposed, Length gateOver) {
        Length top = exposed.plus(Length.max(arch(), gateOver));
        Length bottom = style.slope().clearance();
        Length width = part.length().roundedTo(SPAN_STEP, Rounding.UP);
        Optional<Pressure> pressure = pressure(site, on(line), part);
        boolean isFelt = pressure.isPresent()
                && pressure.get().times(width.times(top.minus(bottom))).compareTo(LEAST) >= 0;
        return isFelt ? LateralLoad.ofPressure(pressure.get(), width, bottom, top) : LateralLoad.NONE;
    }

    /** The pressure on a part of a line: what was given for the whole place, or what its zones come to. */
    static Optional<Pressure> pressure(Site site, Optional<FenceWind> wind, Interval part) {
        return site.windPressure().or(() -> wind.map(zones -> roundedUp(zones.average(part))));
    }

    private static Pressure roundedUp(Pressure pressure) {
        return Pressure.ofPsf(Math.ceil(pressure.psf() / PRESSURE_STEP - 1e-6) * PRESSURE_STEP);
    }

    /** The wind on a line, zone by zone, where the place says what wind it has. */
    Optional<FenceWind> on(FenceLine line) {
        return site.wind().map(wind -> winds.computeIfAbsent(line, unseen -> wind.on(face(line))));
    }

    private FenceFace face(FenceLine line) {
        Ends of = ends.getOrDefault(line, new Ends());
        Length bottom = style.slope().clearance();
        return FenceFace.builder()
                .length(line.postLine.length())
                .bottom(bottom)
                .top(bottom.plus(style.rails().boardLength()).plus(arch()))
                .solidFraction(solid(line))
                .returnAtStart(of.atStart)
                .returnAtEnd(of.atEnd)
                .build();
    }

    /** An arch stands higher than its posts; counted as if it did so all along. */
    private Length arch() {
        return Length.max(Length.ZERO, style.top().overPosts());
    }

    /** Tells how much of a line boards close as laid out; of its parts the most solid counts, which the wind loads most. */
    void close(FenceLine line, Supplier<Ratio> part) {
        solid.computeIfAbsent(line, unseen -> new ArrayList<>()).add(part);
    }

    /** Where no boards were laid out it is the pattern that is taken. */
    private Ratio solid(FenceLine line) {
        return solid.getOrDefault(line, List.of()).stream()
                .map(Supplier::get)
                .max(Comparator.naturalOrder())
                .orElseGet(() -> solid(style));
    }

    /** Which part of the boarded face is closed; how thick the boards are does not matter to that. */
    static Ratio solid(FenceStyle style) {
        return Privacy.of(style.pattern(), Length.ZERO, Length.ZERO).solid();
    }

    /** What there is to say about the wind, each thing once. */
    List<Finding> findings() {
        Set<Finding> findings = new LinkedHashSet<>();
        winds.values().forEach(wind -> findings.addAll(wind.findings()));
        return List.copyOf(findings);
    }
}
