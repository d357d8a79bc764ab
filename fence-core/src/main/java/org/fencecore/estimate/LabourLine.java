package org.fencecore.estimate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/** One part of the work with the time it takes and what that costs. */
public final class LabourLine {

    private static final BigDecimal SECONDS_AN_HOUR = BigDecimal.valueOf(3600);

    private final Task task;
    private final int count;
    private final CrewRates crew;
    private final @Nullable Duration each;

    private LabourLine(Task task, int count, CrewRates crew) {
        this.task = task;
        this.count = count;
        this.crew = crew;
        this.each = crew.time(task).orElse(null);
    }

    static LabourLine of(Task task, FencePlan plan, CrewRates crew) {
        return new LabourLine(task, task.count(plan), crew);
    }

    /**
     * Returns the work.
     *
     * @return the task
     */
    public Task task() {
        return task;
    }

    /**
     * Returns how much of it there is.
     *
     * @return the count in units of the task
     */
    public int count() {
        return count;
    }

    /**
     * Returns how long one person takes for one.
     *
     * @return the time; empty if the rates have none
     */
    public Optional<Duration> each() {
        return Optional.ofNullable(each);
    }

    /**
     * Returns how long one person would take for all of it.
     *
     * @return count x the time for one; empty if the rates have none
     */
    public Optional<Duration> time() {
        return each().map(one -> one.multipliedBy(count));
    }

    /**
     * Returns what it costs.
     *
     * @return time x wage, rounded half up to the smallest coin; empty if either is missing
     */
    public Optional<BigDecimal> amount() {
        return time().flatMap(time -> crew.wage().map(wage -> cost(time, wage)));
    }

    private BigDecimal cost(Duration time, BigDecimal wage) {
        BigDecimal seconds = BigDecimal.valueOf(time.getSeconds()).add(BigDecimal.valueOf(time.getNano(), 9));
        return wage.multiply(seconds)
                .divide(SECONDS_AN_HOUR, Estimate.decimals(crew.currency().orElseThrow()), RoundingMode.HALF_UP);
    }

    /** Returns the work in words, such as {@code digging: 4 x hole, 3 h}. */
    @Override
    public String toString() {
        return task + ": " + count + " x " + task.unit() + ", "
                + time().map(Written::hours).orElse("no time");
    }
}
