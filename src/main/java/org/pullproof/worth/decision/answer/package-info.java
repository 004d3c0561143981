/**
 * What the decision engine answers. Start with {@link org.pullproof.worth.decision.answer.Answer}. Plain values, without words
 * beyond the names the problem gave; money is in the currency of the problem, power in hp at the wheels (corrected).
 */
@NullMarked
package org.pullproof.worth.decision.answer;

import org.jspecify.annotations.NullMarked;
