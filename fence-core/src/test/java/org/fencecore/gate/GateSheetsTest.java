package org.fencecore.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.fencecore.units.Length;
import org.fencecore.units.Slope;
import org.fencecore.worksheet.WorkLine;
import org.junit.jupiter.api.Test;

/**
 * What is set out on the board for other joints, other ends of braces, cables and raked leaves, reckoned by hand (right
 * triangles; lengths of frame pieces: common practice, no source).
 *
 * <pre>
 * Brace in a leaf with rails an inch wide, 42 by 32, raked 25 % up from the hinges, t = atan 0.25 = 14.036 deg:
 * W = 40, H = 32 - 2 / cos t = 32 - 2 x 1.030776 = 29.9384, D = sqrt(40^2 + 39.9384^2) = 56.525
 * corner to corner at atan(39.9384 / 40) = 44.956 deg, asin(3.5 / 56.525) = 3.550 deg
 * along the rails   44.956 + 3.550 = 48.506; 3.5 / sin 34.470 = 6.184; 29.9384 x 0.970143 / sin 34.470 = 51.317
 * along the stiles  44.956 - 3.550 = 41.406; 3.5 / cos 41.406 = 4.666; 40 / cos 41.406 = 53.331
 * cable             falls with the rails: H - 10 = 19.9384 over 40, so 26.495 deg and 44.693 in
 * </pre>
 */
class GateSheetsTest {

    private static Length inches(double inches) {
        return Length.ofInches(inches);
    }

    private static GateLeaf leaf(double opening, double height, double rake, GateSpec.Builder spec) {
        return GateDesign.forOpening(inches(opening), inches(height), HingeSide.LEFT, spec.build())
                .withRake(Slope.ofPercent(rake))
                .activeLeaf();
    }

    /** The brace of a clear space 40 in wide, 30 in high if level. */
    private static String brace(double rake, GateSpec.Builder spec) {
        return leaf(42.75, 32, rake, spec.memberWidth(inches(1)))
                .braces()
                .get(0)
                .worksheet()
                .toText();
    }

    @Test
    void aBraceCutAlongTheRails() {
        assertThat(brace(25, GateSpec.builder().braceEnds(BraceEnds.RAIL_CUTS))).isEqualTo("""
                Gate brace from bottom rail to top rail
                  foot = on the hinge side = bottom rail at hinge stile   [Building Construction (chestofbooks.com, Building-Construction-5), Doors]
                  head = on the latch side = top rail at latch stile   [Building Construction (chestofbooks.com, Building-Construction-5), Doors]
                  clear width W = 3' 4"   [given]
                  clear height H = 2' 5 15/16"   [given]
                  rake of the rails t, foot to head = 14.04 deg   [given]
                  brace width b = 3 1/2"   [given]
                  corner to corner D = sqrt(W^2 + (H + W tan t)^2) = sqrt((40 in)^2 + ((29.9384 in + 40 in tan 14.04 deg))^2) = 4' 8 1/2"
                  rise = atan((H + W tan t) / W) + asin(b / D) = atan((29.9384 in + 40 in tan 14.04 deg) / 40 in) + asin(3.5 in / 56.525 in) = 48.51 deg
                  cut against the rail, off square = 90 deg - (rise - t) = 90 deg - (48.51 deg - 14.04 deg) = 55.53 deg
                  bearing on the rail = b / sin (rise - t) = 3.5 in / sin (48.51 deg - 14.04 deg) = 6 3/16"
                  edge length, long point to short point = H cos t / sin (rise - t) = 29.9384 in cos 14.04 deg / sin (48.51 deg - 14.04 deg) = 4' 3 5/16"
                """);
        // Level, 3.5 / sin 40.884 = 5.347 and 30 / sin 40.884 = 45.834.
        assertThat(brace(0, GateSpec.builder().braceEnds(BraceEnds.RAIL_CUTS)))
                .contains("cut against the rail, off square = 90 deg - rise = 90 deg - 40.88 deg = 49.12 deg")
                .contains("bearing on the rail = b / sin rise = 3.5 in / sin 40.88 deg = 5 3/8\"")
                .contains("long point to short point = H / sin rise = 30 in / sin 40.88 deg = 3' 9 13/16\"");
    }

    @Test
    void aBraceCutAlongTheStiles() {
        assertThat(brace(25, GateSpec.builder().braceEnds(BraceEnds.STILE_CUTS)))
                .endsWith("""
                  rise = atan((H + W tan t) / W) - asin(b / D) = atan((29.9384 in + 40 in tan 14.04 deg) / 40 in) - asin(3.5 in / 56.525 in) = 41.41 deg
                  cut against the stile, off square = rise = 41.41 deg
                  bearing on the stile = b / cos rise = 3.5 in / cos 41.41 deg = 4 11/16"
                  edge length, long point to short point = W / cos rise = 40 in / cos 41.41 deg = 4' 5 5/16"
                """);
    }

    @Test
    void aCableFallsFromTheHinges() {
        assertThat(brace(25, GateSpec.builder().braceKind(BraceKind.CABLE))).isEqualTo("""
                Gate cable from bottom rail to top rail
                  foot = on the latch side = bottom rail at latch stile   [common practice, no source]
                  head = on the hinge side = top rail at hinge stile   [common practice, no source]
                  clear width W = 3' 4"   [given]
                  clear height H = 2' 5 15/16"   [given]
                  rake of the rails t, foot to head = -14.04 deg   [given]
                  rise = atan((H + W tan t) / W) = atan((29.9384 in + 40 in tan -14.04 deg) / 40 in) = 26.49 deg
                  length, corner to corner = sqrt(W^2 + (H + W tan t)^2) = sqrt((40 in)^2 + ((29.9384 in + 40 in tan -14.04 deg))^2) = 3' 8 11/16"
                """);
    }

    /** The same leaf of 46 3/4 by 56 with a middle rail, by joint: the lines that tell lengths. */
    @Test
    void theJointDecidesWhatTheSheetTellsOfStilesAndRails() {
        assertThat(lengths(FrameJoint.STILES_BETWEEN_RAILS)).isEqualTo("""
                stile length = frame height - 2 x member width = 56 in - 2 x 3.5 in = 4' 1"
                rail length = leaf width = 3' 10 3/4"
                middle rail length = leaf width - 2 x member width = 46.75 in - 2 x 3.5 in = 3' 3 3/4"
                """);
        assertThat(lengths(FrameJoint.HALF_LAP)).isEqualTo("""
                stile length = frame height = 4' 8"
                rail length = leaf width = 3' 10 3/4"
                """);
        assertThat(lengths(FrameJoint.MITRE)).isEqualTo("""
                stile length, long point to long point = frame height = 4' 8"
                rail length, long point to long point = leaf width = 3' 10 3/4"
                middle rail length = leaf width - 2 x member width = 46.75 in - 2 x 3.5 in = 3' 3 3/4"
                """);
        assertThat(leaf(47.5, 56, 0, GateSpec.builder().joint(FrameJoint.MITRE))
                        .worksheet()
                        .lines())
                .extracting(WorkLine::name)
                .doesNotContain("middle rail length");
    }

    private static String lengths(FrameJoint joint) {
        String sheet = leaf(47.5, 56, 0, GateSpec.builder().joint(joint).middleRail(true))
                .worksheet()
                .toText();
        return sheet.lines()
                .filter(line -> line.contains("length =") || line.contains("long point ="))
                .map(line -> line.replace("   [common practice, no source]", "").strip() + "\n")
                .collect(Collectors.joining());
    }

    /** 47 1/2 - 3 = 44 1/2 wide, raked 25 %: 11 1/8 higher at the right; rails 37.5 / cos t + 3.5 sin t = 39.503 long. */
    @Test
    void aRakedLeafBetweenBuildOuts() {
        GateLeaf leaf =
                leaf(47.5, 56, 25, GateSpec.builder().hingeBuildOut(inches(1.5)).latchBuildOut(inches(0.75)));
        assertThat(leaf.worksheet().toText()).isEqualTo("""
                Gate leaf and frame
                  clear opening = 3' 11 1/2"   [given]
                  hinge build-out = 1 1/2"   [given]
                  hinge gap = 1/2"   [given]
                  latch gap = 1/4"   [given]
                  latch build-out = 3/4"   [given]
                  frame height = 4' 8"   [given]
                  member width = 3 1/2"   [given]
                  rake, left to right = 25 %   [given]
                  leaf width = clear opening - hinge build-out - hinge gap - latch gap - latch build-out = 47.5 in - 1.5 in - 0.5 in - 0.25 in - 0.75 in = 3' 8 1/2"   [common practice, no source]
                  plumb depth of a rail = member width / cos rake = 3.5 in / cos 14.04 deg = 3 5/8"
                  clear width = leaf width - 2 x member width = 44.5 in - 2 x 3.5 in = 3' 1 1/2"
                  hinge stile length, over all = from long point to long point = 4' 8 7/8"
                  latch stile length, over all = from long point to long point = 4' 8 7/8"
                  bottom rail length, over all = from long point to long point = 3' 3 1/2"
                  top rail length, over all = from long point to long point = 3' 3 1/2"
                  clear height = frame height - 2 x depth = 56 in - 2 x 3.6077 in = 4' 0 13/16"
                  rise over the leaf = leaf width x rake = 44.5 in x 25 % = 11 1/8"
                  diagonal, upper left to lower right = sqrt(leaf width^2 + (frame height - rise)^2) = sqrt((44.5 in)^2 + (56 in - 11.125 in)^2) = 5' 3 3/16"
                  diagonal, lower left to upper right = sqrt(leaf width^2 + (frame height + rise)^2) = sqrt((44.5 in)^2 + (56 in + 11.125 in)^2) = 6' 8 9/16"
                """);
    }

    /** (96 - 2 x (1 1/2 + 1/2) - 1/2) / 2 = 45 3/4. */
    @Test
    void aLeafOfAPairSharesTheCentreGap() {
        GateSpec spec = GateSpec.builder().hingeBuildOut(inches(1.5)).build();
        GateDesign pair = GateDesign.pairForOpening(inches(96), inches(56), HingeSide.LEFT, spec);
        assertThat(pair.activeLeaf().worksheet().toText()).startsWith("""
                        Gate leaf and frame
                          clear opening = 8' 0"   [given]
                          hinge build-out = 1 1/2"   [given]
                          hinge gap = 1/2"   [given]
                          centre gap = 1/2"   [given]
                          frame height = 4' 8"   [given]
                          member width = 3 1/2"   [given]
                          leaf width = (clear opening - 2 x (hinge build-out + hinge gap) - centre gap) / 2 = (96 in - 2 x (1.5 in + 0.5 in) - 0.5 in) / 2 = 3' 9 3/4"\
                        """);
    }
}
