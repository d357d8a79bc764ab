package org.fencecore.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

class WorksheetTest {

    @Test
    void aCalculationLineByLine() {
        Length opening = Length.ofInches(47.5);
        Length leaf = Length.ofInches(46.75);
        Worksheet sheet = Worksheet.titled("Gate leaf")
                .given("clear opening", opening, "47 1/2 in")
                .line(
                        "leaf width",
                        "opening - hinge gap - latch gap",
                        "47 1/2 - 1/2 - 1/4",
                        leaf,
                        "46 3/4 in",
                        Citation.COMMON_PRACTICE)
                .build();
        assertThat(sheet.result()).isEqualTo(leaf);
        assertThat(sheet.toText()).isEqualTo("""
                        Gate leaf
                          clear opening = 47 1/2 in   [given]
                          leaf width = opening - hinge gap - latch gap = 47 1/2 - 1/2 - 1/4 = 46 3/4 in   [common practice, no source]
                        """);
    }

    @Test
    void aSheetOfAPlanSaysWhereItBelongs() {
        Worksheet sheet = Worksheet.titled("Post spacing").given("bays", 7, "7").build();
        Worksheet placed = sheet.within("side 2, post 4 to post 9");
        assertThat(placed.title()).isEqualTo("side 2, post 4 to post 9: Post spacing");
        assertThat(placed.lines()).isEqualTo(sheet.lines());
        assertThat(placed.result()).isEqualTo(7);
        assertThat(sheet.title()).isEqualTo("Post spacing");
    }

    @Test
    void aWorksheetSaysSomething() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Worksheet.titled("Empty").build());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WorkLine(" ", "", "", 1, "1", Citation.GEOMETRY))
                .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> Citation.of(" ", "", ""));
    }

    @Test
    void aFindingTellsWhatWhereAndTheWayOut() {
        Finding finding = Finding.warning("rack-limit", "bay 3", "the grade of 24 % is over 20 %")
                .withRemedy("step this bay")
                .withSource(Citation.of("a code", "section 1", "2020"))
                .within("side 2");
        assertThat(finding.place()).isEqualTo("side 2, bay 3");
        assertThat(finding)
                .hasToString("WARNING rack-limit at side 2, bay 3: the grade of 24 % is over 20 %; step this bay"
                        + " [a code 2020, section 1]");
        assertThat(finding.at("bay 4").place()).isEqualTo("bay 4");
        assertThat(finding).isEqualTo(finding.at("x").at("side 2, bay 3")).isNotEqualTo(finding.at("x"));
        assertThatIllegalArgumentException().isThrownBy(() -> Finding.note("", "a", "b"));
    }
}
