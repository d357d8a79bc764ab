package org.fencecore.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fencecore.FencePlan;
import org.fencecore.footing.BagSize;
import org.fencecore.footing.HoleList;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
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
        materials.lumber(sticks, spec);
        materials.toOrder(pieces, spec);
        HoleList holes = plan.holes();
        materials.concrete(holes, spec.bag());
        materials.gravel(holes);
        Hardware hardware = new Hardware(plan);
        materials.add(MaterialGroup.FASTENERS, hardware.fasteners());
        materials.add(MaterialGroup.GATE_HARDWARE, hardware.gates());
        materials.add(MaterialGroup.LAYOUT, hardware.layoutAids());
        materials.lines.removeIf(line -> line.quantity() == 0);
        return List.copyOf(materials.lines);
    }

    private void add(MaterialGroup group, List<MaterialLine> those) {
        those.forEach(line -> lines.add(line.in(group)));
    }

    /** One item of lumber in the making: how many, and which pieces they are for. */
    private static final class Tally {
        private final Lumber lumber;
        private final Length length;
        private int sticks;
        private final Map<PieceKind, Integer> pieces = new EnumMap<>(PieceKind.class);

        Tally(Lumber lumber, Length length) {
            this.lumber = lumber;
            this.length = length;
        }

        MaterialLine line(String item, String note, int spares) {
            boolean boarding = pieces.keySet().stream().allMatch(PieceKind::isBoarding);
            String culls = spares == 0 ? "" : "; " + spares + " to spare";
            return new MaterialLine(item, sticks + spares, "pieces", note + pieces() + culls)
                    .in(boarding ? MaterialGroup.BOARDS : MaterialGroup.LUMBER)
                    .of(lumber, length);
        }

        void add(PieceKind kind, int count) {
            pieces.merge(kind, count, Integer::sum);
        }

        String pieces() {
            return Written.list(pieces.entrySet().stream()
                    .map(entry -> entry.getKey().counted(entry.getValue()))
                    .toList());
        }
    }

    /** The longest of a name first, as they are found on the shelf and loaded. */
    private void lumber(List<Stick> sticks, TakeoffSpec spec) {
        Map<String, Map<Length, Tally>> items = new LinkedHashMap<>();
        for (Stick stick : sticks) {
            Tally tally = items.computeIfAbsent(name(stick.pieces()), key -> new TreeMap<>(Comparator.reverseOrder()))
                    .computeIfAbsent(stick.length(), length -> new Tally(stick.lumber(), length));
            tally.sticks += stick.count();
            stick.pieces().forEach(piece -> tally.add(piece.kind(), stick.count()));
        }
        items.forEach((name, lengths) -> lengths.forEach((length, tally) -> lines.add(tally.line(
                name + ", " + Written.stock(length), "", spec.cutting().spares(tally.sticks)))));
    }

    /** Pieces that no shelf has are still to be had, from a yard that cuts to order. */
    private void toOrder(List<Piece> pieces, TakeoffSpec spec) {
        Map<String, Tally> items = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            if (piece.isTooLong(spec)) {
                String item = name(List.of(piece)) + ", " + Written.tape(piece.overall(), Rounding.UP) + " or longer";
                Tally tally = items.computeIfAbsent(item, key -> new Tally(piece.lumber(), piece.overall()));
                tally.sticks += piece.count();
                tally.add(piece.kind(), piece.count());
            }
        }
        items.forEach((item, tally) -> lines.add(tally.line(item, "to order: ", 0)));
    }

    static String name(List<Piece> pieces) {
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
                        Written.list(shares) + "; " + Written.volume(list.concrete()) + " in all")
                .in(MaterialGroup.CONCRETE));
    }

    private void gravel(HoleList list) {
        Volume volume = list.gravel();
        // A billionth of a bag is the rounding of doubles, not gravel.
        int bags = (int) Math.ceil(volume.ratioTo(GRAVEL_BAG).value() - 1e-9);
        lines.add(new MaterialLine(
                        "gravel",
                        bags,
                        "bags of 1/2 cu ft",
                        Written.volume(volume) + " under " + list.count() + " posts")
                .in(MaterialGroup.GRAVEL));
    }
}
