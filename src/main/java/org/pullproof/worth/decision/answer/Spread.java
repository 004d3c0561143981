package org.pullproof.worth.decision.answer;

/**
 * A range of sums.
 *
 * @param p10 undercut once in ten times
 * @param p50 in the middle
 * @param p90 exceeded once in ten times
 */
public record Spread(double p10, double p50, double p90) {}
