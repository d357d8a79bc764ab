/**
 * The front door: from a site and a style to the plan a crew builds from.
 *
 * <p>{@link org.fencecore.FencePlanner#plan} composes the trade modules (slope, layout, gate, footing) over every
 * fenced side. The {@link org.fencecore.FencePlan} it returns is complete and immutable: {@link org.fencecore.Run}s along
 * the sides, each made of {@link org.fencecore.Stretch}es between fixed {@link org.fencecore.Post}s and of
 * {@link org.fencecore.GateBay}s, a stretch made of {@link org.fencecore.Bay}s. What is wrong with the design comes with
 * it as findings, all at once. Posts that were set elsewhere go back in as {@link org.fencecore.SetPost}s, and the plan is
 * made again to them.
 */
@NullMarked
package org.fencecore;

import org.jspecify.annotations.NullMarked;
