package org.fencecore.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** Puts a spacing in words: how it is worked out, and what is wrong with it. */
final class PostExplanation {

    private static final String PLACE = "posts";

    private final PostSpacing spacing;
    private final PostSpacingSpec spec;
    private final ForbiddenStretches forbidden;
    /** The first forbidden stretch that a post would stand in if none had moved; -1 if none. */
    private final int hit;

    PostExplanation(PostSpacing spacing, ForbiddenStretches forbidden, int hit) {
        this.spacing = spacing;
        this.spec = spacing.spec();
        this.forbidden = forbidden;
        this.hit = hit;
    }

    // ---- what is wrong ----

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < forbidden.count(); i++) {
            ends(i, findings);
            tooWide(i, findings);
        }
        tooShort(findings);
        if (hit >= 0) {
            moved(findings);
        }
        return List.copyOf(findings);
    }

    private void ends(int index, List<Finding> findings) {
        boolean atStart = forbidden.coversStart(index);
        boolean atEnd = forbidden.coversEnd(index);
        if (atStart || atEnd) {
            findings.add(Finding.blocker(
                            "end-post-forbidden",
                            PLACE,
                            "the "
                                    + (atStart
                                            ? atEnd ? "first and the last post stand" : "first post stands"
                                            : "last post stands")
                                    + " where no post may, " + stretch(index))
                    .withRemedy("move the post at that end, or what keeps it out"));
        }
    }

    private void tooWide(int index, List<Finding> findings) {
        Length wide = forbidden.interval(index).length();
        if (wide.compareTo(spec.fullBay()) > 0) {
            findings.add(Finding.blocker(
                            "forbidden-too-wide",
                            PLACE,
                            "no post may stand " + stretch(index) + ": the bay across is "
                                    + Written.tape(wide, Rounding.UP) + " or more, over the " + longest())
                    .withRemedy(
                            "span it with a beam or longer rails, have the line there found and marked more closely,"
                                    + " or move the fence")
                    .withSource(Citation.GEOMETRY));
        }
    }

    private String longest() {
        return spec.fullBay().equals(spec.maximum())
                ? "maximum of " + Written.tape(spec.maximum())
                : "full bay of " + Written.tape(spec.fullBay()) + " that suits the rail stock";
    }

    private void tooShort(List<Finding> findings) {
        // Rounded down, a bay is under a whole number of nanometres exactly when the true one is.
        if (spacing.isAtLeast(spec.minimum())) {
            return;
        }
        int bays = spacing.bayCount();
        Length shortest = spacing.shortestBay();
        String what = spacing.isEven()
                ? bays + (bays == 1 ? " bay of " : " bays are ")
                : "the shortest of " + bays + " bays is ";
        findings.add(Finding.note(
                        "bay-short",
                        PLACE,
                        what + Written.tape(shortest) + ", under the minimum of " + Written.tape(spec.minimum()) + "; "
                                + why())
                .withRemedy(
                        hit < 0
                                ? "lengthen the stretch by moving an end post, or accept other limits"
                                : "move an end post, accept other limits, or narrow what keeps the posts out")
                .withSource(Citation.GEOMETRY));
    }

    private String why() {
        if (hit >= 0) {
            List<String> culprits = culprits();
            return culprits.isEmpty()
                    ? "it is all that the " + forbidden.count() + " forbidden stretches leave together"
                    : "it could be kept if posts were allowed " + String.join(", or ", culprits);
        }
        int bays = spacing.bayCount();
        return bays == 1
                ? "the stretch itself is no longer than that"
                : (bays - 1) + " would be " + Written.tape(spacing.length().dividedBy(bays - 1L), Rounding.UP)
                        + ", over the " + longest();
    }

    /** The forbidden stretches of which any one makes the minimum impossible: without it there would be a way. */
    private List<String> culprits() {
        List<String> culprits = new ArrayList<>();
        for (int i = 0; i < forbidden.count(); i++) {
            ForbiddenStretches others = forbidden.without(i);
            if (!PostSearch.search(spec, spec.minimum().nanometres(), others).isEmpty()) {
                culprits.add(stretch(i));
            }
        }
        return culprits;
    }

    private void moved(List<Finding> findings) {
        long fewest = new BayPattern(spec, spec.rule()).fewest(spacing.length().nanometres());
        long more = spacing.bayCount() - fewest;
        findings.add(Finding.note(
                        "posts-moved",
                        PLACE,
                        "a post would have stood " + stretch(hit) + ", where none may; bays are now from "
                                + Written.tape(spacing.shortestBay()) + " to " + Written.tape(spacing.longestBay())
                                + (more == 0 ? "" : ", with " + more + (more == 1 ? " post more" : " posts more")))
                .withSource(Citation.GEOMETRY));
    }

    private String stretch(int index) {
        return "from " + Written.station(forbidden.interval(index).start()) + " to "
                + Written.station(forbidden.interval(index).end());
    }

    // ---- how it is worked out ----

    Worksheet worksheet(List<EvenBays> groups) {
        Length length = spacing.length();
        Worksheet.Builder sheet = Worksheet.titled("Post spacing")
                .given("length", length, Written.tape(length))
                .given("maximum spacing", spec.maximum(), Written.tape(spec.maximum()))
                .given("minimum spacing", spec.minimum(), Written.tape(spec.minimum()));
        String longest = "maximum spacing";
        if (spec.railStock().isPresent()) {
            longest = "full bay";
            Length stock = spec.railStock().get();
            long toAStick = Math.round(stock.ratioTo(spec.fullBay()).value());
            sheet.given("rail stock", stock, Written.stock(stock))
                    .line(
                            longest,
                            "rail stock / whole bays to a stick, not over the maximum",
                            Written.feet(stock) + " / " + toAStick,
                            spec.fullBay(),
                            Written.tape(spec.fullBay()),
                            Citation.COMMON_PRACTICE);
        }
        for (int i = 0; i < forbidden.count(); i++) {
            sheet.given("no post", forbidden.interval(i), stretch(i));
        }
        long fewest = new BayPattern(spec, spec.rule()).fewest(length.nanometres());
        sheet.line(
                hit < 0 ? "bays" : "bays if posts could stand anywhere",
                "length / " + longest + ", rounded up",
                Written.feet(length) + " / " + Written.feet(spec.fullBay()),
                (int) fewest,
                Long.toString(fewest),
                Citation.COMMON_PRACTICE);
        return groups.size() == 1 ? even(sheet) : uneven(sheet, groups);
    }

    private Worksheet even(Worksheet.Builder sheet) {
        return sheet.line(
                        "spacing",
                        "length / bays",
                        Written.feet(spacing.length()) + " / " + spacing.bayCount(),
                        spacing.spacing(),
                        Written.tape(spacing.spacing()),
                        Citation.GEOMETRY)
                .build();
    }

    private Worksheet uneven(Worksheet.Builder sheet, List<EvenBays> groups) {
        String rule = spec.rule().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        sheet.line(
                "bays",
                "the fewest that keep clear, then the most even; " + rule,
                "",
                spacing.bayCount(),
                Integer.toString(spacing.bayCount()),
                Citation.GEOMETRY);
        int first = 1;
        for (EvenBays group : groups) {
            Length from = Length.ofNanometres(group.start());
            Length to = Length.ofNanometres(group.end());
            int last = first + group.bays() - 1;
            sheet.line(
                    first == last ? "bay " + first : "bays " + first + " to " + last,
                    "(to - from) / bays",
                    "(" + Written.feet(to) + " - " + Written.feet(from) + ") / " + group.bays(),
                    PostSpacing.spacing(group),
                    Written.tape(PostSpacing.spacing(group)),
                    Citation.GEOMETRY);
            first = last + 1;
        }
        return sheet.line(
                        "longest bay",
                        "",
                        "",
                        spacing.longestBay(),
                        Written.tape(spacing.longestBay()),
                        Citation.GEOMETRY)
                .build();
    }
}
