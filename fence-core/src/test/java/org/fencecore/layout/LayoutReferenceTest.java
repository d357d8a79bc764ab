package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Layouts against published worked examples; each row names its source in the header of its file. */
class LayoutReferenceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/layout/equal-gaps.csv", delimiter = ';', useHeadersInDisplayName = true)
    void equalGapsArePublishedOnes(
            int source,
            double length,
            double width,
            double least,
            double preferred,
            double most,
            String ends,
            int count,
            String gap) {
        BoardPattern pattern =
                BoardPattern.spaced(in(width), in(preferred)).withGaps(in(least), in(preferred), in(most));
        BoardLayout layout = BoardLayout.fit(in(length), ends.equals("gap") ? pattern.withGapAtEnds() : pattern);

        assertThat(layout.count()).isEqualTo(count);
        assertThat(layout.fullCount()).isEqualTo(count);
        int decimals = gap.length() - gap.indexOf('.') - 1;
        assertThat(layout.row(Face.OUTSIDE).gap().inches())
                .isCloseTo(Double.parseDouble(gap), within(0.51 * Math.pow(10, -decimals)));
        assertThat(layout.findings()).isEmpty();
    }

    /** The count and gap that ehow.co.uk article 6497936 publishes for 105 in would need 108 in. */
    @Test
    void thePublishedMistakeDoesNotFillItsOpening() {
        assertThat(22 * 1.5 + 23 * 3.27).isCloseTo(108.21, within(1e-9));

        BoardLayout layout = BoardLayout.fit(
                in(105),
                BoardPattern.spaced(in(1.5), in(5))
                        .withGaps(in(0), in(5), in(5))
                        .withGapAtEnds());
        assertThat(layout.boards()
                        .get(15)
                        .right()
                        .plus(layout.row(Face.OUTSIDE).gap())
                        .inches())
                .isCloseTo(105, within(1e-7));
        // One fewer would leave more than 5 in: (105 - 22.5) / 16.
        assertThat((105 - 15 * 1.5) / 16).isGreaterThan(5);
    }

    /**
     * Gaps at both ends are boards at both ends in an opening longer by two boards, of which the end ones are the
     * posts (geometry).
     */
    @Test
    void gapsAtTheEndsAreBoardsAtTheEndsOfALongerOpening() {
        BoardPattern pattern = BoardPattern.spaced(in(1.5), in(4)).withGaps(in(0), in(4), in(4));
        BoardLayout between = BoardLayout.fit(in(72), pattern.withGapAtEnds());
        BoardLayout over = BoardLayout.fit(in(72 + 2 * 1.5), pattern);

        assertThat(over.count()).isEqualTo(between.count() + 2);
        assertThat(over.row(Face.OUTSIDE).gap())
                .isEqualTo(between.row(Face.OUTSIDE).gap());
        assertThat(over.marks().get(1).minus(in(1.5))).isEqualTo(between.marks().get(0));
    }

    /** Common practice, no source: 5 1/2 in boards that lap 1 in on each side are 3 1/2 in apart. */
    @Test
    void boardsOf5AndAHalfThatLap1AreThreeAndAHalfApart() {
        BoardPattern pattern = BoardPattern.shadowbox(in(5.5)).withLap(in(1));
        // Ten boards and nine gaps of that fill 86.5 in.
        BoardLayout layout = BoardLayout.fit(in(86.5), pattern);

        assertThat(layout.row(Face.OUTSIDE).count()).isEqualTo(10);
        assertThat(layout.row(Face.OUTSIDE).gap()).isEqualTo(in(3.5));
        assertThat(layout.row(Face.INSIDE).gap()).isEqualTo(in(3.5));
        assertThat(layout.lap()).contains(in(1));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/layout/equal-division.csv", delimiter = ';', useHeadersInDisplayName = true)
    void equalDivisionsArePublishedOnes(
            int source, double length, double maximum, int bays, double spacing, int fraction) {
        PostSpacing posts = PostSpacing.equalBays(in(length), in(maximum), Length.ZERO);

        assertThat(posts.bayCount()).isEqualTo(bays);
        assertThat(posts.spacing().roundedTo(in(1.0 / fraction), Rounding.NEAREST))
                .isEqualTo(in(spacing));
    }

    private static Length in(double inches) {
        return Length.ofInches(inches);
    }
}
