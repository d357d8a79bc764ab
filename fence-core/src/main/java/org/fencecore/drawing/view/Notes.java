package org.fencecore.drawing.view;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fencecore.PostKind;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;

/** How the drawings of a fence put things. */
final class Notes {

    private Notes() {}

    static String word(PostKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /** What a sheet must say first if what it shows cannot be built. */
    static Optional<String> blockers(List<Finding> findings) {
        List<Finding> blockers = findings.stream()
                .filter(finding -> finding.severity() == Severity.BLOCKER)
                .toList();
        if (blockers.isEmpty()) {
            return Optional.empty();
        }
        Finding first = blockers.get(0);
        return Optional.of("DO NOT BUILD: " + count(blockers.size(), "problem") + " to settle first. At "
                + first.place() + ", " + first.message()
                + (blockers.size() == 1 ? "." : "; the others are listed with the plan."));
    }
}
