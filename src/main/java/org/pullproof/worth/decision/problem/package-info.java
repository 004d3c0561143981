/**
 * The question put to the decision engine: what the owner says, what the engine may have, and what could be done about it. Start
 * with {@link org.pullproof.worth.decision.problem.Problem}. Every value checks itself; a refusal names the field and says what
 * would be right. Money is in the one currency of the problem, power in hp at the wheels (corrected), time in hours, weeks or
 * months. Nothing here computes.
 */
@NullMarked
package org.pullproof.worth.decision.problem;

import org.jspecify.annotations.NullMarked;
