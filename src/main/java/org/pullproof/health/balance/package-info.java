/** Drop of speed with one cylinder off. Start with {@link org.pullproof.health.balance.BalanceDrops}. */
@NullMarked
package org.pullproof.health.balance;

import org.jspecify.annotations.NullMarked;
