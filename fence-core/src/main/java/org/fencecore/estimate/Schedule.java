package org.fencecore.estimate;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.fencecore.FencePlan;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * Which day which work is done: layout, digging, setting, the wait for the concrete, rails, boards, gates.
 *
 * <pre>
 * time of a task = count x time for one / people
 * </pre>
 *
 * <p>One task follows the other, on the same day where it fits; all people work together. From the day after the last post
 * is set whole days pass for the concrete, and the rails begin on the morning after. Days are counted from 1; without a
 * start each day is a working day, and with {@link #startingOn} days off are left out of the work but not of the cure.
 *
 * <p>Left out: weather, inspections, deliveries, the wait for the marks of buried lines, and work that could be done while
 * the concrete cures, such as building gates.
 *
 * <p>Source: common practice, no source; all rates are the caller's. Example: see the package.
 */
public final class Schedule {

    private static final int MOST_DAYS = 100_000;

    private final FencePlan plan;
    private final CrewRates crew;
    private final @Nullable LocalDate start;
    private final Set<DayOfWeek> daysOff;
    private final List<Step> steps = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private int day = 1;
    private Duration worked = Duration.ZERO;

    /**
     * One part of the work on its days.
     *
     * @param what the work, such as {@code digging}, or {@code concrete cures}
     * @param time how long the crew works on it, all together; zero while it waits
     * @param firstDay the day it begins, from 1
     * @param lastDay the day it ends
     */
    public record Step(String what, Duration time, int firstDay, int lastDay) {

        @Override
        public String toString() {
            return (firstDay == lastDay ? "day " + firstDay : "day " + firstDay + " to " + lastDay) + ": " + what
                    + (time.isZero() ? "" : ", " + Written.hours(time));
        }
    }

    private Schedule(FencePlan plan, CrewRates crew, @Nullable LocalDate start, Set<DayOfWeek> daysOff) {
        this.plan = plan;
        this.crew = crew;
        this.start = start;
        this.daysOff = daysOff;
        for (Task task : Task.values()) {
            LabourLine line = LabourLine.of(task, plan, crew);
            if (line.count() == 0) {
                continue;
            }
            line.time()
                    .ifPresentOrElse(
                            time -> work(task, time.dividedBy(crew.people())), () -> findings.add(Gaps.time(line)));
            if (task == Task.SETTING) {
                cure();
            }
        }
        if (!plan.posts().isEmpty()) {
            findings.add(drying());
        }
    }

    /**
     * Works out the days of a plan, each of them a working day.
     *
     * @param plan the plan
     * @param crew how the crew works
     * @return the schedule
     * @throws IllegalArgumentException if the work takes over 100,000 days
     */
    public static Schedule of(FencePlan plan, CrewRates crew) {
        return new Schedule(
                Objects.requireNonNull(plan, "plan"),
                Objects.requireNonNull(crew, "crew"),
                null,
                EnumSet.noneOf(DayOfWeek.class));
    }

    /**
     * Returns the same work from a date on. The concrete cures on days off as well.
     *
     * @param firstDay the date of day 1
     * @param off the days of the week without work
     * @return the schedule
     * @throws IllegalArgumentException if all days are off, or the work takes over 100,000 days
     */
    public Schedule startingOn(LocalDate firstDay, DayOfWeek... off) {
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        days.addAll(Arrays.asList(off));
        if (days.size() == DayOfWeek.values().length) {
            throw new IllegalArgumentException("off were all days of the week; leave at least one to work on");
        }
        return new Schedule(plan, crew, Objects.requireNonNull(firstDay, "firstDay"), days);
    }

    private void work(Task task, Duration time) {
        if (time.isZero()) {
            return;
        }
        int first = 0;
        Duration left = time;
        while (!left.isZero()) {
            if (worked.equals(crew.day()) || isOff(day)) {
                nextDay();
                continue;
            }
            first = first == 0 ? day : first;
            Duration room = crew.day().minus(worked);
            Duration now = left.compareTo(room) < 0 ? left : room;
            worked = worked.plus(now);
            left = left.minus(now);
        }
        steps.add(new Step(task.toString(), time, first, day));
    }

    private void cure() {
        if (crew.cureDays() == 0 || !plan.holes().concrete().isPositive()) {
            return;
        }
        // Before anything is worked, as when all times are missing, the wait would begin on day 1.
        int last = worked.isZero() && day == 1 ? 0 : day;
        steps.add(new Step("concrete cures", Duration.ZERO, last + 1, last + crew.cureDays()));
        day = last + crew.cureDays() + 1;
        worked = Duration.ZERO;
    }

    private boolean isOff(int which) {
        return start != null && daysOff.contains(start.plusDays(which - 1L).getDayOfWeek());
    }

    private void nextDay() {
        day++;
        worked = Duration.ZERO;
        if (day > MOST_DAYS) {
            throw new IllegalArgumentException(
                    "crew takes over 100,000 days for " + plan.posts().size() + " posts and " + plan.boardCount()
                            + " boards; are the units of its times right?");
        }
    }

    private static Finding drying() {
        return Finding.note(
                        "wood-dries-before-stain",
                        "stain",
                        "treated wood is not dry when the fence stands; stain or paint on wet wood does not last, and its"
                                + " wait is not in these days")
                .withRemedy(
                        "wait until drops of water soak in, for weeks or months, and as the maker of the stain says")
                .withSource(Citation.COMMON_PRACTICE);
    }

    /**
     * Returns the work on its days.
     *
     * @return the steps in order, unmodifiable; tasks without a time are not among them
     */
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /**
     * Returns how many days it takes from the first to the last, those of the cure and days off between them included.
     *
     * @return the days; empty if the time of any task is missing
     */
    public OptionalInt days() {
        boolean missing = findings.stream().anyMatch(finding -> finding.code().equals("time-missing"));
        return missing
                ? OptionalInt.empty()
                : OptionalInt.of(steps.stream().mapToInt(Step::lastDay).max().orElse(0));
    }

    /**
     * Returns the date of day 1.
     *
     * @return the date; empty if none was given
     */
    public Optional<LocalDate> start() {
        return Optional.ofNullable(start);
    }

    /**
     * Returns the date of a day.
     *
     * @param which the day, from 1
     * @return its date; empty if no start was given
     */
    public Optional<LocalDate> date(int which) {
        return start().map(date -> date.plusDays(which - 1L));
    }

    /**
     * Returns what to know about the days:
     *
     * <ul>
     *   <li>{@code time-missing}, a warning: the crew has no time for a task, and it is not among the steps;
     *   <li>{@code wood-dries-before-stain}, a note: treated wood waits before it is stained.
     * </ul>
     *
     * @return the findings, most serious first, unmodifiable
     */
    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    /**
     * Returns the days worked out task by task.
     *
     * @return the worksheet; its last line is the last day among the {@link #steps}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Days of work")
                .given("people", crew.people(), String.valueOf(crew.people()))
                .given("a day", crew.day(), Written.hours(crew.day()));
        for (Task task : Task.values()) {
            LabourLine line = LabourLine.of(task, plan, crew);
            line.each()
                    .filter(each -> line.count() > 0)
                    .ifPresent(each -> sheet.line(
                            task + ", time",
                            "count x time for one / people",
                            line.count() + " x " + each.toSeconds() + " s / " + crew.people(),
                            each.multipliedBy(line.count()).dividedBy(crew.people()),
                            Written.hours(each.multipliedBy(line.count()).dividedBy(crew.people())),
                            Citation.of("rates of the crew", "", "")));
        }
        int last = 0;
        for (Step step : steps) {
            sheet.line(step.what() + ", days", "after what comes before", "", step, step.toString(), Citation.GEOMETRY);
            last = Math.max(last, step.lastDay());
        }
        return sheet.line("last day", "the last of these", "", last, String.valueOf(last), Citation.GEOMETRY)
                .build();
    }

    /** Returns the steps in words, a line each. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("schedule");
        steps.forEach(step -> text.append("\n  ").append(step));
        return text.toString();
    }
}
