package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The published schemas are those of the forms, are schemas, and take what is written.
 *
 * <p>After a wanted change, run {@code mvn -B -ntp -q test -Dtest=SchemaTest -Dschema.update=true
 * -Dsurefire.failIfNoSpecifiedTests=false} at the root, and commit the difference with the change.
 */
class SchemaTest {

    private static final Path FOLDER = Path.of("src/main/resources/org/fencecore/json");

    /** What a validator of JSON Schema 2020-12 has against a document. */
    static List<String> problems(String schema, String document) {
        Schema compiled = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON);
        return compiled.validate(document, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static void assertPublished(String name, String schema) throws IOException {
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("schema.update")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, schema);
        }
        assertThat(file)
                .as("schema %s is not that of the forms; on purpose? then run with -Dschema.update=true", name)
                .exists()
                .usingCharset(StandardCharsets.UTF_8)
                .hasContent(schema);
    }

    @Test
    void thePublishedSchemasAreThoseOfTheForms() throws IOException {
        assertPublished("job-1.schema.json", JobJson.schema());
        assertPublished("plan-1.schema.json", PlanJson.schema());
    }

    /** JSON Schema 2020-12, section 9.3.1: a schema is valid against the meta-schema it names. */
    @Test
    void theSchemasAreSchemas() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(JobJson.schema(), InputFormat.JSON)).isEmpty();
        assertThat(meta.validate(PlanJson.schema(), InputFormat.JSON)).isEmpty();
        assertThat(meta.validate("{\"type\": \"no such type\"}", InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void theSchemaRefusesWhatTheReaderRefuses() {
        String job = JobJson.write(EveryOption.job());
        assertThat(problems(JobJson.schema(), job)).isEmpty();
        for (String bad : List.of(
                job.replaceFirst("\"version\" : 1", "\"version\" : 2"),
                job.replaceFirst("\"site\"", "\"place\""),
                job.replaceFirst("\"setback\" : \"[^\"]*\"", "\"setback\" : 6"),
                job.replaceFirst("\"kind\" : \"[^\"]*\"", "\"kind\" : \"other\""),
                job.replaceFirst("\"bearing\" :", "\"direction\" :"))) {
            assertThat(bad).isNotEqualTo(job);
            assertThat(problems(JobJson.schema(), bad)).isNotEmpty();
        }
    }

    @Test
    void theSampleJobsKeepToTheSchema() throws IOException {
        List<Path> samples;
        try (Stream<Path> files = Files.list(Path.of("../fence-examples/jobs"))) {
            samples = files.toList();
        }
        assertThat(samples).hasSizeGreaterThanOrEqualTo(2);
        for (Path sample : samples) {
            String text = Files.readString(sample);
            assertThat(problems(JobJson.schema(), text)).as("%s", sample).isEmpty();
            Job job = JobJson.read(text);
            assertThat(job.packet().sheet().toText()).as("%s", sample).doesNotContain("BLOCKER", "CANNOT");
            assertThat(problems(PlanJson.schema(), PlanJson.write(job))).isEmpty();
        }
    }
}
