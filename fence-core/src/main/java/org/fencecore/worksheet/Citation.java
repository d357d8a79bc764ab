package org.fencecore.worksheet;

import java.util.Objects;

/**
 * Where a rule or a figure comes from.
 *
 * @param document the document, such as {@code IBC}
 * @param section the section or table in it, or empty
 * @param edition its edition or year, or empty
 */
public record Citation(String document, String section, String edition) {

    /** A fact of the trade that no document known to the authors states. */
    public static final Citation COMMON_PRACTICE = new Citation("common practice, no source", "", "");

    /** A result of plane geometry or statics that needs no source but the formula itself. */
    public static final Citation GEOMETRY = new Citation("geometry", "", "");

    /**
     * Checks the parts.
     *
     * @param document the document, such as {@code IBC}
     * @param section the section or table in it, or empty
     * @param edition its edition or year, or empty
     * @throws IllegalArgumentException if {@code document} is blank
     */
    public Citation {
        Objects.requireNonNull(section, "section");
        Objects.requireNonNull(edition, "edition");
        if (document.isBlank()) {
            throw new IllegalArgumentException("document was blank; name the document or use COMMON_PRACTICE");
        }
    }

    /**
     * Returns a citation.
     *
     * @param document the document, such as {@code IBC}
     * @param section the section or table in it, or empty
     * @param edition its edition or year, or empty
     * @return the citation
     */
    public static Citation of(String document, String section, String edition) {
        return new Citation(document, section, edition);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(document);
        if (!edition.isEmpty()) {
            text.append(' ').append(edition);
        }
        if (!section.isEmpty()) {
            text.append(", ").append(section);
        }
        return text.toString();
    }
}
