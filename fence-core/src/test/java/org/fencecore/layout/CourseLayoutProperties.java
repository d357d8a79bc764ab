package org.fencecore.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;

/** What holds for courses over up to 12 posts, by trying every way to set the joints. */
class CourseLayoutProperties {

    @Property(tries = 500)
    void joinsFillTheLengthAndNoWayIsBetter(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 8) Integer> bays,
            @ForAll @IntRange(min = 8, max = 20) int longest) {
        List<Length> posts = new ArrayList<>();
        int end = 0;
        for (int bay : bays) {
            end += bay;
            posts.add(Length.ofFeet(end));
        }
        posts.remove(posts.size() - 1);
        CourseLayout layout = CourseLayout.fit(
                Length.ofFeet(5),
                BoardPattern.spaced(Length.ofInches(5.5), Length.ofInches(1)),
                Length.ofFeet(end),
                posts,
                Length.ofFeet(longest));
        for (int course : new int[] {0, 1}) {
            Length at = Length.ZERO;
            for (Interval piece : layout.pieces(course)) {
                assertThat(piece.start()).isEqualTo(at);
                assertThat(piece.length()).isLessThanOrEqualTo(Length.ofFeet(longest));
                at = piece.end();
                assertThat(posts.contains(at) || at.equals(Length.ofFeet(end))).isTrue();
            }
            assertThat(at).isEqualTo(Length.ofFeet(end));
        }
        List<Length> first = joints(layout.pieces(0));
        int fewest = Integer.MAX_VALUE;
        int leastShared = Integer.MAX_VALUE;
        int boardsOfThose = Integer.MAX_VALUE;
        for (int way = 0; way < 1 << posts.size(); way++) {
            List<Length> joints = new ArrayList<>();
            for (int post = 0; post < posts.size(); post++) {
                if ((way >> post & 1) == 1) {
                    joints.add(posts.get(post));
                }
            }
            if (!holds(joints, end, longest)) {
                continue;
            }
            int shared = (int) joints.stream().filter(first::contains).count();
            fewest = Math.min(fewest, joints.size() + 1);
            if (shared < leastShared || (shared == leastShared && joints.size() + 1 < boardsOfThose)) {
                leastShared = shared;
                boardsOfThose = joints.size() + 1;
            }
        }
        assertThat(layout.pieces(0)).hasSize(fewest);
        assertThat(layout.jointsInLine()).hasSize(leastShared);
        assertThat(layout.pieces(1)).hasSize(boardsOfThose);
    }

    private static List<Length> joints(List<Interval> pieces) {
        return pieces.subList(0, pieces.size() - 1).stream().map(Interval::end).toList();
    }

    private static boolean holds(List<Length> joints, int end, int longest) {
        Length from = Length.ZERO;
        for (Length joint : joints) {
            if (joint.minus(from).compareTo(Length.ofFeet(longest)) > 0) {
                return false;
            }
            from = joint;
        }
        return Length.ofFeet(end).minus(from).compareTo(Length.ofFeet(longest)) <= 0;
    }
}
