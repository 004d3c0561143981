package org.pullproof.worth.decision.answer;

/**
 * The best option that the budget shuts out.
 *
 * @param option its name
 * @param costsOfCap what the cap costs: how much better it would be than the best that is allowed
 */
public record Shut(String option, double costsOfCap) {}
