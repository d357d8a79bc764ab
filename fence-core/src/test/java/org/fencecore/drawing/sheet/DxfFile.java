package org.fencecore.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A DXF text read back group by group: a code on one line, its value on the next. */
public final class DxfFile {

    /** Rounding of paper to real size and back, at the smallest scales. */
    private static final double NEAR = 1e-9;

    private record Group(int code, String value) {}

    private final List<Group> groups = new ArrayList<>();

    private DxfFile(List<String> lines) {
        for (int i = 0; i < lines.size(); i += 2) {
            groups.add(new Group(Integer.parseInt(lines.get(i)), lines.get(i + 1)));
        }
    }

    public static DxfFile read(String dxf) {
        assertThat(dxf).endsWith("\n");
        List<String> lines = Arrays.asList(dxf.substring(0, dxf.length() - 1).split("\n", -1));
        assertThat(lines.size() % 2).as("lines in pairs").isZero();
        return new DxfFile(lines);
    }

    public List<String> values(int code) {
        return groups.stream()
                .filter(group -> group.code() == code)
                .map(Group::value)
                .toList();
    }

    /** Sections, tables and polylines end before the next begins, the file ends once, and every layer used is told. */
    public void assertWhole() {
        String section = "";
        boolean inPolyline = false;
        Set<String> layers = new HashSet<>();
        for (int i = 0; i < groups.size(); i++) {
            Group group = groups.get(i);
            if (group.code() == 8) {
                assertThat(layers).contains(group.value());
            }
            if (group.code() != 0) {
                continue;
            }
            switch (group.value()) {
                case "SECTION" -> {
                    assertThat(section).isEmpty();
                    section = groups.get(i + 1).value();
                }
                case "ENDSEC" -> {
                    assertThat(section).isNotEmpty();
                    section = "";
                }
                case "LAYER" -> layers.add(groups.get(i + 1).value());
                case "POLYLINE" -> {
                    assertThat(inPolyline).isFalse();
                    inPolyline = true;
                }
                case "SEQEND" -> inPolyline = false;
                case "EOF" -> assertThat(i).isEqualTo(groups.size() - 1);
                default -> assertThat(inPolyline).isEqualTo(group.value().equals("VERTEX"));
            }
        }
        assertThat(section).isEmpty();
        assertThat(inPolyline).isFalse();
        assertThat(groups.get(groups.size() - 1)).isEqualTo(new Group(0, "EOF"));
    }

    /** Every end of a line lies within the extents that the header tells. */
    public void assertWithinItsExtents() {
        double left = after("$EXTMIN", 1);
        double bottom = after("$EXTMIN", 2);
        double right = after("$EXTMAX", 1);
        double top = after("$EXTMAX", 2);
        double near = 2e-6 + NEAR * (right - left + top - bottom);
        String entity = "";
        for (Group group : groups) {
            if (group.code() == 0) {
                entity = group.value();
            }
            boolean drawn = entity.equals("LINE") || entity.equals("VERTEX");
            if (drawn && (group.code() == 10 || group.code() == 11)) {
                assertThat(Double.parseDouble(group.value())).isBetween(left - near, right + near);
            }
            if (drawn && (group.code() == 20 || group.code() == 21)) {
                assertThat(Double.parseDouble(group.value())).isBetween(bottom - near, top + near);
            }
        }
    }

    private double after(String variable, int further) {
        return Double.parseDouble(
                groups.get(groups.indexOf(new Group(9, variable)) + further).value());
    }
}
