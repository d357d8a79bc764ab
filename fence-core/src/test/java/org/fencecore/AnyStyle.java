package org.fencecore;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.footing.PostSetting;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.style.Lumber;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodSpecies;

/** Styles of every kind that the builder takes. */
public final class AnyStyle {

    private AnyStyle() {}

    public static Arbitrary<FenceStyle> styles() {
        return Combinators.combine(
                        boards(Arbitraries.of(
                                BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1)),
                                BoardPattern.sideBySide(Length.ofInches(5.5)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2)),
                                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(2))
                                        .withGapAtEnds(),
                                BoardPattern.boardOnBoard(Length.ofInches(5.5)),
                                BoardPattern.boardAndBatten(Length.ofInches(5.5), Length.ofInches(2.5)))),
                        Arbitraries.of(Lumber.fourByFour(), Lumber.sixBySix()),
                        Arbitraries.doubles().between(0.75, 20).ofScale(2),
                        Arbitraries.doubles().between(5.5, 30).ofScale(1),
                        Arbitraries.integers().between(0, 40),
                        slopes(),
                        Arbitraries.of(
                                TopShape.straight(),
                                TopShape.followingGround(),
                                TopShape.stepped(),
                                TopShape.arched(Length.ofInches(8)),
                                TopShape.dipped(Length.ofInches(8))),
                        rails())
                .as((boards, posts, spacing, hole, hardware, slope, top, rails) -> boards.on(slope, top)
                        .gateHardware(hardware(hardware))
                        .rails(rails)
                        .postLumber(posts)
                        .postSpacing(PostSpacingSpec.builder()
                                .minimum(Length.ZERO)
                                .maximum(Length.ofFeet(spacing))
                                .build())
                        .setting(PostSetting.builder()
                                .holeDiameter(Length.ofInches(
                                        Math.max(hole, posts.width().inches() * 1.5)))
                                .build())
                        .gate(GateSpec.builder()
                                .middleRail(hardware % 3 == 0)
                                .joint(List.of(FrameJoint.values()).get(hardware % 4))
                                .build())
                        .build());
    }

    /** Boards that lie, where all else takes that, with ends cut in every way and posts of every height. */
    private record Boards(BoardPattern pattern, BoardEnds ends, boolean lying, Length postsAbove) {

        FenceStyle.Builder on(SlopeSpec slope, TopShape top) {
            FenceStyle.Builder style = FenceStyle.builder().pattern(pattern).slope(slope);
            WoodInUse wood = WoodInUse.of(WoodSpecies.LOBLOLLY_PINE, Ratio.ofPercent(19))
                    .between(Ratio.ofPercent(12), Ratio.ofPercent(25));
            boolean lies = lying
                    && !pattern.isLapped()
                    && !pattern.hasGapAtEnds()
                    && slope.underBoards() != SlopeSpec.UnderBoards.BOARDS_TO_GROUND;
            return lies
                    ? style.boards(BoardStyle.horizontal().withWood(wood))
                    : style.boards(BoardStyle.upright().withEnds(ends).withWood(wood))
                            .top(top)
                            .postAboveBoards(postsAbove);
        }
    }

    private static Arbitrary<Boards> boards(Arbitrary<BoardPattern> patterns) {
        return Combinators.combine(
                        patterns,
                        Arbitraries.of(
                                BoardEnds.square(),
                                BoardEnds.square().withDogEars(Length.ofInches(1.5)),
                                BoardEnds.square().withSlopedTop().withSlopedBottom()),
                        Arbitraries.of(true, false),
                        Arbitraries.of(0, 2, -4).map(Length::ofInches))
                .as(Boards::new);
    }

    private static GateHardware hardware(int size) {
        GateHardware.Builder hardware = GateHardware.builder();
        if (size % 3 != 1) {
            hardware.hingeInset(Length.ofInches(size + 0.5));
        }
        return (size % 2 == 0
                        ? hardware.butts(Length.ofInches(size + 1))
                        : hardware.straps(Length.ofInches(size), Length.ofInches(3 * size)))
                .openTo(Angle.ofDegrees(30 + 3 * size))
                .hinges(2 + size % 5)
                .build();
    }

    private static Arbitrary<SlopeSpec> slopes() {
        return Combinators.combine(
                        Arbitraries.of(Treatment.class),
                        Arbitraries.of(SlopeSpec.UnderBoards.class),
                        Arbitraries.doubles().between(2, 100).ofScale(1).injectNull(0.3))
                .as((treatment, under, limit) -> {
                    SlopeSpec.Builder slope =
                            SlopeSpec.builder().treatment(treatment).underBoards(under);
                    if (limit != null) {
                        slope.maximumGrade(Slope.ofPercent(limit));
                    }
                    return slope.build();
                });
    }

    private static Arbitrary<RailSpec> rails() {
        return Combinators.combine(
                        Arbitraries.of(true, false),
                        Arbitraries.integers().between(1, 4),
                        Arbitraries.doubles().between(1, 20).ofScale(1))
                .as((between, bays, stick) -> {
                    RailSpec.Builder rails = RailSpec.builder().mostBays(bays).longestStick(Length.ofFeet(stick));
                    return (between ? rails.betweenPosts() : rails.trim(Length.ofInches(1))).build();
                });
    }
}
