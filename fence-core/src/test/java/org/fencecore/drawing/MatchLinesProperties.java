package org.fencecore.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;

/** A drawing that is broken over sheets is all there, and the sheets go on where the one before ends. */
class MatchLinesProperties {

    private static Length feet(double feet) {
        return Length.ofFeet(feet);
    }

    private static Spot spot(double across) {
        return Spot.of(feet(across), Length.ZERO);
    }

    @SuppressWarnings("unchecked")
    private static <T extends Shape> List<T> shapes(Drawing drawing, Class<T> kind, Layer layer) {
        return drawing.shapes().stream()
                .filter(shape -> kind.isInstance(shape) && shape.layer() == layer)
                .map(shape -> (T) shape)
                .toList();
    }

    /** A fence of bays: a ground line, a post at each place, a rail and a figure in each bay. */
    private static Drawing fence(List<Integer> places) {
        int last = places.get(places.size() - 1);
        Drawing.Builder fence = Drawing.titled("Fence").add(Line.of(Layer.GROUND, spot(places.get(0)), spot(last)));
        List<Ladder.Cell> cells = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            fence.add(Label.on(spot(places.get(i)), "post " + places.get(i)));
            if (i > 0) {
                cells.add(new Ladder.Cell(
                        Interval.of(feet(places.get(i - 1)), feet(places.get(i))), "bay " + places.get(i)));
            }
        }
        return fence.add(new Ladder(feet(-1), List.of(new Ladder.Rung("bay", Lettering.NOTE, cells))))
                .build();
    }

    @Property
    void sheetsTogetherHaveEverythingAndGoOnWhereTheLastEnded(
            @ForAll @Size(min = 2, max = 40) Set<@IntRange(min = -200, max = 900) Integer> at,
            @ForAll @IntRange(min = 1, max = 400) int longest) {
        List<Integer> places = List.copyOf(new TreeSet<>(at));
        Drawing fence = fence(places);
        List<Drawing> sheets =
                fence.sheets(places.stream().map(MatchLinesProperties::feet).toList(), feet(longest));

        List<String> figures = new ArrayList<>();
        Set<String> labels = new TreeSet<>();
        Optional<Length> reached = Optional.empty();
        int joints = 0;
        for (Drawing sheet : sheets) {
            shapes(sheet, Label.class, Layer.LETTERING).forEach(label -> labels.add(label.text()));
            shapes(sheet, Ladder.class, Layer.DIMENSIONS).stream()
                    .flatMap(ladder -> ladder.rungs().stream())
                    .flatMap(rung -> rung.cells().stream())
                    .forEach(cell -> figures.add(cell.text()));
            Line ground = shapes(sheet, Line.class, Layer.GROUND).get(0);
            Length start = ground.spots().get(0).across();
            // It goes on 9 in past each match line, or to its end, so that two sheets share up to 18 in.
            reached.ifPresent(end -> assertThat(start).isLessThan(end));
            reached = Optional.of(ground.spots().get(ground.spots().size() - 1).across());
            joints += shapes(sheet, Line.class, Layer.MATCH_LINES).size();
        }

        assertThat(reached).contains(feet(places.get(places.size() - 1)));
        assertThat(labels)
                .containsAll(places.stream().map(place -> "post " + place).toList());
        assertThat(figures)
                .containsExactlyElementsOf(
                        places.stream().skip(1).map(place -> "bay " + place).toList());
        assertThat(joints).isEqualTo(2 * (sheets.size() - 1));
    }

    /** No sheet is longer than asked unless a single bay is. */
    @Property
    void noSheetIsLongerThanAskedUnlessABayIs(
            @ForAll @Size(min = 2, max = 40) Set<@IntRange(min = 0, max = 900) Integer> at,
            @ForAll @IntRange(min = 1, max = 400) int longest) {
        List<Integer> places = List.copyOf(new TreeSet<>(at));
        int whole = places.get(places.size() - 1) - places.get(0);
        List<Drawing> sheets = fence(places)
                .sheets(places.stream().map(MatchLinesProperties::feet).toList(), feet(longest));

        for (Drawing sheet : sheets) {
            List<Ladder.Cell> bays = shapes(sheet, Ladder.class, Layer.DIMENSIONS)
                    .get(0)
                    .rungs()
                    .get(0)
                    .cells();
            Length shown = bays.get(bays.size() - 1)
                    .across()
                    .end()
                    .minus(bays.get(0).across().start());
            assertThat(bays.size() == 1 || shown.compareTo(feet(longest)) <= 0).isTrue();
        }
        assertThat(sheets.size())
                .isGreaterThanOrEqualTo((whole + longest - 1) / longest > 1 && places.size() > 2 ? 2 : 1);
    }
}
