/**
 * Short programs, each named after the job it does.
 *
 * <p>{@link org.fencecore.examples.BuildPacketExample} is the whole job on a lot from a public description;
 * {@link org.fencecore.examples.SlopingBackYardExample} the same on an invented yard with side-by-side boards;
 * {@link org.fencecore.examples.OneSideWithGateExample} is the short one that the README shows. For its three readers there
 * are {@link org.fencecore.examples.ManyLotsExample}, {@link org.fencecore.examples.OneGateExample} and
 * {@link org.fencecore.examples.ClassroomExample}.
 */
@NullMarked
package org.fencecore.examples;

import org.jspecify.annotations.NullMarked;
