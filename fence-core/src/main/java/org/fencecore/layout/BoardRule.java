package org.fencecore.layout;

/** Where the boards of one row stand, from left to right without overlap, in nanometres from the left end. */
interface BoardRule {

    long left(int index);

    long right(int index);

    boolean isFull(int index);
}
