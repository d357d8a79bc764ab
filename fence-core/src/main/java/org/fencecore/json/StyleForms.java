package org.fencecore.json;

import static org.fencecore.json.Basics.COUNT;
import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Basics.TEXT;
import static org.fencecore.json.Basics.listOf;
import static org.fencecore.json.Field.instead;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.GeometryForms.CITATION;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.PRESSURE;
import static org.fencecore.json.Quantities.SLOPE;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fencecore.footing.HoleShape;
import org.fencecore.footing.PostSetting;
import org.fencecore.layout.BayRule;
import org.fencecore.layout.PostSpacingSpec;
import org.fencecore.rail.RailSpec;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.slope.TopShape;
import org.fencecore.slope.Treatment;
import org.fencecore.strength.ReferenceValues;
import org.fencecore.strength.SpeciesGroup;
import org.fencecore.strength.WoodGrade;
import org.fencecore.style.FenceStyle;
import org.fencecore.style.Lumber;
import org.fencecore.units.Length;

/** The forms of what the owner wants. */
final class StyleForms {

    private static final int MOST_LENGTHS = 1_000;

    static final Made<RailSpec, ?> RAILS = Made.<RailSpec>named("rails", "Where the rails sit.")
            .from(RailSpec::builder)
            .with(
                    usual("boardLength", LENGTH, RailSpec::boardLength, "how long the boards are"),
                    RailSpec.Builder::boardLength)
            .with(
                    usual("railDepth", LENGTH, RailSpec::railDepth, "how deep a rail is, square to it"),
                    RailSpec.Builder::railDepth)
            .with(
                    usual(
                            "topRailBelowTops",
                            LENGTH,
                            RailSpec::topRailBelowTops,
                            "how far boards stand over the top rail"),
                    RailSpec.Builder::topRailBelowTops)
            .with(
                    usual(
                            "bottomRailAboveBottoms",
                            LENGTH,
                            RailSpec::bottomRailAboveBottoms,
                            "how far boards hang under the bottom rail"),
                    RailSpec.Builder::bottomRailAboveBottoms)
            .with(usual("rails", COUNT, RailSpec::rails, "how many rails"), RailSpec.Builder::rails)
            .with(
                    instead("maximumSpace", LENGTH, "as many rails as keep the space between them to this"),
                    RailSpec.Builder::maximumSpace)
            .with(
                    usual("betweenPosts", FLAG, RailSpec::isBetweenPosts, "whether rails stand between the posts"),
                    (rails, between) -> between ? rails.betweenPosts() : rails)
            .with(
                    usual("longestStick", LENGTH, RailSpec::longestStick, "the longest stick to be handled"),
                    RailSpec.Builder::longestStick)
            .with(
                    usual("mostBays", COUNT, RailSpec::mostBays, "over how many bays a piece may go through"),
                    RailSpec.Builder::mostBays)
            .with(usual("trim", LENGTH, RailSpec::trim, "what is left for trimming"), RailSpec.Builder::trim)
            .end(RailSpec.Builder::build);

    static final Made<SlopeSpec, ?> SLOPES = Made.<SlopeSpec>named("slopeSpec", "How the fence meets the ground.")
            .from(SlopeSpec::builder)
            .with(
                    usual("treatment", Basics.oneOf(Treatment.class), SlopeSpec::treatment, "racked, stepped or other"),
                    SlopeSpec.Builder::treatment)
            .with(
                    usual(
                            "underBoards",
                            Basics.oneOf(SlopeSpec.UnderBoards.class),
                            SlopeSpec::underBoards,
                            "what becomes of gaps under the boards"),
                    SlopeSpec.Builder::underBoards)
            .with(
                    usual("clearance", LENGTH, SlopeSpec::clearance, "how far boards are up at the posts"),
                    SlopeSpec.Builder::clearance)
            .with(
                    usual("minimumClearance", LENGTH, SlopeSpec::minimumClearance, "the least anywhere"),
                    SlopeSpec.Builder::minimumClearance)
            .with(
                    usual("maximumClearance", LENGTH, SlopeSpec::maximumClearance, "the most anywhere"),
                    SlopeSpec.Builder::maximumClearance)
            .with(
                    maybe("maximumGrade", SLOPE, SlopeSpec::maximumGrade, "the steepest that boards may be racked"),
                    SlopeSpec.Builder::maximumGrade)
            .with(
                    usual("stepIncrement", LENGTH, SlopeSpec::stepIncrement, "what steps are whole numbers of"),
                    SlopeSpec.Builder::stepIncrement)
            .with(
                    usual("longestString", LENGTH, SlopeSpec::longestString, "how long one string may be"),
                    SlopeSpec.Builder::longestString)
            .end(SlopeSpec.Builder::build);

    static final Form<TopShape> TOP = Kinds.<TopShape>named("top", "How the tops of the boards run.")
            .kind(
                    "straight",
                    TopShape.class,
                    TopShape::isStraight,
                    top("straight", "To the string.", TopShape::straight))
            .kind(
                    "followingGround",
                    TopShape.class,
                    top -> top.kind() == TopShape.Kind.GROUND,
                    top("followingGround", "Up and down with the ground.", TopShape::followingGround))
            .kind(
                    "stepped",
                    TopShape.class,
                    top -> top.kind() == TopShape.Kind.STEPPED,
                    top("steppedTop", "Level in each bay.", TopShape::stepped))
            .kind(
                    "arched",
                    TopShape.class,
                    top -> top.kind() == TopShape.Kind.ARCHED,
                    Made.<TopShape>named("arched", "Arched between posts.")
                            .from(required("rise", LENGTH, TopShape::rise, "how far"), TopShape::arched)
                            .end(top -> top))
            .kind(
                    "dipped",
                    TopShape.class,
                    top -> top.kind() == TopShape.Kind.DIPPED,
                    Made.<TopShape>named("dipped", "Dipped between posts.")
                            .from(required("dip", LENGTH, TopShape::rise, "how far"), TopShape::dipped)
                            .end(top -> top));

    static final Made<PostSpacingSpec, ?> POST_SPACING = Made.<PostSpacingSpec>named(
                    "postSpacing", "How posts are spaced, from centre to centre.")
            .from(PostSpacingSpec::builder)
            .with(
                    usual("maximum", LENGTH, PostSpacingSpec::maximum, "the longest bay"),
                    PostSpacingSpec.Builder::maximum)
            .with(
                    usual("minimum", LENGTH, PostSpacingSpec::minimum, "the shortest bay"),
                    PostSpacingSpec.Builder::minimum)
            .with(
                    usual("rule", Basics.oneOf(BayRule.class), PostSpacingSpec::rule, "where the remainder goes"),
                    PostSpacingSpec.Builder::rule)
            .with(
                    maybe("railStock", LENGTH, PostSpacingSpec::railStock, "the rails that bays are to suit"),
                    PostSpacingSpec.Builder::railStock)
            .end(PostSpacingSpec.Builder::build);

    static final Form<HoleShape> HOLE = Kinds.<HoleShape>named("hole", "The shape of post holes.")
            .kind(
                    "square",
                    HoleShape.class,
                    HoleShape::isSquare,
                    Made.<HoleShape>named("square", "Square.")
                            .from(required("side", LENGTH, HoleShape::width, "how wide"), HoleShape::square)
                            .end(hole -> hole))
            .kind(
                    "belled",
                    HoleShape.class,
                    hole -> hole.bell().isPresent(),
                    Made.<HoleShape>named("belled", "Round, with a bell at the bottom.")
                            .from(
                                    required("shaft", LENGTH, HoleShape::width, "how wide above the bell"),
                                    required("atBottom", LENGTH, HoleShape::bottomWidth, "how wide at the bottom"),
                                    required(
                                            "height",
                                            LENGTH,
                                            hole -> hole.bell().orElseThrow(),
                                            "how high the bell is"),
                                    HoleShape::belled)
                            .end(hole -> hole))
            .kind(
                    "round",
                    HoleShape.class,
                    hole -> hole.width().equals(hole.bottomWidth()),
                    Made.<HoleShape>named("round", "Round and straight.")
                            .from(required("diameter", LENGTH, HoleShape::width, "how wide"), HoleShape::round)
                            .end(hole -> hole))
            .kind(
                    "tapered",
                    HoleShape.class,
                    hole -> true,
                    Made.<HoleShape>named("tapered", "Round, wider or narrower at the bottom.")
                            .from(
                                    required("atGrade", LENGTH, HoleShape::width, "how wide at grade"),
                                    required("atBottom", LENGTH, HoleShape::bottomWidth, "how wide at the bottom"),
                                    HoleShape::tapered)
                            .end(hole -> hole));

    static final Made<PostSetting, ?> SETTING = Made.<PostSetting>named("setting", "How posts are set.")
            .from(PostSetting::builder)
            .with(
                    usual("minimumEmbedment", LENGTH, PostSetting::minimumEmbedment, "the least depth in the ground"),
                    PostSetting.Builder::minimumEmbedment)
            .with(
                    usual(
                            "thirdOfPostInGround",
                            FLAG,
                            PostSetting::hasThirdOfPostInGround,
                            "whether a third of the post is to be in the ground"),
                    PostSetting.Builder::thirdOfPostInGround)
            .with(
                    usual("roundUpTo", LENGTH, PostSetting::increment, "what depths are rounded up to"),
                    PostSetting.Builder::roundUpTo)
            .with(
                    usual("belowFrostLine", LENGTH, PostSetting::belowFrostLine, "how far under the frost line"),
                    PostSetting.Builder::belowFrostLine)
            .with(
                    usual(
                            "fenceStandardMinimum",
                            FLAG,
                            PostSetting::hasFenceStandardMinimum,
                            "whether the least of the fence standard holds"),
                    PostSetting.Builder::fenceStandardMinimum)
            .with(
                    usual("heldAtGrade", FLAG, PostSetting::isHeldAtGrade, "whether paving holds the post at grade"),
                    PostSetting.Builder::heldAtGrade)
            .with(
                    maybe("hole", HOLE, PostSetting::hole, "the hole; round and three posts wide when not said"),
                    PostSetting.Builder::hole)
            .with(instead("holeDiameter", LENGTH, "a round hole so wide"), PostSetting.Builder::holeDiameter)
            .with(
                    maybe("gravelBase", LENGTH, setting -> base(setting, false), "gravel at the bottom"),
                    PostSetting.Builder::gravelBase)
            .with(
                    maybe("dryMixBase", LENGTH, setting -> base(setting, true), "dry concrete mix at the bottom"),
                    PostSetting.Builder::dryMixBase)
            .with(
                    usual("concreteTop", LENGTH, PostSetting::concreteTop, "how far concrete comes over grade"),
                    PostSetting.Builder::concreteTop)
            .with(usual("crown", LENGTH, PostSetting::crown, "how far it is crowned"), PostSetting.Builder::crown)
            .end(PostSetting.Builder::build);

    /** The table a lumber is graded by. */
    private record Grading(SpeciesGroup species, WoodGrade grade) {}

    private static final Form<Grading> GRADING = Made.<Grading>named("grading", "Species and grade.")
            .from(
                    required("species", Basics.oneOf(SpeciesGroup.class), Grading::species, "the species"),
                    required("grade", Basics.oneOf(WoodGrade.class), Grading::grade, "the grade"),
                    Grading::new)
            .end(grading -> grading);

    private static final Form<ReferenceValues> VALUES = Made.<ReferenceValues>named(
                    "woodValues", "Reference design values from elsewhere.")
            .from(
                    required("source", CITATION, ReferenceValues::source, "where they are from"),
                    required("bending", PRESSURE, ReferenceValues::bending, "Fb"),
                    required("shear", PRESSURE, ReferenceValues::shear, "Fv"),
                    required("elasticity", PRESSURE, ReferenceValues::elasticity, "E"),
                    ReferenceValues::given)
            .end(values -> values);

    static final Made<Lumber, Lumber> LUMBER = Made.<Lumber>named("lumber", "What pieces are cut from.")
            .from(
                    required("name", TEXT, Lumber::name, "what the yard calls it"),
                    required("thickness", LENGTH, Lumber::thickness, "the smaller dimension"),
                    required("width", LENGTH, Lumber::width, "the larger dimension"),
                    Lumber::of)
            .with(
                    maybe("soldIn", listOf(LENGTH, MOST_LENGTHS), StyleForms::soldIn, "the lengths on the shelf"),
                    (lumber, lengths) -> lumber.soldIn(lengths.toArray(new Length[0])))
            .with(
                    maybe("graded", GRADING, StyleForms::grading, "the table that its strength is taken from"),
                    (lumber, grading) -> lumber.graded(grading.species(), grading.grade()))
            .with(
                    maybe("values", VALUES, StyleForms::values, "values that count in place of that table"),
                    Lumber::graded)
            .end(lumber -> lumber);

    static final Made<FenceStyle, ?> STYLE = Made.<FenceStyle>named("style", "What the owner wants.")
            .from(FenceStyle::builder)
            .with(
                    usual("pattern", PatternForms.PATTERN, FenceStyle::pattern, "how the boards are set"),
                    FenceStyle.Builder::pattern)
            .with(
                    usual("boards", BoardForms.BOARDS, FenceStyle::boards, "how the boards are put up"),
                    FenceStyle.Builder::boards)
            .with(usual("rails", RAILS, FenceStyle::rails, "where the rails sit"), FenceStyle.Builder::rails)
            .with(usual("slope", SLOPES, FenceStyle::slope, "how it meets the ground"), FenceStyle.Builder::slope)
            .with(usual("top", TOP, FenceStyle::top, "how the tops run"), FenceStyle.Builder::top)
            .with(
                    maybe("gateTop", TOP, StyleForms::gateTop, "how the tops run on gates, where they differ there"),
                    FenceStyle.Builder::gateTop)
            .with(usual("gate", GateForms.SPEC, FenceStyle::gate, "how gates are made"), FenceStyle.Builder::gate)
            .with(
                    usual("gateHardware", GateForms.HARDWARE, FenceStyle::gateHardware, "what gates hang with"),
                    FenceStyle.Builder::gateHardware)
            .with(
                    usual("boardLumber", LUMBER, FenceStyle::boardLumber, "what boards are cut from"),
                    FenceStyle.Builder::boardLumber)
            .with(
                    usual("battenLumber", LUMBER, FenceStyle::battenLumber, "what battens are cut from"),
                    FenceStyle.Builder::battenLumber)
            .with(
                    usual("railLumber", LUMBER, FenceStyle::railLumber, "what rails are cut from"),
                    FenceStyle.Builder::railLumber)
            .with(
                    usual("postLumber", LUMBER, FenceStyle::postLumber, "what posts are cut from"),
                    FenceStyle.Builder::postLumber)
            .with(
                    usual("gateLumber", LUMBER, FenceStyle::gateLumber, "what gates are cut from"),
                    FenceStyle.Builder::gateLumber)
            .with(
                    usual("kickLumber", LUMBER, FenceStyle::kickLumber, "what kick boards are cut from"),
                    FenceStyle.Builder::kickLumber)
            .with(
                    usual("postSpacing", POST_SPACING, FenceStyle::postSpacing, "how posts are spaced"),
                    FenceStyle.Builder::postSpacing)
            .with(
                    usual(
                            "postAboveBoards",
                            LENGTH,
                            FenceStyle::postAboveBoards,
                            "how far posts stand over the boards"),
                    FenceStyle.Builder::postAboveBoards)
            .with(
                    usual(
                            "postTopsToSlope",
                            FLAG,
                            FenceStyle::hasPostTopsToSlope,
                            "whether post tops are cut to the slope of the boards"),
                    (style, wanted) -> wanted ? style.postTopsToSlope() : style)
            .with(
                    usual("postCapWidth", LENGTH, FenceStyle::postCapWidth, "how wide post caps are; 0 for none"),
                    FenceStyle.Builder::postCapWidth)
            .with(usual("setting", SETTING, FenceStyle::setting, "how posts are set"), FenceStyle.Builder::setting)
            .end(FenceStyle.Builder::build);

    private StyleForms() {}

    private static Made<TopShape, TopShape> top(String name, String about, Supplier<TopShape> shape) {
        return Made.<TopShape>named(name, about).from(shape).end(top -> top);
    }

    private static Optional<TopShape> gateTop(FenceStyle style) {
        TopShape top = style.top();
        TopShape own = style.gateTop();
        boolean same = own.kind() == top.kind() && own.rise().equals(top.rise());
        return same ? Optional.empty() : Optional.of(own);
    }

    private static Optional<Length> base(PostSetting setting, boolean dryMix) {
        return setting.isDryMixBase() == dryMix ? Optional.of(setting.base()) : Optional.empty();
    }

    private static Optional<List<Length>> soldIn(Lumber lumber) {
        return lumber.lengths().isEmpty() ? Optional.empty() : Optional.of(lumber.lengths());
    }

    private static Optional<Grading> grading(Lumber lumber) {
        return lumber.species().flatMap(species -> lumber.grade().map(grade -> new Grading(species, grade)));
    }

    private static Optional<ReferenceValues> values(Lumber lumber) {
        Optional<ReferenceValues> own = lumber.ownValues();
        own.ifPresent(values -> {
            ReferenceValues given =
                    ReferenceValues.given(values.source(), values.bending(), values.shear(), values.elasticity());
            if (!given.equals(values)) {
                throw new IllegalArgumentException("values of " + lumber + " were " + values
                        + ", taken from the library's own table; grade the lumber by species and grade instead");
            }
        });
        return own;
    }
}
