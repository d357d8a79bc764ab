package org.fencecore.stakeout;

import java.util.List;
import org.fencecore.Post;
import org.fencecore.Run;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/**
 * A run with its string in the height it is tied at.
 *
 * @param run the run
 * @param lead how far along the string its first post stands
 * @param above the height over the ground that the string is tied at
 * @param first the height of the string beside the first post
 * @param last its height beside the last post
 */
record StakedRun(Run run, Length lead, Length above, Length first, Length last) {

    static StakedRun of(Run run, StringHeight height) {
        List<Post> posts = run.posts();
        Length start = posts.get(0).ground();
        Length end = posts.get(posts.size() - 1).ground();
        Length higher = Length.max(start, end);
        return new StakedRun(
                run,
                run.string().stationOf(posts.get(0).centre()),
                height.above(),
                (height.isLevel() ? higher : start).plus(height.above()),
                (height.isLevel() ? higher : end).plus(height.above()));
    }

    /** The length of the string from corner to corner. */
    Length string() {
        return run.string().length();
    }

    /** The length of the ground's profile, from the first post to the last. */
    Length length() {
        return run.ground().extent().end();
    }

    /** A post's distance from the first, which rounding must not put beyond the ground's profile. */
    Length station(Post post) {
        return Length.max(Length.ZERO, Length.min(length(), run.station(post)));
    }

    Length height(Length station) {
        return first.equals(last)
                ? first
                : first.plus(Slope.of(last.minus(first), length()).riseOver(station));
    }

    Profile profile() {
        return Profile.builder().point(Length.ZERO, first).point(length(), last).build();
    }
}
