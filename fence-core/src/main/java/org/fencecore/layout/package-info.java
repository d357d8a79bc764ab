/**
 * Posts along a stretch, and boards along a clear length: where they go so that nothing is left over at the end.
 *
 * <p>A {@link org.fencecore.layout.PostSpacing} divides a stretch into bays as a
 * {@link org.fencecore.layout.PostSpacingSpec} and its {@link org.fencecore.layout.BayRule} ask, and keeps posts out of
 * where they may not stand. A
 * {@link org.fencecore.layout.BoardPattern} says how boards are to follow each other: side by side, spaced, on both
 * faces in turn as a shadowbox, or in two layers as board on board or board and batten, with the gaps or laps that are
 * accepted. A {@link org.fencecore.layout.BoardLayout} fits
 * the pattern into a clear length with full boards at both ends and says with a
 * {@link org.fencecore.layout.Fitting} how that was possible; which boards are ripped where full ones do not fit is a
 * matter of {@link org.fencecore.layout.Ripping}. Each {@link org.fencecore.layout.Face} of it has a
 * {@link org.fencecore.layout.BoardRow}, whose {@link org.fencecore.layout.BoardPlacement boards} are worked out when
 * they are asked for.
 *
 * <p>A {@link org.fencecore.layout.CourseLayout} lays boards level, in courses with their joints on posts, and
 * {@link org.fencecore.layout.GateBoards} fits those of a gate and its neighbours so that the pattern reads through.
 *
 * <p>Everything is measured along the fence from the left end of the stretch or clear length, seen from the outside. It
 * knows no ground, gates or styles: where a section begins and ends, and how tall its boards are, is for others to say.
 *
 * <p>Example: 17 full boards of 5 1/2 in leave gaps of over 1/8 in when they fill 8 ft side by side, and 18 are 3 in too
 * long; so two in the middle are ripped to 4 in.
 *
 * <pre>{@code
 * BoardPattern pattern = BoardPattern.sideBySide(Length.ofInches(5.5));
 * BoardLayout layout = BoardLayout.fit(Length.ofFeet(8), pattern);
 * layout.count();                      // 18
 * layout.ripped().get(0).index();      // 8, the ninth board
 * layout.ripped().get(0).width();      // 4 in
 * layout.marks().get(17);              // 7 ft 6 1/2 in: the last board ends at 8 ft
 * layout.findings();                   // none
 *
 * // The boards that cross a 3 1/2 in post in the middle: the two ripped ones.
 * Interval post = Interval.of(Length.ofInches(46.25), Length.ofInches(49.75));
 * layout.row(Face.OUTSIDE).boardsMeeting(post).size();    // 2
 * }</pre>
 */
@NullMarked
package org.fencecore.layout;

import org.jspecify.annotations.NullMarked;
