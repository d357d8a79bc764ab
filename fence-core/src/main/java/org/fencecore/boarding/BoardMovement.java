package org.fencecore.boarding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.Face;
import org.fencecore.units.Length;
import org.fencecore.units.Ratio;
import org.fencecore.units.Rounding;
import org.fencecore.wood.Grain;
import org.fencecore.wood.WoodInUse;
import org.fencecore.wood.WoodMovement;
import org.fencecore.wood.WoodSpecies;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Worksheet;
import org.fencecore.worksheet.Written;

/**
 * What becomes of the gaps and laps of a layout as its boards dry and get wet.
 *
 * <pre>
 * gap = gap as built - change of the board's width
 * lap = lap as built + (change of the second row's width + change of the board's width) / 2
 * </pre>
 *
 * <p>It assumes that boards stay where their middles are fixed, and move as {@link WoodMovement} tells, which for flat
 * grain is the most. Boards that are fixed along one edge open as much, on one side.
 *
 * <p>Sources: USDA Wood Handbook (FPL-GTR-190, 2010), chapter 13, for the movement; geometry.
 *
 * <p>Example: loblolly pine boards of 5 1/2 in put up tight and soaking wet that dry to 12 % open by 0.244 in.
 *
 * <pre>{@code
 * BoardLayout tight = BoardLayout.fit(Length.ofFeet(11), BoardPattern.sideBySide(Length.ofInches(5.5)));
 * BoardMovement movement = BoardMovement.of(tight, WoodSpecies.LOBLOLLY_PINE, Grain.FLAT, Ratio.ofPercent(30),
 *         Ratio.ofPercent(12), Ratio.ofPercent(30));
 * movement.gapWhenDry();                           // 0.244 in
 * movement.findings(Length.ofInches(0.125));       // gap-opens
 * }</pre>
 */
public final class BoardMovement {

    private static final Citation HANDBOOK = Citation.of("USDA Wood Handbook", "chapter 13", "FPL-GTR-190, 2010");

    private final BoardLayout layout;
    private final WoodSpecies species;
    private final Grain grain;
    private final Ratio asBuilt;
    private final Ratio driest;
    private final Ratio wettest;

    private BoardMovement(
            BoardLayout layout, WoodSpecies species, Grain grain, Ratio asBuilt, Ratio driest, Ratio wettest) {
        this.layout = layout;
        this.species = species;
        this.grain = grain;
        this.asBuilt = asBuilt;
        this.driest = driest;
        this.wettest = wettest;
    }

    /**
     * Works out how a layout moves.
     *
     * @param layout the boards as they are put up
     * @param species what wood they are
     * @param grain how they are sawn
     * @param asBuilt their moisture content when put up, as a share of the dry weight
     * @param driest the least they will have, no more than {@code asBuilt}
     * @param wettest the most they will have, no less than {@code asBuilt}
     * @return the movement
     * @throws IllegalArgumentException if a moisture content is not from 0 to 200 %, or they are not in order
     */
    public static BoardMovement of(
            BoardLayout layout, WoodSpecies species, Grain grain, Ratio asBuilt, Ratio driest, Ratio wettest) {
        if (driest.compareTo(asBuilt) > 0 || asBuilt.compareTo(wettest) > 0) {
            throw new IllegalArgumentException("moisture driest, asBuilt and wettest were " + driest.percent() + " %, "
                    + asBuilt.percent() + " % and " + wettest.percent() + " %; give them in rising order");
        }
        BoardMovement movement = new BoardMovement(layout, species, grain, asBuilt, driest, wettest);
        // Refuses moistures that no wood has.
        movement.change(layout.pattern().width(), driest);
        movement.change(layout.pattern().width(), wettest);
        return movement;
    }

    /**
     * Works out how a layout moves.
     *
     * @param layout the boards as they are put up
     * @param wood what wood they are, and how wet
     * @return the movement
     */
    public static BoardMovement of(BoardLayout layout, WoodInUse wood) {
        return of(layout, wood.species(), wood.grain(), wood.asBuilt(), wood.driest(), wood.wettest());
    }

    private Length change(Length width, Ratio to) {
        return WoodMovement.of(species, grain, width, asBuilt, to).change();
    }

    /**
     * Returns the gap between boards of the first row when they are driest.
     *
     * @return the gap, the widest it gets
     */
    public Length gapWhenDry() {
        return gapAt(driest);
    }

    /**
     * Returns the gap between boards of the first row when they are wettest.
     *
     * @return the gap, the narrowest it gets; negative by how much boards are too wide for their places
     */
    public Length gapWhenWet() {
        return gapAt(wettest);
    }

    private Length gapAt(Ratio moisture) {
        return layout.row(Face.OUTSIDE).gap().minus(change(layout.pattern().width(), moisture));
    }

    /**
     * Returns the lap of the second row on the first when they are driest.
     *
     * @return the lap, the smallest it gets, negative where the gap shows; empty without a second row
     */
    public Optional<Length> lapWhenDry() {
        return lapAt(driest);
    }

    /**
     * Returns the lap of the second row on the first when they are wettest.
     *
     * @return the lap, the largest it gets; empty without a second row
     */
    public Optional<Length> lapWhenWet() {
        return lapAt(wettest);
    }

    private Optional<Length> lapAt(Ratio moisture) {
        return layout.lap()
                .flatMap(lap -> layout.pattern()
                        .coverWidth()
                        .map(cover -> lap.plus(change(cover, moisture)
                                .plus(change(layout.pattern().width(), moisture))
                                .dividedBy(2))));
    }

    /**
     * Returns what is wrong: warnings {@code gap-opens} for gaps in a single row that open further than allowed, {@code
     * lap-lost} for a lap that dries away, and {@code boards-buckle} for boards that swell against each other.
     *
     * @param allowedGap the widest gap allowed when dry
     * @return all findings, empty if there are none or there is but one board
     * @throws IllegalArgumentException if {@code allowedGap} is negative
     */
    public List<Finding> findings(Length allowedGap) {
        if (allowedGap.isNegative()) {
            throw new IllegalArgumentException("allowedGap was " + allowedGap + "; it must be 0 or more");
        }
        List<Finding> findings = new ArrayList<>();
        if (layout.row(Face.OUTSIDE).count() < 2) {
            return List.of();
        }
        Optional<Length> dryLap = lapWhenDry();
        if (dryLap.isEmpty() && gapWhenDry().compareTo(allowedGap) > 0) {
            findings.add(Finding.warning(
                            "gap-opens",
                            "boards",
                            "gaps of " + built() + " open to " + Written.tape(gapWhenDry(), Rounding.UP)
                                    + " as the boards dry, over the " + Written.tape(allowedGap) + " allowed")
                    .withRemedy("put up drier boards, set them closer, or lap them")
                    .withSource(HANDBOOK));
        }
        dryLap.filter(lap -> !lap.isPositive())
                .ifPresent(lap -> findings.add(Finding.warning(
                                "lap-lost",
                                "boards",
                                "the lap of " + layout.lap().map(Written::tape).orElseThrow()
                                        + " dries away and leaves "
                                        + Written.tape(lap.negated().times(2), Rounding.UP) + " open")
                        .withRemedy("lap the boards more, or put up drier ones")
                        .withSource(HANDBOOK)));
        if (gapWhenWet().isNegative()) {
            findings.add(Finding.warning(
                            "boards-buckle",
                            "boards",
                            "gaps of " + built() + " close and the boards press on each other by "
                                    + Written.tape(gapWhenWet().negated(), Rounding.UP) + " each as they swell")
                    .withRemedy("leave gaps of "
                            + Written.tape(change(layout.pattern().width(), wettest), Rounding.UP)
                            + " or more, or put up wetter boards")
                    .withSource(HANDBOOK));
        }
        return List.copyOf(findings);
    }

    private String built() {
        return Written.tape(layout.row(Face.OUTSIDE).gap());
    }

    /**
     * Returns the calculation, ending with the gap when dry.
     *
     * @return the worksheet
     */
    public Worksheet worksheet() {
        Length width = layout.pattern().width();
        Length gap = layout.row(Face.OUTSIDE).gap();
        Worksheet.Builder sheet = Worksheet.titled("Movement of boards");
        WoodMovement.of(species, grain, width, asBuilt, wettest)
                .worksheet()
                .lines()
                .forEach(sheet::line);
        gapLine(sheet, "gap when wet", gap, change(width, wettest));
        WoodMovement.of(species, grain, width, asBuilt, driest)
                .worksheet()
                .lines()
                .forEach(sheet::line);
        gapLine(sheet, "gap when dry", gap, change(width, driest));
        return sheet.build();
    }

    private static void gapLine(Worksheet.Builder sheet, String name, Length gap, Length change) {
        sheet.line(
                name,
                "gap as built - change",
                Written.inches(gap) + " - " + Written.inches(change),
                gap.minus(change),
                Written.inches(gap.minus(change)),
                Citation.GEOMETRY);
    }

    /**
     * Describes the movement.
     *
     * @return such as {@code gaps from 0" to 1/4"}
     */
    @Override
    public String toString() {
        return "gaps from " + Written.tape(gapWhenWet()) + " to " + Written.tape(gapWhenDry());
    }
}
