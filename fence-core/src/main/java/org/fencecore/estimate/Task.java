package org.fencecore.estimate;

import org.fencecore.FencePlan;
import org.fencecore.Stretch;

/** A part of the work on a fence, in the order in which it is done, and what it is counted by. */
public enum Task {
    /** Strings and stakes, by the post. */
    LAYOUT("layout", "post"),
    /** Digging the holes, by the hole. */
    DIGGING("digging", "hole"),
    /** Setting posts and filling their holes, by the post. */
    SETTING("setting posts", "post"),
    /** Cutting and fixing rails, by the bay; none under horizontal boards. */
    RAILS("rails", "bay"),
    /** Cutting and fixing boards, battens, nailers and kick boards of the fence, by the board. */
    BOARDS("boards", "board"),
    /** Building and hanging gates with their boards, by the leaf. */
    GATES("gates", "leaf");

    private final String words;
    private final String unit;

    Task(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    private static int boards(FencePlan plan) {
        int kickBoards =
                plan.bays().stream().mapToInt(bay -> bay.kickBoards().size()).sum();
        return plan.stretches().stream().mapToInt(Stretch::boardCount).sum() + kickBoards;
    }

    /**
     * Returns what the work is counted by.
     *
     * @return such as {@code hole}
     */
    public String unit() {
        return unit;
    }

    /**
     * Counts how much of it a plan has.
     *
     * @param plan the plan
     * @return the count in units of {@link #unit}
     */
    public int count(FencePlan plan) {
        return switch (this) {
            case LAYOUT, DIGGING, SETTING -> plan.posts().size();
            case RAILS -> plan.style().boards().isHorizontal() ? 0 : plan.bays().size();
            case BOARDS -> boards(plan);
            case GATES ->
                plan.gates().stream().mapToInt(gate -> gate.leaves().size()).sum();
        };
    }

    /**
     * Returns its name in the trade's words, such as {@code setting posts}.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return words;
    }
}
