package org.fencecore.wind;

import java.util.List;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** EN 1991-1-4 from peak velocity pressure to the zones of a run. */
final class EnReckoning implements Reckoning {

    private static final Citation PEAK = Citation.of("EN 1991-1-4", "sections 4.3 to 4.5", "2005");

    private static final Citation TABLE = Citation.of("EN 1991-1-4", "section 7.4.1, table 7.9", "2005");

    private static final Citation LATTICE = Citation.of("EN 1991-1-4", "section 7.11", "2005");

    /** Where the zones start, in heights from the end. */
    private static final double[] STARTS = {0, 0.3, 2, 4};

    private static final double[] SHORT_WALL = {2.3, 1.4, 1.2, 1.2};
    private static final double[] MIDDLE_WALL = {2.9, 1.8, 1.4, 1.2};
    private static final double[] LONG_WALL = {3.4, 2.1, 1.7, 1.2};
    private static final double[] WITH_CORNER = {2.1, 1.8, 1.4, 1.2};

    /** The coefficient of all zones at 0.8 solid. */
    private static final double OPEN = 1.2;

    private static final double LEAST_SOLID = 0.8;

    private static final String PLACE = "wind";

    private final EnWind wind;
    private final FenceFace face;
    private final Pressure peak;
    private final List<WindZone> zones;

    private EnReckoning(EnWind wind, FenceFace face, Pressure peak, List<WindZone> zones) {
        this.wind = wind;
        this.face = face;
        this.peak = peak;
        this.zones = zones;
    }

    static EnReckoning of(EnWind wind, FenceFace face) {
        Pressure peak = wind.velocityPressure(face.top());
        List<WindZone> zones = Zones.worstOfBothEnds(
                face.length(),
                face.height(),
                fromEnd(face, face.returnAtStart()),
                fromEnd(face, face.returnAtEnd()),
                0,
                cp -> peak.pascals() * cp);
        return new EnReckoning(wind, face, peak, zones);
    }

    private static Steps fromEnd(FenceFace face, Length corner) {
        double aspect = face.length().ratioTo(face.height()).value();
        double turned = Math.min(1, corner.ratioTo(face.height()).value());
        double closed = Math.max(0, (face.solidFraction().value() - LEAST_SOLID) / (1 - LEAST_SOLID));
        double[] values = new double[STARTS.length];
        for (int i = 0; i < values.length; i++) {
            double free = free(aspect, i);
            // For a short wall the table has more in zone B with a corner than without.
            double solid = free + turned * (WITH_CORNER[i] - free);
            values[i] = OPEN + closed * (solid - OPEN);
        }
        return new Steps(STARTS, values);
    }

    private static double free(double aspect, int zone) {
        if (aspect <= 5) {
            double part = Math.max(0, (aspect - 3) / 2);
            return SHORT_WALL[zone] + part * (MIDDLE_WALL[zone] - SHORT_WALL[zone]);
        }
        double part = Math.min(1, (aspect - 5) / 5);
        return MIDDLE_WALL[zone] + part * (LONG_WALL[zone] - MIDDLE_WALL[zone]);
    }

    @Override
    public Pressure velocityPressure() {
        return peak;
    }

    @Override
    public List<WindZone> zones() {
        return zones;
    }

    @Override
    public void addFindings(List<Finding> findings) {
        if (face.solidFraction().value() < LEAST_SOLID) {
            findings.add(Finding.warning(
                            "outside-wind-table",
                            PLACE,
                            "the face is " + face.solidFraction()
                                    + " solid, more open than the table of walls goes; its coefficient of 1.2 for 80 %"
                                    + " was kept on the whole area")
                    .withRemedy("have the lattice worked out by section 7.11")
                    .withSource(LATTICE));
        }
        findings.add(Finding.note(
                        "characteristic-wind",
                        PLACE,
                        "the pressures are characteristic ones, without the partial factor of a limit state")
                .withRemedy("apply the factors of the national annex where a design asks for them"));
    }

    @Override
    public void explain(Worksheet.Builder sheet, WindZone worst) {
        Ratio roughness = Ratio.of(wind.roughness(face.top()));
        Ratio turbulence = Ratio.of(wind.turbulence(face.top()));
        String speed = Written.speed(wind.basicSpeed());
        sheet.given("basic wind speed vb", wind.basicSpeed(), speed)
                .given("terrain category", wind.terrain(), wind.terrain().toString())
                .given("orography factor co", wind.orography(), Written.factor(wind.orography()))
                .given("length l of the run", face.length(), Written.feet(face.length()))
                .given("height h of the face", face.height(), Written.feet(face.height()))
                .given("top z of the face above grade", face.top(), Written.feet(face.top()))
                .given("solid part of the face", face.solidFraction(), Written.factor(face.solidFraction()))
                .line(
                        "roughness factor cr",
                        "0.19 (z0 / 0.05)^0.07 ln(z / z0)",
                        "",
                        roughness,
                        Written.factor(roughness),
                        PEAK)
                .line("turbulence Iv", "1 / (co ln(z / z0))", "", turbulence, Written.factor(turbulence), PEAK)
                .line(
                        "peak velocity pressure qp",
                        "(1 + 7 Iv) x 1/2 x 1.25 kg/m3 x (cr co vb)^2",
                        "(1 + 7 x " + Written.factor(turbulence) + ") x 0.625 kg/m3 x (" + Written.factor(roughness)
                                + " x " + Written.factor(wind.orography()) + " x " + speed + ")^2",
                        peak,
                        Written.pressure(peak),
                        PEAK)
                .line(
                        "net coefficient in the hardest zone, "
                                + Written.station(worst.along().start()) + " to "
                                + Written.station(worst.along().end()),
                        "",
                        "",
                        worst.coefficient(),
                        Written.factor(worst.coefficient()),
                        TABLE)
                .line(
                        "characteristic pressure",
                        "qp cp",
                        Written.pressure(peak) + " x " + Written.factor(worst.coefficient()),
                        worst.pressure(),
                        Written.pressure(worst.pressure()),
                        TABLE);
    }
}
