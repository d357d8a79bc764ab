package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.fencecore.cutting.CutPiece;
import org.fencecore.cutting.CutStick;
import org.fencecore.cutting.CuttingPlan;
import org.fencecore.cutting.SoldLength;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;

/**
 * Puts pieces onto sticks: the cheapest sticks, or those of the least length, for the pieces of one lumber; see the package
 * {@code cutting}. More boards than that takes are cut length by length, as many to a stick as it gives.
 */
final class Cutting {

    /** What a cutting plan takes; all that is not boards is never more. */
    private static final int MOST_TOGETHER = PieceList.MOST_PIECES;

    private final TakeoffSpec spec;
    private final List<Stick> sticks = new ArrayList<>();
    private final List<LumberCut> cuts = new ArrayList<>();

    private Cutting(TakeoffSpec spec) {
        this.spec = spec;
    }

    /** Cuts all pieces but those that no length sold is long enough for. */
    static Cutting of(List<Piece> pieces, TakeoffSpec spec) {
        Map<Pile, List<Piece>> piles = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            if (!piece.isTooLong(spec)) {
                Pile pile = new Pile(piece.lumber(), piece.kind().isBoarding());
                piles.computeIfAbsent(pile, none -> new ArrayList<>()).add(piece);
            }
        }
        Cutting cutting = new Cutting(spec);
        for (List<Piece> pile : piles.values()) {
            if (pile.stream().mapToLong(Piece::count).sum() <= MOST_TOGETHER) {
                cutting.cutTogether(pile);
            } else {
                cutting.cutByLength(pile);
            }
        }
        return cutting;
    }

    List<Stick> sticks() {
        return List.copyOf(sticks);
    }

    List<LumberCut> cuts() {
        return List.copyOf(cuts);
    }

    /** What may come out of the same sticks: equal lumber, and boards apart from the rest. */
    private record Pile(Lumber lumber, boolean boards) {}

    /** The lengths sold, with their prices if all of them have one. */
    private List<SoldLength> sold(Lumber lumber) {
        List<SoldLength> priced = spec.stickPrices().getOrDefault(lumber.name(), List.of()).stream()
                .filter(sold -> lumber.lengths().contains(sold.length()))
                .toList();
        boolean all = priced.stream().map(SoldLength::length).distinct().count()
                == lumber.lengths().size();
        return all ? priced : lumber.lengths().stream().map(SoldLength::of).toList();
    }

    private void cutTogether(List<Piece> pile) {
        Lumber lumber = pile.get(0).lumber();
        IdentityHashMap<CutPiece, Piece> pieces = new IdentityHashMap<>();
        List<CutPiece> toCut = new ArrayList<>();
        for (Piece piece : pile) {
            CutPiece cut =
                    CutPiece.of(piece.overall(), piece.count(), piece.label()).withSawCut(piece.sawCut(spec.kerf()));
            pieces.put(cut, piece);
            toCut.add(cut);
        }
        CuttingPlan plan = CuttingPlan.of(toCut, sold(lumber), spec.cutting());
        for (CutStick stick : plan.sticks()) {
            List<Piece> from = new ArrayList<>();
            stick.pieces().forEach(cut -> from.add(Objects.requireNonNull(pieces.get(cut))));
            sticks.add(new Stick(stick.count(), lumber, stick.sold().length(), from, stick.left()));
        }
        cuts.add(LumberCut.of(Materials.name(pile), lumber, plan));
    }

    /** Boards of one length from the stick that costs least for each. */
    private void cutByLength(List<Piece> pile) {
        Map<Long, List<Piece>> byTake = new TreeMap<>(Comparator.reverseOrder());
        pile.forEach(boards -> byTake.computeIfAbsent(boards.take(spec.kerf()), none -> new ArrayList<>())
                .add(boards));
        Map<SoldLength, Integer> bought = new LinkedHashMap<>();
        double least = 0;
        for (List<Piece> boards : byTake.values()) {
            SoldLength stick = best(boards);
            bought.merge(stick, cutBoards(boards, stick), Integer::sum);
            double share = byTake.size() == 1 ? share(boards, stick) : leastShare(boards);
            least += share * boards.stream().mapToLong(Piece::count).sum();
        }
        Lumber lumber = pile.get(0).lumber();
        cuts.add(LumberCut.of(Materials.name(pile), lumber, sold(lumber), bought, least));
    }

    private SoldLength best(List<Piece> pile) {
        SoldLength best = null;
        for (SoldLength sold : sold(pile.get(0).lumber())) {
            if (each(pile, sold) > 0 && (best == null || share(pile, sold) < share(pile, best))) {
                best = sold;
            }
        }
        return Objects.requireNonNull(best, "no stick is long enough");
    }

    /** What one board costs if every stick is filled with its like. */
    private double share(List<Piece> pile, SoldLength sold) {
        return LumberCut.cost(sold).doubleValue() / each(pile, sold);
    }

    /** What one board costs at least, whatever it shares its stick with: its part of the stick's room. */
    private double leastShare(List<Piece> pile) {
        double least = Double.POSITIVE_INFINITY;
        for (SoldLength sold : sold(pile.get(0).lumber())) {
            if (each(pile, sold) > 0) {
                Length room = sold.length().minus(spec.cutting().endTrim()).plus(spec.kerf());
                double part = (double) pile.get(0).take(spec.kerf()) / room.nanometres();
                least = Math.min(least, LumberCut.cost(sold).doubleValue() * Math.min(part, 1));
            }
        }
        return least;
    }

    /** Returns how many sticks it takes. */
    private int cutBoards(List<Piece> pile, SoldLength stick) {
        int each = each(pile, stick);
        int before = sticks.size();
        List<Piece> open = new ArrayList<>();
        for (Piece boards : pile) {
            int toOpen = open.isEmpty() ? 0 : Math.min(each - open.size(), boards.count());
            open.addAll(Collections.nCopies(toOpen, boards));
            if (open.size() == each) {
                sticks.add(stick(1, stick.length(), open));
                open.clear();
            }
            int rest = boards.count() - toOpen;
            if (rest >= each) {
                sticks.add(stick(rest / each, stick.length(), Collections.nCopies(each, boards)));
            }
            open.addAll(Collections.nCopies(rest % each, boards));
        }
        if (!open.isEmpty()) {
            sticks.add(stick(1, stick.length(), open));
        }
        return sticks.subList(before, sticks.size()).stream()
                .mapToInt(Stick::count)
                .sum();
    }

    /** How many boards alike come out of a stick. */
    private int each(List<Piece> pile, SoldLength sold) {
        Length usable = sold.length().minus(spec.cutting().endTrim());
        if (usable.compareTo(pile.get(0).overall()) < 0) {
            return 0;
        }
        Length take = Length.ofNanometres(pile.get(0).take(spec.kerf()));
        return (int) Math.max(1, Math.min(usable.plus(spec.kerf()).wholePieces(take), PieceList.MOST_BOARDS));
    }

    private Stick stick(int count, Length length, List<Piece> pieces) {
        long left = length.minus(spec.cutting().endTrim()).nanometres();
        for (Piece piece : pieces) {
            left -= piece.take(spec.kerf());
        }
        return new Stick(count, pieces.get(0).lumber(), length, pieces, Length.ofNanometres(Math.max(left, 0)));
    }
}
