package org.fencecore.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.GateBay;
import org.fencecore.Stretch;
import org.fencecore.gate.BraceKind;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateSpec;
import org.fencecore.layout.BoardPattern;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.site.Site;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.Treatment;
import org.fencecore.style.BoardStyle;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Finding;

class TakeoffProperties {

    @Property(tries = 200)
    void everyPieceOfThePlanIsCountedOnce(@ForAll("plans") FencePlan plan) {
        Takeoff takeoff = Takeoff.of(plan);

        assertThat(count(PieceKind.POST, takeoff)).isEqualTo(plan.posts().size());
        assertThat(count(PieceKind.RAIL, takeoff))
                .isEqualTo(plan.stretches().stream()
                        .mapToInt(stretch ->
                                stretch.railPieces().orElseThrow().pieces().size())
                        .sum());
        assertThat(count(PieceKind.BOARD, takeoff)).isEqualTo(plan.boardCount());
        assertThat(count(PieceKind.GATE_STILE, takeoff) + count(PieceKind.GATE_RAIL, takeoff))
                .isEqualTo(plan.gates().stream()
                        .mapToInt(gate -> gate.leaf().pieces().size())
                        .sum());
        assertThat(count(PieceKind.GATE_BRACE, takeoff))
                .isEqualTo(plan.gates().stream()
                        .mapToInt(gate -> gate.leaf().braces().size())
                        .sum());
        assertThat(boardsWith("ripped beside", takeoff))
                .isEqualTo(plan.stretches().stream()
                        .mapToInt(stretch -> (int) stretch.boardsAtPosts().stream()
                                .filter(board -> !board.isLeftOut())
                                .count())
                        .sum());
        assertThat(boardsWith("ripped to", takeoff)).isEqualTo(ripped(plan));
    }

    /** Whatever stands in the plan has its piece, by its label and of its length, and there are no others. */
    @Property(tries = 100)
    void thePiecesRebuildThePlan(@ForAll("plansOfAllKinds") FencePlan plan) {
        Takeoff takeoff = Takeoff.of(plan);
        Map<String, Length> single = new HashMap<>();
        for (Piece piece : takeoff.pieces()) {
            if (!piece.kind().isBoarding() && piece.kind() != PieceKind.NAILER) {
                assertThat(single.put(piece.label(), piece.length()))
                        .as(piece.label())
                        .isNull();
            }
        }
        Map<String, Length> built = new HashMap<>();
        plan.posts().forEach(post -> built.put(post.toString(), post.footing().postLength()));
        for (Stretch stretch : plan.stretches()) {
            stretch.railPieces()
                    .ifPresent(rails -> rails.pieces().stream()
                            .filter(rail -> rail.length().isPositive())
                            .forEach(rail -> built.put(
                                    stretch.posts().get(rail.fromPost()) + " to "
                                            + stretch.posts().get(rail.toPost()) + " rail " + (rail.rail() + 1),
                                    rail.length())));
        }
        plan.bays().forEach(bay -> bay.kickBoards().forEach(board -> built.put(bay + " " + board, board.length())));
        plan.gates().stream().flatMap(gate -> gate.leaves().stream()).forEach(leaf -> {
            leaf.leaf().pieces().forEach(part -> built.put(leaf.name() + " " + part.member(), part.length()));
            int wood = 0;
            for (GateBrace brace : leaf.leaf().braces()) {
                if (brace.kind() != BraceKind.CABLE) {
                    wood++;
                    built.put(leaf.name() + " brace " + wood, brace.length());
                }
            }
            for (int i = 0; i < leaf.blocks().size(); i++) {
                built.put(leaf.name() + " block " + (i + 1), leaf.blocks().get(i));
            }
        });

        assertThat(single).isEqualTo(built);
        assertThat(count(PieceKind.BOARD, takeoff) + count(PieceKind.BATTEN, takeoff))
                .isEqualTo(plan.boardCount());
        assertThat(count(PieceKind.NAILER, takeoff))
                .isEqualTo(plan.stretches().stream()
                        .flatMap(stretch -> stretch.courses().stream())
                        .mapToInt(part -> part.nailers().size())
                        .sum());
        int caps = plan.style().postCapWidth().isPositive() ? plan.posts().size() : 0;
        assertThat(bought("post cap", takeoff)).isEqualTo(caps);
        assertThat(bought("finish nail", takeoff)).isEqualTo(2 * caps);
        assertThat(bought("gate cable", takeoff)).isEqualTo((int) plan.gates().stream()
                .flatMap(gate -> gate.leaves().stream())
                .flatMap(leaf -> leaf.leaf().braces().stream())
                .filter(brace -> brace.kind() == BraceKind.CABLE)
                .count());
    }

    private static int bought(String item, Takeoff takeoff) {
        return takeoff.materials().stream()
                .filter(line -> line.item().startsWith(item))
                .mapToInt(MaterialLine::quantity)
                .sum();
    }

    private static int count(PieceKind kind, Takeoff takeoff) {
        return takeoff.pieces().stream()
                .filter(piece -> piece.kind() == kind)
                .mapToInt(Piece::count)
                .sum();
    }

    private static int boardsWith(String work, Takeoff takeoff) {
        return takeoff.pieces().stream()
                .filter(piece -> piece.kind() == PieceKind.BOARD && piece.cuts().contains(work))
                .mapToInt(Piece::count)
                .sum();
    }

    private static int ripped(FencePlan plan) {
        int ripped = 0;
        for (Stretch stretch : plan.stretches()) {
            ripped += stretch.boards().map(layout -> layout.ripped().size()).orElse(0);
        }
        for (GateBay gate : plan.gates()) {
            ripped += gate.leaves()
                    .get(0)
                    .boards()
                    .map(layout -> layout.ripped().size())
                    .orElse(0);
        }
        return ripped;
    }

    @Property(tries = 200)
    void everyPieceComesFromOneStickOrIsFoundTooLong(@ForAll("plans") FencePlan plan) {
        Takeoff takeoff = Takeoff.of(plan);
        Map<Piece, Integer> cut = new HashMap<>();
        for (Stick stick : takeoff.sticks()) {
            stick.pieces().forEach(piece -> cut.merge(piece, stick.count(), Integer::sum));
        }
        boolean told = takeoff.findings().stream().map(Finding::code).anyMatch("piece-too-long"::equals);
        boolean anyTooLong = false;
        for (Piece piece : takeoff.pieces()) {
            boolean tooLong = piece.lumber().shortestFor(piece.overall()).isEmpty();
            anyTooLong |= tooLong;
            assertThat(cut.getOrDefault(piece, 0)).as("%s", piece).isEqualTo(tooLong ? 0 : piece.count());
        }
        assertThat(told).isEqualTo(anyTooLong);
        assertThat(takeoff.pieces()).containsAll(cut.keySet());
    }

    @Property(tries = 200)
    void aStickHoldsItsPiecesAndTheCutsBetweenThem(@ForAll("plans") FencePlan plan, @ForAll("kerfs") Length kerf) {
        Takeoff takeoff = Takeoff.of(plan, TakeoffSpec.builder().kerf(kerf).build());

        assertThat(takeoff.sticks()).allSatisfy(stick -> {
            List<Piece> pieces = stick.pieces();
            double used = pieces.stream()
                    .mapToDouble(piece -> piece.overall().metres())
                    .sum();
            for (int i = 1; i < pieces.size(); i++) {
                used += kerf.metres()
                        * Math.max(pieces.get(i - 1).sawing(), pieces.get(i).sawing());
            }
            assertThat(used).isLessThanOrEqualTo(stick.length().metres() + 1e-12);
            assertThat(stick.left().metres()).isLessThanOrEqualTo(stick.length().metres() - used + 1e-8);
            assertThat(pieces)
                    .allSatisfy(piece -> assertThat(piece.lumber().name())
                            .isEqualTo(stick.lumber().name()));
        });
    }

    @Property(tries = 200)
    void neverMoreLumberThanOneStickForEachPiece(@ForAll("plans") FencePlan plan) {
        Takeoff takeoff = Takeoff.of(plan);
        int bought = takeoff.sticks().stream().mapToInt(Stick::count).sum();
        Length length = takeoff.sticks().stream()
                .map(stick -> stick.length().times(stick.count()))
                .reduce(Length.ZERO, Length::plus);
        int singly = 0;
        Length oneEach = Length.ZERO;
        for (Piece piece : takeoff.pieces()) {
            Length shelf = piece.lumber().shortestFor(piece.overall()).orElse(Length.ZERO);
            singly += shelf.isPositive() ? piece.count() : 0;
            oneEach = oneEach.plus(shelf.times(piece.count()));
        }

        assertThat(bought).isLessThanOrEqualTo(singly);
        assertThat(length).isLessThanOrEqualTo(oneEach);
    }

    @Property(tries = 100)
    void theShoppingListHasTheSticksAndTheOrders(@ForAll("plans") FencePlan plan) {
        Takeoff takeoff = Takeoff.of(plan);
        int sticks = takeoff.sticks().stream().mapToInt(Stick::count).sum();
        int orders = takeoff.pieces().stream()
                .filter(piece -> piece.lumber().shortestFor(piece.overall()).isEmpty())
                .mapToInt(Piece::count)
                .sum();
        int lumber = takeoff.materials().stream()
                .filter(line -> line.item().matches("(4x4|2x4|1x6)( post| board)?, .*"))
                .mapToInt(MaterialLine::quantity)
                .sum();

        assertThat(lumber).isEqualTo(sticks + orders);
        assertThat(takeoff.materials())
                .allSatisfy(line -> assertThat(line.quantity()).isPositive());
        assertThat(takeoff.materials()).isEqualTo(Takeoff.of(plan).materials());
    }

    @Provide
    Arbitrary<Length> kerfs() {
        return Arbitraries.longs().between(0, 6_350_000).map(Length::ofNanometres);
    }

    @Provide
    Arbitrary<FencePlan> plans() {
        return Combinators.combine(sites(), styles()).as(FencePlanner::plan).withoutEdgeCases();
    }

    @Provide
    Arbitrary<FencePlan> plansOfAllKinds() {
        return Combinators.combine(sites(), stylesOfAllKinds())
                .as(FencePlanner::plan)
                .withoutEdgeCases();
    }

    /** Battens, kick boards, caps, cables and horizontal boards among them. */
    private static Arbitrary<FenceStyle> stylesOfAllKinds() {
        Length width = Length.ofInches(5.5);
        Arbitrary<BoardPattern> pattern = Arbitraries.of(
                BoardPattern.sideBySide(width),
                BoardPattern.boardAndBatten(width, Length.ofInches(2.5)),
                BoardPattern.boardOnBoard(width));
        Arbitrary<Treatment> treatment = Arbitraries.of(Treatment.RACKED, Treatment.STEPPED);
        Arbitrary<Length> caps = Arbitraries.of(0, 4, 5).map(Length::ofInches);
        Arbitrary<BraceKind> brace = Arbitraries.of(BraceKind.values());
        Arbitrary<Boolean> horizontal = Arbitraries.of(true, false);
        return Combinators.combine(pattern, treatment, caps, brace, horizontal)
                .as((boards, slope, cap, kind, across) -> {
                    FenceStyle.Builder style = FenceStyle.builder()
                            .pattern(across ? BoardPattern.sideBySide(width) : boards)
                            .slope(SlopeSpec.builder()
                                    .treatment(slope)
                                    .underBoards(SlopeSpec.UnderBoards.KICK_BOARD)
                                    .build())
                            .postCapWidth(cap)
                            .gate(GateSpec.builder().braceKind(kind).build());
                    return (across ? style.boards(BoardStyle.horizontal()) : style).build();
                });
    }

    /** A rectangle, its sides tilted, some of its sides fenced, a gate somewhere on each. */
    private static Arbitrary<Site> sites() {
        Arbitrary<Double> feet = Arbitraries.doubles().between(10, 200);
        Arbitrary<Double> tilt = Arbitraries.doubles().between(-0.3, 0.3);
        Arbitrary<Set<Integer>> sides = Arbitraries.of(1, 2, 3, 4).set().ofMinSize(1);
        Arbitrary<Double> place = Arbitraries.doubles().between(0, 1);
        Arbitrary<Double> opening = Arbitraries.doubles().between(16, 80);
        Arbitrary<Length> frost = Arbitraries.of(0, 24, 48, 80).map(Length::ofInches);
        return Combinators.combine(feet, feet, tilt, tilt, sides, place, opening, frost)
                .as(TakeoffProperties::site);
    }

    private static Site site(
            double north,
            double east,
            double tiltNorth,
            double tiltEast,
            Set<Integer> sides,
            double place,
            double opening,
            Length frost) {
        Site.Builder site = Site.on(rectangle(north, east)).frostDepth(frost);
        for (int side : sides) {
            double length = side % 2 == 1 ? north : east;
            double rise = length * (side % 2 == 1 ? tiltNorth : tiltEast) * (side <= 2 ? 1 : -1);
            site.fenceOn(side)
                    .ground(side, shots(0, 0, length, rise))
                    .gate(gate("gate " + side, side, length * place, opening));
        }
        return site.build();
    }

    private static Arbitrary<FenceStyle> styles() {
        Length width = Length.ofInches(5.5);
        Arbitrary<BoardPattern> pattern = Arbitraries.of(
                BoardPattern.shadowbox(width), BoardPattern.sideBySide(width), BoardPattern.spaced(width, width));
        Arbitrary<Length> board = Arbitraries.of(30, 48, 72, 96).map(Length::ofInches);
        Arbitrary<Integer> rails = Arbitraries.of(2, 3);
        Arbitrary<Length> spacing = Arbitraries.longs().between(1_200, 3_600).map(Length::ofMillimetres);
        Arbitrary<Boolean> middleRail = Arbitraries.of(true, false);
        Arbitrary<Lumber> railLumber = Arbitraries.of(
                Lumber.twoByFour(),
                Lumber.twoByFour().soldIn(Length.ofFeet(8)),
                Lumber.twoByFour().soldIn(Length.ofMetres(2.4), Length.ofMetres(4.8)));
        return Combinators.combine(pattern, board, rails, spacing, middleRail, railLumber)
                .as((boards, length, count, most, middle, lumber) -> FenceStyle.builder()
                        .pattern(boards)
                        .rails(RailSpec.builder()
                                .boardLength(length)
                                .rails(count)
                                .build())
                        .postSpacing(PostSpacingSpec.builder()
                                .minimum(Length.ofFeet(2))
                                .maximum(most)
                                .build())
                        .gate(GateSpec.builder().middleRail(middle).build())
                        .railLumber(lumber)
                        .build());
    }
}
