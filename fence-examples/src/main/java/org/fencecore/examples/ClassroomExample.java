package org.fencecore.examples;

import java.util.List;
import org.fencecore.footing.FootingDesign;
import org.fencecore.footing.FootingSpec;
import org.fencecore.footing.LateralLoad;
import org.fencecore.footing.SoilClass;
import org.fencecore.gate.GateDesign;
import org.fencecore.gate.GateSpec;
import org.fencecore.gate.HingeSide;
import org.fencecore.geometry.ground.Profile;
import org.fencecore.layout.BoardLayout;
import org.fencecore.layout.BoardPattern;
import org.fencecore.slope.SlopeFit;
import org.fencecore.slope.SlopeSpec;
import org.fencecore.units.Length;
import org.fencecore.units.Pressure;
import org.fencecore.worksheet.WorkLine;
import org.fencecore.worksheet.Worksheet;

/** For the classroom: four calculations step by step, and each as an exercise with its answer. */
public final class ClassroomExample {

    private ClassroomExample() {}

    /** What to find out, and how it is worked out. */
    private record Exercise(String task, Worksheet sheet) {
        /** What is given, and what to find by which formula; numbers and results are left out. */
        void print() {
            System.out.println(task);
            for (WorkLine line : sheet.lines()) {
                boolean given = line.formula().isEmpty();
                System.out.println(
                        "  " + line.name() + (given ? ": " + line.shown() : " = " + line.formula() + " = ?"));
            }
            System.out.println();
        }
    }

    /**
     * Prints the exercises, then the answers worked out.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        List<Exercise> exercises = List.of(
                new Exercise(
                        "RACKING. A bay rises 1.6 ft. Its boards stand 2 in above the ground, and no high spot lifts them.\n"
                                + "How long is a rail, and at what angle are its ends cut?",
                        racking()),
                new Exercise(
                        "EQUAL SPACING. Boards of 3 1/2 in fill 7 ft 10 1/2 in, with gaps of about 2 in.\n"
                                + "How many are there, and how wide is each gap?",
                        equalSpacing()),
                new Exercise(
                        "BRACE. A gate's frame is braced from corner to corner.\n"
                                + "How long is the brace, and at what angles are its ends cut?",
                        brace()),
                new Exercise(
                        "FOOTING. Wind presses on a fence 6 ft high with posts every 8 ft in sandy soil.\n"
                                + "How deep must a post go by these rules? The local office has the last word on it.",
                        footing()));
        exercises.forEach(Exercise::print);
        System.out.println("ANSWERS\n");
        exercises.forEach(exercise -> System.out.println(exercise.sheet().toText()));
    }

    private static Worksheet racking() {
        // README begins
        Profile ground = Profile.builder()
                .point(Length.ZERO, Length.ZERO)
                .point(Length.parse("8 ft"), Length.parse("1.6 ft"))
                .build();
        List<Length> posts = List.of(Length.ZERO, Length.parse("8 ft"));
        SlopeFit fit = SlopeFit.rack(ground, posts, SlopeSpec.builder().build());
        Worksheet racking = fit.worksheet(0);
        // README ends
        return racking;
    }

    private static Worksheet equalSpacing() {
        BoardPattern pattern = BoardPattern.spaced(Length.ofInches(3.5), Length.ofInches(2));
        return BoardLayout.fit(Length.parse("7 ft 10 1/2 in"), pattern).worksheet();
    }

    private static Worksheet brace() {
        return GateDesign.forOpening(
                        Length.parse("47 1/2 in"),
                        Length.parse("56 in"),
                        HingeSide.LEFT,
                        GateSpec.builder().build())
                .activeLeaf()
                .braces()
                .get(0)
                .worksheet();
    }

    private static Worksheet footing() {
        LateralLoad load =
                LateralLoad.ofPressure(Pressure.ofPsf(15), Length.ofFeet(8), Length.ofInches(2), Length.ofInches(74));
        FootingSpec spec = FootingSpec.builder()
                .exposedHeight(Length.ofInches(74))
                .soil(SoilClass.SAND)
                .frostDepth(Length.ofInches(24))
                .build();
        return FootingDesign.forPost(load, spec).worksheet();
    }
}
