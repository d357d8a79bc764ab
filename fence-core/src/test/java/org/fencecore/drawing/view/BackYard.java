package org.fencecore.drawing.view;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.footing.SoilClass;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;

/** Wholly invented yards to draw. */
public final class BackYard {

    private BackYard() {}

    /** A back yard that falls away from the house: three sides of shadowbox fence and two gates. */
    public static FencePlan sloping() {
        return sloping("side gate");
    }

    /** The same yard with its first gate under another name. */
    public static FencePlan sloping(String gateName) {
        LotBoundary lot = LotBoundary.of(List.of(
                course("S 2°15' W", 58.40),
                course("N 87°45' W", 66.00),
                course("N 2°15' E", 58.40),
                course("S 87°45' E", 66.00)));
        Site site = Site.on(lot)
                .fenceOn(1, 2, 3)
                .ground(1, feet(0, 101.2, 14, 100.1, 31, 97.9, 58.40, 95.6))
                .ground(2, feet(0, 95.6, 22, 95.2, 45, 94.1, 66.00, 93.9))
                .ground(3, feet(0, 93.9, 18, 95.8, 40, 98.2, 58.40, 99.8))
                .gate(gate(gateName, 1, 9, 42).hinges(HingeSide.RIGHT).build())
                .gate(gate("garden gate", 3, 44, 47.5).build())
                .soil(SoilClass.SAND)
                .windPressure(Pressure.ofPsf(12))
                .frostDepth(Length.ofInches(30))
                .build();
        return FencePlanner.plan(site, FenceStyle.builder().build());
    }

    /** A level lot that long and 20 ft deep, gone round anticlockwise, with a fence along its first side, due east. */
    public static FencePlan level(double lengthInFeet) {
        LotBoundary lot = LotBoundary.of(List.of(
                course("N 90° E", lengthInFeet),
                course("N 0° E", 20),
                course("N 90° W", lengthInFeet),
                course("S 0° E", 20)));
        Site site = Site.on(lot)
                .fenceOn(1)
                .ground(1, feet(0, 10, lengthInFeet, 10))
                .frostDepth(Length.ofInches(24))
                .build();
        return FencePlanner.plan(site, FenceStyle.builder().build());
    }

    public static GateLocation.Builder gate(String name, int side, double centreInFeet, double openingInInches) {
        return GateLocation.named(name)
                .onSide(side)
                .centredAt(Length.ofFeet(centreInFeet))
                .clearOpening(Length.ofInches(openingInInches));
    }

    public static Course course(String bearing, double feet) {
        return Course.of(Bearing.parse(bearing), Length.ofFeet(feet));
    }

    /** Ground from pairs of station and elevation in feet. */
    public static Profile feet(double... pairs) {
        Profile.Builder ground = Profile.builder();
        for (int i = 0; i < pairs.length; i += 2) {
            ground.point(Length.ofFeet(pairs[i]), Length.ofFeet(pairs[i + 1]));
        }
        return ground.build();
    }
}
