package org.fencecore.drawing.sheet;

import org.fencecore.drawing.Layer;

/** How a layer is drawn: colour, width in mm of paper, dashes in mm of paper and filling, in the terms of SVG. */
record Pen(String colour, double width, String dashes, String fill, boolean seeThrough) {

    static final String SOLID = "";
    static final String EMPTY = "none";

    static Pen of(Layer layer) {
        return switch (layer) {
            case GRAVEL -> Pen.line("#777777", 0.13).filled("#f4f4f4").dashed("0.4 0.6");
            case CONCRETE -> Pen.line("#777777", 0.18).filled("#dcdcdc");
            case FROST -> Pen.line("#1f5f9f", 0.25).dashed("3 1.2");
            case INSIDE_BOARDS -> Pen.line("#b9ad98", 0.1).filled("#f8f3ea");
            case OUTSIDE_BOARDS -> Pen.line("#8a7650", 0.13).filled("#ecdcbc");
            case COVER_BOARDS -> Pen.line("#7a6640", 0.13).filled("#e2cfa6");
            case KICK_BOARDS -> Pen.line("#7a6640", 0.18).filled("#d8c39a").showingThrough();
            case POSTS -> Pen.line("#333333", 0.18).dashed("1 0.5");
            case RAILS -> Pen.line("#5b4a2a", 0.13).dashed("1 0.5");
            case RAIL_JOINTS -> Pen.line("#a03020", 0.45);
            case GATE_FRAME -> Pen.line("#000000", 0.25).filled("#f6ead0").showingThrough();
            case GATE_BRACE -> Pen.line("#000000", 0.25).filled("#fbf5e6").showingThrough();
            case HINGES -> Pen.line("#1f5f9f", 0.25);
            case GROUND -> Pen.line("#3c2f1a", 0.5);
            case OBSTACLES -> Pen.line("#7a3f00", 0.25).dashed("2 0.8");
            case ZONES -> Pen.line("#3c6e3c", 0.25).dashed("4 1 0.8 1");
            case BOUNDARY -> Pen.line("#000000", 0.5).dashed("8 1.2 1.2 1.2 1.2 1.2");
            case STRINGS -> Pen.line("#b03020", 0.25);
            case BATTER_BOARDS -> Pen.line("#b03020", 0.5);
            case SWING -> Pen.line("#1f5f9f", 0.25);
            case POST_MARKS -> Pen.line("#000000", 0.3).filled("#000000");
            case MATCH_LINES -> Pen.line("#000000", 0.35).dashed("5 1 1 1");
            case DIMENSIONS -> Pen.line("#444444", 0.13);
            case LETTERING -> Pen.line("none", 0).filled("#000000");
        };
    }

    static Pen line(String colour, double width) {
        return new Pen(colour, width, SOLID, EMPTY, false);
    }

    Pen dashed(String newDashes) {
        return new Pen(colour, width, newDashes, fill, seeThrough);
    }

    Pen filled(String newFill) {
        return new Pen(colour, width, dashes, newFill, seeThrough);
    }

    Pen showingThrough() {
        return new Pen(colour, width, dashes, fill, true);
    }

    boolean isFilled() {
        return !fill.equals(EMPTY);
    }
}
