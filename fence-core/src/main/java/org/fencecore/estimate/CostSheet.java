package org.fencecore.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** Writes out what a fence costs, line by line. */
final class CostSheet {

    private CostSheet() {}

    static Worksheet of(Estimate estimate) {
        Worksheet.Builder sheet = Worksheet.titled("Cost of the fence");
        List<String> parts = new ArrayList<>(List.of("materials"));
        List<BigDecimal> amounts = new ArrayList<>(List.of(estimate.pricedMaterials()));
        materials(sheet, estimate);
        if (estimate.spec().crew().isPresent()) {
            labour(sheet, estimate);
            parts.add("labour");
            amounts.add(estimate.pricedLabour());
        }
        if (estimate.spec().salesTax().signum() > 0) {
            tax(sheet, estimate);
            parts.add("tax");
            amounts.add(estimate.tax());
        }
        sheet.line(
                estimate.isComplete() ? "total" : "total of what is priced",
                String.join(" + ", parts),
                sum(amounts),
                estimate.pricedTotal(),
                Written.money(estimate.pricedTotal(), estimate.currency()),
                Citation.GEOMETRY);
        return sheet.build();
    }

    private static void materials(Worksheet.Builder sheet, Estimate estimate) {
        List<BigDecimal> amounts = new ArrayList<>();
        for (EstimateLine line : estimate.materials()) {
            String name = line.material().item();
            BigDecimal waste = estimate.spec().waste(line.material().group());
            if (waste.signum() > 0) {
                sheet.line(
                        name + ", with waste",
                        "quantity x (100 + waste) / 100, up",
                        line.material().quantity() + " x (100 + "
                                + waste.stripTrailingZeros().toPlainString() + ") / 100",
                        line.withWaste(),
                        String.valueOf(line.withWaste()),
                        Citation.COMMON_PRACTICE);
            }
            if (line.packSize() > 1) {
                sheet.line(
                        name + ", packs",
                        "needed / pack size, up",
                        line.withWaste() + " / " + line.packSize(),
                        line.packs(),
                        line.packs() + " " + line.pack(),
                        Citation.GEOMETRY);
            }
            if (line.price().isPresent() && line.amount().isPresent()) {
                BigDecimal amount = line.amount().get();
                amounts.add(amount);
                sheet.line(
                        name,
                        "count x price",
                        line.packs() + " x " + line.price().get().toPlainString(),
                        amount,
                        Written.money(amount, estimate.currency()),
                        Citation.of("price book", "", ""));
            } else {
                sheet.given(name, "no price", "no price for " + line.packs() + " " + line.pack());
            }
        }
        sheet.line(
                "materials",
                "sum of the lines",
                sum(amounts),
                estimate.pricedMaterials(),
                Written.money(estimate.pricedMaterials(), estimate.currency()),
                Citation.GEOMETRY);
    }

    private static void labour(Worksheet.Builder sheet, Estimate estimate) {
        List<BigDecimal> amounts = new ArrayList<>();
        CrewRates crew = estimate.spec().crew().orElseThrow();
        for (LabourLine line : estimate.labour()) {
            String name = line.task().toString();
            if (line.each().isPresent() && line.amount().isPresent()) {
                BigDecimal amount = line.amount().get();
                amounts.add(amount);
                sheet.line(
                        name,
                        "count x time for one x wage",
                        line.count() + " x " + line.each().get().toSeconds() + " s / 3600 x "
                                + crew.wage().orElseThrow().toPlainString(),
                        amount,
                        Written.money(amount, estimate.currency()),
                        Citation.of("rates of the crew", "", ""));
            } else {
                sheet.given(
                        name,
                        "no rate",
                        "no time or no wage for " + line.count() + " x "
                                + line.task().unit());
            }
        }
        sheet.line(
                "labour",
                "sum of the lines",
                sum(amounts),
                estimate.pricedLabour(),
                Written.money(estimate.pricedLabour(), estimate.currency()),
                Citation.GEOMETRY);
    }

    private static void tax(Worksheet.Builder sheet, Estimate estimate) {
        sheet.line(
                "tax",
                (estimate.spec().isLabourTaxed() ? "(materials + labour)" : "materials") + " x tax / 100",
                estimate.taxed().toPlainString() + " x "
                        + estimate.spec().salesTax().stripTrailingZeros().toPlainString() + " / 100",
                estimate.tax(),
                Written.money(estimate.tax(), estimate.currency()),
                Citation.of("given", "", ""));
    }

    private static String sum(List<BigDecimal> amounts) {
        return amounts.isEmpty()
                ? "0"
                : String.join(
                        " + ", amounts.stream().map(BigDecimal::toPlainString).toList());
    }
}
