package org.fencecore.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.fencecore.FencePlan;
import org.fencecore.Plans;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.style.FenceStyle;
import org.fencecore.units.Length;
import org.fencecore.units.tape.TapeFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobJsonTest {

    private static String lines(String... lines) {
        return String.join("\n", lines) + "\n";
    }

    /** The example of the Javadoc. */
    private static final String LEAST = lines(
            "{",
            "  \"version\": 1,",
            "  \"site\": {",
            "    \"lot\": {",
            "      \"corners\": [",
            "        {\"east\": \"0 ft\", \"north\": \"0 ft\"}, {\"east\": \"0 ft\", \"north\": \"50 ft\"},",
            "        {\"east\": \"40 ft\", \"north\": \"50 ft\"}, {\"east\": \"40 ft\", \"north\": \"0 ft\"}",
            "      ]",
            "    },",
            "    \"fenceOn\": [1],",
            "    \"ground\": [",
            "      {\"side\": 1, \"heights\": [",
            "        {\"station\": \"0 ft\", \"elevation\": \"10 ft\"}, {\"station\": \"50 ft\", \"elevation\": \"6.5 ft\"}",
            "      ]}",
            "    ]",
            "  },",
            "  \"style\": {}",
            "}");

    @Test
    void theLeastJobIsPlanned() {
        FencePlan plan = JobJson.read(LEAST).plan();
        assertThat(plan.isBuildable()).isTrue();
        assertThat(plan.runs()).hasSize(1);
        assertThat(plan.posts().get(0).ground())
                .isGreaterThan(plan.posts().get(7).ground());
    }

    @Test
    void aJobIsReadFromAReaderWhichStaysOpen() throws IOException {
        try (Reader reader = new StringReader("\uFEFF" + LEAST)) {
            assertThat(JobJson.write(JobJson.read(reader))).isEqualTo(JobJson.write(JobJson.read(LEAST)));
            assertThat(reader.ready()).isTrue();
        }
    }

    @Test
    void whatIsWrittenSaysEverythingAndReadsBack() {
        String written = JobJson.write(JobJson.read(LEAST));
        assertThat(written)
                .contains("\"setback\" : \"6 in\"", "\"treatment\" : \"RACKED\"", "\"woodScrews\"", "\"tape\"");
        assertThat(JobJson.write(JobJson.read(written))).isEqualTo(written);
    }

    /** Each puts something else in place of a piece of the least job. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"style\": {}     | \"style\": {\"colour\": \"red\"} | /style/colour       | there is no field \"colour\" here",
                "\"style\": {}     | \"style\": {\"a/b~\": 1}         | /style/a~1b~0       | there is no field",
                "\"style\": {}     | \"style\": {}, \"style\": {}     | /style              | stands here twice",
                "\"style\": {}     | \"style\": []                    | /style              | here stands a list",
                "\"style\": {}     | \"style\": null                  | /style              | here stands null",
                "\"style\": {}     | \"name\": \"yard\"               | ``                  | \"style\" is missing",
                "\"style\": {}     | \"style\": {}}                   | ``                  | not JSON",
                "\"style\": {}     | \"style\": {}, \"tape\": \"YARDS\" | /tape             | one of FEET_AND_INCHES",
                "\"style\": {}     | \"style\": {\"rails\": {\"rails\": 1}} | /style/rails/rails | rails was 1",
                "\"style\": {}     | \"style\": {\"rails\": {\"rails\": 2.5}} | /style/rails/rails | whole number",
                "\"style\": {}     | \"style\": {\"rails\": {\"rails\": 1e999999}} | /style/rails/rails | whole number",
                "\"style\": {}     | \"style\": {\"rails\": {\"rails\": \"3\"}} | /style/rails/rails | here stands a text",
                "\"style\": {}     | \"style\": {\"rails\": {\"railDepth\": 3.5}} | /style/rails/railDepth | here stands a number",
                "\"style\": {}     | \"style\": {\"rails\": {\"railDepth\": \"5 in\"}} | /style          | depth of the rails",
                "\"style\": {}     | \"style\": {\"top\": {\"kind\": \"wavy\"}} | /style/top/kind    | one of straight,",
                "\"style\": {}     | \"style\": {\"top\": {\"rise\": \"1 in\"}} | /style/top         | \"kind\" is missing",
                "\"style\": {}     | \"style\": {\"top\": {\"kind\": \"arched\"}} | /style/top       | \"rise\" is missing",
                "\"0 ft\"          | \"0 cubits\"                     | /site/lot/corners/0/east | \"0 cubits\" cannot be read",
                "\"0 ft\"          | \"9e999 ft\"                     | /site/lot/corners/0/east | cannot be read",
                "\"40 ft\"         | \"9000000000 m\"                 | /site/lot/corners/2 | 1,000,000 km",
                "[1]               | [5]                              | /site               | fenced side",
                "[1]               | []                               | /site               | no side is fenced",
                "[1]               | [12345678901234567890]           | /site/fenceOn/0     | at most 9 digits",
                "\"version\": 1    | \"version\": 2                   | /version            | reads version 1",
                "\"version\": 1,   | \"later\": 1, \"version\": 2,    | /version            | reads version 1",
                "\"version\": 1,   | \"name\": \"yard\",              | ``                  | \"version\" is missing",
            })
    void aBadJobIsRefusedWithItsPlace(String piece, String instead, String path, String problem) {
        assertThat(LEAST).contains(piece);
        int at = LEAST.indexOf(piece);
        String bad = LEAST.substring(0, at) + instead + LEAST.substring(at + piece.length());
        assertThatExceptionOfType(UnreadableJsonException.class)
                .isThrownBy(() -> JobJson.read(bad))
                .satisfies(refusal -> {
                    assertThat(refusal.path()).isEqualTo(path);
                    assertThat(refusal.problem()).contains(problem);
                    assertThat(refusal).hasMessageContaining(refusal.path()).hasMessageContaining(problem);
                });
    }

    @Test
    void lineAndColumnAreThoseOfTheValue() {
        String bad = LEAST.replace("[1]", "[1, true]");
        assertThatExceptionOfType(UnreadableJsonException.class)
                .isThrownBy(() -> JobJson.read(bad))
                .withMessage(
                        "/site/fenceOn/1 (line 10, column 20): here stands true or false; it must be a whole number")
                .satisfies(refusal -> {
                    assertThat(refusal.line()).isEqualTo(10);
                    assertThat(refusal.column()).isEqualTo(20);
                });
    }

    private static void assertRefused(String text, String path, String problem) {
        assertThatExceptionOfType(UnreadableJsonException.class)
                .isThrownBy(() -> JobJson.read(text))
                .satisfies(refusal -> {
                    assertThat(refusal.path()).isEqualTo(path);
                    assertThat(refusal.problem()).contains(problem);
                    assertThat(refusal.getMessage()).hasSizeLessThan(2_000);
                });
    }

    @Test
    void sizesAreBounded() {
        assertRefused("", "", "empty");
        assertRefused("   ", "", "empty");
        assertRefused("nonsense", "", "not JSON");
        assertRefused(LEAST + "1", "", "after the end");
        assertRefused("[".repeat(1_000_000), "/0".repeat(JsonText.DEEPEST), "deeper than 32 levels");
        assertRefused("{\"a\":".repeat(100_000), "/a".repeat(JsonText.DEEPEST), "deeper than 32 levels");
        assertRefused("{\"version\": " + "9".repeat(29) + "}", "/version", "at most 9 digits");
        assertRefused("{\"version\": " + "9".repeat(100) + "}", "/version", "may have at most 30");
        assertRefused("{\"version\": " + "9".repeat(100_000) + "}", "/version", "over a limit");
        assertRefused("{\"name\": \"" + "n".repeat(1_001) + "\"}", "/name", "at most 1000");
        assertRefused("{\"" + "n".repeat(100_000) + "\": 1}", "", "over a limit");
        assertRefused(
                LEAST.replace("[1]", "[" + "1,".repeat(10_000) + "1]"), "/site/fenceOn", "may have at most 10000");
    }

    @Test
    void tooManyValuesAreRefused() {
        String list = "[" + "0,".repeat(JsonText.MOST_VALUES) + "0]";
        assertRefused(list, "/" + (JsonText.MOST_VALUES - 1), "more than 5000000 values");
    }

    @Test
    void namesInAnyScriptAndWithMarkupAreKept() {
        for (String name : List.of("Гараж", "庭", "<b>&\"yard\"</b>", "tab\tand\u0007bell", "\uD83D\uDEAA")) {
            Job job = JobJson.read(LEAST).withName(name);
            assertThat(JobJson.read(JobJson.write(job)).name()).contains(name);
        }
    }

    @Test
    void whatHasNoFormIsRefusedWhenWritten() {
        Surface own = new Surface() {
            @Override
            public Optional<Length> elevationAt(Point place) {
                return Optional.of(Length.ZERO);
            }

            @Override
            public Optional<Profile> under(Polyline line) {
                return Optional.of(Plans.shots(0, 0, 1000, 0));
            }

            @Override
            public List<Interval> uncovered(Polyline line) {
                return List.of();
            }

            @Override
            public String toString() {
                return "a surface of my own";
            }
        };
        Job job = Job.of(
                Plans.levelSide().ground(own).build(), FenceStyle.builder().build());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JobJson.write(job))
                .withMessageContaining("surface was a surface of my own")
                .withMessageContaining("plane, grid, shots");
        Job eighths = JobJson.read(LEAST).withTape(TapeFormat.feetAndInches(8));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JobJson.write(eighths))
                .withMessageContaining("JSON has no name for");
    }
}
