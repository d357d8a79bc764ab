package org.fencecore.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.fencecore.Bay;
import org.fencecore.BayRail;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.GateBay;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.gate.GateBrace;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailPiece;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The planner and the plain arithmetic it is timed against, written apart, give the same fence. */
class PlainFenceTest {

    /** Lengths may differ by a millionth of an inch, 25 nm: the planner's are whole nanometres. */
    private static final Offset<Double> INCHES = within(1e-6);

    /** Grades and angles follow from lengths of whole nanometres over bays of 3 ft and more. */
    private static final Offset<Double> GRADE = within(1e-7);

    private static final double CUBIC_INCHES_PER_CUBIC_METRE = 1 / (0.0254 * 0.0254 * 0.0254);

    @ParameterizedTest
    @ValueSource(ints = {50, 200, 500, 5000, 26400, 528000})
    void planAndPlainArithmeticAgree(int feet) {
        FenceJob job = FenceJob.ofFeet(feet);
        FencePlan plan = FencePlanner.plan(job.site(), FenceJob.style()).requireBuildable();
        PlainFence plain = PlainFence.plan(job);
        postsAgree(plan, plain);
        baysAgree(plan, plain);
        railsAgree(plan, plain);
        boardsAgree(plan, plain);
        gatesAgree(plan, plain);
    }

    private static void postsAgree(FencePlan plan, PlainFence plain) {
        assertThat(plan.posts()).hasSize(plain.posts);
        for (int i = 0; i < plain.posts; i++) {
            Post post = plan.posts().get(i);
            assertThat(post.ground().inches()).as("ground at %s", post).isCloseTo(plain.ground[i], INCHES);
            assertThat(post.top().inches()).as("top of %s", post).isCloseTo(plain.top[i], INCHES);
            assertThat(post.exposed().inches()).isCloseTo(plain.top[i] - plain.ground[i], INCHES);
            // Both round up to the whole inch.
            assertThat(post.footing().embedment().inches())
                    .as("embedment of %s", post)
                    .isEqualTo(plain.embedment[i]);
            assertThat(post.footing().concrete().cubicMetres() * CUBIC_INCHES_PER_CUBIC_METRE)
                    .as("concrete at %s", post)
                    .isCloseTo(plain.concrete[i], within(1e-6));
        }
        for (Run run : plan.runs()) {
            List<Post> own = run.posts();
            // The first post of a run is the corner post that the run before has counted.
            for (Post post : own.subList(1, own.size())) {
                assertThat(run.station(post).inches())
                        .as("station of %s", post)
                        .isCloseTo(plain.station[post.number() - 1], INCHES);
            }
        }
    }

    private static void baysAgree(FencePlan plan, PlainFence plain) {
        List<Bay> bays = plan.bays();
        assertThat(bays).hasSize(plain.bays);
        for (int i = 0; i < plain.bays; i++) {
            Bay bay = bays.get(i);
            assertThat(bay.slope().grade().ratio().value())
                    .as("grade of %s", bay)
                    .isCloseTo(plain.grade[i], GRADE);
            assertThat(bay.slope().clearance().min().inches()).isCloseTo(plain.leastGapUnder[i], INCHES);
            assertThat(bay.slope().clearance().max().inches()).isCloseTo(plain.mostGapUnder[i], INCHES);
            for (BayRail rail : bay.rails()) {
                double[] marks = plain.marks[i];
                int start = 2 * (rail.number() - 1);
                int end = start + 2 * bay.rails().size();
                assertThat(rail.from().bottom().inches()).isCloseTo(marks[start], INCHES);
                assertThat(rail.from().top().inches()).isCloseTo(marks[start + 1], INCHES);
                assertThat(rail.to().bottom().inches()).isCloseTo(marks[end], INCHES);
                assertThat(rail.to().top().inches()).isCloseTo(marks[end + 1], INCHES);
            }
        }
    }

    /** The plain program cuts a piece for each bay; pieces of several bays are as long as those together. */
    private static void railsAgree(FencePlan plan, PlainFence plain) {
        int before = 0;
        for (Stretch stretch : plan.stretches()) {
            for (RailPiece piece : stretch.railPieces().orElseThrow().pieces()) {
                double length = 0;
                for (int bay = piece.fromPost(); bay < piece.toPost(); bay++) {
                    length += plain.railLength[before + bay];
                    assertThat(piece.endCut().radians()).isCloseTo(plain.endCut[before + bay], GRADE);
                }
                assertThat(piece.length().inches()).as("%s, %s", stretch, piece).isCloseTo(length, INCHES);
            }
            before += stretch.bays().size();
        }
    }

    private static void boardsAgree(FencePlan plan, PlainFence plain) {
        List<Stretch> stretches = plan.stretches();
        assertThat(stretches).hasSize(plain.stretches);
        for (int i = 0; i < plain.stretches; i++) {
            Stretch stretch = stretches.get(i);
            assertThat(stretch.boarded().start().inches()).isCloseTo(plain.boardStart[i], INCHES);
            assertThat(stretch.boardsAtPosts())
                    .as("boards at posts, %s", stretch)
                    .hasSize(plain.boardsAtPosts[i]);
            double strips = stretch.boardsAtPosts().stream()
                    .mapToDouble(board -> board.before().plus(board.after()).inches())
                    .sum();
            assertThat(strips).isCloseTo(plain.stripsAtPosts[i], within(1e-6 * plain.boards[i]));
            rowsAgree(stretch.boards().orElseThrow(), plain.boards[i], plain.gap[i]);
        }
    }

    private static void rowsAgree(BoardLayout layout, int front, double gap) {
        assertThat(layout.row(Face.OUTSIDE).count()).isEqualTo(front);
        assertThat(layout.row(Face.INSIDE).count()).isEqualTo(front - 1);
        for (BoardPlacement board : layout.boards()) {
            double behind = board.face() == Face.OUTSIDE ? 0 : 5.5 - (5.5 - gap) / 2;
            double left = behind + board.index() * (5.5 + gap);
            assertThat(board.isFull()).isTrue();
            assertThat(board.left().inches()).isCloseTo(left, INCHES);
            assertThat(board.right().inches()).isCloseTo(left + 5.5, INCHES);
        }
    }

    private static void gatesAgree(FencePlan plan, PlainFence plain) {
        List<GateBay> gates = plan.gates();
        assertThat(gates).hasSize(plain.gates);
        for (int i = 0; i < plain.gates; i++) {
            GateBay gate = gates.get(i);
            assertThat(gate.leaf().width().inches()).isCloseTo(plain.leafWidth[i], INCHES);
            assertThat(gate.leaves().get(0).boardBottom().inches()).isCloseTo(plain.leafBottom[i], INCHES);
            rowsAgree(gate.leaves().get(0).boards().orElseThrow(), plain.leafBoards[i], plain.leafGap[i]);
            assertThat(gate.leaf().braces()).hasSize(1);
            GateBrace brace = gate.leaf().braces().get(0);
            assertThat(brace.length().inches()).isCloseTo(plain.braceLength[i], INCHES);
            assertThat(brace.rise().radians()).isCloseTo(plain.braceRise[i], GRADE);
        }
    }

    @Test
    void goingThroughTheBoardsAddsUpToTheSame() {
        BoardsBenchmark programs = new BoardsBenchmark();
        double inches = programs.doubles();
        assertThat(programs.placements() / 25_400_000.0).isCloseTo(inches, within(1e-6 * programs.count()));
        assertThat(programs.placementsAsLengths().nanometres()).isEqualTo(programs.placements());
        assertThat(programs.placementsByRow()).isEqualTo(programs.placements());
        // Halves of a nanometre may go either way, at two edges of each board.
        assertThat(Math.abs(programs.nanometres() - programs.placements())).isLessThan(2L * programs.count());
    }

    @Test
    void goingThroughAllBoardsOfThePlanMeetsThoseOfTheGatesToo() {
        BoardsBenchmark programs = new BoardsBenchmark();
        FencePlan plan = FencePlanner.plan(FenceJob.ofFeet(5000).site(), FenceJob.style());
        long gates = 0;
        for (GateBay gate : plan.gates()) {
            for (BoardPlacement board :
                    gate.leaves().get(0).boards().orElseThrow().boards()) {
                gates += board.left().nanometres() + board.right().nanometres();
            }
        }
        assertThat(programs.boardsOfThePlan()).isEqualTo(programs.placements() + gates);
    }

    @Test
    void aMillionBoardsAreAtTheVeryPlacesOfThePlainLoops() {
        MillionBoardsBenchmark programs = new MillionBoardsBenchmark();
        assertThat(programs.count()).isEqualTo(2_000_001);
        assertThat(programs.oneRow()).isEqualTo(programs.plainOneRow());
        assertThat(programs.twoRows()).isEqualTo(programs.plainTwoRows());
        assertThat(programs.fitMillion().count()).isEqualTo(1_000_000);
        assertThat(programs.fitTen().count()).isEqualTo(10);
    }
}
