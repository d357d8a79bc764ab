package org.fencecore.gate.hang;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.ground.ProfilePoint;
import org.fencecore.internal.Once;
import org.fencecore.units.Force;
import org.fencecore.units.Length;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * What a leaf weighs, and where its centre of gravity is: frame, braces and boards.
 *
 * <pre>
 * weight of a part  = unit weight x volume
 * from hinge edge   = sum of (weight x distance from the hinge edge) / sum of weights
 * up                = sum of (weight x height) / sum of weights
 * </pre>
 *
 * <p>Boards that are alike count as spread evenly over the leaf, others where they are. Left out: hinges, latch, screws, cables, and infill blocks.
 *
 * <p>Source: statics. Example: a leaf 46 3/4 by 56 in of 3 1/2 by 1 1/2 in southern pine at 19 % moisture, with one
 * pointed brace and nine boards of 5 1/2 by 5/8 by 72 in, has a frame of 21.7, a brace of 7.0 and boards of 48.1 lbf, and
 * its centre of gravity midway at 23 3/8 in.
 */
public final class LeafWeight {

    /** More lengths than that are not written out on a sheet. */
    private static final int MOST_WRITTEN = 40;

    private final GateLeaf leaf;
    private final GateWood frameWood;
    private final List<LeafBoards> boards;
    private final Once<Sums> sums = Once.of(this::sum);

    private LeafWeight(GateLeaf leaf, GateWood frameWood, List<LeafBoards> boards) {
        this.leaf = leaf;
        this.frameWood = frameWood;
        this.boards = boards;
    }

    /**
     * Weighs a leaf.
     *
     * @param leaf the leaf, with room for its pieces
     * @param frameWood what frame and braces are of
     * @param boards the boards on it, in as many lots as differ; none for a frame alone
     * @return its weight
     * @throws IllegalArgumentException if the leaf has no room for its pieces, which its findings tell
     */
    public static LeafWeight of(GateLeaf leaf, GateWood frameWood, LeafBoards... boards) {
        Objects.requireNonNull(frameWood, "frameWood");
        if (leaf.pieces().isEmpty()) {
            throw new IllegalArgumentException("leaf was " + leaf
                    + ", which has no room for the pieces of its frame; see its findings for the way out");
        }
        return new LeafWeight(leaf, frameWood, List.of(boards));
    }

    /**
     * Returns the leaf that is weighed.
     *
     * @return the leaf
     */
    public GateLeaf leaf() {
        return leaf;
    }

    /**
     * Returns what the stiles and rails weigh.
     *
     * @return their weight
     */
    public Force frame() {
        return frameWood.unitWeight().times(frameVolume());
    }

    /**
     * Returns what the braces weigh.
     *
     * @return their weight; zero for cables
     */
    public Force braces() {
        return frameWood.unitWeight().times(braceVolume());
    }

    /**
     * Returns what the boards weigh.
     *
     * @return their weight
     */
    public Force boards() {
        return sums.get().boards();
    }

    /**
     * Returns what the whole leaf weighs.
     *
     * @return frame, braces and boards
     */
    public Force total() {
        return sums.get().total();
    }

    private Volume frameVolume() {
        return sums.get().frame();
    }

    private Volume braceVolume() {
        return sums.get().braces();
    }

    /** Volumes, weights, and weights times places in newtons times nanometres. */
    private record Sums(Volume frame, Volume braces, Force boards, Force total, double across, double up) {}

    private Sums sum() {
        double perVolume = frameWood.unitWeight().newtonsPerCubicMetre();
        Moments moments = new Moments();
        Volume frame = Volume.ZERO;
        for (FramePiece piece : leaf.pieces()) {
            Volume volume = piece.volume();
            frame = frame.plus(volume);
            moments.add(perVolume * volume.cubicMetres(), piece.centre());
        }
        Volume braces = Volume.ZERO;
        for (GateBrace brace : leaf.braces()) {
            Volume volume = brace.volume();
            braces = braces.plus(volume);
            moments.add(perVolume * volume.cubicMetres(), brace.centre());
        }
        Force boarding = Force.ZERO;
        Length middle = leaf.width().dividedBy(2);
        for (LeafBoards lot : boards) {
            Force weight = lot.weight();
            Length place = lot.centre().orElse(middle);
            double height = lot.bottom().nanometres()
                    + lot.length().nanometres() / 2.0
                    + leaf.rake().riseOver(place).nanometres();
            boarding = boarding.plus(weight);
            moments.add(weight.newtons(), place.nanometres(), height);
        }
        Force total = frameWood
                .unitWeight()
                .times(frame)
                .plus(frameWood.unitWeight().times(braces))
                .plus(boarding);
        return new Sums(frame, braces, boarding, total, moments.across, moments.up);
    }

    /** Weights times places, in newtons times nanometres, as they add up. */
    private static final class Moments {

        private double across;
        private double up;

        void add(double newtons, ProfilePoint centre) {
            add(newtons, centre.station().nanometres(), (double)
                    centre.elevation().nanometres());
        }

        void add(double newtons, long fromLeft, double height) {
            across += newtons * fromLeft;
            up += newtons * height;
        }
    }

    /**
     * Returns how far the centre of gravity is from the hinge edge of the leaf, level.
     *
     * @return the distance, to the nearest nanometre
     */
    public Length fromHingeEdge() {
        double left = sums.get().across() / total().newtons();
        double width = leaf.width().nanometres();
        return Length.ofNanometres(Math.round(leaf.hingeSide() == HingeSide.LEFT ? left : width - left));
    }

    /**
     * Returns how high the centre of gravity is over the lower left corner of the frame.
     *
     * @return the height, to the nearest nanometre
     */
    public Length up() {
        return Length.ofNanometres(Math.round(sums.get().up() / total().newtons()));
    }

    /**
     * Returns the weight worked out part by part, ending with how far its centre is from the hinge edge.
     *
     * @return the worksheet; its last line is {@link #fromHingeEdge}
     */
    public Worksheet worksheet() {
        Worksheet.Builder sheet = Worksheet.titled("Weight of the gate leaf");
        density(sheet, "frame and brace", frameWood);
        part(sheet, "frame", frameVolume(), frameWood, frame());
        List<String> names = new ArrayList<>(List.of("frame"));
        List<String> weights = new ArrayList<>(List.of(Written.force(frame())));
        if (braces().isPositive()) {
            part(sheet, "braces", braceVolume(), frameWood, braces());
            names.add("braces");
            weights.add(Written.force(braces()));
        }
        List<List<LeafBoards>> alike = alike();
        for (int i = 0; i < alike.size(); i++) {
            List<LeafBoards> lots = alike.get(i);
            String name = alike.size() == 1 ? "boards" : "boards " + (i + 1);
            GateWood wood = lots.get(0).wood();
            density(sheet, name, wood);
            Volume volume = lots.stream().map(LeafBoards::volume).reduce(Volume.ZERO, Volume::plus);
            volume(sheet, name, lots, volume);
            Force weight = lots.stream().map(LeafBoards::weight).reduce(Force.ZERO, Force::plus);
            part(sheet, name, volume, wood, weight);
            names.add(name);
            weights.add(Written.force(weight));
        }
        return sheet.line(
                        "weight of the leaf",
                        String.join(" + ", names),
                        String.join(" + ", weights),
                        total(),
                        Written.force(total()),
                        Citation.GEOMETRY)
                .line(
                        "height of its centre of gravity",
                        "sum of weight x height / weight of the leaf",
                        "",
                        up(),
                        Written.tape(up()),
                        Citation.GEOMETRY)
                .line(
                        "centre of gravity from the hinge edge",
                        "sum of weight x distance / weight of the leaf",
                        "",
                        fromHingeEdge(),
                        Written.tape(fromHingeEdge()),
                        Citation.GEOMETRY)
                .build();
    }

    /** The boards by width, thickness and wood. */
    private List<List<LeafBoards>> alike() {
        List<List<LeafBoards>> alike = new ArrayList<>();
        for (LeafBoards lot : boards) {
            List<LeafBoards> same = alike.stream()
                    .filter(lots -> lots.get(0).isLike(lot))
                    .findFirst()
                    .orElse(null);
            if (same == null) {
                alike.add(new ArrayList<>(List.of(lot)));
            } else {
                same.add(lot);
            }
        }
        return alike;
    }

    private static void volume(Worksheet.Builder sheet, String name, List<LeafBoards> lots, Volume volume) {
        LeafBoards first = lots.get(0);
        String section = Written.inches(first.width()) + " x " + Written.inches(first.thickness());
        if (lots.size() == 1) {
            sheet.line(
                    "volume of the " + name,
                    "count x width x thickness x length",
                    first.count() + " x " + section + " x " + Written.inches(first.length()),
                    volume,
                    Written.volume(volume),
                    Citation.GEOMETRY);
            return;
        }
        int count = lots.stream().mapToInt(LeafBoards::count).sum();
        String lengths = lots.size() > MOST_WRITTEN
                ? "the mean lengths of " + count + " boards"
                : lots.stream()
                        .map(lot -> (lot.count() == 1 ? "" : lot.count() + " x ") + Written.inches(lot.length()))
                        .collect(Collectors.joining(" + ", "(", ")"));
        sheet.line(
                "volume of the " + name,
                "width x thickness x sum of mean lengths",
                section + " x " + lengths,
                volume,
                Written.volume(volume),
                Citation.GEOMETRY);
    }

    private static void density(Worksheet.Builder sheet, String name, GateWood wood) {
        String g = Written.factor(wood.specificGravity());
        String m = Written.factor(wood.moisture());
        sheet.line(
                "unit weight of " + name + ", " + wood,
                "62.4 pcf x G / (1 + 0.9 G m) x (1 + m)",
                "62.4 pcf x " + g + " / (1 + 0.9 x " + g + " x " + m + ") x (1 + " + m + ")",
                wood.unitWeight(),
                Written.unitWeight(wood.unitWeight()),
                Nds.DENSITY);
    }

    private static void part(Worksheet.Builder sheet, String name, Volume volume, GateWood wood, Force weight) {
        sheet.line(
                name,
                "unit weight x volume",
                Written.unitWeight(wood.unitWeight()) + " x " + Written.volume(volume),
                weight,
                Written.force(weight),
                Citation.GEOMETRY);
    }

    @Override
    public String toString() {
        return leaf + ", " + Written.force(total());
    }
}
