package org.fencecore.examples;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Run;
import org.fencecore.SetPost;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Zone;
import org.fencecore.layout.BoardPattern;
import org.fencecore.obstacles.Obstacle;
import org.fencecore.obstacles.Obstacles;
import org.fencecore.obstacles.UtilityKind;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRules;
import org.fencecore.site.Site;
import org.fencecore.stakeout.Stake;
import org.fencecore.stakeout.StakeSheet;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.tape.TapeFormat;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;

/**
 * A lot with a rounded street corner, its ground from spot shots, and a water line across it: planned, staked, and planned
 * again to the posts as they were set. The lot, its town and its rules are wholly invented.
 */
public final class CornerLotAsBuiltExample {

    private static final TapeFormat TAPE = TapeFormat.feetAndInches(16);

    private CornerLotAsBuiltExample() {}

    /**
     * Prints the stakes, what is wrong, and what changed once the posts stood.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        FencePlan plan = plan();
        System.out.println("STAKES, from the first post of each run");
        for (Stake stake : StakeSheet.of(plan).stakes()) {
            System.out.println("  " + stake.run().name() + ", " + stake.post() + ": "
                    + TAPE.format(stake.fromStart()) + " level, " + TAPE.format(stake.fromStartOnGround())
                    + " on the ground");
        }
        print("\nBEFORE DIGGING", plan.findings());

        Run back = plan.runs().get(plan.runs().size() - 1);
        FencePlan built = plan.withSetPosts(List.of(
                SetPost.of(
                        back.posts().get(1).number(),
                        back.pointAt(back.station(back.posts().get(1)).plus(Length.ofInches(2)), Length.ZERO)),
                SetPost.of(
                        back.posts().get(3).number(),
                        back.pointAt(back.station(back.posts().get(3)), Length.ofInches(1)))));
        print(
                "\nONCE THE POSTS STAND",
                built.findings().stream()
                        .filter(finding -> !plan.findings().contains(finding))
                        .toList());
        System.out.println("\nFirst two pieces of the bottom rail on " + back.name() + ", before and after:");
        for (int piece = 0; piece < 2; piece++) {
            System.out.println(
                    "  " + TAPE.format(railLength(plan, piece)) + " -> " + TAPE.format(railLength(built, piece)));
        }
    }

    /**
     * Plans the fence.
     *
     * @return the plan
     */
    public static FencePlan plan() {
        Course street = Course.of(Bearing.parse("N 2°15' E"), Length.parse("70.00 ft"));
        Course corner = Course.curve(Side.RIGHT)
                .radius(Length.parse("20.00 ft"))
                .delta(Angle.RIGHT)
                .tangentTo(street)
                .build();
        LotBoundary lot = LotBoundary.of(List.of(
                street,
                corner,
                Course.of(Bearing.parse("S 87°45' E"), Length.parse("60.00 ft")),
                Course.of(Bearing.parse("S 2°15' W"), Length.parse("90.00 ft")),
                Course.of(Bearing.parse("N 87°45' W"), Length.parse("80.00 ft"))));
        Citation ordinance = Citation.of("Fence ordinance of an invented town", "section 12", "2026");
        Site site = Site.on(lot)
                .fenceOn(2, 3, 4)
                .ground(ShotSurface.of(List.of(
                        shot(-10, -10, 200.0),
                        shot(-10, 110, 203.4),
                        shot(40, 60, 202.1),
                        shot(100, 110, 205.8),
                        shot(100, -10, 201.2),
                        shot(60, 20, 201.0))))
                .obstacles(Obstacles.of(List.of(Obstacle.utility(
                        UtilityKind.WATER,
                        Polyline.of(List.of(
                                Point.of(Length.ofFeet(-10), Length.ofFeet(40)),
                                Point.of(Length.ofFeet(110), Length.ofFeet(46))))))))
                .rules(LocalRules.of(List.of(
                        HeightLimit.of(Zone.everywhere(), Length.ofFeet(7), "fences on any lot", ordinance),
                        HeightLimit.permitOver(Zone.everywhere(), Length.ofFeet(6), "fence permit", ordinance))))
                .soil(SoilClass.SANDY_GRAVEL)
                .doubledBearing(true)
                .windPressure(Pressure.ofPsf(10))
                .frostDepth(Length.ofInches(24))
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .postLumber(Lumber.sixBySix())
                .build();
        return FencePlanner.plan(site, style);
    }

    private static Shot shot(double eastFeet, double northFeet, double heightFeet) {
        return Shot.of(Length.ofFeet(eastFeet), Length.ofFeet(northFeet), Length.ofFeet(heightFeet));
    }

    private static Length railLength(FencePlan plan, int piece) {
        Run back = plan.runs().get(plan.runs().size() - 1);
        return back.stretches()
                .get(0)
                .railPieces()
                .orElseThrow()
                .pieces()
                .get(piece)
                .length();
    }

    private static void print(String title, List<Finding> findings) {
        System.out.println(title);
        findings.forEach(finding -> System.out.println("  " + finding));
    }
}
