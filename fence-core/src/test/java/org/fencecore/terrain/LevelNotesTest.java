package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.m;

import org.fencecore.geometry.Station;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

class LevelNotesTest {

    /** From a corner stake along a fence line and back, worked by hand: HI 104.20. */
    private static LevelNotes.Builder fenceLine() {
        return LevelNotes.from("corner stake", ft(100))
                .backsight(ft(4.20))
                .intermediate(Station.parse("0+00"), ft(4.35))
                .intermediate(Station.parse("0+24"), ft(6.10))
                .intermediate(Station.parse("0+48"), ft(9.85));
    }

    @Test
    void givesTheGroundAlongTheLine() {
        LevelNotes notes = fenceLine().foresight("corner stake", ft(4.20)).build();
        Profile ground = notes.profile().orElseThrow();

        assertThat(ground)
                .isEqualTo(Profile.builder()
                        .point(ft(0), ft(99.85))
                        .point(ft(24), ft(98.10))
                        .point(ft(48), ft(94.35))
                        .build());
        assertThat(ground.elevationAt(ft(36))).isEqualTo(ft(96.225));
        assertThat(notes.misclosure()).contains(Length.ZERO);
        assertThat(notes.findings()).isEmpty();
        assertThat(notes.elevation("0+24.00")).isEqualTo(ft(98.10));
        assertThat(notes).hasToString("level notes from corner stake to corner stake, 1 set-up");
    }

    @Test
    void keepsTheBook() {
        LevelNotes notes = fenceLine()
                .foresight("TP1", ft(8))
                .backsight(ft(2))
                .foresight("post", ft(1))
                .station("TP1", ft(60))
                .build();
        LevelEntry turning = notes.entries().get(4);

        assertThat(turning.point()).isEqualTo("TP1");
        assertThat(turning.foresight()).contains(ft(8));
        assertThat(turning.backsight()).contains(ft(2));
        assertThat(turning.intermediateSight()).isEmpty();
        assertThat(turning.heightOfInstrument()).contains(ft(98.20));
        assertThat(turning.observed()).isEqualTo(ft(96.20));
        assertThat(turning.station()).contains(ft(60));
        assertThat(turning).hasToString("TP1 29321.76 mm");
        assertThat(notes.entries().get(1).intermediateSight()).contains(ft(4.35));
        assertThat(notes.setUps()).isEqualTo(2);
        assertThat(notes.profile().orElseThrow().extent().end()).isEqualTo(ft(60));
    }

    @Test
    void spreadsTheMisclosureAsTold() {
        LevelNotes.Builder line = LevelNotes.from("A", ft(100))
                .backsight(ft(5))
                .intermediate("x", ft(4))
                .foresight("TP", ft(5))
                .backsight(ft(5))
                .foresight("B", ft(5))
                .closesOn(ft(100.02))
                .distance("x", ft(50))
                .distance("TP", ft(50))
                .distance("B", ft(200));

        LevelNotes bySetUp = line.build();
        assertThat(bySetUp.misclosure()).contains(ft(-0.02));
        assertThat(bySetUp.elevation("x")).isEqualTo(ft(101.01));
        assertThat(bySetUp.elevation("TP")).isEqualTo(ft(100.01));
        assertThat(bySetUp.elevation("B")).isEqualTo(ft(100.02));
        LevelNotes byDistance = line.spread(MisclosureSpread.BY_DISTANCE).build();
        assertThat(byDistance.elevation("x")).isEqualTo(ft(101.005));
        assertThat(byDistance.elevation("TP")).isEqualTo(ft(100.005));
        assertThat(byDistance.elevation("B")).isEqualTo(ft(100.02));
        LevelNotes asRead = line.spread(MisclosureSpread.NONE).build();
        assertThat(asRead.elevation("TP")).isEqualTo(ft(100));
        assertThat(asRead.elevation("B")).isEqualTo(ft(100));
        assertThat(asRead.worksheet().result()).isEqualTo(ft(100));
        assertThatThrownBy(() -> line.distance("x", ft(201))
                        .spread(MisclosureSpread.BY_DISTANCE)
                        .build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("distance of x was 201 ft")
                .hasMessageContaining("200 ft");
    }

    @Test
    void saysWhatDoesNotCheck() {
        LevelNotes notes = LevelNotes.from("A", ft(100))
                .backsight(ft(5.31))
                .foresight("TP", ft(4.11))
                .backsight(ft(3.02))
                .foresight("A", ft(4.18))
                .allowable(ft(0.02))
                .written("TP", ft(101.10))
                .written("A", ft(100))
                .writtenSums(ft(8.33), ft(8.39))
                .build();

        assertThat(notes.misclosure()).contains(ft(0.04));
        assertThat(notes.allowableMisclosure()).isEqualTo(ft(0.02));
        assertThat(notes.findings())
                .extracting(Finding::code, Finding::place, Finding::message)
                .containsExactly(
                        tuple("level-misclosure", "A", "the line ends 0.040 ft too high, over the allowable 0.020 ft"),
                        tuple(
                                "level-sums-differ",
                                "foot of the page",
                                "the book has 8.390 ft for the sum of the foresights, the readings add up to 8.290 ft"),
                        tuple("level-written-differs", "TP", "the book has 101.100 ft, the readings give 101.200 ft"));
    }

    private static org.assertj.core.groups.Tuple tuple(Object... values) {
        return org.assertj.core.api.Assertions.tuple(values);
    }

    @Test
    void takesTheUsualAllowanceAndCautionsWhereNothingCloses() {
        LevelNotes off = LevelNotes.from("A", m(10))
                .metric()
                .backsight(m(1))
                .foresight("T1", m(1))
                .backsight(m(1))
                .foresight("T2", m(1))
                .backsight(m(1))
                .foresight("T3", m(1))
                .backsight(m(1))
                .foresight("A", m(1.011))
                .build();
        assertThat(off.allowableMisclosure()).isEqualTo(Length.ofMillimetres(10));
        assertThat(off.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("level-misclosure");
            assertThat(finding.severity()).isEqualTo(Severity.WARNING);
            assertThat(finding.message())
                    .isEqualTo(
                            "the line ends 0.011 m too low, over the allowable 0.010 m (5 mm times the square root of"
                                    + " 4 set-ups)");
        });
        assertThat(fenceLine().foresight("end", ft(9)).build().findings())
                .extracting(Finding::code)
                .containsExactly("level-not-closed");
    }

    @Test
    void writesThePage() {
        String page = LevelNotes.from("A", ft(100))
                .backsight(ft(5))
                .intermediate("x", ft(4))
                .foresight("A", ft(5.01))
                .build()
                .worksheet()
                .toText();
        assertThat(page).isEqualTo("""
                        Level notes from A to A
                          elevation of A = 100.000 ft   [given]
                          HI over A = elevation + BS = 100.000 ft + 5.000 ft = 105.000 ft
                          x = HI - IS = 105.000 ft - 4.000 ft = 101.000 ft
                          A = HI - FS = 105.000 ft - 5.010 ft = 99.990 ft
                          sum BS = all backsights = 5.000 ft = 5.000 ft
                          sum FS = all foresights = 5.010 ft = 5.010 ft
                          rise by the sums = sum BS - sum FS = 5.000 ft - 5.010 ft = -0.010 ft   [NAVEDTRA 14071, Level Computations]
                          rise by the elevations = last elevation - first, must be the same = 99.990 ft - 100.000 ft = -0.010 ft   [NAVEDTRA 14071, Level Computations]
                          known elevation of A = 100.000 ft   [given]
                          misclosure = as read - known = 99.990 ft - 100.000 ft = -0.010 ft
                          allowable = 5 mm x sqrt(set-ups) = 5 mm x sqrt(1) = 0.016 ft   [common practice, no source]
                          elevation of x = as read - misclosure x set-ups to it / 1 = 101.000 ft + 0.010 ft = 101.010 ft   [NAVEDTRA 14071, Level Computations]
                          elevation of A = as read - misclosure x set-ups to it / 1 = 99.990 ft + 0.010 ft = 100.000 ft   [NAVEDTRA 14071, Level Computations]
                        """);
    }

    @Test
    void refusesReadingsOutOfOrder() {
        assertRefused(() -> LevelNotes.from("A", ft(1)).intermediate("x", ft(1)), "has no backsight before it");
        assertRefused(() -> LevelNotes.from("A", ft(1)).foresight("x", ft(1)), "give the backsight on A first");
        assertRefused(() -> fenceLine().backsight(ft(1)), "follows the one on corner stake");
        assertRefused(() -> fenceLine().build(), "the last reading was on 0+48.00, not a foresight");
        assertRefused(() -> LevelNotes.from("A", ft(1)).build(), "the last reading was on A");
        assertRefused(() -> fenceLine().foresight("corner stake", ft(4)).backsight(ft(4)), "which closes the line");
    }

    @Test
    void refusesWrongNamesAndNumbers() {
        assertRefused(() -> LevelNotes.from(" ", ft(1)), "point was blank");
        assertRefused(() -> fenceLine().intermediate("0+24.00", ft(1)), "in the notes already");
        assertRefused(() -> fenceLine().intermediate("x", ft(250)), "intermediate was 250 ft");
        assertRefused(() -> fenceLine().allowable(ft(-1)), "allowable was -1 ft");
        assertRefused(
                () -> fenceLine().foresight("x", ft(1)).station("y", ft(2)).build(), "a station was given for 'y'");
        assertRefused(
                () -> fenceLine().foresight("x", ft(1)).station("x", ft(24)).build(), "station 24 ft was given for");
        assertRefused(() -> fenceLine().foresight("x", ft(1)).build().elevation("y"), "point was 'y'");
        assertRefused(
                () -> fenceLine()
                        .foresight("x", ft(1))
                        .closesOn(ft(1))
                        .spread(MisclosureSpread.BY_DISTANCE)
                        .build(),
                "distance of x was not given");
        LevelNotes.Builder many = LevelNotes.from("A", ft(1)).backsight(ft(1));
        assertRefused(
                () -> {
                    for (int i = 0; i < 10_000; i++) {
                        many.intermediate("p" + i, ft(1));
                    }
                },
                "up to 10,000 points");
    }

    private static void assertRefused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(message);
    }
}
