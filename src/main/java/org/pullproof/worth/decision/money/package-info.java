/**
 * The model of the car's money: bills, gains, failure, worth of the car, and the net of every end in every state. Start with {@link
 * org.pullproof.worth.decision.money.Ledger}. What the parts mean and why is in {@code docs/methods/worth.md}.
 */
@NullMarked
package org.pullproof.worth.decision.money;

import org.jspecify.annotations.NullMarked;
