package org.pullproof.worth;

import java.time.LocalDate;
import org.pullproof.units.Money;

/**
 * Money that is spent and no longer counts.
 *
 * @param what for what
 * @param amount how much
 * @param date when
 */
public record Spending(String what, Money amount, LocalDate date) {}
