package org.fencecore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.boarding.BoardCuts;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateLeaf;
import org.fencecore.gate.hang.Chamfer;
import org.fencecore.gate.hang.GateSwing;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.gate.hang.HingePostLoad;
import org.fencecore.gate.hang.HingeSeat;
import org.fencecore.gate.hang.LatchDrop;
import org.fencecore.gate.hang.LeafWind;
import org.fencecore.geometry.Interval;
import org.fencecore.internal.Once;
import org.fencecore.layout.BoardLayout;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;

/**
 * One leaf of a gate as it hangs: its frame, its boards, how high it is, what its hinges carry, and how it swings.
 */
public final class HungLeaf {

    /** What diagonals commonly differ by on a shop floor, and joints give: common practice, no source. */
    private static final Length EIGHTH = Length.ofInches(0.125);

    private final String name;
    private final GateLeaf leaf;
    private final boolean hingesAtStart;
    private final Length boardBottom;
    private final Length frameBottom;
    private final Interval stations;
    private final Optional<BoardCuts> cuts;
    private final Optional<CourseRun> courses;
    private final Length thickness;
    private final Optional<GateSwing> swing;
    private final Optional<HingeLoads> loads;
    private final Once<List<HingeSeat>> seats;
    private final Chamfer chamfer;
    private final Optional<HingePostLoad> onPost;
    private final Optional<LeafWind> windShut;

    HungLeaf(
            String name,
            GateLeaf leaf,
            boolean hingesAtStart,
            Length boardBottom,
            Length frameBottom,
            Interval stations,
            Optional<BoardCuts> cuts,
            Optional<CourseRun> courses,
            Length thickness,
            Optional<GateSwing> swing,
            Optional<HingeLoads> loads,
            Once<List<HingeSeat>> seats,
            Chamfer chamfer,
            Optional<HingePostLoad> onPost,
            Optional<LeafWind> windShut) {
        this.name = name;
        this.leaf = leaf;
        this.hingesAtStart = hingesAtStart;
        this.boardBottom = boardBottom;
        this.frameBottom = frameBottom;
        this.stations = stations;
        this.cuts = cuts;
        this.courses = courses;
        this.thickness = thickness;
        this.swing = swing;
        this.loads = loads;
        this.seats = seats;
        this.chamfer = chamfer;
        this.onPost = onPost;
        this.windShut = windShut;
    }

    /** The same once its post stands and the wind on its line is known. */
    HungLeaf withLoads(HingePostLoad post, Optional<LeafWind> shut) {
        return new HungLeaf(
                name,
                leaf,
                hingesAtStart,
                boardBottom,
                frameBottom,
                stations,
                cuts,
                courses,
                thickness,
                swing,
                loads,
                seats,
                chamfer,
                Optional.of(post),
                shut);
    }

    /**
     * Returns what the crew calls it.
     *
     * @return the name of its gate, and of two leaves which one, such as {@code drive gate left leaf}
     */
    public String name() {
        return name;
    }

    /**
     * Returns the leaf: frame, braces, and where it is in the opening.
     *
     * @return the leaf
     */
    public GateLeaf leaf() {
        return leaf;
    }

    /** The part of the run it takes up when it is shut. */
    Interval stations() {
        return stations;
    }

    /** Tells whether it hangs on the post where the opening begins, going along the run. */
    boolean hingesAtStart() {
        return hingesAtStart;
    }

    /**
     * Returns how high its boards begin.
     *
     * @return the height of the board bottoms at its left edge seen from outside, in the datum of the shots; from there
     *     they rise by {@link GateLeaf#rake}
     */
    public Length boardBottom() {
        return boardBottom;
    }

    /**
     * Returns how high its frame begins.
     *
     * @return the height of the lower left corner of the frame seen from outside, in the datum of the shots
     */
    public Length frameBottom() {
        return frameBottom;
    }

    /**
     * Returns the upright boards on it, full at both of its edges.
     *
     * @return the boards from its left edge seen from outside; empty when it is too narrow for the pattern, or its boards
     *     are horizontal
     */
    public Optional<BoardLayout> boards() {
        return cuts.map(BoardCuts::layout);
    }

    /**
     * Returns how its upright boards are cut.
     *
     * @return the cuts, in the order of the layout's boards, their heights in the datum of the shots; empty without upright
     *     boards
     */
    public Optional<BoardCuts> cuts() {
        return cuts;
    }

    /**
     * Returns the horizontal boards on it, each from edge to edge.
     *
     * @return the boards, stations from its left edge seen from outside; empty for upright boards, and when it is too low
     *     for the pattern
     */
    public Optional<CourseRun> courses() {
        return courses;
    }

    /**
     * Returns how thick it is from face to face: its frame with the boards on one face or both.
     *
     * @return the thickness, without hinges and latch
     */
    public Length thickness() {
        return thickness;
    }

    /**
     * Returns how it swings over the ground the way its place says; {@link GateSwing#otherWay} is the other.
     *
     * @return the swing; empty when the ground is not given as a surface or does not reach under all of it
     */
    public Optional<GateSwing> swing() {
        return swing;
    }

    /**
     * Returns what its hinges carry, with its weight and how it is hung.
     *
     * @return the loads; empty when its frame cannot be made, or it is beyond anything that is weighed, which a finding
     *     tells
     */
    public Optional<HingeLoads> loads() {
        return loads;
    }

    /**
     * Returns what its hinge post gets from it as it stands open: its weight, and the wind where one is known.
     *
     * @return the load of the post; empty when {@link #loads} is
     */
    public Optional<HingePostLoad> onPost() {
        return onPost;
    }

    /**
     * Returns the wind on it when it is shut: held by the latch, or of two leaves the fixed one by its rod in the ground with
     * the other pushing it.
     *
     * @return the wind; empty where no wind is known, or {@link #loads} is
     */
    public Optional<LeafWind> windShut() {
        return windShut;
    }

    /**
     * Returns the wind on it when it stands open and nothing holds its far end.
     *
     * @return the wind; empty where no wind is known, or {@link #loads} is
     */
    public Optional<LeafWind> windOpen() {
        return onPost.flatMap(HingePostLoad::leafWind);
    }

    /**
     * Returns what is behind each hinge.
     *
     * @return the wood behind the hinges, the lowest first; none when its frame cannot be made
     */
    public List<HingeSeat> hingeSeats() {
        return seats.get();
    }

    /**
     * Returns the infill blocks that its hinges need.
     *
     * @return their lengths, the lowest first
     */
    public List<Length> blocks() {
        return hingeSeats().stream()
                .flatMap(seat -> seat.blockLength().stream())
                .toList();
    }

    /**
     * Returns what must come off the latch stile so that it turns past what it shuts against.
     *
     * @return the chamfer, on the face away from the swing
     */
    public Chamfer chamfer() {
        return chamfer;
    }

    /**
     * Returns what an eighth of an inch between the diagonals of its frame means at the latch.
     *
     * @return the drop; empty for a raked leaf, whose diagonals differ by design, and one without room for its pieces
     */
    public Optional<LatchDrop> dropFromDiagonals() {
        boolean measured = leaf.rake().isZero()
                && !leaf.pieces().isEmpty()
                && Length.min(leaf.width(), leaf.frameHeight()).times(2).compareTo(EIGHTH) >= 0;
        return measured ? Optional.of(LatchDrop.ofDiagonals(leaf, EIGHTH)) : Optional.empty();
    }

    /**
     * Returns what an eighth of an inch of slip in the joints of its lowest brace means at the latch.
     *
     * @return the drop; empty without a brace that holds anything up
     */
    public Optional<LatchDrop> dropFromSlip() {
        return leaf.braces().stream()
                .findFirst()
                .filter(GateBrace::isRightWay)
                .filter(brace -> brace.rise().isPositive())
                .map(brace -> LatchDrop.ofSlip(brace, EIGHTH));
    }

    int boardCount() {
        return boards().map(BoardLayout::count)
                .or(() -> courses.map(CourseRun::boardCount))
                .orElse(0);
    }

    List<Worksheet> worksheets() {
        List<Worksheet> sheets = new ArrayList<>();
        sheets.add(leaf.worksheet());
        leaf.braces().forEach(brace -> sheets.add(brace.worksheet()));
        boards().ifPresent(layout -> sheets.add(layout.worksheet()));
        courses.ifPresent(its -> sheets.add(its.layout().worksheet()));
        loads.ifPresent(its -> {
            sheets.add(its.leafWeight().worksheet());
            sheets.add(its.worksheet());
            its.hinges().screws().ifPresent(screws -> sheets.add(screws.worksheet()));
        });
        onPost.ifPresent(post -> sheets.add(post.worksheet()));
        windShut.ifPresent(wind -> sheets.add(wind.worksheet()));
        windOpen().ifPresent(wind -> sheets.add(wind.worksheet()));
        dropFromDiagonals().ifPresent(drop -> sheets.add(drop.worksheet()));
        dropFromSlip().ifPresent(drop -> sheets.add(drop.worksheet()));
        swing.ifPresent(over -> sheets.add(over.worksheet()));
        return sheets;
    }

    @Override
    public String toString() {
        return name;
    }
}
