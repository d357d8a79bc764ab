package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Ladder;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.view.BackYard;
import org.fencecore.drawing.view.BoardMarksView;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.junit.jupiter.api.Test;

/** Long drawings over several sheets lose nothing, and their lettering stays legible. */
class LongDrawingsTest {

    private static Stream<Ladder.Rung> rungs(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Ladder.class::isInstance)
                .flatMap(shape -> ((Ladder) shape).rungs().stream());
    }

    private static List<String> figures(Drawing drawing, String heading) {
        return rungs(drawing)
                .filter(rung -> rung.heading().equals(heading))
                .flatMap(rung -> rung.cells().stream())
                .map(Ladder.Cell::text)
                .toList();
    }

    /** A run of 300 ft: every post and board is on a sheet, and every sheet is at 1/4 in to the foot or larger. */
    @Test
    void aLongRunKeepsItsScaleAndLosesNothing() {
        FencePlan plan = BackYard.level(300);
        Run run = plan.runs().get(0);
        List<Drawing> sheets = ElevationView.sheets(plan, run, Length.ofFeet(30));
        List<String> numbers = sheets.stream()
                .flatMap(sheet -> figures(sheet, "post").stream())
                .toList();
        assertThat(numbers).hasSize(run.posts().size() + sheets.size() - 1);
        assertThat(new HashSet<>(numbers))
                .containsExactlyInAnyOrderElementsOf(run.posts().stream()
                        .map(Post::number)
                        .map(number -> Integer.toString(number))
                        .toList());
        Set<Shape> boards = new HashSet<>();
        for (Drawing sheet : sheets) {
            assertThat(Sheet.of(sheet, Paper.LETTER).placing.scale.denominator())
                    .isLessThanOrEqualTo(48);
            sheet.shapes().stream()
                    .filter(shape -> shape.layer() == Layer.OUTSIDE_BOARDS)
                    .forEach(boards::add);
        }
        assertThat(boards)
                .hasSize(run.stretches()
                        .get(0)
                        .boards()
                        .orElseThrow()
                        .row(Face.OUTSIDE)
                        .count());
    }

    /** Every mark of the story pole, to the sixteenth, has room on some sheet, on every paper. */
    @Test
    void everyBoardHasItsMarkOnTheStoryPole() {
        FencePlan plan = BackYard.sloping();
        for (Run run : plan.runs()) {
            for (Stretch stretch : run.stretches()) {
                List<Drawing> sheets = BoardMarksView.sheets(plan, run, stretch);
                Set<String> shown = new HashSet<>();
                for (Drawing sheet : sheets) {
                    shown.addAll(figures(sheet, "outside boards"));
                    for (Paper paper : List.of(Paper.LETTER, Paper.TABLOID, Paper.A4, Paper.A3)) {
                        assertThat(Sheet.of(sheet, paper).placing.leftOut()).isZero();
                    }
                }
                assertThat(shown)
                        .containsAll(
                                stretch
                                        .boards()
                                        .orElseThrow()
                                        .row(Face.OUTSIDE)
                                        .storyPole(Length.ofInches(1).dividedBy(16))
                                        .stream()
                                        .map(TapeFormat.feetAndInches(16)::format)
                                        .toList());
            }
        }
    }
}
