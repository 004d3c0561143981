/**
 * Quantities with their units: the value types used everywhere, parsing what people type, and wording in US or metric
 * units. Start with {@link org.pullproof.units.Quantity}. Nothing of the trade belongs here.
 */
@NullMarked
package org.pullproof.units;

import org.jspecify.annotations.NullMarked;
