package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.ft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.geometry.ground.Surface;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

class TerrainProperties {

    /** What counts as on a shot is 1/16 in off it: on a plane of up to 42 %, 0.7 mm of height, at both ends of a chord. */
    private static final Length NEAR = Length.ofMillimetres(1);

    /** Shots, a grid, a plane, level notes and string drops that tell of the same ground give the same ground. */
    @Property(tries = 200)
    void everyWayOfTakingTheGroundGivesTheSame(
            @ForAll @IntRange(min = -30, max = 30) int eastward,
            @ForAll @IntRange(min = -30, max = 30) int northward,
            @ForAll long seed) {
        Random random = new Random(seed);
        Plane plane = Plane.of(Point.ORIGIN, ft(100), Slope.ofPercent(eastward), Slope.ofPercent(northward));
        Polyline line = lineWithin(random, 5);
        Profile ground = plane.under(line).orElseThrow();

        assertSameGround(shots(random, plane, 60).under(line).orElseThrow(), ground);
        assertSameGround(grid(plane).under(line).orElseThrow(), ground);
        assertSameGround(levelled(ground), ground);
        assertSameGround(measuredDown(ground), ground);
    }

    private static void assertSameGround(Profile found, Profile ground) {
        assertThat(found.extent()).isEqualTo(ground.extent());
        TreeSet<Length> stations = new TreeSet<>();
        found.points().forEach(point -> stations.add(point.station()));
        ground.points().forEach(point -> stations.add(point.station()));
        for (Length station : stations) {
            assertThat(found.elevationAt(station)
                            .minus(ground.elevationAt(station))
                            .abs())
                    .isLessThan(NEAR);
        }
    }

    private static Profile levelled(Profile ground) {
        LevelNotes.Builder notes =
                LevelNotes.from("benchmark", ft(100)).backsight(ft(50)); // high enough over all of it
        for (ProfilePoint point : ground.points()) {
            String name = "at " + point.station();
            notes.intermediate(name, ft(150).minus(point.elevation())).station(name, point.station());
        }
        return notes.foresight("benchmark", ft(50)).build().profile().orElseThrow();
    }

    private static Profile measuredDown(Profile ground) {
        StringDrops.Builder drops = StringDrops.below(ft(150));
        ground.points().forEach(point -> drops.drop(point.station(), ft(150).minus(point.elevation())));
        return drops.build().profile();
    }

    private static ShotSurface shots(Random random, Surface ground, int count) {
        List<Shot> shots = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            shots.add(on(ground, Feet.at(corner % 2 * 80, corner / 2 * 80)));
        }
        for (int i = 0; i < count; i++) {
            shots.add(on(ground, Feet.at(hundredths(random), hundredths(random))));
        }
        return ShotSurface.of(shots);
    }

    private static Shot on(Surface ground, Point place) {
        return new Shot(place, ground.elevationAt(place).orElseThrow());
    }

    private static double hundredths(Random random) {
        return random.nextInt(8_001) / 100.0;
    }

    private static GridSurface grid(Surface ground) {
        List<List<Length>> rows = new ArrayList<>();
        for (int j = 0; j <= 8; j++) {
            List<Length> row = new ArrayList<>();
            for (int i = 0; i <= 8; i++) {
                row.add(ground.elevationAt(Feet.at(10.0 * i, 10.0 * j)).orElseThrow());
            }
            rows.add(row);
        }
        return GridSurface.of(Point.ORIGIN, ft(10), rows);
    }

    private static Polyline lineWithin(Random random, int points) {
        List<Point> places = new ArrayList<>();
        while (places.size() < points) {
            Point next = Feet.at(hundredths(random), hundredths(random));
            if (places.isEmpty() || !places.get(places.size() - 1).equals(next)) {
                places.add(next);
            }
        }
        return Polyline.of(places);
    }

    /** A bumpy surface that all may read differently, but each the same from both ends. */
    @Property(tries = 200)
    void theLineReversedHasTheGroundMirrored(@ForAll long seed) {
        Random random = new Random(seed);
        ShotSurface shots = bumpy(random, 80);
        GridSurface grid = bumpyGrid(random);
        Polyline line = lineWithin(random, 4);

        assertThat(shots.under(line.reversed())).isEqualTo(shots.under(line).map(Profile::reversed));
        assertThat(grid.under(line.reversed())).isEqualTo(grid.under(line).map(Profile::reversed));
    }

    private static ShotSurface bumpy(Random random, int count) {
        List<Shot> shots = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            shots.add(new Shot(Feet.at(corner % 2 * 80, corner / 2 * 80), ft(100 + random.nextInt(10))));
        }
        TreeSet<String> taken = new TreeSet<>(List.of("0.0 0.0", "80.0 0.0", "0.0 80.0", "80.0 80.0"));
        for (int i = 0; i < count; i++) {
            double east = random.nextInt(81);
            double north = random.nextInt(81);
            if (taken.add(east + " " + north)) {
                shots.add(Feet.shot(east, north, 100 + random.nextInt(10)));
            }
        }
        return ShotSurface.of(shots);
    }

    private static GridSurface bumpyGrid(Random random) {
        List<List<Length>> rows = new ArrayList<>();
        for (int j = 0; j <= 8; j++) {
            List<Length> row = new ArrayList<>();
            for (int i = 0; i <= 8; i++) {
                row.add(ft(100 + random.nextInt(10)));
            }
            rows.add(row);
        }
        return GridSurface.of(Point.ORIGIN, ft(10), rows);
    }

    /** Shots at whole feet lie on circles and lines by the dozen, and lines run over shots and along edges. */
    @Property(tries = 200)
    void aProfileIsTheSurfaceAlongItsLine(@ForAll long seed, @ForAll @IntRange(min = 3, max = 300) int count) {
        Random random = new Random(seed);
        ShotSurface shots = bumpy(random, count);
        Polyline line = Polyline.of(List.of(
                Feet.at(random.nextInt(81), random.nextInt(40)), Feet.at(random.nextInt(81), 40 + random.nextInt(41))));
        Profile under = shots.under(line).orElseThrow();
        for (int i = 0; i <= 50; i++) {
            Length station = line.length().portion(i, 50);
            // Grades reach 1,000 % between neighbours a foot apart, and what counts as on a shot is 1/16 in.
            assertThat(under.elevationAt(station).inches())
                    .isCloseTo(
                            shots.elevationAt(line.pointAt(station))
                                    .orElseThrow()
                                    .inches(),
                            within(1.25));
        }
    }

    @Property(tries = 100)
    void theOrderOfShotsDoesNotMatter(@ForAll long seed) {
        Random random = new Random(seed);
        ShotSurface shots = bumpy(random, 100);
        List<Shot> shuffled = new ArrayList<>(shots.shots());
        Collections.shuffle(shuffled, random);
        assertThat(ShotSurface.of(shuffled).facets()).isEqualTo(shots.facets());
    }

    /** No shot is in the circle through a triangle's corners: exact, by whole feet. */
    @Property(tries = 100)
    void trianglesAreDelaunay(@ForAll long seed) {
        ShotSurface shots = bumpy(new Random(seed), 60);
        for (Facet facet : shots.facets()) {
            for (Shot shot : shots.shots()) {
                assertThat(inCircle(facet, shot)).isLessThanOrEqualTo(0);
            }
        }
    }

    private static long inCircle(Facet facet, Shot shot) {
        long[][] rows = new long[3][];
        int i = 0;
        for (Shot corner : List.of(facet.a(), facet.b(), facet.c())) {
            long x = wholeFeet(corner.place().east()) - wholeFeet(shot.place().east());
            long y = wholeFeet(corner.place().north()) - wholeFeet(shot.place().north());
            rows[i++] = new long[] {x, y, x * x + y * y};
        }
        return rows[0][0] * (rows[1][1] * rows[2][2] - rows[1][2] * rows[2][1])
                - rows[0][1] * (rows[1][0] * rows[2][2] - rows[1][2] * rows[2][0])
                + rows[0][2] * (rows[1][0] * rows[2][1] - rows[1][1] * rows[2][0]);
    }

    private static long wholeFeet(Length length) {
        return length.wholePieces(ft(1));
    }

    /** What is not covered and what is covered make up the line, and a covered stretch has ground. */
    @Property(tries = 200)
    void stretchesWithoutGroundAreTheRestOfTheLine(@ForAll long seed) {
        Random random = new Random(seed);
        Surface surface = random.nextBoolean() ? bumpy(random, 20) : bumpyGrid(random);
        Polyline line = Polyline.of(List.of(
                Feet.at(random.nextInt(160) - 40, random.nextInt(160) - 40),
                Feet.at(random.nextInt(160) - 40, random.nextInt(160) + 121),
                Feet.at(random.nextInt(80) + 0.5, random.nextInt(80) + 0.5)));
        List<Interval> gaps = surface.uncovered(line);
        assertThat(gaps.isEmpty()).isEqualTo(surface.under(line).isPresent());
        for (int i = 0; i <= 200; i++) {
            Length station = line.length().portion(i, 200);
            boolean inGap = gaps.stream()
                    .anyMatch(gap -> gap.start().compareTo(station) < 0 && station.compareTo(gap.end()) < 0);
            boolean nearEdge =
                    gaps.stream().anyMatch(gap -> isNear(gap.start(), station) || isNear(gap.end(), station));
            if (!nearEdge) {
                assertThat(surface.elevationAt(line.pointAt(station)).isEmpty()).isEqualTo(inGap);
            }
        }
    }

    private static boolean isNear(Length a, Length b) {
        return a.minus(b).abs().compareTo(ft(0.2)) < 0;
    }

    /** The corrections of a closed line bring the last point exactly onto its known elevation. */
    @Property
    void levelNotesEndWhereTheyShould(
            @ForAll @IntRange(min = 1, max = 40) int setUps,
            @ForAll @LongRange(min = -50_000_000, max = 50_000_000) long missNanometres,
            @ForAll long seed) {
        Random random = new Random(seed);
        LevelNotes.Builder notes = LevelNotes.from("A", ft(100));
        Length elevation = ft(100);
        for (int i = 1; i <= setUps; i++) {
            Length back = ft(hundredths(random) / 8);
            Length fore = ft(hundredths(random) / 8);
            elevation = elevation.plus(back).minus(fore);
            notes.backsight(back).foresight("T" + i, fore).distance("T" + i, ft(100.0 * i));
        }
        Length known = elevation.plus(Length.ofNanometres(missNanometres));
        for (MisclosureSpread spread : List.of(MisclosureSpread.BY_SETUP, MisclosureSpread.BY_DISTANCE)) {
            LevelNotes closed = notes.closesOn(known).spread(spread).build();
            assertThat(closed.elevation("T" + setUps)).isEqualTo(known);
            assertThat(closed.rise()).isEqualTo(elevation.minus(ft(100)));
            assertThat(closed.misclosure()).contains(Length.ofNanometres(-missNanometres));
            assertThat(closed.worksheet().result()).isEqualTo(known);
        }
    }
}
