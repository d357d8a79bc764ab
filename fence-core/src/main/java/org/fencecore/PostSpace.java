package org.fencecore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Whether every post has room: no two in each other, and no two holes run together. */
final class PostSpace {

    private PostSpace() {}

    static List<Finding> check(List<Post> posts, FenceStyle style) {
        Length post = style.postLumber().width();
        Length hole = style.holeDiameter();
        List<Finding> findings = new ArrayList<>();
        // Sorted from west to east, only those within a hole's width of each other have to be compared.
        List<Post> sorted = new ArrayList<>(posts);
        sorted.sort(Comparator.comparing((Post each) -> each.centre().east()).thenComparing(Post::number));
        for (int i = 0; i < sorted.size(); i++) {
            Post one = sorted.get(i);
            Length reach = one.centre().east().plus(hole);
            for (int k = i + 1;
                    k < sorted.size() && sorted.get(k).centre().east().compareTo(reach) < 0;
                    k++) {
                Post other = sorted.get(k);
                Length apart = one.centre().distanceTo(other.centre());
                if (apart.compareTo(hole) < 0) {
                    findings.add(near(one, other, apart, post, hole));
                }
            }
        }
        return findings;
    }

    private static Finding near(Post one, Post other, Length apart, Length post, Length hole) {
        String place = FootingNotes.numbers(one.number() < other.number() ? List.of(one, other) : List.of(other, one));
        String message = "their middles are only " + Written.tape(apart) + " apart";
        Finding finding = apart.compareTo(post) < 0
                ? Finding.blocker("posts-collide", place, message + ", less than the width of a post")
                : Finding.warning(
                        "holes-run-together", place, message + ", and their holes are " + Written.tape(hole) + " wide");
        return finding.withRemedy("move or leave out one of them, or make one hole for both");
    }
}
