/** Cranking compression: which readings compare, the rules of the trade, altitude. Start with {@link
 * org.pullproof.health.compression.Comparison}. */
@NullMarked
package org.pullproof.health.compression;

import org.jspecify.annotations.NullMarked;
