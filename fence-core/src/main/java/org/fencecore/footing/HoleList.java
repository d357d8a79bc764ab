package org.fencecore.footing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Rounding;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;
import org.jspecify.annotations.Nullable;

/**
 * The holes of a job as one digs and fills them: alike ones together, the most first, depths rounded up to the inch.
 *
 * <p>Example: the posts of 50 ft of fence with a gate, all alike.
 *
 * <pre>{@code
 * HoleList holes = HoleList.of(footings);
 * holes.groups().get(0);                        // 8 of 10 1/2" wide, 3' 7" deep
 * holes.bags(BagSize.POUNDS_80);                // 24, each hole rounded up to whole bags
 * holes.bagsMixedTogether(BagSize.POUNDS_80);   // 22, from one big mixer
 * }</pre>
 */
public final class HoleList {

    private static final Length INCH = Length.ofInches(1);

    private final List<FootingDesign> footings;
    private final List<Group> groups;

    private HoleList(List<FootingDesign> footings, List<Group> groups) {
        this.footings = footings;
        this.groups = groups;
    }

    /**
     * Holes that are dug alike.
     *
     * @param hole the shape
     * @param depth how deep to dig, with the base, rounded up to the inch
     * @param base how thick the base is
     * @param concrete what the one that takes most takes; they differ where embedments are not whole inches
     * @param places which footings of the job they are, from 1, unmodifiable
     */
    public record Group(HoleShape hole, Length depth, Length base, Volume concrete, List<Integer> places) {

        /**
         * Copies the places.
         *
         * @param hole the shape
         * @param depth how deep to dig, with the base, rounded up to the inch
         * @param base how thick the base is
         * @param concrete what the one that takes most takes
         * @param places which footings of the job they are, from 1
         */
        public Group {
            places = List.copyOf(places);
        }

        /**
         * Returns how many bags of concrete mix to bring to each of these holes.
         *
         * @param size the bag
         * @return whole bags, rounded up
         */
        public int bagsEach(BagSize size) {
            return size.holding(concrete);
        }

        @Override
        public String toString() {
            return places.size() + " of " + hole + ", " + Written.tape(depth) + " deep";
        }
    }

    private record Key(HoleShape hole, Length depth, Length base) {}

    /**
     * Lists the holes of some footings.
     *
     * @param footings the footings in the order of their posts
     * @return the list
     */
    public static HoleList of(List<FootingDesign> footings) {
        List<FootingDesign> copy = List.copyOf(footings);
        Map<Key, List<Integer>> places = new LinkedHashMap<>();
        for (int i = 0; i < copy.size(); i++) {
            FootingDesign footing = copy.get(i);
            Key key = new Key(
                    footing.spec().hole(),
                    footing.holeDepth().roundedTo(INCH, Rounding.UP),
                    footing.spec().setting().base());
            places.computeIfAbsent(key, unseen -> new ArrayList<>()).add(i + 1);
        }
        List<Group> groups = new ArrayList<>();
        places.forEach((key, where) -> groups.add(new Group(key.hole, key.depth, key.base, most(copy, where), where)));
        // The sort keeps the order of the posts among groups of one size.
        groups.sort((a, b) -> Integer.compare(b.places.size(), a.places.size()));
        return new HoleList(copy, List.copyOf(groups));
    }

    private static Volume most(List<FootingDesign> footings, List<Integer> places) {
        Volume most = Volume.ZERO;
        FootingDesign before = null;
        for (int place : places) {
            FootingDesign footing = footings.get(place - 1);
            // Posts that are alike share a footing, which need not be worked out again.
            if (!footing.equals(before) && footing.concrete().compareTo(most) > 0) {
                most = footing.concrete();
            }
            before = footing;
        }
        return most;
    }

    /**
     * Returns the holes, alike ones together.
     *
     * @return the groups, the most holes first, unmodifiable
     */
    public List<Group> groups() {
        return groups;
    }

    /**
     * Returns how many holes there are.
     *
     * @return the count
     */
    public int count() {
        return footings.size();
    }

    /**
     * Returns the concrete of all holes.
     *
     * @return the volume
     */
    public Volume concrete() {
        return footings.stream().map(FootingDesign::concrete).reduce(Volume.ZERO, Volume::plus);
    }

    /**
     * Returns what the concrete of all holes weighs.
     *
     * @return the mass, as {@link FootingDesign#concreteWeight} has it
     */
    public Mass concreteWeight() {
        return footings.stream().map(FootingDesign::concreteWeight).reduce(Mass.ZERO, Mass::plus);
    }

    /**
     * Returns the gravel under all posts.
     *
     * @return the volume
     */
    public Volume gravel() {
        return footings.stream().map(FootingDesign::gravel).reduce(Volume.ZERO, Volume::plus);
    }

    /**
     * Returns how many bags of concrete mix the job takes if each hole is filled from bags of its own.
     *
     * @param size the bag
     * @return whole bags, rounded up for each hole, as many as {@link Group#bagsEach} for alike ones
     */
    public int bags(BagSize size) {
        int bags = 0;
        for (Group group : groups) {
            bags = Math.addExact(bags, Math.multiplyExact(group.places.size(), group.bagsEach(size)));
        }
        return bags;
    }

    /**
     * Returns how many bags of concrete mix the job takes if it is all mixed together.
     *
     * @param size the bag
     * @return whole bags, rounded up once
     */
    public int bagsMixedTogether(BagSize size) {
        return size.holding(concrete());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof HoleList that && footings.equals(that.footings);
    }

    @Override
    public int hashCode() {
        return footings.hashCode();
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Group group : groups) {
            text.append(text.isEmpty() ? "" : "; ").append(group);
        }
        return text.toString();
    }
}
