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

    @Test
    void theLastColumnIsBrokenBetweenWordsWhereThePageEnds() {
        String words = "a piece of wood ".repeat(7).strip();
        String text = TextTable.of("stick", "cut").row(1, words).row(2, "one").toText("  ");

        // 110 less 2 in front and 7 of the first column and its space are 101: six pieces of wood and "a".
        assertThat(text.lines())
                .containsExactly(
                        "  stick  cut",
                        "  -----  " + "-".repeat(101),
                        "  1      " + "a piece of wood ".repeat(6) + "a",
                        "         piece of wood",
                        "  2      one");
    }

    @Test
    void aWordLongerThanALineStaysWhole() {
        String word = "x".repeat(120);
        assertThat(TextTable.of("cut")
                        .row("a " + word + " b")
                        .toText("")
                        .lines()
                        .skip(2))
                .containsExactly("a", word, "b");
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
