package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.fencecore.FencePlan;
import org.fencecore.drawing.Drawing;
import org.fencecore.drawing.Label;
import org.fencecore.drawing.Layer;
import org.fencecore.drawing.Outline;
import org.fencecore.drawing.Spot;
import org.fencecore.drawing.view.BackYard;
import org.fencecore.drawing.view.ElevationView;
import org.fencecore.drawing.view.PlanView;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

class SvgProperties {

    @Property
    void anyTextGivesAnXmlDocumentThatHoldsIt(@ForAll @StringLength(max = 40) String text) throws Exception {
        Drawing drawing = Drawing.titled(text)
                .description(text)
                .add(Label.on(Spot.of(Length.ZERO, Length.ZERO), text))
                .note(text)
                .build();

        SvgSheet sheet = SvgSheet.read(Svg.write(drawing, Paper.TABLOID));

        assertThat(sheet.elements("", "title").get(0).getTextContent()).isEqualTo(Words.clean(text));
        assertThat(Words.clean(text).codePoints()).noneMatch(Character::isISOControl);
    }

    /** Whatever its size, a piece is on the sheet, and of a size to be seen. */
    @Property
    void aPieceIsDrawnTrueAndNeverClipped(
            @ForAll @DoubleRange(min = 0.01, max = 1e8) double width,
            @ForAll @DoubleRange(min = 0.01, max = 1e8) double height)
            throws Exception {
        Drawing drawing = Drawing.titled("Piece")
                .add(Outline.rectangle(
                        Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofMetres(width), Length.ofMetres(height)))
                .build();

        for (Paper paper : new Paper[] {Paper.LETTER, Paper.A4}) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, paper));
            Rectangle2D piece = SvgSheet.bounds(sheet.pieces("posts").get(0));
            String scale = sheet.words().stream()
                    .filter(words -> words.startsWith("Scale 1:"))
                    .findFirst()
                    .orElseThrow();
            double denominator = Double.parseDouble(scale.replaceAll("Scale 1:| .*", ""));

            assertThat(sheet.outside(paper.width().millimetres(), paper.height().millimetres()))
                    .isEmpty();
            assertThat(piece.getWidth())
                    .isBetween(width * 1000 / denominator - 0.0011, width * 1000 / denominator + 0.0011);
            assertThat(piece.getHeight())
                    .isBetween(height * 1000 / denominator - 0.0011, height * 1000 / denominator + 0.0011);
            // Neighbouring scales are at most 2.5 apart, and the strip takes under a third of the sheet.
            boolean isLargestScale = denominator <= 8;
            assertThat(isLargestScale || piece.getWidth() > 70 || piece.getHeight() > 50)
                    .isTrue();
        }
    }

    @Property(tries = 100)
    void labelsNeverRunIntoEachOther(@ForAll @IntRange(min = 1, max = 40) int count, @ForAll long seed)
            throws Exception {
        Random random = new Random(seed);
        Drawing.Builder drawing = Drawing.titled("Labels")
                .add(Outline.rectangle(Layer.POSTS, Length.ZERO, Length.ZERO, Length.ofFeet(40), Length.ofFeet(20)));
        for (int i = 0; i < count; i++) {
            Spot at = Spot.of(Length.ofFeet(40 * random.nextDouble()), Length.ofFeet(20 * random.nextDouble()));
            Angle turn = Angle.ofDegrees(360 * random.nextDouble());
            Angle toward = Angle.ofDegrees(360 * random.nextDouble());
            drawing.add(Label.beside(at, toward, Length.ofMillimetres(1), "post " + i)
                    .withTurn(turn));
        }

        SvgSheet sheet = SvgSheet.read(Svg.write(drawing.build(), Paper.LETTER));

        assertThat(sheet.clashes()).isEmpty();
        assertThat(sheet.outside(279.4, 215.9)).isEmpty();
    }

    @Property(tries = 60)
    void aRunOfAnyLengthIsDrawnWholeAndLegible(@ForAll @DoubleRange(min = 8, max = 3000) double feet) throws Exception {
        FencePlan plan = BackYard.level(feet);

        for (Drawing drawing : new Drawing[] {
            PlanView.of(plan), ElevationView.of(plan, plan.runs().get(0))
        }) {
            SvgSheet sheet = SvgSheet.read(Svg.write(drawing, Paper.LETTER));

            assertThat(sheet.outside(279.4, 215.9)).isEmpty();
            assertThat(sheet.clashes()).isEmpty();
        }
    }
}
