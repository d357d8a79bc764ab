package org.fencecore.json;

import java.util.List;
import org.fencecore.FencePlan;

/**
 * Writes plans as JSON together with the job that they follow from, and reads them by planning that job again.
 *
 * <p>A plan is told to its last piece: findings, posts, footings, and for each run its ground, bays with rails and kick
 * boards, rails as they are cut, boards and gates. Boards are told as strips of boards alike at even steps, so that a
 * document does not grow with the boards. Worksheets are left out; they are for people, and {@link
 * org.fencecore.FencePlan#worksheets} has them.
 *
 * <p>Since planning is a pure function, a plan need not be put together from its document: {@link #read} plans the job in
 * it, and then holds the document against the plan, so that one that was changed by hand or written by another version
 * of the library is refused with the first place that differs. {@link #readJob} takes the job alone.
 *
 * <pre>{@code
 * String text = PlanJson.write(Job.of(site, style));
 * FencePlan plan = PlanJson.read(text);
 * }</pre>
 *
 * <p>Limits are those of {@link JobJson}.
 */
public final class PlanJson {

    private static final List<String> FIELDS = List.of("version", "job", "plan");

    private PlanJson() {}

    /**
     * Plans a job and writes both.
     *
     * @param job the job
     * @return the JSON, from which {@link #read} makes the same plan
     * @throws IllegalArgumentException if the job cannot be written ({@link JobJson#write}), or not be planned ({@link
     *     Job#plan})
     */
    public static String write(Job job) {
        return JsonText.write(PlanShapes.DOCUMENT.write(new PlanShapes.Document(job, job.plan())));
    }

    /**
     * Writes a plan and the job that it follows from.
     *
     * @param plan the plan
     * @return the JSON, from which {@link #read} makes the same plan
     * @throws IllegalArgumentException if the job cannot be written ({@link JobJson#write})
     */
    public static String write(FencePlan plan) {
        return JsonText.write(PlanShapes.DOCUMENT.write(new PlanShapes.Document(Job.of(plan), plan)));
    }

    /**
     * Reads a plan: plans the job in the document, and holds the document against what comes out.
     *
     * @param text the JSON
     * @return the plan
     * @throws UnreadableJsonException if it is no such JSON, or says something else than the plan of its job
     */
    public static FencePlan read(String text) {
        Place document = Place.root(JsonText.read(text));
        FencePlan plan = document.field("job").make(job(document)::plan);
        document.field("plan").requireSame(PlanShapes.RESULTS.write(plan));
        return plan;
    }

    /**
     * Reads the job of a plan alone, whatever the plan says.
     *
     * @param text the JSON
     * @return the job
     * @throws UnreadableJsonException if it is no such JSON
     */
    public static Job readJob(String text) {
        return job(Place.root(JsonText.read(text)));
    }

    private static Job job(Place document) {
        JobForms.VERSION_ONE.read(document.field("version"));
        document.fields(FIELDS);
        return JobJson.job(document.field("job"));
    }

    /**
     * Returns the JSON Schema of a plan, which stands in the jar too, as {@code org/fencecore/json/plan-1.schema.json}.
     *
     * @return the schema, in JSON Schema 2020-12
     */
    public static String schema() {
        return Definitions.schemaOf(PlanShapes.DOCUMENT::object, "urn:fencecore:plan:1", "A planned fence and its job");
    }
}
