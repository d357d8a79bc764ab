/**
 * Unit-safe quantities and plane geometry for the building trades.
 *
 * <p>Start with {@link org.fencecore.units.Length}, which is a whole count of nanometres, so that inch fractions and
 * millimetres are both exact.
 */
module org.fencecore.units {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires static transitive org.jspecify;
    requires static org.apiguardian.api; // Indriya's classes carry its annotations; the compiler warns without it.

    exports org.fencecore.geometry;
    exports org.fencecore.geometry.ground;
    exports org.fencecore.units;
    exports org.fencecore.units.tape;
}
