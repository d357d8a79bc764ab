package org.fencecore.slope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Tells what the builder should know about a fit; the codes are listed at {@link SlopeFit#findings}. */
final class SlopeNotes {

    private final SlopeFit fit;
    private final SlopeSpec spec;

    SlopeNotes(SlopeFit fit) {
        this.fit = fit;
        this.spec = fit.spec();
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int post = 0; post < fit.postCount(); post++) {
            liftedPost(post).ifPresent(findings::add);
        }
        for (int bay = 0; bay < fit.postCount() - 1; bay++) {
            wideGap(bay).ifPresent(findings::add);
            steepBay(bay).ifPresent(findings::add);
        }
        return List.copyOf(findings);
    }

    private Optional<Finding> liftedPost(int post) {
        Length above = fit.bottomAbove(post);
        if (fit.treatment() != Treatment.RACKED || above.equals(spec.clearance())) {
            return Optional.empty();
        }
        // The high spot is in the bay, of the two beside the post, where the boards come nearest to the ground.
        Clearance before = fit.bay(Math.max(post - 1, 0)).clearance();
        Clearance after = fit.bay(Math.min(post, fit.postCount() - 2)).clearance();
        Clearance nearest = before.min().compareTo(after.min()) <= 0 ? before : after;
        return Optional.of(Finding.note(
                        "lifted-post",
                        "post at " + Written.station(fit.station(post)),
                        "the boards stand " + Written.tape(above) + " above the ground here, "
                                + Written.tape(above.minus(spec.clearance()))
                                + " more than the clearance, to stay " + Written.tape(spec.minimumClearance())
                                + " clear of the ground at " + Written.station(nearest.minStation()))
                .withRemedy("build it so, or take the high spot down"));
    }

    private Optional<Finding> wideGap(int index) {
        Clearance gap = fit.bay(index).clearance();
        if (spec.closes(gap.max()) || gap.max().compareTo(spec.maximumClearance()) <= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(
                        "wide-gap",
                        fit.place(index),
                        "the gap under the boards at " + Written.station(gap.maxStation()) + " is "
                                + Written.tape(gap.max(), Rounding.UP) + ", "
                                + Written.tape(gap.max().minus(spec.maximumClearance()), Rounding.UP)
                                + " over the maximum of "
                                + Written.tape(spec.maximumClearance()))
                .withRemedy(gapRemedy(index, gap)));
    }

    private String gapRemedy(int index, Clearance gap) {
        boolean isLevel = fit.bay(index).treatment().isLevel();
        if (gap.max().compareTo(KickBoard.DEEPEST) > 0) {
            return "build a wall under it, since a gap over " + Written.tape(KickBoard.DEEPEST)
                    + " is not closed with boards, or "
                    + (isLevel ? "set posts closer for lower steps" : "fill the low spot");
        }
        if (!isLevel) {
            return "fill the low spot, or close the gap with a kick board";
        }
        String most = Written.tape(gap.max().minus(spec.minimumClearance()), Rounding.UP);
        return "close it with a kick board " + most + " deep at that end, or with boards up to " + most
                + " longer cut to the ground";
    }

    private Optional<Finding> steepBay(int index) {
        Slope grade = fit.bay(index).grade();
        Slope limit = spec.maximumGrade().orElse(SlopeFit.STEEPEST);
        if (grade.abs().compareTo(SlopeFit.STEEPEST) > 0) {
            return Optional.of(Finding.blocker(
                            "too-steep",
                            fit.place(index),
                            "lifted over the high spots, the bay has a grade of " + Written.percent(grade)
                                    + ", and a bay takes up to 100 %")
                    .withRemedy("take the high spot down, or set a post on it"));
        }
        if (grade.abs().compareTo(limit) > 0) {
            return Optional.of(Finding.warning(
                            "rack-limit",
                            fit.place(index),
                            "the grade of " + Written.percent(grade) + " is over the " + Written.percent(limit)
                                    + " the bays can rack")
                    .withRemedy("step this bay, or use rails and fixings that rack further"));
        }
        return Optional.empty();
    }
}
