package org.fencecore.stakeout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.fencecore.FencePlan;
import org.fencecore.Run;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * The stakes of a plan: for every post of every run where it goes along the string, from both ends so that a crew can
 * check, level and for a tape that lies on the ground, and how far below the string the ground is.
 *
 * <p>Strings are level, 12 in over the ground at the higher end of their run, if not said otherwise (common practice, no
 * source). They are straight and without sag. Have underground lines marked before any stake is driven.
 *
 * <p>Sources: geometry.
 *
 * <p>Example: a string of 49 ft with its first post 1 3/4 in from the corner, on ground that rises 10 % from there. The
 * last post is 48 ft 10 1/4 in from the corner and 4 ft 10 1/2 in higher; a tape on the ground reads 49 ft 1 3/16 in. The
 * string is level a foot over the last post, so at the first the ground is 5 ft 10 1/2 in below it.
 *
 * <pre>{@code
 * List<Stake> stakes = StakeSheet.of(plan).stakes();
 * stakes.get(0).drop();                   // 5 ft 10.45 in
 * stakes.get(7).fromStart();              // 48 ft 10 1/4 in
 * stakes.get(7).fromStartOnGround();      // 49 ft 1.165 in
 * stakes.get(7).fromEnd();                // 1 3/4 in
 * }</pre>
 */
public final class StakeSheet {

    /** What a tape on the ground may read too much before it is told. */
    private static final Length TELLING = Length.ofInches(0.25);

    private final StringHeight height;
    private final List<StakedRun> runs;

    private StakeSheet(StringHeight height, List<StakedRun> runs) {
        this.height = height;
        this.runs = runs;
    }

    /**
     * Returns the stakes of a plan under level strings 12 in over the higher end of each run.
     *
     * @param plan the plan, buildable or not
     * @return the sheet, without stakes if the plan has no runs
     */
    public static StakeSheet of(FencePlan plan) {
        return of(plan, StringHeight.level(Length.ofInches(12)));
    }

    /**
     * Returns the stakes of a plan.
     *
     * @param plan the plan, buildable or not
     * @param height how high the strings are tied
     * @return the sheet, without stakes if the plan has no runs
     */
    public static StakeSheet of(FencePlan plan, StringHeight height) {
        Objects.requireNonNull(height, "height");
        return new StakeSheet(
                height,
                plan.runs().stream().map(run -> StakedRun.of(run, height)).toList());
    }

    /**
     * Returns how high the strings are tied.
     *
     * @return the height
     */
    public StringHeight height() {
        return height;
    }

    /**
     * Returns all stakes. A corner post has one on each of its runs.
     *
     * @return the stakes run by run along the fence, unmodifiable
     */
    public List<Stake> stakes() {
        List<Stake> stakes = new ArrayList<>();
        for (StakedRun staked : runs) {
            staked.run().posts().forEach(post -> stakes.add(new Stake(staked, post)));
        }
        return List.copyOf(stakes);
    }

    /**
     * Returns the stakes of one run.
     *
     * @param run a run of the plan
     * @return its stakes along the run, unmodifiable
     * @throws IllegalArgumentException if the run is not of this plan
     */
    public List<Stake> stakes(Run run) {
        StakedRun staked = runs.stream()
                .filter(one -> one.run() == run)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "run was " + run + ", not one of this plan; take it from the runs of the plan"));
        return run.posts().stream().map(post -> new Stake(staked, post)).toList();
    }

    /**
     * Returns what is to be watched for:
     *
     * <ul>
     *   <li>warning {@code string-in-ground}, the ground reaches up to the string between its ends;
     *   <li>note {@code tape-on-slope}, a tape laid on the ground reads over 1/4 in more than a level one.
     * </ul>
     *
     * @return all findings, unmodifiable
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (StakedRun staked : runs) {
            string(staked, findings);
            tape(staked, findings);
        }
        return List.copyOf(findings);
    }

    private static void string(StakedRun staked, List<Finding> findings) {
        Clearance clearance = staked.run().ground().clearanceUnder(staked.profile());
        Length least = clearance.min();
        boolean between =
                clearance.minStation().isPositive() && clearance.minStation().compareTo(staked.length()) < 0;
        if (between && !least.isPositive()) {
            Length raise = least.negated().plus(staked.above());
            findings.add(Finding.warning(
                            "string-in-ground",
                            staked.run().toString(),
                            "the ground reaches " + Written.tape(least.abs(), Rounding.UP) + " over the string "
                                    + Written.station(staked.lead().plus(clearance.minStation()))
                                    + " from its start")
                    .withRemedy("tie the string " + Written.tape(raise, Rounding.UP)
                            + " higher at both ends and add that to every drop")
                    .withSource(Citation.GEOMETRY));
        }
    }

    private static void tape(StakedRun staked, List<Finding> findings) {
        Length more =
                staked.run().ground().lengthAlong(Length.ZERO, staked.length()).minus(staked.length());
        if (more.compareTo(TELLING) > 0) {
            findings.add(Finding.note(
                            "tape-on-slope",
                            staked.run().toString(),
                            "a tape laid on the ground reads " + Written.tape(more)
                                    + " more than a level one over the whole run")
                    .withRemedy("hold the tape level, or use the marks for a tape on the ground")
                    .withSource(Citation.GEOMETRY));
        }
    }

    /**
     * Works out every stake line by line.
     *
     * @return a worksheet for each stake, ending with its cut or fill, unmodifiable
     */
    public List<Worksheet> worksheets() {
        return stakes().stream().map(Stake::worksheet).toList();
    }
}
