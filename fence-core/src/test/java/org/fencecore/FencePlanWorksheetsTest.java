package org.fencecore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fencecore.Plans.gate;
import static org.fencecore.Plans.rectangle;
import static org.fencecore.Plans.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fencecore.footing.FootingDesign;
import org.fencecore.gate.GateBrace;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.hang.HingeLoads;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.rail.RailSpec;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.LotBoundary;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.Worksheet;
import org.junit.jupiter.api.Test;

/** Every calculation behind a plan has one sheet, told apart by its title and ending in what the plan says. */
class FencePlanWorksheetsTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    /** Sides 1 to 3 of a rectangle of 50 ft by 40 ft; side 2 climbs 4 ft, each of the others holds a gate. */
    private static FencePlan threeSidesTwoGates(FenceStyle style) {
        return FencePlanner.plan(
                Site.on(rectangle(50, 40))
                        .fenceOn(1, 2, 3)
                        .ground(1, shots(0, 0, 50, 0))
                        .ground(2, shots(0, 0, 40, 4))
                        .ground(3, shots(0, 4, 50, 4))
                        .gate(gate("walk gate", 1, 20, 42))
                        .gate(gate("shed gate", 3, 30, 48))
                        .windPressure(Pressure.ofPsf(15))
                        .build(),
                style);
    }

    /**
     * One side of 50 ft, level: 8 posts in 7 bays (worked in FencePlannerTest), no gate, and no wind, so that all eight
     * posts have one footing.
     */
    @Test
    void theSheetsOfOneLevelSide() {
        assertThat(titles(FencePlanner.plan(Plans.levelSide().build(), USUAL)))
                .hasSize(1 + 1 + 2 * 7 + 1 + 1 + 1 + 2)
                .startsWith(
                        "Closure of the lot",
                        "side 1, post 1 to post 8: Post spacing",
                        "side 1, bay 1, post 1 to post 2: Racked bay from 0.00 ft to 6.96 ft",
                        "side 1, bay 1, post 1: Rail marks above the ground at a post",
                        "side 1, bay 2, post 2 to post 3: Racked bay from 6.96 ft to 13.92 ft")
                .endsWith(
                        "side 1, bay 7, post 7: Rail marks above the ground at a post",
                        "side 1, post 1 to post 8: Pieces of the rails",
                        "side 1, post 1 to post 8: Boards, outside row",
                        "side 1, post 1 to post 8: Privacy",
                        "posts 1 to 8: Embedment of a post",
                        "posts 1 to 8: Hole and concrete of a post");
    }

    @Test
    void noTwoSheetsOfAPlanAreTitledAlike() {
        FenceStyle halves = FenceStyle.builder()
                .gate(GateSpec.builder().middleRail(true).build())
                .build();
        for (FenceStyle style : List.of(USUAL, halves)) {
            FencePlan plan = threeSidesTwoGates(style);
            assertThat(plan.runs()).hasSize(3);
            assertThat(plan.gates()).hasSize(2);
            assertThat(plan.stretches()).hasSize(5);
            assertThat(titles(plan)).doesNotHaveDuplicates();
        }
    }

    /** Takes away, one by one, what the plan says; nothing is left over and nothing is missing. */
    @Test
    void everySheetEndsInWhatThePlanSaysAndNoneIsMissing() {
        FenceStyle style = FenceStyle.builder()
                .gate(GateSpec.builder().middleRail(true).build())
                .build();
        FencePlan plan = threeSidesTwoGates(style);
        Map<String, Object> results =
                plan.worksheets().stream().collect(Collectors.toMap(Worksheet::title, Worksheet::result));

        take(results, "Closure of the lot", plan.site().lot().closure().misclosure());
        for (Run run : plan.runs()) {
            for (Stretch stretch : run.stretches()) {
                takeStretch(results, run, stretch);
            }
            for (GateBay gate : run.gates()) {
                HungLeaf leaf = gate.leaves().get(0);
                String place = run + ", " + gate.name() + ": ";
                take(results, place + "Gate leaf and frame", gate.leaf().diagonal());
                List<GateBrace> braces = gate.leaf().braces();
                assertThat(braces).hasSize(2);
                take(
                        results,
                        place + "Gate brace from bottom rail to middle rail",
                        braces.get(0).edgeLength());
                take(
                        results,
                        place + "Gate brace from middle rail to top rail",
                        braces.get(1).edgeLength());
                take(
                        results,
                        place + "Boards, outside row",
                        outsideGap(leaf.boards().orElseThrow()));
                HingeLoads loads = leaf.loads().orElseThrow();
                take(
                        results,
                        place + "Weight of the gate leaf",
                        loads.leafWeight().fromHingeEdge());
                take(results, place + "Gate hinges", loads.pullAtTop());
                take(
                        results,
                        place + "Wood screws of a hinge in withdrawal",
                        loads.hinges().screws().orElseThrow().ofHinge());
                take(results, place + "Hinge post", leaf.onPost().orElseThrow().atGround());
                take(
                        results,
                        place + "Wind on a leaf held at its latch edge",
                        leaf.windShut().orElseThrow().mostAtHinge());
                take(
                        results,
                        place + "Wind on a leaf that nothing holds",
                        leaf.windOpen().orElseThrow().mostAtHinge());
                take(
                        results,
                        place + "Drop at the latch from unequal diagonals",
                        leaf.dropFromDiagonals().orElseThrow().drop());
                take(
                        results,
                        place + "Drop at the latch from slip in the joints",
                        leaf.dropFromSlip().orElseThrow().drop());
            }
        }
        List<Integer> posts = new ArrayList<>();
        for (FootingDesign footing : plan.footings()) {
            List<Post> its = plan.posts().stream()
                    .filter(post -> post.footing().equals(footing))
                    .toList();
            its.forEach(post -> posts.add(post.number()));
            take(results, FootingNotes.numbers(its) + ": Embedment of a post", footing.embedment());
            take(results, FootingNotes.numbers(its) + ": Hole and concrete of a post", footing.concrete());
        }
        assertThat(plan.footings().size()).isBetween(2, plan.posts().size() - 1);
        assertThat(posts)
                .containsExactlyInAnyOrderElementsOf(
                        plan.posts().stream().map(Post::number).toList());
        assertThat(results).isEmpty();
    }

    private static void takeStretch(Map<String, Object> results, Run run, Stretch stretch) {
        take(
                results,
                run + ", " + stretch + ": Privacy",
                stretch.privacy().orElseThrow().solid());
        Object spacing = results.remove(run + ", " + stretch + ": Post spacing");
        assertThat(spacing).isEqualTo(stretch.length().dividedBy(stretch.bays().size()));
        if (stretch.bays().stream().anyMatch(bay -> !bay.slope().rise().isZero())) {
            take(
                    results,
                    run + ", " + stretch + ": Choice of the treatment",
                    stretch.slope().choice().best().treatment());
        }
        for (Bay bay : stretch.bays()) {
            String place = run + ", " + bay + ", " + bay.from();
            String racked = results.keySet().stream()
                    .filter(title -> title.startsWith(place + " to " + bay.to() + ": Racked bay from "))
                    .collect(Collectors.joining());
            take(results, racked, bay.slope().railLength());
            take(
                    results,
                    place + ": Rail marks above the ground at a post",
                    bay.rails().get(bay.rails().size() - 2).from().top());
        }
        take(
                results,
                run + ", " + stretch + ": Pieces of the rails",
                stretch.railPieces().orElseThrow().totalLength());
        take(
                results,
                run + ", " + stretch + ": Boards, outside row",
                outsideGap(stretch.boards().orElseThrow()));
    }

    /** On the hill the marks differ from the level ones, so a sheet for the wrong grade would show. */
    @Test
    void railMarksAreThoseOfTheBaysGrade() {
        FenceStyle twoRails =
                FenceStyle.builder().rails(RailSpec.builder().rails(2).build()).build();
        FencePlan plan = threeSidesTwoGates(twoRails);
        Bay uphill = plan.runs().get(1).stretches().get(0).bays().get(0);
        assertThat(uphill.slope().rise().isPositive()).isTrue();
        assertThat(plan.worksheets())
                .filteredOn(sheet -> sheet.title().startsWith("side 2, " + uphill + ", " + uphill.from() + ": Rail"))
                .singleElement()
                .satisfies(sheet -> assertThat(sheet.result())
                        .isEqualTo(uphill.rails().get(0).from().top()));
    }

    @Test
    void aPlanWithoutALineHasTheClosureAlone() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        assertThat(titles(FencePlanner.plan(Site.on(open).fenceOn(1).build(), USUAL)))
                .containsExactly("Closure of the lot");
    }

    private static void take(Map<String, Object> results, String title, Object expected) {
        assertThat(results).containsKey(title);
        assertThat(results.remove(title)).as(title).isEqualTo(expected);
    }

    private static Length outsideGap(BoardLayout layout) {
        return layout.row(Face.OUTSIDE).gap();
    }

    private static List<String> titles(FencePlan plan) {
        return plan.worksheets().stream().map(Worksheet::title).toList();
    }
}
