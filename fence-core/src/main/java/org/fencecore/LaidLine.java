package org.fencecore;

import org.fencecore.geometry.ground.Profile;

/** One line of the fence with the ground under it and the places of its posts and gates. */
record LaidLine(FenceLine line, Profile ground, PostRow row) {

    /** Rails and boards of two lines meet at a corner only where no gate hangs on the corner post. */
    boolean hasFenceAtStart() {
        return !row.parts().isEmpty() && row.parts().get(0).gate().isEmpty();
    }

    boolean hasFenceAtEnd() {
        return !row.parts().isEmpty()
                && row.parts().get(row.parts().size() - 1).gate().isEmpty();
    }
}
