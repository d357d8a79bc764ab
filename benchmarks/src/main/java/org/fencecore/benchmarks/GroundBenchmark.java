package org.fencecore.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.terrain.Shot;
import org.fencecore.terrain.ShotSurface;
import org.fencecore.units.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What it costs to bring 100,000 spot shots over 1,000 by 1,000 ft to the ground under a line of 2,100 ft; and, for
 * comparison, to triangulate the same places with a general geometry library.
 *
 * <p>{@code java -jar benchmarks/target/benchmarks.jar Ground}
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 3,
        jvmArgsAppend = {"-Xms1g", "-Xmx1g"})
@Warmup(iterations = 3)
@Measurement(iterations = 10)
public class GroundBenchmark {

    /** How many shots there are. */
    static final int SHOTS = 100_000;

    private static final double WIDE_FEET = 1_000;

    private final List<Shot> shots = new ArrayList<>();
    private final List<Coordinate> places = new ArrayList<>();
    private final Polyline line = Polyline.of(List.of(at(5, 5), at(990, 400), at(20, 990)));

    /** Makes the shots, the same every time. */
    public GroundBenchmark() {
        Random random = new Random(SHOTS);
        for (int i = 0; i < SHOTS; i++) {
            Point place = at(WIDE_FEET * random.nextDouble(), WIDE_FEET * random.nextDouble());
            shots.add(new Shot(place, Length.ofFeet(100 + random.nextDouble())));
            places.add(new Coordinate(place.east().feet(), place.north().feet()));
        }
    }

    private static Point at(double east, double north) {
        return Point.of(Length.ofFeet(east), Length.ofFeet(north));
    }

    /** The library's surface, from the shots to the profile. */
    @Benchmark
    public Profile shotsToProfile() {
        return surface().under(line).orElseThrow();
    }

    /** The library's surface alone. */
    @Benchmark
    public ShotSurface surface() {
        return ShotSurface.of(shots);
    }

    /** Only the triangulation, by JTS. */
    @Benchmark
    public Object jtsTriangles() {
        return jts().getSubdivision();
    }

    /** The triangulation by JTS, made when it is asked for. */
    DelaunayTriangulationBuilder jts() {
        DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
        builder.setSites(places);
        return builder;
    }
}
