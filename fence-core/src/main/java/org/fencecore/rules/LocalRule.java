package org.fencecore.rules;

import java.util.List;
import java.util.Objects;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Segment;
import org.fencecore.geometry.Zone;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;

/**
 * One rule of the place, in the caller's words and with the caller's source.
 *
 * <p>Every figure in it was given by the caller. What breaks it by less than a hundredth of a millimetre is held to be
 * rounding.
 */
public abstract sealed class LocalRule permits HeightLimit, CornerVisibility, ClearGround, PoolBarrier {

    /** Less than this is rounding: 0.01 mm. */
    static final Length ROUNDING = Length.ofNanometres(10_000);

    private static final Length LARGEST = Length.ofFeet(10_000);

    private final String words;
    private final Citation source;

    LocalRule(String words, Citation source) {
        if (words.isBlank()) {
            throw new IllegalArgumentException("words was blank; findings name the rule, so say it in a few words");
        }
        this.words = words;
        this.source = Objects.requireNonNull(source, "source");
    }

    /**
     * Returns what the rule is called.
     *
     * @return the caller's words
     */
    public String words() {
        return words;
    }

    /**
     * Returns where the rule comes from.
     *
     * @return the caller's source
     */
    public Citation source() {
        return source;
    }

    /**
     * Returns the ground that it holds for.
     *
     * @return the zone
     */
    public abstract Zone zone();

    /** Returns a finding for each place where the fence breaks this rule. */
    abstract List<Finding> check(Fence fence);

    /** Returns where along a line of posts this rule bars holes that reach so far. */
    List<Interval> forbidden(Segment postLine, Length holeRadius) {
        return List.of();
    }

    /** The fence as the rules see it; the leaves of the gates are among the parts. */
    record Fence(List<FencePart> parts, List<PostPart> posts, List<GatePart> gates) {}

    static Length requireSize(String name, Length value) {
        if (value.isNegative() || value.compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException(
                    name + " was " + value + "; it must be from 0 to 10,000 ft, so check its unit and sign");
        }
        return value;
    }

    static Ratio requireShare(String name, Ratio value) {
        if (value.value() < 0 || value.value() > 1) {
            throw new IllegalArgumentException(name + " was " + value.percent()
                    + " %; it must be from 0 to 100 %, the open part of the whole face");
        }
        return value;
    }

    /** The highest point of a profile on stretches within it, at least one. */
    static Length highest(Profile profile, List<Interval> stretches) {
        return stretches.stream()
                .map(stretch -> profile.between(stretch.start(), stretch.end())
                        .highest()
                        .elevation())
                .reduce(Length::max)
                .orElseThrow();
    }

    /** The lowest point of a profile on stretches within it, at least one. */
    static Length lowest(Profile profile, List<Interval> stretches) {
        return stretches.stream()
                .map(stretch ->
                        profile.between(stretch.start(), stretch.end()).lowest().elevation())
                .reduce(Length::min)
                .orElseThrow();
    }

    /**
     * Returns the rule's name.
     *
     * @return the caller's words
     */
    @Override
    public String toString() {
        return words;
    }
}
