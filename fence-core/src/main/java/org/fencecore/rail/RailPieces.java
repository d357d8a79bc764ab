package org.fencecore.rail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.fencecore.geometry.Interval;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.SlopeFit;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The rails of a run cut into pieces that are joined on posts.
 *
 * <p>Every rail is joined where the line of the fence bends or steps, since a stick does not. On a straight stretch
 * between two such posts the joints are spread so that as few posts as can be carry more than one, among those layouts
 * the pieces are as few as can be, and among those the joints are as even as can be. A piece runs no further than its
 * stick and the number of bays allow. Rails between the posts are a piece for each bay.
 *
 * <p>On the face of the posts a piece runs from the middle of a post to the middle of another, at both ends of the run as
 * far as it is told: to the outer edge of the end post, or past a corner. All ends are cut plumb.
 *
 * <p>Example: three rails over four level bays of 5 ft from sticks of 16 ft, three bays at most.
 *
 * <pre>{@code
 * RailPieces pieces = RailPieces.lay(fit, RailSpec.builder().build(), Length.ofInches(3.5));
 * pieces.pieces().size();     // 6: each rail in two pieces
 * pieces.jointsAt(1);         // 1, and so at posts 2 and 3: no two on one post
 * }</pre>
 */
public final class RailPieces {

    private final List<FittedBay> bays;
    /** Where the line bends or steps, and its end. */
    private final Set<Length> bends;

    private final RailSpec rails;
    private final Interval reach;
    private final Length half;
    private final int[] jointsAt;
    private final List<RailPiece> pieces;

    private RailPieces(SlopeFit fit, RailSpec rails, Interval reach, Length postWidth) {
        this.bays = fit.bays();
        this.bends = fit.strings().stream().map(Interval::end).collect(Collectors.toUnmodifiableSet());
        this.rails = Objects.requireNonNull(rails, "rails");
        this.reach = reach;
        this.half = postWidth.dividedBy(2);
        this.jointsAt = new int[bays.size() + 1];
        this.pieces = new ArrayList<>();
        if (!postWidth.isPositive()) {
            throw new IllegalArgumentException("postWidth was " + postWidth + "; it must be over 0");
        }
        if (reach.start().compareTo(bays.get(0).end()) >= 0
                || reach.end().compareTo(bays.get(bays.size() - 1).start()) <= 0) {
            throw new IllegalArgumentException("reach of the rails was " + reach
                    + "; it must begin in the first bay or before it and end in the last or beyond it");
        }
    }

    /**
     * Cuts the rails of a run that end at the outer edges of its end posts.
     *
     * @param fit how the run meets the ground
     * @param rails how many rails there are, how deep, and how they are cut
     * @param postWidth how wide the posts are along the run, over zero
     * @return the pieces
     * @throws IllegalArgumentException if the width is not over zero
     */
    public static RailPieces lay(SlopeFit fit, RailSpec rails, Length postWidth) {
        Length half = postWidth.dividedBy(2);
        List<FittedBay> bays = fit.bays();
        Interval reach = Interval.of(
                bays.get(0).start().minus(half), bays.get(bays.size() - 1).end().plus(half));
        return lay(fit, rails, reach, postWidth);
    }

    /**
     * Cuts the rails of a run that reach from one station to another, as past a corner post to the rails of another run.
     *
     * @param fit how the run meets the ground
     * @param rails how many rails there are, how deep, and how they are cut
     * @param reach from where to where rails on the face of the posts run; of no account for rails between the posts
     * @param postWidth how wide the posts are along the run, over zero
     * @return the pieces
     * @throws IllegalArgumentException if the width is not over zero, or if the reach leaves out a whole bay
     */
    public static RailPieces lay(SlopeFit fit, RailSpec rails, Interval reach, Length postWidth) {
        RailPieces laid = new RailPieces(fit, rails, reach, postWidth);
        int from = 0;
        for (int post = 1; post <= laid.bays.size(); post++) {
            if (laid.bends.contains(laid.station(post)) || rails.isBetweenPosts()) {
                laid.straight(from, post);
                from = post;
            }
        }
        laid.pieces.sort(Comparator.comparingInt(RailPiece::rail).thenComparingInt(RailPiece::fromPost));
        return laid;
    }

    private Length station(int post) {
        return post == 0 ? bays.get(0).start() : bays.get(post - 1).end();
    }

    private void straight(int from, int to) {
        boolean[][] cuts =
                Stagger.spread(rails.rails(), to - from, rails.mostBays(), (a, b) -> fits(from + a, from + b));
        for (int rail = 0; rail < cuts.length; rail++) {
            int begin = from;
            for (int post = from + 1; post <= to; post++) {
                if (post == to || cuts[rail][post - from]) {
                    pieces.add(piece(rail, begin, post));
                    begin = post;
                    jointsAt[post] += post < bays.size() && !rails.isBetweenPosts() ? 1 : 0;
                }
            }
        }
    }

    private boolean fits(int from, int to) {
        return piece(0, from, to).stick().compareTo(rails.longestStick()) <= 0;
    }

    private RailPiece piece(int rail, int from, int to) {
        FittedBay firstBay = bays.get(from);
        FittedBay lastBay = bays.get(to - 1);
        Length start = firstBay.start();
        Length end = lastBay.end();
        Slope grade = Slope.of(lastBay.bottomAtEnd().minus(firstBay.bottomAtStart()), end.minus(start));
        boolean last = to == bays.size();
        Length trim = rails.trim().times((from == 0 ? 1 : 0) + (last ? 1 : 0));
        if (rails.isBetweenPosts()) {
            // Posts that touch leave nothing between them.
            Length face = Length.min(half, end.minus(start).dividedBy(2));
            start = start.plus(face);
            end = Length.max(start, end.minus(face));
            trim = Length.ZERO;
        } else {
            start = from == 0 ? reach.start() : start;
            end = last ? reach.end() : end;
        }
        return new RailPiece(rail, from, to, Interval.of(start, end), grade, rails.railDepth(), trim);
    }

    /**
     * Returns the pieces, rail by rail from the bottom and along the run.
     *
     * @return the pieces, unmodifiable
     */
    public List<RailPiece> pieces() {
        return Collections.unmodifiableList(pieces);
    }

    /**
     * Returns how many rails are joined at a post.
     *
     * @param post the number of the post, from 0
     * @return the number of joints, none at the ends of the run and for rails between posts
     * @throws IllegalArgumentException if there is no such post
     */
    public int jointsAt(int post) {
        if (post < 0 || post >= jointsAt.length) {
            throw new IllegalArgumentException("post was " + post + "; this run has " + jointsAt.length
                    + ", numbered from 0 to " + (jointsAt.length - 1));
        }
        return jointsAt[post];
    }

    /**
     * Returns the length of all pieces together.
     *
     * @return the sum of the lengths
     */
    public Length totalLength() {
        Length total = Length.ZERO;
        for (RailPiece piece : pieces) {
            total = total.plus(piece.length());
        }
        return total;
    }

    /**
     * Returns what the builder should know, bays first:
     *
     * <ul>
     *   <li>{@code rail-over-stick}, a blocker: a piece of a single bay is longer than the longest stick;
     *   <li>{@code joints-on-one-post}, a note: on some post every rail is joined although the line runs on straight
     *       there, since the sticks are too short to avoid it; not for rails of a piece for each bay.
     * </ul>
     *
     * @return the findings; empty if all is well
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        int crowded = 0;
        int first = 0;
        for (int post = 1; post < jointsAt.length; post++) {
            if (!fits(post - 1, post)) {
                findings.add(Finding.blocker(
                                "rail-over-stick",
                                "bay from " + Written.station(station(post - 1)) + " to "
                                        + Written.station(station(post)),
                                "its rails need a stick of "
                                        + Written.tape(piece(0, post - 1, post).stick()) + ", and the longest is "
                                        + Written.stock(rails.longestStick()))
                        .withRemedy("use longer sticks, or set a post in between"));
            }
            if (jointsAt[post] == rails.rails() && !bends.contains(station(post))) {
                first = crowded == 0 ? post : first;
                crowded++;
            }
        }
        if (crowded > 0 && rails.mostBays() > 1) {
            findings.add(Finding.note(
                            "joints-on-one-post",
                            "post at " + Written.station(station(first)),
                            "all " + rails.rails() + " rails are joined here"
                                    + (crowded == 1
                                            ? ""
                                            : ", and at " + (crowded - 1) + " more post" + (crowded == 2 ? "" : "s"))
                                    + ", though the fence runs on straight")
                    .withRemedy("use longer sticks, so that some rail runs past")
                    .withSource(Citation.COMMON_PRACTICE));
        }
        return List.copyOf(findings);
    }

    /**
     * Returns the pieces written out.
     *
     * @return a line for each piece; the last line is the length of all together
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Pieces of the rails");
        for (RailPiece piece : pieces) {
            Slope grade = piece.grade();
            sheet.line(
                    piece.toString(),
                    "level length * sqrt(1 + grade^2)",
                    Written.feet(piece.run()) + " * sqrt(1 + (" + Written.percent(grade) + ")^2)",
                    piece.length(),
                    Written.tape(piece.length()) + ", ends " + Written.saw(piece.endCut()) + " off square",
                    Citation.GEOMETRY);
        }
        Length total = totalLength();
        return sheet.line("all pieces", "sum", "", total, Written.feet(total), Citation.GEOMETRY)
                .build();
    }
}
