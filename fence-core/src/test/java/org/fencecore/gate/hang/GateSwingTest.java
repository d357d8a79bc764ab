package org.fencecore.gate.hang;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** A leaf 4 ft wide, shut from the origin to the east, so that it opens north to the left and south to the right. */
class GateSwingTest {

    private static final Segment SHUT = Segment.of(Point.ORIGIN, Point.of(Length.ofInches(48), Length.ZERO));
    private static final Length THIN = Length.ofNanometres(1000);

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static Plane slope(double east, double north) {
        return Plane.of(Point.ORIGIN, Length.ZERO, Slope.ofPercent(east), Slope.ofPercent(north));
    }

    private static GateSwing.Builder over(Surface ground) {
        return GateSwing.over(ground).closed(SHUT).bottom(inches(3)).thickness(THIN);
    }

    /** 48 x 0.05 = 2.4 in higher at the latch when fully open. */
    @Test
    void openingStraightUpASlopeComesNearestAtTheLatchFullyOpen() {
        GateSwing swing = over(slope(0, 5)).opens(Side.LEFT).build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(0.6, within(1e-5));
        assertThat(swing.atAngle().degrees()).isCloseTo(90, within(0.01));
        assertThat(swing.fromHinge()).isEqualTo(inches(48));
        assertThat(swing.place().distanceTo(Point.of(Length.ZERO, inches(48)))).isLessThan(inches(0.02));
        assertThat(swing.worksheet().result()).isEqualTo(swing.smallestClearance());
    }

    /** Up 3 % east and 4 % north is up 5 % to the north-east by north, at 53.13 degrees of opening. */
    @Test
    void acrossTwoGradesItComesNearestStraightUphill() {
        GateSwing swing = over(slope(3, 4)).opens(Side.LEFT).build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(0.6, within(1e-5));
        assertThat(swing.atAngle().degrees()).isCloseTo(53.13, within(0.01));
    }

    /** The far corner of a leaf 4 in thick is sqrt(48^2 + 4^2) = 48.166 in from the pin: 3 - 0.05 x 48.166 = 0.5917. */
    @Test
    void theThicknessOfTheLeafCounts() {
        GateSwing swing =
                over(slope(3, 4)).opens(Side.LEFT).thickness(inches(4)).build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(3 - 0.05 * Math.hypot(48, 4), within(1e-5));
    }

    @Test
    void onLevelGroundItIsTheSameAllTheWay() {
        GateSwing swing = over(Plane.level(inches(1))).build();

        assertThat(swing.smallestClearance()).isEqualTo(inches(2));
        assertThat(swing.findings()).isEmpty();
        assertThat(swing.raiseNeeded()).isEqualTo(Length.ZERO);
    }

    /**
     * Up 5 % to the north, 2 in wanted: the other way falls and clears by 3; hung on the other side it opens uphill all
     * the same; 1.4 in higher does; a rake of (2.4 + 2 - 3) / 48 = 2.917 % does, 3 % in tenths.
     */
    @Test
    void tooLittleClearanceIsToldWithEveryCureThatWorks() {
        GateSwing swing = over(slope(0, 5)).opens(Side.LEFT).build();

        assertThat(swing.isClear()).isFalse();
        assertThat(swing.otherWay().orElseThrow().smallestClearance().inches()).isCloseTo(3, within(1e-4));
        assertThat(swing.otherHinge().orElseThrow().smallestClearance().inches())
                .isCloseTo(0.6, within(1e-4));
        assertThat(swing.raiseNeeded().inches()).isCloseTo(1.4, within(1e-5));
        assertThat(swing.rakeNeeded().orElseThrow().percent()).isCloseTo(3.0, within(1e-9));
        Finding finding = swing.findings().get(0);
        assertThat(finding.code()).isEqualTo("gate-swing-close");
        assertThat(finding.severity()).isEqualTo(Severity.WARNING);
        assertThat(finding.message()).contains("only 9/16\" at 90 deg open, 4' 0\" from the hinges");
        assertThat(finding.remedy())
                .isEqualTo(
                        "let it open the other way, which clears by 2 15/16\"; or hinge it on the other side and let it"
                                + " open the other way, which clears by 2 15/16\"; or hang it 1 7/16\" higher; or rake its bottom"
                                + " to rise 3 % from the hinges; or take the ground down");
        assertThat(over(slope(0, 5))
                        .opens(Side.LEFT)
                        .rake(Slope.ofPercent(3))
                        .build()
                        .isClear())
                .isTrue();
        assertThat(over(slope(0, 5))
                        .opens(Side.LEFT)
                        .rake(Slope.ofPercent(2.9))
                        .build()
                        .isClear())
                .isFalse();
    }

    /**
     * Down 5 % to the east and up 3 % to the north it opens 48 x 0.03 = 1.44 in uphill, 1.56 in clear. Hung at the other
     * end, where the ground is 2.4 in lower, it comes nearest on its way: 3 + 2.4 - sqrt(2.4^2 + 1.44^2) = 2.60 in.
     */
    @Test
    void hangingItOnTheOtherSideIsToldWhereThatDoes() {
        GateSwing swing = over(slope(-5, 3)).opens(Side.LEFT).build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(1.56, within(1e-5));
        assertThat(swing.findings().get(0).remedy())
                .contains("hinge it on the other side, which clears by 2 9/16\"; or");
        assertThat(swing).hasToString("clears the ground by 1 9/16\" at 90 deg");
    }

    /** Up 100 % to the north with 2 in at the pin: a rake of 100 % keeps the 2 in, and no less does. */
    @Test
    void theRakeThatIsNeededMayBeAsSteepAsARakeCanBe() {
        GateSwing swing = over(slope(0, 100)).bottom(inches(2)).opens(Side.LEFT).build();

        assertThat(swing.rakeNeeded()).contains(Slope.ofPercent(100));
        assertThat(over(slope(0, 101))
                        .bottom(inches(2))
                        .opens(Side.LEFT)
                        .build()
                        .rakeNeeded())
                .isEmpty();
    }

    /** A rake of (2.4 + 2 - 2.96) / 48 = 3 % to the tenth is not rounded up to the next. */
    @Test
    void aRakeOfWholeTenthsIsToldAsItIs() {
        GateSwing swing =
                over(slope(0, 5)).bottom(inches(2.96)).opens(Side.LEFT).build();

        assertThat(swing.rakeNeeded().orElseThrow().percent()).isCloseTo(3, within(1e-9));
    }

    @Test
    void noRakeHelpsWhereTheGroundIsTooHighAtThePin() {
        GateSwing swing = over(slope(0, 0)).bottom(inches(1)).build();

        assertThat(swing.rakeNeeded()).isEmpty();
        assertThat(swing.findings().get(0).remedy()).isEqualTo("hang it 1\" higher; or take the ground down");
    }

    /** Level ground has no breaks; a leaf that falls 5 % from the pin is nearest at its latch edge, 3 - 2.4 in. */
    @Test
    void groundWithoutBreaksIsMetAtTheCornersOfTheLeaf() {
        GateSwing swing =
                over(new Floor()).rake(Slope.ofPercent(-5)).opens(Side.LEFT).build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(0.6, within(1e-9));
        assertThat(swing.fromHinge()).isEqualTo(inches(48));
    }

    /** Up 10 % to the east along the fence, the leaf when shut is 4.8 - 3 in deep in the ground at the latch. */
    @Test
    void alongASlopeALevelLeafDragsAndARakedOneDoesNot() {
        GateSwing swing = over(slope(10, 0)).opens(Side.RIGHT).build();

        assertThat(swing.findings().get(0).code()).isEqualTo("gate-drags");
        assertThat(swing.findings().get(0).severity()).isEqualTo(Severity.BLOCKER);
        assertThat(swing.findings().get(0).message()).contains("would be 1 13/16\" in the ground at 0 deg open");
        // Level, it is as deep at the upper hinge itself.
        assertThat(swing.otherHinge().orElseThrow().isClear()).isFalse();
        GateSwing raked =
                over(slope(10, 0)).opens(Side.RIGHT).rake(Slope.ofPercent(10)).build();
        assertThat(raked.smallestClearance().inches()).isCloseTo(3, within(1e-4));
        // Hung at the upper end with its bottom falling away, it meets the rise of the ground under it when open: the
        // bottom 3 in up falls 4.8 over the leaf while the ground stays.
        assertThat(raked.otherHinge().orElseThrow().smallestClearance().inches())
                .isCloseTo(3 - 4.8, within(1e-4));
    }

    /** A ridge 1 1/2 in high runs along the fence 30 in to the north; once the leaf is over it, 3 - 1.5 is left. */
    @Test
    void aRidgeUnderTheMiddleOfTheSwingIsFound() {
        GateSwing swing = over(new Ridge(inches(30), inches(10), inches(1.5), inches(1000)))
                .opens(Side.LEFT)
                .build();

        assertThat(swing.smallestClearance().inches()).isCloseTo(1.5, within(1e-4));
        assertThat(swing.place().north().inches()).isCloseTo(30, within(0.01));
        assertThat(swing.atAngle().degrees()).isGreaterThan(38.6); // asin(30 / 48) = 38.68
    }

    @Test
    void groundThatDoesNotReachUnderTheSwingIsRefusedAndNoCure() {
        Ridge ground = new Ridge(inches(30), inches(10), inches(1.5), inches(40));
        GateSwing.Builder north = over(ground).opens(Side.LEFT);

        assertThatThrownBy(north::build)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("ground does not reach under the whole swing")
                .hasMessageContaining("give shots of the ground out to there");
        GateSwing little =
                over(ground).opens(Side.LEFT).openTo(Angle.ofDegrees(50)).build();
        assertThat(little.otherWay()).isPresent();
        assertThat(north.buildWhereKnown()).isEmpty();
        assertThat(over(ground).opens(Side.LEFT).openTo(Angle.ofDegrees(50)).buildWhereKnown())
                .hasValueSatisfying(
                        known -> assertThat(known.smallestClearance()).isEqualTo(little.smallestClearance()));
        assertThat(little.smallestClearance().inches()).isCloseTo(1.5, within(1e-4));
    }

    @Test
    void refusesASwingThatIsNotDescribed() {
        assertThatThrownBy(() -> GateSwing.over(slope(0, 0)).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("closed was not set");
        assertThatThrownBy(() -> GateSwing.over(slope(0, 0)).closed(SHUT).build())
                .hasMessageContaining("bottom was not set");
        assertThatThrownBy(() -> over(slope(0, 0)).openTo(Angle.ofDegrees(181)))
                .hasMessageContaining("angle was 181 deg");
        assertThatThrownBy(() -> over(slope(0, 0)).thickness(Length.ZERO))
                .hasMessageContaining("newThickness was 0 in");
        assertThatThrownBy(() -> over(slope(0, 0)).rake(Slope.ofPercent(-101)))
                .hasMessageContaining("risingFromPin was");
        assertThat(over(slope(0, 0))
                        .rake(Slope.ofPercent(-100))
                        .bottom(Length.ofFeet(5))
                        .build()
                        .isClear())
                .isTrue();
    }

    /** A level floor at zero, known by nothing but its ends. */
    private record Floor() implements Surface {

        @Override
        public Optional<Length> elevationAt(Point place) {
            return Optional.of(Length.ZERO);
        }

        @Override
        public List<Interval> uncovered(Polyline line) {
            return List.of();
        }

        @Override
        public Optional<Profile> under(Polyline line) {
            return Optional.of(Profile.builder()
                    .point(Length.ZERO, Length.ZERO)
                    .point(line.length(), Length.ZERO)
                    .build());
        }
    }

    /** Level ground with a ridge along the east, known from 100 ft south up to so far north. */
    private record Ridge(Length north, Length halfWidth, Length height, Length known) implements Surface {

        @Override
        public Optional<Length> elevationAt(Point place) {
            if (place.north().compareTo(known) > 0) {
                return Optional.empty();
            }
            double off = place.north().minus(north).abs().ratioTo(halfWidth).value();
            return Optional.of(Length.ofNanometres(Math.round(height.nanometres() * Math.max(0, 1 - off))));
        }

        @Override
        public List<Interval> uncovered(Polyline line) {
            throw new UnsupportedOperationException("not asked for here");
        }

        @Override
        public Optional<Profile> under(Polyline line) {
            java.util.TreeSet<Length> stations = new java.util.TreeSet<>();
            for (int i = 0; i < line.points().size(); i++) {
                stations.add(line.stationOfPoint(i));
            }
            for (int i = 0; i < line.segments().size(); i++) {
                Segment part = line.segments().get(i);
                long rise = part.end().north().minus(part.start().north()).nanometres();
                for (Length at : new Length[] {north.minus(halfWidth), north, north.plus(halfWidth)}) {
                    double share =
                            rise == 0 ? -1 : at.minus(part.start().north()).nanometres() / (double) rise;
                    if (share > 0 && share < 1) {
                        stations.add(line.stationOfPoint(i)
                                .plus(Length.ofNanometres(
                                        Math.round(share * part.length().nanometres()))));
                    }
                }
            }
            Profile.Builder profile = Profile.builder();
            for (Length station : stations) {
                Optional<Length> here = elevationAt(line.pointAt(station));
                if (here.isEmpty()) {
                    return Optional.empty();
                }
                profile.point(station, here.get());
            }
            return Optional.of(profile.build());
        }
    }
}
