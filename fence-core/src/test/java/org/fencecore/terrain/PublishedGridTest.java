package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.m;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.units.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A published grid of heights of a volcano's cone, 87 by 61 nodes 10 m apart: file data/volcano.json of the npm package
 * vega-datasets 3.2.1 (the 10 m grid, "should not be regarded as accurate": manual of R, datasets). Its licence is not
 * clear, so it is fetched by npm for this test alone and never kept in the sources; where it cannot be had, these tests
 * report themselves skipped. Heights between nodes computed independently, the same by plain formula and by scipy 1.17.1.
 */
class PublishedGridTest {

    private static final String PACKAGE = "vega-datasets@3.2.1";
    private static final String SHA_256 = "49578c17a2a595a83a393a6da2cc85e3d3d4c93043e942a5e04dc113ca4a8528";
    private static final Path FOLDER = Path.of("target", "published-grid");
    private static final Path FILE = FOLDER.resolve("node_modules/vega-datasets/data/volcano.json");
    private static final int COLUMNS = 87;
    private static final int ROWS = 61;

    private static int[] heights = {};
    private static GridSurface grid =
            GridSurface.of(Point.ORIGIN, m(1), List.of(List.of(m(0), m(0)), List.of(m(0), m(0))));

    @BeforeAll
    static void fetchOnce() throws IOException, InterruptedException {
        if (!Files.exists(FILE)) {
            fetch();
        }
        byte[] bytes = Files.readAllBytes(FILE);
        assertThat(sha256(bytes)).as("SHA-256 of %s", FILE).isEqualTo(SHA_256);
        heights = read(new String(bytes, StandardCharsets.UTF_8));
        List<List<Length>> rows = new ArrayList<>();
        for (int j = 0; j < ROWS; j++) {
            rows.add(Arrays.stream(heights, j * COLUMNS, (j + 1) * COLUMNS)
                    .mapToObj(height -> m(height))
                    .toList());
        }
        grid = GridSurface.of(Point.ORIGIN, m(10), rows);
    }

    private static void fetch() throws IOException, InterruptedException {
        Files.createDirectories(FOLDER);
        Process npm;
        try {
            npm = new ProcessBuilder(
                            "npm", "install", "--prefix", ".", "--ignore-scripts", "--no-audit", "--no-fund", PACKAGE)
                    .directory(FOLDER.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(FOLDER.resolve("npm.log").toFile())
                    .start();
        } catch (IOException e) {
            assumeTrue(
                    false,
                    "skipped: the published grid " + PACKAGE + " needs npm, which cannot be run: " + e.getMessage());
            return;
        }
        boolean ended = npm.waitFor(3, TimeUnit.MINUTES);
        if (!ended) {
            npm.destroy();
        }
        assumeTrue(
                ended && npm.exitValue() == 0 && Files.exists(FILE),
                "skipped: the published grid " + PACKAGE + " could not be fetched by npm; see " + FOLDER + "/npm.log");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every JDK has SHA-256", e);
        }
    }

    private static int[] read(String json) {
        Matcher values = Pattern.compile("\"values\"\\s*:\\s*\\[([^\\]]*)\\]").matcher(json);
        assertThat(values.find()).as("values in the file").isTrue();
        return Pattern.compile(",")
                .splitAsStream(values.group(1))
                .map(String::strip)
                .mapToInt(Integer::parseInt)
                .toArray();
    }

    @Test
    void isTheGridThatIsMeant() {
        assertThat(heights).hasSize(COLUMNS * ROWS);
        assertThat(Arrays.stream(heights).sum()).isEqualTo(690_907);
        assertThat(Arrays.stream(heights).min()).hasValue(94);
        assertThat(Arrays.stream(heights).max()).hasValue(195);
        assertThat(heights[30 * COLUMNS + 19]).isEqualTo(195);
        assertThat(new int[] {heights[0], heights[86], heights[60 * COLUMNS], heights[60 * COLUMNS + 86]})
                .containsExactly(103, 94, 100, 97);
        assertThat(grid).hasToString("87 by 61 heights, 10000 mm apart, from (E 0 in, N 0 in)");
    }

    @ParameterizedTest
    @CsvSource({
        "5, 5, 103.750000",
        "123.4, 456.7, 131.452200",
        "305, 275, 151.750000",
        "305, 307.5, 160.625000",
        "250, 300, 163",
        "257.5, 312.5, 164.125000",
        "433, 218, 141.260000",
        "859.9, 599.9, 97.000100",
        "333.3, 333.3, 175.320000",
        "199.99, 310.01, 191.002999"
    })
    void bilinearHeights(double x, double y, double height) {
        assertThat(grid.elevationAt(Point.of(m(x), m(y))).orElseThrow().metres())
                .isCloseTo(height, within(1.1e-6));
    }

    /** 60 m with posts at 2.4 m. The profile is within 1/16 in of the grid, and chords from post to post follow. */
    @Test
    void profileUnderALine() {
        double[] posts = {
            106.0000, 106.0960, 106.1920, 106.2880, 106.3840, 106.4800, 106.7073, 107.0188, 107.3855, 107.8075,
                    108.2848,
            108.6400, 108.8800, 109.1200, 109.3600, 109.6000, 109.8181, 109.9617, 110.0500, 110.0831, 110.0608,
                    109.9520,
            109.6640, 109.3760, 109.0880, 108.8000
        };
        Polyline line = Polyline.of(List.of(Point.of(m(600), m(100)), Point.of(m(648), m(136))));
        Profile under = grid.under(line).orElseThrow();
        Profile.Builder chords = Profile.builder();
        double steepest = 0;
        for (int i = 0; i < posts.length; i++) {
            Length station = m(2.4).times(i);
            assertThat(under.elevationAt(station).metres()).isCloseTo(posts[i], within(0.0016));
            Length exact = grid.elevationAt(line.pointAt(station)).orElseThrow();
            assertThat(exact.metres()).isCloseTo(posts[i], within(5.1e-5));
            chords.point(station, exact);
            if (i > 0) {
                steepest = Math.max(steepest, Math.abs(posts[i] - posts[i - 1]) / 2.4 * 100);
            }
        }
        Profile fence = chords.build();
        assertThat(fence.lengthAlong(Length.ZERO, m(60)).metres()).isCloseTo(60.31364, within(5.1e-6));
        assertThat(steepest).isCloseTo(19.888, within(0.006)); // from heights of 4 decimals
        assertThat(under.extent().length()).isEqualTo(m(60));
    }

    /** All nodes as shots, split one way or the other: no triangle is farther from a cell's heights than both. */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 103.5, 104.0",
        "123.4, 456.7, 131.340, 131.670",
        "305, 275, 151.5, 152.0",
        "305, 307.5, 160.5, 160.75",
        "250, 300, 163, 163",
        "257.5, 312.5, 164.25, 163.75",
        "433, 218, 141.200, 141.400",
        "859.9, 599.9, 97.010, 97.000",
        "333.3, 333.3, 175.320, 175.320",
        "199.99, 310.01, 191.003, 191.002"
    })
    void shotsAtTheNodes(double x, double y, double oneWay, double otherWay) {
        List<Shot> shots = new ArrayList<>();
        for (int node = 0; node < heights.length; node++) {
            shots.add(Shot.of(m(10 * (node % COLUMNS)), m(10 * (node / COLUMNS)), m(heights[node])));
        }
        double height = ShotSurface.of(shots)
                .elevationAt(Point.of(m(x), m(y)))
                .orElseThrow()
                .metres();
        assertThat(Math.min(Math.abs(height - oneWay), Math.abs(height - otherWay)))
                .isLessThan(1e-6);
    }

    @Test
    void keepsTheHighestPoint() {
        Polyline over = Polyline.of(List.of(Point.of(m(100), m(300)), Point.of(m(300), m(300))));
        ProfilePoint top = grid.under(over).orElseThrow().highest();
        assertThat(top).isEqualTo(new ProfilePoint(m(90), m(195)));
    }
}
