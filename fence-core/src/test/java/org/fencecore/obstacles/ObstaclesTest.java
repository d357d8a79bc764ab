package org.fencecore.obstacles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polygon;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Segment;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.junit.jupiter.api.Test;

/** A line of posts of 100 ft due east, with holes 12 in wide. */
class ObstaclesTest {

    private static final Segment POSTS = Segment.of(at(0, 0), at(100, 0));
    private static final Length HOLE = Length.ofInches(6);
    private static final Polyline GAS = Polyline.of(List.of(at(30, -50), at(30, 50)));

    private static Point at(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    private static Interval feet(double start, double end) {
        return Interval.of(Length.ofFeet(start), Length.ofFeet(end));
    }

    @Test
    void aJobIsTenLines() {
        Obstacles obstacles = Obstacles.of(List.of(
                Obstacle.utility(UtilityKind.GAS, GAS),
                Obstacle.tree(at(60, 3), Length.ofInches(9), Length.ofFeet(4.5)).withName("the oak"),
                Obstacle.hydrant(at(97, 4), Length.ofFeet(3))));

        // 24 in and 6 in either side of the mark; a triangle of 3, 4 and 4 1/2 + 1/2 ft; the hydrant is too far off.
        assertThat(obstacles.forbidden(POSTS, HOLE)).containsExactly(feet(27.5, 32.5), feet(56, 64));
        assertThat(obstacles.blocking(at(31, 0), HOLE)).hasToString("[gas line]");
        assertThat(obstacles.blocking(at(61, 0), HOLE)).hasToString("[the oak]");
        assertThat(obstacles.blocking(at(64, 0), HOLE)).isEmpty();
        assertThat(obstacles.alongFence("side 1", POSTS, Length.ofInches(3))).isEmpty();
        assertThat(obstacles.undergroundNote().message()).contains("(gas line)");
    }

    @Test
    void zonesThatOverlapAreOne() {
        Obstacle water =
                Obstacle.utility(UtilityKind.WATER, Polyline.of(List.of(at(33, -50), at(33, 50))), Length.ofInches(12));

        assertThat(water.forbidden(POSTS, HOLE)).containsExactly(feet(30, 36));
        assertThat(Obstacles.of(List.of(water, Obstacle.utility(UtilityKind.GAS, GAS)))
                        .forbidden(POSTS, HOLE))
                .containsExactly(feet(27.5, 36));
    }

    @Test
    void aPostMayStandAtTheEndOfAnInterval() {
        Obstacle gas = Obstacle.utility(UtilityKind.GAS, GAS);

        assertThat(gas.blocks(at(27.5, 0), HOLE)).isFalse();
        assertThat(gas.blocks(at(27.51, 0), HOLE)).isTrue();
        assertThat(gas.withClear(Length.ofInches(18), Citation.of("MS 811", "tolerance zone", ""))
                        .forbidden(POSTS, HOLE))
                .containsExactly(feet(28, 32));
    }

    @Test
    void aPostThatCannotMoveIsFound() {
        Obstacles obstacles = Obstacles.of(List.of(
                Obstacle.utility(UtilityKind.GAS, GAS),
                Obstacle.area(Polygon.of(List.of(at(25, -5), at(35, -5), at(35, 5), at(25, 5))))
                        .withName("drain field")));

        List<Finding> findings = obstacles.atPost("post 4", at(29, 0), HOLE);

        assertThat(findings).extracting(Finding::code).containsExactly("obstacle-at-post", "obstacle-at-post");
        assertThat(findings.get(0))
                .hasToString("BLOCKER obstacle-at-post at post 4: a hole 1' 0\" wide here comes within the 2' 0\" that"
                        + " the gas line has to itself; move the post, corner or gate until the middle of the hole is at"
                        + " least 2' 6\" from its edge, or ask the line's owner how one may dig there [Sunshine 811,"
                        + " tolerance zone, 24 in from outside edges]");
        assertThat(findings.get(1).message()).isEqualTo("a hole 1' 0\" wide here reaches into the drain field");
        assertThat(obstacles.atPost("post 5", at(50, 0), HOLE)).isEmpty();
    }

    @Test
    void theFenceItselfDoesNotPassThroughThings() {
        Obstacles obstacles = Obstacles.of(List.of(
                Obstacle.tree(at(20, 0), Length.ofInches(12), Length.ofFeet(6)),
                Obstacle.wall(Polyline.of(List.of(at(40, -9), at(40, 9))), Length.ofInches(12)),
                Obstacle.structure(Polygon.of(List.of(at(60, 0.25), at(70, 0.25), at(70, 10), at(60, 10))))
                        .withName("the shed"),
                Obstacle.hydrant(at(90, 3), Length.ofFeet(4.75)),
                Obstacle.utility(UtilityKind.GAS, GAS)));

        List<Finding> findings = obstacles.alongFence("side 1", POSTS, Length.ofInches(3));

        // The shed's wall, 3 in off, is only touched by a fence that reaches 3 in.
        assertThat(findings)
                .extracting(Finding::code)
                .containsExactly("obstacle-in-fence", "obstacle-in-fence", "obstacle-crowded");
        assertThat(findings)
                .extracting(Finding::severity)
                .containsExactly(Severity.BLOCKER, Severity.BLOCKER, Severity.WARNING);
        assertThat(findings.get(0).message()).isEqualTo("the fence runs into the tree from 18.75 ft to 21.25 ft");
        assertThat(findings.get(1).message()).isEqualTo("the fence runs into the wall from 39.25 ft to 40.75 ft");
        assertThat(findings.get(2).message())
                .isEqualTo(
                        "the fence runs from 86.00 ft to 94.00 ft within the 4' 9\" that the hydrant needs round it");
        assertThat(obstacles.alongFence("side 1", POSTS, Length.ofInches(4)))
                .extracting(Finding::message)
                .contains("the fence runs into the shed from 59.78 ft to 70.22 ft");
    }

    @Test
    void theNoteSaysWhatWasToldAndWhatToDo() {
        Finding none = Obstacles.none().undergroundNote();
        Finding two = Obstacles.of(List.of(
                        Obstacle.utility(UtilityKind.IRRIGATION, GAS),
                        Obstacle.utility(UtilityKind.OTHER, GAS),
                        Obstacle.utility(UtilityKind.IRRIGATION, GAS)))
                .undergroundNote();

        assertThat(none.severity()).isEqualTo(Severity.NOTE);
        assertThat(none.code()).isEqualTo("underground-lines");
        assertThat(none.message()).isEqualTo("no buried lines were told, so posts were kept clear of none");
        assertThat(none.remedy()).contains("before digging").contains("private ones as well");
        assertThat(two.message()).contains("(irrigation line and buried line)").contains("may be others");
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> Obstacle.tree(at(0, 0), Length.ofFeet(2), Length.ofFeet(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rootZone was 1 ft, less than the trunk's 2 ft");
        assertThatThrownBy(() -> Obstacle.utility(UtilityKind.GAS, GAS, Length.ofFeet(-1)))
                .hasMessageContaining("width was -1 ft")
                .hasMessageContaining("from 0 to 1,000 ft");
        assertThatThrownBy(() -> Obstacle.hydrant(at(0, 0), Length.ofFeet(1_001)))
                .hasMessageContaining("clear was 1001 ft");
        assertThatThrownBy(() -> Obstacles.none().forbidden(POSTS, Length.ofInches(-6)))
                .as("no obstacle, nothing to ask")
                .hasMessageContaining("holeRadius was -6 in");
        assertThatThrownBy(() -> Obstacle.utility(UtilityKind.GAS, GAS).withName(" "))
                .hasMessageContaining("name was blank");
        assertThatThrownBy(() ->
                        Obstacles.of(Collections.nCopies(10_001, Obstacle.hydrant(at(0, 0), Length.ofFeet(3)))))
                .hasMessageContaining("number of obstacles was 10001")
                .hasMessageContaining("no more than 10,000");
    }
}
