package org.fencecore.style;

import java.util.Objects;
import java.util.Optional;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.layout.BoardPattern;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.units.Length;
import org.fencecore.wood.WoodInUse;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * How boards of any pattern are put up: upright on rails or in courses from post to post, how their ends are cut, and what
 * wood they are of.
 *
 * <p>{@linkplain #horizontal Horizontal} boards lie on the posts' outside faces, without rails. Their joints are on posts,
 * and upright nailers behind them tie them together where posts are far apart. Styles are immutable; the methods that set
 * something return another one.
 *
 * <pre>{@code
 * BoardStyle upright = BoardStyle.upright().withEnds(BoardEnds.square().withDogEars(Length.ofInches(1.5)));
 * BoardStyle lying = BoardStyle.horizontal().withNailersEvery(Length.ofFeet(3));
 * }</pre>
 */
public final class BoardStyle {

    private static final Length CLOSEST = Length.ofFeet(1);
    private static final Length FURTHEST = Length.ofFeet(20);

    private static final BoardStyle UPRIGHT = new BoardStyle(false, Length.ofFeet(4), BoardEnds.square(), null);
    private static final BoardStyle HORIZONTAL = new BoardStyle(true, Length.ofFeet(4), BoardEnds.square(), null);

    private final boolean horizontal;
    private final Length nailerSpacing;
    private final BoardEnds ends;
    private final @Nullable WoodInUse wood;

    private BoardStyle(boolean horizontal, Length nailerSpacing, BoardEnds ends, @Nullable WoodInUse wood) {
        this.horizontal = horizontal;
        this.nailerSpacing = nailerSpacing;
        this.ends = ends;
        this.wood = wood;
    }

    /**
     * Returns boards that stand on rails, their ends square.
     *
     * @return upright boards
     */
    public static BoardStyle upright() {
        return UPRIGHT;
    }

    /**
     * Returns boards that lie in courses from post to post, with nailers every 4 ft at most (common practice, no source,
     * for boards 3/4 in thick).
     *
     * @return horizontal boards
     */
    public static BoardStyle horizontal() {
        return HORIZONTAL;
    }

    /**
     * Returns these horizontal boards with nailers closer together or further apart.
     *
     * @param most how far boards may span from middle to middle of posts and nailers, from 1 to 20 ft
     * @return the boards
     * @throws IllegalArgumentException if out of that range, or the boards are upright
     */
    public BoardStyle withNailersEvery(Length most) {
        if (!horizontal) {
            throw new IllegalArgumentException("nailers every " + most
                    + " were asked for behind upright boards, which stand on rails; start from horizontal");
        }
        if (most.compareTo(CLOSEST) < 0 || most.compareTo(FURTHEST) > 0) {
            throw new IllegalArgumentException("nailer spacing was " + most
                    + "; it must be from 1 to 20 ft: how far a board spans without sagging or cupping");
        }
        return new BoardStyle(true, most, ends, wood);
    }

    /**
     * Returns these upright boards with their ends cut in another way. Under tops that are not straight, and where boards
     * are cut to the ground, those ends are marked in place instead.
     *
     * @param newEnds how they are cut
     * @return the boards
     * @throws IllegalArgumentException if the boards are horizontal, the ends of which are plumb
     */
    public BoardStyle withEnds(BoardEnds newEnds) {
        Objects.requireNonNull(newEnds, "newEnds");
        if (horizontal) {
            throw new IllegalArgumentException("ends with " + newEnds
                    + " were asked of horizontal boards, which end plumb on posts; start from upright");
        }
        return new BoardStyle(false, nailerSpacing, newEnds, wood);
    }

    /**
     * Returns these boards with what wood they are of and how wet it is when built and later, for findings on gaps that
     * open and boards that press on each other.
     *
     * @param newWood the wood
     * @return the boards
     */
    public BoardStyle withWood(WoodInUse newWood) {
        return new BoardStyle(horizontal, nailerSpacing, ends, Objects.requireNonNull(newWood, "newWood"));
    }

    /** Refuses what these boards cannot be put up with. */
    void requireSuits(BoardPattern pattern, SlopeSpec slope, TopShape top) {
        if (ends.dogEar().times(2).compareTo(pattern.width()) >= 0) {
            throw new IllegalArgumentException("dog-ears were " + ends.dogEar() + " on boards " + pattern.width()
                    + " wide; they must be under half of that");
        }
        if (!horizontal) {
            return;
        }
        if (pattern.isLapped() || pattern.hasGapAtEnds()) {
            throw new IllegalArgumentException("horizontal boards were " + pattern
                    + "; courses are on one face, from a board at the bottom to one at the top, so take sideBySide or"
                    + " spaced without gaps at the ends");
        }
        if (slope.underBoards() == SlopeSpec.UnderBoards.BOARDS_TO_GROUND) {
            throw new IllegalArgumentException("horizontal boards were to be cut to the ground; the lowest course runs"
                    + " straight from post to post, so close gaps under it with kick boards");
        }
        if (!top.isStraight()) {
            throw new IllegalArgumentException("tops of horizontal boards were " + top
                    + "; courses lie along the line of the bottoms, so leave the tops straight");
        }
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
     * @return the distance from middle to middle; of no account for upright boards
     */
    public Length nailerSpacing() {
        return nailerSpacing;
    }

    /**
     * Returns how the ends of upright boards are cut.
     *
     * @return the ends
     */
    public BoardEnds ends() {
        return ends;
    }

    /**
     * Returns what wood the boards are of, and how wet it is when built and later.
     *
     * @return the wood; empty when not said
     */
    public Optional<WoodInUse> wood() {
        return Optional.ofNullable(wood);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoardStyle that
                && horizontal == that.horizontal
                && nailerSpacing.equals(that.nailerSpacing)
                && ends.equals(that.ends)
                && Objects.equals(wood, that.wood);
    }

    @Override
    public int hashCode() {
        return Objects.hash(horizontal, nailerSpacing, ends, wood);
    }

    /**
     * Describes the boards.
     *
     * @return such as {@code upright, top square, bottom square}
     */
    @Override
    public String toString() {
        return (horizontal ? "horizontal, nailers every " + Written.stock(nailerSpacing) : "upright, " + ends)
                + (wood == null ? "" : ", " + wood);
    }
}
