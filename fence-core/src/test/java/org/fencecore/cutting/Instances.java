package org.fencecore.cutting;

import java.util.ArrayList;
import java.util.List;
import org.fencecore.units.Length;

/**
 * Published problems with one length of stick and no saw cut, their numbers as published; a unit is a millimetre.
 *
 * <ul>
 *   <li>paper: EPFL Graph Search, concept "Cutting stock problem" (copy of an encyclopaedia article): 13 widths from rolls
 *       of 5600 mm, optimum 73 rolls.
 *   <li>gams: GAMS model library, model cutstock: 4 widths from rolls of 100; optimum 453 worked out apart.
 *   <li>u120: E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996), by way
 *       of OR-Library, file binpack1: 120 sizes of 20 to 100 into 150. Optima as in the file's header, but for u120_08
 *       and u120_19, where later work, listed with BPPLib.jl, has 50 and 49 in place of 51 and 50.
 *   <li>t120: the same source, triplets; optimum 40 as listed with BPPLib.jl.
 *   <li>PM: BPPLib.jl, set PM, 10 to 30 sizes into 150; optima worked out apart.
 * </ul>
 */
final class Instances {

    private static final int[] TRIPLETS = {
        497, 497, 495, 485, 480, 478, 474, 473, 472, 470, 466, 450, 446, 445, 445, 444, 439, 434, 430, 420,
        419, 414, 412, 410, 407, 405, 400, 397, 395, 376, 372, 370, 366, 366, 366, 366, 366, 363, 363, 362,
        361, 357, 357, 356, 356, 355, 352, 351, 350, 350, 350, 347, 336, 333, 329, 325, 320, 315, 314, 313,
        307, 303, 302, 301, 299, 298, 298, 298, 295, 294, 292, 290, 288, 287, 283, 282, 282, 276, 275, 275,
        274, 273, 273, 272, 272, 271, 271, 269, 269, 268, 267, 267, 266, 263, 263, 262, 262, 261, 260, 259,
        259, 259, 258, 256, 255, 254, 254, 254, 253, 253, 253, 253, 252, 252, 252, 252, 251, 251, 250, 250
    };

    private static final int[] U120_00 = {
        42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38, 85, 33, 82, 73, 49,
        70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74, 41, 49, 55, 98, 80, 32, 25, 38, 82, 30,
        35, 39, 57, 84, 62, 50, 55, 27, 30, 36, 20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91,
        43, 73, 85, 81, 79, 71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44,
        94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39
    };

    private static final int[] U120_01 = {
        97, 57, 81, 62, 75, 81, 23, 43, 50, 38, 60, 58, 70, 88, 36, 90, 37, 45, 45, 39, 44, 53, 70, 24, 82,
        81, 47, 97, 35, 65, 74, 68, 49, 55, 52, 94, 95, 29, 99, 20, 22, 25, 49, 46, 98, 59, 98, 60, 23, 72,
        33, 98, 80, 95, 78, 57, 67, 53, 47, 53, 36, 38, 92, 30, 80, 32, 97, 39, 80, 72, 55, 41, 60, 67, 53,
        65, 95, 20, 66, 78, 98, 47, 100, 85, 53, 53, 67, 27, 22, 61, 43, 52, 76, 64, 61, 29, 30, 46, 79, 66,
        27, 79, 98, 90, 22, 75, 57, 67, 36, 70, 99, 48, 43, 45, 71, 100, 88, 48, 27, 39
    };

    private static final int[] U120_02 = {
        38, 100, 60, 42, 20, 69, 24, 23, 92, 32, 84, 36, 65, 84, 34, 68, 64, 33, 69, 27, 47, 21, 85, 88, 59,
        61, 50, 53, 37, 75, 64, 84, 74, 57, 83, 28, 31, 97, 61, 36, 46, 37, 96, 80, 53, 51, 68, 90, 64, 81,
        66, 67, 80, 37, 92, 67, 64, 31, 94, 45, 80, 28, 76, 29, 64, 38, 48, 40, 29, 44, 81, 35, 51, 48, 67,
        24, 46, 38, 76, 22, 30, 67, 45, 41, 29, 41, 79, 21, 25, 90, 62, 34, 73, 50, 79, 66, 59, 42, 90, 79,
        70, 66, 80, 35, 62, 98, 97, 37, 32, 75, 91, 91, 48, 26, 23, 32, 100, 46, 29, 26
    };

    private static final int[] U120_03 = {
        29, 26, 83, 82, 92, 95, 87, 63, 57, 100, 63, 65, 81, 46, 42, 95, 90, 80, 53, 27, 84, 40, 22, 97, 20,
        73, 63, 95, 46, 42, 47, 40, 26, 88, 49, 24, 92, 87, 68, 95, 34, 82, 84, 43, 54, 73, 66, 32, 62, 48,
        99, 90, 86, 28, 25, 25, 89, 67, 96, 35, 33, 70, 40, 59, 32, 94, 34, 86, 35, 45, 25, 76, 80, 42, 91,
        44, 91, 97, 60, 29, 45, 37, 61, 54, 78, 56, 74, 74, 45, 21, 96, 37, 75, 100, 58, 84, 85, 56, 54, 71,
        52, 79, 43, 35, 27, 70, 31, 47, 35, 26, 30, 97, 90, 80, 58, 60, 73, 46, 71, 39
    };

    private static final int[] U120_04 = {
        42, 98, 27, 21, 71, 71, 78, 76, 57, 24, 91, 84, 35, 25, 77, 96, 97, 89, 30, 86, 81, 39, 75, 66, 85,
        36, 60, 56, 50, 75, 75, 37, 87, 95, 21, 99, 42, 57, 31, 37, 42, 40, 69, 91, 45, 97, 84, 90, 52, 43,
        68, 53, 37, 65, 79, 73, 92, 87, 20, 20, 73, 42, 52, 20, 24, 76, 71, 72, 21, 21, 82, 92, 78, 87, 50,
        41, 31, 73, 89, 59, 88, 40, 71, 69, 45, 57, 49, 68, 84, 32, 69, 77, 92, 98, 57, 39, 32, 23, 99, 91,
        48, 21, 70, 43, 73, 69, 65, 57, 67, 28, 84, 42, 61, 92, 82, 34, 74, 55, 60, 69
    };

    private static final int[] U120_05 = {
        26, 25, 67, 77, 67, 79, 47, 84, 50, 21, 87, 83, 44, 88, 78, 53, 78, 37, 47, 52, 32, 88, 85, 82, 55,
        41, 60, 66, 78, 72, 34, 64, 20, 60, 100, 62, 80, 34, 68, 38, 32, 32, 37, 82, 98, 90, 58, 97, 56, 34,
        70, 39, 56, 69, 36, 20, 99, 84, 53, 27, 88, 53, 42, 45, 42, 31, 54, 60, 55, 27, 36, 31, 39, 91, 45,
        97, 26, 80, 41, 56, 70, 97, 48, 87, 23, 32, 75, 100, 97, 51, 78, 78, 21, 72, 72, 79, 46, 30, 48, 27,
        95, 48, 67, 58, 46, 92, 21, 82, 91, 40, 56, 24, 94, 44, 91, 92, 81, 24, 84, 44
    };

    private static final int[] U120_08 = {
        100, 22, 25, 51, 95, 58, 97, 30, 79, 23, 53, 80, 20, 65, 64, 21, 26, 100, 81, 98, 70, 85, 92, 97, 86, 71, 91,
        29, 63, 34, 67, 23, 33, 89, 94, 47, 100, 37, 40, 58, 73, 39, 49, 79, 54, 57, 98, 69, 67, 49, 38, 34, 96, 27, 92,
        82, 69, 45, 69, 20, 75, 97, 51, 70, 29, 91, 98, 77, 48, 45, 43, 61, 36, 82, 89, 94, 26, 35, 58, 58, 57, 46, 44,
        91, 49, 52, 65, 42, 33, 60, 37, 57, 91, 52, 95, 84, 72, 75, 89, 81, 67, 74, 87, 60, 32, 76, 85, 59, 62, 39, 64,
        52, 88, 45, 29, 88, 85, 54, 40, 57
    };

    private static final int[] U120_19 = {
        49, 95, 38, 62, 63, 97, 42, 62, 100, 43, 44, 77, 97, 94, 68, 23, 50, 36, 89, 58, 97, 27, 64, 65, 54,
        58, 24, 35, 33, 63, 32, 50, 58, 90, 44, 50, 48, 21, 72, 75, 21, 74, 28, 95, 77, 69, 96, 24, 57, 85,
        72, 96, 50, 83, 65, 62, 99, 93, 23, 77, 94, 31, 50, 33, 79, 73, 23, 55, 44, 78, 84, 66, 31, 59, 97,
        95, 22, 76, 90, 66, 29, 100, 90, 92, 50, 49, 47, 43, 37, 40, 60, 52, 54, 99, 34, 46, 88, 97, 85, 39,
        32, 51, 95, 54, 99, 86, 48, 90, 28, 25, 86, 39, 74, 26, 38, 60, 41, 67, 80, 33
    };

    private static final int[] PM_U010_01 = {24, 44, 76, 78, 52, 96, 58, 67, 74, 59};

    private static final int[] PM_U010_02 = {41, 22, 77, 30, 57, 57, 46, 27, 76, 88};

    private static final int[] PM_U020_01 = {
        52, 60, 67, 23, 26, 45, 76, 43, 85, 82, 41, 56, 25, 83, 50, 72, 23, 39, 21, 39
    };

    private static final int[] PM_U030_01 = {
        29, 96, 98, 31, 48, 54, 46, 64, 92, 46, 26, 81, 49, 90, 97, 41, 57, 40, 67, 20, 28, 49, 45, 67, 57, 95, 65, 70,
        55, 32
    };

    private Instances() {}

    /** A problem: how long the stick is, sizes with how many of each, and the least number of sticks. */
    static final class Instance {

        private final String name;
        private final int capacity;
        private final int[][] sizes;
        private final int optimum;

        Instance(String name, int capacity, int[][] sizes, int optimum) {
            this.name = name;
            this.capacity = capacity;
            this.sizes = sizes;
            this.optimum = optimum;
        }

        int optimum() {
            return optimum;
        }

        int numberOfSizes() {
            return sizes.length;
        }

        Length stick() {
            return Length.ofMillimetres(capacity);
        }

        List<CutPiece> pieces() {
            List<CutPiece> pieces = new ArrayList<>();
            for (int[] size : sizes) {
                pieces.add(CutPiece.of(Length.ofMillimetres(size[0]), size[1], "size " + size[0]));
            }
            return pieces;
        }

        CuttingPlan plan() {
            return CuttingPlan.of(
                    pieces(),
                    List.of(SoldLength.of(stick())),
                    CuttingSpec.builder().kerf(Length.ZERO).build());
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static Instance oneByOne(String name, int capacity, int optimum, int... sizes) {
        int[][] counted = new int[sizes.length][];
        for (int i = 0; i < sizes.length; i++) {
            counted[i] = new int[] {sizes[i], 1};
        }
        return new Instance(name, capacity, counted, optimum);
    }

    static List<Instance> all() {
        return List.of(
                paper(),
                gams(),
                oneByOne("u120_00", 150, 48, U120_00),
                oneByOne("u120_01", 150, 49, U120_01),
                oneByOne("u120_02", 150, 46, U120_02),
                oneByOne("u120_03", 150, 49, U120_03),
                oneByOne("u120_04", 150, 50, U120_04),
                oneByOne("u120_05", 150, 48, U120_05),
                oneByOne("u120_08", 150, 50, U120_08),
                oneByOne("u120_19", 150, 49, U120_19),
                oneByOne("PM_u010_01", 150, 5, PM_U010_01),
                oneByOne("PM_u010_02", 150, 4, PM_U010_02),
                oneByOne("PM_u020_01", 150, 7, PM_U020_01),
                oneByOne("PM_u030_01", 150, 12, PM_U030_01));
    }

    static Instance paper() {
        return new Instance(
                "paper",
                5600,
                new int[][] {
                    {1380, 22},
                    {1520, 25},
                    {1560, 12},
                    {1710, 14},
                    {1820, 18},
                    {1880, 18},
                    {1930, 20},
                    {2000, 10},
                    {2050, 12},
                    {2100, 14},
                    {2140, 16},
                    {2150, 18},
                    {2200, 20}
                },
                73);
    }

    static Instance gams() {
        return new Instance("gams", 100, new int[][] {{14, 211}, {31, 395}, {36, 610}, {45, 97}}, 453);
    }

    static Instance triplets() {
        return oneByOne("t120_00", 1000, 40, TRIPLETS);
    }
}
