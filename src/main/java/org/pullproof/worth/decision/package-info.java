/**
 * Is the engine worth more money: the decision engine. Start with {@link org.pullproof.worth.decision.Decision}: it takes a
 * {@link org.pullproof.worth.decision.problem.Problem} and gives an {@link org.pullproof.worth.decision.answer.Answer}. It knows
 * nothing of sessions, of the engine's health or of changes; who asks puts these into the problem.
 */
@NullMarked
package org.pullproof.worth.decision;

import org.jspecify.annotations.NullMarked;
