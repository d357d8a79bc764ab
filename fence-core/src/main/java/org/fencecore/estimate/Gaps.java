package org.fencecore.estimate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** Words for what an estimate lacks. */
final class Gaps {

    private Gaps() {}

    static Finding price(EstimateLine line) {
        return Finding.warning(
                        "price-missing",
                        line.material().item(),
                        "the price book has no price for " + line.withWaste() + " "
                                + line.material().unit() + " of it, which are not in the sum")
                .withRemedy("add a price under this name");
    }

    static Finding time(LabourLine line) {
        return Finding.warning(
                        "time-missing",
                        line.task().toString(),
                        "the crew has no time for one " + line.task().unit() + ", and there are " + line.count()
                                + "; they are not in the sum")
                .withRemedy("say how long one person takes for one");
    }

    static Finding wage() {
        return Finding.warning("wage-missing", "labour", "the crew has no wage, and labour is not in the sum")
                .withRemedy("give the wage, or leave the crew out of the estimate");
    }

    static Finding weight(EstimateLine line) {
        return Finding.note(
                        "weight-missing",
                        line.material().item(),
                        "what it weighs is not known, and the load is without it")
                .withRemedy("say what one weighs in the price book if it matters");
    }

    /** Lumber of which the cheapest sticks cannot be told, because a length that is sold has no price. */
    static List<Finding> lengths(List<EstimateLine> lines, PriceBook prices) {
        Set<Lumber> bought = new LinkedHashSet<>();
        lines.forEach(line -> line.material().lumber().ifPresent(bought::add));
        return bought.stream()
                .flatMap(lumber -> lengths(lumber, prices).stream())
                .distinct()
                .toList();
    }

    private static Optional<Finding> lengths(Lumber lumber, PriceBook prices) {
        List<Length> priced = prices.sticks().getOrDefault(lumber.name(), List.of()).stream()
                .map(sold -> sold.length())
                .toList();
        List<String> without = lumber.lengths().stream()
                .filter(length -> !priced.contains(length))
                .map(Written::stock)
                .toList();
        if (priced.isEmpty() || without.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Finding.note(
                        "lengths-without-price",
                        lumber.name(),
                        "sticks of " + Written.list(without) + " have no price, so that the least length is bought and"
                                + " not the cheapest sticks")
                .withRemedy("add their prices, or leave these lengths out of those the lumber is sold in"));
    }
}
