package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.fencecore.CourseBoard;
import org.fencecore.CourseRun;
import org.fencecore.Plans;
import org.fencecore.layout.BoardPattern;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** How the document of a plan tells horizontal boards, told apart from the library's own reader. */
class CoursesJsonTest {

    private static JsonNode plan(Job job) throws JsonProcessingException {
        return new ObjectMapper().readTree(PlanJson.write(job)).get("plan");
    }

    /*
     * A level side of 50 ft, as worked by hand in HorizontalBoardsTest: 13 courses in 72 in, four boards of up to 16 ft in
     * each with joints in turn on posts 3, 5, 7 and 2, 4, 6 of 8, and a nailer in the middle of each of 7 bays.
     */
    @Test
    void aLevelSideByHand() throws JsonProcessingException {
        FenceStyle lying = FenceStyle.builder()
                .pattern(BoardPattern.sideBySide(Length.ofInches(5.5)))
                .boards(BoardStyle.horizontal())
                .boardLumber(Lumber.of("1x6", Length.ofInches(0.75), Length.ofInches(5.5))
                        .soldIn(Length.ofFeet(8), Length.ofFeet(12), Length.ofFeet(16)))
                .build();
        JsonNode stretch = plan(Job.of(Plans.levelSide().build(), lying)).at("/runs/0/stretches/0");
        assertThat(stretch.has("boards")).isFalse();
        assertThat(stretch.has("railPieces")).isFalse();
        assertThat(stretch.get("courses")).hasSize(1);
        JsonNode courses = stretch.at("/courses/0");
        assertThat(courses.at("/shares/count").asInt()).isEqualTo(13);
        assertThat(courses.get("boardCount").asInt()).isEqualTo(52);
        assertThat(courses.get("first")).hasSize(4);
        assertThat(courses.get("second")).hasSize(4);
        assertThat(courses.get("posts")).hasSize(8);
        assertThat(courses.get("nailers")).hasSize(7);
        assertThat(ends(courses.get("first")))
                .containsExactly(courses.at("/posts/2"), courses.at("/posts/4"), courses.at("/posts/6"));
        assertThat(ends(courses.get("second")))
                .containsExactly(courses.at("/posts/1"), courses.at("/posts/3"), courses.at("/posts/5"));
    }

    private static List<JsonNode> ends(JsonNode boards) {
        List<JsonNode> ends = new ArrayList<>();
        for (JsonNode board : boards) {
            ends.add(board.at("/stations/end"));
        }
        return ends.subList(0, ends.size() - 1);
    }

    /** Courses up a grade and on a gate: all boards follow from the two courses that are told. */
    @Test
    void everyBoardOfACourseIsThatOfTheFirstOrTheSecond() throws JsonProcessingException {
        Job job = EveryOption.lyingBoards();
        JsonNode run = plan(job).at("/runs/0");
        int stretches = 0;
        for (int i = 0; i < job.plan().stretches().size(); i++) {
            List<CourseRun> parts = job.plan().stretches().get(i).courses();
            for (int k = 0; k < parts.size(); k++) {
                assertTold(run.at("/stretches/" + i + "/courses/" + k), parts.get(k));
                stretches++;
            }
        }
        assertThat(stretches).isPositive();
        CourseRun onGate = job.plan().gates().get(0).leaves().get(0).courses().orElseThrow();
        assertTold(run.at("/gates/0/leaves/0/courses"), onGate);
    }

    private static void assertTold(JsonNode told, CourseRun part) {
        assertThat(told.get("boardCount").asInt()).isEqualTo(part.boardCount());
        int index = 0;
        int previous = 0;
        for (CourseBoard board : part.boards()) {
            index = board.course() == previous ? index + 1 : 0;
            previous = board.course();
            JsonNode same =
                    told.get(board.course() % 2 == 1 ? "first" : "second").get(index);
            assertThat(Length.parse(same.get("length").asText())).isEqualTo(board.length());
            assertThat(Length.parse(same.at("/stations/start").asText()))
                    .isEqualTo(board.stations().start());
        }
    }
}
