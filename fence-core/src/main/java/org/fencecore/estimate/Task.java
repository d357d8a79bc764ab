package org.fencecore.estimate;

import java.util.function.ToIntFunction;
import org.fencecore.FencePlan;
import org.fencecore.Stretch;

/** A part of the work on a fence, in the order in which it is done, and what it is counted by. */
public enum Task {
    /** Strings and stakes, by the post. */
    LAYOUT("layout", "post", plan -> plan.posts().size()),
    /** Digging the holes, by the hole. */
    DIGGING("digging", "hole", plan -> plan.posts().size()),
    /** Setting posts and filling their holes, by the post. */
    SETTING("setting posts", "post", plan -> plan.posts().size()),
    /** Cutting and fixing rails, by the bay. */
    RAILS("rails", "bay", plan -> plan.bays().size()),
    /** Cutting and fixing boards, battens and kick boards of the fence, by the board. */
    BOARDS("boards", "board", Task::boards),
    /** Building and hanging gates with their boards, by the leaf. */
    GATES(
            "gates",
            "leaf",
            plan -> plan.gates().stream().mapToInt(gate -> gate.leaves().size()).sum());

    private final String words;
    private final String unit;
    private final ToIntFunction<FencePlan> counting;

    Task(String words, String unit, ToIntFunction<FencePlan> counting) {
        this.words = words;
        this.unit = unit;
        this.counting = counting;
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
        return counting.applyAsInt(plan);
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
