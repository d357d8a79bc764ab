package org.fencecore.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.fencecore.Plans;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.junit.jupiter.api.Test;

class SiteTest {

    private static final LotBoundary LOT = Plans.rectangle(50, 40);

    @Test
    void whatIsNotSaid() {
        Site site = Site.on(LOT).fenceOn(3, 1).build();
        assertThat(site.fencedSides()).containsExactly(1, 3);
        assertThat(site.setback()).isEqualTo(Length.ofInches(6));
        assertThat(site.soil()).isEqualTo(SoilClass.CLAY);
        assertThat(site.hasDoubledBearing()).isFalse();
        assertThat(site.frostDepth()).isEmpty();
        assertThat(site.windPressure()).isEmpty();
        assertThat(site.ground(1)).isEmpty();
    }

    @Test
    void aGateIsAnOpeningAlongItsSide() {
        GateLocation gate = Plans.gate("g", 1, 10, 48);
        assertThat(gate.opening()).isEqualTo(Interval.of(Length.ofFeet(8), Length.ofFeet(12)));
        // An odd nanometre goes to the far end, and the opening stays what was asked.
        GateLocation odd = GateLocation.named("odd")
                .onSide(1)
                .centredAt(Length.ofNanometres(10))
                .clearOpening(Length.ofNanometres(3))
                .build();
        assertThat(odd.opening().length()).isEqualTo(Length.ofNanometres(3));
    }

    @Test
    void badInputIsRefusedWithTheValueAndTheWayOut() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).fenceOn(5).build())
                .withMessageContaining("5")
                .withMessageContaining("sides 1 to 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).setback(Length.ofInches(-1)))
                .withMessageContaining("-1 in")
                .withMessageContaining("0 or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).frostDepth(Length.ofInches(-1)))
                .withMessageContaining("frost depth");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).windPressure(Pressure.ofPsf(-1)))
                .withMessageContaining("-1 psf");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).build())
                .withMessageContaining("fenceOn");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT)
                        .fenceOn(1)
                        .fenceAlong(
                                Polyline.of(List.of(Point.ORIGIN, Point.of(Length.ofFeet(9), Length.ZERO))), Side.LEFT)
                        .build())
                .withMessageContaining("both sides [1] of the lot and a line");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).fenceOn(1).build().sideLength(5))
                .withMessageContaining("from 1 to 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Site.on(LOT).gate(Plans.gate("g", 1, 10, 48)).gate(Plans.gate("g", 2, 10, 48)))
                .withMessageContaining("two gates");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plans.gate("g", 1, 10, 0))
                .withMessageContaining("clear opening of g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plans.gate("g", 1, -1, 48))
                .withMessageContaining("centre of g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plans.gate("g", 0, 1, 48))
                .withMessageContaining("onSide");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GateLocation.named(" "))
                .withMessageContaining("name");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GateLocation.named("g").onSide(1).build())
                .withMessageContaining("centredAt");
    }
}
