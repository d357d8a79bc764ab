package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.toldListOf;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.GeometryForms.AREA;
import static org.fencecore.json.GeometryForms.CITATION;
import static org.fencecore.json.GeometryForms.INTERVAL;
import static org.fencecore.json.GeometryForms.POINT;
import static org.fencecore.json.GeometryForms.PROFILE;
import static org.fencecore.json.GeometryForms.SEGMENT;
import static org.fencecore.json.GeometryForms.SIDE;
import static org.fencecore.json.Quantities.ANGLE;
import static org.fencecore.json.Quantities.FORCE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.MOMENT;
import static org.fencecore.json.Quantities.PRESSURE;
import static org.fencecore.json.Quantities.SLOPE;
import static org.fencecore.json.Quantities.SQUARE;
import static org.fencecore.json.Quantities.VOLUME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fencecore.Bay;
import org.fencecore.BayRail;
import org.fencecore.BoardAtPost;
import org.fencecore.FencePlan;
import org.fencecore.Post;
import org.fencecore.PostKind;
import org.fencecore.Run;
import org.fencecore.Stretch;
import org.fencecore.footing.EmbedmentRule;
import org.fencecore.footing.FootingDesign;
import org.fencecore.rail.RailMarks;
import org.fencecore.rail.RailPiece;
import org.fencecore.rail.RailPieces;
import org.fencecore.slope.KickBoard;
import org.fencecore.slope.Treatment;
import org.fencecore.survey.LotBoundary;
import org.fencecore.wind.FenceWind;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Severity;

/** How a plan is told. */
final class PlanShapes {

    private static final Shape<Finding> FINDING = Told.of(
            "finding",
            "What is to be known of the plan.",
            required("code", TEXT, Finding::code, "its code"),
            required("severity", Basics.oneOf(Severity.class), Finding::severity, "how much it matters"),
            required("place", TEXT, Finding::place, "where"),
            required("message", TEXT, Finding::message, "what"),
            required("remedy", TEXT, Finding::remedy, "the way out"),
            maybe("source", CITATION, Finding::source, "where that is said"));

    private static final Shape<LotBoundary> LOT = Told.of(
            "plannedLot",
            "The boundary with its misclosure spread.",
            maybe("outline", AREA, LotBoundary::outline, "its corners, curves in facets"),
            maybe("area", SQUARE, LotBoundary::area, "what it encloses"));

    /** A footing, and the posts that stand on it. */
    private record Hole(FootingDesign footing, List<Integer> posts) {

        static List<Hole> of(FencePlan plan) {
            Map<FootingDesign, List<Integer>> posts = new LinkedHashMap<>();
            plan.posts()
                    .forEach(post -> posts.computeIfAbsent(post.footing(), footing -> new ArrayList<>())
                            .add(post.number()));
            List<Hole> holes = new ArrayList<>();
            posts.forEach((footing, numbers) -> holes.add(new Hole(footing, numbers)));
            return holes;
        }
    }

    private static final Shape<Hole> HOLE = Told.of(
            "footing",
            "The hole and concrete of posts that are alike.",
            required("posts", toldListOf(COUNT), Hole::posts, "the numbers of the posts"),
            required("hole", StyleForms.HOLE, hole -> hole.footing().spec().hole(), "the shape of the hole"),
            required("holeDepth", LENGTH, hole -> hole.footing().holeDepth(), "how deep it is dug"),
            required("embedment", LENGTH, hole -> hole.footing().embedment(), "how deep the post stands"),
            required("postLength", LENGTH, hole -> hole.footing().postLength(), "how long the post is"),
            required("concrete", VOLUME, hole -> hole.footing().concrete(), "the concrete"),
            required("gravel", VOLUME, hole -> hole.footing().gravel(), "the gravel"),
            required(
                    "governedBy",
                    Basics.oneOf(EmbedmentRule.class),
                    hole -> hole.footing().governing().rule(),
                    "the rule that makes it so deep"),
            required("push", FORCE, hole -> hole.footing().load().force(), "the push on the post"),
            required("moment", MOMENT, hole -> hole.footing().load().moment(), "the moment at grade"));

    private static final Shape<Post> POST = Told.of(
            "post",
            "A post.",
            required("number", COUNT, Post::number, "its number"),
            required("post", Basics.oneOf(PostKind.class), Post::kind, "what it is for"),
            required("centre", POINT, Post::centre, "where it stands"),
            required("ground", LENGTH, Post::ground, "the height of the ground there"),
            required("exposed", LENGTH, Post::exposed, "how far it stands out of the ground"),
            required("topGrade", SLOPE, Post::topGrade, "the slope that its top is cut to"),
            required("set", FLAG, Post::isSet, "whether it stands already"));

    private static final Shape<RailMarks> MARKS = Told.of(
            "railMarks",
            "Where a rail meets a post, over the ground.",
            required("bottom", LENGTH, RailMarks::bottom, "its lower edge"),
            required("top", LENGTH, RailMarks::top, "its upper edge"));

    private static final Shape<BayRail> BAY_RAIL = Told.of(
            "bayRail",
            "A rail in a bay.",
            required("number", COUNT, BayRail::number, "its number, from the bottom"),
            required("from", MARKS, BayRail::from, "at the first post"),
            required("to", MARKS, BayRail::to, "at the second post"));

    private static final Shape<KickBoard> KICK_BOARD = Told.of(
            "kickBoard",
            "A board that closes a gap under the boards.",
            required("course", COUNT, KickBoard::course, "its course, from the top"),
            required("reach", INTERVAL, KickBoard::reach, "its stretch along the run"),
            required("length", LENGTH, KickBoard::length, "how long"),
            required("depth", LENGTH, KickBoard::depth, "how deep"),
            required("topAtStart", LENGTH, KickBoard::topAtStart, "the height of its upper edge where it begins"),
            required("grade", SLOPE, KickBoard::grade, "how it rises"));

    private static final Shape<Bay> BAY = Told.of(
            "bay",
            "What is between two posts.",
            required("number", COUNT, Bay::number, "its number"),
            required("from", COUNT, bay -> bay.from().number(), "the number of its first post"),
            required("to", COUNT, bay -> bay.to().number(), "the number of its second post"),
            required("spacing", LENGTH, Bay::spacing, "from centre to centre"),
            required(
                    "treatment",
                    Basics.oneOf(Treatment.class),
                    bay -> bay.slope().treatment(),
                    "racked or stepped"),
            required("bottomAtStart", LENGTH, bay -> bay.slope().bottomAtStart(), "the boards' bottoms at its start"),
            required("bottomAtEnd", LENGTH, bay -> bay.slope().bottomAtEnd(), "the boards' bottoms at its end"),
            required("rails", toldListOf(BAY_RAIL), Bay::rails, "its rails"),
            required("kickBoards", toldListOf(KICK_BOARD), Bay::kickBoards, "its kick boards"));

    private static final Shape<RailPiece> RAIL_PIECE = Told.of(
            "railPiece",
            "A piece of rail to cut.",
            required("rail", COUNT, RailPiece::rail, "the number of the rail, from the bottom"),
            required("bays", COUNT, RailPiece::bays, "over how many bays it goes"),
            required("reach", INTERVAL, RailPiece::reach, "its stretch along the run"),
            required("length", LENGTH, RailPiece::length, "the length to cut"),
            required("trim", LENGTH, RailPiece::trim, "what is left on it for trimming"),
            required("endCut", ANGLE, RailPiece::endCut, "the cut of its ends, off square"));

    private static final Shape<BoardAtPost> BOARD_AT_POST = Told.of(
            "boardAtPost",
            "A board of the inside face that a post is in the way of.",
            required("board", COUNT, at -> at.board().index(), "its number in its row, from 0"),
            required("post", COUNT, at -> at.post().number(), "the number of the post"),
            required("before", LENGTH, BoardAtPost::before, "the strip that is left before the post"),
            required("after", LENGTH, BoardAtPost::after, "the strip that is left after it"));

    private static final Shape<Stretch> STRETCH = Told.of(
            "stretch",
            "Bays between posts that are fixed, such as those of corners and gates.",
            required("from", COUNT, stretch -> stretch.from().number(), "the number of its first post"),
            required("to", COUNT, stretch -> stretch.to().number(), "the number of its last post"),
            required("bays", toldListOf(BAY), Stretch::bays, "its bays"),
            maybe(
                    "railPieces",
                    toldListOf(RAIL_PIECE),
                    stretch -> stretch.railPieces().map(RailPieces::pieces),
                    "its rails as they are cut; none for horizontal boards"),
            required("boarded", INTERVAL, Stretch::boarded, "where its boards are along the run"),
            maybe("boards", BoardShapes.BOARDS, Stretch::boards, "its upright boards"),
            required("courses", toldListOf(BoardShapes.COURSES), Stretch::courses, "its horizontal boards"),
            required("boardsAtPosts", toldListOf(BOARD_AT_POST), Stretch::boardsAtPosts, "boards that posts cut"));

    private static final Shape<FenceWind> WIND = Told.of(
            "runWind",
            "The wind on a run.",
            required("greatest", PRESSURE, FenceWind::greatest, "the greatest pressure on it"));

    private static final Shape<Run> RUN = Told.of(
            "run",
            "A straight run of fence.",
            required("name", TEXT, Run::name, "its name"),
            required("side", COUNT, Run::side, "the side that it is on"),
            required("string", SEGMENT, Run::string, "the string, at the outside faces of the posts"),
            required("postLine", SEGMENT, Run::postLine, "the line of the posts' middles; stations are along it"),
            required("outside", SIDE, Run::outside, "on which hand the outside is"),
            required("startAlongSide", LENGTH, Run::startAlongSide, "where it begins along its side"),
            required("ground", PROFILE, Run::ground, "the ground along it"),
            required("posts", toldListOf(COUNT), PlanShapes::numbers, "the numbers of its posts"),
            required("stretches", toldListOf(STRETCH), Run::stretches, "its stretches"),
            required("gates", toldListOf(GateShapes.GATE), Run::gates, "its gates"),
            maybe("wind", WIND, Run::wind, "the wind on it"));

    static final Shape<FencePlan> RESULTS = Told.of(
            "plan",
            "What the crew builds.",
            required("buildable", FLAG, FencePlan::isBuildable, "whether nothing stands in the way"),
            required("boardCount", COUNT, FencePlan::boardCount, "how many boards there are in all"),
            required("findings", toldListOf(FINDING), FencePlan::findings, "what is to be known of it"),
            required("lot", LOT, plan -> plan.site().lot(), "the lot"),
            required("posts", toldListOf(POST), FencePlan::posts, "the posts"),
            required("footings", toldListOf(HOLE), Hole::of, "the holes"),
            required("runs", toldListOf(RUN), FencePlan::runs, "the runs"));

    /** A plan and the job that it was made from. */
    record Document(Job job, FencePlan plan) {}

    static final Told<Document> DOCUMENT = Told.of(
            "document",
            "A plan, and the job from which it follows.",
            required("version", JobForms.VERSION_ONE, document -> JobForms.VERSION, "the version of this format"),
            required("job", JobForms.JOB, Document::job, "what was planned"),
            required("plan", RESULTS, Document::plan, "what the crew builds"));

    private PlanShapes() {}

    private static List<Integer> numbers(Run run) {
        return run.posts().stream().map(Post::number).toList();
    }
}
