package org.fencecore.worksheet;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing a builder should know about a design: what, where, how serious, and the way out.
 *
 * <p>Example:
 *
 * <pre>{@code
 * Finding finding = Finding.warning("rack-limit", "bay 3", "the grade of 24 % is over the 20 % the panels can rack")
 *         .withRemedy("step this bay, or put a post between");
 * }</pre>
 */
public final class Finding {

    private final Severity severity;
    private final String code;
    private final String place;
    private final String message;
    private final String remedy;
    private final @Nullable Citation source;

    private Finding(
            Severity severity, String code, String place, String message, String remedy, @Nullable Citation source) {
        this.severity = Objects.requireNonNull(severity, "severity");
        this.code = requireText(code, "code");
        this.place = requireText(place, "place");
        this.message = requireText(message, "message");
        this.remedy = Objects.requireNonNull(remedy, "remedy");
        this.source = source;
    }

    private static String requireText(String text, String name) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(name + " was blank; a finding must say it");
        }
        return text;
    }

    /**
     * Returns a finding that is worth knowing.
     *
     * @param code a short stable code in lower case with hyphens, for programs
     * @param place where, in the builder's words
     * @param message what is found, with the value and its unit
     * @return the finding
     */
    public static Finding note(String code, String place, String message) {
        return new Finding(Severity.NOTE, code, place, message, "", null);
    }

    /**
     * Returns a finding that deserves a second look.
     *
     * @param code a short stable code in lower case with hyphens, for programs
     * @param place where, in the builder's words
     * @param message what is found, with the value and its unit
     * @return the finding
     */
    public static Finding warning(String code, String place, String message) {
        return new Finding(Severity.WARNING, code, place, message, "", null);
    }

    /**
     * Returns a finding that keeps the fence from being built as described.
     *
     * @param code a short stable code in lower case with hyphens, for programs
     * @param place where, in the builder's words
     * @param message what is found, with the value and its unit
     * @return the finding
     */
    public static Finding blocker(String code, String place, String message) {
        return new Finding(Severity.BLOCKER, code, place, message, "", null);
    }

    /**
     * Returns this finding with the way out.
     *
     * @param newRemedy what the builder or designer can do about it
     * @return a finding with that remedy
     */
    public Finding withRemedy(String newRemedy) {
        return new Finding(severity, code, place, message, newRemedy, source);
    }

    /**
     * Returns this finding with the source of the rule behind it.
     *
     * @param newSource where the rule comes from
     * @return a finding with that source
     */
    public Finding withSource(Citation newSource) {
        return new Finding(severity, code, place, message, remedy, Objects.requireNonNull(newSource, "newSource"));
    }

    /**
     * Returns this finding placed within something larger, such as bay 3 in side 2.
     *
     * @param whole the larger place
     * @return a finding whose place starts with it
     */
    public Finding within(String whole) {
        return new Finding(severity, code, whole + ", " + place, message, remedy, source);
    }

    /**
     * Returns this finding at another place.
     *
     * @param newPlace where, in the builder's words
     * @return a finding at that place
     */
    public Finding at(String newPlace) {
        return new Finding(severity, code, newPlace, message, remedy, source);
    }

    /**
     * Returns how much it matters.
     *
     * @return the severity
     */
    public Severity severity() {
        return severity;
    }

    /**
     * Returns the code that programs test for.
     *
     * @return the code, lower case with hyphens
     */
    public String code() {
        return code;
    }

    /**
     * Returns where it is.
     *
     * @return the place
     */
    public String place() {
        return place;
    }

    /**
     * Returns what is found.
     *
     * @return a sentence part with the value and its unit
     */
    public String message() {
        return message;
    }

    /**
     * Returns the way out.
     *
     * @return what can be done, or empty
     */
    public String remedy() {
        return remedy;
    }

    /**
     * Returns where the rule behind it comes from.
     *
     * @return the source, if there is one
     */
    public Optional<Citation> source() {
        return Optional.ofNullable(source);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Finding that
                && severity == that.severity
                && code.equals(that.code)
                && place.equals(that.place)
                && message.equals(that.message)
                && remedy.equals(that.remedy)
                && Objects.equals(source, that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(severity, code, place, message, remedy, source);
    }

    @Override
    public String toString() {
        return severity + " " + code + " at " + place + ": " + message
                + (remedy.isEmpty() ? "" : "; " + remedy)
                + (source == null ? "" : " [" + source + "]");
    }
}
