package org.fencecore.stakeout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;

class StakeoutProperties {

    /** Corners of the lot and of the strings are whole nanometres each, so that what is measured between them is not. */
    private static final long ROUNDING = 10;

    /** A lot of two pairs of parallel sides, fenced all round; it slopes evenly to its far corner. */
    private static FencePlan parallelogram(int first, int second, double azimuth, double angle, double rise) {
        double turn = 180 - angle;
        LotBoundary lot = LotBoundary.of(List.of(
                Plans.course(azimuth, first),
                Plans.course(azimuth + turn, second),
                Plans.course(azimuth + 180, first),
                Plans.course(azimuth + 180 + turn, second)));
        Site site = Site.on(lot)
                .fenceOn(1, 2, 3, 4)
                .ground(1, Plans.shots(0, 100, first, 100 + rise))
                .ground(2, Plans.shots(0, 100 + rise, second, 100 + 2 * rise))
                .ground(3, Plans.shots(0, 100 + 2 * rise, first, 100 + rise))
                .ground(4, Plans.shots(0, 100 + rise, second, 100))
                .build();
        return FencePlanner.plan(site, FenceStyle.builder().build());
    }

    private static Length pythagoras(Length a, Length b) {
        BigDecimal squares = BigDecimal.valueOf(a.nanometres())
                .pow(2)
                .add(BigDecimal.valueOf(b.nanometres()).pow(2));
        return Length.ofNanometres(squares.sqrt(MathContext.DECIMAL64)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    private static void same(Length measured, Length expected) {
        assertThat(measured.nanometres()).isCloseTo(expected.nanometres(), within(ROUNDING));
    }

    /** The strings run 6 in inside, so those of a lot of a by b are a - 1 and b - 1 ft; whichever way the lot lies. */
    @Property(tries = 60)
    void bothDiagonalsOfARectangleAgreeWithPythagoras(
            @ForAll @IntRange(min = 12, max = 150) int first,
            @ForAll @IntRange(min = 12, max = 150) int second,
            @ForAll @DoubleRange(min = 0, max = 89) double azimuth) {
        List<ProvingDiagonal> diagonals =
                StringLayout.of(parallelogram(first, second, azimuth, 90, 0)).diagonals();

        Length across = pythagoras(Length.ofFeet(first - 1), Length.ofFeet(second - 1));
        assertThat(diagonals).hasSize(2).allSatisfy(diagonal -> same(diagonal.length(), across));
    }

    /** 3-4-5 to the nanometre, within both strings and the tape, and one step more would be beyond one of them. */
    @Property(tries = 60)
    void aSquareCornerIsProvedByTheLargestThreeFourFive(
            @ForAll @IntRange(min = 12, max = 150) int first,
            @ForAll @IntRange(min = 12, max = 150) int second,
            @ForAll @IntRange(min = 10, max = 100) int tapeFeet,
            @ForAll @IntRange(min = 1, max = 24) int stepInches) {
        Length step = Length.ofInches(stepInches);
        Length tape = Length.ofFeet(tapeFeet);
        StringSpec spec = StringSpec.builder().tape(tape).step(step).build();
        FencePlan plan = parallelogram(first, second, 0, 90, 0);
        Length shorter = Length.ofFeet(Math.min(first, second) - 1);
        Length longer = Length.ofFeet(Math.max(first, second) - 1);

        assertThat(StringLayout.of(plan, spec).corners()).hasSize(4).allSatisfy(corner -> {
            Length small = Length.min(corner.onArriving(), corner.onLeaving());
            Length large = Length.max(corner.onArriving(), corner.onLeaving());
            assertThat(corner.isThreeFourFive()).isTrue();
            assertThat(corner.diagonal()).isEqualTo(pythagoras(small, large)).isLessThanOrEqualTo(tape);
            long multiple = small.wholePieces(step) / 3;
            assertThat(small).isEqualTo(step.times(3 * multiple)).isLessThanOrEqualTo(shorter);
            assertThat(large).isEqualTo(step.times(4 * multiple)).isLessThanOrEqualTo(longer);
            boolean moreFits = step.times(3 * multiple + 3).compareTo(shorter) <= 0
                    && step.times(4 * multiple + 4).compareTo(longer) <= 0
                    && step.times(5 * multiple + 5).compareTo(tape) <= 0;
            assertThat(moreFits).isFalse();
        });
    }

    /** A corner that is off by what the reading means gives that reading, by the law of cosines. */
    @Property(tries = 60)
    void whatAReadingMeansGivesTheReadingBack(
            @ForAll @IntRange(min = 30, max = 120) int first,
            @ForAll @IntRange(min = 30, max = 120) int second,
            @ForAll @DoubleRange(min = 50, max = 130) double angle,
            @ForAll @DoubleRange(min = 0.1, max = 2) double inches) {
        Length error = Length.ofInches(inches);

        assertThat(StringLayout.of(parallelogram(first, second, 20, angle, 0)).corners())
                .hasSize(4)
                .allSatisfy(corner -> {
                    double a = corner.onArriving().inches();
                    double b = corner.onLeaving().inches();
                    double opened = corner.corner()
                            .interiorAngle()
                            .plus(corner.meaningOf(error).orElseThrow())
                            .radians();
                    double reading = Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(opened));
                    assertThat(reading).isCloseTo(corner.diagonal().inches() + inches, within(1e-5));
                });
    }

    /** Each board is as far past its corner as was asked, on the string, and both of a corner from one outer stake. */
    @Property(tries = 60)
    void boardsStandBeyondTheCornerByWhatWasAsked(
            @ForAll @IntRange(min = 20, max = 120) int first,
            @ForAll @IntRange(min = 20, max = 120) int second,
            @ForAll @DoubleRange(min = 50, max = 130) double angle,
            @ForAll @DoubleRange(min = 1, max = 10) double setBackFeet) {
        Length setBack = Length.ofFeet(setBackFeet);
        StringLayout layout = StringLayout.of(
                parallelogram(first, second, 20, angle, 0),
                StringSpec.builder().setBack(setBack).build());

        assertThat(layout.boards()).hasSize(8);
        for (StringLine string : layout.strings()) {
            BatterBoard before = string.boardAtStart().orElseThrow();
            BatterBoard beyond = string.boardAtEnd().orElseThrow();
            same(before.crossing().distanceTo(string.line().start()), setBack);
            same(beyond.crossing().distanceTo(string.line().end()), setBack);
            same(before.crossing().distanceTo(beyond.crossing()), string.lengthBetweenBoards());
            same(string.lengthBetweenBoards(), string.line().length().plus(setBack.times(2)));
        }
        for (int i = 0; i < 4; i++) {
            StringLine arriving = layout.strings().get(i);
            StringLine leaving = layout.strings().get((i + 1) % 4);
            same(outerStake(arriving, true).distanceTo(outerStake(leaving, false)), Length.ZERO);
        }
    }

    /** From where the string crosses the board, square to the string and away from the lot's inside. */
    private static Point outerStake(StringLine string, boolean atEnd) {
        BatterBoard board = (atEnd ? string.boardAtEnd() : string.boardAtStart()).orElseThrow();
        Length out = board.fromOuterStake().orElseThrow();
        return string.line().pointAt(board.station(), string.run().outside() == Side.LEFT ? out.negated() : out);
    }

    /** A stake's distances are its post's place: along the string by them, and square off it by half a post. */
    @Property(tries = 60)
    void stakesAreWherePostsStand(
            @ForAll @IntRange(min = 20, max = 120) int first,
            @ForAll @IntRange(min = 20, max = 120) int second,
            @ForAll @DoubleRange(min = 50, max = 130) double angle,
            @ForAll @DoubleRange(min = -3, max = 3) double rise,
            @ForAll @DoubleRange(min = 0, max = 40) double aboveInches) {
        FencePlan plan = parallelogram(first, second, 20, angle, rise);
        Assume.that(plan.runs().size() == 4);
        Length above = Length.ofInches(aboveInches);
        StakeSheet sheet = StakeSheet.of(plan, StringHeight.level(above));

        for (StringLine string : StringLayout.of(plan).strings()) {
            Segment line = string.line();
            List<Stake> stakes = sheet.stakes(string.run());
            assertThat(stakes).hasSameSizeAs(string.run().posts());
            for (Stake stake : stakes) {
                Length inward = string.run().outside() == Side.LEFT
                        ? stake.offset()
                        : stake.offset().negated();
                same(
                        line.pointAt(stake.fromStart(), inward)
                                .distanceTo(stake.post().centre()),
                        Length.ZERO);
                same(stake.fromStart().plus(stake.fromEnd()), line.length());
                assertThat(stake.fromStartOnGround()).isGreaterThanOrEqualTo(stake.fromStart());
                assertThat(stake.fromEndOnGround()).isGreaterThanOrEqualTo(stake.fromEnd());
                assertThat(stake.drop().minus(above).nanometres()).isGreaterThanOrEqualTo(-ROUNDING);
                assertThat(stake.string()).isEqualTo(stakes.get(0).string());
            }
        }
    }
}
