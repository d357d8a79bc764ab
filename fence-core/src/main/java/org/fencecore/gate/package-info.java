/**
 * A gate for an opening: one leaf or two, the pieces of their frames, and their braces with every cut.
 *
 * <p>Read {@link org.fencecore.gate.GateSpec} first, which says how gates are made here: gaps, joints
 * ({@link org.fencecore.gate.FrameJoint}), lumber, middle rail, brace ({@link org.fencecore.gate.BraceKind},
 * {@link org.fencecore.gate.BraceEnds}). {@link org.fencecore.gate.GateDesign} works out the gate for an opening: one or
 * two {@link org.fencecore.gate.GateLeaf leaves}, each hinged on a {@link org.fencecore.gate.HingeSide}, with its
 * {@link org.fencecore.gate.FramePiece}s, each a {@link org.fencecore.gate.FrameMember}, and its
 * {@link org.fencecore.gate.GateBrace}s, each from one {@link org.fencecore.gate.FrameCorner} to another. What the leaf
 * weighs, and whether it swings clear of the ground, is a package of its own, {@code org.fencecore.gate.hang}.
 *
 * <p>Example: a leaf for an opening of 47 1/2 in, its frame 56 in high with a middle rail.
 *
 * <pre>{@code
 * GateSpec spec = GateSpec.builder().middleRail(true).build();
 * GateDesign gate = GateDesign.forOpening(Length.ofInches(47.5), Length.ofInches(56), HingeSide.LEFT, spec);
 * GateLeaf leaf = gate.activeLeaf();
 * leaf.width();                            // 46 3/4 in: the opening less gaps of 1/2 and 1/4 in
 * leaf.pieces().get(0);                    // hinge stile 4' 8"; and so the other stile
 * leaf.pieces().get(2);                    // bottom rail 3' 3 3/4"; and so the other rails
 * leaf.middleRailCentre();                 // 28 in up
 * leaf.diagonal();                         // 72.949 in from corner to corner when the frame is square
 * // The lower one of two braces, which rise at less than 45 degrees.
 * GateBrace brace = leaf.braces().get(0);
 * brace.length();                          // 45.800 in from point to point
 * brace.railCut();                         // 60.22 degrees off square
 * brace.stileCut();                        // 29.78 degrees off square
 * gate.findings();                         // gate-brace-flat, a warning
 * }</pre>
 */
@NullMarked
package org.fencecore.gate;

import org.jspecify.annotations.NullMarked;
