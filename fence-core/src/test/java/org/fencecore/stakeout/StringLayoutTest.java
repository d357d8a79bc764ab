package org.fencecore.stakeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.geometry.Point;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

class StringLayoutTest {

    /** A lot with level ground, fenced on some sides. */
    private static FencePlan plan(LotBoundary lot, int... sides) {
        Site.Builder site = Site.on(lot);
        for (int side : sides) {
            site.ground(
                    side,
                    Plans.shots(0, 100, lot.courses().get(side - 1).distance().feet(), 100));
        }
        return FencePlanner.plan(
                site.fenceOn(sides).build(), FenceStyle.builder().build());
    }

    private static FencePlan rectangle() {
        return plan(Plans.rectangle(50, 40), 1, 2, 3, 4);
    }

    /**
     * By hand: 50 by 40 ft with strings 6 in inside are 49 by 39 ft. Boards 4 ft beyond make 57 and 47 ft. A third of 39 is
     * 13 and a quarter of 49 is 12, so 36, 48 and 60 ft prove each corner. Across, 49 and 39 ft are 62.6259 ft.
     */
    @Test
    void aRectangularLotWorkedByHand() {
        StringLayout layout = StringLayout.of(rectangle());

        assertThat(layout.strings())
                .extracting(StringLine::lengthBetweenBoards)
                .containsExactly(Length.ofFeet(57), Length.ofFeet(47), Length.ofFeet(57), Length.ofFeet(47));
        StringLine first = layout.strings().get(0);
        BatterBoard before = first.boardAtStart().orElseThrow();
        BatterBoard beyond = first.boardAtEnd().orElseThrow();
        assertThat(before.crossing()).isEqualTo(Point.of(Length.ofFeet(0.5), Length.ofFeet(-3.5)));
        assertThat(before.station()).isEqualTo(Length.ofFeet(-4));
        assertThat(beyond.crossing()).isEqualTo(Point.of(Length.ofFeet(0.5), Length.ofFeet(53.5)));
        assertThat(beyond.station()).isEqualTo(Length.ofFeet(53));
        assertThat(beyond.fromOuterStake()).contains(Length.ofFeet(4));
        assertThat(beyond).hasToString("board 2 beyond the end of side 1");
        assertThat(layout.boards()).hasSize(8).extracting(BatterBoard::number).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);

        assertThat(layout.corners()).hasSize(4).allSatisfy(corner -> {
            assertThat(corner.isThreeFourFive()).isTrue();
            assertThat(corner.isBend()).isFalse();
            assertThat(corner.diagonal()).isEqualTo(Length.ofFeet(60));
        });
        StringCorner corner = layout.corners().get(0);
        assertThat(corner.onArriving()).isEqualTo(Length.ofFeet(48));
        assertThat(corner.onLeaving()).isEqualTo(Length.ofFeet(36));
        assertThat(corner.corner().vertex()).isEqualTo(Point.of(Length.ofFeet(0.5), Length.ofFeet(49.5)));
        // 60 ft x 1/96 ft / (36 ft x 48 ft) in radians.
        assertThat(corner.meaningOf(Length.ofInches(0.125)).orElseThrow().degrees())
                .isCloseTo(0.02072, within(1e-5));

        assertThat(layout.diagonals())
                .hasSize(2)
                .allSatisfy(diagonal -> assertThat(diagonal.length().feet()).isCloseTo(62.6259, within(5e-5)));
        assertThat(layout.diagonals().get(0)).hasToString("corner of side 4 and side 1 to corner of side 2 and side 3");
    }

    @Test
    void boardsOffTheLotAreTold() {
        assertThat(StringLayout.of(rectangle()).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.code()).isEqualTo("board-off-lot");
            assertThat(finding.message())
                    .isEqualTo("batter boards 1, 2, 3, 4, 5, 6, 7 and 8 stand outside the boundary, 4' 0\" beyond the"
                            + " corner of the strings");
        });
        // Half a foot is the room there is.
        StringSpec near = StringSpec.builder().setBack(Length.ofFeet(0.5)).build();
        assertThat(StringLayout.of(rectangle(), near).findings()).isEmpty();
    }

    /** Three sides of a back yard: the ends have boards of their own, and two diagonals prove both corners. */
    @Test
    void aFenceOnThreeSides() {
        StringLayout layout = StringLayout.of(plan(Plans.rectangle(50, 40), 1, 2, 3));

        assertThat(layout.corners())
                .extracting(StringCorner::toString)
                .containsExactly("corner of side 1 and side 2", "corner of side 2 and side 3");
        assertThat(layout.boards()).hasSize(6);
        assertThat(layout.strings().get(0).boardAtStart().orElseThrow().fromOuterStake())
                .isEmpty();
        assertThat(layout.diagonals())
                .extracting(ProvingDiagonal::toString)
                .containsExactly(
                        "start of side 1 to corner of side 2 and side 3",
                        "corner of side 1 and side 2 to end of side 3");
    }

    @Test
    void oneSideHasNothingToProve() {
        StringLayout layout = StringLayout.of(plan(Plans.rectangle(50, 40), 1));
        assertThat(layout.corners()).isEmpty();
        assertThat(layout.diagonals()).isEmpty();
        assertThat(layout.strings()).hasSize(1);
        assertThat(layout.boards()).hasSize(2);
    }

    /** The tape sets a limit: 300 by 400 ft have room for 297-396-495, a 100 ft tape for 60-80-100. */
    @Test
    void theTapeLimitsTheTriangle() {
        StringCorner corner =
                StringLayout.of(plan(Plans.rectangle(401, 301), 1, 2)).corners().get(0);
        assertThat(corner.onArriving()).isEqualTo(Length.ofFeet(80));
        assertThat(corner.onLeaving()).isEqualTo(Length.ofFeet(60));
        StringSpec metric = StringSpec.builder()
                .tape(Length.ofMetres(30))
                .step(Length.ofMillimetres(100))
                .build();
        assertThat(StringLayout.of(rectangle(), metric).corners().get(0).diagonal())
                .isEqualTo(Length.ofMetres(18.5));
    }

    /** A lot of 60 and 120 degrees: equal legs, whose diagonals are the leg itself and the leg times the root of 3. */
    @Test
    void cornersOffSquare() {
        LotBoundary lot = LotBoundary.of(
                List.of(Plans.course(0, 60), Plans.course(60, 60), Plans.course(180, 60), Plans.course(240, 60)));
        StringLayout layout = StringLayout.of(plan(lot, 1, 2, 3, 4));
        StringCorner blunt = layout.corners().get(0);
        StringCorner sharp = layout.corners().get(1);

        assertThat(blunt.isThreeFourFive()).isFalse();
        assertThat(blunt.onArriving()).isEqualTo(blunt.onLeaving());
        assertThat(blunt.diagonal().feet()).isCloseTo(blunt.onArriving().feet() * Math.sqrt(3), within(1e-6));
        assertThat(blunt.diagonal().feet()).isLessThan(100);
        assertThat(sharp.diagonal().feet()).isCloseTo(sharp.onArriving().feet(), within(1e-6));
        // 4 ft x tan 60 and 4 ft x tan 30.
        assertThat(layout.strings()
                        .get(0)
                        .boardAtEnd()
                        .orElseThrow()
                        .fromOuterStake()
                        .orElseThrow()
                        .feet())
                .isCloseTo(6.9282, within(5e-5));
        assertThat(layout.strings()
                        .get(1)
                        .boardAtEnd()
                        .orElseThrow()
                        .fromOuterStake()
                        .orElseThrow()
                        .feet())
                .isCloseTo(2.3094, within(5e-5));
        Worksheet sheet = layout.worksheets().get(0);
        assertThat(sheet.title()).isEqualTo("corner of side 1 and side 2: Check triangle");
        assertThat(sheet.result()).isEqualTo(blunt.diagonal());
    }

    /** A quarter circle of nine chords that turn 10 degrees each: stakes at the bends, and diagonals that pass them over. */
    @Test
    void bendsTakeStakesAndNoBoards() {
        List<Course> courses = new ArrayList<>();
        courses.add(Plans.course(0, 60));
        for (int i = 0; i < 8; i++) {
            courses.add(Plans.course(50 + 10 * i, 10));
        }
        courses.add(Plans.course(180, 100));
        double east = 0;
        double north = 60 - 100;
        for (int i = 0; i < 8; i++) {
            east += 10 * Math.sin(Math.toRadians(50 + 10 * i));
            north += 10 * Math.cos(Math.toRadians(50 + 10 * i));
        }
        courses.add(Plans.course(Math.toDegrees(Math.atan2(-east, -north)) + 360, Math.hypot(east, north)));
        FencePlan plan = plan(LotBoundary.of(courses), 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
        StringLayout layout = StringLayout.of(plan);

        assertThat(plan.runs()).hasSize(10);
        assertThat(layout.corners()).hasSize(9);
        assertThat(layout.corners().subList(1, 8)).allMatch(StringCorner::isBend);
        // The first corner turns 50 degrees, the last 60; the ends have boards as well.
        assertThat(layout.boards()).hasSize(6);
        assertThat(layout.strings().get(3).boardAtEnd()).isEmpty();
        assertThat(layout.strings().get(3).lengthBetweenBoards())
                .isEqualTo(layout.strings().get(3).line().length());
        assertThat(layout.diagonals())
                .extracting(ProvingDiagonal::toString)
                .containsExactly(
                        "start of side 1 to corner of side 9 and side 10",
                        "corner of side 1 and side 2 to end of side 10");
    }

    /** A tape of 1 ft reaches across legs of 0.707 ft; 1/96 ft more is 1 x (1/96) / 0.707^2 radians, or 1.19 degrees. */
    @Test
    void aShortTapeHardlyProvesACorner() {
        FencePlan plan = plan(Plans.rectangle(50, 40), 1, 2);
        StringSpec shortTape = StringSpec.builder().tape(Length.ofFeet(1)).build();
        StringCorner corner = StringLayout.of(plan, shortTape).corners().get(0);
        assertThat(corner.onArriving().feet()).isCloseTo(0.70711, within(1e-5));
        assertThat(corner.meaningOf(Length.ofInches(0.125)).orElseThrow().degrees())
                .isCloseTo(1.19, within(0.02));
        assertThat(StringLayout.of(plan, shortTape).findings())
                .extracting("code")
                .containsExactly("corner-hard-to-prove", "board-off-lot");
        assertThat(corner.meaningOf(Length.ofFeet(3))).isEmpty();
    }

    @Test
    void aPlanWithoutRunsHasNoStrings() {
        FencePlan none = FencePlanner.plan(
                Site.on(Plans.rectangle(50, 40)).fenceOn(1).build(),
                FenceStyle.builder().build());
        StringLayout layout = StringLayout.of(none);
        assertThat(layout.strings()).isEmpty();
        assertThat(layout.findings()).isEmpty();
        assertThat(layout.worksheets()).isEmpty();
    }

    @Test
    void badInputIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StringSpec.builder().setBack(Length.ZERO))
                .withMessageContaining("setBack was 0 in")
                .withMessageContaining("up to 100 ft");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StringSpec.builder().tape(Length.ofFeet(1001)))
                .withMessageContaining("tape was 1001 ft");
        StringCorner corner = StringLayout.of(rectangle()).corners().get(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> corner.meaningOf(Length.ZERO))
                .withMessageContaining("error was 0 in");
    }
}
