package org.fencecore.json;

import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.CITATION;
import static org.fencecore.json.GeometryForms.CORNER;
import static org.fencecore.json.GeometryForms.LINE;
import static org.fencecore.json.GeometryForms.SIDE;
import static org.fencecore.json.GeometryForms.ZONE;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.RATIO;

import java.util.Optional;
import java.util.function.Function;
import org.fencecore.geometry.Corner;
import org.fencecore.geometry.Polyline;
import org.fencecore.geometry.Zone;
import org.fencecore.rules.ClearGround;
import org.fencecore.rules.CornerVisibility;
import org.fencecore.rules.HeightLimit;
import org.fencecore.rules.LocalRule;
import org.fencecore.rules.LocalRules;
import org.fencecore.rules.PoolBarrier;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.worksheet.Citation;

/** The forms of the rules of the place. */
final class RuleForms {

    private static final int MOST = 1_000;

    /** Two lengths that a builder takes together. */
    private record Pair(Length first, Length second) {}

    /** Where the release of a latch may sit. */
    private record Release(Length height, Length underTop, Length opening, Length near) {}

    /** The sight triangle of a corner. */
    private record Triangle(Corner corner, Length arrivingLeg, Length leavingLeg) {}

    private static final Form<Triangle> TRIANGLE = Made.<Triangle>named("sightTriangle", "A corner and two legs.")
            .from(
                    required("corner", CORNER, Triangle::corner, "where the base lines meet"),
                    required("arrivingLeg", LENGTH, Triangle::arrivingLeg, "the leg back along the arriving line"),
                    required("leavingLeg", LENGTH, Triangle::leavingLeg, "the leg along the leaving line"),
                    Triangle::new)
            .end(triangle -> triangle);

    private static final Form<Pair> GAPS = Made.<Pair>named("poolGap", "How far a barrier may be off the ground.")
            .from(
                    required("overGround", LENGTH, Pair::first, "over grass or gravel"),
                    required("overPaving", LENGTH, Pair::second, "over paving"),
                    Pair::new)
            .end(pair -> pair);

    private static final Form<Pair> LADDER = Made.<Pair>named("poolLadder", "When horizontal members make a ladder.")
            .from(
                    required("spacing", LENGTH, Pair::first, "the spacing under which they do"),
                    required("opening", LENGTH, Pair::second, "the largest opening where they do"),
                    Pair::new)
            .end(pair -> pair);

    private static final Form<Release> RELEASE = Made.<Release>named("poolRelease", "Where a latch's release may sit.")
            .from(
                    required("height", LENGTH, Release::height, "the height from which it may sit anywhere"),
                    required("underTop", LENGTH, Release::underTop, "how far under the top it must be when lower"),
                    required("opening", LENGTH, Release::opening, "the largest opening near it when lower"),
                    required("near", LENGTH, Release::near, "how near to it openings count"),
                    Release::new)
            .end(release -> release);

    static final Made<PoolBarrier, ?> POOL_BARRIER = Made.<PoolBarrier>named("poolBarrier", "A barrier round a pool.")
            .from(
                    required("water", SIDE, PoolBarrier::water, "on which hand the water is, going along the fence"),
                    words(),
                    source(),
                    PoolBarrier::builder)
            .with(usual("zone", ZONE, PoolBarrier::zone, "where it holds"), PoolBarrier.Builder::zone)
            .with(usual("height", LENGTH, PoolBarrier::height, "the least height"), PoolBarrier.Builder::height)
            .with(
                    usual("gap", GAPS, rule -> new Pair(rule.gap(), rule.gapOverPaving()), "the most under it"),
                    (rule, gap) -> rule.gap(gap.first(), gap.second()))
            .with(usual("opening", LENGTH, PoolBarrier::opening, "the largest opening"), PoolBarrier.Builder::opening)
            .with(
                    usual(
                            "ladder",
                            LADDER,
                            rule -> new Pair(rule.ladderSpacing(), rule.openingAtLadder()),
                            "horizontal members"),
                    (rule, ladder) -> rule.ladder(ladder.first(), ladder.second()))
            .with(
                    usual(
                            "release",
                            RELEASE,
                            rule -> new Release(
                                    rule.releaseHeight(),
                                    rule.releaseUnderTop(),
                                    rule.openingAtRelease(),
                                    rule.nearRelease()),
                            "the release of a gate's latch"),
                    (rule, release) ->
                            rule.release(release.height(), release.underTop(), release.opening(), release.near()))
            .end(PoolBarrier.Builder::build);

    static final Form<LocalRule> RULE = Kinds.<LocalRule>named("rule", "A rule of the place.")
            .kind(
                    "heightLimit",
                    HeightLimit.class,
                    rule -> !rule.isPermit(),
                    heightLimit("heightLimit", "No fence is higher.", HeightLimit::of))
            .kind(
                    "permitOver",
                    HeightLimit.class,
                    HeightLimit::isPermit,
                    heightLimit("permitOver", "A higher fence takes a permit.", HeightLimit::permitOver))
            .kind(
                    "cornerVisibility",
                    CornerVisibility.class,
                    rule -> true,
                    Made.<CornerVisibility>named("cornerVisibility", "A triangle that is kept open to view.")
                            .from(
                                    required(
                                            "triangle",
                                            TRIANGLE,
                                            rule -> new Triangle(rule.corner(), rule.arrivingLeg(), rule.leavingLeg()),
                                            "the triangle"),
                                    required("from", LENGTH, CornerVisibility::from, "the height from which it holds"),
                                    words(),
                                    source(),
                                    (triangle, from, words, source) -> CornerVisibility.of(
                                            triangle.corner(),
                                            triangle.arrivingLeg(),
                                            triangle.leavingLeg(),
                                            from,
                                            words,
                                            source))
                            .with(
                                    maybe("upTo", LENGTH, CornerVisibility::upTo, "the height up to which it holds"),
                                    CornerVisibility::withUpTo)
                            .with(exemption(CornerVisibility::exemptFrom), CornerVisibility::withExemption)
                            .end(rule -> rule))
            .kind(
                    "easement",
                    ClearGround.class,
                    rule -> rule.barsFence() && rule.barsHoles(),
                    clearGround("easement", "Ground without fence and holes.", ClearGround::easement))
            .kind(
                    "noHoles",
                    ClearGround.class,
                    ClearGround::barsHoles,
                    clearGround("noHoles", "Ground without holes.", ClearGround::noHoles))
            .kind(
                    "setback",
                    ClearGround.class,
                    rule -> true,
                    Made.<ClearGround>named("setback", "How far a fence stays from a line.")
                            .from(
                                    required("line", LINE, RuleForms::line, "the line"),
                                    required(
                                            "distance",
                                            LENGTH,
                                            rule -> rule.zone().margin(),
                                            "the distance"),
                                    words(),
                                    source(),
                                    ClearGround::setback)
                            .end(rule -> rule))
            .kind("poolBarrier", PoolBarrier.class, rule -> true, POOL_BARRIER);

    static final Form<LocalRules> RULES = Basics.as(Basics.listOf(RULE, MOST), LocalRules::of, LocalRules::list);

    private RuleForms() {}

    private static <T extends LocalRule> Field<T, String> words() {
        return required("words", TEXT, LocalRule::words, "what findings call the rule");
    }

    private static <T extends LocalRule> Field<T, Citation> source() {
        return required("source", CITATION, LocalRule::source, "where the rule is written");
    }

    private static <T extends LocalRule> Field<T, Ratio> exemption(Function<T, Optional<Ratio>> get) {
        return maybe("exemption", RATIO, get, "how open a fence must be to be left out of it");
    }

    private static Made<HeightLimit, HeightLimit> heightLimit(
            String name, String about, Made.Four<Zone, Length, String, Citation, HeightLimit> of) {
        return Made.<HeightLimit>named(name, about)
                .from(
                        required("zone", ZONE, HeightLimit::zone, "where it holds"),
                        required("limit", LENGTH, HeightLimit::limit, "the height over the ground beside it"),
                        words(),
                        source(),
                        of)
                .with(exemption(HeightLimit::exemptFrom), HeightLimit::withExemption)
                .end(rule -> rule);
    }

    private static Made<ClearGround, ClearGround> clearGround(
            String name, String about, Made.Three<Zone, String, Citation, ClearGround> of) {
        return Made.<ClearGround>named(name, about)
                .from(required("zone", ZONE, ClearGround::zone, "where it holds"), words(), source(), of)
                .end(rule -> rule);
    }

    private static Polyline line(ClearGround setback) {
        return setback.zone().line().orElseThrow();
    }
}
