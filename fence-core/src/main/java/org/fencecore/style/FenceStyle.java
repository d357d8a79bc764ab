package org.fencecore.style;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.boarding.Privacy;
import org.fencecore.footing.FootingSpec;
import org.fencecore.gate.GateSpec;
import org.fencecore.geometry.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.slope.RailHeights;
import org.fencecore.slope.RailSpec;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.units.Length;
import org.fencecore.wood.WoodInUse;
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
 * <p>Upright boards stand on rails on the posts' outside faces. {@linkplain Builder#horizontal Horizontal} ones lie in
 * courses on the posts themselves, their joints on posts.
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
    private final GateSpec gate;
    private final Lumber boardLumber;
    private final Lumber battenLumber;
    private final Lumber railLumber;
    private final Lumber postLumber;
    private final Lumber gateLumber;
    private final PostSpacingSpec postSpacing;
    private final Length postAboveBoards;
    private final @Nullable Length holeDiameter;
    private final Length postCapWidth;
    private final boolean horizontal;
    private final Length nailerSpacing;
    private final BoardEnds boardEnds;
    private final @Nullable WoodInUse boardWood;

    private FenceStyle(Builder from) {
        pattern = from.pattern;
        horizontal = from.horizontal;
        nailerSpacing = from.nailerSpacing;
        boardEnds = from.boardEnds;
        boardWood = from.boardWood;
        rails = from.rails;
        slope = from.slope;
        gate = from.gate;
        boardLumber = from.boardLumber;
        battenLumber = from.battenLumber;
        railLumber = from.railLumber;
        postLumber = from.postLumber;
        gateLumber = from.gateLumber;
        postSpacing = from.postSpacing;
        postAboveBoards = from.postAboveBoards;
        postCapWidth = from.postCapWidth;
        holeDiameter = from.holeDiameter;
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
     * Tells whether boards lie in courses from post to post, on the posts' outside faces and without rails.
     *
     * @return false for upright boards on rails
     */
    public boolean isHorizontal() {
        return horizontal;
    }

    /**
     * Returns how far horizontal boards span at most between a post and an upright nailer, or two of these.
     *
     * @return the distance from middle to middle
     */
    public Length nailerSpacing() {
        return nailerSpacing;
    }

    /**
     * Returns how far the backs of the outside boards are from the outside faces of the posts.
     *
     * @return the thickness of the rails, or zero for horizontal boards
     */
    public Length boardsOffPosts() {
        return horizontal ? Length.ZERO : railLumber.thickness();
    }

    /**
     * Returns how the ends of upright boards are cut.
     *
     * @return the ends
     */
    public BoardEnds boardEnds() {
        return boardEnds;
    }

    /**
     * Returns how upright boards are cut that stand level, as on a gate: no end is sloped.
     *
     * @param layout the boards
     * @return the cuts, bottoms at height 0
     */
    public BoardCuts levelCuts(BoardLayout layout) {
        Profile bottom = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(layout.clearLength(), Length.ZERO)
                .build();
        return BoardCuts.of(layout, bottom.shiftedBy(Length.ZERO, rails.boardLength()), bottom, boardEnds);
    }

    /**
     * Returns what wood the boards are of, and how wet it is when built and later.
     *
     * @return the wood; empty when not said
     */
    public Optional<WoodInUse> boardWood() {
        return Optional.ofNullable(boardWood);
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
     * Returns where the rails sit on the boards, and how long the boards are; of horizontal boards, how high they reach
     * together.
     *
     * @return the rails
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
     * Returns how gates are made.
     *
     * @return the gate's gaps and members
     */
    public GateSpec gate() {
        return gate;
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
     * Returns how wide post holes are dug.
     *
     * @return the diameter, three posts wide when not said (common practice, no source)
     */
    public Length holeDiameter() {
        return holeDiameter != null ? holeDiameter : postLumber.width().times(3);
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
        private GateSpec gate = GateSpec.builder().build();
        private Lumber boardLumber = Lumber.oneBySix();
        private Lumber battenLumber = Lumber.oneByThree();
        private Lumber railLumber = Lumber.twoByFour();
        private Lumber postLumber = Lumber.fourByFour();
        private Lumber gateLumber = Lumber.twoByFour();
        private PostSpacingSpec postSpacing =
                PostSpacingSpec.builder().minimum(Length.ofFeet(6)).build();
        private Length postAboveBoards = Length.ZERO;
        private @Nullable Length holeDiameter;
        private Length postCapWidth = Length.ZERO;
        private boolean horizontal;
        private Length nailerSpacing = Length.ofFeet(4);
        private BoardEnds boardEnds = BoardEnds.square();
        private @Nullable WoodInUse boardWood;

        private Builder() {}

        /**
         * Lays the boards in courses from post to post: on the posts' outside faces, without rails, joints on posts. The
         * board length of the rails is then how high they reach. Boards are upright if not set.
         *
         * @return this builder
         */
        public Builder horizontal() {
            horizontal = true;
            return this;
        }

        /**
         * Sets how far horizontal boards may span before an upright nailer ties them together; 4 ft if not set (common
         * practice, no source, for boards 3/4 in thick).
         *
         * @param most the distance from middle to middle, from 1 to 20 ft
         * @return this builder
         * @throws IllegalArgumentException if out of that range
         */
        public Builder nailerSpacing(Length most) {
            if (most.compareTo(Length.ofFeet(1)) < 0 || most.compareTo(TALLEST) > 0) {
                throw new IllegalArgumentException("nailer spacing was " + most
                        + "; it must be from 1 to 20 ft: how far a board spans without sagging or cupping");
            }
            nailerSpacing = most;
            return this;
        }

        /**
         * Sets how the ends of upright boards are cut; square if not set. Where the fence steps boards are level, and sloped
         * ends come out square.
         *
         * @param ends the ends
         * @return this builder
         */
        public Builder boardEnds(BoardEnds ends) {
            boardEnds = Objects.requireNonNull(ends, "ends");
            return this;
        }

        /**
         * Sets what wood the boards are of and how wet it is when built and later, for findings on gaps that open and
         * boards that press on each other; none are told if not set.
         *
         * @param wood the wood
         * @return this builder
         */
        public Builder boardWood(WoodInUse wood) {
            boardWood = Objects.requireNonNull(wood, "wood");
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
         * Sets how wide post holes are dug; three posts wide if not set.
         *
         * @param diameter the diameter, over the width of a post
         * @return this builder
         */
        public Builder holeDiameter(Length diameter) {
            holeDiameter = Objects.requireNonNull(diameter, "diameter");
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
         *     posts, horizontal boards are of a pattern that laps or has gaps at its ends, dog-ears take half a board or
         *     more, or the rails would run into each other on the steepest bay
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
            for (Lumber lumber : new Lumber[] {boardLumber, battenLumber, railLumber, postLumber, gateLumber}) {
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
            if (horizontal && (pattern.isLapped() || pattern.hasGapAtEnds())) {
                throw new IllegalArgumentException("horizontal boards were " + pattern
                        + "; courses are on one face, from a board at the bottom to one at the top, so take sideBySide or"
                        + " spaced without gaps at the ends");
            }
            if (postAboveBoards.plus(rails.topRailBelowTops()).isNegative()
                    || (horizontal && postAboveBoards.isNegative())) {
                throw new IllegalArgumentException("height of posts above the boards was " + postAboveBoards
                        + "; it must be "
                        + (horizontal ? "0" : rails.topRailBelowTops().negated())
                        + " or more: posts carry " + (horizontal ? "every course" : "the top rail"));
            }
            if (boardEnds.dogEar().times(2).compareTo(pattern.width()) >= 0) {
                throw new IllegalArgumentException("dog-ears were " + boardEnds.dogEar() + " on boards "
                        + pattern.width() + " wide; they must be under half of that");
            }
            // The footing's own limits on posts and holes, so that no plan has to meet them.
            FootingSpec.Builder footing = FootingSpec.builder()
                    .postWidth(postLumber.width())
                    .exposedHeight(rails.boardLength().plus(postAboveBoards));
            if (holeDiameter != null) {
                footing.holeDiameter(holeDiameter);
            }
            footing.build();
            // Refuses rails that leave no room between them where they are deepest, so that no plan has to.
            RailHeights.of(rails, Length.ZERO, SlopeFit.STEEPEST);
            return new FenceStyle(this);
        }

        private static void requireSame(String what, Length length, Lumber lumber) {
            if (!length.equals(lumber.width())) {
                throw new IllegalArgumentException(what + " was " + length + " but " + lumber + " is " + lumber.width()
                        + " wide; make them the same, or choose other lumber");
            }
        }
    }
}
