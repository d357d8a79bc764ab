package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** Long drawings broken over sheets: nothing is lost, what is at a match line is on both, and lettering stays legible. */
class MatchLinesTest {

    private static Length feet(double feet) {
        return Length.ofFeet(feet);
    }

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

    /**
     * By hand: places each 10 ft over 90 ft, sheets up to 32 ft: 90 / 32 takes three of 30 ft. The slope falls 1 in 10; the
     * line of the ground goes on 9 in past a match line, to 30 ft 9 in, where it is 30.75 / 10 = 3.075 ft down.
     */
    @Test
    void ninetyFeetAreThreeSheetsOfThirty() {
        List<Length> places = new ArrayList<>();
        for (int i = 0; i <= 9; i++) {
            places.add(feet(10 * i));
        }
        Drawing slope = Drawing.titled("Slope")
                .add(Line.of(Layer.GROUND, Spot.of(feet(0), feet(0)), Spot.of(feet(90), feet(-9))))
                .add(Outline.rectangle(Layer.CONCRETE, feet(29.5), feet(-2), feet(30.5), feet(0)))
                .add(Outline.rectangle(Layer.RAILS, feet(20), feet(1), feet(70), feet(2)))
                .add(new Ladder(
                        feet(-10),
                        List.of(new Ladder.Rung(
                                "length",
                                Lettering.NOTE,
                                List.of(new Ladder.Cell(Interval.of(feet(20), feet(70)), "50'"))))))
                .build();
        List<Drawing> sheets = MatchLines.split(slope, places, feet(32));
        assertThat(sheets)
                .extracting(Drawing::title)
                .containsExactly("Slope, sheet 1 of 3", "Slope, sheet 2 of 3", "Slope, sheet 3 of 3");
        assertThat(sheets.get(0).shapes())
                .contains(Line.of(Layer.GROUND, Spot.of(feet(0), feet(0)), Spot.of(feet(30.75), feet(-3.075))))
                .contains(Outline.rectangle(Layer.CONCRETE, feet(29.5), feet(-2), feet(30.5), feet(0)));
        assertThat(sheets.get(1).shapes())
                .contains(Outline.rectangle(Layer.CONCRETE, feet(29.5), feet(-2), feet(30.5), feet(0)))
                .anySatisfy(shape -> assertThat(shape)
                        .isInstanceOfSatisfying(
                                Outline.class,
                                rail -> assertThat(rail.corners())
                                        .containsExactlyInAnyOrder(
                                                Spot.of(feet(29.25), feet(1)),
                                                Spot.of(feet(60.75), feet(1)),
                                                Spot.of(feet(60.75), feet(2)),
                                                Spot.of(feet(29.25), feet(2)))));
        assertThat(sheets.get(2).shapes())
                .doesNotContain(Outline.rectangle(Layer.CONCRETE, feet(29.5), feet(-2), feet(30.5), feet(0)));
        assertThat(figures(sheets.get(1), "length")).containsExactly("50' *");
        assertThat(sheets.get(1).notes())
                .contains("Joins on the left at match line A to sheet 1, on the right at match line B to sheet 3.")
                .anyMatch(note -> note.startsWith("* counts the whole stretch"));
    }

    @Test
    void whatFitsIsNotBroken() {
        FencePlan plan = BackYard.level(24);
        Run run = plan.runs().get(0);
        assertThat(ElevationView.sheets(plan, run, feet(32)))
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.shapes())
                        .isEqualTo(ElevationView.of(plan, run).shapes()));
        assertThatThrownBy(() -> ElevationView.sheets(plan, run, Length.ofInches(11)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longest was")
                .hasMessageContaining("1 ft or more");
    }

    /** A run of 300 ft: every post and board is on a sheet, and every sheet is at 1/4 in to the foot or larger. */
    @Test
    void aLongRunKeepsItsScaleAndLosesNothing() {
        FencePlan plan = BackYard.level(300);
        Run run = plan.runs().get(0);
        List<Drawing> sheets = ElevationView.sheets(plan, run, feet(30));
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
                                        .map(Figures.USUAL::format)
                                        .toList());
            }
        }
    }

    @Test
    void marksAreOfThePlanThatIsDrawn() {
        FencePlan plan = BackYard.level(24);
        Run other = BackYard.level(40).runs().get(0);
        assertThatThrownBy(() ->
                        BoardMarksView.sheets(plan, other, other.stretches().get(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("take them from the plan");
    }
}
