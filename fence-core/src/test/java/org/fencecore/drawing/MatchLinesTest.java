package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/** A drawing broken over sheets: what is at a match line is on both. */
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
        List<Drawing> sheets = slope.sheets(places, feet(32));
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
    void aSheetHasSomeLength() {
        Drawing slope = Drawing.titled("Slope").build();
        assertThat(slope.sheets(List.of(), feet(30))).containsExactly(slope);
        assertThatThrownBy(() -> slope.sheets(List.of(feet(0), feet(9)), Length.ZERO))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("longest was 0");
    }
}
