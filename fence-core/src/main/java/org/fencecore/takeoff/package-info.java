/**
 * The shopping list: cut list, stock to buy, materials, price and weight.
 */
@NullMarked
package org.fencecore.takeoff;

import org.jspecify.annotations.NullMarked;
