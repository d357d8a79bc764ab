package org.fencecore.footing;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.fencecore.units.UnitWeight;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * A kind of soil, by how hard it pushes back on a post that leans into it.
 *
 * <p>The allowable pressure grows with depth, so it is given in pounds per square foot for each foot below grade
 * (psf/ft), which is a {@link UnitWeight}. The five classes have the presumptive values of the building code, which may
 * be used where no soils report says otherwise. Mud, organic silt, organic clay, peat and unprepared fill have no
 * presumptive value: use {@link #ofLateralBearing} with a value from a soils report.
 *
 * <table>
 * <caption>Lateral bearing below grade</caption>
 * <tr><th scope="col">class</th><th scope="col">soil</th><th scope="col">psf/ft</th></tr>
 * <tr><td>1</td><td>{@link #CRYSTALLINE_BEDROCK}</td><td>1200</td></tr>
 * <tr><td>2</td><td>{@link #SEDIMENTARY_ROCK}</td><td>400</td></tr>
 * <tr><td>3</td><td>{@link #SANDY_GRAVEL}</td><td>200</td></tr>
 * <tr><td>4</td><td>{@link #SAND}</td><td>150</td></tr>
 * <tr><td>5</td><td>{@link #CLAY}</td><td>100</td></tr>
 * </table>
 *
 * <p>Source: IBC 2012, table 1806.2.
 */
public final class SoilClass {

    /** Class 1: crystalline bedrock, 1200 psf/ft. */
    public static final SoilClass CRYSTALLINE_BEDROCK = presumptive(1, "crystalline bedrock", 1200);

    /** Class 2: sedimentary and foliated rock, 400 psf/ft. */
    public static final SoilClass SEDIMENTARY_ROCK = presumptive(2, "sedimentary and foliated rock", 400);

    /** Class 3: sandy gravel and gravel (GW, GP), 200 psf/ft. */
    public static final SoilClass SANDY_GRAVEL = presumptive(3, "sandy gravel and gravel", 200);

    /** Class 4: sand, silty or clayey sand, silty or clayey gravel (SW, SP, SM, SC, GM, GC), 150 psf/ft. */
    public static final SoilClass SAND = presumptive(4, "sand, silty or clayey sand, silty or clayey gravel", 150);

    /** Class 5: clay, sandy or silty clay, clayey silt, silt and sandy silt (CL, ML, MH, CH), 100 psf/ft. */
    public static final SoilClass CLAY = presumptive(5, "clay, sandy or silty clay, silt, clayey or sandy silt", 100);

    /** The five classes of the building code, from the firmest to the softest. */
    public static final List<SoilClass> PRESUMPTIVE =
            List.of(CRYSTALLINE_BEDROCK, SEDIMENTARY_ROCK, SANDY_GRAVEL, SAND, CLAY);

    private static final UnitWeight LEAST = UnitWeight.ofPcf(10);
    private static final UnitWeight MOST = UnitWeight.ofPcf(10_000);

    private final String name;
    private final UnitWeight lateralBearing;
    private final @Nullable Citation source;

    private SoilClass(String name, UnitWeight lateralBearing, @Nullable Citation source) {
        this.name = name;
        this.lateralBearing = lateralBearing;
        this.source = source;
    }

    private static SoilClass presumptive(int number, String name, double psfPerFoot) {
        return new SoilClass(
                name, UnitWeight.ofPcf(psfPerFoot), Citation.of("IBC", "table 1806.2, class " + number, "2012"));
    }

    /**
     * Returns a soil with an allowable lateral bearing of its own, such as from a soils report.
     *
     * @param name what the soil is called, or which report the value is from
     * @param lateralBearing the allowable pressure gained with each foot below grade, 10 to 10,000 psf/ft
     * @return the soil
     * @throws IllegalArgumentException if the name is blank or the bearing out of its range
     */
    public static SoilClass ofLateralBearing(String name, UnitWeight lateralBearing) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name was blank; say what the soil is or which report speaks of it");
        }
        Objects.requireNonNull(lateralBearing, "lateralBearing");
        if (lateralBearing.compareTo(LEAST) < 0 || lateralBearing.compareTo(MOST) > 0) {
            throw new IllegalArgumentException("lateralBearing was " + Written.bearing(lateralBearing)
                    + "; it must be from 10 to 10,000 psf/ft, so check its unit");
        }
        return new SoilClass(name, lateralBearing, null);
    }

    /**
     * Returns the class of a soil by its group symbol, as soil surveys and reports have it.
     *
     * <p>Organic soils have no presumptive value, nor have mud and unprepared fill, whatever they are made of.
     *
     * @param symbol the symbol of the unified soil classification, such as {@code SM}; small letters do as well
     * @return the class of table 1806.2 that lists it
     * @throws IllegalArgumentException if the soil is organic, or there is no such symbol
     */
    public static SoilClass ofSymbol(String symbol) {
        return switch (symbol.toUpperCase(Locale.ROOT)) {
            case "GW", "GP" -> SANDY_GRAVEL;
            case "SW", "SP", "SM", "SC", "GM", "GC" -> SAND;
            case "CL", "ML", "MH", "CH" -> CLAY;
            case "OL", "OH", "PT" ->
                throw new IllegalArgumentException("symbol was " + symbol
                        + ", an organic soil, which has no presumptive value; have it tested and use"
                        + " ofLateralBearing, or dig down to better soil");
            default ->
                throw new IllegalArgumentException("symbol was " + symbol
                        + "; it must be one of GW, GP, SW, SP, SM, SC, GM, GC, CL, ML, MH and CH; for other soils use"
                        + " ofLateralBearing");
        };
    }

    /**
     * Returns what the soil is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns the allowable lateral pressure gained with depth below grade.
     *
     * @return the pressure per depth
     */
    public UnitWeight lateralBearing() {
        return lateralBearing;
    }

    /**
     * Tells whether the bearing is the presumptive value of the building code's table rather than one given for the
     * site.
     *
     * @return true for the five classes of the table
     */
    public boolean isPresumptive() {
        return source != null;
    }

    Citation source() {
        return source == null ? Sources.GIVEN : source;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SoilClass that
                && name.equals(that.name)
                && lateralBearing.equals(that.lateralBearing)
                && Objects.equals(source, that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, lateralBearing, source);
    }

    @Override
    public String toString() {
        return name + ", " + Written.bearing(lateralBearing);
    }
}
