package org.fencecore.slope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fencecore.geometry.ground.Clearance;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * One run fitted to the ground by every treatment, best first, with the figures they were compared by.
 *
 * <p>Two fits are compared by the first criterion; where they are as good by it, by the next, and so on; where they are
 * as good by all, the simpler treatment comes first, in the order of {@link Treatment}. A mixed run is only among them
 * where it differs from both: where some bays are over the rack limit and some are not.
 *
 * <p>Example: 24 ft of ground that climbs 20 %, with parts that rack up to 15 %, in three bays of 8 ft.
 *
 * <pre>{@code
 * SlopeChoice choice = SlopeFit.best(ground, posts, spec);
 * choice.best().treatment();           // STEPPED
 * choice.best().steps();               // 2
 * choice.rows().get(2).treatment();    // RACKED, for its three bays are over the rack limit
 * choice.rows().get(2).overLimit();    // 3
 * }</pre>
 */
public final class SlopeChoice {

    /** What a run is judged by; less is better in every one. */
    public enum Criterion {
        /** Bays that are steeper than the parts can rack, or than a bay can be built. */
        OVER_LIMIT("bays over the rack limit"),
        /** How far the widest gap is over the maximum clearance. */
        GAP("widest gap over the maximum"),
        /** Posts at which the line steps. */
        STEPS("step posts"),
        /** Straight strings to stretch. */
        STRINGS("strings"),
        /** Rail ends that are not cut square. */
        CUTS("slanting cuts on each rail"),
        /** Rail and additional post together. */
        LUMBER("rail, and post over the usual");

        private final String words;

        Criterion(String words) {
            this.words = words;
        }

        private Comparator<Row> order() {
            return switch (this) {
                case OVER_LIMIT -> Comparator.comparing(Row::overLimit);
                case GAP -> Comparator.comparing(Row::gapOverMaximum);
                case STEPS -> Comparator.comparing(Row::steps);
                case STRINGS -> Comparator.comparing(Row::strings);
                case CUTS -> Comparator.comparing(Row::cuts);
                case LUMBER -> Comparator.comparing(Row::lumber);
            };
        }

        /**
         * Returns the criterion in words.
         *
         * @return such as {@code step posts}
         */
        @Override
        public String toString() {
            return words;
        }
    }

    /** What comes first for a crew that has the parts and wants a closed fence (common practice, no source). */
    public static final List<Criterion> USUAL = List.of(
            Criterion.OVER_LIMIT, Criterion.GAP, Criterion.STEPS, Criterion.STRINGS, Criterion.CUTS, Criterion.LUMBER);

    private final List<Criterion> criteria;
    private final List<Row> rows;

    private SlopeChoice(List<Criterion> criteria, List<Row> rows) {
        this.criteria = criteria;
        this.rows = rows;
    }

    /**
     * Fits the run by each treatment and puts the fits in order.
     *
     * @param ground the ground along the run
     * @param posts the stations of the post centres in order, 2 to 100,000 of them, all within the ground
     * @param spec the clearances and limits
     * @param criteria what to compare by, the most important first; at least one
     * @return the comparison
     * @throws IllegalArgumentException if there is no criterion, or if the run cannot be fitted, see {@link SlopeFit#of}
     */
    public static SlopeChoice among(Profile ground, List<Length> posts, SlopeSpec spec, List<Criterion> criteria) {
        List<Criterion> order = List.copyOf(criteria);
        if (order.isEmpty()) {
            throw new IllegalArgumentException("number of criteria was 0; give at least one, or use USUAL");
        }
        List<Row> rows = new ArrayList<>();
        for (Treatment treatment : Treatment.values()) {
            SlopeFit fit = SlopeFit.of(treatment, ground, posts, spec);
            if (treatment != Treatment.MIXED
                    || fit.bays().stream().map(FittedBay::treatment).distinct().count() > 1) {
                rows.add(new Row(fit));
            }
        }
        Comparator<Row> comparing = order.get(0).order();
        for (Criterion criterion : order.subList(1, order.size())) {
            comparing = comparing.thenComparing(criterion.order());
        }
        rows.sort(comparing);
        return new SlopeChoice(order, List.copyOf(rows));
    }

    /**
     * Returns what the fits were compared by.
     *
     * @return the criteria, the most important first, unmodifiable
     */
    public List<Criterion> criteria() {
        return criteria;
    }

    /**
     * Returns the fits with their figures.
     *
     * @return one row for each treatment, the best first, unmodifiable
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Returns the best fit and its figures.
     *
     * @return the first row
     */
    public Row best() {
        return rows.get(0);
    }

    /**
     * Returns the comparison written out: for each treatment every figure it was judged by.
     *
     * @return the table; its last line is the treatment that comes out best
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Choice of the treatment");
        for (Row row : rows) {
            sheet.given(
                    row.treatment().toString(),
                    row,
                    "gap " + Written.tape(row.gap().min()) + " to "
                            + Written.tape(row.gap().max()) + ", " + Written.tape(row.gapOverMaximum())
                            + " over the maximum; over the limit " + row.overLimit() + "; steps " + row.steps()
                            + "; strings " + row.strings() + "; cuts " + row.cuts() + "; lumber "
                            + Written.feet(row.lumber()));
        }
        return sheet.line(
                        "best",
                        "least by "
                                + Written.list(criteria.stream()
                                        .map(Criterion::toString)
                                        .toList()) + " in this order",
                        "",
                        best().treatment(),
                        best().treatment().toString(),
                        Citation.COMMON_PRACTICE)
                .build();
    }

    /** One treatment of the run and its figures. */
    public static final class Row {

        private final SlopeFit fit;
        private final int overLimit;
        private final Clearance gap;
        private final int steps;
        private final int cuts;
        private final Length lumber;

        private Row(SlopeFit fit) {
            this.fit = fit;
            List<FittedBay> bays = fit.bays();
            Slope limit = fit.spec().maximumGrade().orElse(SlopeFit.STEEPEST);
            Clearance widest = bays.get(0).clearance();
            int over = 0;
            int slanting = 0;
            Length rail = Length.ZERO;
            for (FittedBay bay : bays) {
                widest = joined(widest, bay.clearance());
                over += bay.grade().abs().compareTo(limit) > 0 ? 1 : 0;
                slanting += bay.rise().isZero() ? 0 : 2;
                rail = rail.plus(bay.railLength());
            }
            int stepping = 0;
            Length post = Length.ZERO;
            for (int at = 0; at <= bays.size(); at++) {
                stepping += fit.step(at).isZero() ? 0 : 1;
                post = post.plus(fit.bottomAbove(at).minus(fit.spec().clearance()));
            }
            this.gap = widest;
            this.overLimit = over;
            this.cuts = slanting;
            this.steps = stepping;
            this.lumber = rail.plus(post);
        }

        private static Clearance joined(Clearance a, Clearance b) {
            Clearance least = a.min().compareTo(b.min()) <= 0 ? a : b;
            Clearance most = a.max().compareTo(b.max()) >= 0 ? a : b;
            return new Clearance(least.min(), least.minStation(), most.max(), most.maxStation());
        }

        /**
         * Returns the treatment.
         *
         * @return the treatment
         */
        public Treatment treatment() {
            return fit.treatment();
        }

        /**
         * Returns the fit.
         *
         * @return the run fitted by this treatment
         */
        public SlopeFit fit() {
            return fit;
        }

        /**
         * Returns the narrowest and the widest gap under the boards of the whole run.
         *
         * @return the gaps and their stations
         */
        public Clearance gap() {
            return gap;
        }

        /**
         * Returns how far the widest gap is over the maximum clearance.
         *
         * @return the excess, zero if it is not over
         */
        public Length gapOverMaximum() {
            return Length.max(Length.ZERO, gap.max().minus(fit.spec().maximumClearance()));
        }

        /**
         * Returns how many bays are steeper than the rack limit, or than 100 % where there is no such limit.
         *
         * @return the number of bays
         */
        public int overLimit() {
            return overLimit;
        }

        /**
         * Returns at how many posts the line of the board bottoms steps.
         *
         * @return the number of posts
         */
        public int steps() {
            return steps;
        }

        /**
         * Returns how many straight strings there are to stretch.
         *
         * @return the number of strings
         */
        public int strings() {
            return fit.strings().size();
        }

        /**
         * Returns how many ends of the pieces of one rail are not cut square, a piece for each bay.
         *
         * @return the number of slanting cuts
         */
        public int cuts() {
            return cuts;
        }

        /**
         * Returns how much lumber it takes of what differs between treatments: one rail along the whole run, and of each
         * post what it stands higher than at the usual clearance.
         *
         * @return the length of both together
         */
        public Length lumber() {
            return lumber;
        }

        @Override
        public String toString() {
            return treatment() + ": " + steps + " steps, " + strings() + " strings";
        }
    }
}
