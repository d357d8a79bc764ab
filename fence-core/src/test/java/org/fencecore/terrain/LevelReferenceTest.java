package org.fencecore.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.terrain.Feet.ft;
import static org.fencecore.terrain.Feet.m;

import java.util.Map;
import org.fencecore.geometry.Station;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Level notes against published ones; the source stands beside each. Names of points as published. */
class LevelReferenceTest {

    /** NPTEL surveying course, module 4, lecture 13, table 13.3: all figures published, exact. */
    @Test
    void heightOfInstrumentMethod() {
        LevelNotes notes = LevelNotes.from("A", m(100))
                .metric()
                .backsight(m(2.365))
                .foresight("S1", m(1.235))
                .backsight(m(0.685))
                .foresight("S2", m(3.570))
                .backsight(m(1.745))
                .foresight("B", m(2.340))
                .build();

        assertThat(notes.entries())
                .extracting(entry -> entry.heightOfInstrument().orElse(Length.ZERO))
                .containsExactly(m(102.365), m(101.815), m(99.990), Length.ZERO);
        assertThat(notes.entries())
                .extracting(LevelEntry::elevation)
                .containsExactly(m(100), m(101.130), m(98.245), m(97.650));
        assertThat(notes.backsightSum()).isEqualTo(m(4.795));
        assertThat(notes.foresightSum()).isEqualTo(m(7.145));
        assertThat(notes.rise()).isEqualTo(m(-2.350));
        assertThat(notes.worksheet().result()).isEqualTo(notes.elevation("B"));
    }

    /**
     * Universiti Sains Malaysia, School of Civil Engineering, levelling page JSSUAE1: published readings, initial levels and
     * corrections of -2 mm for each of 5 set-ups. The page prints the adjusted levels to 2 decimals; their third is the
     * initial level plus the correction.
     */
    @Test
    void adjustmentBySetUp() {
        LevelNotes notes = LevelNotes.from("OBM1", m(29.23))
                .metric()
                .backsight(m(1.717))
                .intermediate("A", m(1.432))
                .foresight("B", m(1.716))
                .backsight(m(2.918))
                .intermediate("C", m(2.272))
                .foresight("D", m(0.953))
                .backsight(m(0.816))
                .foresight("E", m(3.005))
                .backsight(m(1.436))
                .foresight("CP", m(1.391))
                .backsight(m(1.246))
                .intermediate("F", m(1.353))
                .intermediate("G", m(1.462))
                .foresight("OBM2", m(0.628))
                .closesOn(m(29.66))
                .build();

        assertThat(notes.backsightSum()).isEqualTo(m(8.133));
        assertThat(notes.foresightSum()).isEqualTo(m(7.693));
        assertThat(notes.misclosure()).contains(m(0.010));
        assertThat(notes.entries())
                .extracting(LevelEntry::observed)
                .containsExactly(
                        m(29.230), m(29.515), m(29.231), m(29.877), m(31.196), m(29.007), m(29.052), m(28.945),
                        m(28.836), m(29.670));
        assertThat(notes.entries())
                .extracting(entry -> entry.correction().millimetres())
                .containsExactly(0.0, -2.0, -2.0, -4.0, -4.0, -6.0, -8.0, -10.0, -10.0, -10.0);
        assertThat(notes.entries())
                .extracting(LevelEntry::elevation)
                .containsExactly(
                        m(29.230), m(29.513), m(29.229), m(29.873), m(31.192), m(29.001), m(29.044), m(28.935),
                        m(28.826), m(29.660));
        assertThat(notes.findings()).isEmpty();
        assertThat(notes.worksheet().result()).isEqualTo(m(29.66));
    }

    /**
     * A section between two benchmarks in feet, a question on askfilo.com (3430383238313239, readings published);
     * the adjusted elevations, to 0.01 ft, computed independently.
     */
    @Test
    void sectionInFeet() {
        LevelNotes notes = LevelNotes.from("BM A", ft(100))
                .backsight(ft(3.10))
                .foresight("TP1", ft(9.82))
                .backsight(ft(6.44))
                .foresight("TP2", ft(6.96))
                .backsight(ft(8.76))
                .foresight("TP3", ft(3.27))
                .backsight(ft(7.12))
                .foresight("BM B", ft(10.42))
                .closesOn(ft(94.91))
                .build();

        assertThat(notes.entries())
                .extracting(LevelEntry::observed)
                .containsExactly(ft(100), ft(93.28), ft(92.76), ft(98.25), ft(94.95));
        assertThat(notes.misclosure()).contains(ft(0.04));
        assertThat(notes.entries())
                .extracting(LevelEntry::elevation)
                .containsExactly(ft(100), ft(93.27), ft(92.74), ft(98.22), ft(94.91));
    }

    /**
     * A circuit with the distance to each benchmark, a question on askfilo.com (3338343738343531): elevations as read,
     * distances and both ends published; the adjusted elevations computed independently. Here each leg is a set-up with
     * readings that give its difference.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 783.213, 783.2550",
        "2, 891.764, 891.8542",
        "3, 843.195, 843.3367",
        "4, 739.708, 739.8837",
        "5, 702.956, 703.1580",
        "6, 728.486, 728.7300"
    })
    void adjustmentByDistance(int point, double observed, double adjusted) {
        double[] asRead = {783.213, 891.764, 843.195, 739.708, 702.956, 728.486};
        double[] kilometres = {5.245, 11.271, 17.718, 21.964, 25.247, 30.500};
        LevelNotes.Builder builder = LevelNotes.from("start", m(780)).metric();
        Length from = m(780);
        for (int i = 0; i < asRead.length; i++) {
            // A leg of many set-ups, taken here as a few with readings that a rod has.
            Length rise = m(asRead[i]).minus(from);
            for (int part = 1; part < 5; part++) {
                Length here = rise.portion(part, 5).minus(rise.portion(part - 1, 5));
                builder.backsight(here).foresight("leg " + i + "." + part, Length.ZERO);
                builder.distance("leg " + i + "." + part, Length.ZERO);
            }
            Length last = rise.minus(rise.portion(4, 5));
            builder.backsight(last).foresight("BM" + (i + 1), Length.ZERO);
            builder.distance("BM" + (i + 1), m(1_000 * kilometres[i]));
            from = m(asRead[i]);
        }
        LevelNotes notes = builder.closesOn(m(728.730))
                .spread(MisclosureSpread.BY_DISTANCE)
                .build();

        assertThat(notes.misclosure()).contains(m(-0.244));
        assertThat(notes.entries().stream()
                        .filter(entry -> entry.point().equals("BM" + point))
                        .map(LevelEntry::observed))
                .containsExactly(m(observed));
        assertThat(notes.elevation("BM" + point).metres()).isCloseTo(adjusted, within(5.1e-5));
    }

    /** Profile levelling with plus stations, scribd.com/document/624270023, first problem: readings published, elevations computed. */
    @Test
    void profileWithPlusStations() {
        LevelNotes notes = LevelNotes.from("BMa", m(125.50))
                .metric()
                .backsight(m(0.95))
                .intermediate(Station.parseMetric("0+00"), m(3.0))
                .intermediate(Station.parseMetric("0+10"), m(2.3))
                .foresight("TP1", m(0.64))
                .backsight(m(3.13))
                .intermediate(Station.parseMetric("0+22"), m(2.7))
                .intermediate(Station.parseMetric("0+30.5"), m(2.8))
                .intermediate(Station.parseMetric("0+34.2"), m(3.1))
                .intermediate(Station.parseMetric("0+39.3"), m(0.5))
                .intermediate(Station.parseMetric("0+42.5"), m(0.8))
                .foresight("TP2", m(1.28))
                .backsight(m(2.16))
                .intermediate(Station.parseMetric("0+45"), m(0.9))
                .intermediate(Station.parseMetric("0+48.6"), m(1.2))
                .intermediate(Station.parseMetric("0+50"), m(1.7))
                .intermediate(Station.parseMetric("0+53.7"), m(2.8))
                .foresight("TP3", m(2.37))
                .backsight(m(0.82))
                .foresight("TP4", m(3.50))
                .backsight(m(1.35))
                .intermediate(Station.parseMetric("0+75"), m(3.0))
                .foresight("BMb", m(1.99))
                .build();

        assertThat(notes.backsightSum()).isEqualTo(m(8.41));
        assertThat(notes.foresightSum()).isEqualTo(m(9.78));
        assertThat(notes.rise()).isEqualTo(m(-1.37));
        Map.of("TP1", 125.81, "TP2", 127.66, "TP3", 127.45, "TP4", 124.77, "BMb", 124.13)
                .forEach(
                        (point, elevation) -> assertThat(notes.elevation(point)).isEqualTo(m(elevation)));
        assertThat(notes.profile().orElseThrow())
                .isEqualTo(Profile.builder()
                        .point(m(0), m(123.45))
                        .point(m(10), m(124.15))
                        .point(m(22), m(126.24))
                        .point(m(30.5), m(126.14))
                        .point(m(34.2), m(125.84))
                        .point(m(39.3), m(128.44))
                        .point(m(42.5), m(128.14))
                        .point(m(45), m(128.92))
                        .point(m(48.6), m(128.62))
                        .point(m(50), m(128.12))
                        .point(m(53.7), m(127.02))
                        .point(m(75), m(123.12))
                        .build());
    }
}
