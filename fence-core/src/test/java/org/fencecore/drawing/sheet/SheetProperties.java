package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.drawing.Dimension;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Ladder;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Lettering;
import org.fencecore.drawing.Line;
import org.fencecore.drawing.Mark;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Shape;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.SwingArc;
import org.fencecore.drawing.Symbol;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** Drawings of whatever shapes and words, on every paper. */
class SheetProperties {

    private static Arbitrary<Spot> spots() {
        Arbitrary<Length> ways =
                Arbitraries.doubles().between(-3000, 3000).ofScale(2).map(Length::ofInches);
        return Combinators.combine(ways, ways).as(Spot::of);
    }

    /** Letters of all scripts, halves of pairs, control characters, and what XML, DXF and page codes are made of. */
    private static Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(90),
                Arbitraries.strings()
                        .withChars("%&<>\"'\\U+°]\u0000\n\r\ud83e ")
                        .ofMaxLength(30));
    }

    private static Arbitrary<Shape> shapes() {
        Arbitrary<Layer> layers = Arbitraries.of(Layer.class);
        Arbitrary<Angle> angles =
                Arbitraries.doubles().between(-360, 360).ofScale(1).map(Angle::ofDegrees);
        Arbitrary<Length> gaps =
                Arbitraries.doubles().between(-20, 20).ofScale(1).map(Length::ofMillimetres);
        return Arbitraries.oneOf(
                Combinators.combine(layers, spots().list().ofMinSize(2).ofMaxSize(6))
                        .as(Line::new),
                Combinators.combine(layers, spots().list().ofMinSize(3).ofMaxSize(6))
                        .as(Outline::new),
                Combinators.combine(layers, Arbitraries.of(Symbol.class), spots())
                        .as((layer, symbol, at) -> new Mark(layer, at, symbol)),
                Combinators.combine(layers, spots(), spots(), angles).as(SwingArc::new),
                Combinators.combine(
                                texts(),
                                Arbitraries.of(Lettering.class),
                                spots(),
                                angles.optional(),
                                gaps.map(Length::abs),
                                angles)
                        .as(Label::new),
                Combinators.combine(spots().set().ofSize(2), gaps, texts()).as((ends, offset, text) -> {
                    List<Spot> places = List.copyOf(ends);
                    return new Dimension(places.get(0), places.get(1), offset, text);
                }),
                Combinators.combine(spots(), texts().list().ofMaxSize(5), texts())
                        .as((at, cells, heading) -> new Ladder(
                                at.up(),
                                List.of(new Ladder.Rung(
                                        heading,
                                        Lettering.NOTE,
                                        cells.stream()
                                                .map(cell -> new Ladder.Cell(
                                                        Interval.of(
                                                                at.across(),
                                                                at.across().plus(Length.ofInches(cell.length()))),
                                                        cell))
                                                .toList())))));
    }

    @Provide
    Arbitrary<Drawing> drawings() {
        Arbitrary<Optional<Symbol>> symbols = Arbitraries.of(Symbol.class).optional();
        return Combinators.combine(
                        texts(),
                        shapes().list().ofMaxSize(12),
                        texts().list().ofMaxSize(20),
                        texts().list().ofMaxSize(80),
                        symbols,
                        texts().optional())
                .as((title, shapes, notes, key, symbol, job) -> {
                    Drawing.Builder drawing = Drawing.titled(title).description(title);
                    shapes.forEach(drawing::add);
                    notes.forEach(drawing::note);
                    for (String text : key) {
                        symbol.ifPresentOrElse(
                                mark -> drawing.key(Layer.POST_MARKS, mark, text),
                                () -> drawing.key(Layer.RAILS, text));
                    }
                    job.ifPresent(name -> drawing.job(name).caution(name).northUp());
                    return drawing.build();
                });
    }

    @Provide
    Arbitrary<Paper> papers() {
        return Arbitraries.of(Paper.LETTER, Paper.TABLOID, Paper.A4, Paper.A3);
    }

    private static boolean fits(Drawing drawing, Paper paper) {
        try {
            Sheet.of(drawing, paper);
            return true;
        } catch (IllegalArgumentException e) {
            assertThat(e).hasMessageContaining("does not fit on " + paper);
            return false;
        }
    }

    /** Nothing is clipped: a drawing is within the frame of its sheet, or refused where its words alone are too many. */
    @Property(tries = 400)
    void allInkIsWithinTheFrameOrTheDrawingIsRefused(@ForAll("drawings") Drawing drawing, @ForAll("papers") Paper paper)
            throws Exception {
        if (fits(drawing, paper)) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, paper));
            assertThat(sheet.outside(paper.width().millimetres(), paper.height().millimetres()))
                    .isEmpty();
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> Svg.write(drawing, paper));
            assertThatIllegalArgumentException().isThrownBy(() -> Dxf.write(drawing, paper));
        }
    }

    @Property(tries = 400)
    void aDxfIsWholeAndAsciiWhateverIsInIt(@ForAll("drawings") Drawing drawing, @ForAll("papers") Paper paper) {
        if (!fits(drawing, paper)) {
            return;
        }
        String dxf = Dxf.write(drawing, paper);
        assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(dxf)).isTrue();
        DxfFile file = DxfFile.read(dxf);
        file.assertWhole();
        file.assertWithinItsExtents();
    }
}
