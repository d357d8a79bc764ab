package org.fencecore.packet;

import java.math.BigDecimal;
import java.util.Optional;
import org.fencecore.estimate.Comparison;

/** Two ways to build a fence side by side, as plain text or as a table for spreadsheets. */
public final class ComparisonSheet {

    private final TextTable table;

    private ComparisonSheet(TextTable table) {
        this.table = table;
    }

    /**
     * Returns the sheet of a comparison.
     *
     * @param comparison the comparison
     * @return the sheet
     */
    public static ComparisonSheet of(Comparison comparison) {
        TextTable table = TextTable.of("what", comparison.firstName(), comparison.secondName(), "difference", "unit")
                .numbers(1, 2, 3);
        for (Comparison.Row row : comparison.rows()) {
            table.row(
                    row.what(),
                    written(row.first()),
                    written(row.second()),
                    row.difference().map(ComparisonSheet::signed).orElse(written(Optional.empty())),
                    row.unit());
        }
        return new ComparisonSheet(table);
    }

    private static String written(Optional<BigDecimal> value) {
        return value.map(BigDecimal::toPlainString).orElse("?");
    }

    private static String signed(BigDecimal value) {
        return (value.signum() > 0 ? "+" : "") + value.toPlainString();
    }

    /**
     * Returns the table as text, the difference being the second less the first; what is not known is marked with a
     * question mark.
     *
     * @return the text, lines ended by a line feed
     */
    public String toText() {
        return table.toText("");
    }

    /**
     * Returns the table as comma-separated values.
     *
     * @return the text of the file, lines ended by a line feed
     */
    public String toCsv() {
        return table.toCsv();
    }
}
