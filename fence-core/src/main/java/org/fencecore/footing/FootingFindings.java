package org.fencecore.footing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fencecore.units.Length;
import org.fencecore.units.Rounding;
import org.fencecore.worksheet.Citation;
import org.fencecore.worksheet.Finding;
import org.fencecore.worksheet.Written;

/** What a builder should know about a footing. */
final class FootingFindings {

    private static final String PLACE = "post";

    /** The depth up to which the code lets lateral pressure be reckoned. */
    private static final Length DEEPEST_BEARING = Length.ofFeet(12);

    private static final Length ROOM_FOR_CONCRETE = Length.ofInches(4);

    private FootingFindings() {}

    static List<Finding> of(FootingDesign design) {
        List<Finding> findings = new ArrayList<>();
        if (!design.load().knowsPush()) {
            findings.add(windNotChecked(design));
        }
        if (!design.load().isNone()) {
            ofBearing(design, findings);
        }
        if (design.spec().frostDepth().isEmpty()) {
            findings.add(Finding.warning(
                            "frost-not-checked",
                            PLACE,
                            "the frost depth is not known, so the embedment of " + Written.tape(design.embedment())
                                    + " was not checked against frost")
                    .withRemedy(
                            "ask the local building department for its frost depth; give 0 where the ground does not"
                                    + " freeze")
                    .withSource(Sources.FROST));
        }
        narrowHole(design.spec()).ifPresent(findings::add);
        widerAtTop(design.spec()).ifPresent(findings::add);
        frostGrip(design).ifPresent(findings::add);
        findings.add(Finding.note(
                        "local-code",
                        PLACE,
                        "local code and a licensed engineer decide how a post is set; this is arithmetic by the rules"
                                + " listed, with the soil and the wind as they were given")
                .withRemedy("show the worksheet to the local building department"));
        // The sort keeps the order within a severity.
        findings.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(findings);
    }

    private static Finding windNotChecked(FootingDesign design) {
        return Finding.warning(
                        "wind-not-checked",
                        PLACE,
                        "the wind is not known, so the embedment of " + Written.tape(design.embedment())
                                + " was not checked against it")
                .withRemedy("find the design wind pressure for the place and give the load it puts on the post")
                .withSource(Sources.POLE);
    }

    private static void ofBearing(FootingDesign design, List<Finding> findings) {
        FootingSpec spec = design.spec();
        EmbedmentCriterion bearing = design.criteria().get(0);
        if (bearing.depth().compareTo(DEEPEST_BEARING) > 0) {
            findings.add(Finding.blocker(
                            "bearing-over-12-ft",
                            PLACE,
                            "lateral soil bearing asks for an embedment of "
                                    + Written.tape(bearing.depth(), Rounding.UP)
                                    + ", over the 12 ft to which it may be reckoned")
                    .withRemedy("set the posts closer, widen the hole, or have an engineer design the footing")
                    .withSource(Sources.POLE));
        }
        if (spec.hasDoubledBearing()) {
            findings.add(Finding.warning(
                            "doubled-bearing",
                            PLACE,
                            "the soil's lateral bearing was doubled to "
                                    + Written.bearing(
                                            spec.soil().lateralBearing().times(2))
                                    + ", which is for isolated poles that 1/2 in of motion at grade does not harm")
                    .withRemedy("ask the building official or an engineer whether a fence post is one")
                    .withSource(Sources.DOUBLED_BEARING));
        }
        if (spec.setting().isHeldAtGrade()) {
            findings.add(Finding.warning(
                            "held-at-grade",
                            PLACE,
                            "the post was taken as held at grade by a slab or paving, which must stay and be strong"
                                    + " enough for "
                                    + Written.force(design.load().force()) + " and more")
                    .withRemedy("set the post deeper, as one free at grade, if the paving may go")
                    .withSource(Sources.HELD_POLE));
        }
        if (design.governing().rule() == EmbedmentRule.LATERAL_BEARING) {
            findings.add(bearingGoverns(design, bearing));
        }
        if (spec.soil().isPresumptive()) {
            findings.add(Finding.note(
                            "presumptive-soil",
                            PLACE,
                            "the soil was taken as " + spec.soil()
                                    + ", a presumptive value; mud, organic soil, peat and unprepared fill have none")
                    .withRemedy("look at the soil in the first holes, or have it tested")
                    .withSource(spec.soil().source()));
        }
        findings.add(Finding.note(
                        "post-strength-not-checked",
                        PLACE,
                        "the embedment holds the post in the ground; whether the post itself is strong enough was not"
                                + " checked")
                .withRemedy("check the post in bending at grade for the same load"));
    }

    private static Finding bearingGoverns(FootingDesign design, EmbedmentCriterion bearing) {
        EmbedmentCriterion next = design.criteria().stream()
                .skip(1)
                .max(Comparator.comparing(EmbedmentCriterion::depth))
                .orElseThrow();
        return Finding.note(
                        "lateral-bearing-governs",
                        PLACE,
                        "lateral soil bearing asks for " + Written.tape(bearing.depth(), Rounding.UP) + ", "
                                + Written.tape(next.shortOf(bearing), Rounding.UP) + " more than " + next.rule())
                .withRemedy("posts set closer or a wider hole need less depth")
                .withSource(bearing.source());
    }

    private static Optional<Finding> narrowHole(FootingSpec spec) {
        HoleShape hole = spec.hole();
        Length post = hole.isSquare() ? spec.postWidth() : spec.postDiagonal();
        Length wanted = post.plus(ROOM_FOR_CONCRETE);
        Length narrowest = Length.min(hole.width(), hole.bottomWidth());
        if (narrowest.compareTo(wanted) >= 0) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(
                        "narrow-hole",
                        PLACE,
                        "the hole is " + Written.tape(narrowest, Rounding.DOWN)
                                + " wide, less than 4 in more than the post's "
                                + (hole.isSquare() ? "width" : "diagonal") + " of "
                                + Written.tape(post, Rounding.UP) + ", so concrete may not fill in around it")
                .withRemedy("dig it " + Written.tape(wanted, Rounding.UP) + " wide or more")
                .withSource(Sources.BACKFILL));
    }

    private static Optional<Finding> widerAtTop(FootingSpec spec) {
        if (!spec.hole().isWiderAtTop()) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(
                        "hole-wider-at-top",
                        PLACE,
                        "the hole is " + spec.hole() + ": wider at the top than at the bottom, which gives freezing"
                                + " ground a hold to lift it by")
                .withRemedy("dig it straight down or wider at the bottom")
                .withSource(Citation.COMMON_PRACTICE));
    }

    private static Optional<Finding> frostGrip(FootingDesign design) {
        FootingSpec spec = design.spec();
        if (spec.frostDepth().isEmpty() || spec.frostGrip().isEmpty()) {
            return Optional.empty();
        }
        Length frost = spec.frostDepth().get();
        FrostGrip grip = FrostGrip.on(design, frost, spec.frostGrip().get());
        if (!grip.lifts()) {
            return Optional.empty();
        }
        return Optional.of(Finding.note(
                        "frost-grip",
                        PLACE,
                        "wet ground frozen " + Written.tape(frost) + " deep may grip the concrete's side with up to "
                                + Written.force(grip.lift()) + ", taken as "
                                + Written.pressure(spec.frostGrip().get())
                                + " all around; its weight and the friction below the frost hold "
                                + Written.force(grip.hold()))
                .withRemedy("drain the ground, dig the hole wider at the bottom, or line its upper part so that ice"
                        + " slides along it")
                .withSource(Sources.FROST_GRIP));
    }
}
