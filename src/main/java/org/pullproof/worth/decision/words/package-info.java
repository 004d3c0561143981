/**
 * An answer in words: five parts, each one sentence, a part left out when it has nothing to say. Start with {@link
 * org.pullproof.worth.decision.words.DecisionWords}.
 */
@NullMarked
package org.pullproof.worth.decision.words;

import org.jspecify.annotations.NullMarked;
