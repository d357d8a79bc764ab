package org.fencecore.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.LateralLoad;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Interval;
import org.fencecore.strength.PostStrength;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodMember;
import org.fencecore.strength.WoodSection;
import org.fencecore.units.Length;
import org.fencecore.units.Speed;
import org.fencecore.wind.AsceWind;
import org.fencecore.wind.FenceFace;
import org.fencecore.wind.FenceWind;
import org.fencecore.wind.Wind;

/** A straight fence of posts 8 ft apart in the wind: every post's load, depth and strength. */
final class WindyFence {

    private static final Length SPACING = Length.ofFeet(8);
    private static final Length TOP = Length.ofFeet(6);

    /** What was found for one post. */
    record Post(FootingDesign footing, PostStrength strength) {}

    private final int posts;
    private final Wind wind =
            AsceWind.builder().speed(Speed.ofMilesPerHour(115)).build();
    private final FenceFace face;
    private final FootingSpec spec = FootingSpec.builder()
            .exposedHeight(TOP)
            .soil(SoilClass.SAND)
            .frostDepth(Length.ofInches(24))
            .build();
    private final WoodMember wood = WoodMember.builder(SpeciesGroup.SOUTHERN_PINE, WoodSection.FOUR_BY_FOUR)
            .build();

    WindyFence(int posts) {
        this.posts = posts;
        this.face =
                FenceFace.builder().length(SPACING.times(posts - 1)).top(TOP).build();
    }

    /** The wind on the run. */
    FenceWind wind() {
        return wind.on(face);
    }

    /** The load on one post, from 0. */
    LateralLoad load(FenceWind push, int post) {
        Length at = SPACING.times(post);
        Length half = SPACING.dividedBy(2);
        Interval held = Interval.of(Length.max(Length.ZERO, at.minus(half)), Length.min(face.length(), at.plus(half)));
        return LateralLoad.ofPressure(push.average(held), held.length(), Length.ZERO, TOP);
    }

    /** Depth and hole for a load. */
    FootingDesign footing(LateralLoad load) {
        return FootingDesign.forPost(load, spec);
    }

    /** Every post, with all it takes to say whether it stands. */
    List<Post> check() {
        FenceWind push = wind();
        List<Post> checked = new ArrayList<>(posts);
        for (int i = 0; i < posts; i++) {
            LateralLoad load = load(push, i);
            PostStrength strength = PostStrength.of(wood, load.force(), load.height(), TOP);
            checked.add(new Post(footing(load), strength));
        }
        return checked;
    }

    /** The depths in metres and the part of its strength that each post uses, by plain arithmetic. */
    double[][] plain() {
        double foot = 0.3048;
        double psf = 4.4482216152605 / (foot * foot);
        double kz = 2.01 * Math.pow(15.0 / 900, 2 / 9.5);
        double onCoefficient = 0.00256 * kz * 0.85 * 115 * 115 * psf * 0.85 * 0.6;
        double length = (posts - 1) * 8 / 6.0;
        double part = (length - 13) / (45 - 13);
        double[] starts = {0, 1, 2, 3, 4, 5, 10};
        double[] at13 = {4.00, 2.60, 2.00, 1.50, 1.35, 0.90, 0.55};
        double[] at45 = {4.30, 2.55, 1.95, 1.85, 1.85, 1.10, 0.55};
        double[] zones = new double[7];
        for (int i = 0; i < 7; i++) {
            zones[i] = Math.max(1.30, 0.8 * (at13[i] + part * (at45[i] - at13[i])));
        }
        double[][] found = new double[2][posts];
        for (int i = 0; i < posts; i++) {
            double from = Math.max(0, i * 8 - 4) / 6.0;
            double to = Math.min((posts - 1) * 8, i * 8 + 4) / 6.0;
            double sum = 0;
            for (int zone = 0; zone < 7; zone++) {
                double end = zone < 6 ? starts[zone + 1] : length / 2;
                sum += zones[zone]
                        * (overlap(from, to, starts[zone], end)
                                + overlap(from, to, length - end, length - starts[zone]));
            }
            double force = onCoefficient * sum * 6 * foot * 6 * foot;
            double moment = force * 0.55 * 6 * foot;
            double k = 7.02 * force / (150 * psf / foot * 10.5 / 12 * foot);
            double c = 1.09 * k * 0.55 * 6 * foot;
            double d = Math.sqrt(k) + Math.cbrt(c);
            for (int n = 0; n < 8; n++) {
                d -= (d * d * d - k * d - c) / (3 * d * d - k);
            }
            found[0][i] = d;
            double modulus = Math.pow(3.5 * 0.0254, 3) / 6;
            found[1][i] = moment / modulus / (1100 * 1.6 * psf * 144);
        }
        return found;
    }

    private static double overlap(double from, double to, double start, double end) {
        return Math.max(0, Math.min(to, end) - Math.max(from, start));
    }
}
