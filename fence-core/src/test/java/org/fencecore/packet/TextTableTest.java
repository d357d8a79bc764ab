package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class TextTableTest {

    @Test
    void columnsAreAsWideAsTheirWidestCell() {
        String text =
                TextTable.of("post", "kind").row(1, "corner").row(10, "end").toText("  ");
        assertThat(text)
                .isEqualTo(
                        "  post  kind\n" //
                                + "  ----  ------\n"
                                + "  1     corner\n"
                                + "  10    end\n");
    }

    /** RFC 4180, section 2: cells with commas, quotes or line breaks are quoted, and quotes in them doubled. */
    @Test
    void commasAndInchMarksAreQuoted() {
        String csv = TextTable.of("mark", "note")
                .row("5 1/2\"", "full")
                .row("6'", "a, b\nc")
                .toCsv();
        assertThat(csv).isEqualTo("mark,note\n\"5 1/2\"\"\",full\n6',\"a, b c\"\n");
    }

    @Test
    void aRowOfAnotherWidthIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TextTable.of("a", "b").row("c"))
                .withMessageContaining("1 cells")
                .withMessageContaining("2 columns");
    }
}
