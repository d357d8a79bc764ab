package org.fencecore.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.fencecore.Plans;
import org.fencecore.footing.SoilClass;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
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
        assertThat(site.doubledBearing()).isFalse();
        assertThat(site.frostDepth()).isEmpty();
        assertThat(site.windPressure()).isEmpty();
        assertThat(site.ground(1)).isEmpty();
    }

    @Test
    void aLotThatClosesSaysSo() {
        assertThat(LOT.closure().isExact()).isTrue();
        assertThat(LOT.closure().toString()).isEqualTo("closes exactly");
        assertThat(LOT.area().orElseThrow().squareFeet()).isEqualTo(2000);
        assertThat(LOT.worksheet().result()).isEqualTo(LOT.closure().misclosure());
    }

    @Test
    void worksheetEndsInTheMisclosure() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 30), Plans.course(90, 40), Plans.course(180, 30), Plans.course(270, 39.9)));
        assertThat(open.worksheet().result()).isEqualTo(open.closure().misclosure());
        assertThat(open.worksheet().toText()).isEqualTo("""
                Closure of the lot
                  course 1 = N 0° E, 30.00 ft   [given]
                  latitude 1 = distance x cos(azimuth) = 30 ft x cos(0°) = 30 ft
                  departure 1 = distance x sin(azimuth) = 30 ft x sin(0°) = 0 ft
                  course 2 = N 90° E, 40.00 ft   [given]
                  latitude 2 = distance x cos(azimuth) = 40 ft x cos(90°) = 0 ft
                  departure 2 = distance x sin(azimuth) = 40 ft x sin(90°) = 40 ft
                  course 3 = S 0° E, 30.00 ft   [given]
                  latitude 3 = distance x cos(azimuth) = 30 ft x cos(180°) = -30 ft
                  departure 3 = distance x sin(azimuth) = 30 ft x sin(180°) = 0 ft
                  course 4 = N 90° W, 39.90 ft   [given]
                  latitude 4 = distance x cos(azimuth) = 39.9 ft x cos(270°) = 0 ft
                  departure 4 = distance x sin(azimuth) = 39.9 ft x sin(270°) = -39.9 ft
                  sum of latitudes = all latitudes added = 30 ft + 0 ft - 30 ft + 0 ft = 0 ft
                  sum of departures = all departures added = 0 ft + 40 ft + 0 ft - 39.9 ft = 0.1 ft
                  misclosure = sqrt((sum of latitudes)^2 + (sum of departures)^2) = sqrt((0 ft)^2 + (0.1 ft)^2) = 0.1 ft   \
                [Purdue University ASM 215, traverse calculations, compass rule]
                """);
        assertThat(open.closure().toString()).contains("0.10 ft").contains("1 part in 1399");
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
                .isThrownBy(() -> Course.of(Bearing.NORTH, Length.ZERO))
                .withMessageContaining("over 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LotBoundary.of(List.of(Plans.course(0, 1), Plans.course(180, 1))))
                .withMessageContaining("2 courses")
                .withMessageContaining("from 3 to 10000");
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
