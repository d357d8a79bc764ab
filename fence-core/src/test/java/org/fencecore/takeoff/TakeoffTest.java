package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.List;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.PostKind;
import org.fencecore.footing.BagSize;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.FrameJoint;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.site.GateLocation;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.Treatment;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.units.Mass;
import org.fencecore.units.Volume;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;
import org.fencecore.worksheet.Written;
import org.junit.jupiter.api.Test;

class TakeoffTest {

    /*
     * Worked by hand for small(), all in inches: one side of 19 ft 6 1/4 in, level, in the usual style, with a gate beside its
     * first post. Lot side 234 1/4; strings 6 inside; post centres half a post
     * further, 7 3/4, so the run is 234.25 - 15.5 = 218.75. The gate opening of 42 1/4 begins at the face of post 1:
     * post 2 at 1.75 + 42.25 + 1.75 = 45.75. The stretch of 218.75 - 45.75 = 173 takes 2 bays of 86 1/2 (96 at most).
     * Posts: 1 end, 2 gate, 3 line, 4 end.
     *
     * Posts     exposed 2 + 72 = 74, in the ground half of that, 37: 111, from 10 ft.
     * Rails     3, each a piece over both bays from outer edge to outer edge of the posts, 176.5, from 16 ft.
     * Boards    boarded 173 + 3.5 = 176.5 = 20 boards of 5.5 and 19 gaps of 3.5, so 20 outside and 19 inside. Inside
     *           board i (from 0) covers 4.5 + 9i to 10 + 9i; of the posts, at 0 to 3.5, 86.5 to 90 and 173 to 176.5, only
     *           the middle one is met, by board 9 (85.5 to 91): 1 ripped beside it.
     * Gate      leaf 42.25 - 0.75 = 41.5 = 5 boards and 4 gaps of 3.5: 9 boards. Frame 72 - 4 - 4 = 64 high. Stiles 2 of
     *           64, rails 2 of 41.5 - 7 = 34.5, brace sqrt(34.5^2 + 57^2) = 66.628 at atan(57 / 34.5) = 58.81 degrees.
     * 2x4       Each takes its length and 1/8, the brace 0.125 / cos 58.81 = 0.241 in place of that: 3 rails of 176.625, each
     *           from its own 16 ft; then the brace 66.869, 2 stiles of 64.125, 2 gate rails of 34.625 and a block of 8.625,
     *           in all 272.994, over 22 ft, which no two sticks share out; 24 ft do: the brace and a stile from 12 ft
     *           (144 - 130.994 = 13.006 left), the rest from 12 ft (144 - 142 = 2 left).
     * Concrete  (pi/4 x 10.5^2 - 3.5^2) x 37 = 2750.6 cu in = 1.592 cu ft; / 0.45 = 3.5: 4 bags of 60 lb, 16 for 4 posts.
     * Gravel    pi/4 x 10.5^2 x 6 = 519.5 cu in = 0.3007 cu ft, 1.203 for 4 posts: 3 bags of 1/2 cu ft.
     * Fasteners 39 boards x 3 rails x 2 + 9 boards x 2 rails x 2 = 270; 3 rails x 3 posts x 2 = 18; (2 rails + 1 brace) x
     *           2 ends x 2 = 12. Hinges: the frame is over 5 ft high, so 3.
     * Layout    string 234.25 - 12 = 222.25, and 36 past both ends: 294.25 = 24.5 ft, so 25.
     */
    private final Takeoff small = Takeoff.of(small());

    static FencePlan small() {
        return FencePlanner.plan(smallSite().build(), FenceStyle.builder().build());
    }

    static Site.Builder smallSite() {
        return levelSide(234.25 / 12).gate(gate("garden gate", 1, 30.625 / 12, 42.25));
    }

    static Site.Builder levelSide(double feet) {
        return Site.on(rectangle(feet, 60)).fenceOn(1).ground(1, shots(0, 0, feet, 0));
    }

    /*
     * The small fence by hand in boards and battens: boarded 176.5 in take 30 boards, (176.5 - 165) / 29 = 0.397 in apart,
     * rather than 29, 17 / 28 = 0.607 apart, and 29 battens; the leaf of 41.5 in 7 boards, 3 / 6 = 1/2 in apart, and 6.
     * Board on board takes the boards of the shadowbox, 20 + 19 and 5 + 4, and none meets a post.
     */
    @Test
    void secondLayersAreBoughtAndCut() {
        Length wide = Length.ofInches(5.5);
        Takeoff battened = Takeoff.of(FencePlanner.plan(
                smallSite().build(),
                FenceStyle.builder()
                        .pattern(BoardPattern.boardAndBatten(wide, Length.ofInches(2.5)))
                        .build()));
        assertThat(count(battened, PieceKind.BOARD)).isEqualTo(37);
        assertThat(count(battened, PieceKind.BATTEN)).isEqualTo(35);
        assertThat(battened.materials())
                .extracting(MaterialLine::item, MaterialLine::quantity)
                .contains(
                        tuple("1x6 board, 6 ft", 37),
                        tuple("1x3 batten, 6 ft", 35),
                        // 30 boards x 3 rails x 2 + 7 x 2 x 2; 29 battens x 3 + 6 x 2, 3/4 + 3/4 + 1 1/2 in through.
                        tuple("exterior screw or ring-shank nail, under 2 1/4\"", 208),
                        tuple("exterior screw or ring-shank nail, under 3\"", 99));

        assertThat(item("exterior screw or ring-shank nail, under 3\"", battened)
                        .note())
                .startsWith("battens: 1 where one crosses a rail; hot-dip galvanized");

        FencePlan layered = FencePlanner.plan(
                smallSite().build(),
                FenceStyle.builder().pattern(BoardPattern.boardOnBoard(wide)).build());
        assertThat(count(Takeoff.of(layered), PieceKind.BOARD)).isEqualTo(48);
        // 20 x 3 x 2 + 5 x 2 x 2 below, 19 x 3 x 2 + 4 x 2 x 2 over them.
        assertThat(Takeoff.of(layered).materials())
                .extracting(MaterialLine::item, MaterialLine::quantity)
                .contains(
                        tuple("exterior screw or ring-shank nail, under 2 1/4\"", 140),
                        tuple("exterior screw or ring-shank nail, under 3\"", 130));
        assertThat(item("exterior screw or ring-shank nail, under 3\"", Takeoff.of(layered))
                        .note())
                .startsWith("boards over boards: 2 where one crosses a rail; hot-dip galvanized");
        assertThat(layered.stretches().get(0).boardsAtPosts()).isEmpty();
    }

    static int count(Takeoff takeoff, PieceKind kind) {
        return takeoff.pieces().stream()
                .filter(piece -> piece.kind() == kind)
                .mapToInt(Piece::count)
                .sum();
    }

    @Test
    void everyPieceOfASmallFenceIsListedOnce() {
        assertThat(small.pieces())
                .extracting(Piece::kind, Piece::label, Piece::count, piece -> Written.tape(piece.length()))
                .containsExactly(
                        tuple(PieceKind.POST, "post 1", 1, "9' 3\""),
                        tuple(PieceKind.POST, "post 2", 1, "9' 3\""),
                        tuple(PieceKind.POST, "post 3", 1, "9' 3\""),
                        tuple(PieceKind.POST, "post 4", 1, "9' 3\""),
                        tuple(PieceKind.RAIL, "post 2 to post 4 rail 1", 1, "14' 8 1/2\""),
                        tuple(PieceKind.RAIL, "post 2 to post 4 rail 2", 1, "14' 8 1/2\""),
                        tuple(PieceKind.RAIL, "post 2 to post 4 rail 3", 1, "14' 8 1/2\""),
                        tuple(PieceKind.GATE_STILE, "garden gate hinge stile", 1, "5' 4\""),
                        tuple(PieceKind.GATE_STILE, "garden gate latch stile", 1, "5' 4\""),
                        tuple(PieceKind.GATE_RAIL, "garden gate bottom rail", 1, "2' 10 1/2\""),
                        tuple(PieceKind.GATE_RAIL, "garden gate top rail", 1, "2' 10 1/2\""),
                        tuple(PieceKind.GATE_BRACE, "garden gate brace 1", 1, "5' 6 5/8\""),
                        // Behind the middle one of three straps: 12 in less the stile of 3 1/2.
                        tuple(PieceKind.GATE_BLOCK, "garden gate block 1", 1, "8 1/2\""),
                        tuple(PieceKind.BOARD, "post 2 to post 4 boards", 38, "6' 0\""),
                        tuple(PieceKind.BOARD, "post 2 to post 4 boards", 1, "6' 0\""),
                        tuple(PieceKind.BOARD, "garden gate boards", 9, "6' 0\""));
        assertThat(small.pieces().get(11).cuts())
                .isEqualTo("both ends pointed: 31.2 deg off square against the rail, 58.8 deg against the stile");
        assertThat(small.pieces().get(13).cuts()).isEqualTo("square ends");
        assertThat(small.pieces().get(14).cuts()).isEqualTo("square ends, ripped beside a post");
    }

    @Test
    void theShoppingListOfASmallFence() {
        assertThat(small.materials())
                .extracting(MaterialLine::quantity, MaterialLine::unit, MaterialLine::item)
                .containsExactly(
                        tuple(4, "pieces", "4x4 post, 10 ft"),
                        tuple(3, "pieces", "2x4, 16 ft"),
                        tuple(2, "pieces", "2x4, 12 ft"),
                        tuple(48, "pieces", "1x6 board, 6 ft"),
                        tuple(16, "bags of 60 lb", "concrete mix"),
                        tuple(3, "bags of 1/2 cu ft", "gravel"),
                        tuple(270, "pieces", "exterior screw or ring-shank nail, under 2 1/4\""),
                        tuple(18, "pieces", "structural screw, 3 1/2\""),
                        tuple(14, "pieces", "structural screw, 5 1/2\""),
                        tuple(3, "pieces", "gate hinge with its screws"),
                        tuple(1, "pieces", "gate latch with its screws"),
                        tuple(2, "pieces", "batter board, two stakes and a crosspiece"),
                        tuple(25, "ft", "mason's line"),
                        tuple(4, "pieces", "stake"),
                        tuple(8, "pieces", "post brace with its stake"),
                        tuple(1, "cans", "marking paint"));
        assertThat(small.materials())
                .extracting(MaterialLine::note)
                .startsWith(
                        "4 posts",
                        "3 rails",
                        "2 gate stiles, 2 gate rails, 1 gate brace and 1 gate block",
                        "48 boards",
                        "4 a hole for 4 posts; 6.367 cu ft in all",
                        "1.203 cu ft under 4 posts");
        assertThat(small.findings()).isEmpty();
    }

    @Test
    void theCutListOfASmallFence() {
        assertThat(small.sticks().subList(4, 9))
                .extracting(Stick::toString)
                .containsExactly(
                        "2x4, 16 ft: post 2 to post 4 rail 1; 1' 3 3/8\" left",
                        "2x4, 16 ft: post 2 to post 4 rail 2; 1' 3 3/8\" left",
                        "2x4, 16 ft: post 2 to post 4 rail 3; 1' 3 3/8\" left",
                        "2x4, 12 ft: garden gate brace 1, garden gate hinge stile; 1' 1\" left",
                        "2x4, 12 ft: garden gate latch stile, garden gate bottom rail, garden gate top rail,"
                                + " garden gate block 1; 2\" left");
        assertThat(small.sticks().get(7).left().inches()).isEqualTo(13.006, within(0.001));
    }

    /*
     * One bay of 90 1/2 in on ground that falls 19.2 in 96: the boards of a stepped bay stand 2 in off at the upper post and
     * 2 + 18.1 at the lower, so that three kick boards and the rest of one are under it, all ending at the lower post and,
     * but for the first, between posts. They are 1 1/2 in thick.
     */
    @Test
    void kickBoardsAndCapsHaveTheirFasteners() {
        double feet = 106.0 / 12;
        Site site = Site.on(rectangle(feet, 60))
                .fenceOn(1)
                .ground(1, shots(0, 0, feet, -feet / 5))
                .build();
        FenceStyle style = FenceStyle.builder()
                .slope(SlopeSpec.builder()
                        .treatment(Treatment.STEPPED)
                        .underBoards(SlopeSpec.UnderBoards.KICK_BOARD)
                        .build())
                .postCapWidth(Length.ofInches(4.5))
                .build();
        Takeoff takeoff = Takeoff.of(FencePlanner.plan(site, style));

        assertThat(count(takeoff, PieceKind.KICK_BOARD)).isEqualTo(4);
        // The uppermost is what is left of one.
        assertThat(only(PieceKind.KICK_BOARD, takeoff))
                .allSatisfy(board -> assertThat(board.cuts()).endsWith("scribed to the ground"))
                .filteredOn(board -> board.width().compareTo(style.kickLumber().width()) < 0)
                .singleElement()
                .satisfies(board ->
                        assertThat(board.cuts()).contains("ripped to " + Written.tape(board.width()) + ", scribed"));
        assertThat(item("cleat, an offcut of rail", takeoff).quantity()).isEqualTo(3);
        assertThat(item("exterior screw, 3 1/2\"", takeoff).quantity()).isEqualTo(4 * 2 * 2 + 3 * 2);
        assertThat(item("post cap, 4 1/2\" wide", takeoff).quantity()).isEqualTo(2);
        assertThat(item("finish nail or trim screw for post caps", takeoff).quantity())
                .isEqualTo(4);
    }

    /** The frame's brace is replaced by a cable: 2 rails and a block, 4 + 1 ends, and nothing of it to cut. */
    @Test
    void aBraceThatIsACableIsBoughtWithItsTurnbuckle() {
        FenceStyle style = FenceStyle.builder()
                .gate(GateSpec.builder().braceKind(BraceKind.CABLE).build())
                .build();
        Takeoff takeoff = Takeoff.of(FencePlanner.plan(smallSite().build(), style));

        assertThat(only(PieceKind.GATE_BRACE, takeoff)).isEmpty();
        assertThat(item("gate cable with its turnbuckle", takeoff).quantity()).isEqualTo(1);
        assertThat(item("structural screw, 5 1/2\"", takeoff).quantity()).isEqualTo(10);
    }

    /** Butted, half-lapped and mitred: a lap at each end of a rail, two on a stile; a mitre is cut at 45 degrees. */
    @Test
    void framesAreCutAsTheyAreJoined() {
        assertThat(frame(FrameJoint.RAILS_BETWEEN_STILES))
                .extracting(Piece::cuts)
                .containsOnly("square ends");
        assertThat(frame(FrameJoint.HALF_LAP)).extracting(Piece::cuts).containsOnly("square ends, 2 half-laps");
        assertThat(frame(FrameJoint.MITRE)).allSatisfy(piece -> {
            assertThat(piece.cuts()).isEqualTo("both ends 45 deg off square");
            assertThat(piece.sawing()).isEqualTo(Math.sqrt(2), within(1e-9));
            assertThat(piece.overall()).isEqualTo(piece.length());
        });
    }

    private static List<Piece> frame(FrameJoint joint) {
        FenceStyle style = FenceStyle.builder()
                .gate(GateSpec.builder().joint(joint).build())
                .build();
        return Takeoff.of(FencePlanner.plan(smallSite().build(), style)).pieces().stream()
                .filter(piece -> piece.kind() == PieceKind.GATE_STILE || piece.kind() == PieceKind.GATE_RAIL)
                .toList();
    }

    /** The gate of the small fence, whose leaf has three hinges. */
    @Test
    void gatesThatCloseLatchAndLockTakeOtherHardware() {
        assertThat(hardware(ofGate().selfClosing(true)))
                .containsExactlyInAnyOrder("3 self-closing gate hinge with its screws", "1 gate latch with its screws");
        assertThat(hardware(ofGate().selfLatching(true)))
                .containsExactlyInAnyOrder("3 gate hinge with its screws", "1 self-latching gate latch");
        assertThat(hardware(ofGate().selfLatching(true).lockable(true)))
                .containsExactlyInAnyOrder(
                        "3 gate hinge with its screws", "1 self-latching gate latch that takes a lock");
        assertThat(hardware(ofGate().lockable(true)))
                .containsExactlyInAnyOrder("3 gate hinge with its screws", "1 gate latch with its screws");

        // Two that latch by themselves, one of them to be locked.
        Site two = levelSide(40)
                .gate(ofGate().centredAt(Length.ofFeet(10)).selfLatching(true).build())
                .gate(GateLocation.named("side gate")
                        .onSide(1)
                        .centredAt(Length.ofFeet(30))
                        .clearOpening(Length.ofInches(42.25))
                        .selfLatching(true)
                        .lockable(true)
                        .build())
                .build();
        Takeoff takeoff = Takeoff.of(FencePlanner.plan(two, FenceStyle.builder().build()));
        assertThat(item("self-latching gate latch", takeoff).quantity()).isEqualTo(1);
        assertThat(item("self-latching gate latch that takes a lock", takeoff).quantity())
                .isEqualTo(1);
    }

    private static GateLocation.Builder ofGate() {
        return GateLocation.named("garden gate")
                .onSide(1)
                .centredAt(Length.ofInches(30.625))
                .clearOpening(Length.ofInches(42.25));
    }

    private static List<String> hardware(GateLocation.Builder gate) {
        Site site = levelSide(234.25 / 12).gate(gate.build()).build();
        return Takeoff.of(FencePlanner.plan(site, FenceStyle.builder().build())).materials().stream()
                .filter(line -> line.group() == MaterialGroup.GATE_HARDWARE)
                .map(line -> line.quantity() + " " + line.item())
                .toList();
    }

    /** 50 posts are marked from one can, one more takes a second. */
    @Test
    void layoutIsCountedByThePost() {
        FenceStyle close = FenceStyle.builder()
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ofFeet(1))
                        .maximum(Length.ofFeet(6))
                        .build())
                .build();
        // Post centres from 7 3/4 in to 7 3/4 in before the corners: 49 bays of 6 ft, and an inch more.
        FencePlan fifty = FencePlanner.plan(levelSide(49 * 6 + 15.5 / 12).build(), close);
        FencePlan more = FencePlanner.plan(levelSide(49 * 6 + 16.5 / 12).build(), close);

        assertThat(fifty.posts()).hasSize(50);
        assertThat(item("marking paint", Takeoff.of(fifty)).quantity()).isEqualTo(1);
        assertThat(more.posts()).hasSize(51);
        assertThat(item("marking paint", Takeoff.of(more)).quantity()).isEqualTo(2);
        assertThat(item("post brace with its stake", Takeoff.of(more)).quantity())
                .isEqualTo(102);
        assertThat(item("batter board, two stakes and a crosspiece", Takeoff.of(more))
                        .note())
                .isEqualTo("1 at each end of 1 string");
        assertThat(item("concrete mix", Takeoff.of(more)).note()).startsWith("4 a hole for 51 posts; ");
    }

    @Test
    void linesPiecesAndTheWholeTellWhatTheyAre() {
        MaterialLine posts = small.materials().get(0);
        assertThat(posts).hasToString("4 pieces 4x4 post, 10 ft (4 posts)");
        assertThat(posts.group()).isEqualTo(MaterialGroup.LUMBER);
        assertThat(posts.lumber()).contains(Lumber.fourByFour());
        assertThat(posts.length()).contains(Length.ofFeet(10));
        assertThat(small.materials())
                .extracting(MaterialLine::group)
                .containsSubsequence(MaterialGroup.values())
                .isSorted();
        assertThat(posts)
                .isEqualTo(Takeoff.of(small()).materials().get(0))
                .hasSameHashCodeAs(Takeoff.of(small()).materials().get(0));
        for (MaterialLine other : small.materials().subList(1, small.materials().size())) {
            assertThat(other).isNotEqualTo(posts).doesNotHaveSameHashCodeAs(posts);
        }
        assertThat(small.pieces().get(0)).hasToString("post 1: 4x4, 9' 3\", square ends");
        assertThat(small.pieces().get(13)).hasToString("post 2 to post 4 boards (38): 1x6, 6' 0\", square ends");
        assertThat(small.toString()).startsWith("takeoff\n  " + posts + "\n  3 pieces 2x4, 16 ft (3 rails)\n");
    }

    @Test
    void thePackageExampleHolds() {
        assertThat(Written.tape(small().runs().get(0).length())).isEqualTo("18' 2 3/4\"");
        assertThat(small.pieces().get(4).label()).isEqualTo("post 2 to post 4 rail 1");
        assertThat(small.pieces().get(4).length()).isEqualTo(Length.ofFeetAndInches(14, 8.5));
        assertThat(small.sticks().get(8).pieces())
                .extracting(Piece::label)
                .containsExactly(
                        "garden gate latch stile",
                        "garden gate bottom rail",
                        "garden gate top rail",
                        "garden gate block 1");
        assertThat(small.sticks().get(8).left()).isEqualTo(Length.ofInches(2));
        assertThat(small.materials().get(0).item()).isEqualTo("4x4 post, 10 ft");
        assertThat(small.materials().get(0).quantity()).isEqualTo(4);
    }

    @Test
    void aRailWithSlantingEndsIsLongerOverAllThanAlongItsEdge() {
        // One bay of 90 1/2 in up 20 %: (90.5 + 3.5) x sqrt(1 + 0.2^2) = 95.8616 in along the edge would come from
        // 8 ft, but the ends of a 3 1/2 in deep rail slant by 3.5 x 0.2 = 0.7 in.
        double feet = 106.0 / 12;
        Site site = Site.on(rectangle(feet, 60))
                .fenceOn(1)
                .ground(1, shots(0, 0, feet, feet / 5))
                .build();
        Takeoff takeoff =
                Takeoff.of(FencePlanner.plan(site, FenceStyle.builder().build()));

        List<Piece> rails = only(PieceKind.RAIL, takeoff);
        assertThat(rails).hasSize(3).allSatisfy(rail -> {
            assertThat(rail.length().inches()).isEqualTo(95.8616, within(0.0001));
            assertThat(rail.overall().inches()).isEqualTo(96.5616, within(0.0001));
            assertThat(rail.cuts()).isEqualTo("both ends 11.3 deg off square");
        });
        assertThat(item("2x4, 10 ft", takeoff).quantity()).isEqualTo(3);

        // Post tops cut to the slope: the saw cuts sqrt(1 + 0.2^2) of its kerf along the post.
        Takeoff sloped = Takeoff.of(
                FencePlanner.plan(site, FenceStyle.builder().postTopsToSlope().build()));
        assertThat(only(PieceKind.POST, takeoff)).extracting(Piece::cuts).containsOnly("square ends");
        assertThat(only(PieceKind.POST, sloped)).hasSize(2).allSatisfy(post -> {
            assertThat(post.cuts()).isEqualTo("top 11.3 deg off square");
            assertThat(post.sawing()).isEqualTo(Math.sqrt(1.04), within(1e-9));
        });

        // 2 in left at either end to trim: so much longer over all, and not along the edge that is given.
        FenceStyle trimmed = FenceStyle.builder()
                .rails(RailSpec.builder().trim(Length.ofInches(2)).build())
                .build();
        assertThat(only(PieceKind.RAIL, Takeoff.of(FencePlanner.plan(site, trimmed))))
                .allSatisfy(rail -> {
                    assertThat(rail.cuts()).isEqualTo("both ends 11.3 deg off square, 4\" left to trim");
                    assertThat(rail.overall().inches()).isEqualTo(100.5616, within(0.0001));
                });
    }

    @Test
    void railsAreMitredAtTheCorner() {
        Site site = levelSide(20).fenceOn(2).ground(2, shots(0, 0, 60, 0)).build();
        FencePlan plan = FencePlanner.plan(site, FenceStyle.builder().build());
        int corner = plan.posts().stream()
                .filter(post -> post.kind() == PostKind.CORNER)
                .findFirst()
                .orElseThrow()
                .number();

        List<Piece> mitred = only(PieceKind.RAIL, Takeoff.of(plan)).stream()
                .filter(rail -> rail.cuts().contains("mitred"))
                .toList();
        assertThat(mitred).hasSize(6).allSatisfy(rail -> {
            assertThat(rail.cuts()).isEqualTo("square ends, mitred 45 deg at post " + corner);
            assertThat(rail.sawing()).isEqualTo(Math.sqrt(2), within(1e-12));
        });

        // Where a gate hangs on the corner post there are no rails of the other side to meet.
        Site gated = levelSide(20)
                .fenceOn(2)
                .ground(2, shots(0, 0, 60, 0))
                .gate(gate("garden gate", 1, 20 - 30.625 / 12, 42.25))
                .build();
        Takeoff takeoff =
                Takeoff.of(FencePlanner.plan(gated, FenceStyle.builder().build()));
        assertThat(only(PieceKind.RAIL, takeoff))
                .isNotEmpty()
                .allSatisfy(rail -> assertThat(rail.cuts()).isEqualTo("square ends"));
        Site other = levelSide(20)
                .fenceOn(2)
                .ground(2, shots(0, 0, 60, 0))
                .gate(gate("garden gate", 2, 30.625 / 12, 42.25))
                .build();
        assertThat(only(
                        PieceKind.RAIL,
                        Takeoff.of(FencePlanner.plan(other, FenceStyle.builder().build()))))
                .isNotEmpty()
                .allSatisfy(rail -> assertThat(rail.cuts()).isEqualTo("square ends"));
    }

    @Test
    void aPlanThatCannotBeLaidOutLeavesAnEmptyListAndAWarning() {
        Site noGround = Site.on(rectangle(50, 50)).fenceOn(1).build();
        Takeoff takeoff =
                Takeoff.of(FencePlanner.plan(noGround, FenceStyle.builder().build()));

        assertThat(takeoff.pieces()).isEmpty();
        assertThat(takeoff.materials()).isEmpty();
        assertThat(takeoff.findings())
                .extracting(Finding::severity, Finding::code)
                .containsExactly(tuple(Severity.WARNING, "plan-not-buildable"));
        assertThat(takeoff.findings().get(0).message())
                .isEqualTo("the plan has 1 blocker, and what could not be laid out is not counted here");
    }

    @Test
    void concreteComesInTheBagAskedFor() {
        BagSize metric = new BagSize(Mass.ofKilograms(25), Volume.ofCubicMetres(0.0125));
        TakeoffSpec spec = TakeoffSpec.builder().bag(metric).build();

        // 1.592 cu ft = 0.04507 m3 a hole, 3.6 bags.
        assertThat(item("concrete mix", Takeoff.of(small(), spec)))
                .extracting(MaterialLine::quantity, MaterialLine::unit)
                .containsExactly(16, "bags of 25 kg");
    }

    @Test
    void ofMoreThanSixPiecesAlikeSixAreNamed() {
        // 100 ft in bays of 8 ft at most are 14 posts; with 90 in of frost each takes 13 ft 8 in.
        Site site = levelSide(100).frostDepth(Length.ofInches(90)).build();
        Takeoff takeoff =
                Takeoff.of(FencePlanner.plan(site, FenceStyle.builder().build()));

        assertThat(takeoff.findings())
                .singleElement()
                .extracting(Finding::place)
                .isEqualTo("post 1, post 2, post 3, post 4, post 5, post 6 and 8 more like these");
        assertThat(takeoff.findings().get(0).remedy())
                .isEqualTo("order 4x4 of that length, and add it to the lengths sold");
    }

    @Test
    void aPlanOverTheLimitIsRefused() {
        FenceStyle close = FenceStyle.builder()
                .rails(RailSpec.builder().mostBays(1).build())
                .postSpacing(PostSpacingSpec.builder()
                        .minimum(Length.ZERO)
                        .maximum(Length.ofFeet(1))
                        .build())
                .build();
        FencePlan plan = FencePlanner.plan(levelSide(26_000).build(), close);

        assertThatThrownBy(() -> Takeoff.of(plan))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a takeoff takes up to 100000 and 10000000")
                .hasMessageContaining("plan the job in parts");
    }

    static List<Piece> only(PieceKind kind, Takeoff takeoff) {
        return takeoff.pieces().stream().filter(piece -> piece.kind() == kind).toList();
    }

    static MaterialLine item(String item, Takeoff takeoff) {
        return takeoff.materials().stream()
                .filter(line -> line.item().equals(item))
                .findFirst()
                .orElseThrow();
    }
}
