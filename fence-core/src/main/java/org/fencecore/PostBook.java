package org.fencecore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.LateralLoad;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Moment;
import org.fencecore.units.Pressure;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.units.Slope;
import org.fencecore.wind.FenceWind;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The posts of a plan while it is laid out: what each one has to reach and carry grows bay by bay, a corner post's from
 * both its runs. Footings are worked out at the end, once for posts that are alike.
 */
final class PostBook {

    /** Taller than any fence: a post that would stand higher comes from a wrong shot. */
    private static final Length TALLEST = Length.ofFeet(40);

    /** No shape of the tops rises higher; ground that does comes from a wrong shot. */
    private static final Length HIGHEST_ARCH = Length.ofFeet(10);

    private final Site site;
    private final FenceStyle style;
    private final Map<Integer, Post> planned;
    private final Map<Integer, SetPost> set;
    private final SortedMap<Integer, Entry> entries = new TreeMap<>();
    private final Map<Demand, FootingDesign> footings = new HashMap<>();
    private final FootingSpec.Builder spec;
    private final WindLoads winds;

    /**
     * Opens the book.
     *
     * @param planned the posts as they were planned before some were set, by number
     * @param set those that were set
     */
    PostBook(Site site, FenceStyle style, Map<Integer, Post> planned, Map<Integer, SetPost> set) {
        this.site = site;
        this.style = style;
        this.planned = planned;
        this.set = set;
        this.spec = footings(site, style);
        this.winds = new WindLoads(site, style);
    }

    /** What a footing depends on within one plan. */
    private record Demand(Length exposed, LateralLoad load) {}

    /** What a post holds of a line, from halfway before it to halfway after. */
    record Held(FenceLine line, Interval part) {

        Held with(Interval more) {
            Length start = Length.min(part.start(), more.start());
            return new Held(line, Interval.of(start, Length.max(part.end(), more.end())));
        }
    }

    private record OpenLeaf(FenceLine line, Interval leaf, Length high) {}

    /** One post in the making. */
    static final class Entry {
        final int number;
        PostKind kind;
        final Point centre;
        private Length ground;
        private @Nullable Length top;
        private Moment hung = Moment.ZERO;
        private Slope topGrade = Slope.LEVEL;
        /** What of each line the post holds in the wind; of one line alone for all but corner posts. */
        private final List<Held> held = new ArrayList<>(1);

        private final List<OpenLeaf> open = new ArrayList<>(0);

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

        /** Asks the post to be cut to the slope of what stands at it; where two slopes or a gate meet it stays level. */
        void cutTo(Slope grade) {
            boolean alone = kind == PostKind.LINE || kind == PostKind.END;
            topGrade = alone ? grade : Slope.LEVEL;
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

        /** Adds a part of a line, beside what the post holds of it already, to the fence whose wind it carries. */
        void carry(FenceLine line, Interval part) {
            for (int i = 0; i < held.size(); i++) {
                if (held.get(i).line() == line) {
                    held.set(i, held.get(i).with(part));
                    return;
                }
            }
            held.add(new Held(line, part));
        }

        /** Adds a gate that hangs on the post; several are taken to open the same way. */
        void hang(Moment moment) {
            hung = hung.plus(moment);
        }

        /** Adds a leaf that hangs on the post and may stand open to the wind, where it is shut and how high it is at most. */
        void open(FenceLine line, Interval leaf, Length high) {
            open.add(new OpenLeaf(line, leaf, high));
        }

        /** How much higher than the fence's boards a leaf at the post stands. */
        private Length over(Length boardLength) {
            Length most = Length.ZERO;
            for (OpenLeaf leaf : open) {
                most = Length.max(most, leaf.high().minus(boardLength));
            }
            return Length.min(most, HIGHEST_ARCH);
        }

        List<Held> held() {
            return held;
        }
    }

    /** Enters a post; one that two lines share, because they meet there, only once. */
    Entry add(PostRow.Spot spot, Length ground) {
        Entry entry =
                entries.computeIfAbsent(spot.number(), number -> new Entry(number, spot.kind(), spot.centre(), ground));
        // The two lines of shots pass a corner post on different sides; whichever is called first, the lower counts.
        entry.ground = Length.min(entry.ground, ground);
        return entry;
    }

    /** Tells how much of a line the boards of a part of it close to the wind, which is worked out if it is asked for. */
    void close(FenceLine line, Supplier<Ratio> solid) {
        winds.close(line, solid);
    }

    List<Post> posts(Findings findings) {
        List<Post> posts = new ArrayList<>(entries.size());
        entries.values().forEach(entry -> winds.meet(entry.held()));
        Length least = style.slope()
                .clearance()
                .plus(Length.min(Length.ofFeet(1), style.rails().boardLength()));
        for (Entry entry : entries.values()) {
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
            SetPost standing = set.get(entry.number);
            FootingDesign footing = footing(entry);
            if (standing != null) {
                footing = footingInTheGround(entry, standing, footing, findings);
            }
            Post post = new Post(
                    entry.number,
                    entry.kind,
                    entry.centre,
                    entry.ground,
                    entry.exposed(),
                    entry.topGrade,
                    footing,
                    standing != null);
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
        findings.later(winds::findings);
        findings.later(() -> FootingNotes.of(posts, style.postLumber()));
        return posts;
    }

    /** The pressure of the wind on a part of a line, where it is known; all posts must be entered. */
    Optional<Pressure> pressureOn(FenceLine line, Interval part) {
        return WindLoads.pressure(site, winds.on(line), part);
    }

    /** The wind on a line; all posts must be entered. */
    Optional<FenceWind> windOn(FenceLine line) {
        return winds.on(line);
    }

    /** What is in the ground stays there; where it is now too little, that is told. */
    private FootingDesign footingInTheGround(Entry entry, SetPost standing, FootingDesign needed, Findings findings) {
        String place = "post " + entry.number;
        if (standing.exposed().isPresent() && standing.exposed().get().compareTo(entry.exposed()) < 0) {
            findings.add(Finding.warning(
                            "set-post-too-short",
                            place,
                            "it stands " + Written.tape(standing.exposed().get()) + " out of the ground and should "
                                    + Written.tape(entry.exposed(), Rounding.UP))
                    .withRemedy("set a longer post, or lower the fence here"));
        }
        FootingDesign dug = Objects.requireNonNull(planned.get(entry.number), "planned post")
                .footing();
        if (dug.embedment().compareTo(needed.embedment()) < 0) {
            findings.add(Finding.warning(
                            "set-footing-shallow",
                            place,
                            "as set it would have to be " + Written.tape(needed.embedment(), Rounding.UP)
                                    + " deep, and its hole was planned " + Written.tape(dug.embedment()))
                    .withRemedy("set another post beside it or between, so that each carries less of the fence"));
        }
        return dug;
    }

    private FootingDesign footing(Entry entry) {
        Length exposed = Length.min(entry.exposed(), TALLEST);
        Demand demand = new Demand(exposed, load(entry, exposed).withGate(entry.hung));
        return footings.computeIfAbsent(
                demand,
                known -> FootingDesign.forPost(
                        known.load(), spec.exposedHeight(known.exposed()).build()));
    }

    /** The fence's wind with the gates shut, or that on the leaves as they stand open, whichever bends the post more. */
    private LateralLoad load(Entry entry, Length exposed) {
        Length over = entry.over(style.rails().boardLength());
        LateralLoad shut = winds.load(entry.held(), exposed, over);
        LateralLoad open = LateralLoad.NONE;
        for (OpenLeaf leaf : entry.open) {
            open = open.together(winds.load(leaf.line(), leaf.leaf(), exposed, over), Angle.ZERO);
        }
        return open.moment().compareTo(shut.moment()) > 0 ? open : shut;
    }

    /** What all footings of a plan have in common. */
    private static FootingSpec.Builder footings(Site site, FenceStyle style) {
        FootingSpec.Builder spec = FootingSpec.builder()
                .postWidth(style.postLumber().width())
                .soil(site.soil())
                .doubledBearing(site.hasDoubledBearing())
                .setting(style.setting());
        site.frostGrip().ifPresent(spec::frostGrip);
        site.frostDepth().ifPresent(spec::frostDepth);
        return spec;
    }
}
