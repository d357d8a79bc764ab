package org.fencecore.wind;

/**
 * How rough the ground around the place is, as EN 1991-1-4 has it.
 *
 * <p>Source: EN 1991-1-4:2005, table 4.1; categories 0, II and IV from memory.
 */
public enum EnTerrain {
    /** Sea and coast open to it. */
    CATEGORY_0("0, sea and coast", 0.003, 1),
    /** Lakes and flat ground without obstacles. */
    CATEGORY_I("I, lake and bare plain", 0.01, 1),
    /** Low plants and single obstacles; what is taken if nothing is known. */
    CATEGORY_II("II, fields with single obstacles", 0.05, 2),
    /** Villages, suburbs and woods. */
    CATEGORY_III("III, village, suburb or wood", 0.3, 5),
    /** Towns, at least 15 % built over with buildings over 15 m high. */
    CATEGORY_IV("IV, town", 1.0, 10);

    private final String words;
    private final double roughness;
    private final double least;

    EnTerrain(String words, double roughness, double least) {
        this.words = words;
        this.roughness = roughness;
        this.least = least;
    }

    /** The roughness length z0 in metres. */
    double roughness() {
        return roughness;
    }

    /** The terrain factor kr. */
    double factor() {
        return 0.19 * Math.pow(roughness / 0.05, 0.07);
    }

    /** The height in metres, not under the least one of this terrain. */
    double effective(double height) {
        return Math.max(height, least);
    }

    /**
     * Returns the category and what it stands for.
     *
     * @return such as {@code II, fields with single obstacles}
     */
    @Override
    public String toString() {
        return words;
    }
}
