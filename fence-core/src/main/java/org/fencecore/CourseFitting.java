package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.geometry.Interval;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.CourseLayout;
import org.fencecore.slope.FittedBay;
import org.fencecore.slope.SlopeFit;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Lays horizontal boards along a stretch: its straight parts, the courses of each and their nailers. */
final class CourseFitting {

    /** Boards bend so far in their width that a break of the line up to this goes unseen; common practice, no source. */
    private static final Slope UNSEEN_BEND = Slope.ofPercent(0.1);

    private static final Length UNSEEN_STEP = Length.ofInches(1).dividedBy(16);

    /** No part passes more posts than a layout takes. */
    private static final int MOST_BAYS = 5_000;

    private static final int MOST_BOARDS = 5_000_000;

    private final FenceStyle style;
    private final SlopeFit slope;
    private final List<FittedBay> bays;
    private final Interval boarded;
    private final String place;
    private final Findings findings;

    CourseFitting(FenceStyle style, SlopeFit slope, Interval boarded, String place, Findings findings) {
        this.style = style;
        this.slope = slope;
        this.bays = slope.bays();
        this.boarded = boarded;
        this.place = place;
        this.findings = findings;
    }

    /** Boards across a leaf, each from edge to edge; empty where the fence beside it has none either. */
    static Optional<CourseRun> onLeaf(
            FenceStyle style, Length width, Length bottom, Slope rake, String place, Findings findings) {
        Length height = height(style, rake);
        if (height.compareTo(style.pattern().minimumLength()) < 0
                || height.wholePieces(style.pattern().width()) >= MOST_BOARDS) {
            return Optional.empty();
        }
        CourseLayout layout = CourseLayout.fit(height, style.pattern(), width, List.of(), longest(style, rake));
        findings.later(layout::findings, place);
        Interval reach = Interval.of(Length.ZERO, width);
        return Optional.of(new CourseRun(reach, bottom, rake, layout, List.of(reach.start(), reach.end()), List.of()));
    }

    /** Returns the parts along the stretch; none, with a finding, if one cannot be laid. */
    List<CourseRun> fit() {
        List<CourseRun> parts = new ArrayList<>();
        List<String> breaks = new ArrayList<>();
        long boards = 0;
        int first = 0;
        while (first < bays.size()) {
            int last = first;
            while (last + 1 < bays.size() && last - first < MOST_BAYS && goesOn(first, last)) {
                last++;
            }
            Slope grade = Slope.of(
                    bays.get(last).bottomAtEnd().minus(bays.get(first).bottomAtStart()),
                    bays.get(last).end().minus(bays.get(first).start()));
            if (grade.abs().compareTo(SlopeFit.STEEPEST) > 0 || !holds(grade)) {
                return List.of();
            }
            boards += most(grade) * (last - first + 1L);
            if (boards > MOST_BOARDS) {
                tooMany();
                return List.of();
            }
            parts.add(part(first, last, grade));
            if (first > 0) {
                breaks.add(Written.station(bays.get(first).start()));
            }
            first = last + 1;
        }
        parts.forEach(part -> findings.later(part.layout()::findings, place));
        tellBreaks(breaks);
        tellUnchecked();
        return parts;
    }

    /** The same of all stretches, and so told once. */
    private void tellUnchecked() {
        findings.add(Finding.note(
                        "courses-not-checked",
                        "horizontal boards",
                        "they carry the wind from post to post; whether they are strong and stiff enough was not checked")
                .withRemedy("set posts closer or use thicker boards where bays are wide or the wind is strong"));
    }

    /** A board passes a post where the line of the bottoms neither bends nor steps. */
    private boolean goesOn(int first, int last) {
        Slope bend = Slope.ofPercent(
                bays.get(last + 1).grade().percent() - bays.get(first).grade().percent());
        return slope.step(last + 1).abs().compareTo(UNSEEN_STEP) <= 0
                && bend.abs().compareTo(UNSEEN_BEND) <= 0;
    }

    /** What the height measures square to the grade. */
    private static Length height(FenceStyle style, Slope grade) {
        return style.rails().boardLength().times(Ratio.of(grade.angle().cos()));
    }

    private long most(Slope grade) {
        return height(style, grade).wholePieces(style.pattern().width()) + 1;
    }

    private boolean holds(Slope grade) {
        BoardPattern pattern = style.pattern();
        if (height(style, grade).compareTo(pattern.minimumLength()) < 0) {
            findings.add(Finding.blocker(
                            "too-short-for-boards",
                            place,
                            "a height of " + Written.tape(height(style, grade), Rounding.DOWN)
                                    + " square to the grade is too low for the pattern, which needs "
                                    + Written.tape(pattern.minimumLength(), Rounding.UP))
                    .withRemedy("make the fence higher, or use narrower boards"));
            return false;
        }
        return true;
    }

    private void tooMany() {
        findings.add(Finding.blocker(
                        "too-many-boards",
                        place,
                        "courses " + style.pattern().width() + " wide would take over " + MOST_BOARDS + " boards")
                .withRemedy("check the width of the boards and its unit"));
    }

    private CourseRun part(int first, int last, Slope grade) {
        Length start = first == 0 ? boarded.start() : bays.get(first).start();
        Length end = last == bays.size() - 1 ? boarded.end() : bays.get(last).end();
        List<Length> posts = new ArrayList<>();
        List<Length> nailers = new ArrayList<>();
        posts.add(bays.get(first).start());
        for (int bay = first; bay <= last; bay++) {
            nailers(bays.get(bay), nailers);
            posts.add(bays.get(bay).end());
        }
        List<Length> between = posts.subList(1, posts.size() - 1).stream()
                .map(post -> post.minus(start))
                .toList();
        Length bottom = bays.get(first)
                .bottomAtStart()
                .minus(grade.riseOver(bays.get(first).start().minus(start)));
        CourseLayout layout = CourseLayout.fit(
                height(style, grade), style.pattern(), end.minus(start), between, longest(style, grade));
        return new CourseRun(Interval.of(start, end), bottom, grade, layout, posts, nailers);
    }

    private void nailers(FittedBay bay, List<Length> nailers) {
        Length most = style.boards().nailerSpacing();
        int spans = (int) Math.max(1, -Math.floorDiv(-bay.run().nanometres(), most.nanometres()));
        for (int nailer = 1; nailer < spans; nailer++) {
            nailers.add(bay.start().plus(bay.run().portion(nailer, spans)));
        }
    }

    /** How far the longest board sold reaches level: both its ends slant. */
    private static Length longest(FenceStyle style, Slope grade) {
        List<Length> sold = style.boardLumber().lengths();
        Angle angle = grade.angle().abs();
        Length reach = sold.get(sold.size() - 1)
                .times(Ratio.of(angle.cos()))
                .minus(style.boardLumber().width().times(Ratio.of(angle.sin())));
        return Length.max(reach, Length.ofNanometres(1));
    }

    private void tellBreaks(List<String> breaks) {
        if (!breaks.isEmpty()) {
            findings.add(Finding.note(
                            "courses-break",
                            place,
                            "the fence bends or steps at " + breaks.size()
                                    + (breaks.size() == 1 ? " post" : " posts") + ", the first at "
                                    + breaks.get(0) + " along the run, and the boards of every course end there")
                    .withRemedy("put a cover board over the joints, or run the fence on one string")
                    .withSource(Citation.COMMON_PRACTICE));
        }
    }
}
