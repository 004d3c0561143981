package org.pullproof.worth.decision.answer;

/**
 * A sum with the noise of drawing it.
 *
 * @param value the sum
 * @param se standard error of the draws, 0 when nothing was drawn; says nothing about the inputs
 */
public record Sum(double value, double se) {}
