package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fencecore.FencePlan;
import org.fencecore.footing.BagSize;
import org.fencecore.footing.HoleList;
import org.fencecore.style.Lumber;
import org.fencecore.units.Rounding;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Written;

/** Writes the shopping list: lumber by the stick, what goes into the holes, then hardware and what the layout takes. */
final class Materials {

    /** The bag gravel is sold in; common practice, no source. */
    private static final Volume GRAVEL_BAG = Volume.ofCubicFeet(0.5);

    private final List<MaterialLine> lines = new ArrayList<>();

    private Materials() {}

    static List<MaterialLine> of(FencePlan plan, List<Piece> pieces, List<Stick> sticks, TakeoffSpec spec) {
        Materials materials = new Materials();
        materials.lumber(sticks);
        materials.toOrder(pieces);
        HoleList holes = plan.holes();
        materials.concrete(holes, spec.bag());
        materials.gravel(holes);
        Hardware hardware = new Hardware(plan);
        materials.lines.addAll(hardware.fasteners());
        materials.lines.addAll(hardware.gates());
        materials.lines.addAll(hardware.layoutAids());
        materials.lines.removeIf(line -> line.quantity() == 0);
        return List.copyOf(materials.lines);
    }

    /** One item of lumber in the making: how many, and which pieces they are for. */
    private static final class Tally {
        private int sticks;
        private final Map<PieceKind, Integer> pieces = new EnumMap<>(PieceKind.class);

        void add(PieceKind kind, int count) {
            pieces.merge(kind, count, Integer::sum);
        }

        String pieces() {
            return Written.list(pieces.entrySet().stream()
                    .map(entry -> entry.getKey().counted(entry.getValue()))
                    .toList());
        }
    }

    private void lumber(List<Stick> sticks) {
        Map<String, Tally> items = new LinkedHashMap<>();
        for (Stick stick : sticks) {
            String item = name(stick.pieces()) + ", " + Written.stock(stick.length());
            Tally tally = items.computeIfAbsent(item, key -> new Tally());
            tally.sticks += stick.count();
            stick.pieces().forEach(piece -> tally.add(piece.kind(), stick.count()));
        }
        items.forEach((item, tally) -> lines.add(new MaterialLine(item, tally.sticks, "pieces", tally.pieces())));
    }

    /** Pieces that no shelf has are still to be had, from a yard that cuts to order. */
    private void toOrder(List<Piece> pieces) {
        Map<String, Tally> items = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            if (piece.lumber().shortestFor(piece.overall()).isEmpty()) {
                String item = name(List.of(piece)) + ", " + Written.tape(piece.overall(), Rounding.UP) + " or longer";
                Tally tally = items.computeIfAbsent(item, key -> new Tally());
                tally.sticks += piece.count();
                tally.add(piece.kind(), piece.count());
            }
        }
        items.forEach((item, tally) ->
                lines.add(new MaterialLine(item, tally.sticks, "pieces", "to order: " + tally.pieces())));
    }

    private static String name(List<Piece> pieces) {
        Lumber lumber = pieces.get(0).lumber();
        for (PieceKind kind : List.of(PieceKind.POST, PieceKind.BOARD, PieceKind.BATTEN)) {
            if (pieces.stream().allMatch(piece -> piece.kind() == kind)) {
                return lumber.name() + " " + kind;
            }
        }
        return lumber.name();
    }

    /** Rounds each hole up to whole bags, since a hole is filled in one go. */
    private void concrete(HoleList list, BagSize bag) {
        Map<Integer, Integer> holes = new TreeMap<>();
        for (HoleList.Group group : list.groups()) {
            holes.merge(group.bagsEach(bag), group.places().size(), Integer::sum);
        }
        List<String> shares = new ArrayList<>();
        holes.forEach((each, count) -> shares.add(each + " a hole for " + count + (count == 1 ? " post" : " posts")));
        lines.add(new MaterialLine(
                "concrete mix",
                list.bags(bag),
                "bags of " + Written.bag(bag.weight()),
                Written.list(shares) + "; " + Written.volume(list.concrete()) + " in all"));
    }

    private void gravel(HoleList list) {
        Volume volume = list.gravel();
        // A billionth of a bag is the rounding of doubles, not gravel.
        int bags = (int) Math.ceil(volume.ratioTo(GRAVEL_BAG).value() - 1e-9);
        lines.add(new MaterialLine(
                "gravel", bags, "bags of 1/2 cu ft", Written.volume(volume) + " under " + list.count() + " posts"));
    }
}
