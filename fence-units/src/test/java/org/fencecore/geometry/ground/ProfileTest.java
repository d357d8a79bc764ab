package org.fencecore.geometry.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.junit.jupiter.api.Test;

class ProfileTest {

    private static final Profile GROUND = Profile.builder()
            .point(Length.ZERO, Length.ofFeet(100))
            .point(Length.ofFeet(24), Length.ofFeet(98))
            .point(Length.ofFeet(48), Length.ofFeet(94))
            .build();

    private static Length ft(double feet) {
        return Length.ofFeet(feet);
    }

    private static ProfilePoint at(double station, double elevation) {
        return new ProfilePoint(ft(station), ft(elevation));
    }

    @Test
    void readsHeightsBetweenShots() {
        assertThat(GROUND.elevationAt(ft(36))).isEqualTo(ft(96));
        assertThat(GROUND.elevationAt(ft(24))).isEqualTo(ft(98));
        assertThat(GROUND.elevationAt(ft(48))).isEqualTo(ft(94));
        assertThat(GROUND.rise(Length.ZERO, ft(48))).isEqualTo(ft(-6));
        assertThat(GROUND.rise(ft(48), Length.ZERO)).isEqualTo(ft(6));
        assertThat(GROUND.slopeBetween(Length.ZERO, ft(48))).isEqualTo(Slope.ofPercent(-12.5));
        assertThat(GROUND.extent()).isEqualTo(Interval.of(Length.ZERO, ft(48)));
        assertThat(GROUND.covers(Interval.of(ft(1), ft(48)))).isTrue();
        assertThat(GROUND.covers(Interval.of(ft(1), ft(49)))).isFalse();
    }

    @Test
    void gradeAtABreakIsTheGradeAhead() {
        assertThat(GROUND.slopeAt(ft(23))).isEqualTo(Slope.of(ft(-2), ft(24)));
        assertThat(GROUND.slopeAt(ft(24))).isEqualTo(Slope.of(ft(-4), ft(24)));
        assertThat(GROUND.slopeAt(ft(48))).isEqualTo(Slope.of(ft(-4), ft(24)));
    }

    @Test
    void cutsOutAPartWithItsBreaks() {
        assertThat(GROUND.between(ft(12), ft(36)).points()).containsExactly(at(12, 99), at(24, 98), at(36, 96));
        assertThat(GROUND.between(ft(24), ft(48)).points()).containsExactly(at(24, 98), at(48, 94));
        assertThat(GROUND.between(ft(6), ft(24)).points()).containsExactly(at(6, 99.5), at(24, 98));
        assertThat(GROUND.between(ft(30), ft(36)).points()).containsExactly(at(30, 97), at(36, 96));
        assertThat(GROUND.between(Length.ZERO, ft(48))).isEqualTo(GROUND);
    }

    @Test
    void mirrorsOverItsExtent() {
        Profile shifted = GROUND.shiftedBy(ft(10), ft(1));

        assertThat(shifted.points()).containsExactly(at(10, 101), at(34, 99), at(58, 95));
        assertThat(shifted.reversed().points()).containsExactly(at(10, 95), at(34, 99), at(58, 101));
    }

    @Test
    void measuresAlongTheSlope() {
        // 3-4-5 triangles: 4 level and 3 up is 5 along.
        Profile roof = Profile.of(List.of(at(0, 0), at(4, 3), at(8, 0)));

        assertThat(roof.lengthAlong(Length.ZERO, ft(8))).isEqualTo(ft(10));
        assertThat(roof.lengthAlong(ft(2), ft(6))).isEqualTo(ft(5));
        assertThat(roof.lengthAlong(ft(3), ft(3))).isEqualTo(Length.ZERO);
        assertThat(roof.lengthAlong(ft(8), ft(8))).isEqualTo(Length.ZERO);
        // Wherever it starts: 5 level and 12 down is 13 along, then 15 level and 8 up is 17 along.
        Profile valley = Profile.of(List.of(at(20, 99), at(25, 87), at(40, 95)));
        assertThat(valley.lengthAlong(ft(20), ft(40))).isEqualTo(ft(30));
        assertThat(roof.highest()).isEqualTo(at(4, 3));
        assertThat(roof.lowest()).isEqualTo(at(0, 0));
    }

    @Test
    void findsTheGapsUnderARail() {
        // A straight rail 6 in over the ground at both ends; the ground is 1 ft over its own chord at 24 ft.
        Profile rail = Profile.of(List.of(at(0, 100.5), at(48, 94.5)));

        assertThat(GROUND.clearanceUnder(rail)).isEqualTo(new Clearance(ft(-0.5), ft(24), ft(0.5), Length.ZERO));
    }

    @Test
    void gapsAreFoundAtTheBreaksOfTheRailToo() {
        // Over the common stretch 12 to 40 ft. Ground 99 at 12, 97.6667 at 26, 95.3333 at 40.
        Profile rail = Profile.of(List.of(at(12, 100), at(26, 99), at(40, 98), at(60, 0)))
                .between(ft(12), ft(40));
        Clearance gap = GROUND.clearanceUnder(rail);

        assertThat(gap.min()).isEqualTo(ft(1));
        assertThat(gap.minStation()).isEqualTo(ft(12));
        assertThat(gap.max().feet()).isCloseTo(98 - 95.33333, within(1e-5));
        assertThat(gap.maxStation()).isEqualTo(ft(40));
    }

    @Test
    void ofEqualGapsItTellsTheFirst() {
        Profile level = Profile.of(List.of(at(0, 0), at(10, 0), at(20, 0), at(30, 0)));
        Profile wavy = Profile.of(List.of(at(0, 2), at(5, 1), at(10, 3), at(15, 1), at(20, 3), at(30, 2)));

        assertThat(level.clearanceUnder(wavy)).isEqualTo(new Clearance(ft(1), ft(5), ft(3), ft(10)));
    }

    @Test
    void profilesThatTouchHaveOneGap() {
        Profile next = Profile.of(List.of(at(48, 95), at(60, 95)));

        assertThat(GROUND.clearanceUnder(next)).isEqualTo(new Clearance(ft(1), ft(48), ft(1), ft(48)));
        assertThatThrownBy(() -> GROUND.clearanceUnder(next.shiftedBy(ft(1), Length.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no station in common");
    }

    @Test
    void refusesStationsOutsideAndSaysWhatToDo() {
        assertThatThrownBy(() -> GROUND.elevationAt(Length.ofMetres(15)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station was " + Length.ofMetres(15))
                .hasMessageContaining("from " + Length.ZERO + " to " + ft(48))
                .hasMessageContaining("add a point");
        assertThatThrownBy(() -> GROUND.slopeBetween(ft(3), ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("in order");
        assertThatThrownBy(() -> GROUND.between(ft(36), ft(12)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station b was " + ft(12) + ", not after station a at " + ft(36));
        assertThatThrownBy(() -> GROUND.lengthAlong(ft(3), ft(2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("swap");
    }

    @Test
    void refusesPointsOutOfOrderAndTooFew() {
        assertThatThrownBy(() -> Profile.of(List.of(at(0, 0), at(5, 0), at(5, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station was " + ft(5) + ", not after the one before at " + ft(5));
        assertThatThrownBy(() -> Profile.of(List.of(at(0, 0))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number of points was 1");
        assertThatThrownBy(() -> Profile.builder().point(Length.ofMetres(2e9), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("within 1,000,000 km");
        assertThatThrownBy(() -> Profile.builder().point(Length.ZERO, Length.ofMetres(2e9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elevation was " + Length.ofMetres(2e9));
        assertThatThrownBy(() -> new ProfilePoint(Length.ofMetres(2e9), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("station was " + Length.ofMetres(2e9));
        assertThatThrownBy(() -> new ProfilePoint(Length.ZERO, Length.ofMetres(2e9)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elevation was " + Length.ofMetres(2e9));
    }

    @Test
    void aProfileMovedBeyondTheEarthIsRefused() {
        Length far = Length.ofMetres(9.99e8);
        Length more = Length.ofMetres(2e6);
        Profile there = GROUND.shiftedBy(far, far);

        assertThatThrownBy(() -> there.shiftedBy(more, Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("within 1,000,000 km");
        assertThatThrownBy(() -> there.shiftedBy(Length.ZERO, more))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("within 1,000,000 km");
        Length longest = Length.ofNanometres(Long.MAX_VALUE);
        assertThatThrownBy(() -> there.shiftedBy(longest, Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stationShift was " + longest);
        assertThatThrownBy(() -> there.shiftedBy(Length.ZERO, longest))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("elevationShift was " + longest);
    }

    @Test
    void aStraightLineNeedsTwoPlacesWithinReach() {
        Length far = Length.ofMetres(1.1e9);

        assertThat(Profile.straight(ft(0), ft(1), ft(8), ft(3)).points()).containsExactly(at(0, 1), at(8, 3));
        assertThatThrownBy(() -> Profile.straight(ft(8), ft(1), ft(8), ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("give two stations in order");
        assertThatThrownBy(() -> Profile.straight(far.negated(), ft(1), ft(8), ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("start was " + far.negated());
        assertThatThrownBy(() -> Profile.straight(ft(0), far, ft(8), ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("startElevation was " + far);
        assertThatThrownBy(() -> Profile.straight(ft(0), ft(1), far, ft(3)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("end was " + far);
        assertThatThrownBy(() -> Profile.straight(ft(0), ft(1), ft(8), far))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("endElevation was " + far);
    }

    @Test
    void saysHowFarItReaches() {
        assertThat(GROUND).hasToString("Profile of 3 points from 0 in to 48 ft");
    }

    @Test
    void profilesAreEqualWhenTheirShotsAre() {
        Profile longer = Profile.of(List.of(at(0, 100), at(24, 98), at(49, 94)));
        Profile deeper = Profile.of(List.of(at(0, 100), at(24, 98), at(48, 93)));

        assertThat(Profile.of(GROUND.points())).isEqualTo(GROUND).hasSameHashCodeAs(GROUND);
        assertThat(GROUND).isNotEqualTo(longer).doesNotHaveSameHashCodeAs(longer);
        assertThat(GROUND).isNotEqualTo(deeper).doesNotHaveSameHashCodeAs(deeper);
    }

    @Test
    void holdsAMillionPointsAndNoMore() {
        Profile.Builder builder = Profile.builder();
        for (int i = 0; i < 1_000_000; i++) {
            builder.point(Length.ofMillimetres(i), Length.ofMillimetres(i % 7));
        }

        assertThat(builder.build().elevationAt(Length.ofMillimetres(999_998.5)))
                .isEqualTo(Length.ofMillimetres((999_998 % 7 + 999_999 % 7) / 2.0));
        assertThatThrownBy(() -> builder.point(Length.ofMetres(2000), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("would be point number 1000001; a profile has at most 1,000,000");
    }

    @Test
    void aProfileTellsWhereItIsPastALevel() {
        Profile top = Profile.builder()
                .point(Length.ZERO, ft(4))
                .point(ft(10), ft(6))
                .point(ft(20), ft(6))
                .point(ft(40), ft(2))
                .build();

        assertThat(top.stretchesAbove(ft(5))).containsExactly(Interval.of(ft(5), ft(25)));
        assertThat(top.stretchesBelow(ft(5))).containsExactly(Interval.of(ft(0), ft(5)), Interval.of(ft(25), ft(40)));
        assertThat(top.stretchesAbove(ft(6))).isEmpty();
        assertThat(top.stretchesAbove(ft(1))).containsExactly(Interval.of(ft(0), ft(40)));
        // A point 1 nm over the level at the top of a cliff is no stretch of a nanometre.
        ProfilePoint brink = new ProfilePoint(Length.ZERO, Length.ofNanometres(1));
        assertThat(Profile.of(List.of(brink, at(1, -100))).stretchesAbove(Length.ZERO))
                .isEmpty();
    }
}
