package org.fencecore.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.rules.Plans.ORDINANCE;
import static org.fencecore.rules.Plans.at;
import static org.fencecore.rules.Plans.feet;
import static org.fencecore.rules.Plans.inches;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;

class LocalRulesProperties {

    private static final Polygon YARD = Polygon.of(List.of(at(0, 0), at(60, 0), at(60, 30), at(20, 30), at(0, 70)));
    private static final Corner CORNER = Corner.of(at(0, 70), at(0, 0), at(60, 0), Side.LEFT);

    private static final LocalRules NOT_TOO_HIGH = LocalRules.of(List.of(
            HeightLimit.of(Zone.inside(YARD), feet(4), "yard", ORDINANCE),
            HeightLimit.permitOver(Zone.everywhere(), feet(6), "permit", ORDINANCE),
            CornerVisibility.of(CORNER, feet(30), feet(20), feet(3), "corner", ORDINANCE)));
    private static final LocalRules POOL = LocalRules.of(
            List.of(PoolBarrier.builder(Side.LEFT, "pool", ORDINANCE).build()));

    private static FencePart.Builder on(Segment line) {
        return FencePart.on("side 1", line);
    }

    private static Segment line(int east1, int north1, int east2, int north2) {
        return Segment.of(at(east1, north1), at(east2, north2 == north1 && east2 == east1 ? north2 + 1 : north2));
    }

    private static Profile heights(Length length, double start, double end) {
        return Profile.builder()
                .point(Length.ZERO, feet(start))
                .point(length, feet(end))
                .build();
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Property
    void aHigherFenceBreaksNoFewerRules(
            @ForAll @IntRange(min = -20, max = 80) int east1,
            @ForAll @IntRange(min = -20, max = 80) int north1,
            @ForAll @IntRange(min = -20, max = 80) int east2,
            @ForAll @IntRange(min = -20, max = 80) int north2,
            @ForAll @DoubleRange(min = 0.1, max = 8) double start,
            @ForAll @DoubleRange(min = 0.1, max = 8) double end,
            @ForAll @DoubleRange(min = 0, max = 4) double more) {
        Segment line = line(east1, north1, east2, north2);
        FencePart low = on(line).top(heights(line.length(), start, end)).build();
        FencePart high =
                on(line).top(heights(line.length(), start + more, end + more)).build();

        assertThat(codes(NOT_TOO_HIGH.check(List.of(high)))).containsAll(codes(NOT_TOO_HIGH.check(List.of(low))));
        assertThat(codes(POOL.check(List.of(low)))).containsAll(codes(POOL.check(List.of(high))));
    }

    /** Wherever bays are cut, one place tells the same. */
    @Property
    void partsTellWhatTheWholeTells(
            @ForAll @DoubleRange(min = 0.1, max = 9) double start,
            @ForAll @DoubleRange(min = 0.1, max = 9) double end,
            @ForAll @DoubleRange(min = -10, max = 60) double north,
            @ForAll @Size(max = 6) List<@DoubleRange(min = 0.5, max = 20) Double> widths) {
        Segment line = Segment.of(at(-10, north), at(90, north + 7));
        Profile top = heights(line.length(), start, end);
        List<FencePart> parts = new ArrayList<>();
        Length from = Length.ZERO;
        for (double width : widths) {
            parts.add(part(line, top, from, from.plus(feet(width))));
            from = from.plus(feet(width));
            if (from.plus(feet(20)).compareTo(line.length()) > 0) {
                break;
            }
        }
        parts.add(part(line, top, from, line.length()));

        List<Finding> whole = NOT_TOO_HIGH.check(List.of(on(line).top(top).build()));

        // A station may be rounded the other way where the cuts moved it by a nanometre, so numbers are told apart.
        assertThat(codes(NOT_TOO_HIGH.check(parts))).isEqualTo(codes(whole));
        assertThat(NOT_TOO_HIGH.check(parts).stream().map(LocalRulesProperties::stretchesTold))
                .containsExactlyElementsOf(
                        whole.stream().map(LocalRulesProperties::stretchesTold).toList());
    }

    private static int stretchesTold(Finding finding) {
        return finding.message().split("from ", -1).length;
    }

    private static FencePart part(Segment line, Profile top, Length from, Length to) {
        Point start = line.pointAt(from);
        return on(Segment.of(start, line.pointAt(to)))
                .firstStation(from)
                .top(top.between(from, to).shiftedBy(from.negated(), Length.ZERO))
                .build();
    }

    @Property
    void aFenceDrawnTheOtherWayBreaksTheSame(
            @ForAll @DoubleRange(min = 30, max = 60) double top,
            @ForAll @DoubleRange(min = 0, max = 5) double bottom,
            @ForAll @DoubleRange(min = 0, max = 5) double opening,
            @ForAll @DoubleRange(min = 20, max = 60) double spacing,
            @ForAll Side side) {
        Segment line = Segment.of(at(0, 0), at(40, 9));
        LocalRules other = LocalRules.of(
                List.of(PoolBarrier.builder(Side.RIGHT, "pool", ORDINANCE).build()));
        FencePart there = on(line).bottom(inches(bottom))
                .top(inches(top))
                .opening(inches(opening))
                .horizontals(inches(spacing), side)
                .build();
        FencePart back = on(line.reversed())
                .bottom(inches(bottom))
                .top(inches(top))
                .opening(inches(opening))
                .horizontals(inches(spacing), side.opposite())
                .build();

        assertThat(other.check(List.of(back))).isEqualTo(POOL.check(List.of(there)));
    }

    /** Posts outside the forbidden stretches have no finding, and posts inside have one. */
    @Property
    void forbiddenStretchesAreWhereHolesAreFound(
            @ForAll @DoubleRange(min = 0, max = 100) double station,
            @ForAll @DoubleRange(min = 0, max = 20) double width,
            @ForAll @DoubleRange(min = 0.1, max = 3) double radius) {
        Polyline drain = Polyline.of(List.of(at(20, -30), at(50, 10), at(90, 12)));
        LocalRules rules = LocalRules.of(List.of(
                ClearGround.noHoles(Zone.along(drain, feet(width)), "drain", ORDINANCE),
                ClearGround.easement(Zone.inside(YARD), "yard", ORDINANCE)));
        Segment line = Segment.of(at(0, -5), at(100, 15));
        Point centre = line.pointAt(feet(station));
        PostPart post = PostPart.of("side 1", "post 1", centre, feet(radius));

        boolean forbidden =
                rules.forbidden(line, feet(radius)).stream().anyMatch(stretch -> stretch.contains(feet(station)));

        assertThat(rules.check(List.of(), List.of(post), List.of()).isEmpty()).isEqualTo(!forbidden);
    }
}
