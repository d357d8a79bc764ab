package org.fencecore.style;

import java.util.List;
import java.util.Objects;
import org.fencecore.boarding.Privacy;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.PostSetting;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailHeights;
import org.fencecore.rail.RailSpec;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the owner wants built, on whatever lot: boards and pattern, rails, posts and their spacing, how the fence meets
 * the ground, how gates are made, and the lumber.
 *
 * <p>What is not said is a shadowbox fence of 6 ft boards, 5 1/2 in wide and lapping 1 in, on three 2x4 rails and 4x4
 * posts 6 to 8 ft apart, the boards 1 to 2 in off the ground (all common practice, no source). The pattern's board
 * width, the rails' depth and the gate's members must be those of the lumber they are cut from; {@link Builder#build}
 * checks that.
 *
 * <p>Boards stand on rails, or lie in courses on the posts themselves, as {@link BoardStyle} says.
 *
 * <pre>{@code
 * FenceStyle style = FenceStyle.builder()
 *         .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
 *         .postSpacing(PostSpacingSpec.builder().maximum(Length.ofFeet(7)).build())
 *         .build();
 * }</pre>
 */
public final class FenceStyle {

    private final BoardPattern pattern;
    private final RailSpec rails;
    private final SlopeSpec slope;
    private final TopShape top;
    private final TopShape gateTop;
    private final GateSpec gate;
    private final GateHardware gateHardware;
    private final Lumber boardLumber;
    private final Lumber battenLumber;
    private final Lumber railLumber;
    private final Lumber postLumber;
    private final Lumber gateLumber;
    private final Lumber kickLumber;
    private final PostSpacingSpec postSpacing;
    private final Length postAboveBoards;
    private final PostSetting setting;
    private final boolean postTopsToSlope;
    private final Length postCapWidth;
    private final BoardStyle boards;

    private FenceStyle(Builder from) {
        pattern = from.pattern;
        boards = from.boards;
        rails = from.rails.withSticksUpTo(
                from.railLumber.lengths().get(from.railLumber.lengths().size() - 1));
        slope = from.slope;
        top = from.top;
        gateTop = from.gateTop == null ? from.top : from.gateTop;
        kickLumber = from.kickLumber;
        postTopsToSlope = from.postTopsToSlope;
        gate = from.gate;
        gateHardware = from.gateHardware;
        boardLumber = from.boardLumber;
        battenLumber = from.battenLumber;
        railLumber = from.railLumber;
        postLumber = from.postLumber;
        gateLumber = from.gateLumber;
        postSpacing = from.postSpacing;
        postAboveBoards = from.postAboveBoards;
        postCapWidth = from.postCapWidth;
        setting = from.setting;
    }

    /**
     * Starts a style with the usual values.
     *
     * @return a builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * Returns how the boards are set.
     *
     * @return the pattern
     */
    public BoardPattern pattern() {
        return pattern;
    }

    /**
     * Returns how the boards are put up.
     *
     * @return upright or in courses, their ends and their wood
     */
    public BoardStyle boards() {
        return boards;
    }

    /**
     * Returns what one sees between boards laid out in this style.
     *
     * @param layout the boards, or the courses of horizontal ones
     * @return the privacy, the faces of a shadowbox as far apart as the rails are thick
     */
    public Privacy privacy(BoardLayout layout) {
        return Privacy.of(layout, boardLumber.thickness(), railLumber.thickness());
    }

    /**
     * Returns where the rails sit on the boards, how long the boards are, and of what pieces rails are made; of horizontal
     * boards, how high they reach together.
     *
     * @return the rails, from sticks no longer than their lumber is sold in
     */
    public RailSpec rails() {
        return rails;
    }

    /**
     * Returns how the fence meets the ground.
     *
     * @return the treatment, its clearances and limits
     */
    public SlopeSpec slope() {
        return slope;
    }

    /**
     * Returns how the tops of the boards run.
     *
     * @return the shape
     */
    public TopShape top() {
        return top;
    }

    /**
     * Returns how the tops of the boards run on gates.
     *
     * @return the shape, that of the fence unless gates have one of their own; over the opening from post to post, and over
     *     both leaves where there are two
     */
    public TopShape gateTop() {
        return gateTop;
    }

    /**
     * Returns what kick boards are cut from, where gaps under the boards are closed with them.
     *
     * @return the lumber
     */
    public Lumber kickLumber() {
        return kickLumber;
    }

    /**
     * Returns how gates are made.
     *
     * @return the gate's gaps and members
     */
    public GateSpec gate() {
        return gate;
    }

    /**
     * Returns what gates are hung with and how they swing.
     *
     * @return hinges, screws and clearance
     */
    public GateHardware gateHardware() {
        return gateHardware;
    }

    /**
     * Returns what boards are cut from.
     *
     * @return the lumber
     */
    public Lumber boardLumber() {
        return boardLumber;
    }

    /**
     * Returns what battens are cut from, where the pattern has them.
     *
     * @return the lumber
     */
    public Lumber battenLumber() {
        return battenLumber;
    }

    /**
     * Tells whether the pattern has battens: a second row of another width than the boards.
     *
     * @return true for board and batten, unless the battens are boards
     */
    public boolean hasBattens() {
        return hasBattens(pattern);
    }

    private static boolean hasBattens(BoardPattern pattern) {
        return pattern.coverWidth().map(cover -> !cover.equals(pattern.width())).orElse(false);
    }

    /**
     * Returns what rails are cut from.
     *
     * @return the lumber
     */
    public Lumber railLumber() {
        return railLumber;
    }

    /**
     * Returns what posts are cut from.
     *
     * @return the lumber, square
     */
    public Lumber postLumber() {
        return postLumber;
    }

    /**
     * Returns what gate frames and braces are cut from.
     *
     * @return the lumber
     */
    public Lumber gateLumber() {
        return gateLumber;
    }

    /**
     * Returns how posts are spaced.
     *
     * @return the limits and the rule, from centre to centre
     */
    public PostSpacingSpec postSpacing() {
        return postSpacing;
    }

    /**
     * Returns how far posts stand above the tops of the boards.
     *
     * @return the height, negative where they end below the tops
     */
    public Length postAboveBoards() {
        return postAboveBoards;
    }

    /**
     * Tells whether the tops of line and end posts are cut to the slope of the boards.
     *
     * @return true if so, false if all posts are cut level
     */
    public boolean hasPostTopsToSlope() {
        return postTopsToSlope;
    }

    /**
     * Returns how posts are set.
     *
     * @return their holes, what fills them, and the rules for their depth
     */
    public PostSetting setting() {
        return setting;
    }

    /**
     * Returns how much ground a post's hole takes up.
     *
     * @return the diameter of the hole where it is widest, of a square one its diagonal
     */
    public Length holeDiameter() {
        return setting.holeFor(postLumber.width()).widest();
    }

    /**
     * Returns how wide the caps on the posts are.
     *
     * @return the width, zero for none
     */
    public Length postCapWidth() {
        return postCapWidth;
    }

    /**
     * Returns how far the backs of the boards stand off the outside faces of the posts.
     *
     * @return the thickness of the rails; zero where these stand between the posts, and for horizontal boards, which have
     *     none
     */
    public Length boardsOffPosts() {
        return boards.isHorizontal() || rails.isBetweenPosts() ? Length.ZERO : railLumber.thickness();
    }

    /**
     * Returns how high a gate's frame is: from the bottom of the fence's bottom rail to the top of its top rail.
     *
     * @return the board length less what the boards stick out below and above the rails
     */
    public Length gateFrameHeight() {
        return rails.boardLength().minus(rails.bottomRailAboveBottoms()).minus(rails.topRailBelowTops());
    }

    /** Collects what the owner wants, starting from the usual. */
    public static final class Builder {

        private static final Length TALLEST = Length.ofFeet(20);

        private BoardPattern pattern =
                BoardPattern.shadowbox(Length.ofInches(5.5)).withLap(Length.ofInches(1));
        private RailSpec rails = RailSpec.builder().build();
        private SlopeSpec slope = SlopeSpec.builder().build();
        private TopShape top = TopShape.straight();
        private @Nullable TopShape gateTop;
        private GateSpec gate = GateSpec.builder().build();
        private GateHardware gateHardware = GateHardware.builder().build();
        private Lumber boardLumber = Lumber.oneBySix();
        private Lumber battenLumber = Lumber.oneByThree();
        private Lumber railLumber = Lumber.twoByFour();
        private Lumber postLumber = Lumber.fourByFour();
        private Lumber gateLumber = Lumber.twoByFour();
        private PostSpacingSpec postSpacing =
                PostSpacingSpec.builder().minimum(Length.ofFeet(6)).build();
        private Lumber kickLumber = Lumber.of("2x6", Length.ofInches(1.5), Length.ofInches(5.5))
                .soldIn(Length.ofFeet(8), Length.ofFeet(10), Length.ofFeet(12), Length.ofFeet(16));
        private Length postAboveBoards = Length.ZERO;
        private PostSetting setting = PostSetting.builder().build();
        private boolean postTopsToSlope;
        private Length postCapWidth = Length.ZERO;
        private BoardStyle boards = BoardStyle.upright();

        private Builder() {}

        /**
         * Sets how the boards are put up; upright with square ends if not set. The board length of the rails is how high
         * horizontal ones reach together.
         *
         * @param newBoards upright or in courses, their ends and their wood
         * @return this builder
         */
        public Builder boards(BoardStyle newBoards) {
            boards = Objects.requireNonNull(newBoards, "newBoards");
            return this;
        }

        /**
         * Sets how the boards are set; shadowbox with 1 in of lap if not set.
         *
         * @param newPattern the pattern
         * @return this builder
         */
        public Builder pattern(BoardPattern newPattern) {
            pattern = Objects.requireNonNull(newPattern, "newPattern");
            return this;
        }

        /**
         * Sets where the rails sit and how long the boards are; three rails on 6 ft boards if not set.
         *
         * @param newRails the rails
         * @return this builder
         */
        public Builder rails(RailSpec newRails) {
            rails = Objects.requireNonNull(newRails, "newRails");
            return this;
        }

        /**
         * Sets how the fence meets the ground; racked, 2 in up at the posts, if not set.
         *
         * @param newSlope the treatment, its clearances and limits
         * @return this builder
         */
        public Builder slope(SlopeSpec newSlope) {
            slope = Objects.requireNonNull(newSlope, "newSlope");
            return this;
        }

        /**
         * Sets how the tops of the boards run; straight to the string if not set.
         *
         * @param shape the shape; a dip must be less than the length of the boards
         * @return this builder
         */
        public Builder top(TopShape shape) {
            top = Objects.requireNonNull(shape, "shape");
            return this;
        }

        /**
         * Gives gates a shape of their own; the line of the fence is carried through if not set.
         *
         * @param shape the shape over the opening; a dip must be less than the length of the boards
         * @return this builder
         */
        public Builder gateTop(TopShape shape) {
            gateTop = Objects.requireNonNull(shape, "shape");
            return this;
        }

        /**
         * Sets what kick boards are cut from; 2x6 if not set, and of no account unless gaps are closed with them.
         *
         * @param lumber the lumber, 1 in wide or more
         * @return this builder
         */
        public Builder kickLumber(Lumber lumber) {
            kickLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Cuts the tops of line and end posts to the slope of the boards; level if not set. Corner and gate posts, where
         * two slopes or a level gate meet, stay level.
         *
         * @return this builder
         */
        public Builder postTopsToSlope() {
            postTopsToSlope = true;
            return this;
        }

        /**
         * Sets how gates are made.
         *
         * @param newGate the gate's gaps and members
         * @return this builder
         */
        public Builder gate(GateSpec newGate) {
            gate = Objects.requireNonNull(newGate, "newGate");
            return this;
        }

        /**
         * Sets what gates are hung with and how they swing.
         *
         * @param hardware hinges, screws and clearance
         * @return this builder
         */
        public Builder gateHardware(GateHardware hardware) {
            gateHardware = Objects.requireNonNull(hardware, "hardware");
            return this;
        }

        /**
         * Sets what boards are cut from; 1x6 if not set.
         *
         * @param lumber the lumber
         * @return this builder
         */
        public Builder boardLumber(Lumber lumber) {
            boardLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Sets what battens are cut from; 1x3 if not set, and of no account for patterns without battens.
         *
         * @param lumber the lumber
         * @return this builder
         */
        public Builder battenLumber(Lumber lumber) {
            battenLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Sets what rails are cut from; 2x4 if not set.
         *
         * @param lumber the lumber
         * @return this builder
         */
        public Builder railLumber(Lumber lumber) {
            railLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Sets what posts are cut from; 4x4 if not set.
         *
         * @param lumber the lumber, square
         * @return this builder
         */
        public Builder postLumber(Lumber lumber) {
            postLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Sets what gate frames and braces are cut from; 2x4 if not set.
         *
         * @param lumber the lumber
         * @return this builder
         */
        public Builder gateLumber(Lumber lumber) {
            gateLumber = Objects.requireNonNull(lumber, "lumber");
            return this;
        }

        /**
         * Sets how posts are spaced; equal bays from 6 to 8 ft when not said.
         *
         * @param newPostSpacing the limits and the rule, from centre to centre
         * @return this builder
         */
        public Builder postSpacing(PostSpacingSpec newPostSpacing) {
            postSpacing = Objects.requireNonNull(newPostSpacing, "newPostSpacing");
            return this;
        }

        /**
         * Sets how far posts stand above the tops of the boards; flush if not set. Posts that end below the tops, but not
         * below the top rail, are hidden behind the boards, and the inside boards of a shadowbox are notched round them.
         *
         * @param height the height, up to 20 ft; negative if posts end below the tops
         * @return this builder
         * @throws IllegalArgumentException if out of that range; {@link #build} checks that posts reach the top rail
         */
        public Builder postAboveBoards(Length height) {
            if (height.abs().compareTo(TALLEST) > 0) {
                throw new IllegalArgumentException("height of posts above the boards was " + height
                        + "; it must be up to " + TALLEST + ": check its unit");
            }
            postAboveBoards = height;
            return this;
        }

        /**
         * Sets how posts are set: their holes, what fills them, and how deep they go at least; as usual if not set.
         *
         * @param newSetting the options of the crew
         * @return this builder
         */
        public Builder setting(PostSetting newSetting) {
            setting = Objects.requireNonNull(newSetting, "newSetting");
            return this;
        }

        /**
         * Sets how wide the caps on the posts are; no caps if not set.
         *
         * @param width the width of a square cap, 0 or more
         * @return this builder
         * @throws IllegalArgumentException if negative
         */
        public Builder postCapWidth(Length width) {
            if (width.isNegative()) {
                throw new IllegalArgumentException("post cap width was " + width
                        + "; it must be 0 or more: give the width of the cap, or leave it out for none");
            }
            postCapWidth = width;
            return this;
        }

        /**
         * Returns the style.
         *
         * @return the style
         * @throws IllegalArgumentException if a part does not fit the lumber it is cut from, a lumber has no length on
         *     the shelf, posts are not square, the post spacings contradict each other, the holes are no wider than the
         *     posts, the concrete rises over the boards, horizontal boards are of a pattern that laps or has gaps at its
         *     ends, have shaped tops or are to be cut to the ground, posts end below the top rail, dog-ears take half a board or more, or the rails
         *     would run into each other on the steepest bay
         */
        public FenceStyle build() {
            requireSame("board width of the pattern", pattern.width(), boardLumber);
            if (hasBattens(pattern)) {
                requireSame("batten width of the pattern", pattern.coverWidth().orElseThrow(), battenLumber);
            }
            requireSame("depth of the rails", rails.railDepth(), railLumber);
            requireSame("width of the gate's members", gate.memberWidth(), gateLumber);
            if (gate.braceWidth().compareTo(gateLumber.width()) > 0) {
                throw new IllegalArgumentException("width of the gate's brace was " + gate.braceWidth() + " but "
                        + gateLumber + " is " + gateLumber.width() + " wide; a brace can be no wider");
            }
            if (!gate.memberThickness().equals(gateLumber.thickness())) {
                throw new IllegalArgumentException("thickness of the gate's members was " + gate.memberThickness()
                        + " but " + gateLumber + " is " + gateLumber.thickness() + " thick; make them the same");
            }
            for (Lumber lumber : List.of(boardLumber, battenLumber, railLumber, postLumber, gateLumber, kickLumber)) {
                if (lumber.lengths().isEmpty()) {
                    throw new IllegalArgumentException(lumber + " is not sold in any length; call soldIn");
                }
            }
            if (!postLumber.thickness().equals(postLumber.width())) {
                throw new IllegalArgumentException("post lumber was " + postLumber + ", " + postLumber.thickness()
                        + " by " + postLumber.width() + "; posts must be square");
            }
            if (postSpacing.maximum().compareTo(postLumber.width()) <= 0) {
                throw new IllegalArgumentException("post spacing was at most " + postSpacing.maximum()
                        + "; it must be over the width of a post, " + postLumber.width());
            }
            if (rails.boardLength().compareTo(TALLEST) > 0) {
                throw new IllegalArgumentException("board length was " + rails.boardLength()
                        + "; it must be no more than " + TALLEST + ": check its unit");
            }
            if (kickLumber.width().compareTo(Length.ofInches(1)) < 0) {
                throw new IllegalArgumentException(
                        "kick lumber was " + kickLumber + ", under 1 in wide; use wider boards");
            }
            requireBoard(top);
            if (gateTop != null) {
                requireBoard(gateTop);
            }
            boards.requireSuits(pattern, slope, gateTop != null && top.isStraight() ? gateTop : top);
            if (postAboveBoards.plus(rails.topRailBelowTops()).isNegative()
                    || (boards.isHorizontal() && postAboveBoards.isNegative())) {
                throw new IllegalArgumentException("height of posts above the boards was " + postAboveBoards
                        + "; it must be "
                        + (boards.isHorizontal()
                                ? "0"
                                : rails.topRailBelowTops().negated())
                        + " or more: posts carry " + (boards.isHorizontal() ? "every course" : "the top rail"));
            }
            // The footing's own limits on posts, holes and concrete, on the shortest post of any plan, so that none has
            // to meet them.
            FootingSpec.builder()
                    .postWidth(postLumber.width())
                    .exposedHeight(slope.clearance().plus(Length.min(Length.ofFeet(1), rails.boardLength())))
                    .setting(setting)
                    .build();
            // Refuses rails that leave no room between them where they are deepest, so that no plan has to.
            RailHeights.of(rails, Length.ZERO, SlopeFit.STEEPEST);
            return new FenceStyle(this);
        }

        private void requireBoard(TopShape shape) {
            if (shape.overPosts().negated().compareTo(rails.boardLength()) >= 0) {
                throw new IllegalArgumentException(
                        "dip between posts was " + shape.rise() + ", no less than the boards of " + rails.boardLength()
                                + "; nothing would be left in the middle of a bay, so dip them less");
            }
        }

        private static void requireSame(String what, Length length, Lumber lumber) {
            if (!length.equals(lumber.width())) {
                throw new IllegalArgumentException(what + " was " + length + " but " + lumber + " is " + lumber.width()
                        + " wide; make them the same, or choose other lumber");
            }
        }
    }
}
