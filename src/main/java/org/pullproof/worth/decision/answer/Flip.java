package org.pullproof.worth.decision.answer;

/**
 * The nearest value of an input at which another option becomes best.
 *
 * @param input which
 * @param now its value now; 1 for a factor
 * @param at where the best option changes
 * @param becomes the option that is best from there
 */
public record Flip(Input input, double now, double at, String becomes) {}
