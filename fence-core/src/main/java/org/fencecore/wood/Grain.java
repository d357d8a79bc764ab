package org.fencecore.wood;

/** How the growth rings lie in a board, which decides how much its width moves. */
public enum Grain {
    /** Sawn along the rings, which lie flat across the face: the width moves most. Usual for fence boards. */
    FLAT,
    /** Sawn across the rings, which stand on edge: the width moves about half as much. */
    VERTICAL
}
