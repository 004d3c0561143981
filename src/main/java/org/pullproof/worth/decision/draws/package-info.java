/**
 * Draws of what is not known: named streams in ten Latin hypercubes, quantile functions, and what ten batches say of the noise.
 * Start with {@link org.pullproof.worth.decision.draws.Streams}.
 */
@NullMarked
package org.pullproof.worth.decision.draws;

import org.jspecify.annotations.NullMarked;
