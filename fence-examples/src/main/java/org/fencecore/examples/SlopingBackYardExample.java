package org.fencecore.examples;

import java.io.IOException;
import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.footing.PostSetting;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Bearing;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Slope;

/**
 * A back yard that falls away from the house, fenced round three sides with boards side by side and two gates. The yard
 * is wholly invented.
 */
public final class SlopingBackYardExample {

    private SlopingBackYardExample() {}

    /**
     * Prints the build sheet and writes the packet.
     *
     * @param args not used
     * @throws IOException if the packet cannot be written
     */
    public static void main(String[] args) throws IOException {
        Packets.printAndWrite(plan(), "sloping-back-yard");
    }

    /**
     * Plans the fence.
     *
     * @return the plan
     */
    public static FencePlan plan() {
        LotBoundary lot = LotBoundary.of(List.of(
                Course.of(Bearing.parse("S 1°30' W"), Length.parse("64.20 ft")),
                Course.of(Bearing.parse("N 88°30' W"), Length.parse("52.00 ft")),
                Course.of(Bearing.parse("N 1°30' E"), Length.parse("64.20 ft")),
                Course.of(Bearing.parse("S 88°30' E"), Length.parse("52.00 ft"))));
        Site site = Site.on(lot)
                .fenceOn(1, 2, 3)
                .ground(1, Shots.feet(0, 98.4, 16, 96.9, 36, 94.1, 64.20, 91.0))
                .ground(2, Shots.feet(0, 91.0, 30, 90.2, 52.00, 89.4))
                .ground(3, Shots.feet(0, 89.4, 20, 91.6, 44, 95.0, 64.20, 97.2))
                .gate(GateLocation.named("side gate")
                        .onSide(1)
                        .centredAt(Length.parse("5 ft"))
                        .clearOpening(Length.parse("3 ft 6 in"))
                        .build())
                .gate(GateLocation.named("mower gate")
                        .onSide(3)
                        .centredAt(Length.parse("55 ft"))
                        .clearOpening(Length.parse("5 ft"))
                        .build())
                .soil(SoilClass.SAND)
                .doubledBearing(true)
                .windPressure(Pressure.ofPsf(8))
                .frostDepth(Length.ofInches(30))
                .build();
        FenceStyle style = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ofFeet(5))
                        .maximum(Length.ofFeet(6))
                        .build())
                .setting(PostSetting.builder().holeDiameter(Length.ofInches(12)).build())
                .slope(SlopeSpec.builder().maximumGrade(Slope.ofPercent(15)).build())
                .build();
        return FencePlanner.plan(site, style);
    }
}
