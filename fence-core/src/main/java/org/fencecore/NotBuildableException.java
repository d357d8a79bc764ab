package org.fencecore;

import java.util.List;
import java.util.stream.Collectors;
import org.fencecore.worksheet.Finding;

/** Says that a plan cannot be built as described, and lists every finding that stands in the way. */
public final class NotBuildableException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Finding> blockers;

    NotBuildableException(List<Finding> blockers) {
        super(blockers.stream()
                .map(Finding::toString)
                .collect(Collectors.joining("\n  ", "the fence cannot be built as described:\n  ", "")));
        this.blockers = blockers;
    }

    /**
     * Returns what stands in the way.
     *
     * @return the findings of severity blocker, at least one, unmodifiable; empty after deserialization
     */
    public List<Finding> blockers() {
        return blockers;
    }
}
