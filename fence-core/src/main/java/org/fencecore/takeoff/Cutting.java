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
import org.fencecore.cutting.CuttingSpec;
import org.fencecore.cutting.SoldLength;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;

/**
 * Puts pieces onto sticks: the least length of sticks for the pieces of one lumber, and for boards of one length as many
 * to a stick as it takes.
 */
final class Cutting {

    private final Length kerf;
    /** Pieces that are shared out over sticks together; a fence of many miles is cut in parts. */
    private static final int AT_A_TIME = 50_000;

    private final List<Stick> sticks = new ArrayList<>();

    private Cutting(Length kerf) {
        this.kerf = kerf;
    }

    /** Returns the sticks for all pieces but those that no length sold is long enough for. */
    static List<Stick> of(List<Piece> pieces, Length kerf) {
        Map<Pile, List<Piece>> piles = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            if (piece.lumber().shortestFor(piece.overall()).isPresent()) {
                Pile pile = new Pile(piece.lumber(), piece.kind().isBoarding());
                piles.computeIfAbsent(pile, none -> new ArrayList<>()).add(piece);
            }
        }
        Cutting cutting = new Cutting(kerf);
        piles.forEach((pile, pooled) -> {
            if (pile.boards()) {
                cutting.cutBoarding(pooled);
            } else {
                for (int from = 0; from < pooled.size(); from += AT_A_TIME) {
                    cutting.cutLeast(pooled.subList(from, Math.min(from + AT_A_TIME, pooled.size())));
                }
            }
        });
        return List.copyOf(cutting.sticks);
    }

    /** What may come out of the same sticks: equal lumber, and boards apart from the rest. */
    private record Pile(Lumber lumber, boolean boards) {}

    private static Length shortestFor(Piece piece) {
        return piece.lumber().shortestFor(piece.overall()).orElseThrow();
    }

    /** The least length of sticks that the pieces come out of; see the package {@code cutting}. */
    private void cutLeast(List<Piece> pile) {
        Lumber lumber = pile.get(0).lumber();
        IdentityHashMap<CutPiece, Piece> pieces = new IdentityHashMap<>();
        List<CutPiece> toCut = new ArrayList<>();
        for (Piece piece : pile) {
            CutPiece cut =
                    CutPiece.of(piece.overall(), piece.count(), piece.label()).withSawCut(piece.sawCut(kerf));
            pieces.put(cut, piece);
            toCut.add(cut);
        }
        List<SoldLength> sold = lumber.lengths().stream().map(SoldLength::of).toList();
        CuttingPlan plan =
                CuttingPlan.of(toCut, sold, CuttingSpec.builder().kerf(kerf).build());
        for (CutStick stick : plan.sticks()) {
            List<Piece> from = new ArrayList<>();
            stick.pieces().forEach(cut -> from.add(Objects.requireNonNull(pieces.get(cut))));
            sticks.add(new Stick(stick.count(), lumber, stick.sold().length(), from, stick.left()));
        }
    }

    private Stick stick(int count, Length length, List<Piece> pieces) {
        long left = length.nanometres();
        for (Piece piece : pieces) {
            left -= piece.take(kerf);
        }
        return new Stick(count, pieces.get(0).lumber(), length, pieces, Length.ofNanometres(Math.max(left, 0)));
    }

    /** Boards of one length come so many to a stick; others share sticks, or go by length where they are too many. */
    private void cutBoarding(List<Piece> pile) {
        Map<Long, List<Piece>> byTake = new TreeMap<>(Comparator.reverseOrder());
        pile.forEach(boards -> byTake.computeIfAbsent(boards.take(kerf), none -> new ArrayList<>())
                .add(boards));
        long count = pile.stream().mapToLong(Piece::count).sum();
        if (byTake.size() > 1 && count <= AT_A_TIME) {
            cutLeast(pile);
        } else {
            byTake.values().forEach(this::cutBoards);
        }
    }

    private void cutBoards(List<Piece> pile) {
        Length length = shortestFor(pile.get(0));
        Length take = Length.ofNanometres(pile.get(0).take(kerf));
        int each = (int) Math.min(length.plus(kerf).wholePieces(take), PieceList.MOST_BOARDS);
        List<Piece> open = new ArrayList<>();
        for (Piece boards : pile) {
            int toOpen = open.isEmpty() ? 0 : Math.min(each - open.size(), boards.count());
            open.addAll(Collections.nCopies(toOpen, boards));
            if (open.size() == each) {
                sticks.add(stick(1, length, open));
                open.clear();
            }
            int rest = boards.count() - toOpen;
            if (rest >= each) {
                sticks.add(stick(rest / each, length, Collections.nCopies(each, boards)));
            }
            open.addAll(Collections.nCopies(rest % each, boards));
        }
        if (!open.isEmpty()) {
            sticks.add(stick(1, length, open));
        }
    }
}
