package org.fencecore.slope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
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
 * between two such posts the joints are spread so that as few posts as can be carry more than one, and among those
 * layouts the pieces are as few as can be. A piece runs no further than its stick and the number of bays allow. Rails
 * between the posts are a piece for each bay.
 *
 * <p>On the face of the posts a piece runs from the middle of a post to the middle of another, at both ends of the run to
 * the outer edge of the end post. All ends are cut plumb.
 *
 * <p>Example: three rails over four level bays of 5 ft from sticks of 16 ft, three bays at most.
 *
 * <pre>{@code
 * RailPieces pieces = RailPieces.lay(fit, RailSpec.builder().build(), RailJoints.builder().build());
 * pieces.pieces().size();     // 6: each rail in two pieces
 * pieces.jointsAt(1);         // 1, and so at posts 2 and 3: no two on one post
 * }</pre>
 */
public final class RailPieces {

    private final SlopeFit fit;
    private final RailSpec rails;
    private final RailJoints joints;
    private final int[] jointsAt;
    private final List<RailPiece> pieces;

    private RailPieces(SlopeFit fit, RailSpec rails, RailJoints joints) {
        this.fit = Objects.requireNonNull(fit, "fit");
        this.rails = Objects.requireNonNull(rails, "rails");
        this.joints = Objects.requireNonNull(joints, "joints");
        this.jointsAt = new int[fit.postCount()];
        this.pieces = new ArrayList<>();
    }

    /**
     * Cuts the rails of a run into pieces.
     *
     * @param fit how the run meets the ground
     * @param rails how many rails there are, and how deep
     * @param joints how they are cut
     * @return the pieces
     */
    public static RailPieces lay(SlopeFit fit, RailSpec rails, RailJoints joints) {
        RailPieces laid = new RailPieces(fit, rails, joints);
        int from = 0;
        for (int post = 1; post < fit.postCount(); post++) {
            if (fit.isNail(post) || joints.isBetweenPosts()) {
                laid.straight(from, post);
                from = post;
            }
        }
        laid.pieces.sort(Comparator.comparingInt(RailPiece::rail).thenComparingInt(RailPiece::fromPost));
        return laid;
    }

    private void straight(int from, int to) {
        boolean[][] cuts =
                Stagger.spread(rails.rails(), to - from, joints.mostBays(), (a, b) -> fits(from + a, from + b));
        for (int rail = 0; rail < cuts.length; rail++) {
            int begin = from;
            for (int post = from + 1; post <= to; post++) {
                if (post == to || cuts[rail][post - from]) {
                    pieces.add(piece(rail, begin, post));
                    begin = post;
                    jointsAt[post] += post < fit.postCount() - 1 && !joints.isBetweenPosts() ? 1 : 0;
                }
            }
        }
    }

    private boolean fits(int from, int to) {
        return piece(0, from, to).stick().compareTo(joints.longestStick()) <= 0;
    }

    private RailPiece piece(int rail, int from, int to) {
        Length half = joints.postWidth().dividedBy(2);
        Length run = fit.station(to).minus(fit.station(from));
        Length trim = Length.ZERO;
        if (joints.isBetweenPosts()) {
            run = run.minus(joints.postWidth());
        } else {
            int ends = (from == 0 ? 1 : 0) + (to == fit.postCount() - 1 ? 1 : 0);
            run = run.plus(half.times(ends));
            trim = joints.trim().times(ends);
        }
        Slope grade = Slope.of(
                fit.bay(to - 1).bottomAtEnd().minus(fit.bay(from).bottomAtStart()),
                fit.station(to).minus(fit.station(from)));
        return new RailPiece(rail, from, to, Length.max(run, Length.ZERO), grade, rails.railDepth(), trim);
    }

    /**
     * Returns the pieces, rail by rail from the bottom and along the run.
     *
     * @return the pieces, unmodifiable
     */
    public List<RailPiece> pieces() {
        return List.copyOf(pieces);
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
     * Returns what the builder should know, in order of the posts:
     *
     * <ul>
     *   <li>{@code joints-on-one-post}, a note: several rails are joined on one post although the line runs on straight
     *       there, since the sticks are too short to avoid it;
     *   <li>{@code rail-over-stick}, a blocker: a piece of a single bay is longer than the longest stick.
     * </ul>
     *
     * @return the findings; empty if all is well
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (int post = 1; post < jointsAt.length; post++) {
            if (!fits(post - 1, post)) {
                findings.add(Finding.blocker(
                                "rail-over-stick",
                                "bay from " + Written.station(fit.station(post - 1)) + " to "
                                        + Written.station(fit.station(post)),
                                "its rails need a stick of "
                                        + Written.tape(piece(0, post - 1, post).stick()) + ", and the longest is "
                                        + Written.stock(joints.longestStick()))
                        .withRemedy("use longer sticks, or set a post in between"));
            }
            if (jointsAt[post] > 1 && !fit.isNail(post)) {
                findings.add(Finding.note(
                                "joints-on-one-post",
                                "post at " + Written.station(fit.station(post)),
                                jointsAt[post] + " rails are joined here")
                        .withRemedy("use longer sticks, so that the joints can be spread over more posts"));
            }
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
