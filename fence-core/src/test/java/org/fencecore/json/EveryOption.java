package org.fencecore.json;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.Plans;
import org.fencecore.SetPost;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.footing.HoleShape;
import org.fencecore.footing.PostSetting;
import org.fencecore.footing.SoilClass;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.layout.BayRule;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.layout.Ripping;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.rail.RailSpec;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.GateHardware;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.GridSurface;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Angle;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Slope;
import org.fencecore.units.Speed;
import org.fencecore.units.UnitWeight;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.wind.AsceEdition;
import org.fencecore.wind.AsceWind;
import org.fencecore.wind.EnTerrain;
import org.fencecore.wind.EnWind;
import org.fencecore.wind.Exposure;
import org.fencecore.wood.Grain;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodSpecies;
import org.fencecore.worksheet.Citation;

/** Invented jobs that together use every field there is, none at its usual value. */
final class EveryOption {

    private static final Citation TOWN = Citation.of("invented town code", "section 1", "2020");

    private EveryOption() {}

    static List<Job> jobs() {
        return List.of(job(), alongALine(), byCorners(), plain(), curves(), lyingBoards());
    }

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static Length feet(double feet) {
        return Length.ofFeet(feet);
    }

    private static Point at(double east, double north) {
        return Point.of(feet(east), feet(north));
    }

    private static Polyline line(double... places) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < places.length; i += 2) {
            points.add(at(places[i], places[i + 1]));
        }
        return Polyline.of(points);
    }

    private static Polygon square(double east, double north, double size) {
        return Polygon.of(List.of(
                at(east, north), at(east + size, north), at(east + size, north + size), at(east, north + size)));
    }

    /** A lot by its courses, one of them a curve with all calls, with rules and obstacles of every kind. */
    static Job job() {
        Course curve = Course.curve(Side.RIGHT)
                .radius(feet(20))
                .delta(Angle.RIGHT)
                .arc(feet(31.42))
                .chord(feet(28.28))
                .chordBearing(Bearing.parse("N 45° E"))
                .tangentIn(Bearing.NORTH)
                .tangentOut(Bearing.EAST)
                .minor()
                .lengthsTo(feet(0.05))
                .build();
        LotBoundary lot = LotBoundary.startingAt(
                        at(3, 7),
                        List.of(
                                Plans.course(0, 80),
                                curve,
                                Plans.course(90, 60),
                                Plans.course(180, 100),
                                Plans.course(270, 80)))
                .withFacetsWithin(inches(2));
        LocalRules rules = LocalRules.of(List.of(
                HeightLimit.of(Zone.along(line(0, 0, 0, 200), feet(5)), inches(90), "front", TOWN)
                        .withExemption(Ratio.ofPercent(40)),
                HeightLimit.permitOver(Zone.everywhere(), feet(6), "permit", TOWN)
                        .withExemption(Ratio.ofPercent(70)),
                CornerVisibility.of(
                                Corner.of(at(3, 7), Bearing.SOUTH, Bearing.EAST, Side.LEFT),
                                feet(25),
                                feet(20),
                                feet(3),
                                "corner",
                                TOWN)
                        .withUpTo(feet(8))
                        .withExemption(Ratio.ofPercent(50)),
                ClearGround.easement(Zone.inside(square(300, 300, 10)).widenedBy(feet(2)), "drain", TOWN),
                ClearGround.noHoles(Zone.around(at(200, 200), feet(3)), "tank", TOWN),
                ClearGround.setback(line(0, -20, 100, -20), feet(10), "street", TOWN),
                PoolBarrier.builder(Side.RIGHT, "pool", PoolBarrier.PUBLISHED)
                        .zone(Zone.around(at(50, 50), feet(1)))
                        .height(inches(50))
                        .gap(inches(1), inches(3))
                        .opening(inches(3.5))
                        .ladder(inches(46), inches(1.5))
                        .release(inches(55), inches(4), inches(0.25), inches(20))
                        .build()));
        Obstacles obstacles = Obstacles.of(List.of(
                Obstacle.utility(UtilityKind.GAS, line(-20, 60, 120, 60), inches(3))
                        .withClear(inches(18), TOWN)
                        .withName("gas main"),
                Obstacle.tree(at(10, 20), feet(1), feet(4)).withName("the oak"),
                Obstacle.hydrant(at(-30, 0), feet(3)),
                Obstacle.wall(line(200, 0, 220, 0), inches(8)).withClear(inches(6), TOWN),
                Obstacle.structure(square(40, 40, 8)).withClear(inches(12), TOWN),
                Obstacle.area(square(20, 60, 9)).withClear(inches(3), Citation.GEOMETRY)));
        Site site = Site.on(lot)
                .fenceOn(1, 2, 3)
                .setback(inches(8))
                .ground(1, Plans.shots(0, 10, 40, 9, 80, 8))
                .ground(3, Plans.shots(0, 7.5, 60, 7.1))
                .ground(Plane.of(at(1, 2), feet(9), Slope.ofPercent(1.5), Slope.of(feet(1), feet(-1 + 38))))
                .gate(GateLocation.named("pool gate")
                        .onSide(1)
                        .centredAt(feet(30))
                        .clearOpening(inches(44))
                        .hinges(HingeSide.RIGHT)
                        .opensOutward(true)
                        .raked(true)
                        .selfClosing(true)
                        .selfLatching(true)
                        .lockable(true)
                        .latchRelease(inches(50), false)
                        .build())
                .gate(GateLocation.named("drive")
                        .onSide(3)
                        .centredAt(feet(30))
                        .clearOpening(feet(9))
                        .twoLeaves(true)
                        .build())
                .obstacles(obstacles)
                .rules(rules)
                .soil(SoilClass.ofLateralBearing("as bored", UnitWeight.ofPcf(180)))
                .doubledBearing(true)
                .frostDepth(inches(30))
                .frostGrip(Pressure.ofPascals(65_000))
                .wind(AsceWind.builder()
                        .speed(Speed.ofMilesPerHour(115))
                        .edition(AsceEdition.ASCE_7_22)
                        .exposure(Exposure.B)
                        .topographicFactor(Ratio.of(1.1))
                        .groundElevation(feet(1200))
                        .metricConstants(true)
                        .build())
                .build();
        return Job.of(site, style())
                .withName("every option")
                .withTape(TapeFormat.inches(16))
                .withPaper(Paper.TABLOID)
                .withSetPosts(List.of(SetPost.of(
                                1, Job.of(site, style()).plan().posts().get(0).centre())
                        .withExposed(inches(75))));
    }

    private static FenceStyle style() {
        ReferenceValues own = ReferenceValues.given(
                Citation.of("mill certificate", "", ""),
                Pressure.ofPsi(900),
                Pressure.ofPsi(150),
                Pressure.ofPsi(1.2e6));
        return FenceStyle.builder()
                .pattern(BoardPattern.boardAndBatten(inches(5.5), inches(2.5))
                        .withLaps(inches(0.5), inches(0.75), inches(1))
                        .withSmallestPart(Ratio.of(1.0 / 3))
                        .withRipping(Ripping.TWO))
                .boards(BoardStyle.upright()
                        .withEnds(BoardEnds.square()
                                .withSlopedTop()
                                .withSlopedBottom()
                                .withDogEars(inches(1)))
                        .withWood(WoodInUse.of(WoodSpecies.WESTERN_REDCEDAR, Ratio.ofPercent(18))
                                .sawn(Grain.VERTICAL)
                                .between(Ratio.ofPercent(8), Ratio.ofPercent(24))
                                .allowingGaps(inches(0.375))))
                .rails(RailSpec.builder()
                        .boardLength(inches(66))
                        .railDepth(inches(5.5))
                        .topRailBelowTops(inches(3))
                        .bottomRailAboveBottoms(inches(5))
                        .rails(2)
                        .longestStick(feet(12))
                        .mostBays(2)
                        .trim(inches(1))
                        .build())
                .slope(SlopeSpec.builder()
                        .treatment(Treatment.STRINGS)
                        .underBoards(SlopeSpec.UnderBoards.KICK_BOARD)
                        .clearance(inches(3))
                        .minimumClearance(inches(1))
                        .maximumClearance(inches(6))
                        .maximumGrade(Slope.ofPercent(12))
                        .stepIncrement(inches(0.5))
                        .longestString(feet(50))
                        .build())
                .top(TopShape.arched(inches(4)))
                .gateTop(TopShape.dipped(inches(3)))
                .gate(GateSpec.builder()
                        .hingeGap(inches(0.75))
                        .latchGap(inches(0.5))
                        .centreGap(inches(1))
                        .hingeBuildOut(inches(1.5))
                        .latchBuildOut(inches(0.75))
                        .joint(FrameJoint.HALF_LAP)
                        .memberWidth(inches(3.5))
                        .memberThickness(inches(1.5))
                        .middleRail(true)
                        .braceKind(BraceKind.CABLE)
                        .braceEnds(BraceEnds.RAIL_CUTS)
                        .braceReversed(true)
                        .braceWidth(inches(2))
                        .reasonableLeafWidth(feet(5))
                        .reasonableOverhang(inches(18))
                        .build())
                .gateHardware(GateHardware.builder()
                        .moisture(Ratio.ofPercent(15))
                        .hinges(3)
                        .hingeInset(inches(6))
                        .butts(inches(4))
                        .pinFromLeaf(inches(0.25))
                        .lagScrews(3, inches(0.25), inches(1.5))
                        .loadAtLatch(Force.ofNewtons(200))
                        .openTo(Angle.ofDegrees(110))
                        .swingClearance(inches(2))
                        .build())
                .boardLumber(Lumber.of("5/8 x 6", inches(0.625), inches(5.5)).soldIn(feet(6), feet(7)))
                .battenLumber(Lumber.of("1x3", inches(0.75), inches(2.5)).soldIn(feet(8)))
                .railLumber(Lumber.of("2x6", inches(1.5), inches(5.5))
                        .soldIn(feet(8), feet(16))
                        .graded(SpeciesGroup.DOUGLAS_FIR_LARCH, WoodGrade.NO_1))
                .postLumber(Lumber.sixBySix()
                        .graded(SpeciesGroup.SOUTHERN_PINE, WoodGrade.NO_2)
                        .graded(own))
                .gateLumber(Lumber.twoByFour().graded(SpeciesGroup.WESTERN_CEDARS, WoodGrade.NO_2))
                .kickLumber(Lumber.of("2x8", inches(1.5), inches(7.25)).soldIn(feet(10)))
                .postSpacing(PostSpacingSpec.builder()
                        .maximum(feet(7))
                        .minimum(feet(3))
                        .rule(BayRule.REMAINDER_AT_END)
                        .railStock(feet(14))
                        .build())
                .postAboveBoards(inches(3))
                .postTopsToSlope()
                .postCapWidth(inches(7))
                .setting(PostSetting.builder()
                        .minimumEmbedment(inches(28))
                        .thirdOfPostInGround(false)
                        .roundUpTo(inches(2))
                        .belowFrostLine(inches(3))
                        .fenceStandardMinimum(true)
                        .heldAtGrade(true)
                        .hole(HoleShape.belled(inches(16), inches(20), inches(10)))
                        .dryMixBase(inches(3))
                        .concreteTop(inches(-2))
                        .crown(inches(1))
                        .build())
                .build();
    }

    /** A fence along a line over a grid of heights, in metres. */
    static Job alongALine() {
        Length step = Length.ofMetres(5);
        List<List<Length>> heights = List.of(
                List.of(Length.ofMetres(1), Length.ofMetres(1.2), Length.ofMetres(1.1)),
                List.of(Length.ofMetres(1.3), Length.ofMetres(1.25), Length.ofMetres(1)),
                List.of(Length.ofMetres(1.5), Length.ofMetres(1.4), Length.ofMetres(1.2)));
        Site site = Site.on(Plans.rectangle(100, 100))
                .fenceAlong(line(2, 3, 14, 3.5, 25, 13), Side.RIGHT)
                .ground(GridSurface.of(Point.ORIGIN, step, heights))
                .soil(SoilClass.SAND)
                .windPressure(Pressure.ofPascals(500))
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.spaced(inches(5.5), inches(2))
                        .withGaps(inches(1), inches(1.5), inches(2))
                        .withGapAtEnds())
                .rails(RailSpec.builder().betweenPosts().build())
                .top(TopShape.dipped(inches(6)))
                .setting(PostSetting.builder()
                        .hole(HoleShape.square(inches(14)))
                        .gravelBase(inches(4))
                        .build())
                .build();
        return Job.of(site, style).withTape(TapeFormat.millimetres(0)).withPaper(Paper.A3);
    }

    /** A lot by its corners, with shots of the ground. */
    static Job byCorners() {
        Site site = Site.on(LotBoundary.ofCorners(List.of(at(0, 0), at(3.1, 77.7), at(60, 71), at(57, -4))))
                .fenceOn(1)
                .ground(ShotSurface.of(List.of(
                                Shot.of(feet(-20), feet(-20), feet(5)),
                                Shot.of(feet(90), feet(-20), feet(6)),
                                Shot.of(feet(-20), feet(120), feet(3)),
                                Shot.of(feet(90), feet(120), feet(5)),
                                Shot.of(feet(10), feet(33), feet(4))))
                        .withReach(inches(0.5)))
                .wind(EnWind.builder()
                        .basicSpeed(Speed.ofMetresPerSecond(25))
                        .terrain(EnTerrain.CATEGORY_III)
                        .orography(Ratio.of(1.05))
                        .build())
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.boardOnBoard(inches(5.5)).withLap(inches(0.75)))
                .top(TopShape.stepped())
                .setting(PostSetting.builder()
                        .hole(HoleShape.tapered(inches(14), inches(16)))
                        .build())
                .build();
        return Job.of(site, style).withTape(TapeFormat.metres(3)).withPaper(Paper.A4);
    }

    private static Job plain() {
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(inches(5.5)))
                .top(TopShape.followingGround())
                .setting(PostSetting.builder().holeDiameter(inches(12)).build())
                .build();
        Site site = Plans.levelSide()
                .wind(AsceWind.builder()
                        .speed(Speed.ofMilesPerHour(100))
                        .edition(AsceEdition.ASCE_7_16)
                        .tabulatedKz(true)
                        .build())
                .build();
        return Job.of(site, style).withTape(TapeFormat.decimalFeet(2));
    }

    /** A curve of which the call leaves open what it is, so that the lot has a finding. */
    private static Job curves() {
        Course curve = Course.curve(Side.LEFT)
                .radius(feet(50))
                .chord(feet(60))
                .chordBearing(Bearing.ofAzimuth(Angle.ofDegrees(77.123456789)))
                .build();
        Point end = Point.ORIGIN.plus(Bearing.NORTH, feet(70)).plus(curve.bearing(), curve.distance());
        LotBoundary lot = LotBoundary.of(List.of(
                Plans.course(0, 70),
                curve,
                Course.of(end.bearingTo(at(55, -3)), end.distanceTo(at(55, -3))),
                Course.of(at(55, -3).bearingTo(at(0, 0)), at(55, -3).distanceTo(at(0, 0)))));
        Site site = Site.on(lot)
                .fenceOn(1, 2)
                .ground(1, Plans.shots(0, 1, 70, 1))
                .ground(2, Plans.shots(0, 1, 70, 2))
                .build();
        return Job.of(site, FenceStyle.builder().build());
    }

    /** Boards in courses up a grade, and on a gate. */
    static Job lyingBoards() {
        Site site = Site.on(Plans.rectangle(50, 40))
                .fenceOn(1)
                .ground(1, Plans.shots(0, 1, 50, 3))
                .gate(GateLocation.named("side gate")
                        .onSide(1)
                        .centredAt(feet(40))
                        .clearOpening(inches(44))
                        .build())
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.spaced(inches(5.5), inches(0.5)))
                .boards(BoardStyle.horizontal()
                        .withNailersEvery(feet(3))
                        .withWood(WoodInUse.of(WoodSpecies.REDWOOD_YOUNG_GROWTH, Ratio.ofPercent(12))))
                .build();
        return Job.of(site, style);
    }
}
