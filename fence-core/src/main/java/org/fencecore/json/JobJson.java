package org.fencecore.json;

import java.io.IOException;
import java.io.Reader;

/**
 * Reads and writes jobs as JSON, for programs in other languages and for files.
 *
 * <p>The fields are named after the methods of {@link org.fencecore.site.Site.Builder}, {@link
 * org.fencecore.style.FenceStyle.Builder} and the other builders, and {@link #schema} has them all. What a builder has a
 * usual value for may be left out; what is written says everything. Quantities are texts with their unit: a length is what
 * {@link org.fencecore.units.Length#parse} reads, and what is written reads back as the very value.
 *
 * <p>The ground is told as a site holds it: heights along the sides, or a surface. Level notes and drops from a string are
 * reduced first, by the package {@code org.fencecore.terrain}, whose findings are then seen.
 *
 * <p>Limits: 50 million characters, 5 million values, 32 levels, texts of 1,000 characters, numbers of 30.
 *
 * <p>Example: a job with the least that there can be, a lot of four corners with one side fenced.
 *
 * <pre>{@code
 * Job job = JobJson.read("""
 *         {
 *           "version": 1,
 *           "site": {
 *             "lot": {
 *               "corners": [
 *                 {"east": "0 ft", "north": "0 ft"}, {"east": "0 ft", "north": "50 ft"},
 *                 {"east": "40 ft", "north": "50 ft"}, {"east": "40 ft", "north": "0 ft"}
 *               ]
 *             },
 *             "fenceOn": [1],
 *             "ground": [
 *               {"side": 1, "heights": [
 *                 {"station": "0 ft", "elevation": "10 ft"}, {"station": "50 ft", "elevation": "6.5 ft"}
 *               ]}
 *             ]
 *           },
 *           "style": {}
 *         }
 *         """);
 * job.plan().posts().size();    // 8
 * }</pre>
 *
 * <p>Sources: the format is this project's own, JSON as RFC 8259 has it; the schema is in JSON Schema 2020-12, places in
 * messages are JSON Pointers, RFC 6901.
 */
public final class JobJson {

    private JobJson() {}

    /**
     * Reads a job.
     *
     * @param text the JSON
     * @return the job
     * @throws UnreadableJsonException if it is no such JSON: the first thing wrong, with its path, line and column
     */
    public static Job read(String text) {
        return job(Place.root(JsonText.read(text)));
    }

    /**
     * Reads a job from a file or elsewhere; the caller closes it.
     *
     * @param from where it is read from, such as {@code Files.newBufferedReader(path)}
     * @return the job
     * @throws UnreadableJsonException if it is no such JSON: the first thing wrong, with its path, line and column
     * @throws IOException if it cannot be read at all
     */
    public static Job read(Reader from) throws IOException {
        return job(Place.root(JsonText.read(from)));
    }

    /** The version is looked at first: of another one, no field is what it seems. */
    static Job job(Place place) {
        JobForms.VERSION_ONE.read(place.field("version"));
        return JobForms.JOB.read(place);
    }

    /**
     * Writes a job.
     *
     * @param job the job
     * @return the JSON, from which {@link #read(String)} makes an equal job
     * @throws IllegalArgumentException if the job holds what JSON has no form for: a surface of the caller's own, a tape
     *     other than feet and inches or inches to a sixteenth, feet to a hundredth, millimetres, or metres to a
     *     thousandth, or wood values that were taken out of the library's table and given back to it
     */
    public static String write(Job job) {
        return JsonText.write(JobForms.JOB.write(job));
    }

    /**
     * Returns the JSON Schema of a job, which stands in the jar too, as {@code org/fencecore/json/job-1.schema.json}.
     *
     * @return the schema, in JSON Schema 2020-12
     */
    public static String schema() {
        return Definitions.schemaOf(JobForms.JOB::object, "urn:fencecore:job:1", "A fence to be planned");
    }
}
