package org.fencecore.packet;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.fencecore.estimate.Estimate;
import org.fencecore.estimate.EstimateLine;
import org.fencecore.estimate.LabourLine;
import org.fencecore.estimate.Load;
import org.fencecore.estimate.Schedule;
import org.fencecore.units.Mass;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/**
 * What an estimator sends: what is missing, the materials and the labour with their prices, the sum, the load with its
 * trips, and the days; as plain text, or the materials as a table for spreadsheets.
 *
 * <pre>{@code
 * EstimateSheet.of(estimate).withPayload(Mass.ofPounds(1500)).toText();
 * }</pre>
 */
public final class EstimateSheet {

    private static final String UNKNOWN = "?";

    private final Estimate estimate;
    private final Optional<String> job;
    private final Optional<Mass> payload;

    private EstimateSheet(Estimate estimate, Optional<String> job, Optional<Mass> payload) {
        this.estimate = estimate;
        this.job = job;
        this.payload = payload;
    }

    /**
     * Returns the sheet of an estimate.
     *
     * @param estimate the estimate
     * @return the sheet
     */
    public static EstimateSheet of(Estimate estimate) {
        return new EstimateSheet(Objects.requireNonNull(estimate, "estimate"), Optional.empty(), Optional.empty());
    }

    /**
     * Returns this sheet with the name of the job on top.
     *
     * @param name whose fence it is, in any script; what no file may hold is replaced
     * @return the sheet
     */
    public EstimateSheet withJob(String name) {
        return new EstimateSheet(estimate, Optional.of(Written.printable(name)), payload);
    }

    /**
     * Returns this sheet with the trips that the load takes.
     *
     * @param newPayload what one trip may carry
     * @return the sheet
     */
    public EstimateSheet withPayload(Mass newPayload) {
        return new EstimateSheet(estimate, job, Optional.of(newPayload));
    }

    /**
     * Returns the sheet as text.
     *
     * @return the text, lines ended by a line feed
     * @throws IllegalArgumentException if the payload is less than a single stick or bag weighs, or far too little
     */
    public String toText() {
        SheetText text = new SheetText("ESTIMATE");
        summary(text);
        missing(text);
        materials(text);
        labour(text);
        sum(text);
        load(text);
        estimate.schedule().ifPresent(schedule -> days(text, schedule));
        return text.toText();
    }

    private void summary(SheetText text) {
        job.ifPresent(name -> text.fact("Job: " + name));
        text.fact("Fence: " + Written.tape(BuildSheet.length(estimate.plan())) + ", "
                + BuildSheet.plural(estimate.plan().posts().size(), "post") + ", "
                + BuildSheet.plural(estimate.plan().gates().size(), "gate") + ", "
                + BuildSheet.plural(estimate.plan().boardCount(), "board"));
        if (!estimate.plan().isBuildable()) {
            text.notice("THIS FENCE CANNOT BE BUILT AS DESCRIBED: see the build sheet.");
        }
        if (!estimate.isComplete()) {
            text.notice("THE SUM IS NOT COMPLETE: see what is missing.");
        }
    }

    private void missing(SheetText text) {
        text.heading("1. MISSING, AND TO KNOW");
        List<Finding> findings = Stream.concat(
                        Stream.concat(estimate.takeoff().findings().stream(), estimate.findings().stream()),
                        estimate.schedule().map(Schedule::findings).orElse(List.of()).stream())
                .distinct()
                .filter(finding -> !finding.code().equals("weight-missing"))
                .toList();
        if (findings.isEmpty()) {
            text.fact("nothing");
        }
        findings.forEach(text::finding);
    }

    private void materials(SheetText text) {
        text.heading("2. MATERIALS");
        TextTable table =
                TextTable.of("buy", "of", "what", "price", "amount", "weight").numbers(0, 3, 4, 5);
        for (EstimateLine line : estimate.materials()) {
            table.row(
                    line.packs(),
                    line.pack(),
                    line.material().item(),
                    plain(line.price()),
                    plain(line.amount()),
                    line.weight().map(Written::mass).orElse(UNKNOWN));
        }
        text.table(table);
        text.sentence("Amounts in " + estimate.currency() + ". Price is that of one of what is bought; "
                + (estimate.isComplete() ? "a" : "amounts without a price and a")
                + " weight that is not known " + (estimate.isComplete() ? "is" : "are") + " marked " + UNKNOWN
                + ". Waste is in the numbers.");
    }

    private void labour(SheetText text) {
        text.heading("3. LABOUR");
        if (estimate.labour().isEmpty()) {
            text.fact("not in this estimate");
            return;
        }
        TextTable table =
                TextTable.of("work", "count", "unit", "time", "amount").numbers(1, 3, 4);
        for (LabourLine line : estimate.labour()) {
            table.row(
                    line.task(),
                    line.count(),
                    line.task().unit(),
                    line.time().map(Written::hours).orElse(UNKNOWN),
                    plain(line.amount()));
        }
        text.table(table);
        text.sentence("Time is that of one person doing all of it.");
    }

    private void sum(SheetText text) {
        text.heading("4. SUM");
        TextTable table = TextTable.of("what", "amount").numbers(1);
        table.row("materials", estimate.pricedMaterials().toPlainString());
        if (!estimate.labour().isEmpty()) {
            table.row("labour", estimate.pricedLabour().toPlainString());
        }
        if (estimate.spec().salesTax().signum() > 0) {
            table.row(
                    "tax, " + estimate.spec().salesTax().stripTrailingZeros().toPlainString() + " % of materials"
                            + (estimate.spec().isLabourTaxed() ? " and labour" : ""),
                    estimate.tax().toPlainString());
        }
        table.row(
                estimate.isComplete() ? "TOTAL" : "TOTAL OF WHAT IS PRICED",
                Written.money(estimate.pricedTotal(), estimate.currency()));
        text.table(table);
        text.sentence("Without overhead and profit, permits, delivery and what is hauled away.");
    }

    private void load(SheetText text) {
        text.heading("5. LOAD");
        Load load = estimate.load();
        text.fact("Load: " + Written.mass(load.weight())
                + (load.unknown().isEmpty() ? "" : " and what is marked " + UNKNOWN));
        text.fact("Concrete in the ground: " + Written.mass(load.concreteInPlace()));
        payload.ifPresent(most -> {
            TextTable table = TextTable.of("trip", "weight", "what").numbers(0, 1);
            int number = 0;
            for (Load.Trip trip : load.trips(most)) {
                number++;
                table.row(
                        number,
                        Written.mass(trip.weight()),
                        String.join(
                                "; ",
                                trip.parts().stream().map(Load.Part::toString).toList()));
            }
            text.table("Trips of up to " + Written.mass(most) + ":", table);
        });
        text.sentence("Lumber weighs what its wood and moisture give; wood fresh from treatment can weigh half as much"
                + " again.");
    }

    private static void days(SheetText text, Schedule schedule) {
        text.heading("6. DAYS");
        boolean dated = schedule.start().isPresent();
        TextTable table = TextTable.of(dated ? "date" : "day", "work", "time");
        for (Schedule.Step step : schedule.steps()) {
            String first = day(schedule, step.firstDay());
            String last = day(schedule, step.lastDay());
            table.row(
                    first.equals(last) ? first : first + " to " + last,
                    step.what(),
                    step.time().isZero() ? "" : Written.hours(step.time()));
        }
        text.table(table);
        text.sentence(
                "Time is that of the crew together. Days without work because of weather, inspections or deliveries"
                        + " come on top.");
    }

    private static String day(Schedule schedule, int day) {
        return schedule.date(day).map(Object::toString).orElse(String.valueOf(day));
    }

    /** With the digits of its currency, or more where it has more. */
    private String plain(Optional<BigDecimal> amount) {
        int digits = Math.max(0, estimate.currency().getDefaultFractionDigits());
        return amount.map(
                        money -> money.setScale(Math.max(digits, money.scale())).toPlainString())
                .orElse(UNKNOWN);
    }

    /**
     * Returns the materials as comma-separated values: the shopping list with what to buy, prices and weights.
     *
     * @return the text of the file, lines ended by a line feed; what is not known is empty
     */
    public String toCsv() {
        TextTable table = TextTable.of(
                "quantity",
                "unit",
                "what",
                "note",
                "with waste",
                "buy",
                "of",
                "price",
                "amount",
                "currency",
                "weight lb");
        for (EstimateLine line : estimate.materials()) {
            table.row(
                    line.material().quantity(),
                    line.material().unit(),
                    line.material().item(),
                    line.material().note(),
                    line.withWaste(),
                    line.packs(),
                    line.pack(),
                    line.price().map(BigDecimal::toPlainString).orElse(""),
                    line.amount().map(BigDecimal::toPlainString).orElse(""),
                    estimate.currency(),
                    line.weight().map(Written::mass).orElse("").replace(" lb", ""));
        }
        return table.toCsv();
    }
}
