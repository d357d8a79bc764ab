package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailMarks;
import org.fencecore.site.Site;
import org.fencecore.strength.RailStrength;
import org.fencecore.strength.WoodMember;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Whether the rails of a plan are strong enough, bay by bay, where their wood is known.
 *
 * <p>A rail spans from post to post on edge; one that goes through over several bays is looked at as if it did not, which
 * bends it no less. The rails of a bay share the weight of its boards alike; of the wind the one with the most board to
 * hold, from halfway to the next rail or to the ends of the boards, has its part. Where the wind is not known the weight
 * alone counts.
 */
final class RailLoads {

    /** Bays that differ by rounding alone must not need a sheet each. */
    private static final Length SPAN_STEP = Length.ofInches(1).dividedBy(16);

    private static final Length LONGEST = Length.ofFeet(100);

    private final Site site;
    private final FenceStyle style;
    private final Optional<WoodMember> member;

    RailLoads(Site site, FenceStyle style) {
        this.site = site;
        this.style = style;
        this.member = style.railLumber().member();
    }

    /** Every check once, with the bays it holds for. */
    Map<RailStrength, List<Bay>> checks(List<Run> runs) {
        Map<RailStrength, List<Bay>> checks = new LinkedHashMap<>();
        for (Run run : runs) {
            for (Stretch stretch : run.stretches()) {
                for (Bay bay : stretch.bays()) {
                    check(run, stretch, bay)
                            .ifPresent(check -> checks.computeIfAbsent(check, unseen -> new ArrayList<>())
                                    .add(bay));
                }
            }
        }
        return checks;
    }

    private Optional<RailStrength> check(Run run, Stretch stretch, Bay bay) {
        Length span = bay.spacing().roundedTo(SPAN_STEP, Rounding.UP);
        if (member.isEmpty() || stretch.boards().isEmpty() || bay.rails().isEmpty() || span.compareTo(LONGEST) > 0) {
            return Optional.empty();
        }
        double own = newtons(style.railLumber(), span);
        Force weight = Force.ofNewtons(
                own + boards(stretch.boards().get(), span) / bay.rails().size());
        Interval along = Interval.of(bay.slope().start(), bay.slope().end());
        Force wind = WindLoads.pressure(site, run.wind(), along)
                .map(pressure -> pressure.times(mostHeld(bay).times(span)))
                .orElse(Force.ZERO);
        return Optional.of(RailStrength.onEdge(member.get(), span, weight, wind));
    }

    /** What the boards over a span weigh in newtons, those of the whole stretch spread evenly. */
    private double boards(BoardLayout layout, Length span) {
        Length length = style.rails().boardLength();
        int outside = layout.row(Face.OUTSIDE).count();
        int second = layout.count() - outside;
        double all =
                outside * newtons(style.boardLumber(), length) + second * newtons(LeafScale.secondRow(style), length);
        return all * span.ratioTo(layout.clearLength()).value();
    }

    /** What a piece of lumber weighs; whatever the gates are made of, it is as wet as they are taken to be. */
    private double newtons(Lumber lumber, Length length) {
        UnitWeight wood = style.gateHardware().woodOf(lumber).unitWeight();
        return wood.times(lumber.thickness().times(lumber.width()).times(length))
                .newtons();
    }

    /** The most of the boards' length that one rail holds. */
    private Length mostHeld(Bay bay) {
        Length bottom = bay.slope().aboveStart();
        Length most = Length.ZERO;
        Length from = bottom;
        for (int rail = 0; rail < bay.rails().size(); rail++) {
            Length to = rail == bay.rails().size() - 1
                    ? bottom.plus(style.rails().boardLength())
                    : middle(bay, rail).plus(middle(bay, rail + 1)).dividedBy(2);
            most = Length.max(most, to.minus(from));
            from = to;
        }
        return most;
    }

    private static Length middle(Bay bay, int rail) {
        RailMarks marks = bay.rails().get(rail).from();
        return marks.bottom().plus(marks.top()).dividedBy(2);
    }

    /** Bays that share a finding, and what the check has to say that has the rail bear most. */
    private static final class Group {
        private final List<Bay> bays = new ArrayList<>();
        private final Bay worst;
        private final Finding finding;
        private int checks;

        Group(Bay worst, Finding finding) {
            this.worst = worst;
            this.finding = finding;
        }

        Finding spoken() {
            return finding.at(numbers(bays) + (checks == 1 ? "" : ", most at " + worst));
        }
    }

    /** What there is to say about the rails, each thing once, in the words of the bay where they bear most. */
    List<Finding> findings(List<Run> runs) {
        Map<String, Group> groups = new LinkedHashMap<>();
        checks(runs).entrySet().stream()
                .sorted(Map.Entry.comparingByKey(
                        Comparator.comparing(RailStrength::used).reversed()))
                .forEach(check -> {
                    for (Finding finding : check.getKey().findings()) {
                        Group group = groups.computeIfAbsent(
                                finding.code(),
                                code -> new Group(check.getValue().get(0), finding));
                        group.bays.addAll(check.getValue());
                        group.checks++;
                    }
                });
        return groups.values().stream().map(Group::spoken).toList();
    }

    /** Bay numbers in words. */
    static String numbers(List<Bay> bays) {
        return (bays.size() == 1 ? "bay " : "bays ")
                + Written.numbers(bays.stream().map(Bay::number).sorted().toList());
    }
}
