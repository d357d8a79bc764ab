package org.fencecore.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import org.fencecore.geometry.Interval;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Where one rule is broken, gathered so that all of one place is told in one finding. */
final class Breaches {

    /** Stretches as near as this are told as one: the joints between parts are not worth a reader's time. */
    private static final Length JOINT = Length.ofMillimetres(1);

    private static final int MOST_TOLD = 8;

    private final BinaryOperator<Length> worse;
    private final Map<String, Breach> byPlace = new LinkedHashMap<>();

    /** Gathers breaches of which the worse of two values is told, such as the higher. */
    Breaches(BinaryOperator<Length> worse) {
        this.worse = worse;
    }

    void along(FencePart part, List<Interval> stretches, Length value) {
        Breach breach = byPlace.computeIfAbsent(part.place(), Breach::new);
        breach.worst = breach.stretches.isEmpty() ? value : worse.apply(breach.worst, value);
        stretches.forEach(stretch -> breach.stretches.add(stretch.shiftedBy(part.firstStation())));
    }

    void at(PostPart post) {
        byPlace.computeIfAbsent(post.place(), Breach::new).posts.add(post.name());
    }

    List<Finding> findings(Function<Breach, Finding> toFinding) {
        return byPlace.values().stream().map(toFinding).toList();
    }

    /** Where one rule is broken at one place. */
    static final class Breach {

        private final String place;
        private final List<Interval> stretches = new ArrayList<>();
        private final List<String> posts = new ArrayList<>();
        private Length worst = Length.ZERO;

        private Breach(String place) {
            this.place = place;
        }

        String place() {
            return place;
        }

        Length worst() {
            return worst;
        }

        boolean hasStretches() {
            return !stretches.isEmpty();
        }

        boolean hasPosts() {
            return !posts.isEmpty();
        }

        /** Such as {@code from 0.00 ft to 12.50 ft and from 30.00 ft to 40.00 ft}. */
        String stations() {
            List<Interval> joined = Interval.merged(stretches.stream()
                    .map(stretch -> Interval.of(stretch.start(), stretch.end().plus(JOINT)))
                    .toList());
            return list(joined.stream()
                    .map(stretch -> "from " + Written.station(stretch.start()) + " to "
                            + Written.station(stretch.end().minus(JOINT)))
                    .toList());
        }

        /** Such as {@code post 3 and post 4}. */
        String postNames() {
            return list(posts);
        }

        private static String list(List<String> all) {
            if (all.size() <= MOST_TOLD) {
                return Written.list(all);
            }
            List<String> told = new ArrayList<>(all.subList(0, MOST_TOLD));
            told.add((all.size() - MOST_TOLD) + " more");
            return Written.list(told);
        }
    }
}
