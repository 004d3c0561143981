package org.pullproof.health.faults;

/**
 * The balance of one cylinder over its rounds.
 *
 * @param mean drop, rpm
 * @param rounds n, how many
 * @param squares sum of squares about the mean, rpm²
 */
public record Drops(double mean, int rounds, double squares) {}
