package org.fencecore.drawing.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fencecore.GateBay;
import org.fencecore.HungLeaf;
import org.fencecore.boarding.BoardCut;
import org.fencecore.gate.BraceEnds;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FramePiece;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateLeaf;
import org.fencecore.site.GateLocation;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;

/** What is written beside the drawing of a gate: everything to cut and hang each leaf by. */
final class GateNotes {

    private final GateBay gate;
    private final GateDesign design;
    private final Figures figures;

    GateNotes(GateBay gate, Figures figures) {
        this.figures = figures;
        this.gate = gate;
        this.design = gate.design();
    }

    /** The notes in the order in which they are written; what is the same on both leaves is told once. */
    List<String> lines() {
        List<String> first = notes(gate.leaves().get(0));
        if (!design.isPair()) {
            return first.stream().map(GateNotes::capitalised).toList();
        }
        List<String> lines = new ArrayList<>();
        List<String> last = notes(gate.leaves().get(1));
        first.stream().filter(last::contains).forEach(note -> lines.add("Each leaf: " + note));
        own("Left", first, last, lines);
        own("Right", last, first, lines);
        return lines;
    }

    private static void own(String side, List<String> notes, List<String> others, List<String> lines) {
        notes.stream().filter(note -> !others.contains(note)).forEach(note -> lines.add(side + " leaf: " + note));
    }

    private List<String> notes(HungLeaf hung) {
        GateLeaf leaf = hung.leaf();
        List<FramePiece> pieces = leaf.pieces();
        if (pieces.isEmpty()) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        FramePiece first = pieces.get(0);
        String lumber = "frame of " + size(first.thickness(), first.width());
        notes.add(
                pieces.stream().allMatch(piece -> cuts(piece).isEmpty())
                        ? lumber + ", every piece cut square to the length on it."
                        : lumber + ": "
                                + pieces.stream()
                                        .map(piece ->
                                                piece.member() + " " + figures.inText(piece.length()) + cuts(piece))
                                        .collect(Collectors.joining(", "))
                                + ".");
        Map<String, Integer> braces = new LinkedHashMap<>();
        leaf.braces().forEach(brace -> braces.merge(braceNote(brace), 1, Integer::sum));
        braces.forEach((note, number) ->
                notes.add(Notes.count(number, leaf.spec().braceKind().toString()) + note));
        notes.add(
                leaf.rake().isZero()
                        ? "square when both diagonals are " + figures.inText(leaf.diagonal()) + "."
                        : "true when the diagonal rising to the right is " + figures.inText(leaf.risingDiagonal())
                                + " and the other " + figures.inText(leaf.fallingDiagonal()) + ".");
        notes.addAll(hanging(hung));
        boards(hung).ifPresent(notes::add);
        return notes;
    }

    private List<String> hanging(HungLeaf hung) {
        List<String> notes = new ArrayList<>();
        if (!hung.hingeSeats().isEmpty()) {
            boolean straps = hung.hingeSeats().get(0).reach().isPositive();
            List<Length> blocks = hung.blocks();
            notes.add(hung.hingeSeats().size() + " hinges, middles from the lower edge of the frame; pins plumb in line"
                    + (straps ? ", straps level." : ".")
                    + (blocks.isEmpty()
                            ? ""
                            : " Behind straps off the rails " + Notes.count(blocks.size(), "block") + " of "
                                    + figures.inText(blocks.get(0))
                                    + (hung.leaf().rake().isZero() ? "." : ", level, cut to the raked rail.")));
        }
        hung.chamfer()
                .ifPresent(chamfer ->
                        notes.add("plane a " + chamfer + " on the latch stile, on the edge away from the swing."));
        if (!hung.leaf().equals(design.activeLeaf())) {
            notes.add("held by the drop rod, carries the strike.");
        } else if (design.isPair() || !latch().isEmpty()) {
            String opens = design.isPair() ? "opens first, carries the latch" : "";
            notes.add(opens + (opens.isEmpty() || latch().isEmpty() ? "" : "; ") + latch() + ".");
        }
        return notes;
    }

    /** What shuts it and how it is opened, as far as it was said. */
    private String latch() {
        GateLocation wanted = gate.location();
        String shuts = wanted.isSelfClosing() && wanted.isSelfLatching()
                ? "closes and latches by itself"
                : wanted.isSelfClosing() ? "closes by itself" : wanted.isSelfLatching() ? "latches by itself" : "";
        String release = wanted.releaseHeight()
                .map(up -> "release of the latch " + figures.inText(up) + " above the ground, worked from "
                        + (wanted.isReleaseInside() ? "inside" : "outside"))
                .orElse("");
        return shuts + (shuts.isEmpty() || release.isEmpty() ? "" : "; ") + release;
    }

    /** The boards as far as they are alike; the sheet of the job has every one. */
    private Optional<String> boards(HungLeaf hung) {
        String under =
                " They begin " + figures.inText(hung.frameBottom().minus(hung.boardBottom())) + " under the frame.";
        Optional<String> upright = hung.cuts()
                .map(cuts -> Notes.count(cuts.layout().count(), "board") + ", "
                        + (gate.top().shape().isStraight()
                                ? "all " + figures.inText(gate.top().longest()) + " long."
                                : shaped(cuts.cuts()))
                        + under);
        return upright.or(() -> hung.courses()
                .map(courses -> Notes.count(courses.boardCount(), "board") + " from edge to edge." + under));
    }

    /** The tables have each of them. */
    private String shaped(List<BoardCut> cuts) {
        Length shortest = cuts.stream().map(BoardCut::length).reduce(cuts.get(0).length(), Length::min);
        Length longest = cuts.stream().map(BoardCut::length).reduce(cuts.get(0).length(), Length::max);
        return "tops " + gate.top().shape()
                + gate.top()
                        .radius()
                        .map(radius -> ", radius " + figures.inText(radius))
                        .orElse("")
                + ", so " + figures.inText(shortest) + " to " + figures.inText(longest)
                + " long, each in the tables.";
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String cuts(FramePiece piece) {
        String first = GateView.degrees(piece.firstCut());
        String other = GateView.degrees(piece.otherCut());
        String square = GateView.degrees(Angle.ZERO);
        String slanted = first.equals(other) ? first : first + " and " + other;
        String ends = first.equals(square) && other.equals(square) ? "" : slanted + " off square";
        String laps = piece.laps() == 0 ? "" : piece.laps() + " half-laps";
        String both = ends + (ends.isEmpty() || laps.isEmpty() ? "" : ", ") + laps;
        return both.isEmpty() ? "" : " (" + both + ")";
    }

    private String braceNote(GateBrace brace) {
        String run = ", from the " + brace.foot().stile() + " up to the "
                + brace.head().stile() + ".";
        if (brace.kind() == BraceKind.CABLE) {
            return " of " + figures.inText(brace.length()) + " corner to corner, less eyes and turnbuckle" + run;
        }
        String rail = brace.railCut()
                .map(cut -> GateView.degrees(cut) + " off square against the rail")
                .orElse("");
        String stile = brace.stileCut()
                .map(cut -> GateView.degrees(cut) + (rail.isEmpty() ? " off square" : "") + " against the stile")
                .orElse("");
        boolean pointed = brace.ends() == BraceEnds.POINTS;
        String onRail = rail.isEmpty() ? "" : figures.inText(brace.railBearing()) + " on the rail";
        String onStile = stile.isEmpty() ? "" : figures.inText(brace.stileBearing()) + " on the stile";
        String bears = onRail + (pointed ? " and " : "") + onStile + ".";
        return " of " + size(brace.thickness(), brace.width()) + ", " + figures.inText(brace.length())
                + " point to point" + run + " Cut each end" + (pointed ? " to a point: " : " ") + rail
                + (pointed ? ", " : "") + stile + ". It bears " + bears;
    }

    private String size(Length thickness, Length width) {
        return figures.inText(thickness) + " x " + figures.inText(width);
    }
}
