package org.fencecore.examples;

import org.fencecore.units.Length;

/** Prints the length of a fence line walked as three sides of a yard. */
public final class BuildPacketExample {
    private BuildPacketExample() {}

    /**
     * Runs the example.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Length side = Length.ofFeet(60);
        Length back = Length.ofFeet(80);
        System.out.println("Fence line: " + side.plus(back).plus(side));
    }
}
