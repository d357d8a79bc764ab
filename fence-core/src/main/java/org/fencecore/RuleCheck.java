package org.fencecore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.fencecore.gate.GateSpec;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.Face;
import org.fencecore.rules.FencePart;
import org.fencecore.rules.GatePart;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PostPart;
import org.fencecore.site.GateLocation;
import org.fencecore.slope.FittedBay;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Finding;

/** Shows a finished fence to the rules of the place: bay by bay, with its posts and gates. */
final class RuleCheck {

    /** As many as the rules take at a time. */
    private static final int AT_A_TIME = 100_000;

    private static final Length HIGHEST = Length.ofFeet(100);

    private final FenceStyle style;
    private final Length reach;
    private final Ratio openness;

    private RuleCheck(FenceStyle style) {
        this.style = style;
        this.reach = FenceLine.reach(style);
        this.openness = Ratio.of(1 - WindLoads.solid(style).value());
    }

    static List<Finding> of(LocalRules rules, FenceStyle style, List<Run> runs) {
        if (rules.list().isEmpty()) {
            return List.of();
        }
        RuleCheck check = new RuleCheck(style);
        List<FencePart> parts =
                runs.stream().flatMap(run -> check.parts(run).stream()).toList();
        List<PostPart> posts =
                runs.stream().flatMap(run -> check.posts(run).stream()).toList();
        List<GatePart> gates =
                runs.stream().flatMap(run -> check.gates(run).stream()).toList();
        Set<Finding> findings = new LinkedHashSet<>();
        int most = Math.max(parts.size(), Math.max(posts.size(), gates.size()));
        for (int from = 0; from < most; from += AT_A_TIME) {
            findings.addAll(rules.check(some(parts, from), some(posts, from), some(gates, from)));
        }
        return List.copyOf(findings);
    }

    private static <T> List<T> some(List<T> all, int from) {
        return all.subList(Math.min(from, all.size()), Math.min(from + AT_A_TIME, all.size()));
    }

    /** The parts of a side are one place to the rules, which tell stations along the whole side. */
    private static String place(Run run) {
        return "side " + run.side();
    }

    private List<PostPart> posts(Run run) {
        Length hole = style.holeDiameter().dividedBy(2);
        return run.posts().stream()
                .map(post -> PostPart.of(place(run), post.toString(), post.centre(), hole))
                .toList();
    }

    private List<FencePart> parts(Run run) {
        List<FencePart> parts = new ArrayList<>();
        for (Stretch stretch : run.stretches()) {
            for (Bay bay : stretch.bays()) {
                parts.add(part(run, stretch, bay));
            }
        }
        return parts;
    }

    private FencePart part(Run run, Stretch stretch, Bay bay) {
        FittedBay slope = bay.slope();
        Profile.Builder bottom = Profile.builder();
        Profile.Builder top = Profile.builder();
        boolean closed = style.slope().closes(slope.clearance().max());
        Interval stations = Interval.of(slope.start(), slope.end());
        SortedSet<Length> places = new TreeSet<>(List.of(stations.middle()));
        stretch.slope()
                .ground()
                .between(stations.start(), stations.end())
                .points()
                .forEach(point -> places.add(point.station()));
        for (Length place : places) {
            Length ground = stretch.slope().ground().elevationAt(place);
            Length station = place.minus(slope.start());
            Length gap = clamp(slope.bottomAt(place).minus(ground));
            bottom.point(station, closed ? Length.min(gap, style.slope().clearance()) : gap);
            top.point(
                    station,
                    clamp(stretch.topLine()
                            .topIn(slope, place)
                            .plus(Length.max(Length.ZERO, style.postAboveBoards()))
                            .minus(ground)));
        }
        FencePart.Builder part = along(run, Interval.of(slope.start(), slope.end()))
                .bottom(bottom.build())
                .top(top.build())
                .openness(openness);
        if (!style.pattern().isLapped()) {
            stretch.boards()
                    .ifPresent(boards -> part.opening(boards.row(Face.OUTSIDE).gap()));
        } else {
            // Behind a gap stands the other layer, a rail away at most.
            part.opening(style.railLumber().thickness());
        }
        Length nearest = null;
        for (int rail = 1; rail < bay.rails().size(); rail++) {
            Length apart = bay.rails()
                    .get(rail)
                    .from()
                    .top()
                    .minus(bay.rails().get(rail - 1).from().top())
                    .abs();
            nearest = nearest == null ? apart : Length.min(nearest, apart);
        }
        if (nearest != null && nearest.isPositive()) {
            part.horizontals(nearest, run.outside().opposite());
        }
        stretch.courses().stream()
                .filter(courses -> courses.stations().contains(stations.middle()))
                .map(courses -> courses.layout().courses().row(Face.OUTSIDE))
                .forEach(courses -> {
                    part.opening(courses.gap());
                    if (courses.count() == 1 || !courses.gap().isPositive()) {
                        part.withoutHorizontals();
                    } else {
                        part.horizontals(courses.pitch(), run.outside());
                    }
                });
        return part.build();
    }

    private List<GatePart> gates(Run run) {
        List<GatePart> gates = new ArrayList<>();
        for (GateBay gate : run.gates()) {
            gates.add(gate(run, gate));
        }
        return gates;
    }

    /** A gate as the rules see it. */
    static GatePart gate(FenceStyle style, Run run, GateBay gate) {
        return new RuleCheck(style).gate(run, gate);
    }

    private GatePart gate(Run run, GateBay gate) {
        Profile.Builder bottom = Profile.builder();
        Profile.Builder top = Profile.builder();
        Interval opening = gate.opening();
        SortedSet<Length> places = new TreeSet<>(List.of(opening.middle()));
        run.ground().between(opening.start(), opening.end()).points().forEach(point -> places.add(point.station()));
        for (Length place : places) {
            Length station = place.minus(opening.start());
            Length ground = run.ground().elevationAt(place);
            bottom.point(station, clamp(gate.bottomLine().elevationAt(place).minus(ground)));
            top.point(station, clamp(gate.top().topAt(place).minus(ground)));
        }
        FencePart leaf = along(run, opening)
                .bottom(bottom.build())
                .top(top.build())
                .openness(openness)
                .build();
        GateLocation location = gate.location();
        Side inside = run.outside().opposite();
        GatePart part = GatePart.of(gate.name(), leaf)
                .withSwing(location.opensOutward() ? run.outside() : inside)
                .withSelfClosing(location.isSelfClosing())
                .withSelfLatching(location.isSelfLatching())
                .withLock(location.isLockable())
                .withOpeningAtRelease(openingNearLatch(gate));
        return location.releaseHeight()
                .map(up -> part.withRelease(up, location.isReleaseInside() ? inside : run.outside()))
                .orElse(part);
    }

    /** The gap at the latch, or between two boards that nothing stands behind. */
    private Length openingNearLatch(GateBay gate) {
        GateSpec spec = gate.design().spec();
        Length opening = gate.design().isPair() ? spec.centreGap() : spec.latchGap();
        for (HungLeaf leaf : gate.leaves()) {
            Optional<Length> between = leaf.boards()
                    .or(() -> leaf.courses().map(part -> part.layout().courses()))
                    .map(layout -> layout.row(Face.OUTSIDE).gap())
                    .filter(gap -> !style.pattern().isLapped());
            opening = Length.max(opening, between.orElse(Length.ZERO));
        }
        return opening;
    }

    private FencePart.Builder along(Run run, Interval stations) {
        return FencePart.on(
                        place(run),
                        Segment.of(
                                run.postLine().pointAt(stations.start()),
                                run.postLine().pointAt(stations.end())))
                .firstStation(run.startAlongSide().plus(stations.start()))
                .reach(reach);
    }

    /** A fence in the ground or out of all proportion has findings of its own. */
    private static Length clamp(Length height) {
        return Length.max(Length.ZERO, Length.min(height, HIGHEST));
    }
}
