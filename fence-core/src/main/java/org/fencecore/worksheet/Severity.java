package org.fencecore.worksheet;

/** How much a finding matters, from least to most. */
public enum Severity {
    /** Worth knowing; nothing has to change. */
    NOTE,
    /** The fence can be built, but something about it deserves a second look. */
    WARNING,
    /** It cannot be built as described. */
    BLOCKER
}
