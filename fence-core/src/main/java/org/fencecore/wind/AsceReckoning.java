package org.fencecore.wind;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** ASCE 7 from velocity pressure to the zones of a run. */
final class AsceReckoning implements Reckoning {

    /** Strength level, on the solid area; from memory. */
    private static final Pressure MINIMUM = Pressure.ofPsf(16);

    private static final Citation MINIMUM_SOURCE =
            Citation.of("ASCE 7", "least design wind load of other structures, from memory", "");

    /**
     * What a short wall's half has more when the force stands a fifth of its length off the middle: of two posts at its
     * ends one gets 0.5 + 0.2 = 0.7 of the force rather than half.
     */
    private static final double OFF_CENTRE = 1.4;

    private static final String PLACE = "wind";

    private final AsceWind wind;
    private final FenceFace face;
    private final Pressure velocityPressure;
    private final List<WindZone> zones;

    private AsceReckoning(AsceWind wind, FenceFace face, Pressure velocityPressure, List<WindZone> zones) {
        this.wind = wind;
        this.face = face;
        this.velocityPressure = velocityPressure;
        this.zones = zones;
    }

    static AsceReckoning of(AsceWind wind, FenceFace face) {
        double solid = face.solidFraction().value();
        Pressure q = wind.velocityPressure(heightOfPressure(face));
        double onCoefficient = q.pascals() * wind.kdOfForce() * AsceWind.GUST;
        double least = leastStrength(face);
        DoubleUnaryOperator pascals = cf -> AsceWind.ALLOWABLE * Math.max(least, onCoefficient * cf);
        Length run = face.length();
        if (isOpen(face)) {
            double coefficient = solid * openCoefficient(face, q);
            return new AsceReckoning(wind, face, q, Zones.even(run, coefficient, pascals));
        }
        double aspect = aspect(face);
        double clearance = clearance(face);
        double openings = ForceCoefficient.openingFactor(solid);
        double whole = ForceCoefficient.wholeFace(aspect, clearance);
        List<WindZone> zones = aspect < 2
                ? Zones.even(run, whole * OFF_CENTRE * openings, pascals)
                : Zones.worstOfBothEnds(
                        run,
                        face.height(),
                        fromEnd(face, face.returnAtStart()).times(openings),
                        fromEnd(face, face.returnAtEnd()).times(openings),
                        whole * openings,
                        pascals);
        return new AsceReckoning(wind, face, q, zones);
    }

    private static Steps fromEnd(FenceFace face, Length corner) {
        return ForceCoefficient.fromEnd(
                aspect(face), clearance(face), corner.ratioTo(face.height()).value());
    }

    private static boolean isOpen(FenceFace face) {
        return face.solidFraction().value() < ForceCoefficient.LEAST_SOLID_OF_WALL;
    }

    private static double aspect(FenceFace face) {
        return face.length().ratioTo(face.height()).value();
    }

    private static double clearance(FenceFace face) {
        return face.height().ratioTo(face.top()).value();
    }

    /** The top of a wall, the centroid of an open sign. */
    private static Length heightOfPressure(FenceFace face) {
        return isOpen(face) ? face.bottom().plus(face.top()).dividedBy(2) : face.top();
    }

    private static double leastStrength(FenceFace face) {
        return MINIMUM.pascals() * (isOpen(face) ? face.solidFraction().value() : 1);
    }

    private static double openCoefficient(FenceFace face, Pressure q) {
        double solid = face.solidFraction().value();
        return face.roundMembers()
                .map(diameter -> ForceCoefficient.ofRound(solid, diameter.feet() * Math.sqrt(q.psf()) > 2.5))
                .orElseGet(() -> ForceCoefficient.ofFlat(solid));
    }

    @Override
    public Pressure velocityPressure() {
        return velocityPressure;
    }

    @Override
    public List<WindZone> zones() {
        return zones;
    }

    private Pressure strength(WindZone zone) {
        return velocityPressure.times(wind.kdOfForce() * AsceWind.GUST).times(zone.coefficient());
    }

    private boolean isMinimum(WindZone zone) {
        return strength(zone).pascals() < leastStrength(face);
    }

    @Override
    public void addFindings(List<Finding> findings) {
        if (zones.stream().anyMatch(this::isMinimum)) {
            findings.add(Finding.note(
                            "minimum-wind",
                            PLACE,
                            "some of the pressure is the least one, " + Written.pressure(MINIMUM)
                                    + " at strength level, and more than the wind that was given has")
                    .withSource(MINIMUM_SOURCE));
        }
        if (isOpen(face)) {
            findings.add(Finding.note(
                            "open-fence",
                            PLACE,
                            "with " + face.solidFraction()
                                    + " solid the fence was taken as an open sign; vines, slats or netting on it make it"
                                    + " a wall")
                    .withRemedy("work it out as solid if it may be covered later")
                    .withSource(wind.edition().openSource()));
        } else if (aspect(face) < 2) {
            findings.add(Finding.note(
                            "off-centre-wind",
                            PLACE,
                            "the run is less than twice as long as high, so either half may get 0.7 of the force")
                    .withSource(wind.edition().wallSource()));
        }
    }

    @Override
    public void explain(Worksheet.Builder sheet, WindZone worst) {
        AsceEdition edition = wind.edition();
        Length height = heightOfPressure(face);
        sheet.given("wind speed V, ultimate", wind.speed(), Written.speed(wind.speed()))
                .given("exposure", wind.exposure(), wind.exposure().toString())
                .given("length B of the run", face.length(), Written.feet(face.length()))
                .given("height s of the face", face.height(), Written.feet(face.height()))
                .given("top h of the face above grade", face.top(), Written.feet(face.top()))
                .given("solid part e of the face", face.solidFraction(), Written.factor(face.solidFraction()))
                .given("topographic factor Kzt", wind.topographicFactor(), Written.factor(wind.topographicFactor()));
        Ratio kz = wind.kz(height);
        sheet.line(
                "exposure coefficient Kz",
                "at " + Written.feet(height),
                "",
                kz,
                Written.factor(kz),
                edition.terrainSource());
        if (edition.knowsElevation()) {
            sheet.line(
                    "ground elevation factor Ke",
                    "",
                    "",
                    wind.ke(),
                    Written.factor(wind.ke()),
                    edition.velocitySource());
        }
        String kd = " x " + Written.factor(Ratio.of(AsceWind.KD));
        sheet.line(
                "velocity pressure q",
                edition.velocityFormula(),
                wind.velocityConstant() + " x " + Written.factor(kz) + " x "
                        + Written.factor(wind.topographicFactor()) + (edition.hasKdInVelocityPressure() ? kd : "")
                        + (edition.knowsElevation() ? " x " + Written.factor(wind.ke()) : "") + " x ("
                        + Written.speed(wind.speed()) + ")^2",
                velocityPressure,
                Written.pressure(velocityPressure),
                edition.velocitySource());
        explainCoefficient(sheet, worst);
        Pressure strength = strength(worst);
        sheet.line(
                "pressure p at strength level",
                edition.hasKdInVelocityPressure() ? "q G C" : "q Kd G C",
                Written.pressure(velocityPressure) + (edition.hasKdInVelocityPressure() ? "" : kd) + " x 0.85 x "
                        + Written.factor(worst.coefficient()),
                strength,
                Written.pressure(strength),
                edition.wallSource());
        Pressure least = Pressure.ofPascals(leastStrength(face));
        boolean minimum = isMinimum(worst);
        sheet.line(
                "pressure at allowable stress level",
                minimum ? "0.6 x least pressure" : "0.6 p",
                "0.6 x " + Written.pressure(minimum ? least : strength),
                worst.pressure(),
                Written.pressure(worst.pressure()),
                minimum ? MINIMUM_SOURCE : Citation.of("ASCE 7-10", "section 2.4.1", ""));
    }

    private void explainCoefficient(Worksheet.Builder sheet, WindZone worst) {
        AsceEdition edition = wind.edition();
        if (isOpen(face)) {
            double cf = openCoefficient(face, velocityPressure);
            sheet.line(
                    "coefficient C on the gross area",
                    "e Cf",
                    Written.factor(face.solidFraction()) + " x " + Written.factor(Ratio.of(cf)),
                    worst.coefficient(),
                    Written.factor(worst.coefficient()),
                    edition.openSource());
            return;
        }
        double clearance = clearance(face);
        double openings = ForceCoefficient.openingFactor(face.solidFraction().value());
        double whole = ForceCoefficient.wholeFace(aspect(face), clearance);
        String factor = Written.factor(Ratio.of(openings));
        sheet.line(
                "factor for openings",
                "1 - (1 - e)^1.5",
                "1 - (1 - " + Written.factor(face.solidFraction()) + ")^1.5",
                Ratio.of(openings),
                factor,
                edition.wallSource());
        sheet.line(
                "coefficient Cf of case A",
                "by B / s = " + Written.factor(Ratio.of(aspect(face))) + " and s / h = "
                        + Written.factor(Ratio.of(clearance)),
                "",
                Ratio.of(whole),
                Written.factor(Ratio.of(whole)),
                edition.wallSource());
        boolean caseA = worst.coefficient().value() == whole * openings;
        String where = Written.station(worst.along().start()) + " to "
                + Written.station(worst.along().end());
        sheet.line(
                "coefficient C in the hardest zone, " + where,
                aspect(face) < 2 ? "1.4 Cf x openings" : caseA ? "Cf x openings" : "case C x openings",
                aspect(face) < 2
                        ? "1.4 x " + Written.factor(Ratio.of(whole)) + " x " + factor
                        : Written.factor(Ratio.of(worst.coefficient().value() / openings)) + " x " + factor,
                worst.coefficient(),
                Written.factor(worst.coefficient()),
                edition.wallSource());
    }
}
