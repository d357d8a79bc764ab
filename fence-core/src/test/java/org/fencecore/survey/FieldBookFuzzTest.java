package org.fencecore.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.Station;
import org.fencecore.terrain.LevelNotes;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;

/**
 * Deeds and level notes with anything in them, in any order, are read or refused as documented. Seeded;
 * {@code -Dfuzz.inputs=1000000} makes the long run.
 */
class FieldBookFuzzTest {

    private static final int INPUTS = Integer.getInteger("fuzz.inputs", 10_000);

    private final Random random = new Random(20_261_125);

    @Test
    void deedsAreReadOrRefused() {
        assertThat(readOf(this::deed)).isBetween(INPUTS / 100, INPUTS * 99 / 100);
    }

    @Test
    void levelNotesAreReadOrRefused() {
        assertThat(readOf(this::notes)).isBetween(INPUTS / 100, INPUTS * 99 / 100);
    }

    private int readOf(Runnable book) {
        return assertTimeoutPreemptively(Duration.ofMinutes(60), () -> {
            int read = 0;
            for (int input = 0; input < INPUTS; input++) {
                try {
                    book.run();
                    read++;
                } catch (IllegalArgumentException refused) {
                    assertThat(refused).isExactlyInstanceOf(IllegalArgumentException.class);
                    assertThat(refused.getMessage()).isNotBlank();
                }
            }
            return read;
        });
    }

    private void deed() {
        List<Course> courses = new ArrayList<>();
        int count = random.nextInt(8);
        for (int course = 0; course < count; course++) {
            courses.add(
                    random.nextInt(4) > 0 || courses.isEmpty()
                            ? Course.of(bearing(), distance())
                            : curve(courses.get(courses.size() - 1)));
        }
        LotBoundary lot = LotBoundary.of(courses);
        assertThat(lot.findings()).doesNotContainNull();
        assertThat(lot.closure().misclosure().isNegative()).isFalse();
        lot.outline().ifPresent(outline -> assertThat(outline.vertices()).hasSizeGreaterThanOrEqualTo(3));
        assertThat(lot.worksheet().toText()).isNotBlank();
    }

    private Course curve(Course before) {
        CurveCall call = Course.curve(random.nextBoolean() ? Side.LEFT : Side.RIGHT);
        List<Consumer<CurveCall>> calls = List.of(
                of -> of.radius(distance()),
                of -> of.delta(angle()),
                of -> of.arc(distance()),
                of -> of.chord(distance()),
                of -> of.chordBearing(bearing()),
                of -> of.tangentIn(bearing()),
                of -> of.tangentTo(before),
                of -> of.tangentOut(bearing()),
                CurveCall::minor,
                CurveCall::major,
                of -> of.lengthsTo(distance()));
        for (int told = 2 + random.nextInt(4); told > 0; told--) {
            calls.get(random.nextInt(calls.size())).accept(call);
        }
        return call.build();
    }

    private void notes() {
        LevelNotes.Builder book = LevelNotes.from(random.nextInt(50) == 0 ? " " : "BM 1", height());
        List<Consumer<LevelNotes.Builder>> entries = List.of(
                of -> of.backsight(reading()),
                of -> of.intermediate("P" + random.nextInt(5), reading()),
                of -> of.intermediate(Station.of(height()), reading()),
                of -> of.foresight("T" + random.nextInt(5), reading()),
                of -> of.station("T" + random.nextInt(5), height()),
                of -> of.distance("T" + random.nextInt(5), height()),
                of -> of.closesOn(height()),
                of -> of.allowable(reading()),
                of -> of.written("P" + random.nextInt(5), height()),
                of -> of.writtenSums(reading(), reading()),
                LevelNotes.Builder::metric);
        book.backsight(reading());
        for (int entry = random.nextInt(6); entry > 0; entry--) {
            entries.get(random.nextInt(entries.size())).accept(book);
        }
        book.foresight("BM 1", reading());
        LevelNotes read = book.build();
        assertThat(read.rise()).isEqualTo(read.backsightSum().minus(read.foresightSum()));
        assertThat(read.findings()).doesNotContainNull();
        assertThat(read.worksheet().toText()).isNotBlank();
        read.profile().ifPresent(ground -> assertThat(ground.points().size()).isGreaterThanOrEqualTo(2));
    }

    private Bearing bearing() {
        return Bearing.ofAzimuth(
                Angle.ofDegrees(random.nextInt(8) * 45 + (random.nextBoolean() ? 0 : random.nextGaussian())));
    }

    private Angle angle() {
        return Angle.ofDegrees(random.nextInt(10) == 0 ? random.nextGaussian() * 400 : random.nextDouble() * 180);
    }

    /** Mostly as long as sides of lots are, now and then nothing, negative, or beyond any lot. */
    private Length distance() {
        return switch (random.nextInt(40)) {
            case 0 -> Length.ZERO;
            case 1 -> Length.ofFeet(-random.nextDouble() * 100);
            case 2 -> Length.ofNanometres(random.nextLong() / 4);
            case 3 -> Length.ofNanometres(1);
            default -> Length.ofFeet(Math.rint(random.nextDouble() * 2_000) / 10);
        };
    }

    private Length height() {
        return random.nextInt(30) == 0 ? distance() : Length.ofFeet(Math.rint(random.nextDouble() * 20_000) / 100);
    }

    private Length reading() {
        return random.nextInt(30) == 0 ? distance() : Length.ofFeet(Math.rint(random.nextDouble() * 1_300) / 100);
    }
}
