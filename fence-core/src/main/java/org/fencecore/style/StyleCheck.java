package org.fencecore.style;

import org.fencecore.footing.FootingSpec;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardPattern;
import org.fencecore.rail.RailHeights;
import org.fencecore.rail.RailSpec;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.TopShape;
import org.fencecore.units.Length;

/** Refuses a style whose parts do not go together, so that no plan has to. */
final class StyleCheck {

    private final FenceStyle style;

    StyleCheck(FenceStyle style) {
        this.style = style;
    }

    void requireTogether() {
        requireLumber();
        requirePosts();
        requireBoards();
        // Refuses rails that leave no room between them where they are deepest.
        RailHeights.of(style.rails(), Length.ZERO, SlopeFit.STEEPEST);
    }

    /** Every part is as wide as the lumber that it is cut from. */
    private void requireLumber() {
        BoardPattern pattern = style.pattern();
        requireSame("board width of the pattern", pattern.width(), style.boardLumber());
        if (style.hasBattens()) {
            requireSame("batten width of the pattern", pattern.coverWidth().orElseThrow(), style.battenLumber());
        }
        requireSame("depth of the rails", style.rails().railDepth(), style.railLumber());
        GateSpec gate = style.gate();
        Lumber gateLumber = style.gateLumber();
        requireSame("width of the gate's members", gate.memberWidth(), gateLumber);
        if (gate.braceWidth().compareTo(gateLumber.width()) > 0) {
            throw new IllegalArgumentException("width of the gate's brace was " + gate.braceWidth() + " but "
                    + gateLumber + " is " + gateLumber.width() + " wide; a brace can be no wider");
        }
        if (!gate.memberThickness().equals(gateLumber.thickness())) {
            throw new IllegalArgumentException("thickness of the gate's members was " + gate.memberThickness() + " but "
                    + gateLumber + " is " + gateLumber.thickness() + " thick; make them the same");
        }
        if (style.kickLumber().width().compareTo(Length.ofInches(1)) < 0) {
            throw new IllegalArgumentException(
                    "kick lumber was " + style.kickLumber() + ", under 1 in wide; use wider boards");
        }
    }

    private static void requireSame(String what, Length length, Lumber lumber) {
        if (!length.equals(lumber.width())) {
            throw new IllegalArgumentException(what + " was " + length + " but " + lumber + " is " + lumber.width()
                    + " wide; make them the same, or choose other lumber");
        }
    }

    private void requirePosts() {
        Lumber post = style.postLumber();
        if (!post.thickness().equals(post.width())) {
            throw new IllegalArgumentException("post lumber was " + post + ", " + post.thickness() + " by "
                    + post.width() + "; posts must be square");
        }
        if (style.postSpacing().maximum().compareTo(post.width()) <= 0) {
            throw new IllegalArgumentException("post spacing was at most "
                    + style.postSpacing().maximum() + "; it must be over the width of a post, " + post.width());
        }
        Length above = style.postAboveBoards();
        boolean isHorizontal = style.boards().isHorizontal();
        Length least =
                isHorizontal ? Length.ZERO : style.rails().topRailBelowTops().negated();
        if (above.compareTo(least) < 0) {
            throw new IllegalArgumentException("height of posts above the boards was " + above + "; it must be " + least
                    + " or more: posts carry " + (isHorizontal ? "every course" : "the top rail"));
        }
        // The footing's own limits on posts, holes and concrete, on the shortest post of any plan.
        FootingSpec.builder()
                .postWidth(post.width())
                .exposedHeight(style.slope()
                        .clearance()
                        .plus(Length.min(Length.ofFeet(1), style.rails().boardLength())))
                .setting(style.setting())
                .build();
    }

    private void requireBoards() {
        RailSpec rails = style.rails();
        if (rails.boardLength().compareTo(FenceStyle.TALLEST) > 0) {
            throw new IllegalArgumentException("board length was " + rails.boardLength() + "; it must be no more than "
                    + FenceStyle.TALLEST + ": check its unit");
        }
        requireBoardLeft(style.top());
        requireBoardLeft(style.gateTop());
        style.boards()
                .requireSuits(style.pattern(), style.slope(), style.top().isStraight() ? style.gateTop() : style.top());
    }

    private void requireBoardLeft(TopShape shape) {
        Length boardLength = style.rails().boardLength();
        if (shape.overPosts().negated().compareTo(boardLength) >= 0) {
            throw new IllegalArgumentException("dip between posts was " + shape.rise() + ", no less than the boards of "
                    + boardLength + "; nothing would be left in the middle of a bay, so dip them less");
        }
    }
}
