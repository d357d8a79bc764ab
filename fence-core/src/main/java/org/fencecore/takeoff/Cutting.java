package org.fencecore.takeoff;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.jspecify.annotations.Nullable;

/**
 * Puts pieces onto sticks: best fit decreasing for the pieces of one lumber, and for boards of one length as many to a
 * stick as it takes.
 */
final class Cutting {

    /** Boards of unlike lengths are put on sticks one by one up to this many. */
    private static final int MOST_BY_BEST_FIT = 100_000;

    private final Length kerf;
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
                cutting.cutBestFit(pooled);
            }
        });
        return List.copyOf(cutting.sticks);
    }

    /** What may come out of the same sticks: equal lumber, and boards apart from the rest. */
    private record Pile(Lumber lumber, boolean boards) {}

    private static Length shortestFor(Piece piece) {
        return piece.lumber().shortestFor(piece.overall()).orElseThrow();
    }

    private void cutBestFit(List<Piece> pile) {
        List<Piece> longestFirst = new ArrayList<>(pile);
        longestFirst.sort(
                Comparator.comparing((Piece piece) -> piece.take(kerf)).reversed());
        List<Started> started = new ArrayList<>();
        TreeMap<Long, Deque<Started>> byRoom = new TreeMap<>();
        for (Piece piece : longestFirst) {
            Map.@Nullable Entry<Long, Deque<Started>> tightest = byRoom.ceilingEntry(piece.take(kerf));
            Started stick;
            if (tightest == null) {
                stick = new Started(shortestFor(piece));
                started.add(stick);
            } else {
                stick = tightest.getValue().remove();
                if (tightest.getValue().isEmpty()) {
                    byRoom.remove(tightest.getKey());
                }
            }
            stick.room -= piece.take(kerf);
            stick.pieces.add(piece);
            byRoom.computeIfAbsent(stick.room, room -> new ArrayDeque<>()).add(stick);
        }
        started.forEach(stick -> sticks.add(stick.finished()));
    }

    /** A stick of which something may be left. */
    private final class Started {

        private final Length length;
        private final List<Piece> pieces = new ArrayList<>();
        /** The kerf is added because the last cut may run off the end; negative once a piece leaves less than its cut. */
        private long room;

        Started(Length length) {
            this.length = length;
            this.room = length.plus(kerf).nanometres();
        }

        Stick finished() {
            // Between two pieces lies the wider of their cuts; in this order each piece's own cut follows it.
            pieces.sort(Comparator.comparing(Piece::sawing).reversed());
            return stick(1, length, pieces);
        }
    }

    private Stick stick(int count, Length length, List<Piece> pieces) {
        long left = length.nanometres();
        for (Piece piece : pieces) {
            left -= piece.take(kerf);
        }
        return new Stick(count, pieces.get(0).lumber(), length, pieces, Length.ofNanometres(Math.max(left, 0)));
    }

    /** Boards of one length go by the rule; others share sticks by best fit, or by length where they are too many. */
    private void cutBoarding(List<Piece> pile) {
        Map<Long, List<Piece>> byTake = new TreeMap<>(Comparator.reverseOrder());
        pile.forEach(boards -> byTake.computeIfAbsent(boards.take(kerf), none -> new ArrayList<>())
                .add(boards));
        long count = pile.stream().mapToLong(Piece::count).sum();
        if (byTake.size() > 1 && count <= MOST_BY_BEST_FIT) {
            List<Piece> each = new ArrayList<>();
            pile.forEach(boards -> each.addAll(Collections.nCopies(boards.count(), boards)));
            int before = sticks.size();
            cutBestFit(each);
            putTogether(sticks.subList(before, sticks.size()));
        } else {
            byTake.values().forEach(this::cutBoards);
        }
    }

    /** Sticks with the same pieces become one entry. */
    private static void putTogether(List<Stick> cut) {
        record Pattern(Length length, List<Piece> pieces) {}
        Map<Pattern, List<Stick>> alike = new LinkedHashMap<>();
        cut.forEach(
                stick -> alike.computeIfAbsent(new Pattern(stick.length(), stick.pieces()), none -> new ArrayList<>())
                        .add(stick));
        cut.clear();
        alike.forEach((pattern, its) -> cut.add(new Stick(
                its.size(),
                its.get(0).lumber(),
                pattern.length(),
                pattern.pieces(),
                its.get(0).left())));
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
