package org.fencecore.benchmarks;

import java.util.Arrays;

/**
 * The figures of a {@link FenceJob} by plain arithmetic on inches held in {@code double}, as a programmer in a hurry
 * would write it for this one shape of job: square corners, ground that lifts no post, full boards everywhere.
 *
 * <p>It is the yardstick that the planner is timed against and an independent working of the same fence: footing depths
 * come from the pole equation rearranged to a cubic instead of a bracketing search. It checks what it counts on and
 * refuses a job that does not fit.
 */
final class PlainFence {

    private static final double POST = 3.5;
    private static final double HALF_POST = POST / 2;
    private static final double RAIL_THICKNESS = 1.5;
    private static final double RAIL_DEPTH = 3.5;
    private static final double RAIL_FROM_BOARD_END = 4;
    private static final int RAILS = 3;
    private static final double BOARD_THICKNESS = 0.75;
    private static final double BOARD = 5.5;
    private static final double BOARD_LENGTH = 72;
    private static final double PLANED_OFF = 0.0625;
    private static final double SMALLEST_STRIP = 0.75;
    private static final double LEAST_GAP = 2.5;
    private static final double USUAL_GAP = 3.5;
    private static final double MOST_GAP = 4;
    private static final double CLEARANCE = 2;
    private static final double LEAST_CLEARANCE = 1;
    private static final double MOST_SPACING = 96;
    private static final double HINGE_AND_LATCH_GAP = 0.75;
    private static final double HINGE_GAP = 0.5;
    private static final double MEMBER = 3.5;
    private static final double MEMBER_THICKNESS = 1.5;

    /** Southern pine at 19 % of moisture, 62.4 G (1 + m) / (1 + 0.9 G m). */
    private static final double POUNDS_PER_CUBIC_FOOT = 62.4 * 0.55 / (1 + 0.9 * 0.55 * 0.19) * 1.19;

    private static final double HOLE = 3 * POST;
    private static final double LEAST_EMBEDMENT = 24;
    private static final double LATERAL_BEARING_PSF_PER_FOOT = 200;

    /** Posts along the fence. Stations are along the post's own side; a corner post's, along the side it begins. */
    int posts;

    double[] station = new double[64];
    double[] ground = new double[64];
    double[] top = new double[64];
    double[] tributary = new double[64];
    double[] around = new double[64];
    double[] hungMoment = new double[64];
    double[] embedment = new double[64];
    double[] concrete = new double[64];

    /** Bays along the fence, gates left out; marks are bottom and top of each rail at the start, then at the end. */
    int bays;

    double[] grade = new double[64];
    double[] leastGapUnder = new double[64];
    double[] mostGapUnder = new double[64];
    double[] railLength = new double[64];
    double[] endCut = new double[64];
    double[][] marks = new double[64][];

    /**
     * Stretches between fixed posts: where the boards begin, how many on the outside, and the gap; how many boards of the
     * inside a post is in the way of, and the widths of the strips kept of those together.
     */
    int stretches;

    final double[] boardStart = new double[8];
    final int[] boards = new int[8];
    final double[] gap = new double[8];
    final int[] boardsAtPosts = new int[8];
    final double[] stripsAtPosts = new double[8];

    /** Gates. */
    private int corner = -1;

    int gates;

    final double[] leafWidth = new double[2];
    final double[] leafBottom = new double[2];
    final int[] leafBoards = new int[2];
    final double[] leafGap = new double[2];
    final double[] braceLength = new double[2];
    final double[] braceRise = new double[2];

    /** The shots of the side being worked on: stations from its first post, and heights. */
    private double[] at = {};

    private double[] height = {};

    private PlainFence() {}

    static PlainFence plan(FenceJob job) {
        PlainFence fence = new PlainFence();
        double inset = FenceJob.SETBACK + HALF_POST;
        for (int side = 0; side < 3; side++) {
            fence.at = job.shotStations[side].clone();
            fence.height = job.shotHeights[side];
            for (int shot = 0; shot < fence.at.length; shot++) {
                fence.at[shot] -= inset;
            }
            double length = (side == 1 ? job.width : job.depth) - 2 * inset;
            fence.runAlong(side, length, side == 1 ? job.gateCentres : new double[0]);
        }
        for (int post = 0; post < fence.posts; post++) {
            fence.setInGround(post);
        }
        return fence;
    }

    private void runAlong(int side, double length, double[] gateCentres) {
        double startGround = groundAt(0);
        if (side == 0) {
            addPost(0, startGround);
        }
        int first = posts - 1;
        corner = side > 0 ? first : -1;
        // Both sides pass a corner post: it stands on the lower ground and reaches the higher boards.
        ground[first] = Math.min(ground[first], startGround);
        reach(first, startGround + CLEARANCE + BOARD_LENGTH);
        double here = 0;
        double hereGround = startGround;
        for (double centre : gateCentres) {
            double open = centre - FenceJob.CLEAR_OPENING / 2 - FenceJob.SETBACK - HALF_POST;
            double shut = open + FenceJob.CLEAR_OPENING;
            fence(first, here, hereGround, open - HALF_POST, side > 0 && here == 0, false);
            first = hang(open, shut);
            here = shut + HALF_POST;
            hereGround = ground[first];
        }
        fence(first, here, hereGround, length, side > 0 && here == 0, side < 2);
    }

    private void fence(int firstPost, double from, double fromGround, double to, boolean fromCorner, boolean toCorner) {
        double past = HALF_POST + RAIL_THICKNESS;
        double railFrom = from - (fromCorner ? past : HALF_POST);
        double railTo = to + (toCorner ? past : HALF_POST);
        double boardFrom = from - (fromCorner ? past + BOARD_THICKNESS : HALF_POST);
        double boarded = railTo - boardFrom;
        int full = fullBoards(boarded);
        double between = (boarded - full * BOARD) / (full - 1);
        ripAtPost(from - boardFrom, full, between);

        int count = (int) Math.ceil((to - from) / MOST_SPACING);
        double left = from;
        double leftGround = fromGround;
        for (int bay = 1; bay <= count; bay++) {
            double right = from + (to - from) * bay / count;
            double rightGround = groundAt(right);
            addPost(right, rightGround);
            addBay(left, leftGround, right, rightGround);
            double length = (bay == count ? railTo : right) - (bay == 1 ? railFrom : left);
            railLength[bays - 1] = length * Math.sqrt(1 + grade[bays - 1] * grade[bays - 1]);
            carry(firstPost + bay - 1, right - left);
            ripAtPost(right - boardFrom, full, between);
            left = right;
            leftGround = rightGround;
        }
        int firstBay = bays - count;
        for (int post = 0; post <= count; post++) {
            double before = grade[firstBay + Math.max(post - 1, 0)];
            double after = grade[firstBay + Math.min(post, count - 1)];
            // A level top is flush with the boards on the uphill side of the post.
            double flush = CLEARANCE + BOARD_LENGTH + HALF_POST * Math.abs(before + after) / 2;
            reach(firstPost + post, (post == 0 ? fromGround : ground[firstPost + post]) + flush);
        }
        boardStart[stretches] = boardFrom;
        boards[stretches] = full;
        gap[stretches] = between;
        stretches++;
    }

    private void addPost(double at, double height) {
        if (posts == station.length) {
            int more = 2 * posts;
            station = Arrays.copyOf(station, more);
            ground = Arrays.copyOf(ground, more);
            top = Arrays.copyOf(top, more);
            tributary = Arrays.copyOf(tributary, more);
            around = Arrays.copyOf(around, more);
            hungMoment = Arrays.copyOf(hungMoment, more);
            embedment = Arrays.copyOf(embedment, more);
            concrete = Arrays.copyOf(concrete, more);
        }
        station[posts] = at;
        ground[posts] = height;
        top[posts] = height + CLEARANCE + BOARD_LENGTH;
        posts++;
    }

    private void reach(int post, double height) {
        top[post] = Math.max(top[post], height);
    }

    /** Gives half a bay or opening to each of two neighbouring posts. */
    private void carry(int post, double spacing) {
        // A corner post holds the side that begins at it square to the one that ends there.
        (post == corner ? around : tributary)[post] += spacing / 2;
        tributary[post + 1] += spacing / 2;
    }

    private void addBay(double left, double leftGround, double right, double rightGround) {
        if (bays == grade.length) {
            int more = 2 * bays;
            grade = Arrays.copyOf(grade, more);
            leastGapUnder = Arrays.copyOf(leastGapUnder, more);
            mostGapUnder = Arrays.copyOf(mostGapUnder, more);
            railLength = Arrays.copyOf(railLength, more);
            endCut = Arrays.copyOf(endCut, more);
            marks = Arrays.copyOf(marks, more);
        }
        double rise = (rightGround - leftGround) / (right - left);
        double least = CLEARANCE;
        double most = CLEARANCE;
        for (int shot = pieceAt(left) + 1; shot < at.length && at[shot] < right; shot++) {
            double under = leftGround + CLEARANCE + rise * (at[shot] - left) - height[shot];
            least = Math.min(least, under);
            most = Math.max(most, under);
        }
        if (least < LEAST_CLEARANCE) {
            throw new IllegalArgumentException(
                    "the ground in bay " + (bays + 1) + " would lift a post; choose gentler ground");
        }
        double stretched = Math.sqrt(1 + rise * rise);
        grade[bays] = rise;
        leastGapUnder[bays] = least;
        mostGapUnder[bays] = most;
        endCut[bays] = Math.atan(Math.abs(rise));
        marks[bays] = marks(RAIL_DEPTH * stretched);
        bays++;
    }

    /** The same at both posts, since none is lifted. */
    private static double[] marks(double plumbDepth) {
        double room = BOARD_LENGTH - 2 * RAIL_FROM_BOARD_END - RAILS * plumbDepth;
        double[] marks = new double[4 * RAILS];
        for (int rail = 0; rail < RAILS; rail++) {
            double bottom = CLEARANCE + RAIL_FROM_BOARD_END + rail * plumbDepth + room * rail / (RAILS - 1);
            marks[2 * rail] = bottom;
            marks[2 * rail + 1] = bottom + plumbDepth;
            marks[2 * (RAILS + rail)] = bottom;
            marks[2 * (RAILS + rail) + 1] = bottom + plumbDepth;
        }
        return marks;
    }

    /** Weighs a leaf in pounds: frame, brace pointed into both corners, and boards on both faces. */
    private static double weight(double frame, double wide, double high, int full) {
        double brace = Math.hypot(wide, high);
        double braceFace = MEMBER * brace - MEMBER * MEMBER * wide * high / (brace * brace);
        double frameFace = MEMBER * (2 * frame + 2 * wide);
        double boards = (2 * full - 1) * BOARD * BOARD_LENGTH * BOARD_THICKNESS;
        return ((frameFace + braceFace) * MEMBER_THICKNESS + boards) / 1728 * POUNDS_PER_CUBIC_FOOT;
    }

    /** Hangs a gate and returns the number of the post behind it. */
    private int hang(double open, double shut) {
        double beyond = shut + HALF_POST;
        addPost(beyond, groundAt(beyond));
        double highest = Math.max(groundAt(open), groundAt(shut));
        for (int shot = pieceAt(open) + 1; shot < at.length && at[shot] < shut; shot++) {
            highest = Math.max(highest, height[shot]);
        }
        reach(posts - 2, highest + CLEARANCE + BOARD_LENGTH);
        reach(posts - 1, highest + CLEARANCE + BOARD_LENGTH);
        carry(posts - 2, shut - open + POST);
        double leaf = shut - open - HINGE_AND_LATCH_GAP;
        double frame = BOARD_LENGTH - 2 * RAIL_FROM_BOARD_END;
        double wide = leaf - 2 * MEMBER;
        double high = frame - 2 * MEMBER;
        int full = fullBoards(leaf);
        leafWidth[gates] = leaf;
        leafBottom[gates] = highest + CLEARANCE;
        leafBoards[gates] = full;
        leafGap[gates] = (leaf - full * BOARD) / (full - 1);
        braceLength[gates] = Math.hypot(wide, high);
        braceRise[gates] = Math.atan2(high, wide);
        hungMoment[posts - 1] += weight(frame, wide, high, full) * (HALF_POST + HINGE_GAP + leaf / 2);
        gates++;
        return posts - 1;
    }

    private static int fullBoards(double length) {
        int upper = (int) Math.ceil((length + USUAL_GAP) / (BOARD + USUAL_GAP));
        double narrow = (length - upper * BOARD) / (upper - 1);
        double wide = (length - (upper - 1) * BOARD) / (upper - 2);
        if (narrow >= LEAST_GAP && (wide > MOST_GAP || USUAL_GAP - narrow < wide - USUAL_GAP)) {
            return upper;
        }
        if (wide > MOST_GAP) {
            throw new IllegalArgumentException(
                    length + " in would take ripped boards; choose another length of fence or place for the gates");
        }
        return upper - 1;
    }

    /** Rips the boards of the inside that meet a post whose middle is so far from where the boards begin. */
    private void ripAtPost(double post, int front, double between) {
        double pitch = BOARD + between;
        double firstLeft = BOARD - (BOARD - between) / 2;
        double postLeft = post - HALF_POST;
        double postRight = post + HALF_POST;
        int board = Math.max(0, (int) Math.floor((postLeft - BOARD - firstLeft) / pitch) + 1);
        for (; board < front - 1 && firstLeft + board * pitch < postRight; board++) {
            double left = firstLeft + board * pitch;
            double right = left + BOARD;
            if (Math.min(right, postRight) - Math.max(left, postLeft) > PLANED_OFF) {
                boardsAtPosts[stretches]++;
                stripsAtPosts[stretches] += strip(postLeft - left) + strip(right - postRight);
            }
        }
    }

    private static double strip(double width) {
        return width < SMALLEST_STRIP ? 0 : width;
    }

    private double groundAt(double station) {
        int piece = pieceAt(station);
        return height[piece]
                + (height[piece + 1] - height[piece]) * (station - at[piece]) / (at[piece + 1] - at[piece]);
    }

    private int pieceAt(double station) {
        int found = Arrays.binarySearch(at, station);
        return Math.min(found >= 0 ? found : -found - 2, at.length - 2);
    }

    /** Depth by wind, frost, the least and the rule of a third, rounded up to the inch; concrete in cubic inches. */
    private void setInGround(int post) {
        double exposed = top[post] - ground[post];
        // To a sixteenth, so that bays which differ by rounding have the same footing; a hair less is not one more.
        double width =
                Math.hypot(Math.ceil(tributary[post] * 16 - 1e-6) / 16, Math.ceil(around[post] * 16 - 1e-6) / 16);
        double force = FenceJob.WIND_PSF / 144 * width * (exposed - CLEARANCE);
        double above = Math.max(0.55 * exposed, (CLEARANCE + exposed) / 2);
        double wind = poleDepth(force, above, hungMoment[post], LATERAL_BEARING_PSF_PER_FOOT / 1728, HOLE);
        double depth = Math.max(Math.max(wind, FenceJob.FROST_DEPTH), Math.max(LEAST_EMBEDMENT, exposed / 2));
        embedment[post] = Math.ceil(depth - 1e-6);
        concrete[post] = (Math.PI / 4 * HOLE * HOLE - POST * POST) * embedment[post];
    }

    /**
     * The depth d with d = A/2 (1 + sqrt(1 + 4.36 h / A)), A = 2.34 P / (S1 b), S1 the bearing at a third of d (IBC
     * 2012, section 1807.3.2.1). With k = 3 * 2.34 P / (S b) and A = k / d it becomes d^3 - k d - 1.09 k h = 0, where
     * the moment of a hung leaf adds to that of the wind in k h; Newton's steps from above run down to it.
     */
    private static double poleDepth(double force, double height, double hung, double bearing, double hole) {
        double k = 3 * 2.34 * force / (bearing * hole);
        double c = 1.09 * 3 * 2.34 * (force * height + hung) / (bearing * hole);
        double depth = Math.sqrt(k) + Math.cbrt(c);
        double step;
        do {
            step = (depth * depth * depth - k * depth - c) / (3 * depth * depth - k);
            depth -= step;
        } while (step > 1e-9 * depth);
        return depth;
    }
}
