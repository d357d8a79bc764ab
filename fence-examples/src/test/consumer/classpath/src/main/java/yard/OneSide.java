package yard;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;

/** A program by someone else, who has the jars on the class path. */
public final class OneSide {

    private OneSide() {}

    public static void main(String[] args) {
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.parse("N 0° E"), Length.parse("50 ft")),
                Course.of(Bearing.parse("N 90° E"), Length.parse("40 ft")),
                Course.of(Bearing.parse("S 0° E"), Length.parse("50 ft")),
                Course.of(Bearing.parse("N 90° W"), Length.parse("40 ft"))));
        Profile level = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(Length.parse("50 ft"), Length.ZERO)
                .build();
        FencePlan plan = FencePlanner.plan(
                Site.on(lot).fenceOn(1).ground(1, level).build(),
                FenceStyle.builder().build());
        System.out.println(plan.posts().size() + " posts");
    }
}
