package org.fencecore.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.fencecore.json.Job;
import org.fencecore.json.JobJson;
import org.fencecore.json.UnreadableJsonException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The main job runs from a job file. */
class JobFileTest {

    @TempDir
    private Path packets;

    @ParameterizedTest
    @ValueSource(strings = {"back-yard", "garden-metric"})
    void aJobFileGivesThePacketOfItsJob(String name) throws IOException {
        Path file = Path.of("jobs", name + ".json");
        Job job = JobJson.read(Files.readString(file));
        assertThat(job.plan().isBuildable()).isTrue();

        String printed = run(file);

        assertThat(printed).startsWith(job.packet().sheet().toText());
        Map<String, String> written = new HashMap<>();
        try (Stream<Path> files = Files.list(packets.resolve(name))) {
            for (Path each : files.toList()) {
                written.put(each.getFileName().toString(), Files.readString(each));
            }
        }
        assertThat(written).isEqualTo(job.packet().files());
        assertThat(written.get("packet.html")).contains(job.name().orElseThrow());
    }

    @Test
    void aFileThatHoldsNoJobIsRefusedWithThePlaceInIt() throws IOException {
        Path file = packets.resolve("bad.json");
        String good = Files.readString(Path.of("jobs/back-yard.json"));
        Files.writeString(file, good.replace("\"centredAt\": \"10 ft\"", "\"centredAt\": 10"));
        assertThatExceptionOfType(UnreadableJsonException.class)
                .isThrownBy(() -> run(file))
                .withMessageStartingWith("/site/gates/0/centredAt (line ")
                .withMessageContaining("here stands a number");
        assertThatExceptionOfType(NoSuchFileException.class).isThrownBy(() -> run(packets.resolve("none.json")));
    }

    private String run(Path file) throws IOException {
        PrintStream console = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        System.setProperty("fence.packets", packets.toString());
        try {
            BuildPacketExample.main(new String[] {file.toString()});
        } finally {
            System.clearProperty("fence.packets");
            System.setOut(console);
        }
        return printed.toString(StandardCharsets.UTF_8);
    }
}
