package org.fencecore.json;

import static org.fencecore.json.Basics.FLAG;
import static org.fencecore.json.Field.maybe;
import static org.fencecore.json.Field.required;
import static org.fencecore.json.Field.usual;
import static org.fencecore.json.Quantities.LENGTH;
import static org.fencecore.json.Quantities.RATIO;

import java.util.Optional;
import org.fencecore.boarding.BoardEnds;
import org.fencecore.style.BoardStyle;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.wood.Grain;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodSpecies;

/** The forms of how boards are put up, their ends and their wood. */
final class BoardForms {

    private static final Form<BoardEnds> ENDS = Made.<BoardEnds>named("ends", "How the ends of boards are cut.")
            .from(BoardEnds::square)
            .with(
                    usual("slopedTop", FLAG, BoardEnds::hasSlopedTop, "whether tops follow the top line"),
                    (ends, sloped) -> sloped ? ends.withSlopedTop() : ends)
            .with(
                    usual("slopedBottom", FLAG, BoardEnds::hasSlopedBottom, "whether bottoms follow the bottom line"),
                    (ends, sloped) -> sloped ? ends.withSlopedBottom() : ends)
            .with(
                    maybe("dogEars", LENGTH, BoardForms::dogEars, "what dog-ears take off the top and off the edge"),
                    BoardEnds::withDogEars)
            .end(ends -> ends);

    /** The driest and the wettest that wood gets. */
    private record Moisture(Ratio driest, Ratio wettest) {}

    private static final Form<Moisture> MOISTURE = Made.<Moisture>named("moisture", "How dry and how wet wood gets.")
            .from(
                    required("driest", RATIO, Moisture::driest, "the least water in it, by dry weight"),
                    required("wettest", RATIO, Moisture::wettest, "the most"),
                    Moisture::new)
            .end(moisture -> moisture);

    private static final Form<WoodInUse> WOOD = Made.<WoodInUse>named("wood", "What wood boards are of.")
            .from(
                    required("species", Basics.oneOf(WoodSpecies.class), WoodInUse::species, "the species"),
                    required("asBuilt", RATIO, WoodInUse::asBuilt, "the water in it when built, by dry weight"),
                    WoodInUse::of)
            .with(
                    usual("sawn", Basics.oneOf(Grain.class), WoodInUse::grain, "how the growth rings lie"),
                    WoodInUse::sawn)
            .with(
                    usual(
                            "between",
                            MOISTURE,
                            wood -> new Moisture(wood.driest(), wood.wettest()),
                            "how dry and how wet it gets"),
                    (wood, moisture) -> wood.between(moisture.driest(), moisture.wettest()))
            .with(
                    usual("allowingGaps", LENGTH, WoodInUse::allowedGap, "how wide gaps may open when dry"),
                    WoodInUse::allowingGaps)
            .end(wood -> wood);

    static final Form<BoardStyle> BOARDS = Kinds.<BoardStyle>named("boardStyle", "How boards are put up.")
            .kind(
                    "upright",
                    BoardStyle.class,
                    boards -> !boards.isHorizontal(),
                    withWood(Made.<BoardStyle>named("upright", "On rails.")
                            .from(BoardStyle::upright)
                            .with(
                                    usual("ends", ENDS, BoardStyle::ends, "how their ends are cut"),
                                    BoardStyle::withEnds)))
            .kind(
                    "horizontal",
                    BoardStyle.class,
                    BoardStyle::isHorizontal,
                    withWood(Made.<BoardStyle>named("horizontal", "In courses from post to post, without rails.")
                            .from(BoardStyle::horizontal)
                            .with(
                                    usual(
                                            "nailersEvery",
                                            LENGTH,
                                            BoardStyle::nailerSpacing,
                                            "how far they may span between posts and nailers"),
                                    BoardStyle::withNailersEvery)));

    private BoardForms() {}

    private static Made<BoardStyle, BoardStyle> withWood(Made.Begun<BoardStyle, BoardStyle> begun) {
        return begun.with(maybe("wood", WOOD, BoardStyle::wood, "what wood they are of"), BoardStyle::withWood)
                .end(boards -> boards);
    }

    private static Optional<Length> dogEars(BoardEnds ends) {
        return ends.dogEar().isZero() ? Optional.empty() : Optional.of(ends.dogEar());
    }
}
