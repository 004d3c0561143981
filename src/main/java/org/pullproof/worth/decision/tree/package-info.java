/**
 * The trees of options, rolled back: which choice is best at each place, what an option is worth in each state, what a finding is
 * worth. Start with {@link org.pullproof.worth.decision.tree.Weighing}. Money of the ends comes in as a table; nothing here knows
 * where it is from.
 */
@NullMarked
package org.pullproof.worth.decision.tree;

import org.jspecify.annotations.NullMarked;
