package org.fencecore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.LateralLoad;
import org.fencecore.geometry.Point;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The posts of a plan while it is laid out: what each one has to reach and carry grows bay by bay, a corner post's from
 * both its runs. Footings are worked out at the end, once for posts that are alike.
 */
final class PostBook {

    /** Bays that differ by rounding alone must not need a footing each. */
    private static final Length SPAN_STEP = Length.ofInches(1).dividedBy(16);

    /** Taller than any fence: a post that would stand higher comes from a wrong shot. */
    private static final Length TALLEST = Length.ofFeet(40);

    private final Site site;
    private final FenceStyle style;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Integer, Entry> cornerPosts = new HashMap<>();
    private final Map<Demand, FootingDesign> footings = new HashMap<>();

    PostBook(Site site, FenceStyle style) {
        this.site = site;
        this.style = style;
    }

    /** What a footing depends on within one plan. */
    private record Demand(Length exposed, Length tributary) {}

    /** One post in the making. */
    static final class Entry {
        final int number;
        PostKind kind;
        final Point centre;
        private Length ground;
        private @Nullable Length top;
        private Length tributary = Length.ZERO;

        private Entry(int number, PostKind kind, Point centre, Length ground) {
            this.number = number;
            this.kind = kind;
            this.centre = centre;
            this.ground = ground;
        }

        /** Asks the post to reach at least this height, in the datum of the shots. */
        void reach(Length height) {
            top = top == null ? height : Length.max(top, height);
        }

        Length ground() {
            return ground;
        }

        private Length exposed() {
            return Objects.requireNonNull(top, "top of a post that nothing stands at")
                    .minus(ground);
        }

        /** Tells whether what stands at the post ends in the ground beside it, or too near for a fence. */
        private boolean isBuried(Length least) {
            return exposed().compareTo(least) < 0;
        }

        /** Adds half of a bay or opening to the fence whose wind the post carries. */
        void carryHalf(Length spacing) {
            tributary = tributary.plus(spacing.dividedBy(2));
        }
    }

    Entry add(PostKind kind, Point centre, Length ground) {
        Entry entry = new Entry(entries.size() + 1, kind, centre, ground);
        entries.add(entry);
        return entry;
    }

    /** The post at a corner of the lot, shared by the runs that meet there. */
    Entry atCorner(int lotCorner, PostKind kind, Point centre, Length ground) {
        Entry entry = cornerPosts.computeIfAbsent(lotCorner, corner -> add(kind, centre, ground));
        // The two lines of shots pass a corner post on different sides; whichever is called first, the lower counts.
        entry.ground = Length.min(entry.ground, ground);
        return entry;
    }

    List<Post> posts(List<Finding> findings) {
        List<Post> posts = new ArrayList<>(entries.size());
        Length least = style.slope()
                .clearance()
                .plus(Length.min(Length.ofFeet(1), style.rails().boardLength()));
        for (Entry entry : entries) {
            if (entry.isBuried(least)) {
                findings.add(Finding.blocker(
                                "post-below-ground",
                                "post " + entry.number,
                                "the ground here is "
                                        + Written.tape(entry.exposed().abs()) + " above the top of what stands at it")
                        .withRemedy("check the shots beside it; if they are right, the ground must be cut first"));
                entry.reach(entry.ground
                        .plus(style.slope().clearance())
                        .plus(style.rails().boardLength()));
            }
            Post post = new Post(entry.number, entry.kind, entry.centre, entry.ground, entry.exposed(), footing(entry));
            if (post.exposed().compareTo(TALLEST) > 0) {
                findings.add(Finding.blocker(
                                "post-too-tall",
                                post.toString(),
                                "it would stand " + Written.tape(post.exposed())
                                        + " out of the ground; its footing was worked out for "
                                        + Written.tape(TALLEST))
                        .withRemedy("check the shots beside it for a wrong height or another datum"));
            }
            posts.add(post);
        }
        findings.addAll(FootingNotes.of(posts));
        return posts;
    }

    private FootingDesign footing(Entry entry) {
        Demand demand =
                new Demand(Length.min(entry.exposed(), TALLEST), entry.tributary.roundedTo(SPAN_STEP, Rounding.UP));
        return footings.computeIfAbsent(demand, known -> FootingDesign.forPost(load(known), spec(known)));
    }

    private LateralLoad load(Demand demand) {
        return site.windPressure()
                .map(pressure -> LateralLoad.ofPressure(
                        pressure, demand.tributary(), style.slope().clearance(), demand.exposed()))
                .orElse(LateralLoad.NONE);
    }

    private FootingSpec spec(Demand demand) {
        FootingSpec.Builder spec = FootingSpec.builder()
                .postWidth(style.postLumber().width())
                .exposedHeight(demand.exposed())
                .soil(site.soil())
                .doubledBearing(site.doubledBearing())
                .holeDiameter(style.holeDiameter());
        site.frostDepth().ifPresent(spec::frostDepth);
        return spec.build();
    }
}
