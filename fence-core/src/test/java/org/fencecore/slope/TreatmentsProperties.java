package org.fencecore.slope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.geometry.Interval;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;

/** What holds for every treatment on any ground. */
class TreatmentsProperties {

    private static final SlopeSpec SPEC = SlopeSpec.builder()
            .maximumGrade(Slope.ofPercent(15))
            .stepIncrement(Length.ofInches(0.5))
            .build();

    @Property(tries = 300)
    void theMinimumIsKeptEverywhere(@ForAll("runs") SlopeFitProperties.Run run, @ForAll Treatment treatment) {
        SlopeFit fit = SlopeFit.of(treatment, run.ground(), run.posts(), SPEC);

        for (FittedBay bay : fit.bays()) {
            assertThat(bay.clearance().min())
                    .isGreaterThanOrEqualTo(SPEC.minimumClearance().minus(Length.ofNanometres(2)));
        }
    }

    @Property(tries = 300)
    void stepsAndRisesSumToTheFall(@ForAll("runs") SlopeFitProperties.Run run, @ForAll Treatment treatment) {
        SlopeFit fit = SlopeFit.of(treatment, run.ground(), run.posts(), SPEC);

        int bays = fit.bays().size();
        Length sum = Length.ZERO;
        for (int bay = 0; bay < bays; bay++) {
            sum = sum.plus(fit.step(bay)).plus(fit.bays().get(bay).rise());
        }
        assertThat(sum)
                .isEqualTo(fit.bays()
                        .get(bays - 1)
                        .bottomAtEnd()
                        .minus(fit.bays().get(0).bottomAtStart()));
    }

    /** Every bay stands at the clearance over its higher post or needs to stand higher, by less than an increment. */
    @Property(tries = 300)
    void noBayStandsAnIncrementHigherThanItNeeds(@ForAll("runs") SlopeFitProperties.Run run) {
        SlopeFit fit = SlopeFit.step(run.ground(), run.posts(), SPEC);

        Length least = Length.ofFeet(1);
        for (FittedBay bay : fit.bays()) {
            Length spare = Length.min(
                    Length.min(bay.aboveStart(), bay.aboveEnd()).minus(SPEC.clearance()),
                    bay.clearance().min().minus(SPEC.minimumClearance()));
            assertThat(spare).isBetween(Length.ZERO, SPEC.stepIncrement().minus(Length.ofNanometres(1)));
            least = Length.min(least, spare);
            assertThat(bay.bottomAtStart()
                                    .minus(fit.bays().get(0).bottomAtStart())
                                    .nanometres()
                            % SPEC.stepIncrement().nanometres())
                    .isZero();
        }
        assertThat(least).isEqualTo(Length.ZERO);
    }

    @Property(tries = 300)
    void evenStepsAreEvenAndStandOnSomeBay(@ForAll("runs") SlopeFitProperties.Run run) {
        SlopeFit fit = SlopeFit.stepEvenly(run.ground(), run.posts(), SPEC);

        Length least = Length.ofFeet(1000);
        for (int bay = 0; bay < fit.bays().size(); bay++) {
            FittedBay here = fit.bays().get(bay);
            least = Length.min(
                    least,
                    Length.min(
                            Length.min(here.aboveStart(), here.aboveEnd()).minus(SPEC.clearance()),
                            here.clearance().min().minus(SPEC.minimumClearance())));
            if (bay > 0) {
                assertThat(fit.step(bay)).isEqualTo(fit.step(1));
                assertThat(fit.step(bay).nanometres() % SPEC.stepIncrement().nanometres())
                        .isZero();
            }
        }
        assertThat(least).isEqualTo(Length.ZERO);
    }

    @Property(tries = 300)
    void aMirroredRunHasTheMirroredSteps(@ForAll("runs") SlopeFitProperties.Run run, @ForAll boolean even) {
        Treatment treatment = even ? Treatment.EVENLY_STEPPED : Treatment.STEPPED;
        Length ends = run.ground().extent().start().plus(run.ground().extent().end());
        List<Length> mirrored = new ArrayList<>();
        run.posts().forEach(post -> mirrored.add(0, ends.minus(post)));

        SlopeFit fit = SlopeFit.of(treatment, run.ground(), run.posts(), SPEC);
        SlopeFit mirror = SlopeFit.of(treatment, run.ground().reversed(), mirrored, SPEC);

        int last = run.posts().size() - 1;
        for (int post = 0; post <= last; post++) {
            assertThat(mirror.bottomBefore(last - post)).isEqualTo(fit.bottomAfter(post));
            assertThat(mirror.step(last - post)).isEqualTo(fit.step(post).negated());
        }
    }

    /** Boards of 6 in, edge to edge over the bay: what is under all of them is what is under the level bay. */
    @Property(tries = 200)
    void gapsUnderTheBoardsAreTheGapsOfTheBay(@ForAll("runs") SlopeFitProperties.Run run) {
        for (FittedBay bay : SlopeFit.step(run.ground(), run.posts(), SPEC).bays()) {
            Length min = bay.clearance().max();
            Length max = bay.clearance().min();
            for (Length left = bay.start(); left.compareTo(bay.end()) < 0; left = left.plus(Length.ofInches(6))) {
                Clearance gap = bay.underBoard(Interval.of(left, left.plus(Length.ofInches(6))));
                min = Length.min(min, gap.min());
                max = Length.max(max, gap.max());
            }
            assertThat(min).isEqualTo(bay.clearance().min());
            assertThat(max).isEqualTo(bay.clearance().max());
        }
    }

    /** Area by the trapezoids of a thousand strips, and what is too wide by looking at each strip. */
    @Property(tries = 100)
    void theOpenAreaAndTheWideStretchesAreThoseOfTheSamples(@ForAll("runs") SlopeFitProperties.Run run) {
        Length gap = Length.ofInches(3);
        for (FittedBay bay : SlopeFit.rack(run.ground(), run.posts(), SPEC).bays()) {
            List<Interval> wide = bay.widerThan(gap);
            double area = 0;
            double feet = bay.run().feet();
            for (int strip = 0; strip < 1000; strip++) {
                Length at = bay.start().plus(Length.ofFeet(feet * (strip + 0.5) / 1000));
                Length here = bay.bottomAt(at).minus(run.ground().elevationAt(at));
                area += here.feet() * feet / 1000;
                if (here.minus(gap).abs().compareTo(Length.ofNanometres(10)) > 0) {
                    assertThat(wide.stream().anyMatch(stretch -> stretch.contains(at)))
                            .isEqualTo(here.compareTo(gap) > 0);
                }
            }
            assertThat(bay.gapArea().squareFeet()).isEqualTo(area, within(1e-3));
        }
    }

    @Provide
    static Arbitrary<SlopeFitProperties.Run> runs() {
        return SlopeFitProperties.runs();
    }
}
