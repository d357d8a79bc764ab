package org.fencecore.json;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.SetPost;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.packet.BuildPacket;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.tape.TapeFormat;

/**
 * A job as a file holds it: what the ground is, what the owner wants, which posts stand already, and how its sheets are
 * written.
 *
 * <p>Example: a job read from a file, planned, and its packet.
 *
 * <pre>{@code
 * Job job = JobJson.read(text);
 * FencePlan plan = job.plan();
 * Map<String, String> files = job.packet().files();
 * }</pre>
 */
public final class Job {

    private final Site site;
    private final FenceStyle style;
    private final Optional<String> name;
    private final List<SetPost> setPosts;
    private final TapeFormat tape;
    private final Paper paper;

    private Job(
            Site site, FenceStyle style, Optional<String> name, List<SetPost> setPosts, TapeFormat tape, Paper paper) {
        this.site = site;
        this.style = style;
        this.name = name;
        this.setPosts = setPosts;
        this.tape = tape;
        this.paper = paper;
    }

    /**
     * Returns a job without a name, its sheets in feet and inches to a sixteenth on Letter paper.
     *
     * @param site what the ground is
     * @param style what the owner wants
     * @return the job
     */
    public static Job of(Site site, FenceStyle style) {
        return new Job(
                Objects.requireNonNull(site, "site"),
                Objects.requireNonNull(style, "style"),
                Optional.empty(),
                List.of(),
                TapeFormat.feetAndInches(16),
                Paper.LETTER);
    }

    /**
     * Returns the job of a plan: its site, its style and the posts that stand already.
     *
     * @param plan the plan
     * @return the job, from which {@link #plan} makes the same plan
     */
    public static Job of(FencePlan plan) {
        return of(plan.site(), plan.style()).withSetPosts(plan.setPosts());
    }

    /**
     * Returns this job with a name.
     *
     * @param newName what the sheets call it
     * @return the job with that name
     */
    public Job withName(String newName) {
        return new Job(site, style, Optional.of(newName), setPosts, tape, paper);
    }

    /**
     * Returns this job with posts that stand already.
     *
     * @param posts the posts as measured, each with its number on the plan
     * @return the job with those posts, and no others
     */
    public Job withSetPosts(List<SetPost> posts) {
        return new Job(site, style, name, List.copyOf(posts), tape, paper);
    }

    /**
     * Returns this job with another way to write lengths on its sheets.
     *
     * @param newTape the way; one of those that {@link JobJson} has a name for, or it cannot be written as JSON
     * @return the job
     */
    public Job withTape(TapeFormat newTape) {
        return new Job(site, style, name, setPosts, Objects.requireNonNull(newTape, "newTape"), paper);
    }

    /**
     * Returns this job with another paper for its drawings.
     *
     * @param newPaper the paper
     * @return the job
     */
    public Job withPaper(Paper newPaper) {
        return new Job(site, style, name, setPosts, tape, Objects.requireNonNull(newPaper, "newPaper"));
    }

    /**
     * Returns what the ground is.
     *
     * @return the site
     */
    public Site site() {
        return site;
    }

    /**
     * Returns what the owner wants.
     *
     * @return the style
     */
    public FenceStyle style() {
        return style;
    }

    /**
     * Returns what the sheets call the job.
     *
     * @return the name; empty when not said
     */
    public Optional<String> name() {
        return name;
    }

    /**
     * Returns the posts that stand already.
     *
     * @return the posts as measured, unmodifiable
     */
    public List<SetPost> setPosts() {
        return setPosts;
    }

    /**
     * Returns how lengths are written on the sheets.
     *
     * @return the way
     */
    public TapeFormat tape() {
        return tape;
    }

    /**
     * Returns what the drawings are printed on.
     *
     * @return the paper
     */
    public Paper paper() {
        return paper;
    }

    /**
     * Plans the job.
     *
     * @return the plan, to the posts that stand already
     * @throws IllegalArgumentException if one of these is none of the plan's, or stands twice
     */
    public FencePlan plan() {
        FencePlan plan = FencePlanner.plan(site, style);
        return setPosts.isEmpty() ? plan : plan.withSetPosts(setPosts);
    }

    /**
     * Plans the job and puts its packet together.
     *
     * @return the packet, with the job's name, tape and paper
     * @throws IllegalArgumentException if {@link #plan} throws it
     */
    public BuildPacket packet() {
        BuildPacket packet = BuildPacket.of(plan()).withTape(tape).withPaper(paper);
        return name.map(packet::withJob).orElse(packet);
    }
}
