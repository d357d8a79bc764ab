package org.fencecore.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/** Writes out a cutting plan: pieces, purchases, total, lower bound and gap. */
final class CuttingSheet {

    private static final Citation BOUND =
            Citation.of("Gilmore and Gomory 1961, Farley 1990", "bound by linear programming", "");

    private CuttingSheet() {}

    static Worksheet of(CuttingPlan plan, List<CutPiece> pieces, List<SoldLength> stock, String found, String atLeast) {
        CuttingSpec spec = plan.spec();
        int count = pieces.stream().mapToInt(CutPiece::count).sum();
        Length needed = pieces.stream()
                .map(piece -> piece.length().times(piece.count()))
                .reduce(Length.ZERO, Length::plus);
        Worksheet.Builder sheet = Worksheet.titled("Stock to buy")
                .given("pieces", count, Integer.toString(count))
                .given("length of all pieces", needed, Written.tape(needed))
                .given("stock", stock, stock.stream().map(SoldLength::toString).collect(Collectors.joining("; ")))
                .given("kerf", spec.kerf(), Written.tape(spec.kerf()))
                .given("end trim", spec.endTrim(), Written.tape(spec.endTrim()))
                .given("culls", spec.culls(), percent(spec.culls().value()));
        for (Purchase purchase : plan.purchases()) {
            sheet.line(
                    "sticks of " + purchase.sold(),
                    "needed + spares",
                    purchase.needed() + " + " + purchase.spares(),
                    purchase.sticks(),
                    Integer.toString(purchase.sticks()),
                    Citation.GEOMETRY);
        }
        Optional<Currency> currency = plan.currency();
        Object total = currency.isPresent() ? plan.cost().orElseThrow() : plan.length();
        Object least = currency.isPresent()
                ? plan.leastCost().orElseThrow()
                : plan.leastLength().orElseThrow();
        String terms = plan.purchases().stream()
                .map(purchase -> purchase.needed() + " x "
                        + purchase.sold()
                                .price()
                                .map(BigDecimal::toPlainString)
                                .orElseGet(() -> Written.stock(purchase.sold().length())))
                .collect(Collectors.joining(" + "));
        String what = currency.isPresent() ? "price" : "length";
        return sheet.line("sticks needed", "sum of number x " + what, terms, total, found, Citation.GEOMETRY)
                .line("lower bound", "least " + what + " for these pieces", "", least, atLeast, BOUND)
                .line(
                        "gap",
                        "(sticks needed - lower bound) / sticks needed",
                        "(" + found + " - " + atLeast + ") / " + found,
                        plan.gap(),
                        percent(plan.gap().value()),
                        Citation.GEOMETRY)
                .build();
    }

    private static String percent(double share) {
        BigDecimal rounded = BigDecimal.valueOf(share)
                .movePointRight(2)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (rounded.signum() == 0 ? "0" : rounded.toPlainString()) + " %";
    }
}
