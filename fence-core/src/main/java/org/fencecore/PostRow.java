package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.layout.PostSpacing;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * Where the posts of one line stand, and what goes between them: a gate, or a stretch of fence with as many bays as there
 * are posts from its first to its last.
 */
final class PostRow {

    private static final int MOST_BAYS = 50_000;
    private static final int MOST_MOVED_BAYS = 10_000;
    private static final int MOST_BARRED = 200;

    /**
     * A place for a post.
     *
     * @param number its number on the plan
     * @param kind what the post does
     * @param station its station along the line
     * @param centre its middle
     * @param node the number of the end of the line it stands at, shared with the line that is met there
     */
    record Spot(int number, PostKind kind, Length station, Point centre, OptionalInt node) {}

    /**
     * What goes between two posts.
     *
     * @param first the index of the first post
     * @param last the index of the last post
     * @param gate the gate, if it is one
     * @param spacing how the posts between were spaced, if they were
     * @param isLeftOut whether nothing can be built there, which a finding tells
     */
    record Part(
            int first, int last, Optional<GatePlacing.Placed> gate, Optional<PostSpacing> spacing, boolean isLeftOut) {

        Part leftOut() {
            return new Part(first, last, Optional.empty(), Optional.empty(), true);
        }

        List<Finding> findings() {
            // Of an end post that stands where it may not, the obstacle itself has more to say; and a stretch of one
            // bay is
            // as long as it is.
            return spacing.map(PostSpacing::findings).orElse(List.of()).stream()
                    .filter(finding -> !finding.code().equals("end-post-forbidden"))
                    .filter(finding -> last - first > 1 || !finding.code().equals("bay-short"))
                    .toList();
        }
    }

    private final List<Spot> spots;
    private final List<Part> parts;

    PostRow(List<Spot> spots, List<Part> parts) {
        this.spots = List.copyOf(spots);
        this.parts = List.copyOf(parts);
    }

    List<Spot> spots() {
        return spots;
    }

    List<Part> parts() {
        return parts;
    }

    /**
     * Goes along a line and sets its posts.
     *
     * @param forbidden where no line post may stand, in stations along the line
     * @param numbers gives the posts their numbers
     */
    static PostRow lay(
            FenceLine line,
            List<GatePlacing.Placed> gates,
            FenceStyle style,
            List<Interval> forbidden,
            PostNumbers numbers,
            Findings findings) {
        Laying laying = new Laying(line, style, forbidden, numbers, findings);
        laying.lay(gates);
        return new PostRow(laying.spots, laying.parts);
    }

    /** Goes along a line from fixed post to fixed post; what lies between two is a stretch or an opening. */
    private static final class Laying {

        private final FenceLine line;
        private final FenceStyle style;
        private final List<Interval> forbidden;
        private final PostNumbers numbers;
        private final Findings findings;
        private final List<Spot> spots = new ArrayList<>();
        private final List<Part> parts = new ArrayList<>();

        Laying(FenceLine line, FenceStyle style, List<Interval> forbidden, PostNumbers numbers, Findings findings) {
            this.line = line;
            this.style = style;
            this.forbidden = forbidden;
            this.numbers = numbers;
            this.findings = findings;
        }

        void lay(List<GatePlacing.Placed> gates) {
            Length half = style.postLumber().width().dividedBy(2);
            Length end = line.postLine.length();
            setEnd(line.start, line.startNode, Length.ZERO);
            for (GatePlacing.Placed gate : gates) {
                fenceTo(gate.opening().start().minus(half), false);
                int first = spots.size() - 1;
                Length beyond = gate.opening().end().plus(half);
                if (beyond.equals(end)) {
                    setEnd(line.end, line.endNode, end);
                } else {
                    set(PostKind.GATE, beyond);
                }
                parts.add(new Part(first, first + 1, Optional.of(gate), Optional.empty(), false));
            }
            fenceTo(end, true);
        }

        private void set(PostKind kind, Length station) {
            spots.add(new Spot(numbers.next(), kind, station, line.postLine.pointAt(station), OptionalInt.empty()));
        }

        private void setEnd(Optional<Corner> corner, int node, Length station) {
            PostKind kind = corner.isPresent() ? PostKind.CORNER : PostKind.END;
            spots.add(new Spot(numbers.at(node), kind, station, line.postLine.pointAt(station), OptionalInt.of(node)));
        }

        /** Sets the posts of a stretch from the last post to a fixed one there; nothing when that is the last post. */
        private void fenceTo(Length station, boolean isEnd) {
            int first = spots.size() - 1;
            Length here = spots.get(first).station();
            if (station.equals(here)) {
                return;
            }
            Length length = station.minus(here);
            Optional<PostSpacing> spacing = Optional.empty();
            List<Interval> barred = forbidden.stream()
                    .filter(zone ->
                            zone.end().compareTo(here) > 0 && zone.start().compareTo(station) < 0)
                    .map(zone -> zone.shiftedBy(here.negated()))
                    .toList();
            boolean tooLong = length.wholePieces(style.postSpacing().fullBay())
                            >= (barred.isEmpty() ? MOST_BAYS : MOST_MOVED_BAYS)
                    || barred.size() > MOST_BARRED;
            if (tooLong) {
                findings.add(Finding.blocker(
                                "too-many-posts",
                                line.name,
                                "a stretch of " + Written.feet(length)
                                        + " would take too many bays, or has too much in its way")
                        .withRemedy("plan it in parts, or set the posts further apart"));
            } else {
                PostSpacing posts = PostSpacing.fit(length, style.postSpacing(), barred);
                posts.stations().subList(1, posts.bayCount()).forEach(along -> set(PostKind.LINE, here.plus(along)));
                spacing = Optional.of(posts);
            }
            if (isEnd) {
                setEnd(line.end, line.endNode, station);
            } else {
                set(PostKind.GATE, station);
            }
            parts.add(new Part(first, spots.size() - 1, Optional.empty(), spacing, tooLong));
        }
    }
}
