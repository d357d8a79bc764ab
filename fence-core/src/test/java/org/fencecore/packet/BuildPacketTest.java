package org.fencecore.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.fencecore.FencePlan;
import org.fencecore.FencePlanner;
import org.fencecore.Plans;
import org.fencecore.Run;
import org.fencecore.SetPost;
import org.fencecore.drawing.sheet.Paper;
import org.fencecore.geometry.Bearing;
import org.fencecore.geometry.Point;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Side;
import org.fencecore.geometry.ground.Plane;
import org.fencecore.site.Site;
import org.fencecore.style.FenceStyle;
import org.fencecore.survey.Course;
import org.fencecore.survey.LotBoundary;
import org.fencecore.takeoff.MaterialLine;
import org.fencecore.takeoff.Takeoff;
import org.fencecore.units.Angle;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.units.tape.TapeFormat;
import org.junit.jupiter.api.Test;

class BuildPacketTest {

    private static final FenceStyle USUAL = FenceStyle.builder().build();

    private static FencePlan withGate() {
        Site site = Plans.levelSide().gate(Plans.gate("walk gate", 1, 12, 47.5)).build();
        return FencePlanner.plan(site, USUAL);
    }

    /** The figures of the hand-worked side of {@code FencePlannerTest}, as the crew reads them. */
    @Test
    void theSheetSaysWhatWasWorkedOutByHand() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        String sheet = BuildSheet.of(plan, Takeoff.of(plan)).toText();
        assertThat(sheet)
                .contains("48' 8 1/2\" on 1 side, 8 posts, 7 bays, 0 gates, 131 boards")
                .containsPattern("1 +1-2 +6' 11 1/2\" +0\" +0 % +3 +9 1/2\" \\| 3' 3 3/4\" \\| 5' 10\"")
                .containsPattern("1-2 +1 +1 +7' 1 1/4\" +0 deg")
                .containsPattern("1-3 +2 +2, 3 +14' 0 3/4\" +0 deg")
                .containsPattern("post 1 to post 8 +1 3/4\" before +49' 0\" +66 +3 7/16\" +none +65");
    }

    @Test
    void theSheetGivesTheGateAsItIsCut() {
        FencePlan plan = withGate();
        assertThat(BuildSheet.of(plan, Takeoff.of(plan)).toText())
                .contains("walk gate, post 3 to post 4, hinges on post 4, left seen from outside")
                .contains(
                        "opening 3' 11 1/2\" between posts, leaf 3' 10 3/4\" wide (gaps 1/2\" at the hinges, 1/4\" at")
                .contains("5' 9 1/2\" point to point");
    }

    /** Nothing in the drawings and tables of a metric packet is in feet or inches but the deed's calls and what is bought. */
    @Test
    void drawingsAndTablesForAMetricTape() {
        Map<String, String> files = BuildPacket.of(withGate())
                .withPaper(Paper.A4)
                .withTape(TapeFormat.millimetres(0))
                .files();
        files.forEach((name, text) -> {
            if (name.endsWith(".csv") && !name.equals("to-buy.csv")) {
                assertThat(text).as(name).doesNotContainPattern("[0-9] (ft|in)\\b");
            }
            if (name.endsWith(".svg") && !name.equals("plan.svg")) {
                String words = text.replaceAll("<[^>]*>", "\n");
                assertThat(words)
                        .as(name)
                        .doesNotContainPattern("[0-9](&quot;|\"|'|&apos;)")
                        .contains(" mm");
            }
        });
    }

    @Test
    void theSheetForAMetricTape() {
        FencePlan plan = withGate();
        assertThat(BuildSheet.of(plan, Takeoff.of(plan))
                        .withTape(TapeFormat.millimetres(0))
                        .toText())
                .contains("leaf 1187 mm wide");
    }

    /** What a crew must be told every time, and what must never be claimed. */
    @Test
    void cautionsComeFirstAndNothingIsPromised() {
        FencePlan plan = withGate();
        String sheet = BuildSheet.of(plan, Takeoff.of(plan)).toText();
        assertThat(sheet.indexOf("811")).isPositive().isLessThan(sheet.indexOf("2. FINDINGS"));
        assertThat(sheet)
                .contains("silica")
                .contains("Treated wood")
                .contains("licensed engineer")
                .contains("wind");
        for (String text : BuildPacket.of(plan).files().values()) {
            assertThat(text.toLowerCase(Locale.ROOT))
                    .doesNotContainPattern("\\bsafe\\b")
                    .doesNotContain("code compliant");
        }
    }

    @Test
    void everyPostRailAndBoardIsInItsTable() {
        FencePlan plan = withGate();
        var files = BuildPacket.of(plan).files();
        assertThat(files.keySet())
                .containsExactly(
                        "build-sheet.txt",
                        "packet.html",
                        "strings.csv",
                        "ties.csv",
                        "batter-boards.csv",
                        "stakes.csv",
                        "posts.csv",
                        "holes.csv",
                        "rails.csv",
                        "rail-pieces.csv",
                        "boards.csv",
                        "to-buy.csv",
                        "plan.svg",
                        "plan.dxf",
                        "side-1-sheet-1.svg",
                        "side-1-sheet-2.svg",
                        "side-1.dxf",
                        "board-marks-post-1-to-post-3.svg",
                        "board-marks-post-4-to-post-9-sheet-1.svg",
                        "board-marks-post-4-to-post-9-sheet-2.svg",
                        "gate-1.svg",
                        "gate-1.dxf",
                        "worksheets.txt");
        assertThat(lines(files, "stakes.csv")).isEqualTo(1 + plan.posts().size());
        assertThat(lines(files, "batter-boards.csv")).isEqualTo(1 + 2);
        assertThat(lines(files, "posts.csv")).isEqualTo(1 + plan.posts().size());
        assertThat(lines(files, "rails.csv")).isEqualTo(1 + plan.bays().size());
        long inTwo = plan.stretches().stream()
                .flatMap(stretch -> stretch.boardsAtPosts().stream())
                .filter(board -> board.before().isPositive() && board.after().isPositive())
                .count();
        assertThat(lines(files, "boards.csv")).isEqualTo(1 + plan.boards().size() + inTwo);
    }

    /**
     * Under 15 psf the posts at the ends, which hold half a bay each, go less deep than the others. Depths are whole inches,
     * and the bags are those of the shopping list.
     */
    @Test
    void holesAreListedBySizeWithTheBagsThatAreBought() {
        FencePlan plan = FencePlanner.plan(
                Plans.levelSide().windPressure(Pressure.ofPsf(15)).build(), USUAL);
        Takeoff takeoff = Takeoff.of(plan);
        List<String> rows = BuildPacket.of(plan)
                .files()
                .getOrDefault("holes.csv", "")
                .lines()
                .toList();
        MaterialLine concrete = takeoff.materials().stream()
                .filter(line -> line.item().equals("concrete mix"))
                .findFirst()
                .orElseThrow();

        assertThat(rows).hasSize(1 + 2);
        assertThat(rows.get(0)).isEqualTo("holes,hole,deep,base,bags each,bags,posts");
        assertThat(rows.get(1)).startsWith("6,").endsWith(",2 to 7");
        assertThat(rows.get(2)).startsWith("2,").endsWith(",1 and 8");
        int bags = rows.stream()
                .skip(1)
                .mapToInt(row -> Integer.parseInt(row.split(",", -1)[5]))
                .sum();
        assertThat(bags)
                .isEqualTo(concrete.quantity())
                .isEqualTo(plan.holes().bags(takeoff.spec().bag()));
        assertThat(BuildSheet.of(plan, takeoff).toText())
                .contains("The holes by size, depths rounded up to the inch:")
                .contains(bags + " for the job.");
    }

    /**
     * A string 6 in inside a side of 50 ft due north, on a lot 40 ft wide, begins 6 in east and north of the first corner:
     * sqrt(6² + 6²) = 8.485 in from it, and sqrt(474² + 6²) = 474.04 in from the corner where side 4 starts.
     */
    @Test
    void tiesTheStringsToTwoCornersOfTheLot() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        assertThat(BuildPacket.of(plan).files())
                .extractingByKey("ties.csv", InstanceOfAssertFactories.STRING)
                .contains("begin: side 1,1,0.50 ft,0.50 ft,start of side 1,\"8 1/2\"\"\",start of side 4,"
                        + "\"39' 6 1/16\"\"\"\n")
                .contains("end: side 1,8,0.50 ft,49.50 ft,start of side 2,\"8 1/2\"\"\",start of side 3,"
                        + "\"39' 6 1/16\"\"\"\n");
    }

    /** The setback does not move a line that is given point by point, and the sheet must not say that it does. */
    @Test
    void saysWhereTheStringsOfALineRun() {
        Polyline line = Polyline.of(List.of(
                Point.of(Length.ofFeet(10), Length.ofFeet(10)), Point.of(Length.ofFeet(30), Length.ofFeet(10))));
        FencePlan plan = FencePlanner.plan(
                Site.on(Plans.rectangle(40, 40))
                        .fenceAlong(line, Side.RIGHT)
                        .ground(Plane.level(Length.ZERO))
                        .build(),
                USUAL);
        assertThat(BuildSheet.of(plan, Takeoff.of(plan)).toText())
                .contains("Strings run through the points of the line that was given")
                .doesNotContain("inside the boundary");
    }

    /** The last post stands 2 in further inside: 9 3/4 in off the side, and the first 7 3/4 in as planned. */
    @Test
    void tellsHowFarOffTheSidePostsStandAsSet() {
        FencePlan planned = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        Run run = planned.runs().get(0);
        FencePlan built = planned.withSetPosts(List.of(SetPost.of(8, run.pointAt(run.length(), Length.ofInches(-2)))));
        assertThat(BuildPacket.of(built).files())
                .extractingByKey("strings.csv", InstanceOfAssertFactories.STRING)
                .contains(",1,\"7 3/4\"\"\",\"7 3/4\"\"\",8,\"7 3/4\"\"\",\"9 3/4\"\"\"\n");
        assertThat(BuildSheet.of(built, Takeoff.of(built)).toText())
                .contains("as they were set")
                .contains("end, set");
    }

    /** Ten facets of a curve are ten runs of one side: each stake names its own. */
    @Test
    void stakesOfACurvedSideNameTheirRun() {
        Course front = Course.of(Bearing.NORTH, Length.ofFeet(50));
        LotBoundary lot = LotBoundary.of(List.of(
                front,
                Course.curve(Side.RIGHT)
                        .radius(Length.ofFeet(25))
                        .delta(Angle.RIGHT)
                        .tangentTo(front)
                        .build(),
                Course.of(Bearing.EAST, Length.ofFeet(50)),
                Course.of(Bearing.SOUTH, Length.ofFeet(75)),
                Course.of(Bearing.WEST, Length.ofFeet(75))));
        FencePlan plan = FencePlanner.plan(
                Site.on(lot).fenceOn(2).ground(Plane.level(Length.ZERO)).build(), USUAL);
        assertThat(BuildPacket.of(plan).files())
                .extractingByKey("stakes.csv", InstanceOfAssertFactories.STRING)
                .contains("\"side 2, part 3\",3,corner,")
                .contains("\"side 2, part 3\",4,corner,");
        assertThat(BuildSheet.of(plan, Takeoff.of(plan)).toText())
                .contains("on 1 side,")
                .contains("A curved side is followed in straight parts");
    }

    /** Board 10 of the hand-worked side is ripped to the 3.6346 in after post 2, whose edge is 87 in from the beginning. */
    @Test
    void aStripBesideAPostHasItsOwnMark() {
        FencePlan plan = FencePlanner.plan(Plans.levelSide().build(), USUAL);
        assertThat(BuildPacket.of(plan).files())
                .extractingByKey("boards.csv", InstanceOfAssertFactories.STRING)
                .contains(
                        "post 1 to post 8,\"1 3/4\"\" before the middle of post 1\",inside,10,\"7' 3\"\"\",\"3 5/8\"\"\","
                                + "\"6' 0\"\"\",\"ripped, begins against post 2\",square ends\n");
    }

    private static long lines(Map<String, String> files, String name) {
        return files.getOrDefault(name, "").lines().count();
    }

    @Test
    void aPlanThatCannotBeBuiltSaysSoOnTop() {
        LotBoundary open = LotBoundary.of(
                List.of(Plans.course(0, 50), Plans.course(90, 40), Plans.course(180, 50), Plans.course(270, 30)));
        FencePlan plan = FencePlanner.plan(Site.on(open).fenceOn(1).build(), USUAL);
        var files = BuildPacket.of(plan).files();
        assertThat(files.keySet())
                .containsExactly("build-sheet.txt", "packet.html", "plan.svg", "plan.dxf", "worksheets.txt");
        assertThat(files)
                .extractingByKey("build-sheet.txt", InstanceOfAssertFactories.STRING)
                .contains("*** THIS FENCE CANNOT BE BUILT AS DESCRIBED")
                .contains("BLOCKER  lot: the courses do not close");
    }

    @Test
    void samePlanSameBytes() {
        assertThat(BuildPacket.of(withGate()).files())
                .isEqualTo(BuildPacket.of(withGate()).files());
    }
}
