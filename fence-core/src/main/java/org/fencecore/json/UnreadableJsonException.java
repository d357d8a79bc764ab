package org.fencecore.json;

/**
 * Says that a JSON text cannot be read: the first thing that is wrong with it, and where in the text that is.
 *
 * <p>Example: {@code /site/gates/0/clearOpening (line 14, column 25): length "4 cubits" cannot be read: ...}
 */
public final class UnreadableJsonException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** The field that is wrong, as a JSON Pointer. */
    private final String path;

    /** The line where its value begins. */
    private final int line;

    /** The column where its value begins. */
    private final int column;

    /** What is wrong. */
    private final String problem;

    UnreadableJsonException(String path, int line, int column, String problem) {
        super((path.isEmpty() ? "the document" : path) + " (line " + line + ", column " + column + "): " + problem);
        this.path = path;
        this.line = line;
        this.column = column;
        this.problem = problem;
    }

    /**
     * Returns the field that is wrong.
     *
     * @return a JSON Pointer (RFC 6901), such as {@code /style/boardLumber/width}; empty for the document as a whole
     */
    public String path() {
        return path;
    }

    /**
     * Returns the line where the field's value begins.
     *
     * @return the line, from 1
     */
    public int line() {
        return line;
    }

    /**
     * Returns the column where the field's value begins.
     *
     * @return the column, from 1
     */
    public int column() {
        return column;
    }

    /**
     * Returns what is wrong, without the place.
     *
     * @return a sentence, with what is allowed
     */
    public String problem() {
        return problem;
    }
}
