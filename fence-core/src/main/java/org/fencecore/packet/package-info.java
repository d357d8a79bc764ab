/**
 * What goes out to the crew: the build sheet and the tables and drawings that go with it.
 *
 * <p>{@link org.fencecore.packet.BuildPacket} puts a plan, its takeoff and its drawings together as named files of text;
 * {@link org.fencecore.packet.BuildSheet} is the one a crew reads first. {@link
 * org.fencecore.packet.BuildPacket#page} has all of it on one page for a browser. {@link org.fencecore.packet.EstimateSheet}
 * and {@link org.fencecore.packet.ComparisonSheet} print what it costs. Nothing is written to disk here: the caller
 * decides where it goes.
 */
@NullMarked
package org.fencecore.packet;

import org.jspecify.annotations.NullMarked;
