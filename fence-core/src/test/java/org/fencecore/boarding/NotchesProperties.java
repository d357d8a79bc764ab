package org.fencecore.boarding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.BoardPlacement;
import org.fencecore.layout.BoardRow;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;

/** On quarters of an inch, the shift that is found against every shift tried. */
class NotchesProperties {

    private static final Length QUARTER = Length.ofInches(0.25);

    @Property(tries = 300)
    void noShiftNeedsFewer(
            @ForAll @IntRange(min = 4, max = 40) int width,
            @ForAll @IntRange(min = 1, max = 20) int gap,
            @ForAll @Size(max = 6) List<@IntRange(min = 0, max = 1000) Integer> places,
            @ForAll @IntRange(min = 1, max = 24) int postWidth,
            @ForAll @IntRange(min = 0, max = 5) int most) {
        int count = 1 + 1000 / (width + gap);
        BoardRow row = BoardLayout.fit(
                        QUARTER.times(count * (width + gap) - gap),
                        BoardPattern.spaced(QUARTER.times(width), QUARTER.times(gap)))
                .row(Face.OUTSIDE);
        List<Interval> posts = new ArrayList<>();
        for (int place : places) {
            posts.add(Interval.of(QUARTER.times(place), QUARTER.times(place + postWidth)));
        }
        Notches found = Notches.fewest(row, posts, QUARTER, QUARTER, QUARTER.times(most));
        int fewest = Integer.MAX_VALUE;
        int nearest = Integer.MAX_VALUE;
        for (int shift = -most; shift <= most; shift++) {
            int met = met(row, posts, QUARTER.times(shift));
            if (met < fewest || (met == fewest && Math.abs(shift) < nearest)) {
                fewest = met;
                nearest = Math.abs(shift);
            }
        }
        assertThat(found.count()).isEqualTo(fewest).isEqualTo(met(row, posts, found.shift()));
        assertThat(found.shift().abs()).isEqualTo(QUARTER.times(nearest));
        for (Notch notch : found.notches()) {
            assertThat(notch.across().length())
                    .isGreaterThan(Length.ZERO)
                    .isLessThanOrEqualTo(notch.board().width());
        }
    }

    private static int met(BoardRow row, List<Interval> posts, Length shift) {
        int met = 0;
        for (BoardPlacement board : row.boards()) {
            Interval moved = Interval.of(board.left().plus(shift), board.right().plus(shift));
            for (Interval post : posts) {
                met += moved.overlaps(post) ? 1 : 0;
            }
        }
        return met;
    }
}
