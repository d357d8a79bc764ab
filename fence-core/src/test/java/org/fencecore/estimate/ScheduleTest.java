package org.fencecore.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import org.fencecore.worksheet.Finding;
import org.junit.jupiter.api.Test;

class ScheduleTest {

    /*
     * Two people: layout 40 min, digging 180, setting 120 are 340 min or 2 h 50 min on day 1. Two days of cure. Rails 80,
     * boards 117, gates 180 min are 377 min or 3 h 8 1/2 min on day 4.
     */
    private final Schedule schedule =
            Schedule.of(EstimateTest.small(), EstimateTest.crew().build());

    @Test
    void aSmallFenceTakesFourDays() {
        assertThat(schedule.steps())
                .extracting(Schedule.Step::toString)
                .containsExactly(
                        "day 1: layout, 0.33 h",
                        "day 1: digging, 1.5 h",
                        "day 1: setting posts, 1 h",
                        "day 2 to 3: concrete cures",
                        "day 4: rails, 0.67 h",
                        "day 4: boards, 0.98 h",
                        "day 4: gates, 1.5 h");
        assertThat(schedule.days()).hasValue(4);
        assertThat(schedule.worksheet().result()).isEqualTo(4);
        assertThat(schedule.findings()).extracting(Finding::code).containsExactly("wood-dries-before-stain");
    }

    /** One person for 2 h a day: 340 min are days 1 to 3 (100 min of it), cure to day 5; 377 min are days 6 to 9. */
    @Test
    void shortDaysSplitTheWork() {
        CrewRates alone = EstimateTest.crew().people(1).day(Duration.ofHours(2)).build();

        assertThat(Schedule.of(EstimateTest.small(), alone).steps())
                .extracting(Schedule.Step::what, Schedule.Step::firstDay, Schedule.Step::lastDay)
                .containsExactly(
                        tuple("layout", 1, 1),
                        tuple("digging", 1, 2),
                        tuple("setting posts", 2, 3),
                        tuple("concrete cures", 4, 5),
                        tuple("rails", 6, 6),
                        tuple("boards", 6, 7),
                        tuple("gates", 7, 9));
    }

    /** From a Thursday, 5 March 2026: cure on Friday and Saturday, and with Sunday off the rails begin on Monday. */
    @Test
    void concreteCuresOnDaysOff() {
        Schedule dated = schedule.startingOn(LocalDate.of(2026, 3, 5), DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

        assertThat(dated.steps().get(4).firstDay()).isEqualTo(5);
        assertThat(dated.date(5)).contains(LocalDate.of(2026, 3, 9));
        assertThat(dated.days()).hasValue(5);
        assertThat(schedule.date(5)).isEmpty();
        assertThatThrownBy(() -> schedule.startingOn(LocalDate.of(2026, 3, 5), DayOfWeek.values()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("off were all days");
    }
}
