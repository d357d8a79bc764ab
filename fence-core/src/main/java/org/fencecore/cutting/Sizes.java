package org.fencecore.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fencecore.units.Length;

/** The pieces of a job pooled by size: which lengths with which saw cuts, and which pieces are of each. */
final class Sizes {

    /** A length with its saw cut; the longest first. */
    private record Size(Length length, Length cut) {}

    /** Pieces that are alike, and how many of them are still to be cut. */
    private static final class Batch {
        private final CutPiece piece;
        private int left;

        Batch(CutPiece piece) {
            this.piece = piece;
            this.left = piece.count();
        }
    }

    private final List<Size> sizes;
    private final List<Deque<Batch>> pieces = new ArrayList<>();
    private final CuttingSpec spec;

    private Sizes(List<Size> sizes, CuttingSpec spec) {
        this.sizes = sizes;
        this.spec = spec;
    }

    static Sizes of(List<CutPiece> pieces, CuttingSpec spec) {
        Map<Size, Deque<Batch>> pooled = new TreeMap<>(
                Comparator.comparing(Size::length).thenComparing(Size::cut).reversed());
        for (CutPiece piece : pieces) {
            Size size = new Size(piece.length(), piece.cut(spec.kerf()));
            pooled.computeIfAbsent(size, none -> new ArrayDeque<>()).add(new Batch(piece));
        }
        Sizes sizes = new Sizes(List.copyOf(pooled.keySet()), spec);
        sizes.pieces.addAll(pooled.values());
        return sizes;
    }

    /** Whether a piece comes out of a stick by itself. */
    static boolean fits(CutPiece piece, SoldLength sold, CuttingSpec spec) {
        return alone(piece.length(), piece.cut(spec.kerf()), spec) <= usable(sold, spec);
    }

    private static long alone(Length length, Length cut, CuttingSpec spec) {
        return spec.lastCut() == LastCut.WITHIN_THE_STICK ? length.plus(cut).nanometres() : length.nanometres();
    }

    private static long usable(SoldLength sold, CuttingSpec spec) {
        return sold.length().minus(spec.endTrim()).nanometres();
    }

    Job job(List<SoldLength> stock, Money money) {
        int count = sizes.size();
        long[] length = new long[count];
        long[] take = new long[count];
        int[] demand = new int[count];
        for (int i = 0; i < count; i++) {
            Size size = sizes.get(i);
            length[i] = alone(size.length, size.cut, spec);
            take[i] = size.length.plus(size.cut).nanometres();
            demand[i] = pieces.get(i).stream().mapToInt(batch -> batch.left).sum();
        }
        int kinds = stock.size();
        long[] usable = new long[kinds];
        long[] room = new long[kinds];
        long[] cost = new long[kinds];
        int[] limit = new int[kinds];
        long saved =
                spec.lastCut() == LastCut.WITHIN_THE_STICK ? 0 : spec.kerf().nanometres();
        for (int kind = 0; kind < kinds; kind++) {
            SoldLength sold = stock.get(kind);
            usable[kind] = usable(sold, spec);
            room[kind] = Math.addExact(usable[kind], saved);
            cost[kind] = money.of(sold);
            limit[kind] = sold.limit().isPresent() ? spec.good(sold.limit().getAsInt()) : Job.NO_LIMIT;
        }
        return new Job(length, take, demand, usable, room, cost, limit);
    }

    /** Hands out pieces for sticks cut by a pattern: the sticks that get the same pieces are one entry. */
    List<CutStick> sticks(Pattern pattern, int times, SoldLength sold) {
        List<CutStick> sticks = new ArrayList<>();
        int left = times;
        while (left > 0) {
            int alike = left;
            for (int i = 0; i < pattern.sizes.length; i++) {
                alike = Math.min(alike, first(pattern, i).left / pattern.counts[i]);
            }
            alike = Math.max(1, alike);
            sticks.add(stick(pattern, alike, sold));
            left -= alike;
        }
        return sticks;
    }

    private Batch first(Pattern pattern, int i) {
        return pieces.get(pattern.sizes[i]).getFirst();
    }

    private CutStick stick(Pattern pattern, int alike, SoldLength sold) {
        List<CutPiece> cut = new ArrayList<>();
        long used = spec.endTrim().nanometres();
        for (int i = 0; i < pattern.sizes.length; i++) {
            Size size = sizes.get(pattern.sizes[i]);
            for (int n = 0; n < pattern.counts[i]; n++) {
                cut.add(handOut(pattern.sizes[i], alike));
                used += size.length.plus(size.cut).nanometres();
            }
        }
        cut.sort(Comparator.comparing((CutPiece piece) -> piece.cut(spec.kerf()))
                .thenComparing(CutPiece::length)
                .reversed());
        long left = Math.max(0, sold.length().nanometres() - used);
        return new CutStick(alike, sold, cut, Length.ofNanometres(left));
    }

    private CutPiece handOut(int size, int count) {
        Deque<Batch> queue = pieces.get(size);
        Batch batch = queue.getFirst();
        batch.left -= count;
        if (batch.left == 0) {
            queue.removeFirst();
        }
        return batch.piece;
    }
}
